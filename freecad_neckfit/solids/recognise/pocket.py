"""A pocket that is there already, read as the values that would rout it."""

from __future__ import annotations

import math
from dataclasses import dataclass
from typing import Any

import numpy as np

from ...job.arrays import FloatArray
from ..measure.facets import accuracy, facets_of
from ..measure.surfaces import height_on
from .kinds import Flat, Ring
from .pocket_faces import ASK, Body, PocketFaces, pocket_faces
from .reading import NotRead, Shown

LEAN = math.sin(math.radians(0.1))
"""A wall that leans less than this (a tenth of a degree) is upright."""
ALIKE = 0.005
"""Two corners, or pieces of one wall, that differ by less than this [mm] are alike."""


@dataclass(frozen=True)
class Pocket:
    """A pocket as read.

    ``shown``: values under the pocket's keys. ``origin``: (3,) the end wall's apex at the top's
    height, in the frame that the body was given in. ``turn``: angle [degrees] from that frame's X
    to the middle line between the side walls. ``floor``: index of the floor's face.
    """

    shown: Shown
    origin: FloatArray
    turn: float
    floor: int


def read_pocket(solid: Any, *, floor: int | None = None, top: int | None = None) -> Pocket:
    """Read depth, angle, length, widths, corners, end and fillet of a body's pocket.

    ``solid``: in a frame whose Z is square to the datum and points out of the top, and whose X
    axis is the centreline, toward the bridge; where along it the origin lies does not matter.
    ``floor``, ``top``: indices of the faces that the designer picked; without ``top`` the largest
    face that looks up beside the pocket is the top. Raises NotRead, one sentence, where the
    pocket is not there, ambiguous, or of a shape that the values cannot state.
    """
    body = Body(solid)
    faces = pocket_faces(body, floor=floor)
    over = _Over(body, faces, top)
    sides = _Sides.read(faces)
    end = _End.read(faces, over)
    middle = sides.middle(end.x)
    values, residuals = _floor_values(faces.ground, end, over)
    mouth = _mouth(body, faces.floor, middle)
    length = end.x - mouth
    widths = sides.width(end.x), sides.width(mouth)
    values |= {
        "pocket.length": length,
        "pocket.width_end": widths[0],
        "pocket.width_mouth": widths[1],
        "pocket.end_shape": "square" if end.radius is None else "round",
        "pocket.wall": end.wall(values["pocket.angle"]),
    }
    residuals |= {"pocket.width_end": sides.off, "pocket.width_mouth": sides.off,
                  "pocket.length": end.off}  # fmt: skip
    if end.radius is not None:
        values["pocket.end_radius"] = end.radius
    notes: list[str] = []
    corner = _one_radius(
        [k.radius for k in faces.rounds(faces.corners)], what="corners", notes=notes
    )
    values["pocket.corner_radius"], residuals["pocket.corner_radius"] = corner
    values["pocket.floor_fillet"], residuals["pocket.floor_fillet"] = _fillet(faces, notes)
    off_line = max(abs(sides.middle(end.x)), abs(sides.middle(mouth)))
    if off_line > ALIKE:
        notes.append(
            f"The pocket's middle line lies {off_line:.3f} mm off the frame's X axis at most."
        )
    shown = Shown(values, residuals, tuple(notes))
    origin = np.array([end.x, middle, over.height(end.x)])
    turn = math.degrees(math.atan2(middle - sides.middle(mouth), length))
    return Pocket(shown, origin, turn, faces.floor)


class _Over:
    """The top beside a pocket: its height over the centreline."""

    def __init__(self, body: Body, faces: PocketFaces, top: int | None) -> None:
        self.face = body.faces[top if top is not None else self._largest(body, faces)]

    @staticmethod
    def _largest(body: Body, faces: PocketFaces) -> int:
        floor = body.box[faces.floor, 5]
        over = [
            i for i, n in enumerate(body.normals)
            if n[:, 2].min() > 0.5 and i != faces.floor and body.box[i, 5] > floor + 1.0
        ]  # fmt: skip
        if not over:
            raise NotRead("No face looks up beside the pocket; pick the body's top face.")
        return max(over, key=lambda i: float(body.faces[i].Area))

    def height(self, x: float) -> float:
        """Z [mm] of the top, carried on over the pocket, at X on the centreline."""
        return float(height_on(self.face, np.array([[x, 0.0]]))[0])


@dataclass(frozen=True)
class _Sides:
    """The two side walls as lines y(x) in the plan: at x = 0, and growth per mm."""

    left: tuple[float, float]
    right: tuple[float, float]
    off: float

    @classmethod
    def read(cls, faces: PocketFaces) -> _Sides:
        lines, off = [], [0.0]
        for group, word in ((faces.left, "+Y"), (faces.right, "-Y")):
            walls = faces.flats(group)
            main = walls[0]
            if abs(main.normal[2]) > LEAN:
                degrees = math.degrees(math.asin(abs(float(main.normal[2]))))
                raise NotRead(
                    f"The pocket's side wall at {word} leans by {degrees:.2f}°, and only upright "
                    "side walls can be stated; make it upright, or state the pocket's values."
                )
            lines.append((main.level / float(main.normal[1]),
                          -float(main.normal[0] / main.normal[1])))  # fmt: skip
            off += [_apart(main, wall) for wall in walls]
        return cls(lines[0], lines[1], max(off))

    def width(self, x: float) -> float:
        """Distance [mm] between the walls across the centreline at X."""
        return self._at(self.left, x) - self._at(self.right, x)

    def middle(self, x: float) -> float:
        """Y [mm] halfway between the walls at X."""
        return (self._at(self.left, x) + self._at(self.right, x)) / 2

    @staticmethod
    def _at(line: tuple[float, float], x: float) -> float:
        return line[0] + line[1] * x


@dataclass(frozen=True)
class _End:
    """The end wall: X of its apex at the top's height, radius if it is round, and how it stands.

    ``up``: (3,) direction up the wall in the plane of the centreline; ``off``: residual [mm].
    """

    x: float
    radius: float | None
    up: FloatArray
    off: float

    @classmethod
    def read(cls, faces: PocketFaces, over: _Over) -> _End:
        straight = faces.flats(faces.end)
        return cls._straight(straight, over) if straight else cls._round(faces, over)

    @classmethod
    def _straight(cls, walls: list[Flat], over: _Over) -> _End:
        main = walls[0]
        nx, ny, nz = (float(n) for n in main.normal)
        if abs(ny) > LEAN:
            raise NotRead(
                "The pocket's end wall is skew to the centreline by "
                f"{math.degrees(math.asin(abs(ny))):.2f}°; pick another centreline, or make the "
                "wall square to it."
            )
        up = np.array([nz, 0.0, -nx]) / math.hypot(nx, nz)
        foot = np.array([main.level / nx, 0.0, 0.0])
        return cls(_at_top(foot, up, over), None, up, max(_apart(main, wall) for wall in walls))

    @classmethod
    def _round(cls, faces: PocketFaces, over: _Over) -> _End:
        main = faces.rounds(faces.end)[0]
        up = main.axis if main.axis[2] > 0 else -main.axis
        out = np.array([up[2], 0.0, -up[0]]) / np.hypot(up[0], up[2])
        foot = main.centre * (1.0, 0.0, 1.0) + main.radius * out
        off = abs(float(main.centre[1])) + main.off
        return cls(_at_top(foot, up, over), main.radius, up, off)

    def wall(self, angle: float) -> str:
        """Square to the top or to the floor. Raises NotRead where it is neither."""
        lean = math.degrees(math.atan2(-float(self.up[0]), float(self.up[2])))
        if abs(lean) < 0.1:
            return "top"
        if abs(lean - angle) < 0.1:
            return "floor"
        raise NotRead(
            f"The pocket's end wall leans by {lean:.2f}° and the floor by {angle:.2f}°, so that it "
            "is square to neither top nor floor; make it square to one, or state its values."
        )


def _apart(main: Flat, other: Flat) -> float:
    """How far [mm] another face strays from a plane."""
    return abs(float(main.normal @ (other.point - main.point))) + other.off


def _at_top(foot: FloatArray, up: FloatArray, over: _Over) -> float:
    """X [mm] where a line through ``foot`` along ``up`` comes out of the top."""
    x = float(foot[0])
    for _ in range(8):
        rise = (over.height(x) - float(foot[2])) / float(up[2])
        x = float(foot[0] + rise * up[0])
    return x


def _floor_values(ground: Flat, end: _End, over: _Over) -> tuple[dict[str, Any], dict[str, float]]:
    """Depth and angle; the floor's tilt across the centreline is a residual [degrees]."""
    n = ground.normal
    angle = math.degrees(math.atan2(-float(n[0]), float(n[2])))
    roll = math.degrees(math.atan2(abs(float(n[1])), float(n[2])))
    floor = (ground.level - float(n[0]) * end.x) / float(n[2])
    depth = over.height(end.x) - floor
    return (
        {"pocket.depth": depth, "pocket.angle": 0.0 if abs(angle) < 1e-9 else angle},
        {"pocket.depth": ground.off, "pocket.angle": roll},
    )


def _mouth(body: Body, floor: int, y: float) -> float:
    """X [mm] where the floor ends toward the headstock, on the centreline."""
    face = body.faces[floor]
    points = facets_of(face, floor, fine=accuracy(face)).points
    a, b = points.reshape(-1, 3), np.roll(points, -1, axis=1).reshape(-1, 3)
    s, t = a[:, 1] - y, b[:, 1] - y
    cut = (s >= 0) != (t >= 0)
    if not cut.any():
        raise NotRead(f"The centreline does not run over the pocket's floor; {ASK}.")
    share = s[cut] / (s[cut] - t[cut])
    return float((a[cut, 0] + (b[cut, 0] - a[cut, 0]) * share).min())


def _fillet(faces: PocketFaces, notes: list[str]) -> tuple[float, float]:
    rings = [kind for i in faces.fillets if isinstance(kind := faces.kinds[i], Ring)]
    radii = [r.radius for r in rings] + [r.radius for r in faces.rounds(faces.fillets)]
    if faces.fillets and not radii:
        notes.append("The fillet along the pocket's floor is no round of one radius; state it.")
    return _one_radius(radii, what="floor fillets", notes=notes)


def _one_radius(radii: list[float], *, what: str, notes: list[str]) -> tuple[float, float]:
    """The middle of several radii and how far the farthest is from it; 0 where there are none."""
    if not radii:
        return 0.0, 0.0
    low, high = min(radii), max(radii)
    if high - low > ALIKE:
        notes.append(f"The pocket's {what} have radii from {low:.3f} to {high:.3f} mm.")
    return (low + high) / 2, (high - low) / 2
