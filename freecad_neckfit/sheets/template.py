"""The routing template: 1:1 outlines as true arcs and closed polylines, one layer a function."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from ..job.quantity import Units
from ..job.show import compact_length
from ..solids.build.neck import heel_plan
from ..solids.build.plan import Plan, Segment
from ..solids.build.plate import overhang_end
from ..solids.build.pocket import far_end
from ..solids.build.shapes import SAME
from .cutter import Cutter, left_in_corners
from .dxf import CHAIN, Drawing, Layer, bulge
from .ink import Round, Words
from .joint import Joint

SQUARE = 100.0
"""Side of the check square [mm]."""
APART = 25.0
"""Paper between neighbouring outlines [mm]."""
LAYERS = {
    "pocket": Layer("POCKET", 7, width=0.35),
    "path": Layer("CUTTER_PATH", 1),
    "opening": Layer("TEMPLATE_OPENING", 3, width=0.35),
    "heel": Layer("HEEL_TEMPLATE", 4, width=0.35),
    "plate": Layer("PLATE_CUTOUT", 6, width=0.35),
    "holes": Layer("SCREW_HOLES", 5, width=0.35),
    "pilots": Layer("SCREW_CENTRES", 5),
    "centre": Layer("CENTRELINE", 1, CHAIN),
    "check": Layer("CHECK_SQUARE", 8),
    "notes": Layer("NOTES", 8),
}
HEIGHT = 3.5


@dataclass(frozen=True)
class Outline:
    """A closed outline on a layer: lines and arcs in the body frame [mm]."""

    layer: str
    segments: tuple[Segment, ...]


def outlines(joint: Joint, cutter: Cutter | None) -> list[Outline]:
    """Pocket, cutter's path, template opening, plate cut-out, and the heel beside them.

    All but the heel lie in the body frame: origin at the end wall on the centreline, X toward the
    bridge. They run on past the mouth as far as the pocket's cutter does.
    """
    plan, far = joint.pocket, -joint.length("pocket.length")
    found = [Outline("pocket", tuple(plan.segments(far)))]
    if cutter is not None:
        past = far - 2 * cutter.bit
        found.append(Outline("path", _offset(joint, -cutter.bit / 2, past)))
        found.append(Outline("opening", _offset(joint, cutter.outward, past)))
    if "plate" in joint.parts:
        found += _plate(joint)
    found.append(Outline("heel", _heel(joint)))
    return found


def _offset(joint: Joint, distance: float, past: float) -> tuple[Segment, ...]:
    plan = joint.pocket.outward(distance)
    # Sides that close toward the mouth leave an opening only so far.
    far = max(past, far_end(dict(joint.values), plan, past))
    return tuple(plan.segments(far))


def _plate(joint: Joint) -> list[Outline]:
    far = -joint.length("pocket.length")
    around = joint.pocket.outward(joint.length("plate.clearance"))
    found = [Outline("plate", tuple(around.segments(far)))]
    if not joint.values["plate.under_overhang"]:
        half = joint.length("neck.width_end") / 2 + joint.length("plate.clearance")
        end = overhang_end(dict(joint.values), joint.case.seat)
        corners = [(far, -half), (end, -half), (end, half), (far, half)]
        sides = zip(corners, [*corners[1:], corners[0]], strict=True)
        found.append(Outline("plate", tuple((a, None, b) for a, b in sides)))
    return found


def _heel(joint: Joint) -> tuple[Segment, ...]:
    """The heel's plan in the neck's own frame, set beside the pocket."""
    aside = heel_offset(joint)
    plan: Plan = heel_plan(dict(joint.values))
    return tuple(
        ((a[0], a[1] + aside), None if m is None else (m[0], m[1] + aside), (b[0], b[1] + aside))
        for a, m, b in plan.segments(-joint.length("neck.heel_length"))
    )


def heel_offset(joint: Joint) -> float:
    """Y [mm] of the heel template's centreline."""
    widths = ("pocket.width_end", "pocket.width_mouth")
    heels = ("neck.heel_width_end", "neck.heel_width_mouth")
    reach = max(joint.length(k) for k in widths) / 2 + max(joint.length(k) for k in heels) / 2
    return -(reach + joint.length("plate.clearance") + APART + 20)


def template_dxf(joint: Joint, cutter: Cutter | None, *, units: Units) -> str:
    """The routing template as DXF in mm or inches."""
    drawing = Drawing(tuple(LAYERS.values()), units)
    for outline in outlines(joint, cutter):
        drawing.polyline(
            corners_of(outline.segments), layer=LAYERS[outline.layer].name, closed=True
        )
    _screws(joint, drawing)
    _centrelines(joint, drawing)
    left = _check_square(joint, drawing)
    _notes(joint, cutter, drawing, left)
    return drawing.text()


def corners_of(segments: Sequence[Segment]) -> list[tuple[float, float, float]]:
    """Vertices with bulges of a closed chain of lines and arcs."""
    return [
        (a[0], a[1], 0.0 if m is None else bulge(a, m, b))
        for a, m, b in segments
        if m is not None or abs(a[0] - b[0]) > SAME or abs(a[1] - b[1]) > SAME
    ]


def _screws(joint: Joint, drawing: Drawing) -> None:
    radius = joint.length("screws.body_hole") / 2
    for x, y in zip(joint.screws.x, joint.screws.y, strict=True):
        spot = float(x), float(y)
        drawing.arc(Round(spot, radius), layer=LAYERS["holes"].name)
        for a, b in (((-3, 0), (3, 0)), ((0, -3), (0, 3))):
            ends = [(spot[0] + p[0], spot[1] + p[1], 0.0) for p in (a, b)]
            drawing.polyline(ends, layer=LAYERS["pilots"].name)


def _centrelines(joint: Joint, drawing: Drawing) -> None:
    far = -joint.length("pocket.length") - 15
    for y in (0.0, heel_offset(joint)):
        drawing.polyline([(far, y, 0.0), (60.0, y, 0.0)], layer=LAYERS["centre"].name)
    half = joint.pocket.half_width(0.0) + 10
    drawing.polyline([(0.0, -half, 0.0), (0.0, half, 0.0)], layer=LAYERS["centre"].name)


def _check_square(joint: Joint, drawing: Drawing) -> tuple[float, float]:
    x, y = 80.0, heel_offset(joint) - 20
    corners = [(x, y), (x + SQUARE, y), (x + SQUARE, y + SQUARE), (x, y + SQUARE)]
    drawing.polyline([(a, b, 0.0) for a, b in corners], layer=LAYERS["check"].name, closed=True)
    side = compact_length(SQUARE, units=drawing.units)
    words = Words((x + 3, y + SQUARE / 2), f"check square: {side} each way", HEIGHT)
    drawing.words(words, layer=LAYERS["notes"].name)
    return x, y


def _notes(
    joint: Joint, cutter: Cutter | None, drawing: Drawing, corner: tuple[float, float]
) -> None:
    heel = heel_offset(joint)
    unit = "millimetres" if drawing.units is Units.MM else "inches"
    lines = [
        f"{joint.name} - routing template, scale 1:1, in {unit}",
        "Origin: end wall on the centreline. X toward the bridge.",
        *_cutter_notes(joint, cutter),
        "The mouth is open: path and opening run on past the body's edge.",
    ]
    for i, line in enumerate(lines):
        at = (corner[0], corner[1] + SQUARE + 32 - i * 6)
        drawing.words(Words(at, line, HEIGHT), layer=LAYERS["notes"].name)
    name = Words(
        (5 - joint.length("neck.heel_length"), heel + 3), "heel, seen square to its bottom", HEIGHT
    )
    drawing.words(name, layer=LAYERS["notes"].name)


def _cutter_notes(joint: Joint, cutter: Cutter | None) -> list[str]:
    if cutter is None:
        return [
            "The corners are too tight for any usual bit: no path is drawn; square them by hand."
        ]
    notes = [f"Path and opening are for a {cutter.led_by(joint.units)}."]
    left = left_in_corners(joint.pocket, cutter)
    if left > 0:
        radius = compact_length(left, units=joint.units)
        notes.append(f"Where end and sides meet the bit leaves R {radius}: ease the heel there.")
    return notes
