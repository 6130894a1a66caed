"""One finding in the scene: label, leader and marker."""

from __future__ import annotations

import math
from dataclasses import dataclass
from typing import Any

import numpy as np
from pivy import coin

from . import nodes
from .boxes import Box
from .layout import attach
from .notes import Note, element_of
from .palette import INK, WHITE, Colour, look_of
from .pictures import Picture, label_picture
from .sight import Sight

PREFIX = "NeckFit_"
MARKER, HALO = 6.0, 2.0
"""Radius of the marker, and the white edge round it [pixel at scale 1]."""
LEADER = 2.0


@dataclass(frozen=True)
class Shown:
    """What a label shows at the moment, read back from its nodes."""

    text: str
    colour: Colour
    pattern: int
    is_shown: bool
    box: Box
    leader: tuple[tuple[float, float, float], ...]


class Label:
    """The nodes of one note: ``pointer`` (leader, marker) and ``node`` (label).

    Both bear the finding's name. They are apart, so that all leaders can run below all labels.
    """

    def __init__(self, note: Note, *, stale: bool = False) -> None:
        self.box: Box | None = None
        self._text = coin.SoInfo()
        self._image, self._at = nodes.image(), nodes.translation()
        self._ends, self._rim, self._disc = (nodes.coordinates() for _ in range(3))
        self._fill, self._ink = nodes.colour(WHITE), nodes.colour(INK)
        self._styles = nodes.line_style(LEADER + 2 * HALO), nodes.line_style(LEADER)
        self._faces = nodes.polygons(3), nodes.polygons(3)
        self._leader = nodes.switch(*self._leader_nodes(), on=False)
        self._switch = nodes.switch(self._text, self._at, self._image, on=False)
        name = PREFIX + element_of(note.id)
        self.node = nodes.separator(self._switch, name=name)
        self.pointer = nodes.separator(self._leader, name=name)
        self._drawn: Picture | None = None
        self._state: tuple[Note, bool, bool] | None = None
        self._pictures: dict[float, Picture] = {}
        self.write(note, stale=stale)

    def _leader_nodes(self) -> tuple[Any, ...]:
        halo, core = self._styles
        return (
            nodes.separator(nodes.colour(WHITE), halo, self._ends, nodes.lines(2)),
            nodes.separator(self._ink, core, self._ends, nodes.lines(2)),
            nodes.separator(self._ink, self._rim, self._faces[0]),
            nodes.separator(self._fill, self._disc, self._faces[1]),
        )

    def write(self, note: Note, *, stale: bool = False, picked: bool = False) -> None:
        """Say ``note``; the next drawing places it."""
        state = (note, stale, picked)
        if self._state == state:
            return
        self.note, self._state = note, state
        self._stale, self._picked = stale, picked
        self._pictures.clear()
        look = look_of(note.state, stale=stale)
        nodes.put_text(self._text, note.lines(stale=stale))
        with nodes.quietly(self._fill, self._styles[1], *self._faces):
            self._fill.rgb.setValue(*look.fill)
            self._styles[1].linePattern.setValue(look.pattern)
            for faces in self._faces:
                faces.numVertices.setValue(look.corners)

    def picture(self, scale: float) -> Picture:
        """The label painted at that scale."""
        if scale not in self._pictures:
            self._pictures[scale] = label_picture(
                self.note, scale=scale, stale=self._stale, picked=self._picked
            )
        return self._pictures[scale]

    def place(self, sight: Sight, box: Box, *, scale: float) -> None:
        """Stand in ``box`` [pixel]; the leader goes from there to the finding's place."""
        self.box = box
        self._drawn = nodes.put_picture(self._image, self.picture(scale), instead_of=self._drawn)
        with nodes.quietly(self._at):
            self._at.translation.setValue(*map(float, sight.nearest([box.x, box.y])[0]))
        nodes.turn(self._switch, on=True)
        nodes.turn(self._leader, on=self.note.place is not None)
        if self.note.place is None:
            return
        x, y, depth = sight.pixels(self.note.place)[0]
        start = sight.nearest(attach(box, x, y))[0]
        nodes.put_points(self._ends, [start, self.note.place])
        self._mark(sight, (x, y, depth), scale)
        for style, width in zip(self._styles, (LEADER + 2 * HALO, LEADER), strict=True):
            nodes.scale_line(style, width, scale=scale)

    def _mark(self, sight: Sight, at: tuple[float, float, float], scale: float) -> None:
        corners = look_of(self.note.state).corners
        angles = math.pi / 2 + np.arange(corners) * 2 * math.pi / corners
        ring = np.c_[np.cos(angles), np.sin(angles), np.zeros(corners)]
        # A triangle of the same radius looks smaller than a circle.
        radius = MARKER * scale * (1.4 if corners <= 4 else 1.0)
        for node, size in ((self._rim, radius + HALO * scale), (self._disc, radius)):
            nodes.put_points(node, sight.points(ring * size + np.array(at)))

    def hide(self) -> None:
        """Draw nothing."""
        self.box = None
        for switch in (self._switch, self._leader):
            nodes.turn(switch, on=False)

    def shown(self) -> Shown:
        """What the nodes hold."""
        box = self.box or Box(0, 0, 0, 0)
        rgb = self._fill.rgb.getValues()[0].getValue()
        return Shown(
            text=str(self._text.string.getValue()),
            colour=(float(rgb[0]), float(rgb[1]), float(rgb[2])),
            pattern=int(self._styles[1].linePattern.getValue()),
            is_shown=nodes.is_on(self._switch),
            box=box,
            leader=tuple(nodes.points_of(self._ends)) if nodes.is_on(self._leader) else (),
        )
