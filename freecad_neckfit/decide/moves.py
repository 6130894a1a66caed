"""What a designer may change, in the steps of the shop."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field
from typing import Any

import numpy as np

from ..job.arrays import FloatArray
from ..job.parameters import ALL, ROLES
from ..job.resolve import Values, complete
from .shop import Steps

REACH = 6.0
"""Depths [mm] that are tried on either side of the stated one."""
STEEP = 4.0
"""Angles [degrees] that are tried on either side of the stated one."""
THICKEST_SHIM, DEEPEST_RECESS = 2.0, 8.0
THINNEST_PLATE = 1.5
"""No cover plate is proposed thinner [mm]; common practice, no source."""
KINDS = (
    "depth", "angle", "shim", "plate thickness", "no plate", "plate cut away", "recess", "bridge",
    "pickup", "fretboard", "binding", "screws",
)  # fmt: skip
"""Everything that may be allowed."""


@dataclass(frozen=True)
class Dial:
    """A number that can be turned: its keys take ``values``, at so many steps of change each."""

    name: str
    keys: tuple[str, ...]
    values: FloatArray
    steps: FloatArray


@dataclass(frozen=True)
class Move:
    """One way to change one part: what is stated anew, and what can be turned along with it.

    ``steps``: what the change counts before anything is turned. ``drops``: groups whose former
    statements go with the part that is exchanged.
    """

    part: str
    name: str
    stated: Mapping[str, Any] = field(default_factory=dict)
    dials: tuple[Dial, ...] = ()
    steps: float = 0.0
    drops: tuple[str, ...] = ()

    @property
    def keys(self) -> set[str]:
        """Every parameter that it changes."""
        dropped = {key for key, p in ALL.items() if p.group in self.drops}
        return {*self.stated, *(key for dial in self.dials for key in dial.keys), *dropped}


@dataclass(frozen=True)
class Stock:
    """Other parts that the shop has: name and statements of each, by bridge and pickup role."""

    bridges: tuple[tuple[str, Mapping[str, Any]], ...] = ()
    pickups: tuple[tuple[str, str, Mapping[str, Any]], ...] = ()


def moves(
    stated: Mapping[str, Any], *, steps: Steps, stock: Stock, allowed: tuple[str, ...] = KINDS
) -> tuple[Move, ...]:
    """Everything that may be changed in this joint; ``allowed``: which of ``KINDS``."""
    v = complete(stated)
    found = [
        *_pocket(v, steps, allowed),
        *(_shims(v, steps) if "shim" in allowed else ()),
        *_plates(v, steps, allowed),
        *_bridges(v, steps, stock, allowed),
        *(_pickups(steps, stock) if "pickup" in allowed else ()),
        *_boards(v, steps, allowed),
        *(_screws(v, steps) if "screws" in allowed else ()),
    ]
    return tuple(found)


def _dial(
    name: str, keys: tuple[str, ...], own: float, step: float, low: float, high: float
) -> Dial:
    """Whole steps from ``own`` between ``low`` and ``high`` and what the parameters permit."""
    for key in keys:
        low, high = max(low, float(ALL[key].low or 0.0)), min(high, float(ALL[key].high or np.inf))
    first, last = int(np.ceil((low - own) / step - 1e-9)), int(np.floor((high - own) / step + 1e-9))
    turns = np.arange(first, last + 1)
    # Rounded, so that 15.5 + 3 · 0.1 is stated as 15.8.
    return Dial(name, keys, np.round(own + turns * step, 9), np.abs(turns).astype(float))


def _pocket(v: Values, steps: Steps, allowed: tuple[str, ...]) -> list[Move]:
    depth, angle = float(v["pocket.depth"]), float(v["pocket.angle"])
    dials = []
    if "depth" in allowed:
        dials.append(_depths(depth, steps))
    if "angle" in allowed:
        dials.append(
            _dial("angle", ("pocket.angle",), angle, steps.angle, angle - STEEP, angle + STEEP)
        )
    single = [Move("pocket", dial.name, dials=(dial,)) for dial in dials]
    return [*single, Move("pocket", "depth and angle", dials=tuple(dials))] if dials[1:] else single


def _depths(depth: float, steps: Steps) -> Dial:
    if not steps.stops:
        keys = ("pocket.depth",)
        return _dial("depth", keys, depth, steps.depth, depth - REACH, depth + REACH)
    stops = np.array(steps.stops)
    return Dial("depth", ("pocket.depth",), stops, np.abs(stops - depth) / steps.depth)


def _shims(v: Values, steps: Steps) -> list[Move]:
    if v["shim.make"] == "strip":
        own = float(v["shim.strip"])
        dial = _dial("strip", ("shim.strip",), own, steps.shim, 0.0, THICKEST_SHIM)
        return [Move("shim", "strip's thickness", dials=(dial,))]
    if v["shim.make"] == "wedge":
        wall = _dial("wall", ("shim.wall",), float(v["shim.wall"]), steps.shim, 0.0, THICKEST_SHIM)
        mouth = _dial(
            "mouth", ("shim.mouth",), float(v["shim.mouth"]), steps.shim, 0.0, THICKEST_SHIM
        )
        return [Move("shim", "shim's thickness at wall and mouth", dials=(wall, mouth))]
    made = {"shim.make": "wedge"}
    flat = _dial("shim", ("shim.wall", "shim.mouth"), 0.0, steps.shim, steps.shim, THICKEST_SHIM)
    wall = _dial("wall", ("shim.wall",), 0.0, steps.shim, steps.shim, THICKEST_SHIM)
    return [
        Move("shim", "flat shim", made, (flat,)),
        Move("shim", "wedge, thick at the end wall", made | {"shim.mouth": 0.0}, (wall,)),
    ]


def _plates(v: Values, steps: Steps, allowed: tuple[str, ...]) -> list[Move]:
    if v["plate.cover"] == "none":
        return []
    found = []
    if "plate thickness" in allowed:
        own = float(v["plate.thickness"])
        least = min(THINNEST_PLATE, own)
        dial = _dial("plate", ("plate.thickness",), own, steps.plate, least, own)
        found.append(Move("plate", "thinner plate", dials=(dial,)))
    if "plate cut away" in allowed and v["plate.under_overhang"]:
        cut = {"plate.under_overhang": False}
        found.append(Move("plate", "plate cut away under the overhang", cut, steps=steps.swap))
    if "no plate" in allowed:
        found.append(Move("plate", "no plate", {"plate.cover": "none"}, steps=steps.swap))
    return found


def _bridges(v: Values, steps: Steps, stock: Stock, allowed: tuple[str, ...]) -> list[Move]:
    found = []
    if "recess" in allowed and v["bridge.mount"] != "plate":
        own = float(v["bridge.recess"]) if v["bridge.mount"] == "recess" else 0.0
        dial = _dial("recess", ("bridge.recess",), own, steps.recess, 0.0, DEEPEST_RECESS)
        found.append(Move("bridge", "recess under the bridge", {"bridge.mount": "recess"}, (dial,)))
    if "bridge" in allowed:
        for name, said in stock.bridges:
            found.append(Move("bridge", name, said, steps=steps.swap, drops=("bridge",)))
    return found


def _pickups(steps: Steps, stock: Stock) -> list[Move]:
    return [
        Move(f"{role} pickup", name, said, steps=steps.swap, drops=(f"pickup_{role}",))
        for role, name, said in stock.pickups
        if role in ROLES
    ]


def _boards(v: Values, steps: Steps, allowed: tuple[str, ...]) -> list[Move]:
    found = []
    overhang, hang = float(v["neck.overhang"]), float(v["neck.binding"])
    if "fretboard" in allowed and overhang > 0:
        # The last step ends the fretboard with the heel.
        turns = np.arange(1, int(np.ceil(overhang / steps.fretboard - 1e-9)) + 1)
        shorter = np.round(np.maximum(overhang - turns * steps.fretboard, 0.0), 9)
        dial = Dial("overhang", ("neck.overhang",), shorter, turns.astype(float))
        found.append(Move("fretboard", "shorter fretboard", dials=(dial,)))
    if "binding" in allowed and hang > 0:
        dial = _dial("binding", ("neck.binding",), hang, steps.binding, 0.0, hang)
        found.append(Move("binding", "binding relieved", dials=(dial,)))
    return found


def _screws(v: Values, steps: Steps) -> list[Move]:
    own = float(v["screws.length"])
    lengths = [float(n) for n in v["screws.lengths_stocked"] if float(n) != own]
    threaded = float(v["screws.threaded"])
    return [
        Move(
            "screws", f"screws of {length:g} mm",
            {"screws.length": length, "screws.threaded": min(threaded, length)},
            steps=steps.swap,
        )
        for length in lengths
    ]  # fmt: skip
