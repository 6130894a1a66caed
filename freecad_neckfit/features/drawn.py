"""What a check keeps for the screen beside its findings: the interference and the gap map."""

from __future__ import annotations

import json
from fnmatch import fnmatchcase
from typing import Any

from ..run.finding import State

NECK = ("heel", "shaft", "fretboard", "binding_*")
OTHERS = ("body", "plate")
LEAST = 1e-3
"""Common solids smaller than this [mm3] are the kernel's rounding where parts touch."""
DIGITS = 4
"""Decimals of the gap map's rooms [mm]: a tenth of a micron is finer than the kernel reads."""


def keep_drawn(check: Any, result: Any) -> None:
    """Keep in the check object what the screen draws of a ``run.chain.Result``.

    Where the check went without solids nothing is drawn of them.
    """
    check.Interference = interference(result)
    check.GapMap = gap_map_text(result)


def interference(result: Any) -> Any:
    """What the neck shares with body and cover plate, in the body frame; empty where nothing.

    The kernel is asked only where a finding says that they interfere.
    """
    import FreeCAD  # noqa: F401 (Part crashes where it is imported first)
    import Part

    found = [
        solid
        for pair in (_pairs(result.assembly.parts) if _clashes(result) else ())
        for solid in _common(*pair)
    ]
    return Part.Compound(found) if found else Part.Shape()


def gap_map_text(result: Any) -> str:
    """The room under the overhang as JSON with x, y and gap [mm]; empty where there is none.

    Empty too where the solids do not show it: a finding says why then.
    """
    if result.assembly is None:
        return ""
    from ..solids.measure import KERNEL_FAILURES, Context, gap_map

    assembly = result.assembly
    try:
        found = gap_map(Context(assembly.parts, result.values, missing=assembly.missing))
    except KERNEL_FAILURES:
        return ""
    if found is None:
        return ""
    # JSON has no NaN: null stands where there is no room to measure.
    gaps = [[round(g, DIGITS) if g == g else None for g in row] for row in found.gap.tolist()]  # noqa: PLR0124
    x, y = ([round(a, DIGITS) for a in axis.tolist()] for axis in (found.x, found.y))
    return json.dumps({"x": x, "y": y, "gap": gaps}, allow_nan=False)


def _clashes(result: Any) -> bool:
    return result.assembly is not None and any(
        f.id.startswith("clash.") and f.state is State.INTERFERES for f in result.findings
    )


def _pairs(parts: dict[str, Any]) -> list[tuple[Any, Any]]:
    necks = [s for name, s in parts.items() if any(fnmatchcase(name, n) for n in NECK)]
    return [(parts[other], neck) for other in OTHERS if other in parts for neck in necks]


def _common(one: Any, other: Any) -> list[Any]:
    if not one.BoundBox.intersect(other.BoundBox):
        return []
    return [solid for solid in one.common(other).Solids if solid.Volume > LEAST]
