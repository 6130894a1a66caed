"""Run within FreeCAD's screen: the language is switched to German and back, with panels open."""

import lzma
import os
from pathlib import Path

import FreeCAD
import FreeCADGui
from commands_hand import action, make_ready, pump, window
from language_hand import Place, in_editor, picture, switched, texts
from PySide import QtCore


def main():
    """What each place says in English, in German, and in English again."""
    make_ready()
    document, joint = made()
    told = {"compiled": compiled(), "words": switched(words)}
    told["labels"] = switched(lambda: labels(document))
    told["editor"] = switched(lambda: in_editor(joint.Pocket))
    for name, place in places(joint):
        with place as widget:
            told[name] = switched(lambda widget=widget: texts(widget))
    return told


def compiled():
    """How many texts there are, and which of them the compiled file tells otherwise."""
    import xml.etree.ElementTree as ET

    from freecad_neckfit import __file__ as package

    folder = Path(package).parents[1] / "resources" / "translations"
    translator = QtCore.QTranslator()
    assert translator.load(str(folder / "neckfit_de.qm"))
    count, other = 0, []
    for context in ET.parse(folder / "neckfit_de.ts").getroot().iter("context"):
        for message in context.iter("message"):
            count += 1
            name, source = context.findtext("name"), message.findtext("source")
            if translator.translate(name, source) != message.findtext("translation"):
                other.append(f"{name}: {source}")
    return count, other


def made():
    """The sample joint, checked, deeper than it should be, and changed since."""
    from freecad_neckfit import __file__ as package
    from freecad_neckfit.features.run_check import check
    from freecad_neckfit.features.transfer import joint_from_file
    from freecad_neckfit.gui.views.look import look_at

    document = FreeCAD.newDocument("Spoken")
    document.UndoMode = 1
    joint = joint_from_file(document, Path(package).parents[1] / "samples" / "joint.toml")
    joint.Pocket.Depth = 17.3
    document.recompute()
    found = check(joint)
    found.ShowGapMap = True
    document.recompute()
    joint.Pocket.Depth = 17.2
    document.recompute()
    look_at(joint)
    return document, joint


def words():
    """A command, a state and a sentence."""
    from freecad_neckfit.gui.sentences import say
    from freecad_neckfit.gui.translate import tr

    found = action("NeckFit_Check")
    return {
        "menu": found.text(),
        "tip": found.toolTip(),
        "toggle": action("NeckFit_ShowFits").text(),
        "state": tr("does not fit"),
        "sentence": say("Drill the body's holes wider by 0.2 mm."),
        "refusal": say('joint.toml: pocket.depth: "15" has a decimal comma; write 15.5.'),
    }


def labels(document):
    """What the 3D view's own nodes say."""
    pump(200)
    picture(window(), "labels")
    scene = document.Check.ViewObject.Proxy.scene
    told = [*scene.head.text.splitlines(), *scene.bar.text.splitlines()]
    return told + [line for seen in scene.labels().values() for line in seen.text.splitlines()]


def unpacked(name):
    """A neck's file for reading, beside the answer."""
    packed = Path(__file__).resolve().parents[1] / "necks" / "files" / name
    file = Path(os.environ["NECKFIT_ANSWER"]).with_name(packed.stem)
    file.write_bytes(lzma.decompress(packed.read_bytes()))
    return file


def places(joint):
    from freecad_neckfit.gui.panels import adopt, fit, neck_import
    from freecad_neckfit.gui.preferences_page import PreferencesPage

    def end(panel):
        panel.reject()
        FreeCADGui.Control.closeDialog()

    def page():
        made = PreferencesPage()
        made.form.setParent(window(), made.form.windowFlags())
        made.form.setGeometry(300, 200, 520, 260)
        made.form.show()
        made.form.raise_()
        return made

    def neck():
        return neck_import.open_panel(joint.Document, joint, str(unpacked("crooked-heel.step.xz")))

    yield "fit", Place(lambda: fit.open_panel(joint), end)
    yield "adopt", Place(lambda: adopt.open_panel(joint), end)
    yield "import", Place(neck, end)
    yield "preferences", Place(page, lambda made: made.form.deleteLater())
