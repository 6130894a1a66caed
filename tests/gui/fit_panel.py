"""Run within FreeCAD's screen: a designer turns depth and angle in the Fit panel."""

import hashlib
import json

import FreeCAD
import FreeCADGui
import Part
from fit_panel_hand import (
    buttons,
    click,
    enter,
    handle,
    joint_in,
    key,
    look_at,
    mouse,
    move,
    picture,
    press,
    pressed_key,
    pump,
    release,
    until,
    window,
)
from PySide import QtCore, QtGui

DEPTH, ANGLE = "pocket.depth", "pocket.angle"


def main():
    """Seen at each stage, by the stage's name."""
    window()
    told = {"version": FreeCAD.Version()[:2]}
    document, joint = joint_in("Fitted")
    view = look_at(document)
    told["before"] = state(document)
    panel = opened(joint)
    told["opened"] = look(panel)
    told["under the panel"] = under_the_panel(panel, view)
    picture("rest")
    told["drag"] = drag(panel)
    told["cancelled by Esc"] = escaped(panel, document)
    panel = opened(joint)
    told["typed"] = typed(panel)
    told["keys"] = keys(panel)
    told["tab order"] = tab_order(panel)
    told["rows"] = rows(panel, view)
    told["picked in the view"] = picked_in_view(panel, view)
    told["filters"] = filters(panel)
    told["kept"] = kept(panel, document)
    FreeCAD.closeDocument(document.Name)
    return told


def opened(joint):
    from freecad_neckfit.gui.panels.fit import open_panel

    panel = open_panel(joint)
    pump(200)
    return panel


def look(panel):
    """What the panel, the labels and the document say."""
    scene = panel.session.check.ViewObject.Proxy.scene
    form = panel.form
    return {
        "verdict": form.headline.answer.text(),
        "why": form.headline.why.text(),
        "by": form.headline.by.text(),
        "notice": form.notice.text() if form.notice.isVisible() else "",
        "rows": {row.id: [row.note.state.value, row.text] for row in form.list.rows},
        "order": [row.id for row in form.list.rows],
        "waits": [row.id for row in form.list.rows if row.waits],
        "details": form.details.toPlainText(),
        "labels": {name: label.text for name, label in scene.labels().items()},
        "colours": {name: label.colour for name, label in scene.labels().items()},
        "headline": scene.head.text,
        "clash": len(scene.clash.corners),
        "value": form.knobs[DEPTH].value,
        "box": form.knobs[DEPTH].box.text(),
        "document": panel.session.joint.Pocket.Depth.Value,
        "neck": neck_height(panel.session.joint),
        "finding": {f["id"]: f["value"] for f in panel.session.findings()},
        "solids": {f["id"]: f["solids"] is not None for f in panel.session.findings()},
        "stale": bool(panel.session.check.Stale),
    }


def under_the_panel(panel, view):
    """Labels that the panel lies over, and how many are shown; the panel may be over the view."""
    area, over = view.graphicsView().viewport(), panel.form
    while over.parentWidget() is not None and over.parentWidget() is not over.window():
        over = over.parentWidget()
    ratio = view.getSize()[0] / area.width()
    corner = area.mapFromGlobal(over.mapToGlobal(QtCore.QPoint(0, 0)))
    cover = QtCore.QRect(corner, over.size())
    shown, under = 0, []
    for name, label in panel.session.check.ViewObject.Proxy.scene.labels().items():
        box = label.box
        place = QtCore.QRect(
            round(box.x / ratio), round(area.height() - box.top / ratio),
            round(box.width / ratio), round(box.height / ratio),
        )  # fmt: skip
        shown += label.is_shown
        if label.is_shown and place.intersects(cover):
            under.append(name)
    return {"labels": under, "shown": shown, "over the view": cover.intersects(area.rect())}


def neck_height(joint):
    """Where the view draws the neck, in Z."""
    from freecad_neckfit.gui.panels.fit_neck import NeckInView

    (_, node), *_ = NeckInView(joint)._drawn()
    return node.translation.getValue()[2]


def drag(panel):
    """Press the slider's handle, pull it, look, and release it."""
    slider = panel.form.knobs[DEPTH].slider
    at = handle(slider)
    seen = {}
    press(slider, at)
    for step in range(30):
        at.setX(at.x() + 1)
        move(slider, at)
        pump(15)
        if step == 14:
            seen["half way"] = look(panel)
    seen["before release"] = look(panel)
    picture("drag")
    release(slider, at)
    pump(150)
    seen["released"] = look(panel)
    picture("released")
    return seen


def escaped(panel, document):
    """Escape, with the keyboard on the slider."""
    slider = panel.form.knobs[DEPTH].slider
    slider.setFocus()
    key(slider, QtCore.Qt.Key_Escape, releases=False)
    gone = until(lambda: not FreeCADGui.Control.activeDialog())
    pump(100)
    undo = list(document.UndoNames)
    return {"gone": gone, "state": state(document), "undo": undo, "touched": marked(document)}


def typed(panel):
    """Entries in the field, good and bad."""
    seen = {}
    box = panel.form.knobs[DEPTH].box
    for text in ("5/8 in", "1 1/4in", "17.5", "99", "abc", "12,5", "44.5"):
        enter(box, text)
        seen[text] = look(panel)
    enter(box, "16.2")
    angle = panel.form.knobs[ANGLE].box
    enter(angle, "0.5°")
    seen["angle"] = panel.session.joint.Pocket.Angle.Value
    enter(angle, "7")
    seen["angle refused"] = [panel.form.notice.text(), angle.text()]
    return seen


def keys(panel):
    """Arrow keys on the slider: closed forms at once, solids when the keys rest."""
    slider = panel.form.knobs[DEPTH].slider
    slider.setFocus()
    before = panel.form.knobs[DEPTH].value
    pressed_key(QtCore.Qt.Key_Right)
    at_once = look(panel)
    settled = until(lambda: panel.session.joint.Pocket.Depth.Value != before, 3000)
    pump(600)
    stays = QtGui.QApplication.focusWidget() is slider
    return {
        "before": before, "at once": at_once, "settled": settled, "after": look(panel),
        "focus stays": stays,
    }  # fmt: skip


def tab_order(panel):
    """Where Tab leads, from the first field on."""
    form = panel.form
    known = {form.filter: "filter", form.list: "list", form.details: "details"}
    for name, knob in form.knobs.items():
        known |= {knob.box: f"{name} box", knob.slider: f"{name} slider"}
    form.knobs[DEPTH].box.setFocus()
    found = []
    for _ in range(len(known)):
        pump(20)
        now = QtGui.QApplication.focusWidget()
        found.append(known.get(now, f"elsewhere: {type(now).__name__} {now.objectName()}"))
        key(QtGui.QApplication.focusWidget(), QtCore.Qt.Key_Tab, "\t")
    return found


def rows(panel, view):
    """Choose a row by the mouse and another by the keyboard."""
    enter(panel.form.knobs[DEPTH].box, "17")
    camera = view.getCameraNode()
    camera.height = 260
    findings = panel.form.list
    place = [row.id for row in findings.rows].index("overhang.gap")
    area = findings.visualRect(findings.model().index(place))
    click(findings.viewport(), area.center())
    flown = until(lambda: not panel._flight.is_under_way)
    pump(100)
    scene = panel.session.check.ViewObject.Proxy.scene
    where = next(row for row in findings.rows if row.id == "overhang.gap").note.place
    seen = {
        "flown": flown,
        "height": camera.height.getValue(),
        "on screen": list(view.getPointOnScreen(*where)),
        "size": list(view.getSize()),
        "picked": sorted(scene.picked),
        "selection": selection(panel),
        "details": panel.form.details.toPlainText(),
    }
    picture("chosen")
    findings.setFocus()
    for step, name in ((1, "next"), (2, "the one after")):
        pressed_key(QtCore.Qt.Key_Down)
        pump(600)  # for whoever would take the keyboard away meanwhile
        seen[name] = [findings.rows[place + step].id, sorted(scene.picked), findings.current]
    return seen


def selection(panel):
    name = panel.session.document.Name
    return [s for o in FreeCADGui.Selection.getSelectionEx(name) for s in o.SubElementNames]


def picked_in_view(panel, view):
    """Click a label in the 3D view, with the mouse."""
    panel._flight.stop()
    FreeCADGui.Selection.clearSelection()
    pump(100)
    scene = panel.session.check.ViewObject.Proxy.scene
    label = scene.labels()["overhang.corner_gap"]
    x, y = int(label.box.x + 12), int(label.box.y + 12)
    here = view.getObjectInfo((x, y)) or {}
    # The view counts device pixels from below, its widget points of the desktop from above.
    area = view.graphicsView().viewport()
    ratio = view.getSize()[0] / area.width()
    at = QtCore.QPoint(round(x / ratio), round(area.height() - y / ratio))
    mouse(area, QtCore.QEvent.MouseMove, at, button=QtCore.Qt.NoButton, held=QtCore.Qt.NoButton)
    pump(100)
    click(area, at)
    pump(200)
    return {
        "under the mouse": here.get("Component"),
        "selection": selection(panel),
        "row": panel.form.list.current,
        "is selected": panel.form.list.currentIndex().data(),
        "details": panel.form.details.toPlainText(),
    }


def filters(panel):
    """What each kind of findings lists."""
    combo, seen = panel.form.filter, {}
    combo.setFocus()
    key(combo, QtCore.Qt.Key_Home)
    for _ in range(combo.count()):
        pump(30)
        seen[combo.currentText()] = [row.note.state.value for row in panel.form.list.rows]
        key(combo, QtCore.Qt.Key_Down)
    key(combo, QtCore.Qt.Key_Home)
    return seen


def kept(panel, document):
    """OK, one undo, one redo."""
    ok, _ = buttons(panel)
    seen = {"changed": state(document), "value": panel.session.joint.Pocket.Depth.Value}
    undo_before = len(document.UndoNames)
    click(ok)
    pump(100)
    seen["gone"] = not FreeCADGui.Control.activeDialog()
    seen["after OK"] = state(document)
    seen["steps"] = [undo_before, list(document.UndoNames)]
    FreeCADGui.runCommand("Std_Undo")
    pump(100)
    seen["undone"] = state(document)
    seen["marked once undone"] = marked(document)
    FreeCADGui.runCommand("Std_Redo")
    pump(100)
    seen["redone"] = state(document)
    seen["marked once redone"] = marked(document)
    return seen


def marked(document):
    """What bears the mark that FreeCAD shows in the tree."""
    return [o.Label for o in document.Objects if "Touched" in o.State]


def state(document):
    """Digest of every property, shape and visibility, and of what all labels show."""
    found = {}
    for obj in document.Objects:
        found[obj.Name] = {
            name: plain(getattr(obj, name)) for name in sorted(obj.PropertiesList)
        } | {"visible": obj.ViewObject.Visibility, "expressions": str(obj.ExpressionEngine)}
        scene = getattr(obj.ViewObject.Proxy, "scene", None)
        if scene is not None:
            found[obj.Name]["scene"] = {
                name: [label.text, label.colour] for name, label in scene.labels().items()
            }
    text = json.dumps(found, sort_keys=True, default=str)
    return hashlib.sha256(text.encode()).hexdigest() + f" {len(found)}"


def plain(value):
    """A property's value as text that tells equal from unequal."""
    if isinstance(value, Part.Shape):
        if value.isNull():
            return "no shape"
        box, middle = value.BoundBox, [v.Point for v in value.Vertexes]
        numbers = [value.Area, box.XMin, box.XMax, box.ZMin, box.ZMax]
        numbers += [sum(p[i] for p in middle) for i in range(3)]
        return [round(n, 6) for n in numbers]
    if hasattr(value, "Matrix"):
        return [round(a, 9) for a in value.toMatrix().A]
    return getattr(value, "Name", None) or str(value)
