"""A recognised neck in a job: what it states, which questions stay open, and whether it fits."""

from __future__ import annotations

from collections.abc import Collection, Mapping, Sequence
from dataclasses import dataclass, replace
from typing import TYPE_CHECKING, Any

from ..fit.frets import fret_distance
from ..job.joint import Job
from ..job.possible import refuse_impossible
from ..job.quantity import Units
from ..job.resolve import Values, complete
from ..solids.read import Part3D
from ..solids.recognise.neck import NeckFound, Question, recognise_neck
from ..solids.recognise.neck.found import Findings
from .chain import Result, check_values
from .whole import body_outline

if TYPE_CHECKING:
    from ..solids.build import Given

GRIPPED = ("frets", "others")
"""Solids that are not judged: crowns follow from the values, with the neck's relief."""

NUT_STRAYS = 1.5
"""So much [mm] a bare fretboard may be longer or shorter than the job's frets make it: margins past
the last fret differ by as much (common practice, no source)."""


@dataclass(frozen=True)
class NeckRead:
    """A neck recognised for a job.

    ``stated``: the job's values with the neck's own in place. ``kept``: values that the job states
    and that answer a question, so they stand against the file. ``answered``: the questions that
    such values answer. ``open``: questions unanswered.
    """

    part: Part3D
    found: NeckFound
    stated: dict[str, Any]
    kept: tuple[str, ...]
    answered: tuple[Question, ...]
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
    answers: Mapping[str, Any] | None = None,
) -> NeckRead:
    """Recognise a neck and put what it states in place of what ``stated`` (of a job) says.

    A question that a value can answer is answered by one that the job states, and that stands.
    ``answers`` are values given for this neck: they answer whatever they are about. ``accepted``
    names further questions as answered: what was recognised there stands, or else the job's value.
    Raises BadInput where the part is no neck.
    """
    given = dict(answers or {})
    stated = dict(stated) | given
    values = complete(stated)
    spread = float(values["strings.spread_nut"]), float(values["strings.spread_bridge"])
    found = recognise_neck(
        part, picks=picks, pocket_length=float(values["pocket.length"]), spread=spread
    )
    found = replace(found, questions=(*found.questions, *_where_the_nut_is(found, values, stated)))
    asked = [q for q in found.questions if q.key not in accepted]
    answered = tuple(q for q in asked if q.key in given or (q.by_value and q.key in stated))
    left = tuple(q for q in asked if q not in answered)
    kept = tuple(key for key in found.stated if key in {q.key for q in answered}
                 and key not in {q.key for q in left})  # fmt: skip
    own = {key: value for key, value in found.stated.items() if key not in kept}
    return NeckRead(part, found, dict(stated) | own, kept, answered, left)


def _where_the_nut_is(
    read: NeckFound, values: Values, stated: Mapping[str, Any]
) -> Sequence[Question]:
    """Asked of a bare board, which the job's frets and margin do not just fill.

    Its start is taken for the nut, and may be none.
    """
    own = read.stated
    if "neck.scale" in own or not {"neck.scale", "neck.frets"} & set(stated):
        return ()
    if "neck.nut_to_heel" not in own or "neck.overhang" not in own:
        return ()
    length = own["neck.nut_to_heel"] + own["neck.overhang"]
    last = fret_distance(scale=float(values["neck.scale"]), fret=values["neck.frets"])
    over = length - float(last) - float(values["neck.end_margin"])
    found = Findings()
    if over > NUT_STRAYS:
        found.ask(
            "neck.nut_to_heel",
            f"no frets are modelled, and the fretboard is {over:.2f} mm longer than the job's "
            "frets, scale and end margin make it: does it begin at the nut?",
            by_value=False,
        )
    if over < -NUT_STRAYS:
        found.ask(
            "neck.nut_to_heel",
            f"no frets are modelled, and the fretboard is {-over:.2f} mm shorter than the job's "
            "frets, scale and end margin make it: does it begin at the nut?",
            by_value=False,
        )
    return found.questions


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
