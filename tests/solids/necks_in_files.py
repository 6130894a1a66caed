"""The necks that other CAD kernels wrote: unpacked, read and compared with their truth."""

from __future__ import annotations

import json
import lzma
from pathlib import Path

FILES = Path(__file__).parent.parent / "necks" / "files"


def sound_necks() -> list[dict]:
    return json.loads((FILES / "necks.json").read_text())


def flawed_necks() -> list[dict]:
    return json.loads((FILES / "flawed.json").read_text())


def second_necks() -> list[dict]:
    """Necks by kernels that share no code with FreeCAD's."""
    return json.loads((FILES / "second.json").read_text())


def unpacked(name: str, folder: Path) -> Path:
    """The file itself; the committed ones are packed."""
    packed = FILES / name
    target = folder / name.removesuffix(".xz")
    data = packed.read_bytes()
    target.write_bytes(lzma.decompress(data) if packed.suffix == ".xz" else data)
    return target


def wrong(stated: dict, truth: dict, within: float = 0.01) -> list[str]:
    """A line for every measure that was not recognised or is more than ``within`` [mm] off."""
    found = []
    for key, value in truth.items():
        if key not in stated:
            found.append(f"{key}: not recognised, is {value}")
        elif isinstance(value, str | bool):
            if stated[key] != value:
                found.append(f"{key}: {stated[key]}, is {value}")
        elif abs(stated[key] - value) > within:
            found.append(f"{key}: {stated[key]:.4f}, is {value:.4f}")
    return found
