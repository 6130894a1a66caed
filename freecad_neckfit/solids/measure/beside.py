"""Room from the fretboard's end to the pickup, and under the rod's tool."""

from __future__ import annotations

from ...job.arrays import FloatArray
from .context import Context
from .facets import SAME, Facets, joined
from .lids import over_cavities, over_plate_openings
from .measured import Measured, least
from .overlay import overlay

BOARD = ("fretboard", "binding_treble", "binding_bass")


def overhang_pickup(context: Context) -> Measured:
    """Room [mm] between fretboard and neck pickup: along X or in height, whichever is larger.

    Parts that are apart in either direction are free. Along X it is counted from the furthest
    point of the fretboard's end, in height from the lowest of the overhang.
    """
    if not context.has("pickup_neck"):
        return Measured.absent("no neck pickup is fitted")
    pickup = context.facets("pickup_neck").points.reshape(-1, 3)
    front, top = float(pickup[:, 0].min()), float(pickup[:, 2].max())
    board = _board(context)
    along = context.frame.to_neck(board.points)[:, :, 0]
    is_behind = along.min(axis=1) > -SAME
    # Its bottom may go on from the glue line, and is one face with it then.
    goes_on = board.where(~is_behind).cut(along[~is_behind] - SAME)
    behind = joined([board.where(is_behind), goes_on])
    overhang = behind if len(behind) else board
    under = overhang.facing(axis=2, sign=-1, least=0.5).points.reshape(-1, 3)
    points = overhang.points.reshape(-1, 3)
    under = under if len(under) else points
    lowest, end = under[under[:, 2].argmin()], points[points[:, 0].argmax()]
    upright, level = float(lowest[2]) - top, front - float(end[0])
    if upright > level:
        return Measured(upright, _point(lowest), detail={"room": "in height"})
    return Measured(level, _point(end), detail={"room": "along X"})


def rod_access(context: Context) -> Measured:
    """Least height [mm] of the rod tool over finished top, plate and neck pickup.

    Over a cavity the top counts as unbroken, and the plate over its openings for pickups.
    """
    if not context.has("rod_tool"):
        return Measured.absent("no truss rod is adjusted at the heel")
    tool = context.facets("rod_tool").facing(axis=2, sign=-1)
    under = _under_tool(context)
    if context.has("pickup_neck"):
        under.append(("pickup", context.facets("pickup_neck").facing(axis=2, sign=1), 0.0))
    rooms = [over_cavities(context, tool), over_plate_openings(context, tool)]
    for name, facets, finish in under:
        found = overlay(tool, facets).least() if len(facets) else None
        if found:
            rooms.append(Measured(found[0] - finish, found[1], detail={"over": name}))
    return least(rooms) or Measured.absent("nothing lies under the tool's path")


def _under_tool(context: Context) -> list[tuple[str, Facets, float]]:
    """Top and plate as far as the rod's tool reaches, as in ``rooms.supports``."""
    points = context.facets("rod_tool").points.reshape(-1, 3)
    low, high = points.min(axis=0), points.max(axis=0)
    bounds = (float(low[0]), float(high[0]), float(low[1]), float(high[1]))
    top = context.near("body", bounds, sign=1, but=context.body_faces.below_top)
    plate = context.near("plate", bounds, sign=1)
    return [("top", top, float(context.values["finish.top"])), ("plate", plate, 0.0)]


def _board(context: Context) -> Facets:
    # The top's edges are also its end's and its sides'.
    found = [context.near(n, context.neck_bounds, tops=False) for n in BOARD if context.has(n)]
    return joined(found)


def _point(p: FloatArray) -> tuple[float, float, float]:
    return float(p[0]), float(p[1]), float(p[2])
