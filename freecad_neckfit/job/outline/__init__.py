"""The body's outline in plan: an exact chain of lines and arcs, in the body frame."""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence
from pathlib import Path
from typing import Any

from ..errors import BadInput
from ..files import plain_name
from ..quantity import Units
from .chain import Outline, Point, Segment
from .drawing import read_drawing
from .own import own_outline
from .sound import check_outline

__all__ = ["Outline", "Segment", "Sketch", "outline_of"]

Sketch = Callable[[Path], Sequence[tuple[Point, Point | None, Point]]]
"""Reads a FreeCAD document: (start, point on the way or None, end) [mm] of each segment."""


def outline_of(v: Mapping[str, Any], *, sketch: Sketch | None = None) -> Outline:
    """Return the outline that the values of one joint (``resolve.complete``) state.

    Drawn by this workbench, given as points, cut from a solid, or read from a DXF file; ``sketch``
    reads an FCStd file. Raises BadInput for a file that cannot be used, CannotBuild for an outline
    that crosses itself, does not hold the pocket's end wall, or has its front elsewhere than the
    pocket's mouth.
    """
    if v["body.outline"] == "own":
        return own_outline(v)
    if v["body.outline"] in ("points", "section"):
        if not v["body.outline_points"]:
            raise BadInput(
                f'body.outline_points is missing, though body.outline is "{v["body.outline"]}"; '
                "state the corners."
            )
        outline = Outline.of_points(v["body.outline_points"])
        return check_outline(outline, v, name="body.outline_points")
    path = _file(v)
    if path.suffix.lower() == ".dxf":
        bare = Units.INCH if v["job.units"] == "inch" else Units.MM
        outline = read_drawing(path, bare=bare)
    elif sketch is None:
        raise BadInput(
            f"{plain_name(path)} is a FreeCAD document, which only FreeCAD can read; run the check "
            "with solids, or save the outline as DXF."
        )
    else:
        outline = Outline.of_triples(sketch(path))
    return check_outline(outline, v, name=plain_name(path))


def _file(v: Mapping[str, Any]) -> Path:
    if not v["body.outline_file"]:
        raise BadInput(
            'body.outline_file is missing, though body.outline is "file"; name a DXF or FCStd file.'
        )
    path = Path(v["body.outline_file"])
    if path.suffix.lower() not in (".dxf", ".fcstd"):
        raise BadInput(
            f"body.outline_file: {plain_name(path)} is neither DXF nor FCStd; save it as one of "
            "these."
        )
    return path
