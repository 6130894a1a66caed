"""Run within FreeCAD's screen: the language is switched to German and back."""

import FreeCADGui
from commands_hand import action, make_ready, pump


def main():
    make_ready()
    told = {"before": seen()}
    FreeCADGui.setLocale("German")
    pump()
    told["german"] = seen()
    FreeCADGui.setLocale("English")
    pump()
    told["after"] = seen()
    return told


def seen():
    from freecad_neckfit.gui.sentences import say
    from freecad_neckfit.gui.translate import tr

    command = action("NeckFit_Check")
    return {
        "menu": command.text(),
        "tip": command.toolTip(),
        "state": tr("does not fit"),
        "sentence": say("Drill the body's holes wider by 0.2 mm."),
    }
