"""Dimension-like arrows for the room between two parts."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Any

import numpy as np

from ...job.arrays import FloatArray
from . import nodes
from .notes import Note
from .palette import INK, WHITE
from .sight import Sight

HEAD, TAIL, ASIDE, BEYOND = 9.0, 26.0, 20.0, 5.0
"""Arrowhead, outer arrow, how far beside the marker, extension line beyond [pixel at scale 1]."""
INSIDE = 34.0
"""From this length on [pixel at scale 1] the arrows have room between the parts."""
SIDEWAYS = 0.2
"""A direction seen shorter than this share of its length points at the viewer: no arrow."""
COARSE = 0.35
"""Where a pixel of scale 1 is more than this [mm], the view is of the whole, and arrows clutter."""


@dataclass(frozen=True)
class Way:
    """Direction of a room from its place, and the share of the value that lies before the place."""

    direction: tuple[float, float, float]
    before: float = 0.0


_DOWN, _ALONG, _ACROSS = Way((0, 0, -1)), Way((1, 0, 0), 0.5), Way((0, 1, 0), 0.5)
WAYS = {
    # The place is the upper part's underside, and the room lies below it.
    "overhang.gap": _DOWN,
    "overhang.corner_gap": _DOWN,
    "overhang.binding_gap": _DOWN,
    # The place is on one of the two walls; a clearance is too small to tell which on a screen.
    "side.bass": _ACROSS,
    "side.treble": _ACROSS,
    "end.clearance": _ALONG,
    "end.visible": _ALONG,
}
"""The checks whose value is a room in a known direction."""


def tips(note: Note) -> FloatArray | None:
    """(2, 3): both ends of the room [mm], or None where the note tells of no such room."""
    way = WAYS.get(note.id)
    if way is None or note.place is None or note.room is None:
        return None
    place, along = np.array(note.place), np.array(way.direction) * note.room
    return np.array([place - way.before * along, place + (1 - way.before) * along])


class Arrow:
    """Two arrowheads on the ends of a room: outside it where it is small on the screen."""

    def __init__(self, note: Note) -> None:
        self.write(note)
        self._strokes, self._heads = nodes.coordinates(), nodes.coordinates()
        self._styles = nodes.line_style(5.0), nodes.line_style(2.0)
        halo, core = self._styles
        strokes = nodes.lines(2, 2, 2, 2)
        self.switch = nodes.switch(
            nodes.separator(nodes.colour(WHITE), halo, self._strokes, strokes),
            nodes.separator(nodes.colour(INK), core, self._strokes, strokes),
            nodes.separator(nodes.colour(INK), self._heads, nodes.polygons(3, 3)),
            on=False,
        )
        self.node: Any = nodes.separator(self.switch)

    def write(self, note: Note) -> None:
        """Stand for ``note``; the next drawing places it."""
        self.tips = tips(note)
        self._way = WAYS[note.id].direction if self.tips is not None else (0, 0, 1)

    def place(
        self, sight: Sight, *, scale: float, label: tuple[float, float] = (0.0, 0.0)
    ) -> FloatArray | None:
        """Draw the arrow for this view, or nothing where it would point at the viewer.

        It stands beside the finding's marker, as a dimension does, on the side away from
        ``label`` [pixel]. Returns its two tips [pixel], None where nothing is drawn.
        """
        drawn = self._drawn(sight, scale, np.array([*label, 0.0]))
        nodes.turn(self.switch, on=drawn is not None)
        if drawn is None:
            return None
        strokes, heads = drawn
        nodes.put_points(self._strokes, sight.points(strokes))
        nodes.put_points(self._heads, sight.points(heads))
        for style, width in zip(self._styles, (5.0, 2.0), strict=True):
            nodes.scale_line(style, width, scale=scale)
        return heads[[0, 3]]

    def hide(self) -> None:
        """Draw nothing."""
        nodes.turn(self.switch, on=False)

    def _drawn(
        self, sight: Sight, scale: float, label: FloatArray
    ) -> tuple[FloatArray, FloatArray] | None:
        if self.tips is None:
            return None
        a, b = sight.pixels(self.tips)
        along = _on_screen(sight, self.tips[0], np.array(self._way, dtype=float), scale)
        if along is None or not np.isfinite([a[2], b[2]]).all():
            return None
        if np.dot((b - a)[:2], along[:2]) < 0:
            along = -along
        across = np.array([-along[1], along[0], 0.0])
        if np.dot(across[:2], (a - label)[:2]) < 0:
            across = -across
        feet, aside = (a, b), across * ASIDE * scale
        a, b, beyond = a + aside, b + aside, across * BEYOND * scale
        inside = float(np.hypot(*(b - a)[:2])) >= INSIDE * scale
        out = -1.0 if inside else 1.0
        strokes = [
            a, b if inside else a - along * TAIL * scale,
            b, a if inside else b + along * TAIL * scale,
            feet[0], a + beyond,
            feet[1], b + beyond,
        ]  # fmt: skip
        wing = across * HEAD * scale * 0.4
        heads = []
        for tip, back in ((a, -along * out), (b, along * out)):
            base = tip + back * HEAD * scale
            heads += [tip, base + wing, base - wing]
        return np.array(strokes), np.array(heads)


def _on_screen(
    sight: Sight, at: FloatArray, direction: FloatArray, scale: float
) -> FloatArray | None:
    """The direction's unit vector in pixels; None where it points at the viewer or is too far."""
    here = sight.pixels(at)[0]
    steps = sight.points([here, here + np.array([1.0, 0.0, 0.0])])
    pixel = float(np.linalg.norm(steps[1] - steps[0]))
    if not 0 < pixel * scale < COARSE:
        return None
    per_mm = 1.0 / pixel
    seen = (sight.pixels(at + direction)[0] - here) * [1.0, 1.0, 0.0]
    length = float(np.linalg.norm(seen))
    return seen / length if length > SIDEWAYS * per_mm else None
