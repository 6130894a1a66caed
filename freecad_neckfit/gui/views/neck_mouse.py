"""The mouse over a neck that is being imported: which face is under it, which was clicked."""

from __future__ import annotations

from collections.abc import Callable
from typing import Any

from pivy import coin

from .neck_scene import NeckScene

STILL = 4
"""A button released farther [pixel] from where it was pressed has turned the view."""


class NeckMouse:
    """Tells ``on_hover`` the patch under the mouse (or None), ``on_click`` the one clicked.

    Only while ``is_wanted`` says so. The second argument of ``on_click`` says whether Ctrl was
    held. ``stop`` ends it.
    """

    def __init__(
        self,
        scene: NeckScene,
        *,
        is_wanted: Callable[[], bool],
        on_hover: Callable[[int | None], None],
        on_click: Callable[[int, bool], None],
    ) -> None:
        self._scene, self._is_wanted = scene, is_wanted
        self._on_hover, self._on_click = on_hover, on_click
        self._pressed: tuple[float, float] | None = None
        kinds = (
            (coin.SoLocation2Event.getClassTypeId(), self._moved),
            (coin.SoMouseButtonEvent.getClassTypeId(), self._button),
        )
        self._kept = [(kind, scene.view.addEventCallbackPivy(kind, heard)) for kind, heard in kinds]

    def stop(self) -> None:
        """Hear no more."""
        for kind, heard in self._kept:
            self._scene.view.removeEventCallbackPivy(kind, heard)
        self._kept = []

    def _moved(self, node: Any) -> None:
        if self._pressed is None and self._is_wanted():
            self._on_hover(self._scene.hit_at(_pixel(node.getEvent())))

    def _button(self, node: Any) -> None:
        event = node.getEvent()
        if event.getButton() != coin.SoMouseButtonEvent.BUTTON1:
            return
        at = _pixel(event)
        if event.getState() == coin.SoButtonEvent.DOWN:
            self._pressed = at
            return
        pressed, self._pressed = self._pressed, None
        if pressed is None or max(abs(a - b) for a, b in zip(at, pressed, strict=True)) > STILL:
            return
        patch = self._scene.hit_at(at) if self._is_wanted() else None
        if patch is not None:
            self._on_click(patch, bool(event.wasCtrlDown()))


def _pixel(event: Any) -> tuple[float, float]:
    # By index: newer pivys give a bare pointer for the value of a vector of short integers.
    found = event.getPosition()
    return float(found[0]), float(found[1])
