"""Simple solids, and the few operations on them that the parts are made with.

Nothing here changes what it is given: a boolean of FreeCAD 0.20 widens the tolerances of its
inputs, so every one works on copies.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable, Sequence
from typing import Any

import Part
from FreeCAD import Matrix, Vector

from ...job.arrays import FloatArray
from ...job.errors import KernelFailure

Solid = Any
"""A Part.Solid; FreeCAD's shapes have no types."""

Point = tuple[float, float]
UP = Vector(0, 0, 1)
SAME = 1e-7
"""Points closer than this [mm] are one point: the kernel's own limit."""


def box(x: Point, y: Point, z: Point) -> Solid:
    """A box from the lower to the upper bound [mm] along each axis."""
    corner = Vector(x[0], y[0], z[0])
    return Part.makeBox(x[1] - x[0], y[1] - y[0], z[1] - z[0], corner)


def peg(x: float, y: float, z: Point, *, diameter: float) -> Solid:
    """A cylinder along Z from the lower to the upper bound [mm]."""
    return Part.makeCylinder(diameter / 2, z[1] - z[0], Vector(x, y, z[0]))


def tapered(
    profile: Sequence[Point], low: Callable[[float], float], high: Callable[[float], float]
) -> Solid:
    """A solid with ``profile`` in XZ between the planes y = low(x) and y = high(x).

    ``profile`` is a simple polygon of (x, z) [mm]; both functions must be straight in x, so that
    every face is plane.
    """
    corners = _without_repeats(profile)
    near = [Vector(x, low(x), z) for x, z in corners]
    far = [Vector(x, high(x), z) for x, z in corners]
    if len({(a.y, b.y) for a, b in zip(near, far, strict=True)}) == 1:
        return polygon(near).extrude(far[0] - near[0])
    around = [polygon([near[i - 1], near[i], far[i], far[i - 1]]) for i in range(len(corners))]
    return closed([polygon(near), polygon(far), *around])


def polygon(corners: Sequence[Any]) -> Any:
    """A plane face with the given corners, in order."""
    return Part.Face(Part.makePolygon([*corners, corners[0]]))


def closed(faces: Sequence[Any]) -> Solid:
    """The solid that ``faces`` close, turned so that its volume is positive."""
    shell = Part.makeShell(list(faces))
    shell.sewShape()
    solid = Part.makeSolid(shell)
    if solid.Volume < 0:
        solid.reverse()
    return solid


def common(shape: Solid, tool: Solid) -> Any:
    """What both share."""
    return shape.copy().common(tool.copy())


def cut(shape: Solid, tools: Iterable[Solid]) -> Any:
    """``shape`` without any of ``tools``, cut in one go."""
    copies = [tool.copy() for tool in tools]
    return shape.copy().cut(copies) if copies else shape


def fused(shapes: Sequence[Solid]) -> Any:
    """All of ``shapes`` as one."""
    first, *rest = (shape.copy() for shape in shapes)
    return first.fuse(rest) if rest else first


def moved(shape: Any, motion: FloatArray) -> Any:
    """``shape`` after a rigid ``motion`` (4 x 4), which is written into its geometry."""
    return shape.transformed(Matrix(*(float(a) for row in motion for a in row)), copy=True)


def one_solid(shape: Any, *, name: str) -> Solid:
    """The only solid in ``shape``; a KernelFailure names the part where there is another number."""
    if len(shape.Solids) != 1:
        raise KernelFailure(
            f"{name}: the kernel made {len(shape.Solids)} solids where the part is one."
        )
    return shape.Solids[0]


def proven(shape: Any, *, name: str) -> Any:
    """``shape`` itself if every solid in it is valid, closed and of positive volume.

    Raises KernelFailure, which names the part, otherwise.
    """
    solids = shape.Solids
    if not solids:
        raise KernelFailure(f"{name}: the kernel made no solid.")
    for solid in solids:
        if not solid.isValid():
            raise KernelFailure(f"{name}: the kernel made a solid that is not valid.")
        if not all(shell.isClosed() for shell in solid.Shells):
            raise KernelFailure(f"{name}: the kernel made a solid that is not closed.")
        if solid.Volume <= 0:
            raise KernelFailure(f"{name}: the kernel made a solid without volume.")
    return shape


def _without_repeats(profile: Sequence[Point]) -> list[Point]:
    return [
        here
        for here, before in zip(profile, [profile[-1], *profile[:-1]], strict=True)
        if abs(here[0] - before[0]) > SAME or abs(here[1] - before[1]) > SAME
    ]
