"""What goes wrong is told in one sentence in a dialog, with the detail in the report view."""

from __future__ import annotations

import traceback

import FreeCAD
import FreeCADGui

from ..job.errors import NeckFitError
from .sentences import say
from .translate import tr


def tell(message: str) -> None:
    """One line in the report view, for what needs no answer."""
    FreeCAD.Console.PrintMessage(f"NeckFit: {message}\n")


def tell_failure(title: str, error: BaseException) -> None:
    """Say in a dialog what went wrong; nothing of the command named ``title`` is left.

    What this program refuses explains itself. Anything else is a fault of the program: the dialog
    says so, and the report view has where it happened.
    """
    if isinstance(error, NeckFitError):
        FreeCAD.Console.PrintError(f"NeckFit: {title}: {error}\n")
        show_sentence(title, str(error))
        return
    lines = "".join(traceback.format_exception(type(error), error, error.__traceback__))
    FreeCAD.Console.PrintError(f"NeckFit: {title}\n{lines}\n")
    first = (str(error).strip().splitlines() or [""])[0]
    what = f"{type(error).__name__}: {first}" if first else type(error).__name__
    show_sentence(
        title,
        tr(
            "NeckFit has a fault and could not do this ({}). The document is as it was before; the "
            "report view has the details."
        ).format(what),
    )


def told_in_panel(error: BaseException) -> str:
    """The sentence for what nobody foresaw, where a panel stays open; the report view has more."""
    lines = "".join(traceback.format_exception(type(error), error, error.__traceback__))
    FreeCAD.Console.PrintError(f"NeckFit: {lines}\n")
    return tr("This went wrong within NeckFit: {}. The report view has the detail.").format(error)


def show_sentence(title: str, sentence: str) -> None:
    """A dialog with one sentence and one button."""
    from PySide import QtGui

    box = QtGui.QMessageBox(FreeCADGui.getMainWindow())
    box.setObjectName("NeckFitSentence")
    box.setIcon(QtGui.QMessageBox.Warning)
    box.setWindowTitle(f"NeckFit: {title}")
    box.setText(say(sentence))
    box.exec_()
