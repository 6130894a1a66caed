"""Words of the screen in the designer's language."""

from __future__ import annotations

import FreeCAD


def tr(text: str) -> str:
    """``text`` in the language that FreeCAD is set to; as it is where no translation is known."""
    return str(FreeCAD.Qt.translate("NeckFit", text))
