"""Run by FreeCAD's console: a job of its CAM on the machining document, its figures as JSON.

NECKFIT_DOCUMENT names the document, NECKFIT_OBJECT the object on whose floor a pocketing operation
is put, NECKFIT_ANSWER the file to write.
"""

import json
import os
import traceback
from pathlib import Path

import FreeCAD
from PySide import QtCore

APPLICATION = QtCore.QCoreApplication.instance() or QtCore.QCoreApplication([])

try:  # from FreeCAD 1.0 on
    import Path.Main.Job as Jobs
    import Path.Op.PocketShape as Pockets
except ImportError:
    import PathScripts.PathJob as Jobs
    import PathScripts.PathPocketShape as Pockets


def floor_of(model):
    """Name of the level face that lies inside the pocket: below the top, over the back."""
    found = [
        (face.Area, f"Face{index}")
        for index, face in enumerate(model.Shape.Faces, start=1)
        if face.BoundBox.ZLength < 1e-6
        and -30 < face.BoundBox.ZMax < -5
        and face.BoundBox.XMax < 1e-3
        and face.BoundBox.YMin < 0 < face.BoundBox.YMax
    ]
    return max(found)[1]


def main(path, name):
    document = FreeCAD.openDocument(path, hidden=True)
    parts = [document.getObject(n) for n in ("body", "pocket")]
    job = Jobs.Create("Job", parts, None)
    document.recompute()
    model = next(o for o in job.Model.Group if o.Label.endswith(name))
    cut = Pockets.Create("Cut", parentJob=job)
    cut.Base = [(model, floor_of(model))]
    document.recompute()
    moves = [c.Parameters for c in cut.Path.Commands if c.Name in ("G1", "G2", "G3")]
    heights = [c.Parameters["Z"] for c in cut.Path.Commands if "Z" in c.Parameters]
    return {
        "version": FreeCAD.Version()[:2],
        "lowest": min(heights),
        "moves": len(moves),
        "x": [min(m["X"] for m in moves if "X" in m), max(m["X"] for m in moves if "X" in m)],
        "y": [min(m["Y"] for m in moves if "Y" in m), max(m["Y"] for m in moves if "Y" in m)],
        "tool": float(cut.ToolController.Tool.Diameter),
        "moved": [not o.Placement.isIdentity() for o in job.Model.Group],
        "valid": cut.isValid(),
    }


def told():
    """Write the answer and leave: the console would swallow an exception and run this twice."""
    try:
        answer = main(os.environ["NECKFIT_DOCUMENT"], os.environ["NECKFIT_OBJECT"])
    except BaseException:  # noqa: BLE001 (told in the answer)
        answer = {"error": traceback.format_exc()}
    Path(os.environ["NECKFIT_ANSWER"]).write_text(json.dumps(answer))
    os._exit(0)


told()
