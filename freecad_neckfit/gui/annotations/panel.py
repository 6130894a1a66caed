"""A picture that stands at a fixed place of the view: headline, scale bar."""

from __future__ import annotations

from collections.abc import Sequence

from pivy import coin

from . import nodes
from .boxes import Box
from .pictures import Picture
from .sight import Sight


class Panel:
    """One picture with the text it shows."""

    def __init__(self, name: str) -> None:
        self._text, self._at, self._image = coin.SoInfo(), nodes.translation(), nodes.image()
        self._switch = nodes.switch(self._text, self._at, self._image, on=False)
        self._drawn: Picture | None = None
        # What only informs must not catch the mouse before the model.
        style = coin.SoPickStyle()
        style.style = coin.SoPickStyle.UNPICKABLE
        self.node = nodes.separator(style, self._switch, name=name)

    def write(self, lines: Sequence[str], picture: Picture) -> Picture:
        """Show ``picture``, which says ``lines``."""
        nodes.put_text(self._text, lines)
        self._drawn = nodes.put_picture(self._image, picture, instead_of=self._drawn)
        return picture

    def place(self, sight: Sight, box: Box) -> None:
        """Stand there [pixel]."""
        with nodes.quietly(self._at):
            self._at.translation.setValue(*map(float, sight.nearest([box.x, box.y])[0]))
        nodes.turn(self._switch, on=True)

    def hide(self) -> None:
        """Draw nothing."""
        nodes.turn(self._switch, on=False)

    @property
    def text(self) -> str:
        """What it says, empty while hidden."""
        return str(self._text.string.getValue()) if nodes.is_on(self._switch) else ""
