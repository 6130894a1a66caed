"""The few Coin nodes that annotations are made of.

What depends on the camera is written while a view is being drawn, without telling anyone: a
notification would ask for a redraw, and two views of one document would ask each other for ever.
Hence no node here may be cached.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from contextlib import contextmanager
from typing import Any

from pivy import coin

from ...job.arrays import FloatArray
from .palette import Colour
from .pictures import Picture


def separator(*children: Any, name: str = "") -> Any:
    """A group that keeps its state to itself and is never cached."""
    node = _uncached(coin.SoSeparator(), children)
    if name:
        node.setName(name)
    return node


def over_all(*children: Any) -> Any:
    """A group that is drawn over everything else."""
    return _uncached(coin.SoAnnotation(), children)


def _uncached(node: Any, children: Sequence[Any]) -> Any:
    for caching in (node.renderCaching, node.boundingBoxCaching):
        caching.setValue(coin.SoSeparator.OFF)
    # Labels lie outside the bounds that are counted: culled by those, none would be picked.
    node.pickCulling = coin.SoSeparator.OFF
    for child in children:
        node.addChild(child)
    return node


def unbounded(*children: Any) -> Any:
    """A group that the views' "fit all" does not count.

    Labels stand at the screen's edges: counted, they would push the camera back each time.
    """
    node = coin.SoType.fromName("SoSkipBoundingGroup").createInstance()
    # FreeCAD's own node; where FreeCAD's screen has not been started there is none.
    group = coin.SoGroup() if node is None else node
    for child in children:
        group.addChild(child)
    return group


def at_hand(node: Any, *fields: str) -> Any:
    """The node with these fields kept on its Python side.

    Asked by name each time, Coin looks a field up in 30 µs: a drawing of all labels asks for
    hundreds. Such a field is changed by its ``setValue``, not by an assignment.
    """
    for name in fields:
        node.__dict__[name] = node.getField(name)
    return node


def coordinates() -> Any:
    """Points, to be given by ``put_points``."""
    return at_hand(coin.SoCoordinate3(), "point")


def translation() -> Any:
    """Where what follows stands."""
    return at_hand(coin.SoTranslation(), "translation")


@contextmanager
def quietly(*nodes: Any) -> Iterator[None]:
    """Change fields of the nodes without a notification."""
    before = [node.enableNotify(False) for node in nodes]
    try:
        yield
    finally:
        for node, was in zip(nodes, before, strict=True):
            node.enableNotify(was)


def put_points(node: Any, points: FloatArray | Sequence[Sequence[float]]) -> None:
    """Give a SoCoordinate3 these points, quietly."""
    values = [[float(a) for a in p] for p in points]
    field = node.point
    with quietly(node):
        field.setNum(len(values))
        if values:
            field.setValues(0, len(values), values)


def points_of(node: Any) -> list[tuple[float, float, float]]:
    """The points of a SoCoordinate3."""
    return [tuple(p.getValue()) for p in node.point.getValues()]


def put_picture(node: Any, picture: Picture, *, instead_of: Picture | None = None) -> Picture:
    """Give a SoImage this picture, quietly, unless it shows it already; return the picture."""
    if picture is instead_of:
        return picture
    with quietly(node):
        size = coin.SbVec2s(picture.width, picture.height)
        node.image.setValue(size, 3, picture.pixels)
    return picture


def put_text(node: Any, lines: Sequence[str]) -> None:
    """Say in a SoInfo what a picture beside it says."""
    with quietly(node):
        node.string = "\n".join(lines)


def image() -> Any:
    """A picture that always faces the viewer, its lower left corner at the current place."""
    node = at_hand(coin.SoImage(), "image")
    node.horAlignment = coin.SoImage.LEFT
    node.vertAlignment = coin.SoImage.BOTTOM
    return node


def colour(value: Colour) -> Any:
    """A plain colour, for what is drawn without light."""
    node = at_hand(coin.SoBaseColor(), "rgb")
    node.rgb.setValue(*value)
    return node


def unlit() -> Any:
    """Colours as they are: a label must not darken with the light's direction."""
    node = coin.SoLightModel()
    node.model = coin.SoLightModel.BASE_COLOR
    return node


def line_style(width: float, pattern: int = 0xFFFF) -> Any:
    """Width [pixel] and dashes of lines."""
    style = coin.SoDrawStyle()
    node = at_hand(style, "lineWidth", "linePattern", "linePatternScaleFactor")
    node.lineWidth.setValue(width)
    node.linePattern.setValue(pattern)
    return node


def scale_line(node: Any, width: float, *, scale: float) -> None:
    """Draw a line style's lines and dashes larger, quietly."""
    with quietly(node):
        node.lineWidth.setValue(width * scale)
        node.linePatternScaleFactor.setValue(max(1, round(scale)))


def lines(*counts: int) -> Any:
    """Polylines of that many points each."""
    node = coin.SoLineSet()
    node.numVertices.setValues(0, len(counts), list(counts))
    return node


def polygons(*counts: int) -> Any:
    """Filled polygons of that many corners each."""
    node = at_hand(coin.SoFaceSet(), "numVertices")
    node.numVertices.setValues(0, len(counts), list(counts))
    return node


def switch(*children: Any, on: bool = True) -> Any:
    """Children that are drawn, or not."""
    node = at_hand(coin.SoSwitch(), "whichChild")
    for child in children:
        node.addChild(child)
    node.whichChild.setValue(coin.SO_SWITCH_ALL if on else coin.SO_SWITCH_NONE)
    return node


def turn(node: Any, *, on: bool) -> None:
    """Draw a switch's children or not, quietly."""
    if is_on(node) == on:
        return
    with quietly(node):
        node.whichChild.setValue(coin.SO_SWITCH_ALL if on else coin.SO_SWITCH_NONE)


def is_on(node: Any) -> bool:
    """Whether a switch's children are drawn."""
    return bool(node.whichChild.getValue() == coin.SO_SWITCH_ALL)
