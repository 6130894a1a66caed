"""The window that writes the package for the shop: where to, with which cutter, in which units."""

from __future__ import annotations

import re
from html import escape
from pathlib import Path
from typing import Any

import FreeCADGui
from PySide import QtCore, QtGui

from ...features.gather import joint_stated
from ...features.read_property import units_of
from ...features.run_check import check_of
from ...features.staleness import is_stale
from ...job.errors import BadInput
from ...job.quantity import Kind, Units, read_length
from ...job.resolve import complete
from ...run.chain import Verdict
from ...sheets.cutter import Cutter, chosen, largest_bit
from ...solids.build.pocket import pocket_plan
from .. import preferences
from ..commands.macro import call
from ..figures import entry_value, plain
from ..report import tell
from ..translate import tr
from .decide_dialog import DecideDialog, show, told

UNITS = (Units.MM, Units.INCH)


class PackageDialog(DecideDialog):
    """Stays open once the package is written, and says where it is."""

    def __init__(self, joint: Any) -> None:
        super().__init__(joint, title=tr("Package for the shop"), name="NeckFitPackage")
        self.folder, self.bit, self.bush = (QtGui.QLineEdit() for _ in range(3))
        self.folder.setText(str(first_folder(joint)))
        self.in_units = QtGui.QComboBox()
        self.in_units.addItems([tr("millimetres"), tr("inches")])
        self.in_units.setCurrentIndex(UNITS.index(units_of(joint)))
        self._shown_in = units_of(joint)
        self._exact: dict[str, float] = {}
        self.warning, self.written = QtGui.QLabel(), QtGui.QLabel()
        for field, name in (
            (self.folder, "Folder"), (self.bit, "Bit"), (self.bush, "Bush"),
            (self.in_units, "Units"), (self.warning, "Warning"), (self.written, "Written"),
        ):  # fmt: skip
            field.setObjectName(f"NeckFitPackage{name}")
        self._show_cutter(_cutter_of(joint))
        self._lay_out()
        self.in_units.currentIndexChanged.connect(lambda _: self._change_units())

    def _lay_out(self) -> None:
        self.bit.setToolTip(tr("Diameter of the router bit; the largest usual one, if left empty."))
        self.bush.setToolTip(tr("Outer diameter of the guide bush that leads the bit, if any."))
        self.bush.setPlaceholderText(tr("none: the bit has a bearing"))
        browse = QtGui.QPushButton(tr("Choose…"))
        browse.setAutoDefault(False)  # Enter belongs to the fields
        browse.clicked.connect(lambda *_: self._browse())
        line = QtGui.QHBoxLayout()
        line.addWidget(self.folder)
        line.addWidget(browse)
        rows = QtGui.QFormLayout()
        rows.addRow(tr("Folder"), line)
        for words, field in (
            (tr("Router bit"), self.bit), (tr("Guide bush"), self.bush),
            (tr("Units of the sheets"), self.in_units),
        ):  # fmt: skip
            rows.addRow(words, field)
            field.setAccessibleName(words)
        for label in (self.warning, self.written):
            label.setWordWrap(True)  # Qt's way
            label.setTextFormat(QtCore.Qt.RichText)
            label.hide()
        self.written.setOpenExternalLinks(True)  # Qt's way
        self.written.setTextInteractionFlags(QtCore.Qt.TextBrowserInteraction)
        self.body.addLayout(rows)
        self.body.addWidget(self.warning)
        self.body.addWidget(self.written)
        self.body.addStretch(1)
        self.button(tr("Write the package"), self.write)
        self.resize(640, 260)

    def look(self) -> None:
        """Say again what the shop should know of the joint before it is cut."""
        self._warn(warning_of(self.joint))

    @told
    def write(self) -> None:
        """Write the package, unless what was typed cannot be used: then say why."""
        bit, bush = self._typed(self.bit), self._typed(self.bush)
        named = self.folder.text().strip()
        if not named:
            raise BadInput(tr("No folder is named; name the one that the package is to be in."))
        folder = Path(named).expanduser()
        self.written.hide()
        self._warn(warning_of(self.joint))
        has_former = folder.is_dir() and any(folder.iterdir())
        if has_former and not confirm_replacing(folder):
            return
        wish: dict[str, Any] = {
            "bit": bit,
            "bush": bush,
            "units": self._shown_in.value,
            "replace": has_former,
        }
        written = call("gui.shop", "write", self.joint, str(folder), into="package", **wish)
        self._show_size(self.bit, bit)
        self._show_size(self.bush, bush)
        preferences.keep_cutter(bit, bush)
        preferences.keep_folder(str(folder.parent))
        self._tell_written(folder, written.verdict)

    def _tell_written(self, folder: Path, verdict: Verdict) -> None:
        """In the window with a link, and in the report view to keep."""
        tell(tr("the package for the shop is in {}").format(folder))
        link = f'<a href="{QtCore.QUrl.fromLocalFile(str(folder)).toString()}">'
        shown = f"{link}{escape(str(folder))}</a>"
        self.written.setText(tr("The package for the shop is in {}").format(shown))
        self.written.show()
        # What was written was judged anew; this is its verdict, not the former check's.
        self._warn("" if verdict is Verdict.FITS else warning_on(verdict))

    def _warn(self, sentence: str) -> None:
        self.warning.setText(f"<b>! {escape(sentence)}</b>" if sentence else "")
        self.warning.setVisible(bool(sentence))

    def _show_cutter(self, cutter: Cutter | None) -> None:
        if cutter is None:
            self.bit.setPlaceholderText(tr("none: no round bit cuts sharp corners"))
            return
        self._show_size(self.bit, cutter.bit)
        self._show_size(self.bush, cutter.bush)

    def _show_size(self, field: Any, size: float | None) -> None:
        if size is None:
            return
        shown = entry_value(size, kind=Kind.LENGTH, units=self._shown_in)
        self._exact[shown] = size
        field.setText(shown)

    def _typed(self, field: Any) -> float | None:
        text = field.text().strip()
        if not text:
            return None
        if text in self._exact:
            return self._exact[text]  # not typed anew, so not rounded
        return float(
            read_length(plain(text), bare=self._shown_in, name=str(field.accessibleName()))
        )

    @told
    def _change_units(self) -> None:
        """What was typed means the same in other units."""
        sizes = self._typed(self.bit), self._typed(self.bush)
        self._shown_in = UNITS[max(self.in_units.currentIndex(), 0)]
        self._show_size(self.bit, sizes[0])
        self._show_size(self.bush, sizes[1])

    def _browse(self) -> None:
        parent = pick_parent(Path(self.folder.text()).parent)
        if parent is not None:
            self.folder.setText(str(parent / folder_name(self.label)))


def _cutter_of(joint: Any) -> Cutter | None:
    """The cutter that was used last, as far as it cuts this pocket; else the largest usual one."""
    plan = pocket_plan(complete(joint_stated(joint)))
    bit, bush = preferences.cutter()
    if bit is not None and bit > largest_bit(plan):
        bit = None
    units = units_of(joint)
    fitting = chosen(plan, bit=bit, bush=None, units=units)
    if fitting is None or bush is None or bush <= fitting.bit:
        return fitting
    return Cutter(fitting.bit, bush)


def warning_of(joint: Any) -> str:
    """What the last check says against cutting after these sheets; empty where it says nothing."""
    found = check_of(joint)
    if found is None or not found.Findings:
        return tr("The joint has not been checked yet; writing the package checks it.")
    if is_stale(found):
        return tr("The joint changed since its last check; writing the package checks it anew.")
    verdict = Verdict(found.Verdict)
    return "" if verdict is Verdict.FITS else warning_on(verdict)


def warning_on(verdict: Verdict) -> str:
    """What a verdict says against cutting."""
    if verdict is Verdict.DOES_NOT_FIT:
        return tr("The joint does not fit. Do not cut after these sheets; mend it first.")
    return tr("Whether the joint fits could not be decided; see the findings before you cut.")


def first_folder(joint: Any) -> Path:
    """Where a joint's package goes unless another folder is named: beside its document."""
    file = str(joint.Document.FileName or "")
    parent = Path(file).parent if file else Path(preferences.folder())
    return parent / folder_name(str(joint.Label))


def folder_name(label: str) -> str:
    """A folder's name that every system takes, from whatever a joint is called."""
    plain = re.sub(r"[^\w .-]+", "_", label).strip(" .")[:80]
    return tr("{} package").format(plain or "joint")


def pick_parent(start: Path) -> Path | None:
    """The folder that the package's own is to stand in."""
    picked = QtGui.QFileDialog.getExistingDirectory(
        FreeCADGui.getMainWindow(), tr("Folder to put the package into"), str(start)
    )
    return Path(picked) if picked else None


def confirm_replacing(folder: Path) -> bool:
    """Whether the designer wants a former package to go."""
    box = QtGui.QMessageBox
    answer = box.question(
        FreeCADGui.getMainWindow(),
        tr("Package for the shop"),
        tr("{} holds a former package. Replace it?").format(folder),
        box.Yes | box.No,
        box.No,
    )
    return bool(answer == box.Yes)


def open_package(joint: Any) -> PackageDialog:
    """Open the window on a joint. Raises BadInput where the joint cannot be read."""
    dialog = PackageDialog(joint)
    show(dialog)
    return dialog
