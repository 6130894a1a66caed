"""What a file held: solids of the kernel, or triangles where it held only those."""

from __future__ import annotations

from dataclasses import dataclass, field, replace
from typing import Any

import numpy as np

from ...job.arrays import FloatArray


@dataclass(frozen=True)
class Part3D:
    """One thing read from a file.

    ``name``: the file's. ``solids``: valid, closed and right side out [mm]; empty for a mesh.
    ``mesh``: (n, 3, 3) corners of triangles facing outward [mm]; None where there are solids.
    ``notes``: what was mended or left out, a sentence each. ``doubts``: what should be looked at
    before the figures are trusted.
    """

    name: str
    solids: tuple[Any, ...] = ()
    mesh: FloatArray | None = None
    notes: tuple[str, ...] = ()
    doubts: tuple[str, ...] = ()
    points: FloatArray = field(default_factory=lambda: np.zeros((0, 3)))

    @property
    def is_mesh(self) -> bool:
        """Whether the file held triangles only."""
        return self.mesh is not None

    def noting(self, *more: str) -> Part3D:
        """The same with further notes."""
        return replace(self, notes=(*self.notes, *more))

    def scaled(self, factor: float) -> Part3D:
        """The same, ``factor`` times as large."""
        solids = []
        for solid in self.solids:
            larger = solid.copy()
            larger.scale(factor)
            solids.append(larger)
        mesh = None if self.mesh is None else self.mesh * factor
        return replace(self, solids=tuple(solids), mesh=mesh, points=self.points * factor)

    def size(self) -> FloatArray:
        """(3,) extents [mm] along its own longest axis and square to it, longest first."""
        middle = self.points.mean(axis=0)
        axes = np.linalg.svd(self.points - middle, full_matrices=False)[2]
        spans = (self.points - middle) @ axes.T
        return np.sort(spans.max(axis=0) - spans.min(axis=0))[::-1]
