#!/usr/bin/env bash
# Lets PrusaSlicer open the 3MF files of the packaged service, in both units: every part is closed, in its place, and of
# the volume that the service says. Release 2.5 takes the parts of an object apart; with parts=ONE it has one object.
# No part of run.sh, since Debian's prusa-slicer takes minutes to install.
# Needs what `mvn package` leaves behind. Usage: src/test/cad/slicer.sh
set -euo pipefail
shopt -s inherit_errexit
cd "$(dirname "$0")/../../.."

work=target/slicer
. src/test/service.sh slicer

need_program prusa-slicer
rm -rf "$work"
mkdir -p "$work"
start_service "$work/service.log"
/usr/bin/python3 src/test/cad/slicer.py "$url" "$work"
