"""The fretboard's widths and radii at the nut's front face and at its end."""

from __future__ import annotations

from .board import Board
from .found import Confidence, Findings

FLATTEST = 100_000.0
"""The largest radius [mm] that a job can state."""


def tell_width(board: Board, nut: float, found: Findings) -> None:
    """Widths and radii at nut and end; ``nut``: x of the nut's front face."""
    off = max(board.low.residual, board.high.residual)
    for key, x in (("neck.width_nut", nut), ("neck.width_end", board.end)):
        found.tell(key, 2 * board.half(x), "the fretboard's two edges in plan", residual=off)
    top = board.top
    if min(top.radius_at(nut), top.radius_at(board.end)) > FLATTEST:
        _tell_flat(board, nut, found)
        return
    trust = Confidence.SURE if top.residual < 0.01 else Confidence.LIKELY
    for key, x in (("neck.radius_nut", nut), ("neck.radius_end", board.end)):
        radius = top.radius_at(x)
        found.tell(key, float(radius), f"the fretboard's top, a {_SHAPES[top.shape]}",
                   residual=top.residual, confidence=trust)  # fmt: skip
    if top.shape in ("cone", "ruled"):
        found.notes.append(
            f"the fretboard's top is conical: its radius grows from {top.radius_at(nut):.1f} to "
            f"{top.radius_at(board.end):.1f} mm"
        )


_SHAPES = {
    "plane": "plane", "cylinder": "cylinder", "cone": "round cone",
    "ruled": "cone of circles square to the centreline",
}  # fmt: skip


def _tell_flat(board: Board, nut: float, found: Findings) -> None:
    """A flat top, which a job states by its largest radius; what that adds is its residual."""
    sag = 0.0
    for key, x in (("neck.radius_nut", nut), ("neck.radius_end", board.end)):
        sag = max(sag, board.half(x) ** 2 / (2 * FLATTEST))
        found.tell(key, FLATTEST, "flat, stated as the largest radius that a job knows",
                   residual=board.half(x) ** 2 / (2 * FLATTEST))  # fmt: skip
    found.notes.append(
        f"the fretboard's top is flat; a job states that as a radius of {FLATTEST:.0f} mm, which "
        f"lies {sag:.3f} mm lower at its edges"
    )
