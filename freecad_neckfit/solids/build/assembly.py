"""All parts of a joint as solids in the body frame."""

from __future__ import annotations

from collections.abc import Callable, Collection
from dataclasses import dataclass, field
from typing import Any

from ...job.arrays import FloatArray
from ...job.errors import BadInput, CannotBuild
from ...job.frames import Seat
from ...job.frames import seat as seat_of
from ...job.outline import Outline, outline_of
from ...job.resolve import Values
from . import body, bridge, fretboard, frets, neck, pickups, plate, rod, screws, shim
from .given import Given
from .outline import Segments, segments_of
from .shapes import Solid, moved, proven

KEEP_OUT = ("rod", "rod_tool")
"""Parts that are no matter but room to be kept free."""
GROUPS: dict[str, tuple[str, ...]] = {
    "body": ("body",),
    "neck": ("heel", "shaft", "fretboard", "binding_treble", "binding_bass", "frets", "inserts"),
    "plate": ("plate",),
    "shim": ("shim",),
    "bridge": ("bridge", "saddles"),
    "pickups": ("pickup_neck", "pickup_middle", "pickup_bridge"),
    "neck_screws": ("neck_plate",),  # and every screw_1 …
    "keep_out": KEEP_OUT,
}
"""What belongs together, in the order in which it is shown and saved."""
NECK_WOOD = ("heel", "shaft", "fretboard", "binding_treble", "binding_bass")
"""What a given neck stands for as a whole."""


@dataclass(frozen=True, kw_only=True)
class Assembly:
    """The parts of one joint.

    ``parts``: name to solid (frets, inserts and saddles: a compound of solids), in the body frame
    with the placement written into the geometry. ``neck_frame``: the 4 x 4 motion from neck frame
    to body frame. Parts that the job has not are absent. ``missing``: parts that a given solid
    does not tell apart, each with the reason.
    """

    values: Values
    seat: Seat
    neck_frame: FloatArray
    parts: dict[str, Any] = field(default_factory=dict)
    missing: dict[str, str] = field(default_factory=dict)

    def group_of(self, name: str) -> str:
        """The group that a part is shown and saved under."""
        for group, names in GROUPS.items():
            if name in names:
                return group
        return "neck_screws"


def build(
    values: Values,
    *,
    outline: Outline | None = None,
    parts: Collection[str] | None = None,
    given: Given | None = None,
) -> Assembly:
    """Build the joint that ``values`` (from ``resolve.complete``) describe.

    ``outline``: the body's outline ; the one that the job states if None. ``parts``: the
    names wanted, all if None; what belongs to one (all screws, both bindings) is built together.
    ``given``: ready solids, taken instead of building them. Every solid is checked to be valid
    and closed. Raises BadInput for a name that no part has or a given solid that is not sound,
    CannotBuild where the job is impossible as wood and metal, KernelFailure where the kernel fails.
    """
    _check_names(parts)
    _check_shim(values)
    seat = seat_of(values)
    frame = seat.matrix()
    made: dict[str, Any] = {}
    missing: dict[str, str] = {}
    is_proven: tuple[str, ...] = _proven(given) if given else ()
    for names, in_neck_frame, maker in _makers(values, seat, outline, given, missing):
        if parts is not None and not set(parts) & set(names):
            continue
        for name, shape in maker().items():
            if shape is None or (parts is not None and name not in parts):
                continue
            placed = moved(shape, frame) if in_neck_frame else shape
            made[name] = placed if name in is_proven else proven(placed, name=name)
    return Assembly(values=values, seat=seat, neck_frame=frame, parts=made, missing=missing)


def _proven(given: Given) -> tuple[str, ...]:
    """Names of what was proven where it was taken.

    Placing a neck changes nothing of that, and what it is split into is told by pieces that are.
    """
    names: tuple[str, ...] = NECK_WOOD if given.neck else ()
    names += ("body",) if given.body is not None and given.is_routed else ()
    return names + (("plate",) if given.plate is not None else ())


Maker = tuple[tuple[str, ...], bool, Callable[[], dict[str, Solid | None]]]
"""Names that it may make, whether in the neck frame, and how."""


def _makers(
    v: Values, seat: Seat, outline: Outline | None, given: Given | None, missing: dict[str, str]
) -> list[Maker]:
    """How each part comes to be; a given neck tells in ``missing`` what it does not tell apart."""
    ready = _ready(v, given, missing) if given else []
    taken = {name for names, _, _ in ready for name in names}
    built = _built(v, seat, outline)
    return ready + [maker for maker in built if not taken & set(maker[0])]


def _ready(v: Values, given: Given, missing: dict[str, str]) -> list[Maker]:
    makers: list[Maker] = []
    if given.body is not None:
        makers.append((("body",), False, lambda: {"body": given.routed_body(v)}))
    if given.plate is not None:
        makers.append((("plate",), False, lambda: {"plate": given.sound_plate()}))
    if given.neck:

        def neck_of() -> dict[str, Any]:
            parts, unknown = given.neck_parts(v)
            missing.update(unknown)
            return parts

        others = {name for name in given.neck if name in ("frets", "inserts")}
        makers.append((NECK_WOOD + tuple(others), True, neck_of))
    return makers


def _built(v: Values, seat: Seat, outline: Outline | None) -> list[Maker]:
    def segments() -> Segments:
        return segments_of(stated_outline(v) if outline is None else outline)

    def one(name: str, make: Callable[[], Any], *, in_neck: bool = False) -> Maker:
        return (name,), in_neck, lambda: {name: make()}

    is_insert = v["screws.fixing"] == "insert" and len(v["screw.x"]) > 0
    roles = pickups.fitted(v)
    return [
        one("body", lambda: body.body(v, segments())),
        one("heel", lambda: neck.heel(v), in_neck=True),
        one("shaft", lambda: neck.shaft(v), in_neck=True),
        (("fretboard", "binding_treble", "binding_bass"), True, lambda: fretboard.fretboard(v)),
        one("frets", lambda: frets.frets(v), in_neck=True),
        one("inserts", lambda: screws.inserts(v, seat) if is_insert else None, in_neck=True),
        one("plate", lambda: plate.plate(v, seat, segments())),
        one("shim", lambda: shim.shim(v, seat), in_neck=True),
        one("bridge", lambda: bridge.base(v)),
        one("saddles", lambda: bridge.saddles(v)),
        (
            tuple(f"pickup_{r}" for r in roles),
            False,
            lambda: {f"pickup_{r}": pickups.pickup(v, r) for r in roles},
        ),
        one("neck_plate", lambda: screws.neck_plate(v)),
        (
            tuple(f"screw_{i + 1}" for i in range(len(v["screw.x"]))),
            False,
            lambda: dict(screws.screws(v)),
        ),
        one("rod", lambda: rod.channel(v), in_neck=True),
        one("rod_tool", lambda: rod.tool_path(v), in_neck=True),
    ]


def stated_outline(v: Values) -> Outline:
    """The outline that the job states; a sketch must be read by the caller."""
    return outline_of(v)


def _check_names(parts: Collection[str] | None) -> None:
    known = {name for names in GROUPS.values() for name in names}
    for part in parts or ():
        if part not in known and not part.removeprefix("screw_").isdigit():
            raise BadInput(
                f"{part!r} is no part of a joint; the parts are {', '.join(sorted(known))}."
            )


def _check_shim(v: Values) -> None:
    if v["shim.make"] == "strip" and v["shim.strip_edge"] >= v["pocket.length"]:
        raise CannotBuild(
            f"shim.strip_edge: {v['shim.strip_edge']:.2f} mm reaches past the pocket's mouth at "
            f"{v['pocket.length']:.2f} mm; make it smaller."
        )
