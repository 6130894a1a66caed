"""What FreeCAD's property editor shows: names, groups and tooltips of properties.

FreeCAD looks them up in a context of its own. They are put together from the words of parameters,
so that nothing is translated twice.
"""

from __future__ import annotations

import re
import sys
from collections import Counter
from pathlib import Path

sys.path.insert(0, str(Path(__file__).parents[2]))

from freecad_neckfit.features.extras import COMMON, OF_ROLE  # this checkout's
from freecad_neckfit.features.properties import (  # this checkout's
    flag_of,
    flag_tooltip,
    property_of,
    title_of,
    tooltip,
)
from freecad_neckfit.job.parameter import Parameter  # this checkout's
from freecad_neckfit.job.parameters import ALL  # this checkout's
from freecad_neckfit.job.words import name_of  # this checkout's

PROPERTY = "App::Property"
WITH_COMMA = {"de"}
"""Languages that write figures with a decimal comma."""


def editor_texts(known: dict[str, str]) -> dict[str, str]:
    """Source -> translation, by the plain texts' translations; empty where a part is missing."""
    found: dict[str, str] = {}
    for p in ALL.values():
        parts: list[str] = []

        def say(text: str, parts: list[str] = parts) -> str:
            parts.append(known.get(text, ""))
            return parts[-1] or text

        told = tooltip(p, say=say)
        if known.get("en") in WITH_COMMA:
            told = re.sub(r"(?<=\d)\.(?=\d)", ",", told)
        found[tooltip(p)] = told if all(parts) else ""
        if flag_of(p):
            found[flag_tooltip(p)] = flag_tooltip(p, say=say)
        found[title_of(p.group)] = known.get(title_of(p.group), "")
        name = known.get(source_of_name(p), "")
        found[spaced(property_of(p))] = name[:1].upper() + name[1:]
    for extra in (*COMMON, *(e for some in OF_ROLE.values() for e in some)):
        found[extra.words] = known.get(extra.words, "")
    return found


def spaced(name: str) -> str:
    """A property's name as the editor shows it: HeelLength is Heel Length."""
    return re.sub(r"(?<=[a-z0-9])(?=[A-Z])", " ", name)


_OF_NAME = Counter(property_of(p) for p in ALL.values())


def source_of_name(p: Parameter) -> str:
    """What a property's name is translated from: its key's words, or what several share."""
    shared = _OF_NAME[property_of(p)] > 1
    return spaced(property_of(p)) if shared else name_of(p.key)
