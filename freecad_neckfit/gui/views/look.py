"""Where the camera looks."""

from __future__ import annotations

from typing import Any

import FreeCAD
import FreeCADGui
from pivy import coin

from ...features.make import parts_of

HEIGHT = 150.0
"""Height of what is seen [mm] when a new joint is shown: pocket, overhang and pickups."""
ISOMETRIC = (0.424708, 0.17592, 0.339851, 0.820473)
"""Rotation of FreeCAD's isometric view."""


def look_at(joint: Any, camera: Any = None) -> None:
    """Turn the view to the joint in FreeCAD's isometric direction, near enough to read labels.

    ``camera``: another view's than the one in front.
    """
    camera = camera or _camera(joint.Document)
    if camera is None:
        return
    camera.orientation = coin.SbRotation(*ISOMETRIC)
    centre_on(joint, (0.0, 0.0, 0.0), camera)
    if hasattr(camera, "height"):
        camera.height = HEIGHT


def see_whole(joint: Any, camera: Any, size: tuple[int, int]) -> None:
    """Bring all of the joint's solids into a picture of a size [pixel], without turning.

    At once, by the camera itself: FreeCAD's own way may glide there, and be seen half way.
    """
    to_world = joint.getGlobalPlacement().multiply(joint.Placement.inverse()).toMatrix()
    box = FreeCAD.BoundBox()
    for part in parts_of(joint):
        if not part.Shape.isNull():
            box.add(part.Shape.BoundBox.transformed(to_world))
    if not box.isValid():
        return
    stand_in, place, cube = coin.SoSeparator(), coin.SoTranslation(), coin.SoCube()
    place.translation = tuple(box.Center)
    cube.width, cube.height, cube.depth = box.XLength, box.YLength, box.ZLength
    stand_in.addChild(place)
    stand_in.addChild(cube)
    camera.viewAll(stand_in, coin.SbViewportRegion(*size))


def centre_on(joint: Any, place: tuple[float, float, float], camera: Any = None) -> None:
    """Bring a place [mm, body frame] into the middle of the view without turning or zooming.

    ``camera``: another view's than the one in front.
    """
    camera = camera or _camera(joint.Document)
    if camera is None:
        return
    at = joint.getGlobalPlacement().multVec(FreeCAD.Vector(*place))
    ahead = camera.orientation.getValue().multVec(coin.SbVec3f(0, 0, -1))
    camera.position = coin.SbVec3f(at.x, at.y, at.z) - ahead * camera.focalDistance.getValue()


def _camera(document: Any) -> Any:
    found = FreeCADGui.getDocument(document.Name)
    views = found.mdiViewsOfType("Gui::View3DInventor") if found is not None else []
    active = getattr(found, "ActiveView", None)
    view = active if hasattr(active, "getCameraNode") else (views[0] if views else None)
    return view.getCameraNode() if view is not None else None
