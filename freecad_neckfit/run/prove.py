"""The full check on solids as a proof of what closed forms propose."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from typing import TYPE_CHECKING, Any

from ..job.errors import NeckFitError
from ..job.outline import Outline
from ..job.quantity import Units
from .chain import Verdict, check_values

if TYPE_CHECKING:
    from ..solids.build import Given


def prover(
    *, outline: Outline | None, units: Units = Units.MM, given: Given | None = None
) -> Callable[[Mapping[str, Any]], str]:
    """A proof for joints in a body of ``outline``: it returns why one does not fit, or nothing.

    ``given``: solids that exist already, measured in place of built ones.
    """

    def prove(stated: Mapping[str, Any]) -> str:
        try:
            result = check_values(stated, units=units, outline=outline, given=given)
        except NeckFitError as error:
            return str(error)
        if result.verdict is Verdict.FITS:
            return ""
        first = result.findings[0]
        return f"{first.title}: {first.reason or first.state.value}"

    return prove
