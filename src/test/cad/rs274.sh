#!/usr/bin/env bash
# Lets the packaged service write programs for many controls, on both machines and in both units, and runs each to its
# end in the interpreter of LinuxCNC. The ends and times of the moves that it commands have to be those of the service's
# way, on a rotary table that counts on and on one that wraps at 360 degrees.
# No part of run.sh, since Debian's linuxcnc-uspace takes minutes to install. Where it cannot be installed, this fails.
# ORBWRIGHT_SKIP_RS274=1 leaves it out.
# Needs what `mvn package` leaves behind. Usage: src/test/cad/rs274.sh
set -euo pipefail
shopt -s inherit_errexit
cd "$(dirname "$0")/../../.."

work=target/rs274
. src/test/service.sh rs274

need_interpreter() {
  command -v rs274 >/dev/null && return
  echo "rs274: installing linuxcnc-uspace"
  local root=
  [ "$(id -u)" = 0 ] || root=sudo
  $root apt-get update -qq
  DEBIAN_FRONTEND=noninteractive $root apt-get install -y -qq -o DPkg::Lock::Timeout=600 --no-install-recommends \
    linuxcnc-uspace >/dev/null
}

if [ "${ORBWRIGHT_SKIP_RS274:-}" = 1 ]; then
  echo "rs274: skipped, as ORBWRIGHT_SKIP_RS274 is 1"
  exit 0
fi
need_interpreter || fail "linuxcnc-uspace cannot be installed"
rm -rf "$work"
mkdir -p "$work"
start_service "$work/service.log"
/usr/bin/python3 src/test/cad/rs274.py "$url" "$work"
