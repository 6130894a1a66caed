"""Run within FreeCAD's screen: a designer has the package written and the pocket drawn."""

import os
import re
from pathlib import Path

import FreeCAD
import FreeCADGui
from commands_hand import docks_text
from decide_windows import button
from fit_panel_hand import click, pump, until, window
from PySide import QtCore, QtGui


def main():
    """What the two commands do, and what is left in the document."""
    window()
    FreeCADGui.activateWorkbench("NeckFitWorkbench")
    told = {"version": FreeCAD.Version()[:2]}
    document, joint = made()
    told["possible"] = [active(name) for name in ("NeckFit_Package", "NeckFit_Drawing")]
    told["package"] = package_seen(joint, document)
    told["page"] = page_seen(document, joint)
    return told


def made():
    from freecad_neckfit import __file__ as package
    from freecad_neckfit.features.limits import state_limits
    from freecad_neckfit.features.transfer import joint_from_file
    from freecad_neckfit.gui.views.look import look_at

    document = FreeCAD.newDocument("Shop")
    document.UndoMode = 1
    joint = joint_from_file(document, Path(package).parents[1] / "samples" / "joint.toml")
    state_limits(joint, "pocket.depth", (-0.07, 0.03))
    document.recompute()
    look_at(joint)  # where the designer is after a joint was made
    pump(300)
    return document, joint


def active(name):
    return FreeCADGui.Command.get(name).isActive()


def package_seen(joint, document):
    from freecad_neckfit.gui.panels import package

    folder = Path(os.environ["NECKFIT_ANSWER"]).parent / "given"
    folder.mkdir()
    answers = [False, True]
    package.confirm_replacing = lambda _: answers.pop(0)
    before = document.UndoCount
    camera = camera_now()
    dialog = asked()
    seen = {"asks": asks(dialog)}
    made = folder / package.folder_name(joint.Label)
    part(dialog, "Folder").setText("")
    write(dialog)
    seen["nowhere"] = dialog.notice.text()
    part(dialog, "Folder").setText(str(made))
    part(dialog, "Bush").setText("3/16 in")
    write(dialog)
    seen["refused"] = dialog.notice.text(), made.exists()
    part(dialog, "Bush").setText("17 mm")
    part(dialog, "Bit").setText("5")
    write(dialog)
    assert (made / "contents.txt").is_file(), dialog.notice.text()
    first = (made / "contents.txt").stat().st_mtime_ns
    seen["files"] = sorted(p.name for p in made.iterdir())
    seen["folder"] = made.name
    seen["contents"] = (made / "contents.txt").read_text(encoding="utf-8")
    seen["written"] = part(dialog, "Written").text(), part(dialog, "Written").isVisible()
    seen["link"] = QtCore.QUrl.fromLocalFile(str(made)).toString()
    seen["links open"] = part(dialog, "Written").openExternalLinks()
    seen["in the report"] = str(made) in docks_text("Report view")
    picture("package", dialog)
    report = (made / "report.html").read_text(encoding="utf-8")
    pictures = re.findall('data:image/png;base64,([^"]*)"', report)
    seen["pictures"], seen["different pictures"] = len(pictures), len(set(pictures))
    seen["printed pictures"] = (made / "report.pdf").read_bytes().count(b"/Subtype /Image")
    seen["options"] = "deeper pocket with plate" in report
    seen["drawing"] = (made / "drawing.svg").read_text(encoding="utf-8")
    write(dialog)
    seen["kept when refused"] = (made / "contents.txt").stat().st_mtime_ns == first
    write(dialog)
    seen["replaced when wanted"] = (made / "contents.txt").stat().st_mtime_ns > first
    seen["undo steps"] = document.UndoCount - before
    seen["camera kept"] = camera_now() == camera
    part(dialog, "Units").setCurrentIndex(1)
    seen["in inches"] = part(dialog, "Bit").text(), part(dialog, "Bush").text()
    part(dialog, "Folder").setText(str(folder / "inches"))
    write(dialog)
    seen["inch contents"] = (folder / "inches" / "contents.txt").read_text(encoding="utf-8")
    dialog.close()
    pump()
    return seen | warned(joint, document, folder)


def warned(joint, document, folder):
    """What the window says of a joint that does not fit, or changed since its check."""
    from freecad_neckfit.features.run_check import check

    undo = document.UndoCount
    document.openTransaction("Deeper")
    check(joint)
    fitting = asks(asked())
    joint.Pocket.Depth = 17.4
    document.recompute()
    dialog = asked()
    stale = asks(dialog)
    part(dialog, "Folder").setText(str(folder / "deeper"))
    write(dialog)
    after = asks(dialog)
    dialog.close()
    check(joint)
    dialog = asked()
    not_fitting = asks(dialog)
    dialog.close()
    document.commitTransaction()
    while document.UndoCount > undo:
        document.undo()
    document.recompute()
    return {"fitting": fitting, "stale": stale, "stale once written": after,
            "not fitting": not_fitting}  # fmt: skip


def asked():
    FreeCADGui.runCommand("NeckFit_Package")
    pump(200)
    found = FreeCADGui.getMainWindow().findChildren(QtGui.QDialog, "NeckFitPackage")
    return next(dialog for dialog in found if dialog.isVisible())


def part(dialog, name):
    return dialog.findChild(QtGui.QWidget, f"NeckFitPackage{name}")


def asks(dialog):
    units, warning = part(dialog, "Units"), part(dialog, "Warning")
    return {
        "folder": part(dialog, "Folder").text(), "bit": part(dialog, "Bit").text(),
        "bush": part(dialog, "Bush").text(), "units": units.currentText(),
        "warning": warning.text() if warning.isVisible() else "",
    }  # fmt: skip


def write(dialog):
    click(button(dialog, "Write the package"))
    pump(100)


def camera_now():
    """Where the camera is, where it looks and how much it sees; not its planes, which follow."""
    import pivy.coin  # noqa: F401 (FreeCAD hands out cameras only once it is loaded)

    camera = FreeCADGui.ActiveDocument.ActiveView.getCameraNode()
    numbers = *camera.position.getValue(), *camera.orientation.getValue().getValue()
    return [round(number, 3) for number in (*numbers, camera.height.getValue())]


def page_seen(document, joint):
    from freecad_neckfit.sheets.techdraw import PAGE, raw_values

    before = document.UndoCount
    FreeCADGui.runCommand("NeckFit_Drawing")
    until(lambda: document.getObject(PAGE) is not None)
    seen = {"values": raw_values(document), "undo steps": document.UndoCount - before}
    seen["open"] = titles()
    seen["whole page in sight"] = page_in_sight()
    seen["frames"] = getattr(document.getObject(PAGE).ViewObject, "ShowFrames", False)
    joint.Pocket.Depth = 15.7
    document.recompute()
    FreeCADGui.runCommand("NeckFit_Drawing")
    seen["depth after edit"] = raw_values(document)["pocket.depth"]
    pump(1500)
    picture()
    count = len(document.Objects)
    document.undo()
    document.undo()
    seen["objects gone after undo"] = count - len(document.Objects)
    return seen


def titles():
    """Titles of the windows that are open in FreeCAD's middle."""
    area = FreeCADGui.getMainWindow().findChild(QtGui.QMdiArea)
    return [window.windowTitle() for window in area.subWindowList()]


def page_in_sight():
    """Whether the sheet lies within its window; TechDraw draws ten points a millimetre."""
    pump(300)
    area = FreeCADGui.getMainWindow().findChild(QtGui.QMdiArea)
    (view,) = area.activeSubWindow().findChildren(QtGui.QGraphicsView)
    sheet = view.mapFromScene(QtCore.QRectF(0, -2970, 4200, 2970)).boundingRect()
    return view.viewport().rect().contains(sheet)


def picture(name="page", widget=None):
    folder = os.environ.get("NECKFIT_PICTURES")
    if folder:
        pump(200)
        version = "".join(FreeCAD.Version()[:2])
        screen = QtGui.QGuiApplication.primaryScreen()
        shot = screen.grabWindow(0) if widget is None else widget.grab()
        shot.save(f"{folder}/shop_{name}_{version}.png")
