"""Somebody's file read: sound solids or a closed mesh in mm, and what was mended on the way."""

from __future__ import annotations

from .part import Part3D
from .source import ENDINGS, Progress, read_part
from .unit import in_neck_size

__all__ = ["ENDINGS", "Part3D", "Progress", "in_neck_size", "read_part"]
