"""Room in height between the fretboard and what lies under it."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np

from ...job.arrays import FloatArray
from .columns import heights
from .context import Context
from .facets import Facets, joined
from .measured import Measured
from .overlay import overlay

BINDINGS = ("binding_treble", "binding_bass")


def overhang_gap(context: Context) -> Measured:
    """Least room [mm] along Z from finished top and plate to the fretboard where X >= 0."""
    board = _down(context, ("fretboard",)).clipped(axis=0, at=0.0, above=True)
    if not len(board):
        return Measured.absent("the fretboard does not reach past the pocket's end wall")
    return _least(context, board) or Measured.absent("nothing lies under the overhang")


def corner_gap(context: Context) -> Measured:
    """Least room [mm] along Z from finished top and plate to the fretboard where X < 0."""
    board = _down(context, ("fretboard",)).clipped(axis=0, at=0.0, above=False)
    found = _least(context, board)
    return found or Measured.absent("the fretboard stands over neither top nor plate there")


def binding_gap(context: Context) -> Measured:
    """Least room [mm] along Z from finished top and plate to the binding, at any X."""
    strips = [name for name in BINDINGS if context.has(name)]
    if not strips:
        return Measured.absent("the fretboard has no binding")
    found = _least(context, _down(context, tuple(strips)))
    return found or Measured.absent("the binding stands over neither top nor plate")


def supports(context: Context) -> list[tuple[str, Facets, float]]:
    """What may lie under the fretboard: name, upward triangles, and what the finish adds [mm]."""
    return [
        ("top", context.top, float(context.values["finish.top"])),
        ("plate", context.plate_top, 0.0),
    ]


def _down(context: Context, names: tuple[str, ...]) -> Facets:
    found = [context.near(n, context.neck_bounds, sign=-1) for n in names]
    return joined(found)


def _least(context: Context, over: Facets) -> Measured | None:
    best: Measured | None = None
    for name, under, finish in supports(context):
        found = overlay(over, under).least() if len(over) and len(under) else None
        if found is None:
            continue
        room, place = found[0] - finish, found[1]
        if best is None or room < best.value:
            best = Measured(room, place, detail={"over": name})
    return best


@dataclass(frozen=True)
class GapMap:
    """Room under the overhang on a raster: ``x`` (n,), ``y`` (m,) [mm], ``gap`` (n, m) [mm].

    NaN where the fretboard does not stand over top or plate.
    """

    x: FloatArray
    y: FloatArray
    gap: FloatArray


def gap_map(context: Context, *, step: float = 0.5) -> GapMap | None:
    """Room [mm] under fretboard and binding for X >= 0; None without overhang."""
    names = ("fretboard", *(n for n in BINDINGS if context.has(n)))
    board = _down(context, names).clipped(axis=0, at=0.0, above=True)
    if not len(board):
        return None
    low, high = board.points.min(axis=(0, 1)), board.points.max(axis=(0, 1))
    x, y = (np.arange(low[k] + step / 2, high[k], step) for k in (0, 1))
    plan = np.stack(np.meshgrid(x, y, indexing="ij"), axis=-1).reshape(-1, 2)
    over = _raster(board, plan, lowest=True)
    under = np.full(len(plan), -np.inf)
    for _, facets, finish in supports(context):
        under = np.fmax(under, _raster(facets, plan, lowest=False) + finish)
    gap = np.where(np.isfinite(over) & np.isfinite(under), over - under, np.nan)
    return GapMap(x, y, gap.reshape(len(x), len(y)))


def _raster(facets: Facets, plan: FloatArray, *, lowest: bool) -> FloatArray:
    """Lowest or highest triangle at each point, +inf or -inf where there is none."""
    best = np.full(len(plan), np.inf if lowest else -np.inf)
    if not len(facets):
        return best
    choose = np.fmin if lowest else np.fmax
    for index in range(len(facets)):
        one = facets.where(np.arange(len(facets)) == index)
        box = one.points[0, :, :2]
        near = np.all((plan >= box.min(axis=0)) & (plan <= box.max(axis=0)), axis=1)
        if near.any():
            best[near] = choose(best[near], heights(one, plan[near])[:, 0])
    return best
