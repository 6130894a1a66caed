"""What the deciding tools say of the joint: its window, its tolerances, its owner's year."""

from __future__ import annotations

from collections.abc import Callable

from ...decide.climate import climate_of
from ...decide.pictures.svg import PAPER_WIDE
from ...decide.pictures.tolerances import draw_failures
from ...decide.pictures.window import PAPER, draw_window
from ...decide.pictures.year import draw_year
from ...decide.shop import Steps
from ...decide.tolerances.dimension import dimensions
from ...decide.tolerances.report import report_lines
from ...decide.tolerances.simulate import FEWEST_DRAWS
from ...decide.tolerances.study import study
from ...decide.window import find_window
from ...decide.window_text import window_lines
from ...decide.year import find_year
from ...decide.year_text import year_lines
from ...job.errors import NeckFitError
from ..joint import Joint
from .parts import Picture, Section

WISH = 0.01


def decided_sections(joint: Joint) -> list[Section]:
    """Window, tolerances and seasons; what cannot be worked out says why."""
    return [
        _told("Depths and angles that work", joint, _window),
        _told("Tolerances", joint, _tolerances),
        _told("Seasons", joint, _seasons),
    ]


def _told(title: str, joint: Joint, make: Callable[[str, Joint], Section]) -> Section:
    try:
        return make(title, joint)
    except NeckFitError as refusal:
        return Section(title, words=[f"Not worked out: {refusal}"])


def _window(title: str, joint: Joint) -> Section:
    window, steps = find_window(joint.job.stated), Steps.of(joint.values)
    drawn = draw_window(window, name=joint.name, steps=steps, units=joint.units, layout=PAPER)
    lines = window_lines(window, name=joint.name, units=joint.units, steps=steps)
    return Section(title, lines=lines, pictures=[Picture(title, svg=drawn.svg)])


def _tolerances(title: str, joint: Joint) -> Section:
    found = study(joint.job.stated, dimensions(joint.job), wish=WISH, draws=FEWEST_DRAWS)
    lines = report_lines(
        joint.name, found.linear, found.simulation, found.steps, found.alone,
        wish=WISH, units=joint.units,
    )  # fmt: skip
    picture = draw_failures(found.simulation, name=joint.name, units=joint.units, wide=PAPER_WIDE)
    return Section(title, lines=lines, pictures=[Picture(title, svg=picture)])


def _seasons(title: str, joint: Joint) -> Section:
    year = find_year(joint.job.stated, climate_of(joint.values))
    lines = year_lines(year, name=joint.name, units=joint.units)
    picture = draw_year(year, name=joint.name, units=joint.units, wide=PAPER_WIDE)
    return Section(title, lines=lines, pictures=[Picture(title, svg=picture)])
