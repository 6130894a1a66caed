"""What reading a solid gives: values by parameter, and how well each was met."""

from __future__ import annotations

from dataclasses import dataclass, field
from typing import Any

from ...job.errors import BadInput


class NotRead(BadInput):
    """A solid that does not show what is looked for; the sentence says what to do."""


@dataclass(frozen=True)
class Shown:
    """Values read from a solid: key to inner value (mm, degrees).

    ``residuals``: key to how far [mm, or degrees for an angle] the solid strays from what the
    value says: faces that should be one plane, two corners that should be alike. ``notes``: what
    could not be read, and what lies oddly, in a sentence each.
    """

    values: dict[str, Any] = field(default_factory=dict)
    residuals: dict[str, float] = field(default_factory=dict)
    notes: tuple[str, ...] = ()
