"""The check object on the screen: its findings as annotations in the 3D view."""

from __future__ import annotations

import json
from collections.abc import Sequence
from pathlib import Path
from typing import Any

import FreeCAD

from ... import __file__ as package_file
from ...features.make import parts_of
from ...job.quantity import Units
from ...run.finding import State
from .. import preferences
from ..annotations.gap_map import GapField, gap_field
from ..annotations.notes import Note, element_of, note_of
from ..annotations.scene import Scene
from ..status import say_for_a_while, take_back
from ..translate import tr
from . import selection
from .covered import covered
from .text_size import text_scale

ICONS = Path(package_file).parent.parent / "resources" / "icons"
MODE = "Annotations"
TOGGLES: dict[str, frozenset[State]] = {
    "ShowInterference": frozenset({State.INTERFERES}),
    "ShowGaps": frozenset({State.TOO_LITTLE, State.TOO_MUCH}),
    "ShowDoubts": frozenset({State.DISAGREES, State.UNKNOWN}),
    "ShowTouching": frozenset({State.TOUCHES, State.WATCH}),
    "ShowFits": frozenset({State.FITS}),
    "ShowInformation": frozenset({State.TELLS}),
}
"""The check's properties that show and hide labels, and the states that each stands for."""
OFF_AT_FIRST = ("ShowFits", "ShowInformation", "ShowGapMap")
"""Toggles that count as off where the object lacks them; the others count as on."""
WATCHED = {*TOGGLES, "ShowGapMap", "Findings", "Stale", "Interference", "GapMap", "Joint", "Units"}


class CheckView:
    """Hosts the scene of one check. All that lasts is in the object's properties.

    Documents name this class by its module when they are saved: neither name may change.
    """

    def __init__(self, vobj: Any) -> None:
        vobj.Proxy = self

    def attach(self, vobj: Any) -> None:
        """Build the scene; FreeCAD calls this for new and for restored objects."""
        self._object = vobj.Object
        self.scene = Scene(
            scale_of=text_scale(vobj.Object.Document.Name),
            placement_of=lambda: _placement(vobj.Object),
            covered_of=covered(vobj.Object.Document.Name),
        )
        vobj.addDisplayMode(self.scene.node, MODE)
        selection.watch()
        self.refresh(vobj.Object)

    def updateData(self, obj: Any, prop: str) -> None:  # noqa: N802 (FreeCAD's name)
        """Show what changed in the object."""
        if prop not in WATCHED or not hasattr(self, "scene"):
            return
        self.refresh(obj)
        if prop in ("Stale", "Findings"):
            obj.ViewObject.signalChangeIcon()
        if prop == "Stale":
            _tell_stale(obj)

    def show_meanwhile(self, notes: Sequence[Note], remark: str) -> None:
        """Show these notes, and no longer what the object's properties say, until ``come_back``."""
        self._is_meanwhile = True
        self.scene.show_meanwhile(notes, remark=remark)

    def come_back(self) -> None:
        """Show again what the object's properties say."""
        self._is_meanwhile = False
        self.refresh(self._object)

    def refresh(self, obj: Any) -> None:
        """Show the object's findings as its properties say."""
        if getattr(self, "_is_meanwhile", False):
            return
        units = units_of(obj)
        is_stale = bool(getattr(obj, "Stale", False))
        states = frozenset().union(*(s for name, s in TOGGLES.items() if is_on(obj, name)))
        notes = notes_of(obj, units)
        self.scene.show(
            notes,
            states=states,
            clash=getattr(obj, "Interference", None) if is_on(obj, "ShowInterference") else None,
            gap_map=_map_of(obj, notes) if is_on(obj, "ShowGapMap") else None,
            gaps=is_on(obj, "ShowGaps"),
            stale=is_stale,
            units=units,
            bounds=_bounds(obj),
        )

    def getDisplayModes(self, _vobj: Any) -> list[str]:  # noqa: N802 (FreeCAD's name)
        """The one way of showing findings."""
        return [MODE]

    def getDefaultDisplayMode(self) -> str:  # noqa: N802 (FreeCAD's name)
        """The same."""
        return MODE

    def setDisplayMode(self, mode: str) -> str:  # noqa: N802 (FreeCAD's name)
        """Take the mode as it is."""
        return mode

    def getElementPicked(self, *arguments: Any) -> str:  # noqa: N802 (FreeCAD's name)
        """The name in FreeCAD's selection of the finding whose label or leader was picked."""
        # FreeCAD gives the view object before the picked point, or not, by version.
        found = self.scene.finding_at(arguments[-1].getPath())
        return element_of(found) if found is not None else ""

    def pick(self, ids: list[str]) -> None:
        """Mark these findings' labels."""
        self.scene.pick(ids)

    def getIcon(self) -> str:  # noqa: N802 (FreeCAD's name)
        """The icon in the tree, which tells a stale check from a fresh one."""
        obj = getattr(self, "_object", None)
        stale = obj is not None and getattr(obj, "Stale", False)
        return str(ICONS / ("check_stale.svg" if stale else "check.svg"))

    def dumps(self) -> None:
        """Nothing to save: see the object's properties."""

    def loads(self, state: Any) -> None:
        """Nothing to restore."""

    # FreeCAD before 1.0 asks by these names.
    __getstate__ = dumps
    __setstate__ = loads


def _tell_stale(obj: Any) -> None:
    """In the status bar, for as long as it takes to read and as it is so."""
    words = tr("{}: the findings are out of date; check the joint again.")
    sentence = words.format(obj.Joint.Label if obj.Joint is not None else obj.Label)
    if not obj.Stale:
        take_back(sentence)
    elif preferences.warns_of_stale():
        say_for_a_while(sentence)


def notes_of(obj: Any, units: Units) -> list[Note]:
    """The notes on the findings kept in a check object; none where there are none yet."""
    text = getattr(obj, "Findings", "")
    if not text:
        return []
    raw = json.loads(text)
    if isinstance(raw, dict):
        raw = raw["joints"][0]["findings"] if "joints" in raw else raw["findings"]
    return [note_of(finding, units=units) for finding in raw]


def is_on(obj: Any, toggle: str) -> bool:
    """Whether a toggle of the object is on."""
    return bool(getattr(obj, toggle, toggle not in OFF_AT_FIRST))


_INCH_SCHEMAS = (2, 3, 5, 7)
"""FreeCAD's unit systems that show lengths in inches or feet."""


def units_of(obj: Any) -> Units:
    """The unit system that the object states, else the preferred one, else FreeCAD's."""
    if hasattr(obj, "Units"):
        return Units(str(obj.Units))
    preferred = preferences.units()
    if preferred is not None:
        return preferred
    schema = getattr(obj.Document, "UnitSystem", None)
    names = obj.Document.getEnumerationsOfProperty("UnitSystem") if schema is not None else None
    if names:
        number = names.index(schema)
    else:
        group = FreeCAD.ParamGet("User parameter:BaseApp/Preferences/Units")
        number = group.GetInt("UserSchema", 0)
    return Units.INCH if number in _INCH_SCHEMAS else Units.MM


def _bounds(obj: Any) -> list[tuple[float, float, float]]:
    """Corners of the box round the joint's parts in its body frame; none without a joint."""
    joint = getattr(obj, "Joint", None)
    if joint is None:
        return []
    back = joint.Placement.inverse().toMatrix()
    boxes = [part.Shape.BoundBox.transformed(back) for part in parts_of(joint)
             if not part.Shape.isNull()]  # fmt: skip
    if not boxes:
        return []
    whole = FreeCAD.BoundBox()
    for box in boxes:
        whole.add(box)
    return [(p.x, p.y, p.z) for p in map(whole.getPoint, range(8))]


def _map_of(obj: Any, notes: list[Note]) -> GapField | None:
    text = getattr(obj, "GapMap", "")
    if not text:
        return None
    place = next((n.place for n in notes if n.id == "overhang.gap" and n.place), (0, 0, 0))
    return gap_field(text, z=place[2])


def _placement(obj: Any) -> Any:
    """From the joint's body frame to the frame that the check object is drawn in."""
    joint = getattr(obj, "Joint", None)
    if joint is None or not hasattr(joint, "getGlobalPlacement"):
        return FreeCAD.Placement()
    group = obj.getParentGeoFeatureGroup()
    around = group.getGlobalPlacement() if group is not None else FreeCAD.Placement()
    return around.inverse().multiply(joint.getGlobalPlacement())
