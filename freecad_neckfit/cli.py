"""The headless command: ``python3 -m freecad_neckfit check JOB``.

Exit codes, by precedence: 2 bad input, 1 does not fit, 3 could not be checked or the tool
disagrees with itself, 0 fits.
"""

from __future__ import annotations

import argparse
import os
import shutil
import sys
from collections.abc import Sequence
from pathlib import Path
from typing import TYPE_CHECKING

from . import __version__
from .host import reexec_under_freecad

if TYPE_CHECKING:
    from .job.quantity import Units
    from .run.chain import Result

BAD_INPUT = 2


def main(argv: Sequence[str] | None = None) -> int:
    """Run one command and return its exit code."""
    words = list(sys.argv[1:] if argv is None else argv)
    arguments = _parser().parse_args(words)
    # Whatever reads the result may stop early (| head): that is no fault of ours.
    try:
        return int(arguments.run(arguments, words))
    except BrokenPipeError:
        os.dup2(os.open(os.devnull, os.O_WRONLY), sys.stdout.fileno())
        return 0


def _parser() -> argparse.ArgumentParser:
    parser = argparse.ArgumentParser(
        prog="python3 -m freecad_neckfit",
        description="Decides how deep and at what angle a neck pocket is routed.",
        epilog="Exit codes: 0 fits, 1 does not fit, 2 bad input, 3 could not be decided.",
        allow_abbrev=False,
    )
    parser.add_argument("--version", action="version", version=f"NeckFit {__version__}")
    commands = parser.add_subparsers(required=True, metavar="COMMAND")
    check = commands.add_parser(
        "check", help="judge a job by closed forms and on solids", allow_abbrev=False
    )
    check.add_argument("job", metavar="JOB", type=Path, help="job file (TOML)")
    check.add_argument("--option", metavar="NAME", help="judge this option instead of the base")
    check.add_argument("--json", metavar="FILE", type=Path, help="write all findings as JSON")
    check.add_argument("--fcstd", metavar="FILE", type=Path, help="save the solids as a document")
    check.add_argument("--step", metavar="FILE", type=Path, help="save the solids as STEP")
    check.add_argument("--units", choices=("mm", "inch"), help="show lengths in these units")
    check.add_argument("--closed-forms-only", action="store_true", help="skip the solids")
    check.add_argument("--width", metavar="COLUMNS", type=int, help="width of the table")
    check.add_argument(
        "--colour",
        choices=("auto", "always", "never"),
        default="auto",
        help="colour the table (auto: only on a terminal)",
    )
    check.set_defaults(run=_check)
    for name, run, words in (
        ("parameters", _parameters, "print every parameter of a job file, as a Markdown table"),
        ("checks", _checks, "print every check, as a Markdown table"),
        ("schema", _schema, "print the JSON schema of the results"),
    ):
        commands.add_parser(name, help=words).set_defaults(run=run)
    return parser


def _check(arguments: argparse.Namespace, words: list[str]) -> int:
    needs_freecad = not arguments.closed_forms_only or arguments.fcstd or arguments.step
    if needs_freecad or not _has_numpy():
        reexec_under_freecad(words)
    from .job.errors import BadInput

    try:
        return _run_check(arguments)
    except BadInput as refusal:
        print(f"neckfit: {refusal}", file=sys.stderr)
        return BAD_INPUT


def _has_numpy() -> bool:
    import importlib.util

    return importlib.util.find_spec("numpy") is not None


def _run_check(arguments: argparse.Namespace) -> int:
    from .job.errors import BadInput
    from .job.read import read_job
    from .run.record import record, write_record
    from .run.whole import check_job

    job = read_job(arguments.job)
    if arguments.closed_forms_only and (arguments.fcstd or arguments.step):
        raise BadInput("--fcstd and --step need solids; leave out --closed-forms-only.")
    solids = not arguments.closed_forms_only
    results = check_job(job, option=arguments.option, solids=solids)
    units = _units(arguments, job.units)
    if arguments.json:
        write_record(record(results, source=arguments.job.name), arguments.json)
    if arguments.fcstd or arguments.step:
        from .run.save import save

        save(results[0].assembly, fcstd=arguments.fcstd, step=arguments.step)
    _print(results, arguments, units)
    return results[0].verdict.exit_code


def _units(arguments: argparse.Namespace, stated: Units) -> Units:
    from .job.quantity import Units

    if arguments.units is None:
        return stated
    return Units.INCH if arguments.units == "inch" else Units.MM


def _print(results: Sequence[Result], arguments: argparse.Namespace, units: Units) -> None:
    from .run.table import Look, render, summary

    colour = arguments.colour == "always" or (
        arguments.colour == "auto" and sys.stdout.isatty() and "NO_COLOR" not in os.environ
    )
    width = arguments.width or shutil.get_terminal_size((100, 24)).columns
    look = Look(width=width, units=units, colour=colour)
    print(render(results[0], look))
    if len(results) > 1:
        print()
        print(summary(results[1:], look))


def _parameters(_: argparse.Namespace, words: list[str]) -> int:
    if not _has_numpy():
        reexec_under_freecad(words)
    from .job.parameter_table import parameter_table

    print(parameter_table())
    return 0


def _checks(_: argparse.Namespace, words: list[str]) -> int:
    if not _has_numpy():
        reexec_under_freecad(words)
    from .run.tables import check_table

    print(check_table())
    return 0


def _schema(_: argparse.Namespace, __: list[str]) -> int:
    print((Path(__file__).parent / "data" / "result.schema.json").read_text(), end="")
    return 0
