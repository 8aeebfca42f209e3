#!/usr/bin/env bash
# Runs the macro for FreeCAD without a window against the packaged service, and lets FreeCAD judge what it fetched:
# meshes that are solids, whose facets all face outwards, and solids of the service's volumes.
# A job of its own, since FreeCAD takes 1.3 GB: it is installed from Debian's packages where it is missing.
# Needs what `mvn package` leaves behind. Usage: src/test/cad/freecad.sh
set -euo pipefail
shopt -s inherit_errexit
cd "$(dirname "$0")/../../.."

work=target/freecad
. src/test/service.sh freecad

need_freecad() {
  command -v freecadcmd >/dev/null && return
  echo "freecad: installing FreeCAD"
  local root=
  [ "$(id -u)" = 0 ] || root=sudo
  $root apt-get update -qq
  DEBIAN_FRONTEND=noninteractive $root apt-get install -y -qq -o DPkg::Lock::Timeout=600 --no-install-recommends freecad \
    >/dev/null || fail "freecad cannot be installed"
}

rm -rf "$work"
mkdir -p "$work"
need_freecad
start_service "$work/service.log"
curl -sf -o "$work/fetch_bodies.FCMacro" "$url/clients/fetch_bodies.FCMacro" || fail "the service does not serve the macro"

designs=src/main/resources/designs

# What the macro says where nothing can be fetched: expect <words> <variable=value> ...
expect() {
  local words=$1
  shift
  env -u ORBWRIGHT_DESIGN ORBWRIGHT_SERVICE="$url" "$@" \
    timeout 60 freecadcmd "$work/fetch_bodies.FCMacro" </dev/null >"$work/refused.log" 2>&1 || true
  grep -q "nothing was fetched: .*$words" "$work/refused.log" || { cat "$work/refused.log" >&2; fail "no such words: $words"; }
  ! grep -q Traceback "$work/refused.log" || { cat "$work/refused.log" >&2; fail "a trace instead of words"; }
  echo "macro without a body: $words"
}
design=ORBWRIGHT_DESIGN=$designs/icosahedron-mixed.json
expect 'set ORBWRIGHT_DESIGN'
expect 'missing.json cannot be read' ORBWRIGHT_DESIGN=missing.json
expect 'no answer from http://127.0.0.1:9' "$design" ORBWRIGHT_SERVICE=http://127.0.0.1:9
expect 'parts must be ONE or left out' "$design" 'ORBWRIGHT_BODY=solid?parts=WOODS'

# A service that asks for a key.
key=$(openssl rand -hex 32)
echo "bench $(printf %s "$key" | sha256sum | cut -c1-64)" >"$work/keys"
open=$url
start_service "$work/keyed.log" "-Dorbwright.access.keys=$work/keys"
expect 'A key is needed' "$design"
expect 'The key or token is not known' "$design" ORBWRIGHT_KEY=another
expect 'parts must be ONE or left out' "$design" 'ORBWRIGHT_BODY=solid?parts=WOODS' ORBWRIGHT_KEY="$key"
stop_service "$service"
url=$open

for body in segment panel solid shell sphere?deviation=0.5 'sphere?parts=ONE&deviation=2' 'shell?parts=ONE'; do
  for design in icosahedron-mixed truncated-octahedron-alternating; do
    numbers="$url/v1/bodies/$body"
    case $body in *\?*) numbers="$numbers&format=json" ;; *) numbers="$numbers?format=json" ;; esac
    curl -sf -o "$work/numbers.json" -H 'Content-Type: application/json' --data "@$designs/$design.json" "$numbers"
    ORBWRIGHT_SERVICE=$url ORBWRIGHT_DESIGN=$designs/$design.json ORBWRIGHT_BODY=$body \
      ORBWRIGHT_NUMBERS=$work/numbers.json ORBWRIGHT_MACRO=$work/fetch_bodies.FCMacro \
      timeout 300 freecadcmd src/test/cad/judge.py >"$work/judge.log" 2>&1 || { cat "$work/judge.log" >&2; fail "$design $body"; }
    # The program ends with 0 even if its script fails.
    grep -q '^judged' "$work/judge.log" || { cat "$work/judge.log" >&2; fail "$design $body"; }
    echo "$design $body: $(grep '^judged' "$work/judge.log")"
  done
done

# Outlines: all that FreeCAD says beside its progress is a complaint.
for picture in panel segment disc templates pocket; do
  for query in format=dxf 'format=dxf&unit=in'; do
    file="$work/$picture.dxf"
    curl -sf -o "$file" -H 'Content-Type: application/json' --data "@$designs/icosahedron-mixed.json" \
      "$url/v1/drawings/$picture?$query" || fail "no outline: $picture?$query"
    /usr/bin/python3 src/test/cad/measure_dxf.py "$file" >"$work/outline.json"
    ORBWRIGHT_DXF=$file ORBWRIGHT_OUTLINE=$work/outline.json \
      timeout 60 freecadcmd src/test/cad/judge_dxf.py >"$work/judge.log" 2>&1 || { cat "$work/judge.log" >&2; fail "$picture"; }
    grep -q '^judged' "$work/judge.log" || { cat "$work/judge.log" >&2; fail "$picture?$query"; }
    ! grep -iE 'fail|error|warn|unknown|cannot' "$work/judge.log" || fail "FreeCAD complains of $picture?$query"
    echo "$picture?$query: $(grep '^judged' "$work/judge.log")"
  done
done
