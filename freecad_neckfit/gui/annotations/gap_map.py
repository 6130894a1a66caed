"""The room under the overhang as coloured facets, and the bar that explains the colours."""

from __future__ import annotations

import json
from collections.abc import Mapping
from dataclasses import dataclass
from typing import Any

import numpy as np
from pivy import coin

from ...job.arrays import FloatArray
from ...job.quantity import Units
from ..figures import compact_length
from ..translate import tr
from . import nodes
from .palette import VERMILLION, Colour, gap_colour


@dataclass(frozen=True)
class GapField:
    """Room [mm] on a raster: ``x`` (n,), ``y`` (m,) [mm], ``gap`` (n, m), ``z`` (n, m) [mm].

    ``gap`` is NaN where there is nothing to measure, negative where the parts interfere. ``z`` is
    the height at which the map is drawn: the overhang's underside.
    """

    x: FloatArray
    y: FloatArray
    gap: FloatArray
    z: FloatArray

    @property
    def widest(self) -> float:
        """The largest room [mm], 0 where all interferes."""
        return max(float(np.nanmax(self.gap)), 0.0) if np.isfinite(self.gap).any() else 0.0

    @property
    def narrowest(self) -> float:
        """The smallest room [mm]."""
        return float(np.nanmin(self.gap)) if np.isfinite(self.gap).any() else 0.0


def gap_field(raw: Any, *, z: float = 0.0) -> GapField:
    """A field from anything with x, y, gap and perhaps z: an object, a mapping, or its JSON text.

    ``z`` [mm] serves where the map has none of its own. Raises ValueError where the sizes do not
    match, KeyError where one is missing.
    """
    if isinstance(raw, str):
        raw = json.loads(raw)
    source = raw if isinstance(raw, Mapping) else {n: getattr(raw, n) for n in ("x", "y", "gap")}
    x, y, gap = (np.array(source[name], dtype=float) for name in ("x", "y", "gap"))
    height = source.get("z")
    level = np.broadcast_to(np.array(z if height is None else height, dtype=float), gap.shape)
    if gap.shape != (len(x), len(y)):
        raise ValueError(f"the gap map has {gap.shape} rooms for {len(x)} by {len(y)} points.")
    return GapField(x, y, gap, level)


def facets(field: GapField) -> tuple[FloatArray, list[Colour]]:
    """(k, 4, 3) corners of one square for each room, and its colour."""
    half_x, half_y = (_step(a) / 2 for a in (field.x, field.y))
    i, j = np.nonzero(np.isfinite(field.gap))
    middle = np.stack([field.x[i], field.y[j], field.z[i, j]], axis=1)
    around = np.array([[-1, -1], [1, -1], [1, 1], [-1, 1]]) * [half_x, half_y]
    corners = middle[:, None, :] + np.pad(around, ((0, 0), (0, 1)))[None]
    widest = field.widest
    return corners, [gap_colour(float(g), widest=widest) for g in field.gap[i, j]]


def _step(along: FloatArray) -> float:
    return float(along[1] - along[0]) if len(along) > 1 else 1.0


def title() -> str:
    """What the bar's colours mean."""
    return tr("room under the overhang")


def swatches(field: GapField, *, units: Units) -> list[tuple[Colour, str, bool]]:
    """The bar from the top down: (colour, text, hatched)."""
    widest = field.widest
    steps = (1.0, 0.75, 0.5, 0.25, 0.0) if widest > 0 else ()
    bar = [
        (gap_colour(s * widest, widest=widest), compact_length(s * widest, units=units), False)
        for s in steps
    ]
    if field.narrowest < 0:
        deepest = compact_length(-field.narrowest, units=units)
        bar.append((VERMILLION, tr("interferes, up to {}").format(deepest), True))
    return bar


class Map:
    """The facets' nodes; ``node`` belongs under a SoAnnotation."""

    def __init__(self) -> None:
        self.node = nodes.separator(nodes.unlit())
        self.field: GapField | None = None

    def show(self, field: GapField | None) -> None:
        """Show a field, or nothing."""
        while self.node.getNumChildren() > 1:
            self.node.removeChild(1)
        self.field = field
        if field is None:
            return
        corners, colours = facets(field)
        points, faces, paint = coin.SoCoordinate3(), coin.SoFaceSet(), coin.SoMaterial()
        points.point.setValues(0, 4 * len(corners), corners.reshape(-1, 3).tolist())
        faces.numVertices.setValues(0, len(corners), [4] * len(corners))
        paint.diffuseColor.setValues(0, len(colours), [list(c) for c in colours])
        binding = coin.SoMaterialBinding()
        binding.value = coin.SoMaterialBinding.PER_FACE
        for node in (paint, binding, points, faces):
            self.node.addChild(node)
