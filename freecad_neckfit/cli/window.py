"""``window JOB``: which depths and angles work, and what bounds them."""

from __future__ import annotations

import argparse
import json
from pathlib import Path

from .choose import add_steps, joint_of, span, steps_of, write_text
from .command import Command, add_job, add_units, progress_here, units_of


def _arguments(parser: argparse.ArgumentParser) -> None:
    add_job(parser)
    parser.add_argument(
        "--over",
        choices=("angle", "shim", "plate"),
        default="angle",
        help="look over depth and this: pocket angle, shim or plate thickness",
    )
    parser.add_argument("--depth", metavar="LOW..HIGH", help="depths to look at")
    parser.add_argument("--range", metavar="LOW..HIGH", help="angles or thicknesses to look at")
    parser.add_argument("--svg", metavar="FILE", type=Path, help="draw the window")
    parser.add_argument("--json", metavar="FILE", type=Path, help="write borders and margins")
    add_units(parser)
    add_steps(parser)


def _run(arguments: argparse.Namespace) -> int:
    from ..decide.conflicts import find_conflicts
    from ..decide.mending_text import conflict_lines
    from ..decide.pictures.window import draw_window
    from ..decide.window import find_window
    from ..decide.window_text import window_lines, window_record
    from ..job.quantity import Kind
    from ..job.read import read_job

    job = read_job(arguments.job)
    joint = joint_of(job, arguments.option)
    steps = steps_of(arguments, joint, job.units)
    kind = Kind.ANGLE if arguments.over == "angle" else Kind.LENGTH
    window = find_window(
        joint.stated,
        second=arguments.over,
        x_range=span(arguments.depth, kind=Kind.LENGTH, bare=job.units, name="--depth"),
        y_range=span(arguments.range, kind=kind, bare=job.units, name="--range"),
    )
    conflicts = find_conflicts(window, progress=progress_here())
    units = units_of(arguments, job.units)
    if arguments.svg:
        drawn = draw_window(window, name=joint.name, steps=steps, conflicts=conflicts, units=units)
        write_text(arguments.svg, drawn.svg)
    if arguments.json:
        record = window_record(window, name=joint.name)
        write_text(arguments.json, json.dumps(record, indent=1) + "\n")
    lines = window_lines(window, name=joint.name, units=units, steps=steps)
    print("\n".join([*lines, *conflict_lines(conflicts, units)]))
    return 0 if not window.empty else 1


COMMAND = Command(
    name="window",
    help="tell which depths and angles work, by closed forms",
    run=_run,
    arguments=_arguments,
)
