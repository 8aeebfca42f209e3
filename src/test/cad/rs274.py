"""Fetches programs for many controls and compares what LinuxCNC's interpreter makes of them with the service's way.

Usage: rs274.py <address of the service> <folder for the files>
"""
import json
import math
import pathlib
import re
import subprocess
import sys
import urllib.request

SERVICE, FOLDER = sys.argv[1], pathlib.Path(sys.argv[2])
DESIGNS = pathlib.Path("src/main/resources/designs")
# rs274 prints four decimals.
PRINTED = 0.5e-4
# Times are answered with three decimals.
ANSWERED = 0.5001e-3
# What the contract says of segments, in millimetres.
STRAY = 0.01
CALL = re.compile(r"\b([A-Z_0-9]+)\((.*)\)$")
FRAME = {
    "workOffset": "G57",
    "tool": 12,
    "coolant": "FLOOD",
    "end": "M2",
    "comments": "SEMICOLON",
    "lineNumbers": True,
    "percentSigns": False,
    "decimals": 3,
}
DEGREES = {"rotaryFeed": "DEGREES_PER_MINUTE"}
VARIANTS = {
    # Each with the kinds of table that it is for; on three axes there is none.
    "ROTARY": {
        "usual": ({}, ["counts", "wraps"]),
        "absolute": ({"turns": "ABSOLUTE"}, ["counts"]),
        "degrees": (DEGREES, ["counts", "wraps"]),
        "absolute-degrees": ({"turns": "ABSOLUTE", **DEGREES}, ["counts"]),
        "frame": (FRAME, ["counts", "wraps"]),
    },
    "THREE_AXIS": {
        "usual": ({}, ["counts"]),
        "circles": ({"arcs": "CIRCLES_WITHOUT_G91_1"}, ["counts"]),
        "segments": ({"arcs": "SEGMENTS"}, ["counts"]),
        "frame": ({**FRAME, "arcs": "SEGMENTS", "coolant": "MIST"}, ["counts"]),
    },
}
# Those of the units, whose lengths are not those of the other.
UNITS = {"icosahedron-mixed": 1, "rhombic-dodecahedron-in-inches": 25.4}
checked = 0


def fail(words):
    raise SystemExit(f"rs274: {words}")


def post(path, document):
    body = json.dumps(document).encode()
    request = urllib.request.Request(SERVICE + path, body, {"Content-Type": "application/json"})
    try:
        with urllib.request.urlopen(request) as answer:
            return answer.read()
    except urllib.error.HTTPError as problem:
        fail(f"{path}: {problem.read().decode()}")


def document_of(design, millimetres, machine, control):
    document = json.loads((DESIGNS / (design + ".json")).read_text(encoding="utf-8"))
    document["path"] = {
        "machine": machine,
        "cutter": {"shape": "BALL", "diameter": 16 / millimetres},
        "scallop": 0.4 / millimetres,
        "passDepth": 9 / millimetres,
        "feed": 1300 / millimetres,
        "spindle": 11000,
        "airPass": True,
        "control": control,
    }
    return document


def interpreted(name, program, table):
    """The ends of the moves that the interpreter commands: kind, X, Y, Z, A and feed."""
    file, settings = FOLDER / (name + ".ngc"), FOLDER / (table + ".ini")
    file.write_bytes(program)
    (FOLDER / "tools.tbl").write_text("T12 P12 Z0 D16\n")
    settings.write_text(
        f"[AXIS_A]\nWRAPPED_ROTARY = {int(table == 'wraps')}\n[RS274NGC]\nPARAMETER_FILE = {FOLDER}/parameters.var\n"
    )
    command = ["rs274", "-g", "-t", str(FOLDER / "tools.tbl"), "-i", str(settings), str(file)]
    run = subprocess.run(command, capture_output=True, text=True, check=False)
    if run.returncode != 0 or "PROGRAM_END" not in run.stdout:
        fail(f"{name} is not run to its end: {run.stderr[-500:]}")
    moves, feed = [], 0.0
    for line in run.stdout.splitlines():
        call = CALL.search(line)
        if call is None:
            continue
        kind, values = call.group(1), call.group(2).split(", ")
        if kind == "SET_FEED_RATE":
            feed = float(values[0])
        elif kind in ("STRAIGHT_TRAVERSE", "STRAIGHT_FEED"):
            x, y, z, a = (float(value) for value in values[:4])
            moves.append((kind, x, y, z, a, feed))
        elif kind == "ARC_FEED":
            x, y, middle_x, middle_y = (float(value) for value in values[:4])
            if (middle_x, middle_y, values[4]) != (0, 0, "1"):
                fail(f"{name}: a circle about {middle_x}, {middle_y}")
            moves.append((kind, x, y, float(values[5]), float(values[6]), feed))
    return moves


def close(found, expected, allowed, what):
    global checked
    checked += 1
    if not abs(found - expected) <= allowed:
        fail(f"{what} is {found}, but should be {expected}")


def compare(name, moves, way, millimetres, decimals, table):
    """Follows the service's moves; every one of the interpreter's moves belongs to one of them."""
    rest = iter(moves)
    allowed = 0.5 * 10**-decimals + PRINTED
    rotary = way["machine"] == "ROTARY"
    angle, before, total = None, None, 0.0
    for number, move in enumerate(way["moves"]):
        what = f"{name}, move {number} ({move['kind']})"
        kind = {"RAPID": "STRAIGHT_TRAVERSE", "CIRCLE": "ARC_FEED"}.get(move["kind"], "STRAIGHT_FEED")
        if move["kind"] == "RAPID":
            for _ in range(1 + (rotary and move["a"] != angle)):
                at = next(rest)
                close(at[0] == kind, True, 0, what)
                close(at[3], move["z"], allowed, what + ": Z")
        at, minutes = next(rest), 0.0
        if move["kind"] == "CIRCLE" and at[0] == "STRAIGHT_FEED":
            at, minutes = around(rest, at, before, move, allowed, millimetres, what)
        elif move["kind"] == "CIRCLE":
            minutes = 2 * math.pi * move["x"] / at[5]
        elif move["kind"] == "TURN":
            minutes = (at[4] - before[4]) / at[5]
            close(at[4] - before[4], 360, 1e-3, what + ": angle")
        elif move["kind"] != "RAPID":
            minutes = math.dist(at[1:4], before[1:4]) / at[5]
        if minutes > 0:
            # Lengths are rounded too, and segments are longer than their circle.
            rounded = ANSWERED + 4 * allowed / at[5] + (2e-3 * minutes if move["kind"] == "CIRCLE" else 0)
            close(minutes, move["minutes"], rounded, what + ": minutes")
        total += minutes
        if at[0] != kind and move["kind"] != "CIRCLE":
            fail(f"{what}: {at[0]}")
        for place, expected in ((at[1], move["x"]), (at[2], 0), (at[3], move["z"])):
            close(place, expected, allowed, what)
        wound = at[4] % 360 if table == "wraps" and number == len(way["moves"]) - 1 else at[4]
        close(wound, move["a"], 1e-3, what + ": A")
        angle, before = move["a"], at
    close(total, way["minutes"], 1e-3 * total, f"{name}: minutes")
    if next(rest, None) is not None:
        fail(f"{name}: moves after the last one")


def around(rest, at, before, move, allowed, millimetres, what):
    """Straight moves around a circle: the one that closes it, and the time of all."""
    last, minutes = 0.0, 0.0
    while True:
        minutes += math.dist(at[1:4], before[1:4]) / at[5]
        out, turned = math.hypot(at[1], at[2]), math.atan2(at[2], at[1]) % (2 * math.pi)
        if abs(at[2]) <= allowed and at[1] > 0 and last > math.pi:
            return at, minutes
        if not move["x"] - 2 * allowed <= out <= move["x"] + STRAY / millimetres + 2 * allowed or turned <= last:
            fail(f"{what}: a straight move to {at[1]}, {at[2]}")
        last, before, at = turned, at, next(rest)


def check_that_faults_are_found(program, way, millimetres):
    """A program is not passed that has words that nobody knows, or turns that a table that wraps does not make."""
    for name, changed, table in (
        ("code", program.replace(b"G90 G94\n", b"G90 G95.7\n"), "counts"),
        ("word", program.replace(b"G90 G94\n", b"G90 Q\n"), "counts"),
        ("wrapped", program, "wraps"),
    ):
        try:
            compare(name, interpreted("fault-" + name, changed, table), way, millimetres, 4, table)
        except SystemExit as fault:
            print(f"found: {str(fault)[:100]}")
            continue
        fail(f"a program with the fault {name} is passed")


for design, scale in UNITS.items():
    for machine, variants in VARIANTS.items():
        expected = None
        for variant, (control, tables) in variants.items():
            document = document_of(design, scale, machine, control)
            way = json.loads(post("/v1/turning/path", document))
            program = post("/v1/turning/program", document)
            filled = way["document"]["path"]["control"]
            if expected not in (None, way["path"]["moves"]):
                fail(f"{design} {machine} {variant}: another way than that of the usual program")
            expected = way["path"]["moves"]
            for table in tables:
                name = f"{design}-{machine}-{variant}-{table}".lower()
                compare(name, interpreted(name, program, table), way["path"], scale, filled["decimals"], table)
                print(f"{name}: {len(expected)} moves")
            if variant == "absolute":
                check_that_faults_are_found(program, way["path"], scale)
print(f"rs274: {checked} values of the interpreter's moves are those of the service")
