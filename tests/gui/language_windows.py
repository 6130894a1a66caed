"""Run within FreeCAD's screen: the language is switched with the deciding windows open."""

import FreeCAD
from commands_hand import make_ready
from language_hand import Place, switched, texts


def main():
    """What each window says in English, in German, and in English again."""
    from freecad_neckfit.gui.panels import compare, mend, options, seasons, tolerances, window

    make_ready()
    joint = made()
    told = {}
    for name, opened in (
        ("compare", compare.open_comparison),
        ("window", window.open_window),
        ("mend", mend.open_mend),
        ("options", options.open_options),
        ("tolerances", tolerances.open_tolerances),
        ("seasons", seasons.open_seasons),
    ):
        with Place(lambda opened=opened: opened(joint), lambda dialog: dialog.close()) as widget:
            told[name] = switched(lambda widget=widget: texts(widget))
    return told


def made():
    """A joint that a smaller depth would mend."""
    from freecad_neckfit.features.make import make_joint

    document = FreeCAD.newDocument("Decided")
    joint = make_joint(document)
    joint.Pocket.Depth, joint.CoverPlate.Cover = 17.5, "surround"
    document.recompute()
    return joint
