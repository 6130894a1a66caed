"""What is on the screen follows FreeCAD's language when it is switched.

FreeCAD tells its own menus; Qt tells each widget. What this program shows is told anew here: words
that stand in widgets as they were told, and whatever a panel makes of them itself.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator
from functools import partial
from typing import Any

from PySide import QtCore, QtGui

from .sentences import say
from .translate import source_of

Retell = Callable[[], object]
TEXTS = (
    "text",
    "title",
    "windowTitle",
    "toolTip",
    "statusTip",
    "placeholderText",
    "accessibleName",
)
"""Qt's properties that hold words."""
TYPED = (QtGui.QLineEdit, QtGui.QAbstractSpinBox)
"""Widgets whose text is the designer's own."""


class Ear(QtGui.QWidget):
    """An invisible child of a widget, which hears with it that the language was switched."""

    def __init__(self, widget: Any, retell: Retell) -> None:
        super().__init__(widget)
        self._timer = QtCore.QTimer(self)
        self._timer.setSingleShot(True)  # Qt's way
        self._timer.setInterval(0)
        self._timer.timeout.connect(retell)
        self.hide()

    def changeEvent(self, event: Any) -> None:  # noqa: N802 (Qt's name)
        """One switch comes as several of these, and before all words are there."""
        if event.type() == QtCore.QEvent.LanguageChange:
            self._timer.start()
        super().changeEvent(event)


def hear(widget: Any, retell: Retell) -> None:
    """Call ``retell`` whenever the language was switched, as long as the widget lives."""
    Ear(widget, retell)


def follow(widget: Any, retell: Retell = lambda: None) -> None:
    """Have a widget and all in it follow the language as long as it lives.

    Words that stand in it as they were told are told anew; then ``retell`` does what is left.
    """

    def both() -> None:
        retold(widget)
        retell()

    hear(widget, both)


def retold(widget: Any) -> None:
    """Tell anew what stands in a widget and in all within it."""
    for each in (widget, *widget.findChildren(QtGui.QWidget)):
        for name in TEXTS:
            if name != "text" or not isinstance(each, TYPED):
                _retell_property(each, name)
        for part in _parts(each):
            part()


def anew(told: str) -> str:
    """What was told, in the language of now."""
    return say(source_of(told))


def _retell_property(widget: Any, name: str) -> None:
    if widget.metaObject().indexOfProperty(name) < 0:
        return
    told = widget.property(name)
    if isinstance(told, str) and told and anew(told) != told:
        widget.setProperty(name, anew(told))


def _parts(widget: Any) -> Iterator[Retell]:
    """Acts that tell anew what is no property: entries and headings."""
    if isinstance(widget, QtGui.QComboBox):
        # Else it stays as wide as the words that it was first shown with.
        widget.setSizeAdjustPolicy(QtGui.QComboBox.AdjustToContents)
        for at in range(widget.count()):
            yield partial(_set, partial(widget.setItemText, at), widget.itemText(at))
    elif isinstance(widget, QtGui.QTableWidget):
        heads = [widget.horizontalHeaderItem(at) for at in range(widget.columnCount())]
        for item in filter(None, heads):
            yield partial(_set, item.setText, item.text())
            yield partial(_set, item.setToolTip, item.toolTip())
    elif isinstance(widget, QtGui.QTreeWidget):
        head = widget.headerItem()
        for at in range(widget.columnCount()):
            yield partial(_set, partial(head.setText, at), head.text(at))


def _set(put: Callable[[str], object], told: str) -> None:
    if anew(told) != told:
        put(anew(told))
