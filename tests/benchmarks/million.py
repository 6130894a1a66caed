"""Times all closed-form checks for a million different joints, on one core.

Run: ``python3 tests/benchmarks/million.py [COUNT]``. Every joint differs from every other in
each of the parameters listed in ``VARIED``. What is the same for all is what one call shares:
numbers of strings and frets, shapes, and where the crowns stand on the neck (a shop's thousands
of pairings use a few necks, each judged in a call of its own); ``--own-necks`` varies that too.
For comparison a thousand of the joints are judged one at a time, and must come out the same.
"""

from __future__ import annotations

import os

# One core: numpy's own threads would hide what a joint costs.
for variable in ("OMP_NUM_THREADS", "OPENBLAS_NUM_THREADS", "MKL_NUM_THREADS"):
    os.environ.setdefault(variable, "1")

import sys
import time
from pathlib import Path

import numpy as np

sys.path.insert(0, str(Path(__file__).resolve().parents[2]))

from freecad_neckfit.fit.case import Case
from freecad_neckfit.fit.checks import ALL
from freecad_neckfit.fit.verdict import Verdicts, judge_many
from freecad_neckfit.job.parameters import ALL as PARAMETERS

FIXED = {
    "plate.cover": "surround",
    "shim.make": "wedge",
    "neck.binding_width": 1.5,
    "pickup_neck.fitted": True,
    "pickup_middle.fitted": True,
    "pickup_bridge.fitted": True,
}
OWN_NECKS = {"neck.relief": (0.0, 0.4), "neck.radius_nut": (200.0, 400.0)}
VARIED = {
    "pocket.depth": (15.0, 18.0),
    "pocket.angle": (0.0, 1.0),
    "pocket.width_end": (56.1, 56.5),
    "pocket.width_mouth": (55.6, 56.0),
    "pocket.corner_radius": (1.0, 6.0),
    "body.thickness": (40.0, 48.0),
    "neck.height": (24.0, 26.0),
    "neck.glue_line": (18.0, 19.0),
    "neck.underside": (17.5, 19.0),
    "neck.heel_width_end": (55.9, 56.1),
    "neck.heel_width_mouth": (55.4, 55.6),
    "neck.binding": (0.0, 0.3),
    "neck.fret_height": (0.8, 1.4),
    "plate.thickness": (1.5, 3.0),
    "plate.clearance": (0.2, 1.0),
    "seat.end_gap": (0.0, 0.4),
    "shim.wall": (0.0, 0.4),
    "shim.mouth": (0.0, 0.4),
    "finish.top": (0.0, 0.4),
    "finish.floor": (0.0, 0.2),
    "bridge.front": (182.0, 188.0),
    "bridge.low": (8.0, 11.0),
    "bridge.high": (13.0, 16.0),
    "strings.action_treble": (1.2, 2.0),
    "strings.action_bass": (1.6, 2.4),
    "screws.length": (38.0, 50.0),
    "pickup_neck.high": (6.0, 10.0),
    "wood.moisture_cut": (7.0, 9.0),
}
CHUNK = 16384
"""Joints judged at a time: their arrays stay in the processor's cache."""


def joints(count: int) -> dict[str, np.ndarray]:
    """``count`` values of each varied parameter, drawn by a fixed seed."""
    rng = np.random.default_rng(20)
    return {key: rng.uniform(low, high, count) for key, (low, high) in VARIED.items()}


def judge_all(drawn: dict[str, np.ndarray], count: int) -> Verdicts:
    """Judge all joints, a chunk at a time."""
    parts = []
    for start in range(0, count, CHUNK):
        part = {key: values[start : start + CHUNK] for key, values in drawn.items()}
        size = min(CHUNK, count - start)
        parts.append(judge_many(Case(FIXED | part), checks=ALL, count=size))
    return Verdicts(*(np.concatenate(column) for column in zip(*map(_columns, parts), strict=True)))


def _columns(v: Verdicts) -> tuple[np.ndarray, ...]:
    return v.fits, v.worst, v.binding, v.unknown


def main() -> int:
    words = sys.argv[1:]
    if "--own-necks" in words:
        words.remove("--own-necks")
        VARIED.update(OWN_NECKS)
    count = int(words[0]) if words else 1_000_000
    few = min(1000, count)
    drawn = joints(count)
    started = time.perf_counter()
    many = judge_all(drawn, count)
    seconds = time.perf_counter() - started
    started = time.perf_counter()
    singles = [
        judge_many(Case(FIXED | {k: v[i] for k, v in drawn.items()}), checks=ALL, count=1)
        for i in range(few)
    ]
    one_by_one = time.perf_counter() - started
    same = all(
        s.binding[0] == many.binding[i] and abs(s.worst[0] - many.worst[i]) < 1e-9
        for i, s in enumerate(singles)
    )
    print(f"{len(ALL)} checks, {len(VARIED)} of {len(PARAMETERS)} parameters varied")
    print(f"{count} joints together: {seconds:.2f} s, {seconds / count * 1e6:.2f} µs a joint")
    print(f"{few} of them one by one: {one_by_one:.2f} s, {one_by_one / few * 1e6:.0f} µs a joint")
    print(f"{np.mean(many.fits):.1%} fit; binding demands, most often first:")
    names, counts = np.unique(many.binding, return_counts=True)
    for index, hits in sorted(zip(names, counts, strict=True), key=lambda p: -p[1])[:8]:
        print(f"  {ALL[index].id:<24} {hits / count:.1%}")
    print("the same one by one" if same else "DIFFERENT one by one: a fault")
    return 0 if same else 1


if __name__ == "__main__":
    sys.exit(main())
