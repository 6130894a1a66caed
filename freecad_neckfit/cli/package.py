"""``package JOB FOLDER``: drawing, template, set-up sheet, report and model for the shop."""

from __future__ import annotations

import argparse
import sys
from pathlib import Path
from typing import TYPE_CHECKING

from .command import Command, add_job, units_of

if TYPE_CHECKING:
    from ..job.quantity import Units
    from ..sheets.package import Wish

DISAGREES = 3
_TITLE = {
    "owner": "legal owner",
    "number": "identification number",
    "revision": "revision",
    "date": "date of issue, as it is to be printed",
    "creator": "who made the drawing",
    "approver": "who approved it",
}


def _arguments(parser: argparse.ArgumentParser) -> None:
    add_job(parser)
    parser.add_argument("folder", metavar="FOLDER", type=Path, help="folder to write, a new one")
    parser.add_argument("--replace", action="store_true", help="put it in place of a former one")
    parser.add_argument("--units", choices=("mm", "inch"), help="units of all sheets")
    parser.add_argument("--paper", choices=("A3", "ANSI B"), help="sheet of the drawing")
    parser.add_argument("--text-paper", choices=("A4", "Letter"), help="sheet of the text")
    parser.add_argument("--projection", choices=("first", "third"), help="angle of projection")
    parser.add_argument("--bit", metavar="DIAMETER", help="router bit")
    parser.add_argument("--bush", metavar="DIAMETER", help="guide bush; a bearing if left out")
    for name, words in _TITLE.items():
        parser.add_argument(f"--{name}", metavar="TEXT", default="", help=f"title block: {words}")


def _run(arguments: argparse.Namespace) -> int:
    from ..job.errors import BadInput, NeckFitError
    from ..job.read import read_job
    from ..sheets.package import write_package
    from ..sheets.prepare import extras_of, prepared

    job = read_job(arguments.job)
    units = units_of(arguments, job.units)
    joint = prepared(job, option=arguments.option, units=units)
    wish = _wish(arguments, job.units)
    try:
        paths = write_package(
            joint, arguments.folder, wish=wish, extras=extras_of(job, joint), progress=_progress
        )
    except BadInput:
        raise
    except NeckFitError as error:
        print(f"neckfit: {error}", file=sys.stderr)
        return DISAGREES
    for path in paths:
        print(path)
    print(f"{joint.name}: {joint.result.verdict.value.upper()}")
    return joint.result.verdict.exit_code


def _wish(arguments: argparse.Namespace, bare: Units) -> Wish:
    from ..job.quantity import read_length
    from ..sheets.flow import A4, LETTER
    from ..sheets.package import Wish
    from ..sheets.paper import PAPERS, Angle, Title

    def diameter(name: str) -> float | None:
        raw = getattr(arguments, name)
        return None if raw is None else read_length(raw, bare=bare, name=f"--{name}")

    angles = {"first": Angle.FIRST, "third": Angle.THIRD, None: None}
    return Wish(
        title=Title(**{name: getattr(arguments, name) for name in _TITLE}),
        paper=PAPERS.get(arguments.paper),
        sheet={"A4": A4, "Letter": LETTER}.get(arguments.text_paper),
        angle=angles[arguments.projection],
        bit=diameter("bit"),
        bush=diameter("bush"),
        replace=arguments.replace,
    )


def _progress(step: int, steps: int, what: str) -> None:
    print(f"neckfit: {step}/{steps} {what}", file=sys.stderr)


COMMAND = Command(
    name="package",
    help="write drawing, template, set-up sheet, report and model for the shop",
    run=_run,
    arguments=_arguments,
    needs_freecad=lambda _: True,
)
