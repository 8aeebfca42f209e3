// Runs the functions for spreadsheets in the web, with curl in the place of their fetching, and compares.
// Usage: node cells.mjs SERVICE DESIGN [KEY]
import { execFileSync } from "node:child_process";
import { readFileSync } from "node:fs";
import vm from "node:vm";

const [service, file, key = ""] = process.argv.slice(2);
const design = readFileSync(file, "utf8");
const UrlFetchApp = {
  fetch(address, options) {
    const sent = options.payload ? ["-H", "Content-Type: " + options.contentType, "--data-binary", "@-"] : [];
    Object.entries(options.headers ?? {}).forEach(([name, value]) => sent.push("-H", `${name}: ${value}`));
    const answer = execFileSync("curl", ["-s", "-w", "\n%{http_code}", ...sent, address], {
      input: options.payload ?? "", encoding: "utf8", maxBuffer: 1 << 26 });
    const end = answer.lastIndexOf("\n");
    return { getContentText: () => answer.slice(0, end), getResponseCode: () => Number(answer.slice(end + 1)) };
  },
};
const headers = key === "" ? {} : { "X-API-Key": key };
const source = UrlFetchApp.fetch(service + "/clients/orbwright-cells.js", { headers }).getContentText();

/** The functions as a user has them who set address and key. */
function installed(withKey) {
  const context = vm.createContext({ UrlFetchApp });
  vm.runInContext(source.replace("http://localhost:8080", service).replace('KEY = ""', `KEY = "${withKey}"`), context);
  return context;
}
const context = installed(key);
const sheet = JSON.parse(UrlFetchApp.fetch(service + "/v1/sheet",
  { headers, payload: design, contentType: "application/json" }).getContentText());

function expect(what, seen, wanted) {
  if (JSON.stringify(seen) !== JSON.stringify(wanted)) {
    console.error(`sheets: ${what} is ${JSON.stringify(seen)}, not ${JSON.stringify(wanted)}`);
    process.exit(1);
  }
}

expect("a cell", context.ORBWRIGHT_CELL("blade-tilt", "solid=icosahedron"), 20.9052);
expect("a wrong cell", context.ORBWRIGHT_CELL("blade-tilt", "solid=ball").slice(0, 6), "ERROR:");
expect("a bare percent sign", context.ORBWRIGHT_CELL("blade-tilt", "solid=%"),
  "ERROR: the service answers with status 400 and says no more");
expect("a value", context.ORBWRIGHT_VALUE(design, "/sphere/thinnestWall"), sheet.sphere.thinnestWall);
expect("a missing value", context.ORBWRIGHT_VALUE(design, "/nothing"), "ERROR: there is no value at /nothing");
expect("a wrong design", context.ORBWRIGHT_VALUE("{}", "/x").slice(0, 25), "ERROR: size is missing. A".slice(0, 25));
const table = context.ORBWRIGHT_TABLE(design, "findings");
expect("findings", table.slice(1).map((row) => row[2]), sheet.findings.map((finding) => finding.message));
const bands = context.ORBWRIGHT_TABLE(design, "bands");
const survival = bands[0].indexOf("survival");
expect("survivals", bands.slice(1).map((row) => row[survival]),
  sheet.bands.faces[0].segments[0].upright.map((band) => band.survival));
if (key !== "") {
  const wrong = installed("another key");
  expect("a cell with another key", wrong.ORBWRIGHT_CELL("blade-tilt", "solid=cube").slice(0, 14), "ERROR: The key");
  expect("a value with another key", wrong.ORBWRIGHT_VALUE(design, "/x").slice(0, 14), "ERROR: The key");
}
console.log("sheets: the functions for the web agree");
