"""The demands of a joint as margins of its varying dimensions."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from typing import Any

from ...job.arrays import FloatArray
from ..demands import DEMANDS, margins
from .dimension import Dimension, stated_with
from .linear import Margins

COSTLY = tuple(
    n for n, d in enumerate(DEMANDS) if d.check.id in ("strings.fretted", "strings.open")
)
"""Demands that look at every fret against every other, once for every draw."""


def joint_margins(stated: Mapping[str, Any], dims: Sequence[Dimension]) -> Margins:
    """Margins of every demand in ``DEMANDS``, in mm-equivalents, of values (dimensions, draws)."""

    def of(values: FloatArray, rows: list[int] | None) -> FloatArray:
        varied = stated_with(stated, dims, list(values))
        return margins(varied, count=values.shape[1], which=rows)

    return of
