"""Run by FreeCAD's console: a job of its CAM on the machining document, its figures as JSON.

NECKFIT_DOCUMENT names the document, NECKFIT_OBJECT the object on whose floor a pocketing operation
is put, NECKFIT_WAY which ("level": a pocket in 2.5D; "steps": a pocket in 3D; "tilted": a pocket in
2.5D with the work turned so that its floor lies level), NECKFIT_ANGLE the floor's angle [degrees],
NECKFIT_ANSWER the file to write.
"""

import json
import math
import os
import traceback
from pathlib import Path

import FreeCAD
from PySide import QtCore

APPLICATION = QtCore.QCoreApplication.instance() or QtCore.QCoreApplication([])

try:  # from FreeCAD 1.0 on
    import Path.Main.Job as Jobs
    import Path.Op.Pocket as Pockets3D
    import Path.Op.PocketShape as Pockets
except ImportError:
    import PathScripts.PathJob as Jobs
    import PathScripts.PathPocket as Pockets3D
    import PathScripts.PathPocketShape as Pockets


STEP = 0.25
"""Depth [mm] of a step on a tilted floor."""


def floor_of(model):
    """Name of the flat face that lies inside the pocket: below the top, over the back."""
    found = [
        (face.Area, f"Face{index}")
        for index, face in enumerate(model.Shape.Faces, start=1)
        if type(face.Surface).__name__ == "Plane"
        and abs(face.Surface.Axis.z) > 0.9
        and -30 < face.BoundBox.ZMax < -5
        and face.BoundBox.XMax < 1.0
        and face.BoundBox.YMin < 0 < face.BoundBox.YMax
    ]
    return max(found)[1]


def main(path, name, way, angle):
    document = FreeCAD.openDocument(path, hidden=True)
    parts = [document.getObject(n) for n in ("body", "pocket")]
    job = Jobs.Create("Job", parts, None)
    if way == "tilted":
        for model in job.Model.Group:
            turned = FreeCAD.Rotation(FreeCAD.Vector(0, 1, 0), angle)
            model.Placement = FreeCAD.Placement(FreeCAD.Vector(), turned)
    document.recompute()
    model = next(o for o in job.Model.Group if o.Label.endswith(name))
    cut = (Pockets3D if way == "steps" else Pockets).Create("Cut", parentJob=job)
    cut.Base = [(model, floor_of(model))]
    if way == "steps":
        for key in ("StepDown", "StartDepth"):
            cut.setExpression(key, None)
        cut.StepDown, cut.StartDepth = STEP, -12.0
        cut.StepOver = 50  # per cent of the bit: no ridges between its passes
    document.recompute()
    moves = list(travelled(cut.Path.Commands))
    x, y, z = zip(*(end for _, end in moves), strict=True) if moves else ((), (), ())
    return {
        "version": FreeCAD.Version()[:2],
        "lowest": min(z, default=None),
        "lowest at the wall": min((e[2] for _, e in moves if e[0] > -10), default=None),
        "moves": len(moves),
        "ways": moves if way == "steps" else [],
        "x": [min(x, default=None), max(x, default=None)],
        "y": [min(y, default=None), max(y, default=None)],
        "tool": float(cut.ToolController.Tool.Diameter),
        "moved": [not o.Placement.isIdentity() for o in job.Model.Group],
        "valid": cut.isValid(),
    }


def travelled(commands):
    """From where to where the tool goes while it cuts, arcs by points along them."""
    at = (0.0, 0.0, 0.0)
    for command in commands:
        p = command.Parameters
        end = tuple(p.get(name, was) for name, was in zip("XYZ", at, strict=True))
        if command.Name in ("G2", "G3"):
            for place in arc(at, end, (p.get("I", 0.0), p.get("J", 0.0)), command.Name == "G3"):
                yield at, place
                at = place
        if command.Name in ("G1", "G2", "G3"):
            yield at, end
        at = end


def arc(start, end, to_centre, left):
    centre = start[0] + to_centre[0], start[1] + to_centre[1]
    radius = math.hypot(*to_centre)
    a, b = (math.atan2(p[1] - centre[1], p[0] - centre[0]) for p in (start, end))
    turn = ((b - a) if left else (a - b)) % (2 * math.pi)
    for i in range(1, 90):
        angle = a + (turn if left else -turn) * i / 90
        yield (
            centre[0] + radius * math.cos(angle),
            centre[1] + radius * math.sin(angle),
            start[2] + (end[2] - start[2]) * i / 90,
        )


def told():
    """Write the answer and leave: the console would swallow an exception and run this twice."""
    try:
        answer = main(
            os.environ["NECKFIT_DOCUMENT"], os.environ["NECKFIT_OBJECT"],
            os.environ["NECKFIT_WAY"], float(os.environ["NECKFIT_ANGLE"]),
        )  # fmt: skip
    except BaseException:  # noqa: BLE001 (told in the answer)
        answer = {"error": traceback.format_exc()}
    Path(os.environ["NECKFIT_ANSWER"]).write_text(json.dumps(answer))
    os._exit(0)


told()
