"""``check JOB``: judge a job by closed forms and on solids."""

from __future__ import annotations

import argparse
from collections.abc import Sequence
from pathlib import Path
from typing import TYPE_CHECKING

from .command import Command, add_job, add_look, coloured, units_of, width_of

if TYPE_CHECKING:
    from ..job.quantity import Units
    from ..run.chain import Result


def _arguments(parser: argparse.ArgumentParser) -> None:
    add_job(parser)
    parser.add_argument("--json", metavar="FILE", type=Path, help="write all findings as JSON")
    parser.add_argument("--fcstd", metavar="FILE", type=Path, help="save the solids as a document")
    parser.add_argument("--step", metavar="FILE", type=Path, help="save the solids as STEP")
    parser.add_argument("--closed-forms-only", action="store_true", help="skip the solids")
    add_look(parser)


def _needs_freecad(arguments: argparse.Namespace) -> bool:
    return bool(not arguments.closed_forms_only or arguments.fcstd or arguments.step)


def _run(arguments: argparse.Namespace) -> int:
    from ..job.errors import BadInput
    from ..job.read import read_job
    from ..run.record import record, write_record
    from ..run.whole import check_job

    job = read_job(arguments.job)
    if arguments.closed_forms_only and (arguments.fcstd or arguments.step):
        raise BadInput("--fcstd and --step need solids; leave out --closed-forms-only.")
    results = check_job(job, option=arguments.option, solids=not arguments.closed_forms_only)
    if arguments.json:
        write_record(record(results, source=arguments.job.name), arguments.json)
    if arguments.fcstd or arguments.step:
        from ..run.save import save

        save(results[0].assembly, fcstd=arguments.fcstd, step=arguments.step)
    _print(results, arguments, units_of(arguments, job.units))
    return results[0].verdict.exit_code


def _print(results: Sequence[Result], arguments: argparse.Namespace, units: Units) -> None:
    from ..run.table import Look, render, summary

    look = Look(width=width_of(arguments), units=units, colour=coloured(arguments))
    print(render(results[0], look))
    if len(results) > 1:
        print()
        print(summary(results[1:], look))


COMMAND = Command(
    name="check",
    help="judge a job by closed forms and on solids",
    run=_run,
    arguments=_arguments,
    needs_freecad=_needs_freecad,
)
