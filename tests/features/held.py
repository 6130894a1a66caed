"""All that NeckFit's objects of a document hold, to be compared before and after."""

import pytest

from freecad_neckfit.features import roles


def digest(document):
    """Everything that NeckFit's objects hold, links by name, shapes by what can be compared."""
    return {o.Name: _held(o) for o in document.Objects if roles.role_of(o)}


def _held(obj):
    held = {name: _plain(getattr(obj, name)) for name in obj.PropertiesList if name not in SKIPPED}
    return held | {"proxy": type(obj.Proxy).__name__, "modes": _modes(obj)}


SKIPPED = {
    "Proxy",
    "Shape",
    "Interference",
    "ExpressionEngine",
    "_ElementMapVersion",
    "ShapeMaterial",
}


def _modes(obj):
    return {name: obj.getEditorMode(name) for name in obj.PropertiesList}


def _plain(value):
    if hasattr(value, "Name"):
        return value.Name
    if isinstance(value, float):
        return pytest.approx(value, abs=1e-12)
    if isinstance(value, list | tuple):
        return [_plain(item) for item in value]
    return getattr(value, "UserString", None) or str(value)
