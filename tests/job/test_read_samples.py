"""The invented shop's files: every part reads, every joint can be built."""

import pytest

from freecad_neckfit.job.possible import refuse_impossible
from freecad_neckfit.job.read import read_job

OPTIONS = {
    "usual depth, no plate": ("5/8 in", "none"),
    "usual depth with plate": ("5/8 in", "surround"),
    "deeper pocket, no plate": ("0.720 in", "none"),
    "deeper pocket with plate": ("0.720 in", "surround"),
    "21 frets, usual depth": ("5/8 in", "none"),
    "21 frets, deeper pocket": ("0.720 in", "none"),
    "hanging binding, deeper pocket": ("0.720 in", "none"),
    "high bridge, usual depth at an angle": ("5/8 in", "surround"),
    "high bridge, deeper pocket": ("0.720 in", "none"),
}


@pytest.fixture(scope="module")
def job(checkout):
    return read_job(checkout / "samples" / "joint.toml")


def test_every_joint_of_the_sample_can_be_built(job):
    for joint in (job.base, *job.options):
        refuse_impossible(joint.values, joint.name)
        assert joint.outline.area > 50_000


@pytest.mark.parametrize("name", OPTIONS)
def test_the_options_state_what_their_names_say(job, name):
    option = {o.name: o for o in job.options}[name]
    depth, plate = OPTIONS[name]
    assert option.values["pocket.depth"] == pytest.approx(
        {"5/8 in": 15.875, "0.720 in": 18.288}[depth]
    )
    assert option.values["plate.cover"] == plate
    assert option.values["neck.frets"] == (21 if "21" in name else 22)
    assert (option.values["neck.binding"] > 0) == ("binding" in name)
    assert (option.values["bridge.make"] == "fixed radius") == ("high bridge" in name)


def test_every_part_file_reads_and_makes_a_joint_of_its_own(checkout, tmp_path):
    parts = sorted((checkout / "samples" / "parts").glob("*.toml"))
    assert len(parts) >= 8
    for part in parts:
        group = {"body": "body", "neck": "neck", "plate": "plate", "bridge": "bridge"}[
            part.name.partition("-")[0]
        ]
        path = tmp_path / "joint.toml"
        path.write_text(f'[{group}]\nfrom = "{part.as_posix()}"\n')
        job = read_job(path)
        assert job.base.stated
