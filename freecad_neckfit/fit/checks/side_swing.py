"""How far the strings may miss the bridge's centre because the heel swings."""

from __future__ import annotations

from ...job.quantity import Kind
from ..case import Case
from ..check import Check, Gravity
from ..reading import Reading
from ..reads import SADDLES, together
from ..reads_joint import PLANS
from ..swing import sideways


def read(case: Case) -> Reading:
    """Largest miss [mm] of the bridge's centre to either side: (c/L_p)·(X_s + L_p/2).

    c is the clearance of both sides together. On the last fret the strings move by that times
    u_N/L.
    """
    miss = sideways(case, saddle_x=case.saddles.middle_x)
    scale = case.frets.middle_scale
    share = case.frets.on_centre(float(case.frets.count)) / scale
    return Reading(value=miss, detail={"strings on the last fret move by": miss * share})


CHECK = Check(
    id="side.swing",
    title="sideways swing at the bridge",
    unit=Kind.LENGTH,
    gravity=Gravity.TELLS,
    reads=together(SADDLES, PLANS),
    read=read,
    measure="",
    consequence="The neck can be set this far to either side before the screws hold it.",
)
