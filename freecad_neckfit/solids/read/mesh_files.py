"""Triangles from STL, OBJ and 3MF files, in the file's own numbers (3MF: in mm)."""

from __future__ import annotations

import re
import zipfile
from collections.abc import Callable
from itertools import pairwise
from pathlib import Path
from xml.etree import ElementTree as ET

import numpy as np

from ...job.arrays import FloatArray
from ...job.errors import BadInput

Read = tuple[FloatArray, tuple[str, ...]]
MOST = 200_000_000
"""Largest content [bytes] of a packed file: a larger one is a trap or no neck."""
UNIT_MM = {
    "micron": 0.001, "millimeter": 1.0, "centimeter": 10.0, "inch": 25.4, "foot": 304.8,
    "meter": 1000.0,
}  # fmt: skip
FACET = np.dtype([("normal", "<f4", 3), ("corners", "<f4", (3, 3)), ("more", "<u2")])


def read_stl(path: Path) -> Read:
    """(n, 3, 3) triangles of a binary or ASCII STL file. Raises BadInput."""
    data = path.read_bytes()
    count = int.from_bytes(data[80:84], "little") if len(data) >= 84 else -1
    if len(data) == 84 + FACET.itemsize * count and count > 0:
        facets = np.frombuffer(data, FACET, count, 84)
        return _checked(facets["corners"].astype(float), path, "STL"), ()
    found = re.findall(rb"vertex\s+(\S+)\s+(\S+)\s+(\S+)", data)
    try:
        points = np.array(found, dtype=float).reshape(-1, 3, 3)
    except ValueError:
        raise _broken(path, "STL") from None
    return _checked(points, path, "STL"), ()


def read_obj(path: Path) -> Read:
    """(n, 3, 3) triangles of an OBJ file; faces of more corners are fanned. Raises BadInput."""
    points: list[list[float]] = []
    triangles: list[tuple[int, int, int]] = []
    try:
        for line in path.read_text("utf-8", "replace").splitlines():
            words = line.split()
            if words[:1] == ["v"]:
                points.append([float(w) for w in words[1:4]])
            elif words[:1] == ["f"]:
                corners = [_obj_index(w, len(points)) for w in words[1:]]
                triangles += [(corners[0], b, c) for b, c in pairwise(corners[1:])]
        return _checked(np.array(points)[np.array(triangles)], path, "OBJ"), ()
    except (ValueError, IndexError):
        raise _broken(path, "OBJ") from None


def _obj_index(word: str, count: int) -> int:
    index = int(word.split("/", maxsplit=1)[0])
    return index - 1 if index > 0 else count + index


def read_3mf(path: Path) -> Read:
    """(n, 3, 3) triangles [mm] of what a 3MF file builds, each item in its place.

    Raises BadInput.
    """
    try:
        with zipfile.ZipFile(path) as archive:
            info = next(i for i in archive.infolist() if i.filename.lower().endswith(".model"))
            if info.file_size > MOST:
                raise _broken(path, "3MF")
            text = archive.read(info)
        if b"<!DOCTYPE" in text or b"<!ENTITY" in text:  # not allowed in 3MF, and a known trap
            raise _broken(path, "3MF")
        model = _Model(ET.fromstring(text))  # noqa: S314  # no entities, see above
        return _checked(model.triangles(), path, "3MF"), ()
    except (zipfile.BadZipFile, StopIteration, ET.ParseError, KeyError, ValueError, IndexError):
        raise _broken(path, "3MF") from None


class _Model:
    """The objects of one 3MF model and what is built of them."""

    def __init__(self, root: ET.Element) -> None:
        self.scale = UNIT_MM[root.get("unit", "millimeter")]
        self.root = root
        self.objects = {o.get("id", ""): o for o in root.iter() if _tag(o) == "object"}

    def triangles(self) -> FloatArray:
        items = [i for i in self.root.iter() if _tag(i) == "item"]
        found = [self._of(i.attrib["objectid"], _matrix(i.get("transform")), 0) for i in items]
        return np.concatenate(found) * self.scale if found else np.zeros((0, 3, 3))

    def _of(self, name: str, matrix: FloatArray, depth: int) -> FloatArray:
        if depth > 10:
            raise ValueError("an object holds itself")
        owner = self.objects[name]
        points = [[float(v.attrib[a]) for a in "xyz"] for v in owner.iter() if _tag(v) == "vertex"]
        threes = [
            [int(t.attrib[a]) for a in ("v1", "v2", "v3")]
            for t in owner.iter()
            if _tag(t) == "triangle"
        ]
        found = [np.array(points)[np.array(threes)] @ matrix[:3] + matrix[3]] if threes else []
        for part in (c for c in owner.iter() if _tag(c) == "component"):
            inner = _matrix(part.get("transform"))
            whole = np.vstack([inner[:3] @ matrix[:3], inner[3] @ matrix[:3] + matrix[3]])
            found.append(self._of(part.attrib["objectid"], whole, depth + 1))
        return np.concatenate(found) if found else np.zeros((0, 3, 3))


def _tag(element: ET.Element) -> str:
    return element.tag.rpartition("}")[2]


def _matrix(text: str | None) -> FloatArray:
    """(4, 3) rows of a 3MF transform: a point p lands at p @ rows[:3] + rows[3]."""
    if not text:
        return np.vstack([np.eye(3), np.zeros(3)])
    return np.array([float(w) for w in text.split()]).reshape(4, 3)


def _checked(triangles: FloatArray, path: Path, kind: str) -> FloatArray:
    if not len(triangles) or not np.isfinite(triangles).all():
        raise _broken(path, kind)
    return triangles


def _broken(path: Path, kind: str) -> BadInput:
    return BadInput(
        f"{path.name}: cannot be read as {kind}; it is broken or of another kind: save it again."
    )


READERS: dict[str, Callable[[Path], Read]] = {".stl": read_stl, ".obj": read_obj, ".3mf": read_3mf}
