"""The cover plate on the finished top, with its cut-out and openings."""

from __future__ import annotations

from typing import Any

from ...job.errors import CannotBuild
from ...job.frames import Seat
from ...job.resolve import Values
from .outline import Segments
from .pickups import bounds, fitted
from .plan import face, rounded_rectangle
from .pocket import BEYOND, far_end, pocket_plan
from .shapes import UP, Point, Solid, common, cut
from .top import range_over, under_top

AROUND = 1.0
"""Room around a pickup in its opening [mm]."""


def plate(v: Values, seat: Seat, outline: Segments) -> Solid | None:
    """The cover plate, or None where none is fitted.

    From the pocket's mouth to ``plate.reach``, ``plate.margin`` wider than its cut-out on each
    side, and no farther than the body. The cut-out is the pocket's plan offset by
    ``plate.clearance``; one that clears the overhang also holds a rectangle round it. A plate on
    one side ends at the centreline. Fitted pickups stand in openings. Raises CannotBuild where
    cut-out and openings leave it in pieces.
    """
    if v["plate.cover"] == "none":
        return None
    x, y = _extent(v)
    low, high = range_over(v, x, y)
    top = float(v["finish.top"] + v["plate.thickness"])
    tall = low - BEYOND, high + top + BEYOND
    on_top = float(v["finish.top"])
    if v["body.top"] == "flat":
        return _whole(_flat(v, seat, outline, x, y, on_top).Faces).extrude(UP * (top - on_top))
    upright = _whole(_flat(v, seat, outline, x, y, tall[0]).Faces).extrude(UP * (tall[1] - tall[0]))
    blank = common(upright, under_top(v, x, y, raised=top, low=tall[0] - BEYOND))
    under = under_top(v, x, y, raised=on_top, low=tall[0] - BEYOND)
    return _whole(cut(blank, [under]).Solids)


def _whole(pieces: list[Any]) -> Any:
    if len(pieces) != 1:
        raise CannotBuild(
            f"plate: cut-out and openings leave {len(pieces)} pieces of it; make "
            "plate.margin or plate.reach larger."
        )
    return pieces[0]


def _extent(v: Values) -> tuple[Point, Point]:
    x = -float(v["pocket.length"]), float(v["plate.reach"])
    around = pocket_plan(v).outward(float(v["plate.clearance"]))
    half = max(around.half_width(around.end), around.half_width(x[0]))
    if not v["plate.under_overhang"]:
        half = max(half, _board_opening(v))
    half += float(v["plate.margin"])
    if v["plate.cover"] == "surround":
        return x, (-half, half)
    return x, (-half, 0.0) if v["strings.left_handed"] else (0.0, half)


def _flat(v: Values, seat: Seat, outline: Segments, x: Point, y: Point, z: float) -> Any:
    """The plate's plan at z [mm]: its rectangle as far as the body reaches, less its openings.

    Of several pieces over the body the largest counts.
    """
    over = common(face(rounded_rectangle(x, y, corner=0.0), z), face(outline, z))
    if not over.Faces:
        raise CannotBuild("plate: no part of it lies over the body; check outline and plate.reach.")
    largest = max(over.Faces, key=lambda f: f.Area)
    return cut(largest, [face(opening, z) for opening in _openings(v, seat, x)])


def _openings(v: Values, seat: Seat, x: Point) -> list[Segments]:
    around = pocket_plan(v).outward(float(v["plate.clearance"]))
    openings = [around.segments(far_end(v, around, x[0]))]
    if not v["plate.under_overhang"]:
        half = _board_opening(v)
        clear = x[0] - BEYOND, overhang_end(v, seat)
        openings.append(rounded_rectangle(clear, (-half, half), corner=0.0))
    return openings + [
        rounded_rectangle(*bounds(v, role, AROUND), corner=0.0) for role in fitted(v)
    ]


def _board_opening(v: Values) -> float:
    return float(v["neck.width_end"] / 2 + v["plate.clearance"])


def overhang_end(v: Values, seat: Seat) -> float:
    """X [mm] to which the cut-out clears the overhang's end, from its top to its binding's foot."""
    foot = float(v["neck.underside"] if v["neck.overhang"] > 0 else v["neck.glue_line"])
    if v["neck.overhang"] > 0 and v["neck.binding_width"] > 0:
        foot -= float(v["neck.binding"])
    ends = (seat.to_body(x=v["neck.overhang"], z=z)[0] for z in (v["neck.height"], foot))
    return float(max(ends)) + float(v["plate.clearance"])
