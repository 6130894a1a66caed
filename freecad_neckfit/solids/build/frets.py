"""The fret crowns, in the neck frame.

Each crown is a gable: its crest is the exact line that a string is stopped on, and its flanks fall
straight to the board. A round crown would cost more faces and touch strings in the same line.
A fret square to the centreline is bent about one axis, and so is a section turned about that; one
that stands aslant is put together from its faces.
"""

from __future__ import annotations

import math
from typing import Any

import Part
from FreeCAD import Vector

from ...job.resolve import Values
from .fretboard import board_half_width, board_radius, board_top
from .shapes import Solid, closed, polygon

OCTAVE = 12


def fret_positions(v: Values, scale: float) -> list[float]:
    """U [mm] from the nut's front face of frets 0 … N on a string of ``scale`` [mm].

    All strings cross the square fret p at the same u, that of the mean scale.
    """
    middle = (v["neck.scale"] + v["neck.scale_bass"]) / 2
    kept = 2.0 ** (-v["neck.square_fret"] / OCTAVE)
    count = int(v["neck.frets"])
    return [
        float(middle * (1 - kept) + scale * (kept - 2.0 ** (-n / OCTAVE))) for n in range(count + 1)
    ]


def crown_shift(v: Values) -> list[float]:
    """How far [mm] crowns 0 … N stand above those of a straight neck: relief less fall-away."""
    u = fret_positions(v, (v["neck.scale"] + v["neck.scale_bass"]) / 2)
    joint = v["neck.nut_to_heel"] - v["pocket.length"]
    chord = u[-1] - u[1]
    bent = min(joint - u[1], chord)
    k = 0.0 if bent <= 0 else v["neck.relief"] / (bent * (1 - bent / (2 * chord))) ** 2
    bow = [k * max(joint - a, 0.0) ** 2 for a in u]
    if len(u) - 1 <= OCTAVE:
        return bow
    slope = v["neck.fall_away"] / (u[-1] - u[OCTAVE])
    return [b - max(a - u[OCTAVE], 0.0) * slope for a, b in zip(u, bow, strict=True)]


def frets(v: Values) -> Any:
    """All fret crowns as one compound; with a zero fret, that one comes first.

    Where a fanned fret runs past the fretboard's end it ends with the board; frets that do not
    reach the board at all are left out.
    """
    treble, bass = (fret_positions(v, v[f"neck.{key}"]) for key in ("scale", "scale_bass"))
    first = 0 if v["strings.zero_fret"] else 1
    shift = crown_shift(v)
    crowns = [_crown(v, treble[n], bass[n], shift[n]) for n in range(first, len(shift))]
    return Part.Compound([crown for crown in crowns if crown is not None])


def string_span(v: Values, u: float, *, scale: float) -> float:
    """Half the spread [mm] of the outer strings at ``u`` on an outer string of ``scale`` [mm]."""
    side = "treble" if scale == v["neck.scale"] else "bass"
    index = 0 if side == "treble" else -1
    nut = fret_positions(v, scale)[0]
    saddle = nut + scale + float(v["strings.compensation"][index])
    share = (u - nut) / (saddle - nut)
    nut_spread, end_spread = v["strings.spread_nut"], v["strings.spread_bridge"]
    return float(nut_spread + (end_spread - nut_spread) * share) / 2


def _crown(v: Values, u_treble: float, u_bass: float, shift: float) -> Solid | None:
    heel = v["neck.nut_to_heel"]
    sign = -1.0 if v["strings.left_handed"] else 1.0
    y_treble = sign * string_span(v, u_treble, scale=v["neck.scale"])
    y_bass = -sign * string_span(v, u_bass, scale=v["neck.scale_bass"])
    lean = (u_treble - u_bass) / (y_treble - y_bass)
    x_centre = u_bass - heel - lean * y_bass
    ends = _ends(v, x_centre, lean)
    if ends is None:
        return None
    if lean == 0:
        return _turned(v, x_centre, ends, shift)
    return _gable(_crest(v, x_centre, lean, ends, shift), lean, v)


def _ends(v: Values, x_centre: float, lean: float) -> tuple[float, float] | None:
    """Y [mm] where the fret's line x = x_centre + lean·y leaves the board, lower one first."""
    start, end = -v["neck.nut_to_heel"], v["neck.overhang"]
    grow = board_half_width(v, 1.0) - board_half_width(v, 0.0)
    middle = board_half_width(v, x_centre)
    low, high = -middle / (1 + grow * lean), middle / (1 - grow * lean)
    if lean:
        over = sorted(((start - 1e-9 - x_centre) / lean, (end - x_centre) / lean))
        low, high = max(low, over[0]), min(high, over[1])
    elif x_centre > end:
        return None
    return (low, high) if high - low > 1.0 else None


def _turned(v: Values, x: float, ends: tuple[float, float], shift: float) -> Solid:
    """The crown of a fret square to the centreline: its crest is an arc about an axis along it."""
    radius, height = board_radius(v, x), float(v["neck.fret_height"])
    axis = Vector(x, 0, v["neck.height"] - radius + height + shift)
    first, last = (math.asin(y / radius) for y in ends)
    outward, aside = Vector(0, math.sin(first), math.cos(first)), Vector(v["neck.fret_width"] / 2)
    low = axis + outward * (radius - height)
    section = polygon([axis + outward * radius, low - aside, low + aside])
    return section.revolve(axis, Vector(-1, 0, 0), math.degrees(last - first))


def _crest(v: Values, x_centre: float, lean: float, ends: tuple[float, float], shift: float) -> Any:
    """The crest's curve: a plane section of the board's top, raised; exact as a conic."""
    raised = v["neck.fret_height"] + shift

    def at(y: float) -> Vector:
        return Vector(x_centre + lean * y, y, board_top(v, x_centre + lean * y, y) + raised)

    first, last = at(ends[0]), at(ends[1])
    s0, s1 = (_slope(v, x_centre, lean, y) for y in ends)
    y = (last.z - first.z + s0 * first.y - s1 * last.y) / (s0 - s1)
    pole = Vector(x_centre + lean * y, y, first.z + s0 * (y - first.y))
    return _conic(first, pole, last, at)


def _slope(v: Values, x_centre: float, lean: float, y: float) -> float:
    """Rise of the board's top along a fret's line per mm of y: d/dy of -R + √(R² - y²)."""
    x = x_centre + lean * y
    radius = board_radius(v, x)
    grow = (board_radius(v, 1.0) - board_radius(v, 0.0)) * lean
    root = math.sqrt(radius**2 - y**2)
    return -grow + (radius * grow - y) / root


def _conic(first: Vector, pole: Vector, last: Vector, at: Any) -> Any:
    """The conic from ``first`` to ``last`` with tangents through ``pole`` that passes ``at``.

    Its shoulder lies on the line from the chord's middle to the pole; the share of that line which
    it leaves below is found by bisection, for the curve is given as height over y.
    """
    middle = (first + last) * 0.5
    low, high = 0.0, 1.0
    for _ in range(60):
        share = (low + high) / 2
        point = middle + (pole - middle) * share
        low, high = (share, high) if at(point.y).z > point.z else (low, share)
    share = (low + high) / 2
    curve = Part.BSplineCurve()
    curve.buildFromPolesMultsKnots(
        [first, pole, last], [3, 3], [0.0, 1.0], False, 2, [1.0, share / (1 - share), 1.0]
    )
    return curve.toShape()


def _gable(crest: Any, lean: float, v: Values) -> Solid:
    """The crest's edge with flanks to both sides, closed below and at its ends."""
    half, height = v["neck.fret_width"] / 2, v["neck.fret_height"]
    across = Vector(1, -lean, 0).normalize() * half
    down = Vector(0, 0, -height)
    left, right = crest.extrude(down - across), crest.extrude(down + across)
    low = crest.translated(down - across)
    base = low.extrude(across * 2)
    ends = []
    for p in (crest.firstVertex().Point, crest.lastVertex().Point):
        corners = [p, p + down - across, p + down + across]
        ends.append(polygon(corners))
    return closed([left, right, base, *ends])
