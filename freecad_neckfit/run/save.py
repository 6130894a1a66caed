"""Writes the solids of a joint as a FreeCAD document and as STEP.

Files are written into a folder beside their place and renamed when whole, so that a failure
leaves what was there before.
"""

from __future__ import annotations

import tempfile
import zipfile
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path
from typing import Any

import FreeCAD

from ..job.errors import BadInput, KernelFailure
from ..solids.build.assembly import GROUPS, Assembly

DOCUMENT = "NeckFit"
STEP_ENDS = b"END-ISO-10303-21;"


def save(
    assembly: Assembly, *, fcstd: Path | None = None, step: Path | None = None
) -> tuple[Path, ...]:
    """Write the files asked for and return their paths; existing ones are replaced.

    The document holds one Part::Feature for each part, under one group for each kind of part; the
    STEP file one named product for each. Raises BadInput where a folder cannot be written to,
    KernelFailure where FreeCAD wrote no whole file.
    """
    wanted = [path for path in (fcstd, step) if path is not None]
    with hidden_document(DOCUMENT) as document:
        features = _fill(document, assembly)
        for path in wanted:
            with _beside(path) as draft:
                if path is fcstd:
                    document.saveAs(str(draft))
                    _check_document(draft, path)
                else:
                    _export(features, draft)
                    _check_step(draft, path)
    return tuple(wanted)


@contextmanager
def hidden_document(name: str) -> Iterator[Any]:
    """A new document that no screen shows, closed in the end; the active one stays active."""
    active = FreeCAD.ActiveDocument
    document = FreeCAD.newDocument(name, hidden=True)
    try:
        yield document
    finally:
        FreeCAD.closeDocument(document.Name)
        if active is not None:
            FreeCAD.setActiveDocument(active.Name)


def _fill(document: Any, assembly: Assembly) -> list[Any]:
    groups: dict[str, Any] = {}
    features = []
    for kind in GROUPS:
        for name in (n for n in assembly.parts if assembly.group_of(n) == kind):
            if kind not in groups:
                groups[kind] = document.addObject("App::DocumentObjectGroup", f"group_{kind}")
                groups[kind].Label = kind.replace("_", " ").capitalize()  # parts have small letters
            feature = document.addObject("Part::Feature", name)
            feature.Shape = _plain(assembly.parts[name])
            feature.Label = name
            feature.purgeTouched()
            groups[kind].addObject(feature)
            features.append(feature)
    return features


def _plain(shape: Any) -> Any:
    """A copy without the element map that FreeCAD 1.1 would save along with it."""
    copy = shape.copy()
    copy.Tag = 0
    return copy


def _export(features: list[Any], path: Path) -> None:
    import Import

    Import.export(features, str(path))


@contextmanager
def _beside(path: Path) -> Iterator[Path]:
    """A path in a passing folder beside; its file takes the place of ``path`` if all went well.

    A folder, where ``job.store.beside`` makes a file: FreeCAD would back that up when saving.
    """
    try:
        with tempfile.TemporaryDirectory(dir=path.parent, prefix=".neckfit-") as folder:
            draft = Path(folder, path.name)
            yield draft
            draft.replace(path)
    except OSError as error:
        raise BadInput(
            f"{path}: cannot be written ({error.strerror}); choose a folder that exists and "
            "that you may write to."
        ) from error


def _check_document(draft: Path, path: Path) -> None:
    if not zipfile.is_zipfile(draft):
        raise KernelFailure(f"{path}: FreeCAD wrote no document; is the disk full?")
    with zipfile.ZipFile(draft) as archive:
        if archive.testzip() is not None or "Document.xml" not in archive.namelist():
            raise KernelFailure(f"{path}: FreeCAD wrote a broken document; is the disk full?")


def _check_step(draft: Path, path: Path) -> None:
    if not draft.is_file() or STEP_ENDS not in draft.read_bytes()[-200:]:
        raise KernelFailure(f"{path}: FreeCAD wrote no whole STEP file; is the disk full?")
