"""Gathers every word that the screen shows, and brings the translations up to date.

    python3 resources/translations/collect.py [--check]

writes ``freecad_neckfit/data/sentences.txt`` (templates of sentences with figures) and each
``neckfit_<language>.ts`` beside this file: what is new stands there unfinished, what is gone is
dropped, what is translated stays. Qt's ``lrelease`` then makes the ``.qm`` files, where it is
found. With ``--check`` nothing is written: the answer is 1 where anything would change.
"""

from __future__ import annotations

import shutil
import subprocess
import sys
import xml.etree.ElementTree as ET
from pathlib import Path

HERE = Path(__file__).parent
sys.path.insert(0, str(HERE))

from editor import PROPERTY, editor_texts  # noqa: E402 # beside this file
from sources import CONTEXT, PACKAGE, SLOT, texts, worth  # noqa: E402 # beside this file

SENTENCES = PACKAGE / "data" / "sentences.txt"
Words = dict[tuple[str, str], str]
"""(context, source) -> translation."""


def templates(found: dict[str, set[str]]) -> str:
    """The file of sentences with figures in them."""
    told = (t for t in found[CONTEXT] if SLOT.search(t) and "\n" not in t and worth(t))
    return "\n".join(sorted(told)) + "\n"


def updated(known: Words, found: dict[str, set[str]], language: str) -> tuple[str, int]:
    """A ``.ts`` file brought up to date; the number of texts not yet translated."""
    root = ET.Element("TS", version="2.1", language=language, sourcelanguage="en")
    plain = {source: told for (context, source), told in known.items() if context == CONTEXT}
    editor = editor_texts(plain)
    missing = 0
    for context in sorted({*found, PROPERTY}):
        block = ET.SubElement(root, "context")
        ET.SubElement(block, "name").text = context
        sources = editor if context == PROPERTY else found[context]
        for source in sorted(s for s in sources if s):
            message = ET.SubElement(block, "message")
            ET.SubElement(message, "source").text = source
            told = known.get((context, source)) or plain.get(source, "")
            if context == PROPERTY:
                told = editor[source]
            translation = ET.SubElement(message, "translation")
            translation.text = told
            if not told:
                translation.set("type", "unfinished")
                missing += 1
    ET.indent(root, " ")
    head = '<?xml version="1.0" encoding="utf-8"?>\n<!DOCTYPE TS>\n'
    return head + ET.tostring(root, encoding="unicode") + "\n", missing


def read(file: Path) -> Words:
    """What one ``.ts`` file holds."""
    found = {}
    for context in ET.parse(file).getroot().iter("context"):
        for message in context.iter("message"):
            key = context.findtext("name", ""), message.findtext("source", "")
            found[key] = message.findtext("translation", "")
    return found


def main(arguments: list[str]) -> int:
    """Update all files, or say which would change; say what is missing."""
    found, changed = texts(), False
    release = shutil.which("lrelease") or shutil.which("pyside6-lrelease")
    wanted = {SENTENCES: templates(found)}
    for file in sorted(HERE.glob("neckfit_*.ts")):
        wanted[file], missing = updated(read(file), found, file.stem.partition("_")[2])
        total = wanted[file].count("<message>")
        print(f"{file.name}: {missing} of {total} not translated")
    for file, text in wanted.items():
        is_new = file.read_text(encoding="utf-8") != text
        changed |= is_new
        if "--check" in arguments:
            print(f"{file.name}: {'out of step' if is_new else 'in step'}")
            continue
        file.write_text(text, encoding="utf-8")
        if release and file.suffix == ".ts":
            subprocess.run([release, "-silent", str(file)], check=True)
    if not release:
        print("lrelease is not installed: the .qm files are as they were")
    return int(changed and "--check" in arguments)


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
