"""The set-up sheet: one page that lies beside the router."""

from __future__ import annotations

import math

import numpy as np

from ..job.quantity import Kind, Units
from ..job.show import compact_length, show_value
from ..run.chain import Verdict
from .cutter import Cutter
from .flow import Flow, Sheet
from .helvetica import shortened
from .ink import Page
from .joint import Joint
from .setup_rows import HEAD, SHARES, neck_rows, pocket_rows, seated_rows

PASS = 6.0
"""Deepest pass [mm], from memory; never deeper than the bit is wide."""
ROOT = 0.70
"""Root over shank diameter of a wood screw, from memory."""
PILOT = 0.90
"""Pilot over root in hard wood (specific gravity 0.6 or more), after NDS, seen second-hand."""
CAUTIONS = (
    (
        "Routers and drills throw chips and dust and are loud: wear eye, ear and dust "
        "protection, use extraction, and keep both hands on the machine. Clamp the work so that "
        "it cannot move; unplug before changing a bit; let the bit stop before you reach near it."
    ),
    (
        "Slacken the strings and mark the neck's place before loosening any screw. Set a depth "
        "stop before every hole in the neck. Finishes give off fumes: air the room and keep "
        "flames away."
    ),
    (
        "Never pull a gap shut with the screws: where the overhang touches, they pry the fretboard "
        "off."
    ),
    (
        "These figures are an aid to a skilled maker who measures the parts in hand. The rules "
        "of your place and licensed practice come first."
    ),
)


def setup_pages(joint: Joint, cutter: Cutter | None, sheet: Sheet) -> list[Page]:
    """The set-up sheet: one page, unless a name or a joint out of the common makes it longer."""
    flow = Flow(sheet, f"Set-up sheet: {joint.name}")
    flow.heading(shortened(flow.title, limit=flow.wide, height=5.0, bold=True), size=5.0)
    if joint.result.verdict is not Verdict.FITS:
        words = f"NOT FOR THE SHOP: this joint {joint.result.verdict.value}; see the report."
        flow.paragraph(words, bold=True)
    flow.heading("Order of work")
    for i, text in enumerate(steps(joint, cutter), start=1):
        flow.step(f"{i}.", text)
    unit = "mm" if joint.units is Units.MM else "inches"
    flow.heading(f"Measure and write down ({unit})")
    rows = [*neck_rows(joint), *pocket_rows(joint), *seated_rows(joint)]
    flow.table(HEAD, [row.cells(joint.units) for row in rows], SHARES)
    flow.heading("Take care")
    for text in CAUTIONS:
        flow.paragraph(text)
    return flow.numbered()


def steps(joint: Joint, cutter: Cutter | None) -> list[str]:
    """The order of work, one sentence or two each."""
    return [
        (
            "Measure the neck and the cover plate in hand and write the figures below. Where one "
            "lies outside its limits, stop and judge the joint again with what you measured."
        ),
        _clamp(joint),
        _rout(joint, cutter),
        _stops(joint),
        *_drill(joint),
        _dry_fit(joint),
        *_pilots(joint),
        (
            "Drive the screws by hand, crosswise, a little at a time. Watch the overhang: stop "
            "at once where it touches. Then measure the room under it."
        ),
    ]


def _show(joint: Joint, mm: float) -> str:
    return compact_length(mm, units=joint.units)


def _clamp(joint: Joint) -> str:
    angle = joint.length("pocket.angle")
    tilt = ""
    if angle:
        degrees = show_value(abs(angle), kind=Kind.ANGLE, units=joint.units)
        toward = "mouth" if angle > 0 else "end wall"
        tilt = f" Tilt the router's base by {degrees}, so that it cuts deeper toward the {toward}."
    return (
        "Clamp the body, top up. Prove the template by its check square, and set it "
        f"on the centreline with its end at the end wall.{tilt}"
    )


def _rout(joint: Joint, cutter: Cutter | None) -> str:
    depth = joint.length("pocket.depth")
    if cutter is None:
        return (
            f"Rout the pocket to {_show(joint, depth)}. Its corners are too tight for any usual "
            "bit: leave them round and square them with a chisel."
        )
    count = max(1, math.ceil(depth / min(PASS, cutter.bit)))
    passes = ", ".join(_show(joint, depth * (i + 1) / count) for i in range(count))
    return (
        f"Rout with a {cutter.led_by(joint.units)}, in {count} passes: {passes} (the deepest step "
        "is from memory; take less where the wood asks for it)."
    )


def _stops(joint: Joint) -> str:
    depth, top = joint.length("pocket.depth"), joint.length("finish.top")
    return (
        f"Depth stop at the end wall: {_show(joint, depth)} from the bare top, or "
        f"{_show(joint, depth + top)} from the finished top. Measure depth at end wall and mouth, "
        "and both widths, before the template comes off."
    )


def _drill(joint: Joint) -> list[str]:
    if not joint.screws.count:
        return []
    hole = _show(joint, joint.length("screws.body_hole"))
    seat = joint.length("screws.head_seat")
    sunk = f" Sink the heads' seats {_show(joint, seat)} deep." if seat > 0 else ""
    return [
        (
            f"Drill {joint.screws.count} screw holes of {hole} through the body, square to the "
            f"top, with a board clamped under the back.{sunk}"
        )
    ]


def _dry_fit(joint: Joint) -> str:
    return (
        f"Lay the neck in dry{_shim(joint)}; it must drop in by its own weight. Measure the "
        "clearances. Sand the pocket rather than force the heel."
    )


def _shim(joint: Joint) -> str:
    make = joint.values["shim.make"]
    if make == "wedge":
        wall, mouth = (_show(joint, joint.length(f"shim.{k}")) for k in ("wall", "mouth"))
        return f", with the full wedge under it ({wall} at the end wall, {mouth} at the mouth)"
    if make == "strip":
        strip, edge = (_show(joint, joint.length(f"shim.{k}")) for k in ("strip", "strip_edge"))
        return (
            f", with the strip under it ({strip} thick, its mouth-side edge {edge} from the end "
            "wall; it bears on two lines only)"
        )
    return ", without a shim"


def _pilots(joint: Joint) -> list[str]:
    if not joint.screws.count:
        return []
    deep = float(np.max(joint.screws.penetration))
    stop = deep + joint.length("limits.pilot_extra")
    length = _show(joint, joint.length("screws.length"))
    into = f"Screws of {length} reach {_show(joint, deep)} into the heel"
    longest = joint.result.find("screws.longest").value
    if longest is not None:
        into += f"; the longest safe one in stock is {_show(joint, longest)}"
    if joint.values["screws.fixing"] == "insert":
        return [f"{into}. Bore for the inserts as their maker says, square to the heel's bottom."]
    pilot = joint.length("screws.shank") * ROOT * PILOT
    return [
        (
            "Mark the heel through the body's holes. Pilot holes in the heel: about "
            f"{_show(joint, pilot)} (0.9 of a root of 0.7 shank, from memory: try it on scrap), "
            f"depth stop at {_show(joint, stop)}. {into}."
        )
    ]
