"""Times a neck of 800 faces from a file beside what the kernel's whole-solid way would cost.

Run under FreeCAD's Python: ``python3 tests/benchmarks/neck.py [SINGLES [FILE]]``. After reading,
the neck is recognised, seated and fully checked in a body with plate, bridge, pickups and screws.
The whole-solid way: ``common`` and ``distToShape`` of the whole neck with the whole body, and with
the whole plate. As they lie the neck touches the floor, so ``distToShape`` answers 0 at once and
tells no gap; whoever wants to read one that way has to lift the neck clear first. Both are timed.

How long that takes hangs on the surfaces and on the kernel, so it is measured on three bodies, all
told: one whose outline of lines and arcs has sharp edges; the same with its edges rounded, as any
body has them that left a shop; and one as designers draw it, its outline one free curve, its edges
rounded too, under a plate drawn so. The drawn ones are given, as from a file, pocket and all.

Then 100 depths and 100 angles in one series each, of which SINGLES (4; 100 for all) are held
against checks of their own. FILE is another one of the tests' necks with frets. All in one process,
in turn; wall-clock and the process's own time are printed, since other programs take their part of
the former. numpy's own threads are left out: they wait busily, which counts as time of its own.
"""

from __future__ import annotations

import os
import sys
import tempfile
import time
from collections.abc import Callable
from dataclasses import replace
from pathlib import Path
from typing import Any, TypeVar

ROOT = Path(__file__).resolve().parents[2]
sys.path[:0] = [str(ROOT), str(ROOT / "tests" / "solids")]

os.environ.setdefault("OPENBLAS_NUM_THREADS", "1")  # before numpy is loaded

from freecad_neckfit.host import load_freecad

REASON = load_freecad()
if REASON:
    sys.exit(f"benchmark: {REASON}")

import numpy as np
import Part
from drawn import WIDER, drawn_body, drawn_plate
from necks_in_files import unpacked

from freecad_neckfit.job.joint import Job
from freecad_neckfit.run.chain import Result, check_values
from freecad_neckfit.run.neck_file import read_neck_file
from freecad_neckfit.run.neck_judged import NeckRead, given_neck, judge_neck, recognise_for
from freecad_neckfit.run.neck_series import Series, series
from freecad_neckfit.solids.read import Part3D

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
CLEAR = 0.05
"""So far [mm] the neck is lifted for a distance that is none of its seat's."""
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


def whole_solids(result: Result, read: NeckRead, *, lift: float) -> float:
    """The kernel's way: the whole neck, lifted [mm], with the whole body and the whole plate."""
    from freecad_neckfit.solids.build.shapes import moved

    up = np.eye(4)
    up[2, 3] = lift
    place = up @ result.assembly.neck_frame @ read.found.frame
    neck = Part.Compound([moved(solid, place) for solid in read.part.solids])
    total = 0.0
    for name in ("body", "plate"):
        other = result.assembly.parts[name].copy()
        total += neck.copy().common(other).Volume + float(neck.distToShape(other)[0])
    return total


def checked(part: Part3D, stated: dict[str, Any]) -> tuple[NeckRead, Result]:
    """Recognised, seated and judged; nothing is kept from another time."""
    read = recognise_for(replace(part), stated)
    return read, judge_neck(read, Job.of("joint", read.stated))


def drawn(part: Part3D, stated: dict[str, Any]) -> Callable[[], tuple[NeckRead, Result]]:
    """As ``checked``, in a body and under a plate that were drawn, and are there already."""
    v = Job.of("joint", recognise_for(part, stated).stated).values
    wider = checked(part, stated | {"plate.margin": WIDER})[1].assembly.parts["plate"]
    body, plate = drawn_body(v), drawn_plate(wider)

    def check() -> tuple[NeckRead, Result]:
        read = recognise_for(replace(part), stated)
        values = Job.of("joint", read.stated).values
        given = replace(given_neck(read, values), body=body, is_routed=True, plate=plate)
        return read, check_values(read.stated, given=given)

    return check


def beside_whole_solids(name: str, check: Callable[[], tuple[NeckRead, Result]]) -> float:
    """Prints both ways; returns the check's own seconds."""
    (read, result), clock, own = timed(check)
    faces = {n: len(result.assembly.parts[n].Faces) for n in ("body", "plate")}
    print(f"{name}: body {faces['body']} faces, plate {faces['plate']}, "
          f"{len(result.findings)} checks, {result.verdict.value}")  # fmt: skip
    print(f"  recognised, seated, fully checked   {clock:8.2f} s  own {own:6.2f} s")
    for lift in (0.0, CLEAR):
        _, kernel, own_kernel = timed(lambda by=lift: whole_solids(result, read, lift=by))
        how = f"lifted by {lift:g} mm" if lift else "as they lie"
        print(
            f"  whole solids: 2 common, 2 distances {kernel:8.2f} s  own {own_kernel:6.2f} s  {how}"
        )
        print(f"  so many times as long               {kernel / clock:8.1f}    own "
              f"{own_kernel / own:6.1f}")  # fmt: skip
    return own


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
    print(f"{sum(len(s.Faces) for s in part.solids)} faces, read in {reading:.2f} s")
    stated = joint_for(recognise_for(part, HARDWARE))
    sharp = stated | {"body.edge_round": 0.0}
    beside_whole_solids("lines and arcs, sharp edges", lambda: checked(part, sharp))
    beside_whole_solids("lines and arcs, rounded edges", lambda: checked(part, stated))
    beside_whole_solids("drawn as one curve, rounded edges", drawn(part, stated))
    return series_of(part, stated, singles)


def series_of(part: Part3D, stated: dict[str, Any], singles: int) -> int:
    """Prints what a series costs; returns 1 where one differs from single checks."""
    (read, result), check, own_check = timed(lambda: checked(part, stated))
    print(f"a check                             {check:8.2f} s  own {own_check:6.2f} s")
    told_all = {}
    for key, at in ALONG.items():
        told, seconds, own = timed(lambda k=key, a=at: series(result, read.stated, key=k, at=a))
        told_all[key] = told
        print(f"100 x {key:<15}               {seconds:8.2f} s  own {own:6.2f} s")
        print(f"  share of one check                {seconds / check:8.2f}    own "
              f"{own / own_check:6.2f}")  # fmt: skip
    wrong = 0
    for key, at in ALONG.items():
        for i in np.unique(np.linspace(0, len(at) - 1, singles).astype(int)):
            here = dict(read.stated) | {key: float(at[i])}
            single = judge_neck(replace(read, stated=here), Job.of("joint", here))
            apart = differing(told_all[key], int(i), single)
            wrong += bool(apart)
            if apart:
                print(f"  {key} {at[i]:.3f} differs from a check of its own: {apart}")
    print(f"compared with single checks         {singles:8} each, differing {wrong}")
    return 1 if wrong else 0


if __name__ == "__main__":
    sys.exit(main())
