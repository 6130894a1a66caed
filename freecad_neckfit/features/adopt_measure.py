"""Values measured on adopted solids, stated by the objects that own them."""

from __future__ import annotations

import json
from typing import Any

from ..job.errors import BadInput
from . import values
from .adopt_frame import picked_frame, pocket_length, system_frame
from .adopt_shape import (
    PLACES,
    in_frame,
    matrix_of,
    own_digest,
    own_shape,
    placement_of,
    text_digest,
)
from .values import state, stated_of

NO_POCKET = {"pocket.depth": 20.0}
"""Walls are looked for halfway down a pocket of this depth [mm], however deep it is."""
REGION = (-80.0, 320.0), (-70.0, 70.0)
"""X and Y [mm] over which the top matters: under neck, pickups, bridge and cover plate.

The bridge of a bass with 20 frets at a scale of 34 in stands some 270 mm behind the end wall.
"""


def renew_body(body: Any) -> None:
    """Find the frame of an adopted body again and measure it, if anything about it changed.

    Raises BadInput, one sentence that asks for what is missing.
    """
    solid = own_shape(body)
    system = system_frame(body) if body.FrameFrom == "coordinate system" else None
    key = _key(body, system)
    if key == body.MeasuredFrom:
        return
    try:
        pocket, top = _settle(body, solid, system)
        found = _measured(body, in_frame(solid, matrix_of(body.Frame)), pocket, top)
    except BadInput as refusal:
        raise BadInput(f"{body.Label}: {refusal}") from refusal
    with values.writing():
        state(body, _kept(body) | found.values)
        body.Measured = sorted(found.values)
        body.Remarks = _remarks(found)
        body.PocketRead = json.dumps(pocket.shown.values) if pocket is not None else ""
        body.MeasuredFrom = _key(body, system)


def renew_pocket(pocket: Any) -> None:
    """State the pocket that was read from a body, if it was read anew since.

    What the designer states afterwards stands until the body's own pocket changes.
    """
    text = pocket.ReadFrom.PocketRead
    if not text:
        raise BadInput(f"{pocket.Label}: no pocket was read from {pocket.ReadFrom.Label}; mend it.")
    if text_digest(text) == pocket.MeasuredFrom:
        return
    read = json.loads(text)
    with values.writing():
        others = {k: v for k, v in stated_of(pocket).items() if k != "pocket.end_radius"}
        state(pocket, others | read)
        pocket.Measured = sorted(read)
        pocket.MeasuredFrom = text_digest(text)


def renew_plate(plate: Any) -> None:
    """Measure an adopted cover plate; one that is not flat keeps its stated thickness."""
    from ..solids.recognise.plate import read_plate
    from ..solids.recognise.reading import NotRead, Shown

    key = own_digest(plate)
    if key == plate.MeasuredFrom:
        return
    try:
        found = read_plate(own_shape(plate))
    except NotRead as refusal:
        found = Shown(notes=(str(refusal),))
    with values.writing():
        state(plate, stated_of(plate) | found.values)
        plate.Measured, plate.Remarks = sorted(found.values), _remarks(found)
        plate.MeasuredFrom = key


def _kept(body: Any) -> dict[str, Any]:
    """What the body states by itself: not what was measured before and may be there no more."""
    before = set(body.Measured)
    return {key: value for key, value in stated_of(body).items() if key not in before}


def _key(body: Any, system: Any) -> str:
    frame = matrix_of(body.Frame) if system is None else system
    return text_digest(
        own_digest(body),
        [round(float(a), 9) + 0.0 for a in frame.ravel()],
        (body.FrameFrom, body.TopFace, body.Centreline, body.FloorFace),
        (body.Reversed, body.HasPocket, _is_left_handed(body)),
        *_beside(body).values(),
        _line_key(body),
    )


def _line_key(body: Any) -> Any:
    """Where a centreline of another object lies: it may be moved by itself."""
    if body.FrameFrom != "faces" or body.CentrelineOf in (None, body.Adopted):
        return ""
    from .adopt_frame import centreline

    line = centreline(body, None)
    return [round(float(a), PLACES) + 0.0 for a in (*line.point, *line.way)]


def _settle(body: Any, solid: Any, system: Any) -> tuple[Any, int | None]:
    """Set the frame; the pocket that was read with it, and the top face if it was picked."""
    import numpy as np

    if body.FrameFrom == "faces":
        found = picked_frame(body, solid)
        with values.writing():
            body.Frame = placement_of(found.frame)
        return found.pocket, found.top
    if system is not None:
        with values.writing():
            body.Frame = placement_of(system)
    from ..solids.recognise.frame import refuse_pocket
    from ..solids.recognise.pocket import read_pocket
    from ..solids.recognise.signature import find

    frame = matrix_of(body.Frame)
    if not body.HasPocket:
        refuse_pocket(in_frame(solid, frame))
        return None, None
    floor = find(solid, body.FloorFace, what="pocket's floor face") if body.FloorFace else None
    pocket = read_pocket(in_frame(solid, frame), floor=floor)
    shift = np.eye(4)
    shift[:3, 3] = pocket.origin
    with values.writing():
        body.Frame = placement_of(frame @ shift)
    return pocket, None


def _measured(body: Any, solid: Any, pocket: Any, top: int | None) -> Any:
    from ..solids.recognise.body import read_back, read_walls
    from ..solids.recognise.outline import outline_at
    from ..solids.recognise.pocket_faces import Body
    from ..solids.recognise.reading import Shown
    from ..solids.recognise.top import read_top, top_faces

    read = Body(solid)
    plan = {**_beside(body), **NO_POCKET}
    if pocket is not None:
        plan |= {k: v for k, v in pocket.shown.values.items() if k in plan and k not in NO_POCKET}
    back = read_back(read, mouth=-plan["pocket.length"])
    walls = read_walls(read, plan, left_handed=_is_left_handed(body))
    faces = top_faces(read, picked=() if top is None else (top,))
    over = read_top(read, faces=faces, x=REGION[0], y=REGION[1])
    level = -float(back.values["body.thickness"]) / 2
    drawn: dict[str, Any] = {
        "body.outline": "section" if len(walls.values) == 4 else "points",
        "body.outline_points": outline_at(solid, level),
        "body.edge_round": 0.0,
    }
    parts = [back, walls, over, *([pocket.shown] if pocket is not None else [])]
    residuals = {k: r for part in parts for k, r in part.residuals.items()}
    own = {k: v for part in (back, walls, over) for k, v in part.values.items()}
    return Shown(drawn | own, residuals, tuple(n for part in parts for n in part.notes))


def _beside(body: Any) -> dict[str, float]:
    pocket = body.PocketBehind
    if pocket is None:
        return {"pocket.length": 0.0, "pocket.width_end": 0.0, "pocket.width_mouth": 0.0}
    return {
        "pocket.length": pocket_length(body),
        "pocket.width_end": float(pocket.WidthEnd.Value),
        "pocket.width_mouth": float(pocket.WidthMouth.Value),
    }


def _is_left_handed(body: Any) -> bool:
    return bool(body.NeckBeside is not None and body.NeckBeside.StringsLeftHanded)


def _remarks(found: Any) -> list[str]:
    rough = [
        f"{key} is met within {off:.3f}." for key, off in found.residuals.items() if off > 1e-3
    ]
    return [*found.notes, *rough]
