"""Joints by brute force: plans as conditions on points, parts as clouds of points.

Nothing here knows the closed forms: corner arcs are found by solving for their centre, plans are
tested point by point, and the neck is moved by its own rotation.
"""

import math

import numpy as np


class Plan:
    """A pocket's or heel's plan, grown by ``grow``; ``inside`` says which points it holds."""

    def __init__(self, *, end, mouth, length, radius, round_end, grow=0.0):
        self.half, self.taper = end / 2, (end - mouth) / 2 / length
        self.radius, self.round, self.grow = radius, round_end, grow
        self.normal = np.array([-self.taper, 1.0]) / math.hypot(1.0, self.taper)
        if not round_end:
            # Centre of the arc: as far as its radius from the end line and from the side.
            sides = np.array([[1.0, 0.0], self.normal])
            reach = np.array([0.0, self.half * self.normal[1]])
            self.centre = np.linalg.solve(sides, reach - radius)

    def depth(self, x, y):
        """How deep points lie inside (negative outside), by looking at every direction."""
        y = np.abs(y)
        side = self.half * self.normal[1] - (x * self.normal[0] + y * self.normal[1])
        if self.round:
            arc = self.radius - np.hypot(x + self.radius, y)
            return np.minimum(side, arc) + self.grow
        flat = np.minimum(side, -x)
        dx, dy = x - self.centre[0], y - self.centre[1]
        past_arc_start = dy > 0
        past_arc_end = dx * self.normal[1] - dy * self.normal[0] > 0
        corner = self.radius - np.hypot(dx, dy)
        return np.where(past_arc_start & past_arc_end, corner, flat) + self.grow

    def edge(self, count=4001):
        """Points on the outline's half from the centreline to the far mouth: end, corner, side."""
        if self.round:
            low, high = 0.0, math.pi / 2 * 1.2
            for _ in range(60):  # bisect for the angle where the arc reaches the side's line
                middle = (low + high) / 2
                x, y = self.radius * (math.cos(middle) - 1), self.radius * math.sin(middle)
                low, high = (middle, high) if y < self.half + self.taper * x else (low, middle)
            angles = np.linspace(0.0, low, count)
            x, y = self.radius * (np.cos(angles) - 1), self.radius * np.sin(angles)
        else:
            lean = math.atan(self.taper)
            angles = np.linspace(0.0, math.pi / 2 + lean, count)
            x = self.centre[0] + self.radius * np.cos(angles)
            y = self.centre[1] + self.radius * np.sin(angles)
            x = np.concatenate([np.zeros(count), x])
            y = np.concatenate([np.linspace(0.0, self.centre[1], count), y])
        return x, y


def pocket(v, *, grow=0.0):
    shape = v["pocket.end_shape"] == "round"
    radius = v["pocket.end_radius"] if shape else v["pocket.corner_radius"]
    return Plan(end=v["pocket.width_end"], mouth=v["pocket.width_mouth"],
                length=v["pocket.length"], radius=radius, round_end=shape, grow=grow)  # fmt: skip


def heel(v):
    shape = v["neck.heel_end"] == "round"
    radius = v["neck.heel_radius"] if shape else v["neck.heel_corner_radius"]
    return Plan(end=v["neck.heel_width_end"], mouth=v["neck.heel_width_mouth"],
                length=v["pocket.length"], radius=radius, round_end=shape)  # fmt: skip


def moved(case, x, z):
    """Body-frame X and Z of neck points, by the seat's own 4 x 4 motion."""
    m = case.seat.matrix()
    return m[0, 3] + m[0, 0] * x + m[0, 2] * z, m[2, 3] + m[2, 0] * x + m[2, 2] * z


def top(v, x, y):
    if v["body.top"] == "flat":
        return np.zeros(np.broadcast(x, y).shape)
    if v["body.top"] == "carved":
        climb = math.tan(math.radians(v["body.carve_slope"]))
        bow = x**2 / v["body.carve_radius_along"] + y**2 / v["body.carve_radius_across"]
        return climb * x - bow / 2
    r, c = v["body.dome_radius"], v["body.dome_centre"]
    return np.sqrt(r**2 - (x - c) ** 2 - y**2) - math.sqrt(r**2 - c**2)


def board_points(case, *, x, across):
    """Fretboard points: x [neck], y from the centreline outward, the half width there."""
    v = case.values
    length = v["neck.nut_to_heel"] + v["neck.overhang"]
    slope = (v["neck.width_end"] - v["neck.width_nut"]) / 2 / length
    half = v["neck.width_end"] / 2 - (v["neck.overhang"] - x) * slope
    return half[:, None] * across[None, :], half


def low_room(case, *, before_wall, past_wall=False, binding=False, nx=1600, ny=900):
    """Least height of the fretboard's low faces over wood and plate, by a fine grid of points."""
    v = case.values
    end = v["neck.overhang"]
    far, near = np.linspace(-v["pocket.length"] - 1, -8, nx), np.linspace(-8, min(end, 3.0), nx)
    x = np.unique(np.concatenate([far, near, np.linspace(0, end, nx)]))
    x = x[x <= end]
    share = np.linspace(0.0, 1.0, ny) if not binding else np.linspace(0.8, 1.0, ny)
    y, half = board_points(case, x=x, across=share)
    drop = v["neck.binding"] if binding else 0.0
    best = np.inf
    for over in (False, True):
        if over and end == 0:
            continue
        use = (x >= 0) if over else (x <= 0)
        z = v["neck.underside"] - drop if over else v["neck.glue_line"]
        big_x, big_z = moved(case, x[use][:, None], z)
        yy = y[use]
        big_x, big_z = np.broadcast_to(big_x, yy.shape), np.broadcast_to(big_z, yy.shape)
        there = big_x >= -v["pocket.length"]
        if before_wall:
            there &= big_x < 0
        if past_wall:
            there &= (big_x >= 0) & over
        if binding:
            there &= yy >= half[use][:, None] - v["neck.binding_width"]
        else:
            there &= yy <= half[use][:, None] - v["neck.binding_width"]
        room = big_z - top(v, big_x, yy) - v["finish.top"]
        wood = there & (pocket(v).depth(big_x, yy) < 0)
        best = min(best, np.min(room[wood], initial=np.inf))
        if case.plate_under_overhang:
            plate = there & (pocket(v, grow=v["plate.clearance"]).depth(big_x, yy) < 0)
            best = min(best, np.min(room[plate], initial=np.inf) - v["plate.thickness"])
    return best
