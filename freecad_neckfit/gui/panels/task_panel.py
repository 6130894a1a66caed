"""What the task panels that are open beside the 3D view have in common."""

from __future__ import annotations

from typing import Any

from PySide import QtGui


class TaskPanel:
    """Buttons, and what FreeCAD permits while a panel is open; the names are FreeCAD's."""

    def getStandardButtons(self) -> Any:  # noqa: N802
        """OK and Cancel."""
        both = QtGui.QDialogButtonBox.Ok | QtGui.QDialogButtonBox.Cancel
        return getattr(both, "value", None) or int(both)

    def isAllowedAlterSelection(self) -> bool:  # noqa: N802
        """Faces, solids and labels are picked in the 3D view."""
        return True

    def isAllowedAlterView(self) -> bool:  # noqa: N802
        """The designer may look at the model from anywhere."""
        return True

    def isAllowedAlterDocument(self) -> bool:  # noqa: N802
        """Other commands would become part of the panel's step of undo."""
        return False
