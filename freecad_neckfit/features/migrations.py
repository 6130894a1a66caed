"""Objects of documents that older versions saved, brought up to date step by step."""

from __future__ import annotations

from collections.abc import Callable
from typing import Any

from ..job.errors import BadInput
from . import values
from .extras import SCHEMA
from .properties import add_properties
from .roles import role_of

Step = Callable[[Any], None]

STEPS: dict[int, Step] = {}
"""What leads from a schema version to the next one; each step changes one object."""
CURRENT = 1
"""Schema version of what this program makes."""


def bring_up_to_date(obj: Any) -> None:
    """Take an object from its saved schema version to the current one.

    Parameters declared since are added at their defaults. An object that a newer version made
    stays as it is; ``refuse_newer`` says so when it is used.
    """
    version = int(getattr(obj, SCHEMA, 0))
    if version > CURRENT:
        return
    with values.writing():
        for number in range(max(version, 1), CURRENT):
            STEPS[number](obj)
        if add_properties(obj, role_of(obj)):
            _show_new(obj)
        if version != CURRENT:
            setattr(obj, SCHEMA, CURRENT)


def _show_new(obj: Any) -> None:
    """Show in new properties what is worked out; FreeCAD would forget a mark to recompute them."""
    try:
        values.show_worked_out(obj)
    except BadInput as refusal:
        import FreeCAD

        FreeCAD.Console.PrintWarning(f"{refusal}\n")


def refuse_newer(obj: Any) -> None:
    """Raise BadInput where a newer version of NeckFit made the object."""
    version = int(getattr(obj, SCHEMA, 0))
    if version > CURRENT:
        raise BadInput(
            f"{obj.Label} was made by a newer NeckFit (schema {version}, this one knows up to "
            f"{CURRENT}); update NeckFit."
        )
