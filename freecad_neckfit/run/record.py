"""Results as JSON: stable keys, a schema number, changes only add."""

from __future__ import annotations

import json
import math
from collections.abc import Iterable, Mapping
from pathlib import Path
from typing import Any

import numpy as np

from .. import __version__
from ..job.store import write_beside
from .chain import Result
from .finding import Figure, Finding

SCHEMA = 1


def record(results: Iterable[Result], *, source: str) -> dict[str, Any]:
    """All results of one job file as plain data; ``source`` is the job file's name."""
    return {
        "schema": SCHEMA,
        "tool": {"name": "NeckFit", "version": __version__},
        "job": source,
        "units": {"length": "mm", "angle": "deg", "force": "N"},
        "joints": [_joint(result) for result in results],
    }


def write_record(data: Mapping[str, Any], path: Path) -> None:
    """Write ``data`` to ``path`` as JSON: beside it first, then renamed. Raises ``BadInput``."""
    text = json.dumps(data, indent=1, ensure_ascii=False, allow_nan=False) + "\n"
    write_beside(path, text.encode())


def _joint(result: Result) -> dict[str, Any]:
    return {
        "name": result.name,
        "verdict": result.verdict.value,
        "exit_code": result.verdict.exit_code,
        "stated": {key: _plain(value) for key, value in result.values.items()},
        "findings": [finding_record(finding) for finding in result.findings],
    }


def finding_record(f: Finding) -> dict[str, Any]:
    """One finding as plain data: what JSON files, documents and the screen share."""
    return {
        "id": f.id,
        "title": f.title,
        "unit": f.unit.unit,
        "gravity": f.gravity.name.lower(),
        "state": f.state.value,
        "met": f.met,
        "value": f.value,
        "low": f.low,
        "high": f.high,
        "margin": f.margin,
        "place": list(f.place) if f.place else None,
        "reason": f.reason,
        "consequence": f.consequence,
        "mending": f.mending,
        "closed_form": _figure(f.closed_form),
        "solids": _figure(f.solids),
    }


def _figure(figure: Figure | None) -> dict[str, Any] | None:
    if figure is None:
        return None
    return {
        "value": _plain(figure.value),
        "place": list(figure.place) if figure.place else None,
        "detail": {key: _plain(value) for key, value in figure.detail.items()},
    }


def _plain(value: Any) -> Any:
    if isinstance(value, np.ndarray | np.generic):
        return _plain(value.tolist())
    if isinstance(value, float):
        return value if math.isfinite(value) else None
    if isinstance(value, tuple | list):
        return [_plain(item) for item in value]
    if isinstance(value, dict):
        return {str(key): _plain(item) for key, item in value.items()}
    if value is None or isinstance(value, bool | int | str):
        return value
    return str(value)
