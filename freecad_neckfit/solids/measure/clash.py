"""Interference of two parts: how deep, in which direction it frees, where, and how much.

In every column along Z that both parts share, one part would have to be lifted (or lowered) by the
height that they overlap, or moved in the plan by the distance to the nearer part's edge at that
level. Columns are taken together by the pair of faces that overlap in them (a face of the first
part that looks down, one of the second that looks up): their largest lift, largest drop and
largest shift each free the whole pair, and the smallest of the three is its depth. The depth of the
parts is that of their worst pair of faces. Parts that touch have depth 0; no volume, which the
kernel gets wrong for thin overlaps, is asked to decide.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import Any, Protocol

import numpy as np
from numpy.typing import NDArray

from ...job.arrays import FloatArray
from ...job.errors import KernelFailure
from .columns import next_above, next_below
from .facets import Facets
from .measured import Place
from .nearest_section import Bundles
from .overlay import Overlay, overlay

BAND = 0.01
"""Parts that overlap no deeper than this [mm] touch."""
SURE = 1e-7
"""Overlap along Z below this [mm] is rounding."""
SAME = 1e-6
"""Corners closer than this [mm] are one."""
WITHIN = 1e-5
"""Share of the way from a common part's corner to its middle at which columns are looked up."""
LEVELS = (1e-3, 0.5, 1 - 1e-3)
"""Where in the height of the overlap its edge in the plan is looked for."""
BATCH = 128


@dataclass(frozen=True)
class Clash:
    """``depth`` [mm], the move that frees ("lift", "drop" or "shift"), the deepest point."""

    depth: float
    move: str
    place: Place | None
    low: FloatArray | None = None
    high: FloatArray | None = None


NONE = Clash(0.0, "", None)


@dataclass(frozen=True)
class Columns:
    """Overlapping columns: plan point, both parts' ends, and the pair of faces each belongs to."""

    plan: FloatArray
    lift: FloatArray
    drop: FloatArray
    bottom: FloatArray
    top: FloatArray
    pair: NDArray[np.int64]
    rank: FloatArray

    @property
    def by_height(self) -> float:
        """Height [mm] by which one part would have to be lifted or lowered to be free."""
        return float(min(self.lift.max(), self.drop.max()))

    def where(self, mask: NDArray[Any]) -> Columns:
        """The columns where ``mask`` is true, or at these indices."""
        return Columns(self.plan[mask], self.lift[mask], self.drop[mask], self.bottom[mask],
                       self.top[mask], self.pair[mask], self.rank[mask])  # fmt: skip


class Part(Protocol):
    """Triangles of a closed part where another comes near: those that look up or down, or all."""

    def up(self) -> Facets: ...  # noqa: D102
    def down(self) -> Facets: ...  # noqa: D102
    def all(self) -> Facets: ...  # noqa: D102


def clash(one: Part, other: Part) -> Clash:
    """Interference of two closed parts. Triangles that are not needed are not asked for."""
    # The neck's curved underside costs most: it is not asked for where nothing looks up to it.
    up = other.up()
    down = one.down() if len(up) else up
    if not len(down):
        return NONE
    found = overlay(down, up)
    found = found.only((found.gap < -SURE).any(axis=1))
    if not len(found.upper):
        return NONE
    columns = _columns(found, one, other)
    worst = NONE
    sides: tuple[Bundles, Bundles] | None = None
    groups = [columns.where(columns.pair == pair) for pair in np.unique(columns.pair)]
    for group in sorted(groups, key=lambda g: -g.by_height):
        if group.by_height > worst.depth:
            sides = sides or (Bundles(one.all()), Bundles(other.all()))
            worst = max(worst, _depth(group, *sides, enough=worst.depth), key=lambda c: c.depth)
    if worst is NONE:
        return NONE
    shared = found.plan[found.valid]
    low = np.append(shared.min(axis=0), columns.bottom.min())
    high = np.append(shared.max(axis=0), columns.top.max())
    return Clash(worst.depth, worst.move, worst.place, low, high)


def _columns(found: Overlay, one: Part, other: Part) -> Columns:
    share = found.valid / np.maximum(found.valid.sum(axis=1, keepdims=True), 1)
    ends = [
        np.concatenate([h, np.where(found.valid, h * share, 0.0).sum(axis=1)[:, None]], axis=1)
        for h in (found.high, found.low)
    ]
    plan = np.concatenate([found.plan, found.centre[:, None]], axis=1)
    valid = np.concatenate([found.valid, np.ones((len(plan), 1), dtype=bool)], axis=1)
    pair = one.down().face[found.upper] * 100_000 + other.up().face[found.lower]
    rank = np.zeros(valid.shape)
    rank[:, -1] = 1.0 + found.area
    pairs = np.broadcast_to(pair[:, None], valid.shape)[valid]
    inner = (plan + (found.centre[:, None] - plan) * WITHIN)[valid]
    plan, a0, b1, rank = plan[valid], ends[0][valid], ends[1][valid], rank[valid]
    one_each = _without_repeats(pairs, plan, a0 - b1, rank)
    pairs, inner, plan = pairs[one_each], inner[one_each], plan[one_each]
    a0, b1, rank = a0[one_each], b1[one_each], rank[one_each]
    a1, b0 = next_above(one.up(), inner, a0), next_below(other.down(), inner, b1)
    bottom, top = np.maximum(a0, b0), np.minimum(a1, b1)
    real = (top - bottom > SURE) & np.isfinite(a1) & np.isfinite(b0)
    return Columns(plan, b1 - a0, a1 - b0, bottom, top, pairs, rank).where(real)


def _without_repeats(
    pairs: NDArray[np.int64], plan: FloatArray, gap: FloatArray, rank: FloatArray
) -> NDArray[np.int64]:
    """Indices that leave out corners shared by neighbouring triangles, and those far from contact.

    Of a corner that several common parts share, the one within the largest is kept.
    """
    by_rank = np.argsort(-rank, kind="stable")
    by_rank = by_rank[gap[by_rank] < 0]
    keys = np.column_stack([pairs, np.round(plan / SAME), np.round(gap / SAME)])[by_rank]
    _, first = np.unique(keys, axis=0, return_index=True)
    return np.asarray(by_rank[np.sort(first)])


def _depth(columns: Columns, one: Bundles, other: Bundles, *, enough: float) -> Clash:
    """A depth that is not above ``enough`` may be read too small or too large below it."""
    lift, drop = float(columns.lift.max()), float(columns.drop.max())
    by_height = columns.by_height
    shift, place = 0.0, (0.0, 0.0, 0.0)
    columns = columns.where(np.argsort(-columns.rank, kind="stable"))
    for start in range(0, len(columns.pair), BATCH):
        here = columns.where(np.arange(start, min(start + BATCH, len(columns.pair))))
        far, at = _widest(here, one, other, enough=max(shift, enough))
        if far > shift:
            shift, place = far, at
        if shift >= by_height:
            break
    if shift < by_height:
        return Clash(shift, "shift", place)
    deepest = int((columns.lift if lift <= drop else columns.drop).argmax())
    x, y = (float(a) for a in columns.plan[deepest])
    level = columns.bottom if lift <= drop else columns.top
    return Clash(by_height, "lift" if lift <= drop else "drop", (x, y, float(level[deepest])))


def _widest(
    columns: Columns, one: Bundles, other: Bundles, *, enough: float
) -> tuple[float, Place]:
    """Largest distance [mm] in the plan from a column to an edge of either part, and where."""
    levels = [columns.bottom + (columns.top - columns.bottom) * s for s in LEVELS]
    plan = np.concatenate([columns.plan] * len(LEVELS))
    points = np.column_stack([plan, np.concatenate(levels)])
    far = np.maximum(*(part.distance(points, enough=enough) for part in (one, other)))
    index = int(far.argmax())
    x, y, z = (float(a) for a in points[index])
    return float(far[index]), (x, y, z)


def volume(one: Any, other: Any, found: Clash) -> float:
    """Volume [mm3] that two shapes share about a clash, by the kernel, on cropped copies.

    Only meant for clashes deeper than ``BAND``. Raises KernelFailure where the kernel finds none
    there.
    """
    from FreeCAD import Vector
    from Part import makeBox

    if found.low is None or found.high is None:
        raise ValueError("there is no clash to take the volume of")
    low, size = found.low - 1.0, found.high - found.low + 2.0
    window = makeBox(*(float(s) for s in size), Vector(*(float(a) for a in low)))
    cropped = other.copy().common(window)
    shared = cropped.common(one.copy())
    total = sum(abs(float(s.Volume)) for s in shared.Solids)
    if not shared.Solids or total <= 0:
        raise KernelFailure(
            f"the parts overlap by {found.depth:.3f} mm and the kernel finds no common volume"
        )
    return total
