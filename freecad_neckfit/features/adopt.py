"""A solid that the designer has already becomes the body, the neck or the cover plate of a joint.

Nothing here changes the adopted object but whether it is shown: a copy of its shape is routed and
measured.
"""

from __future__ import annotations

from collections.abc import Sequence
from typing import Any

from ..job.errors import BadInput
from .adopt_shape import own_shape
from .roles import LINKS, role_of

ROLES = ("body", "neck", "plate")
"""What a solid can be adopted as."""


def adopt_body(
    joint: Any,
    solid: Any,
    *,
    path: str = "",
    top: str = "",
    centreline: str = "",
    centreline_of: Any = None,
    system: Any = None,
    frame: Sequence[float] = (),
    reverse: bool = False,
    has_pocket: bool = False,
    floor: str = "",
) -> Any:
    """Make ``solid`` the joint's body and return the object that stands for it.

    ``path``: where in a link the solid lies. The body frame follows ``top`` (a face such as
    "Face6" of the solid) and ``centreline`` (an edge of ``centreline_of``, or of the solid; left
    out for an object that is a line itself), or the coordinate system ``system``, or is typed:
    ``frame`` holds X, Y, Z [mm] and yaw, pitch, roll [degrees] in the solid's own coordinates.
    ``reverse``: X points to the other end of the centreline. ``has_pocket``: the solid has its
    pocket already, which is read, with the face ``floor`` where its floor is picked. Raises
    BadInput in one sentence where the object cannot be it or a face is not there.
    """
    body = _start(joint, "body", solid, path)
    body.HasPocket, body.Reversed = has_pocket, reverse
    shape = own_shape(body)
    body.CentrelineOf = centreline_of
    body.TopFace, body.FloorFace, body.Centreline = remembered(
        shape, solid, top=top, floor=floor, centreline=centreline, centreline_of=centreline_of
    )
    _set_frame(body, system=system, frame=frame, picked=bool(top))
    body.NeckBeside = joint.Neck
    pocket = joint.Pocket
    body.PocketBehind = None if has_pocket else pocket
    pocket.ReadFrom = body if has_pocket else None
    pocket.MeasuredFrom, body.MeasuredFrom = "", ""
    return body


def adopt_plate(
    joint: Any, solid: Any, *, path: str = "", frame: Sequence[float] = (), cover: str = "surround"
) -> Any:
    """Make ``solid`` the joint's cover plate, where it lies, and return what stands for it.

    ``frame``: the body frame in the solid's own coordinates, for a plate that lies elsewhere.
    ``cover``: which side it covers. Raises BadInput where the object cannot be it.
    """
    plate = _start(joint, "plate", solid, path)
    _set_frame(plate, frame=frame, otherwise="where it lies")
    plate.Cover = cover
    plate.MeasuredFrom = ""
    return plate


def adopt_neck(
    joint: Any, solid: Any, *, path: str = "", frame: Sequence[float] = (), system: Any = None
) -> Any:
    """Make ``solid`` the joint's neck and return the object that stands for it.

    Its frame has its origin at the heel end's bottom, x toward the bridge and z to the fretboard;
    ``frame`` and ``system`` as for a body. Its dimensions are those that the neck object states.
    Raises BadInput where the object cannot be it.
    """
    neck = _start(joint, "neck", solid, path)
    _set_frame(neck, system=system, frame=frame)
    return neck


def let_go(joint: Any, role: str) -> Any:
    """Build a joint's body, neck or plate from its values again; return the former solid, shown.

    What was measured stays as stated values.
    """
    obj = stands_for(joint, role)
    former = obj.Adopted
    obj.Adopted, obj.AdoptedPath, obj.MeasuredFrom = None, "", ""
    obj.Measured, obj.Remarks = [], []
    if role == "body":
        obj.PocketBehind, obj.NeckBeside, obj.CentrelineOf = None, None, None
        obj.HasPocket, obj.PocketRead = False, ""
        joint.Pocket.ReadFrom = None
    if former is not None:
        former.Visibility = True
    return former


def stands_for(joint: Any, role: str) -> Any:
    """The object of a joint that states a role's values. Raises BadInput for another role."""
    if role_of(joint) != "joint" or role not in ROLES:
        raise BadInput(f"A joint's body, neck or plate can be adopted, not its {role}.")
    return getattr(joint, next(name for name, r in LINKS.items() if r == role))


def remembered(
    shape: Any, solid: Any, *, top: str, floor: str, centreline: str, centreline_of: Any
) -> tuple[str, str, str]:
    """Top face, floor face and centreline as geometry, each empty where it is not named.

    ``shape``: of ``solid``, in its own coordinates. Raises BadInput where one is not there, or
    where a top face comes without a centreline.
    """
    from .adopt_frame import own_of

    if top and not centreline and centreline_of is None:
        raise BadInput("The centreline is not picked; pick an edge or a line along the middle.")
    line = ""
    if centreline:
        other = shape if centreline_of in (None, solid) else own_of(centreline_of)
        line = _remember(other, centreline)
    faces = [_remember(shape, name) if name else "" for name in (top, floor)]
    return faces[0], faces[1], line


def typed_frame(obj: Any) -> list[float]:
    """The frame as ``adopt_body`` takes it: X, Y, Z [mm], yaw, pitch, roll [degrees]."""
    base, turn = obj.Frame.Base, obj.Frame.Rotation.getYawPitchRoll()
    return [float(a) for a in (base.x, base.y, base.z, *turn)]


def _start(joint: Any, role: str, solid: Any, path: str) -> Any:
    obj = stands_for(joint, role)
    _refuse_own(joint, solid)
    obj.Adopted, obj.AdoptedPath = solid, path
    own_shape(obj)  # refuses what has no solid
    solid.Visibility = False
    return obj


def _refuse_own(joint: Any, solid: Any) -> None:
    if solid is None:
        raise BadInput("Nothing is picked to be adopted; pick a solid.")
    if role_of(solid):
        raise BadInput(f"{solid.Label} is NeckFit's own; adopt a solid of yours.")
    if joint in solid.OutListRecursive:
        raise BadInput(
            f"{solid.Label} holds the joint itself; pick the solid within it, or take the joint "
            "out of it."
        )


def _set_frame(
    obj: Any,
    *,
    system: Any = None,
    frame: Sequence[float] = (),
    picked: bool = False,
    otherwise: str = "placement",
) -> None:
    import FreeCAD

    obj.CoordinateSystem = system
    obj.FrameFrom = "coordinate system" if system is not None else otherwise
    if picked:
        obj.FrameFrom = "faces"
    elif len(frame) == 6:
        x, y, z, *turn = (float(a) for a in frame)
        obj.Frame = FreeCAD.Placement(FreeCAD.Vector(x, y, z), FreeCAD.Rotation(*turn))
        obj.FrameFrom = "placement"
    elif frame:
        raise BadInput(f"A frame is 6 numbers, X, Y, Z, yaw, pitch and roll, not {len(frame)}.")


def _remember(shape: Any, name: str) -> str:
    """A face or an edge by its name (of its path only the last word counts), as geometry."""
    from ..solids.recognise.signature import signature_of

    return str(signature_of(_element(shape, name)))


def _element(shape: Any, name: str) -> Any:
    last = name.rpartition(".")[2]
    kind = last.rstrip("0123456789")
    pieces = {"Face": shape.Faces, "Edge": shape.Edges}.get(kind, [])
    number = int(last[len(kind) :] or 0)
    if not 1 <= number <= len(pieces):
        raise BadInput(f"{name} is no face or edge of the solid; pick one.")
    return pieces[number - 1]
