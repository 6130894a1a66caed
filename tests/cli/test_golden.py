"""The sample's record stays what it was: an old reader of the JSON finds what it looks for.

A change that is meant: ``NECKFIT_KEEP=1 tests/run tests/cli/test_golden.py`` keeps the record as it
is now; read the difference before committing it.
"""

import json
import os
import subprocess
import sys

import pytest

pytestmark = pytest.mark.freecad

FIGURES = 1e-4
"""Kernels of different FreeCADs may differ by this in a figure [mm, degrees, N, shares]."""
OWN = {"version"}
"""Keys whose values change with every release."""
LONG = 30
"""Lists longer than this, such as gap maps, are kept by their length alone."""


@pytest.fixture(scope="module")
def records(checkout, tmp_path_factory):
    """The record as kept and as written now."""
    path = tmp_path_factory.mktemp("golden") / "joint.json"
    words = ["-m", "freecad_neckfit", "check", "samples/joint.toml", "--json", str(path)]
    subprocess.run([sys.executable, *words], cwd=checkout, check=True, capture_output=True)
    now = _short(json.loads(path.read_text(encoding="utf-8")))
    del now["joints"][1:]  # the options repeat the base's shape
    file = checkout / "tests/cli/joint.json"
    if os.environ.get("NECKFIT_KEEP"):
        file.write_text(json.dumps(now, indent=1) + "\n", encoding="utf-8")
    return json.loads(file.read_text(encoding="utf-8")), now


def test_nothing_kept_is_gone_or_changed(records):
    kept, now = records
    assert list(differences(kept, now)) == []


def test_a_changed_figure_and_a_lost_key_would_be_seen(records):
    kept, _ = records
    other = json.loads(json.dumps(kept))
    finding = next(f for f in other["joints"][0]["findings"] if f["value"])
    finding["value"] += 2 * FIGURES
    del other["joints"][0]["findings"][0]["gravity"]
    del other["joints"][0]["findings"][-1]
    assert len(list(differences(kept, other))) == 3


def differences(kept, now, where="record"):
    """Where ``now`` lacks or contradicts what was kept; what is new is no difference."""
    if isinstance(kept, dict) and isinstance(now, dict):
        for key in kept.keys() - OWN:
            if key not in now:
                yield f"{where}.{key} is gone"
            else:
                yield from differences(kept[key], now[key], f"{where}.{key}")
    elif isinstance(kept, list) and isinstance(now, list):
        found = _named(now)
        for key, value in _named(kept).items():
            if key not in found:
                yield f"{where}[{key}] is gone"
            else:
                yield from differences(value, found[key], f"{where}[{key}]")
    elif isinstance(kept, float) and isinstance(now, int | float):
        if abs(kept - now) > FIGURES:
            yield f"{where}: {kept} became {now}"
    elif kept != now:
        yield f"{where}: {kept!r} became {now!r}"


def _short(value):
    """The record with its long lists told by their length, and figures to a sensible digit."""
    if isinstance(value, dict):
        return {key: _short(item) for key, item in value.items()}
    if isinstance(value, list):
        if len(value) > LONG and not isinstance(value[0], dict):
            return f"{len(value)} items"
        return [_short(item) for item in value]
    return round(value, 6) if isinstance(value, float) else value


def _named(items):
    """Findings by their id, so that a new one among them moves none; others by their number."""
    return {
        item["id"] if isinstance(item, dict) and "id" in item else number: item
        for number, item in enumerate(items)
    }
