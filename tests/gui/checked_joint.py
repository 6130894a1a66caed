"""Run within FreeCAD's screen: a checked joint, and what the 3D view's Coin nodes hold of it."""

import json
import os
from pathlib import Path

import FreeCAD
import FreeCADGui
from pivy import coin
from PySide import QtCore

PREFIX = "NeckFit_"


def main():
    """Seen at each stage of a designer's way, by the stage's name."""
    from freecad_neckfit.features.make import make_joint
    from freecad_neckfit.features.run_check import check

    _make_room()
    document = FreeCAD.newDocument("Seen")
    joint = make_joint(document)
    joint.Pocket.Depth, joint.CoverPlate.Cover = 17.5, "surround"
    turned = FreeCAD.Rotation(FreeCAD.Vector(0, 0, 1), 30)
    joint.Placement = FreeCAD.Placement(FreeCAD.Vector(100, 50, 20), turned)
    document.recompute()
    found = check(joint)
    document.recompute()
    stages = {"checked": look(found)}
    picture("checked")
    for name in ("ShowFits", "ShowInformation", "ShowGapMap"):
        setattr(found, name, True)
    stages["all shown"] = look(found)
    picture("all")
    for name in ("ShowFits", "ShowInformation", "ShowGapMap"):
        setattr(found, name, False)
    found.ShowInterference = False
    stages["no interference"] = look(found)
    found.ShowInterference = True

    path = str(Path(os.environ["NECKFIT_ANSWER"]).with_name("seen.FCStd"))
    document.saveAs(path)
    FreeCAD.closeDocument(document.Name)
    document = FreeCAD.openDocument(path)
    joint, found = document.Joint, document.Check
    stages["reopened"] = look(found)

    joint.Pocket.Depth = 17.0
    stages["changed"] = look(found)
    picture("changed")
    joint.Pocket.Depth = 17.5
    stages["changed back"] = look(found)
    joint.Placement = FreeCAD.Placement()
    document.recompute()
    stages["moved"] = look(found)
    return stages


def look(found):
    """What the nodes below the view's root hold once the joint is drawn in full."""
    view = FreeCADGui.getDocument(found.Document.Name).mdiViewsOfType("Gui::View3DInventor")[0]
    _pump()
    view.viewTop()
    view.fitAll()
    draw(view)
    root = view.getSceneGraph()
    return {
        "labels": _labels(root),
        "clash": _clash(root),
        "map": _map(root),
        "findings": json.loads(found.Findings)["joints"][0]["findings"],
        "stale": bool(found.Stale),
        "placement": list(found.Joint.Placement.toMatrix().A),
        "shared": sum(s.Volume for s in found.Interference.Solids),
        "icon": Path(found.ViewObject.Proxy.getIcon()).name,
    }


def draw(view):
    """Wait until the view was drawn with the camera and the size it keeps.

    A window new on a busy screen takes its time: until it is there, nothing is drawn.
    """
    drawn, former = [], None
    watch = coin.SoCallback()
    watch.setCallback(_note_drawing, drawn)
    root = view.getSceneGraph()
    root.addChild(watch)
    try:
        for _ in range(200):
            drawn.clear()
            view.redraw()
            _pump()
            camera = view.getCameraNode()
            looks = (
                tuple(view.getSize()),
                camera.position.getValue().getValue(),
                camera.orientation.getValue().getValue(),
            )
            if drawn and looks == former:
                return
            former = looks if drawn else None
            QtCore.QThread.msleep(10)
        raise RuntimeError("the view was not drawn, or did not come to rest")
    finally:
        root.removeChild(watch)


def _note_drawing(drawn, action):
    if action.isOfType(coin.SoGLRenderAction.getClassTypeId()):
        drawn.append(True)


def picture(name):
    """Save the window, where the tester asks for pictures."""
    folder = os.environ.get("NECKFIT_PICTURES")
    if folder:
        from PySide import QtGui

        view = FreeCADGui.ActiveDocument.ActiveView
        view.viewIsometric()
        view.getCameraNode().height = 150
        joint = FreeCAD.ActiveDocument.Joint.Placement.Base
        camera = view.getCameraNode()
        along = camera.orientation.getValue().multVec(coin.SbVec3f(0, 0, -1))
        camera.position = coin.SbVec3f(*joint) - along * camera.focalDistance.getValue()
        _pump()
        QtGui.QGuiApplication.primaryScreen().grabWindow(0).save(f"{folder}/{name}.png")


def _make_room():
    """The view alone in the window: docked panels leave no room for labels."""
    from PySide import QtGui

    window = FreeCADGui.getMainWindow()
    kind = getattr(QtGui, "QDockWidget", None)
    if kind is None:
        from PySide import QtWidgets

        kind = QtWidgets.QDockWidget
    for dock in window.findChildren(kind):
        dock.hide()
    window.resize(1270, 790)


def _pump():
    for _ in range(8):
        FreeCADGui.updateGui()
        QtCore.QCoreApplication.processEvents()


def _paths(root, kind):
    # Without "searching all", what a switch hides is not found: only what is drawn counts.
    search = coin.SoSearchAction()
    search.setType(kind.getClassTypeId())
    search.setInterest(coin.SoSearchAction.ALL)
    search.apply(root)
    found = search.getPaths()
    return [found[i].copy() for i in range(found.getLength())]


def _names(path):
    return [str(path.getNode(i).getName()) for i in range(path.getLength())]


def _owner(path):
    names = [name for name in _names(path) if name.startswith(PREFIX)]
    return names[-1].removeprefix(PREFIX) if len(names) > 1 else ""


def _world(path):
    """Points of a path's last node where the view draws them."""
    action = coin.SoGetMatrixAction(coin.SbViewportRegion(100, 100))
    action.apply(path)
    matrix = action.getMatrix()
    points = path.getTail().point.getValues()
    return [list(matrix.multVecMatrix(p).getValue()) for p in points]


def _labels(root):
    texts = {_owner(p): str(p.getTail().string.getValue()) for p in _paths(root, coin.SoInfo)}
    images = {_owner(p) for p in _paths(root, coin.SoImage)}
    ends, patterns = {}, {}
    for path in _paths(root, coin.SoCoordinate3):
        points = _world(path) if _owner(path) in texts else []
        if len(points) == 2:
            ends[_owner(path)] = points[1]
    for path in _paths(root, coin.SoDrawStyle):
        if _owner(path) in texts:
            patterns[_owner(path)] = int(path.getTail().linePattern.getValue())
    return {
        name: {
            "text": text,
            "painted": name in images,
            "leader end": ends.get(name),
            "pattern": patterns.get(name),
        }
        for name, text in texts.items()
    }


def _clash(root):
    """Bounds of the solid that is drawn over everything, and whether it is."""
    for path in _paths(root, coin.SoIndexedFaceSet):
        above = [path.getNode(i) for i in range(path.getLength())]
        if PREFIX + "annotations" not in _names(path):
            continue
        over = any(n.isOfType(coin.SoAnnotation.getClassTypeId()) for n in above)
        siblings = above[-2]
        nodes = [siblings.getChild(i) for i in range(siblings.getNumChildren())]
        corners = next(n for n in nodes if n.isOfType(coin.SoCoordinate3.getClassTypeId()))
        points = [p.getValue() for p in corners.point.getValues()]
        return {"over": over, "low": _ends(points, min), "high": _ends(points, max)}
    return None


def _ends(points, which):
    return [which(p[k] for p in points) for k in range(3)]


def _map(root):
    """How many squares of the gap map are drawn."""
    found = [
        path.getTail().numVertices.getNum()
        for path in _paths(root, coin.SoFaceSet)
        if PREFIX + "annotations" in _names(path) and not _owner(path)
    ]
    return max(found, default=0)
