"""Room in the plan between the heel's corners and the pocket's; finish on the walls taken off."""

from __future__ import annotations

import numpy as np

from ...job.arrays import FloatArray
from .context import Context
from .cutout import plan_lines
from .facets import Facets
from .failures import NotFound
from .measured import Measured
from .sections import section, signed_room
from .sides import (
    NUDGE,
    UPRIGHT,
    finish,
    full_section,
    heel_upright,
    is_plane,
    lean,
    no_wall,
    plane_walls,
    upright_end,
    wall_on_centreline,
)

LOW = (0.05, 0.15)
"""Shares of an end wall's height at which it is read, below what a cavity may open."""


def corner_entry(context: Context) -> Measured:
    """Least room [mm] between the heel's corners and the pocket's wall, over the heel's bottom."""
    if not len(wall_on_centreline(context)):
        return no_wall()
    if not len(plane_walls(context).facing(axis=0, sign=-1, least=0.7)):
        return Measured.absent("a round pocket has no corners: see the end clearance")
    points = heel_corners(context)
    room = _room_at_own_levels(context, points)
    index = int(room.argmin())
    x, y, height = (float(a) for a in points[index])
    return Measured(float(room[index]) - finish(context), (x, y, height))


def _room_at_own_levels(context: Context, points: FloatArray) -> FloatArray:
    """Room [mm] of points (k, 3) to the pocket's wall; vertical walls are alike at every level."""
    faces = [context.facets("body", [f]) for f in context.body_faces.walls]
    if not any(lean(f) for f in faces):
        return signed_room(points[:, :2], *wall_lines(context, 0.0))[0]
    lines = [wall_lines(context, float(z)) for z in points[:, 2]]
    found = [signed_room(p[None, :2], *w)[0] for p, w in zip(points, lines, strict=True)]
    return np.concatenate(found)


def heel_corners(context: Context) -> FloatArray:
    """Body-frame points (k, 3) of the heel's corners, at the bottom of its full section."""
    frame, upright = context.frame, heel_upright(context)
    in_neck = Facets(frame.to_neck(upright.points), upright.normal, upright.face)
    low = full_section(context)
    kinds = {f: is_plane(context, "heel", f) for f in set(in_neck.face.tolist())}
    curved = in_neck.of_faces(f for f, plane in kinds.items() if not plane)
    flat = in_neck.of_faces(f for f, plane in kinds.items() if plane)
    square_end = flat.where(upright_end(flat))
    if len(square_end):
        points = section(curved if len(curved) else square_end, low + NUDGE)[0].reshape(-1, 2)
    else:
        points = section(flat, low + NUDGE)[0].reshape(-1, 2)
        points = points[points[:, 0] > points[:, 0].max(initial=-np.inf) - 1e-6]
    if not len(points):
        raise NotFound("the heel has no corners over its bottom")
    return frame.to_body(x=points[:, 0], y=points[:, 1], z=np.full(len(points), low))


def wall_lines(context: Context, z: float) -> tuple[FloatArray, FloatArray]:
    """Segments and normals of the pocket's plan at the level ``z``, walls carried on as needed.

    An upright wall is seen whole, though a cavity may open it above. An end that leans is carried
    on, and its corners are moved from their middles along their axes.
    """
    found = []
    walls = {f: context.facets("body", [f]) for f in context.body_faces.walls}
    leans = any(_leans(context, face, facets) for face, facets in walls.items())
    for face, facets in walls.items():
        heights = facets.points[:, :, 2]
        along = is_plane(context, "body", face) and abs(facets.normal[0, 1]) > 0.7
        if leans and along and not lean(facets):
            found.append(_side_at(facets, z))
            continue
        if _is_upright(context, face, facets):
            found.append(plan_lines(facets))
            continue
        if is_plane(context, "body", face):
            found.append(_end_at(facets, z))
            continue
        middle = float(heights.min() + heights.max()) / 2
        segments, normal = section(facets, middle)
        segments = segments + (z - middle) * _drift(context, face, facets)
        found.append((segments, normal))
    return np.concatenate([s for s, _ in found]), np.concatenate([n for _, n in found])


def _drift(context: Context, face: int, facets: Facets) -> FloatArray:
    """X and Y that a wall gains per Z; a corner beside a side that tapers gains in both."""
    surface = context.faces("body")[face].Surface
    if lean(facets) and type(surface).__name__ == "Cylinder":
        axis = np.array(surface.Axis)
        return np.asarray(axis[:2] / axis[2])
    return np.array([lean(facets), 0.0])


def _side_at(facets: Facets, z: float) -> tuple[FloatArray, FloatArray]:
    """A vertical side beside a leaning end, as far as it reaches at a level; past fillets too.

    Its end is read well over the floor and carried on to the level.
    """
    points = facets.points.reshape(-1, 3)
    normal = facets.normal[0, :2] / np.linalg.norm(facets.normal[0, :2])
    first, last = points[points[:, 0].argmin(), :2], points[points[:, 0].argmax(), :2]
    low, high = (float(points[:, 2].min()) * share for share in (0.3, 0.15))
    lower, upper = section(facets, low)[0], section(facets, high)[0]
    reach = float(last[0])
    if len(lower) and len(upper):
        ends = float(lower[:, :, 0].max()), float(upper[:, :, 0].max())
        reach = ends[1] + (ends[1] - ends[0]) * (z - high) / (high - low)
    end = np.array([reach, first[1] - (reach - first[0]) * normal[0] / normal[1]])
    return np.stack([first, end])[None], normal[None]


def _end_at(facets: Facets, z: float) -> tuple[FloatArray, FloatArray]:
    """An end wall that leans, at a level; where sides taper it is as much wider or narrower."""
    points = facets.points.reshape(-1, 3)
    normal = facets.normal[0, :2] / np.linalg.norm(facets.normal[0, :2])
    foot, high = float(points[:, 2].min()), float(points[:, 2].max())
    levels = [foot + share * (high - foot) for share in LOW]
    lower, upper = (_from_end_to_end(section(facets, level)[0]) for level in levels)
    rise = (z - levels[0]) / (levels[1] - levels[0])
    return (lower + rise * (upper - lower))[None], normal[None]


def _from_end_to_end(segments: FloatArray) -> FloatArray:
    """(2, 2) outermost points of a section across the pocket."""
    points = segments.reshape(-1, 2)
    return points[[int(points[:, 1].argmin()), int(points[:, 1].argmax())]]


def _is_upright(context: Context, face: int, facets: Facets) -> bool:
    """Whether a wall is vertical; the triangles of an upright corner may lean a little."""
    surface = context.faces("body")[face].Surface
    if type(surface).__name__ == "Cylinder":
        return bool(np.hypot(surface.Axis.x, surface.Axis.y) <= UPRIGHT)
    return bool(np.abs(facets.normal[:, 2]).max() <= UPRIGHT)


def _leans(context: Context, face: int, facets: Facets) -> bool:
    """Whether a plane wall leans; the triangles of an upright corner may lean by rounding."""
    return is_plane(context, "body", face) and bool(lean(facets))
