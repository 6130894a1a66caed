"""NeckFit's page in FreeCAD's preferences."""

from __future__ import annotations

from pathlib import Path
from typing import Any

import FreeCAD
from PySide import QtGui

from ..features.roles import role_of
from ..job.errors import BadInput
from ..job.read import read_job
from . import preferences
from .annotations.palette import choose
from .language import follow
from .sentences import say
from .translate import tr


class PreferencesPage:
    """FreeCAD builds one each time the dialog opens; ``form`` is its widget."""

    def __init__(self, _parent: Any = None) -> None:
        self.form = QtGui.QWidget()
        self.form.setWindowTitle(tr("NeckFit"))
        self.units = _combo(
            "NeckFitUnits",
            ((tr("as FreeCAD"), ""), (tr("millimetres"), "mm"), (tr("inches"), "inch")),
        )
        self.palette = _combo(
            "NeckFitPalette",
            ((tr("colours that all eyes tell apart"), "colour"), (tr("greys, for print"), "grey")),
        )
        self.defaults = QtGui.QLineEdit()
        self.defaults.setObjectName("NeckFitShopDefaults")
        self.remark = QtGui.QLabel()
        self.remark.setWordWrap(True)
        self.remark.setObjectName("NeckFitRemark")
        self.warns = QtGui.QCheckBox(tr("&Say in the status bar when a check is out of date"))
        self.warns.setObjectName("NeckFitWarnStale")
        self._lay_out()
        self.defaults.textChanged.connect(lambda _: self._look_at_defaults())
        self.loadSettings()
        follow(self.form, self._look_at_defaults)

    def loadSettings(self) -> None:  # noqa: N802 (FreeCAD's name)
        """Show what is set."""
        group = preferences.group()
        _pick(self.units, group.GetString(preferences.UNITS, ""))
        _pick(self.palette, preferences.palette())
        self.defaults.setText(preferences.shop_defaults())
        self.warns.setChecked(preferences.warns_of_stale())
        self._look_at_defaults()

    def saveSettings(self) -> None:  # noqa: N802 (FreeCAD's name)
        """Keep it, and show all findings accordingly."""
        group = preferences.group()
        group.SetString(preferences.UNITS, str(self.units.currentData()))
        group.SetString(preferences.PALETTE, str(self.palette.currentData()))
        group.SetString(preferences.DEFAULTS, self.defaults.text().strip())
        group.SetBool(preferences.WARN, self.warns.isChecked())
        apply()

    def _lay_out(self) -> None:
        browse = QtGui.QPushButton(tr("&Browse…"))
        browse.clicked.connect(lambda *_: self._browse())
        line = QtGui.QHBoxLayout()
        line.addWidget(self.defaults)
        line.addWidget(browse)
        rows = QtGui.QFormLayout(self.form)
        rows.addRow(_named(tr("&Units of findings"), self.units), self.units)
        rows.addRow(_named(tr("&Labels in the 3D view"), self.palette), self.palette)
        rows.addRow(_named(tr("Shop &defaults for new joints"), self.defaults), line)
        rows.addRow("", self.remark)
        rows.addRow("", self.warns)

    def _browse(self) -> None:
        from .ask import ask_file

        file = ask_file(tr("Shop defaults"))
        if file:
            self.defaults.setText(file)

    def _look_at_defaults(self) -> None:
        """Say at once whether the file can be used, and what it states."""
        file = self.defaults.text().strip()
        if not file:
            self.remark.setText(
                tr("A job file (TOML) with limits, woods, screws: what all your joints share.")
            )
            return
        try:
            count = len(read_job(Path(file)).base.stated)
        except BadInput as refusal:
            self.remark.setText(say(str(refusal)))
        else:
            self.remark.setText(tr("New joints take {} values from it.").format(count))


def apply() -> None:
    """Show the findings of all open documents as the preferences say."""
    choose(preferences.palette())
    for document in FreeCAD.listDocuments().values():
        for obj in document.Objects:
            view = getattr(getattr(obj, "ViewObject", None), "Proxy", None)
            if role_of(obj) == "check" and view is not None and hasattr(view, "scene"):
                view.scene.forget_looks()
                view.refresh(obj)


def _combo(name: str, rows: tuple[tuple[str, str], ...]) -> Any:
    box = QtGui.QComboBox()
    box.setObjectName(name)
    for words, value in rows:
        box.addItem(words, value)
    return box


def _pick(box: Any, value: str) -> None:
    box.setCurrentIndex(max(box.findData(value), 0))


def _named(words: str, buddy: Any) -> Any:
    label = QtGui.QLabel(words)
    label.setBuddy(buddy)
    return label
