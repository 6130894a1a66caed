"""What a TechDraw dimension says beside its figure, which stays TechDraw's own."""

from __future__ import annotations

from typing import Any

import FreeCAD

from ..job.quantity import Kind, Units
from .dimension import PLACES, Dimension, limits_shown, shown

SHORT_NOTE = 8
"""Letters from which on a note is left out after limits."""
SMALL = 0.15
"""A length [mm] below which FreeCAD 1.1 may change to micrometres."""
INCH_SCHEMES = (2, 3, 5, 7)
"""FreeCAD's numbers of the unit schemes that show inches or feet."""


def put_words(size: Any, what: Dimension) -> None:
    """Prefix, decimals, limits and note; the figure itself stays TechDraw's own."""
    units = units_shown()
    places = 2 if what.kind is Kind.ANGLE else PLACES[units]
    count = f"{what.count}× " if what.count > 1 else ""
    prefix = what.prefix if what.prefix != "Ø" else "⌀"
    # TechDraw measures no sign: where parts run into each other it has to be said.
    sign = "-" if what.value < 0 else ""
    figure = f"{count}{prefix}{sign}%.{places}f"
    if what.kind is Kind.LENGTH and abs(what.value) < SMALL:
        # As words: FreeCAD 1.1 would print it in micrometres without saying so.
        size.Arbitrary = True
        figure = shown(what.value, kind=what.kind, units=units, places=places)
    if what.reference:
        figure = f"({figure})"
    accept = what.text(units).partition("[")[2].partition("]")[0]
    # After limits short notes alone: TechDraw breaks no lines, and the view shows the rest.
    note = what.note if not accept or len(what.note) < SHORT_NOTE else ""
    size.FormatSpec = " ".join(bit for bit in (figure, accept and f"[{accept}]", note) if bit)
    if what.limits is None:
        return
    size.EqualTolerance = False
    size.UnderTolerance, size.OverTolerance = what.limits
    size.ArbitraryTolerances = True  # as words, for the same reason
    low, high = (
        text if text.startswith("-") else f"+{text}"
        for text in map(str, limits_shown(*what.limits, kind=what.kind, units=units, places=places))
    )
    size.FormatSpecOverTolerance, size.FormatSpecUnderTolerance = high, low


def units_shown() -> Units:
    """What FreeCAD shows lengths in, which is what TechDraw prints."""
    units = FreeCAD.ParamGet("User parameter:BaseApp/Preferences/Units")
    return Units.INCH if units.GetInt("UserSchema", 0) in INCH_SCHEMES else Units.MM
