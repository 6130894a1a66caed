"""Writes invented necks by kernels that share no code with FreeCAD's: ``make_second.py FOLDER``.

STEP files by ``arris``, a CAD kernel of its own; OBJ and 3MF files by ``manifold3d``, a kernel of
triangles. Both run in a throw-away environment:

    python3 -m venv VENV && VENV/bin/pip install arris manifold3d numpy
    VENV/bin/python tests/necks/make_second.py tests/necks/files --seed 93

Beside the files stands their truth in ``second.json``. The necks are those of spec.py and solid.py:
what a kernel cannot do (B-splines, some joints of touching solids) is left to the others.
"""

from __future__ import annotations

import argparse
import importlib
import json
import lzma
import random
import sys
import zipfile
from pathlib import Path

sys.path.insert(0, str(Path(__file__).parent))

from spec import draw, pose

STEPS = ("parts", "above", "coplanar", "rod-slot", "left", "bound")
UNITS = {"left": "in"}
MESHES = {"cylinder": "obj", "above": "obj", "cone": "3mf", "round-end": "3mf"}
INCH = 25.4


def main() -> None:
    parser = argparse.ArgumentParser(description=__doc__.splitlines()[0])
    parser.add_argument("folder", type=Path)
    parser.add_argument("--seed", type=int, required=True)
    arguments = parser.parse_args()
    arguments.folder.mkdir(parents=True, exist_ok=True)
    records = [
        *_exact(arguments.folder, arguments.seed),
        *_meshed(arguments.folder, arguments.seed),
    ]
    (arguments.folder / "second.json").write_text(json.dumps(records, indent=1) + "\n")


def _shapes(kernel, kind: str, seed: int):
    """The neck's solids by one kernel, posed."""
    sys.modules["kernel"] = kernel
    sys.modules.pop("solid", None)
    made = importlib.import_module("solid").shapes(draw(kind, seed))
    place = pose(random.Random(f"second {kind} {seed}"))
    return [kernel.posed(shape, *place) for shape in made]


def _exact(folder: Path, seed: int):
    import second_kernel

    for kind in STEPS:
        parts = _shapes(second_kernel, kind, seed)
        text = second_kernel.MODEL.write_step(parts, length_unit=UNITS.get(kind, "mm"))
        yield _packed(folder, f"second-{kind}.step", text.encode(), kind, seed)


def _meshed(folder: Path, seed: int):
    import mesh_kernel

    for kind, ending in MESHES.items():
        lumps = [mesh_kernel.triangles(s) for s in _shapes(mesh_kernel, kind, seed)]
        name = f"second-{kind}.{ending}"
        data = _obj(lumps) if ending == "obj" else _model(lumps)
        if ending == "3mf":
            with zipfile.ZipFile(folder / name, "w", zipfile.ZIP_DEFLATED) as archive:
                archive.writestr(zipfile.ZipInfo("3D/3dmodel.model"), data, zipfile.ZIP_DEFLATED, 9)
            yield _record(name, kind, seed)
        else:
            yield _packed(folder, name, data, kind, seed)


def _packed(folder: Path, name: str, data: bytes, kind: str, seed: int) -> dict:
    packed = lzma.compress(data, preset=9 | lzma.PRESET_EXTREME)
    (folder / f"{name}.xz").write_bytes(packed)
    return _record(f"{name}.xz", kind, seed)


def _record(file: str, kind: str, seed: int) -> dict:
    print(kind, file, flush=True)
    neck = draw(kind, seed)
    return dict(kind=kind, seed=seed, file=file, truth=neck.truth(), left=neck.m["left"])


def _obj(lumps) -> bytes:
    """Triangles in mm, each lump an object of its own."""
    rows, first = [], 1
    for number, (points, triples) in enumerate(lumps):
        rows.append(f"o part{number}")
        rows += ["v " + " ".join(f"{c:.6f}" for c in p) for p in points]
        rows += ["f " + " ".join(str(i + first) for i in t) for t in triples]
        first += len(points)
    return ("\n".join(rows) + "\n").encode()


def _model(lumps) -> bytes:
    """A 3MF model whose unit is the inch, each lump an object of its own."""
    objects, items = [], []
    for number, (points, triples) in enumerate(lumps, start=1):
        vertices = "".join(
            f'<vertex x="{p[0] / INCH:.7f}" y="{p[1] / INCH:.7f}" z="{p[2] / INCH:.7f}"/>'
            for p in points
        )
        faces = "".join(f'<triangle v1="{a}" v2="{b}" v3="{c}"/>' for a, b, c in triples)
        objects.append(
            f'<object id="{number}" type="model"><mesh><vertices>{vertices}</vertices>'
            f"<triangles>{faces}</triangles></mesh></object>"
        )
        items.append(f'<item objectid="{number}"/>')
    return (
        '<?xml version="1.0" encoding="UTF-8"?><model unit="inch" '
        'xmlns="http://schemas.microsoft.com/3dmanufacturing/core/2015/02">'
        f"<resources>{''.join(objects)}</resources><build>{''.join(items)}</build></model>"
    ).encode()


if __name__ == "__main__":
    main()
