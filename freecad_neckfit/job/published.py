"""Reading the tables in ``data``, each row with its source."""

from __future__ import annotations

import csv
from pathlib import Path

DATA = Path(__file__).resolve().parent.parent / "data"


def rows(name: str) -> list[dict[str, str]]:
    """All rows of ``data/<name>.csv`` by column; raises OSError if the table is missing."""
    with (DATA / f"{name}.csv").open(encoding="utf-8", newline="") as file:
        return list(csv.DictReader(file))


def number(text: str) -> float:
    """A number from a table; an empty cell is NaN: nobody said."""
    return float(text) if text else float("nan")
