"""Sections with the neck seated: along the centreline, across, and the overhang enlarged."""

from __future__ import annotations

import math

from ..job.quantity import Kind
from ..job.show import compact_length
from ..job.top import top_height
from .dimension import Dimension, Pointed, Straight
from .dress import HEIGHT
from .helvetica import width
from .ink import Pen, Spot, Stroke
from .joint import Joint
from .sections import across
from .view import Loop, Region, View, Window, crossings

ROW = 7.5
NECK = ("heel", "shaft", "fretboard", "binding_treble", "binding_bass", "frets", "inserts")
HATCHED = {"body": 45.0, "plate": 135.0, "shim": 120.0, "neck_plate": 135.0}
"""Hatched where the body is what is made; the neck and its hardware are drawn as neighbours."""
OWN_ANGLES = {"heel": 135.0, "fretboard": 60.0, "frets": 15.0, "shaft": 135.0} | HATCHED
FINE = 1.2
CUT = ("body", "plate", "shim", "neck_plate", *NECK)


def along_view(joint: Joint, *, scale: float, windows: tuple[Window, ...]) -> View:
    """The section along the centreline, the body hatched, the neck as seated in thin lines."""
    view = View("along", "Section along the centreline", scale, windows)
    _fill(view, joint.centreline)
    _screw_shapes(joint, view)
    _depths(joint, view)
    return view


def _fill(view: View, loops: dict[str, list[Loop]], *, all_hatched: bool = False) -> None:
    angles = OWN_ANGLES if all_hatched else HATCHED
    for name, found in loops.items():
        if name in angles:
            pitch = 2.5 if name in ("body", "heel") else FINE
            view.regions.append(Region(name, tuple(found), angles[name], pitch))
        else:
            view.strokes += [Stroke(loop, Pen.DIMENSION, closed=True) for loop in found]


def _screw_shapes(joint: Joint, view: View) -> None:
    """Screws behind the plane of the section: hidden lines from the head's seat to the tip."""
    half = joint.length("screws.shank") / 2
    for x, z, long in _screws(joint):
        low, high = z, z + long
        for a, b in (((x - half, low), (x - half, high)), ((x + half, low), (x + half, high)),
                     ((x - half, high), (x + half, high))):  # fmt: skip
            view.strokes.append(Stroke((a, b), Pen.HIDDEN))
        view.strokes.append(Stroke(((x, low - 4), (x, high + 3)), Pen.CENTRE))


def _screws(joint: Joint) -> list[tuple[float, float, float]]:
    """X, Z of the head's seat and length of each screw, one of those that lie in line."""
    heads = zip(joint.screws.x, joint.screws.head, strict=True)
    seen = {round(float(x), 6): float(z) for x, z in heads}
    return [(x, z, joint.length("screws.length")) for x, z in sorted(seen.items())]


def _depths(joint: Joint, view: View) -> None:
    window = view.windows[0]
    left, right = window.at[0], view.spot(window.x[1], 0)[0]
    depth, length = joint.length("pocket.depth"), joint.length("pocket.length")
    angle = joint.length("pocket.angle")
    mouth_floor = -depth - length * math.tan(math.radians(angle))
    mouth_top = float(top_height(joint.values, x=-length, y=0.0))
    thickness = joint.length("body.thickness")
    deep = Dimension(key="pocket.depth", value=depth, limits=joint.limits("pocket.depth"))
    beside = right + ROW + 6 + width(deep.text(joint.units), height=HEIGHT)
    view.placed += [
        Straight(
            what=deep,
            a=(0.0, -depth), b=(0.0, 0.0), lane=right + ROW, upright=True,
        ),
        Straight(
            what=Dimension(
                key="body.thickness", value=thickness, limits=joint.limits("body.thickness")
            ),
            a=(window.x[1], -thickness), b=(window.x[1], 0.0), lane=beside, upright=True,
        ),
        Straight(
            what=Dimension(key="depth_mouth", value=mouth_top - mouth_floor, reference=True),
            a=(-length, mouth_floor), b=(-length, mouth_top), lane=left - ROW, upright=True,
        ),
        Pointed(
            what=Dimension(
                key="pocket.angle", value=angle, kind=Kind.ANGLE,
                limits=joint.limits("pocket.angle"), note="floor to datum",
            ),
            tip=(-length * 0.55, -depth - length * 0.55 * math.tan(math.radians(angle))),
            at=(view.spot(-length * 0.52, 0)[0], view.spot(0, window.y[0])[1] - 4),
            between=((-length, mouth_floor), (0.0, -depth)),
        ),
    ]  # fmt: skip


def across_view(joint: Joint, *, scale: float, windows: tuple[Window, ...], mirrored: bool) -> View:
    """The section across through the screws nearest the end wall.

    Seen toward the bridge if ``mirrored``, toward the nut if not.
    """
    at = cut_at(joint)
    view = View("across", "Section A-A", scale, windows)
    screws = [n for n in joint.parts if n.startswith("screw_")]
    _fill(view, across(joint.parts, [*CUT, *screws], at=at, mirrored=mirrored))
    side = -1.0 if mirrored else 1.0
    treble = side * joint.case.treble_sign
    view.strokes.append(Stroke(((0.0, -1e3), (0.0, 1e3)), Pen.CENTRE))
    high = joint.length("pocket.depth")
    for name in ("treble", "bass"):
        key = f"side.{name}"
        value = joint.found(key)
        if value is None:
            continue
        y = (treble if name == "treble" else -treble) * joint.pocket.half_width(at)
        spot = view.spot(y, 0)
        accept = _accept(joint, key)
        what = Dimension(key=f"side_{name}", value=value, accept=accept, note=name)
        lane = view.spot(0, view.windows[0].y[0])[1] - 4
        if y < 0 and width(what.text(joint.units), height=HEIGHT) > -2 * y * scale + 8:
            lane -= 6  # under the other one's, which it would run into
        text_at = spot[0] + (4 if y > 0 else -6), lane
        tip = y, -high * 0.6
        inward = y - math.copysign(value, y), tip[1]
        view.placed.append(Pointed(what=what, tip=tip, at=text_at, between=(inward, tip)))
    return view


def cut_at(joint: Joint) -> float:
    """X [mm] of the section across: through the screws nearest the end wall, or halfway."""
    places = [float(x) for x in joint.screws.x]
    inside = [x for x in places if -joint.length("pocket.length") < x < 0]
    return max(inside, default=-joint.length("pocket.length") / 2)


def _accept(joint: Joint, check_id: str) -> tuple[float | None, float | None] | None:
    finding = joint.result.find(check_id)
    return None if finding.low is None and finding.high is None else (finding.low, finding.high)


def overhang_view(joint: Joint, *, scale: float, windows: tuple[Window, ...]) -> View:
    """The overhang enlarged, every part hatched its own way."""
    view = View("overhang", "Detail B: overhang", scale, windows)
    cuts = {n: found for n, found in joint.centreline.items() if n in CUT}
    _fill(view, cuts, all_hatched=True)
    window = windows[0]
    x0, top = view.spot(window.x[1], 0)[0] + 2, view.spot(0, window.y[1])[1]
    lane = top - 6
    for what, tip, between in _details(joint, window):
        view.placed.append(Pointed(what=what, tip=tip, at=(x0 + 4, lane), between=between))
        lane -= 9
    end = _end_gap(joint)
    if end is not None:
        low = view.spot(0, window.y[0])[1] - 7
        at = view.spot(end[1][0], 0)[0] + 4, low
        wall = (0.0, end[1][1]), (-end[0].value, end[1][1])
        view.placed.append(Pointed(what=end[0], tip=end[1], at=at, between=wall))
    return view


Between = tuple[Spot, Spot]


def _details(joint: Joint, window: Window) -> list[tuple[Dimension, Spot, Between]]:
    """Dimensions of the detail, where their leaders point, and what they measure between."""
    seat, found = joint.case.seat, list[tuple[Dimension, Spot, Between]]()
    end = joint.length("neck.overhang")
    tip_x, tip_z = (float(a) for a in seat.to_body(x=end, z=joint.length("neck.underside")))
    if end > 0:
        what = Dimension(key="neck.overhang", value=end, reference=True, note="overhang")
        top = seat.to_body(x=end, z=joint.length("neck.height") - 1.0)
        ends = (seat.to_body(x=x, z=joint.length("neck.underside")) for x in (0.0, end))
        first, last = ((float(x), float(z)) for x, z in ends)
        found.append((what, (float(top[0]), float(top[1])), (first, last)))
    gap = joint.found("overhang.gap")
    if gap is not None and joint.applies("overhang.gap"):
        what = Dimension(
            key="overhang_gap", value=gap, accept=_accept(joint, "overhang.gap"),
            note="least room under it",
        )  # fmt: skip
        x = tip_x - 0.3 * min(end, tip_x + 5)
        found.append((what, (x, tip_z - gap / 2), ((x, tip_z - gap), (x, tip_z))))
    on_plate = _plate_tip(joint, window)
    if on_plate is not None:
        thick = joint.length("plate.thickness")
        what = Dimension(
            key="plate.thickness", value=thick, limits=joint.limits("plate.thickness"),
            note="cover plate",
        )  # fmt: skip
        (x, z), half = on_plate, thick / 2
        found.append((what, on_plate, ((x, z - half), (x, z + half))))
    return found


def _plate_tip(joint: Joint, window: Window) -> Spot | None:
    """A point well inside the cover plate's cut within the window, or None where it is not seen."""
    for loop in joint.centreline.get("plate", []):
        xs = [x for x, _ in loop]
        low, high = max(min(xs), window.x[0]), min(max(xs), window.x[1])
        if high - low > 1.0:
            x = low + 0.75 * (high - low)
            zs = crossings([loop], x)
            return x, (min(zs) + max(zs)) / 2
    return None


def _end_gap(joint: Joint) -> tuple[Dimension, Spot] | None:
    gap = joint.found("end.clearance")
    if gap is None or not joint.applies("end.clearance"):
        return None
    accept = _accept(joint, "end.clearance")
    what = Dimension(key="end_gap", value=gap, accept=accept, note="heel to end wall, least")
    return what, (-gap / 2, -3.0)


def finish_note(joint: Joint) -> str:
    """What finish the sections allow for."""
    top = compact_length(joint.length("finish.top"), units=joint.units)
    return f"Depths are in bare wood. The gap allows for {top} of finish on the top."
