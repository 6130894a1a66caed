"""The checker's measurements on solids: everything is read from the parts as they are placed."""

from __future__ import annotations

import weakref
from collections.abc import Callable, Iterable, Mapping
from functools import partial
from typing import Any

from . import (
    beside,
    board_sides,
    clashes,
    corners,
    end_seen,
    floor,
    over_pickups,
    plate_heel,
    rooms,
    saddles,
    screws,
    sides,
    strings,
    strings_plate,
    wood,
)
from .context import Context
from .failures import KERNEL_FAILURES
from .measured import Measured
from .rooms import GapMap, gap_map

Measure = Callable[[Context], Measured]

KEYS: dict[str, Measure] = {
    "overhang_gap": rooms.overhang_gap,
    "corner_gap": rooms.corner_gap,
    "binding_gap": rooms.binding_gap,
    "overhang_side": board_sides.overhang_side,
    "overhang_pickup": beside.overhang_pickup,
    "plate_heel": plate_heel.plate_heel,
    "side_bass": sides.side_bass,
    "side_treble": sides.side_treble,
    "end_clearance": sides.end_clearance,
    "end_visible": end_seen.end_visible,
    "corner_entry": corners.corner_entry,
    "contact_share": floor.contact_share,
    "floor_lift": floor.floor_lift,
    "wood_floor": wood.wood_floor,
    "wall_treble": wood.wall_treble,
    "wall_bass": wood.wall_bass,
    "web": wood.web,
    "screw_penetration": screws.screw_penetration,
    "screw_tip": screws.screw_tip,
    "screw_edge": screws.screw_edge,
    "screw_rod": screws.screw_rod,
    "rod_access": beside.rod_access,
    "string_open": strings.string_open,
    "string_fretted": strings.string_fretted,
    "saddle_low": saddles.saddle_low,
    "saddle_high": saddles.saddle_high,
    "top_string": strings.top_string,
    "plate_string": strings_plate.plate_string,
    "clash_neck_body": clashes.between(clashes.NECK_PARTS, "body"),
    "clash_neck_plate": clashes.between(clashes.NECK_PARTS, "plate"),
    "clash_neck_pickup_neck": clashes.between(clashes.NECK_PARTS, "pickup_neck"),
    "clash_rod_tool_body": clashes.between(("rod_tool",), "body"),
    "clash_rod_tool_plate": clashes.between(("rod_tool",), "plate"),
    "clash_rod_tool_pickup_neck": clashes.between(("rod_tool",), "pickup_neck"),
}
for _role in clashes.ROLES:
    KEYS[f"pickup_{_role}_low"] = partial(over_pickups.pickup_low, role=_role)
    KEYS[f"pickup_{_role}_high"] = partial(over_pickups.pickup_high, role=_role)
    KEYS[f"clash_plate_pickup_{_role}"] = clashes.between(("plate",), f"pickup_{_role}")


def measure_all(
    assembly: Any, values: Mapping[str, Any], *, keys: Iterable[str] | None = None
) -> dict[str, Measured]:
    """Measure the parts of an assembly; ``keys`` names the measurements wanted, all if None.

    What the kernel cannot answer becomes a ``Measured`` that is not known, with the reason; it is
    never a pass. Errors in the program itself propagate. Raises KeyError for an unknown key.
    """
    context = _context(assembly, values)
    _remember(assembly, context)
    wanted = KEYS if keys is None else {key: KEYS[key] for key in keys}
    return {key: measured(measure, context) for key, measure in wanted.items()}


_last: list[tuple[weakref.ref[Any], Context]] = []
"""The assembly measured last, for as long as it lives, with what was worked out about its parts."""


def context_of(assembly: Any, values: Mapping[str, Any]) -> Context:
    """What was worked out when these parts were measured, if they were the last; else anew."""
    for known, context in _last:
        if known() is assembly and context.values is values:
            return context
    return _context(assembly, values)


def _context(assembly: Any, values: Mapping[str, Any]) -> Context:
    return Context(assembly.parts, values, missing=getattr(assembly, "missing", None))


def _remember(assembly: Any, context: Context) -> None:
    _last.clear()
    if hasattr(type(assembly), "__weakref__"):  # a plain namespace that holds parts has none
        _last.append((weakref.ref(assembly, _forgotten), context))


def _forgotten(gone: weakref.ref[Any]) -> None:
    _last[:] = [known for known in _last if known[0] is not gone]


def measured(measure: Measure, context: Context) -> Measured:
    """One measurement; a failure of the kernel, or a shape it cannot read, is told as unknown."""
    try:
        return measure(context)
    except KERNEL_FAILURES as error:
        return Measured.unknown(str(error) or type(error).__name__)


__all__ = [
    "KERNEL_FAILURES",
    "KEYS",
    "Context",
    "GapMap",
    "Measured",
    "context_of",
    "gap_map",
    "measure_all",
]
