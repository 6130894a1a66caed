"""A place for a label that the columns beside the model have no room for."""

from __future__ import annotations

from collections.abc import Sequence

from .boxes import Box, Page, Range, Wanted

HAIR = 1e-6
"""Boxes exactly one spacing apart are apart in spite of rounding."""


def elsewhere(
    label: Wanted, page: Page, ends: tuple[float, float], taken: Sequence[Box]
) -> Box | None:
    """The free place nearest to its point, beside others or at the page's edge, clear of the model.

    A last resort: it does not care for columns, and leaders may cross.
    """
    low, high = page.band or (0.0, page.height)
    kept_clear = (*taken, Box(ends[0], low, ends[1] - ends[0], high - low))
    across = _starts(label.width, page.width, page, [(b.x, b.right) for b in kept_clear])
    up = _starts(label.height, page.height, page, [(b.y, b.top) for b in kept_clear])
    boxes = (Box(x, y, label.width, label.height) for x in across for y in up)
    free = [
        b for b in boxes if not any(_grown(b, page.spacing - HAIR).overlaps(o) for o in kept_clear)
    ]
    return min(free, key=lambda b: _way(b, label), default=None)


def _starts(size: float, room: float, page: Page, others: Sequence[Range]) -> list[float]:
    """Where a box may start along one direction: at a margin, or just before or after another."""
    last = room - page.margin - size
    beside = [a for low, high in others for a in (low - page.spacing - size, high + page.spacing)]
    return sorted({a for a in (page.margin, last, *beside) if page.margin <= a <= last})


def _grown(box: Box, by: float) -> Box:
    return Box(box.x - by, box.y - by, box.width + 2 * by, box.height + 2 * by)


def _way(box: Box, label: Wanted) -> float:
    aside = max(box.x - label.x, label.x - box.right, 0.0)
    return aside**2 + max(box.y - label.y, label.y - box.top, 0.0) ** 2
