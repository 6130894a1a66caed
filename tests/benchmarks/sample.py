"""Times the sample joint, solids and all, beside the bare kernel calls that it needs.

Run under FreeCAD's Python: ``python3 tests/benchmarks/sample.py [ROUNDS]``. The bare calls are
fixed: one ``common`` and one ``distToShape`` for each pair of parts that can meet, both cropped to
where they can. Everything is timed in turn in one process; the medians are printed, and the whole
(closed forms, every part built anew, all measurements) over the bare calls, first without the
crops that these need, then with them.
"""

from __future__ import annotations

import sys
import time
from collections.abc import Callable
from pathlib import Path
from statistics import median
from typing import Any

ROOT = Path(__file__).resolve().parents[2]
sys.path.insert(0, str(ROOT))

from freecad_neckfit.host import load_freecad

REASON = load_freecad()
if REASON:
    sys.exit(f"benchmark: {REASON}")

import FreeCAD
import Part

from freecad_neckfit.job.read import read_job
from freecad_neckfit.run.chain import Result, check_values

PAIRS = (
    ("heel", "body"),
    ("fretboard", "body"),
    ("heel", "plate"),
    ("fretboard", "plate"),
    ("fretboard", "pickup_neck"),
    ("plate", "pickup_neck"),
)
"""Parts that can meet in the sample joint."""
ROOM = 20.0
"""How far [mm] around the smaller part the other is cropped."""


def cropped(shape: Any, other: Any) -> Any:
    """What of ``shape`` lies near ``other``."""
    box = other.BoundBox
    box.enlarge(ROOM)
    corner = FreeCAD.Vector(box.XMin, box.YMin, box.ZMin)
    crop = Part.makeBox(box.XLength, box.YLength, box.ZLength, corner)
    return shape.copy().common(crop)


def pairs_of(result: Result) -> list[tuple[Any, Any]]:
    """The cropped pairs, ready for the bare calls."""
    parts = result.assembly.parts
    found = []
    for first, second in PAIRS:
        near = cropped(parts[second], parts[first])
        found.append((cropped(parts[first], near), near))
    return found


def bare(pairs: list[tuple[Any, Any]]) -> None:
    """One ``common`` and one distance for each pair."""
    for first, second in pairs:
        first.copy().common(second.copy())
        first.copy().distToShape(second.copy())


def seconds(work: Callable[[], Any]) -> tuple[float, Any]:
    """How long ``work`` takes, and what it returns."""
    started = time.perf_counter()
    result = work()
    return time.perf_counter() - started, result


def main() -> int:
    rounds = int(sys.argv[1]) if len(sys.argv) > 1 else 7
    job = read_job(ROOT / "samples" / "joint.toml").base
    pairs = pairs_of(check_values(job.stated))
    whole, kernel, built, measured, crops = [], [], [], [], []
    for _ in range(rounds):
        spent, result = seconds(lambda: check_values(job.stated))
        whole.append(spent)
        built.append(result.seconds["solids built"])
        measured.append(result.seconds["solids measured"])
        kernel.append(seconds(lambda: bare(pairs))[0])
        crops.append(seconds(lambda made=result: pairs_of(made))[0])
    print(f"FreeCAD {'.'.join(FreeCAD.Version()[:3])}, medians of {rounds} rounds")
    print(f"sample joint, solids and all  {median(whole):.3f} s")
    print(f"  of which building           {median(built):.3f} s")
    print(f"  of which measuring          {median(measured):.3f} s")
    both = median(kernel) + median(crops)
    print(f"{len(PAIRS)} common, {len(PAIRS)} distances      {median(kernel):.3f} s, bare calls")
    print(f"the crops for them            {median(crops):.3f} s, together {both:.3f} s")
    print("times the bare calls, and times the bare calls with their crops:")
    for name, spent in (("everything", whole), ("building", built), ("measuring", measured)):
        took = median(spent)
        print(f"  {name:<27} {took / median(kernel):5.2f} {took / both:5.2f}")
    return 0


if __name__ == "__main__":
    sys.exit(main())
