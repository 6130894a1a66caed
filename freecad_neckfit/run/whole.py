"""A whole job file judged: the base joint, or one option, and the other options beside it."""

from __future__ import annotations

from ..decide.options import Column, judged_column
from ..job.errors import BadInput
from ..job.outline import Outline
from ..job.possible import refuse_impossible
from ..job.quantity import Units
from ..job.read import Job, JobFile
from ..job.words import nearest, shown
from .chain import Result, check_values


def check_job(job: JobFile, *, option: str | None = None, solids: bool = True) -> list[Result]:
    """Judge the base joint and then each option, or only the option named.

    Raises ``BadInput`` where the option does not exist or a joint cannot be built; nothing is
    judged then.
    """
    joints = [job.base, *job.options] if option is None else [named_joint(job, option)]
    for joint in joints:
        refuse_impossible(joint.values, joint.name)
    outlines = {joint.name: body_outline(joint) for joint in joints} if solids else {}
    return [
        check_values(
            joint.stated,
            name=joint.name,
            units=job.units,
            solids=solids,
            outline=outlines[joint.name] if solids else None,
        )
        for joint in joints
    ]


def judged_joint(joint: Job, *, units: Units) -> Column:
    """One joint judged on solids, as a column to compare with others."""
    result = check_values(joint.stated, name=joint.name, units=units, outline=body_outline(joint))
    return judged_column(joint.name, result.values, result.findings)


def body_outline(joint: Job) -> Outline:
    """The body's outline; the reader of sketches needs FreeCAD, and is loaded for one only."""
    path = str(joint.values["body.outline_file"])
    if joint.values["body.outline"] != "file" or not path.lower().endswith(".fcstd"):
        return joint.outline
    from .sketch import outline_segments

    return joint.read_outline(outline_segments)


def named_joint(job: JobFile, name: str) -> Job:
    """The option called ``name``; raises BadInput with the nearest known name."""
    for joint in job.options:
        if joint.name == name:
            return joint
    known = [joint.name for joint in job.options]
    near = nearest(name, known)
    hint = f"nearest: {shown(near)}" if near else f"it has: {', '.join(known) or 'none'}"
    raise BadInput(f"{job.path.name} has no option {shown(name)} ({hint}); correct the name.")
