"""``seasons JOB``: side clearance, overhang gap and screw grip through the owner's year."""

from __future__ import annotations

import argparse
import json
from pathlib import Path

from .choose import joint_of, write_text
from .command import Command, add_job, add_units, units_of


def _arguments(parser: argparse.ArgumentParser) -> None:
    add_job(parser)
    parser.add_argument(
        "--owner", metavar="CSV", type=Path,
        help="the owner's room: month, temperature, humidity (else the job's driest and dampest)",
    )  # fmt: skip
    parser.add_argument(
        "--shop", metavar="CSV", type=Path, help="the shop's room, in which the joint is cut"
    )
    parser.add_argument("--month", metavar="MONTH", help="month in which it is cut; needs --shop")
    parser.add_argument("--svg", metavar="FILE", type=Path, help="draw the year")
    parser.add_argument("--json", metavar="FILE", type=Path, help="write the year")
    add_units(parser)


def _run(arguments: argparse.Namespace) -> int:
    from ..decide.climate import climate_of, read_climate
    from ..decide.pictures.year import draw_year
    from ..decide.year import find_year
    from ..decide.year_text import year_lines, year_record
    from ..job.read import read_job

    job = read_job(arguments.job)
    joint = joint_of(job, arguments.option)
    owner = read_climate(arguments.owner) if arguments.owner else climate_of(joint.values)
    year = find_year(joint.stated, owner, cut=_cut(arguments))
    units = units_of(arguments, job.units)
    if arguments.svg:
        write_text(arguments.svg, draw_year(year, name=joint.name, units=units))
    if arguments.json:
        record = year_record(year, name=joint.name)
        write_text(arguments.json, json.dumps(record, indent=1) + "\n")
    lines = year_lines(year, name=joint.name, units=units)
    print("\n".join(lines))
    return {True: 0, False: 1, None: 3}[year.met]


def _cut(arguments: argparse.Namespace) -> float | None:
    from ..decide.climate import month_number, read_climate
    from ..job.errors import BadInput

    if (arguments.shop is None) != (arguments.month is None):
        raise BadInput("--shop and --month belong together: the room, and when the joint is cut.")
    if arguments.shop is None:
        return None
    return float(read_climate(arguments.shop).moisture[month_number(arguments.month, "--month")])


COMMAND = Command(
    name="seasons",
    help="follow the joint through the owner's year",
    run=_run,
    arguments=_arguments,
)
