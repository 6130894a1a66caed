"""Where the views of the pocket drawing stand on their sheet, and which scale has room there."""

from __future__ import annotations

from dataclasses import dataclass

from ..job.quantity import Units
from ..run.chain import Verdict
from .helvetica import width
from .ink import Page, Pen, Round, Words, arrow
from .joint import Joint, tight_box
from .paper import BLOCK_HEIGHT, WIDTH, Angle, Paper
from .plan_view import plan_view, y_columns
from .section_view import across_view, along_view, cut_at, overhang_view
from .view import TITLE_HEIGHT, View, Window, title_words

DETAILS = ((10.0, "10:1"), (5.0, "5:1"), (2.0, "2:1"))
BREAK, WIDE_BREAK = 40.0, 68.0
"""Paper [mm] between pocket and saddles, where the drawing is broken: at 1:1, and at less, where
figures stand beside their lines."""
SADDLE = (-9.0, 10.0)
"""How far [mm] the drawing shows before the first saddle and behind the last."""
BEHIND = 8.0
"""How far [mm] it shows behind the fretboard's end."""
DETAIL_TEXT = {Units.MM: 72.0, Units.INCH: 84.0}
"""Room [mm of paper] for the figures beside the enlarged detail."""


@dataclass(frozen=True)
class Layout:
    """A drawing at one scale: what must be shown, and where its views stand."""

    joint: Joint
    paper: Paper
    angle: Angle
    scale: float
    x: tuple[float, float]
    """Model X of the near part of plan and section."""
    y: tuple[float, float]
    z: tuple[float, float]
    saddle: tuple[float, float]
    lanes: tuple[int, int]
    """Rows of dimensions below the plan and left of it."""

    @classmethod
    def of(cls, joint: Joint, paper: Paper, angle: Angle, scale: float) -> Layout:
        """Measure what must be shown."""
        board = joint.board_box
        end = max(float(board.XMax), 0.0) + BEHIND
        half = max(
            joint.pocket.half_width(0), joint.pocket.half_width(-joint.length("pocket.length"))
        )
        low = min(
            tight_box(b).ZMin
            for n, b in joint.parts.items()
            if n.startswith(("body", "screw", "neck_p"))
        )
        xs = [float(x) for x in joint.case.saddles.x]
        rows = len({float(x) for x in joint.screws.x}) + 1
        columns = y_columns(joint, scale)
        tall = [joint.board, *(joint.parts[n] for n in ("frets", "saddles") if n in joint.parts)]
        high = max(tight_box(part).ZMax for part in tall)
        return cls(
            joint, paper, angle, scale,
            x=(round(-joint.length("pocket.length") - 14, 3), round(end, 3)),
            y=(round(-half - 14, 3), round(half + 14, 3)),
            z=(round(low - 2, 3), round(high + 2, 3)),
            saddle=(round(min(xs) + SADDLE[0], 3), round(max(xs) + SADDLE[1], 3)),
            lanes=(rows, columns),
        )  # fmt: skip

    def _size(self, span: tuple[float, float]) -> float:
        return (span[1] - span[0]) * self.scale

    @property
    def _break(self) -> float:
        return BREAK if self.scale >= 1 else WIDE_BREAK

    @property
    def _left(self) -> float:
        return self.paper.low[0] + 5 + max(7.5 * self.lanes[1], 24.0)

    @property
    def _right_column(self) -> float:
        return self._left + self._size(self.x) + self._break + self._size(self.saddle) + 14

    @property
    def _tall(self) -> tuple[float, float]:
        """Height of the section's band and of the plan's, with titles and dimensions [mm]."""
        return self._size(self.z) + 22, self._size(self.y) + 7.5 * (self.lanes[0] + 2) + 18

    def fits(self) -> bool:
        """Whether everything finds room on the sheet."""
        inner = self.paper.high[1] - self.paper.low[1]
        across = self._right_column + self._size(self.y) + 10
        # Plan or section stands beside the title block and its notes.
        beside = self._right_column - 12 <= self.paper.high[0] - WIDTH
        return sum(self._tall) <= inner - 6 and across <= self.paper.high[0] and beside

    def views(self) -> tuple[tuple[View, ...], str]:
        """The views in their places, and the enlarged detail's scale.

        The plan stands below the section in first angle, above it in third.
        """
        section, plan = self._tall
        first = self.angle is Angle.FIRST
        inner_top, low = self.paper.high[1], self.paper.low[1]
        spare = (inner_top - low - section - plan) / 2
        section_y = inner_top - 10 - self._size(self.z) if first else low + 12 + spare / 2
        plan_y = (
            low + 7.5 * self.lanes[0] + 6 + spare / 2
            if first
            else inner_top - 11 - 7.5 * 2 - self._size(self.y)
        )
        views = [
            self._plan(plan_y),
            self._along(section_y),
            self._across(inner_top - 10 - self._size(self.z)),
        ]
        top = views[2].windows[0].at[1] - 20
        detail, detail_name = self._detail(top)
        return (*views, detail), detail_name

    def _windows(self, y: tuple[float, float], at_y: float) -> tuple[Window, ...]:
        second = self._left + self._size(self.x) + self._break
        return (
            Window(self.x, y, (self._left, at_y)),
            Window(self.saddle, y, (second, at_y)),
        )

    def _plan(self, at_y: float) -> View:
        view = plan_view(self.joint, scale=self.scale, windows=self._windows(self.y, at_y))
        top = at_y + self._size(self.y)
        view.notes.append(title_words(view.title, (self._left, top + 7.5 * 2 + 4), "start"))
        self._letters(view, at_y, top)
        return view

    def _letters(self, view: View, low: float, top: float) -> None:
        """Where the section across is cut, and which way it is looked at."""
        x = view.spot(cut_at(self.joint), 0)[0]
        way = 1.0 if self.angle is Angle.FIRST else -1.0
        # Beside the windows, where no outline can run through them.
        for y in (top + 0.5, low - 4.5):
            page = Page(0, 0)
            page.line((x, y), (x, y + 4), pen=Pen.OUTLINE)
            page.line((x, y + 2), (x - way * 6, y + 2))
            letter = Words((x - (8 if way > 0 else 3.5), y + 0.25), "A", 3.5, "middle")
            view.notes += [*page.items, arrow((x, y + 2), (x - way * 6, y + 2)), letter]

    def _along(self, at_y: float) -> View:
        view = along_view(self.joint, scale=self.scale, windows=self._windows(self.z, at_y))
        # Left of the ring, which reaches up beside it where the overhang is long.
        end = self._ring(view) - 2
        left = min(self._left, end - width(view.title, height=TITLE_HEIGHT))
        at = left, at_y + self._size(self.z) + 3
        view.notes.append(title_words(view.title, at, "start"))
        return view

    def _ring(self, view: View) -> float:
        """Where the enlarged detail is taken from; returns how far left it reaches."""
        board = self.joint.board_box
        x, y = view.spot((max(float(board.XMax), 0.0) - 2) / 2, float(board.ZMax) / 2)
        radius = max(float(board.XMax) + 5, float(board.ZMax) + 6, 8.0) / 2 * self.scale + 1
        view.notes.append(Round((x, y), radius, pen=Pen.DIMENSION))
        view.notes.append(Words((x + 0.75 * radius + 0.8, y + 0.75 * radius), "B", 3.5))
        return x - radius

    def _across(self, at_y: float) -> View:
        mirrored = self.angle is Angle.FIRST
        window = Window(self.y, self.z, (self._right_column, at_y))
        view = across_view(self.joint, scale=self.scale, windows=(window,), mirrored=mirrored)
        middle = self._right_column + self._size(self.y) / 2
        view.notes.append(title_words(view.title, (middle, at_y + self._size(self.z) + 3)))
        return view

    def _detail(self, top: float) -> tuple[View, str]:
        joint = self.joint
        board = joint.board_box
        x = (-5.0, max(round(float(board.XMax), 3), 0.0) + 3.0)
        # Over the notes, and over the warning that a joint which does not fit carries.
        notes = 41 if joint.result.verdict is Verdict.FITS else 48
        bottom = self.paper.low[1] + BLOCK_HEIGHT + notes
        room = self.paper.high[0] - self._right_column - DETAIL_TEXT[joint.units], top - bottom
        high = round(float(board.ZMax), 3) + 1.5
        scale, name = next(
            (
                found
                for found in DETAILS
                if (x[1] - x[0]) * found[0] <= room[0]
                and (high + _below(found[0])) * found[0] <= room[1]
            ),
            DETAILS[-1],
        )
        z = (-_below(scale), high)
        at = (self._right_column, top - (z[1] - z[0]) * scale)
        view = overhang_view(joint, scale=scale, windows=(Window(x, z, at),))
        middle = at[0] + (x[1] - x[0]) * scale / 2
        view.notes.append(title_words(f"{view.title} ({name})", (middle, top + 4)))
        return view, name


def _below(scale: float) -> float:
    """How far [mm] the enlarged detail reaches below the top."""
    return max(4.0, 14 / scale)
