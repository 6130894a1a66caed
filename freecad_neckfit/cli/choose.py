"""Arguments that the deciding commands share, and the joint that they name."""

from __future__ import annotations

import argparse
from pathlib import Path
from typing import TYPE_CHECKING, Any

if TYPE_CHECKING:
    from ..decide.shop import Steps
    from ..job.joint import Job
    from ..job.quantity import Kind
    from ..job.read import JobFile


def joint_of(job: JobFile, option: str | None) -> Job:
    """The base joint or the option named; raises BadInput where it is unknown or impossible."""
    from ..job.possible import refuse_impossible
    from ..run.whole import named_joint

    joint = job.base if option is None else named_joint(job, option)
    refuse_impossible(joint.values, joint.name)
    return joint


def add_steps(parser: argparse.ArgumentParser) -> None:
    """What the shop can set."""
    parser.add_argument(
        "--step-depth", metavar="LENGTH", help="step of depths (else shop.step_depth)"
    )
    parser.add_argument(
        "--step-angle", metavar="ANGLE", help="step of angles (else shop.step_angle)"
    )
    parser.add_argument(
        "--stops",
        metavar="LENGTHS",
        help='depths of the router\'s stops: "15.5, 16 mm, 5/8 in" (else shop.stops)',
    )


def steps_of(arguments: argparse.Namespace, joint: Job, units: Any) -> Steps:
    """The shop's steps as asked for, else as the joint states them; raises BadInput."""
    from dataclasses import replace

    from ..decide.shop import Steps
    from ..job.errors import BadInput
    from ..job.quantity import Kind

    steps = Steps.of(joint.values)
    if arguments.step_depth:
        step = number(arguments.step_depth, kind=Kind.LENGTH, bare=units, name="--step-depth")
        steps = replace(steps, depth=step)
    if arguments.step_angle:
        step = number(arguments.step_angle, kind=Kind.ANGLE, bare=units, name="--step-angle")
        steps = replace(steps, angle=step)
    if not (steps.depth > 0 and steps.angle > 0):
        raise BadInput("--step-depth and --step-angle must be more than 0.")
    if arguments.stops:
        stops = tuple(
            number(word.strip(), kind=Kind.LENGTH, bare=units, name="--stops")
            for word in arguments.stops.split(",")
        )
        steps = replace(steps, stops=stops)
    return steps


def number(text: str, *, kind: Kind, bare: Any, name: str) -> float:
    """A measured value as the command's words state it; a bare number counts in ``bare``."""
    from ..job.quantity import read_value

    try:
        raw: float | str = float(text)
    except ValueError:
        raw = text
    value = read_value(raw, kind=kind, bare=bare, name=name)
    assert isinstance(value, float)  # noqa: S101  (measured kinds are floats)
    return value


def span(text: str | None, *, kind: Kind, bare: Any, name: str) -> tuple[Any, Any]:
    """A range written as LOW..HIGH, or (None, None) where none is asked for."""
    from ..job.errors import BadInput

    if text is None:
        return None, None
    low, dots, high = text.partition("..")
    if not dots:
        raise BadInput(f'{name}: {text!r} is no range; write it as "15..18".')
    return (
        number(low.strip(), kind=kind, bare=bare, name=name),
        number(high.strip(), kind=kind, bare=bare, name=name),
    )


def write_text(path: Path, text: str) -> None:
    """Write a file beside and rename it; raises BadInput where it cannot be written."""
    from ..job.store import write_beside

    write_beside(path, text.encode("utf-8"))
