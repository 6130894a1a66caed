"""Holds every printed dimension against the solids; one that differs stops the sheet."""

from __future__ import annotations

from collections.abc import Iterable, Mapping

from ..job.parameters import ALL
from ..job.quantity import Units
from .dimension import Printed, read_printed
from .figures import Figures
from .joint import Misprint
from .read_back import READERS

NOISE = 2e-4
"""What kernels may differ by [mm, degrees] where they measure a stated parameter."""
AGREED = 0.005
"""What closed forms and solids may differ by [mm] in a figure that follows from many."""
ROUNDED = 0.0026
"""What a printed limit deviation may lose to rounding [mm, degrees]: 0.0001 in, for it is rounded
inward."""

Limits = Mapping[str, tuple[float, float]]


def prove(
    files: Mapping[str, bytes],
    figures: Figures,
    *,
    units: Units,
    keys: Iterable[str],
    limits: Limits,
) -> None:
    """Compare what files print with what the solids measure.

    ``files``: contents by name, whose ending tells the format. ``figures``: measured on the solids
    [mm, degrees]. ``keys``: dimensions that each file must print. ``limits``: limit deviations that
    must stand where a parameter has them. Raises Misprint with one sentence for a dimension that
    is missing, unreadable, or says something else.
    """
    wanted = set(keys)
    for name, data in files.items():
        ending = name[name.rindex(".") :]
        texts = READERS[ending](data)
        for key in sorted(wanted - set(texts)):
            raise Misprint(
                f"{name}: the dimension {key} is not printed; the sheet was not written."
            )
        for key in sorted(texts):
            for text in texts[key]:
                _check(name, key, text, figures=figures, units=units, limits=limits)


def _check(
    name: str, key: str, text: str, *, figures: Figures, units: Units, limits: Limits
) -> None:
    printed = read_printed(text, units)
    if printed is None:
        raise Misprint(f"{name}: {key} is printed as {text!r}, which is no dimension.")
    if key not in figures:
        raise Misprint(
            f"{name}: {key} is printed as {text!r} but could not be measured on the solids; the "
            "sheet was not written."
        )
    noise = NOISE if key in ALL else AGREED
    # Not a number is no agreement.
    if not abs(printed.value - figures[key]) <= printed.step / 2 + noise:
        raise Misprint(
            f"{name}: {key} is printed as {text!r} but the solids measure {figures[key]:.4f} in mm "
            "or degrees; the sheet was not written."
        )
    _check_limits(name, key, text, printed, limits)


def _check_limits(name: str, key: str, text: str, printed: Printed, limits: Limits) -> None:
    if printed.limits is None:
        return
    stated = limits.get(key)
    if stated is None or any(
        abs(a - b) > ROUNDED for a, b in zip(printed.limits, stated, strict=True)
    ):
        raise Misprint(
            f"{name}: {key} is printed as {text!r}, but the tolerance set says {stated}; the sheet "
            "was not written."
        )
