"""Where the fretboard stands over the top beside the pocket, or over the plate there."""

from __future__ import annotations

from typing import TYPE_CHECKING, NamedTuple

import numpy as np

from ..job.arrays import Array, pick, within
from ..job.top import x_of_slope
from .lesser import lesser
from .mount import bare_top
from .outline import Outline, pocket_outline

if TYPE_CHECKING:
    from .case import Case

ARC_STEPS = 8
"""Parts that a corner over a curved top is looked at in: within 0.002 mm of its lowest room."""


class Spot(NamedTuple):
    """A height [mm] over what lies below, and the body-frame X, Y, Z of the fretboard there.

    The place is None for many jobs, see ``lesser``.
    """

    room: Array
    x: Array
    y: Array
    z: Array


class Edge(NamedTuple):
    """The fretboard's edge over the body: half width ``half`` + ``taper``·X [mm]."""

    half: Array
    taper: Array

    def at(self, x: Array) -> Array:
        """Half width [mm] at body-frame X."""
        return self.half + self.taper * x


class Level(NamedTuple):
    """A stretch of the fretboard's downward faces.

    ``z``: its height, ``first``, ``last``: its ends [mm, neck frame]. ``edge``: the fretboard's
    edge there, ``low``, ``high``: body-frame X of its ends, ``foot``: Z of its line at X = 0.
    """

    z: Array
    first: Array
    last: Array
    edge: Edge
    low: Array
    high: Array
    foot: Array


class Stretch(NamedTuple):
    """Body-frame X from ``first`` to ``last`` where something is, if ``first`` < ``last``."""

    first: Array
    last: Array


def top_outline(case: Case) -> Outline:
    """The pocket's edge in the bare top."""
    return pocket_outline(case)


def cutout_outline(case: Case) -> Outline:
    """The cover plate's cut-out where it follows the pocket."""
    return pocket_outline(case, offset=case["plate.clearance"])


def board_edge(case: Case, *, z: Array) -> Edge:
    """The fretboard's edge at neck height z as a line over the body."""
    seated, taper = case.seated, board_taper(case)
    at_zero = (z * seated.sin - seated.x0) / seated.cos
    half = case["neck.width_end"] / 2 + taper * (at_zero - case["neck.overhang"])
    return Edge(half, taper / seated.cos)


def board_taper(case: Case) -> Array:
    """Growth of the fretboard's half width per mm toward the bridge."""
    length = case["neck.nut_to_heel"] + case["neck.overhang"]
    return (case["neck.width_end"] - case["neck.width_nut"]) / (2 * length)


def end_foot(case: Case) -> Array:
    """Neck-frame z [mm] of the lowest point of the fretboard's end, binding included.

    Where the fretboard ends at the heel its end reaches down to the glue line.
    """
    bound = case["neck.binding_width"] > 0
    hang = np.where(bound, case["neck.binding"], 0.0) if np.any(bound) else 0.0
    under = case["neck.underside"] - hang
    return np.where(case["neck.overhang"] > 0, under, case["neck.glue_line"])


def level(case: Case, *, z: Array, first: Array, last: Array) -> Level:
    """The fretboard's downward face at neck height z, from ``first`` to ``last`` [mm]."""
    seated = case.seated
    start = seated.x0 - z * seated.sin
    low, high = start + first * seated.cos, start + last * seated.cos
    foot = seated.z0 - seated.x0 * seated.tan + z / seated.cos
    return Level(z, first, last, board_edge(case, z=z), low, high, foot)


def beside(
    case: Case, *, level: Level, outline: Outline, edge: Edge, until: Array
) -> tuple[Stretch, Stretch]:
    """X along the outline's corner or round end, and along its side, where the fretboard is wider.

    Between the mouth and ``until``, as far as ``level`` reaches.
    """
    low = np.maximum(-case["pocket.length"], level.low)
    high = np.minimum(until, level.high)
    return (
        _wider_on_arc(outline, edge, low=np.maximum(low, outline.meet), high=high),
        _wider_on_side(outline, edge, low=low, high=np.minimum(high, outline.meet)),
    )


def _wider_on_arc(outline: Outline, edge: Edge, *, low: Array, high: Array) -> Stretch:
    slope = np.sqrt(1 + np.square(edge.taper))
    past = (edge.at(outline.arc_x) - outline.arc_y) / slope
    half_chord = np.sqrt(np.maximum(np.square(outline.radius) - np.square(past), 0.0))
    cross = outline.arc_x + (half_chord - past * edge.taper) / slope
    # A fretboard narrower than the straight part of the end is wider only past that.
    cross = pick(edge.at(cross) < outline.arc_y, outline.end, cross)
    first = pick(past >= outline.radius, low, np.maximum(low, cross))
    return Stretch(first, high)


def _wider_on_side(outline: Outline, edge: Edge, *, low: Array, high: Array) -> Stretch:
    spare, rate = edge.half - outline.half, edge.taper - outline.taper
    at_low, at_high = spare + rate * low, spare + rate * high
    cross = within(-spare / np.where(rate == 0, 1.0, rate), low, np.maximum(low, high))
    first = pick(at_low > 0, low, pick(at_high > 0, cross, high))
    last = pick(at_high > 0, high, pick(at_low > 0, cross, first))
    return Stretch(first, last)


def least_over_edge(
    case: Case,
    *,
    level: Level,
    outline: Outline,
    until: Array,
    plate: Array,
    inner: Array | None = None,
    beyond: Array | None = None,
) -> Spot:
    """Least height [mm] of one level of the fretboard over what lies just outside the outline.

    Infinite where the fretboard is nowhere wider. The top falls away from the centreline, so the
    least room lies along the outline, or ``inner`` [mm] inside the fretboard's edge if that is
    farther out: then its binding is looked at, otherwise the fretboard without its binding.
    ``plate``: thickness of what lies on the top, if only farther out than ``beyond`` [mm].
    """
    edge = level.edge
    if inner is None:
        edge = Edge(edge.half - case["neck.binding_width"], edge.taper)
    stretches = beside(case, level=level, outline=outline, edge=edge, until=until)
    best: Spot | None = None
    for there, x in _looked_at(case, outline, stretches):
        y = _least_y(case, outline, edge, x, inner)
        if beyond is not None:
            y = np.maximum(y, beyond)
        best = lesser(best, over(case, level, x, y, plate, there=there))
    assert best is not None  # noqa: S101  (something is looked at)
    return best


def _looked_at(
    case: Case, outline: Outline, stretches: tuple[Stretch, Stretch]
) -> list[tuple[Array, Array]]:
    """Where to look, and whether the fretboard is wider there: over a flat top at one end."""
    arc, side = stretches
    on_arc, on_side = (stretch.first < stretch.last for stretch in stretches)
    if case["body.top"] == "flat":
        first = pick(on_side, side.first, arc.first)
        last = pick(on_arc, arc.last, side.last)
        return [(on_arc | on_side, pick(case.seat.tilt >= 0, first, last))]
    middle = outline.side(outline.meet)
    parallel = x_of_slope(case.values, slope=np.tan(case.seat.tilt), y=middle)
    seen = [(on_side, within(parallel, side.first, np.maximum(side.first, side.last)))]
    return seen + [
        (on_arc, _on_arc(outline, arc, part / ARC_STEPS)) for part in range(ARC_STEPS + 1)
    ]


def _on_arc(outline: Outline, arc: Stretch, part: float) -> Array:
    """X on the arc, ``part`` of the angle from its last to its first point."""
    radius = np.where(outline.radius > 0, outline.radius, 1.0)
    last, first = (
        np.arccos(within((x - outline.arc_x) / radius, -1.0, 1.0)) for x in (arc.last, arc.first)
    )
    x = outline.arc_x + radius * np.cos(last + (first - last) * part)
    return within(x, arc.first, np.maximum(arc.first, arc.last))


def _least_y(case: Case, outline: Outline, edge: Edge, x: Array, inner: Array | None) -> Array:
    """How far out the least room lies; over a flat top anywhere, so at the fretboard's edge."""
    if case["body.top"] == "flat":
        return edge.at(x)
    y = outline.half_width(x)
    return y if inner is None else np.maximum(y, edge.at(x) - inner)


def over(case: Case, level: Level, x: Array, y: Array, plate: Array, *, there: Array) -> Spot:
    """Height [mm] of a level over top or plate at body-frame (X, Y); infinite where not there."""
    z = level.foot + x * case.seated.tan
    room = z - bare_top(case, x=x, y=y) - (case["finish.top"] + plate)
    return Spot(pick(there, room, np.inf), x, y, z)
