"""String heights over crowns, and over top or plate under the hand."""

from __future__ import annotations

import numpy as np

from ...job.arrays import FloatArray
from .board_sides import BINDINGS
from .columns import highest
from .context import Context
from .cutout import first_ahead, over_opening
from .facets import joined
from .failures import NotFound
from .measured import Measured, place_at
from .mount import finished_top
from .saddles import reached, rests
from .surfaces import height_on


def string_open(context: Context) -> Measured:
    """Least clearance [mm] of an open string over any crown, with what the saddles can do."""
    s, saddle = context.strings, reached(context)
    share = (s.x - s.x_nut[:, None]) / (s.x_saddle - s.x_nut)[:, None]
    room = s.nut[:, None] + (saddle - s.nut)[:, None] * share - s.z
    return _at_crown(context, room)


def string_fretted(context: Context) -> Measured:
    """Least clearance [mm] over every later crown of a string fretted anywhere."""
    s, saddle = context.strings, reached(context)
    room = np.full(s.z.shape, np.inf)
    for n in range(s.z.shape[1] - 1):
        run = s.x[:, n + 1 :] - s.x[:, n : n + 1]
        climb = (saddle - s.z[:, n]) / (s.x_saddle - s.x[:, n])
        over = s.z[:, n : n + 1] + climb[:, None] * run - s.z[:, n + 1 :]
        room[:, n + 1 :] = np.minimum(room[:, n + 1 :], over)
    return _at_crown(context, room)


def _at_crown(context: Context, room: FloatArray) -> Measured:
    s = context.strings
    i, n = np.unravel_index(np.argmin(room), room.shape)
    share = (s.x[i, n] - s.x_nut[i]) / (s.x_saddle[i] - s.x_nut[i])
    y = s.y_nut[i] + (s.y_saddle[i] - s.y_nut[i]) * share
    place = context.frame.to_body(x=s.x[i, n], y=y, z=s.z[i, n])
    return Measured(float(room[i, n]), place_at(place),
                    detail={"string": int(i) + 1, "fret": int(n) + 1})  # fmt: skip


def top_string(context: Context) -> Measured:
    """Least height [mm] of an open string over finished top or plate under the hand.

    Midway from the fretboard's end to the saddles unless the place is stated.
    """
    s, points, v = context.strings, rests(context), context.values
    board = context.near("fretboard", context.neck_bounds, tops=False).points
    if not len(board):
        raise NotFound("the fretboard does not lie over the body")
    stated = v.get("strings.hand")
    x = (float(board[:, :, 0].max()) + float(points[:, 0].mean())) / 2
    x = x if stated is None else float(stated)
    nut = context.frame.to_body(x=s.x_nut, y=s.y_nut, z=s.nut)
    at = at_x(nut, points, x)
    under = np.maximum(finished_top(context, at[:, :2]), _plate_under(context, at[:, :2]))
    return of_two(at[:, 2] - under, at)


def _plate_under(context: Context, plan: FloatArray) -> FloatArray:
    """(s,) height [mm] of the plate under points (s, 2); openings for pickups count as unbroken."""
    if not context.has("plate"):
        return np.full(len(plan), -np.inf)
    box = context.boxes("plate")
    low, high = box[:, :2].min(axis=0), box[:, 3:5].max(axis=0)
    inside = np.all((plan >= low) & (plan <= high), axis=1)
    (x, y), (beyond, beside) = plan.min(axis=0), plan.max(axis=0)
    top = context.near("plate", (float(x), float(beyond), float(y), float(beside)), sign=1)
    opened = over_opening(context, plan[:, 0]) & (plan[:, 0] > _cutout_end(context))
    inside &= np.isfinite(highest(top, plan)) | opened
    return np.where(inside, height_on(context.faces("plate")[context.plate_face], plan), -np.inf)


def _cutout_end(context: Context) -> float:
    """X [mm] where the plate's cut-out ends; -inf where a pickup's opening took that end away."""
    if not context.values["plate.under_overhang"]:
        return clear_end(context)
    found = first_ahead(context, past=float(context.frame.origin[0]))
    return found[1] if found else -np.inf


def clear_end(context: Context) -> float:
    """X [mm] where a cut-out that is kept clear of the fretboard and its binding ends past them."""
    near = (context.near(n, context.neck_bounds, tops=False) for n in ("fretboard", *BINDINGS))
    board = joined(list(near)).points
    return float(board[:, :, 0].max()) + float(context.values["plate.clearance"])


def last_fretted(context: Context) -> tuple[FloatArray, FloatArray]:
    """Body-frame points (s, 3) on the last crown, and on the saddles."""
    s = context.strings
    share = (s.x[:, -1] - s.x_nut) / (s.x_saddle - s.x_nut)
    y = s.y_nut + (s.y_saddle - s.y_nut) * share
    return context.frame.to_body(x=s.x[:, -1], y=y, z=s.z[:, -1]), rests(context)


def at_x(start: FloatArray, end: FloatArray, x: float) -> FloatArray:
    """(s, 3) points of straight strings from ``start`` to ``end``, both (s, 3), at X = ``x``."""
    share = (x - start[:, 0]) / (end[:, 0] - start[:, 0])
    return start + share[:, None] * (end - start)


def of_two(room: FloatArray, points: FloatArray) -> Measured:
    """The least of several rooms (s,) and where it is among points (s, 3)."""
    index = int(np.argmin(room))
    return Measured(float(room[index]), place_at(points[index]))
