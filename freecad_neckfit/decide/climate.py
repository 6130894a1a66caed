"""A room through the year: temperature and humidity by month."""

from __future__ import annotations

import csv
from collections.abc import Mapping
from dataclasses import dataclass
from pathlib import Path
from typing import Any

import numpy as np

from ..fit.seasons import equilibrium_moisture
from ..job.arrays import FloatArray
from ..job.errors import BadInput
from ..job.files import load_bytes
from ..job.quantity import Kind, Units, read_value

MONTHS = ("Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec")
COLUMNS = ("month", "temperature", "humidity")
LARGEST_FILE = 100_000


@dataclass(frozen=True)
class Climate:
    """Mean temperature [°C] and relative humidity [%] of each month, January first; (12,)."""

    temperature: FloatArray
    humidity: FloatArray

    @property
    def moisture(self) -> FloatArray:
        """Moisture [%] that wood takes on in each month."""
        found: FloatArray = equilibrium_moisture(
            temperature=self.temperature, humidity=self.humidity
        )
        return found


def climate_of(values: Mapping[str, Any]) -> Climate:
    """The owner's room as the job states it: driest in January, dampest in July, a wave between.

    Heated rooms are dry in winter; where it is the other way round state the months in a file.
    """
    dry, damp = float(values["climate.humidity_dry"]), float(values["climate.humidity_damp"])
    wave = (1 - np.cos(np.arange(12) / 12 * 2 * np.pi)) / 2
    temperature = np.full(12, float(values["climate.temperature"]))
    return Climate(temperature, dry + (damp - dry) * wave)


def read_climate(path: Path) -> Climate:
    """Read a CSV file with a line for each month: month, temperature, humidity.

    Bare numbers are °C and %; "68 °F" is understood. Raises BadInput in one sentence.
    """
    try:
        text = load_bytes(path, largest=LARGEST_FILE).decode("utf-8-sig")
    except UnicodeDecodeError:
        raise BadInput(f"{path.name} is not UTF-8 text; save it as UTF-8.") from None
    rows = list(csv.DictReader(text.splitlines(), skipinitialspace=True))
    if not rows or not set(COLUMNS) <= set(rows[0]):
        raise BadInput(f"{path.name}: the first line must name {', '.join(COLUMNS)}.")
    found = {month_number(row["month"], path.name): row for row in rows}
    if len(rows) != 12 or len(found) != 12:
        raise BadInput(f"{path.name}: {len(rows)} lines; write one for each of the twelve months.")
    ordered = [found[n] for n in range(12)]
    return Climate(
        _column(ordered, "temperature", Kind.TEMPERATURE, (-10.0, 50.0), path),
        _column(ordered, "humidity", Kind.HUMIDITY, (0.0, 100.0), path),
    )


def month_number(word: str | None, name: str) -> int:
    """0 for January; ``name`` is what says it. Raises BadInput for what is no month."""
    start = (word or "").strip()[:3].capitalize()
    if start in MONTHS:
        return MONTHS.index(start)
    if start.isdigit() and 1 <= int(start) <= 12:
        return int(start) - 1
    raise BadInput(f"{name}: {word!r} is no month; write Jan or 1.")


def _column(
    rows: list[dict[str, str]], name: str, kind: Kind, span: tuple[float, float], path: Path
) -> FloatArray:
    values = []
    for month, row in zip(MONTHS, rows, strict=True):
        text = (row[name] or "").strip()
        raw: str | float = float(text) if text.replace(".", "", 1).lstrip("-").isdigit() else text
        said = f"{path.name}: {name} in {month}"
        value = read_value(raw, kind=kind, bare=Units.MM, name=said)
        assert isinstance(value, float)  # noqa: S101  (measured kinds are floats)
        if not span[0] <= value <= span[1]:
            raise BadInput(f"{said}: {value:g} lies outside {span[0]:g} to {span[1]:g}.")
        values.append(value)
    return np.array(values)
