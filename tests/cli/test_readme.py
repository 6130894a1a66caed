"""What the README shows is what the program prints and does."""

import re
import subprocess
import sys

import pytest

pytestmark = pytest.mark.freecad

WIDTH = 96


def block(text, language):
    """The first fenced block of a language."""
    return re.search(rf"```{language}\n(.*?)```", text, re.DOTALL).group(1)


def test_the_table_in_the_readme_is_what_the_sample_prints(checkout):
    readme = (checkout / "README.md").read_text()
    shown = re.search(r"<!-- sample -->\n```\n(.*?)```\n<!-- /sample -->", readme, re.DOTALL)
    words = ["-m", "freecad_neckfit", "check", "samples/joint.toml", "--width", str(WIDTH)]
    done = subprocess.run(
        [sys.executable, *words], cwd=checkout, capture_output=True, text=True, check=False
    )
    assert done.stdout == shown.group(1)


def test_the_job_in_the_readme_is_read_and_judged(checkout, tmp_path):
    from freecad_neckfit.job.read import read_job
    from freecad_neckfit.run.whole import check_job

    path = tmp_path / "my-joint.toml"
    path.write_text(block((checkout / "README.md").read_text(), "toml"))
    job = read_job(path)
    assert [o.name for o in job.options] == ["deeper pocket"]
    base, deeper = check_job(job, solids=False)
    assert base.values["pocket.depth"] == 15.875
    assert base.values["plate.thickness"] == pytest.approx(0.095 * 25.4)
    assert deeper.find("overhang.gap").value < -2


def test_the_python_in_the_readme_runs(checkout, monkeypatch, capsys):
    import FreeCAD

    monkeypatch.chdir(checkout)
    open_before = set(FreeCAD.listDocuments())
    exec(block((checkout / "README.md").read_text(), "python"), {})  # noqa: S102
    assert capsys.readouterr().out.strip().splitlines()[-1] == "fits"
    for name in set(FreeCAD.listDocuments()) - open_before:
        FreeCAD.closeDocument(name)
