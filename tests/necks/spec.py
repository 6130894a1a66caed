"""Invented necks as numbers: every measure drawn by seed, and what a reader must find in them.

Neck frame: origin at the heel end's bottom, +x toward the bridge, +z from heel bottom to
fretboard; lengths in mm. Plain Python, so that tests and the generator share it.
"""

from __future__ import annotations

import math
import random
from dataclasses import dataclass, field
from typing import Any

POCKET = 76.0
"""Where the heel's width at the mouth is taken [mm], as a job does unless it states otherwise."""

KINDS: dict[str, dict[str, Any]] = {
    "plain": dict(top="plane", overhang=0.0, corner=0.0, shaft="block", radius=None),
    "cylinder": dict(),
    "round-end": dict(end="round", headstock="arc"),
    "cone": dict(top="cone"),
    "ruled": dict(top="ruled", frets="slots"),
    "splines": dict(splines=True, frets="fused"),
    "splines-cone": dict(splines=True, top="cone", end="round"),
    "parts": dict(parts=True, frets="parts", nut="part"),
    "above": dict(under=1.1, parts=True),
    "below": dict(under=-1.3, frets="fused", nut="fused"),
    "coplanar": dict(headstock="coplanar", rod="inner", parts=True),
    "rod-hole": dict(rod="hole", frets="fused"),
    "rod-slot": dict(rod="slot", parts=True, top="cone", frets="parts"),
    "bass": dict(bass=True, frets="fused", nut="fused"),
    "left": dict(left=True, parts=True, frets="parts", nut="part", headstock="arc"),
    "many-faces": dict(
        parts=True, frets="barbed", nut="part", screws=True, top="plane", radius=None
    ),
    "bound": dict(parts=True, binding=True, frets="parts"),
    "screws": dict(screws=True, edge=0.8, headstock="tilted"),
    "fan": dict(top="plane", frets="fan", nut="fused", radius=None),
    "no-overhang": dict(overhang=0.0, frets="fused", top="ruled", parts=True),
    "one-solid": dict(frets="faceted", nut="fused"),
}
"""Each kind of neck and what sets it apart from a usual one."""


@dataclass
class Neck:
    """One neck as numbers."""

    kind: str
    seed: int
    m: dict[str, Any] = field(default_factory=dict)

    def half(self, x: float) -> float:
        """Half the fretboard's width [mm] at x."""
        share = (x + self.m["u_h"]) / (self.m["u_h"] + self.m["overhang"])
        return (self.m["w_nut"] + (self.m["w_end"] - self.m["w_nut"]) * share) / 2

    def radius(self, x: float) -> float:
        """Radius [mm] of the top's crest at x."""
        share = (x + self.m["u_h"]) / (self.m["u_h"] + self.m["overhang"])
        return self.m["r_nut"] + (self.m["r_end"] - self.m["r_nut"]) * share

    def heel_half(self, x: float) -> float:
        """Half the heel's width [mm] at x."""
        return self.m["heel_half"] + self.m["slope"] * x

    def fret(self, n: float, y: float = 0.0) -> float:
        """x [mm] of fret ``n`` at y; 0 is the nut's front face."""
        m = self.m
        if not m["fan"]:
            return -m["u_h"] + m["scale"] * (1 - 2 ** (-n / 12))
        kept, here = 2 ** (-m["square"] / 12), 2 ** (-n / 12)
        middle = -m["u_h"] + (m["scale"] + m["fan"] / 2) * (1 - here)
        lean = -m["fan"] * (kept - here) / m["spread"]
        return middle + lean * y * (-1 if m["left"] else 1)

    def truth(self) -> dict[str, Any]:
        """What a reader must find, by the key of the job's parameter."""
        m = self.m
        found: dict[str, Any] = {
            "neck.height": m["H"],
            "neck.overhang": m["overhang"],
            "neck.heel_length": m["heel_len"],
            "neck.heel_width_end": 2 * m["heel_half"],
            "neck.heel_width_mouth": 2 * self.heel_half(-POCKET),
            "neck.heel_end": m["end"],
            "neck.width_nut": m["w_nut"],
            "neck.width_end": m["w_end"],
            "neck.nut_to_heel": m["u_h"],
        }
        if m["end"] == "round":
            found["neck.heel_radius"] = m["end_radius"]
        else:
            found["neck.heel_corner_radius"] = m["corner"]
        if m["overhang"] > 0:
            found["neck.underside"] = m["under"]
        if m["parts"]:
            found["neck.glue_line"] = m["glue"]
        if m["r_nut"]:
            found |= {"neck.radius_nut": m["r_nut"], "neck.radius_end": m["r_end"]}
        if m["edge"]:
            found["neck.heel_edge"] = m["edge"]
        return found | self._fittings()

    def _fittings(self) -> dict[str, Any]:
        m, found = self.m, {}
        if m["frets"] != "none":
            found |= {"neck.frets": m["N"], "neck.scale": m["scale"]}
            if m["fan"]:
                found |= {"neck.scale_bass": m["scale"] + m["fan"], "neck.square_fret": m["square"]}
            found["neck.end_margin"] = m["overhang"] - self.fret(m["N"])
            if m["frets"] != "slots":
                found |= {"neck.fret_height": m["fret_h"], "neck.fret_width": m["fret_w"]}
        if m["binding"]:
            found |= {"neck.binding": m["hang"], "neck.binding_width": m["bind_w"]}
        if m["rod"] != "none":
            found["neck.rod_width"] = m["rod_w"]
            found["neck.rod_depth"] = m["rod_z"]
            found["neck.rod"] = "headstock" if m["rod"] == "inner" else "heel"
        if m["rod"] == "inner":
            found["neck.rod_end"] = m["rod_end"]
        return found


def _scale_and_frets(rng: random.Random, f: dict[str, Any]) -> tuple[float, int]:
    if f.get("bass"):
        return rng.uniform(760, 880), rng.randint(20, 24)
    return rng.uniform(622, 660), rng.randint(21, 24)


def draw(kind: str, seed: int) -> Neck:
    """Draw a neck of one kind; the same seed gives the same neck."""
    rng, f = random.Random(f"{kind} {seed}"), KINDS[kind]
    scale, N = _scale_and_frets(rng, f)
    r = lambda a, b: round(rng.uniform(a, b), 3)  # noqa: E731
    scale, bass = round(scale, 2), bool(f.get("bass"))
    last = scale * (1 - 2 ** (-N / 12))
    overhang = f.get("overhang", r(6, 24))
    margin = r(4.5, 8)
    u_h = round(last + margin - overhang, 3) if f.get("frets", "none") != "fan" else 0.0
    H, glue = r(23.5, 27), r(17.2, 19.4)
    w_nut = r(40, 44)
    w_end = r(61, 64) if bass else r(55.5, 58)
    end = f.get("end", "square")
    half = r(30.5, 32) if bass else r(27.6, 28.6)
    m: dict[str, Any] = dict(
        scale=scale, N=N, u_h=u_h, H=H, glue=glue, overhang=overhang, w_nut=w_nut, w_end=w_end,
        under=round(glue + f.get("under", 0.0), 3), heel_len=r(80, 92) if bass else r(77, 84),
        heel_half=half, slope=r(0.001, 0.008) if rng.random() < 0.8 else 0.0, end=end,
        corner=f.get("corner", r(2.2, 6.5)) if end == "square" else 0.0,
        end_radius=r(half, 90) if rng.random() < 0.6 else half, edge=f.get("edge", 0.0),
        top=f.get("top", "cylinder"), frets=f.get("frets", "none"), nut=f.get("nut", "none"),
        parts=f.get("parts", False), shaft=f.get("shaft", "half"), left=f.get("left", False),
        headstock=f.get("headstock", rng.choice(["level", "tilted", "arc"])),
        head_len=r(190, 215) if bass else r(150, 185), head_drop=r(3, 7),
        splines=f.get("splines", False), rod=f.get("rod", "none"), screws=f.get("screws", False),
        fret_h=r(0.85, 1.15), fret_w=r(2.35, 2.85), binding=f.get("binding", False),
        bind_w=r(1.2, 2.2), hang=r(0.4, 1.5), rod_w=r(5, 7), rod_z=r(6, 8.5), rod_end=r(6, 30),
        fan=0.0, spread=0.0, square=0.0, past_nut=rng.choice([0.0, r(4, 6)]), bass=bass,
    )  # fmt: skip
    radius = f.get("radius", r(184, 420))
    m["r_nut"] = m["r_end"] = radius
    if m["top"] in ("cone", "ruled"):
        m["r_nut"], m["r_end"] = r(184, 254), r(300, 508)
    if m["slope"] * POCKET > half - 18:
        raise ValueError("the heel tapers to nothing")
    if m["nut"] == "none" and m["frets"] == "none":
        m["past_nut"] = 0.0
    if m["end"] == "round":
        m["end_radius"] = _round_end(m, half)
    if m["frets"] == "fan":
        m |= dict(fan=r(15, 26), spread=r(36, 44), square=float(rng.choice([5, 7, 9])))
        m["u_h"] = round((scale + m["fan"] / 2) * (1 - 2 ** (-N / 12)) + margin + 4 - overhang, 3)
        m["past_nut"] = max(m["past_nut"], 14.0)
    return Neck(kind, seed, m)


def _round_end(m: dict[str, Any], half: float) -> float:
    """A radius whose arc reaches the sides: a half circle is tangent only to straight ones."""
    if m["end_radius"] == half and m["slope"] > 0:
        return half + 2.0
    return float(m["end_radius"])


def pose(rng: random.Random) -> tuple[list[float], float, list[float]]:
    """A random rotation (axis, degrees) and shift [mm]."""
    while True:
        axis = [rng.gauss(0, 1) for _ in range(3)]
        size = math.sqrt(sum(a * a for a in axis))
        if size > 0.1:
            break
    shift = [rng.uniform(-400, 400) for _ in range(3)]
    return [a / size for a in axis], rng.uniform(5, 175), shift
