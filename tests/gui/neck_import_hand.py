"""Hands on the import panel: dialogs, rows and faces by real events, and what is left of them."""

import lzma
import os
from pathlib import Path

import FreeCADGui
from commands_hand import answering, docks_text, file_of, push
from fit_panel_hand import click, mouse, pump, until
from PySide import QtCore
from whole_digest import differences, digest

FOLDER = Path(os.environ["NECKFIT_ANSWER"]).parent
FILES = Path(__file__).resolve().parents[1] / "necks" / "files"
held = {}


def hold_panels():
    """Keep each panel that is opened, and each sentence that a dialog would say."""
    from freecad_neckfit.gui import report
    from freecad_neckfit.gui.panels import neck_import

    def opened(*arguments):
        held["panel"] = held["open"](*arguments)
        return held["panel"]

    held["open"], neck_import.open_panel = neck_import.open_panel, opened
    held["dialogs"] = []
    report.show_sentence = lambda title, sentence: held["dialogs"].append(f"{title}: {sentence}")


def chosen(name):
    """Press the button and name a file in the dialog, as a designer does."""
    packed = FILES / name
    file = FOLDER / name.removesuffix(".xz")
    data = packed.read_bytes()
    file.write_bytes(lzma.decompress(data) if packed.suffix == ".xz" else data)
    return named(file)


def named(file):
    """The same with a file that lies there."""
    held["panel"] = None
    done = answering(file_of(file))
    push("NeckFit_ImportNeck")
    assert until(lambda: done), "no dialog asked for a file"
    pump(300)
    return held["panel"]


def recorded():
    """The line by which a macro would import the neck again."""
    lines = docks_text("Python console").splitlines()
    (*_, last) = [line for line in lines if ".import_neck(" in line]
    return last.removeprefix(">>> ")


def findings(document):
    from freecad_neckfit.features.run_check import findings_of

    return {f["id"]: f["state"] for f in findings_of(document.Check)}


def state(document):
    shown = FreeCADGui.getDocument(document.Name)
    return {
        "digest": digest(document), "undo": list(document.UndoNames), "drawn": drawn(document),
        "modified": bool(shown.Modified),
    }  # fmt: skip


def changed(before, document):
    now = state(document)
    found = differences(before["digest"], now["digest"])
    return found + [name for name in ("undo", "modified") if before[name] != now[name]]


def drawn(document):
    """Objects whose nodes the view draws."""
    return sorted(
        o.Name for o in document.Objects
        if getattr(o.ViewObject, "SwitchNode", None) is not None
        and o.ViewObject.SwitchNode.whichChild.getValue() != -1
    )  # fmt: skip


def nodes(document):
    return FreeCADGui.getDocument(document.Name).ActiveView.getSceneGraph().getNumChildren()


def seen(document):
    camera = FreeCADGui.getDocument(document.Name).ActiveView.getCameraNode()
    kept = [*camera.position.getValue().getValue(), *camera.orientation.getValue().getValue()]
    return [round(a, 4) for a in (*kept, camera.height.getValue())]


def is_open():
    return bool(FreeCADGui.Control.activeDialog())


def rows(panel):
    return {r.id: [r.value, r.standing.name] for r in panel.form.list.rows()}


def detail(panel):
    return panel.form.detail.text()


def item_of(panel, row):
    """A row of the list and where it is in its viewport."""
    for item in panel.form.list.items():
        if item.data(0, QtCore.Qt.UserRole + 1).id == row:
            panel.form.list.scrollToItem(item)
            pump(50)
            return panel.form.list.visualItemRect(item)
    raise LookupError(row)


def choose(panel, row):
    """Click a row."""
    area = item_of(panel, row)
    at = QtCore.QPoint(area.left() + 30, area.center().y())
    click(panel.form.list.viewport(), at)
    assert panel.form.row.id == row, (row, panel.form.row)
    pump(150)


def pointed(panel, row):
    """What lights up while the mouse is over a row, and once it left."""
    area = item_of(panel, row)
    at = QtCore.QPoint(area.left() + 30, area.center().y())
    here = panel.form.list.viewport()
    mouse(here, QtCore.QEvent.MouseMove, at, button=QtCore.Qt.NoButton, held=QtCore.Qt.NoButton)
    pump(100)
    lit = sorted(panel.scene.lit) == sorted(panel.session.faces("heel sides"))
    QtCore.QCoreApplication.sendEvent(here, QtCore.QEvent(QtCore.QEvent.Leave))
    pump(50)
    return lit, list(panel.scene.lit)


def pixel_of(panel, patch):
    """The view's widget, and a point of it where a patch is the nearest thing."""
    scene, view = panel.scene, panel.scene.view
    area = view.graphicsView().viewport()
    ratio = view.getSize()[0] / area.width()
    triangles = scene.patches.triangles_of([patch])
    for x, y, _ in scene.sight.pixels(triangles.mean(axis=1)):
        if scene.hit_at((round(x), round(y))) == patch:
            return area, QtCore.QPoint(round(x / ratio), round(area.height() - y / ratio))
    raise AssertionError(f"patch {patch} is not to be seen")


def press_at(at):
    """Press and release the button in the view, and let the neck be recognised."""
    hover(at)
    click(*at)
    pump(300)


def hover(at):
    """Bring the mouse there."""
    area, point = at
    mouse(area, QtCore.QEvent.MouseMove, point, button=QtCore.Qt.NoButton, held=QtCore.Qt.NoButton)
    pump(100)


def drag_view(panel):
    """The designer turns the view by the middle button's drag; no face is picked by it."""
    panel.scene.view.viewRear()
    pump(100)
