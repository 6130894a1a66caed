"""What files say about a joint, one over the other: parts below, the job's own words on top."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from dataclasses import dataclass, field
from pathlib import Path
from typing import Any

from .errors import BadInput
from .parameters import LISTS


@dataclass(frozen=True)
class Said:
    """A value (or a pair of limit deviations) in inner units, and the file that says so."""

    value: Any
    source: str


@dataclass(frozen=True)
class Layer:
    """Values, limit deviations and spreads between them by key, as files state them."""

    values: Mapping[str, Said] = field(default_factory=dict)
    tolerances: Mapping[str, Said] = field(default_factory=dict)
    spreads: Mapping[str, Said] = field(default_factory=dict)

    @property
    def sides(self) -> tuple[Mapping[str, Said], ...]:
        """All that it says, in the order in which a layer is made."""
        return self.values, self.tolerances, self.spreads

    def over(self, lower: Layer) -> Layer:
        """Return this layer laid over another: it wins, and a list replaces the whole list."""
        replaced = {group_of(key) for key in self.values} & set(LISTS)
        kept = {k: s for k, s in lower.values.items() if group_of(k) not in replaced}
        pairs = zip(lower.sides[1:], self.sides[1:], strict=True)
        return Layer({**kept, **self.values}, *({**under, **over} for under, over in pairs))

    def without_groups(self, groups: Iterable[str]) -> Layer:
        """Return the layer without what it says of some groups."""
        gone = set(groups)
        return Layer(*(_kept(side, gone) for side in self.sides))

    def without_keys(self, keys: Iterable[str]) -> Layer:
        """Return the layer without some parameters, their deviations and spreads."""
        gone = set(keys)
        return Layer(*({k: s for k, s in side.items() if k not in gone} for side in self.sides))


@dataclass(frozen=True)
class Part:
    """A part file that a table takes its values from, and all that this file says."""

    path: Path
    layer: Layer


@dataclass(frozen=True)
class Tables:
    """What one base joint or one option states by itself.

    ``parts``: the part file by the group whose table names it. ``own``: the table's own keys.
    ``defaults``: keys of the base that an option leaves to their defaults again.
    """

    own: Layer = field(default_factory=Layer)
    parts: Mapping[str, Part] = field(default_factory=dict)
    defaults: tuple[str, ...] = ()

    def merged(self, *, name: str) -> Layer:
        """Return parts and own words as one layer.

        Raises BadInput where two parts state one parameter and the own words do not settle it.
        """
        below = Layer()
        for part in self.parts.values():
            _refuse_quarrel(below, part.layer, settled=self.own, name=name)
            below = part.layer.over(below)
        return self.own.over(below)

    def changed_by(self, option: Tables) -> Tables:
        """Return the tables of an option that states its differences from these.

        Another part leaves nothing of the former one, nor of what the base's own table said of
        it: those words were about the former part.
        """
        gone = option.defaults
        own = option.own.over(self.own.without_groups(option.parts).without_keys(gone))
        kept = {g: Part(p.path, p.layer.without_keys(gone)) for g, p in self.parts.items()}
        return Tables(own=own, parts={**kept, **option.parts})


def group_of(key: str) -> str:
    """Return the word before the dot."""
    return key.partition(".")[0]


def _kept(side: Mapping[str, Said], gone: set[str]) -> dict[str, Said]:
    return {key: said for key, said in side.items() if group_of(key) not in gone}


def _refuse_quarrel(below: Layer, part: Layer, *, settled: Layer, name: str) -> None:
    settled_groups = {group_of(key) for key in settled.values} & set(LISTS)
    for key, said in part.values.items():
        other = below.values.get(key)
        if other is None or other.source == said.source:
            continue
        if key not in settled.values and group_of(key) not in settled_groups:
            raise BadInput(
                f"{name}: {key} is stated by both {other.source} and {said.source}; take it out of "
                "one, or state it in the job itself."
            )
