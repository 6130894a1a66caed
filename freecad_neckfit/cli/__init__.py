"""The headless commands: ``python3 -m freecad_neckfit COMMAND``, one file each.

Exit codes, by precedence: 2 bad input, 1 does not fit, 3 could not be checked or the tool
disagrees with itself, 0 fits.
"""

from __future__ import annotations

import argparse
import importlib.util
import os
import sys
from collections.abc import Sequence

from .. import __version__
from ..host import reexec_under_freecad
from . import check, mend, neck, neck_sheet, options, package, seasons, tables, tolerances, window
from .command import BAD_INPUT, Command

__all__ = ["BAD_INPUT", "COMMANDS", "main"]

# In the order of the help.
COMMANDS: tuple[Command, ...] = (
    check.COMMAND,
    neck.COMMAND,
    neck_sheet.COMMAND,
    window.COMMAND,
    mend.COMMAND,
    options.COMMAND,
    tolerances.COMMAND,
    seasons.COMMAND,
    package.COMMAND,
    *tables.COMMANDS,
)


STOPPED = 130
"""As shells say that a program was stopped from the keyboard."""


def main(argv: Sequence[str] | None = None) -> int:
    """Run one command and return its exit code."""
    words = list(sys.argv[1:] if argv is None else argv)
    arguments = _parser().parse_args(words)
    # Whatever reads the result may stop early (| head): that is no fault of ours.
    try:
        return _run(arguments.command, arguments, words)
    except KeyboardInterrupt:
        print("\nneckfit: stopped.", file=sys.stderr)
        return STOPPED
    except BrokenPipeError:
        os.dup2(os.open(os.devnull, os.O_WRONLY), sys.stdout.fileno())
        return 0


def _parser() -> argparse.ArgumentParser:
    parser = argparse.ArgumentParser(
        prog="python3 -m freecad_neckfit",
        description="Decides how deep and at what angle a neck pocket is routed.",
        epilog="Exit codes: 0 fits, 1 does not fit, 2 bad input, 3 could not be decided.",
        allow_abbrev=False,
    )
    parser.add_argument("--version", action="version", version=f"NeckFit {__version__}")
    commands = parser.add_subparsers(required=True, metavar="COMMAND")
    for command in COMMANDS:
        words = commands.add_parser(command.name, help=command.help, allow_abbrev=False)
        command.arguments(words)
        words.set_defaults(command=command)
    return parser


def _run(command: Command, arguments: argparse.Namespace, words: list[str]) -> int:
    if command.needs_freecad(arguments) or importlib.util.find_spec("numpy") is None:
        reexec_under_freecad(words)
    from ..job.errors import BadInput

    try:
        return command.run(arguments)
    except BadInput as refusal:
        print(f"neckfit: {refusal}", file=sys.stderr)
        return BAD_INPUT
