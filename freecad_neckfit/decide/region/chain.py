"""Short stretches joined end to end."""

from __future__ import annotations

from collections import defaultdict

import numpy as np

from ...job.arrays import FloatArray

SAME = 1e-7
"""Ends closer than this share of the range are one point."""

Key = tuple[int, int]


def chain(stretches: list[tuple[FloatArray, FloatArray]], *, size: FloatArray) -> list[FloatArray]:
    """Join stretches (start, end) into lines of points, each (points, 2).

    All run the same way round their region, so each end finds the next start.
    """
    # What begins and ends in one point would stand there by itself, beside the line through it.
    long = [s for s in stretches if _key(s[0], size) != _key(s[1], size)]
    stretches = long or stretches
    starts: dict[Key, list[int]] = defaultdict(list)
    ends: dict[Key, int] = defaultdict(int)
    for n, (start, end) in enumerate(stretches):
        starts[_key(start, size)].append(n)
        ends[_key(end, size)] += 1
    left = set(range(len(stretches)))
    heads = [n for n in range(len(stretches)) if not ends[_key(stretches[n][0], size)]]
    return [
        np.array(_follow(head, stretches, starts, left, size))
        for head in [*heads, *range(len(stretches))]
        if head in left
    ]


def _follow(
    head: int,
    stretches: list[tuple[FloatArray, FloatArray]],
    starts: dict[Key, list[int]],
    left: set[int],
    size: FloatArray,
) -> list[FloatArray]:
    line = [stretches[head][0]]
    now: int | None = head
    while now is not None:
        left.discard(now)
        line.append(stretches[now][1])
        now = next((n for n in starts[_key(stretches[now][1], size)] if n in left), None)
    return line


def _key(point: FloatArray, size: FloatArray) -> Key:
    x, y = np.round(point / size / SAME).tolist()
    return int(x), int(y)
