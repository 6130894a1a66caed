"""What the commands do, as functions that a recorded macro calls too, with or without a screen."""

from __future__ import annotations

from pathlib import Path
from typing import Any

from .. import __file__ as package_file
from ..job.errors import BadInput, NeckFitError
from . import adopt
from .assemblies import assembly_of
from .make import make_joint
from .make import reattach as give_back
from .roles import role_of
from .run_check import check
from .staleness import is_stale
from .transfer import joint_from_file, joint_to_file

SAMPLES = Path(package_file).parent.parent / "samples"
SAMPLE = SAMPLES / "joint.toml"
START = SAMPLES / "start.toml"


def build_sample(document: Any) -> Any:
    """Add the sample joint to a document, built and checked; return it.

    Raises BadInput where the sample's files are not there.
    """
    joint = open_job(document, str(SAMPLE))
    check(joint)
    return joint


def new_joint(document: Any, defaults: str = "") -> Any:
    """Add a joint to a document and build it; return it.

    ``defaults``: a job file with what the shop states of every new joint; all else is at its
    default. Raises BadInput where the file cannot be used.
    """
    if not defaults:
        return build(make_joint(document))
    joint = joint_from_file(document, Path(defaults))
    # The fragment's name and options are its own, not the new joint's.
    joint.JobName, joint.Options, joint.Label = "", "", "Joint"
    return build(joint)


def start_joint(document: Any) -> Any:
    """Add a joint that fits, to begin with, and build it; return it.

    Raises BadInput where the file that states it is not there.
    """
    return new_joint(document, str(START))


def open_job(document: Any, file: str, option: str | None = None) -> Any:
    """Add the joint that a job file states, or one of its options, and build it; return it.

    Raises BadInput where the file cannot be used or the joint is impossible.
    """
    return build(joint_from_file(document, Path(file), option=option))


def write_job(joint: Any, file: str) -> None:
    """Write a joint as a job file; raises BadInput where that cannot be."""
    joint_to_file(joint, Path(file))


def build(joint: Any) -> Any:
    """Build a joint's parts and return it; raises BadInput or KernelFailure where that cannot be.

    FreeCAD's own recompute would mark the objects and say nothing to the caller.
    """
    assembly_of(joint)
    joint.Document.recompute()
    return joint


def let_go(joint: Any, role: str) -> Any:
    """Build a joint's body, neck or plate from its values again; return the former solid, shown.

    What was measured of it stays stated. Raises BadInput where the joint cannot be built so.
    """
    former = adopt.let_go(joint, role)
    joint.Document.recompute()
    build(joint)
    return former


def stale_checks(document: Any) -> list[Any]:
    """The checks that a change of their joint has left behind."""
    return [o for o in document.Objects if role_of(o) == "check" and is_stale(o)]


def recheck(document: Any) -> list[Any]:
    """Check every joint anew whose findings are out of date; return its check.

    A joint that cannot be read or built keeps its former findings, as stale, and is told in the
    report view; the others are checked all the same. Raises BadInput where none could be, with one
    sentence for each.
    """
    stale, refusals = stale_checks(document), []
    for found in stale:
        try:
            check(found.Joint)
        except NeckFitError as refusal:
            refusals.append(str(refusal))
    if refusals and len(refusals) == len(stale):
        raise BadInput(" ".join(refusals))
    for sentence in refusals:
        import FreeCAD

        FreeCAD.Console.PrintError(f"NeckFit: {sentence}\n")
    return stale


def reattach(document: Any) -> list[Any]:
    """Give back their behaviour to objects saved where NeckFit was not installed; return them."""
    found = give_back(document)
    document.recompute()
    return found


def has_lost(document: Any) -> bool:
    """Whether some objects of NeckFit have lost their behaviour."""
    return any(role_of(o) and getattr(o, "Proxy", o) is None for o in document.Objects)
