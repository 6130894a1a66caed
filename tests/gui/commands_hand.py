"""Hands on FreeCAD's window: toolbar buttons, the property editor, dialogs, all by real events."""

import FreeCAD
import FreeCADGui
from fit_panel_hand import click, key, pump, until
from PySide import QtCore, QtGui


def window():
    return FreeCADGui.getMainWindow()


def make_ready():
    """The workbench chosen, nothing that glides, room for the view and the property editor."""
    settings = FreeCAD.ParamGet("User parameter:BaseApp/Preferences/View")
    settings.SetBool("UseNavigationAnimations", False)
    FreeCADGui.activateWorkbench("NeckFitWorkbench")
    window().resize(1270, 790)
    for dock in window().findChildren(QtGui.QDockWidget):
        dock.setVisible(bool(_editors(dock)))
    pump(200)


def action(name):
    (found,) = FreeCADGui.Command.get(name).getAction()
    return found


def button(name):
    """The visible toolbar button of a command."""
    wanted = action(name)
    for found in window().findChildren(QtGui.QToolButton):
        if found.defaultAction() is wanted and found.isVisible():
            return found
    raise LookupError(name)


def push(name):
    """Click a toolbar button."""
    settle()
    found = button(name)
    assert found.isEnabled(), name
    click(found)
    settle()


def settle():
    """FreeCAD greys commands now and then only: wait for that."""
    pump(50)
    FreeCADGui.updateGui()
    for known in FreeCADGui.listCommands():
        if known.startswith("NeckFit_"):
            _test_active(known)
    pump(50)


def _test_active(name):
    command = FreeCADGui.Command.get(name)
    for found in command.getAction():
        found.setEnabled(command.isActive())


def enabled():
    settle()
    names = [n for n in FreeCADGui.listCommands() if n.startswith("NeckFit_")]
    return sorted(n for n in names if action(n).isEnabled())


def _editors(root):
    return [
        v
        for v in root.findChildren(QtGui.QTreeView)
        if v.metaObject().className() == "Gui::PropertyEditor::PropertyEditor"
    ]


def type_in_editor(obj, name, text):
    """Type a value into FreeCAD's property editor, as a designer does."""
    FreeCADGui.Selection.clearSelection()
    FreeCADGui.Selection.addSelection(obj.Document.Name, obj.Name)
    assert until(lambda: _row(name) is not None), f"no {name} in the property editor"
    editor, index = _row(name)
    editor.scrollTo(index)
    pump(100)
    click(editor.viewport(), editor.visualRect(index).center())
    assert until(lambda: _fields(editor)), f"{name} cannot be edited"
    field = _fields(editor)[-1]
    # The keyboard belongs to the spin box, which hands keys on to the field within it.
    box = field.parentWidget()
    box = box if isinstance(box, QtGui.QAbstractSpinBox) else field
    box.setFocus()
    field.selectAll()
    for letter in text:
        key(box, 0, letter)
    pump(50)
    key(box, QtCore.Qt.Key_Return, "\r", releases=False)
    pump(50)
    FreeCADGui.Selection.clearSelection()
    pump(300)


def shown_in_editor(obj, name):
    FreeCADGui.Selection.clearSelection()
    FreeCADGui.Selection.addSelection(obj.Document.Name, obj.Name)
    assert until(lambda: _row(name) is not None)
    _, index = _row(name)
    text = index.data()
    FreeCADGui.Selection.clearSelection()
    pump(200)
    return str(text)


def _row(name):
    for editor in _editors(window()):
        if not editor.isVisible():
            continue
        model = editor.model()
        for i in range(model.rowCount()):
            group = model.index(i, 0)
            for j in range(model.rowCount(group)):
                if str(model.index(j, 0, group).data()).replace(" ", "") == name:
                    return editor, model.index(j, 1, group)
    return None


def _fields(editor):
    return [f for f in editor.viewport().findChildren(QtGui.QLineEdit) if f.isVisible()]


def answering(answer):
    """When the next dialog opens, let ``answer`` do with it; gives a list that takes its result."""
    told, timer = [], QtCore.QTimer()
    timer.setInterval(50)

    def look():
        box = QtGui.QApplication.activeModalWidget()
        if box is not None and box.isVisible():
            timer.stop()
            told.append(answer(box))

    timer.timeout.connect(look)
    timer.start()
    told_of[id(told)] = timer  # held, or Python ends it
    return told


told_of = {}


def run(name):
    FreeCADGui.runCommand(name)
    pump(100)


def read_and_close(box):
    text = box.text()
    box.close()
    return text


def file_of(path):
    """Name a file in a file dialog and confirm."""

    def answer(box):
        field = box.findChild(QtGui.QLineEdit)
        field.setText(str(path))
        key(field, QtCore.Qt.Key_Return, "\r", releases=False)
        return type(box).__name__

    return answer


def docks_text(name):
    """What one of FreeCAD's text panels holds."""
    for kind in (QtGui.QTextEdit, QtGui.QPlainTextEdit):
        for found in window().findChildren(kind):
            if found.objectName() == name or found.windowTitle() == name:
                return found.toPlainText()
    return ""
