"""Seeded random joints for tests: every option, many near a limit, many that interfere.

Most parameters stay near what a shop would state; a few in every joint are drawn from the whole
range that the declarations permit, so that the corners of the parameter space are visited too.
"""

from __future__ import annotations

from typing import Any

import numpy as np

from freecad_neckfit.fit.case import Case
from freecad_neckfit.fit.checks.overhang_gap import CHECK as OVERHANG_GAP
from freecad_neckfit.job.errors import BadInput
from freecad_neckfit.job.parameters import ALL
from freecad_neckfit.job.possible import refuse_impossible
from freecad_neckfit.job.quantity import Kind
from freecad_neckfit.job.resolve import complete

WILD_SHARE = 0.02
"""Share of the numeric parameters that are drawn from their whole permitted range."""
NEVER_WILD = {"limits", "wood", "climate", "job", "shop"}
OPTIONS = (
    "angle",
    "negative angle",
    "wedge",
    "strip",
    "round pocket",
    "round heel",
    "binding",
    "domed",
    "carved",
    "left-handed",
    "multi-scale",
    "bass",
    "conical",
    "one piece",
    "plate",
    "partial plate",
    "plate clear of overhang",
    "no overhang",
    "zero fret",
    "fixed radius",
    "floating",
    "recess",
    "heel rod",
    "inserts",
    "ferrules",
    "contour",
    "fillet",
    "wall square to floor",
    "pickups",
    "cavity",
    "finish",
    "4 strings",
    "7 strings",
    "8 strings",
)


def draw(seed: int) -> tuple[dict[str, Any], set[str]]:
    """One joint's stated values and the options it shows; the same seed gives the same joint."""
    rng = np.random.default_rng(seed)
    # Hundreds of wild corners cannot be built; they are drawn again, from the same stream.
    while True:
        stated, shown = _draw(rng)
        try:
            values = complete(stated)
            refuse_impossible(values, f"seed {seed}")
        except BadInput:
            continue
        return stated, shown


def _draw(rng: np.random.Generator) -> tuple[dict[str, Any], set[str]]:
    shown: set[str] = set()
    s: dict[str, Any] = {}

    def option(name: str, chance: float) -> bool:
        if rng.random() < chance:
            shown.add(name)
            return True
        return False

    bass = option("bass", 0.15)
    width = rng.uniform(62, 66) if bass else rng.uniform(54, 58)
    s["neck.heel_width_end"] = width
    s["neck.heel_width_mouth"] = width - rng.uniform(0.0, 1.5)
    clearance = rng.uniform(0.0, 0.3)
    s["pocket.width_end"] = width + 2 * clearance
    s["pocket.width_mouth"] = s["neck.heel_width_mouth"] + 2 * rng.uniform(0.0, 0.3)
    s["neck.width_end"] = width + rng.uniform(-0.6, 0.4)
    s["pocket.length"] = rng.uniform(60, 90)
    s["neck.heel_length"] = s["pocket.length"] + rng.uniform(-2, 8)
    s["seat.end_gap"] = rng.choice([0.0, rng.uniform(0, 0.4)])
    s["pocket.corner_radius"] = rng.choice([0.0, 3.2, rng.uniform(0.5, 6.5)])
    s["neck.heel_corner_radius"] = rng.choice([0.0, 3.2, rng.uniform(0.5, 10.0)])
    s["body.block_treble"] = width / 2 + rng.uniform(4, 20)
    s["body.block_bass"] = width / 2 + rng.uniform(4, 25)
    s["body.thickness"] = rng.uniform(38, 50)
    _neck(s, rng, option, bass)
    _pocket(s, rng, option)
    _hardware(s, rng, option)
    _strings(s, rng, option, bass)
    _wild(s, rng)
    _aim(s, rng)
    return s, shown


def _neck(s: dict[str, Any], rng: np.random.Generator, option: Any, bass: bool) -> None:
    s["neck.glue_line"] = rng.uniform(17.0, 20.0)
    s["neck.underside"] = s["neck.glue_line"] + rng.choice([0.0, rng.uniform(-1.5, 1.0)])
    s["neck.height"] = s["neck.glue_line"] + rng.uniform(5.5, 7.5)
    if bass:
        s["neck.scale"], s["neck.nut_to_heel"] = 863.6, rng.uniform(590, 640)
        s["neck.width_nut"], s["bridge.front"] = 40.0, 863.6 - s["neck.nut_to_heel"] - 3
        s["neck.frets"] = int(rng.integers(20, 22))
        s["pickup_neck.x"], s["pickup_middle.x"] = 60.0, 110.0
        s["pickup_bridge.x"] = 160.0
    else:
        s["neck.scale"] = rng.uniform(620, 650)
        s["neck.frets"] = int(rng.integers(21, 25))
        last = s["neck.scale"] * (1 - 2 ** (-s["neck.frets"] / 12))
        s["neck.nut_to_heel"] = last - rng.uniform(-4, 12)
        s["bridge.front"] = s["neck.scale"] - s["neck.nut_to_heel"] - rng.uniform(1, 4)
    if option("no overhang", 0.08):
        s["neck.overhang"] = 0.0
    else:
        s["neck.overhang"] = max(float(complete(s)["neck.overhang"]), rng.uniform(6.0, 20.0))
    if option("binding", 0.2):
        s["neck.binding_width"], s["neck.binding"] = rng.uniform(1, 2.5), rng.uniform(0, 1.5)
    if option("conical", 0.3):
        s["neck.radius_nut"] = rng.uniform(180, 300)
        s["neck.radius_end"] = s["neck.radius_nut"] + rng.uniform(20, 200)
    if option("one piece", 0.2):
        s["neck.make"] = "one piece"
    if option("round heel", 0.15):
        s["neck.heel_end"] = "round"
        s["neck.heel_radius"] = s["neck.heel_width_end"] / 2 * rng.uniform(1.0, 3.0)
    if option("heel rod", 0.15):
        s["neck.rod"] = "heel"
    s["neck.fall_away"] = rng.choice([0.0, rng.uniform(0, 0.3)])
    s["neck.relief"] = rng.uniform(0, 0.4)
    s["neck.heel_edge"] = rng.choice([0.0, rng.uniform(0, 1.5)])


def _pocket(s: dict[str, Any], rng: np.random.Generator, option: Any) -> None:
    s["pocket.depth"] = rng.uniform(14, 20)
    if option("angle", 0.4):
        s["pocket.angle"] = rng.uniform(0.1, 3.0)
    elif option("negative angle", 0.1):
        s["pocket.angle"] = -rng.uniform(0.1, 2.0)
    if option("wedge", 0.15):
        s["shim.make"], s["shim.wall"] = "wedge", rng.uniform(0.2, 1.5)
        s["shim.mouth"] = rng.choice([0.0, rng.uniform(0, 1.5)])
    elif option("strip", 0.1):
        s["shim.make"], s["shim.strip"] = "strip", rng.uniform(0.2, 1.0)
    if option("round pocket", 0.15):
        s["pocket.end_shape"] = "round"
        s["pocket.end_radius"] = s["pocket.width_end"] / 2 * rng.uniform(1.02, 3.0)
    if option("wall square to floor", 0.15):
        s["pocket.wall"] = "floor"
    if option("fillet", 0.15):
        s["pocket.floor_fillet"] = rng.uniform(0.2, 1.5)
    if option("finish", 0.3):
        s["finish.floor"], s["finish.wall"] = rng.uniform(0, 0.2), rng.uniform(0, 0.1)
    s["finish.top"] = rng.uniform(0, 0.4)
    if option("domed", 0.12):
        s["body.top"], s["body.dome_radius"] = "domed", rng.uniform(2000, 8000)
    elif option("carved", 0.12):
        s["body.top"], s["body.carve_slope"] = "carved", rng.uniform(-1, 3)
    if option("contour", 0.2):
        s["body.contour_depth"] = rng.uniform(1, 8)
    s["body.edge_round"] = rng.choice([0.0, rng.uniform(1, 6)])
    if option("cavity", 0.2):
        s["cavity.x"], s["cavity.y"] = np.array([200.0]), np.array([rng.uniform(-60, 60)])


def _hardware(s: dict[str, Any], rng: np.random.Generator, option: Any) -> None:
    if option("plate", 0.45):
        s["plate.cover"], s["plate.thickness"] = "surround", rng.uniform(1.5, 3.2)
        if option("partial plate", 0.3):
            s["plate.cover"] = "treble side"
        if option("plate clear of overhang", 0.3):
            s["plate.under_overhang"] = False
        s["plate.clearance"] = rng.uniform(0.0, 2.0)
    if option("fixed radius", 0.2):
        s["bridge.make"] = "fixed radius"
    elif option("floating", 0.15):
        s["bridge.make"] = "floating"
    if option("recess", 0.1):
        s["bridge.mount"], s["bridge.recess"] = "recess", rng.uniform(1, 5)
    if option("pickups", 0.6):
        for role in ("neck", "middle", "bridge"):
            s[f"pickup_{role}.fitted"] = bool(rng.random() < 0.7)
            s[f"pickup_{role}.mount"] = str(rng.choice(["top", "plate", "cavity"]))
        s.setdefault("pickup_neck.x", rng.uniform(24, 40))
    if option("inserts", 0.15):
        s["screws.fixing"] = "insert"
    if option("ferrules", 0.2):
        s["neck_plate.make"] = "ferrules"
    s["screws.length"] = rng.uniform(35, 55)


def _strings(s: dict[str, Any], rng: np.random.Generator, option: Any, bass: bool) -> None:
    count = 4 if bass else int(rng.choice([6, 6, 6, 7, 8, 5]))
    if count in (4, 7, 8):
        option(f"{count} strings", 1.1)
    s["strings.count"] = count
    if option("left-handed", 0.25):
        s["strings.left_handed"] = True
    if option("multi-scale", 0.15):
        s["neck.scale_bass"] = s["neck.scale"] + rng.uniform(10, 25)
        s["neck.square_fret"] = float(rng.integers(5, 10))
    if option("zero fret", 0.15):
        s["strings.zero_fret"] = True
    s["strings.action_treble"] = rng.uniform(1.2, 2.2)
    s["strings.action_bass"] = rng.uniform(1.6, 2.8)


def _wild(s: dict[str, Any], rng: np.random.Generator) -> None:
    for p in ALL.values():
        ranged = p.kind in (Kind.LENGTH, Kind.ANGLE) and p.low is not None and not p.many
        if ranged and p.group not in NEVER_WILD and rng.random() < WILD_SHARE:
            s[p.key] = rng.uniform(p.low, p.high)


def _aim(s: dict[str, Any], rng: np.random.Generator) -> None:
    """Turn the depth so that the room under the overhang lands where the draw wants it."""
    chance = rng.random()
    if chance < 0.35:
        wish = -rng.uniform(0.02, 3.0)
    elif chance < 0.65:
        wish = rng.choice([0.0, 0.15, 0.80]) + rng.uniform(-0.05, 0.05)
    else:
        return
    for _ in range(3):
        reading = OVERHANG_GAP.read(Case(s))
        if not bool(reading.applies):
            return
        s["pocket.depth"] = float(s["pocket.depth"] + reading.value - wish)
