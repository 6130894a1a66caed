"""A page of a PDF as another program reads and renders it: its words, its lines, its ink."""

import ctypes
from dataclasses import dataclass

import numpy as np
import pypdfium2
from pypdfium2 import raw

MM = 25.4 / 72
"""Millimetres in a point."""
CAPITALS = 0.718
"""Height of Helvetica's capitals in font sizes."""


@dataclass(frozen=True)
class Text:
    """One text as it stands: its words, box and height of capitals [mm]."""

    words: str
    box: tuple[float, float, float, float]
    height: float


@dataclass(frozen=True)
class Line:
    """One stroke: width, and the points of its path [mm]."""

    width: float
    points: np.ndarray


@dataclass(frozen=True)
class Seen:
    """A page: size [mm], texts, strokes, and its darkness (0 to 1) in pixels of ``step`` mm."""

    size: tuple[float, float]
    texts: list[Text]
    lines: list[Line]
    ink: np.ndarray
    step: float


def seen(data):
    """Every page of a PDF."""
    document = pypdfium2.PdfDocument(data)
    try:
        return [_page(document[i]) for i in range(len(document))]
    finally:
        document.close()


def _page(page):
    listed = page.get_textpage()
    texts, lines = [], []
    for item in page.get_objects(max_depth=4):
        if item.type == raw.FPDF_PAGEOBJ_TEXT:
            texts.append(_text(item, listed))
        elif item.type == raw.FPDF_PAGEOBJ_PATH:
            found = _line(item)
            lines += [found] if found else []
    dots = 150
    grey = page.render(scale=dots / 72, grayscale=True).to_numpy()
    ink = 1.0 - grey.reshape(grey.shape[0], grey.shape[1]) / 255.0
    size = tuple(side * MM for side in page.get_size())
    return Seen(size, texts, lines, ink, 25.4 / dots)


def _numbers(count):
    return [ctypes.c_float() for _ in range(count)]


def _box(item):
    sides = _numbers(4)
    assert raw.FPDFPageObj_GetBounds(item.raw, *map(ctypes.byref, sides))
    return tuple(side.value * MM for side in sides)


def _matrix(item):
    found = raw.FS_MATRIX()
    assert raw.FPDFPageObj_GetMatrix(item.raw, ctypes.byref(found))
    return found


def _text(item, listed):
    (size,) = _numbers(1)
    assert raw.FPDFTextObj_GetFontSize(item.raw, ctypes.byref(size))
    m = _matrix(item)
    scale = float(np.hypot(m.c, m.d))
    long = raw.FPDFTextObj_GetText(item.raw, listed.raw, None, 0)
    buffer = ctypes.create_string_buffer(long)
    raw.FPDFTextObj_GetText(
        item.raw, listed.raw, ctypes.cast(buffer, ctypes.POINTER(ctypes.c_ushort)), long
    )
    words = buffer.raw.decode("utf-16-le").rstrip("\0")
    return Text(words, _box(item), size.value * scale * CAPITALS * MM)


def _line(item):
    """A stroked path; None for what is only filled, such as an arrowhead."""
    mode, stroked = ctypes.c_int(), ctypes.c_int()
    assert raw.FPDFPath_GetDrawMode(item.raw, ctypes.byref(mode), ctypes.byref(stroked))
    if not stroked.value:
        return None
    (wide,) = _numbers(1)
    assert raw.FPDFPageObj_GetStrokeWidth(item.raw, ctypes.byref(wide))
    m = _matrix(item)
    points = []
    for index in range(raw.FPDFPath_CountSegments(item.raw)):
        segment = raw.FPDFPath_GetPathSegment(item.raw, index)
        x, y = _numbers(2)
        assert raw.FPDFPathSegment_GetPoint(segment, ctypes.byref(x), ctypes.byref(y))
        points.append((m.a * x.value + m.c * y.value + m.e, m.b * x.value + m.d * y.value + m.f))
    return Line(wide.value * abs(m.a) * MM, np.array(points) * MM)
