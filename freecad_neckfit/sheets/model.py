"""The model for the shop: STEP of what is cut and seated, and the pocket as CAM can pick it."""

from __future__ import annotations

from dataclasses import replace
from pathlib import Path
from typing import Any

import numpy as np

from ..job.errors import KernelFailure
from ..run.save import hidden_document, save
from ..solids.build.assembly import Assembly
from ..solids.build.pocket import BEYOND, pocket_cutter
from ..solids.build.shapes import common
from ..solids.build.top import range_over, under_top
from .joint import Joint

PARTS = ("body", "plate", "shim", "heel", "shaft", "fretboard", "binding_treble", "binding_bass",
         "frets", "inserts", "neck_plate")  # fmt: skip
POCKET, WORK_ZERO = "pocket", "work_zero"


def shop_parts(joint: Joint) -> Assembly:
    """The cut body, the cover plate and the seated neck, without what is no business of cutting."""
    parts = {name: shape for name, shape in joint.parts.items() if name in PARTS}
    return replace(joint.assembly, parts=parts)


def write_step(joint: Joint, path: Path) -> None:
    """Write the shop's parts as STEP, in millimetres, one named product each."""
    save(shop_parts(joint), step=path)


def pocket_volume(joint: Joint) -> Any:
    """The wood that the pocket takes: from the floor to the bare top, 5 mm past the mouth."""
    v = dict(joint.values)
    mouth, wide = -joint.length("pocket.length"), joint.pocket.half + joint.length("pocket.length")
    if v["body.top"] == "flat":
        return pocket_cutter(v, front=mouth, above=0.0)
    x, y = (mouth - 3 * BEYOND, 3 * BEYOND), (-wide, wide)
    above = range_over(v, x, y)[1] + BEYOND
    cutter = pocket_cutter(v, front=mouth, above=above)
    top = under_top(v, x, y, raised=0.0, low=-joint.length("body.thickness") - BEYOND)
    cut = common(cutter, top)
    if len(cut.Solids) != 1:
        raise KernelFailure(f"{joint.name}: the kernel made no single solid of the pocket's wood.")
    return cut.Solids[0]


def write_machining(joint: Joint, path: Path) -> None:
    """Write a document for machining: the cut body, the pocket's wood by itself, and work zero.

    Work zero is the joint's origin: end wall, centreline, bare top; X runs toward the bridge, Z up
    out of the top. The pocket's floor and walls are faces of the object ``pocket``, so that they
    can be picked for a pocketing operation. Raises KernelFailure where FreeCAD writes no document.
    """
    with hidden_document("machining") as document:
        for name, shape in (("body", joint.parts["body"]), (POCKET, pocket_volume(joint))):
            feature = document.addObject("Part::Feature", name)
            plain = shape.copy()
            plain.Tag = 0  # without the element map that FreeCAD 1.1 would save along with it
            feature.Shape = plain
            feature.Label = name
            feature.purgeTouched()
        zero = document.addObject("App::Placement", WORK_ZERO)
        zero.Label = WORK_ZERO
        document.recompute()
        document.saveAs(str(path))
    if not path.is_file() or path.stat().st_size == 0:
        raise KernelFailure(f"{path}: FreeCAD wrote no document; is the disk full?")


def volumes(assembly: Assembly) -> dict[str, float]:
    """Volume [mm³] of each part."""
    return {name: float(np.sum([s.Volume for s in p.Solids])) for name, p in assembly.parts.items()}
