"""Times the Fit panel in FreeCAD's window under a virtual screen, beside the bare event loop.

Run under any Python: ``python3 tests/benchmarks/drag.py [MOVES] [WIDTH HEIGHT]``; needs Xvfb. A
press, MOVES moves of the mouse and a release are sent to the depth's slider of the default joint
with a plate. A frame lasts from the mouse event until the window with list, labels and the neck is
painted and flushed; all checks are judged by closed forms in it. In turn with it the same window is
only painted: what is more is NeckFit's. The release lasts until solids are built, measured and
drawn. Medians are printed. On a virtual screen the processor draws what a graphics card would,
and other programs take their part of it: the thread's own time tells how much was theirs.
"""

from __future__ import annotations

import json
import os
import subprocess
import sys
import tempfile
import time
from pathlib import Path
from statistics import median
from typing import Any

ROOT = Path(__file__).resolve().parents[2]
WITHIN = "NECKFIT_DRAG"
MOVES, SIZE, RELEASES = 120, (1280, 800), 5


def within() -> None:
    """What FreeCAD runs: drag, and write the figures down."""
    import FreeCADGui
    from fit_panel_hand import handle, joint_in, look_at, move, press, pump, release, window
    from pivy import coin
    from PySide import QtCore

    from freecad_neckfit.gui.panels.fit import open_panel
    from freecad_neckfit.run.chain import check_values

    settings = json.loads(os.environ[WITHIN])
    window()
    document, joint = joint_in("Dragged")
    view = look_at(document)
    panel = open_panel(joint)
    pump(500)
    paints: list[float] = []
    watch = coin.SoCallback()

    def painted(_: object, action: object) -> None:
        if action.isOfType(coin.SoGLRenderAction.getClassTypeId()):  # type: ignore[attr-defined]
            paints.append(time.perf_counter())

    watch.setCallback(painted, None)
    view.getSceneGraph().addChild(watch)
    pump(300)

    def until_painted(started: float, before: int) -> float:
        while len(paints) == before:
            QtCore.QCoreApplication.processEvents()
        return time.perf_counter() - started

    own: dict[str, list[float]] = {"frame": [], "bare": []}

    knob = panel.form.knobs["pocket.depth"]
    at = handle(knob.slider)
    press(knob.slider, at)
    frames, events, bare, values = [], [], [], set()
    for step in range(settings["moves"]):
        at.setX(at.x() + (1 if step % 60 < 30 else -1))
        before, started, own_start = len(paints), time.perf_counter(), time.thread_time()
        move(knob.slider, at)
        events.append(time.perf_counter() - started)
        frames.append(until_painted(started, before))
        own["frame"].append(time.thread_time() - own_start)
        values.add(knob.value)
        pump(0)
        before, started, own_start = len(paints), time.perf_counter(), time.thread_time()
        view.redraw()
        panel.form.list.viewport().update()
        bare.append(until_painted(started, before))
        own["bare"].append(time.thread_time() - own_start)
        pump(0)
    stated, closed = panel.session.stated(), []
    for _ in range(20):
        started = time.perf_counter()
        found = check_values(stated, solids=False)
        closed.append(time.perf_counter() - started)
    releases = []
    for _ in range(RELEASES):
        before, started = len(paints), time.perf_counter()
        release(knob.slider, at)
        releases.append(until_painted(started, before))
        pump(200)
        at = handle(knob.slider)
        press(knob.slider, at)
        for _ in range(5):
            at.setX(at.x() + 1)
            move(knob.slider, at)
            pump(30)
    figures = {
        "version": ".".join(__import__("FreeCAD").Version()[:3]),
        "view": list(view.getSize()),
        "checks": len(found.findings),
        "values": len(values),
        "frame": median(frames),
        "slow": sorted(frames)[int(len(frames) * 0.9)],
        "event": median(events),
        "bare": median(bare),
        "own": {name: median(times) for name, times in own.items()},
        "closed": median(closed),
        "release": median(releases),
        "slowest release": max(releases),
    }
    Path(settings["answer"]).write_text(json.dumps(figures))
    FreeCADGui.Control.closeDialog()


SCRIPT = """
import os, sys, traceback
sys.path[:0] = [{root!r}, {tests!r}, {here!r}]
from PySide import QtCore

def go():
    try:
        import drag
        drag.within()
    except BaseException:
        traceback.print_exc(file=sys.__stderr__)
        sys.__stderr__.flush()
        os._exit(1)
    os._exit(0)

QtCore.QTimer.singleShot(800, go)
"""


def run(moves: int, size: tuple[int, int], folder: Path) -> dict[str, Any]:
    """Start a virtual screen and FreeCAD on it; return the figures."""
    sys.path.insert(0, str(ROOT / "tests" / "gui"))
    from conftest import SETTINGS  # type: ignore[import-not-found]

    home = folder / "home"
    (home / "Mod").mkdir(parents=True)
    (home / "Mod" / "NeckFit").symlink_to(ROOT)
    (home / "user.cfg").write_text(SETTINGS)
    script, answer = folder / "start.py", folder / "answer.json"
    here = Path(__file__).parent
    script.write_text(
        SCRIPT.format(root=str(ROOT), tests=str(ROOT / "tests" / "gui"), here=str(here))
    )
    reading, writing = os.pipe()
    screen = ["-screen", "0", f"{size[0]}x{size[1]}x24", "-dpi", "96", "-nolisten", "tcp"]
    server = subprocess.Popen(
        ["Xvfb", "-displayfd", str(writing), *screen],
        pass_fds=[writing], stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL,
    )  # fmt: skip
    os.close(writing)
    kept = {name: value for name, value in os.environ.items() if name != "PYTHONPATH"}
    try:
        with os.fdopen(reading) as pipe:
            display = f":{pipe.readline().strip()}"
        done = subprocess.run(
            ["freecad", str(script)],
            cwd=folder,
            env=kept
            | {
                "DISPLAY": display,
                "FREECAD_USER_HOME": str(home),
                "QT_QPA_PLATFORM": "xcb",
                "QTWEBENGINE_DISABLE_SANDBOX": "1",
                WITHIN: json.dumps({"moves": moves, "answer": str(answer)}),
            },
            capture_output=True, text=True, timeout=300, check=False,
        )  # fmt: skip
    finally:
        server.terminate()
        server.wait(timeout=10)
    if not answer.is_file():
        sys.exit(f"benchmark: FreeCAD gave no figures.\n{done.stdout[-1000:]}{done.stderr[-3000:]}")
    figures: dict[str, Any] = json.loads(answer.read_text())
    return figures


def main() -> int:
    words = [int(word) for word in sys.argv[1:]]
    moves = words[0] if words else MOVES
    size = (words[1], words[2]) if len(words) > 2 else SIZE
    with tempfile.TemporaryDirectory() as folder:
        f = run(moves, size, Path(folder))
    print(f"FreeCAD {f['version']}, window {size[0]} x {size[1]}, 3D view {f['view']}")
    print(f"{moves} moves of the mouse, {f['values']} depths, {f['checks']} checks each; medians")
    print(f"mouse event to painted frame      {f['frame'] * 1e3:6.1f} ms")
    print(f"  nine of ten within              {f['slow'] * 1e3:6.1f} ms")
    print(f"  of which in the mouse event     {f['event'] * 1e3:6.1f} ms")
    print(f"    of which closed forms         {f['closed'] * 1e3:6.1f} ms")
    print(f"the same window painted only      {f['bare'] * 1e3:6.1f} ms")
    print(f"NeckFit's share                   {(f['frame'] - f['bare']) * 1e3:6.1f} ms")
    own = f["own"]["frame"] - f["own"]["bare"]
    print(f"  counted on its thread alone     {own * 1e3:6.1f} ms")
    print(f"frames per second                 {1 / f['frame']:6.1f}")
    print(f"  the bare event loop's           {1 / f['bare']:6.1f}")
    print(f"release to solids drawn           {f['release']:6.2f} s")
    print(f"  slowest of {RELEASES}                    {f['slowest release']:6.2f} s")
    return 0


if __name__ == "__main__":
    sys.exit(main())
