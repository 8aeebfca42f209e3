#!/usr/bin/env bash
# Sixteen callers at once ask for large pictures and for the build on paper, a few times over, of the packaged service
# with the options of the image and the heap that a container of 128 MiB gives it. Fails on any answer but 200, 422 and
# 503, on a picture that is none, and where the service does not live any more. Takes about a minute. Needs a JDK 25.
# Usage: src/load/pictures.sh [largest heap, 77m]
set -euo pipefail
shopt -s inherit_errexit
cd "$(dirname "$0")/../.."
. src/test/service.sh pictures
. src/test/jdk.sh

heap=${1:-77m}
work=target/pictures
rm -rf "$work"
mkdir -p "$work"
home=$(find_jdk)
mapfile -t options < <(src/bench/image_options.py)
# The paths of fonts and native libraries are those of the image; here both are found without them.
PATH="$home/bin:$PATH" start_service "$work/service.log" "${options[@]}" "-Xmx$heap"
src/load/pictures.py "$url" || fail "see $work/service.log"
kill -0 "$service" || fail "the service has ended"
awk '/VmHWM/ { printf "pictures: %.0f MiB resident at most\n", $2 / 1024 }' "/proc/$service/status"
if grep -E ' ERROR |OutOfMemory' "$work/service.log"; then
  fail "the service complained"
fi
