#!/usr/bin/env bash
# Lets OpenSCAD read outlines (DXF, release 2000) of the packaged service, in both units, and pull them up to bodies.
# Their volumes, as admesh finds them, have to be the height times the area that ezdxf finds in the same layer, and that
# the service's own numbers give.
# No part of run.sh, since Debian's openscad takes a minute to install.
# Needs what `mvn package` leaves behind. Usage: src/test/cad/openscad.sh
set -euo pipefail
shopt -s inherit_errexit
cd "$(dirname "$0")/../../.."

work=target/openscad
. src/test/service.sh openscad

need_program openscad
need_program admesh
/usr/bin/python3 -c 'import ezdxf' 2>/dev/null || fail "python3-ezdxf is needed: src/test/cad/run.sh installs it"
rm -rf "$work"
mkdir -p "$work"
start_service "$work/service.log"
/usr/bin/python3 src/test/cad/openscad.py "$url" "$work"
