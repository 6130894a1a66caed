"""Times FreeCAD's start with the workbench installed and without it, in turn.

Run under any Python: ``python3 tests/benchmarks/start.py [ROUNDS]``. Each start is FreeCAD's whole
window on a virtual screen of its own, from the start of the process to the first turn of its event
loop. Both are measured in pairs, in changing order; the medians and the median of the pairs'
differences are printed. Exit code 1 where the workbench adds more than ``ALLOWED``.
"""

from __future__ import annotations

import os
import resource
import subprocess
import sys
import tempfile
import time
from pathlib import Path
from statistics import median

ROOT = Path(__file__).resolve().parents[2]
ALLOWED = 0.050
"""What the workbench may add [s]."""
SETTINGS = """<?xml version="1.0" encoding="UTF-8" standalone="no" ?>
<FCParameters><FCParamGroup Name="Root"><FCParamGroup Name="BaseApp">
<FCParamGroup Name="Preferences"><FCParamGroup Name="General">
<FCText Name="AutoloadModule">PartWorkbench</FCText><FCBool Name="ShowSplasher" Value="0"/>
</FCParamGroup><FCParamGroup Name="Mod"><FCParamGroup Name="Start">
<FCBool Name="ShowOnStartup" Value="0"/><FCBool Name="FirstStart2024" Value="0"/></FCParamGroup>
</FCParamGroup><FCParamGroup Name="Addons"><FCBool Name="AutoCheck" Value="0"/>
<FCBool Name="ShownInfo" Value="1"/><FCBool Name="FirstRun" Value="0"/></FCParamGroup>
</FCParamGroup></FCParamGroup></FCParamGroup></FCParameters>
"""
Seconds = tuple[float, float]
"""By the clock, and of the processor: the latter is of use on a machine that others use too."""
LEAVE = """
import os, time, FreeCADGui
from PySide import QtCore

def leave():
    known = "NeckFitWorkbench" in FreeCADGui.listWorkbenches()
    with open(os.environ["NECKFIT_ANSWER"], "w") as file:
        file.write(f"{time.time()} {known}")
    os._exit(0)

QtCore.QTimer.singleShot(0, leave)
"""


def start(home: Path, display: str) -> tuple[float, float, bool]:
    """One start: seconds until FreeCAD's events run, those of the processor, and what it knows.

    The last is whether it knows the workbench.
    """
    answer, script = home / "answer", home / "leave.py"
    script.write_text(LEAVE)
    kept = {name: value for name, value in os.environ.items() if name != "PYTHONPATH"}
    wanted = {
        "DISPLAY": display,
        "FREECAD_USER_HOME": str(home),
        "NECKFIT_ANSWER": str(answer),
        "QT_QPA_PLATFORM": "xcb",
        "QTWEBENGINE_DISABLE_SANDBOX": "1",
    }
    began, busy = time.time(), _busy()
    subprocess.run(
        ["freecad", str(script)],
        env=kept | wanted,
        stdout=subprocess.DEVNULL,
        stderr=subprocess.DEVNULL,
        timeout=120,
        check=True,
    )
    ended, known = answer.read_text().split()
    return float(ended) - began, _busy() - busy, known == "True"


def _busy() -> float:
    """Seconds that all ended children kept the processor busy: other programs do not count."""
    spent = resource.getrusage(resource.RUSAGE_CHILDREN)
    return spent.ru_utime + spent.ru_stime


def homes(folder: Path) -> tuple[Path, Path]:
    """Two users' folders of FreeCAD: without the workbench, and with it."""
    found = folder / "without", folder / "with"
    for home in found:
        (home / "Mod").mkdir(parents=True)
        (home / "user.cfg").write_text(SETTINGS)
    (found[1] / "Mod" / "NeckFit").symlink_to(ROOT)
    return found


def measure(folder: Path, display: str, rounds: int) -> tuple[list[Seconds], list[Seconds]]:
    """Without and with, pair by pair; the first start of each is not counted."""
    seconds: tuple[list[Seconds], list[Seconds]] = ([], [])
    both = list(enumerate(homes(folder)))
    for number in range(rounds + 1):
        for which, home in both if number % 2 else both[::-1]:
            spent, busy, known = start(home, display)
            if known != bool(which):
                sys.exit("benchmark: FreeCAD did not load what it should.")
            if number:
                seconds[which].append((spent, busy))
    return seconds


def main() -> int:
    rounds = int(sys.argv[1]) if len(sys.argv) > 1 else 15
    reading, writing = os.pipe()
    server = subprocess.Popen(
        ["Xvfb", "-displayfd", str(writing), "-screen", "0", "1280x800x24", "-nolisten", "tcp"],
        pass_fds=[writing],
        stdout=subprocess.DEVNULL,
        stderr=subprocess.DEVNULL,
    )
    os.close(writing)
    try:
        with os.fdopen(reading) as pipe, tempfile.TemporaryDirectory() as folder:
            without, with_it = measure(Path(folder), f":{pipe.readline().strip()}", rounds)
    finally:
        server.terminate()
        server.wait(timeout=10)
    added = []
    for which, words in enumerate(("by the clock", "of the processor")):
        pairs = [(a[which], b[which]) for a, b in zip(without, with_it, strict=True)]
        added.append(median(b - a for a, b in pairs))
        print(f"seconds {words}, medians of {rounds} pairs")
        print(f"  without the workbench  {median(a for a, _ in pairs):.3f}")
        print(f"  with it                {median(b for _, b in pairs):.3f}")
        print(f"  it adds                {1000 * added[-1]:.0f} ms")
    print(f"allowed                  {1000 * ALLOWED:.0f} ms")
    return 0 if added[0] <= ALLOWED else 1


if __name__ == "__main__":
    sys.exit(main())
