"""The whole package for the shop in one folder: everything or nothing."""

from __future__ import annotations

import shutil
import tempfile
from collections.abc import Callable, Sequence
from dataclasses import dataclass, field
from pathlib import Path

from ..job.errors import BadInput
from ..job.quantity import Units
from ..run.chain import Result
from .cutter import Cutter, chosen
from .drawing import Drawing, draw, page_of
from .dxf import page_dxf
from .figures import figures_of
from .flow import A4, LETTER, Sheet
from .joint import Joint
from .model import write_machining, write_step
from .paper import A3, ANSI_B, Angle, Paper, Title
from .pdf import pdf
from .proof import prove
from .report.content import report_of
from .report.html import html
from .report.pages import report_pages
from .report.parts import Picture, Report, Section
from .report.pictures import drawn_pictures
from .setup import setup_pages
from .svg import svg
from .template import template_dxf

CONTENTS = "contents.txt"
MARK = "NeckFit package for the shop"
FILES = {
    "drawing.pdf": "drawing of the pocket, to print without fitting",
    "drawing.svg": "the same drawing",
    "drawing.dxf": "the same drawing, in millimetres of paper",
    "template.dxf": "routing template, 1:1, one layer for each function",
    "set-up.pdf": "set-up sheet: order of work, stops, figures to measure",
    "report.html": "verdict, findings, options, origin of every number",
    "report.pdf": "the same report",
    "model.step": "cut body, cover plate and seated neck, in millimetres",
    "machining.FCStd": "for FreeCAD's CAM: pick the floor of 'pocket'; work zero at its end wall",
}
Progress = Callable[[int, int, str], None]


def _silent(_: int, __: int, ___: str) -> None:
    return None


@dataclass(frozen=True, kw_only=True)
class Wish:
    """How the package is wanted. ``bit``, ``bush``: diameters [mm]; None for the usual choice."""

    title: Title = field(default_factory=Title)
    paper: Paper | None = None
    sheet: Sheet | None = None
    angle: Angle | None = None
    bit: float | None = None
    bush: float | None = None
    replace: bool = False

    def papers(self, units: Units) -> tuple[Paper, Sheet]:
        """The sheets of drawing and text: stated, or what goes with the units."""
        metric = units is Units.MM
        return (
            self.paper or (A3 if metric else ANSI_B),
            self.sheet or (A4 if metric else LETTER),
        )


@dataclass(frozen=True)
class Extras:
    """What the report shows besides: pictures of the screen, other options, further sections."""

    pictures: Sequence[Picture] = ()
    options: Sequence[Result] = ()
    sections: Sequence[Section] = ()


def write_package(
    joint: Joint,
    folder: Path,
    *,
    wish: Wish,
    extras: Extras | None = None,
    progress: Progress = _silent,
) -> tuple[Path, ...]:
    """Write every sheet, prove each against the solids, and only then put the folder in place.

    Returns the files' paths. ``progress`` hears (step, steps, what). Raises BadInput for a folder
    that is in the way or cannot be written, and for a bit or paper that does not do; Misprint where
    a printed dimension differs from the solids. Whatever is raised, ``folder`` stays as it was.
    """
    folder = folder.absolute()
    _refuse_taken(folder, replace=wish.replace)
    try:
        with tempfile.TemporaryDirectory(dir=folder.parent, prefix=".neckfit-") as passing:
            draft = Path(passing, folder.name)
            draft.mkdir(mode=0o777)
            _fill(joint, draft, wish=wish, extras=extras or Extras(), progress=progress)
            _put_in_place(draft, folder, aside=Path(passing, "former"))
    except OSError as error:
        raise BadInput(
            f"{folder} cannot be written ({error.strerror}); choose a folder whose parent exists "
            "and that you may write to."
        ) from error
    return tuple(folder / name for name in (*FILES, CONTENTS))


def _refuse_taken(folder: Path, *, replace: bool) -> None:
    if not folder.exists():
        return
    if not folder.is_dir():
        raise BadInput(f"{folder} is a file; name a folder that does not exist yet.")
    names = {entry.name for entry in folder.iterdir()}
    if not names:
        return
    if not _is_package(folder):
        raise BadInput(
            f"{folder} holds files that are no package of this tool; name another folder."
        )
    foreign = names - set(FILES) - {CONTENTS}
    if foreign:
        raise BadInput(
            f"{folder} holds a former package and {min(foreign)}, which would be lost; move "
            "that away or name another folder."
        )
    if not replace:
        raise BadInput(
            f"{folder} holds a former package; say that it is to be replaced (--replace), or name "
            "another folder."
        )


def _is_package(folder: Path) -> bool:
    contents = folder / CONTENTS
    return contents.is_file() and contents.read_text(errors="replace").startswith(MARK)


def _put_in_place(draft: Path, folder: Path, *, aside: Path) -> None:
    """Move the former package aside, the new one in; on failure move the former back."""
    former = folder.exists()
    if former:
        folder.rename(aside)
    try:
        draft.rename(folder)
    except OSError:
        if former:
            aside.rename(folder)
        raise
    if former:
        shutil.rmtree(aside)


def _fill(joint: Joint, draft: Path, *, wish: Wish, extras: Extras, progress: Progress) -> None:
    steps = 6
    paper, sheet = wish.papers(joint.units)
    cutter = chosen(joint.pocket, bit=wish.bit, bush=wish.bush, units=joint.units)
    progress(0, steps, "measuring the solids")
    figures = figures_of(joint.result)
    progress(1, steps, "drawing")
    drawing = draw(joint, paper, title=wish.title, angle=wish.angle)
    files = _drawing_files(drawing)
    limits = joint.job.tolerances
    prove(files, figures, units=joint.units, keys=drawing.dimensions, limits=limits)
    progress(2, steps, "routing template and set-up sheet")
    files["template.dxf"] = template_dxf(joint, cutter, units=joint.units).encode()
    setup = pdf(setup_pages(joint, cutter, sheet))
    prove({"set-up.pdf": setup}, figures, units=joint.units, keys=("pocket.depth",), limits=limits)
    files["set-up.pdf"] = setup
    progress(3, steps, "report")
    files |= _report_files(_report(joint, drawing, extras), sheet)
    progress(4, steps, "model")
    write_step(joint, draft / "model.step")
    progress(5, steps, "machining document")
    write_machining(joint, draft / "machining.FCStd")
    files[CONTENTS] = _contents(joint, drawing, cutter).encode()
    for name, data in files.items():
        (draft / name).write_bytes(data)
    progress(steps, steps, "done")


def _drawing_files(drawing: Drawing) -> dict[str, bytes]:
    page = page_of(drawing)
    return {
        "drawing.pdf": pdf([page]),
        "drawing.svg": svg(page).encode(),
        "drawing.dxf": page_dxf(page).encode(),
    }


def _report(joint: Joint, drawing: Drawing, extras: Extras) -> Report:
    pictures = [*extras.pictures, *drawn_pictures(drawing)]
    return report_of(joint, pictures=pictures, options=extras.options, more=extras.sections)


def _report_files(report: Report, sheet: Sheet) -> dict[str, bytes]:
    return {"report.html": html(report).encode(), "report.pdf": pdf(report_pages(report, sheet))}


def _tilt(joint: Joint) -> list[str]:
    angle = joint.length("pocket.angle")
    if not angle:
        return []
    return [
        (
            f"The pocket's floor is tilted by {angle:.2f} degrees: on a machine of three axes put "
            "the body on a wedge that levels it (turn the CAM job's models about Y likewise), or "
            "cut it in fine steps (3D pocket)."
        ),
        "A pocket operation that is not 3D may cut all of it as deep as its deepest edge.",
        "",
    ]


def _contents(joint: Joint, drawing: Drawing, cutter: Cutter | None) -> str:
    unit = "mm" if joint.units is Units.MM else "inch"
    led = cutter.led_by(joint.units) if cutter else "none: the corners are too tight for any bit"
    title = drawing.title
    lines = [
        f"{MARK}: {joint.name}",
        "",
        f"verdict   {joint.result.verdict.value}",
        f"revision  {title.revision or '-'}",
        f"units     {unit}",
        f"drawing   {drawing.paper.name}, {drawing.scale}, {drawing.angle.value}",
        f"cutter    {led}",
        "",
        *(f"{name:<16} {words}" for name, words in FILES.items()),
        "",
        *_tilt(joint),
        "Measure the neck in hand before cutting. The rules of your place come first.",
    ]
    return "\n".join(lines) + "\n"
