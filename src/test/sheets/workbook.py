"""Opens the service's workbook in LibreOffice Calc as a user would, and compares its cells with the service's sheet.

Usage, with the Python that has LibreOffice's module uno: workbook.py SERVICE WORKBOOK PIPE PDF
It prints every sheet as PDF-a4.pdf and PDF-letter.pdf, to be looked at.
"""

import json
import os
import sys
import time
import urllib.request
from fractions import Fraction

import uno
from com.sun.star.beans import PropertyValue

SERVICE, WORKBOOK, PIPE, PDF = sys.argv[1:5]
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
    "Blade tilt for the bevel": "/angles/faces/0/bladeTilt",
    "Mitre gauge off square, left side of the segment": "/angles/faces/0/segments/0/mitreGaugeLeft",
    "Base of the segment": "/segments/faces/0/segments/0/base",
    "Segments from a blank": "/segments/faces/0/segments/0/perBlank",
    "Segments of this kind in a sphere": "/segments/faces/0/segments/0/perSphere",
    "Blanks of this face kind, all spheres": "/yield/laminations/0/blanks",
    "Diameter of the finished sphere": "/sphere/diameter",
    "Thinnest wall; below 0 it breaks through": "/sphere/thinnestWall",
    "Mass of the finished sphere, first set": "/yield/spheres/0/mass",
}
LENGTHS = ("Base of the segment", "Diameter of the finished sphere", "Thinnest wall; below 0 it breaks through")
# Columns of the sheet Bands, from 0, and what stands in them of a band.
OF_BOTH = {1: "species", 2: "flatWidth"}
OF_A_SET = ("visibleWidth/edgeMiddle", None, "visibleWidth/leftCorner", None, "survival")
SETS = {"upright": 4, "inverted": 9}
FIRST_BAND, BANDS, BAND_ROWS = 5, 8, 24
# Where a sheet says whether its numbers were fetched.
STATES = {"Design": "D1", "Results": "B1", "Bands": "J1"}
# What the chart is drawn from, on the sheet Answers: columns from 0, for the upright and the inverted set.
DRAWN = ((1, "upright"), (2, "inverted"))
PAPERS = {"a4": (21000, 29700), "letter": (21590, 27940)}


def at(answer, pointer):
    for step in pointer.strip("/").split("/"):
        if isinstance(answer, list):
            answer = answer[int(step)] if int(step) < len(answer) else {}
        else:
            answer = answer.get(step, {})
    return "" if answer == {} else answer


def answered(path, body=None):
    request = urllib.request.Request(SERVICE + path, body, {"Content-Type": "application/json"})
    return json.load(urllib.request.urlopen(request, timeout=60))


def sheet_of(design):
    return answered("/v1/sheet", json.dumps(design).encode())


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
    results = cells(document, "Results")
    rows = {row[0]: row[1] for row in results}
    findings = answer["findings"]
    for name in ("Design", "Results", "Bands"):
        top = cells(document, name)[3 if name == "Design" else 2]
        expect("severity on " + name, top[0], findings[0]["severity"] if findings else "")
        expect("finding on " + name, top[1], findings[0]["message"] if findings else "")
    for words, pointer in RESULTS.items():
        expect(words, rows[words], at(answer, pointer))
    for row in results:
        if row[0] in LENGTHS:
            expect("unit of " + row[0], row[2], design["unit"])
            expect("fraction of " + row[0], row[3], fraction(row[1]) if design["unit"] == "in" else "")
    bands = cells(document, "Bands")
    for column in (2, 4, 6, 9, 11):
        expect("unit of the bands", bands[FIRST_BAND - 1][column][-4:], ", " + design["unit"])
    segment = answer["bands"]["faces"][0]["segments"][0]
    check_drawn(document, segment)
    checked = len(RESULTS)
    for name, first in SETS.items():
        known = {band["band"]: band for band in segment.get(name, [])}
        for number in range(1, BANDS + 1):
            row, band = bands[FIRST_BAND + number - 1], known.get(number, {})
            for i, pointer in enumerate(OF_A_SET):
                if pointer:
                    expect(f"{pointer} of {name} band {number}", row[first + i], at(band, pointer))
                elif design["unit"] == "in" and band:
                    expect("fraction of a band", row[first + i], fraction(row[first + i - 1]))
            if name == "upright":
                for column, pointer in OF_BOTH.items():
                    expect(f"{pointer} of band {number}", row[column], at(band, pointer))
            checked += 5
    return checked


def fraction(inches):
    """The nearest sixty-fourth and the signed rest in thousandths, by exact fractions of the digits shown."""
    exact = Fraction(repr(inches))
    nearest = Fraction(round(exact * 64), 64)
    whole, part = divmod(nearest, 1)
    text = " ".join(str(piece) for piece in (whole, part) if piece) or "0"
    rest = round(float(exact - nearest), 3)
    return text + (f" {'-' if rest < 0 else '+'} {abs(rest):g}" if rest else "")


def type_in(document, words, value):
    design = document.Sheets.getByName("Design")
    for row in range(70):
        if design.getCellByPosition(0, row).String == words:
            cell = design.getCellByPosition(1, row)
            # As from the keyboard: Calc makes of the text what it takes it for.
            cell.FormulaLocal = value
            return
    sys.exit(f"sheets: there is no row {words}")


def write_bands(document, bands):
    """Writes rows of face kind, wood and width, and clears the rows behind them."""
    design = document.Sheets.getByName("Design")
    first = next(row for row in range(70) if design.getCellByPosition(0, row).String == "Face kind") + 1
    for i in range(BAND_ROWS):
        for column in range(3):
            cell = design.getCellByPosition(column, first + i)
            cell.FormulaLocal = bands[i][column] if i < len(bands) else ""


def check_state(document, wanted):
    """Whether every sheet says where its numbers come from."""
    for name, place in STATES.items():
        expect("state on " + name, document.Sheets.getByName(name).getCellRangeByName(place).String, wanted)


def check_drawn(document, segment):
    """Whether the chart has a number for each band of a set, and else an error, which is not drawn."""
    answers = document.Sheets.getByName("Answers")
    heading = next(row for row in range(200) if answers.getCellByPosition(1, row).String == "Upright, for the chart")
    for column, name in DRAWN:
        known = {band["band"]: band["survival"] for band in segment.get(name, [])}
        for number in range(1, BANDS + 1):
            cell = answers.getCellByPosition(column, heading + number)
            expect(f"what is drawn of {name} band {number}", None if cell.getError() else cell.Value, known.get(number))


def head(document, name):
    """The line that says which face kind is shown, and whether bands are left out."""
    page = document.Sheets.getByName(name)
    return [page.getCellRangeByName(place).String for place in ("A4", "A14")]


def check_choices(document):
    design = document.Sheets.getByName("Design")
    for place, wanted in (("B8", "solids"), ("B9", "units"), ("B20", "sets"), ("A27", "faces"), ("B27", "woods"),
                          ("B50", "woods")):
        offered = design.getCellRangeByName(place).Validation
        expect("list of " + place, (offered.Type.value, offered.getFormula1()), ("LIST", wanted))
        expect("refusal of " + place, offered.ShowErrorMessage, False)


def check_labels(document):
    """Whether each text fits its cell: a cell of the same width and letters is asked how high it would have to be."""
    document.Sheets.insertNewByName("Measure", document.Sheets.Count)
    measure = document.Sheets.getByName("Measure")
    column, row, trial = measure.Columns.getByIndex(0), measure.Rows.getByIndex(0), measure.getCellByPosition(0, 0)
    checked = 0
    for name in ("Design", "Results", "Bands"):
        area = document.Sheets.getByName(name)
        cursor = area.createCursor()
        cursor.gotoEndOfUsedArea(False)
        for y in range(cursor.RangeAddress.EndRow + 1):
            for x in range(cursor.RangeAddress.EndColumn + 1):
                cell = area.getCellByPosition(x, y)
                if not cell.String:
                    continue
                merged = area.createCursorByRange(cell)
                merged.collapseToMergedArea()
                for setting in ("CharWeight", "CharHeight", "CharFontName"):
                    setattr(trial, setting, getattr(cell, setting))
                trial.String = max(cell.String.split(), key=len) if cell.IsTextWrapped else cell.String
                trial.IsTextWrapped = False
                column.OptimalWidth = True
                # A heading that is not wrapped may run on over empty cells.
                width = merged.Size.Width if cell.IsTextWrapped else 17000
                if column.Width > width + 50:
                    sys.exit(f"sheets: {trial.String!r} on {name} is wider than its cell")
                trial.String = cell.String
                trial.IsTextWrapped = cell.IsTextWrapped
                column.Width = width
                row.OptimalHeight = True
                if row.Height > merged.Size.Height + 60:
                    sys.exit(f"sheets: {cell.String!r} on {name} is {row.Height} high, its cell {merged.Size.Height}")
                checked += 1
    document.Sheets.removeByName("Measure")
    return checked


def check_print(document, pdf):
    styles = document.StyleFamilies.getByName("PageStyles")
    for name in document.Sheets.ElementNames:
        page = document.Sheets.getByName(name)
        style = styles.getByName(page.PageStyle)
        expect("pages side by side of " + name, style.ScaleToPagesX, 1)
        expect("headings again on each page of " + name, page.getPrintTitleRows(), True)
        expect("paper across of " + name, style.IsLandscape, name in ("Bands", "Answers"))
    for paper, (short, long) in PAPERS.items():
        for name in document.Sheets.ElementNames:
            style = styles.getByName(document.Sheets.getByName(name).PageStyle)
            style.Width, style.Height = (long, short) if style.IsLandscape else (short, long)
        document.storeToURL(f"file://{pdf}-{paper}.pdf", properties(FilterName="calc_pdf_Export"))


def opened(**settings):
    document = desktop.loadComponentFromURL("file://" + WORKBOOK, "_blank", 0, properties(Hidden=True, **settings))
    return document or sys.exit("sheets: Calc cannot open " + WORKBOOK)


desktop = connect().ServiceManager.createInstanceWithContext("com.sun.star.frame.Desktop", connect())

# A file that may not fetch shows the numbers of the example, and none once the design is another.
document = opened()
checked = compare(document, DESIGN)
check_state(document, "Stored numbers, not fetched")
check_choices(document)
labels = check_labels(document)
check_print(document, PDF)
type_in(document, "Kerf", "2.7")
expect("a design that is not the example", cells(document, "Results")[5][1], "no answer")
check_state(document, "Not fetched")
check_drawn(document, {})
document.close(True)

document = opened(UpdateDocMode=FULL_UPDATE, MacroExecutionMode=4)
checked += compare(document, DESIGN)
check_state(document, "Fetched")

# What a user does next: other sizes, one as a fraction and one in the other unit.
type_in(document, "Size across flats", "8 5/8in")
type_in(document, "Panel thickness", "31,5")
type_in(document, "Kerf", "1/8in")
type_in(document, "Blank length", "30in")
DESIGN["size"]["value"] = 8.625 * 25.4
DESIGN["panel"]["thickness"] = 31.5
DESIGN["saw"]["kerf"] = 25.4 / 8
DESIGN["blank"]["length"] = 30 * 25.4
checked += compare(document, DESIGN)

# What is wrong is read in the cell.
type_in(document, "Kerf", "wide")
rows = {row[0]: row[1] for row in cells(document, "Results")}
expect(
    "a wrong kerf",
    rows["Segments from a blank"],
    'ERROR: kerf must be a length such as 79.4, 3 1/8, 3-1/8in or 79.4mm, but is "wide".')
type_in(document, "Kerf", "1/8in")

# Sets, and a wall that breaks through: the STOP stands at the top of each sheet.
type_in(document, "Sets", "inverted")
type_in(document, "Panel thickness", "8")
DESIGN["sets"] = "INVERTED"
DESIGN["panel"]["thickness"] = 8
checked += compare(document, DESIGN)
expect("a sphere that breaks through", cells(document, "Design")[3][0], "STOP")
type_in(document, "Panel thickness", "31.5")
DESIGN["panel"]["thickness"] = 31.5

# Inches, with fractions; a wood that cannot be weighed; a width without a wood.
type_in(document, "Unit of lengths", "IN")
for words, path, inches in (
        ("Panel thickness", ("panel", "thickness"), 1.25), ("Land", ("panel", "land"), 0.125),
        ("End trim", ("saw", "endTrim"), 0.375), ("Sphere diameter", ("sphere", "diameter"), 8.25),
        ("Turning allowance", ("sphere", "turningAllowance"), 0.0625), ("Minimum wall", ("sphere", "minimumWall"), 0.2),
        ("Size across flats", ("size", "value"), 8.625), ("Kerf", ("saw", "kerf"), 0.125),
        ("Blank length", ("blank", "length"), 30)):
    type_in(document, words, str(inches))
    DESIGN[path[0]][path[1]] = inches
DESIGN["unit"] = "in"
bands = [("", "white ash", "5/8"), ("", "american beech", "0.37"), ("", "white ash", "rest")]
write_bands(document, bands)
DESIGN["laminations"] = [{"bands": [
    {"species": "white ash", "width": 0.625}, {"species": "american beech", "width": 0.37},
    {"species": "white ash", "width": None}]}]
checked += compare(document, DESIGN)
write_bands(document, [("", "moonwood", "rest")])
told = "ERROR: The density of moonwood is not known"
rows = {row[0]: row[1] for row in cells(document, "Results")}
expect("the mass of an unknown wood", rows["Mass of the finished sphere, first set"][:len(told)], told)
write_bands(document, [("", "", "1/4in")])
told = 'ERROR: bands has no wood and width in "1/4'
rows = {row[0]: row[1] for row in cells(document, "Results")}
expect("a width without a wood", rows["Blanks of this face kind, all spheres"][:len(told)], told)

# All solids, with rows of bands for each face kind.
for words, value in (("Unit of lengths", "mm"), ("Land", ""), ("Sphere diameter", ""), ("Turning allowance", ""),
                     ("Minimum wall", ""), ("Sets", "TWINS"), ("Size across flats", "212"), ("Panel thickness", "30"),
                     ("Kerf", "2.6"), ("End trim", ""), ("Blank length", "720")):
    type_in(document, words, value)
solids = answered("/v1/solids")["solids"]
expect("number of solids", len(solids), 31)
for solid in solids:
    faces = solid["faceKinds"]
    type_in(document, "Solid", solid["name"].replace("-", " ").title())
    write_bands(document, [row for face in faces for row in ((face, "white ash", "2"), ("", "red alder", "rest"))])
    checked += compare(document, {
        "unit": "mm", "solid": solid["name"], "copies": 2, "size": {"by": "ACROSS_FLATS", "value": 212},
        "panel": {"thickness": 30}, "saw": {"kerf": 2.6}, "blank": {"length": 720},
        "laminations": [{"face": face, "bands": [
            {"species": "white ash", "width": 2}, {"species": "red alder", "width": None}]} for face in faces]})

# Another face kind than the first.
type_in(document, "Solid", "cuboctahedron")
write_bands(document, [("square", "red alder", "4"), ("", "white ash", "rest"),
                       ("triangle", "red alder", "5"), ("", "white ash", "rest")])
for face, width in (("square", 4.0), ("triangle", 5.0)):
    type_in(document, "Face kind to show", face)
    expect("width of the first band of the " + face, cells(document, "Bands")[FIRST_BAND][2], width)
    for name in ("Results", "Bands"):
        expect("face kind shown on " + name, head(document, name)[0], "Face kind shown: " + face)

# A face kind alone in its row is that of the rows below it; with no wood below it, it is refused.
write_bands(document, [("square", "", ""), ("", "red alder", "4"), ("", "white ash", "rest"),
                       ("triangle", "", ""), ("", "red alder", "6"), ("", "white ash", "rest")])
expect("width of the first band under a heading", cells(document, "Bands")[FIRST_BAND][2], 6.0)
write_bands(document, [("square", "red alder", "4"), ("", "white ash", "rest"), ("triangle", "", "")])
told = "ERROR: bands names no wood in"
expect("a heading without bands", cells(document, "Bands")[FIRST_BAND][2][:len(told)], told)

# The sheet has room for 8 bands, and says so of the ninth.
type_in(document, "Face kind to show", "")
for count, said in ((8, ""), (9, "More bands are not shown.")):
    write_bands(document, [("", ("white ash", "red alder")[i % 2], "2") for i in range(count - 1)]
                + [("", "white ash", "rest")])
    expect(f"a sheet of {count} bands", head(document, "Bands"), ["Face kind shown: the first of the solid", said])
charts = document.Sheets.getByName("Bands").Charts
expect("number of charts", charts.Count, 1)
document.close(True)
print(f"sheets: {checked} cells of {WORKBOOK.rsplit('/', 1)[1]} agree, {labels} labels fit", flush=True)
# The bridge to the office may crash while the interpreter takes itself apart.
os._exit(0)
