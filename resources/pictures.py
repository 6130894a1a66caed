"""Run within FreeCAD's window by ``resources/pictures.sh``: take the pictures of the README.

The window is driven as a designer drives it: the sample's button, a deeper pocket, the check's
button. ``NECKFIT_PICTURES`` names the folder to write to.
"""

from __future__ import annotations

import os
import sys
import traceback
from pathlib import Path
from typing import Any

import FreeCAD
import FreeCADGui
from pivy import coin
from PySide import QtCore, QtGui

FOLDER = Path(os.environ["NECKFIT_PICTURES"])
NECK = Path(__file__).resolve().parents[1] / "samples" / "parts" / "neck-elsewhere.step"
SIZE = 1280, 760
CLOSE = 58.0
"""Height of what is seen [mm]: the overhang, the plate under it, the pocket's end."""


def main() -> None:
    """Take the pictures."""
    make_room()
    FreeCADGui.activateWorkbench("NeckFitWorkbench")
    # A camera that glides would still be under way; the cube of directions tells a reader nothing.
    view = FreeCAD.ParamGet("User parameter:BaseApp/Preferences/View")
    view.SetBool("UseNavigationAnimations", False)
    view.SetBool("ShowNaviCube", False)
    FreeCADGui.runCommand("NeckFit_Sample")
    document = FreeCAD.ActiveDocument
    put_light()
    document.Check.ShowFits = True
    take("fits", document)
    document.Check.ShowFits = False
    document.openTransaction("Deeper pocket")
    document.Pocket.Depth = FreeCAD.Units.Quantity("18.3 mm")
    document.recompute()
    document.commitTransaction()
    FreeCADGui.runCommand("NeckFit_Check")
    take("interferes", document)
    take_import(document)


def make_room() -> None:
    """The view alone in the window."""
    window = FreeCADGui.getMainWindow()
    for dock in window.findChildren(QtGui.QDockWidget):
        dock.hide()
    window.resize(*SIZE)


def put_light() -> None:
    """A plain ground, as a printed page has it."""
    group = FreeCAD.ParamGet("User parameter:BaseApp/Preferences/View")
    group.SetBool("Gradient", False)
    group.SetBool("Simple", True)
    group.SetUnsigned("BackgroundColor", 0xF4F6F9FF)


def take(name: str, document: Any) -> None:
    """Look at the joint from the bridge's side and save the window."""
    from freecad_neckfit.gui.views.look import look_at

    look_at(document.Joint)
    camera = FreeCADGui.getDocument(document.Name).ActiveView.getCameraNode()
    camera.height = CLOSE if name == "interferes" else CLOSE * 1.6
    camera.position = camera.position.getValue() + coin.SbVec3f(4, 0, 0)
    FreeCADGui.Selection.clearSelection()
    grab(name, document)


def take_import(document: Any) -> None:
    """A neck from a file, its heel's sides lit up, beside the panel that lists it."""
    from freecad_neckfit.gui.panels.neck_import import open_panel

    window = FreeCADGui.getMainWindow()
    for dock in window.findChildren(QtGui.QDockWidget):
        dock.setVisible(dock.objectName() in ("Combo View", "Tasks"))
    panel = open_panel(document, document.Joint, str(NECK))
    pump()
    panel.form.list.choose("neck.heel_width_end")
    grab("import", document)
    panel.reject()
    FreeCADGui.Control.closeDialog()


def grab(name: str, document: Any) -> None:
    """Save the window as it is."""
    pump()
    FreeCADGui.getDocument(document.Name).ActiveView.redraw()
    pump()
    FOLDER.mkdir(parents=True, exist_ok=True)
    draft = FOLDER / f".{name}.png"
    window = FreeCADGui.getMainWindow()
    screen = QtGui.QGuiApplication.primaryScreen()
    window.statusBar().clearMessage()  # what FreeCAD's own add-ons lack is no news here
    pump()
    screen.grabWindow(0, 0, 0, window.width(), window.height()).save(str(draft))
    draft.replace(FOLDER / f"{name}.png")


def pump() -> None:
    """Let the window draw itself."""
    for _ in range(30):
        FreeCADGui.updateGui()
        QtCore.QCoreApplication.processEvents()
        QtCore.QThread.msleep(20)


def told() -> None:
    """Take the pictures and leave; an exception must not leave the window open for ever."""
    code = 1
    try:
        main()
        code = 0
    except Exception:  # noqa: BLE001 # told on the way out
        sys.__stderr__.write(traceback.format_exc())
    sys.__stderr__.flush()
    os._exit(code)


QtCore.QTimer.singleShot(500, told)
