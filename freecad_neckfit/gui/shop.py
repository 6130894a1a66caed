"""From a joint of the document to what the shop gets: the package, and a page to edit."""

from __future__ import annotations

from collections.abc import Iterator
from contextlib import contextmanager
from dataclasses import replace as replaced
from pathlib import Path
from typing import Any, NamedTuple

import FreeCADGui
from PySide import QtCore, QtGui

from ..features.assemblies import assembly_of, outline_of
from ..features.read_property import units_of
from ..features.transfer import job_file_of
from ..job.joint import JobFile
from ..job.possible import refuse_impossible
from ..job.quantity import Units
from ..run.chain import Verdict, check_values
from ..sheets.drawing import draw
from ..sheets.joint import Joint
from ..sheets.package import Progress, Wish, write_package
from ..sheets.paper import A3, ANSI_B, Title
from ..sheets.prepare import extras_of
from ..sheets.techdraw import add_page
from .scene_pictures import scene_pictures
from .sentences import say
from .translate import tr


class Written(NamedTuple):
    """What the joint was judged to be when the package was written, and the files' paths."""

    verdict: Verdict
    paths: tuple[str, ...]


def job_of(joint: Any) -> JobFile:
    """The joint with its own limits and its options. Raises BadInput as a check does."""
    folder = Path(joint.Document.FileName or Path.home() / "joint").parent
    job = job_file_of(joint, folder / f"{joint.Label}.toml")
    refuse_impossible(job.base.values, job.base.name)
    return job


def sheets_joint(joint: Any, job: JobFile, units: Units | None = None) -> Joint:
    """The joint, judged on the solids that the document shows, in its own or other units.

    Raises BadInput as a check does.
    """
    base, units = job.base, units or units_of(joint)
    result = check_values(base.stated, name=base.name, units=units, assembly=assembly_of(joint))
    return Joint(base, result, outline_of(base), units)


def write(
    joint: Any,
    folder: str,
    *,
    bit: float | None = None,
    bush: float | None = None,
    units: str | None = None,
    replace: bool = False,
) -> Written:
    """Write the whole package for a joint of the document into a folder.

    ``bit``, ``bush``: diameters [mm] of router bit and guide bush, None for the usual choice.
    ``units``: "mm" or "in" on all sheets, None for the joint's own. Shows how far it is, and puts a
    picture of the 3D view into the report. Raises BadInput for a folder in the way and a cutter
    that does not do, Misprint where a sheet would not say what the solids measure; nothing is
    written then.
    """
    pictures = scene_pictures(joint)
    with progress_shown(tr("Package for the shop")) as progress:
        job = job_of(joint)
        made = sheets_joint(joint, job, Units(units) if units else None)
        extras = replaced(extras_of(job, made), pictures=pictures)
        paths = write_package(
            made,
            Path(folder),
            wish=Wish(bit=bit, bush=bush, replace=replace),
            extras=extras,
            progress=progress,
        )
    return Written(made.result.verdict, tuple(str(path) for path in paths))


def draw_page(joint: Any) -> Any:
    """Draw the joint's TechDraw page, or draw it anew after changes; return it.

    Raises KernelFailure where FreeCAD does not draw a view, Misprint where a dimension differs.
    """
    made = sheets_joint(joint, job_of(joint))
    paper = A3 if made.units is Units.MM else ANSI_B
    return add_page(joint.Document, draw(made, paper, title=Title()))


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
        bar.setLabelText(say(what))
        bar.setValue(step)
        # Only the bar is redrawn: a click on the document must wait.
        QtCore.QCoreApplication.processEvents(QtCore.QEventLoop.ExcludeUserInputEvents)

    try:
        yield tell
    finally:
        bar.close()
        bar.deleteLater()
