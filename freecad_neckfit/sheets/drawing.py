"""The pocket drawing: its views at the largest scale that fits, its notes and its sheet."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from ..job.errors import BadInput
from ..job.quantity import Units
from ..job.show import compact_length
from ..run.chain import Verdict
from .drawing_layout import Layout
from .dress import dressed
from .helvetica import wrapped
from .ink import Page, Spot, Words
from .joint import Joint
from .paper import WIDTH, Angle, Paper, Title, check_bar, frame, title_block
from .section_view import finish_note
from .view import View

SCALES = ((1.0, "1:1"), (0.5, "1:2"), (0.2, "1:5"))
"""Recommended scales of ISO 5455 for the views."""


@dataclass(frozen=True)
class Drawing:
    """The drawing as meaning: views with their dimensions, and what stands round them."""

    joint: Joint
    paper: Paper
    angle: Angle
    title: Title
    views: tuple[View, ...]
    scale: str
    detail_scale: str
    notes: tuple[str, ...]

    @property
    def dimensions(self) -> dict[str, float]:
        """Value [mm, degrees] of every dimension by key."""
        return {placed.what.key: placed.what.value for v in self.views for placed in v.placed}


def draw(joint: Joint, paper: Paper, *, title: Title, angle: Angle | None = None) -> Drawing:
    """Choose the largest scale that fits the sheet and lay out its views.

    Raises BadInput where no scale of ISO 5455 down to 1:5 fits.
    """
    angle = angle or paper.angle
    for scale, name in SCALES:
        layout = Layout.of(joint, paper, angle, scale)
        if layout.fits():
            views, detail = layout.views()
            return Drawing(joint, paper, angle, title, views, name, detail, _notes(joint))
    raise BadInput(f"{joint.name}: the joint does not fit a sheet {paper.name} even at 1:5.")


def _notes(joint: Joint) -> tuple[str, ...]:
    unit = "millimetres" if joint.units is Units.MM else "inches"
    wall = joint.values["pocket.wall"]
    return (
        (
            f"Dimensions in {unit}, angles in degrees; in round brackets: for reference; in "
            "square brackets: limits when assembled."
        ),
        "Datums: the end wall at the top, the centreline, and the unrouted top.",
        (
            f"End wall square to the {wall}. Widths are between the straight sides, at end "
            "wall and at mouth, before corners."
        ),
        finish_note(joint),
        _screw_note(joint),
        "Without limits: ISO 2768-m. Measure the neck in hand before cutting.",
    )


def _screw_note(joint: Joint) -> str:
    error = compact_length(joint.length("screws.position_error"), units=joint.units)
    return f"Screw holes: places within ±{error} of the datums."


def page_of(drawing: Drawing) -> Page:
    """The drawing as ink on its sheet."""
    paper, joint = drawing.paper, drawing.joint
    page = Page(paper.width, paper.height, title=f"{joint.name}: neck pocket")
    frame(page, paper)
    for view in drawing.views:
        page.add(*view.ink(), *dressed(view, joint.units))
    corner = title_block(
        page, paper, title=drawing.title, name=joint.name, kind="Machining drawing, neck pocket",
        scale=f"{drawing.scale} ({drawing.detail_scale})", units=joint.units, angle=drawing.angle,
    )  # fmt: skip
    top = _note_lines(page, corner, drawing.notes)
    _warning(page, joint, (corner[0] + 2, top + 3))
    check_bar(page, (paper.low[0] + 6, paper.low[1] + 3))
    return page


def _warning(page: Page, joint: Joint, at: Spot) -> None:
    """A joint that does not fit says so on its own drawing."""
    words = warning_of(joint)
    if words:
        page.add(Words(at, words, 3.5, bold=True))


def warning_of(joint: Joint) -> str:
    """What the drawing of a joint that does not fit says; empty for one that does."""
    if joint.result.verdict is Verdict.FITS:
        return ""
    return f"NOT FOR THE SHOP: this joint {_VERDICTS[joint.result.verdict]}; see the report."


_VERDICTS = {Verdict.DOES_NOT_FIT: "does not fit", Verdict.UNSURE: "could not be decided"}


def _note_lines(page: Page, corner: Spot, notes: Sequence[str]) -> float:
    """Print the notes above a corner; return where they end at the top."""
    lines = [line for note in notes for line in wrapped(note, limit=WIDTH - 4, height=2.5)]
    top = y = corner[1] + 3 + 4.2 * (len(lines) - 1)
    for line in lines:
        page.add(Words((corner[0] + 2, y), line, 2.5))
        y -= 4.2
    return top + 3
