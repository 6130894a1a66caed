"""The body's outline under its top and its rounded edges."""

from __future__ import annotations

from collections.abc import Iterator

import numpy as np

from ..errors import CannotBuild
from ..outline import Outline, outline_of
from ..resolve import Values
from ..sampled_top import samples
from ..top import top_height
from .words import mm

LEAST_EDGE = 0.5
"""Least height of edge [mm] between the two rounded ones."""
CHORD = 0.5


def outline(v: Values) -> Outline | None:
    """The outline, or None where only FreeCAD can read it."""
    if v["body.outline"] == "file" and str(v["body.outline_file"]).lower().endswith(".fcstd"):
        return None
    return outline_of(v)


def complaints(v: Values) -> Iterator[str]:
    """Say why outline, top and edges do not go together."""
    if v["body.top"] == "sampled":
        samples(v)  # refuses what is no grid
    try:
        found = outline(v)
    except CannotBuild as refusal:
        yield str(refusal)
        return
    if found is None:
        return
    corners = found.polyline(CHORD)
    yield from _dome(v, corners)
    heights = np.asarray(top_height(v, x=corners[:, 0], y=corners[:, 1]))
    left = float(heights.min()) + float(v["body.thickness"])
    need = 2 * float(v["body.edge_round"]) + LEAST_EDGE
    if left < need:
        yield (
            f"body.thickness: at the outline {mm(v, left)} are left between top and back, and the "
            f"rounded edges need {mm(v, need)}; make the body thicker, its top flatter or "
            "body.edge_round smaller."
        )
    yield from _rounds(v, found)


def _dome(v: Values, corners: np.ndarray[tuple[int, ...], np.dtype[np.float64]]) -> Iterator[str]:
    if v["body.top"] != "domed":
        return
    far = float(np.hypot(corners[:, 0] - float(v["body.dome_centre"]), corners[:, 1]).max())
    if far > 0.7 * float(v["body.dome_radius"]):
        yield (
            f"body.dome_radius: a sphere of {mm(v, v['body.dome_radius'])} is too small for a body "
            f"that reaches {mm(v, far)} from its highest point; make it larger."
        )


def _rounds(v: Values, found: Outline) -> Iterator[str]:
    edge = float(v["body.edge_round"])
    for s in found.segments:
        # Counter-clockwise, an arc that turns left bulges outward.
        if edge > 0 and s.through is not None and s.span[1] > 0 and s.circle[1] < edge + 0.1:
            yield (
                f"body.edge_round: {mm(v, edge)} does not fit a curve of the outline of "
                f"{mm(v, s.circle[1])} near X = {s.start[0]:.1f}, Y = {s.start[1]:.1f} mm; make it "
                "smaller."
            )
            return
