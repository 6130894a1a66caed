"""All parts of a joint as solids: ``build`` returns an ``Assembly``."""

# Part crashes the interpreter if it is the first of FreeCAD's modules to be imported.
import FreeCAD  # noqa: F401

from .assembly import Assembly, build
from .given import Given

__all__ = ["Assembly", "Given", "build"]
