"""``mend JOB``: which demands exclude one another, and the smallest changes that free the joint."""

from __future__ import annotations

import argparse
from pathlib import Path

from .choose import add_steps, joint_of, steps_of
from .command import Command, add_job, add_units, progress_here, units_of


def _arguments(parser: argparse.ArgumentParser) -> None:
    add_job(parser)
    parser.add_argument(
        "--keep",
        metavar="WHAT",
        help='what must stay as it is, for example "depth, bridge, no plate"',
    )
    parser.add_argument(
        "--stock",
        metavar="FILE",
        type=Path,
        action="append",
        default=[],
        help="part file of another bridge or pickup that the shop has; may be repeated",
    )
    add_units(parser)
    add_steps(parser)


def _run(arguments: argparse.Namespace) -> int:
    from ..decide.conflicts import find_conflicts
    from ..decide.mending import find_remedies
    from ..decide.mending_text import conflict_lines, remedy_lines
    from ..decide.moves import moves
    from ..decide.progress import tell
    from ..decide.stock import read_stock
    from ..decide.window import find_window
    from ..job.read import read_job
    from ..run.prove import prover
    from ..run.whole import body_outline

    job = read_job(arguments.job)
    joint = joint_of(job, arguments.option)
    units = units_of(arguments, job.units)
    prove = prover(outline=body_outline(joint), units=units)
    progress = progress_here()
    tell(progress, 0.0, "checking the joint as it is stated")
    reason = prove(joint.stated)
    tell(progress, 1.0, "checked")
    if not reason:
        print(f"{joint.name}: fits; nothing to mend")
        return 0
    print(f"{joint.name}: does not fit - {reason}")
    window = find_window(joint.stated)
    conflicts = conflict_lines(find_conflicts(window, progress=progress), units)
    print(
        "\n".join(conflicts or ["Other depths or angles do meet every demand together."]),
        end="\n\n",
    )
    remedies = find_remedies(
        joint.stated,
        moves(
            joint.stated,
            steps=steps_of(arguments, joint, job.units),
            stock=read_stock(arguments.stock),
            allowed=_allowed(arguments.keep),
        ),
        prove=prove,
        progress=progress,
    )
    print("\n".join(remedy_lines(remedies, joint.stated, units)))
    return 1


def _allowed(keep: str | None) -> tuple[str, ...]:
    from ..decide.moves import KINDS
    from ..job.errors import BadInput
    from ..job.words import nearest

    kept = {word.strip() for word in keep.split(",")} if keep else set()
    for word in sorted(kept - set(KINDS)):
        near = nearest(word, KINDS)
        hint = f"did you mean {near!r}?" if near else f"it knows {', '.join(KINDS)}."
        raise BadInput(f"--keep: {word!r} is nothing that can be kept; {hint}")
    return tuple(kind for kind in KINDS if kind not in kept)


COMMAND = Command(
    name="mend",
    help="tell what excludes what, and the smallest changes that make it fit",
    run=_run,
    arguments=_arguments,
    needs_freecad=lambda _: True,
)
