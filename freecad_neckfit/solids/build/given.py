"""Solids that the designer has already, taken in place of those built from values."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field
from typing import Any

import Part

from ...job.errors import BadInput
from ...job.resolve import Values
from .body import routed
from .given_neck import WOOD, neck_parts
from .shapes import Solid, fused

BINDINGS = ("binding_treble", "binding_bass")


@dataclass(frozen=True, kw_only=True)
class Given:
    """Ready solids of a joint; what is left out is built from the values.

    ``body``: in the body frame; pocket, stated cavities and holes are cut from a copy, unless it
    ``is_routed`` already. ``plate``: in the body frame, as it lies on the finished top, openings
    and all. ``neck``: in the neck frame, name to solid: "neck" (everything in one piece), or
    "wood" (heel and shaft) and "fretboard", or the assembly's own names (heel, shaft, fretboard,
    binding_treble, binding_bass, frets, inserts). What a given neck does not tell apart is told
    apart by the stated glue line, heel length and binding; frets are built unless given.
    ``neck_is_sound``: its solids were found valid and closed before, as a file's are.
    """

    body: Solid | None = None
    is_routed: bool = False
    plate: Solid | None = None
    neck: Mapping[str, Any] = field(default_factory=dict)
    neck_is_sound: bool = False

    def __bool__(self) -> bool:
        return self.body is not None or self.plate is not None or bool(self.neck)

    def routed_body(self, v: Values) -> Solid:
        """The body with its pocket. Raises BadInput where it is no sound solid, CannotBuild."""
        body = sound(self.body, name="body")
        return body if self.is_routed else routed(v, body)

    def sound_plate(self) -> Solid:
        """The cover plate. Raises BadInput where it is no sound solid."""
        return sound(self.plate, name="cover plate")

    def neck_parts(self, v: Values) -> tuple[dict[str, Solid], dict[str, str]]:
        """The neck's parts in the neck frame, and for each part not told apart the reason."""
        pieces = {
            name: _piece(shape, name, known=self.neck_is_sound) if name in WOOD else shape
            for name, shape in self.neck.items()
        }
        return neck_parts(v, pieces)


def _piece(shape: Any, name: str, *, known: bool) -> Solid:
    """Binding may be laid in several strips; all else is one solid."""
    if known and len(shape.Solids) == 1:
        return shape.Solids[0]
    told = name if name == "neck" else f"neck's {name}"
    if name not in BINDINGS or len(shape.Solids) < 2:
        return sound(shape, name=told)
    return Part.Compound([sound(strip, name=told) for strip in shape.Solids])


def sound(shape: Any, *, name: str) -> Solid:
    """The one valid, closed solid that a given shape is, facing outward.

    Several solids that share faces are taken as one. Raises BadInput for anything else.
    """
    solids = list(shape.Solids)
    if len(solids) > 1:
        solids = list(fused(solids).removeSplitter().Solids)
    if len(solids) != 1:
        raise BadInput(
            f"The given {name} is made of {len(solids)} solids, and one is wanted; "
            + ("join them." if solids else "close its faces to a solid.")
        )
    solid = solids[0]
    if not solid.isValid() or not all(shell.isClosed() for shell in solid.Shells):
        raise BadInput(
            f"The given {name} is no valid closed solid; let Part's Check Geometry show where, and "
            "mend it."
        )
    if solid.Volume < 0:
        solid = solid.copy()
        solid.reverse()
    return solid
