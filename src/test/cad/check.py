"""Fetches outlines and bodies of worked designs and checks them with ezdxf, admesh and a 3MF reader of its own.

Usage: check.py <address of the service> <folder for the files>
"""
import io
import json
import math
import pathlib
import re
import subprocess
import sys
import urllib.request
import xml.etree.ElementTree as ElementTree
import zipfile

import ezdxf
from ezdxf.math import area

SERVICE, FOLDER = sys.argv[1], pathlib.Path(sys.argv[2])
RESOURCES = pathlib.Path("src/main/resources")
# Those whose panels differ most: bands along and across the base, a land, mirrored segments, several face kinds.
DESIGNS = [
    "icosahedron-mixed",
    "rhombic-dodecahedron-in-inches",
    "cube-with-chevrons",
    "deltoidal-hexecontahedron-upright-bands",
    "truncated-octahedron-alternating",
    "truncated-icosidodecahedron",
]
BODIES = ["segment", "panel", "solid", "shell", "sphere"]
UNITS = {"mm": ("millimeter", 4), "in": ("inch", 1)}
CORE = "{http://schemas.microsoft.com/3dmanufacturing/core/2015/02}"
# STL has single precision, in which admesh adds up too.
SINGLE = 1e-4
count = 0


def same(found, expected, share, what):
    global count
    count += 1
    if not abs(found - expected) <= share * abs(expected):
        raise SystemExit(f"cad: {what} is {found}, but should be {expected}")


def equal(found, expected, what):
    global count
    count += 1
    if found != expected:
        raise SystemExit(f"cad: {what} is {found}, but should be {expected}")


def post(path, body):
    request = urllib.request.Request(SERVICE + path, body, {"Content-Type": "application/json"})
    with urllib.request.urlopen(request) as answer:
        return answer.read()


def read_dxf(name, content, unit):
    file = FOLDER / (name + ".dxf")
    file.write_bytes(content)
    drawing = ezdxf.readfile(file)
    audit = drawing.audit()
    equal((len(audit.errors), len(audit.fixes)), (0, 0), f"errors and fixes of {name}")
    equal(drawing.header["$INSUNITS"], UNITS[unit][1], f"unit of {name}")
    return drawing


def areas(drawing):
    """The area of the closed polylines of each layer."""
    sums = {}
    for line in drawing.modelspace().query("POLYLINE LWPOLYLINE"):
        if line.is_closed:
            points = line.points() if line.dxftype() == "POLYLINE" else line.get_points("xy")
            sums[line.dxf.layer] = sums.get(line.dxf.layer, 0) + abs(area(list(points)))
    return sums


def check_colours(drawing, name):
    """No wood has the colour of another layer."""
    colours = [layer.color for layer in drawing.layers if layer.dxf.name.startswith("BAND_")]
    others = {layer.color for layer in drawing.layers if not layer.dxf.name.startswith("BAND_")}
    equal(len(set(colours) - others), len(colours), f"colours of {name}")


def band_layer(species):
    return ("BAND_" + re.sub("[^A-Z0-9]+", "_", species.upper()))[:31]


def check_panels(name, design, unit):
    """A panel's bands have the flat areas that the bands' survival is reckoned from."""
    answer = json.loads(post("/v1/bands", design))
    kinds = {face["face"] for face in answer["bands"]["faces"]}
    for kind in sorted(kinds):
        address = f"/v1/drawings/panel?format=dxf&face={kind}"
        drawing = read_dxf(f"{name}-{kind}", post(address, design), unit)
        check_colours(drawing, name)
        found = areas(drawing)
        other = "in" if unit == "mm" else "mm"
        scale = 1 / 25.4 if unit == "mm" else 25.4
        converted = read_dxf(f"{name}-{kind}-{other}", post(f"{address}&unit={other}", design), other)
        same(areas(converted)["OUTLINE"], found["OUTLINE"] * scale**2, 1e-6, f"area of {name} in {other}")
        older = read_dxf(f"{name}-{kind}-r12", post(address + "&dxf=R12", design), unit)
        equal((drawing.dxfversion, older.dxfversion), ("AC1015", "AC1009"), f"releases of {name}")
        equal(areas(older), found, f"areas of {name} in the older release")
        flat = {}
        for face in answer["bands"]["faces"]:
            if face["face"] != kind:
                continue
            for segment in face["segments"]:
                for band in segment["upright"]:
                    key = band_layer(band["species"])
                    flat[key] = flat.get(key, 0) + band["flatArea"] * segment["perSphere"]
        total = sum(flat.values())
        for key, value in flat.items():
            # All panels of a kind have the same outline, so that shares of a kind are shares of a panel.
            if value > 0:
                same(found[key] / found["OUTLINE"], value / total, 1e-5, f"share of {key} in {name} {kind}")
        same(sum(v for k, v in found.items() if k.startswith("BAND_")), found["OUTLINE"], 1e-9, f"bands of {name}")


def admesh(file):
    report = subprocess.run(["admesh", str(file)], capture_output=True, text=True, check=True).stdout
    numbers = {}
    for line in report.splitlines():
        found = re.findall(r"([A-Z][A-Za-z0-9 ]*?)\s*:\s*(-?[0-9.]+)", line)
        numbers.update({key: float(value) for key, value in found})
    disconnected = re.search(r"Total disconnected facets\s*:\s*(\d+)", report)
    numbers["Total disconnected facets"] = float(disconnected.group(1))
    return numbers


def check_stl(name, content, part):
    file = FOLDER / (name + ".stl")
    file.write_bytes(content)
    found = admesh(file)
    equal(found["Number of facets"], part["triangles"], f"facets of {name}")
    for fault in (
        "Total disconnected facets",
        "Degenerate facets",
        "Edges fixed",
        "Facets removed",
        "Facets added",
        "Facets reversed",
        "Backwards edges",
    ):
        equal(found[fault], 0, f"{fault.lower()} of {name}")
    same(found["Volume"], part["meshVolume"], SINGLE, f"volume of {name}")


def check_3mf(name, content, parts, unit):
    model = ElementTree.fromstring(zipfile.ZipFile(io.BytesIO(content)).read("3D/3dmodel.model"))
    equal(model.get("unit"), UNITS[unit][0], f"unit of {name}")
    objects = {each.get("id"): each for each in model.iter(CORE + "object")}
    items = [item.get("objectid") for item in model.iter(CORE + "item")]
    equal(len(items), 1, f"objects that are built of {name}")
    components = [each.get("objectid") for each in objects[items[0]].iter(CORE + "component")]
    equal(components + items, list(objects), f"components of {name}")
    meshes = [objects[each] for each in components]
    equal([each.get("name") for each in meshes], [part["name"] for part in parts], f"names of {name}")
    materials = list(model.iter(CORE + "base"))
    equal([each.get("name") for each in materials], [part["name"] for part in parts], f"materials of {name}")
    equal(len({each.get("displaycolor") for each in materials}), len(parts), f"colours of {name}")
    equal([each.get("pindex") for each in meshes], [str(i) for i in range(len(parts))], f"woods of {name}")
    for each, part in zip(meshes, parts):
        points = [[float(v.get(axis)) for axis in "xyz"] for v in each.iter(CORE + "vertex")]
        triangles = [[int(t.get(corner)) for corner in ("v1", "v2", "v3")] for t in each.iter(CORE + "triangle")]
        edges = [(t[i], t[(i + 1) % 3]) for t in triangles for i in range(3)]
        equal(len(set(edges)), len(edges), f"directed edges of {name}")
        equal({(b, a) for a, b in edges}, set(edges), f"opposite edges of {name}")
        six = 0
        for t in triangles:
            (a, b, c), (d, e, f), (g, h, i) = (points[corner] for corner in t)
            six += a * (e * i - f * h) - b * (d * i - f * g) + c * (d * h - e * g)
        same(six / 6, part["meshVolume"], 1e-5, f"volume of {name} {part['name']}")


def check_bodies(name, design, unit):
    for body in BODIES:
        numbers = json.loads(post(f"/v1/bodies/{body}?format=json", design))["body"]
        one = json.loads(post(f"/v1/bodies/{body}?format=json&parts=ONE", design))["body"]
        check_stl(f"{name}-{body}", post(f"/v1/bodies/{body}", design), one["parts"][0])
        (FOLDER / f"{name}-{body}.glb").write_bytes(post(f"/v1/bodies/{body}?format=glb", design))
        check_3mf(f"{name}-{body}", post(f"/v1/bodies/{body}?format=3mf", design), numbers["parts"], unit)
        same(
            sum(part["meshVolume"] for part in numbers["parts"]),
            one["parts"][0]["meshVolume"],
            2e-3,
            f"volume of all woods of the {body} of {name}",
        )
        for part in numbers["parts"] + one["parts"]:
            share = 1e-4 if numbers["deviation"] == 0 else 2e-2
            if "volume" in part:
                same(part["meshVolume"], part["volume"], share, f"volume of {part['name']} in {name} {body}")
    # Where panels are mixed, pieces of the other woods touch along edges, at which admesh guesses what belongs together.
    wood = min(numbers["parts"], key=lambda part: part["meshVolume"])
    query = "species=" + urllib.request.quote(wood["name"])
    check_stl(f"{name}-one-wood", post(f"/v1/bodies/sphere?{query}", design), wood)
    check_against_yield(name, design, numbers)


def check_against_yield(name, design, numbers):
    """The woods of the finished sphere are those of the yield."""
    upright = json.loads(post("/v1/yield", design))["yield"]["spheres"][0]
    for wood in upright["species"]:
        if "sphereVolume" in wood:
            part = next(p for p in numbers["parts"] if p["name"] == wood["species"])
            same(part["volume"], wood["sphereVolume"], 1e-4, f"volume of {wood['species']} in {name}")


def check_work(document):
    """Discs, templates and pockets: true circles, and bodies of the volumes of cylinders."""
    text = json.loads(document)
    unit = text["unit"]
    plan = json.loads(post("/v1/turning", document))["turning"]
    disc = read_dxf("disc", post("/v1/drawings/disc?format=dxf", document), unit).modelspace()
    outline = disc.query('CIRCLE[layer=="OUTLINE"]').first
    same(2 * outline.dxf.radius, plan["holding"]["head"]["disc"], 1e-6, "diameter of the disc")
    screws = disc.query('CIRCLE[layer=="SCREW_CIRCLE"]').first
    same(2 * screws.dxf.radius, text["turning"]["discs"]["screws"]["circle"], 1e-9, "circle of the screws")
    templates = read_dxf("templates", post("/v1/drawings/templates?format=dxf", document), unit).modelspace()
    gauges, plates = plan["roughing"]["gauges"], list(templates.query("LWPOLYLINE"))
    equal(len(plates), len(gauges), "templates")
    for gauge, plate in zip(gauges, plates):
        equal(plate.is_closed, True, "a template is one contour")
        points = plate.get_points("xyb")
        (end_x, end_y, _), (start_x, start_y, bulge) = points[0], points[-1]
        chord = math.hypot(end_x - start_x, end_y - start_y)
        same(chord, gauge["chord"], 1e-5, "chord of a template")
        same(-bulge * chord / 2, gauge["sagitta"], 1e-4, "sagitta of a template")
    pocket = read_dxf("pocket", post("/v1/drawings/pocket?format=dxf", document), unit).modelspace()
    hole = pocket.query('CIRCLE[layer=="POCKET"]').first
    same(2 * hole.dxf.radius, text["inlays"]["shape"]["diameter"], 1e-9, "diameter of the pocket")
    for name in ("disc", "pocket"):
        part = json.loads(post(f"/v1/bodies/{name}?format=json&deviation=0.001", document))["body"]["parts"][0]
        same(part["meshVolume"], part["volume"], 1e-3, f"volume of the {name}")
        check_stl(name, post(f"/v1/bodies/{name}?deviation=0.001", document), part)


for design in DESIGNS:
    text = (RESOURCES / "designs" / (design + ".json")).read_bytes()
    design_unit = json.loads(text)["unit"]
    check_panels(design, text, design_unit)
    segment = read_dxf(design + "-segment", post("/v1/drawings/segment?format=dxf", text), design_unit)
    sums = areas(segment)
    bands = sum(value for key, value in sums.items() if key.startswith("BAND_"))
    same(bands, sums["OUTLINE"], 1e-9, f"bands of the segment of {design}")
    check_bodies(design, text, design_unit)
check_work((RESOURCES / "designs/icosahedron-mixed.json").read_bytes())
print(f"cad: {count} checks of {len(list(FOLDER.iterdir())) - 1} files passed")
