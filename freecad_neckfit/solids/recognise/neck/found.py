"""What was recognised of a neck, how well, and what must be asked."""

from __future__ import annotations

import enum
from dataclasses import dataclass, field
from typing import Any

from ....job.arrays import FloatArray
from ....job.errors import BadInput
from ....job.quantity import Kind


class Confidence(enum.Enum):
    """How far a recognised dimension can be trusted."""

    SURE = "sure"
    LIKELY = "likely"
    DOUBTFUL = "doubtful"


PICKABLE = ("fretboard top", "heel bottom", "heel sides", "heel end", "underside")
"""What may be picked by hand, as faces in the order of the part's solids."""


class PickWanted(BadInput):
    """A neck that lacks one item only: ``item`` (of ``PICKABLE``), picked by hand, may mend it."""

    def __init__(self, sentence: str, *, item: str) -> None:
        super().__init__(sentence)
        self.item = item


@dataclass(frozen=True)
class Recognised:
    """One dimension read from the neck.

    ``key``: the job's parameter, or a name of its own for what no job states. ``value``: inner
    value (mm, degrees). ``residual``: how far [mm] the solid strays from what the value says.
    ``how``: which surfaces told it.
    """

    key: str
    value: Any
    kind: Kind
    how: str
    residual: float = 0.0
    confidence: Confidence = Confidence.SURE


@dataclass(frozen=True)
class Question:
    """What the file leaves open: ``key`` is the parameter, or the item that picking decides.

    ``by_value``: whether a value that a job states answers it. What is crooked stays so.
    """

    key: str
    text: str
    by_value: bool = True


@dataclass(frozen=True)
class Hole:
    """A round hole into the heel's bottom, in the neck frame [mm]."""

    x: float
    y: float
    diameter: float
    depth: float


@dataclass(frozen=True)
class NeckFound:
    """A neck recognised.

    ``frame``: (4, 4) motion from the file's space to the neck frame. ``items``: which patches
    (faces, in the order of the part's solids) told what. ``top``: the fretboard's top.
    """

    dimensions: tuple[Recognised, ...]
    questions: tuple[Question, ...]
    notes: tuple[str, ...]
    frame: FloatArray
    items: dict[str, tuple[int, ...]] = field(default_factory=dict)
    holes: tuple[Hole, ...] = ()
    top: Any = None
    solids: dict[str, tuple[int, ...]] = field(default_factory=dict)

    def __getitem__(self, key: str) -> Any:
        """The recognised value of a key. Raises KeyError where it was not recognised."""
        for dimension in self.dimensions:
            if dimension.key == key:
                return dimension.value
        raise KeyError(key)

    @property
    def stated(self) -> dict[str, Any]:
        """Values of the job's parameters, by key."""
        return {d.key: d.value for d in self.dimensions if "." in d.key}

    def items_to_pick(self) -> dict[str, tuple[int, ...]]:
        """The faces that told each item which can be picked by hand."""
        return {item: self.items[item] for item in PICKABLE if self.items.get(item)}

    @property
    def is_sure(self) -> bool:
        """Whether nothing is open and nothing doubtful."""
        doubtful = any(d.confidence is Confidence.DOUBTFUL for d in self.dimensions)
        return not self.questions and not doubtful


class Findings:
    """Collects what the steps of recognition find."""

    def __init__(self) -> None:
        self.dimensions: dict[str, Recognised] = {}
        self.questions: list[Question] = []
        self.notes: list[str] = []
        self.items: dict[str, tuple[int, ...]] = {}
        self.holes: list[Hole] = []
        self.solids: dict[str, tuple[int, ...]] = {}

    def tell(
        self,
        key: str,
        value: Any,
        how: str,
        *,
        kind: Kind = Kind.LENGTH,
        residual: float = 0.0,
        confidence: Confidence = Confidence.SURE,
    ) -> None:
        """Add one dimension."""
        self.dimensions[key] = Recognised(key, value, kind, how, residual, confidence)

    def ask(self, key: str, text: str, *, by_value: bool = True) -> None:
        """Add one open question; not ``by_value`` if no value that a job states can answer it."""
        self.questions.append(Question(key, text, by_value))

    def __getitem__(self, key: str) -> Any:
        return self.dimensions[key].value

    def __contains__(self, key: str) -> bool:
        return key in self.dimensions
