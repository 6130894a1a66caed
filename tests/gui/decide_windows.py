"""Run within FreeCAD's screen: a designer decides in the five deciding windows."""

import os
from pathlib import Path

import FreeCAD
import FreeCADGui
from fit_panel_hand import click, pump, window
from PySide import QtCore, QtGui


def main():
    """What each window says, shows and does."""
    window()
    told = {"version": FreeCAD.Version()[:2]}
    document, joint = made("Decided")
    told["window"] = window_seen(document, joint)
    told["mend"] = mend_seen(document, joint)
    told["options"] = options_seen(joint)
    told["tolerances"] = tolerances_seen(joint)
    told["seasons"] = seasons_seen(joint)
    told["commands"] = commands(document)
    FreeCAD.closeDocument(document.Name)
    return told


def made(name):
    from freecad_neckfit import __file__ as package
    from freecad_neckfit.features.transfer import joint_from_file

    document = FreeCAD.newDocument(name)
    document.UndoMode = 1
    joint = joint_from_file(document, Path(package).parents[1] / "samples" / "joint.toml")
    document.recompute()
    return document, joint


def picture(dialog, name):
    folder = os.environ.get("NECKFIT_PICTURES")
    if folder:
        pump(200)
        version = "".join(FreeCAD.Version()[:2])
        dialog.grab().save(f"{folder}/decide_{name}_{version}.png")


def button(dialog, words):
    return next(b for b in dialog.findChildren(QtGui.QPushButton) if b.text() == words)


def window_seen(document, joint):
    from freecad_neckfit.gui.panels.window import open_window

    dialog = open_window(joint)
    pump(100)
    seen = {"words": dialog.words.toPlainText(), "notice": dialog.notice.text()}
    seen["axes"] = [dialog.second.itemText(n) for n in range(dialog.second.count())]
    seen["can take"] = dialog.take.isEnabled()
    picture(dialog, "window")
    frame = dialog.drawn.frame
    at = dialog.picture.widget_point(*frame.place(15.62, 0.13))
    click(dialog.picture, QtCore.QPoint(round(at[0]), round(at[1])))
    seen["tried"] = list(dialog.tried or ())
    seen["tried words"] = dialog.words.toPlainText()
    seen["document while trying"] = float(joint.Pocket.Depth)
    undo = document.UndoCount
    click(dialog.take)
    seen["taken"] = [float(joint.Pocket.Depth), float(joint.Pocket.Angle)]
    seen["undo steps"] = document.UndoCount - undo
    document.undo()
    seen["undone"] = float(joint.Pocket.Depth)
    document.recompute()
    dialog.second.setCurrentIndex(2)
    pump()
    seen["over plate"] = dialog.words.toPlainText()
    seen["bitmap"] = [dialog.picture.image().width(), dialog.picture.image().height()]
    dialog.close()
    pump()
    return seen


def mend_seen(document, joint):
    from freecad_neckfit.gui.panels.mend import open_mend

    joint.Pocket.Depth = 16.1
    document.recompute()
    dialog = open_mend(joint)
    pump(100)
    seen = {
        "conflict": dialog.conflict.text(),
        "notice": dialog.notice.text(),
        "list": [dialog.list.item(n).text() for n in range(dialog.list.count())],
        "costs": dialog.costs.text(),
    }
    picture(dialog, "mend")
    undo = document.UndoCount
    click(dialog.take)
    seen["depth"] = float(joint.Pocket.Depth)
    seen["undo steps"] = document.UndoCount - undo
    seen["after"] = dialog.conflict.text()
    dialog.close()
    pump()
    return seen


def options_seen(joint):
    from freecad_neckfit.gui.panels.options import open_options

    dialog = open_options(joint)
    pump(100)
    seen = {"text": dialog.page.toPlainText(), "notice": dialog.notice.text()}
    picture(dialog, "options")
    dialog.close()
    pump()
    return seen


def tolerances_seen(joint):
    from freecad_neckfit.gui.panels.tolerances import open_tolerances

    dialog = open_tolerances(joint)
    pump(100)
    seen = {"words": dialog.words.toPlainText(), "notice": dialog.notice.text()}
    picture(dialog, "tolerances")
    seen["stopped"] = stopped(dialog)
    dialog.close()
    pump()
    return seen


def stopped(dialog):
    """Press Stop while a long study runs."""
    dialog.draws.setCurrentIndex(2)

    def press():
        for bar in dialog.findChildren(QtGui.QProgressDialog):
            bar.cancel()

    QtCore.QTimer.singleShot(1500, press)
    dialog.look_again()
    return dialog.notice.text()


def seasons_seen(joint):
    from freecad_neckfit.gui.panels.seasons import open_seasons

    dialog = open_seasons(joint)
    pump(100)
    seen = {"words": dialog.words.toPlainText(), "notice": dialog.notice.text()}
    picture(dialog, "seasons")
    dialog.close()
    pump()
    return seen


def commands(document):
    """Each command opens its window, by its name."""
    FreeCAD.setActiveDocument(document.Name)
    FreeCADGui.activateWorkbench("NeckFitWorkbench")
    pump(200)
    found = {}
    for name in ("Window", "Options", "Seasons"):
        FreeCADGui.runCommand(f"NeckFit_{name}")
        pump(200)
        dialogs = FreeCADGui.getMainWindow().findChildren(QtGui.QDialog, f"NeckFit{name}")
        opened = [dialog for dialog in dialogs if dialog.isVisible()]
        found[name] = len(opened)
        for dialog in opened:
            dialog.close()
        pump()
    return found
