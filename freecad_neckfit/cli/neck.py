"""``neck FILE``: recognise a neck from a file of any CAD program, and judge it in a job."""

from __future__ import annotations

import argparse
import json
import sys
from pathlib import Path
from typing import TYPE_CHECKING, Any

from .choose import joint_of, write_text
from .command import Command, add_look, coloured, units_of, width_of

if TYPE_CHECKING:
    from ..run.chain import Result

OPEN = 3
"""Exit code while questions are open."""
CROOKED = (
    "Where the tool disagrees, first answer what the neck leaves open: a crooked neck is not what "
    "its values say."
)


def _arguments(parser: argparse.ArgumentParser) -> None:
    parser.add_argument(
        "file", metavar="FILE", type=Path,
        help="the neck: STEP, IGES, BREP, FCStd, STL, OBJ or 3MF",
    )  # fmt: skip
    parser.add_argument("--job", metavar="JOB", type=Path, help="judge the neck in this job")
    parser.add_argument("--option", metavar="NAME", help="judge it in this option of the job")
    parser.add_argument(
        "--pick", metavar="ITEM=FACES", action="append", default=[],
        help='faces picked by hand, numbered as in the model: "heel bottom=12"; may be repeated',
    )  # fmt: skip
    parser.add_argument(
        "--accept", metavar="QUESTION", action="append", default=[],
        help='take what was recognised as the answer to a question: "neck.height"',
    )  # fmt: skip
    parser.add_argument("--json", metavar="FILE", type=Path, help="write all of it as JSON")
    parser.add_argument("--toml", metavar="FILE", type=Path, help="write the neck as a part file")
    add_look(parser)


def _run(arguments: argparse.Namespace) -> int:
    from ..job.errors import BadInput
    from ..job.quantity import Units
    from ..job.read import read_job
    from ..run.finding import State
    from ..run.neck_file import read_neck_file
    from ..run.neck_judged import judge_neck, recognise_for
    from ..run.neck_table import neck_lines, neck_record, part_text
    from ..solids.recognise.neck import PickWanted

    if arguments.option and not arguments.job:
        raise BadInput("--option names an option of a job; name the job by --job.")
    job = read_job(arguments.job) if arguments.job else None
    joint = joint_of(job, arguments.option) if job else None
    units = units_of(arguments, job.units if job else Units.MM)
    part = read_neck_file(arguments.file, progress=_told)
    try:
        read = recognise_for(
            part, joint.stated if joint else {}, picks=_picks(arguments.pick),
            accepted=arguments.accept,
        )  # fmt: skip
    except PickWanted as wanted:
        how = f'--pick "{wanted.item}=12,13" names its faces, numbered as in the model.'
        print(f"neckfit: {wanted} {how}", file=sys.stderr)
        return OPEN
    _refuse_unasked(arguments.accept, read)
    # Told first: what was recognised helps also where it cannot be one joint with the job.
    print("\n".join(neck_lines(read, units=units, width=min(width_of(arguments), 120))))
    result = judge_neck(read, joint, units=units) if joint else None
    if arguments.json:
        write_text(arguments.json, _json(neck_record(read), result, arguments))
    if arguments.toml:
        write_text(arguments.toml, part_text(read))
    if result is not None:
        _print(result, arguments, units)
        if not read.is_settled and any(f.state is State.DISAGREES for f in result.findings):
            print(CROOKED)
    if not read.is_settled:
        return OPEN
    return result.verdict.exit_code if result is not None else 0


def _refuse_unasked(accepted: list[str], read: Any) -> None:
    from ..job.errors import BadInput

    keys = dict.fromkeys(q.key for q in read.found.questions)
    for key in accepted:
        if key not in keys:
            raise BadInput(
                f"--accept {key}: {read.part.name} asks no such question; "
                + (f"it asks about {', '.join(keys)}." if keys else "it leaves none open.")
            )


def _print(result: Result, arguments: argparse.Namespace, units: Any) -> None:
    from ..run.table import Look, render

    print()
    print(render(result, Look(width_of(arguments), units, coloured(arguments))))


def _json(record: dict[str, Any], result: Result | None, arguments: argparse.Namespace) -> str:
    from ..run.record import record as judged

    if result is not None:
        record["judged"] = judged([result], source=arguments.job.name)
    return json.dumps(record, indent=1, ensure_ascii=False, allow_nan=False) + "\n"


def _told(what: str, seconds: float) -> bool:
    """Say on a terminal that a slow file is still being read."""
    if seconds > 2 and sys.stderr.isatty():
        print(f"\r{what}: {seconds:.0f} s", end="", file=sys.stderr, flush=True)
    return True


def _picks(written: list[str]) -> dict[str, list[int]]:
    from ..job.errors import BadInput

    picks = {}
    for text in written:
        item, _, faces = text.partition("=")
        try:
            picks[item.strip()] = [int(word) - 1 for word in faces.split(",")]
        except ValueError:
            raise BadInput(
                f'--pick {text!r}: write an item and numbers of faces, such as "heel bottom=12,13".'
            ) from None
    return picks


COMMAND = Command(
    name="neck",
    help="recognise a neck from a file of any CAD program, and judge it in a job",
    run=_run,
    arguments=_arguments,
    needs_freecad=lambda _: True,
)
