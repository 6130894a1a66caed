"""Reads what a PNG file says of itself, and its pixels as they are packed in it."""

from __future__ import annotations

import struct
from dataclasses import dataclass

SIGNATURE = b"\x89PNG\r\n\x1a\n"
PLAIN = (8, 2, 0, 0, 0)
"""Eight bits each of red, green and blue, packed and filtered in the one usual way, no weaving."""


@dataclass(frozen=True)
class Png:
    """Width and height [pixel], and the pixels: each row filtered, the whole deflated."""

    width: int
    height: int
    packed: bytes


def read_png(data: bytes) -> Png:
    """Read a PNG of plain red, green and blue.

    Raises ValueError for anything else: pictures with transparency must be laid on white first.
    """
    if not data.startswith(SIGNATURE):
        raise ValueError("this picture is no PNG")
    packed, at, size = bytearray(), len(SIGNATURE), (0, 0)
    kind: tuple[int, ...] = ()
    while at + 8 <= len(data):
        (long,) = struct.unpack(">I", data[at : at + 4])
        name, body = data[at + 4 : at + 8], data[at + 8 : at + 8 + long]
        if name == b"IHDR":
            wide, high, *rest = struct.unpack(">IIBBBBB", body)
            size, kind = (wide, high), tuple(rest)
        elif name == b"IDAT":
            packed += body
        at += long + 12  # its length, name and check sum too
    if kind != PLAIN or not packed:
        raise ValueError("this picture is no PNG of plain red, green and blue")
    return Png(*size, bytes(packed))
