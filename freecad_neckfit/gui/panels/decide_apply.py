"""Takes what was decided over into the document, as one step that can be undone."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any

from ...decide.progress import Progress, tell
from ...features.assemblies import job_of
from ...features.gather import joint_stated, objects_of
from ...features.limits import state_limits
from ...features.one_step import one_step
from ...features.options import keep_option
from ...features.properties import flag_of, outer, property_of
from ...features.roles import STATED, role_of
from ...features.run_check import check
from ...job.errors import BadInput
from ...job.joint import Limits
from ...job.parameters import ALL
from .fit_knob import driver_of


def take_over(
    joint: Any, values: Mapping[str, Any], *, name: str, progress: Progress | None = None
) -> None:
    """Make the joint state ``values`` (inner units by key), build it anew and check it.

    One step of undo called ``name``. Raises BadInput with one sentence where the joint would be
    impossible, and Stopped where ``progress`` says so; the document is then as it was.
    """
    job_of(joint, joint_stated(joint) | dict(values))  # refuses before anything is touched
    with one_step(joint.Document, name):
        for key, value in values.items():
            _put(joint, key, value)
        tell(progress, 0.1, "building the joint anew")
        joint.Document.recompute()
        for obj in objects_of(joint):
            if not obj.isValid():
                raise BadInput(str(obj.getStatusString()))
        tell(progress, 0.5, "checking the joint on solids")
        check(joint)


def keep(joint: Any, values: Mapping[str, Any], *, name: str) -> None:
    """Make the joint state ``values`` on which no finding depends; None: what is not stated.

    One step of undo called ``name``.
    """
    with one_step(joint.Document, name):
        for key, value in values.items():
            _put(joint, key, value)
        joint.Document.recompute()


def keep_as_option(joint: Any, after: Mapping[str, Any], *, name: str) -> str:
    """Keep a joint that states ``after`` as an option; returns what it is called.

    One step of undo. Raises BadInput where it would be impossible, or no option is left.
    """
    job_of(joint, dict(after))
    with one_step(joint.Document, name):
        called = keep_option(joint, name, after)
        joint.Document.recompute()
    return called


def keep_tolerance(
    joint: Any, key: str, limits: Limits | None, spread: str | None, *, name: str
) -> None:
    """Make the joint state the limits of one dimension and its spread; None: their defaults.

    One step of undo called ``name``.
    """
    with one_step(joint.Document, name):
        state_limits(joint, key, limits, spread=spread)
        joint.Document.recompute()


def _put(joint: Any, key: str, value: Any) -> None:
    p = ALL[key]
    obj = next(o for o in objects_of(joint) if p.group in STATED[role_of(o)])
    driver = driver_of(obj, property_of(p))
    if driver:
        raise BadInput(driver)
    if flag_of(p):
        setattr(obj, flag_of(p), value is not None)
        if value is None:
            return
    setattr(obj, property_of(p), outer(p, value))
