"""The workbench's commands, and where they stand in toolbars and menu."""

from __future__ import annotations

from dataclasses import dataclass

from . import (
    adopt,
    check,
    compare,
    drawing,
    findings,
    fit,
    import_neck,
    job_file,
    let_go,
    mend,
    new_joint,
    options,
    package,
    repair,
    sample,
    seasons,
    show,
    tolerances,
    window,
)
from .command import Command


@dataclass(frozen=True)
class Group:
    """Commands that stand together: a toolbar of this title, and a section of the menu."""

    title: str
    commands: tuple[Command, ...]


GROUPS = (
    Group(
        "NeckFit joint",
        (
            sample.COMMAND,
            new_joint.COMMAND,
            adopt.COMMAND,
            import_neck.COMMAND,
            let_go.COMMAND,
            job_file.OPEN,
            job_file.WRITE,
            repair.COMMAND,
        ),
    ),
    Group(
        "NeckFit check",
        (
            check.COMMAND,
            check.RECHECK,
            fit.COMMAND,
            findings.PREVIOUS,
            findings.NEXT,
            compare.COMMAND,
        ),
    ),
    Group(
        "NeckFit decide",
        (
            window.COMMAND,
            mend.COMMAND,
            options.COMMAND,
            tolerances.COMMAND,
            seasons.COMMAND,
        ),
    ),
    Group("NeckFit show", show.COMMANDS),
    Group("NeckFit shop", (drawing.COMMAND, package.COMMAND)),
)
"""In the order of toolbars and menu."""
ALL = tuple(command for group in GROUPS for command in group.commands)
