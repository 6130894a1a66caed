"""Every text that the screen shows, read from the program's own sources and declarations."""

from __future__ import annotations

import ast
import re
import sys
from collections.abc import Iterator
from pathlib import Path

ROOT = Path(__file__).parents[2]
sys.path[:0] = [str(ROOT), str(Path(__file__).parent)]

PACKAGE = ROOT / "freecad_neckfit"

CONTEXT = "NeckFit"
SLOT = re.compile(r"\{\w*\}")
TELLING = {"because", "unknown_because", "reason"}
"""Arguments that hold a reason, wherever they stand."""
TELLERS = {"BadInput", "CannotBuild", "NotFound", "NotRead", "KernelFailure", "Misprint", "Stopped"}
TELLERS |= {"absent", "unknown", "refusal", "tell", "ask", "Axis", "Mark"}
"""Calls whose arguments are sentences for the designer."""
MARKED = {"tr", "say", "progress", "Move", "Curve"}
"""Calls whose text is translated as it stands."""
COMMANDS = {"Command", "toggle"}
"""Calls that declare a command."""
ALL_TOLD = ("solids/recognise/", "solids/read/")
"""Folders whose every sentence may come before the designer, wherever it is made."""
NOT_ON_SCREEN = {"cli", "host.py", "__main__.py", "door"}


def texts() -> dict[str, set[str]]:
    """Context -> sources. FreeCAD itself looks a command's words up under the command's name."""
    found = {CONTEXT: set(declared()), "Workbench": {"NeckFit", "Nec&kFit"}}
    for file in sorted(PACKAGE.rglob("*.py")):
        room = file.relative_to(PACKAGE).parts[0]
        if room in NOT_ON_SCREEN:
            continue
        tree = ast.parse(file.read_text(encoding="utf-8"))
        found[CONTEXT] |= {t for t in sentences(tree) if worth(t)}
        found[CONTEXT] |= set(marked(tree))
        if file.relative_to(PACKAGE).as_posix().startswith(ALL_TOLD):
            found[CONTEXT] |= set(said_anywhere(tree))
        if room == "gui":
            for name, words in commands(tree):
                found.setdefault(name, set()).update(words)
                found[CONTEXT].update(words)
            found["Workbench"] |= set(groups(tree))
    found[CONTEXT].add("en")  # answered by each translation with its own language's name
    found[CONTEXT] = {text for text in found[CONTEXT] if re.search("[A-Za-z]", text)}
    return found


def declared() -> Iterator[str]:
    """What parameters, checks and states are called."""
    from editor import source_of_name  # beside this file

    from freecad_neckfit.decide.axes import DEPTH, SECOND
    from freecad_neckfit.decide.climate import MONTHS
    from freecad_neckfit.decide.demands import CHECKS as DECIDED
    from freecad_neckfit.decide.demands import DEMANDS
    from freecad_neckfit.decide.moves import KINDS
    from freecad_neckfit.decide.options import DOES_NOT, FITS, UNSURE
    from freecad_neckfit.decide.options_write import HEADS
    from freecad_neckfit.decide.tolerances.report import EXPLAINED
    from freecad_neckfit.features.extras import COMMON, OF_ROLE
    from freecad_neckfit.features.properties import title_of
    from freecad_neckfit.fit.checks import ALL as CHECKS
    from freecad_neckfit.job.parameters import ALL as PARAMETERS
    from freecad_neckfit.job.parameters import ROLES
    from freecad_neckfit.job.units import Kind
    from freecad_neckfit.job.words import name_of
    from freecad_neckfit.run.chain import Verdict
    from freecad_neckfit.run.finding import State

    for p in PARAMETERS.values():
        yield from (name_of(p.key), source_of_name(p), title_of(p.group), p.meaning)
        yield from (p.where, p.origin, p.many or "", *p.choices)
    for check in (*CHECKS, *DECIDED):
        yield from (check.title, check.consequence, check.mending)
        yield from (follows.consequence for follows in check.follows)
        if check.excess:
            yield from (check.excess.consequence, check.excess.mending)
    yield from (d.complaint for d in DEMANDS if ": " not in d.complaint)
    for extra in (*COMMON, *(e for some in OF_ROLE.values() for e in some)):
        yield extra.words
    yield from ("plane", "cylinder", "cone", "rises", "falls")  # of an imported fretboard's top
    yield from (DEPTH, *SECOND, *KINDS, *MONTHS, *EXPLAINED, *HEADS.values())
    yield from (FITS, DOES_NOT, UNSURE, *(f"{role} pickup" for role in ROLES))
    for kind in Kind:
        yield from (kind.word, f"write {kind.phrase} such as {kind.example}")
    yield from (state.value for state in State)
    yield from (verdict.value for verdict in Verdict)


def marked(tree: ast.Module) -> Iterator[str]:
    """The texts of ``tr("...")``, and of what else is translated as it stands."""
    for node in ast.walk(tree):
        if isinstance(node, ast.Call) and _called(node) in MARKED:
            for argument in node.args:
                yield from _leaves(argument)


def commands(tree: ast.Module) -> Iterator[tuple[str, set[str]]]:
    """(name, words) of each command declared."""
    for node in ast.walk(tree):
        if isinstance(node, ast.Call) and _called(node) in COMMANDS:
            words = {k.arg: k.value for k in node.keywords}
            said = [t for k in ("menu", "tip") if k in words for t in _leaves(words[k])]
            for name in _leaves(words["name"]) if "name" in words else ():
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


def said_anywhere(tree: ast.Module) -> Iterator[str]:
    """Every sentence in a file but its descriptions."""
    described = {id(n.value) for n in ast.walk(tree) if isinstance(n, ast.Expr)}
    within = {id(v) for n in ast.walk(tree) if isinstance(n, ast.JoinedStr) for v in n.values}
    for node in ast.walk(tree):
        if id(node) not in described | within and isinstance(node, ast.Constant | ast.JoinedStr):
            yield from (t for t in _leaves(node) if worth(t) and "\n" not in t)


def worth(template: str) -> bool:
    """Whether a template says something beside its slots: two words, and no name with dots.

    One verb alone tells what to write in place of what was written.
    """
    bare = SLOT.sub(" ", template).strip()
    words = re.findall(r"[A-Za-z]{2,}", bare)
    return (" " in bare and len(words) >= 2) or template == "write {}"


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
