#!/bin/sh
# Posts designs to the service and writes a sheet beside each: sheet.sh design.json ... makes design.sheet.json.
# Files that are named so are passed over, so that *.json can be given again.
# The service's address stands in ORBWRIGHT_SERVICE, http://localhost:8080 if that is not set; the key, where the service
# asks for one, in ORBWRIGHT_KEY.
# Exit codes: 0 every design was answered without a STOP; 1 a design was refused, or has a STOP; 2 the service did not
# answer, or a file cannot be read. Needs curl (7.55 or later) and nothing else.
service=${ORBWRIGHT_SERVICE:-http://localhost:8080}
code=0
[ $# -gt 0 ] || { echo "usage: sheet.sh design.json ..." >&2; exit 2; }
for design in "$@"; do
  case $design in *.sheet.json) continue ;; esac
  [ -r "$design" ] || { echo "$design: cannot be read" >&2; exit 2; }
  sheet=${design%.json}.sheet.json
  # By a pipe, as everybody on the machine may read a program's words; curl leaves out a header without a value.
  status=$(printf 'X-API-Key: %s\n' "$ORBWRIGHT_KEY" | curl -s -o "$sheet" -w '%{http_code}' -H @- \
    -H 'Content-Type: application/json' --data-binary "@$design" "$service/v1/sheet") ||
    { echo "$design: no answer from $service" >&2; rm -f "$sheet"; exit 2; }
  if [ "$status" != 200 ]; then
    echo "$design: refused with $status: $(sed -n 's/.*"detail":"\(\([^"\\]\|\\.\)*\)".*/\1/p' "$sheet")" >&2
    rm -f "$sheet"
    code=1
  elif grep -q '"severity":"STOP"' "$sheet"; then
    echo "$design: answered in $sheet, with a STOP: do not cut this" >&2
    code=1
  else
    echo "$design: answered in $sheet"
  fi
done
exit $code
