"""Run within FreeCAD's screen: a designer imports necks from files, by dialogs and by the mouse."""

import lzma
import os
import sys
from pathlib import Path

import FreeCAD
import FreeCADGui
from commands_hand import answering, docks_text, file_of, make_ready, push
from fit_panel_hand import buttons, click, enter, mouse, picture, pump, until
from PySide import QtCore, QtGui
from whole_digest import differences, digest

FOLDER = Path(os.environ["NECKFIT_ANSWER"]).parent
FILES = Path(__file__).resolve().parents[1] / "necks" / "files"
sys.path.insert(0, str(FILES.parents[1] / "solids"))
held = {}


def main():
    """Seen at each stage, by the stage's name."""
    make_ready()
    hold_panels()
    told = {"without a document": without_document()}
    push("NeckFit_Sample")
    document = FreeCAD.ActiveDocument
    document.saveAs(str(FOLDER / "joint.FCStd"))
    told["refused"] = refused(document)
    told["stopped"] = stopped(document)
    told["inches"] = inches(document)
    told["document of FreeCAD"] = from_document(document)
    told["cancelled"] = cancelled(document)
    told["asked"] = asked(document)
    told["wanted"] = wanted(document)
    told["taken"] = taken(document)
    told["reopened"] = reopened(document)
    told["mesh"] = mesh(FreeCAD.ActiveDocument)
    told["view closed"] = view_closed(FreeCAD.ActiveDocument)
    told["replayed"] = replayed()
    told["dialogs"] = held["dialogs"]
    return told


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


def without_document():
    """A new document is made for it, and goes again where the file is refused."""
    chosen("stick.step.xz")
    return {"said": held["dialogs"].pop(), "documents": len(FreeCAD.listDocuments())}


def refused(document):
    before = state(document)
    said = []
    for name in ("stick.step.xz", "cut-short.step", "no-step.step", "empty.step"):
        chosen(name)
        said.append(held["dialogs"].pop() if held["dialogs"] else "")
    return {"said": said, "changed": changed(before, document), "open": is_open()}


def stopped(document):
    """A file that takes its time: the window lives meanwhile, and its button stops the reading."""
    from freecad_neckfit.features import neck_import
    from freecad_neckfit.solids.read import apart

    before, words, alive = state(document), apart.WORDS, []
    apart.WORDS = "import time\ntime.sleep(60)\n" + words
    neck_import._last.clear()
    timer, clock = QtCore.QTimer(), QtCore.QElapsedTimer()

    def look():
        bars = [w for w in QtGui.QApplication.topLevelWidgets() if w.isVisible()
                and w.objectName() == "NeckFitReading"]  # fmt: skip
        alive.extend(bar.labelText() for bar in bars)
        if len(alive) > 10:
            timer.stop()
            (button,) = bars[0].findChildren(QtGui.QPushButton)
            click(button)

    timer.timeout.connect(look)
    timer.start(100)
    clock.start()
    panel = chosen("cylinder.step.xz")
    seconds = clock.elapsed() / 1000
    apart.WORDS = words
    return {
        "panel": panel is None, "seconds": seconds, "says": alive[-1:],
        "changed": changed(before, document), "open": is_open(),
    }  # fmt: skip


def inches(document):
    """What the list shows where the designer prefers inches."""
    from freecad_neckfit.gui import preferences

    group = preferences.group()
    group.SetString(preferences.UNITS, "inch")
    panel = chosen("bound.step.xz")
    told = rows(panel)["neck.heel_width_end"]
    head = panel.form.list.headerItem().text(2)
    click(buttons(panel)[1])
    pump(200)
    group.RemString(preferences.UNITS)
    return told, head


def from_document(document):
    """A neck that a FreeCAD document shows; the designer's own stays the active one."""
    import Part

    file = FOLDER / "made.FCStd"
    other = FreeCAD.newDocument("Made", hidden=True)
    other.addObject("Part::Feature", "Neck").Shape = Part.read(str(FOLDER / "bound.step"))
    other.saveAs(str(file))
    FreeCAD.closeDocument(other.Name)
    FreeCAD.setActiveDocument(document.Name)
    before = state(document)
    panel = named(file)
    told = {
        "width": rows(panel)["neck.heel_width_end"], "active": FreeCAD.ActiveDocument.Name,
        "documents": sorted(FreeCAD.listDocuments()) == [document.Name],
        "lit": len(panel.scene.patches) > 100,
    }  # fmt: skip
    click(buttons(panel)[1])
    pump(200)
    return told | {"changed": changed(before, document)}


def cancelled(document):
    before, camera, graph = state(document), seen(document), nodes(document)
    panel = chosen("bound.step.xz")
    while_open = changed(before, document)
    hidden = drawn(document)
    drag_view(panel)
    turned = seen(document) != camera
    choose(panel, "neck.heel_width_end")
    lit = len(panel.scene.lit)
    click(buttons(panel)[1])
    pump(200)
    return {
        "while open": while_open, "drawn while open": hidden, "lit": lit, "turned": turned,
        "changed": changed(before, document), "drawn": drawn(document) == before["drawn"],
        "camera": seen(document) == camera, "open": is_open(), "nodes": nodes(document),
        "nodes before": graph,
    }  # fmt: skip


def asked(document):
    """A neck whose heel stands beside its fretboard's centreline asks first."""
    before = state(document)
    panel = chosen("crooked-heel.step.xz")
    told = {"first": panel.form.row.id, "says": panel.form.notice.text(), "detail": detail(panel)}
    picture("import_asks")
    click(buttons(panel)[0])
    told["after OK"] = {"open": is_open(), "says": panel.form.notice.text(),
                        "changed": changed(before, document)}  # fmt: skip
    enter(panel.form.value, "3 mm")
    told["too small"] = panel.form.notice.text(), rows(panel)["neck.heel_width_end"]
    enter(panel.form.value, "2 1/4 in")
    told["typed"] = rows(panel)["neck.heel_width_end"], panel.form.notice.text()
    choose(panel, "neck.heel_width_end")
    click(panel.form.accept)
    told["accepted"] = rows(panel)["neck.heel_width_end"], panel.form.notice.text()
    click(buttons(panel)[1])
    pump(200)
    told["changed"] = changed(before, document)
    return told


def wanted(document):
    """A heel whose sides lean is not found by itself: both sides are clicked."""
    from drafted_neck import drafted

    drafted(FOLDER / "bound.step", FOLDER / "leaning.step")
    before = state(document)
    panel = named(FOLDER / "leaning.step")
    told = {"says": panel.form.notice.text(), "row": panel.form.row.id, "rows": rows(panel)}
    click(buttons(panel)[0])
    told["after OK"] = {"open": is_open(), "changed": changed(before, document)}
    sides = leaning_sides(panel.scene.patches)
    told["sides"], told["after"] = len(sides), []
    for side in sides:
        panel.scene.look_at([side])
        pump(200)
        click(panel.form.pick)
        press_at(pixel_of(panel, side))
        told["after"].append(panel.form.notice.text())
    picture("import_wanted")
    told["told"] = rows(panel)
    click(buttons(panel)[1])
    pump(200)
    told["changed"] = changed(before, document)
    return told


def leaning_sides(p):
    along = abs(p.normal[:, 1]) > 0.999
    leans = along & (abs(p.normal[:, 2]) > 0.02) & (p.area > 800) & (p.low[:, 2] < 1)
    return [i for i, found in enumerate(leans) if found]


def taken(document):
    before, names = digest(document), list(document.UndoNames)
    panel = chosen("bound.step.xz")
    told = {"says": panel.form.notice.text(), "rows": rows(panel)}
    picture("import_opened")
    # The mouse over a row lights its faces up.
    told["pointed"] = pointed(panel, "neck.heel_width_mouth")
    choose(panel, "item heel sides")
    told["sides"] = sorted(panel.scene.lit) == sorted(panel.session.faces("heel sides"))
    picture("import_sides")
    choose(panel, "item heel bottom")
    picture("import_bottom")
    told |= picked_by_hand(panel)
    told["untouched"] = differences(before, digest(document)) == []
    click(buttons(panel)[0])
    assert until(lambda: not is_open(), 30000), panel.form.notice.text()
    pump(300)
    picture("import_taken")
    told["accepted"] = {
        "steps": [n for n in document.UndoNames if n not in names],
        "count": len(document.UndoNames) - len(names),
        "adopts": document.Neck.Adopted.Label, "width": document.Neck.HeelWidthEnd.Value,
        "underside": document.Neck.Underside.Value, "valid": document.Joint.isValid(),
        "findings": len(findings(document)), "stale": bool(document.Check.Stale),
        "judged on solids": findings(document)["overhang.gap"], "nodes": nodes(document),
    }  # fmt: skip
    held["line"] = recorded()
    after = digest(document)
    FreeCADGui.runCommand("Std_Undo", 0)
    pump(300)
    told["undone"] = differences(before, digest(document))
    FreeCADGui.runCommand("Std_Redo", 0)
    pump(300)
    told["redone"] = differences(after, digest(document))
    return told


def picked_by_hand(panel):
    """The binding's lower edge is clicked for the overhang's underside, and given back."""
    choose(panel, "item underside")
    told = {"found": rows(panel)["neck.underside"], "faces found": panel.scene.lit}
    (strip, *_) = panel.session.read.found.items["binding"]
    panel.scene.look_at([strip])
    pump(200)
    click(panel.form.pick)
    at = pixel_of(panel, strip)
    hover(at)
    told["under the mouse"] = panel.scene.under == strip
    picture("import_picking")
    press_at(at)
    told["picked"] = {
        "row": rows(panel)["neck.underside"], "item": rows(panel)["item underside"],
        "lit": panel.scene.lit == (strip,), "still picking": panel.form.pick.isChecked(),
        "under": panel.scene.under,
    }  # fmt: skip
    picture("import_by_hand")
    click(panel.form.back)
    told["given back"] = rows(panel)["neck.underside"], panel.scene.lit
    # A face that cannot be it is refused, and all stays as it was.
    choose(panel, "item heel bottom")
    click(panel.form.pick)
    (end, *_) = [i for i in panel.session.faces("heel end") if panel.scene.patches.area[i] > 100]
    panel.scene.look_at([end])
    pump(200)
    press_at(pixel_of(panel, end))
    told["no bottom"] = panel.form.notice.text(), rows(panel)["item heel bottom"]
    # Taken for good: the strip once more.
    choose(panel, "item underside")
    panel.scene.look_at([strip])
    pump(200)
    click(panel.form.pick)
    press_at(pixel_of(panel, strip))
    told["taken by hand"] = rows(panel)["neck.underside"]
    return told


def reopened(document):
    """What a saved document holds after it was opened again."""
    file, before = document.FileName, findings(document)
    document.save()
    FreeCAD.closeDocument(document.Name)
    document = FreeCAD.openDocument(file)
    pump(300)
    document.recompute()
    push("NeckFit_Check")
    return {
        "adopts": document.Neck.Adopted.Label,
        "underside": document.Neck.Underside.Value,
        "same": {i: s for i, s in findings(document).items() if s != before[i]},
    }


def mesh(document):
    """Of triangles there are values only; the panel says so, and faces light up all the same."""
    panel = chosen("parts.stl.xz")
    told = {"says": panel.form.notice.text()}
    choose(panel, "item heel sides")
    told["lit"] = len(panel.scene.lit)
    picture("import_mesh")
    click(buttons(panel)[0])
    assert until(lambda: not is_open(), 30000), panel.form.notice.text()
    told["adopts"] = document.Neck.Adopted is None
    told["findings"] = len(findings(document))
    return told


def recorded():
    """The line by which a macro would import the neck again."""
    lines = docks_text("Python console").splitlines()
    (*_, last) = [line for line in lines if ".import_neck(" in line]
    return last.removeprefix(">>> ")


def replayed():
    """The recorded line run on a new joint."""
    from freecad_neckfit.features.acts import new_joint

    document = FreeCAD.newDocument("Replayed")
    new_joint(document)
    FreeCADGui.addModule("freecad_neckfit.features.neck_import")
    FreeCADGui.doCommand(held["line"])
    document.recompute()
    return {
        "line": held["line"], "underside": document.Neck.Underside.Value,
        "adopts": document.Neck.Adopted.Label, "valid": document.Joint.isValid(),
    }  # fmt: skip


def view_closed(document):
    """The view that shows the neck is closed, with another one left; Cancel goes on."""
    before = drawn(document)
    views = FreeCADGui.getMainWindow().findChildren(QtGui.QMdiSubWindow)
    FreeCADGui.runCommand("Std_ViewCreate", 0)
    pump(300)
    panel = chosen("cylinder.step.xz")
    hidden = drawn(document)
    now = FreeCADGui.getMainWindow().findChildren(QtGui.QMdiSubWindow)
    for sub in now:
        if sub not in views:
            sub.close()
    pump(300)
    still = is_open()
    panel.reject()
    FreeCADGui.Control.closeDialog()
    pump(200)
    return {
        "new views": len(now) - len(views), "hidden": hidden, "still open": still,
        "back": drawn(document) == before, "open": is_open(),
    }  # fmt: skip


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
    return {r.id: [r.value, r.standing.name] for r in panel.form.rows()}


def detail(panel):
    return panel.form.detail.text()


def item_of(panel, row):
    """A row of the list and where it is in its viewport."""
    for item in panel.form._items():
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
