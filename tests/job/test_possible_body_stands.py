"""Where only the seat changes, the body need not be looked at again."""

import numpy as np
import pytest

from freecad_neckfit.job.errors import CannotBuild
from freecad_neckfit.job.possible import body, openings, refuse_impossible
from freecad_neckfit.job.resolve import complete

TURNED = {
    "pocket.depth",
    "pocket.angle",
    "plate.thickness",
    "shim.wall",
    "shim.mouth",
    "shim.strip",
}
FULL = {
    "cavity.x": np.array([150.0]),
    "cavity.y": np.array([0.0]),
    "pickup_neck.fitted": True,
    "pickup_bridge.fitted": True,
    "plate.cover": "surround",
    "shim.make": "wedge",
    "bridge.mount": "recess",
    "bridge.recess": 3.0,
    "body.top": "domed",
}


class Watched(dict):
    """Values that remember which of them were read."""

    def __init__(self, values):
        super().__init__(values)
        self.read = set()

    def __getitem__(self, key):
        self.read.add(key)
        return super().__getitem__(key)

    def get(self, key, default=None):
        self.read.add(key)
        return super().get(key, default)


@pytest.mark.parametrize("complaints", [body.complaints, openings.complaints])
@pytest.mark.parametrize("more", [{}, {"strings.left_handed": True}, {"body.top": "flat"}])
def test_what_is_left_out_reads_nothing_that_is_turned(complaints, more):
    values = Watched(complete(FULL | more))
    assert list(complaints(values)) == []
    assert "body.thickness" in values.read
    assert not values.read & TURNED


def test_a_pocket_through_the_back_is_refused_all_the_same():
    with pytest.raises(CannotBuild, match="goes through the body"):
        refuse_impossible(complete({"pocket.depth": 50.0}), "the joint", body_stands=True)


def test_only_the_body_is_left_out():
    values = complete({"body.edge_round": 30.0})
    with pytest.raises(CannotBuild):
        refuse_impossible(values, "the joint")
    refuse_impossible(values, "the joint", body_stands=True)
