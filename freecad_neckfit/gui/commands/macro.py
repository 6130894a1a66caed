"""Calls that a macro records: public functions of this program, written out as Python."""

from __future__ import annotations

import sys
from pathlib import Path
from typing import Any

import FreeCAD
import FreeCADGui


def call(module: str, function: str, *arguments: Any, into: str = "", **named: Any) -> Any:
    """Call ``freecad_neckfit.<module>.<function>`` in a way that FreeCAD records as a macro.

    Arguments may be documents, document objects, paths, texts, numbers, flags, None, and lists and
    dicts of them. ``into``: the variable of the macro that takes the result, which is returned
    then. Raises what the function raises; TypeError for an argument that no macro can hold.
    """
    full = f"freecad_neckfit.{module}"
    said = [written(a) for a in arguments]
    said += [f"{name}={written(value)}" for name, value in named.items()]
    line = f"{full}.{function}({', '.join(said)})"
    FreeCADGui.addModule(full)
    FreeCADGui.doCommand(f"{into} = {line}" if into else line)
    return vars(sys.modules["__main__"])[into] if into else None


def put(obj: Any, name: str, value: Any) -> None:
    """Set a property of a document object in a way that FreeCAD records as a macro."""
    FreeCADGui.doCommand(f"{written(obj)}.{name} = {written(value)}")


def written(value: Any) -> str:
    """A value as Python text. Raises TypeError for what no macro can hold."""
    if value is None or isinstance(value, bool | int | float | str):
        return repr(value)
    if isinstance(value, Path):
        return repr(str(value))
    if isinstance(value, list | tuple):
        return f"[{', '.join(map(written, value))}]"
    if isinstance(value, dict):
        return "{" + ", ".join(f"{written(k)}: {written(v)}" for k, v in value.items()) + "}"
    if hasattr(value, "Objects") and hasattr(value, "recompute"):
        return _document(value)
    if hasattr(value, "Document") and hasattr(value, "Name"):
        return f"{_document(value.Document)}.getObject({value.Name!r})"
    raise TypeError(f"a macro cannot hold a {type(value).__name__}")


def _document(document: Any) -> str:
    # A macro is of more use on whatever document is open than on the one it was recorded on.
    if FreeCAD.ActiveDocument is not None and FreeCAD.ActiveDocument.Name == document.Name:
        return "FreeCAD.ActiveDocument"
    return f"FreeCAD.getDocument({document.Name!r})"
