"""``tolerances JOB``: how often the joint fails within its limits, and what to draw in first."""

from __future__ import annotations

import argparse
import json
from pathlib import Path
from typing import TYPE_CHECKING

from .choose import joint_of, write_text
from .command import Command, add_job, add_units, progress_here, units_of

if TYPE_CHECKING:
    from ..decide.tolerances.shapes import Shape
    from ..job.quantity import Units


def _arguments(parser: argparse.ArgumentParser) -> None:
    add_job(parser)
    parser.add_argument("--draws", metavar="N", type=int, default=1_000_000, help="joints to draw")
    parser.add_argument("--seed", metavar="N", type=int, default=1, help="start of the draws")
    parser.add_argument(
        "--wish", metavar="PERCENT", type=float, default=1.0, help="failure share to come down to"
    )
    parser.add_argument(
        "--general",
        choices=("none", "f", "m", "c"),
        help="ISO 2768-1 class where nothing else is stated (else as the job says: shop.general)",
    )
    parser.add_argument(
        "--shape",
        choices=("uniform", "triangular", "normal"),
        help="how dimensions spread between their limits (else as the job says: shop.spread)",
    )
    parser.add_argument(
        "--spread", metavar="KEY=SHAPE", action="append", default=[],
        help='another shape for one dimension: "pocket.depth=normal"; may be repeated',
    )  # fmt: skip
    parser.add_argument(
        "--limits", metavar="KEY=LIMITS", action="append", default=[],
        help='other limits, for example "pocket.depth=±0.05 mm"; may be repeated',
    )  # fmt: skip
    parser.add_argument("--svg", metavar="FILE", type=Path, help="draw failures and their causes")
    parser.add_argument("--json", metavar="FILE", type=Path, help="write all results")
    add_units(parser)


def _run(arguments: argparse.Namespace) -> int:
    from ..decide.pictures.tolerances import draw_failures
    from ..decide.tolerances.dimension import dimensions
    from ..decide.tolerances.report import report_lines, report_record
    from ..decide.tolerances.shapes import Shape
    from ..decide.tolerances.study import study
    from ..job.errors import BadInput
    from ..job.read import read_job

    if not 1000 <= arguments.draws <= 100_000_000:
        raise BadInput("--draws: state a whole number from 1000 to 100000000.")
    if not 0 <= arguments.wish < 100:
        raise BadInput("--wish: state a share of 0 to 100 per cent.")
    job = read_job(arguments.job)
    joint = joint_of(job, arguments.option)
    dims = dimensions(
        joint,
        general=arguments.general,
        shape=Shape(arguments.shape) if arguments.shape else None,
        shapes=_shapes(arguments.spread),
        instead=_limits(arguments.limits, job.units),
    )
    if not dims:
        raise BadInput(f"{joint.name}: no dimension has limits; state some under [tolerance].")
    wish = arguments.wish / 100
    found = study(
        joint.stated, dims, wish=wish, draws=arguments.draws, seed=arguments.seed,
        progress=progress_here(),
    )  # fmt: skip
    units = units_of(arguments, job.units)
    if arguments.svg:
        svg = draw_failures(found.simulation, name=joint.name, units=units)
        write_text(arguments.svg, svg)
    if arguments.json:
        record = report_record(joint.name, found.linear, found.simulation)
        write_text(arguments.json, json.dumps(record, indent=1) + "\n")
    lines = report_lines(
        joint.name, found.linear, found.simulation, found.steps, found.alone,
        wish=wish, units=units,
    )  # fmt: skip
    print("\n".join(lines))
    return 0 if found.simulation.share <= wish else 1


def _limits(words: list[str], units: Units) -> dict[str, tuple[float, float]]:
    from ..job.parameters import ALL
    from ..job.quantity import read_limits

    found = {}
    for word in words:
        key, said = _pair(word, option="--limits", example="pocket.depth=±0.05 mm")
        kind = ALL[key].kind
        found[key] = read_limits(said, kind=kind, bare=units, name=f"--limits {key}")
    return found


def _shapes(words: list[str]) -> dict[str, Shape]:
    from ..decide.tolerances.shapes import Shape
    from ..job.errors import BadInput

    found = {}
    for word in words:
        key, said = _pair(word, option="--spread", example="pocket.depth=normal")
        if said not in [shape.value for shape in Shape]:
            known = ", ".join(shape.value for shape in Shape)
            raise BadInput(f"--spread {key}: {said!r} is no shape; write one of {known}.")
        found[key] = Shape(said)
    return found


def _pair(word: str, *, option: str, example: str) -> tuple[str, str]:
    """A parameter's key and what is said of it."""
    from ..job.errors import BadInput
    from ..job.parameters import ALL
    from ..job.words import nearest

    key, equals, said = word.partition("=")
    if not equals:
        raise BadInput(f'{option}: {word!r}; write it as "{example}".')
    if key not in ALL:
        near = nearest(key, ALL)
        hint = f"did you mean {near}?" if near else "see the command parameters."
        raise BadInput(f"{option}: {key!r} is no parameter; {hint}")
    return key, said.strip()


COMMAND = Command(
    name="tolerances",
    help="tell how often the joint fails within its limits, and what to draw in first",
    run=_run,
    arguments=_arguments,
)
