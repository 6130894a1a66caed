"""Labels, headline and scale bar as small pictures with their own background and border.

They are painted rather than made of FreeCAD's frame labels, whose border has one fixed colour: here
it tells the state by its line style and turns grey when the finding is out of date.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from functools import lru_cache
from typing import Any

from ...run.finding import State
from ..translate import tr
from .notes import Note
from .palette import DASH_DOT, DASHED, DOTTED, FAINT, GREY, INK, PAPER, WHITE, Colour, look_of

TEXT, HEAD, SMALL = 13, 14, 11
"""Heights of letters [pixel] at scale 1."""
PAD = 6
PICKED: Colour = (1.0, 1.0, 0.0)


@dataclass(frozen=True)
class Picture:
    """Pixels as the graphics library wants them: RGB, rows from the bottom up."""

    width: int
    height: int
    pixels: bytes


@dataclass(frozen=True)
class _Line:
    text: str
    size: int
    bold: bool = False
    colour: Colour = INK


def label_picture(
    note: Note, *, scale: float = 1.0, stale: bool = False, picked: bool = False
) -> Picture:
    """A label: sign, word and value on the state's colour, what it is about on white."""
    look = look_of(note.state, stale=stale)
    body = [_Line(note.title, TEXT)]
    # What fits need not say what was wanted: where all is shown, room is scarce.
    if note.wanted and note.state is not State.FITS:
        body.append(_Line(note.wanted, SMALL, colour=FAINT))
    if stale:
        body.append(_Line(tr("out of date").upper(), SMALL, bold=True))
    head = _Line(note.head.upper(), HEAD, bold=True, colour=look.ink)
    value = _Line(note.value, HEAD, bold=True, colour=look.ink)
    canvas = _Canvas(scale)
    gap = 2 * PAD if note.value else 0
    wide = max(canvas.width(head) + gap + canvas.width(value), *(canvas.width(b) for b in body))
    band = canvas.height(head) + PAD / 2
    canvas.open(wide + 4 * PAD, band + sum(map(canvas.height, body)) + 2.5 * PAD)
    canvas.fill(0, 0, canvas.across, band + PAD, look.fill)
    canvas.text(head, 2 * PAD, PAD)
    canvas.text(value, canvas.across - 2 * PAD - canvas.width(value), PAD)
    y = band + 1.5 * PAD
    for line in body:
        canvas.text(line, 2 * PAD, y)
        y += canvas.height(line)
    canvas.border(GREY if stale else INK, look.border, look.pattern, picked=picked)
    return canvas.close()


def headline_picture(lines: tuple[str, ...], *, scale: float = 1.0, stale: bool = False) -> Picture:
    """The answer in large letters, and what follows it.

    Once it need no longer be so, that is what is said large, and the former answer small.
    """
    return _headline_picture(tuple(headline_lines(lines, stale=stale)), stale, scale)


def headline_lines(lines: Sequence[str], *, stale: bool) -> list[_Line]:
    """The lines of the headline, from above, with their sizes."""
    shown = list(lines)
    if stale:
        shown.insert(0, tr("OUT OF DATE: changed since, check again"))
    first = _Line(shown[0], HEAD if stale else HEAD + 4, bold=True)
    return [first, *(_Line(line, TEXT, colour=FAINT) for line in shown[1:])]


@lru_cache(maxsize=16)
def _headline_picture(texts: tuple[_Line, ...], stale: bool, scale: float) -> Picture:
    canvas = _Canvas(scale)
    canvas.open(max(map(canvas.width, texts)) + 4 * PAD, sum(map(canvas.height, texts)) + 2 * PAD)
    y: float = PAD
    for line in texts:
        canvas.text(line, 2 * PAD, y)
        y += canvas.height(line)
    canvas.border(GREY if stale else INK, 2, DOTTED if stale else 0xFFFF, picked=False)
    return canvas.close()


@lru_cache(maxsize=16)
def scale_picture(
    title: str, swatches: tuple[tuple[Colour, str, bool], ...], *, scale: float = 1.0
) -> Picture:
    """A bar of (colour, text, hatched) from the top down."""
    canvas = _Canvas(scale)
    head = _Line(title, TEXT, bold=True)
    texts = [_Line(text, TEXT) for _, text, _ in swatches]
    swatch, tall = 34, canvas.height(head) + 4
    canvas.open(
        max(canvas.width(head), swatch + PAD + max(map(canvas.width, texts))) + 4 * PAD,
        canvas.height(head) + tall * len(texts) + 3 * PAD,
    )
    canvas.text(head, 2 * PAD, PAD)
    y = PAD * 1.5 + canvas.height(head)
    for (colour, _, hatched), text in zip(swatches, texts, strict=True):
        canvas.fill(2 * PAD, y, swatch, tall, colour, hatched=hatched)
        canvas.text(text, 3 * PAD + swatch, y + 2)
        y += tall
    canvas.border(INK, 2, 0xFFFF, picked=False)
    return canvas.close()


class _Canvas:
    """Paints in units of scale 1, from the upper left corner."""

    def __init__(self, scale: float) -> None:
        from PySide import QtGui

        self.scale = scale
        self.across = 0.0
        self._gui = QtGui
        self._fonts: dict[tuple[int, bool], tuple[Any, Any]] = {}

    def open(self, width: float, height: float) -> None:
        """Begin a picture of that size."""
        from PySide import QtCore

        self._core = QtCore
        self.across, self.down = width, height
        size = round(width * self.scale), round(height * self.scale)
        self._image = self._gui.QImage(*size, self._gui.QImage.Format_RGB888)
        self._image.fill(self._colour(PAPER))
        self._painter = self._gui.QPainter(self._image)
        self._painter.setRenderHint(self._gui.QPainter.Antialiasing)

    def width(self, line: _Line) -> float:
        metrics = self._font(line)[1]
        return float(metrics.boundingRect(line.text).width() + 2) / self.scale if line.text else 0.0

    def height(self, line: _Line) -> float:
        return float(self._font(line)[1].height()) / self.scale

    def fill(
        self,
        x: float,
        y: float,
        width: float,
        height: float,
        colour: Colour,
        *,
        hatched: bool = False,
    ) -> None:
        area = self._core.QRectF(*(self.scale * a for a in (x, y, width, height)))
        self._painter.fillRect(area, self._colour(colour))
        if hatched:
            brush = self._gui.QBrush(self._colour(WHITE), self._core.Qt.BDiagPattern)
            self._painter.fillRect(area, brush)

    def text(self, line: _Line, x: float, y: float) -> None:
        font, metrics = self._font(line)
        self._painter.setFont(font)
        self._painter.setPen(self._colour(line.colour))
        at = self._core.QPointF(x * self.scale, y * self.scale + metrics.ascent())
        self._painter.drawText(at, line.text)

    def border(self, colour: Colour, width: int, pattern: int, *, picked: bool) -> None:
        """A white edge, so that a dark border shows on a dark ground, and the border within."""
        self._frame(WHITE if not picked else PICKED, 0.0, 1.0 if not picked else 3.0, 0xFFFF)
        self._frame(colour, 1.0 if not picked else 3.0, float(width), pattern)

    def _frame(self, colour: Colour, inset: float, width: float, pattern: int) -> None:
        pen = self._gui.QPen(self._colour(colour), width * self.scale)
        pen.setJoinStyle(self._core.Qt.MiterJoin)
        dashes = {DASHED: (5, 2.5), DOTTED: (1.5, 1.5), DASH_DOT: (5, 2, 1.5, 2)}.get(pattern)
        if dashes:
            pen.setDashPattern(list(dashes))
        self._painter.setPen(pen)
        self._painter.setBrush(self._core.Qt.NoBrush)
        a = (inset + width / 2) * self.scale
        size = self._image.width() - 2 * a, self._image.height() - 2 * a
        self._painter.drawRect(self._core.QRectF(a, a, *size))

    def close(self) -> Picture:
        """The finished picture."""
        import numpy as np

        self._painter.end()
        width, height = self._image.width(), self._image.height()
        # Qt pads each row to four bytes and counts rows from the top.
        rows = np.frombuffer(bytes(self._image.constBits()), np.uint8).reshape(height, -1)
        # Rows in order first: taken out of order, bytes are copied one by one.
        upward = np.ascontiguousarray(rows[::-1, : 3 * width])
        return Picture(width, height, upward.tobytes())

    def _font(self, line: _Line) -> tuple[Any, Any]:
        key = line.size, line.bold
        if key not in self._fonts:
            font = self._gui.QFont()
            font.setPixelSize(max(round(line.size * self.scale), 1))
            font.setBold(line.bold)
            self._fonts[key] = font, self._gui.QFontMetrics(font)
        return self._fonts[key]

    def _colour(self, colour: Colour) -> Any:
        return self._gui.QColor.fromRgbF(*colour)
