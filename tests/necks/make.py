"""Writes the invented necks as files: ``make.py FOLDER --seed N [KIND ...]``.

Runs in a throw-away environment of its own, with another CAD kernel than FreeCAD's in it:

    python3 -m venv VENV && VENV/bin/pip install cadquery-ocp-novtk numpy
    VENV/bin/python tests/necks/make.py tests/necks/files --seed 1

Beside each ``KIND.step.xz`` stands its truth in ``necks.json``; the flawed ones are in
``flawed.json``. The same seed gives the same necks.
"""

from __future__ import annotations

import argparse
import json
import lzma
import random
import sys
import tempfile
from pathlib import Path

sys.path.insert(0, str(Path(__file__).parent))

import flawed
import solid
from kernel import compound, posed
from OCP.BRepMesh import BRepMesh_IncrementalMesh
from OCP.BRepTools import BRepTools
from OCP.IGESControl import IGESControl_Controller, IGESControl_Writer
from OCP.Interface import Interface_Static
from OCP.Message import Message, Message_Printer
from OCP.STEPControl import STEPControl_AsIs, STEPControl_Writer
from OCP.StlAPI import StlAPI_Writer
from spec import KINDS, draw, pose

SCHEMAS = {"bass": "AP203", "cone": "AP242DIS"}
UNITS = {"left": "INCH", "round-end": "M"}
BULKY = ("many-faces", "one-solid")
"""Kinds whose STEP file would be too large to keep."""
OTHER_FORMATS = {
    "cylinder": ("igs", "brep"),
    "screws": ("stl",),
    "cone": ("stl",),
    "parts": ("stl",),
}
DEFLECTION = 0.1
"""How far a mesh may stray from its neck [mm]."""


def write_step(shape, path: Path, *, schema: str = "AP214IS", unit: str = "MM") -> None:
    writer = STEPControl_Writer()
    Interface_Static.SetCVal_s("write.step.schema", schema)
    Interface_Static.SetCVal_s("write.step.unit", unit)
    writer = STEPControl_Writer()
    writer.Transfer(shape, STEPControl_AsIs)
    writer.Write(str(path))


def write(shape, path: Path, **how) -> None:
    """Write in the format that the ending names."""
    ending = path.suffix[1:]
    how = how if ending == "step" else {}
    if ending == "step":
        write_step(shape, path, **how)
    elif ending == "igs":
        IGESControl_Controller.Init_s()
        writer = IGESControl_Writer("MM", 1)
        writer.AddShape(shape)
        writer.ComputeModel()
        writer.Write(str(path))
    elif ending == "brep":
        BRepTools.Write_s(shape, str(path))
    else:
        chord = DEFLECTION / 25.4 if path.stem.startswith("inch") else DEFLECTION
        BRepMesh_IncrementalMesh(shape, chord, False, 0.5, True)
        writer = StlAPI_Writer()
        writer.ASCIIMode = False
        writer.Write(shape, str(path))


def packed(shape, folder: Path, name: str, **how) -> str:
    """Write ``name`` packed and return the packed file's name."""
    with tempfile.TemporaryDirectory() as scratch:
        plain = Path(scratch) / name
        write(shape, plain, **how)
        data = plain.read_bytes()
    target = folder / f"{name}.xz"
    target.write_bytes(lzma.compress(data, preset=9 | lzma.PRESET_EXTREME))
    return target.name


def main() -> None:
    Message.DefaultMessenger_s().RemovePrinters(Message_Printer.get_type_descriptor_s())
    parser = argparse.ArgumentParser(description=__doc__.splitlines()[0])
    parser.add_argument("folder", type=Path)
    parser.add_argument("--seed", type=int, required=True)
    parser.add_argument("--flawed", action="store_true", help="only the flawed ones")
    parser.add_argument("kinds", nargs="*", metavar="KIND")
    arguments = parser.parse_args()
    arguments.folder.mkdir(parents=True, exist_ok=True)
    if not arguments.flawed:
        _sound(arguments)
    if arguments.flawed or not arguments.kinds:
        _flawed(arguments)


def _sound(arguments: argparse.Namespace) -> None:
    records = []
    for kind in arguments.kinds or KINDS:
        neck = draw(kind, arguments.seed)
        parts = solid.shapes(neck)
        whole = parts[0] if len(parts) == 1 else compound(parts)
        place = pose(random.Random(f"pose {kind} {arguments.seed}"))
        # Many short numbers pack far better than many long ones.
        placed = whole if kind in BULKY else posed(whole, *place)
        how = dict(schema=SCHEMAS.get(kind, "AP214IS"), unit=UNITS.get(kind, "MM"))
        first = "brep" if kind in BULKY else "step"
        files = [packed(placed, arguments.folder, f"{kind}.{first}", **how)]
        files += [
            packed(placed, arguments.folder, f"{kind}.{e}") for e in OTHER_FORMATS.get(kind, ())
        ]
        records.append(
            dict(kind=kind, seed=arguments.seed, files=files, truth=neck.truth(),
                 spread=neck.m["spread"] or None, left=neck.m["left"], made=neck.m)
        )  # fmt: skip
        print(kind, files, flush=True)
    _save(arguments.folder / "necks.json", records)


def _flawed(arguments: argparse.Namespace) -> None:
    records = []
    for name, (shape, ending, expected, extra) in flawed.all_of(arguments.seed).items():
        if callable(shape):
            file = f"{name}.{ending}"
            (arguments.folder / file).write_bytes(shape())
        else:
            file = packed(shape, arguments.folder, f"{name}.{ending}")
        records.append(dict(name=name, file=file, expected=expected, **extra))
        print(name, file, flush=True)
    _save(arguments.folder / "flawed.json", records)


def _save(path: Path, records: list) -> None:
    path.write_text(json.dumps(records, indent=1) + "\n")


if __name__ == "__main__":
    main()
