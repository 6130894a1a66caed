"""Shapes that FreeCAD can write into a document and read back.

Some programs trim a cylinder to one turn of its own and leave it endless along its axis. FreeCAD
1.1 writes the endless bounds (2e100) with all their digits, and its kernel cannot read them: the
solid is gone when the document is opened again. Such a trim says nothing that the face does not.
"""

from __future__ import annotations

import re
from typing import Any

TURNED = ("Cylinder", "Cone")
ENDLESS_TRIM = re.compile(r"^10 .*e\+100.*\n", re.MULTILINE)
"""The line of a trimmed surface with endless bounds; the next holds the surface itself."""


def storable(shape: Any) -> Any:
    """The shape, without endless trims where it has any: the same faces, edges and places."""
    import Part

    if not any(_is_past_its_seam(face) and _is_endless(face) for face in shape.Faces):
        return shape
    plain = Part.Shape()
    plain.importBrepFromString(ENDLESS_TRIM.sub("", shape.exportBrepToString()))
    return plain


def _is_past_its_seam(face: Any) -> bool:
    """Only where a face reaches over the surface's own seam was there a reason to trim it."""
    surface = face.Surface
    if type(surface).__name__ not in TURNED:
        return False
    first, last = face.ParameterRange[:2]
    start, end = surface.bounds()[:2]
    return bool(first < start or last > end)


def _is_endless(face: Any) -> bool:
    return ENDLESS_TRIM.search(face.exportBrepToString()) is not None
