"""``neck-sheet FILE``: the work sheet that shows where to measure neck, body and plate."""

from __future__ import annotations

import argparse
from pathlib import Path

from .choose import write_text
from .command import Command, add_units, units_of


def _arguments(parser: argparse.ArgumentParser) -> None:
    parser.add_argument("file", metavar="FILE", type=Path, help="SVG to write, one page of A4")
    parser.add_argument("--job", metavar="JOB", type=Path, help="show what this job states")
    add_units(parser)


def _run(arguments: argparse.Namespace) -> int:
    from ..job.errors import BadInput
    from ..job.quantity import Units
    from ..job.read import read_job
    from ..sheets.measuring import measuring_sheet

    if arguments.file.suffix.lower() != ".svg":
        raise BadInput(
            f"{arguments.file}: the sheet is written as SVG; give a name that ends in .svg."
        )
    job = read_job(arguments.job) if arguments.job else None
    units = units_of(arguments, job.units if job else Units.MM)
    page = measuring_sheet(units=units, stated=job.base.stated if job else None)
    write_text(arguments.file, page)
    print(f"wrote {arguments.file}: print it on A4 and write the measures in")
    return 0


COMMAND = Command(
    name="neck-sheet",
    help="write a work sheet (SVG) that shows where to measure neck, body and plate",
    run=_run,
    arguments=_arguments,
)
