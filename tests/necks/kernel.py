"""The few words of the other CAD kernel that the invented necks are built with.

Runs in a process of its own, in an environment that holds ``cadquery-ocp-novtk`` (see make.py).
"""

from __future__ import annotations

import math

from OCP.BRep import BRep_Builder
from OCP.BRepAdaptor import BRepAdaptor_Curve
from OCP.BRepAlgoAPI import BRepAlgoAPI_Common, BRepAlgoAPI_Cut, BRepAlgoAPI_Fuse
from OCP.BRepBuilderAPI import (
    BRepBuilderAPI_MakeEdge,
    BRepBuilderAPI_MakeFace,
    BRepBuilderAPI_MakeWire,
    BRepBuilderAPI_NurbsConvert,
    BRepBuilderAPI_Transform,
)
from OCP.BRepFilletAPI import BRepFilletAPI_MakeChamfer
from OCP.BRepGProp import BRepGProp
from OCP.BRepOffsetAPI import BRepOffsetAPI_ThruSections
from OCP.BRepPrimAPI import (
    BRepPrimAPI_MakeCone,
    BRepPrimAPI_MakeCylinder,
    BRepPrimAPI_MakePrism,
    BRepPrimAPI_MakeRevol,
)
from OCP.collections import Array1_double, Array1_int, Array2_double, Array2_gp_Pnt
from OCP.GC import GC_MakeArcOfCircle
from OCP.Geom import Geom_BSplineSurface
from OCP.GeomAbs import GeomAbs_Circle
from OCP.gp import gp_Ax1, gp_Ax2, gp_Dir, gp_Pnt, gp_Trsf, gp_Vec
from OCP.GProp import GProp_GProps
from OCP.ShapeUpgrade import ShapeUpgrade_UnifySameDomain
from OCP.TopAbs import TopAbs_EDGE, TopAbs_SOLID
from OCP.TopExp import TopExp_Explorer
from OCP.TopoDS import TopoDS, TopoDS_Compound

HOLE = 1.6
"""Radius [mm] of the screw holes in a heel."""
ORIGIN, X, Y, Z = gp_Pnt(0, 0, 0), gp_Dir(1, 0, 0), gp_Dir(0, 1, 0), gp_Dir(0, 0, 1)


def face(segments, lift):
    """A plane face from segments (start, way or None, end) in 2D, lifted to 3D by ``lift``."""
    wire = BRepBuilderAPI_MakeWire()
    for start, way, end in segments:
        a, b = gp_Pnt(*lift(*start)), gp_Pnt(*lift(*end))
        if a.Distance(b) < 1e-9:
            continue
        if way is None:
            wire.Add(BRepBuilderAPI_MakeEdge(a, b).Edge())
        else:
            arc = GC_MakeArcOfCircle(a, gp_Pnt(*lift(*way)), b).Value()
            wire.Add(BRepBuilderAPI_MakeEdge(arc).Edge())
    return BRepBuilderAPI_MakeFace(wire.Wire(), True).Face()


def lines(points):
    """The closed polygon's segments."""
    return [(p, None, points[(i + 1) % len(points)]) for i, p in enumerate(points)]


def prism(shape, dx, dy, dz):
    return BRepPrimAPI_MakePrism(shape, gp_Vec(dx, dy, dz)).Shape()


def upright(segments, z0, z1):
    """A prism on a plan in x and y, from z0 to z1."""
    return prism(face(segments, lambda x, y: (x, y, z0)), 0, 0, z1 - z0)


def across(points, half):
    """A prism on a profile in x and z, from -half to half."""
    return prism(face(lines(points), lambda x, z: (x, -half, z)), 0, 2 * half, 0)


def box(x, y, z):
    return upright(lines([(x[0], y[0]), (x[1], y[0]), (x[1], y[1]), (x[0], y[1])]), *z)


def cylinder(foot, direction, radius, height):
    axes = gp_Ax2(gp_Pnt(*foot), gp_Dir(*direction))
    return BRepPrimAPI_MakeCylinder(axes, radius, height).Shape()


def cone(foot, direction, start, end, height):
    """A frustum of the radii ``start`` and ``end``."""
    axes = gp_Ax2(gp_Pnt(*foot), gp_Dir(*direction))
    return BRepPrimAPI_MakeCone(axes, start, end, height).Shape()


def revolved(profile, lift, axis_point, axis, angle):
    """A profile's face turned by ``angle`` [radians] to both sides of where it lies."""
    line = gp_Ax1(gp_Pnt(*axis_point), gp_Dir(*axis))
    turn = gp_Trsf()
    turn.SetRotation(line, -angle)
    start = BRepBuilderAPI_Transform(face(profile, lift), turn, True).Shape()
    return BRepPrimAPI_MakeRevol(start, line, 2 * angle).Shape()


def ruled_surface(rows):
    """The B-spline of degree 2 x 1 through two conic sections given as (poles, middle weight)."""
    poles, weights = Array2_gp_Pnt(1, 3, 1, 2), Array2_double(1, 3, 1, 2)
    for j, (points, weight) in enumerate(rows, start=1):
        for i, p in enumerate(points, start=1):
            poles.SetValue(i, j, gp_Pnt(*p))
            weights.SetValue(i, j, weight if i == 2 else 1.0)
    knots = Array1_double(1, 2)
    knots.SetValue(1, 0.0)
    knots.SetValue(2, 1.0)
    three, two = Array1_int(1, 2), Array1_int(1, 2)
    for i in (1, 2):
        three.SetValue(i, 3)
        two.SetValue(i, 2)
    surface = Geom_BSplineSurface(poles, weights, knots, knots, three, two, 2, 1)
    return BRepBuilderAPI_MakeFace(surface, 1e-7).Face()


def loft(sections):
    """A ruled solid through wires, each given as segments in y and z at an x."""
    made = BRepOffsetAPI_ThruSections(True, True)
    for x, segments in sections:
        wire = BRepBuilderAPI_MakeWire()
        for start, way, end in segments:
            a, b = gp_Pnt(x, *start), gp_Pnt(x, *end)
            if way is None:
                wire.Add(BRepBuilderAPI_MakeEdge(a, b).Edge())
            else:
                arc = GC_MakeArcOfCircle(a, gp_Pnt(x, *way), b).Value()
                wire.Add(BRepBuilderAPI_MakeEdge(arc).Edge())
        made.AddWire(wire.Wire())
    return made.Shape()


def common(a, b):
    return BRepAlgoAPI_Common(a, b).Shape()


def cut(a, *tools):
    for tool in tools:
        a = BRepAlgoAPI_Cut(a, tool).Shape()
    return a


def fuse(a, *others):
    for other in others:
        a = BRepAlgoAPI_Fuse(a, other).Shape()
    return a


def unified(shape):
    """The shape without the seams that fusing left in planes and cylinders."""
    tidy = ShapeUpgrade_UnifySameDomain(shape, True, True, False)
    tidy.Build()
    return tidy.Shape()


def solids(shape):
    found, explorer = [], TopExp_Explorer(shape, TopAbs_SOLID)
    while explorer.More():
        found.append(TopoDS.Solid(explorer.Current()))
        explorer.Next()
    return found


def compound(shapes):
    made, builder = TopoDS_Compound(), BRep_Builder()
    builder.MakeCompound(made)
    for shape in shapes:
        builder.Add(made, shape)
    return made


def posed(shape, axis, degrees, shift):
    """The shape turned about an axis through the origin, then moved; written into the geometry."""
    turn, move = gp_Trsf(), gp_Trsf()
    turn.SetRotation(gp_Ax1(ORIGIN, gp_Dir(*axis)), math.radians(degrees))
    move.SetTranslation(gp_Vec(*shift))
    return BRepBuilderAPI_Transform(shape, move.Multiplied(turn), True).Shape()


def turned(shape, point, axis, degrees):
    """The shape turned about an axis through a point."""
    turn = gp_Trsf()
    turn.SetRotation(gp_Ax1(gp_Pnt(*point), gp_Dir(*axis)), math.radians(degrees))
    return BRepBuilderAPI_Transform(shape, turn, True).Shape()


def splined(shape):
    """The shape with every surface written as a B-spline."""
    return BRepBuilderAPI_NurbsConvert(shape, True).Shape()


def chamfered(shape, size, chosen):
    """The shape with edges broken by ``size`` where ``chosen`` says so of an edge's middle.

    Edges that are circles of radius ``HOLE`` stay.
    """
    made, explorer, seen = BRepFilletAPI_MakeChamfer(shape), TopExp_Explorer(shape, TopAbs_EDGE), []
    while explorer.More():
        edge = TopoDS.Edge(explorer.Current())
        explorer.Next()
        props = GProp_GProps()
        BRepGProp.LinearProperties_s(edge, props)
        c = props.CentreOfMass()
        key = (round(c.X(), 4), round(c.Y(), 4))
        if chosen(c.X(), c.Y(), c.Z()) and key not in seen and not _is_hole(edge):
            seen.append(key)
            made.Add(size, edge)
    return made.Shape()


def _is_hole(edge) -> bool:
    curve = BRepAdaptor_Curve(edge)
    return curve.GetType() == GeomAbs_Circle and abs(curve.Circle().Radius() - HOLE) < 1e-6


def mirrored(shape):
    """The shape mirrored in the plane y = 0."""
    mirror = gp_Trsf()
    mirror.SetMirror(gp_Ax2(ORIGIN, Y))
    return BRepBuilderAPI_Transform(shape, mirror, True).Shape()


def scaled(shape, factor):
    grow = gp_Trsf()
    grow.SetScale(ORIGIN, factor)
    return BRepBuilderAPI_Transform(shape, grow, True).Shape()
