"""FreeCAD runs this file at every start, with or without a screen.

FreeCAD has put the add-on's folder on the path by then, so that ``import freecad_neckfit`` works.
The proxies are imported now because some distributions let a document restore only proxies of
modules that are loaded already. They are small: what they work with is imported when it is needed.
"""

import freecad_neckfit.features.proxies  # noqa: F401
