"""The commands that bring a job file into a document and write one."""

from __future__ import annotations

from pathlib import Path
from typing import Any

from ...job.read import read_job
from ..translate import tr
from .chosen import has_joint, joint_of, joints_of
from .command import Command, Selection
from .macro import call


def _open(document: Any, _: Selection) -> None:
    from ..ask import ask_file, ask_one_of
    from ..views.look import look_at

    file = ask_file(tr("Open job file"))
    if not file:
        return
    job = read_job(Path(file))
    option: list[str] = []
    if job.options:
        names = [job.name, *(o.name for o in job.options)]
        found = ask_one_of(tr("Open job file"), tr("Which of the file's joints?"), names)
        if found is None:
            return
        option = [job.options[found - 1].name] if found else []
    before = set(joints_of(document))
    call("features.acts", "open_job", document, file, *option)
    look_at(next(j for j in joints_of(document) if j not in before))


def _write(document: Any, selection: Selection) -> None:
    from ..ask import ask_new_file

    joint = joint_of(document, selection)
    file = ask_new_file(tr("Write job file"), f"{joint.Label}.toml")
    if file:
        call("features.acts", "write_job", joint, file)


OPEN = Command(
    name="NeckFit_OpenJob",
    menu="&Open job file…",
    tip="Add the joint that a job file (TOML) states to this document",
    icon="open_job.svg",
    shortcut="N, O",
    run=_open,
    makes_document=True,
)
WRITE = Command(
    name="NeckFit_WriteJob",
    menu="Write &job file…",
    tip="Write the joint and its options as a job file (TOML)",
    icon="write_job.svg",
    shortcut="N, W",
    run=_write,
    possible=has_joint,
    step=False,
)
