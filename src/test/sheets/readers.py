"""Reads both workbooks with libraries that have nothing to do with the service, openpyxl and odfpy, and compares what
is stored in them with the service's sheet. Nothing is calculated and nothing fetched here.

Usage: readers.py SERVICE ODS XLSX
"""

import json
import sys
import urllib.request

import openpyxl
from odf import opendocument, style, table, teletype, text

SERVICE, ODS, XLSX = sys.argv[1:4]
SHEETS = {"Design": ("portrait", 4), "Results": ("portrait", 5), "Bands": ("landscape", 5),
          "Answers": ("landscape", 1), "Lists": ("portrait", 1)}
STORED = "Stored numbers, not fetched"
# Where a sheet says whether its numbers were fetched.
STATES = {"Design": "D1", "Results": "B1", "Bands": "J1"}
LISTS = {"faces", "sets", "solids", "units", "woods"}
DESIGN = {
    "unit": "mm", "solid": "icosahedron", "copies": 2, "size": {"by": "ACROSS_FLATS", "value": 212},
    "panel": {"thickness": 30, "land": 3},
    "laminations": [{"bands": [
        {"species": "white ash", "width": 17}, {"species": "red alder", "width": 5},
        {"species": "american beech", "width": 9}, {"species": "white ash", "width": None}]}],
    "saw": {"kerf": 2.6, "endTrim": 10}, "blank": {"length": 720},
    "sphere": {"diameter": 206, "turningAllowance": 2, "minimumWall": 6},
}


def expect(what, seen, wanted):
    if seen != wanted:
        sys.exit(f"sheets: {what} is {seen!r}, not {wanted!r}")


request = urllib.request.Request(
    SERVICE + "/v1/sheet", json.dumps(DESIGN).encode(), {"Content-Type": "application/json"})
sheet = json.load(urllib.request.urlopen(request, timeout=60))
segment = sheet["bands"]["faces"][0]["segments"][0]
WANTED = {
    "Blade tilt for the bevel": sheet["angles"]["faces"][0]["bladeTilt"],
    "Thinnest wall; below 0 it breaks through": sheet["sphere"]["thinnestWall"],
    "Mass of the finished sphere, first set": sheet["yield"]["spheres"][0]["mass"],
}
WIDTHS = [[{band["band"]: band for band in segment[name]}[number]["visibleWidth"]["edgeMiddle"]
           for number in range(1, 5)] for name in ("upright", "inverted")]

# Office Open XML.
book = openpyxl.load_workbook(XLSX, data_only=True)
expect("sheets", book.sheetnames, list(SHEETS))
for name, (across, titles) in SHEETS.items():
    page = book[name]
    expect("paper of " + name, page.page_setup.orientation, across)
    expect("fit of " + name, (page.sheet_properties.pageSetUpPr.fitToPage, page.page_setup.fitToWidth), (True, 1))
    expect("headings of " + name, page.print_title_rows, f"$1:${titles}")
offered = book["Design"].data_validations.dataValidation
expect("lists that are offered", {choice.formula1 for choice in offered}, LISTS)
expect("refusals", {bool(choice.showErrorMessage) for choice in offered}, {False})
expect("kinds of choices", {choice.type for choice in offered}, {"list"})
for name in LISTS:
    place = book.defined_names[name].attr_text.replace("$", "").split("!")
    values = [row[0].value for row in book[place[0]][place[1]]]
    expect("blanks in " + name, [value for value in values if not value], [])
results = {row[0]: row[1] for row in book["Results"].iter_rows(values_only=True)}
for words, value in WANTED.items():
    expect(words, results[words], value)
bands = list(book["Bands"].iter_rows(min_row=6, max_row=9, values_only=True))
expect("visible widths", [[row[column] for row in bands] for column in (4, 9)], WIDTHS)
expect("finding", book["Design"]["B4"].value, sheet["findings"][0]["message"])
formulas = openpyxl.load_workbook(XLSX)
expect("a formula", formulas["Results"]["B6"].value.startswith("=Answers!"), True)
expect("charts", len(formulas["Bands"]._charts), 1)
for name, place in STATES.items():
    expect("state on " + name, book[name][place].value, STORED)

# OpenDocument.
document = opendocument.load(ODS)
pages = document.getElementsByType(table.Table)
expect("sheets", [page.getAttribute("name") for page in pages], list(SHEETS))


def rows(page):
    found = []
    for line in page.getElementsByType(table.TableRow):
        row = []
        for cell in line.childNodes:
            if getattr(cell, "qname", ("", ""))[1] in ("table-cell", "covered-table-cell"):
                number = cell.getAttribute("value") if cell.getAttribute("valuetype") == "float" else None
                words = "".join(teletype.extractText(part) for part in cell.getElementsByType(text.P))
                row += [words if number is None else float(number)] * int(
                    cell.getAttribute("numbercolumnsrepeated") or 1)
        found.append(row)
    return found


results = {row[0]: row[1] for row in rows(pages[1]) if len(row) > 1}
for words, value in WANTED.items():
    expect(words, results[words], value)
expect("visible widths", [[row[column] for row in rows(pages[2])[5:9]] for column in (4, 9)], WIDTHS)
expect("finding", rows(pages[0])[3][1], sheet["findings"][0]["message"])
for place, (name, cell) in enumerate(STATES.items()):
    expect("state on " + name, rows(pages[place])[0][ord(cell[0]) - ord("A")], STORED)
conditions = document.getElementsByType(table.ContentValidation)
expect("lists that are offered", {str(choice.getAttribute("condition")) for choice in conditions},
       {f"of:cell-content-is-in-list({name})" for name in LISTS})
for page, (across, titles) in zip(pages, SHEETS.values()):
    heading = page.getElementsByType(table.TableHeaderRows)[0]
    expect("headings", len(heading.getElementsByType(table.TableRow)), titles)
papers = {layout.getAttribute("name"): layout.getElementsByType(style.PageLayoutProperties)[0]
          for layout in document.getElementsByType(style.PageLayout)}
expect("papers", {name: setting.getAttribute("printorientation") for name, setting in papers.items()},
       {name: across for name, (across, titles) in SHEETS.items()})
print("sheets: openpyxl and odfpy read in both workbooks what the service answers")
