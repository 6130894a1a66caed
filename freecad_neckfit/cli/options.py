"""``options JOB``: the base joint and its options side by side."""

from __future__ import annotations

import argparse
from pathlib import Path

from .choose import write_text
from .command import Command, add_units, progress_here, units_of, width_of


def _arguments(parser: argparse.ArgumentParser) -> None:
    parser.add_argument("job", metavar="JOB", type=Path, help="job file (TOML)")
    parser.add_argument(
        "--option", metavar="NAME", action="append", help="only this option; may be repeated"
    )
    parser.add_argument("--solids", action="store_true", help="judge each on solids as well")
    parser.add_argument("--html", metavar="FILE", type=Path, help="write the table as a page")
    parser.add_argument(
        "--csv", metavar="FILE", type=Path, help="write the table for a spreadsheet"
    )
    add_units(parser)
    parser.add_argument("--width", metavar="COLUMNS", type=int, help="width of the table")


def _run(arguments: argparse.Namespace) -> int:
    from ..decide.options import columns as closed_columns
    from ..decide.options import compare
    from ..decide.options_write import as_csv, as_html, as_text
    from ..decide.progress import tell
    from ..job.possible import refuse_impossible
    from ..job.read import read_job
    from ..run.whole import judged_joint, named_joint

    job = read_job(arguments.job)
    chosen = [named_joint(job, name) for name in arguments.option or ()]
    joints = [job.base, *(chosen or job.options)]
    for joint in joints:
        refuse_impossible(joint.values, joint.name)
    progress = progress_here()
    columns = []
    if arguments.solids:
        for n, joint in enumerate(joints):
            tell(progress, n / len(joints), f"judging {joint.name} on solids")
            columns.append(judged_joint(joint, units=job.units))
    else:
        columns = closed_columns(joints, progress=progress)
    tell(progress, 1.0, "judged")
    table = compare(columns, units=units_of(arguments, job.units))
    if arguments.html:
        write_text(arguments.html, as_html(table, title=f"{job.name}: options"))
    if arguments.csv:
        write_text(arguments.csv, as_csv(table))
    print(as_text(table, width=width_of(arguments)))
    return 0 if any(not c.unmet for c in columns) else 1


COMMAND = Command(
    name="options",
    help="lay the base joint and its options side by side",
    run=_run,
    arguments=_arguments,
    needs_freecad=lambda arguments: bool(arguments.solids),
)
