"""String heights over crowns, saddles, pickups, top and plate, from the crowns as they lie."""

from __future__ import annotations

import numpy as np

from ...job.arrays import FloatArray
from .context import Context
from .cutout import AROUND, ROLES
from .facets import Facets
from .failures import NotFound
from .measured import Measured
from .mount import bridge_mount, cavity_floor, finished_top, pickup_mount
from .sides import treble_sign
from .surfaces import height_on


def string_open(context: Context) -> Measured:
    """Least clearance [mm] of an open string over any crown, with what the saddles can do."""
    s, saddle = context.strings, _reached(context)
    share = (s.x - s.x_nut[:, None]) / (s.x_saddle - s.x_nut)[:, None]
    room = s.nut[:, None] + (saddle - s.nut)[:, None] * share - s.z
    return _at_crown(context, room)


def string_fretted(context: Context) -> Measured:
    """Least clearance [mm] over every later crown of a string fretted anywhere."""
    s, saddle = context.strings, _reached(context)
    room = np.full(s.z.shape, np.inf)
    for n in range(s.z.shape[1] - 1):
        run = s.x[:, n + 1 :] - s.x[:, n : n + 1]
        climb = (saddle - s.z[:, n]) / (s.x_saddle - s.x[:, n])
        over = s.z[:, n : n + 1] + climb[:, None] * run - s.z[:, n + 1 :]
        room[:, n + 1 :] = np.minimum(room[:, n + 1 :], over)
    return _at_crown(context, room)


def _at_crown(context: Context, room: FloatArray) -> Measured:
    s = context.strings
    i, n = np.unravel_index(np.argmin(room), room.shape)
    share = (s.x[i, n] - s.x_nut[i]) / (s.x_saddle[i] - s.x_nut[i])
    y = s.y_nut[i] + (s.y_saddle[i] - s.y_nut[i]) * share
    place = context.frame.to_body(x=s.x[i, n], y=y, z=s.z[i, n])
    return Measured(float(room[i, n]), _point(place),
                    detail={"string": int(i) + 1, "fret": int(n) + 1})  # fmt: skip


def saddle_low(context: Context) -> Measured:
    """Least room [mm] to lower the saddles; for a fixed radius at its posts."""
    v, carried = context.values, _carried(context)
    lowest = float(v["bridge.low"])
    if v["bridge.make"] == "floating":
        lowest += float(v["bridge.base_low"])
    index = int(np.argmin(carried))
    return Measured(float(carried[index]) - lowest, _at_saddle(context, index))


def saddle_high(context: Context) -> Measured:
    """Least room [mm] to raise the saddles; for a fixed radius at its posts."""
    carried = _carried(context)
    index = int(np.argmax(carried))
    highest_set = float(context.values["bridge.high"]) + _base(context)
    return Measured(highest_set - float(carried[index]), _at_saddle(context, index))


def rests(context: Context) -> FloatArray:
    """(s, 3) body-frame points of the strings' undersides on their saddles, as the set-up asks."""
    s = context.strings
    return context.frame.to_body(x=s.x_saddle, y=s.y_saddle, z=s.saddle)


def _above(context: Context) -> FloatArray:
    """(s,) height [mm] of each string over the mount at its saddle."""
    points = rests(context)
    return points[:, 2] - bridge_mount(context, points[:, :2])


def _carried(context: Context) -> FloatArray:
    return _posts(context) if context.values["bridge.make"] == "fixed radius" else _above(context)


def _posts(context: Context) -> FloatArray:
    """Height [mm] of the straight line through the outer strings over the mount at both posts."""
    points, spread = rests(context), float(context.values["bridge.post_spacing"])
    ends = points[[0, -1]]
    y = treble_sign(context) * np.array([spread / 2, -spread / 2])
    share = (y - ends[0, 1]) / (ends[1, 1] - ends[0, 1])
    z = ends[0, 2] + (ends[1, 2] - ends[0, 2]) * share
    return np.asarray(z - bridge_mount(context, np.stack([ends[:, 0], y], axis=1)))


def _base(context: Context) -> float:
    """Highest base of a floating bridge [mm] that the lowest string allows; 0 for others."""
    v = context.values
    if v["bridge.make"] != "floating":
        return 0.0
    free = float(_above(context).min()) - float(v["bridge.low"])
    return float(np.clip(free, v["bridge.base_low"], v["bridge.base_high"]))


def _reached(context: Context) -> FloatArray:
    """(s,) neck-frame height [mm] of each string on its saddle, within the bridge's travel."""
    v, points = context.values, rests(context)
    low, high = (float(v[f"bridge.{k}"]) for k in ("low", "high"))
    if v["bridge.make"] == "fixed radius":
        posts = _posts(context)
        y = treble_sign(context) * float(v["bridge.post_spacing"]) / 2 * np.array([1.0, -1.0])
        mounts = bridge_mount(context, np.stack([points[[0, -1], 0], y], axis=1))
        set_at = np.clip(posts, low, high) + mounts
        line = set_at[0] + (set_at[1] - set_at[0]) * (points[:, 1] - y[0]) / (y[1] - y[0])
        shift = line + _arch(context, points[:, 1]) - points[:, 2]
    else:
        above, base = _above(context), _base(context)
        shift = np.clip(above, low + base, high + base) - above
    return np.asarray(context.strings.saddle + shift / context.frame.up[2])


def _arch(context: Context, y: FloatArray) -> FloatArray:
    """Height [mm] of the saddles' radius over the chord through the outer strings."""
    radius = float(context.values["bridge.saddle_radius"])
    outer = float(context.values["strings.spread_bridge"]) / 2
    return np.asarray(np.sqrt(radius**2 - y**2) - np.sqrt(radius**2 - outer**2))


def pickup_low(context: Context, role: str) -> Measured:
    """Least room [mm] to lower the poles to the least distance from the outer strings."""
    v, key = context.values, f"pickup_{role}"
    over = _over_pickup(context, role)
    if over is None:
        return Measured.absent(f"no pickup is fitted in the {role} position")
    on_floor = float(v[f"{key}.body_height"]) + float(v[f"{key}.spring"])
    stop = on_floor + cavity_floor(context, role) - pickup_mount(context, role)
    lowest = max(float(v[f"{key}.low"]), stop)
    wish = np.array([float(v[f"limits.pole_{s}_min"]) for s in ("treble", "bass")])
    return _of_two(over[0] - wish - lowest, over[1])


def pickup_high(context: Context, role: str) -> Measured:
    """Least room [mm] to raise the poles to the largest distance from the outer strings."""
    over = _over_pickup(context, role)
    if over is None:
        return Measured.absent(f"no pickup is fitted in the {role} position")
    v = context.values
    wish = np.array([float(v[f"limits.pole_{s}_max"]) for s in ("treble", "bass")])
    return _of_two(float(v[f"pickup_{role}.high"]) - (over[0] - wish), over[1])


def _over_pickup(context: Context, role: str) -> tuple[FloatArray, FloatArray] | None:
    """Outer strings, fretted at the last fret, over the pickup's mount [mm], and their points."""
    if not context.has(f"pickup_{role}"):
        return None
    x = float(context.values[f"pickup_{role}.x"])
    start, end = _last_fretted(context)
    points = _at_x(start[[0, -1]], end[[0, -1]], x)
    return points[:, 2] - pickup_mount(context, role), points


def _of_two(room: FloatArray, points: FloatArray) -> Measured:
    index = int(np.argmin(room))
    return Measured(float(room[index]), _point(points[index]))


def _last_fretted(context: Context) -> tuple[FloatArray, FloatArray]:
    """Body-frame points (s, 3) on the last crown, and on the saddles."""
    s = context.strings
    share = (s.x[:, -1] - s.x_nut) / (s.x_saddle - s.x_nut)
    y = s.y_nut + (s.y_saddle - s.y_nut) * share
    return context.frame.to_body(x=s.x[:, -1], y=y, z=s.z[:, -1]), rests(context)


def _at_x(start: FloatArray, end: FloatArray, x: float) -> FloatArray:
    share = (x - start[:, 0]) / (end[:, 0] - start[:, 0])
    return start + share[:, None] * (end - start)


def top_string(context: Context) -> Measured:
    """Least height [mm] of an open string over finished top or plate under the hand.

    Midway from the fretboard's end to the saddles unless the place is stated.
    """
    s, points, v = context.strings, rests(context), context.values
    board = context.near("fretboard", context.neck_bounds, tops=False).points
    if not len(board):
        raise NotFound("the fretboard does not lie over the body")
    stated = v.get("strings.hand")
    x = (float(board[:, :, 0].max()) + float(points[:, 0].mean())) / 2
    x = x if stated is None else float(stated)
    nut = context.frame.to_body(x=s.x_nut, y=s.y_nut, z=s.nut)
    at = _at_x(nut, points, x)
    under = np.maximum(finished_top(context, at[:, :2]), _plate_under(context, at[:, :2]))
    return _of_two(at[:, 2] - under, at)


def _plate_under(context: Context, plan: FloatArray) -> FloatArray:
    if not context.has("plate"):
        return np.full(len(plan), -np.inf)
    box = context.boxes("plate")
    low, high = box[:, :2].min(axis=0), box[:, 3:5].max(axis=0)
    inside = np.all((plan >= low) & (plan <= high), axis=1)
    return np.where(inside, height_on(context.faces("plate")[context.plate_face], plan), -np.inf)


def plate_string(context: Context) -> Measured:
    """Least height [mm] of a string fretted at the last fret over the plate and pickup rings."""
    rooms = [*_over_plate(context), *_over_rings(context)]
    if not rooms:
        return Measured.absent("neither plate nor ring lies under the strings")
    return min(rooms, key=lambda m: m.value)


def _over_plate(context: Context) -> list[Measured]:
    """Over the plate from the fretboard's end on; its openings for pickups count as unbroken."""
    if not context.has("plate"):
        return []
    plate = _plate_along(context)
    end = float(context.near("fretboard", context.neck_bounds, tops=False).points[:, :, 0].max())
    open_plate = plate.clipped(axis=0, at=end, above=True)
    found = []
    for start, stop in zip(*_last_fretted(context), strict=True):
        under = open_plate.clipped(axis=0, at=float(stop[0]), above=False)
        crossing = _crossings(under.points, start, stop)
        if len(crossing):
            crossing = np.concatenate([crossing, _on_opening(context, end, start, stop)])
            on_string = _at_x(start[None], stop[None], 0.0)[0]
            climb = (stop - start) / (stop[0] - start[0])
            z = on_string[2] + climb[2] * crossing[:, 0]
            room = z - crossing[:, 2]
            k = int(room.argmin())
            at = float(crossing[k, 0]), float(crossing[k, 1]), float(z[k])
            found.append(Measured(float(room[k]), at))
    return found


def _on_opening(context: Context, end: float, start: FloatArray, stop: FloatArray) -> FloatArray:
    """The plate's top under a string where it begins before the fretboard, if a pickup is there."""
    clear = not context.values["plate.under_overhang"]
    x = end + (float(context.values["plate.clearance"]) if clear else 0.0)
    boxes = [context.boxes(f"pickup_{r}") for r in ROLES if context.has(f"pickup_{r}")]
    if not any(b[:, 0].min() - AROUND <= x <= b[:, 3].max() + AROUND for b in boxes):
        return np.zeros((0, 3))
    point = _at_x(start[None], stop[None], x)
    point[:, 2] = height_on(context.faces("plate")[context.plate_face], point[:, :2])
    return point


def _plate_along(context: Context) -> Facets:
    """Upward triangles of the plate under the strings."""
    box = context.boxes("plate")
    half = float(context.values["strings.spread_bridge"]) / 2 + 1
    bounds = (float(box[:, 0].min()), float(box[:, 3].max()), -half, half)
    return context.near("plate", bounds, sign=1)


def _crossings(p: FloatArray, start: FloatArray, stop: FloatArray) -> FloatArray:
    """(m, 3) points of triangles' edges under a string, between its ends."""
    if not len(p):
        return np.zeros((0, 3))
    slope = (stop[1] - start[1]) / (stop[0] - start[0])
    side = p[:, :, 1] - start[1] - slope * (p[:, :, 0] - start[0])
    a, b = p.reshape(-1, 3), np.roll(p, -1, axis=1).reshape(-1, 3)
    s, t = side.reshape(-1), np.roll(side, -1, axis=1).reshape(-1)
    cut = (s >= 0) != (t >= 0)
    share = (s[cut] / (s[cut] - t[cut]))[:, None]
    found = a[cut] * (1 - share) + b[cut] * share
    return np.asarray(found[(found[:, 0] >= start[0]) & (found[:, 0] <= stop[0])])


def _over_rings(context: Context) -> list[Measured]:
    found, v = [], context.values
    for role in ROLES:
        ring = float(v[f"pickup_{role}.ring"]) if context.has(f"pickup_{role}") else 0.0
        if ring <= 0:
            continue
        box = context.facets(f"pickup_{role}").points[:, :, 0]
        top = pickup_mount(context, role) + ring
        for x in (float(box.min()), float(box.max())):
            points = _at_x(*_last_fretted(context), x)
            found.append(_of_two(points[:, 2] - top, points))
    return found


def _at_saddle(context: Context, index: int) -> tuple[float, float, float]:
    """The string's rest; of two posts the second belongs to the last string."""
    is_last_post = context.values["bridge.make"] == "fixed radius" and index == 1
    return _point(rests(context)[-1 if is_last_post else index])


def _point(p: FloatArray) -> tuple[float, float, float]:
    return float(p[0]), float(p[1]), float(p[2])
