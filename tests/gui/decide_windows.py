"""Run within FreeCAD's screen: a designer decides in the five deciding windows."""

import os
from pathlib import Path

import FreeCAD
import FreeCADGui
from fit_panel_hand import click, enter, pump, window
from PySide import QtCore, QtGui


def main():
    """What each window says, shows and does."""
    window()
    told = {"version": FreeCAD.Version()[:2]}
    document, joint = made("Decided")
    told["window"] = window_seen(document, joint)
    told["mend"] = mend_seen(document, joint)
    told["options"] = options_seen(joint)
    told["tolerances"] = tolerances_seen(document, joint)
    told["seasons"] = seasons_seen(joint)
    told["commands"] = commands(document)
    FreeCAD.closeDocument(document.Name)
    return told


def made(name):
    from freecad_neckfit import __file__ as package
    from freecad_neckfit.features.transfer import joint_from_file

    document = FreeCAD.newDocument(name)
    document.UndoMode = 1
    joint = joint_from_file(document, Path(package).parents[1] / "samples" / "joint.toml")
    document.recompute()
    return document, joint


def picture(dialog, name):
    folder = os.environ.get("NECKFIT_PICTURES")
    if folder:
        pump(200)
        version = "".join(FreeCAD.Version()[:2])
        dialog.grab().save(f"{folder}/decide_{name}_{version}.png")


def button(dialog, words):
    return next(b for b in dialog.findChildren(QtGui.QPushButton) if b.text() == words)


def window_seen(document, joint):
    from freecad_neckfit.gui.panels.window import open_window

    dialog = open_window(joint)
    pump(100)
    seen = {"words": dialog.words.toPlainText(), "notice": dialog.notice.text()}
    seen["axes"] = [dialog.second.itemText(n) for n in range(dialog.second.count())]
    seen["can take"] = dialog.take.isEnabled()
    picture(dialog, "window")
    frame = dialog.drawn.frame
    at = dialog.picture.widget_point(*frame.place(15.62, 0.13))
    click(dialog.picture, QtCore.QPoint(round(at[0]), round(at[1])))
    seen["tried"] = list(dialog.tried or ())
    seen["tried words"] = dialog.words.toPlainText()
    seen["document while trying"] = float(joint.Pocket.Depth)
    undo = document.UndoCount
    click(dialog.option)
    seen["kept"] = [dialog.notice.text(), document.UndoCount - undo, float(joint.Pocket.Depth)]
    undo = document.UndoCount
    click(dialog.take)
    seen["taken"] = [float(joint.Pocket.Depth), float(joint.Pocket.Angle)]
    seen["undo steps"] = document.UndoCount - undo
    document.undo()
    seen["undone"] = float(joint.Pocket.Depth)
    document.recompute()
    dialog.second.setCurrentIndex(2)
    pump()
    seen["over plate"] = dialog.words.toPlainText()
    frame = dialog.drawn.frame
    at = dialog.picture.widget_point(*frame.place(15.62, 2.13))
    click(dialog.picture, QtCore.QPoint(round(at[0]), round(at[1])))
    seen["tried plate"] = list(dialog.tried or ())
    picture(dialog, "window_plate")
    seen["shop"] = shop_asked(document, joint, dialog)
    at = dialog.picture.widget_point(*dialog.drawn.frame.place(15.62, 2.13))
    click(dialog.picture, QtCore.QPoint(round(at[0]), round(at[1])))
    seen["tried at a stop"] = list(dialog.tried or ())
    document.undo()
    document.recompute()
    seen["bitmap"] = [dialog.picture.image().width(), dialog.picture.image().height()]
    dialog.close()
    pump()
    return seen


def shop_asked(document, joint, dialog):
    """Type what the shop can set, wrongly first."""
    undo = document.UndoCount
    click(button(dialog, "Shop's steps…"))
    pump(100)
    asked = dialog.findChild(QtGui.QDialog, "NeckFitShopSteps")
    picture(asked, "shop_steps")
    enter(asked.boxes["shop.step_plate"].lineEdit(), "1/64 in")
    enter(asked.stops, "15.5, 5/8 furlong")
    said = asked.notice.text()
    enter(asked.stops, "15.5, 5/8 in", closes=True)
    pump(300)
    return {
        "refused": said,
        "step": float(joint.ShopStepPlate),
        "stops": list(joint.ShopStops),
        "undo steps": document.UndoCount - undo,
        "words": dialog.words.toPlainText(),
    }


def mend_seen(document, joint):
    from freecad_neckfit.gui.panels.mend import open_mend

    joint.Pocket.Depth = 16.1
    document.recompute()
    dialog = open_mend(joint)
    pump(100)
    seen = {
        "conflict": dialog.conflict.text(),
        "notice": dialog.notice.text(),
        "list": [dialog.list.item(n).text() for n in range(dialog.list.count())],
        "caption": dialog.costs.text(),
    }
    picture(dialog, "mend")
    click(dialog.option)
    seen["kept"] = dialog.notice.text()
    undo = document.UndoCount
    click(dialog.take)
    seen["depth"] = float(joint.Pocket.Depth)
    seen["undo steps"] = document.UndoCount - undo
    seen["after"] = dialog.conflict.text()
    dialog.close()
    pump()
    return seen


def options_seen(joint):
    from freecad_neckfit.gui.panels.options import open_options

    dialog = open_options(joint)
    pump(100)
    seen = {"text": dialog.page.toPlainText(), "notice": dialog.notice.text()}
    picture(dialog, "options")
    dialog.close()
    pump()
    return seen


def tolerances_seen(document, joint):
    from freecad_neckfit.gui.panels.tolerances import open_tolerances

    dialog = open_tolerances(joint)
    pump(100)
    seen = {"words": dialog.words.toPlainText(), "notice": dialog.notice.text()}
    seen["heads"] = heads(dialog.limits)
    picture(dialog, "tolerances")
    seen["edits"] = limits_edited(document, joint, dialog)
    seen["stopped"] = stopped(dialog)
    dialog.close()
    pump()
    return seen


def heads(table):
    return [table.horizontalHeaderItem(n).text() for n in range(table.columnCount())]


def type_into(table, key, column, text):
    """Open the editor of a cell as a double click does, and type over it."""
    table.setCurrentCell(table.row_of(key), column)
    table.editItem(table.item(table.row_of(key), column))
    pump(50)
    field = table.findChild(QtGui.QLineEdit)
    enter(field, text)
    pump(400)


def cells(table, key):
    row = table.row_of(key)
    texts = [table.item(row, n).text() for n in range(4)]
    return [*texts, table.cellWidget(row, 4).currentText(), table.item(row, 0).font().bold()]


def limits_edited(document, joint, dialog):
    """What a designer does to the limits, and what the document then states."""
    from freecad_neckfit.features.limits import limits_of, spreads_of

    table, seen = dialog.limits, {}
    seen["first"] = cells(table, "plate.thickness")
    seen["share"] = dialog.found.simulation.share
    dialog.wish.setValue(50.0)  # what to draw in takes long, and was seen already
    undo = document.UndoCount
    type_into(table, "plate.thickness", 3, "1/64 in")
    type_into(table, "plate.thickness", 2, "0.02")
    seen["typed"] = cells(table, "plate.thickness")
    seen["stated"] = limits_of(joint)["plate.thickness"]
    seen["undo steps"] = document.UndoCount - undo
    seen["share after"] = dialog.found.simulation.share
    type_into(table, "plate.thickness", 3, "±0.05")
    seen["both"] = limits_of(joint)["plate.thickness"]
    box = table.cellWidget(table.row_of("plate.thickness"), 4)
    box.setCurrentIndex(3)
    box.activated.emit(3)
    pump(400)
    seen["spread"] = spreads_of(joint), cells(table, "plate.thickness")
    type_into(table, "plate.thickness", 3, "5 deg")
    seen["refused"] = dialog.notice.text(), cells(table, "plate.thickness")[3]
    table.setCurrentCell(table.row_of("plate.thickness"), 0)
    click(dialog.default)
    pump(300)
    seen["default"] = limits_of(joint).get("plate.thickness"), spreads_of(joint)
    document.undo()
    document.undo()
    seen["undone"] = limits_of(joint)["plate.thickness"], spreads_of(joint)
    document.redo()
    document.redo()
    depth = float(joint.Pocket.Depth)
    type_into(table, "pocket.depth", 1, "0.61 in")
    seen["value"] = float(joint.Pocket.Depth), cells(table, "pocket.depth")[1]
    document.undo()
    seen["value undone"] = float(joint.Pocket.Depth) - depth
    document.recompute()
    dialog.look_again()
    seen["driven"] = driven(document, joint, dialog)
    seen["added"] = added(joint, dialog)
    seen["general"] = general(joint, dialog)
    return seen


def driven(document, joint, dialog):
    """A value that an expression sets cannot be typed over."""
    joint.CoverPlate.setExpression("Thickness", "2.2 mm")
    document.recompute()
    dialog.look_again()
    type_into(dialog.limits, "plate.thickness", 1, "2 mm")
    seen = [dialog.notice.text(), cells(dialog.limits, "plate.thickness")[1]]
    joint.CoverPlate.setExpression("Thickness", None)
    document.recompute()
    return seen


def added(joint, dialog):
    from freecad_neckfit.features.limits import limits_of

    index = dialog.add.findData("neck.heel_length")
    dialog.add.activated.emit(index)
    pump(300)
    return list(limits_of(joint)["neck.heel_length"]), cells(dialog.limits, "neck.heel_length")


def general(joint, dialog):
    """A general class and another usual spread, for all that state nothing."""
    rows = dialog.limits.rowCount()
    dialog.general.setCurrentIndex(2)
    dialog.general.activated.emit(2)
    pump(300)
    dialog.shape.setCurrentIndex(2)
    dialog.shape.activated.emit(2)
    pump(300)
    found = [str(joint.ShopGeneral), str(joint.ShopSpread), dialog.limits.rowCount() - rows]
    found.append(cells(dialog.limits, "plate.thickness")[4])
    return found


def stopped(dialog):
    """Press Stop while a long study runs."""
    dialog.draws.setCurrentIndex(2)

    def press():
        for bar in dialog.findChildren(QtGui.QProgressDialog):
            bar.cancel()

    QtCore.QTimer.singleShot(1500, press)
    dialog.look_again()
    return dialog.notice.text()


def seasons_seen(joint):
    from freecad_neckfit.gui.panels.seasons import open_seasons

    dialog = open_seasons(joint)
    pump(100)
    seen = {"words": dialog.words.toPlainText(), "notice": dialog.notice.text()}
    seen["month"] = dialog.month.isEnabled(), dialog.month.toolTip()
    seen["why"] = dialog.why.text() if dialog.why.isVisible() else ""
    picture(dialog, "seasons")
    dialog._file_to_read = shop_year
    click(button(dialog, "Shop's room…"))
    seen["month then"] = dialog.month.isEnabled(), dialog.month.toolTip()
    seen["why then"] = dialog.why.text() if dialog.why.isVisible() else ""
    before = dialog.words.toPlainText()
    dialog.month.setCurrentIndex(2)
    pump()
    seen["cut in February"] = dialog.words.toPlainText() != before
    dialog.close()
    pump()
    return seen


def shop_year():
    """A shop's year, drier in winter, as a file."""
    file = Path(os.environ["NECKFIT_ANSWER"]).with_name("shop.csv")
    months = range(1, 13)
    lines = [f"{month},19,{40 + abs(month - 1) * 2}" for month in months]
    file.write_text("month,temperature,humidity\n" + "\n".join(lines) + "\n")
    return str(file)


def commands(document):
    """Each command opens its window, by its name."""
    FreeCAD.setActiveDocument(document.Name)
    FreeCADGui.activateWorkbench("NeckFitWorkbench")
    pump(200)
    found = {}
    for name in ("Window", "Options", "Seasons"):
        FreeCADGui.runCommand(f"NeckFit_{name}")
        pump(200)
        dialogs = FreeCADGui.getMainWindow().findChildren(QtGui.QDialog, f"NeckFit{name}")
        opened = [dialog for dialog in dialogs if dialog.isVisible()]
        found[name] = len(opened)
        for dialog in opened:
            dialog.close()
        pump()
    return found
