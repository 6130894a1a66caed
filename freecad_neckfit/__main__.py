"""``python3 -m freecad_neckfit``: see ``cli.py``."""

import sys

from .cli import main

sys.exit(main())
