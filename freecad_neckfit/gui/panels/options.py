"""The joint and its options side by side, as a table to read, keep and send."""

from __future__ import annotations

from pathlib import Path
from typing import Any

from PySide import QtGui

from ...decide.options import Comparison, columns, compare
from ...decide.options_write import as_csv, as_html
from ...job.store import write_beside
from ..figures import local_svg
from ..translate import tr
from .decide_dialog import DecideDialog, show, told
from .decide_wait import waiting


class OptionsDialog(DecideDialog):
    """Shows the comparison as a page."""

    def __init__(self, joint: Any) -> None:
        super().__init__(joint, title=tr("Options side by side"), name="NeckFitOptions")
        self.table: Comparison | None = None
        self.page = QtGui.QTextBrowser()
        self.page.setObjectName("NeckFitPage")
        self.body.addWidget(self.page)
        self.button(tr("Save…"), self._save)

    def look(self) -> None:
        """Judge the joint and each option by closed forms."""
        job = self.job()
        joints = [job.base, *job.options]
        with waiting(self, tr("Judging the options")) as progress:
            found = columns(joints, progress=progress)
        self.table = compare(found, units=self.units)
        self.page.setHtml(local_svg(as_html(self.table, title=self.label)))
        if not job.options:
            self.say(
                tr(
                    "This joint has no options. Keep a place tried or a change found as one in the "
                    "other windows; a job file states them under [[option]]."
                )
            )

    @told
    def _save(self) -> None:
        path = self.file_to_write(tr("Tables (*.html *.csv)"))
        if not path or self.table is None:
            return
        is_csv = path.lower().endswith(".csv")
        text = as_csv(self.table) if is_csv else as_html(self.table, title=self.label)
        write_beside(Path(path), text.encode("utf-8"))


def open_options(joint: Any) -> OptionsDialog:
    """Open the comparison of a joint's options."""
    dialog = OptionsDialog(joint)
    show(dialog)
    return dialog
