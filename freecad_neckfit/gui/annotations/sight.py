"""The camera as seen from within the scene: from body frame to pixels, and back."""

from __future__ import annotations

from typing import Any

import numpy as np

from ...job.arrays import FloatArray

NEAREST = -0.9995
"""Depth just behind the near clipping plane (-1 near, 1 far): labels there are picked first."""


class Sight:
    """One view: ``matrix`` maps row points (x, y, z, 1) to clip space, ``size`` in pixels."""

    def __init__(self, matrix: FloatArray, size: tuple[int, int]) -> None:
        self.matrix = np.asarray(matrix, dtype=float)
        self.size = size
        self.inverse = np.linalg.inv(self.matrix)

    @property
    def key(self) -> bytes:
        """Equal for equal views."""
        return self.matrix.tobytes() + repr(self.size).encode()

    def pixels(self, points: Any) -> FloatArray:
        """(n, 3): x and y [pixel] and depth (-1 near, 1 far) of (n, 3) points.

        Points behind a perspective camera have a depth of infinity.
        """
        points = np.asarray(points, dtype=float).reshape(-1, 3)
        clip = points @ self.matrix[:3] + self.matrix[3]
        ahead = clip[:, 3] > 0
        seen = clip[:, :3] / np.where(ahead, clip[:, 3], 1.0)[:, None]
        found: FloatArray = (seen + np.array([1.0, 1.0, 0.0])) * [
            self.size[0] / 2,
            self.size[1] / 2,
            1.0,
        ]
        found[~ahead, 2] = np.inf
        return found

    def points(self, pixels: Any) -> FloatArray:
        """(n, 3) points at (n, 3) pixels and depths."""
        pixels = np.asarray(pixels, dtype=float).reshape(-1, 3)
        seen = pixels * [2 / self.size[0], 2 / self.size[1], 1.0] - [1.0, 1.0, 0.0]
        found = seen @ self.inverse[:3] + self.inverse[3]
        points: FloatArray = found[:, :3] / found[:, 3:]
        return points

    def nearest(self, pixels: Any) -> FloatArray:
        """(n, 3) points at (n, 2) pixels, in front of everything."""
        pixels = np.asarray(pixels, dtype=float).reshape(-1, 2)
        deep = np.full((len(pixels), 3), NEAREST)
        deep[:, :2] = pixels
        return self.points(deep)


def sight_of(action: Any) -> Sight:
    """The view that an action is drawing, with the placement it has reached."""
    from pivy import coin

    state = action.getState()
    model = np.array(coin.SoModelMatrixElement.get(state).getValue())
    view = np.array(coin.SoViewVolumeElement.get(state).getMatrix().getValue())
    # By index: newer pivys give a bare pointer for the value of a vector of short integers.
    size = coin.SoViewportRegionElement.get(state).getViewportSizePixels()
    return Sight(model @ view, (int(size[0]), int(size[1])))
