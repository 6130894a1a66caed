"""A joint being tried out: judged at once by closed forms, changed on release, taken back whole."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field
from typing import Any

from ...features.assemblies import job_of
from ...features.gather import joint_digest, joint_stated, objects_of
from ...features.properties import flag_of, outer, property_of
from ...features.roles import STATED, role_of
from ...features.run_check import check, check_of, findings_of
from ...features.staleness import is_stale
from ...job.errors import BadInput
from ...job.parameters import ALL
from ...job.possible import refuse_impossible
from ...job.quantity import Units
from ...job.resolve import complete
from ...run.chain import Verdict, check_values
from ...run.record import finding_record

Records = list[dict[str, Any]]
"""Findings as the JSON record holds them, worst first."""
RESULTS = ("Findings", "Verdict", "CheckedDigest", "Stale", "Interference", "GapMap")
"""What a check writes into its document object."""


@dataclass(frozen=True)
class Trial:
    """What closed forms say of values that the document does not hold yet."""

    findings: Records
    verdict: Verdict
    values: Mapping[str, Any] = field(repr=False)


class FitSession:
    """The time between opening the panel and OK or Cancel: one step of undo.

    Opening it checks the joint where no fresh findings are kept. Raises BadInput where the joint
    cannot be read or built.
    """

    def __init__(self, joint: Any, *, name: str) -> None:
        self.joint, self.document = joint, joint.Document
        self._trying: dict[str, Any] | None = None
        joint_digest(joint)  # refuses what cannot be read
        self._kept = _Kept(joint)
        self._was_touched = {o.Name for o in self.document.Objects if _is_touched(o)}
        self.document.openTransaction(name)
        try:
            self.check = check_of(joint)
            if self.check is None or not self.check.Findings or is_stale(self.check):
                self.document.recompute()
                self.check = check(joint)
        except BaseException:
            self.document.abortTransaction()
            raise

    def value(self, key: str) -> float:
        """The value that the document holds now, in inner units."""
        obj = self.holder(key)
        raw = getattr(obj, property_of(ALL[key]))
        return float(getattr(raw, "Value", raw))

    def holder(self, key: str) -> Any:
        """The object that states a parameter."""
        group = ALL[key].group
        return next(o for o in objects_of(self.joint) if group in STATED[role_of(o)])

    def findings(self) -> Records:
        """The findings kept in the document, by closed forms and solids."""
        return findings_of(self.check)

    def stated(self) -> dict[str, Any]:
        """All that the joint states now. Raises BadInput."""
        return joint_stated(self.joint)

    def trial(self, values: Mapping[str, float], *, units: Units) -> Trial:
        """Judge the joint by closed forms as if it stated ``values``; the document stays.

        What else the joint states is read at the first trial after a ``rest``. Raises BadInput in
        one sentence where that joint is impossible as wood and metal.
        """
        if self._trying is None:
            self._trying = self.stated()
        stated = self._trying | dict(values)
        refuse_impossible(complete(stated), str(self.joint.Label), body_stands=True)
        result = check_values(stated, name=str(self.joint.Label), units=units, solids=False)
        records = [finding_record(f) for f in result.findings]
        return Trial(records, result.verdict, result.values)

    def rest(self) -> None:
        """The trials are over, or begin: the joint may be another one by the next."""
        self._trying = None

    def settle(self, values: Mapping[str, float]) -> None:
        """Make the document state ``values``, build it anew and check it on solids.

        Raises BadInput or KernelFailure with one sentence; the document then states, shows and
        finds what it did before.
        """
        self.rest()
        former = {key: self._get(key) for key in values}
        job_of(self.joint, self.stated() | dict(values))  # refuses before anything is touched
        try:
            for key, value in values.items():
                self._put(key, outer(ALL[key], value), None)
            self._build()
            self.check = check(self.joint)
        except Exception:
            for key, (value, flag) in former.items():
                self._put(key, value, flag)
            self.document.recompute()
            check(self.joint)
            raise

    def keep(self) -> None:
        """End with all changes as one step of undo."""
        self.document.commitTransaction()

    def cancel(self) -> None:
        """End with everything as it was before."""
        self.document.abortTransaction()
        if self.document.UndoMode:
            self._rest_as_before()
        else:
            # The designer has switched undo off: FreeCAD took nothing back.
            self._kept.put_back()
            self.document.recompute()
            self._kept.put_back_results()

    def _rest_as_before(self) -> None:
        """FreeCAD marks what it takes back as to be built anew: build it, so that no mark stays."""
        marked = [o for o in self.document.Objects if _is_touched(o)]
        new = [o for o in marked if o.Name not in self._was_touched]
        if new:
            self.document.recompute(new)

    def _build(self) -> None:
        self.document.recompute()
        for obj in objects_of(self.joint):
            if not obj.isValid():
                raise BadInput(str(obj.getStatusString()))

    def _get(self, key: str) -> tuple[Any, bool | None]:
        obj, p = self.holder(key), ALL[key]
        flag = flag_of(p)
        return getattr(obj, property_of(p)), getattr(obj, flag) if flag else None

    def _put(self, key: str, value: Any, flag: bool | None) -> None:
        obj, p = self.holder(key), ALL[key]
        setattr(obj, property_of(p), value)
        if flag is not None:
            setattr(obj, flag_of(p), flag)


def _is_touched(obj: Any) -> bool:
    return "Touched" in obj.State


class _Kept:
    """What a session may change, for documents without undo."""

    def __init__(self, joint: Any) -> None:
        self._joint = joint
        self._stated = [
            (obj, name, getattr(obj, name))
            for obj in objects_of(joint)
            for p in ALL.values()
            if p.group in STATED[role_of(obj)]
            for name in (property_of(p), flag_of(p))
            if name
        ]
        self._check = check_of(joint)
        self._results = {n: getattr(self._check, n) for n in RESULTS} if self._check else {}

    def put_back(self) -> None:
        for obj, name, value in self._stated:
            if getattr(obj, name) != value:
                setattr(obj, name, value)

    def put_back_results(self) -> None:
        found = check_of(self._joint)
        if self._check is None and found is not None:
            found.Document.removeObject(found.Name)
            return
        for name, value in self._results.items():
            setattr(found, name, value)
        found.purgeTouched()
