"""The table of checks for the documentation, made from the checks themselves."""

from __future__ import annotations

from ..fit.check import Check
from ..fit.checks import ALL
from ..job.parameters import ALL as PARAMETERS
from .overlap import NONE

_PREFACE = (
    "Written by `python3 -m freecad_neckfit checks`; a test keeps it so. The limits in brackets "
    "are defaults from memory: set your own."
)


def check_table() -> str:
    """Every check as Markdown, in the order of the tuple."""
    head = [
        "# Checks",
        "",
        _PREFACE,
        "",
        "| id | what is checked | unit | least | most | if unmet | closed form | on solids |",
        "|---|---|---|---|---|---|---|---|",
    ]
    return "\n".join(head + [_row(check) for check in ALL])


def _row(check: Check) -> str:
    closed = "-" if check.read is None else ("exact" if check.exact else "simple bound")
    cells = (
        f"`{check.id}`",
        check.title,
        check.unit.unit,
        "" if check.overlap else _limit(check.low),
        NONE if check.overlap else _limit(check.high),
        check.gravity.name.lower().replace("_", " "),
        closed,
        (check.measure and "yes") or "-",
    )
    return "| " + " | ".join(cells) + " |"


def _limit(limit: str | float | None) -> str:
    if limit is None:
        return ""
    if isinstance(limit, str):
        default = PARAMETERS[limit].default
        return f"`{limit}`" + (f" ({default:g})" if default is not None else "")
    return f"{limit:g}"
