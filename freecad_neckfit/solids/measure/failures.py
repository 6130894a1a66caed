"""Failures that are the kernel's or the shape's, as against mistakes in this program."""

from __future__ import annotations

import Part

from ...job.errors import KernelFailure


class NotFound(KernelFailure):
    """A face, an edge or a point that a measurement needs is not there."""


KERNEL_FAILURES: tuple[type[Exception], ...] = (KernelFailure, Part.OCCError)
"""Everything else that is raised is a mistake in this program and propagates."""
