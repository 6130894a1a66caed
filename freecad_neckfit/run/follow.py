"""Findings that follow from another one say so, so that one interference is not read as two."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from dataclasses import replace

from ..fit.check import Follows
from ..fit.checks import ALL
from .finding import Finding, State
from .judge import AGREE

_FOLLOWS = {check.id: check.follows for check in ALL if check.follows}


def told_once(findings: Iterable[Finding]) -> list[Finding]:
    """The findings, with the consequence of each that follows from another one replaced."""
    listed = list(findings)
    by_id = {finding.id: finding for finding in listed}
    return [_related(finding, by_id) for finding in listed]


def _related(finding: Finding, by_id: Mapping[str, Finding]) -> Finding:
    for follows in _FOLLOWS.get(finding.id, ()):
        for room in (by_id[name] for name in follows.rooms if name in by_id):
            if _leads(room, finding, follows):
                words = follows.consequence.replace("{room}", room.title)
                mending = "" if follows.mended else finding.mending
                return replace(finding, consequence=words, mending=mending)
    return finding


def _leads(room: Finding, finding: Finding, follows: Follows) -> bool:
    """Whether both are unmet in the same direction, with figures that go together."""
    if room.met is not False or finding.met is not False:
        return False
    if State.DISAGREES in (room.state, finding.state):
        return False
    if room.value is None or finding.value is None or _is_over(room) != _is_over(finding):
        return False
    if follows.figure == "same":
        return abs(room.value - finding.value) <= AGREE
    return follows.figure == "any" or room.value < finding.value


def _is_over(finding: Finding) -> bool:
    return finding.high is not None and finding.value is not None and finding.value > finding.high
