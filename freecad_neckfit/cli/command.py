"""What every headless command states of itself, and the arguments that several share."""

from __future__ import annotations

import argparse
import os
import shutil
import sys
from collections.abc import Callable
from dataclasses import dataclass
from pathlib import Path
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from ..job.quantity import Units

BAD_INPUT = 2


def _nothing(_: argparse.ArgumentParser) -> None:
    return None


def _never(_: argparse.Namespace) -> bool:
    return False


@dataclass(frozen=True)
class Command:
    """One word after ``python3 -m freecad_neckfit``.

    ``run`` returns the exit code and may raise ``BadInput``, which becomes one sentence and the
    exit code 2. Where ``needs_freecad`` says so, it runs under FreeCAD's own Python. Its file
    imports numpy and the other rooms within ``run`` only: the first Python may lack them.
    """

    name: str
    help: str
    run: Callable[[argparse.Namespace], int]
    arguments: Callable[[argparse.ArgumentParser], None] = _nothing
    needs_freecad: Callable[[argparse.Namespace], bool] = _never


def add_job(parser: argparse.ArgumentParser) -> None:
    """The job file and which of its options to take."""
    parser.add_argument("job", metavar="JOB", type=Path, help="job file (TOML)")
    parser.add_argument("--option", metavar="NAME", help="judge this option instead of the base")


def add_units(parser: argparse.ArgumentParser) -> None:
    """The units that lengths are shown in."""
    parser.add_argument("--units", choices=("mm", "inch"), help="show lengths in these units")


def add_look(parser: argparse.ArgumentParser) -> None:
    """How a table is shown."""
    add_units(parser)
    parser.add_argument("--width", metavar="COLUMNS", type=int, help="width of the table")
    parser.add_argument(
        "--colour",
        choices=("auto", "always", "never"),
        default="auto",
        help="colour the table (auto: only on a terminal)",
    )


def units_of(arguments: argparse.Namespace, stated: Units) -> Units:
    """The units asked for, or those that the job states."""
    from ..job.quantity import Units

    if arguments.units is None:
        return stated
    return Units.INCH if arguments.units == "inch" else Units.MM


def width_of(arguments: argparse.Namespace) -> int:
    """Columns that the table may take."""
    return int(arguments.width or shutil.get_terminal_size((100, 24)).columns)


def progress_here() -> Callable[[float, str], bool] | None:
    """Says on a terminal how far a search is (share of 1, what it does); None without a terminal.

    Its answer is always to go on.
    """
    return _say_how_far if sys.stderr.isatty() else None


def _say_how_far(share: float, what: str) -> bool:
    # What is done leaves an empty line for the answer.
    said = f"{share:4.0%} {what[:70]}" if share < 1 else ""
    print(f"\r{said:<75}", end="\r", file=sys.stderr, flush=True)
    return True


def coloured(arguments: argparse.Namespace) -> bool:
    """Whether to colour: as asked, or on a terminal unless NO_COLOR is set."""
    if arguments.colour == "auto":
        return sys.stdout.isatty() and "NO_COLOR" not in os.environ
    return bool(arguments.colour == "always")
