"""A neck recognised in any pose: its measures, how sure they are, and its frame."""

from __future__ import annotations

from .found import PICKABLE, Confidence, Hole, NeckFound, PickWanted, Question, Recognised
from .recognise import recognise_neck

__all__ = [
    "PICKABLE",
    "Confidence",
    "Hole",
    "NeckFound",
    "PickWanted",
    "Question",
    "Recognised",
    "recognise_neck",
]
