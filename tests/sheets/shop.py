"""Joints for the tests of what goes to the shop, each judged and built once."""

from functools import cache
from pathlib import Path

from freecad_neckfit.job.joint import Job
from freecad_neckfit.job.quantity import Units
from freecad_neckfit.job.read import read_job
from freecad_neckfit.sheets.prepare import prepared

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
