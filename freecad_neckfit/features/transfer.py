"""A job file as a joint of a document, and back."""

from __future__ import annotations

from pathlib import Path
from typing import Any

from ..job.joint import JobFile
from ..job.layers import Layer, Said, Tables
from ..job.read import job_file, read_job
from ..job.write import write_job
from ..run.whole import named_joint
from .gather import joint_stated
from .limits import keep_limits, limits_of, spreads_of
from .make import make_joint
from .options import packed, unpacked
from .read_property import units_of


def joint_from_file(document: Any, path: Path, *, option: str | None = None) -> Any:
    """Add the joint that a job file states to a document and return it.

    The base joint keeps the file's options and hands them back when it is written. ``option``
    names the one to take instead; it becomes a joint of its own. Values from part files become the
    joint's own. Raises BadInput as ``read_job`` does, and for an option that the file has not.
    """
    file = read_job(path)
    job = file.base if option is None else named_joint(file, option)
    joint = make_joint(document, job)
    keep_limits(joint, job.stated_tolerances, job.spreads)
    if option is None:
        joint.Options = packed(file)
    return joint


def job_file_of(joint: Any, path: Path) -> JobFile:
    """The joint and its options as the job file ``path``; raises as ``joint_stated`` does."""
    source = str(joint.Label)
    layer = Layer(
        {key: Said(value, source) for key, value in joint_stated(joint).items()},
        {key: Said(limits, source) for key, limits in limits_of(joint).items()},
        {key: Said(spread, source) for key, spread in spreads_of(joint).items()},
    )
    options = unpacked(joint.Options, source=source)
    return job_file(path, Tables(own=layer), options, units=units_of(joint))


def joint_to_file(joint: Any, path: Path) -> None:
    """Write the joint and its options as a job file; one that is there is replaced when whole.

    Raises BadInput where a property is not permitted or the file cannot be written.
    """
    write_job(job_file_of(joint, path), path)
