"""A check shows its findings in the 3D view: what the view's Coin nodes hold, stage by stage.

The sample joint with a pocket of 17.5 mm and a cover plate round it, into which the deeper pocket
sinks the fretboard. The joint is moved and turned, so that places are not confused with points.
"""

import pytest

from freecad_neckfit.job.parameters import ALL

pytestmark = pytest.mark.gui

SHOWN = {"interferes", "too little", "too much", "touches", "worth a look"}
SHOWN |= {"not checked", "tool disagrees"}
SOLID, DOTTED = 0xFFFF, 0xCCCC


@pytest.fixture(scope="module")
def stages(on_screen):
    return on_screen("checked_joint")


def element(finding):
    return finding["id"].replace(".", "__")


def labels_of(stage):
    return {name: label for name, label in stage["labels"].items() if name != "headline"}


def test_what_matters_has_a_label_and_what_fits_has_none(stages):
    stage = stages["checked"]
    wanted = {element(f) for f in stage["findings"] if f["state"] in SHOWN}
    assert set(labels_of(stage)) == wanted
    assert all(label["painted"] for label in labels_of(stage).values())


def test_a_label_says_sign_word_value_unit_title_and_demand(stages):
    label = labels_of(stages["checked"])["overhang__gap"]
    assert label["text"].split("\n") == [
        "X interferes by 1.55 mm",
        "room under the overhang",
        "wanted: 0.15 to 0.80 mm",
    ]
    assert label["pattern"] == SOLID


def test_every_label_tells_its_own_finding(stages):
    stage = stages["checked"]
    for finding in stage["findings"]:
        if element(finding) not in stage["labels"]:
            continue
        first, title, *_ = stage["labels"][element(finding)]["text"].split("\n")
        assert title == finding["title"]
        assert f" {finding['state']}" in first
        assert first.endswith(f"{abs(finding['value']):.2f} mm")


def test_the_headline_counts_the_findings(stages):
    text = stages["checked"]["labels"]["headline"]["text"]
    clashes = sum(f["state"] == "interferes" for f in stages["checked"]["findings"])
    assert clashes >= 2
    assert text.startswith(f"DOES NOT FIT\n{clashes} interfering")


@pytest.mark.parametrize("stage", ["checked", "reopened", "changed", "moved"])
def test_leaders_end_at_the_findings_places_in_the_turned_joint(stages, stage):
    seen = stages[stage]
    pointed = 0
    for finding in seen["findings"]:
        label = seen["labels"].get(element(finding))
        if label is None:
            continue
        if finding["place"] is None:
            assert label["leader end"] is None
            continue
        at = moved(seen["placement"], finding["place"])
        # Coin keeps floats of 24 bits.
        assert label["leader end"] == pytest.approx(at, abs=1e-3)
        pointed += 1
    assert pointed >= 4


def moved(matrix, point):
    rows = [matrix[4 * i : 4 * i + 4] for i in range(3)]
    return [sum(a * b for a, b in zip(row, [*point, 1.0], strict=True)) for row in rows]


def test_the_interference_is_drawn_over_the_wood_where_the_parts_share_room(stages):
    stage = stages["checked"]
    clash, gap = stage["clash"], value(stage, "overhang.gap")
    assert clash["over"]
    # As thick as the interference is deep, down from the plate's top.
    assert clash["high"][2] - clash["low"][2] == pytest.approx(-gap, abs=1e-3)
    over = value(stage, "overhang.trapped_plate")
    # The plate ends its clearance before the end wall; the overhang reaches over it from there.
    clearance = float(ALL["plate.clearance"].default)
    assert clash["high"][0] == pytest.approx(over + clearance, abs=0.2)
    box = [high - low for low, high in zip(clash["low"], clash["high"], strict=True)]
    assert 0 < stage["shared"] < box[0] * box[1] * box[2]


def value(stage, finding_id):
    return next(f["value"] for f in stage["findings"] if f["id"] == finding_id)


def test_toggles_show_and_hide(stages):
    hidden = stages["no interference"]
    assert hidden["clash"] is None
    assert set(labels_of(hidden)) == {
        name
        for name, label in labels_of(stages["checked"]).items()
        if not label["text"].startswith("X interferes")
    }
    assert (stages["checked"]["map"], hidden["map"]) == (0, 0)
    assert stages["all shown"]["map"] > 100


def test_the_gap_map_explains_its_colours(stages):
    title, *steps = stages["all shown"]["labels"]["scale"]["text"].split("\n")
    assert title == "room under the overhang"
    assert steps[-2:] == ["0.00 mm", "interferes, up to 1.55 mm"]


def test_labels_without_room_are_counted(stages):
    stage = stages["all shown"]
    told = [f for f in stage["findings"] if f["state"] != "not applicable"]
    drawn = set(stage["labels"]) - {"headline", "scale"}
    more = stage["labels"]["headline"]["text"].split("\n")[-1]
    if len(drawn) == len(told):
        assert "more:" not in more
    else:
        assert more.startswith(f"{len(told) - len(drawn)} more: ")


def test_a_reopened_document_shows_the_same(stages):
    was, now = stages["checked"], stages["reopened"]
    assert now["findings"] == was["findings"]
    assert now["clash"] == was["clash"]
    assert now["shared"] == pytest.approx(was["shared"], abs=1e-6)
    assert set(now["labels"]) == set(was["labels"])
    for name, label in was["labels"].items():
        assert now["labels"][name]["text"] == label["text"]


def test_a_change_marks_all_labels_as_out_of_date_and_its_reversal_none(stages):
    changed, back = labels_of(stages["changed"]), labels_of(stages["changed back"])
    assert stages["changed"]["icon"] == "check_stale.svg"
    assert changed
    for label in changed.values():
        assert label["text"].endswith("\nout of date")
        assert label["pattern"] in (DOTTED, None)
    assert stages["changed back"]["icon"] == "check.svg"
    assert set(back) == set(labels_of(stages["checked"]))
    assert not any("out of date" in label["text"] for label in back.values())
