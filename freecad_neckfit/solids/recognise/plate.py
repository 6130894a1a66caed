"""A cover plate that is there already: its thickness."""

from __future__ import annotations

from typing import Any

from .kinds import Flat, kind_of
from .reading import NotRead, Shown

OPPOSITE = 1e-6
"""Faces whose normals add up to less than this look opposite ways."""


def read_plate(solid: Any) -> Shown:
    """Thickness of a flat plate, however it lies: between its two largest plane faces.

    Raises NotRead where these do not look opposite ways, as on a bent plate.
    """
    faces = sorted(solid.copy().Faces, key=lambda f: -float(f.Area))[:2]
    kinds = [kind for face in faces if isinstance(kind := kind_of(face), Flat)]
    if len(kinds) < 2 or abs(kinds[0].normal + kinds[1].normal).max() > OPPOSITE:
        raise NotRead("The cover plate is not flat, so that its thickness must be stated.")
    thickness = abs(float(kinds[0].normal @ (kinds[1].point - kinds[0].point)))
    off = kinds[0].off + kinds[1].off
    return Shown({"plate.thickness": thickness}, {"plate.thickness": off})
