"""Whether a stored check still speaks of the joint as it is now."""

from __future__ import annotations

from typing import Any

from ..job.errors import BadInput


def is_stale(check: Any) -> bool:
    """Whether anything that findings depend on changed since the check.

    A joint that cannot be read now is not the one that was checked.
    """
    from .gather import joint_digest

    try:
        return bool(joint_digest(check.Joint) != check.CheckedDigest)
    except BadInput:
        return True


def refresh(check: Any) -> None:
    """Set the check's ``Stale`` to what is true now."""
    stale = is_stale(check)
    if check.Stale != stale:
        check.Stale = stale
