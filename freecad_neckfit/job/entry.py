"""One thing the designer wrote, and the one sentence that refuses it."""

from __future__ import annotations

from dataclasses import dataclass
from fractions import Fraction

from .errors import BadInput
from .units import Kind
from .words import shown


@dataclass(frozen=True)
class Entry:
    """A raw value, the parameter it stands under and the kind expected there."""

    raw: object
    kind: Kind
    name: str
    wanted: str = ""
    """What to write instead, where it is not one value of the kind."""

    @property
    def advice(self) -> str:
        """What to write instead, as a command."""
        if self.wanted:
            return f"write {self.wanted}"
        if self.kind is Kind.FLAG:
            return "write true or false"
        return f"write {self.kind.phrase} such as {self.kind.example}"

    def refusal(self, reason: str, advice: str = "") -> BadInput:
        """Return the error that says what was written, what is wrong and what to do."""
        return BadInput(f"{self.name}: {shown(self.raw)} {reason}; {advice or self.advice}.")

    def wrong_type(self) -> BadInput:
        """Return the error for a raw value of the wrong type altogether."""
        return self.refusal(f"is no {self.kind.word}")

    def as_float(self, number: Fraction) -> float:
        """Return the nearest float, or refuse a number beyond what floats can hold."""
        try:
            nearest = float(number)
        except OverflowError:
            raise self.refusal("is too large a number") from None
        if number and not nearest:
            raise self.refusal("is too small a number to be told from zero")
        return nearest
