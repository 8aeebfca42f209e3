"""Fetches outlines as DXF and checks the volumes of what OpenSCAD makes of them.

Usage: openscad.py <address of the service> <folder for the files>
"""
import json
import math
import pathlib
import re
import subprocess
import sys
import urllib.request

import ezdxf
from ezdxf.math import area

SERVICE, FOLDER = sys.argv[1], pathlib.Path(sys.argv[2])
DESIGNS = pathlib.Path("src/main/resources/designs")
UNITS = ["icosahedron-mixed", "rhombic-dodecahedron-in-inches"]
HEIGHT = 5
# OpenSCAD sets the points of a drawing on a grid of 1/1024, whatever its unit (seen in its STL).
GRID = 1 / 1024
# Areas are answered with four digits after the point.
ANSWERED = 1e-4
count = 0


def fail(words):
    raise SystemExit(f"openscad: {words}")


def post(path, body):
    request = urllib.request.Request(SERVICE + path, body, {"Content-Type": "application/json"})
    with urllib.request.urlopen(request) as answer:
        return answer.read()


def same(found, expected, allowed, what):
    global count
    count += 1
    if not abs(found - expected) <= allowed:
        fail(f"{what} is {found}, but should be {expected}")


def volume(name, layer):
    """The volume of a layer that is pulled up. OpenSCAD ends with 0 even where it could not read a file."""
    sketch, body = FOLDER / (name + ".scad"), FOLDER / (name + ".stl")
    sketch.write_text(f'linear_extrude(height={HEIGHT}) import("{name}.dxf", layer="{layer}");\n')
    run = subprocess.run(["openscad", "-o", str(body), str(sketch)], capture_output=True, text=True, check=False)
    if run.returncode != 0 or re.search("WARNING|ERROR|DEPRECATED", run.stderr) or not body.exists():
        fail(f"{name}: {run.stderr}")
    report = subprocess.run(["admesh", str(body)], capture_output=True, text=True, check=True).stdout
    return float(re.search(r"Volume\s*:\s*([0-9.]+)", report).group(1))


def outline(name, layer):
    """The area and the length of the closed line of a layer, by ezdxf."""
    lines = ezdxf.readfile(FOLDER / (name + ".dxf")).modelspace().query(f'LWPOLYLINE[layer=="{layer}"]')
    points = [list(line.get_points("xy")) for line in lines if line.is_closed]
    around = sum(math.dist(one, other) for each in points for one, other in zip(each, each[1:] + each[:1]))
    return sum(abs(area(each)) for each in points), around


for design in UNITS:
    document = (DESIGNS / (design + ".json")).read_bytes()
    face = json.loads(post("/v1/segments", document))["segments"]["faces"][0]
    segments = face["segments"]
    areas = {
        "segment": segments[0]["area"],
        "panel": sum(each["area"] * each["perSphere"] for each in segments) / face["panelsPerSphere"],
    }
    for picture, expected in areas.items():
        name = f"{design}-{picture}"
        (FOLDER / (name + ".dxf")).write_bytes(post(f"/v1/drawings/{picture}?format=dxf", document))
        found, around = outline(name, "OUTLINE")
        same(found, expected, 1e-5 * expected + ANSWERED, f"outline of {name}")
        pulled = volume(name, "OUTLINE")
        same(pulled, HEIGHT * found, HEIGHT * around * GRID / math.sqrt(2), f"volume over the outline of {name}")
        print(f"{name}: {pulled} over an area of {found:.4f}, {HEIGHT} high")
print(f"openscad: {count} areas and volumes are those of the service")
