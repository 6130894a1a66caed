"""Writing files so that nothing is lost: beside the old one first, then renamed over it."""

from __future__ import annotations

import os
import tempfile
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path

from .errors import BadInput


@contextmanager
def beside(path: Path) -> Iterator[Path]:
    """Give a fresh file beside ``path`` to write to; rename it over ``path`` if all went well.

    On any failure the fresh file is removed and ``path`` stays as it was. Raises ``BadInput`` in
    one sentence where the folder is missing or may not be written to.
    """
    if path.is_dir():
        raise BadInput(f"{path} is a folder; name a file to write to.")
    try:
        # The ending is kept: some writers choose the format by it.
        handle, name = tempfile.mkstemp(prefix=".neckfit-", suffix=path.suffix, dir=path.parent)
    except OSError as error:
        raise BadInput(
            f"{path} cannot be written ({error.strerror}); choose a folder that exists and that "
            "you may write to."
        ) from error
    os.close(handle)
    fresh = Path(name)
    try:
        yield fresh
        fresh.chmod(0o666 & ~_umask())
        fresh.replace(path)
    except OSError as error:
        raise BadInput(
            f"{path} cannot be written ({error.strerror}); free some space or choose another "
            "folder."
        ) from error
    finally:
        fresh.unlink(missing_ok=True)


def write_beside(path: Path, data: bytes) -> None:
    """Write ``data`` to ``path`` by way of a fresh file. Raises ``BadInput`` as ``beside`` does."""
    with beside(path) as fresh:
        fresh.write_bytes(data)


def _umask() -> int:
    mask = os.umask(0)
    os.umask(mask)
    return mask
