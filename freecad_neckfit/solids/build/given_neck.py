"""A given neck told apart into heel, shaft, fretboard and binding by what is stated of it."""

from __future__ import annotations

from collections.abc import Callable, Mapping

from ...job.errors import KernelFailure
from ...job.resolve import Values
from .fretboard import board_half_width
from .halves import halves, largest
from .shapes import Point, Solid, common, cut, proven, tapered

WOOD = ("neck", "wood", "heel", "shaft", "fretboard", "binding_treble", "binding_bass")
"""Names of given pieces that are solid wood: one solid each."""
FREE = 5.0
"""How far the splitting planes reach past the neck [mm]."""
PAST_END = 1e-4
"""So far past the heel's end [mm] an overhang of one piece is split off: a plane that only
touches a round end is none that the kernel splits by."""


def neck_parts(v: Values, given: Mapping[str, Solid]) -> tuple[dict[str, Solid], dict[str, str]]:
    """Heel, shaft, fretboard and bindings by name, and the parts not told apart with the reason.

    ``given``: see ``Given.neck``; frets and inserts pass through. All in the neck frame.
    """
    parts: dict[str, Solid] = dict(given)
    missing: dict[str, str] = {}
    steps: tuple[tuple[str, Callable[..., dict[str, Solid]], tuple[str, ...]], ...] = (
        ("neck", _wood_and_board, ("wood", "fretboard")),
        ("wood", _heel_and_shaft, ("heel", "shaft")),
    )
    for name, split, makes in steps:
        if name not in parts:
            continue
        whole = parts.pop(name)
        _try(split, v, whole, parts=parts, missing=missing, makes=makes, of=name)
    if v["neck.binding_width"] > 0 and "binding_treble" not in parts and "fretboard" in parts:
        makes = ("fretboard", "binding_treble", "binding_bass")
        board = parts.pop("fretboard")
        _try(_bindings, v, board, parts=parts, missing=missing, makes=makes, of="fretboard")
    for name in ("heel", "fretboard"):
        if name not in parts and name not in missing:
            missing[name] = missing.get("wood", f"the given neck has no {name}")
    missing.pop("wood", None)
    return {name: shape for name, shape in parts.items() if shape is not None}, missing


def _try(
    split: Callable[..., dict[str, Solid]],
    v: Values,
    whole: Solid,
    *,
    parts: dict[str, Solid],
    missing: dict[str, str],
    makes: tuple[str, ...],
    of: str,
) -> None:
    """Add what ``split`` finds; where the kernel fails, say so of all that it should make."""
    import Part

    try:
        parts.update(split(v, whole))
    except (KernelFailure, Part.OCCError) as failure:
        reason = f"the given {of} could not be told apart into {', '.join(makes)}: {failure}"
        missing.update(dict.fromkeys(makes, reason))


def _wood_and_board(v: Values, whole: Solid) -> dict[str, Solid]:
    """Fretboard: all over the glue line from the nut on, and all past the heel's end."""
    x, y, z = _reach(whole)
    glue, low = float(v["neck.glue_line"]), float(v["neck.underside"] - v["neck.binding"])
    nut = -float(v["neck.nut_to_heel"])
    profile: list[Point] = [(nut, glue)]
    if low < glue:
        profile += [(PAST_END, glue), (PAST_END, low), (x[1], low)]
    else:
        profile.append((x[1], glue))
    profile += [(x[1], z[1]), (nut, z[1])]
    board, rest = halves(whole, profile, y)
    return {"fretboard": board, "wood": rest}


def _heel_and_shaft(v: Values, wood: Solid) -> dict[str, Solid]:
    """Heel: the wood less than the heel's length from its end."""
    x, y, z = _reach(wood)
    start = -float(v["neck.heel_length"])
    if x[0] + FREE >= start:
        return {"heel": wood}
    heel, shaft = halves(wood, [(start, z[0]), (x[1], z[0]), (x[1], z[1]), (start, z[1])], y)
    return {"heel": heel, "shaft": shaft}


def _bindings(v: Values, board: Solid) -> dict[str, Solid]:
    """Board between the bindings, and a strip along each edge."""
    x, _, z = _reach(board)
    inset = float(v["neck.binding_width"])

    def half(at: float) -> float:
        return board_half_width(v, at) - inset

    tool = tapered([(x[0], z[0]), (x[1], z[0]), (x[1], z[1]), (x[0], z[1])], lambda a: -half(a),
                   half)  # fmt: skip
    strips = sorted(cut(board, [tool]).Solids, key=lambda s: s.CenterOfMass.y)
    if len(strips) < 2:
        raise KernelFailure("no strips are left beside the fretboard")
    bass, treble = strips[:: len(strips) - 1]
    if v["strings.left_handed"]:
        treble, bass = bass, treble
    found = {
        "fretboard": largest(common(board, tool)),
        "binding_treble": treble,
        "binding_bass": bass,
    }
    return {name: proven(piece, name=name) for name, piece in found.items()}


def _reach(shape: Solid) -> tuple[Point, Point, Point]:
    """Bounds [mm] a little wider than the shape: from and to along x, y and z."""
    b = shape.optimalBoundingBox()
    return (
        (b.XMin - FREE, b.XMax + FREE),
        (b.YMin - FREE, b.YMax + FREE),
        (b.ZMin - FREE, b.ZMax + FREE),
    )
