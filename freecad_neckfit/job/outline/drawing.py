"""Reads a body's outline from a DXF drawing."""

from __future__ import annotations

import math
from collections.abc import Iterator
from itertools import pairwise
from pathlib import Path
from typing import Any

from ..errors import BadInput
from ..files import load_bytes, plain, plain_name
from ..quantity import Units
from .chain import Outline, Point, Segment
from .join import joined

LARGEST_DRAWING = 20_000_000
"""Largest drawing that is read [bytes]."""
FLAT = 0.01
"""How far [mm] an outline may stray from one level."""
CHORD = 0.005
"""How far [mm] lines may stray from the splines and ellipses that they stand for."""
MOST_PIECES = 4000

# DXF header variable $INSUNITS; 0 is a drawing without a unit.
_UNITS = {1: 25.4, 2: 304.8, 4: 1.0, 5: 10.0, 6: 1000.0}
_WORDS = {"TEXT", "MTEXT", "DIMENSION", "POINT", "LEADER", "MULTILEADER", "VIEWPORT", "ATTDEF"}
"""What a drawing says besides the outline: read past."""


def read_drawing(path: Path, *, bare: Units) -> Outline:
    """Return the only closed outline in a DXF file's model space, in mm.

    Polylines, lines, arcs, circles, and splines and ellipses as lines 0.005 mm close to them. The
    drawing's own unit counts; ``bare`` is the unit of a drawing without one. Needs ``ezdxf``.
    Raises BadInput for whatever cannot be read, or is not exactly one closed outline.
    """
    name = plain_name(path)
    document = _opened(path, name=name)
    scale = _scale(document, bare=bare, name=name)
    try:
        pieces = _all_pieces(document, scale=scale, name=name)
    except BadInput:
        raise
    except Exception as error:  # entities of a damaged drawing raise many kinds
        raise _broken(name, error) from error
    return joined(pieces, name=name)


def _opened(path: Path, *, name: str) -> Any:
    load_bytes(path, largest=LARGEST_DRAWING)
    try:
        import ezdxf
    except ImportError:
        raise BadInput(
            f"{name}: reading DXF needs the Python package ezdxf; install python3-ezdxf (Debian) "
            "or "
            "ezdxf (pip)."
        ) from None
    try:
        return ezdxf.readfile(str(path))
    except Exception as error:  # the parser raises many kinds; all mean the same here
        raise _broken(name, error) from error


def _broken(name: str, error: Exception) -> BadInput:
    why = plain(error).rstrip(".") or type(error).__name__
    return BadInput(f"{name} is no DXF drawing that can be read ({why}); save it again as DXF.")


def _scale(document: Any, *, bare: Units, name: str) -> float:
    """Return the millimetres in one unit of the drawing."""
    unit = document.header.get("$INSUNITS", 0)
    if unit == 0:
        return 25.4 if bare is Units.INCH else 1.0
    if unit not in _UNITS:
        raise BadInput(
            f"{name}: its unit ($INSUNITS {unit}) is none of mm, cm, m, inch and foot; save it "
            "in mm."
        )
    return _UNITS[unit]


def _all_pieces(document: Any, *, scale: float, name: str) -> list[Segment]:
    pieces: list[Segment] = []
    for entity in document.modelspace():
        pieces += _pieces(entity, scale=scale, name=name)
        if len(pieces) > MOST_PIECES:
            raise BadInput(
                f"{name}: the outline has more than {MOST_PIECES} pieces; draw it with fewer."
            )
    return pieces


def _pieces(entity: Any, *, scale: float, name: str) -> Iterator[Segment]:
    kind = entity.dxftype()
    if kind in _WORDS:
        return
    if kind in ("LWPOLYLINE", "POLYLINE"):
        for part in entity.virtual_entities():
            yield from _pieces(part, scale=scale, name=name)
    elif kind == "LINE":
        yield from _lines([entity.dxf.start, entity.dxf.end], scale=scale, name=name)
    elif kind == "ARC":
        yield from _arc(entity, scale=scale, name=name)
    elif kind == "CIRCLE":
        yield from _turned(entity, (0.0, 90.0, 180.0, 270.0, 360.0), scale=scale, name=name)
    elif kind in ("SPLINE", "ELLIPSE"):
        yield from _lines(list(entity.flattening(CHORD / scale)), scale=scale, name=name)
    else:
        raise BadInput(
            f"{name}: it holds a {plain(kind)}; leave only the outline's lines, arcs, polylines, "
            "circles, splines and ellipses."
        )


def _lines(points: list[Any], *, scale: float, name: str) -> Iterator[Segment]:
    flat = [_point(p, scale=scale, name=name) for p in points]
    for start, end in pairwise(flat):
        yield Segment(start, end)


def _arc(entity: Any, *, scale: float, name: str) -> Iterator[Segment]:
    start = float(entity.dxf.start_angle)
    turn = (float(entity.dxf.end_angle) - start) % 360.0 or 360.0
    # In halves: a nearly closed arc in one piece would hardly tell its way round.
    angles = tuple(start + turn * share / 4 for share in range(5))
    yield from _turned(entity, angles, scale=scale, name=name)


def _turned(
    entity: Any, angles: tuple[float, ...], *, scale: float, name: str
) -> Iterator[Segment]:
    a, b, c, d, e = (_point(p, scale=scale, name=name) for p in entity.vertices(angles))
    yield Segment(a, c, b)
    yield Segment(c, e, d)


def _point(p: Any, *, scale: float, name: str) -> Point:
    x, y, z = (float(c) * scale for c in (p.x, p.y, p.z))
    if not all(map(math.isfinite, (x, y, z))):
        raise BadInput(f"{name}: it holds a point that is no place; draw the outline again.")
    if abs(z) > FLAT:
        raise BadInput(
            f"{name}: its outline lies {z:.2f} mm above the drawing's plane; project it to Z = 0."
        )
    return x, y
