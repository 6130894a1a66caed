"""The whole scene: built from findings, laid out anew for each view that draws it."""

from __future__ import annotations

import math
import traceback
from collections.abc import Callable, Iterable, Sequence
from typing import Any

from pivy import coin

from ...job.quantity import Units
from . import nodes
from .arrange import Arrangement
from .arrows import Arrow, tips
from .boxes import Box
from .clash import Interference
from .gap_map import GapField, Map
from .label import PREFIX, Label, Shown
from .notes import SHOWN_AT_FIRST, Note, headline, id_of, shown
from .panel import Panel
from .sight import Sight, sight_of

CACHED = coin.SoGLRenderAction, coin.SoGetBoundingBoxAction
ScaleOf = Callable[[tuple[int, int]], float]
CoveredOf = Callable[[tuple[int, int]], tuple[Box, ...]]


def plain_scale(size: tuple[int, int]) -> float:
    """1 for views up to full HD; more for larger pictures, so that their print stays readable."""
    return max(1.0, round(math.hypot(*size) / 1800, 2))


class Scene:
    """Annotations of one joint; ``node`` is the root, in the body frame.

    Independent of documents: ``show`` takes notes, an interference solid and a gap map. A view that
    draws the scene lays it out first for its own camera, which costs nothing while the camera
    rests. ``scale_of`` gives the size of text in a picture of so many pixels, ``covered_of`` what
    lies over such a view, ``placement_of`` the FreeCAD placement of the body frame.
    """

    def __init__(
        self,
        *,
        scale_of: ScaleOf = plain_scale,
        placement_of: Callable[[], Any] | None = None,
        covered_of: CoveredOf = lambda _: (),
    ) -> None:
        self._scale_of, self._placement_of, self._covered_of = scale_of, placement_of, covered_of
        self._labels: dict[str, Label] = {}
        self._arrows: dict[str, Arrow] = {}
        self._notes: tuple[Note, ...] = ()
        self._shown: tuple[Note, ...] = ()
        self.picked: frozenset[str] = frozenset()
        self._bounds: Sequence[tuple[float, float, float]] = ()
        self._is_stale, self._units, self._remark = False, Units.MM, ""
        self._states: frozenset[Any] = SHOWN_AT_FIRST
        self._gaps = True
        self._laid_out: tuple[bytes, float, tuple[Box, ...]] | None = None
        self.clash, self.map = Interference(), Map()
        self.head, self.bar = Panel("NeckFit_headline"), Panel("NeckFit_scale")
        self._pointer_group, self._arrow_group = nodes.separator(), nodes.separator()
        self._label_group = nodes.separator()
        before, self._watch = coin.SoCallback(), coin.SoCallback()
        before.setCallback(_about_to_draw, self)
        self._watch.setCallback(_drawn, self)
        at_edges = nodes.separator(nodes.unlit(), self._arrow_group, self._pointer_group,
                                   self._label_group, self.head.node, self.bar.node)  # fmt: skip
        over = nodes.over_all(self.map.node, self.clash.node, nodes.unbounded(at_edges))
        self._stand = coin.SoMatrixTransform()
        self.node = nodes.separator(
            before, self._stand, self._watch, over, name="NeckFit_annotations"
        )

    def show(
        self,
        notes: Iterable[Note],
        *,
        states: frozenset[Any] = SHOWN_AT_FIRST,
        clash: Any = None,
        gap_map: GapField | None = None,
        gaps: bool = True,
        stale: bool = False,
        units: Units = Units.MM,
        bounds: Sequence[tuple[float, float, float]] = (),
    ) -> None:
        """Show these notes, worst first; labels of unchanged notes are kept.

        ``states``: which labels; ``gaps``: whether arrows are drawn; ``clash``: a Part shape.
        ``bounds``: corners of the model, which side views keep clear of labels.
        """
        self._states, self._gaps, self._remark = states, gaps, ""
        self._is_stale, self._units, self._bounds = stale, units, bounds
        self.clash.show(clash, stale=stale)
        self.map.show(gap_map)
        self._hold(notes)
        self._renew()

    def show_meanwhile(self, notes: Iterable[Note], *, remark: str) -> None:
        """Show these notes for the time being; ``remark`` below the answer says what they are.

        Interference and gap map are hidden: they are of the solids, which ``show`` brings back.
        Tells no view: whoever calls this many times a second has the views drawn himself, rather
        than wait until Coin finds the time.
        """
        with nodes.quietly(self.node):
            if not self._remark:
                self.clash.show(None)
                self.map.show(None)
            self._is_stale, self._remark = False, remark
            self._hold(notes)
        self._laid_out = None

    def _hold(self, notes: Iterable[Note]) -> None:
        self._notes = tuple(notes)
        self._choose_shown()
        self._fill_groups()

    def _choose_shown(self) -> None:
        """Those of the states asked for, and whatever was picked."""
        self._shown = shown(self._notes, states=self._states, also=self.picked)

    def stand(self) -> None:
        """Move the body frame to where the joint is now."""
        if self._placement_of is None:
            return
        flat = self._placement_of().toMatrix().A
        with nodes.quietly(self._stand):
            # Coin multiplies row vectors, FreeCAD column vectors.
            self._stand.matrix.setValue(
                coin.SbMatrix(*(flat[4 * j + i] for i in range(4) for j in range(4)))
            )

    def pick(self, ids: Iterable[str]) -> None:
        """Mark the labels of these findings as picked."""
        self.picked = frozenset(ids)
        before = self._shown
        self._choose_shown()
        if self._shown != before:
            self._fill_groups()
        for note in self._shown:
            self._write(note)
        self._renew()

    def _fill_groups(self) -> None:
        wanted = {note.id for note in self._shown}
        self._labels = {i: label for i, label in self._labels.items() if i in wanted}
        arrows, self._arrows = self._arrows, {}
        for note in self._shown:
            self._write(note)
            if self._gaps and tips(note) is not None:
                arrow = self._arrows[note.id] = arrows.get(note.id) or Arrow(note)
                arrow.write(note)
        # The worst is drawn last, over all others.
        labels = [self._labels[note.id] for note in reversed(self._shown)]
        _refill(self._pointer_group, [label.pointer for label in labels])
        _refill(self._label_group, [label.node for label in labels])
        _refill(self._arrow_group, [arrow.node for arrow in self._arrows.values()])

    def _write(self, note: Note) -> None:
        if note.id not in self._labels:
            self._labels[note.id] = Label(note, stale=self._is_stale)
        self._labels[note.id].write(note, stale=self._is_stale, picked=note.id in self.picked)

    def _renew(self) -> None:
        self._laid_out = None
        self.node.touch()

    def lay_out(self, sight: Sight) -> bool:
        """Place everything for one view; False where it stands so already."""
        scale, covered = self._scale_of(sight.size), self._covered_of(sight.size)
        if self._laid_out == (sight.key, scale, covered):
            return False
        self._laid_out = (sight.key, scale, covered)
        for label in self._labels.values():
            label.hide()
        view = Arrangement(sight, scale, self._labels)
        taken = self._place_panels(view, hidden=0)
        taken += view.loose((note for note in self._shown if note.place is None), taken)
        view.at_places(
            self._shown, (*taken, *covered), clash=self.clash.corners, bounds=self._bounds
        )
        hidden = sum(self._labels[note.id].box is None for note in self._shown)
        if hidden:
            self._place_panels(view, hidden=hidden)
        view.arrows(self._arrows)
        return True

    def _place_panels(self, view: Arrangement, *, hidden: int) -> list[Box]:
        lines = headline(self._notes)
        if self._remark:
            lines = (*lines, self._remark)
        head = view.head(self.head, lines, hidden=hidden, stale=self._is_stale)
        return [head, *view.bar(self.bar, self.map.field, units=self._units)]

    @property
    def shown_notes(self) -> tuple[Note, ...]:
        """The notes that have a label, worst first, whether it finds room in a view or not."""
        return self._shown

    def forget_looks(self) -> None:
        """Paint every label anew when it is shown next: the palette changed."""
        self._labels = {}

    def label(self, finding_id: str) -> Shown:
        """What the label of a finding shows; raises KeyError where it has none."""
        return self._labels[finding_id].shown()

    def labels(self) -> dict[str, Shown]:
        """What all labels show, by finding."""
        return {note.id: self._labels[note.id].shown() for note in self._shown}

    def finding_at(self, path: Any) -> str | None:
        """The id of the finding whose nodes a picked path goes through."""
        for index in range(path.getLength()):
            name = str(path.getNode(index).getName())
            if name.startswith(PREFIX) and id_of(name[len(PREFIX) :]) in self._labels:
                return id_of(name[len(PREFIX) :])
        return None


def _refill(group: Any, children: Sequence[Any]) -> None:
    group.removeAllChildren()
    for child in children:
        group.addChild(child)


def _about_to_draw(scene: Scene, action: Any) -> None:
    """Coin calls this before any action takes the scene's placement."""
    # Parents must not keep what they saw: labels move without telling them. Only these two actions
    # have caches; asked for others', some builds of Coin end the whole program.
    if any(action.isOfType(kind.getClassTypeId()) for kind in CACHED):
        coin.SoCacheElement.invalidate(action.getState())
    _told(scene.stand)


def _drawn(scene: Scene, action: Any) -> None:
    """Coin calls this when any action reaches the scene."""
    if action.isOfType(coin.SoGLRenderAction.getClassTypeId()):
        _told(lambda: scene.lay_out(sight_of(action)))


def _told(act: Callable[[], Any]) -> None:
    """Do it; an exception must not reach Coin, so it is told in the report view."""
    try:
        act()
    except Exception:  # noqa: BLE001 # whatever it is: the picture goes on without
        import FreeCAD

        FreeCAD.Console.PrintError(f"NeckFit annotations: {traceback.format_exc()}\n")
