"""The words of kernel.py in a kernel of triangles, ``manifold3d`` (Apache-2.0).

Arcs become chords that stray no more than ``CHORD`` from them. See make_second.py.
"""

from __future__ import annotations

import math

import numpy as np
from manifold3d import CrossSection, Manifold

HOLE = 1.6
"""Radius [mm] of the screw holes in a heel."""
CHORD = 0.05
"""How far a chord may stray from its arc [mm]."""


class Flat:
    """A polygon in a plane: its corners in 2D, and where the plane lies."""

    def __init__(self, segments, lift):
        """From segments (start, way or None, end) in 2D, lifted to 3D by ``lift``."""
        self.origin = np.array(lift(0.0, 0.0), dtype=float)
        self.x, self.y = (np.array(lift(*e)) - self.origin for e in ((1.0, 0.0), (0.0, 1.0)))
        kept = [s for s in segments if math.dist(s[0], s[2]) >= 1e-9]
        self.corners = np.array([p for s in kept for p in _chords(*s)])

    @property
    def section(self):
        """The kernel's own; its corners run anticlockwise."""
        x, y = self.corners.T
        area = (x * np.roll(y, -1) - y * np.roll(x, -1)).sum()
        return CrossSection([self.corners if area > 0 else self.corners[::-1]])

    @property
    def points(self):
        """(n, 3) corners."""
        return self.origin + self.corners @ np.array([self.x, self.y])


def _chords(start, way, end):
    """Points from ``start`` on, without ``end``."""
    if way is None:
        return [start]
    (ax, ay), (bx, by), (cx, cy) = start, way, end
    rows = np.array([[bx - ax, by - ay], [cx - ax, cy - ay]])
    half = np.array([(bx**2 - ax**2 + by**2 - ay**2), (cx**2 - ax**2 + cy**2 - ay**2)]) / 2
    centre = np.linalg.solve(rows, half)
    radius = math.dist(centre, start)
    first, over, last = (math.atan2(p[1] - centre[1], p[0] - centre[0]) for p in (start, way, end))
    turn = (last - first) % (2 * math.pi)
    if (over - first) % (2 * math.pi) > turn:
        turn -= 2 * math.pi
    at = first + np.linspace(0, turn, steps(radius, abs(turn)) + 1)[:-1]
    return list(np.column_stack([centre[0] + radius * np.cos(at), centre[1] + radius * np.sin(at)]))


def steps(radius, turn):
    """Chords of an arc so that none strays farther than ``CHORD``."""
    return max(2, math.ceil(turn / (2 * math.acos(1 - CHORD / radius))))


def face(segments, lift):
    return Flat(segments, lift)


def lines(points):
    return [(p, None, points[(i + 1) % len(points)]) for i, p in enumerate(points)]


def prism(shape, dx, dy, dz):
    rows = np.column_stack([shape.x, shape.y, (dx, dy, dz), shape.origin])
    return Manifold.extrude(shape.section, 1.0).transform(rows)


def upright(segments, z0, z1):
    return prism(face(segments, lambda x, y: (x, y, z0)), 0, 0, z1 - z0)


def across(points, half):
    return prism(face(lines(points), lambda x, z: (x, -half, z)), 0, 2 * half, 0)


def box(x, y, z):
    return upright(lines([(x[0], y[0]), (x[1], y[0]), (x[1], y[1]), (x[0], y[1])]), *z)


def cylinder(foot, direction, radius, height):
    return cone(foot, direction, radius, radius, height)


def cone(foot, direction, start, end, height):
    axis = np.array(direction) / np.linalg.norm(direction)
    count = steps(max(start, end), 2 * math.pi)
    made = Manifold.cylinder(height, start, end, circular_segments=count)
    return made.transform(np.column_stack([*_square_to(axis), axis, foot]))


def revolved(profile, lift, axis_point, axis, angle):
    axis, flat = np.array(axis, dtype=float), face(profile, lift)
    off = flat.points - axis_point
    along = off @ axis
    out = off - along[:, None] * axis
    radius = np.linalg.norm(out, axis=1)
    e1 = out[radius.argmax()] / radius.max()
    e2 = np.cross(axis, e1)
    ring = np.column_stack([radius, along])
    x, y = ring.T
    ring = ring if (x * np.roll(y, -1) - y * np.roll(x, -1)).sum() > 0 else ring[::-1]
    count = math.ceil(steps(radius.max(), 2 * angle) * math.pi / angle)
    made = Manifold.revolve(CrossSection([ring]), count, math.degrees(2 * angle))
    start = math.cos(angle) * e1 - math.sin(angle) * e2
    beside = math.sin(angle) * e1 + math.cos(angle) * e2
    return made.transform(np.column_stack([start, beside, axis, axis_point]))


def _square_to(axis):
    helper = np.array([0.0, 1.0, 0.0]) if abs(axis[1]) < 0.9 else np.array([1.0, 0.0, 0.0])
    first = np.cross(helper, axis)
    first /= np.linalg.norm(first)
    return first, np.cross(axis, first)


def turned(shape, point, axis, degrees):
    rows = _rotation(axis, degrees)
    point = np.array(point, dtype=float)
    return shape.transform(np.column_stack([rows, point - rows @ point]))


def posed(shape, axis, degrees, shift):
    return shape.transform(np.column_stack([_rotation(axis, degrees), shift]))


def _rotation(axis, degrees):
    x, y, z = np.array(axis, dtype=float) / np.linalg.norm(axis)
    cross = np.array([[0, -z, y], [z, 0, -x], [-y, x, 0]])
    angle = math.radians(degrees)
    return np.eye(3) + math.sin(angle) * cross + (1 - math.cos(angle)) * cross @ cross


def mirrored(shape):
    return shape.mirror((0, 1, 0))


def common(a, b):
    return a ^ b


def cut(a, *tools):
    for tool in tools:
        a = a - tool
    return a


def fuse(a, *others):
    for other in others:
        a = a + other
    return a


def unified(shape):
    return shape


def solids(shape):
    return shape.decompose()


def loft(sections):
    """The hull of two convex sections, each given as segments in y and z at an x."""
    ends = [face(segments, lambda y, z, x=x: (x, y, z)).points for x, segments in sections]
    return Manifold.hull_points(np.concatenate(ends))


def ruled_surface(rows):
    raise NotImplementedError("ruled surfaces of conic sections")


def splined(shape):
    raise NotImplementedError("B-splines")


def chamfered(shape, size, chosen):
    raise NotImplementedError("chamfered heels")


def triangles(shape):
    """Corners (n, 3) and triangles (m, 3)."""
    mesh = shape.to_mesh64()
    return np.asarray(mesh.vert_properties)[:, :3], np.asarray(mesh.tri_verts)
