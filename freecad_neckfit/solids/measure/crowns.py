"""Crowns and strings, read from the fret solids as they lie; the set-up from stated values.

String i has its own scale L_i, straight between the outer two. Fret n on it lies at
u = U + L_i·(2^(-p/12) - 2^(-n/12)) from the nut, with U = L_c·(1 - 2^(-p/12)) and p the fret square
to the centreline; the saddle one scale length and its compensation behind the string's nut.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence
from dataclasses import dataclass
from typing import TYPE_CHECKING, Any

import numpy as np

from ...job.arrays import FloatArray
from .failures import NotFound

if TYPE_CHECKING:
    from .context import Context

SEARCH = 4.0
"""A crown's highest point lies at most this far [mm] along the string from where it should."""

ALONG = 0.1
"""An axis runs along the neck where its direction's Y stays below this."""


@dataclass(frozen=True)
class Strings:
    """Where strings run in the neck frame [mm]; strings on the first axis, treble first.

    ``x_nut``, ``y_nut``, ``x_saddle``, ``y_saddle``: (s,). ``x``, ``z``: (s, n) the highest
    point of the crowns 1 … N. ``nut``: (s,) height of the open string where it leaves the nut;
    ``saddle``: (s,) its height on the saddle, as the set-up asks.
    """

    x_nut: FloatArray
    y_nut: FloatArray
    x_saddle: FloatArray
    y_saddle: FloatArray
    x: FloatArray
    z: FloatArray
    nut: FloatArray
    saddle: FloatArray


def read_strings(context: Context) -> Strings:
    """Read all crowns under all strings and lay the open strings over frets 1 and 12.

    Raises NotFound where a string crosses no crown at a fret's place.
    """
    v = context.values
    count = int(v["strings.count"])
    share = np.arange(count) / (count - 1)
    sign = -1.0 if v["strings.left_handed"] else 1.0
    scale = _between(v, "neck.scale", "neck.scale_bass", share)
    heel = float(v["neck.nut_to_heel"])
    x_nut = _place(v, scale, 0.0) - heel
    x_saddle = x_nut + scale + np.asarray(v["strings.compensation"], dtype=float)
    y_nut = sign * float(v["strings.spread_nut"]) * (0.5 - share)
    y_saddle = sign * float(v["strings.spread_bridge"]) * (0.5 - share)
    first = 0 if v["strings.zero_fret"] else 1
    frets = np.arange(first, int(v["neck.frets"]) + 1)
    wanted = _place(v, scale[:, None], frets[None]) - heel
    slope = (y_saddle - y_nut) / (x_saddle - x_nut)
    x, z = _tops(context, wanted, y=y_nut[:, None] + slope[:, None] * (wanted - x_nut[:, None]),
                 slope=slope)  # fmt: skip
    twelve = 12 - first
    high = z[:, twelve] + _between(v, "strings.action_treble", "strings.action_bass", share)
    low, at = z[:, 0], x[:, 0]
    if first:
        low = low + _between(v, "strings.nut_treble", "strings.nut_bass", share)
    climb = (high - low) / (x[:, twelve] - at)
    return Strings(
        x_nut=x_nut, y_nut=y_nut, x_saddle=x_saddle, y_saddle=y_saddle,
        x=x[:, 1 - first:], z=z[:, 1 - first:],
        nut=low + climb * (x_nut - at), saddle=high + climb * (x_saddle - x[:, twelve]),
    )  # fmt: skip


def _place(v: Mapping[str, Any], scale: FloatArray, fret: Any) -> FloatArray:
    square = 2.0 ** (-float(v["neck.square_fret"]) / 12)
    middle = (float(v["neck.scale"]) + float(v["neck.scale_bass"])) / 2
    behind = 2.0 ** (-np.asarray(fret) / 12)
    return np.asarray(middle * (1 - square) + scale * (square - behind))


def _between(v: Mapping[str, Any], treble: str, bass: str, share: FloatArray) -> FloatArray:
    return float(v[treble]) + (float(v[bass]) - float(v[treble])) * share


def _tops(
    context: Context, x: FloatArray, *, y: FloatArray, slope: FloatArray
) -> tuple[FloatArray, FloatArray]:
    """Highest points of the frets, square to the heel, along each string near the wanted places."""
    ridges = [Ridge.read(context, solid) for solid in context.shape("frets").Solids]
    ends = np.array([r.points[[0, -1]] for r in ridges])
    lean = (ends[:, 1, 0] - ends[:, 0, 0]) / (ends[:, 1, 1] - ends[:, 0, 1])
    found_x, found_z = np.full(x.shape, np.nan), np.full(x.shape, np.nan)
    for i, n in np.ndindex(*x.shape):
        beside = ends[:, 0, 0] + lean * (y[i, n] - ends[:, 0, 1])
        for k in np.argsort(np.abs(beside - x[i, n]))[:3]:
            top = ridges[k].over(x0=float(x[i, n]), y0=float(y[i, n]), slope=float(slope[i]))
            if top is not None and abs(top[0] - x[i, n]) < SEARCH:
                found_x[i, n], found_z[i, n] = top
                break
    if not np.isfinite(found_z).all():
        string, fret = np.argwhere(~np.isfinite(found_z))[0]
        raise NotFound(f"string {string + 1} crosses no crown at its fret {fret + 1}")
    return found_x, found_z


def _is_straight_across(surface: Any) -> bool:
    """Whether a surface is straight square to the fret: plane, or bent about the neck's length."""
    kind = type(surface).__name__
    if kind in ("Cylinder", "Cone"):
        return abs(float(surface.Axis.y)) < ALONG
    return kind in ("Plane", "SurfaceOfExtrusion")


def _is_bent_flat(solid: Any, edge: Any) -> bool:
    """Whether an edge bounds a face that is as high all across the fret: a cylinder."""
    bent = (f for f in solid.Faces if type(f.Surface).__name__ == "Cylinder")
    return any(edge.isSame(other) for face in bent for other in face.Edges)


@dataclass(frozen=True)
class Ridge:
    """The highest line of a fret: an edge of its solid, in the neck frame.

    ``points``: (m, 3) on the edge; ``at``: its point at a parameter; ``params``: (m,).
    """

    points: FloatArray
    params: FloatArray
    at: Callable[[float], tuple[float, float, float]]

    @classmethod
    def read(cls, context: Context, solid: Any) -> Ridge:
        """Find the edge whose middle lies highest among those along the fret.

        Raises NotFound where the fret is not straight-sided, or flat on top with a bend about the
        neck's length: then no edge is its crest.
        """
        frame = context.frame
        if not all(_is_straight_across(f.Surface) for f in solid.Faces):
            raise NotFound("a fret has round flanks, so that its crest is no edge")
        best: tuple[float, Any] | None = None
        long = 0.5 * solid.BoundBox.YLength
        for edge in solid.Edges:
            start, end = edge.valueAt(edge.FirstParameter), edge.valueAt(edge.LastParameter)
            if abs(end.y - start.y) < long:
                continue
            half = edge.valueAt((edge.FirstParameter + edge.LastParameter) / 2)
            height = float(frame.to_neck(np.array([half.x, half.y, half.z]))[2])
            if best is None or height > best[0]:
                best = height, edge
        if best is None:
            raise NotFound("a fret has no edge along it")
        edge = best[1]
        if _is_bent_flat(solid, edge):
            raise NotFound("a fret is flat on top, so that its crest is no edge")

        o, a, u = (tuple(map(float, w)) for w in (frame.origin, frame.along, frame.up))

        def at(t: float) -> tuple[float, float, float]:
            p = edge.valueAt(t)
            x, y, z = p.x - o[0], p.y - o[1], p.z - o[2]
            return (x * a[0] + y * a[1] + z * a[2], y, x * u[0] + y * u[1] + z * u[2])

        params = np.linspace(edge.FirstParameter, edge.LastParameter, 3)
        points = np.array([at(float(t)) for t in params])
        return cls(points, params, at)

    def over(self, *, x0: float, y0: float, slope: float) -> tuple[float, float] | None:
        """(x, z) where the ridge crosses the upright plane y = y0 + slope·(x - x0), if it does."""

        def off(p: Sequence[float]) -> float:
            return p[1] - y0 - slope * (p[0] - x0)

        low, high = float(self.params[0]), float(self.params[-1])
        f_low, f_high = off(self.points[0].tolist()), off(self.points[-1].tolist())
        if f_low * f_high > 0:
            return None
        moved = 0
        for _ in range(50):
            t = low + (high - low) * f_low / (f_low - f_high)
            p = self.at(t)
            f = off(p)
            if abs(f) < 1e-9:
                break
            # Illinois: an end that stays where it is twice running counts for half.
            if f * f_low > 0:
                low, f_low, f_high, moved = t, f, f_high / (2 if moved < 0 else 1), -1
            else:
                high, f_high, f_low, moved = t, f, f_low / (2 if moved > 0 else 1), 1
        return float(p[0]), float(p[2])
