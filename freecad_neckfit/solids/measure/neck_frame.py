"""The neck frame, read from the heel as it lies in the body frame."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np

from ...job.arrays import FloatArray
from .facets import Facets
from .failures import NotFound


@dataclass(frozen=True)
class NeckFrame:
    """Heel end's bottom and the neck's axes, in the body frame.

    ``origin``: (3,) [mm]; ``along``: toward the bridge; ``up``: from heel bottom to fretboard.
    ``bottom``: indices of the faces that make up the heel's bottom.
    """

    origin: FloatArray
    along: FloatArray
    up: FloatArray
    bottom: tuple[int, ...]

    @classmethod
    def read(cls, heel: Facets) -> NeckFrame:
        """Find the heel's bottom as its largest plane that looks down; its end as the farthest x.

        Valid for a heel whose bottom leans less than 30 degrees. Raises NotFound where no face
        looks down.
        """
        down = heel.facing(axis=2, sign=-1, least=0.85)
        if not len(down):
            raise NotFound("the heel has no face that looks down")
        edges = down.points[:, 1:] - down.points[:, :1]
        size = np.linalg.norm(np.cross(edges[:, 0], edges[:, 1]), axis=1)
        share = {int(f): float(size[down.face == f].sum()) for f in np.unique(down.face)}
        chosen = max(share, key=lambda f: share[f])
        one = np.flatnonzero(down.face == chosen)[np.argmax(size[down.face == chosen])]
        up, on_plane = -down.normal[one], down.points[one, 0]
        level = np.abs((down.points - on_plane) @ up).max(axis=1)
        parallel = down.normal @ -up > 1 - 1e-9
        bottom = tuple(int(f) for f in np.unique(down.face[(level < 1e-6) & parallel]))
        across = np.array([0.0, 1.0, 0.0])
        along = np.cross(across, up)
        along /= np.linalg.norm(along)
        corners = heel.points.reshape(-1, 3) - on_plane
        end = float((corners @ along).max())
        origin = on_plane + end * along
        origin = origin - origin[1] * across
        return cls(origin, along, up, bottom)

    def to_neck(self, points: FloatArray) -> FloatArray:
        """(…, 3) neck-frame x, y, z [mm] of body-frame points."""
        off = np.asarray(points, dtype=float) - self.origin
        return np.stack([off @ self.along, off[..., 1], off @ self.up], axis=-1)

    def to_body(self, *, x: FloatArray, y: FloatArray, z: FloatArray) -> FloatArray:
        """(…, 3) body-frame points of neck-frame x, y, z [mm]."""
        x, y, z = np.broadcast_arrays(x, y, z)
        across = np.array([0.0, 1.0, 0.0])
        return np.asarray(
            self.origin + x[..., None] * self.along + y[..., None] * across
            + z[..., None] * self.up
        )  # fmt: skip

    def bottom_height(self, plan: FloatArray) -> FloatArray:
        """(k,) Z [mm] of the heel's bottom plane at plan points (k, 2)."""
        off = np.asarray(plan, dtype=float) - self.origin[:2]
        return np.asarray(self.origin[2] - (off @ self.up[:2]) / self.up[2])
