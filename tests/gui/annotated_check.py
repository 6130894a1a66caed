"""Run within FreeCAD's screen: checks a joint and tells what the 3D view shows.

The pocket is 17.5 deep and the plate 2.4 thick on 0.25 of finish: the overhang's underside, 18.6
above the heel's bottom, stands at 1.1, the plate's top at 2.65, so they interfere by 1.55.
"""

import dataclasses
import json
import os
from pathlib import Path

import FreeCAD
import FreeCADGui
from checked_joint import _make_room
from PySide import QtCore, QtGui

FOLDER = Path(os.environ["NECKFIT_ANSWER"]).parent
sights = []


def pump(times=8):
    """Let the window do what it has to, and the virtual screen answer."""
    for _ in range(times):
        FreeCADGui.updateGui()
        QtCore.QCoreApplication.processEvents()
        QtCore.QThread.msleep(15)


def labels(check):
    shown = check.ViewObject.Proxy.scene.labels()
    return {name: dataclasses.asdict(label) for name, label in shown.items()}


def make():
    from freecad_neckfit.features.make import make_joint
    from freecad_neckfit.features.run_check import check
    from freecad_neckfit.gui.views.check import CheckView

    _make_room()
    # A camera that glides is still under way when it is looked at.
    settings = FreeCAD.ParamGet("User parameter:BaseApp/Preferences/View")
    settings.SetBool("UseNavigationAnimations", False)
    document = FreeCAD.newDocument("Annotated")
    joint = make_joint(document)
    joint.Pocket.Depth = 17.5
    joint.CoverPlate.Cover = "surround"
    document.recompute()
    found = check(joint)
    if found.ViewObject.Proxy is None or not hasattr(found.ViewObject.Proxy, "scene"):
        CheckView(found.ViewObject)
    watch()
    return document, joint, found


def watch():
    from freecad_neckfit.gui.annotations.scene import Scene

    plain = Scene.lay_out

    def lay_out(self, sight):
        changed = plain(self, sight)
        sights.append((sight, changed))
        return changed

    Scene.lay_out = lay_out


def at_once(view):
    if hasattr(view, "setAnimationEnabled"):  # not in 0.20, which does not glide
        view.setAnimationEnabled(False)
    return view


def zoom(view, height):
    from pivy import coin

    camera = view.getCameraNode()
    ahead = camera.orientation.getValue().multVec(coin.SbVec3f(0, 0, -1))
    camera.position = ahead * -camera.focalDistance.getValue()
    camera.height = height
    pump()
    view.redraw()
    pump()


def look(view, check):
    """Labels in the usual views, and what the mouse finds on them."""
    found = {}
    for name in ("Isometric", "Top", "Front", "Right"):
        getattr(view, f"view{name}")()
        zoom(view, 130)
        found[name] = {"labels": labels(check), "size": list(view.getSize())}
        under = {}
        for finding, label in found[name]["labels"].items():
            if label["is_shown"]:
                box = label["box"]
                middle = int(box["x"] + box["width"] / 2), int(box["y"] + box["height"] / 2)
                info = view.getObjectInfo(middle) or {}
                under[finding] = [info.get("Object"), info.get("Component")]
        found[name]["under the mouse"] = under
    return found


def print_size(view, check):
    file = str(FOLDER / "print.png")
    view.saveImage(file, 3000, 2000, "Current")
    shown = labels(check)
    pump()
    view.viewIsometric()
    zoom(view, 130)
    box = shown["overhang.gap"]["box"]
    image = QtGui.QImage(file)
    # Within the label's head, left of its first letter.
    at = int(box["x"] + box["width"] / 2), int(2000 - box["y"] - box["height"] + 14)
    return {
        "labels": shown,
        "size": [image.width(), image.height()],
        "head": QtGui.QColor(image.pixel(*at)).getRgbF()[:3],
    }


def fit_all(view):
    heights = []
    for _ in range(3):
        view.fitAll()
        pump()
        heights.append(view.getCameraNode().height.getValue())
    return heights


def two_views(document):
    # Another camera than the first view's: each must be laid out for itself.
    FreeCADGui.runCommand("Std_ViewCreate")
    pump()
    at_once(FreeCADGui.getDocument(document.Name).ActiveView).viewFront()
    FreeCADGui.runCommand("Std_TileWindows")
    pump(20)
    sights.clear()
    pump(60)
    return len(sights), len(views_of(document))


def views_of(document):
    return FreeCADGui.getDocument(document.Name).mdiViewsOfType("Gui::View3DInventor")


def moved(view, joint, check):
    """Where a label's place stands on the screen: as laid out, and as FreeCAD projects it."""
    joint.Placement = FreeCAD.Placement(
        FreeCAD.Vector(40, -30, 20), FreeCAD.Rotation(FreeCAD.Vector(1, 2, 3), 50)
    )
    joint.Document.recompute()
    view.fitAll()
    pump()
    found = json.loads(check.Findings)["joints"][0]["findings"]
    place = FreeCAD.Vector(*next(f["place"] for f in found if f["id"] == "overhang.gap"))
    size = list(view.getSize())
    sight = [s for s, _ in sights if list(s.size) == size][-1]
    there = joint.getGlobalPlacement().multVec(place)
    return {
        "laid out": [float(a) for a in sight.pixels([tuple(place)])[0][:2]],
        "projected": list(view.getPointOnScreen(there.x, there.y, there.z)),
    }


def main():
    """All that the view shows on a designer's way."""
    answer = {"version": ".".join(FreeCAD.Version()[:2])}
    document, joint, check = make()
    view = at_once(FreeCADGui.getDocument(document.Name).ActiveView)
    scene = check.ViewObject.Proxy.scene
    answer["views"] = look(view, check)
    answer["headline"] = scene.head.text
    answer["clash corners"] = len(scene.clash.corners)
    answer["fit all"] = fit_all(view)
    answer["print"] = print_size(view, check)
    answer["on the screen again"] = labels(check)
    check.ShowGapMap = True
    pump()
    answer["scale bar"] = scene.bar.text
    check.ShowGapMap = False
    check.ShowInterference = False
    answer["without interference"] = sorted(labels(check)), len(scene.clash.corners)
    check.ShowInterference = True
    FreeCADGui.Selection.addSelection(document.Name, check.Name, "overhang__gap")
    pump()
    answer["picked"] = sorted(scene.picked)
    FreeCADGui.Selection.clearSelection()
    pump()
    answer["picked after"] = sorted(scene.picked)
    file = str(FOLDER / "annotated.FCStd")
    document.saveAs(file)
    joint.Pocket.Depth = 17.4
    document.recompute()
    pump()
    answer["stale"], answer["stale headline"] = labels(check), scene.head.text
    answer["moved"] = moved(view, joint, check)
    answer["redraws of two resting views"] = two_views(document)
    FreeCAD.closeDocument(document.Name)
    again = FreeCAD.openDocument(file)
    check = again.getObject("Check")
    view = at_once(FreeCADGui.getDocument(again.Name).ActiveView)
    view.viewIsometric()
    zoom(view, 130)
    answer["reopened"] = labels(check)
    answer["reopened clash corners"] = len(check.ViewObject.Proxy.scene.clash.corners)
    return answer
