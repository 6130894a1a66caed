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


def test_the_deeper_pocket_in_the_readme_reads_the_same_by_every_way_in(checkout):
    from freecad_neckfit.job.read import read_job
    from freecad_neckfit.run.chain import check_values

    readme = (checkout / "README.md").read_text()
    said = re.search(r"pocket (\S+) mm deep the overhang\s+sinks (\S+) mm", readme)
    depth, deep = said.groups()
    stated = read_job(checkout / "samples" / "joint.toml").base.stated
    # FreeCAD 0.20's property editor keeps two decimals of what is typed there.
    for typed in (float(depth), round(float(depth), 2)):
        gap = check_values(stated | {"pocket.depth": typed}, solids=False).find("overhang.gap")
        assert f"{-gap.value:.2f}" == deep


def test_the_python_in_the_readme_runs(checkout, monkeypatch, capsys):
    import FreeCAD

    monkeypatch.chdir(checkout)
    open_before = set(FreeCAD.listDocuments())
    exec(block((checkout / "README.md").read_text(), "python"), {})  # noqa: S102
    assert capsys.readouterr().out.strip().splitlines()[-1] == "fits"
    for name in set(FreeCAD.listDocuments()) - open_before:
        FreeCAD.closeDocument(name)
