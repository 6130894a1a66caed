"""Properties of document objects, made from the declarations of parameters."""

from __future__ import annotations

from functools import cache
from typing import Any

from ..job.parameter import Parameter
from ..job.parameters import ALL, LISTS
from ..job.quantity import Kind, Units
from ..job.show import compact_length, show_value
from ..job.speech import Say
from . import extras
from .roles import ROLE, STATED, camel

READ_ONLY, HIDDEN = 1, 2
"""FreeCAD's editor modes."""
STATED_KEYS = "StatedKeys"
"""Hidden list of the parameters that a job file stated, also where they equal the default."""

_TYPES = {
    # A PropertyLength would turn a negative entry into 0 without a word.
    Kind.LENGTH: "App::PropertyDistance",
    Kind.ANGLE: "App::PropertyAngle",
    Kind.COUNT: "App::PropertyInteger",
    Kind.FLAG: "App::PropertyBool",
    Kind.CHOICE: "App::PropertyEnumeration",
    Kind.TEXT: "App::PropertyString",
    Kind.PATH: "App::PropertyFile",
    Kind.POINTS: "App::PropertyVectorList",
}


@cache
def parameters_of(role: str) -> tuple[Parameter, ...]:
    """The parameters that an object of this role states, in the order in which they are shown."""
    groups = STATED.get(role, ())
    return tuple(p for p in ALL.values() if p.group in groups)


def property_of(p: Parameter) -> str:
    """Name of a parameter's property: its own name, after its group's unless that comes first."""
    return _NAMES[p.key]


def _name_of(p: Parameter) -> str:
    firsts = {groups[0] for groups in STATED.values()}
    return camel(p.name) if p.group in firsts else camel(p.group) + camel(p.name)


_NAMES = {key: _name_of(p) for key, p in ALL.items()}


def flag_of(p: Parameter) -> str:
    """Name of the flag that says whether a value is stated; empty where it always is.

    The rows of a list (screws, cavities, old pilot holes) are stated all together or not at all.
    """
    if p.group in LISTS:
        return camel(p.group) + "Stated"
    return property_of(p) + "Stated" if p.default is None else ""


def type_of(p: Parameter) -> str:
    """FreeCAD's type of property for a parameter."""
    if p.many:
        return "App::PropertyFloatList"
    return _TYPES.get(p.kind, "App::PropertyFloat")


def title_of(group: str) -> str:
    """Heading of a group in the property editor."""
    return group.replace("_", " ").capitalize()


def tooltip(p: Parameter, *, say: Say = str) -> str:
    """What a parameter means, what is permitted, where to measure it and its default's origin."""
    meaning = say(p.meaning)
    lines = [meaning[:1].upper() + meaning[1:] + "."]
    if p.many and p.kind.unit:
        lines.append(say("One value in {} for each {}.").format(p.kind.unit, say(p.many)))
    if p.low is not None and p.high is not None:
        lines.append(say("Permitted: {}.").format(_range(p, Units.MM, say) + _in_inches(p, say)))
    if p.where:
        words = say("Measure it with {}." if "calipers" in p.where else "Measure: {}.")
        lines.append(words.format(say(p.where)))
    if p.default not in (None, ""):
        lines.append(say("Default: {} ({}).").format(_shown(p, p.default, say), say(p.origin)))
    return "\n".join(lines)


def flag_tooltip(p: Parameter, *, say: Say = str) -> str:
    """What a parameter's flag says."""
    if p.group not in LISTS:
        words = say("Whether it is stated; otherwise {} shows what is worked out.")
        return words.format(property_of(p))
    words = say("Whether {} rows are stated; otherwise {} shows what is worked out.")
    return words.format(say(title_of(p.group).lower()), property_of(p))


def add_properties(obj: Any, role: str) -> list[str]:
    """Give ``obj`` the properties of its role that it lacks, at default; return their names."""
    before = set(obj.PropertiesList)
    extras.add(obj, role)
    if role in STATED:
        _add(obj, "App::PropertyStringList", STATED_KEYS, "NeckFit", "", hidden=True)
    for p in parameters_of(role):
        _add_parameter(obj, p)
    if ROLE not in before:
        setattr(obj, ROLE, role)
    return [name for name in obj.PropertiesList if name not in before]


def _add_parameter(obj: Any, p: Parameter) -> None:
    flag, name = flag_of(p), property_of(p)
    if flag:
        words = flag_tooltip(p)
        _add(obj, "App::PropertyBool", flag, title_of(p.group), words)
    if not _add(obj, type_of(p), name, title_of(p.group), tooltip(p)):
        return
    if p.kind is Kind.CHOICE:
        setattr(obj, name, list(p.choices))
    if flag:
        obj.setEditorMode(name, READ_ONLY)
    elif p.default is not None:
        setattr(obj, name, outer(p, p.default))


def _add(obj: Any, kind: str, name: str, group: str, words: str, *, hidden: bool = False) -> bool:
    if name in obj.PropertiesList:
        return False
    obj.addProperty(kind, name, group, words)
    if hidden:
        obj.setEditorMode(name, HIDDEN)
    return True


def outer(p: Parameter, value: Any) -> Any:
    """A value in inner units as its property takes it."""
    import FreeCAD

    if p.many:
        return [float(x) for x in value]
    if p.kind is Kind.POINTS:
        return [FreeCAD.Vector(float(x), float(y), 0.0) for x, y in value]
    # With its unit: a bare number would keep whatever unit an expression left there.
    if p.kind is Kind.LENGTH:
        return FreeCAD.Units.Quantity(float(value), FreeCAD.Units.Length)
    if p.kind is Kind.ANGLE:
        return FreeCAD.Units.Quantity(float(value), FreeCAD.Units.Angle)
    if p.kind in (Kind.CHOICE, Kind.TEXT, Kind.PATH):
        return str(value)
    return {Kind.COUNT: int, Kind.FLAG: bool}.get(p.kind, float)(value)


def _shown(p: Parameter, value: Any, say: Say) -> str:
    shown = show_value(value, kind=p.kind, units=Units.MM)
    if p.kind is not Kind.LENGTH:
        return shown
    return say("{} or {}").format(shown, compact_length(float(value), units=Units.INCH))


def _range(p: Parameter, units: Units, say: Say) -> str:
    low, high = (show_value(v, kind=p.kind, units=units) for v in (p.low, p.high))  # type: ignore[arg-type] # both are stated
    return say("{} to {}").format(low, high)


def _in_inches(p: Parameter, say: Say) -> str:
    """A document's tooltips stay with it, whatever units its reader has set."""
    if p.kind is not Kind.LENGTH or p.low is None or p.high is None:
        return ""
    low, high = (compact_length(float(v), units=Units.INCH) for v in (p.low, p.high))
    return ", " + say("{} to {}").format(low, high)
