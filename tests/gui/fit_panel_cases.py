"""Run within FreeCAD's screen: the Fit panel where a document is not the usual one."""

import FreeCAD
import FreeCADGui
from fit_panel import look, opened, state
from fit_panel_hand import (
    buttons,
    click,
    enter,
    handle,
    joint_in,
    look_at,
    move,
    picture,
    press,
    pump,
    release,
    until,
    window,
)
from PySide import QtCore, QtGui

DEPTH = "pocket.depth"


def main():
    """Each case by its name."""
    window()
    cases = (checked_before, driven, two_joints, inches, disagreeing, no_undo, shimmed, closed,
             refused_while_turning, by_ok, by_command, all_fits)  # fmt: skip
    return {case.__name__: case() for case in cases}


def all_fits():
    """A joint that fits has a list too."""
    from freecad_neckfit.features.acts import start_joint

    document = FreeCAD.newDocument("Fits")
    joint = start_joint(document)
    look_at(document)
    panel = opened(joint)
    rows = panel.form.list.rows
    seen = {
        "answer": panel.form.headline.answer.text(), "filter": panel.form.filter.currentText(),
        "rows": [[row.note.state.value, row.spare] for row in rows],
        "details": panel.form.details.toPlainText(),
    }  # fmt: skip
    picture("all_fits")
    enter(panel.form.knobs[DEPTH].box, "17.5")
    seen["deeper"] = panel.form.filter.currentText()
    seen["states deeper"] = [row.note.state.value for row in panel.form.list.rows]
    click(buttons(panel)[1])
    FreeCAD.closeDocument(document.Name)
    return seen


def checked_before():
    """Cancel brings former findings back, and what is stale stays so."""
    from freecad_neckfit.features.run_check import check

    document, joint = joint_in("Checked")
    check(joint)
    joint.Pocket.Depth = 16.0
    document.recompute()
    pump(100)
    seen = {"before": state(document), "stale before": bool(document.Check.Stale)}
    panel = opened(joint)
    seen["fresh in the panel"] = not document.Check.Stale
    enter(panel.form.knobs[DEPTH].box, "18")
    seen["changed"] = state(document)
    _, cancel = buttons(panel)
    click(cancel)
    pump(100)
    seen |= {"after": state(document), "stale after": bool(document.Check.Stale)}
    FreeCAD.closeDocument(document.Name)
    return seen


def driven():
    """A spreadsheet drives the depth."""
    document, joint = joint_in("Driven")
    sheet = document.addObject("Spreadsheet::Sheet", "Measures")
    sheet.set("A1", "16.1 mm")
    sheet.setAlias("A1", "depth")
    document.recompute()
    joint.Pocket.setExpression("Depth", "Measures.depth")
    document.recompute()
    panel = opened(joint)
    knob, other = panel.form.knobs[DEPTH], panel.form.knobs["pocket.angle"]
    seen = {
        "enabled": [knob.box.isEnabled(), knob.slider.isEnabled()],
        "angle enabled": other.slider.isEnabled(),
        "note": knob.note.text() if knob.note.isVisible() else "",
        "value": knob.value,
        "focus": QtGui.QApplication.focusWidget() is other.box,
    }
    enter(other.box, "0.3")
    seen["angle"] = joint.Pocket.Angle.Value
    seen["still driven"] = joint.Pocket.ExpressionEngine[0][1]
    click(buttons(panel)[1])
    FreeCAD.closeDocument(document.Name)
    return seen


def two_joints():
    """The selected joint is meant; without a selection the designer is asked."""
    from freecad_neckfit.features.make import make_joint
    from freecad_neckfit.gui.panels.fit import open_panel

    document, first = joint_in("Two")
    second = make_joint(document, name="Second")
    second.Pocket.Depth = 17.0
    document.recompute()
    FreeCADGui.Selection.clearSelection()
    FreeCADGui.Selection.addSelection(document.Name, second.Pocket.Name)
    panel = open_panel()
    pump(200)
    seen = {"selected": panel.session.joint.Label, "title": panel.form.windowTitle()}
    enter(panel.form.knobs[DEPTH].box, "16.5")
    seen["depths"] = [first.Pocket.Depth.Value, second.Pocket.Depth.Value]
    click(buttons(panel)[1])
    FreeCADGui.Selection.clearSelection()
    asked = []

    def answer():
        dialog = QtGui.QApplication.activeModalWidget()
        combo = dialog.findChild(QtGui.QComboBox)
        asked.extend(combo.itemText(i) for i in range(combo.count()))
        combo.setCurrentIndex(1)
        dialog.accept()

    QtCore.QTimer.singleShot(300, answer)
    panel = open_panel()
    pump(200)
    seen |= {"asked": asked, "answered": panel.session.joint.Label}
    click(buttons(panel)[1])
    FreeCAD.closeDocument(document.Name)
    return seen


def inches():
    """A designer who has set FreeCAD to inches sees and types inches."""
    units = FreeCAD.ParamGet("User parameter:BaseApp/Preferences/Units")
    before = units.GetInt("UserSchema", 0)
    units.SetInt("UserSchema", 3)
    document, joint = joint_in("Inches")
    if "UnitSystem" in document.PropertiesList:
        document.UnitSystem = document.getEnumerationsOfProperty("UnitSystem")[3]
    look_at(document)
    try:
        panel = opened(joint)
        knob = panel.form.knobs[DEPTH]
        seen = {"at first": knob.box.text(), "fraction": knob.note.text()}
        enter(knob.box, "11/16")
        seen |= {"typed": joint.Pocket.Depth.Value, "shown": knob.box.text()}
        seen |= {"fraction of it": knob.note.text(), "look": look(panel)}
        seen["short"] = {row.id: row.short for row in panel.form.list.rows}
        picture("inches")
        click(buttons(panel)[1])
    finally:
        units.SetInt("UserSchema", before)
        FreeCAD.closeDocument(document.Name)
    return seen


def disagreeing():
    """Both ways held to agree within less than nothing: the panel says that they do not."""
    from freecad_neckfit.run import judge

    document, joint = joint_in("Disagreeing")
    usual, judge.AGREE = judge.AGREE, -1.0
    try:
        panel = opened(joint)
        panel.form.list.choose("overhang.gap")
        panel.form.detail()
        seen = look(panel)
        picture("disagrees")
        click(buttons(panel)[1])
    finally:
        judge.AGREE = usual
        FreeCAD.closeDocument(document.Name)
    return seen


def no_undo():
    """Cancel takes everything back where the designer keeps no undo."""
    document, joint = joint_in("NoUndo")
    document.UndoMode = 0
    seen = {"before": state(document)}
    panel = opened(joint)
    enter(panel.form.knobs[DEPTH].box, "17")
    seen["changed"] = joint.Pocket.Depth.Value
    click(buttons(panel)[1])
    pump(100)
    seen |= {"after": state(document), "objects": [o.Name for o in document.Objects]}
    FreeCAD.closeDocument(document.Name)
    return seen


def shimmed():
    """A wedge under the heel is turned here too."""
    document, joint = joint_in("Shimmed", cover="none")
    joint.Pocket.ShimMake = "wedge"
    document.recompute()
    panel = opened(joint)
    seen = {"knobs": list(panel.form.knobs)}
    enter(panel.form.knobs["shim.wall"].box, "0.5")
    seen["wall"] = joint.Pocket.ShimWall.Value
    click(buttons(panel)[1])
    FreeCAD.closeDocument(document.Name)
    return seen


def closed():
    """Closing the document under an open panel closes the panel."""
    document, joint = joint_in("Closed")
    opened(joint)
    FreeCAD.closeDocument(document.Name)
    return {"gone": until(lambda: not FreeCADGui.Control.activeDialog())}


def refused_while_turning():
    """Turned into what cannot be built, the last good value stays."""
    document, joint = joint_in("Refused", depth=43.0)
    panel = opened(joint)
    slider = panel.form.knobs[DEPTH].slider
    at = handle(slider)
    press(slider, at)
    for _ in range(60):
        at.setX(at.x() + 1)
        move(slider, at)
        pump(5)
    seen = {"turned to": panel.form.knobs[DEPTH].value, "turning": panel.form.notice.text()}
    release(slider, at)
    pump(100)
    seen |= {"released": look(panel), "angle": joint.Pocket.Angle.Value}
    click(buttons(panel)[1])
    FreeCAD.closeDocument(document.Name)
    return seen


def by_ok():
    """An entry that is not confirmed counts when OK is pressed; one that is refused holds it."""
    document, joint = joint_in("ByOk")
    panel = opened(joint)
    box = panel.form.knobs[DEPTH].box
    write(box, "77")
    ok, _ = buttons(panel)
    click(ok)
    seen = {"held": bool(FreeCADGui.Control.activeDialog()), "notice": panel.form.notice.text()}
    write(box, "16.4")
    click(ok)
    seen |= {"gone": not FreeCADGui.Control.activeDialog(), "value": joint.Pocket.Depth.Value}
    seen |= {"undo": list(document.UndoNames), "stale": bool(document.Check.Stale)}
    FreeCAD.closeDocument(document.Name)
    return seen


def write(box, text):
    """Type over what stands in a field, and leave it at that."""
    from fit_panel_hand import key

    box.setFocus()
    box.selectAll()
    for letter in text:
        key(box, 0, letter)


def by_command():
    """A joint without a plate: no knob for it, and the command opens the panel."""
    document, joint = joint_in("ByCommand", cover="none")
    from freecad_neckfit.gui.commands.command import Shell
    from freecad_neckfit.gui.commands.fit import COMMAND

    shell = Shell(COMMAND)
    seen = {"possible": shell.IsActive()}
    shell.Activated()
    pump(200)
    seen["open"] = bool(FreeCADGui.Control.activeDialog())
    seen["possible while open"] = shell.IsActive()
    joint.Pocket.Depth = 17.0
    FreeCADGui.Control.closeDialog()
    seen["gone"] = until(lambda: not FreeCADGui.Control.activeDialog())
    pump(200)
    seen["depth"] = joint.Pocket.Depth.Value
    FreeCAD.closeDocument(document.Name)
    return seen
