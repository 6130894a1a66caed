"""The rooms stay apart: the two readings of a check know nothing of each other."""

import sys

import pytest

from tests.house.layers import PACKAGE, breaches, imported_modules, module_of, room_of


def sources(checkout):
    for file in sorted((checkout / PACKAGE).rglob("*.py")):
        yield file, module_of(file, checkout)


def test_no_module_breaks_the_layering(checkout):
    found = [
        breach
        for file, module in sources(checkout)
        for breach in breaches(
            file.read_text(encoding="utf-8"), module, is_package=file.name == "__init__.py"
        )
    ]
    assert found == []


def test_the_rooms_that_must_stay_apart_are_there(checkout):
    rooms = {room_of(module) for _, module in sources(checkout)}
    assert {"job", "fit", "solids", "run"} <= rooms


def test_host_runs_under_any_python(checkout):
    source = (checkout / PACKAGE / "host.py").read_text(encoding="utf-8")
    imported = imported_modules(source, f"{PACKAGE}.host", is_package=False)
    outside = {name.split(".")[0] for name in imported} - sys.stdlib_module_names
    assert outside == {"FreeCAD"}


@pytest.mark.parametrize(
    ("module", "line"),
    [
        ("solids.measure.gap", "from freecad_neckfit.fit import seat"),
        ("solids.measure.gap", "from ...fit.seat import depth"),
        ("solids.measure.gap", "from ... import fit"),
        ("solids.measure.gap", "import freecad_neckfit.run.chain"),
        ("solids.build.neck", "import FreeCAD as App\nApp.newDocument()"),
        ("solids.build.neck", "import FreeCADGui"),
        ("fit.seat", "def f():\n    import Part"),
        ("fit.seat", "from ..solids.build import neck"),
        ("fit.seat", "from PySide.QtCore import QObject"),
        ("job.units", "from FreeCAD import Units"),
        ("job.units", "import importlib\nimportlib.import_module('FreeCAD')"),
        ("job.units", "from freecad_neckfit.fit import seat"),
        ("decide.window", "import Part"),
        ("run.chain", "from pivy import coin"),
        ("run.chain", "from freecad_neckfit import gui"),
        ("features.neck", "from freecad_neckfit.gui import labels"),
        ("sheets.pdf", "from PySide import QtWidgets"),
        ("nowhere.thing", "import math"),
    ],
)
def test_a_planted_breach_is_seen(module, line):
    assert len(breaches(line, f"{PACKAGE}.{module}")) >= 1


@pytest.mark.parametrize(
    ("module", "line"),
    [
        ("solids.measure.gap", "import FreeCAD\nimport Part\nfrom ...job import frames"),
        ("fit.seat", "import numpy as np\nfrom ..job import frames\nfrom . import radius"),
        ("run.chain", "from freecad_neckfit import fit, solids, __version__"),
        ("sheets.pdf", "from PySide import QtGui"),
        ("gui.labels", "from pivy import coin\nfrom PySide import QtWidgets\nimport FreeCADGui"),
        ("cli", "from .host import reexec_under_freecad\nfrom .run import chain"),
    ],
)
def test_what_is_allowed_is_no_breach(module, line):
    assert breaches(line, f"{PACKAGE}.{module}") == []
