"""Properties come from the declarations, and what objects state reads back as it was stated."""

import numpy as np
import pytest

from freecad_neckfit.features import properties, roles
from freecad_neckfit.job.parameters import ALL, GROUPS
from freecad_neckfit.job.quantity import Kind
from freecad_neckfit.job.resolve import complete
from tests.random_jobs import draw

pytestmark = pytest.mark.freecad


def same(a, b):
    return set(a) == set(b) and all(
        np.array_equal(a[k], b[k], equal_nan=_is_float(a[k])) for k in a
    )


def _is_float(value):
    return isinstance(value, float) or getattr(getattr(value, "dtype", None), "kind", "") == "f"


def test_every_group_is_stated_by_exactly_one_object():
    stated = [group for groups in roles.STATED.values() for group in groups]
    assert sorted(stated) == sorted(GROUPS)


@pytest.mark.parametrize("role", roles.STATED)
def test_no_two_parameters_of_an_object_share_a_property(role):
    names = [properties.property_of(p) for p in properties.parameters_of(role)]
    names += {properties.flag_of(p) for p in properties.parameters_of(role)} - {""}
    assert len(names) == len(set(names))


@pytest.mark.parametrize(
    ("key", "name", "kind"),
    [
        ("pocket.floor_fillet", "FloorFillet", "App::PropertyDistance"),
        ("pocket.angle", "Angle", "App::PropertyAngle"),
        ("seat.end_gap", "SeatEndGap", "App::PropertyDistance"),
        ("body.top", "Top", "App::PropertyEnumeration"),
        ("body.outline_file", "OutlineFile", "App::PropertyFile"),
        ("body.outline_points", "OutlinePoints", "App::PropertyVectorList"),
        ("neck.frets", "Frets", "App::PropertyInteger"),
        ("strings.left_handed", "StringsLeftHanded", "App::PropertyBool"),
        ("strings.pitch", "StringsPitch", "App::PropertyFloatList"),
        ("screw.x", "ScrewX", "App::PropertyFloatList"),
        ("climate.humidity_dry", "ClimateHumidityDry", "App::PropertyFloat"),
        ("wood.body", "WoodBody", "App::PropertyString"),
    ],
)
def test_a_parameter_becomes_a_property(joint, key, name, kind):
    (obj,) = (o for o in joint.Document.Objects if ALL[key].group in _groups(o))
    assert properties.property_of(ALL[key]) == name
    assert obj.getTypeIdOfProperty(name) == kind
    assert obj.getGroupOfProperty(name) == properties.title_of(ALL[key].group)
    assert obj.getDocumentationOfProperty(name).lower().startswith(ALL[key].meaning.lower())


def _groups(obj):
    return roles.STATED.get(roles.role_of(obj), ())


def test_a_tooltip_tells_meaning_range_place_and_default():
    assert properties.tooltip(ALL["pocket.depth"]) == (
        "Depth of the pocket in bare wood, at the end wall, square to the datum.\n"
        "Permitted: 3.00 mm to 60.00 mm, 0.118 in to 2.362 in.\n"
        "Measure: depth gauge from the top at the end wall.\n"
        "Default: 15.88 mm or 0.625 in (common practice, no source)."
    )


def test_a_new_joint_states_nothing_and_shows_every_default(joint):
    from freecad_neckfit.features.gather import joint_stated, objects_of

    assert joint_stated(joint) == {}
    values = complete({})
    for obj in objects_of(joint):
        for p in properties.parameters_of(roles.role_of(obj)):
            shown = getattr(obj, properties.property_of(p))
            if p.kind in (Kind.LENGTH, Kind.ANGLE) and not p.many:
                worked_out = values[p.key]
                is_empty = worked_out is None or np.isnan(worked_out)
                assert shown.Value == (0.0 if is_empty else pytest.approx(worked_out, abs=1e-12))
            elif p.many:
                assert list(shown) == ([] if values[p.key] is None else list(values[p.key]))


@pytest.mark.parametrize("seed", range(12))
def test_what_random_joints_state_reads_back(document, seed):
    from freecad_neckfit.features.gather import joint_stated
    from freecad_neckfit.features.make import make_joint
    from freecad_neckfit.job.joint import Job

    stated, _ = draw(seed)
    joint = make_joint(document, Job.of("drawn", stated))
    back = joint_stated(joint)
    assert set(stated) <= set(back)
    assert same(complete(back), complete(stated))


def test_stating_anew_puts_the_rest_back(joint):
    from freecad_neckfit.features.values import state, stated_of

    joint.Neck.Overhang = 9.0
    joint.Neck.Frets = 21
    state(joint.Neck, {"neck.frets": 21, "strings.compensation": np.arange(6.0)})
    back = stated_of(joint.Neck)
    assert set(back) == {"neck.frets", "strings.compensation"}
    assert list(back["strings.compensation"]) == [0.0, 1.0, 2.0, 3.0, 4.0, 5.0]


def test_a_list_stated_as_empty_stays_empty(joint):
    from freecad_neckfit.features.values import state, stated_of

    none = np.array([])
    state(joint.Hardware, {"screw.x": none, "screw.y": none})
    assert [len(v) for v in stated_of(joint.Hardware).values()] == [0, 0]
