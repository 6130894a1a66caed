"""The body frame of a solid, from a picked top face and a centreline."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Any

import numpy as np

from ...job.arrays import FloatArray
from ..build.shapes import moved
from .kinds import Flat
from .outline import front_at, outline_at
from .pocket import Pocket, read_pocket
from .pocket_faces import Body
from .reading import NotRead
from .top import heights

SQUARE = 0.02
"""A centreline that leans more than this (some 1.1 degrees) out of the datum is refused."""
REACHES = 1.0
"""The horns reach this far [mm] past the pocket's mouth at least."""


@dataclass(frozen=True)
class Line:
    """A straight line [mm] in the solid's own coordinates."""

    point: FloatArray
    way: FloatArray


@dataclass(frozen=True)
class Placed:
    """``frame``: (4, 4) the body frame in the solid's own coordinates; ``pocket`` as read, if any.

    ``top``: index of the top face.
    """

    frame: FloatArray
    pocket: Pocket | None
    top: int


def place(
    solid: Any,
    *,
    top: int,
    line: Line,
    length: float,
    has_pocket: bool,
    floor: int | None = None,
    reverse: bool = False,
) -> Placed:
    """The body frame: Z square to the datum, X along the centreline to the bridge.

    ``top``: index of the top face; where it is curved, the largest plane face opposite, the back,
    is the datum. ``length``: pocket's mouth to end wall [mm], by which the origin lies behind the
    mouth; of a body with a pocket the origin is read from it, with ``floor`` as its floor where
    that is picked. X points from the end where the body reaches past the mouth (its horns) to
    the other, or with ``reverse`` the other way. Raises NotRead.
    """
    up = _up(Body(solid), top)
    way = _level(line.way, up)
    frame = _axes(up, way, line.point)
    if _points_to_neck(solid, frame) != reverse:
        frame = _axes(up, -way, line.point)
    laid = moved(solid, np.linalg.inv(frame))
    body = Body(laid)
    if has_pocket:
        pocket = read_pocket(laid, floor=floor, top=top)
        return Placed(frame @ _shift(*pocket.origin), pocket, top)
    refuse_pocket(laid, top=top)
    x = _front(laid) + length
    z = heights(body, [top], np.array([[x, 0.0]]))[0]
    if not np.isfinite(z):
        raise NotRead(
            f"The picked top face does not reach {length:.1f} mm behind the mouth on the "
            "centreline; pick the top face there."
        )
    return Placed(frame @ _shift(x, 0.0, float(z)), None, top)


def refuse_pocket(laid: Any, *, top: int | None = None) -> None:
    """Raise NotRead where a body that is to be routed has a pocket already."""
    try:
        read_pocket(laid, top=top)
    except NotRead:
        return
    raise NotRead("The body has a neck pocket already; say so, and it is read instead of cut.")


def _up(body: Body, top: int) -> FloatArray:
    kind = body.kind(top)
    if isinstance(kind, Flat):
        return kind.normal
    out = body.normals[top].mean(axis=0)
    flat = [(i, k) for i in range(len(body.faces)) if isinstance(k := body.kind(i), Flat)]
    back = [(i, k) for i, k in flat if k.normal @ out < -0.9 * np.linalg.norm(out)]
    if not back:
        raise NotRead(
            "The top is curved and the body has no flat back to measure from; type the frame, or "
            "link a coordinate system."
        )
    return -max(back, key=lambda pair: float(body.faces[pair[0]].Area))[1].normal


def _level(way: FloatArray, up: FloatArray) -> FloatArray:
    way = way / np.linalg.norm(way)
    if abs(float(way @ up)) > SQUARE:
        raise NotRead("The centreline is not level with the top's datum; pick another edge.")
    level = way - (way @ up) * up
    return np.asarray(level / np.linalg.norm(level))


def _axes(up: FloatArray, way: FloatArray, point: FloatArray) -> FloatArray:
    frame = np.eye(4)
    frame[:3, 0], frame[:3, 1], frame[:3, 2] = way, np.cross(up, way), up
    frame[:3, 3] = point
    return frame


def _shift(x: float, y: float, z: float) -> FloatArray:
    frame = np.eye(4)
    frame[:3, 3] = float(x), float(y), float(z)
    return frame


def _points_to_neck(solid: Any, frame: FloatArray) -> bool:
    """Whether X points to the end where the body reaches past the centreline's way out."""
    corners, (low, high) = _outline(moved(solid, np.linalg.inv(frame)))
    ends = front_at(corners), -front_at([(-x, y) for x, y in corners])
    before, behind = ends[0] - low, high - ends[1]
    return behind > before + REACHES


def _front(laid: Any) -> float:
    return front_at(_outline(laid)[0])


def _outline(laid: Any) -> tuple[list[tuple[float, float]], tuple[float, float]]:
    """The outline at half the thickness, and its least and largest X."""
    box = laid.copy().optimalBoundingBox()
    corners = outline_at(laid, (box.ZMin + box.ZMax) / 2)
    x = [p[0] for p in corners]
    return corners, (min(x), max(x))
