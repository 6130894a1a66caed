"""Which reader takes a file, and the sentence for one that cannot be read at all."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path

import numpy as np

from ...job.errors import BadInput
from . import apart, heal, mesh_files, mesh_heal
from .part import Part3D

SOLID_ENDINGS = {
    ".step": "STEP", ".stp": "STEP", ".p21": "STEP", ".igs": "IGES", ".iges": "IGES",
    ".brep": "BREP", ".brp": "BREP",
}  # fmt: skip
MESH_ENDINGS = {".stl": "STL", ".obj": "OBJ", ".3mf": "3MF"}
ENDINGS = (*SOLID_ENDINGS, ".fcstd", *MESH_ENDINGS)
"""Endings of the files that can be read; a FreeCAD document is opened by its own reader."""

Progress = Callable[[str, float], bool]
"""Told what is being done and for how many seconds; an answer of False cancels."""


def read_part(
    path: Path, *, progress: Progress | None = None, in_own_process: bool = True
) -> Part3D:
    """Read a STEP, IGES, BREP, STL, OBJ or 3MF file.

    With ``in_own_process`` the kernel reads in a process of its own, so that a file that crashes
    or stalls it costs nothing else, and ``progress`` is asked a few times a second whether to go
    on. Raises BadInput in one sentence for a file that is missing, empty, of another kind, broken,
    open or cancelled.
    """
    told = progress or (lambda _what, _seconds: True)
    ending = path.suffix.lower()
    _refuse_absent(path)
    if ending in SOLID_ENDINGS:
        read = apart.read_shape if in_own_process else apart.read_shape_here
        shape = read(path, SOLID_ENDINGS[ending], told)
        if not told("looking for flaws", 0.0):
            raise cancelled(path)
        return heal.healed(shape, name=path.name)
    if ending in MESH_ENDINGS:
        triangles, notes = mesh_files.READERS[ending](path)
        if not told("looking for flaws", 0.0):
            raise cancelled(path)
        return mesh_heal.healed(np.asarray(triangles), name=path.name, notes=notes)
    raise BadInput(
        f"{path.name}: {ending or 'a file without an ending'} cannot be read; save the neck as "
        "STEP, IGES, BREP, FCStd, STL, OBJ or 3MF."
    )


def cancelled(path: Path) -> BadInput:
    """The sentence for a reading that was called off."""
    return BadInput(f"{path.name}: reading was cancelled; nothing was changed.")


def _refuse_absent(path: Path) -> None:
    if path.is_dir():
        raise BadInput(f"{path} is a folder; name a file.")
    try:
        empty = path.stat().st_size == 0
    except OSError as error:
        raise BadInput(f"{path}: cannot be read ({error.strerror}); name another file.") from None
    if empty:
        raise BadInput(f"{path.name}: the file is empty; save the neck again.")
