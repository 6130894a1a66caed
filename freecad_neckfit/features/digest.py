"""One short text for all values of a joint, by which a result is known to be fresh or stale."""

from __future__ import annotations

import hashlib
import json
from collections.abc import Mapping
from pathlib import Path
from typing import Any

from ..job.resolve import complete

WORDS_ONLY = ("job.name", "job.note")
"""Parameters that no finding depends on."""
SHOP = "shop."
"""What the shop can set: it decides what is proposed, and no finding depends on it."""
SAMPLED = "body.top_"
"""Parameters that only a sampled top has. Documents older than these keep their findings fresh."""
PLACES = 9
"""A document keeps 16 decimals of a value, not all of its bits: finer differences mean nothing."""


def digest_of(stated: Mapping[str, Any], *, solids: str = "") -> str:
    """Digest of everything that findings depend on, the outline's file included.

    ``stated`` maps keys to inner values; ``solids``: what adopted solids are known by. A file that
    cannot be read counts as empty; building the joint says what is wrong with it.
    """
    values = complete(stated)
    plain = {key: _plain(values[key]) for key in values if _matters(key, values)}
    text = json.dumps(plain, sort_keys=True)
    content = _content(values) if values["body.outline"] == "file" else b""
    return hashlib.sha256(text.encode() + solids.encode() + content).hexdigest()[:32]


def _matters(key: str, values: Mapping[str, Any]) -> bool:
    if key.startswith(SAMPLED):
        return bool(values["body.top"] == "sampled")
    return key not in WORDS_ONLY and not key.startswith(SHOP)


def _content(values: Mapping[str, Any]) -> bytes:
    try:
        return Path(values["body.outline_file"]).read_bytes()
    except OSError:
        return b""


def _plain(value: Any) -> Any:
    if value is None or isinstance(value, bool | int | str):
        return value
    if hasattr(value, "tolist"):
        return _plain(value.tolist())
    if isinstance(value, list | tuple):
        return [_plain(item) for item in value]
    return round(float(value), PLACES) + 0.0  # no negative zero
