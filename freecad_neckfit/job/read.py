"""Reading a job file: TOML in, joints in inner units out, or one sentence that says why not."""

from __future__ import annotations

from collections.abc import Mapping
from pathlib import Path
from typing import Any

import numpy as np

from .errors import BadInput
from .files import load_table, plain_name
from .joint import Job, JobFile
from .layers import Tables
from .options import read_options
from .parameters import ALL
from .parts import Shelf, units_called
from .quantity import Units
from .tables import Where, read_tables
from .woods import wood
from .words import shown

__all__ = ["Job", "JobFile", "read_job"]


def read_job(path: Path) -> JobFile:
    """Return the job that a TOML file states: the base joint and its options.

    Tables are parameter groups, ``[[cavity]]``, ``[[screw]]`` and ``[[old_pilot]]`` lists of them.
    Bare lengths are in the unit that ``[job] units`` names, mm unless stated; others carry their
    unit. ``from`` in a table names a part file, whose values the table's own keys override.
    ``[[option]]`` states differences from the base, ``[tolerance]`` limit deviations and spreads.

    Raises BadInput in one sentence that names file, parameter, value, unit and limit. Whether the
    joint can be built is not asked here: see ``possible.refuse_impossible``.
    """
    raw = load_table(path)
    file = plain_name(path)
    where = Where(file, path.absolute().parent, _units(raw, file=file))
    shelf = Shelf()

    def read(tables: Mapping[str, Any]) -> Tables:
        return read_tables(
            tables, where=where, open_part=lambda w, g: shelf.take(w, g, where=where)
        )

    base = read({key: table for key, table in raw.items() if key != "option"})
    options = read_options(raw.get("option", []), where=where, read=read)
    return job_file(path, base, options, units=where.bare)


def job_file(path: Path, base: Tables, options: dict[str, Tables], *, units: Units) -> JobFile:
    """Return the joints that base and options state.

    Raises BadInput where one contradicts itself.
    """
    file = plain_name(path)
    first = Job("", base.merged(name=file), base)
    name = str(first.stated.get("job.name", "") or path.stem)
    joints = [Job(name, first.layer, base)]
    for option, tables in options.items():
        layer = base.changed_by(tables).merged(name=f"{file}, option {shown(option)}")
        joints.append(Job(option, layer, tables))
    for joint in joints:
        called = file if joint is joints[0] else f"{file}, option {shown(joint.name)}"
        _check_lists(joint, name=called)
        _check_woods(joint, name=called)
    return JobFile(path, joints[0], tuple(joints[1:]), units)


def _units(raw: dict[str, Any], *, file: str) -> Units:
    head = raw.get("job")
    # Anything else that is wrong with [job] is told when its keys are read.
    word = head.get("units", "mm") if isinstance(head, dict) else "mm"
    return units_called(word, name=f"{file}: job.units")


def _check_lists(joint: Job, *, name: str) -> None:
    """Refuse lists with one entry for each string that has another number of them."""
    stated = joint.stated
    count = int(stated.get("strings.count", ALL["strings.count"].default))
    for key, value in stated.items():
        if ALL[key].many == "string" and np.size(value) != count:
            raise BadInput(
                f"{name}: {key} has {np.size(value)} values for {count} strings; state {count}, "
                "treble first."
            )


def _check_woods(joint: Job, *, name: str) -> None:
    for key in ("wood.body", "wood.neck"):
        if key in joint.stated:
            try:
                wood(joint.stated[key], key=key)
            except BadInput as refusal:
                raise BadInput(f"{name}: {refusal}; name one of these.") from None
