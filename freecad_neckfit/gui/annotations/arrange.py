"""Where headline, scale, labels and arrows stand in one view."""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass
from typing import Any

from ...job.quantity import Units
from ..translate import tr
from .arrows import Arrow
from .boxes import Box, Page, Wanted
from .gap_map import GapField, swatches, title
from .label import Label
from .layout import spread
from .notes import Note, is_finite
from .panel import Panel
from .pictures import headline_picture, scale_picture
from .sight import Sight

MARGIN, SPACING, REACH = 10.0, 6.0, 70.0
"""Page margin, room between labels, and from points to labels [pixel at scale 1]."""
NEAR = 14.0
"""Arrows closer than this [pixel at scale 1] would blur."""
Corners = Sequence[tuple[float, float, float]]
"""Corners of something in the body frame [mm]."""


@dataclass(frozen=True)
class Arrangement:
    """One view's arrangement in the making: what it sees, and how large its text is."""

    sight: Sight
    scale: float
    labels: Mapping[str, Label]

    def head(self, panel: Panel, lines: Sequence[str], *, hidden: int, stale: bool) -> Box:
        """Place the headline above at the left; the room that it takes.

        ``hidden``: how many findings found no room, which a last line tells.
        """
        margin, high = MARGIN * self.scale, self.sight.size[1]
        words = tr("{} more: outside this view, or no room")
        more = (words.format(hidden),) if hidden else ()
        # Room for the last line is kept from the start: labels need not make way for it later.
        fullest = headline_picture((*lines, words.format("00")), scale=self.scale, stale=stale)
        picture = headline_picture((*lines, *more), scale=self.scale, stale=stale)
        panel.write((*lines, *more), picture)
        panel.place(
            self.sight,
            Box(margin, high - margin - picture.height, picture.width, picture.height),
        )
        return Box(margin, high - margin - fullest.height, fullest.width, fullest.height)

    def bar(self, panel: Panel, field: GapField | None, *, units: Units) -> list[Box]:
        """Place the gap map's scale below at the left, if there is one; the room that it takes."""
        colours = swatches(field, units=units) if field is not None else []
        if not colours:
            panel.hide()
            return []
        margin = MARGIN * self.scale
        picture = scale_picture(title(), tuple(colours), scale=self.scale)
        panel.write([title(), *(text for _, text, _ in colours)], picture)
        box = Box(margin, margin, picture.width, picture.height)
        panel.place(self.sight, box)
        return [box]

    def loose(self, notes: Iterable[Note], taken: Sequence[Box]) -> list[Box]:
        """Findings without a place stand below the headline, as many as find room there.

        ``taken``: by the headline, then by others; returns what the labels take.
        """
        boxes: list[Box] = []
        margin, top = MARGIN * self.scale, taken[0].y
        floor = max([margin, *(box.top for box in taken[1:])])
        for note in notes:
            picture = self.labels[note.id].picture(self.scale)
            top -= picture.height + SPACING * self.scale
            if top < floor:
                break
            boxes.append(Box(margin, top, picture.width, picture.height))
            self.labels[note.id].place(self.sight, boxes[-1], scale=self.scale)
        return boxes

    def at_places(
        self, notes: Sequence[Note], taken: tuple[Box, ...], *, clash: Corners, bounds: Corners
    ) -> None:
        """Labels stand round the places that this view shows, clear of what is ``taken``.

        ``clash``: corners of the interference; ``bounds``: of the model, kept clear by side views.
        """
        inside = [note for note in notes if self._is_inside(note)]
        wanted = []
        for note in inside:
            (x, y, _), picture = (
                self.sight.pixels(note.place)[0],
                self.labels[note.id].picture(self.scale),
            )
            wanted.append(Wanted(float(x), float(y), picture.width, picture.height))
        width, height = map(float, self.sight.size)
        room = (MARGIN * self.scale, SPACING * self.scale, REACH * self.scale)
        page = Page(width, height, *room, taken, self._middle(wanted, clash), self._band(bounds))
        for note, box in zip(inside, spread(wanted, page), strict=True):
            if box is not None:
                self.labels[note.id].place(self.sight, box, scale=self.scale)

    def arrows(self, arrows: Mapping[str, Arrow]) -> None:
        """Beside each marker; one arrow is enough where two would lie on each other."""
        drawn: list[Any] = []
        for finding_id, arrow in arrows.items():
            box = self.labels[finding_id].box
            if box is None:
                arrow.hide()
                continue
            middle = (box.x + box.width / 2, box.y + box.height / 2)
            tips = arrow.place(self.sight, scale=self.scale, label=middle)
            if tips is None:
                continue
            near = NEAR * self.scale
            if any(abs(tips[0] - other[0])[:2].max() < near for other in drawn):
                arrow.hide()
            else:
                drawn.append(tips)

    def _is_inside(self, note: Note) -> bool:
        if note.place is None or not is_finite(note.place):
            return False
        x, y, depth = self.sight.pixels(note.place)[0]
        wide, high = self.sight.size
        return bool(0 <= x <= wide and 0 <= y <= high and abs(depth) < 2)

    def _middle(self, wanted: Sequence[Wanted], clash: Corners) -> tuple[float, float] | None:
        across = [w.x for w in wanted]
        if clash:
            across += [float(x) for x in self.sight.pixels(clash)[:, 0]]
        return (min(across), max(across)) if across else None

    def _band(self, bounds: Corners) -> tuple[float, float] | None:
        if not len(bounds):
            return None
        heights = self.sight.pixels(bounds)[:, 1]
        return float(heights.min()), float(heights.max())
