#!/usr/bin/env bash
# Lets the packaged service make outlines and bodies of worked designs and opens them with independent programs: ezdxf
# reads and audits the DXF files, whose areas have to be those of the service's other answers; admesh has nothing to mend
# in the STL files, and finds the service's volumes; Python reads the 3MF files.
# Needs what `mvn package` leaves behind. Installs Debian's python3-ezdxf and admesh where they are missing.
# Usage: src/test/cad/run.sh
set -euo pipefail
shopt -s inherit_errexit
cd "$(dirname "$0")/../../.."

work=target/cad
jar=target/quarkus-app/quarkus-run.jar
python=/usr/bin/python3
service=

fail() {
  echo "cad: $*" >&2
  exit 1
}

stop_service() {
  if [ -n "$service" ]; then
    kill "$service" 2>/dev/null || true
    wait "$service" 2>/dev/null || true
  fi
}
trap stop_service EXIT

start_service() {
  java -Dquarkus.http.host=127.0.0.1 -Dquarkus.http.port=0 -jar "$jar" >"$work/service.log" 2>&1 &
  service=$!
  for _ in $(seq 300); do
    url=$(sed -n 's/.*Listening on: \(http[^ ]*\).*/\1/p' "$work/service.log")
    [ -n "$url" ] && return
    kill -0 "$service" 2>/dev/null || break
    sleep 0.2
  done
  cat "$work/service.log" >&2
  fail "the service did not start"
}

need_programs() {
  command -v admesh >/dev/null && "$python" -c 'import ezdxf' 2>/dev/null && return
  echo "cad: installing ezdxf and admesh"
  local root=
  [ "$(id -u)" = 0 ] || root=sudo
  $root apt-get update -qq
  DEBIAN_FRONTEND=noninteractive $root apt-get install -y -qq -o DPkg::Lock::Timeout=300 python3-ezdxf admesh >/dev/null ||
    fail "python3-ezdxf and admesh cannot be installed"
}

[ -f "$jar" ] || fail "the service is not packaged; run mvn package first"
rm -rf "$work"
mkdir -p "$work"
need_programs
start_service
"$python" src/test/cad/check.py "$url" "$work"
