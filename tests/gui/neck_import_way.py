"""Run within FreeCAD's screen: a designer imports necks from files, by dialogs and by the mouse."""

import sys
from pathlib import Path

import FreeCAD
import FreeCADGui
from commands_hand import make_ready, push
from fit_panel_hand import buttons, click, enter, key, picture, pump, until
from neck_import_hand import (
    FOLDER,
    changed,
    choose,
    chosen,
    detail,
    drag_view,
    drawn,
    findings,
    held,
    hold_panels,
    hover,
    is_open,
    named,
    nodes,
    pixel_of,
    pointed,
    press_at,
    recorded,
    rows,
    seen,
    state,
)
from PySide import QtCore, QtGui
from whole_digest import differences, digest

sys.path.insert(0, str(Path(__file__).resolve().parents[1] / "solids"))


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
    told["chosen"] = chosen_by_hand(panel)
    told["untouched"] = differences(before, digest(document)) == []
    click(buttons(panel)[0])
    assert until(lambda: not is_open(), 30000), panel.form.notice.text()
    pump(300)
    picture("import_taken")
    told["accepted"] = {
        "steps": [n for n in document.UndoNames if n not in names],
        "count": len(document.UndoNames) - len(names),
        "adopts": document.Neck.Adopted.Label, "width": document.Neck.HeelWidthEnd.Value,
        "rod": str(document.Neck.Rod), "left": bool(document.Neck.StringsLeftHanded),
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


def chosen_by_hand(panel):
    """What the file cannot show and nobody can type: chosen from a list, by keys."""
    form, told = panel.form, {}
    for row, times in (("neck.rod", 1), ("strings.left_handed", 1)):
        choose(panel, row)
        box = form.choice
        told[row] = {
            "detail": detail(panel), "offered": [box.itemText(n) for n in range(box.count())],
            "first": box.currentText(), "can": box.isVisible() and box.isEnabled(),
            "field": form.value.isVisible(),
        }  # fmt: skip
        box.setFocus()
        code = QtCore.Qt.Key_Up if box.currentIndex() else QtCore.Qt.Key_Down
        for _ in range(times):
            key(box, code)
        pump(200)
        told[row]["after"] = rows(panel)[row], form.choice.currentText()
    choose(panel, "neck.fret_height" if "neck.fret_height" in rows(panel) else "neck.scale")
    told["field again"] = form.value.isVisible(), form.choice.isVisible()
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
