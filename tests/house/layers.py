"""Which room may import which, and a reader of imports that needs no import to run."""

import ast
from pathlib import Path

PACKAGE = "freecad_neckfit"

# Room -> the rooms it may import besides itself.
ROOMS = {
    "job": set(),
    "fit": {"job"},
    "decide": {"job", "fit"},
    "solids": {"job"},
    "run": {"job", "fit", "decide", "solids"},
    "features": {"job", "fit", "decide", "solids", "run"},
    "sheets": {"job", "fit", "decide", "solids", "run"},
    "gui": {"job", "fit", "decide", "solids", "run", "features", "sheets"},
    "cli": {"job", "fit", "decide", "solids", "run", "features", "sheets", "host"},
    "__main__": {"cli", "host", "job"},
    "door": {"features", "gui"},
    "host": set(),
    "__init__": set(),
}

SCREEN = {"FreeCADGui", "pivy"}
QT = {"PySide", "PySide2", "PySide6", "PyQt5", "PyQt6", "shiboken2", "shiboken6"}
FREECAD = {
    "FreeCAD", "Part", "PartDesign", "Sketcher", "TechDraw", "Draft", "Import", "Mesh", "MeshPart",
    "Spreadsheet", "BOPTools", "Points", "Surface", "freecad",
}  # fmt: skip

# Room -> modules from outside that it may not import.
BANNED = dict.fromkeys(ROOMS, SCREEN) | {
    "job": FREECAD | SCREEN | QT,
    "fit": FREECAD | SCREEN | QT,
    "decide": FREECAD | SCREEN | QT,
    "solids": SCREEN | QT,
    "run": SCREEN | QT,
    "features": SCREEN | QT,
    "cli": SCREEN | QT,
    "__main__": FREECAD | SCREEN | QT,
    "__init__": FREECAD | SCREEN | QT,
    "gui": set(),
    "door": {"pivy"} | QT,  # InitGui.py registers the workbench with FreeCADGui
}

# Words by which a document is made, found or filled: solids know shapes only.
DOCUMENT_WORDS = {
    "newDocument", "openDocument", "ActiveDocument", "activeDocument", "getDocument", "addObject",
    "recompute",
}  # fmt: skip


def room_of(module: str) -> str:
    """The room of ``freecad_neckfit.job.units`` is job; the package itself is ``__init__``."""
    parts = module.split(".")
    return parts[1] if len(parts) > 1 else "__init__"


def module_of(file: Path, root: Path) -> str:
    parts = list(file.relative_to(root).with_suffix("").parts)
    if parts[-1] == "__init__" and len(parts) > 1:
        parts.pop()
    return ".".join(parts)


def imported_modules(source: str, module: str, *, is_package: bool) -> set[str]:
    """Every module that the source imports, at its top or within functions, in full."""
    found: set[str] = set()
    for node in ast.walk(ast.parse(source)):
        if isinstance(node, ast.Import):
            found |= {alias.name for alias in node.names}
        elif isinstance(node, ast.ImportFrom):
            base = _base(node, module, is_package=is_package)
            # "from package import name" may name a module or a value: both readings are kept.
            found |= {base} | {f"{base}.{alias.name}" for alias in node.names}
        elif isinstance(node, ast.Call) and _called(node) in {"import_module", "__import__"}:
            found |= {a.value for a in node.args[:1] if isinstance(a, ast.Constant)}
    return found


def _base(node: ast.ImportFrom, module: str, *, is_package: bool) -> str:
    if not node.level:
        return node.module or ""
    parts = module.split(".")
    kept = parts[: len(parts) - node.level + (1 if is_package else 0)]
    return ".".join([*kept, *([node.module] if node.module else [])])


def _called(node: ast.Call) -> str:
    return getattr(node.func, "attr", getattr(node.func, "id", ""))


def breaches(source: str, module: str, *, is_package: bool = False) -> list[str]:
    """One sentence for each rule that the module's imports break."""
    room = room_of(module)
    if room not in ROOMS:
        return [f"{module}: the room {room} is not in the table of rooms"]
    found = []
    for name in sorted(imported_modules(source, module, is_package=is_package)):
        top = name.split(".")[0]
        if top == PACKAGE:
            other = room_of(name)
            if other in ROOMS and other not in {room, "__init__"} | ROOMS[room]:
                found.append(f"{module} ({room}) imports {name} ({other})")
        elif top in BANNED[room]:
            found.append(f"{module} ({room}) imports {name}")
        elif top in QT and "QtWidgets" in name and room != "gui":
            found.append(f"{module} ({room}) imports widgets: {name}")
    if room == "solids":
        found += [f"{module} (solids) uses {word}" for word in sorted(_document_words(source))]
    return found


def _document_words(source: str) -> set[str]:
    used = {n.attr for n in ast.walk(ast.parse(source)) if isinstance(n, ast.Attribute)}
    return used & DOCUMENT_WORDS
