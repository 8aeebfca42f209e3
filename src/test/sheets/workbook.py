"""Opens the service's workbook in LibreOffice Calc as a user would, and compares its cells with the service's sheet.

Usage, with the Python that has LibreOffice's module uno: workbook.py SERVICE WORKBOOK PIPE [PDF]
"""

import json
import os
import sys
import time
import urllib.request

import uno
from com.sun.star.beans import PropertyValue

SERVICE, WORKBOOK, PIPE = sys.argv[1:4]
PDF = sys.argv[4] if len(sys.argv) > 4 else None
# Constant of com.sun.star.document.UpdateDocMode: fetch without asking, which Calc does for trusted locations only.
FULL_UPDATE = 3
DESIGN = {
    "unit": "mm",
    "solid": "icosahedron",
    "copies": 2,
    "size": {"by": "ACROSS_FLATS", "value": 212},
    "panel": {"thickness": 30, "land": 3},
    "laminations": [
        {
            "bands": [
                {"species": "white ash", "width": 17},
                {"species": "red alder", "width": 5},
                {"species": "american beech", "width": 9},
                {"species": "white ash", "width": None},
            ]
        }
    ],
    "saw": {"kerf": 2.6, "endTrim": 10},
    "blank": {"length": 720},
    "sphere": {"diameter": 206, "turningAllowance": 2, "minimumWall": 6},
}
# The words of a row in the sheet Results, and where its number stands in the service's sheet.
RESULTS = {
    "Tilt of the saw blade for the bevel, degrees.": "/angles/faces/0/bladeTilt",
    "Setting of the mitre gauge off square for the segment's left side, degrees.":
        "/angles/faces/0/segments/0/mitreGaugeLeft",
    "Base of the segment.": "/segments/faces/0/segments/0/base",
    "Segments that a blank gives.": "/segments/faces/0/segments/0/perBlank",
    "Blanks to glue for all copies.": "/yield/laminations/0/blanks",
    "Diameter of the finished sphere.": "/sphere/diameter",
    "The thinnest wall of the sphere; below 0 it breaks through.": "/sphere/thinnestWall",
}
BANDS = {2: "flatWidth", 3: "visibleWidth/edgeMiddle", 4: "visibleWidth/leftCorner", 5: "survival"}


def at(answer, pointer):
    for step in pointer.strip("/").split("/"):
        answer = answer[int(step)] if isinstance(answer, list) else answer[step]
    return answer


def sheet_of(design):
    request = urllib.request.Request(
        SERVICE + "/v1/sheet", json.dumps(design).encode(), {"Content-Type": "application/json"})
    return json.load(urllib.request.urlopen(request, timeout=30))


def connect():
    local = uno.getComponentContext()
    resolver = local.ServiceManager.createInstanceWithContext("com.sun.star.bridge.UnoUrlResolver", local)
    for _ in range(120):
        try:
            return resolver.resolve(f"uno:pipe,name={PIPE};urp;StarOffice.ComponentContext")
        except Exception:
            time.sleep(0.5)
    sys.exit("sheets: Calc did not start")


def properties(**values):
    return tuple(PropertyValue(name, 0, value, 0) for name, value in values.items())


def cells(document, name):
    area = document.Sheets.getByName(name)
    cursor = area.createCursor()
    cursor.gotoEndOfUsedArea(False)
    return [list(row) for row in area.getCellRangeByPosition(0, 0, 20, cursor.RangeAddress.EndRow).getDataArray()]


def expect(what, seen, wanted):
    same = abs(seen - wanted) < 1e-9 if isinstance(seen, float) else seen == wanted
    if not same:
        sys.exit(f"sheets: {what} is {seen!r} in the workbook, {wanted!r} in the sheet")


def compare(document, design):
    answer = sheet_of(design)
    rows = {row[0]: row[1] for row in cells(document, "Results")}
    for words, pointer in RESULTS.items():
        expect(words, rows[words], at(answer, pointer))
    bands = cells(document, "Bands")[3:11]
    upright = at(answer, "/bands/faces/0/segments/0/upright")
    for row, band in zip(bands, upright):
        expect("wood of a band", row[1], band["species"])
        for column, pointer in BANDS.items():
            expect(pointer + " of band " + str(band["band"]), row[column], at(band, pointer))
    for row in bands[len(upright):]:
        expect("a band that there is not", row[1:6], [""] * 5)
    return len(RESULTS) + 5 * len(upright)


def type_in(document, words, value):
    design = document.Sheets.getByName("Design")
    for row in range(40):
        if design.getCellByPosition(0, row).String == words:
            cell = design.getCellByPosition(1, row)
            # As from the keyboard: Calc makes of the text what it takes it for.
            cell.FormulaLocal = value
            return
    sys.exit(f"sheets: there is no row {words}")


desktop = connect().ServiceManager.createInstanceWithContext("com.sun.star.frame.Desktop", connect())
document = desktop.loadComponentFromURL(
    "file://" + WORKBOOK, "_blank", 0, properties(Hidden=True, UpdateDocMode=FULL_UPDATE, MacroExecutionMode=4))
if document is None:
    sys.exit("sheets: Calc cannot open " + WORKBOOK)
checked = compare(document, DESIGN)

# What a user does next: other sizes, one as a fraction and one in the other unit.
type_in(document, "acrossFlats", "8 5/8in")
type_in(document, "thickness", "31,5")
type_in(document, "kerf", "1/8in")
type_in(document, "blankLength", "30in")
DESIGN["size"]["value"] = 8.625 * 25.4
DESIGN["panel"]["thickness"] = 31.5
DESIGN["saw"]["kerf"] = 25.4 / 8
DESIGN["blank"]["length"] = 30 * 25.4
document.calculateAll()
checked += compare(document, DESIGN)

# What is wrong is read in the cell.
type_in(document, "kerf", "wide")
document.calculateAll()
rows = {row[0]: row[1] for row in cells(document, "Results")}
expect(
    "a wrong kerf",
    rows["Segments that a blank gives."],
    'ERROR: kerf must be a length such as 79.4, 3 1/8, 3-1/8in or 79.4mm, but is "wide".')
type_in(document, "kerf", "1/8in")
document.calculateAll()
checked += compare(document, DESIGN)

# Other bands; a width without a wood is told.
page = document.Sheets.getByName("Design")
first = next(row for row in range(40) if page.getCellByPosition(0, row).String == "Face kind") + 1
page.getCellByPosition(1, first).String = "white ash 17; american beech 9; white ash rest"
del DESIGN["laminations"][0]["bands"][1]
document.calculateAll()
checked += compare(document, DESIGN)

# A solid of several face kinds: the same bands on all, and a row for each.
type_in(document, "solid", "cuboctahedron")
DESIGN["solid"] = "cuboctahedron"
bands = DESIGN["laminations"][0]["bands"]
DESIGN["laminations"] = [{"face": face, "bands": bands} for face in ("triangle", "square")]
document.calculateAll()
checked += compare(document, DESIGN)
for row, face in enumerate(("square", "triangle")):
    page.getCellByPosition(0, first + row).String = face
    page.getCellByPosition(1, first + row).String = f"red alder {row + 4}; white ash rest"
DESIGN["laminations"] = [
    {"face": face, "bands": [{"species": "red alder", "width": width}, {"species": "white ash", "width": None}]}
    for face, width in (("square", 4), ("triangle", 5))]
document.calculateAll()
checked += compare(document, DESIGN)
type_in(document, "Face kind that the other sheets show", "square")
document.calculateAll()
expect("width of the square's first band", cells(document, "Bands")[3][2], 4.0)
page.getCellByPosition(1, first).FormulaLocal = "1/4in"
document.calculateAll()
rows = {row[0]: row[1] for row in cells(document, "Results")}
told = 'ERROR: bands has no wood and width in "1/4'
expect("a width without a wood", rows["Blanks to glue for all copies."][:len(told)], told)
charts = document.Sheets.getByName("Bands").Charts
expect("number of charts", charts.Count, 1)
if PDF:
    document.storeToURL("file://" + PDF, properties(FilterName="calc_pdf_Export"))
document.close(True)
print(f"sheets: {checked} cells of {WORKBOOK.rsplit('/', 1)[1]} agree", flush=True)
# The bridge to the office may crash while the interpreter takes itself apart.
os._exit(0)
