"""Reads the dimensions that a written sheet really prints, from the file's own bytes."""

from __future__ import annotations

import html
import re
from collections.abc import Callable, Iterator

Texts = dict[str, list[str]]
"""Printed texts by the key of their dimension."""

_SVG_TEXT = re.compile(r"<text (?P<look>[^>]*)>(?P<text>[^<]*)</text>")
_SVG_KEY = re.compile(r'data-dimension=(?:"([^"]*)"|\'([^\']*)\')')
_STRING = rb"\((?:[^()\\]|\\.)*\)"
_PDF_TEXT = re.compile(
    rb"/Span << /Key (" + _STRING + rb") >> BDC .*? (" + _STRING + rb") Tj ET EMC", re.DOTALL
)


def from_svg(data: bytes) -> Texts:
    """Texts of an SVG that carry a dimension's key."""
    return _gathered(_svg_texts(data.decode("utf-8")))


def _svg_texts(text: str) -> Iterator[tuple[str, str]]:
    for found in _SVG_TEXT.finditer(text):
        key = _SVG_KEY.search(found["look"])
        if key:
            yield html.unescape(key[1] or key[2]), html.unescape(found["text"])


def from_pdf(data: bytes) -> Texts:
    """Texts of a PDF that are marked with a dimension's key."""
    pairs = ((_plain(key), _plain(text)) for key, text in _PDF_TEXT.findall(data))
    return _gathered(pairs)


def _plain(string: bytes) -> str:
    return re.sub(rb"\\(.)", rb"\1", string[1:-1]).decode("cp1252")


def from_dxf(data: bytes) -> Texts:
    """Texts of a DXF whose extended data name a dimension's key."""
    return _gathered(_dxf_texts(data.decode("utf-8").splitlines()))


def _dxf_texts(lines: list[str]) -> Iterator[tuple[str, str]]:
    kind, text, mine = "", "", False
    for code, value in zip(lines[::2], lines[1::2], strict=True):
        match int(code):
            case 0:
                kind, text, mine = value, "", False
            case 1 if kind == "TEXT":
                text = value
            case 1001:
                mine = value == "NECKFIT"
            case 1000 if mine and kind == "TEXT":
                yield value, text


def _gathered(pairs: Iterator[tuple[str, str]]) -> Texts:
    texts: Texts = {}
    for key, text in pairs:
        texts.setdefault(key, []).append(text)
    return texts


READERS: dict[str, Callable[[bytes], Texts]] = {
    ".svg": from_svg,
    ".pdf": from_pdf,
    ".dxf": from_dxf,
}
