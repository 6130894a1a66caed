"""First gate: the saddles land within the bridge's travel along the strings."""

from __future__ import annotations

import numpy as np

from ...job.quantity import Kind
from ..angle_window import landing_window
from ..case import Case
from ..check import Check, Gravity
from ..reading import Reading
from ..reads import SCALE, SEAT, STRINGS, together
from ..strings import is_few, least, per_string, place_of_least


def read(case: Case) -> Reading:
    """Least distance [mm] of any saddle's X to either end of the travel; negative beyond it.

    X_s = (nut + L + c - u_h)·cos(tilt) - z_s·sin(tilt) - E per string.
    """
    front, travel = case["bridge.front"], case["bridge.travel"]
    rooms = tuple(np.minimum(x - front, front + travel - x) for x in case.saddles.x)
    value = least(rooms)
    detail = {"X of each saddle": per_string(case.saddles.x)} if is_few(rooms) else {}
    if np.ndim(value) == 0:
        first, last = landing_window(case)
        detail |= {"least angle that lands": first, "largest angle that lands": last}
    return Reading(value=value, place=place_of_least(rooms, case.saddles.places), detail=detail)


CHECK = Check(
    id="scale.reach",
    title="saddles within their travel along the strings",
    unit=Kind.LENGTH,
    gravity=Gravity.DOES_NOT_GO,
    reads=together(SCALE, SEAT, STRINGS, ("bridge.front", "bridge.travel")),
    read=read,
    low=0.0,
    measure="",
    consequence="A saddle does not reach the place its string needs: the instrument cannot be "
    "played in tune, whatever else fits.",
    mending="Move the bridge or the pocket's end wall by {short}, or choose a bridge with more "
    "travel along the strings.",
)
