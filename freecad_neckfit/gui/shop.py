"""From a joint of the document to what the shop gets: the package, and a page to edit."""

from __future__ import annotations

import tempfile
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path
from typing import Any

import FreeCADGui
from PySide import QtCore, QtGui

from ..features.assemblies import assembly_of, job_of, outline_of
from ..features.gather import joint_stated
from ..features.read_property import units_of
from ..job.quantity import Units
from ..run.chain import check_values
from ..sheets.drawing import draw
from ..sheets.joint import Joint
from ..sheets.package import Extras, Progress, Wish, write_package
from ..sheets.paper import A3, ANSI_B, Title
from ..sheets.report.content import Picture
from ..sheets.report.decided import decided_sections
from ..sheets.techdraw import add_page
from .translate import tr

PICTURE_SIZE = (1600, 1000)
"""Width and height [pixel] of the picture in the report."""


def sheets_joint(joint: Any) -> Joint:
    """The joint, judged on the solids that the document shows. Raises BadInput as a check does."""
    stated = joint_stated(joint)
    job = job_of(joint, stated)
    units = units_of(joint)
    result = check_values(stated, name=job.name, units=units, assembly=assembly_of(joint))
    return Joint(job, result, outline_of(job), units)


def write(joint: Any, folder: str, *, replace: bool = False) -> list[str]:
    """Write the whole package for a joint of the document into a folder; return the paths.

    Shows how far it is, and puts a picture of the 3D view into the report. Raises BadInput for a
    folder in the way, Misprint where a sheet would not say what the solids measure; nothing is
    written then.
    """
    pictures = view_pictures()
    with progress_shown(tr("Package for the shop")) as progress:
        made = sheets_joint(joint)
        extras = Extras(pictures=pictures, sections=decided_sections(made))
        paths = write_package(
            made,
            Path(folder),
            wish=Wish(replace=replace),
            extras=extras,
            progress=progress,
        )
    return [str(path) for path in paths]


def draw_page(joint: Any) -> Any:
    """Draw the joint's TechDraw page, or draw it anew after changes; return it.

    Raises KernelFailure where FreeCAD does not draw a view, Misprint where a dimension differs.
    """
    made = sheets_joint(joint)
    paper = A3 if made.units is Units.MM else ANSI_B
    return add_page(joint.Document, draw(made, paper, title=Title()))


def view_pictures() -> list[Picture]:
    """What the 3D view shows, where one is open in front."""
    shown = FreeCADGui.ActiveDocument
    view = None if shown is None else shown.ActiveView
    if view is None or not hasattr(view, "saveImage"):
        return []
    with tempfile.TemporaryDirectory(prefix="neckfit-") as folder:
        path = Path(folder, "view.png")
        view.saveImage(str(path), *PICTURE_SIZE, "White")
        if not path.is_file():
            return []
        return [Picture(tr("The joint in the 3D view"), png=path.read_bytes())]


@contextmanager
def progress_shown(title: str) -> Iterator[Progress]:
    """A bar that says what is being done; it cannot be cancelled, for half a package is none."""
    bar = QtGui.QProgressDialog(title, "", 0, 1, FreeCADGui.getMainWindow())
    bar.setObjectName("NeckFitProgress")
    bar.setWindowTitle(title)
    bar.setCancelButton(None)
    bar.setMinimumDuration(0)

    def tell(step: int, steps: int, what: str) -> None:
        bar.setMaximum(steps)
        bar.setLabelText(what)
        bar.setValue(step)
        # Only the bar is redrawn: a click on the document must wait.
        QtCore.QCoreApplication.processEvents(QtCore.QEventLoop.ExcludeUserInputEvents)

    try:
        yield tell
    finally:
        bar.close()
        bar.deleteLater()
