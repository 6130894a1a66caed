"""While a value is turned, the neck in the view sinks and tilts along; the document stays."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any

import FreeCAD
from pivy import coin

from ...features.make import parts_of
from ...job.frames import seat


class NeckInView:
    """The seated neck's place in all views, apart from its document object's placement."""

    def __init__(self, joint: Any) -> None:
        self._joint = joint
        self._is_away = False

    def sit(self, *, before: Mapping[str, Any], now: Mapping[str, Any]) -> None:
        """Draw the neck, which was built for the values ``before``, where it sits by ``now``."""
        moved = seat(now).matrix() @ _inverse(seat(before).matrix())
        shift = FreeCAD.Placement(FreeCAD.Matrix(*moved.ravel().tolist()))
        for part, node in self._drawn():
            _place(node, part.Placement.multiply(shift))
        self._is_away = True

    def back(self) -> None:
        """Draw it where its document object is."""
        if not self._is_away:
            return
        for part, node in self._drawn():
            _place(node, part.Placement)
        self._is_away = False

    def _drawn(self) -> list[tuple[Any, Any]]:
        """The parts that show the neck, each with the node that places it."""
        found = []
        for part in parts_of(self._joint):
            if "heel" not in part.Parts:
                continue
            root = part.ViewObject.RootNode
            nodes = [root.getChild(i) for i in range(root.getNumChildren())]
            found += [(part, n) for n in nodes[:3] if n.isOfType(coin.SoTransform.getClassTypeId())]
        return found


def _inverse(matrix: Any) -> Any:
    import numpy as np

    return np.linalg.inv(matrix)


def _place(node: Any, placement: Any) -> None:
    node.translation.setValue(*placement.Base)
    node.rotation.setValue(*placement.Rotation.Q)
