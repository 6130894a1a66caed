"""Options: differences from the base, another part in place of the base's."""

import pytest

from freecad_neckfit.job.errors import BadInput
from freecad_neckfit.job.read import read_job

BASE = "[neck]\nfrom = 'old.toml'\nrelief = 0.3\n[pocket]\ndepth = 16\n[[screw]]\nx=-9\ny=0\n"
OLD = "[neck]\noverhang = 12\nbinding = 1\nbinding_width = 1.5\n[strings]\ncount = 7"
NEW = "[neck]\nfrets = 21"


@pytest.fixture
def read(tmp_path):
    (tmp_path / "old.toml").write_text(OLD)
    (tmp_path / "new.toml").write_text(NEW)

    def write_and_read(text):
        path = tmp_path / "joint.toml"
        path.write_text(text, encoding="utf-8")
        return read_job(path)

    return write_and_read


def test_an_option_states_only_what_differs(read):
    job = read(BASE + "[[option]]\nname = 'deeper'\n[option.pocket]\ndepth = '0.720 in'")
    (option,) = job.options
    assert option.name == "deeper"
    changed = {
        k for k, v in option.stated.items() if k != "pocket.depth" and v is not job.base.stated[k]
    }
    assert changed == set()
    assert option.stated["pocket.depth"] == pytest.approx(18.288, abs=1e-12)
    assert job.base.stated["pocket.depth"] == 16.0
    assert list(option.tables.own.values) == ["pocket.depth"]


def test_another_part_leaves_nothing_of_the_former_one(read):
    job = read(BASE + "[[option]]\nname = 'other neck'\n[option.neck]\nfrom = 'new.toml'")
    option = job.options[0]
    assert "neck.overhang" not in option.stated
    assert "neck.relief" not in option.stated  # it was said of the former neck
    assert "strings.count" not in option.stated
    assert option.stated["neck.frets"] == 21
    assert option.stated["pocket.depth"] == 16.0


def test_an_option_may_leave_a_parameter_to_its_default(read):
    text = "[[option]]\nname = 'as derived'\ndefault = ['neck.overhang', 'screw', 'pocket.depth']\n"
    option = read(BASE + text).options[0]
    assert "neck.overhang" not in option.stated
    assert "pocket.depth" not in option.stated
    assert len(option.values["screw.x"]) == 4
    assert option.stated["neck.binding"] == 1.0


def test_what_an_option_states_wins_over_what_it_leaves_to_the_default(read):
    text = "[[option]]\nname = 'x'\ndefault = ['screw']\n[[option.screw]]\nx=-20\ny=3"
    assert read(BASE + text).options[0].stated["screw.x"].tolist() == [-20.0]


def test_an_options_list_replaces_the_bases(read):
    text = "[[option]]\nname = 'x'\n[[option.screw]]\nx=-20\ny=3\n[[option.screw]]\nx=-30\ny=3"
    assert read(BASE + text).options[0].stated["screw.x"].tolist() == [-20.0, -30.0]


def test_an_option_may_state_deviations(read):
    text = "[[option]]\nname = 'x'\n[option.tolerance]\n'pocket.depth' = 0.4"
    job = read(BASE + text)
    assert job.options[0].tolerances["pocket.depth"] == (-0.4, 0.4)
    assert job.base.tolerances["pocket.depth"] == (-0.1, 0.1)


@pytest.mark.parametrize(
    ("text", "words"),
    [
        ("[[option]]\nname='a'\n[[option]]\nname=' a '", ("two options", "'a'")),
        ("[[option]]\npocket.depth = 18", ("option 1 has no name",)),
        ("[[option]]\nname = ' '", ("name of option 1 is empty",)),
        ("[[option]]\nname = 3", ("name of option 1", "3")),
        ("[option]\nname = 'x'", ("[[option]]",)),
        ("option = 3", ("[[option]]",)),
        ("[[option]]\nname='x'\n[option.job]\nunits='inch'", ("'x'", "[job]")),
        ("[[option]]\nname='x'\n[option.pocket]\ndepht=1", ("pocket.depth",)),
        ("[[option]]\nname='x'\n[option.option]\nname='y'", ("option",)),
        ("[[option]]\nname='x'\ndefault='pocket.depth'", ("default", "list")),
        ("[[option]]\nname='x'\ndefault=['pocket.depht']", ("pocket.depth",)),
        ("[[option]]\nname='x'\n[option.strings]\nmass=[1,1]", ('option "x"', "strings.mass")),
        ("[[option]]\nname='x'\n" * 201, ("201",)),
    ],
)  # fmt: skip
def test_a_bad_option_is_refused_in_one_sentence(read, text, words):
    with pytest.raises(BadInput) as refusal:
        read(text)
    sentence = str(refusal.value)
    assert sentence.startswith("joint.toml")
    assert "\n" not in sentence
    for word in words:
        assert word in sentence
