"""Runs the macro inside FreeCAD and judges the bodies that it fetched."""
import json
import os

import FreeCAD

# A solid of thousands of faces takes FreeCAD minutes.
FEW_FACETS = 1000

with open(os.environ["ORBWRIGHT_NUMBERS"], encoding="utf-8") as file:
    answer = json.load(file)
millimetres = {"mm": 1.0, "in": 25.4}[answer["document"]["unit"]]
parts = answer["body"]["parts"]
few = answer["body"]["triangles"] <= FEW_FACETS
os.environ["ORBWRIGHT_SOLIDS"] = "1" if few else "0"

with open(os.environ["ORBWRIGHT_MACRO"], encoding="utf-8") as file:
    exec(compile(file.read(), "fetch_bodies.FCMacro", "exec"), {"__name__": "__main__"})

document = FreeCAD.ActiveDocument
meshes = [each for each in document.Objects if each.isDerivedFrom("Mesh::Feature")]
solids = [each for each in document.Objects if each.isDerivedFrom("Part::Feature")]
# Labels are kept apart by a number where two bodies are of one name.
assert [each.Label for each in meshes] == [part["name"] for part in parts], [each.Label for each in meshes]
touching = 0
for feature, part in zip(meshes, parts):
    mesh, expected = feature.Mesh, part["meshVolume"] * millimetres**3
    assert abs(mesh.Volume - expected) <= 1e-4 * expected, (part["name"], mesh.Volume, expected)
    # Woods may touch along an edge, where FreeCAD joins points that the file keeps apart.
    if mesh.hasNonManifolds():
        touching += 1
    else:
        assert mesh.isSolid() and mesh.countNonUniformOrientedFacets() == 0, part["name"]
assert len(solids) == (len(parts) if few else 0), (len(solids), len(parts))
for feature, part in zip(solids, parts):
    expected = part["meshVolume"] * millimetres**3
    assert feature.Shape.isValid(), part["name"]
    assert abs(feature.Shape.Volume - expected) <= 1e-3 * expected, (part["name"], feature.Shape.Volume, expected)
print(f"\njudged {len(meshes)} meshes ({touching} touch themselves along an edge), {len(solids)} solids")
