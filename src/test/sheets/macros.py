"""Runs the macros that the service hands out in LibreOffice Calc, and compares what they write with the service's sheet.

Usage, with the Python that has LibreOffice's module uno: macros.py SERVICE DESIGN PIPE [KEY]

With a key, which the service then has to ask for, one value is compared by each way to ask.
"""

import json
import os
import re
import sys
import urllib.request

import uno
from com.sun.star.beans import PropertyValue

SERVICE, DESIGN, PIPE = sys.argv[1:4]
KEY = sys.argv[4] if len(sys.argv) > 4 else ""
ALWAYS_EXECUTE = 4
# Constant of com.sun.star.sheet.FormulaResult.
STRING = 2
design = open(DESIGN, encoding="utf-8").read()


def fetch(path, body=None):
    headers = {"Content-Type": "application/json", "X-API-Key": KEY}
    request = urllib.request.Request(SERVICE + path, body, headers)
    return urllib.request.urlopen(request, timeout=30).read().decode()


def expect(what, seen, wanted):
    if seen != wanted and not (isinstance(seen, float) and abs(seen - wanted) < 1e-9):
        sys.exit(f"sheets: {what} is {seen!r}, not {wanted!r}")


local = uno.getComponentContext()
resolver = local.ServiceManager.createInstanceWithContext("com.sun.star.bridge.UnoUrlResolver", local)
context = resolver.resolve(f"uno:pipe,name={PIPE};urp;StarOffice.ComponentContext")
desktop = context.ServiceManager.createInstanceWithContext("com.sun.star.frame.Desktop", context)


def new_document():
    made = desktop.loadComponentFromURL(
        "private:factory/scalc", "_blank", 0,
        (PropertyValue("Hidden", 0, True, 0), PropertyValue("MacroExecutionMode", 0, ALWAYS_EXECUTE, 0)))
    if not made.BasicLibraries.hasByName("Standard"):
        made.BasicLibraries.createLibrary("Standard")
    return made


def install(name, source, key=KEY):
    """A key stands in a constant of the macros."""
    keyed, constants = re.subn(r'(Const KEY\b.*= )""', rf'\1"{key}"', source, flags=re.I)
    expect("number of constants for the key", constants, 1)
    document.BasicLibraries.getByName("Standard").insertByName(name, keyed.replace("http://localhost:8080", SERVICE))


def run(macro, *arguments):
    address = f"vnd.sun.star.script:Standard.{macro}?language=Basic&location=document"
    return document.getScriptProvider().getScript(address).invoke(arguments, (), ())[0]


document = new_document()
install("Posting", fetch("/clients/orbwright.bas"))
sheet = json.loads(fetch("/v1/sheet", design.encode()))
if KEY:
    expect("a value with a key", run("Posting.ORBWRIGHT", design, "/angles/faces/0/bladeTilt"),
           sheet["angles"]["faces"][0]["bladeTilt"])
    document.close(True)
    document = new_document()
    install("Posting", fetch("/clients/orbwright.bas"), "another key")
    expect("what is said of another key", run("Posting.ORBWRIGHT", design, "/x"),
           "ERROR: The key or token is not known, or no longer.")
    document.close(True)
    print("sheets: the macros send their key", flush=True)
    os._exit(0)

run("Posting.WriteTable", document, design, "bands")
page = document.Sheets.getByName("bands 1")
headings = {page.getCellByPosition(x, 0).String: x for x in range(25)}
upright = sheet["bands"]["faces"][0]["segments"][0]["upright"]
for y, band in enumerate(upright, 1):
    expect("a wood", page.getCellByPosition(headings["species"], y).String, band["species"])
    expect("a survival", page.getCellByPosition(headings["survival"], y).Value, band["survival"])
    expect("a width", page.getCellByPosition(headings["visibleWidthEdgeMiddle"], y).Value,
           band["visibleWidth"]["edgeMiddle"])

cells = document.Sheets.getByIndex(0)
cells.getCellByPosition(0, 0).String = design
document.CurrentController.select(cells.getCellByPosition(0, 0)) if document.CurrentController else None
cells.getCellByPosition(1, 0).Formula = '=ORBWRIGHT(A1;"/angles/faces/0/bladeTilt")'
expect("a value by its pointer", cells.getCellByPosition(1, 0).Value, sheet["angles"]["faces"][0]["bladeTilt"])
cells.getCellByPosition(1, 1).Formula = '=ORBWRIGHT(A1;"/yield/species/0/species")'
expect("a text by its pointer", cells.getCellByPosition(1, 1).String, sheet["yield"]["species"][0]["species"])
run("Posting.WriteTable", document, '{"unit":"mm"}', "sheet")
wrong = document.Sheets.getByName("sheet 1").getCellByPosition(0, 0).String
expect("what is said of a wrong design", wrong[:25], "ERROR: size is missing. An"[:25])


# Texts that are no numbers stay texts, and a line break inside a text ends no row.
TEXTS = ["2024-11", "1.2.3", "7.", ".5", "two\nlines, and \"more\""]


THIN = {**json.loads(design), "panel": {"thickness": 8}}
below = json.loads(fetch("/v1/sheet", json.dumps(THIN).encode()))["sphere"]["thinnestWall"]
expect("a wall that is broken through", below < 0, True)


def check_function(name, formula):
    """What a macro's function makes of the texts, of numbers, and of a wrong design."""
    for text in TEXTS:
        named = json.dumps({**json.loads(design), "name": text})
        seen = formula(named, "/document/name")
        expect(f"{name} of the name", seen, text)
    expect(f"{name} of a number below 0", formula(json.dumps(THIN), "/sphere/thinnestWall"), below)
    expect(f"{name} of a wrong design", formula('{"unit":"mm"}', "/x")[:25], "ERROR: size is missing. An"[:25])
    expect(f"{name} of a wrong pointer", formula(design, "/x"), "ERROR: there is no /x in the answer")


def in_a_cell(text, pointer):
    cells.getCellByPosition(0, 2).String = text
    cells.getCellByPosition(1, 2).Formula = f'=ORBWRIGHT(A3;"{pointer}")'
    document.calculateAll()
    cell = cells.getCellByPosition(1, 2)
    return cell.String if cell.FormulaResultType2 == STRING else cell.Value


check_function("the Basic function", in_a_cell)

# Calc reads the module for VBA, but has no object that fetches here: the macro has to say so.
vba = fetch("/clients/orbwright-vba.bas")
install("Vba", "Option VBASupport 1\n" + vba)
said = run("Vba.ORBWRIGHT", design, "/angles/faces/0/bladeTilt")
expect("what the VBA macro says without an answer", said, f"ERROR: no answer from {SERVICE}")
# The rest of it is run with the fetching of the Basic macro.
FETCHED = """Private Function PostedTable(ByVal Design As String, ByVal Table As String) As String
    PostedTable = Posting.PostedTable(Design, Table)
End Function"""
install("Fetched", "Option VBASupport 1\n" + re.sub("Private Function PostedTable.*?End Function", FETCHED, vba, flags=re.S))
check_function("the VBA function", lambda text, pointer: run("Fetched.ORBWRIGHT", text, pointer))
document.close(True)
print("sheets: the macros agree", flush=True)
# The bridge to the office may crash while the interpreter takes itself apart.
os._exit(0)
