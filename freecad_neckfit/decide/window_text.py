"""A window in plain lines."""

from __future__ import annotations

import numpy as np

from ..job.quantity import Units
from ..job.show import compact_length, show_value
from ..job.speech import say
from .pictures.window import stated_lines
from .shop import Steps, named_marks, sixty_fourths, whole_steps
from .window import Window


def window_lines(window: Window, *, name: str, units: Units, steps: Steps) -> list[str]:
    """Verdict, what works at the joint's own angle and depth, and what bounds it."""
    if window.empty:
        ranges = (
            say(window.x.name), _x(window.x.low, units), _x(window.x.high, units),
            say(window.y.name), _y(window, window.y.low, units), _y(window, window.y.high, units),
        )  # fmt: skip
        verdict = say("NO WINDOW - no {} from {} to {} with {} from {} to {} meets every demand.")
        return [
            f"{name}: {verdict.format(*ranges)}",
            say("The command mend looks for the smallest changes that free it."),
        ]
    verdict = say("within the window") if window.fits else say("OUTSIDE the window")
    lines = [f"{name}: {verdict}", *(f"  {line}" for line in stated_lines(window, units))]
    lines += ["", *_at_own_second(window, units, steps), "", say("Bounds of the window:")]
    lines += _bounds(window, units)
    return lines


def _at_own_second(window: Window, units: Units, steps: Steps) -> list[str]:
    own = f"{say(window.y.name)} {_y(window, window.chosen[1], units)}"
    stretches = window.stretches(y=window.chosen[1])
    if not stretches:
        return [say("At {} no depth works.").format(own)]
    spans = [_span(_x(low, units), _x(high, units)) for low, high in stretches]
    lines = [say("Depths that work at {}: {}").format(own, say(" and ").join(spans))]
    named = [m for m in named_marks(steps, units) if _within(m.depth, stretches)]
    marks, told = [say(m.name) for m in named], [m.depth for m in named]
    for low, high in stretches:
        marks += [m.name for m in sixty_fourths(low, high) if not np.isclose(m.depth, told).any()]
        if units is Units.MM and not steps.stops:
            marks += [f"{round(d, 3):g} mm" for d in whole_steps(low, high, steps.depth)]
    if len(marks) > 12:
        marks = [*marks[:11], "… " + say("{} more").format(len(marks) - 11)]
    found = "; ".join(marks) or say("none that the shop prefers")
    lines.append("  " + say("among them: {}").format(found))
    return lines


def _span(low: str, high: str) -> str:
    return say("{} to {}").format(low, high)


def _within(depth: float, stretches: tuple[tuple[float, float], ...]) -> bool:
    return any(low <= depth <= high for low, high in stretches)


def _bounds(window: Window, units: Units) -> list[str]:
    lines = []
    for edge in window.edges:
        (x0, y0), (x1, y1) = edge.points.min(axis=0), edge.points.max(axis=0)
        what = edge.demand.complaint if edge.demand else "the range looked at ends"
        x = f"{say(window.x.name)} {_span(_x(x0, units), _x(x1, units))}"
        y = f"{say(window.y.name)} {_span(_y(window, y0, units), _y(window, y1, units))}"
        lines.append(f"  {say(what)} ({x}, {y})")
    return lines


def window_record(window: Window, *, name: str) -> dict[str, object]:
    """The window as plain values for JSON: mm and degrees."""
    return {
        "name": name,
        "x": {"axis": window.x.name, "unit": window.x.kind.unit},
        "y": {"axis": window.y.name, "unit": window.y.kind.unit},
        "empty": window.empty,
        "stated": {"x": window.chosen[0], "y": window.chosen[1], "fits": window.fits},
        "margins": {d.key: m for d, m in window.chosen_margins.items()},
        "borders": [
            {
                "demand": edge.demand.key if edge.demand else None,
                "points": np.round(edge.points, 7).tolist(),
            }
            for edge in window.edges
        ],
    }


def _x(value: float, units: Units) -> str:
    return compact_length(value, units=units)


def _y(window: Window, value: float, units: Units) -> str:
    return show_value(value, kind=window.y.kind, units=units)
