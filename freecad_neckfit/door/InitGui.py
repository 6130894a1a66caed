"""FreeCAD runs this file when it starts with a screen: it makes the workbench known."""

import FreeCADGui

from freecad_neckfit.features.dress import on_made
from freecad_neckfit.gui.views.dressing import dress
from freecad_neckfit.gui.views.undo_watch import watch


class NeckFitWorkbench(FreeCADGui.Workbench):
    """The workbench in FreeCAD's list; what it needs is imported when it is first chosen."""

    # FreeCAD runs this file in a way that hides its top-level names from the methods below, and
    # without __file__: hence imports within the class and the methods.
    from pathlib import Path as _Path

    import freecad_neckfit as _package

    MenuText = "NeckFit"
    ToolTip = "The fit of a bolt-on neck in its pocket"
    Icon = str(_Path(_package.__file__).parent.parent / "resources" / "icons" / "neckfit.svg")

    def Initialize(self):
        """Add toolbars and menu."""
        from freecad_neckfit.gui.workbench import furnish

        furnish(self)

    def GetClassName(self):
        """Name FreeCAD's own class behind a workbench written in Python."""
        return "Gui::PythonWorkbench"


on_made(dress)
watch()
FreeCADGui.addWorkbench(NeckFitWorkbench())
