"""States of a joint to be compared: as it is now, as it was saved, as stated or measured."""

from __future__ import annotations

import shutil
import tempfile
from collections.abc import Mapping
from pathlib import Path
from typing import Any

from ..job.errors import BadInput
from ..job.joint import Job
from ..job.read import read_job
from ..run.chain import check_values
from ..run.compare import State
from ..run.record import finding_record
from ..run.sketch import opened
from .adopt_given import given_of
from .assemblies import assembly_of, job_of, outline_of
from .gather import joint_stated
from .read_property import units_of
from .roles import role_of


def now(joint: Any, *, title: str = "now") -> State:
    """The joint as it is; the document stays as it is too. Raises BadInput as a check does."""
    stated = joint_stated(joint)
    return _judged(joint, job_of(joint, stated), title, assembly=assembly_of(joint))


def measured(joint: Any, values: Mapping[str, Any], *, title: str = "measured") -> State:
    """The joint with what was measured (key to inner value) in place of what it states.

    Raises BadInput where that joint is impossible as wood and metal.
    """
    return _judged(joint, job_of(joint, joint_stated(joint) | dict(values)), title)


def stated_in(file: Path) -> dict[str, Any]:
    """What a job file states, of which measured values can be taken; raises BadInput."""
    return {key: value for key, value in read_job(file).base.stated.items() if key != "job.name"}


def saved(joint: Any, *, title: str = "saved") -> State:
    """The joint as it stands in the document's file, judged anew.

    Raises BadInput where the document was never saved, or the joint was not in it then.
    """
    file = Path(str(joint.Document.FileName or ""))
    if not file.is_file():
        raise BadInput(f"{joint.Document.Label} has no file yet; save it first.")
    with tempfile.TemporaryDirectory(prefix="neckfit-") as folder:
        # FreeCAD would hand out the open document for the same file.
        copy = Path(shutil.copy(file, folder))
        with opened(copy) as document:
            former = document.getObject(joint.Name)
            if former is None or role_of(former) != "joint":
                raise BadInput(f"{file.name} has no {joint.Label} in it yet; save the document.")
            return now(former, title=title)


def _judged(joint: Any, job: Job, title: str, *, assembly: Any = None) -> State:
    result = check_values(
        job.stated,
        name=job.name,
        units=units_of(joint),
        outline=outline_of(job),
        given=given_of(joint),
        assembly=assembly,
    )
    findings = [finding_record(f) for f in result.findings]
    return State(title, result.values, findings, result.verdict.value)
