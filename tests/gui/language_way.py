"""Run within FreeCAD's screen: the language is switched to German and back, with panels open."""

import lzma
import os
from pathlib import Path

import FreeCAD
import FreeCADGui
from commands_hand import action, make_ready, pump, push, window
from fit_panel_hand import enter
from language_hand import Place, in_editor, picture, switched, texts
from PySide import QtCore, QtGui


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
    told["german"] = in_german()
    return told


def in_german():
    """A joint made, turned and written down by a designer who reads German."""
    from freecad_neckfit.features.acts import write_job
    from freecad_neckfit.gui import figures
    from freecad_neckfit.gui.panels import fit

    FreeCADGui.setLocale("German")
    pump(400)
    FreeCAD.newDocument("Deutsch")
    push("NeckFit_New")
    document = FreeCAD.ActiveDocument
    for dialog in window().findChildren(QtGui.QDialog, "NeckFitNextStep"):
        dialog.close()
    seen = {"tree": [o.Label for o in document.Objects]}
    (joint,) = [o for o in document.Objects if o.Name == "Joint"]
    panel = fit.open_panel(joint)
    pump(200)
    box = panel.form.knobs["pocket.depth"].box
    seen["field"] = box.text()
    enter(box, "15,6")
    seen["typed"] = box.text(), joint.Pocket.Depth.Value, panel.form.notice.text()
    enter(box, "15.5")
    seen["typed with a point"] = box.text(), joint.Pocket.Depth.Value
    enter(box, "99,5")
    seen["refused"] = panel.form.notice.text()
    seen["rows"] = [row.text for row in panel.form.list.rows]
    picture(window(), "fit_german")
    panel.reject()
    FreeCADGui.Control.closeDialog()
    pump(200)
    file = Path(os.environ["NECKFIT_ANSWER"]).with_name("deutsch.toml")
    write_job(joint, str(file))
    seen["job"] = file.read_text(encoding="utf-8")
    seen["figures"] = {
        text: figures.local(text)
        for text in (
            "0.15 to 0.80 mm",
            "+0.03/-0.07",
            "<0.001 mm",
            "100,000 Verbindungen gezogen",
            "files/1.5/x",
            "joint 1.5.toml",
            '"15.5" ist 0.5 zu viel.',
            "1.125 in",
            "FreeCAD 0.20.2",
            "0.72 in (23/32)",
        )
    }
    seen["svg"] = figures.local_svg('<text x="1.5" style="a:0.5px">1.50 mm</text>')
    FreeCAD.ParamGet("User parameter:BaseApp/Preferences/General").SetInt("UseLocaleFormatting", 2)
    seen["by FreeCAD's setting"] = figures.local("0.15 mm"), figures.plain("0,5")
    FreeCAD.ParamGet("User parameter:BaseApp/Preferences/General").RemInt("UseLocaleFormatting")
    FreeCADGui.setLocale("English")
    pump(400)
    seen["in English"] = figures.local("0.15 mm"), figures.plain("0,5")
    FreeCAD.closeDocument(document.Name)
    return seen


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
