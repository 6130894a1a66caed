"""What the adoption panel asks for next, in one line."""

from __future__ import annotations

from ..translate import tr


def next_click(role: str, row: str) -> str:
    """What to click in the 3D view or the tree for a row of a role."""
    return {
        "top": tr("Click the top of the body, in the 3D view."),
        "centreline": tr("Click an edge or a line that runs along the middle of the neck pocket."),
        "floor": tr("Click the floor of the neck pocket."),
        "system": tr("Click a coordinate system, in the 3D view or in the tree."),
        "solid": {
            "body": tr("Click the body, in the 3D view or in the tree."),
            "neck": tr("Click the neck, in the 3D view or in the tree."),
            "plate": tr("Click the cover plate, in the 3D view or in the tree."),
        }[role],
    }[row]


def ready(role: str) -> str:
    """That nothing is missing any more, and what to look at before OK is pressed."""
    if role == "body":
        return tr(
            "Ready: press OK. First see that the arrow points to the bridge; if not, turn the "
            "centreline round."
        )
    return tr("Ready: press OK.")
