"""Job -> readings -> findings: the one way in."""

from __future__ import annotations

import enum
import time
from collections.abc import Mapping
from dataclasses import dataclass, field, replace
from typing import TYPE_CHECKING, Any

from ..fit.case import Case
from ..fit.checks import ALL
from ..fit.reading import Reading
from ..job.quantity import Units
from .finding import Finding, State, worst_first
from .follow import told_once
from .judge import judge

if TYPE_CHECKING:
    from ..job.outline import Outline
    from ..solids.build.assembly import Assembly
    from ..solids.build.given import Given


class Verdict(enum.Enum):
    """The answer in one word, and the command's exit code."""

    FITS = "fits"
    DOES_NOT_FIT = "does not fit"
    UNSURE = "could not be decided"

    @property
    def exit_code(self) -> int:
        """0 fits, 1 does not fit, 3 could not be checked or the tool disagrees with itself."""
        return {Verdict.FITS: 0, Verdict.DOES_NOT_FIT: 1, Verdict.UNSURE: 3}[self]


@dataclass(frozen=True)
class Result:
    """All findings on one joint, worst first, and the solids they were proved on (or None)."""

    name: str
    findings: tuple[Finding, ...]
    values: Mapping[str, Any]
    assembly: Any = None
    seconds: dict[str, float] = field(default_factory=dict)

    @property
    def verdict(self) -> Verdict:
        """Unmet demands outweigh doubts; doubts outweigh everything that fits."""
        if any(f.met is False for f in self.findings):
            return Verdict.DOES_NOT_FIT
        if any(f.state in (State.UNKNOWN, State.DISAGREES) for f in self.findings):
            return Verdict.UNSURE
        return Verdict.FITS

    def find(self, check_id: str) -> Finding:
        """The finding of one check; raises KeyError for an id that does not exist."""
        for finding in self.findings:
            if finding.id == check_id:
                return finding
        raise KeyError(check_id)


def check_values(
    stated: Mapping[str, Any],
    *,
    name: str = "joint",
    units: Units = Units.MM,
    solids: bool = True,
    outline: Outline | None = None,
    given: Given | None = None,
    assembly: Assembly | None = None,
) -> Result:
    """Judge one joint by closed forms, and on solids unless ``solids`` is False.

    ``stated`` maps declared keys to inner values (mm, degrees). ``given``: solids that exist
    already, measured in place of built ones. ``assembly``: all solids as built from the same
    values before. Raises ``CannotBuild`` where the parts cannot exist.
    """
    started = time.perf_counter()
    case = Case(stated)
    readings = {check.id: _read(check, case) for check in ALL if check.read is not None}
    seconds = {"closed forms": time.perf_counter() - started}
    measured: dict[str, Any] = {}
    if solids:
        from ..solids.build import build
        from ..solids.measure import measure_all

        started = time.perf_counter()
        if assembly is None:
            assembly = build(case.values, outline=outline, given=given)
        seconds["solids built"] = time.perf_counter() - started
        started = time.perf_counter()
        measured = measure_all(assembly, case.values)
        seconds["solids measured"] = time.perf_counter() - started
    findings = [
        judge(
            check,
            case,
            reading=readings.get(check.id),
            measured=measured.get(check.measure) if solids else None,
            units=units,
        )
        for check in ALL
        if check.read is not None or solids
    ]
    return Result(name, tuple(worst_first(told_once(findings))), case.values, assembly, seconds)


def _read(check: Any, case: Case) -> Reading:
    """The closed form's reading; over a sampled top it is as exact as the samples are."""
    reading: Reading = check.read(case)
    if case["body.top"] != "sampled" or "body.top" not in check.reads:
        return reading
    error = {"sampling error of the top [mm]": float(case["body.top_error"])}
    return replace(reading, exact=False, detail=reading.detail | error)
