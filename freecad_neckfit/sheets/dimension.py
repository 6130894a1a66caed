"""Dimensions as meaning: which figure, between which points, within which limits.

Strokes and text follow from these; nothing is kept as strokes only.
"""

from __future__ import annotations

import re
from dataclasses import dataclass
from decimal import ROUND_CEILING, ROUND_FLOOR, ROUND_HALF_UP, Decimal

from ..job.quantity import Kind, Units
from ..job.units import INCH_MM

Spot = tuple[float, float]
PLACES = {Units.MM: 2, Units.INCH: 4}
FINER_MM = 3
"""Decimals of a nominal length [mm] that two decimals would change, such as 5/8 in."""


@dataclass(frozen=True, kw_only=True)
class Dimension:
    """One figure on a drawing.

    ``key``: what it measures; the same key is measured on the solids. ``value``: nominal, in mm or
    degrees. ``limits``: limit deviations (lower, upper). ``accept``: limits that the figure must
    lie within once assembled; either may be None. ``reference``: follows from others and is not
    to be worked to: in brackets. ``stated``: False where it was worked out from others.
    ``count``: how many alike. ``prefix``: Ø or R. ``note``: words
    that follow.
    """

    key: str
    value: float
    kind: Kind = Kind.LENGTH
    limits: tuple[float, float] | None = None
    accept: tuple[float | None, float | None] | None = None
    reference: bool = False
    stated: bool = True
    count: int = 1
    prefix: str = ""
    note: str = ""

    def text(self, units: Units) -> str:
        """The figure as it is printed."""
        nominal = self._nominal(units)
        figure = f"{self.prefix}{nominal}{self._limits(units)}"
        if self.count > 1:
            figure = f"{self.count}× {figure}"
        if self.reference:
            figure = f"({figure})"
        return " ".join(bit for bit in (figure, self._accept(units), self.note) if bit)

    def _nominal(self, units: Units) -> str:
        places = self._places(units)
        exact = self.stated and not self.reference and self.accept is None and units is Units.MM
        if exact and abs(self.value - round(self.value, places)) > 5e-4:
            places = FINER_MM
        return shown(self.value, kind=self.kind, units=units, places=places)

    def _places(self, units: Units) -> int:
        return 2 if self.kind is Kind.ANGLE else PLACES[units]

    def _limits(self, units: Units) -> str:
        if self.limits is None:
            return ""
        low, high = self.limits
        finer = units is Units.INCH and self.kind is Kind.LENGTH
        places = 4 if finer else _enough(low, high)
        lower, upper = (
            str(d).lstrip("-")
            for d in limits_shown(low, high, kind=self.kind, units=units, places=places)
        )
        if low == -high:
            return f" ±{upper}"
        return f" {_sign(high)}{upper}/{_sign(low)}{lower}"

    def _accept(self, units: Units) -> str:
        if self.accept is None:
            return ""
        low, high = limits_shown(
            *self.accept, kind=self.kind, units=units, places=self._places(units)
        )
        if low is not None and high is not None:
            return f"[{low} to {high}]"
        return f"[at least {low}]" if low is not None else f"[at most {high}]"


def _sign(deviation: float) -> str:
    return "-" if deviation < 0 else "+" if deviation > 0 else ""


def _enough(low: float, high: float) -> int:
    """Decimals that print both deviations without changing them: two or three."""
    return 2 if all(abs(d - round(d, 2)) < 1e-9 for d in (low, high)) else 3


def shown(value: float, *, kind: Kind, units: Units, places: int, way: str = ROUND_HALF_UP) -> str:
    """A figure without its unit; degrees carry their sign."""
    inch = kind is Kind.LENGTH and units is Units.INCH
    plain = value / float(INCH_MM) if inch else value
    calm = Decimal(f"{plain:.9f}").quantize(Decimal(1).scaleb(-places), rounding=way)
    text = f"{calm + 0:f}"
    return f"{text}°" if kind is Kind.ANGLE else text


def limits_shown(
    low: float | None, high: float | None, *, kind: Kind, units: Units, places: int
) -> tuple[str | None, str | None]:
    """Limits or limit deviations, rounded inward: the least up, the most down.

    What a sheet accepts the tolerance set accepts too, and every sheet prints the same figure for
    the same limit. Limits closer than a last digit are rounded to the nearest instead.
    """

    def rounded(low_way: str, high_way: str) -> tuple[str | None, str | None]:
        lower, upper = (
            None if limit is None else shown(limit, kind=kind, units=units, places=places, way=way)
            for limit, way in ((low, low_way), (high, high_way))
        )
        return lower, upper

    lower, upper = rounded(ROUND_CEILING, ROUND_FLOOR)
    if lower is not None and upper is not None and _number(lower) > _number(upper):
        return rounded(ROUND_HALF_UP, ROUND_HALF_UP)
    return lower, upper


def _number(text: str) -> float:
    return float(text.rstrip("°"))


@dataclass(frozen=True)
class Printed:
    """What a printed dimension says: value and limits in mm or degrees, and its last digit."""

    value: float
    step: float
    limits: tuple[float, float] | None


_NUMBER = r"[0-9]+(?:\.[0-9]+)?"
_FIGURE = re.compile(
    rf"^\(?(?:(?P<count>[0-9]+)× )?(?P<prefix>[ØR]?)(?P<value>-?{_NUMBER})(?P<degrees>°?)"
    rf"(?: ±(?P<either>{_NUMBER})°?| (?P<upper>[+-]?{_NUMBER})°?/(?P<lower>[+-]?{_NUMBER})°?)?"
)


def read_printed(text: str, units: Units) -> Printed | None:
    """Read a printed dimension; None where the text is none."""
    found = _FIGURE.match(text)
    if found is None:
        return None
    scale = 1.0 if found["degrees"] or units is Units.MM else float(INCH_MM)
    decimals = len(found["value"].partition(".")[2])
    limits = None
    if found["either"]:
        limits = -float(found["either"]) * scale, float(found["either"]) * scale
    elif found["upper"]:
        limits = float(found["lower"]) * scale, float(found["upper"]) * scale
    return Printed(float(found["value"]) * scale, 10.0**-decimals * scale, limits)


@dataclass(frozen=True, kw_only=True)
class Straight:
    """A dimension along x or y of a view, between two of its points [mm of the model].

    ``lane``: where the dimension line runs, as y (or x, if upright) on the paper [mm].
    """

    what: Dimension
    a: Spot
    b: Spot
    lane: float
    upright: bool = False


@dataclass(frozen=True, kw_only=True)
class Pointed:
    """A dimension at the end of a leader.

    ``tip``: a point of the view [mm of the model]; ``at``: where the text stands on the paper;
    ``left``: whether the text runs to the left of it. ``between``: the two points that it measures
    between, where it measures a distance.
    """

    what: Dimension
    tip: Spot
    at: Spot
    left: bool = False
    between: tuple[Spot, Spot] | None = None


Placed = Straight | Pointed
