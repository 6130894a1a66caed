"""A wrong sign planted in either reading shows as the tool disagreeing with itself."""

import dataclasses

import pytest

from freecad_neckfit.fit import mount
from freecad_neckfit.run.chain import check_values
from freecad_neckfit.run.finding import State

pytestmark = pytest.mark.freecad

JOINT = {
    "body.top": "domed",
    "pocket.angle": 1.0,
    "neck.binding_width": 1.5,
    "neck.binding": 0.5,
}


def quarrels(result):
    return {f.id for f in result.findings if f.state is State.DISAGREES}


def test_the_joint_itself_is_read_the_same_in_both_ways():
    assert quarrels(check_values(JOINT)) == set()


def test_a_wrong_sign_in_the_closed_form_of_the_top(monkeypatch):
    true = mount.top_height
    monkeypatch.setattr(mount, "top_height", lambda *a, **k: -true(*a, **k))
    assert "overhang.gap" in quarrels(check_values(JOINT))


@pytest.mark.parametrize(
    ("key", "check"),
    [
        ("overhang_gap", "overhang.gap"),
        ("side_treble", "side.treble"),
        ("saddle_low", "saddle.low"),
        ("string_fretted", "strings.fretted"),
        ("screw_tip", "screws.tip"),
    ],
)
def test_a_wrong_sign_in_a_measurement(monkeypatch, key, check):
    from freecad_neckfit.solids import measure

    true = measure.KEYS[key]

    def wrong(context):
        right = true(context)
        return dataclasses.replace(right, value=-right.value)

    monkeypatch.setitem(measure.KEYS, key, wrong)
    assert check in quarrels(check_values(JOINT))
