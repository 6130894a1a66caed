"""What the measures of a recognised neck are called, how they are grouped, what they stem from."""

from __future__ import annotations

from ..translate import tr

TOP, BOTTOM, SIDES = "fretboard top", "heel bottom", "heel sides"
END, UNDER, BINDING = "heel end", "underside", "binding"
ITEM_OF = {
    "heel bottom": BOTTOM,
    "fretboard top": TOP,
    "neck.heel_length": BOTTOM,
    "neck.heel_width_end": SIDES,
    "neck.heel_width_mouth": SIDES,
    "neck.heel_end": END,
    "neck.heel_radius": END,
    "neck.heel_corner_radius": END,
    "neck.heel_edge": BOTTOM,
    "neck.height": TOP,
    "neck.width_nut": TOP,
    "neck.width_end": TOP,
    "neck.radius_nut": TOP,
    "neck.radius_end": TOP,
    "neck.overhang": UNDER,
    "neck.underside": UNDER,
    "neck.binding": BINDING,
    "neck.binding_width": BINDING,
    "neck.rod_width": "rod",
    "neck.rod_depth": "rod",
    "neck.rod_end": "rod",
    "neck.rod": "rod",
    "neck.rod_tool_height": "rod",
}
"""Measure to the item whose faces tell it; others are told by many faces, or by none."""


def item_names() -> dict[str, str]:
    """The items whose faces can be picked by hand."""
    return {
        BOTTOM: tr("Heel bottom"),
        SIDES: tr("Heel sides"),
        END: tr("Heel end"),
        TOP: tr("Fretboard top, centreline"),
        UNDER: tr("Overhang's underside"),
    }


def groups() -> dict[str, dict[str, str]]:
    """Heading to the measures under it, by key, in the order shown."""
    return {
        tr("Heel"): {
            "neck.heel_length": tr("Flat length"),
            "neck.heel_width_end": tr("Width at its end"),
            "neck.heel_width_mouth": tr("Width at the mouth"),
            "neck.heel_end": tr("Shape of its end"),
            "neck.heel_radius": tr("Radius of its end"),
            "neck.heel_corner_radius": tr("Corner radius"),
            "neck.heel_edge": tr("Chamfer below"),
            "heel bottom": tr("Flatness below"),
        },
        tr("Overhang"): {
            "neck.overhang": tr("Overhang"),
            "neck.underside": tr("Underside's height"),
            "neck.binding": tr("Binding hangs by"),
            "neck.binding_width": tr("Binding's width"),
        },
        tr("Fretboard"): {
            "neck.height": tr("Height over heel bottom"),
            "neck.glue_line": tr("Glue line's height"),
            "neck.make": tr("Make"),
            "neck.width_nut": tr("Width at the nut"),
            "neck.width_end": tr("Width at its end"),
            "neck.radius_nut": tr("Radius at the nut"),
            "neck.radius_end": tr("Radius at its end"),
            "fretboard top": tr("Shape of the top"),
        },
        tr("Frets and scale"): {
            "neck.nut_to_heel": tr("Nut to heel end"),
            "neck.frets": tr("Frets"),
            "neck.scale": tr("Scale length"),
            "neck.scale_bass": tr("Scale, bass side"),
            "neck.square_fret": tr("Square fret"),
            "neck.end_margin": tr("Last fret to end"),
            "neck.fret_height": tr("Crown height"),
            "neck.fret_width": tr("Crown width"),
            "strings.left_handed": tr("Left-handed"),
        },
        tr("Truss rod"): {
            "neck.rod": tr("Adjusted at"),
            "neck.rod_width": tr("Channel's width"),
            "neck.rod_depth": tr("Channel's bottom"),
            "neck.rod_end": tr("Channel's end to heel end"),
            "neck.rod_tool_height": tr("Tool's height"),
        },
    }


def name_of(key: str) -> str:
    """What a key is called, with its heading; the key itself for what has no name here."""
    for heading, names in groups().items():
        if key in names:
            return f"{heading}: {names[key]}"
    return (item_names() | {"file": tr("The file")}).get(key.removeprefix("item "), key)
