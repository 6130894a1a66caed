"""Gathers every word that the screen shows, and brings the translations up to date.

    python3 resources/translations/collect.py

writes ``freecad_neckfit/data/sentences.txt`` (templates of sentences with figures) and each
``neckfit_<language>.ts`` beside this file: what is new stands there unfinished, what is gone is
dropped, what is translated stays. Qt's ``lrelease`` then makes the ``.qm`` files, where it is
found.
"""

from __future__ import annotations

import ast
import re
import shutil
import subprocess
import sys
import xml.etree.ElementTree as ET
from collections.abc import Iterator
from pathlib import Path

HERE = Path(__file__).parent
ROOT = HERE.parents[1]
PACKAGE = ROOT / "freecad_neckfit"
SENTENCES = PACKAGE / "data" / "sentences.txt"

CONTEXT = "NeckFit"
SLOT = re.compile(r"\{\w*\}")
TELLING = {"because", "unknown_because", "reason"}
"""Arguments that hold a reason, wherever they stand."""
TELLERS = {"BadInput", "CannotBuild", "NotFound", "NotRead", "KernelFailure", "Misprint", "Stopped"}
TELLERS |= {"absent", "unknown", "refusal"}
"""Calls whose arguments are sentences for the designer."""
MARKED = {"tr", "say"}
"""Calls in the room gui whose text is translated as it stands."""
NOT_ON_SCREEN = {"cli", "host.py", "__main__.py", "door"}


def texts() -> dict[str, set[str]]:
    """Context -> sources. FreeCAD itself looks a command's words up under the command's name."""
    sys.path.insert(0, str(ROOT))
    found = {CONTEXT: set(declared()), "Workbench": {"NeckFit", "Nec&kFit"}}
    for file in sorted(PACKAGE.rglob("*.py")):
        room = file.relative_to(PACKAGE).parts[0]
        if room in NOT_ON_SCREEN:
            continue
        tree = ast.parse(file.read_text(encoding="utf-8"))
        found[CONTEXT] |= {t for t in sentences(tree) if worth(t)}
        if room == "gui":
            found[CONTEXT] |= set(marked(tree))
            for name, words in commands(tree):
                found.setdefault(name, set()).update(words)
                found[CONTEXT].update(words)
            titles = set(groups(tree))
            found["Workbench"] |= titles
    found[CONTEXT].add("en")  # answered by each translation with its own language's name
    return found


def declared() -> Iterator[str]:
    """What parameters, checks and states are called."""
    from freecad_neckfit.features.properties import title_of
    from freecad_neckfit.fit.checks import ALL as CHECKS
    from freecad_neckfit.job.parameters import ALL as PARAMETERS
    from freecad_neckfit.run.chain import Verdict
    from freecad_neckfit.run.finding import State

    for p in PARAMETERS.values():
        yield from (title_of(p.group), p.meaning, p.where, p.origin, *p.choices)
    for check in CHECKS:
        yield from (check.title, check.consequence, check.mending)
        if check.excess:
            yield from (check.excess.consequence, check.excess.mending)
    yield from (state.value for state in State)
    yield from (verdict.value for verdict in Verdict)


def marked(tree: ast.Module) -> Iterator[str]:
    """The texts of ``tr("...")``."""
    for node in ast.walk(tree):
        if isinstance(node, ast.Call) and _called(node) in MARKED and node.args:
            yield from _leaves(node.args[0])


def commands(tree: ast.Module) -> Iterator[tuple[str, set[str]]]:
    """(name, words) of each ``Command(...)`` declared."""
    for node in ast.walk(tree):
        if isinstance(node, ast.Call) and _called(node) == "Command":
            words = {k.arg: k.value for k in node.keywords}
            said = [t for k in ("menu", "tip") if k in words for t in _leaves(words[k])]
            for name in _leaves(words["name"]) if "name" in words else ():
                if SLOT.search(name):
                    continue  # a name made on the way is translated where it is shown
                yield name, set(said)


def groups(tree: ast.Module) -> Iterator[str]:
    """Titles of toolbars."""
    for node in ast.walk(tree):
        if isinstance(node, ast.Call) and _called(node) == "Group" and node.args:
            yield from _leaves(node.args[0])


def sentences(tree: ast.Module) -> Iterator[str]:
    """Templates of what is raised or given as a reason."""
    for node in ast.walk(tree):
        if isinstance(node, ast.Raise) and isinstance(node.exc, ast.Call):
            yield from _said(node.exc)
        elif isinstance(node, ast.Call):
            if _called(node) in TELLERS:
                yield from _said(node)
            for keyword in node.keywords:
                if keyword.arg in TELLING:
                    yield from _leaves(keyword.value)


def worth(template: str) -> bool:
    """Whether a template says something beside its slots."""
    return len(re.findall(r"[A-Za-z]{2,}", SLOT.sub(" ", template))) >= 2


def _said(call: ast.Call) -> Iterator[str]:
    for argument in call.args:
        yield from _leaves(argument)


def _leaves(node: ast.AST) -> Iterator[str]:
    """Texts in an expression, with ``{}`` for what is filled in."""
    if isinstance(node, ast.Constant):
        if isinstance(node.value, str) and node.value.strip():
            yield node.value
    elif isinstance(node, ast.JoinedStr):
        yield "".join(p.value if isinstance(p, ast.Constant) else "{}" for p in node.values)
    elif isinstance(node, ast.BinOp) and isinstance(node.op, ast.Add):
        left, right = list(_leaves(node.left)), list(_leaves(node.right))
        yield (left[0] if left else "{}") + (right[0] if right else "{}")
    elif isinstance(node, ast.IfExp):
        yield from _leaves(node.body)
        yield from _leaves(node.orelse)
    elif isinstance(node, ast.BoolOp):
        for value in node.values:
            yield from _leaves(value)


def _called(node: ast.Call) -> str:
    return getattr(node.func, "attr", getattr(node.func, "id", ""))


def update(file: Path, found: dict[str, set[str]]) -> int:
    """Bring one ``.ts`` file up to date; the number of texts not yet translated."""
    known = read(file) if file.exists() else {}
    language = file.stem.partition("_")[2]
    root = ET.Element("TS", version="2.1", language=language, sourcelanguage="en")
    missing = 0
    for context in sorted(found):
        block = ET.SubElement(root, "context")
        ET.SubElement(block, "name").text = context
        for source in sorted(s for s in found[context] if s):
            message = ET.SubElement(block, "message")
            ET.SubElement(message, "source").text = source
            told = known.get((context, source)) or known.get((CONTEXT, source), "")
            translation = ET.SubElement(message, "translation")
            translation.text = told
            if not told:
                translation.set("type", "unfinished")
                missing += 1
    ET.indent(root, " ")
    text = '<?xml version="1.0" encoding="utf-8"?>\n<!DOCTYPE TS>\n'
    file.write_text(text + ET.tostring(root, encoding="unicode") + "\n", encoding="utf-8")
    return missing


def read(file: Path) -> dict[tuple[str, str], str]:
    """(context, source) -> translation of one ``.ts`` file."""
    found = {}
    for context in ET.parse(file).getroot().iter("context"):
        for message in context.iter("message"):
            key = context.findtext("name", ""), message.findtext("source", "")
            found[key] = message.findtext("translation", "")
    return found


def main() -> int:
    """Update all files; say what is missing."""
    found = texts()
    templates = sorted(t for t in found[CONTEXT] if SLOT.search(t) and "\n" not in t)
    SENTENCES.write_text("\n".join(templates) + "\n", encoding="utf-8")
    release = shutil.which("lrelease") or shutil.which("pyside6-lrelease")
    for file in sorted(HERE.glob("neckfit_*.ts")):
        missing = update(file, found)
        print(f"{file.name}: {missing} of {sum(map(len, found.values()))} not translated")
        if release:
            subprocess.run([release, "-silent", str(file)], check=True)
    if not release:
        print("lrelease is not installed: the .qm files are as they were")
    return 0


if __name__ == "__main__":
    sys.exit(main())
