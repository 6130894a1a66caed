"""What part objects show: the joint's solids, in the joint's frame."""

from __future__ import annotations

from fnmatch import fnmatchcase
from typing import Any

from .assemblies import assembly_of
from .gather import joint_digest

SHOWN: dict[str, tuple[str, ...]] = {
    "RoutedBody": ("body",),
    "SeatedNeck": ("heel", "shaft", "fretboard", "binding_*", "frets", "inserts"),
    "SeatedPlate": ("plate",),
    "Shim": ("shim",),
    "Bridge": ("bridge", "saddles"),
    "Pickups": ("pickup_*",),
    "Screws": ("neck_plate", "screw_*"),
}
"""Part objects of a joint and the solids that each shows; ``*`` stands for any ending."""


def seat_of(joint: Any) -> Any:
    """Where a joint belongs in its container: on its adopted body, or where it was put."""
    from .adopt_given import adopts, joint_frame
    from .adopt_shape import placement_of

    if not adopts(joint.Body):
        return joint.Placement
    container = joint.getGlobalPlacement().multiply(joint.Placement.inverse())
    return container.inverse().multiply(placement_of(joint_frame(joint)))


def show_parts(obj: Any) -> None:
    """Give a part object its solids and its joint's placement.

    What the joint has not (a plate where none is fitted) leaves the object without a shape.
    """
    digest = joint_digest(obj.Joint)
    if obj.BuiltFrom != digest:
        obj.Shape = _shape(obj, assembly_of(obj.Joint).parts)
        obj.BuiltFrom = digest
    # FreeCAD keeps what is linked in one container, so that both are placed in the same frame.
    obj.Placement = obj.Joint.Placement


def _shape(obj: Any, parts: dict[str, Any]) -> Any:
    import FreeCAD  # noqa: F401 (Part crashes where it is imported first)
    import Part

    shapes = [
        _plain(s) for name, s in parts.items() if any(fnmatchcase(name, p) for p in obj.Parts)
    ]
    if not shapes:
        return Part.Shape()
    return shapes[0] if len(shapes) == 1 else Part.Compound(shapes)


def _plain(shape: Any) -> Any:
    """A copy without the element map that FreeCAD 1.1 would save along with it."""
    copy = shape.copy()
    copy.Tag = 0
    return copy
