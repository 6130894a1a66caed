"""Imports FreeCAD for the tests that need it, and skips or fails them where it is not."""

import os
import tempfile
from pathlib import Path

import pytest

from freecad_neckfit.host import WrongHost, load_freecad

# FreeCAD reads its user's settings and add-ons from here as soon as it is imported: the tester's
# own must not decide a test, and no test may write to them.
USER_HOME = tempfile.TemporaryDirectory(prefix="neckfit-tests-", ignore_cleanup_errors=True)
os.environ["FREECAD_USER_HOME"] = USER_HOME.name

CHECKOUT = Path(__file__).resolve().parent.parent

# Documents bring their proxies back only where the add-on is installed.
(Path(USER_HOME.name) / "Mod").mkdir()
(Path(USER_HOME.name) / "Mod" / "NeckFit").symlink_to(CHECKOUT)


def _why_no_freecad() -> str | None:
    try:
        return load_freecad()
    except WrongHost as error:
        return str(error)


NO_FREECAD = _why_no_freecad()


def pytest_configure(config):
    # tests/run has just installed FreeCAD: there its absence is an error, not a reason to skip.
    if NO_FREECAD and os.environ.get("NECKFIT_REQUIRE_FREECAD"):
        raise pytest.UsageError(NO_FREECAD)


def pytest_report_header(config):
    if NO_FREECAD:
        return f"FreeCAD: none; {NO_FREECAD}"
    import FreeCAD

    return f"FreeCAD: {'.'.join(FreeCAD.Version()[:3])}"


def pytest_collection_modifyitems(config, items):
    if not NO_FREECAD:
        return
    for item in items:
        if item.get_closest_marker("freecad") or item.get_closest_marker("gui"):
            item.add_marker(pytest.mark.skip(reason=NO_FREECAD))


@pytest.fixture(scope="session")
def checkout() -> Path:
    """The folder that holds package.xml."""
    return CHECKOUT
