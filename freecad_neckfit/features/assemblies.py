"""The solids of joints, built once for each set of values and kept while FreeCAD runs."""

from __future__ import annotations

from collections import OrderedDict
from typing import Any

from ..job.joint import Job
from ..job.possible import refuse_impossible
from .adopt_given import given_of
from .gather import joint_digest, joint_stated

MOST_KEPT = 8
"""Assemblies kept: enough to undo and redo some steps without building again."""

_kept: OrderedDict[tuple[str, str, str], Any] = OrderedDict()


def assembly_of(joint: Any) -> Any:
    """The joint's solids in the body frame (``solids.build.assembly.Assembly``).

    Raises BadInput where a property is not permitted, CannotBuild where the joint is impossible as
    wood and metal, KernelFailure where the kernel fails.
    """
    stated = joint_stated(joint)
    key = _key(joint, joint_digest(joint, stated))
    if key not in _kept:
        keep(joint, key[2], _build(joint, job_of(joint, stated)))
    _kept.move_to_end(key)
    return _kept[key]


def keep(joint: Any, digest: str, assembly: Any) -> None:
    """Keep an assembly that was built elsewhere from the joint's values."""
    _kept[_key(joint, digest)] = assembly
    while len(_kept) > MOST_KEPT:
        _kept.popitem(last=False)


def job_of(joint: Any, stated: dict[str, Any]) -> Job:
    """The joint as a job. Raises CannotBuild for what is impossible as wood and metal."""
    job = Job.of(stated.get("job.name") or str(joint.Label), stated, source=str(joint.Label))
    refuse_impossible(job.values, joint.Label)
    return job


def outline_of(job: Job) -> Any:
    """The body's outline, from a file too. Raises BadInput where it cannot be used."""
    from ..run.sketch import outline_segments

    return job.read_outline(sketch=outline_segments)


def _build(joint: Any, job: Job) -> Any:
    from ..solids.build import build

    return build(job.values, outline=outline_of(job), given=given_of(joint))


def _key(joint: Any, digest: str) -> tuple[str, str, str]:
    return joint.Document.Name, joint.Name, digest
