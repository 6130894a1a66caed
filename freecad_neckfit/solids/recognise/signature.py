"""A picked face or edge, remembered by its geometry, so that it is found again after an edit.

A model's names of faces change when it is edited; where a face lies, which way it looks and how
large it is changes little.
"""

from __future__ import annotations

import json
import math
from typing import Any

import numpy as np

from ...job.arrays import FloatArray
from .kinds import Flat, Round, kind_of
from .reading import NotRead

TURNED = 10.0
"""A face that looks this many degrees elsewhere counts one point against it."""
MOVED = 0.15
"""So does one whose middle moved by this share of its size."""
GROWN = math.log(2.0)
"""And one that is twice or half as large."""
WORST = 1.5
"""The points against the best match may not exceed this."""
AHEAD = 0.25
"""It must be ahead of the next one by this, or by half of the next one's points."""


def signature_of(piece: Any) -> str:
    """What is remembered of a face or an edge, as JSON [mm]."""
    return json.dumps(_face(piece) if piece.ShapeType == "Face" else _edge(piece))


def find(solid: Any, signature: str, *, what: str) -> int:
    """Index of the face (or edge) of a shape that a signature remembers.

    ``what`` names it in the sentence. Raises NotRead where none is like it, or two are.
    """
    sought = json.loads(signature)
    pieces = solid.Faces if "area" in sought else solid.Edges
    read = _face if "area" in sought else _edge
    against = np.array([_unlike(sought, read(piece)) for piece in pieces])
    if not len(against) or against.min() > WORST:
        raise NotRead(f"The {what} that was picked is no longer there; pick it again.")
    order = np.argsort(against)
    best = float(against[order[0]])
    if len(order) > 1 and float(against[order[1]]) - best < min(AHEAD, against[order[1]] / 2):
        raise NotRead(f"Several look like the {what} that was picked; pick it again.")
    return int(order[0])


def _face(face: Any) -> dict[str, Any]:
    kind = kind_of(face)
    u0, u1, v0, v1 = face.ParameterRange
    n = face.normalAt((u0 + u1) / 2, (v0 + v1) / 2)
    way, radius = np.array([n.x, n.y, n.z]), 0.0
    if isinstance(kind, Flat):
        way = kind.normal
    elif isinstance(kind, Round):
        radius = kind.radius
    return {"kind": type(kind).__name__, "way": _numbers(way), "at": _numbers(face.CenterOfMass),
            "area": float(face.Area), "radius": radius}  # fmt: skip


def _edge(edge: Any) -> dict[str, Any]:
    first, last = (edge.valueAt(p) for p in (edge.FirstParameter, edge.LastParameter))
    return {"kind": type(edge.Curve).__name__.replace("LineSegment", "Line"),
            "way": _numbers(last - first), "at": _numbers(edge.CenterOfMass),
            "length": float(edge.Length)}  # fmt: skip


def _unlike(sought: dict[str, Any], found: dict[str, Any]) -> float:
    """Points against: 0 for the same piece, infinite for one of another kind."""
    if sought["kind"] != found["kind"]:
        return math.inf
    is_face = "area" in sought
    measure = "area" if is_face else "length"
    size = math.sqrt(sought["area"]) if is_face else sought["length"]
    angle = _angle(np.array(sought["way"]), np.array(found["way"]), directed=is_face)
    if angle > 45.0 or found[measure] <= 0 or size <= 0:
        return math.inf
    away = float(np.linalg.norm(np.array(sought["at"]) - np.array(found["at"])))
    grown = abs(math.log(found[measure] / sought[measure]))
    if is_face and max(sought["radius"], found["radius"]) > 0:
        grown += abs(sought["radius"] - found["radius"]) / max(sought["radius"], found["radius"])
    return angle / TURNED + away / (MOVED * size) + grown / GROWN


def _angle(one: FloatArray, other: FloatArray, *, directed: bool) -> float:
    """Degrees between two directions; an edge has no beginning."""
    sizes = float(np.linalg.norm(one) * np.linalg.norm(other))
    if sizes < 1e-12:
        return 0.0  # a closed curve ends where it begins
    cosine = float(one @ other) / sizes
    return math.degrees(math.acos(np.clip(cosine if directed else abs(cosine), -1.0, 1.0)))


def _numbers(vector: Any) -> list[float]:
    return [float(a) for a in vector]
