"""Everything that a document holds and the 3D view shows, as one comparable thing."""

import hashlib
import json
import math

PLACES = 9
"""Decimals of lengths, placements and vertices: documents keep no more than this for certain."""
OF_FREECAD = ("Proxy", "ExpressionEngine", "_ElementMapVersion")
"""Properties that FreeCAD keeps for itself, or whose value cannot be compared as it is."""


def digest(document):
    """Every property, placement, shape and annotation, by object and name."""
    return {obj.Name: _object(obj) for obj in document.Objects}


def short(whole):
    return hashlib.sha256(json.dumps(whole, sort_keys=True).encode()).hexdigest()[:16]


def differences(one, other):
    found = []
    for name in sorted({*one, *other}):
        a, b = one.get(name), other.get(name)
        if a is None or b is None:
            found.append(f"{name}: there only in one")
            continue
        found += [f"{name}.{p}: {a.get(p)} / {b.get(p)}"[:300]
                  for p in sorted({*a, *b}) if a.get(p) != b.get(p)]  # fmt: skip
    return found


def _object(obj):
    found = {}
    for name in obj.PropertiesList:
        if name in OF_FREECAD:
            continue
        found[name] = _plain(getattr(obj, name))
    found["ExpressionEngine"] = [list(map(str, pair)) for pair in obj.ExpressionEngine]
    view = getattr(getattr(obj, "ViewObject", None), "Proxy", None)
    if hasattr(view, "scene"):
        found["on screen"] = _scene(view.scene)
    return found


def _scene(scene):
    """What the Coin nodes of the annotations hold, whatever the camera looks at."""
    return {
        "labels": {
            name: [label.text, _plain(list(label.colour)), label.pattern]
            for name, label in scene.labels().items()
        },
        "clash": _plain([list(c) for c in scene.clash.corners]),
        "map": scene.map.field is not None,
        "stands": _plain([list(row) for row in scene._stand.matrix.getValue().getValue()]),
    }


def _plain(value):  # noqa: PLR0911 # one for each kind
    if isinstance(value, bool | int | str) or value is None:
        return value
    if isinstance(value, float):
        return round(value, PLACES) + 0.0 if math.isfinite(value) else str(value)
    if hasattr(value, "exportBrep"):
        return _shape(value)
    if hasattr(value, "Base") and hasattr(value, "Rotation"):
        return [_plain(list(value.Base)), _plain(list(value.Rotation.Q))]
    if hasattr(value, "UserString"):
        return [_plain(value.Value), str(value.Unit)]
    if hasattr(value, "Document") and hasattr(value, "Name"):
        return f"-> {value.Name}"
    if isinstance(value, list | tuple):
        return [_plain(x) for x in value]
    if hasattr(value, "x") and hasattr(value, "z"):
        return [_plain(value.x), _plain(value.y), _plain(value.z)]
    return type(value).__name__


def _shape(shape):
    if shape.isNull():
        return "none"
    box = shape.BoundBox
    numbers = (box.XMin, box.YMin, box.ZMin, box.XMax, box.YMax, box.ZMax)
    return [len(shape.Faces), len(shape.Edges), [round(x, 5) + 0.0 for x in numbers]]
