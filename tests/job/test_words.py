"""The nearest known word, and raw values shown in messages."""

from __future__ import annotations

import pytest

from freecad_neckfit.job.words import LONGEST_SHOWN, nearest, shown


@pytest.mark.parametrize(
    ("word", "known", "best"),
    [
        ("dept", ["depth", "angle", "length"], "depth"),
        ("Depth", ["depth", "width"], "depth"),
        ("mn", ["m", "mm", "cm", "in"], "mm"),
        ("zzz", ["depth", "angle"], None),
        ("", ["depth"], None),
        ("depth", [], None),
        ("x" * 100_000, ["depth"], None),
    ],
)
def test_the_nearest_word(word: str, known: list[str], best: str | None) -> None:
    """A slip finds its word; what is like nothing finds none."""
    assert nearest(word, known) == best


@pytest.mark.parametrize(
    ("raw", "phrase"),
    [
        ("15 mm", '"15 mm"'),
        ('5/8"', "'5/8\"'"),
        ("a\n\x1b", '"a\\u000a\\u001b"'),
        (True, "true"),
        (15.5, "15.5"),
        (-3, "-3"),
        (None, "nothing"),
        ([], "a list"),
        ({}, "a table"),
        (object(), "a value that is neither number nor text"),
    ],
)
def test_raw_values_are_shown_in_one_printable_phrase(raw: object, phrase: str) -> None:
    """A message can carry whatever the file held."""
    assert shown(raw) == phrase


def test_a_text_is_shown_whole_up_to_its_longest() -> None:
    """One character more, and it ends with an ellipsis."""
    assert shown("x" * LONGEST_SHOWN) == f'"{"x" * LONGEST_SHOWN}"'
    assert shown("x" * (LONGEST_SHOWN + 1)) == f'"{"x" * (LONGEST_SHOWN - 1)}…"'


def test_a_huge_number_is_counted_and_not_written_out() -> None:
    """Python itself refuses to write more than 4300 digits."""
    assert shown(10**5000) == "a whole number of about 5001 digits"
