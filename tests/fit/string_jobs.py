"""Jobs of many sorts for the tests of the strings, and seeded random ones."""

import numpy as np

SORTS = {
    "as usual": {},
    "tipped back": {"pocket.angle": 1.3, "pocket.depth": 18.288},
    "tipped forward": {"pocket.angle": -0.8},
    "wedge": {"shim.make": "wedge", "shim.wall": 0.6, "shim.mouth": 0.1},
    "strip": {"shim.make": "strip", "shim.strip": 0.7, "seat.end_gap": 0.2},
    "left-handed": {"strings.left_handed": True, "pocket.angle": 0.5},
    "zero fret": {"strings.zero_fret": True},
    "fanned": {"neck.scale": 635.0, "neck.scale_bass": 685.8, "neck.square_fret": 7.0,
               "neck.nut_to_heel": 468.0},
    "conical": {"neck.radius_nut": 254.0, "neck.radius_end": 406.4},
    "fall-away": {"neck.fall_away": 0.15, "neck.frets": 24},
    "carved": {"body.top": "carved", "pocket.angle": 1.0},
    "domed": {"body.top": "domed", "pocket.angle": 1.0},
    "on the plate": {"plate.cover": "surround", "bridge.mount": "plate"},
    "recess": {"bridge.mount": "recess", "bridge.recess": 3.0, "finish.wall": 0.1},
    "four strings": {"strings.count": 4, "neck.scale": 863.6, "neck.nut_to_heel": 620.0,
                     "neck.frets": 21, "neck.relief": 0.3},
    "five strings": {"strings.count": 5},
    "seven strings": {"strings.count": 7},
    "eight strings": {"strings.count": 8, "neck.scale": 660.4, "neck.scale_bass": 711.2,
                      "neck.square_fret": 8.5},
    "too deep": {"pocket.depth": 22.0},
    "too shallow": {"pocket.depth": 12.0},
    "fixed radius": {"bridge.make": "fixed radius", "bridge.saddle_radius": 254.0},
    "fixed radius, too deep": {"bridge.make": "fixed radius", "pocket.depth": 19.0,
                               "strings.left_handed": True},
    "fixed radius, tilted posts": {"bridge.make": "fixed radius", "strings.action_bass": 3.5,
                                   "bridge.high": 12.2},
    "floating": {"bridge.make": "floating", "bridge.low": 8.0, "bridge.high": 11.0},
    "floating, too high": {"bridge.make": "floating", "bridge.low": 8.0, "bridge.high": 11.0,
                           "pocket.depth": 11.0},
    "floating, little travel": {"bridge.make": "floating", "bridge.low": 8.5,
                                "bridge.high": 9.0},
}  # fmt: skip


def random_jobs(count, *, seed=7):
    """Seeded jobs that vary what a designer varies; every other one keeps the usual neck."""
    draw = np.random.default_rng(seed)
    for number in range(count):
        job = {
            "pocket.depth": draw.uniform(13, 20),
            "pocket.angle": draw.uniform(-1.5, 3),
            "bridge.low": draw.uniform(7, 10),
            "bridge.high": draw.uniform(11, 15),
            "seat.end_gap": draw.uniform(0, 0.3),
            "strings.left_handed": bool(draw.integers(2)),
            "bridge.make": str(draw.choice(["separate saddles", "fixed radius", "floating"])),
            "body.top": str(draw.choice(["flat", "domed", "carved"])),
        }
        if number % 2:
            job |= {
                "strings.count": int(draw.integers(4, 9)),
                "strings.zero_fret": bool(draw.integers(2)),
                "neck.scale_bass": draw.uniform(640, 700),
                "neck.square_fret": draw.uniform(0, 12),
                "neck.relief": draw.uniform(0, 0.5),
                "neck.radius_nut": draw.uniform(180, 400),
                "neck.fall_away": draw.uniform(0, 0.2),
                "strings.action_bass": draw.uniform(1, 3),
            }
        yield job
