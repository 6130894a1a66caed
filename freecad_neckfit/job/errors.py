"""The errors that a user may cause, each carrying one clear sentence."""

from __future__ import annotations


class NeckFitError(Exception):
    """Anything this workbench refuses or cannot do, told in one sentence."""


class BadInput(NeckFitError, ValueError):
    """Something the user stated cannot be used: the sentence names it and says what to do."""


class CannotBuild(BadInput):
    """The stated joint is impossible as wood and metal, as against merely unfit."""


class KernelFailure(NeckFitError, RuntimeError):
    """The geometry kernel gave no usable answer; the finding reads "could not be checked"."""
