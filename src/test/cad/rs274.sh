#!/usr/bin/env bash
# Lets the packaged service write programs for many controls, on both machines and in both units, and runs each to its
# end in the interpreter of LinuxCNC. The ends and times of the moves that it commands have to be those of the service's
# way, on a rotary table that counts on and on one that wraps at 360 degrees.
# No part of run.sh, since Debian's linuxcnc-uspace takes minutes to install. Where it cannot be installed, this says so
# and ends without a fault, unless CI is set.
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

if ! need_interpreter; then
  [ -z "${CI:-}" ] || fail "linuxcnc-uspace cannot be installed"
  echo "rs274: skipped, as linuxcnc-uspace cannot be installed"
  exit 0
fi
rm -rf "$work"
mkdir -p "$work"
start_service "$work/service.log"
/usr/bin/python3 src/test/cad/rs274.py "$url" "$work"
