"""The command as a builder runs it: from any Python, in a process of its own."""

import json
import os
import subprocess
import sys

import pytest

jsonschema = pytest.importorskip("jsonschema", reason="tests/run installs it")


def run(checkout, *words, **environment):
    """The finished process of one command."""
    clean = {k: v for k, v in os.environ.items() if k != "PYTHONPATH"}
    return subprocess.run(
        [sys.executable, "-m", "freecad_neckfit", *map(str, words)],
        cwd=checkout, env=clean | environment, capture_output=True, text=True, timeout=120,
        check=False,
    )  # fmt: skip


@pytest.fixture(scope="module")
def sample(checkout, tmp_path_factory):
    """The sample job, run once: process and folder with its results."""
    folder = tmp_path_factory.mktemp("out")
    done = run(
        checkout, "check", "samples/joint.toml", "--json", folder / "out.json",
        "--fcstd", folder / "out.FCStd", "--step", folder / "out.step", "--width", "100",
    )  # fmt: skip
    return done, folder


@pytest.mark.freecad
def test_the_sample_fits_and_says_so_first(sample):
    done, _ = sample
    assert done.stderr == ""
    assert done.returncode == 0
    assert "FITS" in done.stdout.splitlines()[0]
    assert "\x1b" not in done.stdout


@pytest.mark.freecad
def test_the_record_follows_the_published_schema(sample, checkout):
    _, folder = sample
    schema = json.loads((checkout / "freecad_neckfit/data/result.schema.json").read_text())
    record = json.loads((folder / "out.json").read_text())
    jsonschema.validate(record, schema)
    assert record["joints"][0]["verdict"] == "fits"


@pytest.mark.freecad
def test_document_and_step_hold_the_same_wood(sample):
    import FreeCAD
    import Part

    _, folder = sample
    document = FreeCAD.openDocument(str(folder / "out.FCStd"))
    try:
        shapes = [o.Shape for o in document.Objects if o.TypeId == "Part::Feature"]
        saved = sum(s.Volume for s in shapes)
    finally:
        FreeCAD.closeDocument(document.Name)
    assert len(shapes) > 5
    step = Part.Shape()
    step.read(str(folder / "out.step"))
    assert sum(s.Volume for s in step.Solids) == pytest.approx(saved, rel=1e-6)


@pytest.mark.freecad
def test_a_deeper_pocket_under_a_plate_ends_with_one(checkout):
    done = run(checkout, "check", "samples/joint.toml", "--option", "deeper pocket with plate")
    assert done.returncode == 1
    assert "DOES NOT FIT" in done.stdout
    assert "interferes" in done.stdout


@pytest.mark.parametrize("width", [40, 60, 80, 120])
def test_no_line_is_wider_than_asked(checkout, width):
    done = run(checkout, "check", "samples/joint.toml", "--closed-forms-only", "--width", width)
    assert done.returncode == 0
    assert max(map(len, done.stdout.splitlines())) <= width


def test_inches_are_shown_on_request(checkout):
    done = run(checkout, "check", "samples/joint.toml", "--closed-forms-only", "--units", "inch")
    assert " in " in done.stdout
    assert " mm" not in done.stdout


def test_colour_only_on_request_or_on_a_terminal(checkout):
    words = ("check", "samples/joint.toml", "--closed-forms-only", "--colour")
    assert "\x1b[" in run(checkout, *words, "always").stdout
    assert "\x1b[" not in run(checkout, *words, "auto").stdout


@pytest.mark.parametrize(
    ("command", "file"), [("parameters", "PARAMETERS.md"), ("checks", "CHECKS.md")]
)
def test_the_printed_tables_are_up_to_date(checkout, command, file):
    done = run(checkout, command)
    assert done.stdout == (checkout / "resources" / file).read_text()


def test_the_schema_is_printed_as_published(checkout):
    done = run(checkout, "schema")
    assert json.loads(done.stdout)["properties"]["schema"] == {"const": 1}


@pytest.mark.freecad
def test_a_python_without_freecad_finds_the_one_that_has_it(checkout):
    """Isolated from FreeCAD's folders, the command starts itself again under the right Python."""
    done = run(checkout, "check", "samples/joint.toml", PYTHONPATH="")
    assert done.returncode == 0
