#!/usr/bin/env bash
# Lets the packaged service make outlines and bodies of worked designs and opens them with independent programs: ezdxf
# reads and audits the DXF files, whose areas have to be those of the service's other answers; admesh has nothing to mend
# in the STL files, and finds the service's volumes; Python reads the 3MF files. Where npm is there, the Khronos Group's
# validator judges the GLB files.
# Needs what `mvn package` leaves behind. Installs Debian's python3-ezdxf and admesh where they are missing.
# Usage: src/test/cad/run.sh
set -euo pipefail
shopt -s inherit_errexit
cd "$(dirname "$0")/../../.."

work=target/cad
python=/usr/bin/python3
. src/test/service.sh cad

need_programs() {
  command -v admesh >/dev/null && "$python" -c 'import ezdxf' 2>/dev/null && return
  echo "cad: installing ezdxf and admesh"
  local root=
  [ "$(id -u)" = 0 ] || root=sudo
  $root apt-get update -qq
  DEBIAN_FRONTEND=noninteractive $root apt-get install -y -qq -o DPkg::Lock::Timeout=300 python3-ezdxf admesh >/dev/null ||
    fail "python3-ezdxf and admesh cannot be installed"
}

rm -rf "$work"
mkdir -p "$work"
need_programs
start_service "$work/service.log"
"$python" src/test/cad/check.py "$url" "$work"
if command -v npm >/dev/null; then
  npm install --silent --no-save --prefix "$work/node" gltf-validator@2.0.0-dev.3.10 >/dev/null
  NODE_PATH="$work/node/node_modules" node src/test/cad/judge_glb.js "$work"/*.glb
else
  echo "cad: no npm, so nobody judged the GLB files"
fi
