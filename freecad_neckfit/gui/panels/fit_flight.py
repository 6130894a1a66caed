"""The camera flies to a place without turning, so that the designer keeps his bearings."""

from __future__ import annotations

from typing import Any

from pivy import coin
from PySide import QtCore

MOST_SEEN = 110.0
"""Height of what is seen after the flight [mm]: the joint, not the whole body; closer stays so."""
DURATION, STEP = 300, 15
"""Of the flight, and between two pictures [ms]."""


class Flight(QtCore.QObject):
    """One flight at a time; a new one starts from where the camera is."""

    def __init__(self, parent: Any = None) -> None:
        super().__init__(parent)
        self._clock, self._timer = QtCore.QElapsedTimer(), QtCore.QTimer(self)
        self._timer.setInterval(STEP)
        self._timer.timeout.connect(self._go_on)
        self._camera: Any = None

    def to(self, camera: Any, place: tuple[float, float, float]) -> None:
        """Fly until ``place`` [mm, global] stands in the middle of the camera's view."""
        ahead = camera.orientation.getValue().multVec(coin.SbVec3f(0, 0, -1))
        distance = camera.focalDistance.getValue()
        if camera.isOfType(coin.SoOrthographicCamera.getClassTypeId()):
            zoom = min(1.0, MOST_SEEN / camera.height.getValue())
        else:
            seen = 2 * distance * _half_angle_tangent(camera)
            zoom = min(1.0, MOST_SEEN / seen)
            distance *= zoom
        self._camera, self._zoom = camera, zoom
        self._from = camera.position.getValue(), camera.focalDistance.getValue()
        self._height = camera.height.getValue() if hasattr(camera, "height") else 0.0
        self._to = coin.SbVec3f(*place) - ahead * distance, distance
        self._clock.start()
        self._timer.start()

    @property
    def is_under_way(self) -> bool:
        """Whether the camera still moves."""
        return bool(self._timer.isActive())

    def stop(self) -> None:
        """Stay where the camera is."""
        self._timer.stop()
        self._camera = None

    def _go_on(self) -> None:
        share = min(self._clock.elapsed() / DURATION, 1.0)
        eased = share * share * (3 - 2 * share)
        camera = self._camera
        camera.position = self._from[0] + (self._to[0] - self._from[0]) * eased
        camera.focalDistance = self._from[1] + (self._to[1] - self._from[1]) * eased
        if hasattr(camera, "height"):
            camera.height = self._height * self._zoom**eased
        if share >= 1.0:
            self.stop()


def _half_angle_tangent(camera: Any) -> float:
    import math

    return math.tan(float(camera.heightAngle.getValue()) / 2)
