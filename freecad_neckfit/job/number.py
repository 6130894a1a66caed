"""Numbers as makers write them: decimals, fractions, mixed numbers, degrees with minutes."""

from __future__ import annotations

import math
import re
import unicodedata
from fractions import Fraction

from .entry import Entry
from .errors import BadInput

LONGEST_NUMBER = 64
"""Longest text that is still read as a number with its unit [characters]."""
_MOST_EXPONENT_DIGITS = 3

_LOOKALIKES = str.maketrans(
    {
        **dict.fromkeys("\u2212\u2010\u2011\u2013", "-"),  # minus, hyphens, en dash
        **dict.fromkeys("\u2033\u201c\u201d", '"'),  # double prime, curly quotes
        **dict.fromkeys("\u2032\u2018\u2019", "'"),  # prime, curly quotes
        **dict.fromkeys("\u2044\u2215", "/"),  # fraction slash, division slash
        "\u03bc": "\u00b5",  # Greek mu for the micro sign
        "\u00ba": "\u00b0",  # ordinal sign for the degree sign
        "\u2103": "\u00b0C",
        "\u2109": "\u00b0F",
    }
)

# ASCII digits only: \d would let digits of other scripts through.
_NUMBER = re.compile(
    r"""(?P<sign>[+-]?)\ ?
    (?: (?:(?P<whole>[0-9]+)(?:\ |-\ ?))? (?P<top>[0-9]+)\ ?/\ ?(?P<bottom>[0-9]+)
      | (?P<decimal>(?:[0-9]+\.?[0-9]*|\.[0-9]+)(?:[eE][+-]?(?P<exponent>[0-9]+))?) )""",
    re.VERBOSE,
)
_DEGREES_MINUTES = re.compile(
    r"""(?P<sign>[+-]?)\ ?(?P<degrees>[0-9]+)\ ?°
    (?:\ ?(?P<minutes>[0-9]+(?:\.[0-9]+)?)\ ?')?
    (?:\ ?(?P<seconds>[0-9]+(?:\.[0-9]+)?)\ ?")?""",
    re.VERBOSE,
)
_MORE_NUMBER = re.compile(r"[0-9]|^[./+-]")
_DECIMAL_COMMA = re.compile(r"[0-9] ?, ?[0-9]|,[0-9]")


def tidy(text: str, *, entry: Entry) -> str:
    """Return the text with single spaces, one kind of dash and quote, and ½ as 1/2.

    Raises BadInput for a text longer than any number.
    """
    if len(text) > LONGEST_NUMBER:
        raise entry.refusal(f"has {len(text)} characters, more than any number needs")
    plain = "".join(_spelt_fraction(character) for character in text.translate(_LOOKALIKES))
    return " ".join(plain.translate(_LOOKALIKES).split())


def split_number(text: str, *, entry: Entry) -> tuple[Fraction, str]:
    """Split tidy text into its exact leading number and the unit after it.

    Raises BadInput where the text is not one number and at most one unit.
    """
    _refuse_unreadable(text, entry=entry)
    match = _NUMBER.match(text)
    if not match:
        raise entry.refusal("does not start with a number")
    unit = text[match.end() :].replace(" ", "")
    if _MORE_NUMBER.search(unit):
        raise entry.refusal("is not one number and one unit")
    return _value(match, entry=entry), unit


def split_degrees(text: str, *, entry: Entry) -> Fraction | None:
    """Return the degrees [°] of tidy text like ``1°30'15"``, or None if it is not so written."""
    match = _DEGREES_MINUTES.fullmatch(text)
    if not match or not (match["minutes"] or match["seconds"]):
        return None
    minutes, seconds = Fraction(match["minutes"] or 0), Fraction(match["seconds"] or 0)
    if minutes >= 60 or seconds >= 60:
        raise entry.refusal("has minutes or seconds of 60 and more")
    if match["seconds"] and minutes.denominator != 1:
        raise entry.refusal("has both a part of a minute and seconds")
    return _signed(Fraction(match["degrees"]) + minutes / 60 + seconds / 3600, match["sign"])


def exact(raw: float, *, entry: Entry) -> Fraction:
    """Return the number as it was written: 0.1 becomes a tenth, not the float beside it.

    Raises BadInput for NaN and infinity.
    """
    if isinstance(raw, int):
        return Fraction(int(raw))
    if not math.isfinite(raw):
        raise entry.refusal("is not a finite number")
    return Fraction(repr(float(raw)))


def _spelt_fraction(character: str) -> str:
    spelt = unicodedata.normalize("NFKC", character)
    # Of ⅟, whose denominator is missing, nothing can be made.
    is_fraction = "\u2044" in spelt and not spelt.endswith("\u2044")
    return f" {spelt}" if is_fraction else character


def _refuse_unreadable(text: str, *, entry: Entry) -> None:
    if not text:
        raise entry.refusal("is empty")
    if any(_is_foreign_digit(character) for character in text):
        advice = "" if entry.wanted else _advice_plain_digits(text)
        raise entry.refusal("has digits other than the plain 0 to 9", advice)
    if _DECIMAL_COMMA.search(text):
        raise _comma_refusal(text, entry=entry)


def _is_foreign_digit(character: str) -> bool:
    return not character.isascii() and unicodedata.category(character) in {"Nd", "No", "Nl"}


def _advice_plain_digits(text: str) -> str:
    plain = "".join(str(unicodedata.decimal(c, c)) for c in text)
    is_readable = plain.isascii() and plain.isprintable() and _NUMBER.match(plain)
    return f"write {plain}" if is_readable else ""


def _comma_refusal(text: str, *, entry: Entry) -> BadInput:
    pointed = re.sub(r" ?, ?", ".", text)
    match = _NUMBER.match(pointed)
    rest = pointed[match.end() :].strip() if match else ""
    is_one_measure = bool(match) and text.count(",") == 1 and not _MORE_NUMBER.search(rest)
    # The text may be only a part of what was written: half of two deviations is no advice.
    if is_one_measure and pointed.isprintable() and not entry.wanted:
        return entry.refusal("has a decimal comma", f"write {pointed.rstrip('.')}")
    return entry.refusal("has a decimal comma", f"use a decimal point and {entry.advice}")


def _value(match: re.Match[str], *, entry: Entry) -> Fraction:
    if match["decimal"]:
        if len(match["exponent"] or "") > _MOST_EXPONENT_DIGITS:
            raise entry.refusal("has an exponent beyond any use")
        return _signed(Fraction(match["decimal"]), match["sign"])
    if int(match["bottom"]) == 0:
        raise entry.refusal("divides by zero")
    part = Fraction(int(match["top"]), int(match["bottom"]))
    if match["whole"] and part >= 1:
        raise entry.refusal("has a whole number before a fraction that is not below 1")
    return _signed(int(match["whole"] or 0) + part, match["sign"])


def _signed(size: Fraction, sign: str) -> Fraction:
    return -size if sign == "-" else size
