"""One joint checked on solids, and from there at many pocket depths or angles at once.

Built and measured once, a neck is carried to the other seats: over top, plate and pickups its own
solid is measured there again. What depends on the pocket or on hardware follows by closed forms
from the figure that the solids gave, since a neck and its pocket keep their relation.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator, Mapping, Sequence
from dataclasses import dataclass, field
from functools import partial
from typing import Any

import numpy as np
from numpy.typing import NDArray

from ..fit.case import Case
from ..fit.check import Check, Gravity
from ..fit.checks import ALL
from ..fit.verdict import margin
from ..job.arrays import FloatArray
from ..job.errors import BadInput
from ..job.frames import Seat
from .chain import Result
from .finding import Finding, State

SWEPT = ("pocket.depth", "pocket.angle")
"""What a series may run along."""
SPAN = 2.0
"""Depths [mm] or angles [degrees] between which a room may be taken for a parabola."""
BENT = 3e-4
"""A room that lies no farther [mm] from a parabola at its quarters is one."""
FEW = 4
"""So many steps are asked for one by one."""


@dataclass(frozen=True)
class Series:
    """Findings along a series of ``at`` (n,) [mm or degrees] of the parameter ``key``.

    By a check's id: ``values`` (n,) in its unit, NaN where the demand does not apply or is not
    known; ``margins`` (n,) to its nearer limit; ``unknown`` (n,) whether it exists and could not be
    told. ``left_out``: ids that only a check of its own can tell.
    """

    key: str
    at: FloatArray
    values: dict[str, FloatArray] = field(default_factory=dict)
    margins: dict[str, FloatArray] = field(default_factory=dict)
    unknown: dict[str, NDArray[np.bool_]] = field(default_factory=dict)
    left_out: tuple[str, ...] = ()

    @property
    def fits(self) -> NDArray[np.bool_]:
        """(n,) whether every demand told is met and none is unknown."""
        met = np.ones(len(self.at), dtype=bool)
        for check in ALL:
            if check.id in self.values and check.gravity is not Gravity.TELLS:
                room = self.margins[check.id]
                met &= ~self.unknown[check.id] & (np.isnan(room) | (room >= -1e-9))
        return met


def series(
    result: Result, stated: Mapping[str, Any], *, key: str, at: Sequence[float] | FloatArray
) -> Series:
    """Carry a joint that was checked on solids along depths [mm] or angles [degrees].

    ``result``: of ``check_values`` or ``judge_neck`` for ``stated``, solids and all. Equal to
    single checks to 0.005 mm. Valid while the neck's end stays within 1.5 mm along X of where it
    was: beyond that a demand is unknown. Raises BadInput for another parameter.
    """
    if key not in SWEPT:
        raise BadInput(f"{key}: a series runs along {' or '.join(SWEPT)}.")
    where = np.asarray(at, dtype=float)
    case = Case({**stated, key: where})
    found = Series(key, where)
    left_out = []
    carried = _carried(result, case.seat, where)
    for check in ALL:
        finding = result.find(check.id)
        if check.measure in carried:
            value, unknown = carried[check.measure]
        elif check.read is not None:
            value, unknown = _followed(check, case, finding, len(where))
        else:
            left_out.append(check.id)
            continue
        found.values[check.id] = value
        found.unknown[check.id] = unknown
        found.margins[check.id] = np.asarray(margin(check, case, value=value), dtype=float)
    return Series(key, where, found.values, found.margins, found.unknown, tuple(left_out))


Told = tuple[FloatArray, NDArray[np.bool_]]


def _followed(check: Check, case: Case, finding: Finding, count: int) -> Told:
    """The closed form along the series, off by what it was off from the solids at the start."""
    reading = check.read(case)  # type: ignore[misc]
    applies, known, value = (
        np.broadcast_to(np.asarray(a), (count,))
        for a in (reading.applies, reading.known, reading.value)
    )
    off = 0.0
    if finding.solids is not None and finding.closed_form is not None:
        off = finding.solids.value - finding.closed_form.value
    doubtful = finding.state in (State.DISAGREES, State.UNKNOWN)
    unknown = applies.astype(bool) & (~known.astype(bool) | doubtful)
    told = np.where(applies & ~unknown, value.astype(float) + off, np.nan)
    return np.asarray(told), np.asarray(unknown)


def _carried(result: Result, seats: Seat, where: FloatArray) -> dict[str, Told]:
    from ..solids.measure import context_of
    from ..solids.measure.carried import CARRIED, Carrier

    assembly = result.assembly
    carrier = Carrier(context_of(assembly, result.values))
    back = np.linalg.inv(assembly.neck_frame)
    each = list(_each(seats, len(where)))

    def at(i: int) -> FloatArray:
        found = carrier.at(each[i].matrix() @ back)
        return np.array([_number(found[key]) for key in CARRIED])

    tilt = np.array([seat.tilt for seat in each], dtype=float)
    rows = np.empty((len(where), len(CARRIED)))
    for side in (tilt < 0, tilt >= 0):  # what leans the other way is nearest at its other end
        numbers = np.flatnonzero(side)
        if len(numbers):
            rows[side] = between(partial(_numbered, at, numbers), where[side])
    return {
        key: (np.where(np.isinf(row), np.nan, row), np.isinf(row))
        for key, row in zip(CARRIED, rows.T, strict=True)
    }


def _numbered(at: Callable[[int], FloatArray], numbers: NDArray[np.int64], i: int) -> FloatArray:
    return at(int(numbers[i]))


def _number(measured: Any) -> float:
    """NaN where the demand does not apply, infinite where it is unknown."""
    if not measured.applies:
        return np.nan
    return float(measured.value) if measured.known else np.inf


def between(at: Callable[[int], FloatArray], place: FloatArray) -> FloatArray:
    """(n, k) rows of ``at`` (k,) for all of ``place`` (n,) [mm or degrees], few of them asked for.

    Over at most ``SPAN`` a room is a parabola to some 0.0001 mm, but for kinks where another point
    becomes the nearest. What is one to ``BENT`` at both its quarters is filled in; all else, and
    whatever begins or ends to apply, is asked for.
    """
    order = np.argsort(place, kind="stable")
    asked: dict[int, FloatArray] = {}

    def row(n: int) -> FloatArray:
        if n not in asked:
            asked[n] = at(int(order[n]))
        return asked[n]

    found = np.empty((len(place), len(row(0))))
    todo = [(0, len(place) - 1)]
    while todo:
        low, high = todo.pop()
        x, middle = place[order[low : high + 1]], (low + high) // 2
        if high - low < FEW:
            found[order[low : high + 1]] = [row(n) for n in range(low, high + 1)]
        elif x[-1] - x[0] > SPAN or min(x[middle - low] - x[0], x[-1] - x[middle - low]) <= 0:
            todo += [(low, middle), (middle, high)]
        else:
            curve = _parabola(x, middle - low, row(low), row(middle), row(high))
            quarters = ((low + middle) // 2, (middle + high) // 2)
            if all(_same(curve[n - low], row(n)) for n in quarters):
                found[order[low : high + 1]] = curve
            else:
                todo += [(low, middle), (middle, high)]
    return found


def _parabola(
    x: FloatArray, middle: int, first: FloatArray, second: FloatArray, third: FloatArray
) -> FloatArray:
    """(n, k) over ``x`` (n,) through rows at its start, at the index ``middle`` and at its end."""
    a, b, c = x[0], x[middle], x[-1]
    with np.errstate(invalid="ignore"):
        return np.asarray(
            np.multiply.outer((x - b) * (x - c) / ((a - b) * (a - c)), first)
            + np.multiply.outer((x - a) * (x - c) / ((b - a) * (b - c)), second)
            + np.multiply.outer((x - a) * (x - b) / ((c - a) * (c - b)), third)
        )


def _same(filled: FloatArray, asked: FloatArray) -> bool:
    """Whether rows agree; what is unknown (infinite) is never filled in."""
    return not np.isinf(asked).any() and bool(
        np.allclose(filled, asked, rtol=0, atol=BENT, equal_nan=True)
    )


def _each(seats: Seat, count: int) -> Iterator[Seat]:
    """The seats of many jobs, one by one."""
    rows = (seats.floor, seats.tilt, seats.lift, seats.x0, seats.z0)
    columns = [np.broadcast_to(np.asarray(a, dtype=float), (count,)) for a in rows]
    return (Seat(*one) for one in zip(*columns, strict=True))
