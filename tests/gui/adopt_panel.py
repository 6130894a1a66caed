"""Run within FreeCAD's screen: a designer adopts a nested body by picking on it."""

import sys
from pathlib import Path

import FreeCAD
import FreeCADGui
from fit_panel_hand import buttons, click, picture, pump, window
from PySide import QtCore, QtGui

sys.path.insert(0, str(Path(__file__).resolve().parents[2]))


def main():
    """Seen at each stage, by the stage's name."""
    from tests.features import designs

    window()
    FreeCADGui.activateWorkbench("PartWorkbench")
    from freecad_neckfit.gui import report
    from freecad_neckfit.gui.commands import ALL
    from freecad_neckfit.gui.commands.command import register

    for command in ALL:
        register(command)
    dialogs = []
    report.show_sentence = lambda title, sentence: dialogs.append(f"{title}: {sentence}")
    document = FreeCAD.newDocument("Adopted")
    document.UndoMode = 1
    solid, line = designs.pocketed(document)
    designs.turn(solid, line)
    designs.nest(document, solid, line)
    document.recompute()
    FreeCADGui.SendMsgToActiveView("ViewFit")
    before = designs.history(document)
    names = [o.Name for o in document.Objects]
    told = {"undo before": len(document.UndoNames), "dialogs": dialogs}

    FreeCADGui.runCommand("NeckFit_Adopt", 0)
    pump()
    assert not dialogs, dialogs
    told["waits first"] = waiting()
    told["says first"] = notice()
    told["ways"] = ways()
    pick("Inner.Middle.Edge1")
    told["no face"] = notice()
    top = designs.top_name(solid)
    pick(f"Inner.{solid.Name}.Routed.{top}")
    told["says second"] = notice()
    told["top"] = {r: row(r).text() for r in ("solid", "top", "centreline")}
    told["waits second"] = waiting()
    pick("Inner.Middle.Edge1")
    told["without pocket"] = notice(), arrows()
    click(box("NeckFitAdoptPocket"), hit(box("NeckFitAdoptPocket")))
    told["with pocket"] = notice(), arrows()
    told["waits for nothing"] = waiting()
    told["after a click too many"] = clicked_once_more(f"Inner.{solid.Name}.Routed.{top}")
    picture("adopt")
    told["untouched while picking"] = changed(before, designs.history(document))
    told["objects while picking"] = [o.Name for o in document.Objects] == names

    click(buttons(None)[1])
    pump(200)
    told["cancelled"] = {
        "marked": [o.Label for o in document.Objects if "Touched" in o.State],
        "open": bool(FreeCADGui.Control.activeDialog()),
        "objects": [o.Name for o in document.Objects] == names,
        "undo": len(document.UndoNames),
        "arrows": arrows(),
        "visible": solid.Visibility,
    }

    FreeCADGui.Selection.clearSelection()
    FreeCADGui.runCommand("NeckFit_Adopt", 0)
    pump()
    pick(f"Inner.{solid.Name}.Routed.{top}")
    pick("Inner.Middle.Edge1")
    click(buttons(None)[0])
    told["refused"] = notice(), bool(FreeCADGui.Control.activeDialog()), len(document.UndoNames)
    click(box("NeckFitAdoptPocket"), hit(box("NeckFitAdoptPocket")))
    click(buttons(None)[0])
    pump(300)
    joint = document.Joint
    told["accepted"] = {
        "open": bool(FreeCADGui.Control.activeDialog()),
        "adopts": document.Body.Adopted.Name if document.Body.Adopted else None,
        "depth": joint.Pocket.Depth.Value,
        "valid": joint.isValid(),
        "undo": len(document.UndoNames) - told["undo before"],
        "visible": solid.ViewObject.Visibility,
        "arrows": arrows(),
        "history": changed(before, designs.history(document)),
    }
    FreeCADGui.Selection.clearSelection()
    FreeCADGui.runCommand("NeckFit_LetGo", 0)
    pump()
    told["let go"] = {
        "adopts": document.Body.Adopted,
        "depth": joint.Pocket.Depth.Value,
        "valid": joint.isValid(),
        "undo": document.UndoNames[0],
        "visible": solid.ViewObject.Visibility,
        "possible again": FreeCADGui.Command.get("NeckFit_LetGo").isActive(),
    }
    FreeCADGui.runCommand("Std_Undo", 0)
    pump()
    told["marked after one step"] = [o.Label for o in document.Objects if "Touched" in o.State]
    told["taken back"] = document.Body.Adopted.Name, solid.ViewObject.Visibility
    FreeCADGui.runCommand("Std_Undo", 0)
    pump()
    told["marked"] = [o.Label for o in document.Objects if "Touched" in o.State]
    told["undone"] = [o.Name for o in document.Objects] == names, solid.Visibility
    return told


def changed(before, after):
    """Which properties of the designer's objects are no longer what they were."""
    return [
        f"{name}.{key}: {held[key]} -> {after.get(name, {}).get(key)}"[:300]
        for name, held in before.items()
        for key in held
        if after.get(name, {}).get(key) != held[key]
    ]


def pick(sub):
    """What a click in the view tells FreeCAD: the outermost object and the way down."""
    FreeCADGui.Selection.clearSelection()
    FreeCADGui.Selection.addSelection("Adopted", "Outer", sub)
    pump()


def ways():
    """What is asked for as each role, and with figures typed instead of picks."""
    roles, seen = box("NeckFitAdoptRole"), {}
    for at in (1, 2, 0):
        roles.setCurrentIndex(at)
        pump()
        seen[roles.currentText()] = notice(), waiting()
    typed = box("NeckFitAdoptType")
    click(typed, hit(typed))
    seen["by figures"] = notice(), waiting()
    click(typed, hit(typed))
    pick_floor = box("NeckFitAdoptPick_floor")
    click(pick_floor)
    seen["floor armed"] = notice(), waiting()
    click(box("NeckFitAdoptPick_top"))
    seen["words"] = box("NeckFitAdoptTurn").text(), typed.text()
    return seen


def clicked_once_more(sub):
    before = {r: row(r).text() for r in ("solid", "top", "centreline")}
    pick(sub)
    return before == {r: row(r).text() for r in ("solid", "top", "centreline")}


def row(name):
    return box(f"NeckFitAdopt_{name}")


def waiting():
    rows = ("solid", "top", "centreline", "floor", "system")
    return [r for r in rows if box(f"NeckFitAdoptPick_{r}").isChecked()]


def notice():
    return box("NeckFitAdoptNotice").text()


def box(name):
    return FreeCADGui.getMainWindow().findChild(QtGui.QWidget, name)


def hit(check_box):
    """A check box answers on its square and its words, not in the empty middle of a wide one."""
    return QtCore.QPoint(8, check_box.height() // 2)


def arrows():
    """Origin of the frame that is drawn; None without one."""
    from pivy import coin

    graph = FreeCADGui.ActiveDocument.ActiveView.getSceneGraph()
    for i in range(graph.getNumChildren()):
        child = graph.getChild(i)
        if not child.isOfType(coin.SoAnnotation.getClassTypeId()):
            continue
        if child.getNumChildren() != 4:
            continue
        return [round(a, 6) for a in child.getChild(0).translation.getValue()]
    return None
