"""Part files: what one body, neck, plate or bridge of the shop is, stated once for all jobs."""

from __future__ import annotations

from pathlib import Path
from typing import Any

from .errors import BadInput
from .files import load_table, plain, plain_name, resolved
from .layers import Layer, Part
from .quantity import Kind, Units, read_value
from .tables import Where, read_tables
from .words import nearest, shown

PART_KEYS = ("name", "units")
MOST_FILES = 200
"""Most part files of one job."""
MOST_DEEP = 10
"""Most part files that build on each other, one in the next."""


class Shelf:
    """The part files that one job draws on, each read once."""

    def __init__(self) -> None:
        self._read: dict[Path, Part] = {}
        self._open: list[Path] = []

    def take(self, written: str, group: str, *, where: Where) -> Part:
        """Return the part file that the ``group`` table of the file at ``where`` names.

        ``written`` is relative to that file's folder. Raises BadInput for a file that cannot be
        used, says nothing of the group, or leads back to itself.
        """
        if not written:
            raise where.refusal(f"{group}.from is empty; name a part file, or leave it out.")
        path = (where.folder / written).absolute()
        part = self._part(path, says=f"{where.file}: {group}.from")
        if not any(key.startswith(f"{group}.") for key in part.layer.values):
            raise where.refusal(
                f"{group}.from names {plain_name(path)}, which says nothing of [{group}]; name "
                f"another file, or state [{group}] there."
            )
        return part

    def open(self, path: Path) -> Part:
        """Return the part file at ``path``. Raises BadInput for a file that cannot be used."""
        return self._part(path.absolute(), says="part file")

    def _part(self, path: Path, *, says: str) -> Part:
        real = resolved(path)
        if real in self._open:
            chain = " → ".join(plain_name(p) for p in (*self._open, real))
            raise BadInput(
                f"{says}: {plain_name(path)} would take its values from itself ({plain(chain)}); "
                "name another file."
            )
        if real not in self._read:
            if len(self._open) >= MOST_DEEP or len(self._read) >= MOST_FILES:
                raise BadInput(
                    f"{says}: more than {MOST_DEEP} part files build on each other, or a job uses "
                    f"more than {MOST_FILES}; use fewer."
                )
            self._open.append(real)
            self._read[real] = Part(path, self._layer(path, _table(path, says=says)))
            self._open.pop()
        return self._read[real]

    def _layer(self, path: Path, raw: dict[str, Any]) -> Layer:
        where = Where(plain_name(path), path.parent, _units(raw, file=plain_name(path)))
        for group in ("job", "option"):
            if group in raw:
                raise where.refusal(f"a part file has no [{group}]; state it in the job file.")
        groups = {key: table for key, table in raw.items() if key != "part"}
        tables = read_tables(
            groups, where=where, open_part=lambda w, g: self.take(w, g, where=where)
        )
        return tables.merged(name=where.file)


def part_values(path: Path) -> tuple[str, dict[str, Any]]:
    """Return what a part file calls its part, and what it states: inner values by key.

    Raises BadInput for a file that cannot be used.
    """
    part = Shelf().open(path)
    head = load_table(path).get("part", {})
    values = {key: said.value for key, said in part.layer.values.items()}
    return str(head.get("name") or path.stem), values


def _table(path: Path, *, says: str) -> dict[str, Any]:
    """Return what a part file holds; a refusal also tells who names it: that may be the mistake."""
    try:
        return load_table(path)
    except BadInput as refusal:
        raise BadInput(f"{says}: {refusal}") from None


def _units(raw: dict[str, Any], *, file: str) -> Units:
    head = raw.get("part", {})
    if not isinstance(head, dict):
        raise BadInput(f"{file}: part is {shown(head)}, no table; write [part] above it.")
    for key, value in head.items():
        if key not in PART_KEYS:
            near = nearest(key, PART_KEYS)
            hint = f" (nearest known: {near})" if near else f" (known: {', '.join(PART_KEYS)})"
            raise BadInput(f"{file}: part has no key {shown(key)}{hint}; correct or remove it.")
        read_value(value, kind=Kind.TEXT, bare=Units.MM, name=f"{file}: part.{key}")
    return units_called(head.get("units", "mm"), name=f"{file}: part.units")


def units_called(word: object, *, name: str) -> Units:
    """Return the unit system that a file names "mm" or "inch". Raises BadInput."""
    if word == "mm":
        return Units.MM
    if word == "inch":
        return Units.INCH
    raise BadInput(f'{name}: {shown(word)} is no unit of bare numbers; write "mm" or "inch".')
