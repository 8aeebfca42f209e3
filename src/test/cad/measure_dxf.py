"""Prints how many edges an outline has and how long they are in millimetres, as ezdxf reads it.

Usage: measure_dxf.py <file>
"""
import json
import math
import sys

import ezdxf
from ezdxf.math import bulge_radius

drawing = ezdxf.readfile(sys.argv[1])
millimetres = {1: 25.4, 4: 1.0}[drawing.header["$INSUNITS"]]
edges, length = 0, 0.0
for each in drawing.modelspace():
    if each.dxftype() == "LWPOLYLINE":
        points = each.get_points("xyb")
        for (x, y, bulge), (to_x, to_y, _) in zip(points, points[1:] + points[: int(each.is_closed)]):
            chord = math.dist((x, y), (to_x, to_y))
            edges += 1
            length += chord if bulge == 0 else 4 * abs(math.atan(bulge)) * bulge_radius((x, y), (to_x, to_y), bulge)
    elif each.dxftype() == "LINE":
        edges += 1
        length += each.dxf.start.distance(each.dxf.end)
    elif each.dxftype() == "CIRCLE":
        edges += 1
        length += 2 * math.pi * each.dxf.radius
    elif each.dxftype() != "TEXT":
        raise SystemExit(f"an outline has a {each.dxftype()}")
print(json.dumps({"edges": edges, "length": length * millimetres}))
