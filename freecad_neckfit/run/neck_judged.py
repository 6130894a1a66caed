"""A recognised neck in a job: what it states, which questions stay open, and whether it fits."""

from __future__ import annotations

from collections.abc import Collection, Mapping, Sequence
from dataclasses import dataclass
from typing import TYPE_CHECKING, Any

from ..job.joint import Job
from ..job.possible import refuse_impossible
from ..job.quantity import Units
from ..job.resolve import Values, complete
from ..solids.read import Part3D
from ..solids.recognise.neck import NeckFound, Question, recognise_neck
from .chain import Result, check_values
from .whole import body_outline

if TYPE_CHECKING:
    from ..solids.build import Given

GRIPPED = ("frets", "others")
"""Solids that are not judged: crowns follow from the values, with the neck's relief."""


@dataclass(frozen=True)
class NeckRead:
    """A neck recognised for a job.

    ``stated``: the job's values with the neck's own in place. ``kept``: values that the job states
    and that answer a question, so they stand against the file. ``open``: questions unanswered.
    """

    part: Part3D
    found: NeckFound
    stated: dict[str, Any]
    kept: tuple[str, ...]
    open: tuple[Question, ...]

    @property
    def is_settled(self) -> bool:
        """Whether nothing is left to ask."""
        return not self.open


def recognise_for(
    part: Part3D,
    stated: Mapping[str, Any],
    *,
    picks: Mapping[str, Sequence[int]] | None = None,
    accepted: Collection[str] = (),
) -> NeckRead:
    """Recognise a neck and put what it states in place of what ``stated`` (of a job) says.

    A question about a parameter that the job states is answered by the job, and its value stands;
    ``accepted`` names further questions as answered: what was recognised there stands. Raises
    BadInput where the part is no neck.
    """
    values = complete(stated)
    spread = float(values["strings.spread_nut"]), float(values["strings.spread_bridge"])
    found = recognise_neck(
        part, picks=picks, pocket_length=float(values["pocket.length"]), spread=spread
    )
    asked = {q.key for q in found.questions} - set(accepted)
    kept = tuple(key for key in found.stated if key in stated and key in asked)
    answered = set(kept) | {key for key in asked if key in stated} | set(accepted)
    own = {key: value for key, value in found.stated.items() if key not in kept}
    unanswered = tuple(q for q in found.questions if q.key not in answered)
    return NeckRead(part, found, dict(stated) | own, kept, unanswered)


def judge_neck(read: NeckRead, job: Job, *, units: Units = Units.MM) -> Result:
    """Judge the neck's own solid in the job's body; a mesh is judged by its measures alone.

    Raises BadInput where the neck and the job cannot be one joint.
    """
    joint = Job.of(job.name, read.stated, source=read.part.name)
    refuse_impossible(joint.values, job.name)
    given = None if read.part.is_mesh else given_neck(read, joint.values)
    return check_values(
        read.stated, name=job.name, units=units, outline=body_outline(job), given=given
    )


def given_neck(read: NeckRead, values: Values) -> Given:
    """The neck's solids in the neck frame, by the names that a joint's parts have."""
    from ..solids.build import Given
    from ..solids.build.shapes import moved

    solids = [moved(solid, read.found.frame) for solid in read.part.solids]
    is_left = bool(values["strings.left_handed"])
    pieces = neck_pieces(solids, read.found.solids, left_handed=is_left)
    return Given(neck=pieces, neck_is_sound=True)


def neck_pieces(
    solids: Sequence[Any], groups: Mapping[str, Sequence[int]], *, left_handed: bool
) -> dict[str, Any]:
    """Solids in the neck frame by the names that a joint's parts have.

    ``groups``: as recognised, name to indices of ``solids``; what is ``GRIPPED`` is left out.
    """
    import Part

    pieces: dict[str, list[Any]] = {}
    for name, numbers in groups.items():
        for solid in (solids[i] for i in numbers):
            if name == "binding":
                is_treble = (solid.CenterOfMass.y > 0) != left_handed
                pieces.setdefault("binding_treble" if is_treble else "binding_bass", []).append(
                    solid
                )
            elif name not in GRIPPED:
                pieces.setdefault(name, []).append(solid)
    return {n: some[0] if len(some) == 1 else Part.Compound(some) for n, some in pieces.items()}
