"""A second, slow and plain way to every figure of the strings: one job, point by point.

Shares nothing with the package but the names and defaults of the parameters.
"""

# ruff: noqa: B019 - the points of a job live as long as its test

import math
from functools import cache

from freecad_neckfit.job.resolve import complete

SEMITONE = math.exp(math.log(2) / 12)


class Points:
    """One instrument, its points worked out one at a time."""

    def __init__(self, stated):
        self.v = complete(stated)
        self.count = int(self.v["strings.count"])
        self.last = int(self.v["neck.frets"])
        self.seat()

    def seat(self):
        v = self.v
        theta, s, extra = math.radians(v["pocket.angle"]), 0.0, 0.0
        if v["shim.make"] == "wedge":
            s = v["shim.wall"]
            extra = math.atan2(v["shim.wall"] - v["shim.mouth"], v["pocket.length"])
        elif v["shim.make"] == "strip":
            free = v["pocket.length"] - v["shim.strip_edge"]
            s, extra = (
                v["shim.strip"] * v["pocket.length"] / free,
                math.atan2(v["shim.strip"], free),
            )
        self.tilt = theta + extra
        gap = v["seat.end_gap"] + v["finish.wall"]
        if self.tilt < 0:
            gap += v["pocket.depth"] * math.tan(-self.tilt)
        self.heel = (
            -gap,
            -v["pocket.depth"] - gap * math.tan(theta) + (v["finish.floor"] + s) / math.cos(theta),
        )

    def body(self, u, z):
        x = u - self.v["neck.nut_to_heel"]
        c, s = math.cos(self.tilt), math.sin(self.tilt)
        return self.heel[0] + c * x - s * z, self.heel[1] + s * x + c * z

    def top(self, x, y):
        v = self.v
        if v["body.top"] == "flat":
            return v["finish.top"]
        if v["body.top"] == "domed":
            r, m = v["body.dome_radius"], v["body.dome_centre"]
            height = math.sqrt(r * r - (x - m) ** 2 - y * y) - math.sqrt(r * r - m * m)
        else:
            along, across = v["body.carve_radius_along"], v["body.carve_radius_across"]
            height = x * math.tan(math.radians(v["body.carve_slope"]))
            height -= x * x / 2 / along + y * y / 2 / across
        return height + v["finish.top"]

    # --- neck frame -------------------------------------------------------------------------
    def share(self, i):
        return i / (self.count - 1)

    def mix(self, i, treble, bass):
        return treble * (1 - self.share(i)) + bass * self.share(i)

    def scale(self, i=None):
        treble, bass = self.v["neck.scale"], self.v["neck.scale_bass"]
        return (treble + bass) / 2 if i is None else self.mix(i, treble, bass)

    def u(self, n, i=None):
        """Fret n on string i (None: centreline): counted from the square fret both ways."""
        p = self.v["neck.square_fret"]
        square_at = self.scale() - self.scale() / SEMITONE**p
        bridge_at = square_at + self.scale(i) / SEMITONE**p
        return bridge_at - self.scale(i) / SEMITONE**n

    def saddle_u(self, i):
        return self.u(0, i) + self.scale(i) + self.v["strings.compensation"][i]

    def y(self, i, u):
        side = -1 if self.v["strings.left_handed"] else 1
        at_nut = side * (0.5 - self.share(i)) * self.v["strings.spread_nut"]
        at_bridge = side * (0.5 - self.share(i)) * self.v["strings.spread_bridge"]
        t = (u - self.u(0, i)) / (self.saddle_u(i) - self.u(0, i))
        return at_nut * (1 - t) + at_bridge * t

    def curve(self, u):
        return max(self.v["neck.nut_to_heel"] - self.v["pocket.length"] - u, 0.0) ** 2

    def bow(self, u):
        """Relief curve scaled so that its largest depth under the chord, searched for, is r."""
        return self.v["neck.relief"] * self.curve(u) / self.deepest()

    @cache
    def deepest(self):
        a, b = self.u(1), self.u(self.last)

        def depth(at):
            t = (at - a) / (b - a)
            return self.curve(a) * (1 - t) + self.curve(b) * t - self.curve(at)

        low, high = a, b
        for _ in range(200):
            one, two = low + (high - low) / 3, high - (high - low) / 3
            if depth(one) < depth(two):
                low = one
            else:
                high = two
        return depth((low + high) / 2)

    @cache
    def crown(self, n, i):
        u = self.u(n, i)
        end = self.v["neck.nut_to_heel"] + self.v["neck.overhang"]
        radius = self.v["neck.radius_nut"] * (1 - u / end) + self.v["neck.radius_end"] * u / end
        below = radius - math.sqrt(radius**2 - self.y(i, u) ** 2)
        fall = 0.0
        if n > 12:
            fall = self.v["neck.fall_away"] * (self.u(n, i) - self.u(12, i))
            fall /= self.u(self.last, i) - self.u(12, i)
        crest = self.v["neck.height"] + self.v["neck.fret_height"]
        return crest - below + self.bow(self.u(n)) - fall

    @cache
    def two_points(self, i):
        v = self.v
        if v["strings.zero_fret"]:
            first = self.u(0, i), self.crown(0, i)
        else:
            nut = self.mix(i, v["strings.nut_treble"], v["strings.nut_bass"])
            first = self.u(1, i), self.crown(1, i) + nut
        action = self.mix(i, v["strings.action_treble"], v["strings.action_bass"])
        return first, (self.u(12, i), self.crown(12, i) + action)

    def open_z(self, i, u):
        return on_line(*self.two_points(i), u)

    # --- body frame -------------------------------------------------------------------------
    @cache
    def saddle(self, i):
        u = self.saddle_u(i)
        return self.body(u, self.open_z(i, u))

    def mount(self, x, y):
        v = self.v
        more = {
            "top": 0.0,
            "plate": v["plate.thickness"] if v["plate.cover"] != "none" else 0.0,
            "recess": -v["bridge.recess"],
        }
        return self.top(x, y) + more[v["bridge.mount"]]

    @cache
    def above(self):
        found = []
        for i in range(self.count):
            x, z = self.saddle(i)
            found.append(z - self.mount(x, self.y(i, self.saddle_u(i))))
        return found

    @cache
    def radius_bridge(self):
        """(height, slope) so that height + slope·y + circle passes through the outer strings."""
        ends = []
        for i in (0, self.count - 1):
            y = self.y(i, self.saddle_u(i))
            ends.append((y, self.saddle(i)[1] - self.circle(y)))
        (ya, za), (yb, zb) = ends
        slope = (zb - za) / (yb - ya)
        return za - slope * ya, slope

    def circle(self, y):
        return math.sqrt(self.v["bridge.saddle_radius"] ** 2 - y * y)

    @cache
    def posts(self):
        height, slope = self.radius_bridge()
        outer = self.circle(self.v["strings.spread_bridge"] / 2)
        found = []
        for i in (0, self.count - 1):
            side = math.copysign(1, self.y(i, self.saddle_u(i)))
            y = side * self.v["bridge.post_spacing"] / 2
            found.append((y, height + slope * y + outer - self.mount(self.saddle(i)[0], y)))
        return found

    def residual(self, i):
        height, slope = self.radius_bridge()
        y = self.y(i, self.saddle_u(i))
        return self.saddle(i)[1] - (height + slope * y + self.circle(y))

    @cache
    def base(self):
        """Highest base at which no saddle would have to go below its lowest."""
        v = self.v
        return min(
            v["bridge.base_high"], max(v["bridge.base_low"], min(self.above()) - v["bridge.low"])
        )

    def margins(self):
        low, high = self.v["bridge.low"], self.v["bridge.high"]
        if self.v["bridge.make"] == "fixed radius":
            heights = [z for _, z in self.posts()]
            return min(heights) - low, high - max(heights)
        if self.v["bridge.make"] == "floating":
            return (
                min(self.above()) - low - self.v["bridge.base_low"],
                high + self.base() - max(self.above()),
            )
        return min(self.above()) - low, high - max(self.above())

    def lifted(self, i):
        """How far along Z the string ends up over where it should be."""
        low, high = self.v["bridge.low"], self.v["bridge.high"]
        if self.v["bridge.make"] == "fixed radius":
            (ya, za), (yb, zb) = self.posts()
            da, db = (min(max(z, low), high) - z for z in (za, zb))
            y = self.y(i, self.saddle_u(i))
            return on_line((ya, da), (yb, db), y) - self.residual(i)
        base = self.base() if self.v["bridge.make"] == "floating" else 0.0
        above = self.above()[i]
        return min(max(above, low + base), high + base) - above

    @cache
    def real_saddle_z(self, i):
        """Neck-frame height at u of the saddle whose Z is where the bridge carries the string."""
        u = self.saddle_u(i)
        want = self.saddle(i)[1] + self.lifted(i)
        x = u - self.v["neck.nut_to_heel"]
        return (want - self.heel[1] - x * math.sin(self.tilt)) / math.cos(self.tilt)

    def open_rooms(self):
        rooms = []
        for i in range(self.count):
            nut = self.u(0, i), self.open_z(i, self.u(0, i))
            end = self.saddle_u(i), self.real_saddle_z(i)
            rooms += [
                on_line(nut, end, self.u(n, i)) - self.crown(n, i) for n in range(1, self.last + 1)
            ]
        return rooms

    def fretted_rooms(self):
        rooms = []
        for i in range(self.count):
            end = self.saddle_u(i), self.real_saddle_z(i)
            crowns = {n: (self.u(n, i), self.crown(n, i)) for n in range(1, self.last + 1)}
            for n in range(1, self.last):
                rooms += [
                    on_line(crowns[n], end, crowns[m][0]) - crowns[m][1]
                    for m in range(n + 1, self.last + 1)
                ]
        return rooms

    def break_angles(self):
        found = []
        for i in range(self.count):
            x, z = self.saddle(i)
            fx, fz = self.body(self.u(1, i), self.open_z(i, self.u(1, i)))
            mount = self.mount(x, self.y(i, self.saddle_u(i)))
            down = z - (mount + self.v["bridge.anchor_height"])
            before = math.atan2(z - fz, x - fx)
            found.append(math.degrees(before + math.atan2(down, self.v["bridge.anchor_back"])))
        return found

    @cache
    def last_line(self, i):
        """End points (X, Z) of string i fretted at the last fret, and their Y."""
        u = self.u(self.last, i)
        return self.body(u, self.crown(self.last, i)), self.saddle(i), self.y(i, u)

    def fretted_at(self, i, x):
        """(Y, Z) at X of string i fretted at the last fret."""
        (xa, za), (xb, zb), ya = self.last_line(i)
        yb = self.y(i, self.saddle_u(i))
        return on_line((xa, ya), (xb, yb), x), on_line((xa, za), (xb, zb), x)

    @cache
    def board_end(self):
        u = self.v["neck.nut_to_heel"] + self.v["neck.overhang"]
        low, high = self.v["neck.underside"], self.v["neck.height"]
        steps = 50
        return max(self.body(u, low + (high - low) * k / steps)[0] for k in range(steps + 1))


def on_line(a, b, at):
    """Second coordinate at ``at`` of the straight line through two points."""
    t = (at - a[0]) / (b[0] - a[0])
    return a[1] * (1 - t) + b[1] * t
