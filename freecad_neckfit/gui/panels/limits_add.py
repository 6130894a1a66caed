"""A list from which one more dimension is chosen to vary."""

from __future__ import annotations

from collections.abc import Iterable

from PySide import QtCore, QtGui

from ...decide.tolerances.dimension import READ
from ...job.parameters import ALL
from ...job.quantity import Kind
from ..translate import tr
from .limits_cells import name_of

UNVARIED = ("limits", "shop", "climate")
"""Groups that are asked for, not made."""


class AddBox(QtGui.QComboBox):
    """Tells with ``chosen`` (key) which dimension is to be added."""

    chosen = QtCore.Signal(str)

    def __init__(self) -> None:
        super().__init__()
        self.setObjectName("NeckFitAddLimits")
        self.activated.connect(self._activated)

    def offer(self, taken: Iterable[str]) -> None:
        """Offer every dimension that any demand reads and that is not ``taken``."""
        there = set(taken)
        self.clear()
        self.addItem(tr("Let another dimension vary…"), "")
        for key, p in ALL.items():
            can_vary = p.kind in (Kind.LENGTH, Kind.ANGLE) and p.group not in UNVARIED
            if key in READ and can_vary and key not in there:
                self.addItem(name_of(key), key)

    def _activated(self, index: int) -> None:
        key = str(self.itemData(index))
        self.setCurrentIndex(0)
        if key:
            self.chosen.emit(key)
