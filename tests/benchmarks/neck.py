"""Times a neck of 800 faces from a file beside what the kernel's whole-solid way would cost.

Run under FreeCAD's Python: ``python3 tests/benchmarks/neck.py [SINGLES [FILE]]``. After reading,
the neck is recognised, seated and fully checked in a body with plate, bridge, pickups and screws.
The whole-solid way: ``common`` and ``distToShape`` of the whole neck with the whole body, and with
the whole plate, as they lie; how long that takes hangs much on the surfaces and on the kernel. Then
100 depths and 100 angles in one series each, of which SINGLES (4; 100 for all) are held against
checks of their own. FILE is another one of the tests' necks with frets. All in one process, in
turn; wall-clock and the process's own time are printed, since other programs take their part of
the former.
"""

from __future__ import annotations

import sys
import tempfile
import time
from collections.abc import Callable
from dataclasses import replace
from pathlib import Path
from typing import Any, TypeVar

ROOT = Path(__file__).resolve().parents[2]
sys.path[:0] = [str(ROOT), str(ROOT / "tests" / "solids")]

from freecad_neckfit.host import load_freecad

REASON = load_freecad()
if REASON:
    sys.exit(f"benchmark: {REASON}")

import numpy as np
import Part
from necks_in_files import unpacked

from freecad_neckfit.job.joint import Job
from freecad_neckfit.run.chain import Result
from freecad_neckfit.run.neck_file import read_neck_file
from freecad_neckfit.run.neck_judged import NeckRead, judge_neck, recognise_for
from freecad_neckfit.run.neck_series import Series, series

FILE = "one-solid.brep.xz"
PLATE = 2.5
HARDWARE = {
    "pickup_neck.fitted": True, "pickup_bridge.fitted": True, "plate.cover": "surround",
    "plate.thickness": PLATE, "finish.floor": 0.05,
}  # fmt: skip
ALONG = {
    "pocket.depth": np.linspace(13.0, 17.5, 100),
    "pocket.angle": np.linspace(-1.0, 3.0, 100),
}
SAME = 0.005
T = TypeVar("T")


def timed(work: Callable[[], T]) -> tuple[T, float, float]:
    """What it returns, seconds by the clock, and the process's own."""
    clock, own = time.perf_counter(), time.process_time()
    found = work()
    return found, time.perf_counter() - clock, time.process_time() - own


def joint_for(read: NeckRead) -> dict[str, Any]:
    """A pocket cut to the neck, 0.1 mm wider on each side, with 0.4 mm over the cover plate."""
    v = read.found.stated
    return HARDWARE | {
        "pocket.width_end": v["neck.heel_width_end"] + 0.2,
        "pocket.width_mouth": v["neck.heel_width_mouth"] + 0.2,
        "pocket.corner_radius": v["neck.heel_corner_radius"],
        "pocket.depth": v["neck.underside"] - 0.4 - PLATE,
        "seat.end_gap": 0.1,
        "bridge.front": v["neck.scale"] - v["neck.nut_to_heel"] - 5.0,
    }


def whole_solids(result: Result, read: NeckRead) -> float:
    """The kernel's way: the whole neck with the whole body and the whole plate."""
    from freecad_neckfit.solids.build.shapes import moved

    place = result.assembly.neck_frame @ read.found.frame
    neck = Part.Compound([moved(solid, place) for solid in read.part.solids])
    total = 0.0
    for name in ("body", "plate"):
        other = result.assembly.parts[name].copy()
        total += neck.copy().common(other).Volume + float(neck.distToShape(other)[0])
    return total


def differing(told: Series, i: int, single: Result) -> list[str]:
    """Ids of which the series says something else than a check of its own."""
    found = []
    for finding in single.findings:
        if finding.id in told.left_out:
            continue
        value = told.values[finding.id][i]
        if finding.value is None:
            same = bool(np.isnan(value))
        else:
            same = abs(value - finding.value) <= SAME
        if not same:
            found.append(finding.id)
    return found


def main() -> int:
    singles = int(sys.argv[1]) if len(sys.argv) > 1 else 4
    with tempfile.TemporaryDirectory() as folder:
        path = unpacked(sys.argv[2] if len(sys.argv) > 2 else FILE, Path(folder))
        part, reading, _ = timed(lambda: read_neck_file(path))
    stated = joint_for(recognise_for(part, HARDWARE))

    def whole_job() -> tuple[NeckRead, Result]:
        read = recognise_for(part, stated)
        return read, judge_neck(read, Job.of("joint", read.stated))

    (read, result), check, own_check = timed(whole_job)
    _, kernel, own_kernel = timed(lambda: whole_solids(result, read))
    print(f"{sum(len(s.Faces) for s in part.solids)} faces, {len(result.findings)} checks")
    print(f"reading the file                    {reading:8.2f} s")
    print(f"recognised, seated, fully checked   {check:8.2f} s  own {own_check:6.2f} s")
    print(f"whole solids: 2 common, 2 distances {kernel:8.2f} s  own {own_kernel:6.2f} s")
    print(f"  so many times as long             {kernel / check:8.1f}    own "
          f"{own_kernel / own_check:6.1f}")  # fmt: skip
    wrong = 0
    for key, at in ALONG.items():
        told, seconds, own = timed(lambda k=key, a=at: series(result, read.stated, key=k, at=a))
        print(f"100 x {key:<15}               {seconds:8.2f} s  own {own:6.2f} s")
        print(f"  share of one check                {seconds / check:8.2f}    own "
              f"{own / own_check:6.2f}")  # fmt: skip
        for i in np.unique(np.linspace(0, len(at) - 1, singles).astype(int)):
            here = dict(read.stated) | {key: float(at[i])}
            single = judge_neck(replace(read, stated=here), Job.of("joint", here))
            apart = differing(told, int(i), single)
            wrong += bool(apart)
            if apart:
                print(f"  {key} {at[i]:.3f} differs from a check of its own: {apart}")
        print(f"  compared with single checks       {singles:8}    differing {wrong}")
    return 1 if wrong else 0


if __name__ == "__main__":
    sys.exit(main())
