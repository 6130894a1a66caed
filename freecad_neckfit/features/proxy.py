"""What the proxies of all document objects share."""

from __future__ import annotations

from typing import Any


class Proxy:
    """Behaviour without state: everything that lasts is a property of the object."""

    role = ""
    """Which object this is; see ``roles``."""

    def __init__(self, obj: Any) -> None:
        """Give ``obj`` its properties, then this behaviour."""
        from .properties import add_properties

        add_properties(obj, self.role)
        obj.Proxy = self

    def onDocumentRestored(self, obj: Any) -> None:  # noqa: N802 (FreeCAD's name)
        """Bring an object of an older version up to date."""
        from .migrations import bring_up_to_date

        bring_up_to_date(obj)

    def dumps(self) -> None:
        """Nothing to save: see the properties."""

    def loads(self, state: Any) -> None:
        """Nothing to restore."""

    # FreeCAD before 1.0 asks by these names.
    __getstate__ = dumps
    __setstate__ = loads


class StatedProxy(Proxy):
    """An object whose properties are parameters."""

    def execute(self, obj: Any) -> None:
        """Refuse what is not permitted, and show what is worked out from the rest.

        Raises BadInput (a ValueError): FreeCAD then marks the object, keeps the sentence as its
        status and leaves all shapes as they were.
        """
        from .mend_units import mend_units
        from .values import show_worked_out

        mend_units(obj)  # here too: undoing an expression leaves its unit behind
        show_worked_out(obj)

    def onChanged(self, obj: Any, name: str) -> None:  # noqa: N802 (FreeCAD's name)
        """Note that a worked-out value is stated from now on, and which results are stale."""
        from .changes import after_change

        after_change(obj, name)
