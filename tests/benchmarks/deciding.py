"""Times windows, a million draws and a table of options, each beside a plain way to the same.

Run: ``python3 tests/benchmarks/deciding.py``, on one core. Each pair is timed in turn in one
process, and must agree:

- a window with exact borders, and a raster of 600 x 600 checks of the same range;
- a million draws with what cannot fail left out, and the same with every demand worked out;
- a comparison of eight joints, and the same eight judged one check at a time from scratch.
"""

from __future__ import annotations

import os

# One core: numpy's own threads would hide what a window costs.
for variable in ("OMP_NUM_THREADS", "OPENBLAS_NUM_THREADS", "MKL_NUM_THREADS"):
    os.environ.setdefault(variable, "1")

import sys
import time
from collections.abc import Callable
from pathlib import Path
from statistics import median
from typing import Any

import numpy as np

ROOT = Path(__file__).resolve().parents[2]
sys.path.insert(0, str(ROOT))

from freecad_neckfit.decide.demands import met
from freecad_neckfit.decide.options import column, compare
from freecad_neckfit.decide.tolerances.dimension import dimensions
from freecad_neckfit.decide.tolerances.joint import COSTLY, joint_margins
from freecad_neckfit.decide.tolerances.simulate import draw, simulate, values_of
from freecad_neckfit.decide.window import find_window
from freecad_neckfit.fit.case import Case
from freecad_neckfit.fit.checks import ALL
from freecad_neckfit.fit.verdict import judge_many
from freecad_neckfit.job.quantity import Units
from freecad_neckfit.job.read import read_job

DRAWS, PLAIN_DRAWS, SIDE = 1_000_000, 100_000, 600


def seconds(work: Callable[[], Any]) -> tuple[float, Any]:
    """Processor time that ``work`` takes on its one core, and what it returns."""
    started = time.process_time()
    result = work()
    return time.process_time() - started, result


def windows(stated: dict[str, Any]) -> bool:
    """A window against a raster; they must agree at every raster point."""
    exact = [seconds(lambda: find_window(stated)) for _ in range(15)]
    window = exact[-1][1]
    x, y = (
        a.ravel()
        for a in np.meshgrid(
            np.linspace(window.x.low, window.x.high, SIDE),
            np.linspace(window.y.low, window.y.high, SIDE),
        )
    )
    spent, raster = seconds(
        lambda: np.concatenate([met(window.field.at(x[k], y[k])) for k in parts(len(x))])
    )
    print(f"window with exact borders     {median(s for s, _ in exact) * 1e3:8.1f} ms")
    print(f"raster of {SIDE} x {SIDE}           {spent * 1e3:8.1f} ms, borders to "
          f"{(window.x.high - window.x.low) / SIDE:.3f} mm")  # fmt: skip
    return bool(np.array_equal(window.holds(x, y), raster))


def parts(count: int) -> list[slice]:
    """Parts that stay in the processor's cache."""
    return [slice(start, start + 16384) for start in range(0, count, 16384)]


def draws(job: Any) -> bool:
    """A million draws against a tenth as many with every demand; the shares must agree."""
    dims = dimensions(job)
    margins = joint_margins(job.stated, dims)
    spent, found = seconds(lambda: simulate(dims, margins, draws=DRAWS, costly=COSTLY))
    plain, failed = seconds(lambda: every_demand(dims, margins, PLAIN_DRAWS))
    print(f"{DRAWS:,} draws               {spent:8.2f} s")
    print(f"the same, every demand        {plain * DRAWS / PLAIN_DRAWS:8.2f} s "
          f"(from {PLAIN_DRAWS:,})")  # fmt: skip
    return abs(found.share - failed / PLAIN_DRAWS) < 0.01


def every_demand(dims: Any, margins: Any, count: int) -> int:
    """Joints that fail, every demand worked out in every draw."""
    rng = np.random.default_rng(1)
    failed = 0
    for part in parts(count):
        size = min(part.stop, count) - part.start
        drawn = draw(dims, size, rng)
        failed += int((~met(margins(values_of(dims, drawn), None))).sum())
    return failed


def options(job: Any) -> bool:
    """A table of eight joints against eight bare verdicts; they must agree."""
    joints = [job.base, *job.options[:7]]
    table = [
        seconds(lambda: compare([column(j.name, j.stated) for j in joints], units=Units.MM))
        for _ in range(9)
    ]
    bare = [
        seconds(lambda: [judge_many(Case(j.stated), checks=ALL, count=1).fits[0] for j in joints])
        for _ in range(9)
    ]
    print(f"table of {len(joints)} options            {median(s for s, _ in table) * 1e3:8.1f} ms")
    print(f"their bare verdicts           {median(s for s, _ in bare) * 1e3:8.1f} ms")
    said = [cell.text == "fits" for cell in table[-1][1].rows[0].cells]
    return bool(np.array_equal(said, bare[-1][1]))


def main() -> int:
    job = read_job(ROOT / "samples" / "joint.toml")
    same = [windows(job.base.stated), draws(job.base), options(job)]
    print("all agree" if all(same) else f"DIFFERENT: {same}")
    return 0 if all(same) else 1


if __name__ == "__main__":
    sys.exit(main())
