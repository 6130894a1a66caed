"""FreeCAD with its screen, on a virtual display of its own."""

import json
import os
import shutil
import subprocess
from pathlib import Path

import pytest

# No start page, no question at first start, no look for updates.
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

FRAME = """
import json, os, sys, traceback
sys.path.insert(0, {folder!r})
from PySide import QtCore

def go():
    try:
        import {module}
        answer = {module}.main()
    except BaseException:
        answer = {{"error": traceback.format_exc()}}
    with open(os.environ["NECKFIT_ANSWER"], "w") as file:
        json.dump(answer, file)
    os._exit(0)

QtCore.QTimer.singleShot(500, go)
"""


@pytest.fixture(scope="session")
def screen():
    """A virtual screen, ended by its handle; gives its name."""
    if shutil.which("Xvfb") is None:
        pytest.skip("Xvfb is not installed")
    reading, writing = os.pipe()
    server = subprocess.Popen(
        ["Xvfb", "-displayfd", str(writing), "-screen", "0", "1280x800x24", "-nolisten", "tcp"],
        pass_fds=[writing],
        stdout=subprocess.DEVNULL,
        stderr=subprocess.DEVNULL,
    )
    os.close(writing)
    try:
        with os.fdopen(reading) as pipe:
            yield f":{pipe.readline().strip()}"
    finally:
        server.terminate()
        server.wait(timeout=10)


@pytest.fixture(scope="session")
def on_screen(screen, checkout, tmp_path_factory):
    """Run ``main()`` of a module beside the tests within FreeCAD's screen; gives its answer."""

    def run(module):
        folder = tmp_path_factory.mktemp(module)
        mod = folder / "home" / "Mod"
        mod.mkdir(parents=True)
        (mod / "NeckFit").symlink_to(checkout)
        (mod.parent / "user.cfg").write_text(SETTINGS)
        script, answer = folder / "start.py", folder / "answer.json"
        script.write_text(FRAME.format(folder=str(Path(__file__).parent), module=module))
        kept = {name: value for name, value in os.environ.items() if name != "PYTHONPATH"}
        done = subprocess.run(
            ["freecad", str(script)],
            cwd=folder,
            env=kept
            | {
                "DISPLAY": screen,
                "FREECAD_USER_HOME": str(mod.parent),
                "NECKFIT_ANSWER": str(answer),
                "QT_QPA_PLATFORM": "xcb",
                "QTWEBENGINE_DISABLE_SANDBOX": "1",
            },
            capture_output=True,
            text=True,
            errors="replace",  # threads of FreeCAD may write into each other's words
            timeout=int(os.environ.get("NECKFIT_PATIENCE", "180")),
            check=False,
        )
        assert answer.is_file(), done.stdout[-2000:] + done.stderr[-2000:]
        found = json.loads(answer.read_text(encoding="utf-8"))
        assert "error" not in found, found["error"]
        # What goes wrong while the view is drawn is told there and nowhere else.
        assert "Traceback" not in done.stdout + done.stderr, done.stdout + done.stderr
        return found

    return run
