"""A window in plain lines."""

from __future__ import annotations

import numpy as np

from ..job.quantity import Units
from ..job.show import compact_length, show_value
from .pictures.window import stated_lines
from .shop import Steps, named_marks, sixty_fourths, whole_steps
from .window import Window


def window_lines(window: Window, *, name: str, units: Units, steps: Steps) -> list[str]:
    """Verdict, what works at the joint's own angle and depth, and what bounds it."""
    if window.empty:
        verdict = (
            f"{name}: NO WINDOW - no {window.x.name} from {_x(window.x.low, units)} to "
            f"{_x(window.x.high, units)} with {window.y.name} from "
            f"{_y(window, window.y.low, units)} to {_y(window, window.y.high, units)} meets every "
            "demand."
        )
        return [
            verdict,
            "The command mend looks for the smallest changes that free it.",
        ]
    verdict = "within the window" if window.fits else "OUTSIDE the window"
    lines = [f"{name}: {verdict}", *(f"  {line}" for line in stated_lines(window, units))]
    lines += ["", *_at_own_second(window, units, steps), "", "Bounds of the window:"]
    lines += _bounds(window, units)
    return lines


def _at_own_second(window: Window, units: Units, steps: Steps) -> list[str]:
    own = f"{window.y.name} {_y(window, window.chosen[1], units)}"
    stretches = window.stretches(y=window.chosen[1])
    if not stretches:
        return [f"At {own} no depth works."]
    said = " and ".join(f"{_x(low, units)} to {_x(high, units)}" for low, high in stretches)
    lines = [f"Depths that work at {own}: {said}"]
    named = [m for m in named_marks(steps, units) if _within(m.depth, stretches)]
    marks, told = [m.name for m in named], [m.depth for m in named]
    for low, high in stretches:
        marks += [m.name for m in sixty_fourths(low, high) if not np.isclose(m.depth, told).any()]
        if units is Units.MM and not steps.stops:
            marks += [f"{round(d, 3):g} mm" for d in whole_steps(low, high, steps.depth)]
    if len(marks) > 12:
        marks = [*marks[:11], f"… {len(marks) - 11} more"]
    lines.append(f"  among them: {'; '.join(marks) or 'none that the shop prefers'}")
    return lines


def _within(depth: float, stretches: tuple[tuple[float, float], ...]) -> bool:
    return any(low <= depth <= high for low, high in stretches)


def _bounds(window: Window, units: Units) -> list[str]:
    lines = []
    for edge in window.edges:
        (x0, y0), (x1, y1) = edge.points.min(axis=0), edge.points.max(axis=0)
        what = edge.demand.complaint if edge.demand else "the range looked at ends"
        lines.append(
            f"  {what} ({window.x.name} {_x(x0, units)} to {_x(x1, units)}, "
            f"{window.y.name} {_y(window, y0, units)} to {_y(window, y1, units)})"
        )
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
