"""From a job file to a joint that sheets can be made of."""

from __future__ import annotations

from ..job.possible import refuse_impossible
from ..job.quantity import Units
from ..job.read import JobFile
from ..run.chain import check_values
from ..run.whole import body_outline, named_joint
from .joint import Joint
from .package import Extras
from .report.decided import decided_sections


def prepared(job: JobFile, *, option: str | None, units: Units) -> Joint:
    """Judge the base joint, or the option named, on solids. Raises BadInput as a check does."""
    stated = job.base if option is None else named_joint(job, option)
    refuse_impossible(stated.values, stated.name)
    outline = body_outline(stated)
    result = check_values(stated.stated, name=stated.name, units=units, outline=outline)
    return Joint(stated, result, outline, units)


def extras_of(job: JobFile, joint: Joint) -> Extras:
    """What else could be done, and how sure it is: other joints by closed forms, window, year."""
    others = [o for o in (job.base, *job.options) if o.name != joint.name]
    for other in others:
        refuse_impossible(other.values, other.name)
    results = [check_values(o.stated, name=o.name, units=joint.units, solids=False) for o in others]
    return Extras(options=results, sections=decided_sections(joint))
