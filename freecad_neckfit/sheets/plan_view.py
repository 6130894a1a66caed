"""The plan of the pocket, dimensioned from its datums: end wall and centreline."""

from __future__ import annotations

import math
from collections.abc import Sequence

from ..solids.build.outline import segments_of
from ..solids.build.plan import Segment
from .dimension import Dimension, Pointed, Straight
from .ink import Pen, Round, Spot, Stroke
from .joint import Joint
from .view import View, Window

ROW = 7.5
"""Distance between dimension lines [mm of paper]."""
SHORT = 12.0
"""An upright dimension line shorter than this [mm of paper] may not carry its figures."""


def plan_view(joint: Joint, *, scale: float, windows: tuple[Window, ...]) -> View:
    """The pocket from above: outline, screws, saddle line, and their dimensions."""
    view = View("plan", "Plan of the pocket", scale, windows)
    near = windows[0]
    _body(joint, view)
    _pocket(joint, view)
    _screws(joint, view)
    view.strokes.append(Stroke(((near.x[0], 0.0), (1e4, 0.0)), Pen.CENTRE))
    _saddles(joint, view)
    _widths(joint, view)
    _lengths(joint, view)
    return view


def _body(joint: Joint, view: View) -> None:
    for segment in segments_of(joint.outline):
        view.strokes.append(Stroke(tuple(points_of([segment])), Pen.OUTLINE))


def points_of(segments: Sequence[Segment]) -> list[Spot]:
    """Points along a chain of lines and arcs, arcs in steps of about 4 degrees."""
    spots: list[Spot] = []
    for start, through, end in segments:
        spots.append(start)
        if through is not None:
            spots += _arc(start, through, end)
        spots.append(end)
    return spots


def _arc(start: Spot, through: Spot, end: Spot) -> list[Spot]:
    centre = centre_of(start, through, end)
    radius = math.dist(centre, start)
    a, m, b = (math.atan2(p[1] - centre[1], p[0] - centre[0]) for p in (start, through, end))
    left = (m - a) % (2 * math.pi) < (b - a) % (2 * math.pi)
    sweep = (b - a) % (2 * math.pi) if left else -((a - b) % (2 * math.pi))
    count = max(2, math.ceil(abs(sweep) / math.radians(4)))
    return [
        (
            centre[0] + radius * math.cos(a + sweep * i / count),
            centre[1] + radius * math.sin(a + sweep * i / count),
        )
        for i in range(1, count)
    ]


def centre_of(start: Spot, through: Spot, end: Spot) -> Spot:
    """Centre of the circle through three points."""
    (ax, ay), (bx, by), (cx, cy) = start, through, end
    d = 2 * (ax * (by - cy) + bx * (cy - ay) + cx * (ay - by))
    a, b, c = ax * ax + ay * ay, bx * bx + by * by, cx * cx + cy * cy
    return (
        (a * (by - cy) + b * (cy - ay) + c * (ay - by)) / d,
        (a * (cx - bx) + b * (ax - cx) + c * (bx - ax)) / d,
    )


def mouth_segments(joint: Joint) -> list[Segment]:
    """The pocket's plan, closed at the body's edge: from wall to mouth."""
    return joint.pocket.segments(-joint.length("pocket.length"))


def _pocket(joint: Joint, view: View) -> None:
    # The last piece closes the mouth: nothing is there.
    segments = mouth_segments(joint)[:-1]
    view.strokes.append(Stroke(tuple(points_of(segments)), Pen.OUTLINE))


def _screws(joint: Joint, view: View) -> None:
    radius = joint.length("screws.body_hole") / 2
    places = [(float(x), float(y)) for x, y in zip(joint.screws.x, joint.screws.y, strict=True)]
    for x, y in places:
        view.rounds.append(Round((x, y), radius))
        reach = radius + 2.5 / view.scale
        for a, b in (((x - reach, y), (x + reach, y)), ((x, y - reach), (x, y + reach))):
            view.strokes.append(Stroke((a, b), Pen.CENTRE))
    if not places:
        return
    left, low = view.windows[0].at
    front = view.windows[0].x[0]  # where the centreline comes out of the plan
    for lane, x in enumerate(sorted({x for x, _ in places}, reverse=True), start=1):
        lowest = min(y for a, y in places if a == x)
        view.placed.append(
            Straight(
                what=Dimension(key=f"screw_x:{x:.3f}", value=-x),
                a=(x, lowest), b=(0.0, -joint.pocket.half_width(0.0)), lane=low - lane * ROW,
            )
        )  # fmt: skip
    for side in (1, -1):
        for lane, y in enumerate(sorted({y for _, y in places if y * side > 0}, key=abs)):
            x = min(a for a, b in places if b == y)
            view.placed.append(
                Straight(
                    what=Dimension(key=f"screw_y:{y:.3f}", value=abs(y)),
                    a=(front, 0.0), b=(x, y), lane=left - (lane + 1) * ROW,
                    upright=True,
                )
            )  # fmt: skip
    view.placed.append(_hole(view, places, radius))


def _hole(view: View, places: Sequence[Spot], radius: float) -> Pointed:
    """Count and diameter of the holes, inside the pocket; beside it where that is drawn small."""
    what = Dimension(
        key="screws.body_hole", value=2 * radius, prefix="Ø", count=len(places), note="through"
    )
    turn = radius * math.sqrt(0.5)
    x, y = max(places)
    if view.scale >= 1:
        spot, level = view.spot(x, y), view.spot(0, 0)[1]
        at, tip = (spot[0] - 9, (spot[1] + level) / 2 - 1), (x - turn, y - math.copysign(turn, y))
        return Pointed(what=what, tip=tip, at=at, left=True)
    x, y = max(places, key=lambda p: (p[0], -p[1]))
    edge = view.spot(view.windows[0].x[1], view.windows[0].y[0])
    return Pointed(what=what, tip=(x + turn, y - turn), at=(edge[0] + ROW, edge[1] + 3))


def _top(view: View) -> float:
    window = view.windows[0]
    return window.at[1] + (window.y[1] - window.y[0]) * view.scale


def _saddles(joint: Joint, view: View) -> None:
    points = [(float(x), float(y)) for x, y, _ in joint.case.saddles.places]
    view.strokes.append(Stroke((points[0], points[-1]), Pen.DIMENSION))
    for i, name in ((0, "treble"), (-1, "bass")):
        x, y = points[i]
        below = view.windows[0].at[1] - (_x_lanes(joint) + 1) * ROW
        lane = _top(view) + 2 * ROW if y > 0 else below
        note = f"saddle, {name} string"
        wall = math.copysign(joint.pocket.half_width(0.0), y)
        view.placed.append(
            Straight(
                what=Dimension(key=f"saddle_{name}", value=x, stated=False, note=note),
                a=(0.0, wall), b=(x, y), lane=lane,
            )
        )  # fmt: skip


def _x_lanes(joint: Joint) -> int:
    return len({float(x) for x in joint.screws.x})


def _widths(joint: Joint, view: View) -> None:
    window = view.windows[0]
    left, right = window.at[0], view.spot(window.x[1], 0)[0]
    for key, x, lane in (
        (
            "pocket.width_mouth",
            -joint.length("pocket.length"),
            left - y_columns(joint, view.scale) * ROW,
        ),
        ("pocket.width_end", 0.0, right + ROW),
    ):
        half = joint.length(key) / 2
        what = Dimension(key=key, value=joint.length(key), limits=joint.limits(key))
        view.placed.append(Straight(what=what, a=(x, -half), b=(x, half), lane=lane, upright=True))


def y_columns(joint: Joint, scale: float) -> int:
    """Columns of dimensions left of the plan; more where figures stand beside a short line."""
    ys = {float(y) for y in joint.screws.y if y}
    lanes = max(len([y for y in ys if y * side > 0]) for side in (1, -1))
    is_short = any(abs(y) * scale < SHORT for y in ys)
    return lanes + 1 + (2 if is_short else 0)


def _lengths(joint: Joint, view: View) -> None:
    half = joint.pocket.half_width(0.0)
    what = Dimension(
        key="pocket.length", value=joint.length("pocket.length"),
        limits=joint.limits("pocket.length"),
    )  # fmt: skip
    mouth = -what.value, joint.pocket.half_width(-what.value)
    view.placed.append(Straight(what=what, a=mouth, b=(0.0, half), lane=_top(view) + ROW))
    radius, key, count, tip = _corner(joint)
    if radius <= 0:
        return
    what = Dimension(key=key, value=radius, prefix="R", count=count, limits=joint.limits(key))
    x, y = view.spot(0.0, half)
    view.placed.append(Pointed(what=what, tip=tip, at=(x + 5, y + 5)))


def _corner(joint: Joint) -> tuple[float, str, int, Spot]:
    plan = joint.pocket
    if plan.radius is not None:
        turn = math.radians(30)
        return (
            plan.radius, "pocket.end_radius", 1,
            (plan.radius * (math.cos(turn * 0.5) - 1), plan.radius * math.sin(turn * 0.5)),
        )  # fmt: skip
    tip = plan.corner_arc()[1] if plan.corner > 0 else (0.0, 0.0)
    return plan.corner, "pocket.corner_radius", 2, tip
