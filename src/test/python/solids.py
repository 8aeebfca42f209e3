"""Writes the reference tables of the solids into src/test/resources/org/orbwright/solid.

Nothing here knows coordinates. A uniform solid of edge 1 follows from its corner alone: the neighbours of a corner lie
on a circle of radius s, on which the diagonals 2 cos(180/n) of the faces around it are chords, so that
sum(asin(cos(180/n) / s)) = 180 degrees; circumradius, midradius, face distances and dihedral angles follow from s.
The Catalan solids are the polar reciprocals in the midsphere. Every result is held against the closed forms that the
literature gives, written down from memory: H. S. M. Coxeter, Regular Polytopes, 3rd edition 1973, Table I; H. M.
Cundy and A. P. Rollett, Mathematical Models, 2nd edition 1961; R. Williams, The Geometrical Foundation of Natural
Structure, 1979. What was read in publications stands in SolidsAgainstPublishedValuesTest.

Usage: python3 solids.py DIRECTORY   (needs mpmath)
"""

import sys
from pathlib import Path

from mpmath import acos, asin, cos, degrees, findroot, fabs, mp, mpf, nstr, pi, sin, sqrt, tan

mp.dps = 40
R2, R5 = sqrt(2), sqrt(5)
PHI = (1 + R5) / 2
TRIBONACCI = findroot(lambda t: t**3 - t**2 - t - 1, 1.84)
SNUB_CUBE_VOLUME = sqrt((613 * TRIBONACCI + 203) / (9 * (35 * TRIBONACCI - 62)))
NAMES = {3: "triangle", 4: "square", 5: "pentagon", 6: "hexagon", 8: "octagon", 10: "decagon"}

# faces around a corner, corners
CORNERS = {
    "tetrahedron": ((3, 3, 3), 4),
    "cube": ((4, 4, 4), 8),
    "octahedron": ((3, 3, 3, 3), 6),
    "dodecahedron": ((5, 5, 5), 20),
    "icosahedron": ((3, 3, 3, 3, 3), 12),
    "truncated-tetrahedron": ((3, 6, 6), 12),
    "cuboctahedron": ((3, 4, 3, 4), 12),
    "truncated-cube": ((3, 8, 8), 24),
    "truncated-octahedron": ((4, 6, 6), 24),
    "rhombicuboctahedron": ((3, 4, 4, 4), 24),
    "truncated-cuboctahedron": ((4, 6, 8), 48),
    "snub-cube": ((3, 3, 3, 3, 4), 24),
    "icosidodecahedron": ((3, 5, 3, 5), 30),
    "truncated-dodecahedron": ((3, 10, 10), 60),
    "truncated-icosahedron": ((5, 6, 6), 60),
    "rhombicosidodecahedron": ((3, 4, 5, 4), 60),
    "truncated-icosidodecahedron": ((4, 6, 10), 120),
    "snub-dodecahedron": ((3, 3, 3, 3, 5), 60),
}

# dihedral angle, inradius, midradius, circumradius for edge 1: Coxeter (1973), Table I, from memory
PLATONIC = {
    "tetrahedron": (acos(mpf(1) / 3), 1 / sqrt(24), 1 / sqrt(8), sqrt(mpf(3) / 8)),
    "cube": (pi / 2, mpf(1) / 2, 1 / R2, sqrt(3) / 2),
    "octahedron": (acos(-mpf(1) / 3), 1 / sqrt(6), mpf(1) / 2, 1 / R2),
    "dodecahedron": (acos(-1 / R5), sqrt((25 + 11 * R5) / 40), PHI**2 / 2, sqrt(3) * PHI / 2),
    "icosahedron": (acos(-R5 / 3), PHI**2 / (2 * sqrt(3)), PHI / 2, sqrt(PHI * R5) / 2),
}

# circumradius and volume for edge 1, one dihedral angle in degrees: Cundy and Rollett (1961), Williams (1979),
# from memory
ARCHIMEDEAN = {
    "truncated-tetrahedron": (sqrt(22) / 4, 23 * R2 / 12, (3, 6, 109.47)),
    "cuboctahedron": (mpf(1), 5 * R2 / 3, (3, 4, 125.26)),
    "truncated-cube": (sqrt(7 + 4 * R2) / 2, (21 + 14 * R2) / 3, (3, 8, 125.26)),
    "truncated-octahedron": (sqrt(10) / 2, 8 * R2, (4, 6, 125.26)),
    "rhombicuboctahedron": (sqrt(5 + 2 * R2) / 2, (12 + 10 * R2) / 3, (3, 4, 144.74)),
    "truncated-cuboctahedron": (sqrt(13 + 6 * R2) / 2, 22 + 14 * R2, (4, 6, 144.74)),
    "snub-cube": (sqrt((3 - TRIBONACCI) / (4 * (2 - TRIBONACCI))), SNUB_CUBE_VOLUME, (3, 4, 142.98)),
    "icosidodecahedron": (PHI, (45 + 17 * R5) / 6, (3, 5, 142.62)),
    "truncated-dodecahedron": (sqrt(74 + 30 * R5) / 4, 5 * (99 + 47 * R5) / 12, (3, 10, 142.62)),
    "truncated-icosahedron": (sqrt(58 + 18 * R5) / 4, (125 + 43 * R5) / 4, (6, 6, 138.19)),
    "rhombicosidodecahedron": (sqrt(11 + 4 * R5) / 2, (60 + 29 * R5) / 3, (3, 4, 159.09)),
    "truncated-icosidodecahedron": (sqrt(31 + 12 * R5) / 2, 95 + 50 * R5, (4, 6, 159.09)),
    "snub-dodecahedron": (mpf("2.1558373"), mpf("37.61665"), (3, 3, 164.18)),
}

# name and dual, dihedral angle, longest to shortest edge: Cundy and Rollett (1961), Williams (1979), from memory
CATALAN = {
    "triakis-tetrahedron": ("truncated-tetrahedron", acos(-mpf(7) / 11), mpf(5) / 3),
    "rhombic-dodecahedron": ("cuboctahedron", 2 * pi / 3, mpf(1)),
    "triakis-octahedron": ("truncated-cube", acos(-(3 + 8 * R2) / 17), 1 + R2 / 2),
    "tetrakis-hexahedron": ("truncated-octahedron", acos(-mpf(4) / 5), mpf(4) / 3),
    "deltoidal-icositetrahedron": ("rhombicuboctahedron", acos(-(7 + 4 * R2) / 17), 2 - 1 / R2),
    "disdyakis-dodecahedron": ("truncated-cuboctahedron", acos(-(71 + 12 * R2) / 97), None),
    "pentagonal-icositetrahedron": ("snub-cube", mpf("136.3092") * pi / 180, (TRIBONACCI + 1) / 2),
    "rhombic-triacontahedron": ("icosidodecahedron", 4 * pi / 5, mpf(1)),
    "triakis-icosahedron": ("truncated-dodecahedron", acos(-(24 + 15 * R5) / 61), 22 / (15 - R5)),
    "pentakis-dodecahedron": ("truncated-icosahedron", acos(-(80 + 9 * R5) / 109), (9 - R5) / 6),
    "deltoidal-hexecontahedron": ("rhombicosidodecahedron", acos(-(19 + 8 * R5) / 41), (7 + R5) / 6),
    "disdyakis-triacontahedron": ("truncated-icosidodecahedron", acos(-(179 + 24 * R5) / 241), None),
    "pentagonal-hexecontahedron": ("snub-dodecahedron", mpf("153.1787") * pi / 180, mpf("1.74985")),
}


class Uniform:
    """A uniform solid of edge 1, from its corner."""

    def __init__(self, name):
        self.around, self.corners = CORNERS[name]
        chords = [cos(pi / n) for n in self.around]
        low, high = max(chords), mpf(1)
        for _ in range(140):
            middle = (low + high) / 2
            if sum(asin(c / middle) for c in chords) > pi:
                low = middle
            else:
                high = middle
        self.circumradius = 1 / (2 * sqrt(1 - low**2))
        self.midradius = sqrt(self.circumradius**2 - mpf(1) / 4)
        self.edges = self.corners * len(self.around) // 2
        self.face_counts = {n: self.corners * self.around.count(n) // n for n in sorted(set(self.around))}
        self.faces = sum(self.face_counts.values())

    def distance(self, n):
        return sqrt(self.circumradius**2 - 1 / (4 * sin(pi / n) ** 2))

    def dihedral(self, n, m):
        """Spherical cosine rule in the two right triangles corner, edge, face centre, added."""
        return sum(acos(1 / (2 * tan(pi / k)) / self.midradius) for k in (n, m))

    def pairs(self):
        k = len(self.around)
        found = {}
        for i in range(k):
            pair = tuple(sorted((self.around[i], self.around[(i + 1) % k])))
            found[pair] = found.get(pair, 0) + 1
        return {pair: self.corners * times // 2 for pair, times in sorted(found.items())}

    def area(self):
        return sum(count * n / (4 * tan(pi / n)) for n, count in self.face_counts.items())

    def volume(self):
        return sum(c * n / (4 * tan(pi / n)) * self.distance(n) / 3 for n, c in self.face_counts.items())


class Dual:
    """The polar reciprocal of a uniform solid in its midsphere, scaled to a shortest edge of 1."""

    def __init__(self, primal):
        rho = primal.midradius
        lengths = {}
        for (n, m), count in primal.pairs().items():
            length = sum(rho / (2 * tan(pi / k) * primal.distance(k)) for k in (n, m))
            lengths[nstr(length, 25)] = (length, lengths.get(nstr(length, 25), (0, 0))[1] + count)
        shortest = min(length for length, _ in lengths.values())
        self.edge_lengths = sorted(((length / shortest, count) for length, count in lengths.values()), reverse=True)
        self.midradius = rho / shortest
        self.inradius = rho**2 / primal.circumradius / shortest
        self.circumradius = rho**2 / min(primal.distance(n) for n in primal.around) / shortest
        self.dihedral = 2 * asin(rho / primal.circumradius)
        base = sqrt(self.midradius**2 - self.inradius**2)
        self.area = sum(length * count for length, count in self.edge_lengths) * base
        self.volume = self.area * self.inradius / 3


def agree(name, found, known, digits=30):
    known = mpf(known)
    assert fabs(found - known) < mpf(10) ** -digits * max(1, fabs(known)), (name, found, known)


def text(number):
    return nstr(number, 22, strip_zeros=False)


def write(path, comment, header, rows):
    lines = ["# " + line for line in comment] + [",".join(header)]
    lines += [",".join(str(cell) if isinstance(cell, (int, str)) else text(cell) for cell in row) for row in rows]
    path.write_text("\n".join(lines) + "\n")


def platonic(directory):
    rows = []
    for name, known in PLATONIC.items():
        u = Uniform(name)
        n = u.around[0]
        found = (u.dihedral(n, n), u.distance(n), u.midradius, u.circumradius)
        for one, other in zip(found, known):
            agree(name, one, other)
        size = (degrees(known[0]), *known[1:], u.volume(), u.area())
        rows.append((name, NAMES[n], n, u.faces, u.edges, u.corners, *size))
    write(
        directory / "platonic.csv",
        [
            "By mpmath, for edge 1, to 22 digits: the trigonometry of one corner. It confirms to 30 digits the",
            "closed forms of H. S. M. Coxeter, Regular Polytopes, 3rd edition 1973, Table I, from memory. Written",
            "by src/test/python/solids.py.",
        ],
        "solid face sides faces edges corners dihedral inradius midradius circumradius volume area".split(),
        rows,
    )


def archimedean(directory):
    rows, angles, faces = [], [], []
    for name, (circumradius, volume, (n, m, angle)) in ARCHIMEDEAN.items():
        u = Uniform(name)
        agree(name, u.circumradius, circumradius, 30 if name != "snub-dodecahedron" else 6)
        agree(name, u.volume(), volume, 30 if name != "snub-dodecahedron" else 6)
        agree(name, degrees(u.dihedral(n, m)), angle, 4)
        around = ".".join(str(k) for k in u.around)
        rows.append((name, around, u.faces, u.edges, u.corners, u.midradius, u.circumradius, u.volume(), u.area()))
        for (k, j), count in u.pairs().items():
            angles.append((name, NAMES[k], NAMES[j], count, degrees(u.dihedral(k, j))))
        for k, count in u.face_counts.items():
            faces.append((name, NAMES[k], k, count, u.distance(k)))
    comment = [
        "By mpmath, for edge 1, to 22 digits: the trigonometry of one corner. It confirms to 30 digits (the",
        "snub dodecahedron to 6) closed forms of circumradius and volume, and angles to a hundredth of a",
        "degree, of H. M. Cundy and A. P. Rollett, Mathematical Models, 2nd edition 1961, and R. Williams,",
        "The Geometrical Foundation of Natural Structure, 1979, both from memory. Written by",
        "src/test/python/solids.py.",
    ]
    head = "solid around faces edges corners midradius circumradius volume area".split()
    write(directory / "archimedean.csv", comment, head, rows)
    write(directory / "archimedean-edges.csv", comment, "solid face neighbour count dihedral".split(), angles)
    write(directory / "archimedean-faces.csv", comment, "solid face sides count distance".split(), faces)


def catalan(directory):
    rows, lengths = [], []
    for name, (dual, dihedral, ratio) in CATALAN.items():
        primal = Uniform(dual)
        d = Dual(primal)
        agree(name, d.dihedral, dihedral, 30 if not dual.startswith("snub") else 6)
        if ratio is not None:
            agree(name, d.edge_lengths[0][0], ratio, 30 if dual != "snub-dodecahedron" else 5)
        size = (degrees(d.dihedral), d.inradius, d.midradius, d.circumradius, d.volume, d.area)
        rows.append((name, dual, len(primal.around), primal.corners, primal.edges, primal.faces, *size))
        lengths += [(name, count, length) for length, count in d.edge_lengths]
    comment = [
        "By mpmath, for shortest edge 1, to 22 digits: polar reciprocation of the dual, itself from the",
        "trigonometry of one corner. It confirms to 30 digits (the angles of the two pentagonal solids to 4",
        "decimals of a degree) closed forms of dihedral angle and edge ratio of H. M. Cundy and A. P.",
        "Rollett, Mathematical Models, 2nd edition 1961, and R. Williams, The Geometrical Foundation of",
        "Natural Structure, 1979, both from memory. Written by src/test/python/solids.py.",
    ]
    head = "solid dual sides faces edges corners dihedral inradius midradius circumradius volume area".split()
    write(directory / "catalan.csv", comment, head, rows)
    write(directory / "catalan-edges.csv", comment, "solid count length".split(), lengths)


if __name__ == "__main__":
    target = Path(sys.argv[1])
    platonic(target)
    archimedean(target)
    catalan(target)
