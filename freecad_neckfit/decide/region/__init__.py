"""The part of a plane where all of many functions are at least 0, with exact borders.

A coarse lattice of cells is refined where a function changes sign or where its bend leaves a
doubt. Within a cell each function counts as plane on two triangles, and the triangles are clipped
by all functions at once: a region may be as thin as it likes and is still found. Every corner of
what remains is then moved to a true root of the functions that meet there.
"""

from .region import Border, Region, find_region

__all__ = ["Border", "Region", "find_region"]
