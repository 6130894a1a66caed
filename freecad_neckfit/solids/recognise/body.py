"""A body that is there already: its thickness, heel contour and the walls beside the pocket."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any

import numpy as np

from ...job.arrays import FloatArray
from ...job.parameters import ALL
from ..measure.columns import next_above
from ..measure.facets import Bounds, Facets, accuracy, facets_of, joined
from ..measure.sections import section
from ..measure.window import Reach, is_free
from .pocket_faces import Body
from .reading import NotRead, Shown

ASIDE = (-12.0, -6.0, 0.0, 6.0, 12.0)
"""Y [mm] of the lines along which the back is felt: screw holes are not under all of them."""
BEHIND = 60.0
"""How far [mm] behind the end wall a heel contour may run out."""
FROM_MOUTH = 10.0
"""A rounded edge at the mouth lies nearer to it than this [mm]."""
NO_CONTOUR = 1e-3
"""A back that is level within this [mm] has no contour."""
BESIDE = 1.0
"""A wall is beside the pocket where it is at most this [mm] farther out than where it is next."""
CLEAR = 0.05
"""An outline lies at least this far [mm] outside the pocket's own wall."""


def read_back(body: Body, *, mouth: float) -> Shown:
    """Thickness and heel contour, felt from below along the centreline from X = ``mouth`` on.

    ``body``: in the body frame. Raises NotRead where nothing looks down under the pocket.
    """
    down = _down(body, mouth)
    x = np.arange(mouth + FROM_MOUTH, BEHIND, 1.0)
    z = _lowest(down, x)
    if not np.isfinite(z).any() or not np.isfinite(at_wall := float(_lowest(down, np.zeros(1))[0])):
        raise NotRead("The body has no back under the pocket's end wall; turn the frame upright.")
    x, z = x[np.isfinite(z)], z[np.isfinite(z)]
    base = float(z.min())
    if float(z.max()) - base < NO_CONTOUR or z[0] - base < NO_CONTOUR:
        values = {"body.thickness": -at_wall, "body.contour_depth": 0.0}
        return Shown(values, {"body.thickness": float(z.max()) - base})
    return _contour(x, z, base, mouth)


def _contour(x: FloatArray, z: FloatArray, base: float, mouth: float) -> Shown:
    """A slope that is straight from the mouth to where it has run out."""
    slope = float(z[0] - z[1]) / float(x[1] - x[0])
    if slope <= 0:
        raise NotRead("The back does not slope down from the mouth; state the heel contour.")
    depth = float(z[0]) - base + slope * float(x[0] - mouth)
    length = depth / slope
    stated = base + depth * np.clip(1 - (x - mouth) / length, 0.0, 1.0)
    off = float(np.abs(z - stated).max())
    crooked = f"The heel contour is not straight: it strays by {off:.2f} mm."
    notes = (crooked,) if off > 0.05 else ()
    values = {"body.thickness": -base, "body.contour_depth": depth, "body.contour_length": length}
    return Shown(values, dict.fromkeys(("body.thickness", "body.contour_depth"), off), notes)


def _down(body: Body, mouth: float) -> Facets:
    faces = [i for i, n in enumerate(body.normals) if n[:, 2].min() < -0.3]
    side = max(ASIDE) + 1.0
    return _near(body, faces, (mouth, BEHIND, -side, side)).facing(axis=2, sign=-1, least=0.1)


def _lowest(down: Facets, x: FloatArray) -> FloatArray:
    """(n,) lowest Z [mm] of the back near the centreline at each X; inf where there is none."""
    rows = []
    for y in ASIDE:
        plan = np.column_stack([x, np.full(len(x), y)])
        rows.append(next_above(down, plan, np.full(len(x), -np.inf)))
    return np.asarray(np.min(rows, axis=0))


def read_walls(body: Body, pocket: Mapping[str, float], *, left_handed: bool) -> Shown:
    """Where the cutaways' walls run beside the pocket: ``body.block_`` and ``body.cutaway_``.

    ``pocket``: its length, width_end, width_mouth and depth. A side without a cutaway beside the
    pocket is left out, with a note.
    """
    level = -float(pocket["pocket.depth"]) / 2
    lines, normals = section(_crossing(body, level, float(pocket["pocket.length"])), level)
    values: dict[str, Any] = {}
    notes = []
    for side, sign in (("treble", 1), ("bass", -1)):
        found = _wall(lines, normals, pocket, sign=-sign if left_handed else sign)
        if found is None:
            notes.append(f"No cutaway runs beside the pocket on the {side} side.")
            continue
        values[f"body.block_{side}"], values[f"body.cutaway_{side}"] = found
    return Shown(values, dict.fromkeys(values, 0.0), tuple(notes))


def _crossing(body: Body, z: float, length: float) -> Facets:
    """Upright faces beside the pocket that reach over a level."""
    box = body.box
    there = (box[:, 2] <= z) & (box[:, 5] >= z)
    most = (ALL["body.block_treble"].high or 0.0) + 2 * BESIDE
    beside = (-length, 0.0, -most, most)
    return _near(body, [i for i in sorted(body.upright) if there[i]], beside)


def _near(body: Body, faces: list[int], bounds: Bounds) -> Facets:
    """Triangles of the faces; of free-form ones, which have millions, those about a rectangle."""
    found = []
    for i in faces:
        face = body.faces[i]
        pieces = Reach.of(face).within(bounds) if is_free(face) else [face]
        found += [facets_of(piece, i, fine=accuracy(piece)) for piece in pieces]
    return joined(found)


def _wall(
    lines: FloatArray, normals: FloatArray, pocket: Mapping[str, float], *, sign: int
) -> tuple[float, float] | None:
    """Centreline to the wall, and end wall to where it no longer runs beside the pocket."""
    length, end, mouth = (
        float(pocket[f"pocket.{k}"]) for k in ("length", "width_end", "width_mouth")
    )
    x = np.arange(-length + 0.5, 0.0, 0.5)
    own = (end + (end - mouth) / length * x) / 2
    y = np.array([_next_out(lines, normals, at, half + CLEAR, sign)
                  for at, half in zip(x, own, strict=True)])  # fmt: skip
    most = ALL["body.block_treble"].high or np.inf
    if not len(y) or not y.min() <= most:
        return None
    block = float(y.min())
    beside = x[y <= block + BESIDE]
    cutaway = -float(beside.max())
    low, high = (getattr(ALL["body.cutaway_treble"], k) or 0.0 for k in ("low", "high"))
    return block, float(np.clip(cutaway, low, high))


def _next_out(lines: FloatArray, normals: FloatArray, x: float, least: float, sign: int) -> float:
    """Distance [mm] from the centreline to the next wall that looks outward; inf without one."""
    a, b = lines[:, 0], lines[:, 1]
    s, t = a[:, 0] - x, b[:, 0] - x
    cut = ((s >= 0) != (t >= 0)) & (normals[:, 1] * sign > 0.1)
    if not cut.any():
        return float("inf")
    share = s[cut] / (s[cut] - t[cut])
    y = sign * (a[cut, 1] + (b[cut, 1] - a[cut, 1]) * share)
    return float(min(y[y > least], default=np.inf))
