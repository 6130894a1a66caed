"""A neck's file, of any kind, brought to a neck's size."""

from __future__ import annotations

from pathlib import Path
from typing import Any

import numpy as np

from ..job.errors import BadInput
from ..solids.read import Part3D, Progress, in_neck_size, read_part
from ..solids.read.heal import healed
from ..solids.read.mesh_heal import healed as healed_mesh
from .sketch import opened


def read_neck_file(path: Path, *, progress: Progress | None = None) -> Part3D:
    """Read the neck that a file holds: STEP, IGES, BREP, FCStd, STL, OBJ or 3MF.

    ``progress`` is told what is done and for how long, and cancels by answering False. Raises
    BadInput in one sentence where the file cannot be read or holds nothing of a neck's size.
    """
    if path.suffix.lower() == ".fcstd":
        return in_neck_size(_of_document(path))
    return in_neck_size(read_part(path, progress=progress))


def _of_document(path: Path) -> Part3D:
    """What a FreeCAD document shows: its outermost objects, those hidden left out."""
    import Part

    with opened(path) as document:
        roots = [o for o in document.RootObjects if o.Visibility]
        shapes = [Part.getShape(o) for o in roots]
        solid = [s.copy() for s in shapes if not s.isNull() and s.Faces]
        if solid:
            return healed(Part.Compound(solid), name=path.name)
        meshes = [_facets(o) for o in roots if o.isDerivedFrom("Mesh::Feature")]
        if not meshes:
            raise BadInput(f"{path.name}: {_why_nothing(document)}")
        return healed_mesh(np.concatenate(meshes), name=path.name)


def _why_nothing(document: Any) -> str:
    """FreeCAD can fail to read a shape that it wrote itself, and then says nothing."""
    lost = [o.Label for o in document.findObjects("Part::Feature") if o.Shape.isNull()]
    if lost:
        return (
            f"FreeCAD read no shape for {', '.join(lost)}; save the neck as STEP with the program "
            "it comes from."
        )
    return "shows no solid and no mesh; make the neck visible."


def _facets(obj: Any) -> Any:
    mesh = obj.Mesh.copy()
    mesh.Placement = obj.getGlobalPlacement()
    return np.array([facet.Points for facet in mesh.Facets]).reshape(-1, 3, 3)
