"""Writes reference answers into src/test/resources/org/orbwright: sheet/segments.csv, sheet/bands.csv,
sheet/woods.csv and band/widths.csv.

Nothing here knows coordinates, or the closed forms of the service. Segments of all solids follow from the trigonometry
of one corner (solids.py). What is left of a band is summed ray by ray from the middle of its panel: along a ray the
sphere, the panel and the plan have elementary integrals, and over the rays mpmath sums them by tanh-sinh quadrature,
from one ray on which another boundary takes over to the next.

Usage: python3 answers.py DIRECTORY   (needs mpmath)
"""

import sys
from pathlib import Path

from mpmath import asin, atan, cos, degrees, mp, mpf, nstr, pi, quad, radians, sin, sqrt, tan

from solids import CATALAN, CORNERS, NAMES, Dual, Uniform

mp.dps = 30
PLATONIC_AND_ARCHIMEDEAN = list(CORNERS)
LOOKS = 240

# solid, millimetres across flats, diameter of the sphere, land, band angle, widths but for the last band: all invented
DESIGNS = [
    ("dodecahedron", 200, 196, 0, 0, (14, 9)),
    ("icosahedron", 180, 176, 0, 30, (22, 14)),
    ("cube", 150, 140, 0, 45, (40, 30)),
    ("octahedron", 170, 150, 0, 0, (25, 12)),
    ("truncated-icosahedron", 240, 236, 2, 0, (10, 6)),
    ("cuboctahedron", 160, 150, 0, -25, (20, 12)),
    ("snub-cube", 210, 200, 1, 90, (9, 6)),
    ("rhombic-triacontahedron", 220, 216, 0, 0, (9, 5)),
    ("rhombic-dodecahedron", 190, 180, 0, 35, (13, 7)),
    ("deltoidal-hexecontahedron", 230, 224, 0, 0, (5, 4)),
    ("pentagonal-icositetrahedron", 200, 190, 1, 15, (8, 5)),
    ("disdyakis-dodecahedron", 260, 250, 0, 0, (6, 5)),
]


# solid, millimetres across flats, diameter of the sphere, share of its surface that a rim of one wood takes up
WISHES = [
    ("tetrahedron", 150, 146, mpf("0.5")),
    ("cube", 180, 170, mpf("0.3")),
    ("dodecahedron", 220, 214, mpf("0.25")),
    ("icosahedron", 190, 190, mpf("0.6")),
    ("rhombic-triacontahedron", 240, 230, mpf("0.4")),
]


class Segment:
    """A kind of segment at unit edge: base distance, the two parts of the base, face distance, how many in a solid."""

    def __init__(self, face, a, left, right, height, count):
        self.face, self.a, self.left, self.right, self.height, self.count = face, a, left, right, height, count

    def scaled(self, k):
        return Segment(self.face, k * self.a, k * self.left, k * self.right, k * self.height, self.count)

    def turned(self):
        return Segment(self.face, self.a, self.right, self.left, self.height, self.count)


def segments(solid):
    """Those of a solid, the shorter part of the base on the left."""
    if solid not in CATALAN:
        u = Uniform(solid)
        return [
            Segment(NAMES[n], 1 / (2 * tan(pi / n)), mpf(1) / 2, mpf(1) / 2, u.distance(n), n * count)
            for n, count in u.face_counts.items()
        ]
    primal = Uniform(CATALAN[solid][0])
    rho = primal.midradius
    height = rho**2 / primal.circumradius
    tangents = {n: rho / (2 * tan(pi / n) * primal.distance(n)) for n in primal.around}
    found = {}
    for i, n in enumerate(primal.around):
        m = primal.around[(i + 1) % len(primal.around)]
        parts = tuple(sorted((tangents[n], tangents[m])))
        found[parts] = found.get(parts, 0) + primal.corners
    base = sqrt(rho**2 - height**2)
    return [Segment("", base, left, right, height, count) for (left, right), count in sorted(found.items())]


def across_flats(solid, flats, land=0):
    found = segments(solid)
    k = (mpf(flats) / 2 - land) / min(s.height for s in found)
    return [s.scaled(k) for s in found]


class Band:
    """What lies between two lines, low <= x cos d + y sin d <= high, of a segment with its seam under a sphere."""

    def __init__(self, segment, radius, angle, low, high):
        self.s, self.radius, self.angle, self.low, self.high = segment, radius, angle, low, high
        self.first, self.last = -atan(segment.left / segment.a), atan(segment.right / segment.a)

    def seam(self, ray):
        """Distance from the panel's axis at which the sphere ends along a ray."""
        slope = self.s.height * cos(ray) / self.s.a
        return self.radius / sqrt(1 + slope**2)

    def outline(self, ray):
        return self.s.a / cos(ray)

    def limits(self, ray, end):
        """Where the band begins and ends along a ray, and which boundaries those are."""
        along = cos(ray - self.angle)
        lines = [self.low / along, self.high / along] if along else [mpf("-inf"), mpf("inf")]
        low, high = min(lines), max(lines)
        if high <= 0 or low >= end:
            return mpf(0), mpf(0), "none"
        return max(mpf(0), low), min(end, high), (low > 0, high < end, along > 0)

    def stops(self, end, inner=None):
        """Rays on which another boundary takes over, that of the hollow too if there is one."""

        def kind(ray):
            low, high, which = self.limits(ray, end(ray))
            edge = inner * self.s.a / (self.s.height * cos(ray)) if inner else 0
            return which, inner and (low < edge, high < edge)

        at = [self.first + (self.last - self.first) * i / LOOKS for i in range(LOOKS + 1)]
        found = [self.first]
        for one, other in zip(at, at[1:]):
            before = kind(one)
            if before != kind(other):
                low, high = one, other
                for _ in range(110):
                    middle = (low + high) / 2
                    if kind(middle) == before:
                        low = middle
                    else:
                        high = middle
                found.append(high)
        return found + [self.last]

    def sum(self, end, part):
        def ray(phi):
            low, high, _ = self.limits(phi, end(phi))
            return part(high) - part(low)

        return self.add(ray, self.stops(end))

    @staticmethod
    def add(ray, stops):
        return sum(quad(ray, [one, (one + other) / 2, other]) for one, other in zip(stops, stops[1:]))

    def sphere(self):
        return self.sum(self.seam, lambda r: self.radius * (self.radius - sqrt(max(0, self.radius**2 - r * r))))

    def plan(self):
        return self.sum(self.seam, lambda r: r * r / 2)

    def flat(self):
        return self.sum(self.outline, lambda r: r * r / 2)

    def wood(self, inner):
        """Volume over the hollow, which ends at a height, and over the seam, under the sphere."""

        def ray(phi):
            low, high, _ = self.limits(phi, self.seam(phi))
            slope = self.s.height * cos(phi) / self.s.a
            edge = inner / slope

            def below(r):
                near = min(r, edge)
                return inner * near**2 / 2 + slope * (r**3 - near**3) / 3

            over = [-sqrt(max(0, self.radius**2 - r * r)) ** 3 / 3 - below(r) for r in (low, high)]
            return over[1] - over[0]

        return self.add(ray, self.stops(self.seam, inner))

    def width(self, ray):
        """Of the band's width, measured along the sphere square to it, what is crossed on the way along a ray."""
        end = self.seam(ray) * cos(ray - self.angle)
        low, high = max(min(0, end), self.low), min(max(0, end), self.high)
        return self.radius * (asin(high / self.radius) - asin(low / self.radius)) if high > low else mpf(0)


def bands(segment, radius, angle, widths):
    """From the base to the tip, without the width of the last, which takes the rest."""
    c, s = cos(angle), sin(angle)
    offset = max(mpf(0), segment.a * c - segment.left * s, segment.a * c + segment.right * s)
    beyond = 4 * (segment.a + segment.left + segment.right)
    for i in range(len(widths) + 1):
        high = beyond if i == 0 else offset
        low = -beyond if i == len(widths) else offset - widths[i]
        yield Band(segment, radius, angle, low, high)
        offset = low


def text(number):
    return str(number) if isinstance(number, (int, str)) else nstr(number, 18, strip_zeros=False)


def write(path, comment, header, rows):
    lines = ["# " + line for line in comment] + [",".join(header.split())]
    path.write_text("\n".join(lines + [",".join(text(cell) for cell in row) for row in rows]) + "\n")


def segment_rows():
    for solid in PLATONIC_AND_ARCHIMEDEAN + list(CATALAN):
        for s in across_flats(solid, 200):
            bevel = degrees(atan(s.height / s.a))
            mitres = (degrees(atan(s.left / s.a)), degrees(atan(s.right / s.a)))
            yield (solid, s.face, s.count, s.a, s.left, s.right, s.height, bevel, *mitres)


def sets(segment, degree, widths):
    """Widths but the last and numbers of the bands from the base to the tip, of every set that there is."""
    yield "UPRIGHT", widths, range(1, len(widths) + 2)
    if degree == 0:
        turned = (segment.a - sum(widths), *reversed(widths))
        yield "INVERTED", turned[:-1], range(len(widths) + 1, 0, -1)


def band_rows():
    for solid, flats, diameter, land, degree, widths in DESIGNS:
        for s in across_flats(solid, flats, land):
            for hand in [s] if degree == 0 or s.left == s.right else [s, s.turned()]:
                for name, order, numbers in sets(hand, degree, widths):
                    found = bands(hand, mpf(diameter) / 2, radians(mpf(degree)), order)
                    for number, band in zip(numbers, found):
                        flat, plan = band.flat(), band.plan()
                        seen = (band.width(mpf(0)), band.width(band.first), band.width(band.last))
                        design = (solid, flats, diameter, land, degree, *widths)
                        size = (s.face, hand.left, hand.right, name, number)
                        yield (*design, *size, flat, band.sphere(), plan / flat, *seen)


def wood_rows():
    """Panels a millimetre or two thicker than a wall of 5 mm needs; the volume of each band in a whole sphere."""
    for solid, flats, diameter, land, degree, widths in DESIGNS:
        found = across_flats(solid, flats, land)
        radius = mpf(diameter) / 2
        corners = [(s, sqrt(s.a**2 + s.height**2 + max(s.left, s.right) ** 2)) for s in found]
        needed = max(s.height + land - (radius - 5) * s.height / corner for s, corner in corners)
        thickness = int(needed) + 2
        woods = [mpf(0)] * (len(widths) + 1)
        for s in found:
            hands = [s] if degree == 0 or s.left == s.right else [s, s.turned()]
            for hand in hands:
                for i, band in enumerate(bands(hand, radius, radians(mpf(degree)), widths)):
                    inner = s.height + land - thickness
                    woods[i] += mpf(s.count) / len(hands) * band.wood(inner)
        yield (solid, flats, diameter, land, degree, *widths, thickness, *woods)


def width_rows():
    """Bisection: the width of a rim that takes up a share of the sphere, of solids with one kind of segment."""
    for solid, flats, diameter, share in WISHES:
        (s,) = across_flats(solid, flats)
        radius = mpf(diameter) / 2
        wanted = share * 4 * pi * radius**2 / s.count
        low, high = mpf(0), s.a
        for _ in range(70):
            middle = (low + high) / 2
            rim = next(bands(s, radius, mpf(0), (middle, s.a)))
            if rim.sphere() < wanted:
                low = middle
            else:
                high = middle
        yield (solid, flats, diameter, nstr(share, 4), low)


if __name__ == "__main__":
    target = Path(sys.argv[1])
    write(
        target / "sheet/segments.csv",
        [
            "The segments of all solids, 200 mm across flats: lengths in millimetres, angles in degrees, counts in one",
            "solid. By mpmath from the trigonometry of one corner and, for Catalan solids, polar reciprocation.",
            "Written by src/test/python/answers.py. The shorter part of the base is on the left; Catalan solids have",
            "one face kind, which is not named.",
        ],
        "solid face count baseDistance baseLeft baseRight faceDistance bevel mitreLeft mitreRight",
        segment_rows(),
    )
    write(
        target / "sheet/bands.csv",
        [
            "What is left of the bands of invented designs: millimetres, square millimetres, degrees. By mpmath, 30",
            "digits: tanh-sinh quadrature over the rays from a panel's middle. Written by src/test/python/answers.py.",
            "Survival is the share of the flat band that remains, seen square to the panel. Widths are those crossed",
            "on the way from the panel's middle to the middle of the edge and to the left and the right corner.",
        ],
        "solid flats diameter land bandAngle width1 width2 face baseLeft baseRight set band flatArea sphereArea"
        " survival edgeMiddle leftCorner rightCorner",
        band_rows(),
    )
    write(
        target / "sheet/woods.csv",
        [
            "The wood of three bands in one finished sphere: cubic millimetres. By mpmath, 30 digits: tanh-sinh",
            "quadrature over the rays from a panel's middle. Written by src/test/python/answers.py. The designs are",
            "invented.",
        ],
        "solid flats diameter land bandAngle width1 width2 thickness wood1 wood2 wood3",
        wood_rows(),
    )
    write(
        target / "band/widths.csv",
        [
            "How wide a rim has to be to take up a share of the sphere: millimetres. By mpmath, 30 digits: bisection",
            "over tanh-sinh quadrature. Written by src/test/python/answers.py. The designs are invented.",
        ],
        "solid flats diameter share width",
        width_rows(),
    )
