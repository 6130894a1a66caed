"""What the shop can set, marked along a window's frame: steps, 64ths of an inch, named depths."""

from __future__ import annotations

from ...job.quantity import Units
from ...job.show import compact_length, show_value
from ...job.speech import say
from ..shop import INCH, Mark, Steps, named_marks, sixty_fourths, whole_steps
from ..window import Window
from .frame import Frame
from .svg import FAINT, LEAST_SIZE, OUTSIDE, Sheet
from .zones import Box

CLOSEST = 6.0
"""Marks that would stand closer are left out."""
SMALL_LETTER = 6.7
"""Width of a letter of small words."""
BELOW = 62.0
"""From the frame down to the words about steps."""


def draw_marks(sheet: Sheet, frame: Frame, window: Window, steps: Steps) -> tuple[bool, bool]:
    """The shop's steps within the frame and 64ths on top; returns along which axes steps show."""
    top, bottom = frame.top, frame.top + frame.height
    depths = _few(whole_steps(*frame.x, steps.depth), frame.width)
    for depth in depths:
        at, _ = frame.place(depth, frame.y[0])
        sheet.line([(at, bottom - 5), (at, bottom)], colour=FAINT)
    others = _few(whole_steps(*frame.y, steps.along(window.y.name)), frame.height)
    for value in others:
        _, at = frame.place(frame.x[0], value)
        sheet.line([(frame.left, at), (frame.left + 5, at)], colour=FAINT)
    marks = sixty_fourths(*frame.x)
    room = frame.width / max(len(marks), 1)
    every = next((n for n in (1, 2, 4, 8, 16, 32) if room * n > 44), 64)
    for mark in marks:
        at, _ = frame.place(mark.depth, frame.y[0])
        if room > CLOSEST or round(mark.depth * 64 / INCH) % every == 0:
            sheet.line([(at, top), (at, top - 4)], colour=FAINT)
        if round(mark.depth * 64 / INCH) % every == 0:
            said = mark.name.removesuffix(" in")
            sheet.words((at, top - 8), said, anchor="middle", size=LEAST_SIZE, colour="#555555")
    sheet.words(
        (frame.left + frame.width + 22, top - 8), say("inch"), size=LEAST_SIZE, colour="#555555"
    )
    return bool(depths), bool(others)


def named_depths(frame: Frame, steps: Steps, units: Units) -> list[tuple[Mark, float, float, Box]]:
    """Depths with a name: where each lies, where its words stand, and the room that they take."""
    found = []
    for mark in named_marks(steps, units):
        if not frame.x[0] < mark.depth < frame.x[1]:
            continue
        at, _ = frame.place(mark.depth, frame.y[0])
        # Beside its line, on the inner side where the frame ends.
        words = at - 4 if at > frame.left + frame.width - 20 else at + 12
        half = len(say(mark.name)) * SMALL_LETTER / 2
        box = (words - 4, frame.top + frame.height - 8 - half, 7.0, half)
        found.append((mark, at, words, box))
    return found


def draw_name(sheet: Sheet, frame: Frame, mark: Mark, at: float, words: float) -> None:
    """Draw the line of a named depth, and its words beside it."""
    top, bottom = frame.top, frame.top + frame.height
    sheet.line([(at, top), (at, bottom)], colour=FAINT, dash="2 4")
    sheet.words(
        (words, bottom - 8),
        say(mark.name),
        size=LEAST_SIZE,
        turn=-90,
        colour="#555555",
        halo=OUTSIDE,
    )


def _few(values: tuple[float, ...], room: float) -> tuple[float, ...]:
    """The values, or none where their marks would stand too close."""
    return values if len(values) * CLOSEST < room else ()


def tell_steps(
    sheet: Sheet,
    frame: Frame,
    window: Window,
    steps: Steps,
    units: Units,
    ticked: tuple[bool, bool],
) -> None:
    """Say what the small ticks are, of those that there is room for."""
    depth = compact_length(steps.depth, units=units)
    other = show_value(steps.along(window.y.name), kind=window.y.kind, units=units).split(" (")[0]
    shown = [text for text, ticks in zip((depth, other), ticked, strict=True) if ticks]
    if not shown:
        return
    both = say("Small ticks inside the frame: steps of the shop, {} and {}")
    one = say("Small ticks inside the frame: steps of the shop, {}")
    below = frame.top + frame.height + BELOW
    sheet.words((frame.left, below), (both if shown[1:] else one).format(*shown), size=LEAST_SIZE,
                colour="#555555")  # fmt: skip
