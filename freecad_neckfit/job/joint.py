"""A joint as stated, and the job file that holds it with its options."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field
from functools import cached_property
from pathlib import Path
from typing import Any

from .layers import Layer, Said, Tables
from .outline import Outline, Sketch, outline_of
from .parameters import ALL
from .quantity import Units
from .resolve import Values, complete

Limits = tuple[float, float]
"""Limit deviations (lower, upper) from nominal, in inner units."""


@dataclass(frozen=True)
class Job:
    """One joint: the base of a job file, or one of its options with the base under it.

    ``layer``: everything stated. ``tables``: what the job file says of this joint by itself; for
    an option its differences from the base.
    """

    name: str
    layer: Layer
    tables: Tables = field(default_factory=Tables)

    @classmethod
    def of(
        cls,
        name: str,
        stated: Mapping[str, Any],
        *,
        tolerances: Mapping[str, Limits] | None = None,
        spreads: Mapping[str, str] | None = None,
        source: str = "this program",
    ) -> Job:
        """Return a joint from inner values by key, as a program states them."""
        layer = Layer(
            {key: Said(value, source) for key, value in stated.items()},
            {key: Said(limits, source) for key, limits in (tolerances or {}).items()},
            {key: Said(spread, source) for key, spread in (spreads or {}).items()},
        )
        return cls(name, layer, Tables(own=layer))

    @property
    def stated(self) -> dict[str, Any]:
        """What was stated, by key, in inner units (mm, degrees); lists as arrays."""
        return {key: said.value for key, said in self.layer.values.items()}

    @property
    def stated_tolerances(self) -> dict[str, Limits]:
        """The limit deviations that were stated, by key."""
        return {key: said.value for key, said in self.layer.tolerances.items()}

    @property
    def spreads(self) -> dict[str, str]:
        """How dimensions spread between their limits, by key, where it was stated."""
        return {key: said.value for key, said in self.layer.spreads.items()}

    @property
    def tolerances(self) -> dict[str, Limits]:
        """Limit deviations by key: the declared ones, and over them those stated."""
        declared = {p.key: p.tolerance for p in ALL.values() if p.tolerance is not None}
        return {**declared, **self.stated_tolerances}

    def origin(self, key: str) -> str:
        """Return where a value comes from: "stated in FILE", or the origin of its default."""
        said = self.layer.values.get(key)
        return f"stated in {said.source}" if said else ALL[key].origin

    @property
    def origins(self) -> dict[str, str]:
        """Where every value comes from, by key."""
        return {key: self.origin(key) for key in ALL}

    @cached_property
    def values(self) -> Values:
        """One value for every parameter: stated, default or worked out."""
        return complete(self.stated)

    @cached_property
    def outline(self) -> Outline:
        """The body's outline. Raises BadInput, also for an FCStd file: see ``read_outline``."""
        return outline_of(self.values)

    def read_outline(self, sketch: Sketch | None) -> Outline:
        """Return the outline, an FCStd file's by way of ``sketch`` (``run.sketch``)."""
        return outline_of(self.values, sketch=sketch)


@dataclass(frozen=True)
class JobFile:
    """A job file read: the base joint and its options, each complete in itself."""

    path: Path
    base: Job
    options: tuple[Job, ...] = ()
    units: Units = Units.MM

    @property
    def name(self) -> str:
        """What the shop calls the joint."""
        return self.base.name

    @property
    def tolerances(self) -> dict[str, Limits]:
        """Limit deviations of the base joint."""
        return self.base.tolerances
