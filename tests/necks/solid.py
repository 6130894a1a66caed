"""The invented necks as solids, in the neck frame; see kernel.py for where this runs."""

from __future__ import annotations

import math
from itertools import pairwise

import kernel
from kernel import (
    HOLE,
    across,
    box,
    common,
    cone,
    cut,
    cylinder,
    face,
    fuse,
    lines,
    loft,
    mirrored,
    prism,
    revolved,
    ruled_surface,
    solids,
    splined,
    turned,
    unified,
    upright,
)
from spec import Neck


def shapes(n: Neck) -> list:
    """The neck's solids: one, or wood, fretboard and whatever else is modelled apart."""
    wood, board, crowns, nut, binding = wood_of(n), board_of(n), frets_of(n), nut_of(n), []
    if n.m["binding"]:
        board, binding = bound(n, board)
    if n.m["frets"] == "slots":
        board = cut(board, *slots_of(n))
    apart, fused = [], []
    (apart if n.m["frets"] in ("parts", "barbed") else fused).extend(crowns)
    (apart if n.m["nut"] == "part" else fused).extend(nut)
    if n.m["frets"] == "barbed":
        board = cut(board, *crowns)
    if n.m["parts"]:
        if fused:
            board = fuse(board, *fused)
        parts = [*solids(wood), *solids(board), *binding, *apart]
    else:
        whole = unified(fuse(fuse(wood, board), *fused))
        if n.m["edge"]:
            whole = chamfered(n, whole)
        parts = [*solids(whole), *apart]
    if n.m["left"]:
        parts = [s for p in parts for s in solids(mirrored(p))]
    if n.m["splines"]:
        parts = [s for p in parts for s in solids(splined(p))]
    return parts


def heel_plan(n: Neck, far: float) -> list:
    m = n.m
    a, b = (far, -n.heel_half(far)), (far, n.heel_half(far))
    if m["end"] == "round":
        meet = _round_meets(n)
        low = (meet[0], -meet[1])
        return [(a, None, low), (low, (0.0, 0.0), meet), (meet, None, b), (b, None, a)]
    half, r, angle = m["heel_half"], m["corner"], math.atan(m["slope"])
    if r == 0:
        return lines([a, (0.0, -half), (0.0, half), b])
    touch = r / math.tan((math.pi / 2 - angle) / 2)
    wall = (0.0, half - touch)
    side = (-touch * math.cos(angle), half - touch * math.sin(angle))
    toward = (math.pi / 2 + angle) / 2
    way = (-r + r * math.cos(toward), wall[1] + r * math.sin(toward))
    low = [(p[0], -p[1]) for p in (side, way, wall)]
    return [
        (a, None, low[0]), (low[0], low[1], low[2]), (low[2], None, wall), (wall, way, side),
        (side, None, b), (b, None, a),
    ]  # fmt: skip


def _round_meets(n: Neck) -> tuple[float, float]:
    """Where the round end's circle meets the side y = half + slope x."""
    m = n.m
    R, k, h = m["end_radius"], m["slope"], m["heel_half"]
    # (x + R)² + (h + k x)² = R²
    a, b, c = 1 + k * k, 2 * (R + h * k), h * h
    root = max(b * b - 4 * a * c, 0.0)
    x = (-b + math.sqrt(root)) / (2 * a)
    return x, h + k * x


def wood_of(n: Neck):
    m = n.m
    heel = upright(heel_plan(n, -m["heel_len"]), 0.0, m["glue"])
    wood = fuse(heel, shaft_of(n), headstock_of(n))
    if m["rod"] == "hole":
        wood = cut(wood, cylinder((5, 0, m["rod_z"] + m["rod_w"] / 2), (-1, 0, 0),
                                  m["rod_w"] / 2, m["u_h"] - 40))  # fmt: skip
    if m["rod"] in ("slot", "inner"):
        end = 5.0 if m["rod"] == "slot" else -m["rod_end"]
        half = m["rod_w"] / 2
        wood = cut(wood, box((-m["u_h"] + 3, end), (-half, half), (m["rod_z"], m["glue"] + 1)))
    if m["screws"]:
        for x, y in ((-14, -18), (-14, 18), (-56, -17), (-56, 17)):
            wood = cut(wood, cylinder((x, y, -1), (0, 0, 1), HOLE, 16))
    return unified(wood)


def shaft_of(n: Neck):
    m = n.m
    x0, x1 = -m["u_h"] - m["past_nut"], -m["heel_len"] + 12
    if m["shaft"] == "block":
        depth = m["H"] - 20
        profile = [(x0, depth), (-m["heel_len"], depth), (-m["heel_len"], m["glue"]),
                   (x0, m["glue"])]  # fmt: skip
        plan = [(x0, -n.half(x0)), (x1, -n.half(x1)), (x1, n.half(x1)), (x0, n.half(x0))]
        return common(across(profile, 60), upright(lines(plan), 0, 30))
    sections = []
    for x, thick in ((x0, 20.5), (x1, 22.5)):
        half, low = n.half(x), m["H"] - thick
        a, b = (-half, m["glue"]), (half, m["glue"])
        sections.append((x, [(a, (0.0, low), b), (b, None, a)]))
    return loft(sections)


def headstock_of(n: Neck):
    m = n.m
    start, length, shape = -m["u_h"] - m["past_nut"], m["head_len"], m["headstock"]
    top = m["glue"] - m["head_drop"]
    low = 0.0 if shape == "coplanar" else top - 13.5
    s, half = start + 12, n.half(start)
    far = start - length
    outline = lines([(s, -half), (s, half), (start - 30, 46), (far + 20, 38), (far, 10),
                     (far + 8, -20), (start - 40, -34)])  # fmt: skip
    if shape == "arc":
        outline = [
            ((s, -half), None, (s, half)),
            ((s, half), None, (start - 20, 40)),
            ((start - 20, 40), (start - length / 2, 50), (far, 36)),
            ((far, 36), None, (far, -22)),
            ((far, -22), (start - length / 2, -37), (start - 20, -32)),
            ((start - 20, -32), None, (s, -half)),
        ]
    head = upright(outline, low, top)
    head = common(head, box((far - 5, s), (-80, 80), (low - 1, top + 1)))
    holes = [cylinder((start - 35 - 20 * i, 26 if i % 2 else -20, low - 5), (0, 0, 1), 4.9, 40)
             for i in range(4 if m["bass"] else 6)]  # fmt: skip
    head = cut(head, *holes)
    if shape == "tilted":
        head = turned(head, (start, 0, top), (0, 1, 0), -9.0)
    return head


def board_of(n: Neck):
    m = n.m
    x0, end, glue = -m["u_h"] - m["past_nut"], m["overhang"], m["glue"]
    over = m["H"] + 4
    profile = [(x0, glue), (0.0, glue)]
    if end > 0:
        profile += [(0.0, m["under"]), (end, m["under"]), (end, over)]
        if m["under"] == glue:
            del profile[1:3]
    else:
        profile.append((0.0, over))
    profile.append((x0, over))
    plan = [(x0, -n.half(x0)), (end, -n.half(end)), (end, n.half(end)), (x0, n.half(x0))]
    return common(common(across(profile, 60), upright(lines(plan), 0, 60)), under_top(n))


def under_top(n: Neck):
    """A body that ends above at the fretboard's top."""
    m = n.m
    x0, x1, H = -m["u_h"] - 40, m["overhang"] + 40, m["H"]
    if m["top"] == "plane":
        return box((x0, x1), (-60, 60), (-40, H))
    if m["top"] == "cylinder":
        return cylinder((x0, 0, H - m["r_nut"]), (1, 0, 0), m["r_nut"], x1 - x0)
    k = (m["r_end"] - m["r_nut"]) / (m["u_h"] + m["overhang"])
    if m["top"] == "cone":
        apex, size = -m["u_h"] - m["r_nut"] / k, math.hypot(1, k)
        d0, d1 = (x0 - 60 - apex) / size, (x1 + 160 - apex) * size
        place = (apex + d0 / size, 0, H - k * d0 / size)
        return cone(place, (1, 0, -k), d0 * k, d1 * k, d1 - d0)
    rows = []
    # One angle for all sections: then those between are circles too.
    angle = math.asin(45 / min(n.radius(x0), n.radius(x1)))
    for x in (x0, x1):
        R = n.radius(x)
        y, z = R * math.sin(angle), H - R + R * math.cos(angle)
        rows.append(([(x, -y, z), (x, 0, H - R + R / math.cos(angle)), (x, y, z)],
                     math.cos(angle)))  # fmt: skip
    return prism(ruled_surface(rows), 0, 0, -60)


def bound(n: Neck, board) -> tuple:
    """The board without its edges, and the two strips that hang below the overhang."""
    m, w = n.m, n.m["bind_w"]
    x0, end = -m["u_h"] - m["past_nut"], m["overhang"]
    strips = []
    low = m["under"] - m["hang"]
    deep = across([(x0, m["glue"]), (0.0, m["glue"]), (0.0, low), (end, low), (end, m["H"] + 4),
                   (x0, m["H"] + 4)], 60)  # fmt: skip
    inner = [(x0, n.half(x0) - w), (end, n.half(end) - w)]
    outer = [(x0, n.half(x0)), (end, n.half(end))]
    for sign in (1, -1):
        ring = [(x, sign * y) for x, y in [*inner, *outer[::-1]]]
        strip = common(common(deep, upright(lines(ring), 0, 60)), under_top(n))
        strips += solids(strip)
    ring = [*inner, *[(x, -y) for x, y in inner[::-1]]]
    return common(board, upright(lines(ring), 0, 60)), strips


def nut_of(n: Neck) -> list:
    m = n.m
    if m["nut"] == "none":
        return []
    x, half, high = -m["u_h"], n.half(-m["u_h"]), m["H"] + 2.6
    base = m["H"] - 3.0 if m["nut"] == "fused" else m["glue"]
    if m["fan"]:
        y = half + 5
        ring = [(n.fret(0, s * y) + d, s * y) for s, d in ((-1, 0), (1, 0), (1, -4), (-1, -4))]
        return [common(upright(lines(ring), base, high),
                       box((-2000, 100), (-half, half), (base, high)))]  # fmt: skip
    if m["nut"] == "part":
        low = m["glue"] if m["past_nut"] == 0 else None
        if low is not None:
            return [box((x - 4, x), (-half, half), (m["glue"] - 2, high))]
        base = m["H"] - 0.0
        return [box((x - min(4, m["past_nut"]), x), (-half, half), (base, high))]
    return [box((x - 4, x), (-half, half), (base, high))]


def _profile(m: dict) -> list:
    if m["frets"] == "barbed":
        return _barbed(m)
    if m["frets"] == "faceted":
        return _faceted(m)
    return _crown(m, 0.6 if m["frets"] == "fused" else 0.0)


def _crown(m: dict, deep: float) -> list:
    """A crown's profile around its middle: distance from the board's top against x."""
    w, h = m["fret_w"] / 2, m["fret_h"]
    return [((-w, -deep), None, (-w, 0.0)), ((-w, 0.0), (0.0, h), (w, 0.0)),
            ((w, 0.0), None, (w, -deep)), ((w, -deep), None, (-w, -deep))]  # fmt: skip


def _faceted(m: dict, sides: int = 30) -> list:
    """A crown as a polygon of many sides, as programs without arcs write it."""
    w, h = m["fret_w"] / 2, m["fret_h"]
    radius = (w * w + h * h) / (2 * h)
    end = math.asin(w / radius)
    arc = [(radius * math.sin(a), h - radius + radius * math.cos(a))
           for a in (end - 2 * end * i / sides for i in range(1, sides))]  # fmt: skip
    return lines([(-w, -0.6), (w, -0.6), (w, 0.0), *arc, (-w, 0.0)])


def _barbed(m: dict) -> list:
    """A fret with crown, tang and barbs: many faces."""
    w, h = m["fret_w"] / 2, m["fret_h"]
    right = [(w, 0.0), (0.26, 0.0)]
    for i in range(3):
        z = -0.25 - 0.22 * i
        right += [(0.26, z), (0.34, z - 0.1)]
    right += [(0.26, -1.7), (0.2, -1.75)]
    ring = right + [(-x, z) for x, z in right[::-1]]
    sides = [(p, None, q) for p, q in pairwise(ring)]
    return [*sides, (ring[-1], (0.0, h), ring[0])]


def frets_of(n: Neck) -> list:
    m, found = n.m, []
    if m["frets"] in ("none", "slots"):
        return found
    if m["frets"] == "fan":
        return _fanned(n)
    for i in range(1, m["N"] + 1):
        x = n.fret(i)
        half = n.half(x)
        if m["binding"]:
            half -= m["bind_w"]
        profile = _profile(m)
        if m["top"] == "plane":
            made = prism(face(profile, lambda a, z, x=x, h=half: (x + a, -h, m["H"] + z)),
                         0, 2 * half, 0)  # fmt: skip
        else:
            # A crown bent to the board's local radius; its foot is cut to the board's own top.
            R = n.radius(x)
            made = revolved(profile, lambda a, z, x=x: (x + a, 0, m["H"] + z),
                            (x, 0, m["H"] - R), (1, 0, 0), math.asin(half / R) * 0.999)  # fmt: skip
        found += solids(made)
    return found


def _fanned(n: Neck) -> list:
    m, found = n.m, []
    outer = 45.0
    for i in range(1, m["N"] + 1):
        lean = (n.fret(i, outer) - n.fret(i, -outer)) / (2 * outer)
        size = math.hypot(1, lean)
        # The width is measured square to the fret, so in x it is wider by the lean.
        profile = _crown({**m, "fret_w": m["fret_w"] * size}, 0.6)
        start = n.fret(i, -outer)
        bar = prism(face(profile, lambda a, z, s=start: (s + a, -outer, m["H"] + z)),
                    n.fret(i, outer) - start, 2 * outer, 0)  # fmt: skip
        x0, end = -m["u_h"] - m["past_nut"], m["overhang"]
        plan = [(x0, -n.half(x0)), (end, -n.half(end)), (end, n.half(end)), (x0, n.half(x0))]
        found += solids(common(bar, upright(lines(plan), 0, 60)))
    return found


def slots_of(n: Neck) -> list:
    m = n.m
    return [box((n.fret(i) - 0.3, n.fret(i) + 0.3), (-60, 60), (m["H"] - 3.2, m["H"] + 5))
            for i in range(1, m["N"] + 1)]  # fmt: skip


def chamfered(n: Neck, whole):
    """The heel's bottom edges at its sides and end broken by ``edge``."""

    def chosen(x, y, z):
        on_bottom = abs(z) < 1e-6 and -n.m["heel_len"] + 1 < x < 1
        return on_bottom and (x > -8 or abs(y) > n.heel_half(x) - 1e-3)

    return kernel.chamfered(whole, n.m["edge"], chosen)
