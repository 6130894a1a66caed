"""Labels, the boxes they fill and the page they stand on, in pixels, x to the right and y up."""

from __future__ import annotations

from dataclasses import dataclass

Range = tuple[float, float]


@dataclass(frozen=True)
class Box:
    """A rectangle: lower left corner and size."""

    x: float
    y: float
    width: float
    height: float

    @property
    def right(self) -> float:
        """The right edge's x."""
        return self.x + self.width

    @property
    def top(self) -> float:
        """The upper edge's y."""
        return self.y + self.height

    def overlaps(self, other: Box) -> bool:
        """Whether both share more than an edge."""
        beside = self.right <= other.x or other.right <= self.x
        return not (beside or self.top <= other.y or other.top <= self.y)


@dataclass(frozen=True)
class Wanted:
    """A label to be placed: the point it tells of, and its size."""

    x: float
    y: float
    width: float
    height: float


@dataclass(frozen=True)
class Page:
    """What there is room on.

    ``taken``: boxes that stand already. ``middle``: left and right end of what must stay visible.
    ``band``: lower and upper end of the model, if known.
    """

    width: float
    height: float
    margin: float
    spacing: float
    reach: float
    taken: tuple[Box, ...] = ()
    middle: tuple[float, float] | None = None
    band: tuple[float, float] | None = None
