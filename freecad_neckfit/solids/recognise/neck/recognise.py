"""The order in which a neck is recognised, from its pose to its last hole."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import replace
from typing import Any

import numpy as np

from ....job.arrays import FloatArray
from ....job.errors import BadInput
from ...grid import grid_of
from ...read.part import Part3D
from . import from_part
from .board import (
    Board,
    read_board,
    read_glue_line,
    read_overhang,
    whole_top,
)
from .fittings import read_holes, read_rod
from .found import PICKABLE, Findings, NeckFound
from .frame import Frame, on_centreline, rough_frame, turned
from .frets import Heights, read_frets, standing
from .heel import flat_length, mouth_width, read_heel, trust
from .patches import Patches, slice_at
from .rough import first_look
from .width import tell_width

SHORTEST = 150.0
"""No nut lies nearer [mm] to the heel's end; from memory, the shortest scales leave 200."""
UNDER = 0.05
"""What stands out of the heel's bottom by more [mm] is asked about."""
NEARLY = 0.002
"""How finely [mm] the faces of a crown are told before the highest are cut exactly."""
EDGE = 12.0
"""Widest chamfer [mm] that is looked for along the heel's bottom."""


def recognise_neck(
    part: Part3D,
    *,
    picks: Mapping[str, Sequence[int]] | None = None,
    pocket_length: float = 76.0,
    spread: tuple[float, float] | None = None,
) -> NeckFound:
    """Recognise a neck in any pose.

    ``picks``: items of ``PICKABLE`` that were picked by hand, each as indices of faces, counted
    through the part's solids. ``pocket_length``: where the heel's width at the mouth is taken [mm].
    ``spread``: the outer strings' distance at nut and bridge [mm], for fanned frets.
    Raises BadInput in one sentence where the part is no neck, or lacks what a neck must have.
    """
    patches, faces = from_part.patches_of(part)
    picked = _checked(picks or {}, len(patches), part.name)
    found = Findings()
    rough = first_look(patches, part.name, top=picked.get("fretboard top"),
                       bottom=picked.get("heel bottom"))  # fmt: skip
    frame = rough_frame(patches, rough, found)
    frame = on_centreline(patches, rough, frame, part.name)
    if "fretboard top" not in picked:
        rough = replace(rough, top=whole_top(patches.moved(frame.rows, frame.origin), rough.top))
        frame = on_centreline(patches, rough, frame, part.name)
    # First seen from anywhere on the heel's bottom, then from its end.
    seen = patches.moved(frame.rows, frame.origin)
    heel = read_heel(seen, rough.bottom, Findings(), part.name, sides=picked.get("heel sides"),
                     end=picked.get("heel end"))  # fmt: skip
    frame = turned(frame, angle=0.0, shift=np.array([heel.end, 0.0, 0.0]))
    seen = patches.moved(frame.rows, frame.origin)
    heel = read_heel(seen, rough.bottom, found, part.name, sides=picked.get("heel sides"),
                     end=picked.get("heel end"))  # fmt: skip
    found.items |= {"fretboard top": rough.top, "heel bottom": rough.bottom}
    off = max(heel.low.residual, heel.high.residual)
    found.tell("neck.heel_width_mouth", mouth_width(heel, pocket_length),
               f"the heel's sides {pocket_length:.2f} mm before its end",
               residual=off, confidence=trust(off))  # fmt: skip
    length, uneven = flat_length(seen, rough.bottom, heel.end)
    found.tell("neck.heel_length", length, "how far the heel's bottom is flat", residual=uneven / 2)
    _tell_under(seen, rough.bottom, heel, length, found)
    _tell_edge(seen, rough.bottom, heel, found)
    board = read_board(seen, rough.top, found, part.name)
    end = read_overhang(seen, board, found, underside=picked.get("underside"))
    board = replace(board, end=max(end, board.end))
    up = standing(seen, board)
    nut = read_frets(seen, board, rough.top, up, _heights(seen, faces, up, board, frame), found,
                     spread=spread)  # fmt: skip
    tell_width(board, nut, found)
    _doubt_nut(nut, found)
    read_glue_line(seen, board, rough.top, heel, found)
    read_rod(seen, board, found)
    read_holes(seen, rough.bottom, heel, found)
    _tell_solids(seen, rough.top, rough.bottom, up, found)
    if "strings.left_handed" not in found:
        found.notes.append("the hand is not visible in the heel: the job's stands")
    for doubt in part.doubts:
        found.ask("file", doubt)
    return NeckFound(
        tuple(found.dimensions.values()), tuple(found.questions), (*part.notes, *found.notes),
        frame.matrix(), dict(found.items), tuple(found.holes), board.top, dict(found.solids),
    )  # fmt: skip


def _checked(
    picks: Mapping[str, Sequence[int]], count: int, name: str
) -> dict[str, tuple[int, ...]]:
    for item, faces in picks.items():
        if item not in PICKABLE:
            raise BadInput(f"{item!r} cannot be picked; {', '.join(PICKABLE)} can.")
        if not faces or not all(0 <= i < count for i in faces):
            raise BadInput(f"{name}: {item}: pick faces of this neck, numbered 1 to {count}.")
    return {item: tuple(faces) for item, faces in picks.items()}


def _heights(
    p: Patches, faces: Sequence[Any], up: Sequence[int], board: Board, frame: Frame
) -> Heights:
    """How high crowns stand at y = 0: of true surfaces exactly, of a mesh by its facets."""
    index = np.array(up, dtype=np.int64)
    index = index[(p.low[index, 1] <= 0) & (p.high[index, 1] >= 0)]

    def highest(cut: FloatArray, start: float, end: float) -> float:
        inside = (cut[:, :, 0] > start - 0.01) & (cut[:, :, 0] < end + 0.01)
        over = cut[:, :, 2] - board.top.z(cut[:, :, 0], cut[:, :, 1])
        return float(over[inside].max(initial=-np.inf))

    def over(triangles: FloatArray, start: float, end: float) -> float:
        return highest(slice_at(triangles, y=0.0), start, end)

    def finely(patch: int, start: float, end: float) -> float:
        """Infinite where only a cut can tell: the kernel's own fine triangles cost far more."""
        triangles = grid_of(faces[patch], sag=NEARLY)
        if triangles is None:
            return np.inf
        return over((triangles - frame.origin) @ frame.rows.T, start, end)

    def height(start: float, end: float) -> float:
        crown = index[(p.low[index, 0] < end) & (p.high[index, 0] > start)]
        if not faces:
            return over(p.triangles_of(crown), start, end)
        # What may be highest is cut exactly: a surface rises a chord above its facets at most.
        tops = np.array([over(p.triangles_of([int(i)]), start, end) for i in crown])
        chords = np.array([from_part.chord_of(faces[i]) for i in crown])
        crown = crown[tops >= tops.max(initial=-np.inf) - chords]
        tops = np.array([finely(int(i), start, end) for i in crown])
        crown = crown[tops >= tops[tops < np.inf].max(initial=-np.inf) - NEARLY]
        if not len(crown):
            return -np.inf
        level = float(frame.rows[1] @ frame.origin)
        cut = from_part.section_of([faces[i] for i in crown], frame.rows[1], level)
        return highest((cut - frame.origin) @ frame.rows.T, start, end)

    return height


def _tell_under(
    p: Patches, bottom: Sequence[int], heel: Any, length: float, found: Findings
) -> None:
    """What stands out of the heel's flat bottom would ride on the pocket's floor."""
    woods = {int(p.solid[i]) for i in bottom}
    points = p.points_of([i for i in range(len(p)) if int(p.solid[i]) in woods])
    over = (points[:, 0] > heel.end - length) & (points[:, 0] < heel.end)
    deepest = float(-points[over, 2].min(initial=0.0))
    if deepest > UNDER:
        found.ask(
            "heel bottom",
            f"something stands {deepest:.2f} mm out of the heel's bottom; is that the heel's "
            "bottom?",
            by_value=False,
        )


def _doubt_nut(nut: float, found: Findings) -> None:
    """A top that was read from part of a fretboard only begins where no nut is."""
    if nut < -SHORTEST:
        return
    for key in ("neck.nut_to_heel", "neck.width_nut", "neck.radius_nut"):
        found.dimensions.pop(key, None)
    found.ask(
        "neck.nut_to_heel",
        f"what was taken for the fretboard's top begins {nut:+.0f} mm from the heel's end, and a "
        "nut lies far before it; pick the top's faces.",
        by_value=False,
    )


def _tell_edge(p: Patches, bottom: Sequence[int], heel: Any, found: Findings) -> None:
    """A chamfer along the heel's bottom edges: how far its flat lies within its sides."""
    flat = p.points_of(bottom)
    near = heel.end - float(flat[:, 0].max())
    x = flat[:, 0]
    inset = [
        float((flat[:, 1] - heel.low.at - heel.low.slope * x).min() / np.hypot(1, heel.low.slope)),
        float(
            (heel.high.at + heel.high.slope * x - flat[:, 1]).min() / np.hypot(1, heel.high.slope)
        ),
    ]
    sizes = [near, *inset]
    if heel.is_round:
        sizes = inset
    if max(sizes) < 0.02:
        found.tell("neck.heel_edge", 0.0, "the heel's bottom reaches its walls")
        return
    if max(sizes) - min(sizes) > 0.05 or max(sizes) > EDGE:
        found.ask("neck.heel_edge", "the heel's bottom edges are broken unevenly, by "
                  f"{min(sizes):.2f} to {max(sizes):.2f} mm; state neck.heel_edge.")  # fmt: skip
        return
    found.tell("neck.heel_edge", sum(sizes) / len(sizes), "the heel's bottom within its walls",
               residual=(max(sizes) - min(sizes)) / 2)  # fmt: skip
    if not _is_chamfer(p, max(sizes)):
        found.notes.append("the heel's bottom edges are rounded; a job knows them as chamfers")


def _is_chamfer(p: Patches, size: float) -> bool:
    leaning = (np.abs(p.normal[:, 2] + np.sqrt(0.5)) < 0.01) & (p.spread > 0.999)
    return bool((leaning & (p.low[:, 2] < 0.01) & (np.abs(p.high[:, 2] - size) < 0.05)).any())


def _tell_solids(
    p: Patches, top: Sequence[int], bottom: Sequence[int], up: Sequence[int], found: Findings
) -> None:
    """Which solids are the fretboard, the wood, the bindings, frets and the rest."""
    woods = {int(p.solid[i]) for i in bottom}
    bindings = {int(p.solid[i]) for i in found.items.get("binding", ())}
    boards = {int(p.solid[i]) for i in top}
    # Binding has its share of the top; where it is one with the board it is no solid of its own.
    bindings = bindings - woods if boards - bindings else set()
    boards -= bindings
    frets = {int(p.solid[i]) for i in up} - boards - woods - bindings
    rest = set(map(int, p.solid)) - boards - woods - bindings - frets
    if boards & woods:
        found.solids = {"neck": tuple(boards | woods)}
    else:
        found.solids = {"wood": tuple(woods), "fretboard": tuple(boards)}
    found.solids |= {
        name: tuple(sorted(group))
        for name, group in (("binding", bindings), ("frets", frets), ("others", rest))
        if group
    }
