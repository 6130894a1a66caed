"""A seat with its sine and cosine worked out once, for the many points that strings need."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np

from ..job.arrays import Array
from ..job.frames import Seat


@dataclass(frozen=True)
class Seated:
    """Where the neck lies.

    ``sin``, ``cos``, ``tan`` of its tilt; ``x0``, ``z0``: heel end's bottom [mm].
    """

    sin: Array
    cos: Array
    x0: Array
    z0: Array
    tan: Array

    @classmethod
    def of(cls, seat: Seat) -> Seated:
        """Work out sine and cosine of the neck's tilt, shim included."""
        sin, cos = np.sin(seat.tilt), np.cos(seat.tilt)
        return cls(sin=sin, cos=cos, x0=seat.x0, z0=seat.z0, tan=sin / cos)

    def to_body(self, *, x: Array, z: Array) -> tuple[Array, Array]:
        """Body-frame (X, Z) [mm] of neck-frame (x, z) [mm]."""
        return self.body_x(x=x, z=z), self.body_z(x=x, z=z)

    def body_x(self, *, x: Array, z: Array) -> Array:
        """Body-frame X [mm] of neck-frame (x, z) [mm]."""
        return self.x0 + x * self.cos - z * self.sin

    def body_z(self, *, x: Array, z: Array) -> Array:
        """Body-frame Z [mm] of neck-frame (x, z) [mm]."""
        return self.z0 + x * self.sin + z * self.cos
