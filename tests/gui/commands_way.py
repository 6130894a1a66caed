"""Run within FreeCAD's screen: a designer's way through the commands, by buttons and by typing."""

import json
import os
from pathlib import Path

import FreeCAD
import FreeCADGui
from checked_joint import look
from commands_hand import (
    action,
    answering,
    docks_text,
    enabled,
    file_of,
    make_ready,
    pump,
    push,
    read_and_close,
    run,
    shown_in_editor,
    type_in_editor,
    window,
)
from fit_panel_hand import click, picture
from PySide import QtCore, QtGui
from whole_digest import differences, digest

FOLDER = Path(os.environ["NECKFIT_ANSWER"]).parent


def main():
    make_ready()
    told = {"greyed": {"no document": enabled()}, "words": words()}
    told["way"] = way()
    document = FreeCAD.ActiveDocument
    told["greyed"]["checked"] = enabled()
    told["failures"] = failures(document)
    told["next"] = walk(document)
    told["inches"] = inches(document)
    told["files"] = files(document)
    told["compared"] = compared(document)
    told["macro"] = replayed()
    told["preferences"] = preferences()
    return told


def words():
    from freecad_neckfit.gui.commands import ALL

    bars = [b for b in window().findChildren(QtGui.QToolBar) if "NeckFit" in b.windowTitle()]
    on_bars = {a.text() for bar in bars for a in bar.actions()}
    heads = [a for a in window().menuBar().actions() if a.text() == "Nec&kFit"]
    menu = heads[0].menu()
    in_menu = {a.text() for a in menu.actions()}
    return [
        {
            "name": c.name,
            "menu": action(c.name).text(),
            "tip": action(c.name).toolTip(),
            "status": action(c.name).statusTip(),
            "key": action(c.name).shortcut().toString(),
            "icon": not action(c.name).icon().isNull() and bool(c.icon),
            "reached": action(c.name).text() in on_bars & in_menu,
        }
        for c in ALL
    ]


def way():
    stages = {}
    push("NeckFit_Sample")
    document = FreeCAD.ActiveDocument
    stages["steps after the sample"] = list(document.UndoNames)
    push("NeckFit_ShowFits")
    stages["steps after a toggle"] = list(document.UndoNames)
    stages["sample"] = stage(document)
    said = []
    window().statusBar().messageChanged.connect(said.append)
    type_in_editor(document.Pocket, "Depth", "0.72 in")
    stages["typed"] = document.Pocket.Depth.Value
    stages["steps after typing"] = list(document.UndoNames)
    window().statusBar().messageChanged.disconnect(said.append)
    stages["says stale"] = said
    stages["stale"] = stage(document)
    push("NeckFit_Recheck")
    stages["deeper"] = stage(document)
    stages["says once checked"] = window().statusBar().currentMessage()
    run("Std_Undo")
    stages["check undone"] = stage(document)
    stages["says once undone"] = window().statusBar().currentMessage()
    run("Std_Undo")
    stages["says of the former depth"] = window().statusBar().currentMessage()
    stages["depth undone"] = stage(document)
    run("Std_Redo")
    run("Std_Redo")
    stages["redone"] = stage(document)
    before = digest(document)
    path = str(FOLDER / "way.FCStd")
    document.saveAs(path)
    FreeCAD.closeDocument(document.Name)
    document = FreeCAD.openDocument(path)
    pump(300)
    stages["reopened"] = stage(document)
    stages["lost"] = differences(before, digest(document))
    return stages


def stage(document):
    found = look(document.Check)
    del found["findings"]
    found["verdict"] = str(document.Check.Verdict)
    # Also those that find no room in this view.
    scene = document.Check.ViewObject.Proxy.scene
    found["all"] = {name: [label.text, label.pattern] for name, label in scene.labels().items()}
    return found


def failures(document):
    from freecad_neckfit.gui.commands.command import Command, register
    from freecad_neckfit.job.errors import BadInput

    def spoil(error):
        def act(doc, _):
            doc.Pocket.Depth = 9
            doc.addObject("App::FeaturePython", "Litter")
            doc.recompute()
            raise error

        return act

    register(Command("NeckFit_PlantedFault", "&Planted", "", spoil(ZeroDivisionError("no"))))
    register(Command("NeckFit_PlantedRefusal", "&Planted", "", spoil(BadInput("Not so deep."))))
    before, steps = digest(document), list(document.UndoNames)
    FreeCAD.Console.SetStatus("Console", "Err", False)  # the tester takes a traceback for a crash
    found = {}
    for name in ("NeckFit_PlantedFault", "NeckFit_PlantedRefusal"):
        said = answering(read_and_close)
        run(name)
        found[name] = said
    FreeCAD.Console.SetStatus("Console", "Err", True)
    return {
        "said": found,
        "changed": differences(before, digest(document)),
        "same steps": steps == list(document.UndoNames),
        "pending": document.HasPendingTransaction,
        "detail": "ZeroDivisionError: no" in docks_text("Report view"),
    }


def walk(document):
    from freecad_neckfit.gui.views.selection import selected_findings

    seen = []
    for name in ("NeckFit_Next", "NeckFit_Next", "NeckFit_Previous"):
        push(name)
        seen.append(selected_findings(document.Check))
    FreeCADGui.Selection.clearSelection()
    return {"seen": seen, "notes": [
        n.id for n in document.Check.ViewObject.Proxy.scene.shown_notes if n.place]}  # fmt: skip


def inches(document):
    units = FreeCAD.ParamGet("User parameter:BaseApp/Preferences/Units")
    units.SetInt("UserSchema", 3)
    FreeCAD.Units.setSchema(3)
    if hasattr(document, "UnitSystem"):
        names = document.getEnumerationsOfProperty("UnitSystem")
        document.UnitSystem = names[3]
    found = {}
    try:
        type_in_editor(document.Pocket, "Depth", "5/8 in")
        found["5/8 in"] = document.Pocket.Depth.Value
        found["in the editor"] = shown_in_editor(document.Pocket, "Depth")
        push("NeckFit_Check")
        labels = document.Check.ViewObject.Proxy.scene.labels()
        found["labels"] = {name: label.text for name, label in labels.items()}
    finally:
        units.SetInt("UserSchema", 0)
        FreeCAD.Units.setSchema(0)
        if hasattr(document, "UnitSystem"):
            document.UnitSystem = names[0]
    return found


def files(document):
    written = FOLDER / "written.toml"
    said = answering(file_of(written))
    run("NeckFit_WriteJob")
    before = len(document.Objects)
    FreeCAD.newDocument("Other")
    answers = [answering(file_of(written))]
    # The sample's options come along: the second dialog asks which of the joints to take.
    import commands_hand

    real = commands_hand.QtGui.QInputDialog.getItem
    commands_hand.QtGui.QInputDialog.getItem = lambda *a, **k: (a[3][0], True)
    try:
        run("NeckFit_OpenJob")
    finally:
        commands_hand.QtGui.QInputDialog.getItem = real
    other = FreeCAD.ActiveDocument
    found = {
        "dialogs": [len(said), *map(len, answers)],
        "depth": other.Pocket.Depth.Value,
        "same": len(other.Objects) + 1 == before,  # all but the check
    }
    FreeCAD.closeDocument("Other")
    FreeCAD.setActiveDocument(document.Name)
    FreeCADGui.ActiveDocument = FreeCADGui.getDocument(document.Name)
    pump(200)
    return found


def compared(document):
    push("NeckFit_Compare")
    dialog = window().findChild(QtGui.QDialog, "NeckFitCompare")
    found = {"saved": table(dialog, "NeckFitValues"), "findings": table(dialog, "NeckFitChanges")}
    dialog.findChild(QtGui.QComboBox, "NeckFitOther").setCurrentIndex(2)
    pump(100)
    found["before typing"] = dialog.heads[0].text(), dialog.heads[1].isVisible()
    found["tables before typing"] = [
        name for name in ("NeckFitValues", "NeckFitChanges")
        if dialog.findChild(QtGui.QTableWidget, name).isVisible()
    ]  # fmt: skip
    measured = dialog.findChild(QtGui.QTableWidget, "NeckFitMeasured")
    found["measures"] = [
        measured.item(r, 0).text() for r in range(measured.rowCount())
        if not measured.isRowHidden(r)
    ]  # fmt: skip
    rows = {measured.item(r, 0).text(): r for r in range(measured.rowCount())}
    measured.item(rows["pocket depth"], 2).setText("99 in")
    pump(100)
    found["refused"] = dialog.findChild(QtGui.QLabel, "NeckFitNotice").text()
    measured.item(rows["pocket depth"], 2).setText("17 mm")
    pump(100)
    found["measured"] = table(dialog, "NeckFitValues")
    found["once typed"] = dialog.heads[1].text()
    found["depth stays"] = document.Pocket.Depth.Value
    found["documents"] = sorted(FreeCAD.listDocuments())
    dialog.close()
    pump(100)
    return found


def table(dialog, name):
    rows = dialog.findChild(QtGui.QTableWidget, name)
    return [[rows.item(r, c).text() for c in range(3)] for r in range(rows.rowCount())]


def replayed():
    """What FreeCAD wrote down for the sample's button, run as a macro on a new document."""
    lines = [
        line.removeprefix(">>> ")
        for line in docks_text("Python console").splitlines()
        if "freecad_neckfit.features.acts" in line
    ]
    document = FreeCAD.newDocument("Replayed")
    exec("\n".join(["import FreeCAD", *lines[:2]]), {})  # noqa: S102
    found = {"lines": lines[:2], "verdict": document.Check.Verdict}
    FreeCAD.closeDocument("Replayed")
    return found


def preferences():
    from freecad_neckfit.gui import preferences as kept
    from freecad_neckfit.gui.preferences_page import PreferencesPage

    page, found = PreferencesPage(), {}
    found["first"] = [page.units.currentData(), page.palette.currentData(), page.remark.text()]
    page.units.setCurrentIndex(2)
    page.palette.setCurrentIndex(1)
    page.defaults.setText(str(FOLDER / "nowhere.toml"))
    found["refused"] = page.remark.text()
    shop = FOLDER / "shop.toml"
    shop.write_text('[limits]\ngap_min = "0.30 mm"\n[pocket]\ndepth = "16 mm"\n')
    page.defaults.setText(str(shop))
    found["remark"] = page.remark.text()
    page.saveSettings()
    check = FreeCAD.ActiveDocument.Check
    pump(200)
    labels = check.ViewObject.Proxy.scene.labels()
    found["inch"] = labels["overhang.gap"].text
    found["colours"] = sorted({tuple(round(c, 2) for c in label.colour)
                               for label in labels.values()})  # fmt: skip
    FreeCAD.newDocument("Fresh")
    push("NeckFit_New")
    fresh = FreeCAD.ActiveDocument
    found["new"] = [fresh.Pocket.Depth.Value, json.loads(json.dumps(str(fresh.Joint.Label)))]
    found["next"] = what_next(fresh)
    kept.group().Clear()
    FreeCAD.closeDocument("Fresh")
    return found


def what_next(document):
    """The small window after a new joint, its button, and that it can be spared."""
    said = next_windows()
    selected = [s.Object.Name for s in FreeCADGui.Selection.getSelectionEx(document.Name)]
    seen = {"said": [w.words.text() for w in said], "selected": selected}
    picture("next")
    click(said[0].again, QtCore.QPoint(8, said[0].again.height() // 2))
    click(said[0].check)
    pump(200)
    seen["checked"] = document.getObject("Check") is not None
    seen["closed"] = next_windows() == []
    push("NeckFit_New")
    seen["not again"] = next_windows() == []
    return seen


def next_windows():
    found = window().findChildren(QtGui.QDialog, "NeckFitNextStep")
    return [dialog for dialog in found if dialog.isVisible()]
