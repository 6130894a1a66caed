"""``neck FILE``: the table, the JSON, the part file and the exit codes."""

import json
import os
import subprocess
import sys
from pathlib import Path

import pytest

sys.path.insert(0, str(Path(__file__).parents[1] / "solids"))

from necks_in_files import sound_necks, unpacked

pytestmark = pytest.mark.freecad

TRUTH = {r["kind"]: r["truth"] for r in sound_necks()}


def run(checkout, *words):
    done = subprocess.run(
        [sys.executable, "-m", "freecad_neckfit", "neck", *map(str, words)],
        cwd=checkout, capture_output=True, text=True, check=False,
        env={**os.environ, "PYTHONPATH": str(checkout)},
    )  # fmt: skip
    assert "Traceback" not in done.stderr
    return done


def test_a_sound_neck_is_told_and_written(checkout, tmp_path):
    file = unpacked("parts.step.xz", tmp_path)
    out, part = tmp_path / "neck.json", tmp_path / "neck.toml"
    done = run(checkout, file, "--json", out, "--toml", part)
    assert done.returncode == 0, done.stderr
    row = next(line for line in done.stdout.splitlines() if "neck.scale" in line)
    assert f"{TRUTH['parts']['neck.scale']:.2f} mm" in row
    assert "sure" in row
    assert "equal temperament" in row
    record = json.loads(out.read_text())
    values = {d["key"]: d for d in record["recognised"]}
    assert values["neck.frets"]["value"] == TRUTH["parts"]["neck.frets"]
    assert values["neck.height"]["residual"] < 1e-3
    assert record["sure"] is True
    assert record["questions"] == []
    from freecad_neckfit.job.read import read_job

    job = tmp_path / "job.toml"
    job.write_text('[neck]\nfrom = "neck.toml"\n')
    stated = read_job(job).base.stated
    assert stated["neck.height"] == pytest.approx(TRUTH["parts"]["neck.height"], abs=1e-3)


def test_lengths_are_shown_in_inches_where_asked(checkout, tmp_path):
    done = run(checkout, unpacked("cylinder.brep.xz", tmp_path), "--units", "inch")
    height = TRUTH["cylinder"]["neck.height"] / 25.4
    assert f"{height:.3f} in" in done.stdout


def test_it_is_judged_in_a_job(checkout, tmp_path):
    file = unpacked("parts.step.xz", tmp_path)
    out = tmp_path / "neck.json"
    done = run(checkout, file, "--job", checkout / "samples" / "joint.toml", "--json", out)
    assert done.returncode in (0, 1), done.stderr
    judged = json.loads(out.read_text())["judged"]["joints"][0]
    assert judged["exit_code"] == done.returncode
    assert judged["stated"]["neck.height"] == pytest.approx(TRUTH["parts"]["neck.height"])
    assert "Heron" in done.stdout


def test_open_questions_end_with_three_until_they_are_answered(checkout, tmp_path):
    file = unpacked("leaning-board.step.xz", tmp_path)
    done = run(checkout, file)
    assert done.returncode == 3
    assert "? neck.height" in done.stdout
    both = ("--accept", "neck.height", "--accept", "neck.underside")
    assert run(checkout, file, *both).returncode == 0


@pytest.mark.parametrize("file", ["stick.step.xz", "cut-short.step", "body.step.xz"])
def test_what_is_no_neck_ends_with_two_and_one_sentence(checkout, tmp_path, file):
    done = run(checkout, unpacked(file, tmp_path))
    assert done.returncode == 2
    assert done.stdout == ""
    assert len(done.stderr.strip().splitlines()) == 1


def test_wrong_words_are_refused(checkout, tmp_path):
    file = unpacked("plain.step.xz", tmp_path)
    for words in (["--pick", "heel bottom"], ["--pick", "nose=1"], ["--option", "x"],
                  ["--accept", "neck.nose"]):  # fmt: skip
        done = run(checkout, file, *words)
        assert done.returncode == 2
        assert len(done.stderr.strip().splitlines()) == 1


def test_a_face_that_is_wanted_ends_with_three_and_says_how_to_name_it(
    tmp_path, monkeypatch, capsys
):
    from freecad_neckfit.cli import main
    from freecad_neckfit.run import neck_judged
    from freecad_neckfit.solids.recognise.neck import PickWanted

    def wanting(*_, **__):
        raise PickWanted("plain.step: the heel's end was not found.", item="heel end")

    monkeypatch.setattr(neck_judged, "recognise_for", wanting)
    assert main(["neck", str(unpacked("plain.step.xz", tmp_path))]) == 3
    assert '--pick "heel end=12,13" names its faces' in capsys.readouterr().err


def test_a_heel_beside_the_centreline_is_said_to_be_why_the_tool_disagrees(checkout, tmp_path):
    job = checkout / "samples" / "joint.toml"
    done = run(checkout, unpacked("crooked-heel.step.xz", tmp_path), "--job", job)
    assert done.returncode == 3
    assert ("tool disagrees" in done.stdout) == ("Where the tool disagrees" in done.stdout)
    assert "tool disagrees" in done.stdout
