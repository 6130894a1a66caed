"""What the screen says: words in widgets, before and after a switch of the language."""

import os

import FreeCAD
import FreeCADGui
from commands_hand import pump, window
from PySide import QtCore, QtGui

PROPERTIES = ("text", "title", "windowTitle", "toolTip", "placeholderText", "accessibleName")
TYPED = (QtGui.QLineEdit, QtGui.QAbstractSpinBox)


def switched(look):
    """What ``look`` sees in English, in German, and in English again."""
    seen = [look()]
    for language in ("German", "English"):
        FreeCADGui.setLocale(language)
        pump(400)
        seen.append(look())
    return seen


class Place:
    """Something that is opened, looked at and closed."""

    def __init__(self, open_it, close_it):
        self._open, self._close = open_it, close_it

    def __enter__(self):
        self._opened = self._open()
        pump(300)
        return getattr(self._opened, "form", self._opened)

    def __exit__(self, *_):
        self._close(self._opened)
        pump(300)


def texts(widget):
    """Every text in a widget, sorted: cells that are filled anew come in another order."""
    picture(widget, widget.objectName() or type(widget).__name__)
    found = []
    # Cells that were filled anew leave their former widgets behind for a while.
    QtCore.QCoreApplication.sendPostedEvents(None, QtCore.QEvent.DeferredDelete)
    parts = [w for w in widget.findChildren(QtGui.QWidget) if w.isVisibleTo(widget)]
    for each in (widget, *parts):
        names = [n for n in PROPERTIES if each.metaObject().indexOfProperty(n) >= 0]
        if isinstance(each, TYPED):
            names = [n for n in names if n not in ("text", "placeholderText")]
        found += [str(each.property(n)) for n in names if each.property(n)]
        found += _parts(each)
    return sorted(text for text in found if any(c.isalpha() for c in text))


def _parts(each):
    """What stands in a widget beside its properties."""
    for kind, parts in PARTS.items():
        if isinstance(each, kind):
            return parts(each)
    if hasattr(each, "svg"):
        return [part.partition("<")[0].strip() for part in each.svg.split(">")]
    rows = getattr(each, "rows", None)
    return [row.text for row in rows] if isinstance(rows, list) else []


def _in_combo(box):
    return [box.itemText(n) for n in range(box.count())]


def _in_table(table):
    columns = range(table.columnCount())
    heads = [table.horizontalHeaderItem(n) for n in columns]
    cells = [table.item(row, n) for row in range(table.rowCount()) for n in columns]
    return [item.text() for item in (*heads, *cells) if item is not None]


def _in_tree(tree):
    return [text for item in _items(tree.invisibleRootItem()) for text in _columns(item)]


def _in_list(some):
    return [some.item(n).text() for n in range(some.count())]


def _in_text(text):
    return text.toPlainText().splitlines()


PARTS = {
    QtGui.QComboBox: _in_combo,
    QtGui.QTableWidget: _in_table,
    QtGui.QTreeWidget: _in_tree,
    QtGui.QListWidget: _in_list,
    QtGui.QPlainTextEdit: _in_text,
    QtGui.QTextEdit: _in_text,
}


def _items(parent):
    for n in range(parent.childCount()):
        yield parent.child(n)
        yield from _items(parent.child(n))


def _columns(item):
    columns = range(item.columnCount())
    return [t for n in columns for t in (item.text(n), *item.toolTip(n).splitlines())]


def in_editor(obj):
    """Names and tooltips that FreeCAD's property editor shows of an object."""
    FreeCADGui.Selection.clearSelection()
    pump(100)
    FreeCADGui.Selection.addSelection(obj.Document.Name, obj.Name)
    pump(600)
    found = []
    for view in window().findChildren(QtGui.QTreeView):
        if "PropertyEditor" in view.metaObject().className() and view.isVisible():
            found += _rows(view.model())
    FreeCADGui.Selection.clearSelection()
    pump(200)
    return found


def _rows(model):
    for i in range(model.rowCount()):
        group = model.index(i, 0)
        for j in range(model.rowCount(group)):
            name = model.index(j, 0, group)
            yield f"{name.data()} | {name.data(QtCore.Qt.ToolTipRole)}"


def picture(widget, name):
    """Save a picture, where the tester asks for pictures."""
    folder = os.environ.get("NECKFIT_PICTURES")
    if not folder:
        return
    pump(200)
    from freecad_neckfit.gui.sentences import language

    version = "".join(FreeCAD.Version()[:2])
    screen = QtGui.QGuiApplication.primaryScreen()
    shot = widget.grab() if widget is not window() else screen.grabWindow(0)
    shot.save(f"{folder}/{language()}_{name}_{version}.png")
