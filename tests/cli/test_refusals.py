"""Bad input: one sentence on stderr, exit code 2, no traceback, nothing half-written."""

import os

import pytest

from freecad_neckfit.cli import main

FIRST_LINE_LIMIT = 400


@pytest.fixture
def job(tmp_path):
    def write(text, name="joint.toml"):
        path = tmp_path / name
        path.write_text(text)
        return path

    return write


def refusal(capsys, *words):
    """The sentence that the command refuses with."""
    assert main(["check", *map(str, words), "--closed-forms-only"]) == 2
    out, err = capsys.readouterr()
    assert out == ""
    assert "Traceback" not in err
    lines = err.strip().splitlines()
    assert len(lines) == 1
    assert len(lines[0]) < FIRST_LINE_LIMIT
    assert lines[0].startswith("neckfit: ")
    return lines[0]


@pytest.mark.parametrize(
    ("text", "parts"),
    [
        ("[pocket]\ndepht = 16", ("joint.toml", "pocket.depht", "depth")),
        ("[pokcet]\ndepth = 16", ("joint.toml", "pokcet", "pocket")),
        ("[pocket]\ndepth = true", ("pocket.depth", "true")),
        ("[pocket]\ndepth = [16]", ("pocket.depth",)),
        ("[pocket]\ndepth = '15 deg'", ("pocket.depth", "15 deg", "length")),
        ("[pocket]\nangle = '2 mm'", ("pocket.angle", "2 mm", "angle")),
        ("[pocket]\ndepth = nan", ("pocket.depth", "nan")),
        ("[pocket]\ndepth = inf", ("pocket.depth", "inf")),
        ("[pocket]\ndepth = -1", ("pocket.depth", "-1", "3")),
        ("[pocket]\ndepth = 1e9", ("pocket.depth",)),
        ("[pocket]\ndepth = '15,875 mm'", ("pocket.depth", "decimal comma", "15.875 mm")),
        ("[pocket]\ndepth = '16 furlong'", ("pocket.depth", "furlong")),
        ("[pocket]\ndepth = '5/0 in'", ("pocket.depth", "5/0")),
        ("[pocket]\ndepth = ''", ("pocket.depth",)),
        ("[pocket]\nend_shape = 'triangular'", ("pocket.end_shape", "triangular", "square")),
        ("[neck]\nfrets = 21.5", ("neck.frets", "21.5")),
        ("[strings]\nleft_handed = 'yes'", ("strings.left_handed", "yes")),
        ("[strings]\ncount = 9", ("strings.count", "9", "8")),
        ("[strings]\ncompensation = [1.0, 2.0]", ("strings.compensation", "6")),
        ("pocket = 3", ("pocket",)),
        ("[pocket\ndepth = 16", ("joint.toml", "line")),
        ("[body]\nthickness = 40\n[pocket]\ndepth = 41", ("depth", "through")),
        ("[[option]]\nname = 'a'\n[[option]]\nname = 'a'", ("'a'",)),
        ("[[option]]\npocket.depth = 18", ("name",)),
        ("[[screw]]\nx = -10\n", ("screw",)),
        ("[neck]\nfrom = 'nowhere.toml'", ("nowhere.toml",)),
    ],
)
def test_a_bad_job_is_refused_in_one_sentence(job, capsys, text, parts):
    sentence = refusal(capsys, job(text))
    for part in parts:
        assert part in sentence


def test_a_missing_file(tmp_path, capsys):
    assert "nowhere.toml" in refusal(capsys, tmp_path / "nowhere.toml")


def test_a_folder(tmp_path, capsys):
    assert "folder" in refusal(capsys, tmp_path)


def test_a_file_that_is_no_text(tmp_path, capsys):
    path = tmp_path / "joint.toml"
    path.write_bytes(b"\xff\xfe\x00\x01")
    assert "joint.toml" in refusal(capsys, path)


def test_a_huge_file(job, capsys):
    path = job("# " + "x" * 100 + "\n")
    with path.open("a") as file:
        file.write(("#" + "x" * 1000 + "\n") * 4000)
    assert "MB" in refusal(capsys, path)


@pytest.mark.skipif(os.geteuid() == 0, reason="root may read every file")
def test_a_file_that_may_not_be_read(job, capsys):
    path = job("[pocket]\ndepth = 16")
    path.chmod(0)
    assert "joint.toml" in refusal(capsys, path)


def test_an_option_that_is_not_there(job, capsys):
    path = job("[[option]]\nname = 'deeper pocket'\npocket.depth = 18")
    assert "deeper pocket" in refusal(capsys, path, "--option", "deeper pockets")


def test_results_that_cannot_be_written_leave_nothing_behind(job, tmp_path, capsys):
    path = job("[pocket]\ndepth = 16")
    missing = tmp_path / "no such folder" / "out.json"
    sentence = refusal(capsys, path, "--json", missing)
    assert "out.json" in sentence
    assert sorted(p.name for p in tmp_path.iterdir()) == ["joint.toml"]


def test_an_old_result_survives_a_refusal(job, tmp_path, capsys):
    out = tmp_path / "out.json"
    out.write_text("old")
    refusal(capsys, job("[pocket]\ndepth = -1"), "--json", out)
    assert out.read_text() == "old"


def test_a_heel_five_millimetres_too_wide_is_judged_and_not_refused(job, capsys):
    path = job("[neck]\nheel_width_end = 61.2\nwidth_end = 61.2\n")
    assert main(["check", str(path), "--closed-forms-only"]) == 1
    out, err = capsys.readouterr()
    assert err == ""
    assert "interferes" in out


def test_unknown_words_on_the_command_line_end_with_two(capsys):
    with pytest.raises(SystemExit) as stop:
        main(["chekc", "x.toml"])
    assert stop.value.code == 2
    assert "Traceback" not in capsys.readouterr().err
