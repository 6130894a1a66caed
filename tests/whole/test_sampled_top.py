"""A body whose top no formula states: sampled closed forms against its own solid."""

import numpy as np
import pytest

pytest.importorskip("FreeCAD")

import Part
from FreeCAD import Vector

from freecad_neckfit.fit.checks import ALL
from freecad_neckfit.job.resolve import complete
from freecad_neckfit.run.chain import check_values
from freecad_neckfit.run.finding import State
from freecad_neckfit.solids.build import Given, build
from freecad_neckfit.solids.recognise.pocket_faces import Body
from freecad_neckfit.solids.recognise.top import read_top, top_faces
from tests.solids.test_build_given import blank_of

pytestmark = pytest.mark.freecad
RIDGE = 600.0
PLATED = {"plate.cover": "surround", "bridge.mount": "plate"}


@pytest.fixture(scope="module")
def ridged():
    """The usual body under a top that is round across the centreline, and what is read of it."""
    stated = {"body.edge_round": 0.0, "body.thickness": 60.0}
    ridge = Part.makeCylinder(RIDGE, 700, Vector(-200, 0, -RIDGE), Vector(1, 0, 0))
    body = blank_of(stated).common(ridge).Solids[0]
    read = Body(body)
    top = read_top(read, faces=top_faces(read), x=(-80.0, 260.0), y=(-70.0, 70.0))
    assert top.values["body.top"] == "sampled"
    return body, stated | top.values


@pytest.mark.parametrize("more", [
    {"pocket.angle": 1.0, "pickup_neck.ring": 3.0}, {"pocket.angle": 2.0, **PLATED},
])  # fmt: skip
def test_closed_forms_meet_the_solid_within_the_sampling_error(ridged, more):
    body, stated = ridged
    found = check_values(stated | more, given=Given(body=body))
    allowed = 0.005 + 2 * stated["body.top_error"]
    reads = {check.id: check.reads for check in ALL}
    compared = 0
    for finding in found.findings:
        one, other = finding.closed_form, finding.solids
        assert finding.state is not State.DISAGREES, (finding.id, finding.reason)
        if one is None or other is None or "body.top" not in reads[finding.id]:
            continue
        # A sunk fretboard's room beside the pocket goes by the nearest bowl.
        if finding.id == "overhang.side_room":
            continue
        assert one.value == pytest.approx(other.value, abs=allowed), finding.id
        assert "sampling error of the top [mm]" in one.detail
        compared += 1
    assert compared >= 6


def test_a_sampled_top_can_be_built_too(ridged):
    _, stated = ridged
    built = build(complete(stated), parts=["body"]).parts["body"]
    real = np.sqrt(RIDGE**2 - 50.0**2) - RIDGE
    line = Part.makeLine(Vector(100, 50, -200), Vector(100, 50, 200))
    high = max(p.Z for p in built.common(line).Vertexes)
    assert high == pytest.approx(real, abs=0.01)
