"""What was recognised of a neck, as text and as plain data."""

from __future__ import annotations

import math
import textwrap
from collections.abc import Iterator
from typing import Any

from .. import __version__
from ..job.parameters import ALL
from ..job.quantity import Kind, Units
from ..job.show import compact_length, show_value
from ..solids.recognise.neck import NeckFound, Recognised
from .neck_judged import NeckRead

SCHEMA = 1


def neck_lines(read: NeckRead, *, units: Units, width: int) -> Iterator[str]:
    """The table of a recognised neck: measure, value, residual, how sure, and how it was told."""
    yield f"{read.part.name}: a neck was recognised"
    yield ""
    yield f"  {'measure':<24}{'value':>14}{'residual':>12}  {'':<9} told by"
    yield "  " + "-" * (min(width, 110) - 2)
    for d in read.found.dimensions:
        if d.key not in read.kept:
            yield _row(d, units)
    for hole in read.found.holes:
        place = ", ".join(compact_length(v, units=units) for v in (hole.x, hole.y))
        size = " x ".join(compact_length(v, units=units) for v in (hole.diameter, hole.depth))
        yield f"  {'hole in the heel':<24}{size:>14}{'':>12}  {'sure':<9} at {place}"
    for mark, texts in (
        ("i", read.found.notes),
        (
            "=",
            [
                f"{q.key}: the job's value stands, for the file leaves it open: {q.text}"
                for q in read.answered
            ],
        ),
        ("?", [f"{q.key}: {q.text}" for q in read.open]),
    ):
        for text in texts:
            yield from textwrap.wrap(text, width, initial_indent=f"{mark} ", subsequent_indent="  ")
    if read.open:
        yield from textwrap.wrap(
            "Pick faces by --pick, state in the job what a value can answer, or let what was "
            "recognised (else the job's value) stand by --accept; until then the answer below is "
            "not to be relied on.", width,
        )  # fmt: skip


def _row(d: Recognised, units: Units) -> str:
    value = show_value(d.value, kind=d.kind, units=units)
    if d.kind is Kind.LENGTH:
        value = compact_length(float(d.value), units=units)
    off = compact_length(d.residual, units=units) if d.kind is Kind.LENGTH else ""
    return f"  {d.key:<24}{value:>14}{off:>12}  {d.confidence.value:<9} {d.how}"


def neck_record(read: NeckRead) -> dict[str, Any]:
    """The recognised neck as plain data; changes only add keys."""
    found: NeckFound = read.found
    return {
        "schema": SCHEMA,
        "tool": {"name": "NeckFit", "version": __version__},
        "file": read.part.name,
        "units": {"length": "mm", "angle": "deg"},
        "sure": read.is_settled and found.is_sure,
        "recognised": [
            {
                "key": d.key,
                "value": d.value
                if not isinstance(d.value, float) or math.isfinite(d.value)
                else None,
                "residual": d.residual,
                "confidence": d.confidence.value,
                "told_by": d.how,
                "job": read.stated.get(d.key) if d.key in read.kept else None,
            }
            for d in found.dimensions
        ],
        "holes": [
            {"x": h.x, "y": h.y, "diameter": h.diameter, "depth": h.depth} for h in found.holes
        ],
        "frame": [[float(v) for v in row] for row in found.frame],
        "solids": {name: [i + 1 for i in numbers] for name, numbers in found.solids.items()},
        "faces": {name: [i + 1 for i in patches] for name, patches in found.items.items()},
        "notes": list(found.notes),
        "questions": [{"key": q.key, "text": q.text} for q in read.open],
        "answered_by_job": [{"key": q.key, "text": q.text} for q in read.answered],
    }


def part_text(read: NeckRead) -> str:
    """A part file (TOML) that states the recognised neck, to build jobs on.

    What is still open is left out, and said.
    """
    lines = ["[part]", f'name = "{read.part.name}"', 'units = "mm"']
    lines += [f"# open: {' '.join(f'{q.key}: {q.text}'.split())}" for q in read.open]
    left_out = {q.key for q in read.open}
    for group in ("neck", "strings"):
        rows = [d for d in read.found.dimensions
                if d.key.startswith(f"{group}.") and d.key not in left_out]  # fmt: skip
        if not rows:
            continue
        lines += ["", f"[{group}]"]
        for d in rows:
            if d.key in ALL:
                value = read.stated.get(d.key, d.value)
                lines.append(f"{ALL[d.key].name} = {_toml(value)}")
    return "\n".join(lines) + "\n"


def _toml(value: Any) -> str:
    if isinstance(value, bool):
        return "true" if value else "false"
    if isinstance(value, str):
        return f'"{value}"'
    return str(value) if isinstance(value, int) else f"{value:.10g}"
