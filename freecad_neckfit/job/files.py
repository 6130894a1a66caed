"""Opening a job or part file: a TOML table, or one sentence that says why there is none."""

from __future__ import annotations

import re
import stat
import tomllib
from pathlib import Path
from typing import Any

from .errors import BadInput

LARGEST_FILE = 2_000_000
"""Largest job file that is read [bytes]: a job with hundreds of options stays far below."""

_PLACE = re.compile(r"\s*\(at (?P<place>line \d+, column \d+|end of document)\)$")


def load_table(path: Path) -> dict[str, Any]:
    """Return what the TOML file holds.

    Raises BadInput for a file that is missing, a folder, not readable, larger than 2 MB, no
    UTF-8 text, or broken TOML (with line and column).
    """
    name = plain_name(path)
    data = load_bytes(path, largest=LARGEST_FILE)
    text = ""
    try:
        text = data.decode("utf-8-sig")
        return tomllib.loads(text)
    except UnicodeDecodeError as error:
        raise BadInput(
            f"{name} is not UTF-8 text (byte {error.start + 1}); save it as UTF-8."
        ) from None
    except RecursionError:
        raise BadInput(f"{name} nests its tables or lists too deeply; make them flat.") from None
    except ValueError as error:
        # Besides its own error the parser lets through those of numbers and dates.
        raise BadInput(_broken(name, str(error), text=text)) from None


def load_bytes(path: Path, *, largest: int) -> bytes:
    """Return the bytes of a file of at most ``largest`` bytes. Raises BadInput."""
    name = plain_name(path)
    try:
        mode = path.stat().st_mode
        if stat.S_ISDIR(mode):
            raise BadInput(f"{name} is a folder; name a file.")
        if not stat.S_ISREG(mode):
            raise BadInput(f"{name} is no ordinary file; name a file on a disk.")
        with path.open("rb") as file:
            data = file.read(largest + 1)
    except FileNotFoundError:
        raise BadInput(f"{name}: there is no such file ({plain(path.parent)}).") from None
    except OSError as error:
        raise BadInput(
            f"{name} cannot be read ({error.strerror}); check its name and its permissions."
        ) from None
    if len(data) > largest:
        raise BadInput(f"{name} is larger than {largest / 1e6:g} MB; name a smaller file.")
    return data


def resolved(path: Path) -> Path:
    """Return the path without links and dots, or as it is where links lead in a circle."""
    try:
        return path.resolve()
    except (OSError, RuntimeError):  # opening the file will tell why
        return path


def plain_name(path: Path) -> str:
    """Return the file's name without its folder, safe to print in one line."""
    return plain(path.name or path)


def plain(text: object) -> str:
    """Return the text in one printable line of at most 120 characters."""
    line = "".join(c if c.isprintable() else "?" for c in str(text))
    return line if len(line) <= 120 else f"…{line[-119:]}"


def _broken(name: str, complaint: str, *, text: str) -> str:
    place = _PLACE.search(complaint)
    where = f", {place['place']}" if place else ""
    # The parser calls it the end of the document; an editor shows lines.
    last = text.rstrip("\n").count("\n") + 1
    where = where.replace("end of document", f"line {last}, at its end,")
    what = plain(_PLACE.sub("", complaint)).rstrip(".")
    return f"{name}{where} is not valid TOML: {what[:1].lower()}{what[1:]}; correct it there."
