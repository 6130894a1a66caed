"""The pickups, each a block with its ring."""

from __future__ import annotations

from ...job.parameters import ROLES
from ...job.resolve import Values
from .shapes import Point, Solid, box
from .top import height


def bounds(v: Values, role: str, around: float = 0.0) -> tuple[Point, Point]:
    """Bounds in X and Y [mm] of a pickup with its ring, ``around`` [mm] larger on every side."""
    x, long, wide = (float(v[f"pickup_{role}.{key}"]) for key in ("x", "length", "width"))
    half = long / 2 + around, wide / 2 + around
    return (x - half[0], x + half[0]), (-half[1], half[1])


def fitted(v: Values) -> list[str]:
    """Roles of the pickups that are fitted."""
    return [role for role in ROLES if v[f"pickup_{role}.fitted"]]


def mount_height(v: Values, role: str) -> float:
    """Height Z [mm] that a pickup's travel counts from, at its pole line on the centreline."""
    key = f"pickup_{role}"
    bare = height(v, float(v[f"{key}.x"]))
    if v[f"{key}.mount"] == "cavity":
        return bare - float(v[f"{key}.cavity_depth"])
    plated = v[f"{key}.mount"] == "plate" and v["plate.cover"] != "none"
    return bare + float(v["finish.top"]) + (float(v["plate.thickness"]) if plated else 0.0)


def pickup(v: Values, role: str) -> Solid:
    """A block from the pickup's bottom to its poles or its ring, whichever is higher.

    Its poles stand in the middle of their travel.
    """
    key = f"pickup_{role}"
    mount, poles = mount_height(v, role), float(v[f"{key}.low"] + v[f"{key}.high"]) / 2
    bottom = min(mount + poles - float(v[f"{key}.body_height"]), mount)
    return box(*bounds(v, role), (bottom, mount + max(poles, float(v[f"{key}.ring"]))))
