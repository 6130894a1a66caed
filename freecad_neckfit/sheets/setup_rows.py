"""What the set-up sheet has measured in the shop: nominal figure, limits, an empty box."""

from __future__ import annotations

import math
from dataclasses import dataclass

from ..job.quantity import Kind, Units
from ..job.top import top_height
from .dimension import PLACES, limits_shown, shown
from .flow import Cell
from .joint import Joint

HEAD = ("What to measure", "Nominal", "Accept from", "to", "Measured")
SHARES = (3.6, 1.1, 1.2, 1.1, 1.6)


@dataclass(frozen=True)
class Row:
    """One figure to measure; ``key`` as on the drawing, empty where the solids do not show it."""

    what: str
    nominal: float
    low: float | None
    high: float | None
    key: str = ""
    kind: Kind = Kind.LENGTH

    def cells(self, units: Units) -> list[Cell]:
        """The row of the table."""
        places = 2 if self.kind is Kind.ANGLE else PLACES[units]
        nominal = shown(self.nominal, kind=self.kind, units=units, places=places)
        limits = limits_shown(self.low, self.high, kind=self.kind, units=units, places=places)
        low, high = (Cell(limit or "-") for limit in limits)
        return [Cell(self.what), Cell(nominal, key=self.key), low, high, Cell(box=True)]


def neck_rows(joint: Joint) -> list[Row]:
    """The neck in hand, before anything is cut."""
    rows = [
        ("neck.underside", "heel bottom to the overhang's underside"),
        ("neck.heel_width_end", "heel width close to the heel end"),
        ("neck.heel_width_mouth", "heel width where the body ends"),
    ]
    if joint.length("neck.overhang") <= 0:
        rows = rows[1:]
    if "plate" in joint.parts:
        rows.append(("plate.thickness", "cover plate's thickness"))
    found = [_stated(joint, key, f"Neck: {what}") for key, what in rows]
    return [
        Row(r.what.replace("Neck: cover", "Cover"), r.nominal, r.low, r.high, r.key) for r in found
    ]


def pocket_rows(joint: Joint) -> list[Row]:
    """The pocket as routed, from the bare top."""
    rows = [_stated(joint, "pocket.depth", "Pocket: depth at the end wall")]
    low, high = joint.limits("pocket.depth") or (0.0, 0.0)
    length = joint.length("pocket.length")
    fall = length * math.tan(math.radians(joint.length("pocket.angle")))
    top = float(top_height(joint.values, x=-length, y=0.0))
    mouth = joint.length("pocket.depth") + fall + top
    rows.append(Row("Pocket: depth at the mouth", mouth, mouth + low, mouth + high, "depth_mouth"))
    for key, what in (
        ("pocket.width_end", "width at the end wall"),
        ("pocket.width_mouth", "width at the mouth"),
        ("pocket.length", "length, end wall to mouth"),
    ):
        rows.append(_stated(joint, key, f"Pocket: {what}"))
    return rows


def seated_rows(joint: Joint) -> list[Row]:
    """The neck in its pocket."""
    rows = []
    for check_id, key, what in (
        ("side.treble", "side_treble", "side clearance, treble"),
        ("side.bass", "side_bass", "side clearance, bass"),
        ("end.clearance", "end_gap", "end clearance"),
        ("overhang.gap", "overhang_gap", "room under the overhang, screwed down"),
    ):
        finding = joint.result.find(check_id)
        if finding.value is not None:
            row = Row(f"Seated: {what}", finding.value, finding.low, finding.high, key)
            rows.append(row)
    return rows


def _stated(joint: Joint, key: str, what: str) -> Row:
    nominal = joint.length(key)
    low, high = joint.limits(key) or (0.0, 0.0)
    return Row(what, nominal, nominal + low, nominal + high, key)
