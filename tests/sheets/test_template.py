import io
import math

import pytest

pytest.importorskip("FreeCAD")

import shapely

from freecad_neckfit.job.errors import BadInput
from freecad_neckfit.job.quantity import Units
from freecad_neckfit.sheets.cutter import Cutter, chosen, largest_bit
from freecad_neckfit.sheets.plan_view import centre_of
from freecad_neckfit.sheets.template import heel_offset, template_dxf
from freecad_neckfit.solids.measure.context import Context
from tests.sheets.shop import joint_of, sample

ezdxf = pytest.importorskip("ezdxf", reason="tests/run installs it")
pytestmark = [
    pytest.mark.freecad,
    pytest.mark.filterwarnings("ignore::DeprecationWarning"),  # ezdxf's own
]
MICRON = 1e-3
ROUND = {"pocket.end_shape": "round", "pocket.end_radius": 60.0, "pocket.width_end": 56.2}
JOINTS = {
    "square": {"pocket.depth": 15.5},
    "angled": {"pocket.depth": 15.5, "pocket.angle": 2.0},
    "round": ROUND,
    "left-handed": {"strings.left_handed": True, "pocket.corner_radius": 5.0},
}


def document_of(joint, cutter, units):
    document = ezdxf.read(io.StringIO(template_dxf(joint, cutter, units=units)))
    audit = document.audit()
    assert not audit.errors
    assert not audit.fixes
    return document


def outline(document, layer, scale=1.0):
    """Corners of a layer's first closed polyline with their bulges, in mm."""
    line = next(e for e in document.modelspace().query("LWPOLYLINE") if e.dxf.layer == layer)
    assert line.closed
    return [(x * scale, y * scale, bulge) for x, y, bulge in line.get_points("xyb")]


def arcs(corners):
    """Centre and radius of each arc."""
    found = []
    for (ax, ay, bulge), (bx, by, _) in zip(corners, [*corners[1:], corners[0]], strict=True):
        if bulge:
            centre, _, _, radius = ezdxf.math.bulge_to_arc((ax, ay), (bx, by), bulge)
            found.append((centre.x, centre.y, radius))
    return found


def top_edges(joint):
    """Points and arcs of the pocket's walls on the solid, seen from above."""
    context = Context(joint.parts, joint.values)
    points, rounds = set(), []
    for index in context.body_faces.walls:
        face = context.faces("body")[index]
        points |= {(round(v.X, 5), round(v.Y, 5)) for v in face.Vertexes}
        if type(face.Surface).__name__ == "Cylinder":
            c = face.Surface.Center
            rounds.append((c.x, c.y, face.Surface.Radius))
    return points, rounds


@pytest.mark.parametrize("units", list(Units))
@pytest.mark.parametrize("name", JOINTS)
def test_the_pocket_lies_on_the_solid_within_a_micron(name, units):
    joint = joint_of(JOINTS[name])
    cutter = chosen(joint.pocket, bit=None, bush=None, units=units)
    document = document_of(joint, cutter, units)
    scale = 25.4 if units is Units.INCH else 1.0
    assert document.header["$INSUNITS"] == {Units.MM: 4, Units.INCH: 1}[units]
    corners = outline(document, "POCKET", scale)
    points, rounds = top_edges(joint)
    for x, y, _ in corners:
        assert min(math.dist((x, y), p) for p in points) < MICRON
    drawn = arcs(corners)
    assert len(drawn) == len(rounds) > 0
    for arc in drawn:
        assert min(math.dist(arc, solid) for solid in rounds) < MICRON
    holes = [e for e in document.modelspace().query("CIRCLE") if e.dxf.layer == "SCREW_HOLES"]
    places = list(zip(joint.values["screw.x"], joint.values["screw.y"], strict=True))
    assert len(holes) == len(places)
    for hole, (x, y) in zip(holes, places, strict=True):
        assert math.dist((hole.dxf.center.x * scale, hole.dxf.center.y * scale), (x, y)) < MICRON
        assert hole.dxf.radius * scale == pytest.approx(2.25, abs=MICRON)


@pytest.mark.parametrize("bush", [None, 17.0])
@pytest.mark.parametrize("name", JOINTS)
def test_path_and_opening_are_the_offsets_of_the_pocket(name, bush):
    joint = joint_of(JOINTS[name])
    cutter = Cutter(6.0, bush)
    document = document_of(joint, cutter, Units.MM)
    far = -joint.values["pocket.length"] - 60
    pocket = shapely.Polygon(fine(joint.pocket.segments(far)))
    window = shapely.box(-joint.values["pocket.length"], -100, 100, 100)
    path, opening = (
        shapely.Polygon(fine(segments_of(outline(document, layer))))
        for layer in ("CUTTER_PATH", "TEMPLATE_OPENING")
    )
    look = dict(join_style="mitre", mitre_limit=10, quad_segs=400)
    # The guide, kept within the opening, leads the bit along the path; the bit cuts the pocket.
    led = opening.buffer(-(bush or 6.0) / 2, **look)
    for drawn, wanted in ((path, pocket.buffer(-3.0, **look)), (path, led)):
        off = drawn.intersection(window).symmetric_difference(wanted.intersection(window))
        # A whole outline that lies 0.001 mm beside would show as 0.2 mm² of difference.
        assert off.area < 0.05


def segments_of(corners):
    found = []
    for (ax, ay, bulge), (bx, by, _) in zip(corners, [*corners[1:], corners[0]], strict=True):
        middle = None
        if bulge:
            middle = ((ax + bx) / 2 + bulge * (by - ay) / 2, (ay + by) / 2 - bulge * (bx - ax) / 2)
        found.append(((ax, ay), middle, (bx, by)))
    return found


def fine(segments):
    """Points along a chain, arcs in steps of a fifth of a degree."""
    spots = []
    for start, through, end in segments:
        spots.append(start)
        if through is not None:
            x, y = centre_of(start, through, end)
            radius = math.dist((x, y), start)
            a, m, b = (math.atan2(p[1] - y, p[0] - x) for p in (start, through, end))
            left = (m - a) % math.tau < (b - a) % math.tau
            sweep = (b - a) % math.tau if left else -((a - b) % math.tau)
            steps = math.ceil(abs(math.degrees(sweep)) * 5)
            turns = [a + sweep * i / steps for i in range(1, steps)]
            spots += [(x + radius * math.cos(t), y + radius * math.sin(t)) for t in turns]
    return spots


def test_the_check_square_measures_100_mm():
    for units, side in ((Units.MM, 100.0), (Units.INCH, 100 / 25.4)):
        corners = outline(document_of(sample(), None, units), "CHECK_SQUARE")
        assert corners[2][0] - corners[0][0] == pytest.approx(side, abs=1e-8)
        assert corners[2][1] - corners[0][1] == pytest.approx(side, abs=1e-8)


def test_heel_and_plate_have_layers_of_their_own():
    joint = sample()
    document = document_of(joint, None, Units.MM)
    heel = [(x, y - heel_offset(joint)) for x, y, _ in outline(document, "HEEL_TEMPLATE")]
    assert max(x for x, _ in heel) == pytest.approx(0.0, abs=MICRON)
    assert min(x for x, _ in heel) == pytest.approx(-78.0, abs=MICRON)
    assert max(y for _, y in heel) == pytest.approx(27.9895, abs=1e-3)
    plate = outline(document, "PLATE_CUTOUT")
    assert max(x for x, _, _ in plate) == pytest.approx(joint.values["plate.clearance"])
    layers = {e.dxf.layer for e in document.modelspace()}
    assert "CUTTER_PATH" not in layers
    assert {"CENTRELINE", "SCREW_CENTRES", "NOTES"} <= layers


def test_the_usual_bit_is_the_largest_that_fits():
    joint = sample()
    assert largest_bit(joint.pocket) == pytest.approx(6.4)
    assert chosen(joint.pocket, bit=None, bush=None, units=Units.MM) == Cutter(6.35)
    assert chosen(joint.pocket, bit=None, bush=6.0, units=Units.MM) == Cutter(5.0, 6.0)


@pytest.mark.parametrize(
    ("stated", "wish", "sentence"),
    [
        ({}, dict(bit=8.0, bush=None), "bit: 8.00 mm is too large .* works is 6.40 mm"),
        ({"pocket.corner_radius": 0.0}, dict(bit=2.0, bush=None), "sharp corners"),
        ({}, dict(bit=6.0, bush=6.0), "bush: 6.00 mm is no larger"),
        ({}, dict(bit=0.0, bush=None), "cuts nothing"),
    ],
)
def test_a_cutter_that_cannot_work_is_refused(stated, wish, sentence):
    joint = joint_of(stated)
    with pytest.raises(BadInput, match=sentence):
        chosen(joint.pocket, units=Units.MM, **wish)


def test_sharp_corners_have_no_path_and_say_so():
    joint = joint_of({"pocket.corner_radius": 0.0})
    assert chosen(joint.pocket, bit=None, bush=None, units=Units.MM) is None
    document = document_of(joint, None, Units.MM)
    texts = [e.dxf.text for e in document.modelspace().query("TEXT")]
    assert any("square them by hand" in text for text in texts)
