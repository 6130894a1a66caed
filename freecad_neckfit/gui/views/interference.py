"""The solid in which parts of a checked joint interfere."""

from __future__ import annotations

import json
from typing import Any

LEAST = 1e-3
"""Common solids smaller than this [mm3] are the kernel's rounding where parts touch."""


def interference(check: Any) -> Any:
    """The shape that the check keeps, else the one its joint's parts have in common; or None.

    In the joint's body frame. The parts are asked only while the check still speaks of them, and
    only where it found that they interfere.
    """
    kept = getattr(check, "Interference", None)
    if kept is not None and not kept.isNull():
        return kept
    joint = getattr(check, "Joint", None)
    if joint is None or getattr(check, "Stale", False) or not _clashes(check):
        return None
    return common_of(joint)


def _clashes(check: Any) -> bool:
    text = getattr(check, "Findings", "")
    found = json.loads(text)["joints"][0]["findings"] if text else []
    return any(f["id"].startswith("clash.") and f["state"] == "interferes" for f in found)


def common_of(joint: Any) -> Any:
    """What neck and body or cover plate share, as a compound in the body frame; None if nothing."""
    import Part

    from ...features.make import parts_of

    shapes = {part.Name.rstrip("0123456789"): part.Shape.copy() for part in parts_of(joint)}
    neck = shapes.get("SeatedNeck")
    if neck is None or neck.isNull():
        return None
    back = joint.Placement.inverse()
    found = []
    for name in ("RoutedBody", "SeatedPlate"):
        other = shapes.get(name)
        if other is None or other.isNull():
            continue
        for solid in neck.Solids:
            if not solid.BoundBox.intersect(other.BoundBox):
                continue
            found += [s for s in other.common(solid).Solids if s.Volume > LEAST]
    if not found:
        return None
    whole = Part.makeCompound(found)
    whole.Placement = back.multiply(whole.Placement)
    return whole
