"""Where the labels go: two columns beside what they point at, none over another.

Everything here is in pixels, x to the right and y up, as the graphics library counts them.
"""

from __future__ import annotations

from collections.abc import Sequence

from .boxes import Box, Page, Range, Wanted
from .elsewhere import elsewhere

FLAT = 0.4
"""A model lower than this share of the view is left clear: labels go above and below it."""
FEW = 3
"""So many labels at the most are looked a place for one by one, outside the columns."""


def spread(labels: Sequence[Wanted], page: Page) -> list[Box | None]:
    """A box for each label, none over another or over what stands already.

    Where the page has no room for all, the last ones get None: the worst come first.
    """
    kept = len(labels)
    while kept:
        placed = _placed(labels[:kept], page)
        if len(placed) == kept:
            return [*(placed[i] for i in range(kept)), *[None] * (len(labels) - kept)]
        kept = max(len(placed), kept - max((kept - len(placed)) // 2, 1)) if placed else 0
    return [None] * len(labels)


def _placed(labels: Sequence[Wanted], page: Page) -> dict[int, Box]:
    order = sorted(range(len(labels)), key=lambda i: (labels[i].x, -labels[i].y, i))
    ends = page.middle or (labels[order[0]].x, labels[order[-1]].x)
    half = (len(order) + 1) // 2
    placed, rest = _side(-1, order[:half], labels, page, ends, page.taken)
    more, rest = _side(
        1, [*order[half:], *rest], labels, page, ends, (*page.taken, *placed.values())
    )
    placed |= more
    last, rest = _side(-1, rest, labels, page, ends, (*page.taken, *placed.values()))
    placed |= last
    for i in rest if len(rest) <= FEW else ():
        box = elsewhere(labels[i], page, ends, (*page.taken, *placed.values()))
        if box is not None:
            placed[i] = box
    return placed


def _side(
    side: int,
    members: Sequence[int],
    labels: Sequence[Wanted],
    page: Page,
    ends: tuple[float, float],
    taken: tuple[Box, ...],
) -> tuple[dict[int, Box], list[int]]:
    """Columns on one side, the first next to the middle and the others farther out; the rest."""
    placed: dict[int, Box] = {}
    left = sorted(members, key=lambda i: (-labels[i].y, i))
    start = ends[0] - page.reach if side < 0 else ends[1] + page.reach
    while left:
        width = max(labels[i].width for i in left)
        x = _column_x(side, start, width, page)
        ranges = _free(x, width, page, (*taken, *placed.values()))
        chosen, left = _that_fit(left, labels, ranges, page.spacing)
        if not chosen:
            break
        for i, y in _stacked(chosen, labels, ranges, page.spacing).items():
            box_x = x + width - labels[i].width if side < 0 else x
            placed[i] = Box(box_x, y, labels[i].width, labels[i].height)
        start = x - page.spacing if side < 0 else x + width + page.spacing
    return placed, left


def _column_x(side: int, start: float, width: float, page: Page) -> float:
    wanted = start - width if side < 0 else start
    return min(max(wanted, page.margin), max(page.margin, page.width - page.margin - width))


def _free(x: float, width: float, page: Page, taken: Sequence[Box]) -> list[Range]:
    """The free stretches of a column, from the top down."""
    low, high = page.margin, page.height - page.margin
    column = Box(x, low, width, max(high - low, 0.0))
    gaps = [(box.y - page.spacing, box.top + page.spacing) for box in taken if box.overlaps(column)]
    if page.band is not None and page.band[1] - page.band[0] < FLAT * page.height:
        gaps.append((page.band[0] - page.spacing, page.band[1] + page.spacing))
    free: list[Range] = []
    for bottom, top in sorted(gaps, key=lambda g: -g[1]):
        if top < high:
            free.append((top, high))
        high = min(high, bottom)
    free.append((low, high))
    return [(a, b) for a, b in free if b > a]


def _that_fit(
    members: list[int], labels: Sequence[Wanted], ranges: list[Range], spacing: float
) -> tuple[list[list[int]], list[int]]:
    """Deal the labels, from the top down, to the column's stretches; return the rest.

    Each goes to the stretch nearest to its point that has room, the upper ones going up where the
    points stand at one height.
    """
    room = [top - bottom for bottom, top in ranges]
    dealt: list[list[int]] = [[] for _ in ranges]
    rest: list[int] = []
    for rank, i in enumerate(members):
        need = labels[i].height + spacing
        # A nudge by rank parts labels whose points stand level: the first above, the last below.
        aim = labels[i].y + (len(members) - 1 - 2 * rank) * labels[i].height / 2
        near = sorted(range(len(ranges)), key=lambda r: _apart(aim, ranges[r]))
        fitting = [r for r in near if room[r] + spacing >= need]
        if not fitting:
            rest.append(i)
            continue
        room[fitting[0]] -= need
        dealt[fitting[0]].append(i)
    return (dealt if any(dealt) else []), rest


def _apart(y: float, stretch: Range) -> float:
    return max(stretch[0] - y, y - stretch[1], 0.0)


def _stacked(
    dealt: list[list[int]], labels: Sequence[Wanted], ranges: list[Range], spacing: float
) -> dict[int, float]:
    found: dict[int, float] = {}
    for members, (low, high) in zip(dealt, ranges, strict=True):
        heights = [labels[i].height for i in members]
        wished = [labels[i].y - labels[i].height / 2 for i in members]
        found |= dict(zip(members, stack(wished, heights, low, high, spacing), strict=True))
    return found


def stack(
    wished: Sequence[float], heights: Sequence[float], low: float, high: float, spacing: float
) -> list[float]:
    """Lower edges of boxes stacked downward, each as near to its wish as the others allow.

    Least squares of the ways moved, by pooling neighbours that would overlap.
    """
    # With the room of those above added, "no overlap" becomes "not ascending".
    offset, total = [], 0.0
    for height in heights:
        total += height
        offset.append(total)
        total += spacing
    pools: list[list[float]] = []
    for wish, shift in zip(wished, offset, strict=True):
        pools.append([wish + shift, 1.0])
        while len(pools) > 1 and pools[-1][0] > pools[-2][0]:
            mean, count = pools.pop()
            pools[-1][0] = (pools[-1][0] * pools[-1][1] + mean * count) / (pools[-1][1] + count)
            pools[-1][1] += count
    level = [mean for mean, count in pools for _ in range(int(count))]
    lowest = low + offset[-1] if offset else low
    return [min(max(at, lowest), high) - o for at, o in zip(level, offset, strict=True)]


def attach(box: Box, x: float, y: float) -> tuple[float, float]:
    """Where a leader to (x, y) leaves the box: the nearer side, near the point's height."""
    inset = box.height / 4
    at = min(max(y, box.y + inset), box.top - inset)
    if box.x <= x <= box.right:
        return x, box.y if y < box.y else box.top
    return (box.x if x < box.x else box.right), at
