"""The deciding commands as a builder runs them."""

import csv
import json
import os
import signal
import subprocess
import sys
import xml.etree.ElementTree as ET

import pytest

from tests.cli.test_command import run

SAMPLE = "samples/joint.toml"


def test_window_tells_and_draws(checkout, tmp_path):
    svg, record = tmp_path / "w.svg", tmp_path / "w.json"
    done = run(
        checkout, "window", SAMPLE, "--svg", svg, "--json", record, "--stops", "15.6, 5/8 in"
    )
    assert done.stderr == ""
    assert done.returncode == 0
    assert done.stdout.startswith("Heron with 22 frets and thin plate: within the window")
    assert "router stop 15.6 mm" in done.stdout
    assert ET.fromstring(svg.read_text()).tag.endswith("svg")
    assert json.loads(record.read_text())["stated"]["fits"] is True


def test_window_over_plate_thickness_in_inches(checkout):
    done = run(checkout, "window", SAMPLE, "--over", "plate", "--units", "inch",
               "--depth", "14..17", "--range", "1..3 mm")  # fmt: skip
    assert done.returncode == 0
    assert "plate 0.090 in" in done.stdout


def test_without_a_window_the_code_says_so(checkout):
    done = run(checkout, "window", SAMPLE, "--option", "high bridge, deeper pocket")
    assert done.returncode == 1
    assert "NO WINDOW" in done.stdout


@pytest.mark.freecad
def test_mend_tells_conflict_and_remedies(checkout):
    done = run(checkout, "mend", SAMPLE, "--option", "hanging binding, deeper pocket")
    assert done.stderr == ""
    assert done.returncode == 1
    assert "exclude one another" in done.stdout
    assert "1. pocket depth 18.29 mm -> " in done.stdout
    assert "neck binding 0.60 mm -> 0.50 mm (-0.10 mm)" in done.stdout


@pytest.mark.freecad
def test_mend_leaves_a_joint_that_fits_alone(checkout):
    done = run(checkout, "mend", SAMPLE)
    assert done.returncode == 0
    assert "fits; nothing to mend" in done.stdout


def test_options_writes_page_and_spreadsheet(checkout, tmp_path):
    page, sheet = tmp_path / "o.html", tmp_path / "o.csv"
    done = run(checkout, "options", SAMPLE, "--html", page, "--csv", sheet, "--width", "90")
    assert done.returncode == 0
    assert "DOES NOT FIT" in done.stdout
    assert "<table>" in page.read_text()
    rows = list(csv.reader(sheet.read_text().splitlines()))
    assert rows[1][1] == "verdict"
    assert max(map(len, done.stdout.splitlines())) <= 96


def test_tolerances_tells_draws_and_writes(checkout, tmp_path):
    svg, record = tmp_path / "t.svg", tmp_path / "t.json"
    done = run(checkout, "tolerances", SAMPLE, "--draws", "20000", "--svg", svg, "--json", record,
               "--limits", "pocket.depth=±0.05 mm", "--spread", "neck.underside=normal",
               "--wish", "5")  # fmt: skip
    assert done.stderr == ""
    assert done.returncode == 1
    assert "of joints fail" in done.stdout
    assert "To come down to 5.00 %" in done.stdout
    found = json.loads(record.read_text())
    assert 0.2 < found["failure_share"] < 0.4
    depth = next(d for d in found["dimensions"] if d["key"] == "pocket.depth")
    assert depth["upper"] == 0.05
    shapes = {d["key"]: d["shape"] for d in found["dimensions"]}
    assert shapes["neck.underside"] == "normal"
    assert shapes["pocket.depth"] == "uniform"
    assert ET.fromstring(svg.read_text()).tag.endswith("svg")


def test_seasons_follows_the_year(checkout, tmp_path):
    rooms = tmp_path / "room.csv"
    lines = [f"{n},20,{40 + n}" for n in range(1, 13)]
    rooms.write_text("\n".join(["month,temperature,humidity", *lines]))
    done = run(checkout, "seasons", SAMPLE, "--owner", rooms, "--shop", rooms, "--month", "Mar",
               "--svg", tmp_path / "y.svg")  # fmt: skip
    assert done.returncode == 0
    assert "fits through the year" in done.stdout
    assert "room under the overhang" in done.stdout
    assert (tmp_path / "y.svg").exists()


@pytest.mark.parametrize(
    ("words", "says"),
    [
        (("window", SAMPLE, "--depth", "15"), "is no range"),
        (("window", SAMPLE, "--depth", "18..15"), "state the smaller first"),
        (("window", SAMPLE, "--option", "deeper"), 'no option "deeper" (it has: usual'),
        (("window", SAMPLE, "--step-depth", "0"), "more than 0"),
        (("window", SAMPLE, "--stops", "deep"), "--stops"),
        (("tolerances", SAMPLE, "--limits", "pocket.dept=0.1"), "did you mean pocket.depth"),
        (("tolerances", SAMPLE, "--limits", "pocket.depth"), "write it as"),
        (("tolerances", SAMPLE, "--draws", "5"), "--draws"),
        (("tolerances", SAMPLE, "--spread", "pocket.depth=flat"), "is no shape"),
        (("tolerances", SAMPLE, "--wish", "120"), "--wish"),
        (("seasons", SAMPLE, "--month", "Mar"), "belong together"),
        (("seasons", SAMPLE, "--owner", "nowhere.csv"), "no such file"),
        (("options", SAMPLE, "--option", "none"), 'no option "none" ('),
    ],
)
def test_what_cannot_be_done_is_told_in_one_sentence(checkout, words, says):
    done = run(checkout, *words)
    assert done.returncode == 2
    assert done.stdout == ""
    assert says in done.stderr
    assert len(done.stderr.strip().splitlines()) == 1


@pytest.mark.freecad
@pytest.mark.parametrize(
    ("words", "says"),
    [
        (("--keep", "dept"), "did you mean 'depth'"),
        (("--stock", "samples/parts/neck-22.toml"), "neither a bridge nor a pickup"),
        (("--stock", "samples/parts/none.toml"), "no such file"),
    ],
)
def test_mend_refuses_in_one_sentence(checkout, words, says):
    done = run(checkout, "mend", SAMPLE, "--option", "deeper pocket, no plate", *words)
    assert done.returncode == 2
    assert says in done.stderr


def test_a_long_search_tells_how_far_it_is_and_is_stopped_from_the_keyboard(checkout):
    # Where the tests run in the background, an interrupt would be ignored by what they start.
    signal.signal(signal.SIGINT, signal.default_int_handler)
    ours, theirs = os.openpty()
    words = ["tolerances", SAMPLE, "--draws", "100000000"]
    process = subprocess.Popen(
        [sys.executable, "-m", "freecad_neckfit", *words],
        cwd=checkout, env={k: v for k, v in os.environ.items() if k != "PYTHONPATH"},
        stdout=subprocess.PIPE, stderr=theirs, text=True,
    )  # fmt: skip
    os.close(theirs)
    told = ""
    while "joints drawn" not in told:
        told += os.read(ours, 1000).decode()
    process.send_signal(signal.SIGINT)
    out, _ = process.communicate(timeout=60)
    told += os.read(ours, 1000).decode()
    os.close(ours)
    assert process.returncode == 130
    assert out == ""
    assert "%" in told
    assert "neckfit: stopped." in told
    assert "Traceback" not in told


def test_limits_spreads_and_class_of_the_job_hold_in_the_command(checkout, tmp_path):
    text = (checkout / SAMPLE).read_text()
    text = text.replace('from = "parts/', f'from = "{checkout}/samples/parts/')
    job, record = tmp_path / "joint.toml", tmp_path / "t.json"
    job.write_text(
        text.replace('limits = "±0.1 mm" }', 'limits = "+1/64 in / -0", spread = "normal" }')
        + '\n[shop]\ngeneral = "m"\nspread = "triangular"\n'
    )
    done = run(checkout, "tolerances", job, "--draws", "2000", "--wish", "99", "--json", record)
    assert done.stderr == ""
    found = {d["key"]: d for d in json.loads(record.read_text())["dimensions"]}
    depth = found["pocket.depth"]
    assert (depth["lower"], depth["upper"]) == pytest.approx((0.0, 25.4 / 64))
    assert depth["shape"] == "normal"
    assert found["neck.heel_length"]["shape"] == "triangular"
    assert "RSS:" in done.stdout
