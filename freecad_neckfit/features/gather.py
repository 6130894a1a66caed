"""All that the objects of a joint state together."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any

from ..job.errors import BadInput
from .digest import digest_of
from .migrations import refuse_newer
from .roles import LINKS, role_of
from .values import stated_of


def objects_of(joint: Any) -> list[Any]:
    """The objects that state parameters of the joint, itself last.

    Raises BadInput where one is missing, of another kind, or made by a newer NeckFit.
    """
    if joint is None or role_of(joint) != "joint":
        raise BadInput("No joint is linked here; link one.")
    found = []
    for name, role in LINKS.items():
        linked = getattr(joint, name)
        if linked is None:
            raise BadInput(f"{joint.Label}.{name} links nothing; link a {title(role)}.")
        if role_of(linked) != role:
            raise BadInput(
                f"{joint.Label}.{name} links {linked.Label}, which is no {title(role)}; link one."
            )
        found.append(linked)
    for obj in (*found, joint):
        refuse_newer(obj)
    return [*found, joint]


def joint_stated(joint: Any) -> dict[str, Any]:
    """Everything stated of a joint: key to inner value (mm, degrees). Raises BadInput."""
    found: dict[str, Any] = {}
    for obj in objects_of(joint):
        found |= stated_of(obj)
    return found


def joint_digest(joint: Any, stated: Mapping[str, Any] | None = None) -> str:
    """Digest of everything that findings on the joint depend on. Raises BadInput.

    ``stated``: what ``joint_stated`` gave a moment ago, to be spared reading it again.
    """
    from .adopt_given import given_digest

    values = joint_stated(joint) if stated is None else stated
    return digest_of(values, solids=given_digest(joint))


def title(role: str) -> str:
    """A role in plain words."""
    return "cover plate" if role == "plate" else role
