"""The kernel's readers, run in a process of their own: a broken file may crash or stall them."""

from __future__ import annotations

import os
import subprocess
import sys
import tempfile
import time
from collections.abc import Callable
from pathlib import Path
from typing import Any

from ...job.errors import BadInput

PATIENCE = 300.0
"""Longest reading [s] before a file counts as unreadable."""
PAUSE = 0.05
UNREADABLE = 9
"""Exit code of the process for a file that the kernel refuses."""
WORDS = """
import sys
sys.path[:] = sys.argv[3].split({sep!r})
import FreeCAD, Part
shape = Part.Shape()
try:
    shape.read(sys.argv[1])
except Exception:
    sys.exit({unreadable})
if shape.isNull():
    sys.exit({unreadable})
shape.exportBrep(sys.argv[2])
"""


def read_shape_here(path: Path, kind: str, _progress: Callable[[str, float], bool]) -> Any:
    """Read with this process's kernel. Raises BadInput where it refuses the file."""
    import FreeCAD  # noqa: F401  # Part loads only after it
    import Part

    shape = Part.Shape()
    try:
        shape.read(str(path))
    except Exception as error:  # the kernel raises many kinds; all mean the same here
        raise _unreadable(path, kind) from error
    if shape.isNull() or not shape.Faces:
        raise _unreadable(path, kind)
    return shape


def read_shape(path: Path, kind: str, progress: Callable[[str, float], bool]) -> Any:
    """Read in a process of its own, asking ``progress`` meanwhile whether to go on.

    Raises BadInput where the kernel refuses the file, crashes or takes longer than ``PATIENCE``.
    """
    python = _python()
    if python is None:
        return read_shape_here(path, kind, progress)
    with tempfile.TemporaryDirectory(prefix="neckfit-") as scratch:
        target = Path(scratch) / "read.brep"
        words = WORDS.format(sep=os.pathsep, unreadable=UNREADABLE)
        # The path as it is here, less what only this process may import from where it stands.
        searched = os.pathsep.join(p for p in sys.path if p)
        process = subprocess.Popen(  # noqa: S603  # this Python itself, with words of our own
            [python, "-I", "-c", words, str(path.absolute()), str(target), searched],
            stdin=subprocess.DEVNULL, stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL,
        )  # fmt: skip
        code = _wait(process, path, kind, progress)
        if code == 0:
            return read_shape_here(target, kind, progress)
    if code == UNREADABLE:
        raise _unreadable(path, kind)
    raise BadInput(
        f"{path.name}: reading it brought FreeCAD's kernel down; save the neck again, as STEP."
    )


def _wait(
    process: subprocess.Popen[bytes], path: Path, kind: str, progress: Callable[[str, float], bool]
) -> int:
    started = time.monotonic()
    try:
        while process.poll() is None:
            seconds = time.monotonic() - started
            if not progress(f"reading {kind}", seconds):
                raise BadInput(f"{path.name}: reading was cancelled; nothing was changed.")
            if seconds > PATIENCE:
                raise BadInput(
                    f"{path.name}: not read within {PATIENCE:.0f} seconds; save the neck alone, "
                    "without hardware and engraving."
                )
            time.sleep(PAUSE)
        return int(process.returncode)
    finally:
        if process.poll() is None:
            process.kill()
            process.wait()


def _python() -> str | None:
    """This Python's program; None where FreeCAD is its own program and there is none beside it."""
    own = Path(sys.executable or "")
    if own.name.startswith("python"):
        return str(own)
    for folder in (Path(sys.prefix) / "bin", Path(sys.exec_prefix)):
        for name in (f"python{sys.version_info[0]}.{sys.version_info[1]}", "python3", "python.exe"):
            if (folder / name).is_file():
                return str(folder / name)
    return None


def _unreadable(path: Path, kind: str) -> BadInput:
    return BadInput(
        f"{path.name}: cannot be read as {kind}; it is broken or of another kind: save it again."
    )
