"""FreeCAD itself loads the add-on: the package imports, and the workbench stands in its list."""

import json
import os
import shutil
import subprocess
import sys
from pathlib import Path

import pytest

from freecad_neckfit.host import find_freecad

# Rooms of the package: none of them may become a name of its own on FreeCAD's path.
ROOMS = ("job", "fit", "decide", "solids", "run", "host", "cli", "gui", "sheets", "features")

WITHOUT_SCREEN = """
import importlib.util, json, sys
import FreeCAD
import freecad_neckfit
rooms = {rooms!r}
print("answer", json.dumps([
    freecad_neckfit.__file__, [room for room in rooms if importlib.util.find_spec(room)]
]))
"""

WITH_SCREEN = """
import json, os, sys
import FreeCAD
import FreeCADGui
from PySide import QtCore

def picture(name):
    # FreeCAD draws a question mark, or nothing, for a file that it does not find.
    icon = FreeCADGui.getIcon(name)
    return None if icon is None else icon.pixmap(32, 32).toImage()

def look():
    answer = {}
    try:
        workbench = FreeCADGui.listWorkbenches()["NeckFitWorkbench"]
        FreeCADGui.activateWorkbench("NeckFitWorkbench")
        answer = {
            "text": workbench.MenuText,
            "icon is drawn": picture(workbench.Icon) != picture("no such file.svg"),
            "active": FreeCADGui.activeWorkbench().name(),
        }
    except BaseException as error:
        answer = {"error": repr(error)}
    with open(os.environ["NECKFIT_ANSWER"], "w") as file:
        json.dump(answer, file)
    os._exit(0)

QtCore.QTimer.singleShot(500, look)
"""

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


@pytest.fixture
def environment(tmp_path, checkout):
    """A user's folder of FreeCAD with this checkout as its only add-on."""
    mod = tmp_path / "home" / "Mod"
    mod.mkdir(parents=True)
    (mod / "NeckFit").symlink_to(checkout)
    (mod.parent / "user.cfg").write_text(SETTINGS)
    kept = {name: value for name, value in os.environ.items() if name != "PYTHONPATH"}
    return kept | {
        "FREECAD_USER_HOME": str(mod.parent),
        "NECKFIT_ANSWER": str(tmp_path / "answer.json"),
        "QTWEBENGINE_DISABLE_SANDBOX": "1",
    }


@pytest.fixture
def screen():
    """An own virtual screen, ended by its handle; gives its name."""
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


@pytest.mark.freecad
def test_the_package_imports_and_no_room_becomes_a_global_name(environment, checkout, tmp_path):
    lib = find_freecad().paths[0]
    done = subprocess.run(
        [sys.executable, "-c", WITHOUT_SCREEN.format(rooms=ROOMS)],
        cwd=tmp_path,
        env=environment | {"PYTHONPATH": str(lib)},
        capture_output=True,
        text=True,
        timeout=60,
        check=True,
    )
    (line,) = [line for line in done.stdout.splitlines() if line.startswith("answer ")]
    file, rooms = json.loads(line.removeprefix("answer "))
    assert Path(file).resolve() == checkout / "freecad_neckfit" / "__init__.py"
    assert rooms == []


@pytest.mark.gui
def test_the_workbench_is_listed_and_can_be_chosen(environment, screen, tmp_path):
    script = tmp_path / "look.py"
    script.write_text(WITH_SCREEN)
    done = subprocess.run(
        ["freecad", str(script)],
        cwd=tmp_path,
        env=environment | {"DISPLAY": screen, "QT_QPA_PLATFORM": "xcb"},
        capture_output=True,
        text=True,
        timeout=90,
        check=False,
    )
    answer = tmp_path / "answer.json"
    assert answer.is_file(), done.stdout[-2000:] + done.stderr[-2000:]
    assert json.loads(answer.read_text()) == {
        "text": "NeckFit",
        "icon is drawn": True,
        "active": "NeckFitWorkbench",
    }
