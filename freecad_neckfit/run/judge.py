"""Two readings of one demand become one finding."""

from __future__ import annotations

import math
from typing import Any, Protocol

import numpy as np

from ..fit.case import Case
from ..fit.check import Check, Gravity
from ..fit.reading import Reading
from ..fit.verdict import ROUNDING, TOUCH, margin
from ..job.quantity import Units
from .finding import Figure, Finding, State
from .words import Words

AGREE = 0.005
"""Closed form and solids further apart than this are a fault of the tool."""

CLOSED, SOLIDS = "closed form", "solids"


class MeasuredLike(Protocol):
    """What solids say: see ``solids.measure.measured``."""

    @property
    def value(self) -> float: ...  # noqa: D102
    @property
    def place(self) -> tuple[float, float, float] | None: ...  # noqa: D102
    @property
    def known(self) -> bool: ...  # noqa: D102
    @property
    def because(self) -> str: ...  # noqa: D102
    @property
    def applies(self) -> bool: ...  # noqa: D102
    @property
    def detail(self) -> dict[str, Any]: ...  # noqa: D102


def judge(
    check: Check,
    case: Case,
    *,
    reading: Reading | None,
    measured: MeasuredLike | None,
    units: Units,
) -> Finding:
    """Merge the closed form's reading and the measurement on solids into one finding.

    Solids win. A reading that failed leaves the demand "not checked" with its reason; two
    readings that differ by more than ``AGREE`` (for exact checks), or of which only one applies,
    are reported as the tool disagreeing with itself, and mending is not advised.
    """
    closed = _closed_figure(reading)
    solid = _solid_figure(measured)
    doubt = _doubt(check, reading, measured, closed, solid)
    chosen = solid or closed
    if doubt is None and chosen is None:
        return _finding(
            check,
            case,
            State.ABSENT,
            reason=_absence(reading, measured),
            closed=closed,
            solid=solid,
            units=units,
        )
    state, reason = doubt or (None, "")
    return _finding(check, case, state, reason=reason, closed=closed, solid=solid, units=units)


def _closed_figure(reading: Reading | None) -> Figure | None:
    if reading is None or not bool(reading.applies) or not bool(reading.known):
        return None
    place = None
    if reading.place is not None:
        x, y, z = (float(p) for p in reading.place)
        place = (x, y, z) if all(map(math.isfinite, (x, y, z))) else None
    return Figure(float(reading.value), CLOSED, place, dict(reading.detail))


def _solid_figure(measured: MeasuredLike | None) -> Figure | None:
    if measured is None or not measured.applies or not measured.known:
        return None
    return Figure(float(measured.value), SOLIDS, measured.place, dict(measured.detail))


def _doubt(
    check: Check,
    reading: Reading | None,
    measured: MeasuredLike | None,
    closed: Figure | None,
    solid: Figure | None,
) -> tuple[State, str] | None:
    failure = _failure(reading, measured, closed, solid)
    if failure is not None:
        return State.UNKNOWN, failure
    if reading is None or measured is None or not (check.exact and reading.exact):
        return None
    return _quarrel(closed, solid)


def _failure(
    reading: Reading | None,
    measured: MeasuredLike | None,
    closed: Figure | None,
    solid: Figure | None,
) -> str | None:
    if reading is not None and bool(reading.applies) and not bool(reading.known):
        return reading.unknown_because
    if measured is not None and measured.applies and not measured.known:
        return f"on solids: {measured.because}"
    for figure in (closed, solid):
        if figure is not None and not math.isfinite(figure.value):
            return f"the {figure.origin} gave no finite figure"
    return None


def _quarrel(closed: Figure | None, solid: Figure | None) -> tuple[State, str] | None:
    if (closed is None) != (solid is None):
        has, lacks = (CLOSED, SOLIDS) if closed else (SOLIDS, CLOSED)
        return (
            State.DISAGREES,
            f"the {has} finds this demand, the {lacks} finds that it does not apply",
        )
    if closed and solid and abs(closed.value - solid.value) > AGREE:
        return State.DISAGREES, (
            f"closed form {closed.value:.4f} and solids {solid.value:.4f} differ by more than "
            f"{AGREE}: a fault of this tool, please report it with the job file"
        )
    return None


def _absence(reading: Reading | None, measured: MeasuredLike | None) -> str:
    if reading is not None and reading.because:
        return reading.because
    return measured.because if measured is not None else "solids were not asked for"


def _finding(
    check: Check,
    case: Case,
    state: State | None,
    *,
    reason: str,
    closed: Figure | None,
    solid: Figure | None,
    units: Units,
) -> Finding:
    chosen = solid or closed
    value = _without_noise(chosen.value) if chosen else None
    room = float(margin(check, case, value=value)) if value is not None else None
    if room is not None:
        room = _settled(room)
    met = None if room is None or check.gravity is Gravity.TELLS else room >= -ROUNDING
    if state is None:
        state = _state(check, case, value, room)
    if state in (State.UNKNOWN, State.ABSENT):
        met = None
    words = Words(check, room, units)
    # Whoever moves a joint by a figure in doubt may move it the wrong way.
    advised = met is False and state is not State.DISAGREES
    toll = check.toll(case, value)
    return Finding(
        id=check.id,
        title=check.title,
        unit=check.unit,
        gravity=toll.gravity,
        state=state,
        met=met,
        value=value,
        low=_number(check.limit(case, "low")),
        high=_number(check.limit(case, "high")),
        margin=room,
        weight=math.inf if room is None else room / check.span,
        place=_place(solid, closed),
        reason=reason,
        consequence=words.fill(toll.consequence) if met is False else "",
        mending=words.fill(toll.mending) if advised else "",
        closed_form=closed,
        solids=solid,
    )


def _place(solid: Figure | None, closed: Figure | None) -> tuple[float, float, float] | None:
    for figure in (solid, closed):
        if figure is not None and figure.place is not None:
            return figure.place
    return None


def _state(check: Check, case: Case, value: float | None, room: float | None) -> State:
    if value is None or room is None or check.gravity is Gravity.TELLS:
        return State.TELLS
    if check.contact and value < -TOUCH:
        return State.INTERFERES
    if check.contact and not check.overlap and abs(value) <= TOUCH:
        return State.TOUCHES
    if room < -ROUNDING:
        low = _number(check.limit(case, "low"))
        return State.TOO_LITTLE if low is not None and value < low else State.TOO_MUCH
    wish = _number(check.limit(case, "wish_low"))
    return State.WATCH if wish is not None and value < wish else State.FITS


def _settled(room: float) -> float | None:
    """A margin without the last digits' noise; None where there is no limit."""
    if not math.isfinite(room):
        return None
    return _without_noise(room)


def _without_noise(value: float) -> float:
    return 0.0 if abs(value) < ROUNDING else value


def _number(limit: object | None) -> float | None:
    if limit is None:
        return None
    number = float(np.asarray(limit, dtype=float))
    return number if math.isfinite(number) else None
