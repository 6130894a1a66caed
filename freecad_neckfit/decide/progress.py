"""How far a longer search is, and how it is stopped."""

from __future__ import annotations

from collections.abc import Callable

from ..job.errors import NeckFitError

Progress = Callable[[float, str], bool]
"""Called with the share done, 0 … 1, and what is being done; returns False to stop."""


class Stopped(NeckFitError):
    """The user stopped a search; what was found until then is lost."""


def tell(progress: Progress | None, share: float, what: str) -> None:
    """Report to ``progress``; raises Stopped where it says so."""
    if progress is not None and not progress(min(max(share, 0.0), 1.0), what):
        raise Stopped(f"stopped while {what}")
