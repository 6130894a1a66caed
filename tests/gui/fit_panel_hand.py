"""Hands on the Fit panel: real events to real widgets, within FreeCAD's screen."""

import os

import FreeCAD
import FreeCADGui
from PySide import QtCore, QtGui

LEFT = QtCore.Qt.LeftButton


def pump(milliseconds=60):
    """Let the window do what it has to for so long."""
    clock = QtCore.QElapsedTimer()
    clock.start()
    while True:
        QtCore.QCoreApplication.processEvents()
        if clock.elapsed() >= milliseconds:
            return
        QtCore.QThread.msleep(5)


def until(true, milliseconds=5000):
    """Let the window do what it has to until something is true; says whether it became so."""
    clock = QtCore.QElapsedTimer()
    clock.start()
    while not true():
        if clock.elapsed() > milliseconds:
            return False
        QtCore.QCoreApplication.processEvents()
        QtCore.QThread.msleep(5)
    return True


def mouse(widget, kind, at, button=LEFT, held=LEFT):
    """Send one mouse event at a point of a widget."""
    here = widget.mapToGlobal(at)
    event = QtGui.QMouseEvent(
        kind, QtCore.QPointF(at), QtCore.QPointF(here), button, held, QtCore.Qt.NoModifier
    )
    QtCore.QCoreApplication.sendEvent(widget, event)


def press(widget, at):
    mouse(widget, QtCore.QEvent.MouseButtonPress, at)


def move(widget, at):
    mouse(widget, QtCore.QEvent.MouseMove, at, button=QtCore.Qt.NoButton)


def release(widget, at):
    mouse(widget, QtCore.QEvent.MouseButtonRelease, at, held=QtCore.Qt.NoButton)


def click(widget, at=None):
    at = at if at is not None else widget.rect().center()
    press(widget, at)
    release(widget, at)
    pump()


def key(widget, code, text="", *, releases=True):
    """Press and release a key; a widget that the press closes gets no release."""
    kinds = (QtCore.QEvent.KeyPress, QtCore.QEvent.KeyRelease)
    for kind in kinds if releases else kinds[:1]:
        event = QtGui.QKeyEvent(kind, code, QtCore.Qt.NoModifier, text)
        QtCore.QCoreApplication.sendEvent(widget, event)


def enter(box, text, *, closes=False):
    """Type a value over the one in a field, and confirm it; ``closes``: the window, by that."""
    box.setFocus()
    box.selectAll()
    for letter in text:
        key(box, 0, letter)
    key(box, QtCore.Qt.Key_Return, "\r", releases=not closes)
    pump()


def handle(slider):
    """Where a slider's handle is."""
    option = QtGui.QStyleOptionSlider()
    option.initFrom(slider)
    option.orientation = slider.orientation()
    option.minimum, option.maximum = slider.minimum(), slider.maximum()
    option.sliderPosition = option.sliderValue = slider.value()
    area = slider.style().subControlRect(
        QtGui.QStyle.CC_Slider, option, QtGui.QStyle.SC_SliderHandle, slider
    )
    return area.center()


def pressed_key(code):
    """Press a key on whatever widget has the keyboard."""
    key(QtGui.QApplication.focusWidget(), code)
    pump()


def picture(name):
    """Save a picture of the whole window, where the tester asks for pictures."""
    folder = os.environ.get("NECKFIT_PICTURES")
    if folder:
        pump(200)
        version = "".join(FreeCAD.Version()[:2])
        screen = QtGui.QGuiApplication.primaryScreen()
        screen.grabWindow(0).save(f"{folder}/fit_{name}_{version}.png")


def window():
    """The main window in a size that shows panel and view."""
    main = FreeCADGui.getMainWindow()
    # Qt counts other pixels than the virtual screen does where that tells an odd resolution.
    main.setGeometry(QtGui.QGuiApplication.primaryScreen().geometry())
    # Nothing but the panel beside the view: the report and the console take half of it.
    for dock in main.findChildren(QtGui.QDockWidget):
        if dock.objectName() in ("Report view", "Python console", "Selection view"):
            dock.hide()
    settings = FreeCAD.ParamGet("User parameter:BaseApp/Preferences/View")
    settings.SetBool("UseNavigationAnimations", False)
    return main


def buttons(panel):
    """OK and Cancel of the panel that is open."""
    for box in FreeCADGui.getMainWindow().findChildren(QtGui.QDialogButtonBox):
        if box.isVisible() and box.button(QtGui.QDialogButtonBox.Ok):
            kinds = QtGui.QDialogButtonBox.Ok, QtGui.QDialogButtonBox.Cancel
            return tuple(box.button(kind) for kind in kinds)
    raise AssertionError(f"no buttons for {panel}")


def joint_in(name, *, depth=15.875, cover="surround"):
    """A document with a joint to fit, seen from its front."""
    from freecad_neckfit.features.make import make_joint

    document = FreeCAD.newDocument(name)
    joint = make_joint(document)
    joint.Pocket.Depth, joint.CoverPlate.Cover = depth, cover
    document.recompute()
    return document, joint


def look_at(document, height=130):
    """Turn the view to the joint from the side, and near."""
    from pivy import coin

    view = FreeCADGui.getDocument(document.Name).ActiveView
    if hasattr(view, "setAnimationEnabled"):
        view.setAnimationEnabled(False)
    for sub in FreeCADGui.getMainWindow().findChildren(QtGui.QMdiSubWindow):
        sub.showMaximized()
    view.viewIsometric()
    camera = view.getCameraNode()
    ahead = camera.orientation.getValue().multVec(coin.SbVec3f(0, 0, -1))
    camera.position = ahead * -camera.focalDistance.getValue()
    camera.height = height
    pump(100)
    return view
