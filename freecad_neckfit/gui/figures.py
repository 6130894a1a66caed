"""Figures as the designer's language writes them: with a decimal comma where that is the custom.

Rooms that know no screen write points, and so do job files and papers. What the screen shows goes
through here last, and what is typed on it first.
"""

from __future__ import annotations

import re
from collections.abc import Iterable
from functools import lru_cache
from typing import Any

import FreeCAD

from ..job import show
from ..job.quantity import Kind, Units, Value
from .translate import language

POINTS_ALWAYS = 2
"""FreeCAD's number format without any language; 0 is the system's, 1 the chosen language's."""
FIGURE = re.compile(
    r'"[^"]*"'  # what was typed stays as it was
    r"|(?<![\w.,])(?P<many>[1-9]\d{0,2}(?:,\d{3})+)(?= [^\W\d_]{3})"
    r"|(?<![\w./\\])(?P<whole>\d+)\.(?P<part>\d+)(?!\w|\.\w|[/\\][A-Za-z])"
)
"""A quotation, a large number of things in groups of three, or a number with a decimal point."""


def local(text: str) -> str:
    """``text`` with its figures as the designer's language writes them; once, not twice."""
    mark = decimal_mark()
    return text if mark == "." else FIGURE.sub(lambda found: _written(found, mark), text)


def local_svg(svg: str) -> str:
    """A picture with the figures that stand in it as words written so; its drawing stays."""
    if decimal_mark() == ".":
        return svg
    return re.sub(r">([^<>]+)<", lambda found: f">{local(found.group(1))}<", svg)


def local_lines(lines: Iterable[str]) -> str:
    """Lines of text, one below the other, with their figures written so."""
    return local("\n".join(lines))


def plain(typed: str) -> str:
    """What was typed, with decimal points, as it is read everywhere."""
    if decimal_mark() == ".":
        return typed
    return re.sub(r"(?<=\d),(?=\d)", ".", typed)


def whole_number(number: int) -> str:
    """A large number in groups of three."""
    return f"{number:,}".replace(",", "," if decimal_mark() == "." else ".")


def show_value(value: Value, *, kind: Kind, units: Units) -> str:
    """As ``job.show`` does."""
    return local(show.show_value(value, kind=kind, units=units))


def compact_length(mm: float, *, units: Units) -> str:
    """As ``job.show`` does."""
    return local(show.compact_length(mm, units=units))


def entry_value(value: float, *, kind: Kind, units: Units) -> str:
    """As ``job.show`` does."""
    return local(show.entry_value(value, kind=kind, units=units))


def locale() -> Any:
    """What Qt's own number fields need to write figures so, too: a QLocale."""
    from PySide import QtCore

    found = QtCore.QLocale("C" if decimal_mark() == "." else _known(language(), _system()))
    found.setNumberOptions(QtCore.QLocale.OmitGroupSeparator)
    return found


def decimal_mark() -> str:
    """What parts whole from decimals: as FreeCAD's fields do, else as the language does.

    Without a screen there is no language to follow, and Qt stays away.
    """
    if not FreeCAD.GuiUp or _general().GetInt("UseLocaleFormatting", 0) == POINTS_ALWAYS:
        return "."
    return _mark(language(), _system())


@lru_cache(maxsize=1)
def _general() -> Any:
    """FreeCAD's own settings, looked up once: figures are written many times a second."""
    return FreeCAD.ParamGet("User parameter:BaseApp/Preferences/General")


def _system() -> str:
    from PySide import QtCore

    return str(QtCore.QLocale().name())


def _known(language: str, system: str) -> str:
    """A system without a language of its own: the screen's, which the figures stand among."""
    return language if system == "C" else system


@lru_cache(maxsize=16)
def _mark(language: str, system: str) -> str:
    from PySide import QtCore

    return str(QtCore.QLocale(_known(language, system)).decimalPoint())


def _written(found: re.Match[str], mark: str) -> str:
    if found["many"]:
        return str(found["many"]).replace(",", ".")
    if found["whole"]:
        return f"{found['whole']}{mark}{found['part']}"
    return found.group()
