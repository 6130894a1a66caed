"""Copies of a part's faces, since triangulating and cutting leave their traces in a shape."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence
from typing import Any

MANY = 200
"""Faces of a neck's part with more are copied as they are asked for."""


class OwnFaces(Sequence[Any]):
    """A part's faces, in the kernel's order.

    A neck with its frets has hundreds, and few of them come near to anything: those are copied
    when they are first asked for. Copies that were not made together share no edges;
    ``untouched`` are the faces for what leaves no trace in them, and these do.
    """

    def __init__(self, untouched: Sequence[Any], *, are_copies: bool) -> None:
        self.untouched = untouched
        self._own: dict[int, Any] = dict(enumerate(untouched)) if are_copies else {}

    def __len__(self) -> int:
        return len(self.untouched)

    def __iter__(self) -> Iterator[Any]:
        return (self[index] for index in range(len(self)))

    def __getitem__(self, index: Any) -> Any:
        wanted = range(len(self))[index]
        if isinstance(wanted, range):
            return [self[k] for k in wanted]
        self.copy([wanted])
        return self._own[wanted]

    def copy(self, wanted: Iterable[int]) -> None:
        """Copy faces as one shape, so that triangles of neighbours share the points between."""
        import Part

        new = [k for k in wanted if k not in self._own]
        if new:
            copies = Part.Compound([self.untouched[k] for k in new]).copy().Faces
            self._own.update(zip(new, copies, strict=True))
