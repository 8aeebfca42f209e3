#!/bin/sh
# Posts designs to the service and writes a sheet beside each: sheet.sh design.json ... makes design.sheet.json.
# Files with such a name are skipped, so that *.json can be given again.
# Set the service's address in ORBWRIGHT_SERVICE. Without it the address is http://localhost:8080. Where the service
# asks for a key, set it in ORBWRIGHT_KEY.
# Exit codes: 0 every design was answered without a STOP; 1 a design was refused, or has a STOP; 2 the service did not
# answer, or a file cannot be read. Needs curl (7.55 or later) and nothing else.
service=${ORBWRIGHT_SERVICE:-http://localhost:8080}
code=0
[ $# -gt 0 ] || { echo "usage: sheet.sh design.json ..." >&2; exit 2; }
for design in "$@"; do
  case $design in *.sheet.json) continue ;; esac
  [ -r "$design" ] || { echo "$design: cannot be read" >&2; exit 2; }
  sheet=${design%.json}.sheet.json
  # The key goes by a pipe: everybody on the machine can read a program's arguments. curl leaves out an empty header.
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
