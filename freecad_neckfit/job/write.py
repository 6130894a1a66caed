"""Writing a job file: TOML that reads back to the same values, deviations and spreads."""

from __future__ import annotations

import json
import os
from collections.abc import Iterator
from pathlib import Path
from typing import Any

import numpy as np

from .entry import Entry
from .joint import JobFile
from .layers import Layer, Tables
from .measure import read_measure
from .parameter import Parameter
from .parameters import ALL, GROUPS, LISTS
from .quantity import Kind, Units
from .store import write_beside
from .units import INCH_MM

_UNIT = {
    Kind.LENGTH: "mm", Kind.ANGLE: "deg", Kind.FORCE: "N", Kind.MOISTURE: "%",
    Kind.TEMPERATURE: "°C", Kind.HUMIDITY: "%", Kind.FREQUENCY: "Hz",
    Kind.LINEAR_DENSITY: "g/m", Kind.PRESSURE: "kPa",
}  # fmt: skip


def write_job(job: JobFile, path: Path) -> None:
    """Write the job to a TOML file that ``read_job`` reads back to the same joints.

    Values that a part file states are left to it: the table names the file. Comments of a file
    read before are not kept. The file is written beside the old one and renamed over it, so that
    a failure leaves the old one. Raises BadInput where it cannot be written.
    """
    write_beside(path, job_text(job, folder=path.absolute().parent).encode("utf-8"))


def job_text(job: JobFile, *, folder: Path) -> str:
    """Return the TOML text of a job; paths in it are relative to ``folder``."""
    writer = _Writer(job.units, folder)
    parts = [_empty_lists(job.base.tables), *writer.tables(job.base.tables, prefix="")]
    for option in job.options:
        parts.append(_option_head(option.name, option.tables))
        parts += writer.tables(option.tables, prefix="option.")
    return "\n\n".join(part for part in parts if part) + "\n"


def _option_head(name: str, tables: Tables) -> str:
    lines = ["[[option]]", f"name = {_quoted(name)}", _empty_lists(tables)]
    if tables.defaults:
        lines.append(f"default = [{', '.join(map(_quoted, tables.defaults))}]")
    return "\n".join(line for line in lines if line)


def _empty_lists(tables: Tables) -> str:
    """Return the lists that are stated to hold nothing, such as a body without screws."""
    empty = (
        group
        for group in LISTS
        if any(ALL[k].group == group and not len(s.value) for k, s in tables.own.values.items())
    )
    return "\n".join(f"{group} = []" for group in empty)


class _Writer:
    def __init__(self, units: Units, folder: Path) -> None:
        self.units, self.folder = units, folder

    def tables(self, tables: Tables, *, prefix: str) -> Iterator[str]:
        """Yield the table of each group that is spoken of, and the deviations."""
        for group in GROUPS:
            if group in LISTS:
                yield self._rows(group, tables.own, prefix=prefix)
                continue
            lines = [f"[{prefix}{group}]"]
            if group == "job" and not prefix and self._names_units(tables):
                lines.append(f"units = {_quoted('inch' if self.units is Units.INCH else 'mm')}")
            if group in tables.parts:
                lines.append(f"from = {_quoted(self._relative(tables.parts[group].path))}")
            lines += [
                f"{ALL[key].name} = {self._value(ALL[key], said.value)}"
                for key, said in tables.own.values.items()
                if ALL[key].group == group and key != "job.units"
            ]
            if len(lines) > 1:
                yield "\n".join(lines)
        yield self._tolerances(tables.own, prefix=prefix)

    def _names_units(self, tables: Tables) -> bool:
        return self.units is Units.INCH or "job.units" in tables.own.values

    def _rows(self, group: str, layer: Layer, *, prefix: str) -> str:
        columns = {p: layer.values[p.key].value for p in ALL.values()
                   if p.group == group and p.key in layer.values}  # fmt: skip
        if not columns:
            return ""
        rows = []
        for i in range(len(next(iter(columns.values())))):
            lines = [f"{p.name} = {self._value(p, float(c[i]))}" for p, c in columns.items()]
            rows.append("\n".join([f"[[{prefix}{group}]]", *lines]))
        return "\n\n".join(rows)

    def _tolerances(self, layer: Layer, *, prefix: str) -> str:
        keys = dict.fromkeys([*layer.tolerances, *layer.spreads])
        if not keys:
            return ""
        lines = [f"{_quoted(key)} = {self._tolerance(layer, key)}" for key in keys]
        return "\n".join([f"[{prefix}tolerance]", *lines])

    def _tolerance(self, layer: Layer, key: str) -> str:
        limits, spread = layer.tolerances.get(key), layer.spreads.get(key)
        said = []
        if limits is not None:
            low, high = (self._measure(ALL[key].kind, value) for value in limits.value)
            if spread is None:
                return f"[{low}, {high}]"
            said.append(f"limits = [{low}, {high}]")
        if spread is not None:
            said.append(f"spread = {_quoted(spread.value)}")
        return f"{{{', '.join(said)}}}"

    def _value(self, p: Parameter, value: Any) -> str:
        if isinstance(value, np.ndarray):
            return f"[{', '.join(self._measure(p.kind, float(v)) for v in value)}]"
        if p.kind is Kind.POINTS:
            return f"[{', '.join(map(self._point, value))}]"
        if p.kind is Kind.PATH and value:
            return _quoted(self._relative(Path(value)))
        if p.kind.is_measured:
            return self._measure(p.kind, float(value))
        # Flags and counts are written in TOML as JSON has them.
        return _quoted(value) if isinstance(value, str) else json.dumps(value)

    def _point(self, point: tuple[float, float]) -> str:
        return f"[{', '.join(self._measure(Kind.LENGTH, c) for c in point)}]"

    def _measure(self, kind: Kind, value: float) -> str:
        """Return a number that reads back to the same float, in inches where one does."""
        if kind is Kind.LENGTH and self.units is Units.INCH:
            inches = f"{value / float(INCH_MM):.10g}"
            entry = Entry(raw=inches, kind=kind, name="")
            if read_measure(inches, entry=entry, bare=Units.INCH) == value:
                return inches if "." in inches or "e" in inches else f"{inches}.0"
        unit = _UNIT.get(kind)
        is_bare = unit is None or (kind is Kind.LENGTH and self.units is Units.MM)
        return repr(float(value)) if is_bare else _quoted(f"{float(value)!r} {unit}")

    def _relative(self, path: Path) -> str:
        try:
            return Path(os.path.relpath(path, self.folder)).as_posix()
        except ValueError:  # another drive has no relative path
            return path.as_posix()


def _quoted(text: str) -> str:
    """Return a basic TOML string."""
    plain = text.replace("\\", "\\\\").replace('"', '\\"')
    return f'"{plain}"'
