"""The sheet that a TechDraw page lies on: frame and title block, its fields open to editing."""

from __future__ import annotations

import re
from pathlib import Path

from ..job.quantity import Units
from .ink import Page
from .paper import Paper, Title, frame, title_block
from .svg import svg

DATA = Path(__file__).parent.parent / "data"
FIELDS = ("title", "scale", *Title.names())
"""Names of the fields that TechDraw lets a designer edit."""
_NAMESPACE = "http://www.freecadweb.org/wiki/index.php?title=Svg_Namespace"


def sheet_file(paper: Paper) -> Path:
    """The sheet's file, which a document names and therefore must stay where it is."""
    return DATA / f"page-{paper.name.lower().replace(' ', '-')}.svg"


def sheet_svg(paper: Paper) -> str:
    """What the sheet's file holds; a test keeps both the same."""
    page = Page(paper.width, paper.height, "NeckFit sheet")
    frame(page, paper)
    # Short marks: a long one would not fit its cell.
    marks = {name: f"@{number}@" for number, name in enumerate(FIELDS)}
    title = Title(**{name: marks[name] for name in Title.names()})
    title_block(
        page, paper, title=title, name=marks["title"], kind="Machining drawing, neck pocket",
        scale=marks["scale"], units=Units.MM, angle=paper.angle,
    )  # fmt: skip
    text = svg(page).replace("<svg ", f'<svg xmlns:freecad="{_NAMESPACE}" ', 1)
    return re.sub(r"<text ([^>]*)>@([0-9]+)@</text>", _editable, text)


def _editable(found: re.Match[str]) -> str:
    look = re.sub(r' textLength="[^"]*" lengthAdjust="[^"]*"', "", found[1])
    name = FIELDS[int(found[2])]
    return f'<text {look} freecad:editable="{name}"><tspan>-</tspan></text>'
