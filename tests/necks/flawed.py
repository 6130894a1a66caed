"""Flawed necks: what a reader must mend and say, refuse, or ask about.

Each is (shape, or a function that gives a file's bytes; ending; expected; more for the record).
``expected``: "mended" (read, its measures right, the mending said), "refused" (one sentence),
"asks" (read, an open question), "noted" (read, its measures right, a note said).
"""

from __future__ import annotations

import math
import random

import solid
from kernel import (
    BRepBuilderAPI_Transform,
    box,
    compound,
    cut,
    cylinder,
    face,
    fuse,
    gp_Ax1,
    gp_Dir,
    gp_Pnt,
    gp_Trsf,
    gp_Vec,
    lines,
    mirrored,
    posed,
    prism,
    scaled,
    upright,
)
from OCP.BRep import BRep_Builder
from OCP.BRepGProp import BRepGProp
from OCP.GProp import GProp_GProps
from OCP.TopAbs import TopAbs_FACE
from OCP.TopExp import TopExp_Explorer
from OCP.TopoDS import TopoDS, TopoDS_Shell
from spec import draw, pose


def all_of(seed: int) -> dict:
    """Every flawed neck by name."""
    plain = draw("cylinder", seed)
    whole = solid.shapes(plain)[0]
    parts_neck = draw("parts", seed)
    parts = solid.shapes(parts_neck)
    truth, parts_truth = dict(truth=plain.truth()), dict(truth=parts_neck.truth())

    def put(shape):
        return posed(shape, *pose(random.Random(f"flawed {seed}")))

    return {
        "no-heel-bottom": (put(_shell(whole, skip=_heel_bottom)), "step", "refused",
                           dict(words=["open"])),
        "no-heel-bottom-solid": (put(_shell(whole, skip=_heel_bottom)), "brep", "refused",
                                 dict(words=["open"])),
        "loose-faces": (put(compound(_faces(whole))), "brep", "mended",
                        truth | dict(words=["sewn"])),
        "inside-out": (put(whole.Reversed()), "brep", "mended", truth | dict(words=["inside out"])),
        "inside-out-parts": (put(compound([parts[0].Reversed(), *parts[1:]])), "brep", "mended",
                             parts_truth | dict(words=["inside out"])),
        "mirrored": (put(mirrored(whole)), "step", "noted", truth | dict(words=["hand"])),
        "mirrored-place": (_mirror_placed(put(whole)), "brep", "mended",
                           truth | dict(words=["mirror"])),
        "twice": (put(compound([whole, whole])), "step", "mended", truth | dict(words=["twice"])),
        "overlapping": (put(compound([whole, _moved(whole, 0.0, 0.0, 2.0)])), "step", "refused",
                        dict(words=["overlap"])),
        "overlapping-board": (put(_sunk_board(seed)), "step", "asks", dict(words=["overlap"])),
        "two-necks": (put(compound([whole, _moved(whole, 0.0, 120.0, 0.0)])), "step", "refused",
                      dict(words=["neck"])),
        "inch-numbers": (put(scaled(whole, 1 / 25.4)), "step", "mended",
                         truth | dict(words=["25.4"])),
        "metre-numbers": (put(scaled(whole, 1 / 1000)), "step", "mended",
                          truth | dict(words=["1000"])),
        "too-large": (put(scaled(whole, 25.4)), "step", "mended", truth | dict(words=["25.4"])),
        "odd-size": (put(scaled(whole, 2.0)), "step", "refused", dict(words=["neck"])),
        "inch-mesh": (put(scaled(whole, 1 / 25.4)), "stl", "mended", truth | dict(words=["25.4"])),
        "no-board": (put(solid.wood_of(plain)), "step", "asks", dict(words=["fretboard"])),
        "leaning-board": (put(_leaning(seed)), "step", "asks", dict(words=["parallel"])),
        "crooked-heel": (put(_crooked(seed)), "step", "asks", dict(words=["centreline"])),
        "wavy-top": (put(_wavy(seed)), "step", "asks", dict(words=["top"])),
        "body": (put(_slab()), "step", "refused", dict(words=["not a neck"])),
        "stick": (put(box((0, 640), (-25, 25), (0, 25))), "step", "refused",
                  dict(words=["not a neck"])),
        "round-stick": (put(cylinder((0, 0, 0), (1, 0, 0), 30, 640)), "step", "refused",
                        dict(words=["not a neck"])),
        "cut-short": (lambda: _cut_short(whole), "step", "refused", dict(words=["read"])),
        "no-step": (lambda: b"This is no STEP file.\n", "step", "refused", dict(words=["read"])),
        "empty": (lambda: b"", "step", "refused", dict(words=["empty"])),
    }  # fmt: skip


def _faces(shape) -> list:
    found, explorer = [], TopExp_Explorer(shape, TopAbs_FACE)
    while explorer.More():
        found.append(TopoDS.Face(explorer.Current()))
        explorer.Next()
    return found


def _heel_bottom(centre, area) -> bool:
    return abs(centre.Z()) < 1e-6 and centre.X() > -70 and area > 1000


def _shell(shape, skip):
    shell, builder = TopoDS_Shell(), BRep_Builder()
    builder.MakeShell(shell)
    for part in _faces(shape):
        props = GProp_GProps()
        BRepGProp.SurfaceProperties_s(part, props)
        if not skip(props.CentreOfMass(), props.Mass()):
            builder.Add(shell, part)
    return shell


def _moved(shape, x, y, z):
    move = gp_Trsf()
    move.SetTranslation(gp_Vec(x, y, z))
    return BRepBuilderAPI_Transform(shape, move, True).Shape()


def _mirror_placed(shape):
    """A mirror in the shape's place rather than in its geometry."""
    from OCP.gp import gp_Ax2
    from OCP.TopLoc import TopLoc_Location

    mirror = gp_Trsf()
    mirror.SetMirror(gp_Ax2(gp_Pnt(0, 0, 0), gp_Dir(0, 1, 0)))
    return shape.Located(TopLoc_Location(mirror), False)


def _sunk_board(seed: int):
    """Wood and fretboard apart, the board sunk half a millimetre into the wood."""
    n = draw("above", seed)
    wood, board = solid.shapes(n)
    return compound([wood, _moved(board, 0.0, 0.0, -0.5)])


def _leaning(seed: int):
    n = draw("above", seed)
    wood, board = solid.shapes(n)
    lean = gp_Trsf()
    lean.SetRotation(gp_Ax1(gp_Pnt(-n.m["u_h"], 0, n.m["glue"]), gp_Dir(0, 1, 0)),
                     -math.radians(0.4))  # fmt: skip
    return compound([wood, BRepBuilderAPI_Transform(board, lean, True).Shape()])


def _crooked(seed: int):
    """The heel half a millimetre beside the fretboard's centreline."""
    n = draw("above", seed)
    wood, board = solid.shapes(n)
    return compound([_moved(wood, 0.0, 0.5, 0.0), board])


def _wavy(seed: int):
    """A fretboard top that is neither flat nor round: a hollow runs along it."""
    n = draw("plain", seed)
    board = solid.board_of(n)
    m = n.m
    ridge = face([((-60, m["H"] + 5), None, (-60, m["H"] - 0.2)),
                  ((-60, m["H"] - 0.2), (0, m["H"] - 0.9), (60, m["H"] - 0.2)),
                  ((60, m["H"] - 0.2), None, (60, m["H"] + 5)),
                  ((60, m["H"] + 5), None, (-60, m["H"] + 5))],
                 lambda y, z: (-m["u_h"] - 10, y, z))  # fmt: skip
    return fuse(solid.wood_of(n), cut(board, prism(ridge, m["u_h"] + 100, 0, 0)))


def _slab():
    """About the size of a guitar's body, with a pocket in it."""
    ring = [(-200, -150), (230, -160), (230, 160), (-200, 150)]
    return cut(upright(lines(ring), -45, 0), box((-76, 0), (-28, 28), (-16, 5)))


def _cut_short(whole) -> bytes:
    import tempfile
    from pathlib import Path

    from make import write_step

    with tempfile.TemporaryDirectory() as scratch:
        path = Path(scratch) / "whole.step"
        write_step(whole, path)
        data = path.read_bytes()
    return data[: len(data) // 3]
