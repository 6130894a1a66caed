"""Where the camera looks while a neck is imported, and how it is put back."""

from __future__ import annotations

import math
from typing import Any

import FreeCADGui
import numpy as np
from pivy import coin

from ...job.arrays import FloatArray
from ...job.errors import BadInput
from ..translate import tr
from .covered import covered

AWAY = 400.0
"""Least distance [mm] of the camera: nothing of a neck reaches behind it."""


def view_of(document: Any) -> Any:
    """The document's 3D view. Raises BadInput where none is open."""
    shown = FreeCADGui.getDocument(document.Name)
    active = getattr(shown, "ActiveView", None)
    if hasattr(active, "getSceneGraph"):
        return active
    views = shown.mdiViewsOfType("Gui::View3DInventor") if shown is not None else []
    if not views:
        raise BadInput(tr("No 3D view of the document is open to show the neck in; open one."))
    return views[0]


def look(view: Any, document: Any, *, back: FloatArray, at: FloatArray, height: float) -> None:
    """Look from the direction ``back`` at a point, with so much height [mm] in the view."""
    camera = view.getCameraNode()
    camera.orientation.setValue(_turned(back))
    if camera.isOfType(coin.SoOrthographicCamera.getClassTypeId()):
        away = max(height, AWAY)
        camera.height.setValue(height)
    else:
        away = height / 2 / math.tan(camera.heightAngle.getValue() / 2)
    ahead = camera.orientation.getValue().multVec(coin.SbVec3f(0, 0, -1))
    camera.focalDistance.setValue(away)
    right = camera.orientation.getValue().multVec(coin.SbVec3f(1, 0, 0))
    aside = right * (_shift(view, document) * height)
    camera.position.setValue(coin.SbVec3f(*map(float, at)) - ahead * away + aside)


def kept(camera: Any) -> dict[str, Any]:
    """What ``put_back`` needs of a camera."""
    found = {
        "position": tuple(camera.position.getValue().getValue()),
        "orientation": tuple(camera.orientation.getValue().getValue()),
        "focalDistance": camera.focalDistance.getValue(),
    }
    if hasattr(camera, "height"):
        found["height"] = camera.height.getValue()
    return found


def put_back(camera: Any, before: dict[str, Any]) -> None:
    """Let a camera look where it did."""
    for name, value in before.items():
        field = camera.getField(name)
        if field is None:  # another kind of camera since
            continue
        field.setValue(*value) if isinstance(value, tuple) else field.setValue(value)


def _shift(view: Any, document: Any) -> float:
    """How far right of the free part's middle the view's middle is, by the view's height.

    Newer versions of FreeCAD lay their panels over the view.
    """
    wide, high = view.getSize()
    left, right = 0.0, float(wide)
    for box in covered(document.Name)((wide, high)):
        if box.height < high / 2:
            continue
        if box.x + box.width / 2 > wide / 2:
            right = min(right, box.x)
        else:
            left = max(left, box.right)
    return (wide - left - right) / 2 / high if right - left > wide / 4 else 0.0


def _turned(back: FloatArray) -> Any:
    """A camera's rotation that looks from there, with Z up."""
    back = back / np.linalg.norm(back)
    up = np.array([0.0, 0.0, 1.0]) if abs(back[2]) < 0.95 else np.array([1.0, 0.0, 0.0])
    right = np.cross(up, back)
    right /= np.linalg.norm(right)
    rows = np.eye(4)
    rows[:3, :3] = [right, np.cross(back, right), back]
    return coin.SbRotation(coin.SbMatrix(*map(float, rows.ravel())))
