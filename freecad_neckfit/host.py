"""Where FreeCAD is, and how to come to run under the Python it was built for.

The ``python3`` on the path is often not FreeCAD's: FreeCAD's modules load only into the
interpreter they were built against, so the command starts itself again under that one.

Nothing here may import anything but the standard library: this module runs under any Python
before FreeCAD's is found.
"""

from __future__ import annotations

import importlib.util
import os
import sys
from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from pathlib import Path
from typing import NoReturn

PYTHON_VARIABLE = "NECKFIT_FREECAD_PYTHON"
LIB_VARIABLE = "NECKFIT_FREECAD_LIB"

# Holds the process number that was started again: exec keeps the number, so only a loop sees its
# own, and a child process that inherits the variable may still start itself again.
GUARD_VARIABLE = "NECKFIT_STARTED_AGAIN"

DEFAULT_PYTHON = Path("/usr/bin/python3")

# Where Debian 12, 13 and its testing suite put FreeCAD.so; the second is a link to the first.
KNOWN_LIBS = (Path("/usr/lib/freecad-python3/lib"), Path("/usr/lib/freecad/lib"))

# Where the same packages put the modules written in Python.
KNOWN_HOMES = (Path("/usr/lib/freecad"), Path("/usr/share/freecad"))

CANNOT_START = 2

NOT_FOUND = (
    "FreeCAD was not found. On Debian 12 or later run, as root: apt-get install "
    "--no-install-recommends freecad python3-numpy python3-ezdxf; elsewhere install FreeCAD 0.20 "
    f"or later, and name its Python in {PYTHON_VARIABLE} and the folder that holds FreeCAD.so in "
    f"{LIB_VARIABLE}."
)


class WrongHost(ValueError):
    """A variable names a Python or a folder that is not FreeCAD's; one sentence says which."""


@dataclass(frozen=True, slots=True)
class Host:
    """A FreeCAD: the Python it was built for, and the folders that Python must search."""

    python: Path
    paths: tuple[Path, ...]

    def is_this_interpreter(self) -> bool:
        """Whether the running Python is FreeCAD's own, possibly in a virtual environment."""
        return Path(sys.executable).resolve() == self.python.resolve()


def find_freecad(environment: Mapping[str, str] | None = None) -> Host | None:
    """Find FreeCAD where the environment says, or else where Debian's packages put it.

    Returns None where there is no FreeCAD. Raises WrongHost where a variable names a file or
    folder that does not hold what it should.
    """
    stated = os.environ if environment is None else environment
    python = _stated_python(stated) or DEFAULT_PYTHON
    lib = _stated_lib(stated) or next((lib for lib in KNOWN_LIBS if _holds_freecad(lib)), None)
    if lib is None or not python.is_file():
        return None
    return Host(python=python, paths=(lib, *_python_modules(lib)))


def load_freecad() -> str | None:
    """Import FreeCAD into this interpreter; return None, or one sentence why that cannot be.

    Only the interpreter that FreeCAD was built for can load it: any other is told so. Raises
    WrongHost as find_freecad does.
    """
    if "FreeCAD" in sys.modules:
        return None
    host = find_freecad()
    if host is None:
        return _import_freecad() if _importable() else NOT_FOUND
    if not host.is_this_interpreter():
        return f"this Python is {sys.executable}, but FreeCAD was built for {host.python}."
    # At the end: FreeCAD's folders hold names as general as Part, Test and Web.
    sys.path.extend(str(path) for path in host.paths if str(path) not in sys.path)
    return _import_freecad()


def reexec_under_freecad(argv: Sequence[str]) -> None:
    """Return with FreeCAD imported, or run ``freecad_neckfit`` under FreeCAD's own Python.

    ``argv`` holds the command's arguments without the program's name. The process is replaced,
    so a caller that needs FreeCAD calls this before it writes anything. Where there is no FreeCAD,
    says in one sentence what to install and exits with code 2.
    """
    if "FreeCAD" in sys.modules:
        return
    try:
        host = find_freecad()
    except WrongHost as error:
        _refuse(str(error))
    if host is None and not _importable():
        _refuse(NOT_FOUND)
    if host is not None and not (host.is_this_interpreter() and _importable()):
        _start_again(host, argv)
    reason = _import_freecad()
    if reason:
        _refuse(reason)


def _start_again(host: Host, argv: Sequence[str]) -> NoReturn:
    if os.environ.get(GUARD_VARIABLE) == str(os.getpid()):
        _refuse(
            f"FreeCAD still cannot be imported under {host.python}: name the Python that FreeCAD "
            f"was built for in {PYTHON_VARIABLE}."
        )
    python = str(host.python)
    # -P keeps the folder the user stands in off the path: a numpy.py there is not meant.
    command = [python, "-P", "-m", "freecad_neckfit", *argv]
    try:
        os.execve(python, command, _environment_for(host))
    except OSError as error:
        _refuse(
            f"{python} cannot be started ({error.strerror}): name another in {PYTHON_VARIABLE}."
        )


def _environment_for(host: Host) -> dict[str, str]:
    environment = dict(os.environ)
    # Another Python's home would make FreeCAD's Python load that one's standard library.
    environment.pop("PYTHONHOME", None)
    this_package = Path(__file__).resolve().parent.parent
    stated = environment.get("PYTHONPATH")
    searched = [str(this_package), *map(str, host.paths), *([stated] if stated else [])]
    environment["PYTHONPATH"] = os.pathsep.join(searched)
    environment[GUARD_VARIABLE] = str(os.getpid())
    return environment


def _stated_python(environment: Mapping[str, str]) -> Path | None:
    stated = environment.get(PYTHON_VARIABLE)
    if not stated:
        return None
    python = Path(stated)
    if not (python.is_file() and os.access(python, os.X_OK)):
        raise WrongHost(
            f"{PYTHON_VARIABLE} names {stated}, which is no program: give the full path of the "
            "Python that FreeCAD was built for."
        )
    return python


def _stated_lib(environment: Mapping[str, str]) -> Path | None:
    stated = environment.get(LIB_VARIABLE)
    if not stated:
        return None
    lib = Path(stated)
    if not _holds_freecad(lib):
        raise WrongHost(
            f"{LIB_VARIABLE} names {stated}, which holds no FreeCAD.so: give the folder that does."
        )
    return lib


def _holds_freecad(lib: Path) -> bool:
    return (lib / "FreeCAD.so").is_file()


def _python_modules(lib: Path) -> tuple[Path, ...]:
    """FreeCAD's Ext and Mod folders, which its own start finds only from within its programs."""
    homes = (lib.parent, *KNOWN_HOMES) if lib in KNOWN_LIBS else (lib.parent,)
    found: list[Path] = []
    for name in ("Ext", "Mod"):
        folders = (home / name for home in homes)
        found += [folder for folder in folders if folder.is_dir()][:1]
    return tuple(found)


def _importable() -> bool:
    return importlib.util.find_spec("FreeCAD") is not None


def _import_freecad() -> str | None:
    """Import FreeCAD itself: importing Part or another of its modules before it crashes Python."""
    try:
        import FreeCAD  # noqa: F401 # it stays in sys.modules
    except ImportError as error:
        return f"FreeCAD cannot be imported under {sys.executable}: {error}."
    return None


def _refuse(sentence: str) -> NoReturn:
    print(f"neckfit: {sentence}", file=sys.stderr)
    raise SystemExit(CANNOT_START)


def _main() -> None:
    """Print the FreeCAD version that this interpreter imports, or say why it cannot."""
    try:
        reason = load_freecad()
    except WrongHost as error:
        reason = str(error)
    if reason:
        _refuse(reason)
    import FreeCAD

    print(".".join(FreeCAD.Version()[:3]))


if __name__ == "__main__":
    _main()
