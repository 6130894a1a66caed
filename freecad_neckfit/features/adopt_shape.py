"""The solid that an adopted object is, in its own coordinates, and where it lies.

Own coordinates are those before the object's placement: wherever it is moved, turned or nested,
its shape in them stays the same.
"""

from __future__ import annotations

import hashlib
from typing import Any

from ..job.errors import BadInput

PLACES = 6
"""Decimals [mm] that tell two shapes apart."""


_known: dict[tuple[str, str], tuple[Any, Any, str]] = {}
"""Of each stated object: the linked shape as it was, its own copy and that one's digest."""


def own_shape(obj: Any) -> Any:
    """The adopted solid of a stated object, in the adopted object's own coordinates; not to change.

    Raises BadInput where what is linked has no solid.
    """
    return _read(obj)[1]


def own_digest(obj: Any) -> str:
    """A short text that changes with the adopted solid. Raises BadInput as ``own_shape`` does."""
    return _read(obj)[2]


def _read(obj: Any) -> tuple[Any, Any, str]:
    import FreeCAD
    import Part

    source = obj.Adopted
    shape = Part.getShape(source, _sub(obj.AdoptedPath)) if source.isValid() else Part.Shape()
    if shape.isNull() or not shape.Solids:
        raise BadInput(
            f"{obj.Label}.Adopted links {source.Label}, which has no solid; mend it or link "
            "another."
        )
    name = obj.Document.Name, obj.Name
    # While the former shape is kept, no other one can be mistaken for it.
    if name not in _known or not _known[name][0].isSame(shape):
        own = shape.copy()
        at_home = FreeCAD.Placement(source.Placement).inverse()
        own.Placement = at_home.multiply(own.Placement)
        _known[name] = shape, own, shape_digest(own)
    return _known[name]


def placed(obj: Any) -> Any:
    """Global placement of the adopted object's own coordinates."""
    return global_placement(obj.Adopted)


def global_placement(obj: Any) -> Any:
    """Where any object's own coordinates lie in the document, containers counted.

    Links know only where they lie in their container in some versions of FreeCAD.
    """
    if hasattr(obj, "getGlobalPlacement"):
        return obj.getGlobalPlacement()
    container = obj.getParentGeoFeatureGroup()
    if container is None:
        return obj.Placement
    return global_placement(container).multiply(obj.Placement)


def matrix_of(placement: Any) -> Any:
    """A placement as a rigid motion, (4, 4)."""
    import numpy as np

    return np.array(placement.toMatrix().A, dtype=float).reshape(4, 4)


def placement_of(motion: Any) -> Any:
    """A rigid motion (4, 4) as a placement."""
    import FreeCAD

    return FreeCAD.Placement(FreeCAD.Matrix(*(float(a) for row in motion for a in row)))


def in_frame(shape: Any, frame: Any) -> Any:
    """The shape as seen from a frame (4, 4), written into its geometry."""
    import numpy as np

    from ..solids.build.shapes import moved

    return moved(shape, np.linalg.inv(frame))


def shape_digest(shape: Any) -> str:
    """A short text that changes with the shape: corners, middles of edges and of faces."""
    points = [v.Point for v in shape.Vertexes]
    points += [
        e.valueAt((e.FirstParameter + e.LastParameter) / 2)
        for e in shape.Edges
        if not e.Degenerated
    ]
    for face in shape.Faces:
        u0, u1, v0, v1 = face.ParameterRange
        points.append(face.valueAt((u0 + u1) / 2, (v0 + v1) / 2))
    return text_digest(*(round(c, PLACES) + 0.0 for p in points for c in (p.x, p.y, p.z)))


def text_digest(*parts: Any) -> str:
    """A short text that changes with any of the parts."""
    return hashlib.sha256(repr(parts).encode()).hexdigest()[:32]


def _sub(path: str) -> str:
    return path if not path or path.endswith(".") else f"{path}."
