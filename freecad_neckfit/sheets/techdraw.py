"""The drawing as a TechDraw page within a document, which the designer can go on editing.

TechDraw's dimensions hang on vertices that it numbers anew after every change of the geometry, and
versions of FreeCAD differ in how. So each view shows a flat object of the drawing's own lines,
every end of a dimension is found by its place among the view's vertices, and every dimension's raw
value is held against the drawing before the page is handed over.
"""

from __future__ import annotations

from typing import Any

from .drawing import Drawing, warning_of
from .helvetica import wrapped
from .joint import Misprint
from .paper import BLOCK_HEIGHT, WIDTH
from .techdraw_layout import LETTERS, Layout, layout_of
from .techdraw_sheet import sheet_file
from .techdraw_view import PREFIX, ViewOnPage, is_shown
from .techdraw_wait import Pump, event_pump, wait_until_drawn

PAGE = "NeckFitDrawing"
SAME = 1e-4
"""How far [mm, degrees] a dimension may differ from the drawing."""


def add_page(document: Any, drawing: Drawing) -> Any:
    """Draw the page anew into a document and return it; a former one is replaced.

    Raises KernelFailure where FreeCAD does not draw a view, Misprint where a dimension's value
    differs from the drawing; the page is taken away again then.
    """
    # First of all: FreeCAD 1.0 draws no view without a screen before Qt has an application.
    pump = event_pump()
    remove_page(document)
    page = document.addObject("TechDraw::DrawPage", PAGE)
    try:
        _fill(document, page, drawing, pump)
        check_page(document, drawing)
    except Exception:
        remove_page(document)
        raise
    return page


def remove_page(document: Any) -> None:
    """Take the page away with all that belongs to it."""
    if document.getObject(PAGE) is not None:
        event_pump()()  # what is being drawn comes to its end first
    names = [o.Name for o in document.Objects if o.Name.startswith(PREFIX) or o.Name == PAGE]
    # What hangs on a view goes before the view.
    for name in sorted(names, key=lambda n: (n == PAGE, "_view_" in n, "_lines_" in n)):
        if document.getObject(name) is not None:
            document.removeObject(name)


def raw_values(document: Any) -> dict[str, float]:
    """Raw value [mm, degrees] of every dimension on the page, by key."""
    return {
        o.Label2: float(o.getRawValue())
        for o in document.Objects
        if o.Name.startswith(f"{PREFIX}size_")
    }


def settle(document: Any) -> None:
    """Wait until FreeCAD has drawn all views again, as after opening; then work sizes out anew.

    Raises KernelFailure where it does not draw one.
    """
    pump = event_pump()
    for obj in document.Objects:
        if obj.Name.startswith(f"{PREFIX}view_"):
            wait_until_drawn(obj, pump)
    for obj in document.Objects:
        if obj.Name.startswith(f"{PREFIX}size_"):
            obj.touch()
    document.recompute()
    pump()


def check_page(document: Any, drawing: Drawing) -> None:
    """Compare every dimension's raw value with the drawing; raises Misprint where one differs."""
    settle(document)
    values = raw_values(document)
    for key, wanted in _wanted(drawing).items():
        if key not in values:
            raise Misprint(f"TechDraw page: the dimension {key} is missing; draw the page anew.")
        if not abs(values[key] - abs(wanted)) <= SAME:  # not a number is no agreement
            raise Misprint(
                f"TechDraw page: {key} reads {values[key]:.4f} where the drawing says "
                f"{wanted:.4f}; draw the page anew."
            )


def _wanted(drawing: Drawing) -> dict[str, float]:
    return {p.what.key: p.what.value for v in drawing.views for p in v.placed if is_shown(p)}


def _fill(document: Any, page: Any, drawing: Drawing, pump: Pump) -> None:
    template = document.addObject("TechDraw::DrawSVGTemplate", f"{PREFIX}template")
    template.Template = str(sheet_file(drawing.paper))
    page.Template = template
    layout = layout_of(drawing)
    _fill_title(template, drawing, layout)
    for view in drawing.views:
        ViewOnPage(document, page, drawing, view, layout.stands[view.name]).draw(pump)
    _put_notes(document, page, drawing)


def _put_notes(document: Any, page: Any, drawing: Drawing) -> None:
    notes = document.addObject("TechDraw::DrawViewAnnotation", f"{PREFIX}notes")
    # The first names the unit of the figures, which on this page is FreeCAD's to choose.
    # Versions differ in how wide their letters run.
    said = [wrapped(note, limit=WIDTH * 0.6, height=LETTERS) for note in drawing.notes[1:]]
    warning = warning_of(drawing.joint)
    lines = [*([warning] if warning else []), *(line for note in said for line in note)]
    notes.Label, notes.Text, notes.TextSize = "Notes", lines, 3.5
    page.addView(notes)
    high = drawing.paper.high
    middle = drawing.paper.low[1] + BLOCK_HEIGHT + 3.2 * len(lines) + 2
    notes.X, notes.Y = high[0] - WIDTH / 2, middle


def _fill_title(template: Any, drawing: Drawing, layout: Layout) -> None:
    texts = dict(template.EditableTexts)
    title = {name: getattr(drawing.title, name) for name in type(drawing.title).names()}
    said = title | {"title": drawing.joint.name, "scale": f"{layout.scale} ({layout.detail_scale})"}
    texts.update({key: value for key, value in said.items() if key in texts})
    template.EditableTexts = texts


__all__ = ["PAGE", "PREFIX", "add_page", "check_page", "raw_values", "remove_page", "settle"]
