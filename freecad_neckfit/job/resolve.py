"""From what was stated to a full set of values: defaults filled in, derived values worked out."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any

import numpy as np

from .arrays import Array, FloatArray
from .parameters import ALL, LISTS

Values = dict[str, Any]
"""One value for every declared parameter: text, flag, float or array (see ``arrays.py``)."""

# Open strings in Hz from A4 = 440 (ISO 16), treble first; masses in g/m from memory, light sets.
GUITAR_PITCH = (329.6276, 246.9417, 195.9977, 146.8324, 110.0, 82.4069, 61.7354, 46.2493)
GUITAR_MASS = (0.398, 0.672, 1.149, 2.24, 4.24, 6.79, 11.8, 18.8)
BASS_PITCH = (97.9989, 73.4162, 55.0, 41.2034, 30.8677, 23.1247)
BASS_MASS = (7.2, 14.7, 25.0, 38.5, 58.0, 75.0)
BASS_SCALE = 700.0
DEFAULT_SCREWS = ((-14.0, -19.0), (-14.0, 19.0), (-58.0, -19.0), (-58.0, 19.0))
DEFAULT_STOCK = (35.0, 38.0, 40.0, 42.0, 45.0, 50.0, 55.0)


def complete(stated: Mapping[str, Any]) -> Values:
    """Fill in defaults and derived values; ``stated`` maps declared keys to inner values.

    Numbers may be arrays over jobs; counts, choices and flags are one for all jobs of a call.
    """
    v: Values = {key: p.default for key, p in ALL.items()}
    v.update(stated)
    for group, axis in LISTS.items():
        _fill_list(v, group, axis)
    if v["neck.scale_bass"] is None:
        v["neck.scale_bass"] = v["neck.scale"]
    if v["neck.radius_end"] is None:
        v["neck.radius_end"] = v["neck.radius_nut"]
    if v["neck.heel_radius"] is None:
        v["neck.heel_radius"] = v["neck.heel_width_end"] / 2
    if v["pocket.end_radius"] is None:
        v["pocket.end_radius"] = v["pocket.width_end"] / 2
    if v["neck.overhang"] is None:
        v["neck.overhang"] = derived_overhang(v)
    _fill_strings(v)
    if v["screws.lengths_stocked"] is None:
        v["screws.lengths_stocked"] = np.array(DEFAULT_STOCK)
    if v["limits.top_string_min"] is None:
        v["limits.top_string_min"] = np.nan
    return v


def derived_overhang(v: Mapping[str, Any]) -> Array:
    """L_o = u_N + margin - u_h [mm], not below 0, on the centreline's own scale."""
    middle = (v["neck.scale"] + v["neck.scale_bass"]) / 2
    last = middle * (1 - 2.0 ** (-v["neck.frets"] / 12))
    return np.maximum(last + v["neck.end_margin"] - v["neck.nut_to_heel"], 0.0)


def string_share(count: int) -> FloatArray:
    """0 at the treble outer string to 1 at the bass outer string; shape (count,)."""
    return np.arange(count) / (count - 1)


def _fill_strings(v: Values) -> None:
    count = int(v["strings.count"])
    share = string_share(count)
    if v["strings.compensation"] is None:
        treble, bass = (
            np.asarray(v[f"strings.compensation_{s}"])[..., None] for s in ("treble", "bass")
        )
        v["strings.compensation"] = treble + (bass - treble) * share
    scale = np.max(v["neck.scale"])
    pitch, mass = (
        (BASS_PITCH, BASS_MASS) if scale > BASS_SCALE and count < 7 else (GUITAR_PITCH, GUITAR_MASS)
    )
    if v["strings.pitch"] is None:
        v["strings.pitch"] = np.array(pitch[:count])
    if v["strings.mass"] is None:
        v["strings.mass"] = np.array(mass[:count])


def _fill_list(v: Values, group: str, axis: str) -> None:
    keys = [key for key, p in ALL.items() if p.many == axis and p.group == group]
    given = [v[key] for key in keys if isinstance(v[key], np.ndarray)]
    if not given:
        rows = DEFAULT_SCREWS if group == "screw" else ()
        for i, key in enumerate(keys):
            v[key] = np.array([row[i] for row in rows], dtype=float)
        return
    length = given[0].shape[-1]
    for key in keys:
        if not isinstance(v[key], np.ndarray):
            v[key] = np.full(length, v[key], dtype=float)
