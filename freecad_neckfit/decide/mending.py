"""The smallest changes that free a joint, each proved before it is shown."""

from __future__ import annotations

from collections.abc import Callable, Iterator, Mapping, Sequence
from dataclasses import dataclass
from itertools import combinations
from typing import Any

import numpy as np

from ..job.arrays import FloatArray
from ..job.errors import BadInput
from ..job.possible import refuse_impossible
from ..job.resolve import complete
from .demands import CHECKS, DEMANDS, margins, met, of_checks
from .moves import Move
from .progress import Progress, tell

Prove = Callable[[Mapping[str, Any]], str]
"""Runs the full check on solids; returns why the joint does not fit, or nothing where it does."""

MOST_PARTS = 3
ENOUGH = 3
"""With so many ways to mend at hand no further parts are brought in."""
MOST_SHOWN = 8
TRIES = 4
"""Candidates of one kind that may fail on solids before the kind is given up."""
MOST_CANDIDATES = 60_000
BATCH = 2048


@dataclass(frozen=True)
class Remedy:
    """A proved change: the parts changed, every parameter's new value, and how large it is.

    ``changes``: by key (before, after), before None where nothing was stated. ``steps``: the
    whole change in the shop's steps.
    """

    moves: tuple[Move, ...]
    changes: Mapping[str, tuple[Any, Any]]
    stated: Mapping[str, Any]
    steps: float

    @property
    def rank(self) -> tuple[int, float]:
        """Fewest parts changed first, then the smallest change."""
        return len(self.moves), self.steps


def find_remedies(
    stated: Mapping[str, Any],
    moves: Sequence[Move],
    *,
    prove: Prove,
    progress: Progress | None = None,
) -> tuple[Remedy, ...]:
    """The smallest changes that make a joint fit, smallest first; none where it fits already.

    Every set of one part, then of two, then of three parts is tried: a further part only while
    fewer than three remedies are known, and never together with parts that mend by themselves.
    Each remedy has passed ``prove``. Raises Stopped where ``progress`` says so.
    """
    now = margins(complete(stated), count=1)[:, 0]
    unmet = [i for i, m in enumerate(now) if m < -1e-9]
    if not unmet:
        return ()
    found: list[Remedy] = []
    for count in range(1, MOST_PARTS + 1):
        if len(found) >= ENOUGH:
            break
        sets = list(_sets(moves, count, unmet, found))
        for n, chosen in enumerate(sets):
            what = " and ".join(move.name for move in chosen)
            share = (count - 1 + n / len(sets)) / MOST_PARTS
            tell(progress, share, f"trying {what}")
            remedy = _smallest(stated, chosen, unmet, _told(prove, progress, share, what))
            if remedy is not None and not any(_same(remedy, other) for other in found):
                found.append(remedy)
    tell(progress, 1.0, "looked for what mends it")
    return tuple(sorted(found, key=lambda r: r.rank)[:MOST_SHOWN])


def _told(prove: Prove, progress: Progress | None, share: float, what: str) -> Prove:
    """A proof that asks before it begins whether to go on: solids take a while."""

    def proved(stated: Mapping[str, Any]) -> str:
        tell(progress, share, f"proving {what} on solids")
        return prove(stated)

    return proved


def _same(one: Remedy, other: Remedy) -> bool:
    """Two ways to say the same: depth, and depth with an angle that stays."""
    return one.changes.keys() == other.changes.keys() and all(
        np.array_equal(one.changes[key][1], other.changes[key][1]) for key in one.changes
    )


def _sets(
    moves: Sequence[Move], count: int, unmet: Sequence[int], found: Sequence[Remedy]
) -> Iterator[tuple[Move, ...]]:
    """Moves of different parts that could mend every unmet demand, by what the checks read."""
    mended = [{m.part for m in remedy.moves} for remedy in found if len(remedy.moves) < count]
    for chosen in combinations(moves, count):
        parts = {move.part for move in chosen}
        if len(parts) < count or any(done <= parts for done in mended):
            continue
        keys = set().union(*(move.keys for move in chosen))
        if all(keys & set(DEMANDS[i].check.reads) for i in unmet):
            yield chosen


def _smallest(
    stated: Mapping[str, Any], chosen: tuple[Move, ...], unmet: Sequence[int], prove: Prove
) -> Remedy | None:
    tries = 0
    for changed, steps in _candidates(stated, chosen, unmet):
        remedy = _remedy(stated, chosen, changed, steps)
        if remedy is None:
            continue
        if not prove(remedy.stated):
            return remedy
        tries += 1
        if tries == TRIES:
            break
    return None


def _candidates(
    stated: Mapping[str, Any], chosen: tuple[Move, ...], unmet: Sequence[int]
) -> Iterator[tuple[dict[str, Any], float]]:
    """Settings at which every closed form holds, smallest change first."""
    base = _without(stated, chosen)
    for move in chosen:
        base |= move.stated
    dials = [dial for move in chosen for dial in move.dials]
    columns, steps = _lattice(dials, sum(move.steps for move in chosen))
    good = _that_hold(base, columns, len(steps), unmet)
    for start in range(0, len(good), BATCH):
        part = good[start : start + BATCH]
        some = {key: values[part] for key, values in columns.items()}
        holds = met(margins(base | some, count=len(part)))
        for index in part[holds]:
            yield {k: float(v[index]) for k, v in columns.items()}, float(steps[index])


def _without(stated: Mapping[str, Any], chosen: tuple[Move, ...]) -> dict[str, Any]:
    dropped = {group for move in chosen for group in move.drops}
    return {k: v for k, v in stated.items() if k.partition(".")[0] not in dropped}


def _lattice(dials: Sequence[Any], before: float) -> tuple[dict[str, FloatArray], FloatArray]:
    """Every setting of all dials together, smallest change first, and its size in steps."""
    if not dials:
        return {}, np.array([before])
    grids = np.meshgrid(*(dial.steps for dial in dials), indexing="ij")
    steps: FloatArray = np.sum(grids, axis=0) + before
    # Doing nothing mends nothing.
    order = np.argsort(steps, axis=None, kind="stable")
    order = order[steps.ravel()[order] > 0][:MOST_CANDIDATES]
    places = np.unravel_index(order, steps.shape)
    columns = {
        key: dial.values[places[n]] for n, dial in enumerate(dials) for key in dial.keys
    }  # fmt: skip
    return columns, steps.ravel()[order]


def _that_hold(
    base: Mapping[str, Any], columns: Mapping[str, FloatArray], count: int, unmet: Sequence[int]
) -> Any:
    """Settings that mend what is unmet now; most do not, and need no full check."""
    ids = {DEMANDS[i].check.id for i in unmet}
    which = of_checks([check for check in CHECKS if check.id in ids])
    return np.flatnonzero(met(margins({**base, **columns}, count=count, which=which)))


def _remedy(
    stated: Mapping[str, Any], chosen: tuple[Move, ...], changed: Mapping[str, Any], steps: float
) -> Remedy | None:
    after = _without(stated, chosen)
    for move in chosen:
        after |= move.stated
    after |= changed
    try:
        values = complete(after)
        refuse_impossible(values, "mended joint")
    except BadInput:
        return None
    before = complete(stated)
    changes = {
        key: (before[key], values[key])
        for key in dict.fromkeys([*after, *stated])
        if not np.array_equal(np.asarray(before[key]), np.asarray(values[key]))
    }
    return Remedy(chosen, changes, after, steps)


__all__ = ["Prove", "Remedy", "find_remedies"]
