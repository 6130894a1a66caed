"""Checking a joint of a document."""

from __future__ import annotations

import json
from typing import Any

from ..run.chain import check_values
from ..run.record import record
from .assemblies import assembly_of, job_of
from .drawn import keep_drawn
from .gather import joint_digest, joint_stated
from .make import add
from .read_property import units_of
from .roles import role_of


def check(joint: Any, *, solids: bool = True) -> Any:
    """Judge the joint by closed forms and on solids; return the check object with the findings.

    The joint's check object is used again where there is one. Raises BadInput where a property is
    not permitted or the joint is impossible; the former findings stay then, as stale.
    """
    stated = joint_stated(joint)
    job = job_of(joint, stated)
    result = check_values(
        stated,
        name=job.name,
        units=units_of(joint),
        solids=solids,
        # Mostly built a moment ago, when the joint was recomputed.
        assembly=assembly_of(joint) if solids else None,
    )
    found = check_of(joint) or _new_check(joint)
    found.Findings = json.dumps(
        record([result], source=str(joint.Label)), ensure_ascii=False, allow_nan=False
    )
    keep_drawn(found, result)
    found.Verdict = result.verdict.value
    found.CheckedDigest = joint_digest(joint, stated)
    found.Stale = False
    found.purgeTouched()  # it is up to date: what execute would say is said
    return found


def check_of(joint: Any) -> Any:
    """The check object of a joint, or None."""
    return next((o for o in joint.InList if role_of(o) == "check"), None)


def findings_of(check_object: Any) -> list[dict[str, Any]]:
    """The findings kept in a check object, worst first, as in the JSON record."""
    if not check_object.Findings:
        return []
    findings: list[dict[str, Any]] = json.loads(check_object.Findings)["joints"][0]["findings"]
    return findings


def _new_check(joint: Any) -> Any:
    found = add(joint.Document, "check", "Check", "Check")
    found.Joint = joint
    return found
