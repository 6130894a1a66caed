"""What a joint's adopted solids are to the checker, and by what they are known."""

from __future__ import annotations

import json
import math
from collections.abc import Callable, Mapping
from typing import Any

from ..job.errors import BadInput
from .adopt_shape import in_frame, matrix_of, own_digest, own_shape, placed, text_digest

SOLIDS = "NeckSolids"
"""Property of a neck read from a file: what each of its solids is, as JSON."""
SAME = 1e-6
"""A stated value this near [mm, degrees] to the one read is the same."""


def adopts(obj: Any) -> bool:
    """Whether a solid stands for a stated object."""
    return getattr(obj, "Adopted", None) is not None


def given_of(joint: Any) -> Any:
    """The joint's adopted solids (``solids.build.Given``) in their frames; None without any.

    Raises BadInput where one has no solid or is in error, or where a pocket that is there would
    have to shrink.
    """
    from ..solids.build import Given

    body, plate, neck = joint.Body, joint.CoverPlate, joint.Neck
    given: dict[str, Any] = {}
    for obj in filter(adopts, (body, plate, neck)):
        if not obj.isValid():
            raise BadInput(str(obj.getStatusString()))
    if adopts(body):
        given["body"] = in_frame(own_shape(body), matrix_of(body.Frame))
        given["is_routed"] = body.HasPocket and not _is_larger(joint.Pocket, body)
    if adopts(plate) and plate.Cover != "none":
        given["plate"] = in_frame(own_shape(plate), _plate_frame(joint))
    if adopts(neck):
        given["neck"] = _neck(neck, in_frame(own_shape(neck), matrix_of(neck.Frame)))
    return Given(**given) if given else None


def given_digest(joint: Any) -> str:
    """A short text that changes with the adopted solids and their frames; empty without any.

    Raises BadInput as ``given_of`` does.
    """
    frames: dict[str, Callable[[Any], Any]] = {
        "Body": lambda obj: matrix_of(obj.Frame),
        "CoverPlate": lambda _: _plate_frame(joint),
        "Neck": lambda obj: matrix_of(obj.Frame),
    }
    adopted = [(getattr(joint, link), frame) for link, frame in frames.items()]
    parts = [
        (obj.Name, own_digest(obj), _rounded(frame(obj)), getattr(obj, "HasPocket", False))
        for obj, frame in adopted
        if adopts(obj)
    ]
    return text_digest(*parts) if parts else ""


def _rounded(motion: Any) -> list[float]:
    return [round(float(a), 9) + 0.0 for a in motion.ravel()]


def joint_frame(joint: Any) -> Any:
    """The body frame as a (4, 4) motion in the document's global coordinates."""
    if adopts(joint.Body):
        return matrix_of(placed(joint.Body)) @ matrix_of(joint.Body.Frame)
    return matrix_of(joint.getGlobalPlacement())


def _plate_frame(joint: Any) -> Any:
    """The body frame in the adopted plate's own coordinates."""
    import numpy as np

    plate = joint.CoverPlate
    if plate.FrameFrom != "where it lies":
        return matrix_of(plate.Frame)
    return np.linalg.inv(matrix_of(placed(plate))) @ joint_frame(joint)


def _neck(neck: Any, shape: Any) -> dict[str, Any]:
    """As recognised in a file; else the higher of two solids is the fretboard, or all is neck."""
    told = getattr(neck.Adopted, SOLIDS, "")
    if told:
        from ..run.neck_judged import neck_pieces

        is_left = bool(neck.StringsLeftHanded)
        return neck_pieces(shape.Solids, json.loads(told), left_handed=is_left)
    solids = sorted(shape.Solids, key=lambda s: float(s.CenterOfMass.z))
    if len(solids) == 2:
        return {"wood": solids[0], "fretboard": solids[1]}
    return {"neck": shape}


def _is_larger(pocket: Any, body: Any) -> bool:
    """Whether more is stated than the body's own pocket; a smaller one is refused."""
    from .values import stated_of

    read = json.loads(body.PocketRead or "{}")
    if not read:
        return False
    from ..job.resolve import complete

    stated = complete(stated_of(pocket))
    if all(_is_same(stated[key], value) for key, value in read.items()):
        return False
    for what, room in _room(stated, read).items():
        if room < -SAME:
            raise BadInput(
                f"{pocket.Label}: the body's own pocket is larger than stated by {-room:.3f} mm "
                f"({what}), and wood that is gone does not come back; state at least as much as "
                f"was read from {body.Label}."
            )
    return True


def _is_same(one: Any, other: Any) -> bool:
    if isinstance(other, str):
        return bool(one == other)
    return abs(float(one) - float(other)) <= SAME


def _room(stated: Mapping[str, Any], read: Mapping[str, Any]) -> dict[str, float]:
    """How much more room [mm] is stated than read, by where."""
    mouth = -float(read["pocket.length"])

    def depth(v: Mapping[str, Any], x: float) -> float:
        return float(v["pocket.depth"]) - x * math.tan(math.radians(float(v["pocket.angle"])))

    return {
        "depth at the end wall": depth(stated, 0.0) - depth(read, 0.0),
        "depth at the mouth": depth(stated, mouth) - depth(read, mouth),
        "width at the end wall": float(stated["pocket.width_end"]) - read["pocket.width_end"],
        "width at the mouth": float(stated["pocket.width_mouth"]) - read["pocket.width_mouth"],
    }
