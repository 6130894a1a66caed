"""All demands over a plane of two axes."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from typing import Any

import numpy as np

from ..fit.verdict import ROUNDING
from ..job.arrays import FloatArray
from .axes import Axis
from .demands import DEMANDS, margins


class Field:
    """The margins of one joint wherever its two axes stand.

    ``rows``: indices into ``DEMANDS`` of the demands that are asked; those that neither axis
    moves are asked once.
    """

    def __init__(
        self,
        stated: Mapping[str, Any],
        x: Axis,
        y: Axis,
        *,
        rows: Sequence[int] | None = None,
    ) -> None:
        """``x`` and ``y`` override what ``stated`` says of their parameters."""
        self.stated, self.x, self.y = dict(stated), x, y
        self.rows = tuple(range(len(DEMANDS)) if rows is None else rows)
        self.calls = 0

    def at(
        self,
        x: FloatArray,
        y: FloatArray,
        *,
        of: Sequence[int] | None = None,
        told: bool = False,
    ) -> FloatArray:
        """Margins at points (x, y), shape (rows, points); ``of`` picks positions in ``rows``.

        ``told``: as findings tell them, see ``margins``.
        """
        rows = self.rows if of is None else tuple(self.rows[i] for i in of)
        self.calls += 1
        moved = self.x.state(np.asarray(x, dtype=float)) | self.y.state(np.asarray(y, dtype=float))
        return margins({**self.stated, **moved}, count=len(x), which=rows, told=told)

    def allowed(self, x: FloatArray, y: FloatArray, of: Sequence[int] | None = None) -> FloatArray:
        """The same with the rounding that a met demand is allowed: at least 0 where it is met."""
        return self.at(x, y, of=of) + ROUNDING
