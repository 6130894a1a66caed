"""Drawn pictures for the report: the joint cut along its centreline, and the overhang enlarged."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import replace

from ..drawing import Drawing
from ..dress import dressed
from ..helvetica import width
from ..ink import Item, Page, Spot, Words, bounds, moved
from ..view import View
from .parts import Picture

AROUND = 2.0


def drawn_pictures(drawing: Drawing) -> list[Picture]:
    """The sections of a drawing, each as a picture of its own with its dimensions."""
    wanted = {"along": "The joint cut along its centreline", "overhang": "The overhang enlarged"}
    return [
        Picture(words, _alone(view, drawing, words))
        for view in drawing.views
        for name, words in wanted.items()
        if view.name == name
    ]


def _alone(view: View, drawing: Drawing, title: str) -> Page:
    notes = [n for n in view.notes if not isinstance(n, Words) or n.text != view.title]
    bare = View(
        view.name, view.title, view.scale, view.windows, view.strokes, view.rounds, view.regions,
        view.placed, notes,
    )  # fmt: skip
    items = [*bare.ink(), *dressed(bare, drawing.joint.units)]
    x0, y0, x1, y1 = _around(items)
    page = Page(x1 - x0 + 2 * AROUND, y1 - y0 + 2 * AROUND, title)
    page.add(*(_shifted(item, (AROUND - x0, AROUND - y0)) for item in items))
    return page


def _around(items: Iterable[Item]) -> tuple[float, float, float, float]:
    listed = list(items)
    x0, y0, x1, y1 = bounds(listed)
    for item in listed:
        if isinstance(item, Words) and not item.turn:
            long = width(item.text, height=item.height)
            left = item.at[0] - {"start": 0.0, "middle": long / 2, "end": long}[item.anchor]
            x0, x1 = min(x0, left), max(x1, left + long)
            y0, y1 = min(y0, item.at[1]), max(y1, item.at[1] + item.height)
    return x0, y0, x1, y1


def _shifted(item: Item, by: Spot) -> Item:
    # In a report a figure is no dimension to work to: it carries no key.
    bare = replace(item, key="") if isinstance(item, Words) else item
    return moved(bare, by)
