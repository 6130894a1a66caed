"""What a window is drawn over: depth and angle, shim or plate thickness."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Any

import numpy as np

from ..job.arrays import Array
from ..job.errors import BadInput
from ..job.parameters import ALL
from ..job.possible.shim import THINNEST
from ..job.quantity import Kind
from ..job.resolve import Values

DEPTH, ANGLE, SHIM, PLATE = "depth", "angle", "shim", "plate"
SECOND = (ANGLE, SHIM, PLATE)
"""What a window may have beside depth."""


@dataclass(frozen=True)
class Axis:
    """One direction of a window: the parameters that it moves, and how far they are looked at.

    ``keys`` take the same value; ``fixed`` is stated along with it. ``low`` and ``high`` in the
    parameters' inner unit.
    """

    name: str
    title: str
    kind: Kind
    keys: tuple[str, ...]
    low: float
    high: float
    fixed: tuple[tuple[str, Any], ...] = ()

    def state(self, value: Array | float) -> dict[str, Any]:
        """What is stated where the axis stands at ``value``."""
        return dict(self.fixed) | dict.fromkeys(self.keys, value)

    def taken(self, value: float) -> dict[str, Any]:
        """What is stated where one place is taken over: a shim of nothing is no shim."""
        if self.name == SHIM and value < THINNEST:
            return {"shim.make": "none"}
        return self.state(value)

    def between(self, low: float | None, high: float | None) -> Axis:
        """The same axis over another range; raises BadInput where that is none."""
        first, last = self.low if low is None else low, self.high if high is None else high
        for key in self.keys:
            p = ALL[key]
            first, last = max(first, float(p.low or 0.0)), min(last, float(p.high or np.inf))
        if not first < last:
            raise BadInput(
                f"the range of the {self.name} from {low} to {high} {self.kind.unit} is empty or "
                "lies outside what is permitted; state the smaller first."
            )
        return Axis(self.name, self.title, self.kind, self.keys, first, last, self.fixed)


def axis(name: str, values: Values) -> Axis:
    """The axis called ``name`` for a joint whose completed ``values`` are given.

    Depth reaches 6 mm to either side of the job's own, the angle from -2 to 4 degrees and past
    the job's own. Raises BadInput for names that are no axis, and for a plate that is not there.
    """
    if name == DEPTH:
        own = float(values["pocket.depth"])
        found = Axis(DEPTH, "pocket depth", Kind.LENGTH, ("pocket.depth",), own - 6.0, own + 6.0)
    elif name == ANGLE:
        own = float(values["pocket.angle"])
        low, high = min(-2.0, own - 1.0), max(4.0, own + 1.0)
        found = Axis(ANGLE, "pocket angle", Kind.ANGLE, ("pocket.angle",), low, high)
    elif name == SHIM:
        found = _shim(values)
    elif name == PLATE:
        found = _plate(values)
    else:
        raise BadInput(f"{name!r} is no axis of a window; write one of {', '.join(SECOND)}.")
    return found.between(None, None)


def _shim(values: Values) -> Axis:
    make = values["shim.make"]
    if make == "strip":
        return Axis(SHIM, "shim, strip's thickness", Kind.LENGTH, ("shim.strip",), 0.0, 2.0)
    if make == "wedge":
        return Axis(SHIM, "shim's thickness at the end wall", Kind.LENGTH, ("shim.wall",), 0.0, 2.0)
    keys = ("shim.wall", "shim.mouth")
    flat = (("shim.make", "wedge"),)
    return Axis(SHIM, "thickness of a flat shim", Kind.LENGTH, keys, 0.0, 2.0, flat)


def _plate(values: Values) -> Axis:
    if values["plate.cover"] == "none":
        raise BadInput("the joint has no cover plate: a window over its thickness says nothing.")
    return Axis(PLATE, "cover plate's thickness", Kind.LENGTH, ("plate.thickness",), 0.5, 4.0)
