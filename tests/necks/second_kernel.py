"""The words of kernel.py in a second CAD kernel, one that shares no code with FreeCAD's.

The package ``arris`` (MIT or Apache-2.0) is a kernel of its own, written in Rust: its surfaces,
booleans and STEP writer are others than Open CASCADE's. See make_second.py.
"""

from __future__ import annotations

import math

import arris

HOLE = 1.6
"""Radius [mm] of the screw holes in a heel."""
MODEL = arris.Model()


class Flat:
    """A plane face that is still to be swept: its profile, and the axis it lies square to."""

    def __init__(self, segments, lift):
        """From segments (start, way or None, end) in 2D, lifted to 3D by ``lift``."""
        self.origin = lift(0.0, 0.0)
        self.x, self.y = (_less(lift(*e), self.origin) for e in ((1.0, 0.0), (0.0, 1.0)))
        kept = [s for s in segments if math.dist(s[0], s[2]) >= 1e-9]
        path = [arris.Segment.arc(e, way) if way else arris.Segment.line(e) for _, way, e in kept]
        self.loop = arris.Loop.path(kept[0][0], path)

    def profile(self):
        """The kernel's own."""
        normal = _cross(self.x, self.y)
        return arris.Profile(self.loop, origin=self.origin, normal=normal, x_axis=self.x)


def face(segments, lift):
    return Flat(segments, lift)


def lines(points):
    return [(p, None, points[(i + 1) % len(points)]) for i, p in enumerate(points)]


def prism(shape, dx, dy, dz):
    length = math.sqrt(dx * dx + dy * dy + dz * dz)
    way = (dx / length, dy / length, dz / length)
    return MODEL.extrude(shape.profile(), way, length)[0]


def upright(segments, z0, z1):
    return prism(face(segments, lambda x, y: (x, y, z0)), 0, 0, z1 - z0)


def across(points, half):
    return prism(face(lines(points), lambda x, z: (x, -half, z)), 0, 2 * half, 0)


def box(x, y, z):
    return MODEL.primitive_box((x[0], y[0], z[0]), (x[1], y[1], z[1]))[0]


def cylinder(foot, direction, radius, height):
    return MODEL.primitive_cylinder(foot, direction, radius, height)[0]


def cone(foot, direction, start, end, height):
    size = math.sqrt(sum(a * a for a in direction))
    axis = tuple(a / size for a in direction)
    out = (0.0, 1.0, 0.0)
    if abs(axis[1]) > 0.5:
        raise NotImplementedError("a cone along y")

    def lift(r, s):
        return tuple(f + r * o + s * a for f, o, a in zip(foot, out, axis, strict=True))

    profile = face(lines([(0.0, 0.0), (start, 0.0), (end, height), (0.0, height)]), lift)
    return MODEL.revolve(profile.profile(), foot, axis, 2 * math.pi)[0]


def revolved(profile, lift, axis_point, axis, angle):
    made = MODEL.revolve(face(profile, lift).profile(), axis_point, axis, 2 * angle)[0]
    return turned(made, axis_point, axis, -math.degrees(angle))


def turned(shape, point, axis, degrees):
    back = MODEL.transform(shape, tuple(-p for p in point))[0]
    spun = MODEL.transform(back, (0.0, 0.0, 0.0), axis=axis, angle=math.radians(degrees))[0]
    return MODEL.transform(spun, tuple(map(float, point)))[0]


def posed(shape, axis, degrees, shift):
    return MODEL.transform(shape, tuple(shift), axis=tuple(axis), angle=math.radians(degrees))[0]


def mirrored(shape):
    return MODEL.mirror(shape, (0, 0, 0), (0, 1, 0))[0]


def common(a, b):
    return MODEL.common(a, b)[0]


def cut(a, *tools):
    for tool in tools:
        a = MODEL.cut(a, tool)[0]
    return a


def fuse(a, *others):
    for other in others:
        a = MODEL.fuse(a, other)[0]
    return a


def unified(shape):
    return shape


def solids(shape):
    return [shape]


def ruled_surface(rows):
    raise NotImplementedError("ruled surfaces of conic sections")


def splined(shape):
    raise NotImplementedError("every surface as a B-spline")


def chamfered(shape, size, chosen):
    raise NotImplementedError("chamfered heels")


def loft(sections):
    """A ruled solid through two sections, each given as segments in y and z at an x."""
    made = [face(segments, lambda y, z, x=x: (x, y, z)).profile() for x, segments in sections]
    return MODEL.loft(made, "ruled", False)[0]


def _less(a, b):
    return tuple(p - q for p, q in zip(a, b, strict=True))


def _cross(a, b):
    return (a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0])
