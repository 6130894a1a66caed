"""Part files: values taken from them, words on top, and files that lead nowhere."""

import pytest

from freecad_neckfit.job.errors import BadInput
from freecad_neckfit.job.parts import MOST_DEEP
from freecad_neckfit.job.read import read_job


@pytest.fixture
def shop(tmp_path):
    (tmp_path / "parts").mkdir()

    def write_and_read(text, **parts):
        for name, part in parts.items():
            (tmp_path / "parts" / f"{name}.toml").write_text(part, encoding="utf-8")
        path = tmp_path / "joint.toml"
        path.write_text(text, encoding="utf-8")
        return read_job(path)

    return write_and_read


@pytest.fixture
def refused(shop):
    def sentence(text, **parts):
        with pytest.raises(BadInput) as refusal:
            shop(text, **parts)
        said = str(refusal.value)
        assert "\n" not in said
        assert len(said) < 400
        return said

    return sentence


NECK = "[part]\nname='n'\nunits='inch'\n[neck]\nheight = 1\nbinding = '1 mm'\n[strings]\ncount = 4"


def test_own_keys_override_the_part_and_the_part_brings_its_other_tables(shop):
    base = shop("[neck]\nfrom='parts/n.toml'\nheight = 24", n=NECK).base
    assert base.stated == {"neck.height": 24.0, "neck.binding": 1.0, "strings.count": 4}
    assert base.origin("neck.height") == "stated in joint.toml"
    assert base.origin("neck.binding") == "stated in n.toml"


def test_a_part_has_its_own_unit(shop):
    base = shop("[neck]\nfrom='parts/n.toml'", n=NECK).base
    assert base.stated["neck.height"] == 25.4


def test_a_part_may_build_on_another(shop):
    more = "[neck]\nfrom = 'n.toml'\nbinding = 0.5"
    base = shop("[neck]\nfrom='parts/m.toml'", n=NECK, m=more).base
    assert base.stated["neck.binding"] == 0.5
    assert base.stated["neck.height"] == 25.4
    assert base.origin("neck.height") == "stated in n.toml"


def test_a_list_replaces_the_whole_list_of_the_part(shop):
    body = "[body]\ntail = 300\n" + "[[screw]]\nx=-5\ny=1\n" * 3
    base = shop("[body]\nfrom='parts/b.toml'\n[[screw]]\nx=-9\ny=2", b=body).base
    assert base.stated["screw.x"].tolist() == [-9.0]


def test_deviations_of_a_part_come_along(shop):
    body = "[body]\nthickness = {value = 44, limits = 0.2}"
    base = shop("[body]\nfrom='parts/b.toml'", b=body).base
    assert base.tolerances["body.thickness"] == (-0.2, 0.2)


def test_a_drawing_is_looked_for_beside_its_part(shop, tmp_path):
    base = shop("[body]\nfrom='parts/b.toml'", b="[body]\noutline_file='o.dxf'").base
    assert base.stated["body.outline_file"] == str(tmp_path / "parts" / "o.dxf")


def test_one_file_may_serve_two_tables(shop):
    both = "[neck]\nheight = 24\n[bridge]\nfront = 180"
    text = "[neck]\nfrom='parts/n.toml'\n[bridge]\nfrom='parts/n.toml'"
    assert shop(text, n=both).base.stated["bridge.front"] == 180.0


def test_two_parts_that_state_one_parameter_are_refused_unless_the_job_settles_it(refused, shop):
    parts = {
        "n": "[neck]\nheight=24\n[pocket]\ndepth=16",
        "b": "[body]\ntail=300\n[pocket]\ndepth=17",
    }
    text = "[neck]\nfrom='parts/n.toml'\n[body]\nfrom='parts/b.toml'\n"
    assert "pocket.depth is stated by both n.toml and b.toml" in refused(text, **parts)
    assert shop(text + "[pocket]\ndepth = 18", **parts).base.stated["pocket.depth"] == 18.0


@pytest.mark.parametrize(
    ("part", "words"),
    [
        ("[body]\ntail = 300", ("joint.toml", "n.toml", "[neck]")),
        ("[neck]\nheigth = 25", ("n.toml", "neck.height")),
        ("[neck]\nheight = 1000", ("n.toml", "neck.height", "1000 mm", "50.00 mm")),
        ("[neck", ("joint.toml: neck.from", "n.toml, line 1")),
        ("[job]\nname = 'x'", ("n.toml", "[job]")),
        ("[[option]]\nname = 'x'", ("n.toml", "[option]")),
        ("[part]\nunit = 'mm'", ("n.toml", '"unit"', "units")),
        ("[part]\nunits = 'ell'", ("part.units", '"ell"')),
        ("part = 1", ("part is 1",)),
        ("[neck]\nfrom = 'n.toml'", ("n.toml → n.toml",)),
        ("[neck]\nfrom = ''", ("neck.from is empty",)),
        ("[neck]\nfrom = 3", ("neck.from", "3")),
        ("[neck]\nfrom = '../parts'", ("n.toml: neck.from", "folder")),
        ("[neck]\nfrom = '/dev/zero'", ("no ordinary file",)),
    ],
)
def test_a_bad_part_is_refused_in_one_sentence(refused, part, words):
    sentence = refused("[neck]\nfrom = 'parts/n.toml'", n=part)
    for word in words:
        assert word in sentence


def test_parts_that_lead_in_a_circle_are_refused(refused):
    circle = {"a": "[neck]\nfrom='b.toml'", "b": "[neck]\nfrom='a.toml'"}
    sentence = refused("[neck]\nfrom='parts/a.toml'", **circle)
    assert "a.toml → b.toml → a.toml" in sentence


def test_a_link_in_a_circle_is_refused(refused, tmp_path):
    (tmp_path / "loop.toml").symlink_to("loop.toml")
    assert "loop.toml" in refused("[neck]\nfrom='loop.toml'")


def test_parts_that_build_on_each_other_without_end_are_refused(refused):
    chain = {f"n{i}": f"[neck]\nfrom='n{i + 1}.toml'" for i in range(MOST_DEEP + 2)}
    assert f"more than {MOST_DEEP}" in refused("[neck]\nfrom='parts/n0.toml'", **chain)


def test_a_list_has_no_part(refused):
    assert "screw.from" in refused("[[screw]]\nfrom='parts/s.toml'\nx=-5\ny=0")
