"""Room in height between the fretboard and what lies under it."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np

from ...job.arrays import FloatArray
from .body_faces import normals_of
from .columns import highest, next_above
from .context import Context
from .facets import Facets, joined
from .lids import over_cavities, over_openings
from .measured import Measured, Place, least
from .overlay import Overlay, nearest
from .sides import lean, wall_on_centreline
from .surfaces import height_on

SLIVER = 1e-6
"""Parts whose share of the plan is thinner than this [mm] only meet at an edge."""
NEAR = 0.01
"""Triangles may lie this far [mm] from the curved face they stand for, and more."""
LEVEL = 0.5
"""Z that all normals exceed of a face that is part of a top."""
MOST = 40
"""So many of the nearest common parts are looked up on the surface."""
PAST = 1e-4
"""What ends within this [mm] of the end wall does not go on past it."""
GLUED = 3e-3
"""As much for the heel's end: a round one's apex is read off triangles."""
UP = 1e-3
"""Z of a support's normal: the triangles of a hole's upright wall may lean by a tenth of it."""
BINDINGS = ("binding_treble", "binding_bass")


def overhang_gap(context: Context) -> Measured:
    """Least room [mm] along Z from finished top and plate to the overhang where X >= 0.

    Over a cavity the top counts as unbroken, and the plate over its openings for pickups.
    """
    board = _past_heel(context, _down(context, ("fretboard",)))
    board = board.clipped(axis=0, at=0.0, above=True)
    if not len(board):
        return Measured.absent("the fretboard does not reach past the pocket's end wall")
    return _unbroken(context, board) or Measured.absent("nothing lies under the overhang")


def corner_gap(context: Context) -> Measured:
    """Least room [mm] along Z from finished top and plate to the fretboard where X < 0."""
    board = _down(context, ("fretboard",)).clipped(axis=0, at=0.0, above=False)
    below = [
        (name, _beside_pocket(context, facets) if name == "top" else facets, finish)
        for name, facets, finish in supports(context)
    ]
    found = _least(context, board, below)
    return found or Measured.absent("the fretboard stands over neither top nor plate there")


def binding_gap(context: Context) -> Measured:
    """Least room [mm] along Z from finished top and plate to the binding, at any X.

    Cavities and openings past the end wall count as unbroken, as under the overhang.
    """
    strips = [name for name in BINDINGS if context.has(name)]
    if not strips:
        return Measured.absent("the fretboard has no binding")
    found = _unbroken(context, _down(context, tuple(strips)))
    return found or Measured.absent("the binding stands over neither top nor plate")


def supports(context: Context) -> list[tuple[str, Facets, float]]:
    """What may lie under the fretboard: name, upward triangles, and what the finish adds [mm]."""
    return [
        ("top", context.top.facing(axis=2, sign=1, least=UP), float(context.values["finish.top"])),
        ("plate", context.plate_top, 0.0),
    ]


def _beside_pocket(context: Context, top: Facets) -> Facets:
    """The top without what lies past the end wall.

    A leaning wall's edge in a bent top strays from X = 0: what it leaves before that is past it.
    """
    walls = wall_on_centreline(context)
    rate = lean(walls) if len(walls) else 0.0
    return top.cut(rate * top.points[:, :, 2] - PAST - top.points[:, :, 0]) if rate else top


def _down(context: Context, names: tuple[str, ...]) -> Facets:
    """Downward triangles; a fretboard's end that leans over the top is none of its bottoms."""
    found = [context.near(n, context.neck_bounds, sign=-1) for n in names]
    return joined(found).facing(axis=2, sign=-1, least=0.5)


def _past_heel(context: Context, board: Facets) -> Facets:
    """What of the fretboard goes on past the heel's end: what is glued to it hangs over nothing.

    Where the neck leans, or the end wall does, the glued part may end past X = 0. It may be a
    face of its own, or one with the overhang where both are level.
    """
    ahead = context.frame.to_neck(board.points)[:, :, 0].max(axis=1) > GLUED
    board = board.where(ahead)
    return board.cut(context.frame.to_neck(board.points)[:, :, 0])


def _unbroken(context: Context, over: Facets) -> Measured | None:
    found = (_least(context, over), over_cavities(context, over), over_openings(context, over))
    return least(found)


def _least(
    context: Context, over: Facets, below: list[tuple[str, Facets, float]] | None = None
) -> Measured | None:
    best: Measured | None = None
    for name, under, finish in supports(context) if below is None else below:
        if not len(over) or not len(under):
            continue
        # Edges that only meet share no room.
        laid = nearest(over, under, within=NEAR, thicker=SLIVER)
        found = _exact(context, name, laid, under)
        if found is None:
            continue
        room, place = found[0] - finish, found[1]
        if best is None or room < best.value:
            best = Measured(room, place, detail={"over": name})
    return best


def _exact(context: Context, name: str, laid: Overlay, under: Facets) -> tuple[float, Place] | None:
    """The least distance, with a curved face below looked up on its surface where it is nearest.

    Triangles of a hollow-free top lie a little too low; over the few that come near the least
    the surface itself is asked, at the corners of each common part and on the way to its middle.
    """
    best = laid.farthest_least()
    part = "body" if name == "top" else name
    if best is None or not context.has(part):
        return best
    near = laid.only(laid.gap.min(axis=1) < best[0] + NEAR)
    near = near.only(np.isin(under.face[near.lower], _bent_tops(context, part, under)))
    if not len(near.upper):
        return best
    first = np.argsort(near.gap.min(axis=1), kind="stable")[:MOST]
    for pair in first:
        spots, heights_over = _spots(near, int(pair))
        face = context.faces(part)[int(under.face[near.lower[pair]])]
        room = heights_over - height_on(face, spots)
        k = int(room.argmin())
        if room[k] < best[0]:
            best = float(room[k]), (float(spots[k, 0]), float(spots[k, 1]), float(heights_over[k]))
    return best


def _bent_tops(context: Context, part: str, under: Facets) -> list[int]:
    """Curved faces that look up everywhere; a rounded edge's triangles are near enough to it."""
    flat, faces = context.planes(part), context.faces(part)
    curved = [int(f) for f in np.unique(under.face) if np.isnan(flat[f, 2])]
    return [f for f in curved if normals_of(faces[f])[:, 2].min() > LEVEL]


def _spots(laid: Overlay, pair: int) -> tuple[FloatArray, FloatArray]:
    """Corners and middle of one common part, points halfway; heights on the upper part."""
    real = laid.valid[pair]
    corners = np.column_stack([laid.plan[pair][real], laid.high[pair][real]])
    middle = corners.mean(axis=0)
    half = (corners + middle) / 2
    points = np.concatenate([corners, half, middle[None]])
    return points[:, :2], points[:, 2]


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
    strips = tuple(n for n in BINDINGS if context.has(n))
    board = joined([_past_heel(context, _down(context, ("fretboard",))), _down(context, strips)])
    board = board.clipped(axis=0, at=0.0, above=True)
    if not len(board):
        return None
    low, high = board.points.min(axis=(0, 1)), board.points.max(axis=(0, 1))
    x, y = (np.arange(low[k] + step / 2, high[k], step) for k in (0, 1))
    plan = np.stack(np.meshgrid(x, y, indexing="ij"), axis=-1).reshape(-1, 2)
    over = next_above(board, plan, np.full(len(plan), -np.inf))
    under = np.full(len(plan), -np.inf)
    for _, facets, finish in supports(context):
        under = np.maximum(under, highest(facets, plan) + finish)
    gap = np.where(np.isfinite(over) & np.isfinite(under), over - under, np.nan)
    return GapMap(x, y, gap.reshape(len(x), len(y)))
