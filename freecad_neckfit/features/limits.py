"""Limit deviations and spreads that a joint states, kept in its document."""

from __future__ import annotations

import json
from collections.abc import Mapping
from typing import Any, TypeVar

from ..job.joint import Limits

T = TypeVar("T")


def limits_of(joint: Any) -> dict[str, Limits]:
    """The limit deviations (lower, upper) that the joint states, by key, in inner units."""
    return {key: (low, high) for key, (low, high) in json.loads(joint.Tolerances or "{}").items()}


def spreads_of(joint: Any) -> dict[str, str]:
    """How dimensions spread between their limits, by key, where the joint states it."""
    return {key: str(spread) for key, spread in json.loads(joint.Spreads or "{}").items()}


def keep_limits(joint: Any, limits: Mapping[str, Limits], spreads: Mapping[str, str]) -> None:
    """Make the joint state just these limits and spreads."""
    joint.Tolerances = json.dumps({key: list(pair) for key, pair in limits.items()})
    joint.Spreads = json.dumps(dict(spreads))


def state_limits(joint: Any, key: str, limits: Limits | None, *, spread: str | None = None) -> None:
    """State the limits of one dimension, and its spread; None leaves either to its default."""
    keep_limits(joint, _with(limits_of(joint), key, limits), _with(spreads_of(joint), key, spread))


def _with(found: dict[str, T], key: str, value: T | None) -> dict[str, T]:
    kept = {k: v for k, v in found.items() if k != key}
    return kept if value is None else kept | {key: value}
