"""Joints for the tests of what goes to the shop, each judged and built once."""

import lzma
from dataclasses import replace
from functools import cache
from pathlib import Path
from tempfile import TemporaryDirectory

from freecad_neckfit.job.joint import Job
from freecad_neckfit.job.quantity import Units
from freecad_neckfit.job.read import read_job
from freecad_neckfit.sheets.prepare import prepared

NECKS = Path(__file__).parents[1] / "necks" / "files"
SAMPLE = Path(__file__).parents[2] / "samples" / "joint.toml"


@cache
def sample(option=None, units=Units.MM):
    """A joint of the sample job."""
    return prepared(read_job(SAMPLE), option=option, units=units)


def joint_of(stated, *, name="a joint", units=Units.MM, tolerances=None):
    """A joint from inner values by key."""
    from freecad_neckfit.run.chain import check_values
    from freecad_neckfit.sheets.joint import Joint

    job = Job.of(name, stated, tolerances=tolerances)
    outline = job.outline
    return Joint(job, check_values(stated, name=name, units=units, outline=outline), outline, units)


ROUND = {
    "pocket.end_shape": "round", "pocket.end_radius": 60.0, "pocket.width_end": 56.2,
    "neck.heel_end": "round", "neck.heel_radius": 59.9,
}  # fmt: skip
BASS = {
    "neck.scale": 863.6, "neck.frets": 20, "strings.count": 4, "neck.nut_to_heel": 590.0,
    "neck.heel_width_end": 63.5, "neck.heel_width_mouth": 63.0, "neck.width_end": 63.5,
    "neck.width_nut": 40.0, "strings.spread_nut": 30.0, "strings.spread_bridge": 57.0,
    "pocket.width_end": 63.7, "pocket.width_mouth": 63.2, "pocket.length": 82.0,
    "neck.heel_length": 86.0, "bridge.front": 270.0, "body.block_treble": 42.0,
    "body.block_bass": 46.0,
}  # fmt: skip
IMPORTED = {"imported neck": "parts.step.xz", "imported neck, bound": "bound.step.xz"}


def round_of_joints(name, units=Units.MM):
    """The joints that the shop's sheets must take without manual care, by name."""
    return replace(_judged(name), units=units)


@cache
def _judged(name):
    stated = sample().job.stated
    if name in IMPORTED:
        return imported(IMPORTED[name])
    return {
        "sample": sample,
        "does not fit": lambda: sample("deeper pocket with plate"),
        "angled": lambda: sample("high bridge, usual depth at an angle"),
        "round-ended": lambda: joint_of(stated | ROUND, name="round"),
        "left-handed": lambda: joint_of(stated | {"strings.left_handed": True}, name="left"),
        "bass": lambda: joint_of(BASS, name="bass"),
    }[name]()


NAMES = ("sample", "does not fit", "angled", "round-ended", "left-handed", "bass", *IMPORTED)


def imported(file):
    """A joint whose neck another CAD program wrote, in a pocket cut to it."""
    from freecad_neckfit.run.neck_file import read_neck_file
    from freecad_neckfit.run.neck_judged import judge_neck, recognise_for
    from freecad_neckfit.sheets.joint import Joint

    with TemporaryDirectory() as folder:
        path = Path(folder, file.removesuffix(".xz"))
        path.write_bytes(lzma.decompress((NECKS / file).read_bytes()))
        part = read_neck_file(path)
    v = recognise_for(part, {}).found.stated
    pocket = {
        "pocket.width_end": v["neck.heel_width_end"] + 0.2,
        "pocket.width_mouth": v["neck.heel_width_mouth"] + 0.2,
        "pocket.corner_radius": v.get("neck.heel_corner_radius", 3.0),
        "pocket.depth": v["neck.underside"] - 0.4, "seat.end_gap": 0.1,
        "neck.frets": v.get("neck.frets", 20),
        "bridge.front": v.get("neck.scale", 647.7) - v["neck.nut_to_heel"] - 5.0,
    }  # fmt: skip
    read = recognise_for(part, pocket)
    job = Job.of(path.stem, read.stated)
    return Joint(job, judge_neck(read, job), job.outline, Units.MM)
