"""A neck from a file in the 3D view before it is anyone's: drawn, lit up, looked at, hit.

Nothing of it is in the document, and the rest of the document is put out of sight for as long
without a property being touched.
"""

from __future__ import annotations

import math
from collections.abc import Iterable, Sequence
from typing import Any

import numpy as np
from pivy import coin

from ...job.arrays import FloatArray
from ...solids.recognise.neck.patches import Patches
from ..annotations import nodes
from ..annotations.palette import BLACK, BLUE, WHITE, YELLOW, Colour
from ..annotations.sight import Sight, sight_of
from .neck_camera import kept, look, put_back
from .neck_mesh import hit, rims, span

WOOD: Colour = (0.86, 0.80, 0.70)
RIM: Colour = (0.25, 0.22, 0.18)
PALE: Colour = (0.5, 0.5, 0.5)
SMOOTH = math.radians(25.0)
"""Facets that meet at less are shaded as one."""
ASIDE = 0.55
"""How far the camera stands aside of a face's normal, so that its shape shows."""
NEAR = 150.0
"""Least extent [mm] that is looked at: a face alone would not be recognised."""


class NeckScene:
    """Draws patches in a 3D view: all in wood, some in ``lit`` colour, one ``under`` the mouse.

    ``motion``: (4, 4) from the patches' space to the document's. ``remove`` brings all back.
    """

    def __init__(self, document: Any, view: Any, patches: Patches, motion: FloatArray) -> None:
        self.patches, self.view = patches, view
        self._document, self._motion = document, motion
        self._lit: tuple[int, ...] = ()
        self._place: FloatArray | None = None
        self._under: int | None = None
        self.sight: Sight | None = None
        self._material = coin.SoMaterial()
        self._material.ambientColor.setValue(*PALE)  # faces seen along them are not black
        self._words = coin.SoSwitch()
        self.node = self._built()
        view.getSceneGraph().addChild(self.node)
        self._camera = kept(view.getCameraNode())
        self._hidden: list[tuple[Any, int]] = []
        self.hide_others()

    def hide_others(self) -> None:
        """Put out of sight what the document shows."""
        for obj in self._document.Objects:
            switch = getattr(obj.ViewObject, "SwitchNode", None)
            if switch is not None and switch.whichChild.getValue() != coin.SO_SWITCH_NONE:
                self._hidden.append((switch, switch.whichChild.getValue()))
                switch.whichChild.setValue(coin.SO_SWITCH_NONE)

    def show_others(self) -> None:
        """Show again what was put out of sight."""
        for switch, which in self._hidden:
            switch.whichChild.setValue(which)
        self._hidden = []

    def remove(self, *, put_back_camera: bool) -> None:
        """Take the neck away, and show the rest again."""
        self.show_others()
        self.view.getSceneGraph().removeChild(self.node)
        if put_back_camera:
            put_back(self.view.getCameraNode(), self._camera)

    def light(
        self, patches: Iterable[int], words: str = "", *, place: FloatArray | None = None
    ) -> None:
        """Light up these patches, with words at their middle, or at ``place`` in their space."""
        self._lit, self._place = tuple(patches), place
        self._paint()
        self._say(words)

    def put_under(self, patch: int | None) -> None:
        """Mark the patch that lies under the mouse."""
        if patch != self._under:
            self._under = patch
            self._paint()

    @property
    def lit(self) -> tuple[int, ...]:
        """The patches that are lit up."""
        return self._lit

    @property
    def under(self) -> int | None:
        """The patch that is marked as under the mouse."""
        return self._under

    def hit_at(self, pixel: tuple[float, float]) -> int | None:
        """The patch at a pixel of the view, y up; None beside the neck."""
        if self.sight is None:
            return None
        near, far = self.sight.points([(*pixel, -1.0), (*pixel, 1.0)])
        return hit(self.patches, near, far)

    def look_at_all(self) -> None:
        """The whole neck from above and from the bridge's side."""
        self._look(np.array([0.35, -0.55, 0.75]), *self._box(range(len(self.patches))))

    def look_at_lit(self) -> None:
        """What is lit up, from outside and near enough to tell what it is."""
        if self._lit:
            self.look_at(self._lit, place=self._place)

    def look_at(self, some: Sequence[int], *, place: FloatArray | None = None) -> None:
        """Some patches from outside, at their middle or at ``place`` in their space."""
        _, _, normal = span(self.patches, some)
        normal = self._motion[:3, :3] @ normal
        aside = np.array([0.6, -1.0, 0.6 if normal[2] > -0.5 else -0.1])
        aside = aside if abs(normal[1]) < 0.9 else np.array([0.6, 0.0, 0.6])
        self._look(normal + ASIDE * aside, *self._box(some, place))

    def _look(self, back: FloatArray, at: FloatArray, height: float) -> None:
        look(self.view, self._document, back=back, at=at, height=height)

    def _box(
        self, patches: Iterable[int], place: FloatArray | None = None
    ) -> tuple[FloatArray, float]:
        middle, size, _ = span(self.patches, patches)
        middle = middle if place is None else place
        at = self._motion[:3, :3] @ middle + self._motion[:3, 3]
        return at, NEAR if place is not None else max(float(np.linalg.norm(size)) * 0.75, NEAR)

    def _paint(self) -> None:
        colours = [WOOD] * len(self.patches)
        for patch in self._lit:
            colours[patch] = BLUE
        if self._under is not None:
            colours[self._under] = YELLOW
        self._material.diffuseColor.setValues(0, len(colours), colours)

    def _say(self, words: str) -> None:
        self._words.whichChild.setValue(coin.SO_SWITCH_NONE)
        if not words or not self._lit:
            return
        middle = span(self.patches, self._lit)[0] if self._place is None else self._place
        self._at.translation.setValue(*map(float, middle))
        self._label.string.setValues(0, 1, [words])
        self._words.whichChild.setValue(coin.SO_SWITCH_ALL)

    def _built(self) -> Any:
        root = coin.SoSeparator()
        move = coin.SoMatrixTransform()
        # Coin multiplies row vectors.
        move.matrix.setValue(coin.SbMatrix(*map(float, self._motion.T.ravel())))
        watch = coin.SoCallback()
        watch.setCallback(_drawn, self)
        root.renderCaching.setValue(coin.SoSeparator.OFF)
        for node in (move, watch, self._faces(), self._rims(), self._label_node()):
            root.addChild(node)
        self._paint()
        return root

    def _faces(self) -> Any:
        p = self.patches
        made, shape, bound = coin.SoSeparator(), coin.SoShapeHints(), coin.SoMaterialBinding()
        shape.vertexOrdering.setValue(coin.SoShapeHints.COUNTERCLOCKWISE)
        shape.shapeType.setValue(coin.SoShapeHints.SOLID)
        shape.creaseAngle.setValue(SMOOTH)
        bound.value.setValue(coin.SoMaterialBinding.PER_FACE_INDEXED)
        offset = coin.SoPolygonOffset()  # rims lie over the faces they bound
        points, first = np.unique(p.corners.reshape(-1, 3), axis=0, return_inverse=True)
        at, faces = coin.SoCoordinate3(), coin.SoIndexedFaceSet()
        at.point.setValues(0, len(points), points.tolist())
        index = np.full((len(p.corners), 4), -1)
        index[:, :3] = first.reshape(-1, 3)
        faces.coordIndex.setValues(0, index.size, index.ravel().tolist())
        faces.materialIndex.setValues(0, len(p.owner), p.owner.tolist())
        for node in (shape, bound, offset, self._material, at, faces):
            made.addChild(node)
        return made

    def _rims(self) -> Any:
        ends = rims(self.patches)
        made, paint, style = coin.SoSeparator(), coin.SoBaseColor(), coin.SoDrawStyle()
        light, at, lines = coin.SoLightModel(), coin.SoCoordinate3(), coin.SoLineSet()
        light.model.setValue(coin.SoLightModel.BASE_COLOR)
        paint.rgb.setValue(*RIM)
        style.lineWidth.setValue(1.2)
        at.point.setValues(0, 2 * len(ends), ends.reshape(-1, 3).tolist())
        lines.numVertices.setValues(0, len(ends), [2] * len(ends))
        for node in (light, paint, style, at, lines):
            made.addChild(node)
        return made

    def _label_node(self) -> Any:
        """Words on the lit faces: FreeCAD's own boxed label, drawn over everything."""
        self._at, self._label = coin.SoTranslation(), _frame_label()
        self._words.addChild(nodes.over_all(self._at, self._label))
        self._words.whichChild.setValue(coin.SO_SWITCH_NONE)
        return self._words


def _frame_label() -> Any:
    label = coin.SoType.fromName("SoFrameLabel").createInstance()
    for name, value in (("backgroundColor", WHITE), ("textColor", BLACK)):
        field = label.getField(name)
        if field is not None:
            field.setValue(coin.SbColor(*value))
    size = label.getField("size")
    if size is not None:
        size.setValue(14)
    # Python knows it by its base; its own field is asked for by name.
    label.string = label.getField("string")
    return label


def _drawn(scene: NeckScene, action: Any) -> None:
    """Remember the view that was drawn last, for what is clicked in it."""
    if action.isOfType(coin.SoGLRenderAction.getClassTypeId()):
        scene.sight = sight_of(action)
