#!/usr/bin/env bash
# Opens the service's workbooks in LibreOffice Calc, first without fetching, then from the packaged service, and compares
# their cells with the sheet for all solids; reads them with two other libraries; prints them in A4 and letter; runs the
# macros that the service hands out, the functions for spreadsheets in the web, and the scripts.
# Needs what `mvn package` leaves behind. On Debian as root, what is missing is installed. Usage: src/test/sheets/run.sh
set -euo pipefail
shopt -s inherit_errexit
cd "$(dirname "$0")/../../.."

sources=src/test/sheets
work=$PWD/target/sheets
pipe=orbwright-$$
. src/test/service.sh sheets

need_calc() {
  command -v soffice >/dev/null && /usr/bin/python3 -c 'import uno, openpyxl, odf' 2>/dev/null && return
  echo "sheets: installing LibreOffice Calc"
  local packages="libreoffice-calc python3-uno python3-openpyxl python3-odf"
  # shellcheck disable=SC2086
  { apt-get update -qq && DEBIAN_FRONTEND=noninteractive apt-get install -y -qq --no-install-recommends $packages; } \
    >"$work/install.log" 2>&1 || fail "LibreOffice Calc (packages $packages) is needed, and cannot be installed"
}

# Calc fetches while it loads a file only if the file's folder is trusted.
start_calc() {
  mkdir -p "$work/profile/user"
  cat >"$work/profile/user/registrymodifications.xcu" <<XML
<?xml version="1.0" encoding="UTF-8"?>
<oor:items xmlns:oor="http://openoffice.org/2001/registry" xmlns:xs="http://www.w3.org/2001/XMLSchema">
  <item oor:path="/org.openoffice.Office.Common/Security/Scripting">
    <prop oor:name="SecureURL" oor:op="fuse"><value><it>file://$work</it></value></prop>
  </item>
</oor:items>
XML
  soffice "-env:UserInstallation=file://$work/profile" --headless --norestore --nologo \
    "--accept=pipe,name=$pipe;urp;" >"$work/calc.log" 2>&1 &
  started+=($!)
}

rm -rf "$work"
mkdir -p "$work"
need_calc
command -v node >/dev/null || need_program nodejs
start_service "$work/service.log"
start_calc
for format in ods xlsx; do
  curl -sf -o "$work/workbook.$format" "$url/clients/workbook.$format" || fail "the service has no workbook.$format"
  /usr/bin/python3 "$sources/workbook.py" "$url" "$work/workbook.$format" "$pipe" "$work/workbook-$format"
done
/usr/bin/python3 "$sources/readers.py" "$url" "$work/workbook.ods" "$work/workbook.xlsx"
design=src/main/resources/designs/icosahedron-mixed.json
/usr/bin/python3 "$sources/macros.py" "$url" "$design" "$pipe"
node "$sources/cells.mjs" "$url" "$design"

# The scripts: what they write, and their exit codes.
expect_code() {
  local wanted=$1 code=0
  shift
  "$@" >"$work/script.out" 2>"$work/script.err" || code=$?
  [ "$code" = "$wanted" ] || { cat "$work/script.out" "$work/script.err" >&2; fail "$* ended with $code, not $wanted"; }
}
export ORBWRIGHT_SERVICE=$url
for script in sheet.sh batch.py; do
  curl -sf -o "$work/$script" "$url/clients/$script" || fail "the service has no $script"
done
cp "$design" "$work/lamp.json"
echo '{}' >"$work/wrong.json"
expect_code 0 sh "$work/sheet.sh" "$work/lamp.json"
grep -q '"bladeTilt":20.9052' "$work/lamp.sheet.json" || fail "sheet.sh wrote no sheet"
expect_code 1 sh "$work/sheet.sh" "$work/wrong.json" "$work/lamp.json"
grep -q 'wrong.json: refused with 400: size is missing' "$work/script.err" || fail "sheet.sh does not say what is wrong"
expect_code 2 env ORBWRIGHT_SERVICE=http://127.0.0.1:1 sh "$work/sheet.sh" "$work/lamp.json"
expect_code 0 sh "$work/sheet.sh" "$work"/lamp*.json
[ ! -e "$work/lamp.sheet.sheet.json" ] || fail "sheet.sh takes its own answers for designs"
tr -d '\n' <"$design" >"$work/lamp.ndjson"
{ for _ in $(seq 2000); do cat "$work/lamp.ndjson"; echo; done; } >"$work/many.ndjson"
expect_code 0 python3 "$work/batch.py" "$work/many.ndjson"
[ "$(wc -l <"$work/script.out")" = 2000 ] || fail "batch.py wrote $(wc -l <"$work/script.out") lines of 2000"
echo '{}' >>"$work/many.ndjson"
expect_code 1 python3 "$work/batch.py" "$work/many.ndjson"
grep -q '^line 2001: size is missing' "$work/script.err" || fail "batch.py does not say what is wrong"
expect_code 2 env ORBWRIGHT_SERVICE=http://127.0.0.1:1 python3 "$work/batch.py" "$work/many.ndjson"
expect_code 2 python3 "$work/batch.py" "$work/nothing.ndjson"
grep -q 'nothing.ndjson: cannot be read: No such file' "$work/script.err" || fail "batch.py does not name a missing file"
sed 's/"thickness": *30.0/"thickness": 8/' "$work/lamp.ndjson" >"$work/thin.ndjson"
expect_code 1 python3 "$work/batch.py" "$work/thin.ndjson"
grep -q '^line 1: answered with a STOP' "$work/script.err" || fail "batch.py does not tell of a STOP"
printf '\n\n \n' >>"$work/lamp.ndjson"
expect_code 0 python3 "$work/batch.py" "$work/lamp.ndjson"

# An answer that breaks off, between lines and within one, and one that is no HTTP.
head='HTTP/1.1 200 OK\r\nTransfer-Encoding: chunked\r\n\r\n'
for answer in "$head"'1c\r\n{"line":1,"angles":{"a":1}}\n\r\n' "$head"'16\r\n{"line":1,"angles":{"a\r\n' 'no HTTP\r\n\r\n'; do
  rm -f "$work/port"
  python3 "$sources/breaks_off.py" "$work/port" "$answer" &
  started+=($!)
  for _ in $(seq 50); do [ -s "$work/port" ] && break; sleep 0.1; done
  expect_code 2 env ORBWRIGHT_SERVICE="http://127.0.0.1:$(cat "$work/port")" python3 "$work/batch.py" "$work/many.ndjson"
  grep -q 'breaks off after line\|no answer from' "$work/script.err" || fail "batch.py does not tell what is wrong"
done
echo "sheets: the scripts end as they say"

# A service that asks for a key.
key=$(openssl rand -hex 32)
echo "bench $(printf %s "$key" | sha256sum | cut -c1-64)" >"$work/keys"
stop_service "$service"
start_service "$work/keyed.log" "-Dorbwright.access.keys=$work/keys"
export ORBWRIGHT_SERVICE=$url
expect_code 1 sh "$work/sheet.sh" "$work/lamp.json"
grep -q 'lamp.json: refused with 401: A key is needed' "$work/script.err" || fail "sheet.sh does not say that a key is needed"
expect_code 2 python3 "$work/batch.py" "$work/lamp.ndjson"
grep -q 'refused with 401: .*A key is needed' "$work/script.err" || fail "batch.py does not say that a key is needed"
expect_code 0 env ORBWRIGHT_KEY="$key" sh "$work/sheet.sh" "$work/lamp.json"
expect_code 0 env ORBWRIGHT_KEY="$key" python3 "$work/batch.py" "$work/lamp.ndjson"
grep -q '^{"line":1,"sheet"' "$work/script.out" || fail "batch.py answers nothing with a key"
/usr/bin/python3 "$sources/macros.py" "$url" "$design" "$pipe" "$key"
node "$sources/cells.mjs" "$url" "$design" "$key"
echo "sheets: the scripts send their key"
