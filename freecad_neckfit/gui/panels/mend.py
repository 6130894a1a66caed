"""What excludes what, and what mends it: a list of proved changes, each to be taken over."""

from __future__ import annotations

from pathlib import Path
from typing import Any

from PySide import QtCore, QtGui

from ...decide.conflicts import Conflict, find_conflicts
from ...decide.mending import Remedy, find_remedies
from ...decide.mending_text import COSTS, conflict_lines, cost_line, headline
from ...decide.moves import KINDS, Stock, moves
from ...decide.progress import tell
from ...decide.shop import Steps
from ...decide.stock import read_stock
from ...decide.toll import toll
from ...decide.window import find_window
from ...features.adopt_given import given_of
from ...features.assemblies import job_of, outline_of
from ...job.parameters import ALL
from ...job.resolve import complete
from ...run.prove import prover
from ..figures import local_lines
from ..sentences import say
from ..translate import tr
from .decide_apply import keep_as_option, take_over
from .decide_dialog import DecideDialog, show, told
from .decide_wait import waiting


class MendDialog(DecideDialog):
    """Lists the smallest changes that free a joint."""

    def __init__(self, joint: Any) -> None:
        super().__init__(joint, title=tr("What mends it"), name="NeckFitMend")
        self.remedies: tuple[Remedy, ...] = ()
        self.conflicts: tuple[Conflict, ...] = ()
        self.reason = ""
        self.searched: dict[str, Any] = {}
        self.conflict = QtGui.QLabel()
        self.conflict.setObjectName("NeckFitConflict")
        self.conflict.setWordWrap(True)
        self.list = QtGui.QListWidget()
        self.list.setObjectName("NeckFitRemedies")
        self.list.setAccessibleName(tr("Changes that mend it, smallest first"))
        self.list.currentRowChanged.connect(self._chosen)
        self.costs = QtGui.QLabel()
        self.costs.setObjectName("NeckFitCosts")
        self.costs.setWordWrap(True)
        self.allowed = self._allowed_list()
        split = QtGui.QHBoxLayout()
        right = QtGui.QVBoxLayout()
        right.addWidget(QtGui.QLabel(tr("May be changed:")))
        right.addWidget(self.allowed)
        left = QtGui.QVBoxLayout()
        left.addWidget(self.conflict)
        left.addWidget(self.list, 1)
        left.addWidget(self.costs)
        split.addLayout(left, 1)
        split.addLayout(right)
        self.body.addLayout(split)
        self.stock = Stock()
        self.button(tr("Other bridges and pickups…"), self._choose_stock)
        self.button(tr("Shop's steps…"), self.ask_shop)
        self.take = self.button(tr("Take over this change"), self._take)
        self.option = self.button(tr("Keep as an option"), self._keep)
        for made in (self.take, self.option):
            made.setEnabled(False)

    def _allowed_list(self) -> Any:
        found = QtGui.QListWidget()
        found.setObjectName("NeckFitAllowed")
        found.setMaximumWidth(190)
        for kind in KINDS:
            item = QtGui.QListWidgetItem(tr(kind), found)
            item.setData(QtCore.Qt.UserRole, kind)
            item.setCheckState(QtCore.Qt.Checked)
        return found

    def allowed_kinds(self) -> tuple[str, ...]:
        """What is ticked."""
        items = [self.allowed.item(n) for n in range(self.allowed.count())]
        return tuple(
            str(i.data(QtCore.Qt.UserRole)) for i in items if i.checkState() == QtCore.Qt.Checked
        )

    def look(self) -> None:
        """Search anew; every change listed has passed the full check on solids."""
        self.searched = stated = self.stated()
        prove = prover(
            outline=outline_of(job_of(self.joint, stated)),
            units=self.units,
            given=given_of(self.joint),
        )
        self.list.clear()
        self.costs.setText("")
        self.remedies = ()
        with waiting(self, tr("Looking for what mends it")) as progress:
            tell(progress, 0.0, "checking the joint as it is stated")
            self.reason = prove(stated)
            if self.reason:
                self.conflicts = find_conflicts(find_window(stated), progress=progress)
            self._tell_conflicts()
            if not self.reason:
                return
            steps = Steps.of(complete(stated))
            found = moves(stated, steps=steps, stock=self.stock, allowed=self.allowed_kinds())
            self.remedies = find_remedies(stated, found, prove=prove, progress=progress)
        self._list()

    def retell(self) -> None:
        """Say anew what was found; what is ticked and chosen stays."""
        for n in range(self.allowed.count()):
            item = self.allowed.item(n)
            item.setText(tr(str(item.data(QtCore.Qt.UserRole))))
        self._tell_conflicts()
        row = self.list.currentRow()
        self.list.clear()
        if self.reason:
            self._list()
            self.list.setCurrentRow(row)

    def _tell_conflicts(self) -> None:
        """Say why it does not fit, and which demands exclude one another at any depth and angle."""
        if not self.reason:
            self.conflict.setText(tr("It fits; there is nothing to mend."))
            return
        lines = conflict_lines(self.conflicts, self.units)
        free = tr("Other depths or angles do meet every demand together.")
        self.conflict.setText(local_lines([say(self.reason), "", *(lines or [free])]))

    def _list(self) -> None:
        """Each change with what it costs elsewhere below it."""
        for remedy in self.remedies:
            told_of = toll(self.searched, remedy.stated)[:COSTS]
            costs = [cost_line(c, self.units) for c in told_of]
            costs = costs or [tr("It costs nothing elsewhere.")]
            item = QtGui.QListWidgetItem(
                local_lines([headline(remedy, self.units), *(f"      {c}" for c in costs)])
            )
            self.list.addItem(item)
        if self.remedies:
            self.list.setCurrentRow(0)
            self.costs.setText(
                tr(
                    "Fewest parts first, then the smallest change in the shop's steps. Each has "
                    "passed the full check on solids."
                )
            )
        else:
            self.costs.setText(tr("No change that is allowed mends it."))

    @told
    def _choose_stock(self) -> None:
        """Take part files of the shop into the search."""
        kinds = tr("Part files (*.toml)")
        answer = QtGui.QFileDialog.getOpenFileNames(self, self.windowTitle(), "", kinds)
        files = answer[0] if isinstance(answer, tuple) else answer
        if files:
            self.stock = read_stock(Path(str(file)) for file in files)
            self.look()

    def _chosen(self, row: int) -> None:
        for made in (self.take, self.option):
            made.setEnabled(0 <= row < len(self.remedies))

    @told
    def _keep(self) -> None:
        """Keep the change that is chosen as an option of the joint."""
        row = self.list.currentRow()
        if 0 <= row < len(self.remedies):
            remedy = self.remedies[row]
            name = headline(remedy, self.units)
            called = keep_as_option(self.joint, remedy.stated, name=name)
            self.say(tr("Kept as the option {}.").format(called))

    @told
    def _take(self) -> None:
        """Make the document state the change that is chosen."""
        row = self.list.currentRow()
        if not 0 <= row < len(self.remedies):
            return
        remedy = self.remedies[row]
        values = {
            key: after
            for key, (_, after) in remedy.changes.items()
            if ALL[key].default is not None or key in remedy.stated
        }
        with waiting(self, tr("Taking it over")) as progress:
            take_over(self.joint, values, name=headline(remedy, self.units), progress=progress)
        self.look()


def open_mend(joint: Any) -> MendDialog:
    """Open the list of what mends a joint."""
    dialog = MendDialog(joint)
    show(dialog)
    return dialog
