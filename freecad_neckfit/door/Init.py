"""FreeCAD runs this file at every start, with or without a screen.

FreeCAD has put the add-on's folder on the path by then, so that ``import freecad_neckfit`` works.
Nothing is imported here yet: a start that does not need the workbench pays nothing for it.
"""
