"""``parameters``, ``checks``, ``schema``: what the tool declares, printed."""

from __future__ import annotations

import argparse
from pathlib import Path

from .command import Command


def _parameters(_: argparse.Namespace) -> int:
    from ..job.parameter_table import parameter_table

    print(parameter_table())
    return 0


def _checks(_: argparse.Namespace) -> int:
    from ..run.tables import check_table

    print(check_table())
    return 0


def _schema(_: argparse.Namespace) -> int:
    print((Path(__file__).parents[1] / "data" / "result.schema.json").read_text(), end="")
    return 0


COMMANDS = (
    Command("parameters", "print every parameter of a job file, as a Markdown table", _parameters),
    Command("checks", "print every check, as a Markdown table", _checks),
    Command("schema", "print the JSON schema of the results", _schema),
)
