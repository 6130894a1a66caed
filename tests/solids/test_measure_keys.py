"""Measurements on a plain joint of boxes, whose every room is known without any formula."""

import ast
from types import SimpleNamespace

import pytest

Part = pytest.importorskip("Part")
from FreeCAD import Placement, Rotation, Vector  # noqa: E402

from freecad_neckfit.job.errors import KernelFailure  # noqa: E402
from freecad_neckfit.job.resolve import complete  # noqa: E402
from freecad_neckfit.solids import measure  # noqa: E402
from freecad_neckfit.solids.measure import rooms  # noqa: E402

pytestmark = pytest.mark.freecad

DEPTH, LENGTH = 16.0, 76.0
WITHOUT_STRINGS = (
    "overhang_gap", "corner_gap", "binding_gap", "overhang_side", "plate_heel", "side_bass",
    "side_treble", "end_clearance", "end_visible", "corner_entry", "contact_share", "floor_lift",
    "wood_floor", "wall_treble", "wall_bass", "web", "clash_neck_body", "clash_neck_plate",
)  # fmt: skip


def box(x, y, z):
    return Part.makeBox(x[1] - x[0], y[1] - y[0], z[1] - z[0], Vector(x[0], y[0], z[0]))


def body(*, width=56.2, corner=3.0):
    block = box((-LENGTH, 300), (-150, 150), (-44, 0))
    cutaways = [box((-90, -20), (36, 160), (-50, 5)), box((-90, -40), (-160, -40), (-50, 5))]
    pocket = box((-120, 0), (-width / 2, width / 2), (-DEPTH, 10))
    pocket = pocket.makeFillet(corner, [e for e in pocket.Edges if upright(e)])
    cavity = box((30, 70), (-45, 45), (-20, 5))
    return block.cut([*cutaways, pocket, cavity])


def upright(edge):
    return edge.BoundBox.XMin > -1 and edge.BoundBox.ZLength > 20


def neck(*, lift=0.0, width=56.0, x=-0.1, corner=3.2, y=0.0):
    heel = box((x - 78, x), (y - width / 2, y + width / 2), (-DEPTH + lift, 2.7 + lift))
    heel = heel.makeFillet(
        corner, [e for e in heel.Edges if e.BoundBox.XMin > x - 1 and e.BoundBox.ZLength > 10]
    )
    return {"heel": heel, "fretboard": box((-400, 19.9), (-28, 28), (2.7 + lift, 9 + lift))}


def measured(parts, keys=WITHOUT_STRINGS, **values):
    stated = complete({"finish.top": 0.25, "finish.wall": 0.0} | values)
    return measure.measure_all(SimpleNamespace(parts=parts), stated, keys=keys)


@pytest.fixture(scope="module")
def plain():
    plate = box((0.5, 90), (-60, 60), (0.25, 2.65))
    return measured({"body": body(), "plate": plate} | neck())


@pytest.mark.parametrize(("key", "value"), [
    ("overhang_gap", 2.7 - 2.65),
    ("corner_gap", 2.7 - 0.25),
    ("side_treble", 0.1), ("side_bass", 0.1),
    ("end_clearance", 0.1), ("end_visible", 0.1),
    ("contact_share", 1.0),
    ("wood_floor", 44 - DEPTH),
    ("wall_treble", 36 - 28.1), ("wall_bass", 40 - 28.1),
    ("web", 30.0),
    ("plate_heel", 0.6),
    ("clash_neck_body", 0.0), ("clash_neck_plate", 0.0),
])  # fmt: skip
def test_rooms_of_a_plain_joint(plain, key, value):
    found = plain[key]
    assert found.applies, found.because
    assert found.known, found.because
    assert found.value == pytest.approx(value, abs=1e-6)


def test_corners_of_a_plain_joint(plain):
    # Corner of radius 3.2 in one of 3.0, by 0.1 from both walls: the arcs' middles are
    # (3.0 - 3.2)·(1 - √2) + 0.1·√2 apart, more than the straight walls leave.
    assert plain["corner_entry"].value == pytest.approx(0.1, abs=0.002)


@pytest.mark.parametrize("key", ["binding_gap", "overhang_side", "floor_lift"])
def test_what_the_joint_has_not_does_not_apply(plain, key):
    assert not plain[key].applies
    assert plain[key].because


def test_a_square_heel_does_not_enter_round_corners():
    found = measured({"body": body(corner=8.0)} | neck(corner=0.01), ["corner_entry"])
    # A sharp corner 0.1 from both walls, 7.9 from the arc's centre along both axes.
    assert found["corner_entry"].value == pytest.approx(8.0 - 7.9 * 2**0.5, abs=0.006)


@pytest.mark.parametrize(("lift", "value"), [(0.5, 2.95), (-2.45, 0.0), (-3.0, -0.55)])
def test_room_under_the_overhang_follows_the_neck(lift, value):
    found = measured({"body": body()} | neck(lift=lift), ["overhang_gap"])["overhang_gap"]
    assert found.value == pytest.approx(value, abs=1e-9)


def test_the_treble_side_is_the_other_one_for_the_left_handed():
    parts = {"body": body()} | neck(y=0.04)
    keys = ["side_treble", "side_bass"]
    right, left = measured(parts, keys), measured(parts, keys, **{"strings.left_handed": True})
    assert right["side_treble"].value == pytest.approx(0.06, abs=1e-6)
    assert right["side_bass"].value == pytest.approx(0.14, abs=1e-6)
    assert left["side_treble"].value == right["side_bass"].value


def test_finish_on_the_walls_takes_room():
    keys = ["side_treble", "end_clearance"]
    found = measured({"body": body()} | neck(), keys, **{"finish.wall": 0.03})
    assert [f.value for f in found.values()] == pytest.approx([0.07, 0.07], abs=1e-9)


def test_a_heel_too_wide_interferes_sideways_and_says_how_much():
    found = measured({"body": body()} | neck(width=56.4), ["side_treble", "clash_neck_body"])
    assert found["side_treble"].value == pytest.approx(-0.1, abs=1e-6)
    clash = found["clash_neck_body"]
    assert clash.value == pytest.approx(-0.1, abs=2e-3)
    assert clash.detail["frees"] == "shift"
    assert clash.detail["volume"] == pytest.approx(2 * 0.1 * 16 * 75, rel=0.05)


def test_a_sunk_overhang_interferes_by_the_lift_that_frees_it():
    found = measured({"body": body()} | neck(lift=-2.9, x=-0.1), ["clash_neck_body"])
    # The heel has sunk into the floor by 2.9; the overhang into the top by 0.2.
    assert found["clash_neck_body"].value == pytest.approx(-2.9, abs=1e-6)


def test_a_floor_fillet_holds_the_heel_off():
    pocket = box((-120, 0), (-28.1, 28.1), (-DEPTH, 10))
    foot = [e for e in pocket.Edges if e.BoundBox.ZMax < -DEPTH + 1 and e.BoundBox.XMax > -1]
    filleted = box((-LENGTH, 300), (-150, 150), (-44, 0)).cut(pocket.makeFillet(2.0, foot))
    found = measured({"body": filleted} | neck(corner=0.5), ["floor_lift", "contact_share"])
    # 0.1 from the wall a fillet of radius 2 stands 2 - √(4 - 1.9²) high.
    assert found["floor_lift"].value == pytest.approx(2 - (4 - 1.9**2) ** 0.5, abs=0.005)
    assert found["contact_share"].value == 0.0


def test_a_tilted_heel_bears_on_no_area():
    tilt = Placement(Vector(), Rotation(0, -0.4, 0), Vector(-76, 0, -DEPTH)).toMatrix()
    parts = {k: s.copy().transformed(tilt, copy=True) for k, s in neck().items()}
    found = measured({"body": body()} | parts, ["contact_share"])
    assert found["contact_share"].value == pytest.approx(0.0, abs=1e-9)


def test_a_joint_without_floor_is_unknown_and_no_pass():
    away = box((500, 600), (-150, 150), (-44, 0))
    found = measured({"body": away} | neck(), ["side_treble", "contact_share"])
    assert all(not f.known and f.because for f in found.values())


def test_a_failure_of_the_kernel_is_unknown(monkeypatch):
    def fail(_context):
        raise KernelFailure("the kernel gave up")

    monkeypatch.setitem(measure.KEYS, "web", fail)
    found = measured({"body": body()} | neck(), ["web"])["web"]
    assert not found.known
    assert found.because == "the kernel gave up"


def test_a_mistake_in_the_program_propagates(monkeypatch):
    monkeypatch.setitem(measure.KEYS, "web", lambda _context: {}["nothing"])
    with pytest.raises(KeyError):
        measured({"body": body()} | neck(), ["web"])


def test_an_unknown_key_is_refused():
    with pytest.raises(KeyError):
        measured({}, ["no such key"])


def test_the_gap_map_shows_the_least_room():
    stated = complete({"finish.top": 0.25})
    context = measure.Context({"body": body()} | neck(), stated)
    shown = measure.gap_map(context)
    assert shown.gap.shape == (len(shown.x), len(shown.y))
    assert shown.gap.min() == pytest.approx(rooms.overhang_gap(context).value, abs=1e-9)


def test_the_inputs_are_left_as_they_were():
    parts = {"body": body()} | neck(width=56.4)
    before = {k: (s.ShapeType, s.Volume, s.getTolerance(1), len(s.Faces)) for k, s in parts.items()}
    measured(parts)
    assert before == {
        k: (s.ShapeType, s.Volume, s.getTolerance(1), len(s.Faces)) for k, s in parts.items()
    }


def test_the_measurements_know_no_closed_form(checkout):
    folder = checkout / "freecad_neckfit" / "solids" / "measure"
    for file in folder.glob("*.py"):
        for node in ast.walk(ast.parse(file.read_text(encoding="utf-8"))):
            if isinstance(node, ast.ImportFrom):
                parts = (node.module or "").split(".")
                assert not {"fit", "decide", "run", "frames", "top"} & set(parts), file.name


def test_a_round_ends_room_is_to_its_arc_and_not_to_the_side_beside_it():
    straight = box((-120, -18), (-25, 25), (-DEPTH, 10))
    disc = Part.makeCylinder(30, DEPTH + 10, Vector(-30, 0, -DEPTH))
    disc = disc.common(box((-120, 1), (-25, 25), (-DEPTH, 10)))
    block = box((-LENGTH, 300), (-150, 150), (-44, 0))
    block = block.cut(straight.fuse(disc).removeSplitter())
    heel = box((-88, -10), (-24, 24), (-DEPTH, 2.7))
    fretboard = box((-400, 10), (-28, 28), (2.7, 9))
    found = measured({"body": block, "heel": heel, "fretboard": fretboard}, ["end_clearance"])
    # The heel's corner lies 20 before the arc's centre and 24 beside it, 1 mm from the side wall.
    assert found["end_clearance"].value == pytest.approx(30 - (20**2 + 24**2) ** 0.5)


def test_a_body_of_many_faces_tells_what_one_of_few_tells(plain):
    plate = box((0.5, 90), (-60, 60), (0.25, 2.65))
    recesses = [box((120 + 5 * i, 122 + 5 * i), (5 * k, 5 * k + 2), (-50, -43))
                for i in range(8) for k in range(6)]  # fmt: skip
    many = body().cut(recesses)
    assert len(many.Faces) > 200
    found = measured({"body": many, "plate": plate} | neck())
    assert {key: found[key].value for key in found} == pytest.approx(
        {key: plain[key].value for key in plain}, nan_ok=True
    )


def test_measurements_hang_on_no_order(plain):
    plate = box((0.5, 90), (-60, 60), (0.25, 2.65))
    found = measured({"body": body(), "plate": plate} | neck(), keys=WITHOUT_STRINGS[::-1])
    assert {key: found[key].value for key in found} == pytest.approx(
        {key: plain[key].value for key in plain}, nan_ok=True
    )
