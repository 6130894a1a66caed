"""Bodies as a designer makes them with FreeCAD's own tools, and what of them may not change."""

import math

import FreeCAD
import Part
import Sketcher  # noqa: F401 (FreeCAD makes its objects only once it is loaded)
from FreeCAD import Placement, Rotation, Vector

from freecad_neckfit.features.roles import role_of
from freecad_neckfit.job.outline import outline_of
from freecad_neckfit.job.resolve import complete
from freecad_neckfit.solids.build.outline import segments_of
from freecad_neckfit.solids.build.pocket import pocket_plan
from freecad_neckfit.solids.build.top import under_top

THICK = 44.45
PADDED = {"body.thickness": THICK, "body.edge_round": 3.0}
CARVED = {"body.thickness": THICK, "body.edge_round": 0.0, "body.top": "carved"}
POCKETED = {"body.thickness": THICK, "body.edge_round": 0.0, "pocket.depth": 17.2}


def padded(document):
    """Sketch, pad and fillet, by PartDesign; the top is 44.45 over the sketch."""
    body = document.addObject("PartDesign::Body", "Slab")
    sketch = body.newObject("Sketcher::SketchObject", "Outline")
    draw(sketch, segments_of(outline_of(complete(PADDED))))
    pad = body.newObject("PartDesign::Pad", "Pad")
    pad.Profile = sketch
    pad.Length = THICK
    document.recompute()
    fillet = body.newObject("PartDesign::Fillet", "Rounded")
    fillet.Base = (pad, [f"Edge{i}" for i, e in enumerate(pad.Shape.Edges, 1) if is_rim(e)])
    fillet.Radius = 3.0
    document.recompute()
    assert body.Shape.isValid()
    return body, centreline(document)


def carved(document):
    """A carved top: an extrusion, by Part, and what lies under a curved patch in common."""
    sketch = document.addObject("Sketcher::SketchObject", "Drawn")
    draw(sketch, segments_of(outline_of(complete(CARVED))))
    block = document.addObject("Part::Extrusion", "Block")
    block.Base, block.Solid, block.LengthFwd = sketch, True, 60.0
    block.DirMode, block.Dir = "Custom", Vector(0, 0, 1)
    under = document.addObject("Part::Feature", "Under")
    shape = under_top(complete(CARVED), (-160, 320), (-180, 180), raised=0.0, low=-60.0)
    shape.translate(Vector(0, 0, THICK))
    under.Shape = shape
    made = document.addObject("Part::Common", "Carved")
    made.Base, made.Tool = block, under
    document.recompute()
    assert made.Shape.isValid()
    return made, centreline(document)


def pocketed(document):
    """A pocket routed already, by PartDesign."""
    body = document.addObject("PartDesign::Body", "Ready")
    sketch = body.newObject("Sketcher::SketchObject", "Outline")
    draw(sketch, segments_of(outline_of(complete(POCKETED))))
    pad = body.newObject("PartDesign::Pad", "Pad")
    pad.Profile, pad.Length = sketch, THICK
    document.recompute()
    plan = body.newObject("Sketcher::SketchObject", "Plan")
    plan.Placement = Placement(Vector(0, 0, THICK), Rotation())
    draw(plan, pocket_plan(complete(POCKETED)).segments(-150.0))
    pocket = body.newObject("PartDesign::Pocket", "Routed")
    pocket.Profile, pocket.Length = plan, POCKETED["pocket.depth"]
    document.recompute()
    assert body.Shape.isValid()
    assert len(body.Shape.Faces) > len(pad.Shape.Faces)
    return body, centreline(document)


def free_form(document):
    """One closed free-form curve as the outline, padded and rounded above, by PartDesign."""
    rough = document.addObject("Sketcher::SketchObject", "Rough")
    draw(rough, segments_of(outline_of(complete(PADDED))))
    document.recompute()
    points = [Vector(p.x, p.y, 0) for p in rough.Shape.Wires[0].discretize(Number=60)[:-1]]
    document.removeObject(rough.Name)
    body = document.addObject("PartDesign::Body", "Flowing")
    sketch = body.newObject("Sketcher::SketchObject", "Outline")
    curve = Part.BSplineCurve()
    curve.interpolate(points, PeriodicFlag=True)
    sketch.addGeometry(curve, False)
    pad = body.newObject("PartDesign::Pad", "Pad")
    pad.Profile, pad.Length = sketch, THICK
    document.recompute()
    fillet = body.newObject("PartDesign::Fillet", "Rounded")
    above = [abs(e.CenterOfMass.z - THICK) < 1e-6 for e in pad.Shape.Edges]
    fillet.Base = (pad, [f"Edge{i}" for i, there in enumerate(above, 1) if there])
    fillet.Radius = 3.0
    document.recompute()
    assert fillet.isValid()
    assert body.Shape.isValid()
    return body, centreline(document)


def draw(sketch, segments):
    for start, through, end in segments:
        a, b = Vector(*start, 0), Vector(*end, 0)
        if through is None:
            sketch.addGeometry(Part.LineSegment(a, b), False)
        else:
            sketch.addGeometry(Part.Arc(a, Vector(*through, 0), b), False)


def is_rim(edge):
    """An edge of top or bottom, and not the straight front at the pocket's mouth."""
    ends = [v.Point for v in edge.Vertexes]
    upright = len(ends) == 2 and abs(ends[0].z - ends[1].z) > 1
    front = all(abs(p.x + 76.0) < 1e-6 for p in ends)
    return not upright and not front


def centreline(document):
    """A line along the middle, as a sketch of its own."""
    sketch = document.addObject("Sketcher::SketchObject", "Middle")
    sketch.addGeometry(Part.LineSegment(Vector(-50, 0, 0), Vector(250, 0, 0)), False)
    document.recompute()
    return sketch


def top_name(obj):
    """Name of the largest face that looks up in the object's own coordinates."""
    shape = obj.Shape.copy()
    shape.Placement = obj.Placement.inverse().multiply(shape.Placement)
    up = [i for i, f in enumerate(shape.Faces) if _normal(f).z > 0.5]
    return f"Face{max(up, key=lambda i: shape.Faces[i].Area) + 1}"


def _normal(face):
    u0, u1, v0, v1 = face.ParameterRange
    return face.normalAt((u0 + u1) / 2, (v0 + v1) / 2)


def nest(document, *objects):
    """Put objects into an App::Part within another one, both moved and turned."""
    inner = document.addObject("App::Part", "Inner")
    outer = document.addObject("App::Part", "Outer")
    outer.addObject(inner)
    for obj in objects:
        inner.addObject(obj)
    inner.Placement = Placement(Vector(30, -200, 11), Rotation(Vector(1, 0.3, -0.2), 63.0))
    outer.Placement = Placement(Vector(-400, 25, 80), Rotation(Vector(0.1, -1, 0.7), 211.0))
    return outer


def turn(*objects):
    """Move and turn objects together by their own placements."""
    motion = Placement(Vector(140, 60, -35), Rotation(Vector(-0.4, 0.9, 0.35), math.degrees(0.9)))
    for obj in objects:
        obj.Placement = motion.multiply(obj.Placement)


SKIPPED = {"Visibility", "Proxy", "_ElementMapVersion", "ExpressionEngine"}


def history(document):
    """Everything that the designer's own objects hold, shapes by all their corners."""
    return {o.Name: _held(o) for o in document.Objects if not role_of(o)}


def _held(obj):
    held = {n: _plain(getattr(obj, n)) for n in obj.PropertiesList if n not in SKIPPED}
    return held | {"state": [s for s in obj.State if s not in ("Touched", "Expanded")]}


def _plain(value):
    if isinstance(value, Part.Shape):
        return [(*v.Point, v.Tolerance) for v in value.Vertexes], len(value.Faces)
    if hasattr(value, "Name"):
        return value.Name
    if isinstance(value, list | tuple):
        return [_plain(item) for item in value]
    if isinstance(value, FreeCAD.Placement):
        return [*value.Base, *value.Rotation.Q]
    return getattr(value, "UserString", None) or str(value)
