"""What a pick in the 3D view or the tree means: which solid, by which way, which face or edge."""

from __future__ import annotations

import re
from typing import Any, NamedTuple

ELEMENT = re.compile(r"(Face|Edge|Vertex)\d+")
BODY = "PartDesign::Body"
LINKS = ("App::Link", "App::LinkElement")


class Pick(NamedTuple):
    """``solid``: what can be adopted; ``path``: where in it, where it is a link to a group.

    ``element``: name of the face or edge, or empty.
    """

    solid: Any
    path: str
    element: str


def pick_of(top: Any, sub: str = "") -> Pick:
    """Resolve what FreeCAD tells of a pick: the outermost object, and the way down from it.

    Containers on the way are left behind, for a solid knows where it lies; of a link everything
    below it stays, for the same solid lies elsewhere too. A feature of a PartDesign body stands for
    the body.
    """
    words = [w for w in sub.split(".") if w]
    element = words.pop() if words and ELEMENT.fullmatch(words[-1]) else ""
    way = [top]
    for count in range(1, len(words) + 1):
        found = top.getSubObject(".".join(words[:count]) + ".", 1)
        if found is None:
            break
        way.append(found)
    first = next((i for i, obj in enumerate(way) if obj.TypeId in LINKS), None)
    if first is None:
        return Pick(_whole(way[-1]), "", element)
    below = words[first : len(way) - 1]
    if len(way) > first + 1 and _whole(way[-1]) != way[-1]:
        below = below[:-1]
    return Pick(way[first], ".".join(below), element)


def _whole(obj: Any) -> Any:
    """The PartDesign body that a feature belongs to; sketches and datums stay themselves."""
    if not obj.isDerivedFrom("PartDesign::Feature"):
        return obj
    body = obj.getParentGeoFeatureGroup()
    return body if body is not None and body.TypeId == BODY else obj
