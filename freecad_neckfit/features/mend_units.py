"""Properties that an expression of a wrong unit has spoilt, made usable again."""

from __future__ import annotations

from typing import Any

from ..job.quantity import Kind
from . import values
from .properties import (
    READ_ONLY,
    flag_of,
    outer,
    parameters_of,
    property_of,
    title_of,
    tooltip,
    type_of,
)
from .read_property import has_unit_of
from .roles import role_of

ENGINE = "ExpressionEngine"


def mend_units(obj: Any) -> None:
    """Give back their unit to properties that no expression drives any more.

    FreeCAD leaves the expression's unit with the property and then refuses every value of the
    right one. The number stays, as FreeCAD's own properties keep it.
    """
    driven = {path.lstrip(".") for path, _ in getattr(obj, ENGINE)}
    for p in parameters_of(role_of(obj)):
        name = property_of(p)
        if p.kind not in (Kind.LENGTH, Kind.ANGLE) or p.many or name in driven:
            continue
        if not has_unit_of(p, getattr(obj, name)):
            with values.writing():
                _make_anew(obj, p, name)


def _make_anew(obj: Any, p: Any, name: str) -> None:
    import FreeCAD

    spoilt = getattr(obj, name)
    obj.removeProperty(name)
    obj.addProperty(type_of(p), name, title_of(p.group), tooltip(p))
    setattr(obj, name, outer(p, spoilt.Value))
    flag = flag_of(p)
    if flag and not getattr(obj, flag):
        obj.setEditorMode(name, READ_ONLY)
    FreeCAD.Console.PrintWarning(
        f"{obj.Label}.{name}: {spoilt.UserString} came from an expression; it now reads "
        f"{getattr(obj, name).UserString}.\n"
    )
