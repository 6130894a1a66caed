"""A neck whose heel's sides lean: they are not found without a hand, and read with a doubt."""

import Part
from FreeCAD import Vector

LOW, HIGH = 0.6, 0.1
"""What is taken off each side at the heel's bottom and at the glue line [mm]."""


def drafted(file, target):
    """Write the neck of a file anew, in the neck frame, with its heel's sides leaning."""
    from freecad_neckfit.run.neck_file import read_neck_file
    from freecad_neckfit.run.neck_judged import recognise_for
    from freecad_neckfit.solids.build.shapes import moved

    read = recognise_for(read_neck_file(file), {})
    wood, *others = [moved(solid, read.found.frame) for solid in read.part.solids]
    half, up = read.found["neck.heel_width_end"] / 2, read.found["neck.glue_line"]
    start = -read.found["neck.heel_length"] - 1.0
    for sign in (1.0, -1.0):
        outline = [(half - LOW, -1.0), (half + 9.0, -1.0), (half + 9.0, up), (half - HIGH, up)]
        corners = [Vector(start, sign * y, z) for y, z in (*outline, outline[0])]
        wood = wood.cut(Part.Face(Part.makePolygon(corners)).extrude(Vector(-start + 30.0, 0, 0)))
    assert wood.isValid()
    Part.Compound([*wood.Solids, *others]).exportStep(str(target))
    return read
