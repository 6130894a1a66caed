"""A neck from somebody's file becomes a joint's neck: its values, and the solid itself."""

from __future__ import annotations

import json
from collections.abc import Collection, Mapping, Sequence
from pathlib import Path
from typing import TYPE_CHECKING, Any

from ..job.errors import BadInput
from ..job.parameters import ALL
from .adopt import adopt_neck, let_go
from .adopt_given import SOLIDS, adopts
from .values import state, stated_of

if TYPE_CHECKING:
    from ..run.neck_judged import NeckRead
    from ..solids.read import Part3D, Progress
    from ..solids.recognise.neck.patches import Patches

Picks = Mapping[str, Sequence[int]]
HERE = (0.0,) * 6
"""The solid is kept in the neck frame, so that frame is where it is."""
SHAPED = (
    "neck.binding", "neck.binding_width", "neck.heel_radius", "neck.heel_corner_radius",
    "neck.heel_edge",
)  # fmt: skip
"""What a solid would show if it had it: the former neck's go, whether recognised anew or not."""
FANNED = ("neck.scale_bass", "neck.square_fret")
"""Likewise, where frets were recognised."""

_last: dict[tuple[str, int, int], Part3D] = {}
"""The file that was read last, so that it is read once from its choice to its place in a joint."""


def read_neck(file: str, *, progress: Progress | None = None) -> Part3D:
    """Read a neck's file, unless it is the one that was read last and has not changed since.

    Raises BadInput in one sentence where it cannot be read, or ``progress`` called it off.
    """
    from ..run.neck_file import read_neck_file

    path = Path(file)
    key = _state_of(path)
    if key is not None and key in _last:
        return _last[key]
    part = read_neck_file(path, progress=progress)
    _last.clear()
    if key is not None:
        _last[key] = part
    return part


def _state_of(path: Path) -> tuple[str, int, int] | None:
    try:
        found = path.stat()
    except OSError:
        return None  # the reader has a sentence for it
    return str(path.absolute()), found.st_mtime_ns, found.st_size


def recognise_in(
    joint: Any,
    part: Part3D,
    *,
    picks: Picks | None = None,
    accepted: Collection[str] = (),
    answers: Mapping[str, Any] | None = None,
) -> NeckRead:
    """Recognise a neck beside a joint's body and hardware; without a joint, beside the defaults.

    ``picks``: items of ``PICKABLE`` as indices of faces. ``accepted``: questions whose recognised
    value stands; ``answers``: values typed in answer to one, or for what the file does not show, by
    key. What the joint states of its present neck answers no question: it is another neck. Raises
    BadInput where the part is no neck.
    """
    from ..run.neck_judged import recognise_for
    from .gather import joint_stated

    stated = joint_stated(joint) if joint is not None else {}
    beside = {key: value for key, value in stated.items() if not key.startswith("neck.")}
    return recognise_for(part, beside, picks=picks, accepted=accepted, answers=answers)


def import_neck(
    joint: Any,
    file: str,
    *,
    picks: Picks | None = None,
    accepted: Collection[str] = (),
    answers: Mapping[str, Any] | None = None,
) -> Any:
    """Make the neck in a file the joint's neck; return the object that holds its solid.

    Values go where the neck states them; a solid is adopted, and everything on solids is measured
    on it. Of a mesh there is no solid: None is returned, and the neck is built from its values.
    Arguments as for ``recognise_in``. Raises BadInput where the file cannot be read, is no neck, or
    leaves a question open.
    """
    part = read_neck(file)
    read = recognise_in(joint, part, picks=picks, accepted=accepted, answers=answers)
    if read.open:
        first = read.open[0]
        raise BadInput(
            f"{part.name}: {first.key} is open: {first.text} Accept it, answer it or pick a face."
        )
    neck = joint.Neck
    if adopts(neck):
        _forget(let_go(joint, "neck"))
    state(neck, stated_by(read, stated_of(neck) | dict(answers or {})))
    neck.Measured = sorted(key for key in read.found.stated if key not in read.kept)
    neck.Remarks = [f"Read from {part.name}.", *read.found.notes]
    if part.is_mesh:
        return None
    solid = _add(joint.Document, read)
    adopt_neck(joint, solid, frame=HERE)
    return solid


def stated_by(read: NeckRead, former: Mapping[str, Any]) -> dict[str, Any]:
    """What the neck object states from now on; ``former``: what it stated before, and answers.

    What the file cannot show (a fret's height where none is modelled) stays as it was.
    """
    found = read.found.stated
    gone = SHAPED + (FANNED if "neck.scale" in found else ())
    kept = {key: value for key, value in former.items() if key not in gone}
    new = {key: read.stated[key] for key in found if key in ALL and key in read.stated}
    return kept | new


def not_shown(read: NeckRead) -> tuple[str, ...]:
    """Keys of the neck that the file does not show, so that the joint's values stand."""
    looked_for = (
        "neck.frets", "neck.scale", "neck.fret_height", "neck.glue_line", "neck.underside",
        "neck.rod", "strings.left_handed",
    )  # fmt: skip
    has_overhang = read.found.stated.get("neck.overhang", 0.0) > 0
    return tuple(
        key for key in looked_for
        if key not in read.found.stated and (has_overhang or key != "neck.underside")
    )  # fmt: skip


def patches_of(part: Part3D) -> Patches:
    """The neck's surface in patches: a face each, or a smooth region of a mesh.

    Numbered as in picks and in what was recognised.
    """
    from ..solids.recognise.neck import from_part

    return from_part.patches_of(part)[0]


def _add(document: Any, read: NeckRead) -> Any:
    """An object that holds the neck's solids, in the neck frame, and what each of them is."""
    import Part

    from ..solids.build.shapes import moved

    solids = [moved(solid.copy(), read.found.frame) for solid in read.part.solids]
    obj = document.addObject("Part::Feature", "NeckFromFile")
    obj.Label = Path(read.part.name).stem
    obj.addProperty(
        "App::PropertyString", SOLIDS, "NeckFit", "What each of the solids is, as JSON."
    )
    setattr(obj, SOLIDS, json.dumps(read.found.solids))
    obj.setEditorMode(SOLIDS, 2)
    shape = solids[0] if len(solids) == 1 else Part.Compound(solids)
    shape.Tag = 0  # no element map, which FreeCAD 1.1 would save along with it
    obj.Shape = shape
    return obj


def _forget(former: Any) -> None:
    """A neck that came from a file and is nobody's any more goes; what the designer made stays."""
    if former is not None and hasattr(former, SOLIDS) and not former.InList:
        former.Document.removeObject(former.Name)
