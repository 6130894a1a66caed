"""Woods: how they shrink and hold screws, from ``data/woods.csv``."""

from __future__ import annotations

from dataclasses import dataclass
from functools import cache

from .errors import BadInput
from .published import number, rows
from .words import nearest, shown


@dataclass(frozen=True)
class Wood:
    """One wood.

    ``radial``, ``tangential``: change of size per size and per cent of moisture, valid from 6 to
    14 %. ``specific_gravity``: oven-dry mass over volume at 12 %. ``side_compression``: strength
    square to the grain [kPa]. NaN where no source says. ``source``: where the figures stand.
    """

    name: str
    radial: float
    tangential: float
    specific_gravity: float
    side_compression: float
    source: str


@cache
def woods() -> dict[str, Wood]:
    """All woods of the table by name."""
    return {
        row["name"]: Wood(
            name=row["name"],
            radial=number(row["radial"]),
            tangential=number(row["tangential"]),
            specific_gravity=number(row["specific_gravity"]),
            side_compression=number(row["side_compression_kpa"]),
            source=row["source"],
        )
        for row in rows("woods")
    }


def wood(name: str, *, key: str) -> Wood:
    """The wood called ``name``; ``key`` is the parameter that names it, for the refusal.

    Raises BadInput where the table has no such wood.
    """
    found = woods().get(name.strip().casefold())
    if found is None:
        guess = nearest(name, woods())
        hint = f"nearest known wood: {guess}" if guess else f"known: {', '.join(woods())}"
        raise BadInput(
            f"{key} names {shown(name)}, which the table of woods does not have ({hint})"
        )
    return found
