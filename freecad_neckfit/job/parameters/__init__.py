"""Every parameter of a job, declared once, in the order in which they are shown."""

from __future__ import annotations

from ..parameter import Parameter
from .body import BODY, CAVITY, POCKET
from .conditions import CLIMATE, END_GAP, FINISH, JOB, LIMITS, WOOD
from .hardware import (
    BRIDGE,
    NECK_PLATE,
    OLD_PILOT,
    PICKUPS,
    PLATE,
    ROLES,
    SCREW,
    SCREWS,
    SHIM,
)
from .neck import NECK, STRINGS
from .shop import SHOP, SPREADS

ALL: dict[str, Parameter] = {
    p.key: p
    for p in (
        *JOB,
        *BODY,
        *POCKET,
        *CAVITY,
        *NECK,
        *STRINGS,
        *END_GAP,
        *PLATE,
        *BRIDGE,
        *PICKUPS,
        *SCREWS,
        *SCREW,
        *OLD_PILOT,
        *NECK_PLATE,
        *SHIM,
        *FINISH,
        *WOOD,
        *CLIMATE,
        *LIMITS,
        *SHOP,
    )
}
GROUPS: tuple[str, ...] = tuple(dict.fromkeys(p.group for p in ALL.values()))
LISTS = {"cavity": "cavity", "screw": "screw", "old_pilot": "pilot"}
"""Groups that a job file states as an array of tables, and the axis each is read along."""

__all__ = ["ALL", "GROUPS", "LISTS", "ROLES", "SPREADS"]
