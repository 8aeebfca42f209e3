"""Lets FreeCAD read an outline and checks that it has all of its lines and circles, at true size."""
import json
import os

import FreeCAD
import Import

with open(os.environ["ORBWRIGHT_OUTLINE"], encoding="utf-8") as file:
    expected = json.load(file)
document = FreeCAD.newDocument("outline")
# Errors are not passed over.
Import.readDXF(os.environ["ORBWRIGHT_DXF"], document.Name, False)
shapes = [each.Shape for each in document.Objects if each.isDerivedFrom("Part::Feature")]
edges = [edge for shape in shapes for edge in shape.Edges]
assert len(edges) == expected["edges"], (len(edges), expected["edges"])
length = sum(edge.Length for edge in edges)
assert abs(length - expected["length"]) <= 1e-6 * expected["length"], (length, expected["length"])
print(f"\njudged {len(edges)} edges, {length:.4f} mm long")
