/*
 * Functions for spreadsheets in the web whose scripts have UrlFetchApp and run on a server: that server has to reach the
 * service, so give its public address, not localhost, and protect it (see the settings).
 *
 * Install: paste this file into the spreadsheet's script editor and set SERVICE, and KEY where the service asks for one.
 * Whoever may edit the spreadsheet can read the key.
 * Use in a cell:
 *   =ORBWRIGHT_CELL("blade-tilt", "solid=icosahedron")
 *   =ORBWRIGHT_VALUE(A1, "/angles/faces/0/bladeTilt")     with a whole design (JSON) in A1
 *   =ORBWRIGHT_TABLE(A1, "bands")                         a table that spreads over the cells below
 * A table begins with a row for each STOP: do not cut this. Beside single values show "/findings/0/severity", which is
 * STOP if there is any.
 *
 * The numbers say what fits, not what is safe: the machine's manual, local rules and instruction come first.
 */
const SERVICE = "http://localhost:8080";
const KEY = "";

/** One value, from a query as GET /v1/cell lists it. */
function ORBWRIGHT_CELL(name, query) {
  const path = "/v1/cell/" + encodeURIComponent(name) + "?errors=text&" + query.replace(/ /g, "%20");
  const answer = fetched(path, {});
  return answer.getContentText() === "" && answer.getResponseCode() !== 200 ? wrong(answer) : asValue(answer.getContentText());
}

/** One value of the sheet of a whole design, by its JSON pointer. */
function ORBWRIGHT_VALUE(design, pointer) {
  const answer = fetched("/v1/sheet", posted(design));
  if (answer.getResponseCode() !== 200) {
    return wrong(answer);
  }
  const content = JSON.parse(answer.getContentText());
  const value = pointer.split("/").slice(1).reduce((part, step) => (part == null ? part : part[step]), content);
  return value === undefined || typeof value === "object" ? "ERROR: there is no value at " + pointer : value;
}

/** A table of the sheet of a whole design, as rows and columns. */
function ORBWRIGHT_TABLE(design, table) {
  const answer = fetched("/v1/table/" + encodeURIComponent(table) + "?format=csv", posted(design));
  if (answer.getResponseCode() !== 200) {
    return wrong(answer);
  }
  const row = /("(?:[^"]|"")*"|[^",\r\n]*)(,|\r\n)/g;
  const rows = [[]];
  for (const [, cell, end] of answer.getContentText().matchAll(row)) {
    rows[rows.length - 1].push(asValue(cell.startsWith('"') ? cell.slice(1, -1).replace(/""/g, '"') : cell));
    if (end === "\r\n") {
      rows.push([]);
    }
  }
  return rows.slice(0, -1);
}

/** What is wrong: in the service's words, or by the status where nothing else is told or something else answers. */
function wrong(answer) {
  const text = answer.getContentText();
  const detail = text.startsWith("{") ? JSON.parse(text).detail : undefined;
  return "ERROR: " + (detail ?? "the service answers with status " + answer.getResponseCode() + " and says no more");
}

function posted(design) {
  return { method: "post", contentType: "application/json", payload: design };
}

function fetched(path, options) {
  const headers = KEY === "" ? {} : { "X-API-Key": KEY };
  return UrlFetchApp.fetch(SERVICE + path, { ...options, headers, muteHttpExceptions: true });
}

function asValue(text) {
  return /^-?[0-9]+(\.[0-9]+)?$/.test(text) ? Number(text) : text;
}
