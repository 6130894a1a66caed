"""Random joints, solids and all: valid solids, and two readings that agree.

``NECKFIT_JOINTS`` says how many (20 unless stated), ``NECKFIT_FIRST_SEED`` where to begin.
"""

import collections
import os

import pytest

from freecad_neckfit.fit.case import Case
from freecad_neckfit.fit.checks import ALL
from freecad_neckfit.fit.verdict import margin
from freecad_neckfit.run.chain import check_values
from freecad_neckfit.run.finding import State
from tests.random_jobs import OPTIONS, draw

JOINTS = int(os.environ.get("NECKFIT_JOINTS", "20"))
FIRST = int(os.environ.get("NECKFIT_FIRST_SEED", "1"))
MANY = 2000
NEAR = 0.05


def every_solid(shape):
    assert not shape.isNull()
    assert shape.isValid()
    assert shape.Solids
    assert all(solid.isClosed() and solid.Volume > 0 for solid in shape.Solids)


@pytest.mark.freecad
@pytest.mark.parametrize("seed", range(FIRST, FIRST + JOINTS))
def test_a_random_joint_is_built_valid_and_read_the_same_in_both_ways(seed):
    stated, _ = draw(seed)
    result = check_values(stated, name=f"seed {seed}")
    for shape in result.assembly.parts.values():
        every_solid(shape)
    quarrels = [f for f in result.findings if f.state is State.DISAGREES]
    assert [f"{f.id}: {f.reason}" for f in quarrels] == []
    unknown = [f"{f.id}: {f.reason}" for f in result.findings if f.state is State.UNKNOWN]
    assert [u for u in unknown if not u.startswith("seasons.")] == []


def closed_form_contacts(stated):
    """Whether some part interferes, and whether some margin is within ``NEAR`` of a limit."""
    case = Case(stated)
    clash = near = False
    for check in ALL:
        if check.read is None or not check.contact:
            continue
        reading = check.read(case)
        if not (bool(reading.applies) and bool(reading.known)):
            continue
        clash |= float(reading.value) < -0.01
        near |= abs(float(margin(check, case, value=reading.value))) <= NEAR
    return clash, near


def test_the_draws_interfere_come_near_limits_and_show_every_option_often_enough():
    seen = collections.Counter()
    clashes = nears = 0
    for seed in range(1, MANY + 1):
        stated, shown = draw(seed)
        seen.update(shown)
        clash, near = closed_form_contacts(stated)
        clashes += clash
        nears += near
    assert clashes >= 0.3 * MANY
    assert nears >= 0.2 * MANY
    assert {name: seen[name] for name in OPTIONS if seen[name] < 10} == {}
