"""What cannot be made of wood and metal at all, as against what merely does not fit.

A heel 5 mm too wide is judged; a pocket through the body's back is refused here. Every joint that
passes can be built as valid, closed solids.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator

from ..errors import CannotBuild
from ..resolve import Values
from . import body, bridge, frets, neck, openings, plate, pocket, screws, shim, stated

__all__ = ["refuse_impossible"]

_COMPLAINTS: tuple[Callable[[Values], Iterator[str]], ...] = (
    stated.complaints,
    neck.complaints,
    frets.complaints,
    pocket.complaints,
    body.complaints,
    openings.complaints,
    plate.complaints,
    shim.complaints,
    screws.complaints,
    bridge.complaints,
)


_OF_THE_BODY = (body.complaints, openings.complaints)
"""Those that read nothing of pocket, shim and cover plate, and may have to read a file."""


def refuse_impossible(values: Values, name: str, *, body_stands: bool = False) -> None:
    """Return quietly for a joint that can be built; ``values`` come from ``resolve.complete``.

    For one joint: numbers are scalars. ``body_stands``: outline, edges and openings of the body
    were found possible before and are the same; to look at them takes most of the time. Raises
    CannotBuild with the first reason why it cannot: one sentence that names the joint, the
    parameters, their values and what to do. Raises BadInput where the outline's file cannot be
    used.
    """
    for complaints in _COMPLAINTS:
        if body_stands and complaints in _OF_THE_BODY:
            continue
        for complaint in complaints(values):
            raise CannotBuild(f"{name}: {complaint}")
