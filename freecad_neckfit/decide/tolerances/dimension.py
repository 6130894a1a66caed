"""The dimensions of a joint that vary, and where their limits come from."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from typing import Any

import numpy as np

from ...job.errors import BadInput
from ...job.joint import Job, Limits
from ...job.parameters import ALL
from ...job.quantity import Kind
from ...job.standards import general_angle_tolerance, general_tolerance
from ..demands import CHECKS
from .shapes import Shape

GENERAL_GROUPS = ("body", "pocket", "neck", "plate", "shim")
"""Groups of dimensions that the shop makes; bought parts keep what their maker says."""
READ = frozenset(key for check in CHECKS for key in check.reads)


@dataclass(frozen=True)
class Dimension:
    """One dimension that varies: one draw of it holds in every demand that reads it.

    ``index``: its place in a list (screws), or None. ``lower``, ``upper``: limit deviations from
    ``nominal``; the spread lies about their middle. All in the parameter's inner unit.
    """

    key: str
    nominal: float
    lower: float
    upper: float
    shape: Shape = Shape.UNIFORM
    index: int | None = None
    origin: str = ""

    @property
    def name(self) -> str:
        """In plain words, with a number where it is one of a list."""
        words = self.key.replace(".", " ").replace("_", " ")
        return words if self.index is None else f"{words} {self.index + 1}"

    @property
    def middle(self) -> float:
        """The value in the middle of the limits."""
        return self.nominal + (self.lower + self.upper) / 2

    @property
    def half(self) -> float:
        """Half the distance of the limits."""
        return (self.upper - self.lower) / 2

    @property
    def deviation(self) -> float:
        """Standard deviation."""
        return self.half * self.shape.deviation


def dimensions(
    job: Job,
    *,
    general: str | None = None,
    shapes: Mapping[str, Shape] | None = None,
    shape: Shape | None = None,
    instead: Mapping[str, Limits] | None = None,
) -> tuple[Dimension, ...]:
    """The dimensions of a joint that vary and that any demand reads.

    Limits are those that ``instead`` or the job states, else those declared, else those of the
    ``general`` tolerance class f, m or c (ISO 2768-1) on whatever else the shop makes: "none" for
    none, None for what the job says of its shop. ``shapes``: by parameter, over those that the job
    states; others as ``shape``, or as the job says of its shop. Raises BadInput for an unknown key
    or class.
    """
    limits = {**limits_of(job, general=general), **(instead or {})}
    wanted = {**{key: Shape(word) for key, word in job.spreads.items()}, **(shapes or {})}
    usual = Shape(job.values["shop.spread"]) if shape is None else shape
    for key in (*wanted, *(instead or {})):
        if key not in ALL or not ALL[key].kind.is_measured:
            raise BadInput(f"{key!r} is no dimension of a joint; see the table of parameters.")
    found = []
    for key, (lower, upper) in limits.items():
        if key in READ and upper > lower:
            found += _spread(job, key, (lower, upper), wanted.get(key, usual))
    return tuple(found)


def limits_of(job: Job, *, general: str | None = None) -> dict[str, Limits]:
    """Limit deviations by key: stated, declared, or of a general class; see ``dimensions``."""
    word = str(job.values["shop.general"]) if general is None else general
    return {**(_general(job, word) if word != "none" else {}), **job.tolerances}


def _spread(job: Job, key: str, limits: Limits, shape: Shape) -> list[Dimension]:
    value = job.values[key]
    if value is None or (np.ndim(value) == 0 and not np.isfinite(value)):
        return []
    if np.ndim(value) == 0:
        return [Dimension(key, float(value), *limits, shape, origin=job.origin(key))]
    return [Dimension(key, float(v), *limits, shape, n) for n, v in enumerate(value)]


def _general(job: Job, tolerance_class: str) -> dict[str, Limits]:
    found: dict[str, Limits] = {}
    for key, p in ALL.items():
        made_here = p.group in GENERAL_GROUPS and key in READ and not p.many
        # What is worked out from others varies with those.
        if not made_here or (p.default is None and key not in job.stated):
            continue
        value = job.values[key]
        if p.kind is Kind.LENGTH and 0.5 <= float(value) <= 1000.0:
            size = general_tolerance(size=float(value), tolerance_class=tolerance_class)
            found[key] = (-size, size)
    side = float(job.values["pocket.length"])
    angle = general_angle_tolerance(shorter_side=side, tolerance_class=tolerance_class)
    found["pocket.angle"] = (-angle, angle)
    return found


def stated_with(
    stated: Mapping[str, Any], dims: Sequence[Dimension], values: Sequence[Any]
) -> dict[str, Any]:
    """What is stated where the dimensions take ``values``, numbers or arrays over draws."""
    out = dict(stated)
    lists: dict[str, dict[int, Any]] = {}
    for dim, value in zip(dims, values, strict=True):
        if dim.index is None:
            out[dim.key] = value
        else:
            lists.setdefault(dim.key, {})[dim.index] = value
    for key, members in lists.items():
        out[key] = np.stack(
            np.broadcast_arrays(*(members[n] for n in range(len(members)))), axis=-1
        )
    return out
