"""``python3 -m freecad_neckfit``: see ``cli``."""

import sys

from .cli import main

sys.exit(main())
