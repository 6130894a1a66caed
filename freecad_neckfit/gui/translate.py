"""Words of the screen in the designer's language."""

from __future__ import annotations

import FreeCAD

KEPT = 8192
"""So many translated texts are remembered with what they were told for."""
_sources: dict[str, str] = {}


def tr(text: str) -> str:
    """``text`` in the language that FreeCAD is set to; as it is where no translation is known."""
    told = translated(text)
    remember(told, text)
    return told


def translated(text: str) -> str:
    """The same, and nothing of it is remembered."""
    return str(FreeCAD.Qt.translate("NeckFit", text))


def language() -> str:
    """Short name of the designer's language, as its translation gives it; "en" without one."""
    return translated("en")  # no word: each translation answers with its own language's name


def remember(told: str, source: str) -> None:
    """Keep what ``told`` was told for, so that it can be told anew in another language."""
    if told == source:
        return
    _sources.pop(told, None)
    _sources[told] = source
    if len(_sources) > KEPT:
        del _sources[next(iter(_sources))]


def source_of(told: str) -> str:
    """The English text that was asked for when ``told`` was told; else ``told`` itself."""
    return _sources.get(told, told)
