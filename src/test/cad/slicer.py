"""Fetches bodies as 3MF and checks what PrusaSlicer says of them.

Usage: slicer.py <address of the service> <folder for the files>
"""
import json
import pathlib
import re
import subprocess
import sys
import urllib.request
import xml.etree.ElementTree as ElementTree
import zipfile

SERVICE, FOLDER = sys.argv[1], pathlib.Path(sys.argv[2])
DESIGNS = pathlib.Path("src/main/resources/designs")
# Each with the millimetres in its unit.
UNITS = {"icosahedron-mixed": 1, "rhombic-dodecahedron-in-inches": 25.4}
BODIES = ["segment", "panel", "solid", "shell", "sphere"]
CORE = "{http://schemas.microsoft.com/3dmanufacturing/core/2015/02}"
# The slicer keeps single precision.
SINGLE = 1e-4


def fail(words):
    raise SystemExit(f"slicer: {words}")


def post(path, body):
    request = urllib.request.Request(SERVICE + path, body, {"Content-Type": "application/json"})
    with urllib.request.urlopen(request) as answer:
        return answer.read()


def told(file):
    """What the slicer says of each object. Lines of its log begin with a bracket too."""
    command = ["prusa-slicer", "--info", str(file)]
    run = subprocess.run(command, capture_output=True, text=True, timeout=300, check=False)
    if run.returncode != 0:
        fail(f"{file}: {run.stdout[-500:]}{run.stderr[-500:]}")
    objects = []
    for line in run.stdout.splitlines():
        found = re.match(r"(\w+)\s*=\s*(.+)", line)
        if line == f"[{file.name}]":
            objects.append({})
        elif found:
            objects[-1][found.group(1)] = found.group(2).strip()
    return objects


def lowest(file):
    """The lowest coordinates of each part, in the file's unit."""
    model = ElementTree.fromstring(zipfile.ZipFile(file).read("3D/3dmodel.model"))
    meshes = [each for each in model.iter(CORE + "object") if each.find(CORE + "mesh") is not None]
    return [{axis: min(float(v.get(axis)) for v in mesh.iter(CORE + "vertex")) for axis in "xyz"} for mesh in meshes]


def check(name, file, parts, millimetres):
    objects = told(file)
    if len(objects) != len(parts):
        fail(f"{name} is {len(objects)} objects instead of {len(parts)}: {objects}")
    for seen, part, low in zip(objects, parts, lowest(file)):
        what = f"{part['name']} of {name}"
        if seen["manifold"] != "yes":
            fail(f"{what} is not closed: {seen}")
        expected = part["meshVolume"] * millimetres**3
        if abs(float(seen["volume"]) - expected) > SINGLE * expected:
            fail(f"the volume of {what} is {seen['volume']}, but should be {expected}")
        if int(seen["number_of_facets"]) != part["triangles"]:
            fail(f"{what} has {seen['number_of_facets']} triangles, but should have {part['triangles']}")
        for axis, place in low.items():
            if abs(float(seen["min_" + axis]) - place * millimetres) > 1e-3:
                fail(f"{what} begins at {seen['min_' + axis]} along {axis}, but should at {place * millimetres}")
    print(f"{name}: {len(parts)} closed, each in its place")


for design, scale in UNITS.items():
    document = (DESIGNS / (design + ".json")).read_bytes()
    for body in BODIES:
        # This slicer takes the parts of an object apart; a body of one part stays one object.
        for parts in ("", "ONE"):
            if body == "solid" and parts:
                # It has no woods, and this parameter means nothing there.
                continue
            query = f"/v1/bodies/{body}?{parts and 'parts=ONE&'}format="
            numbers = json.loads(post(query + "json", document))["body"]
            file = FOLDER / f"{design}-{body}{parts.lower()}.3mf"
            file.write_bytes(post(query + "3mf", document))
            check(file.stem, file, numbers["parts"], scale)
