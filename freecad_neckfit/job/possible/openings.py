"""Cavities, pickup cavities and a bridge's recess: within the wood, and pickups side by side."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from itertools import pairwise

import numpy as np

from ..errors import CannotBuild
from ..parameters import ROLES
from ..resolve import Values
from ..top import top_height
from .body import outline
from .pocket import back_height
from .words import mm

LEAST_FLOOR = 0.2
LEAST_SIDE = 0.5
"""Thinnest wood [mm] under an opening, and between it and the body's side."""
AROUND = 1.0
"""Room around a pickup in its cavity, and around a bridge in its recess [mm]."""


@dataclass(frozen=True)
class Opening:
    """A routed opening: what a sentence calls it, its bounds and its depth at (x, y) [mm]."""

    name: str
    x: float
    y: float
    length: float
    width: float
    depth: float
    corner: float = 0.0


def complaints(v: Values) -> Iterator[str]:
    """Say which opening breaks out of the body, or which pickups stand in each other."""
    yield from _side_by_side(v)
    openings = [*_cavities(v), *_pickups(v), *_recess(v)]
    if not openings:
        return
    try:
        found = outline(v)
    except CannotBuild:  # told by the body's own complaints
        return
    for opening in openings:
        yield from _corners(v, opening)
        yield from _depth(v, opening)
        if found is not None:
            x, y = _plan(opening)
            inside = found.depth(np.array([(a, b) for a in x for b in y]))
            if float(inside.min()) < LEAST_SIDE:
                yield (
                    f"{opening.name}: it breaks out of the body's side at X = {opening.x:.1f}, "
                    f"Y = {opening.y:.1f} mm; move it or make it smaller."
                )


def _cavities(v: Values) -> Iterator[Opening]:
    keys = ("x", "y", "length", "width", "depth", "corner_radius")
    for i in range(len(v["cavity.x"])):
        x, y, length, width, depth, corner = (float(v[f"cavity.{key}"][i]) for key in keys)
        yield Opening(f"cavity {i + 1}", x, y, length, width, depth, corner)


def fitted(v: Values) -> list[str]:
    """Roles of the pickups that are fitted."""
    return [role for role in ROLES if v[f"pickup_{role}.fitted"]]


def _pickups(v: Values) -> Iterator[Opening]:
    for role in fitted(v):
        x, length, width, depth = (
            float(v[f"pickup_{role}.{key}"]) for key in ("x", "length", "width", "cavity_depth")
        )
        if depth > 0:
            name = f"pickup_{role}.cavity_depth"
            yield Opening(name, x, 0.0, length + 2 * AROUND, width + 2 * AROUND, depth)


def _recess(v: Values) -> Iterator[Opening]:
    depth = float(v["bridge.recess"]) - float(v["finish.top"])
    if v["bridge.mount"] != "recess" or depth <= 0:
        return
    middle = float(v["bridge.front"] + v["bridge.travel"] / 2 + v["bridge.anchor_back"] / 2)
    length, width = (float(v[f"bridge.{key}"]) + 2 * AROUND for key in ("length", "width"))
    yield Opening("bridge.recess", middle, 0.0, length, width, depth)


def _plan(opening: Opening) -> tuple[tuple[float, ...], tuple[float, ...]]:
    """Corners and middles of the sides, so that no curve of the outline slips in between."""
    shares = (-0.5, -0.25, 0.0, 0.25, 0.5)
    x = tuple(opening.x + opening.length * s for s in shares)
    return x, tuple(opening.y + opening.width * s for s in shares)


def _corners(v: Values, opening: Opening) -> Iterator[str]:
    if 2 * opening.corner > min(opening.length, opening.width):
        yield (
            f"{opening.name}: corners of {mm(v, opening.corner)} do not fit its sides; make its "
            "corner_radius smaller."
        )


def _depth(v: Values, opening: Opening) -> Iterator[str]:
    floor = float(top_height(v, x=opening.x, y=opening.y)) - opening.depth
    ends = (opening.x - opening.length / 2, opening.x + opening.length / 2)
    wood = floor - max(back_height(v, x) for x in ends)
    if wood < LEAST_FLOOR:
        yield (
            f"{opening.name}: a depth of {mm(v, opening.depth)} goes through the body; make it "
            "shallower or the body thicker."
        )


def _side_by_side(v: Values) -> Iterator[str]:
    places = sorted(
        (float(v[f"pickup_{r}.x"]), float(v[f"pickup_{r}.length"]), r) for r in fitted(v)
    )
    for (x, length, role), (after, long, other) in pairwise(places):
        if after - x < (length + long) / 2:
            yield (
                f"pickup_{other}.x: the pickups at {role} and {other}, {mm(v, after - x)} apart, "
                "stand "
                "in each other; move one."
            )
