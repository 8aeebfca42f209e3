#!/usr/bin/env bash
# Soak: how much of the mixed workload the packaged service with a heap of 128 MiB answers at most, then a long run at
# about 80 % of that. Fails on any error, and where the heap that is in use after a collection, or the resident memory,
# has grown by more than a share of itself. wrk waits for an answer before it asks again on a connection, so the
# latencies are those that callers see who do the same. Installs Debian's wrk where it is missing.
# Usage: src/load/soak.sh [seconds, 600] [largest growth in percent, 15]
set -euo pipefail
shopt -s inherit_errexit
cd "$(dirname "$0")/../.."
. src/test/service.sh soak
. src/load/mix.sh

seconds=${1:-600}
growth=${2:-15}
share=80
callers=16
work=target/soak
rm -rf "$work"
mkdir -p "$work"

# The heap in use after a full collection, in KiB.
heap() {
  jcmd "$service" GC.run >/dev/null
  sleep 1
  jcmd "$service" GC.heap_info |
    awk '/heap|generation/ && match($0, /used [0-9]+K/) { sum += substr($0, RSTART + 5, RLENGTH - 6) } END { print sum }'
}

resident() {
  awk '/VmRSS/ { print $2 }' "/proc/$service/status"
}

need_program wrk
start_service "$work/service.log" -Xmx128m
# Compilers need a while, the longer the less of the machine is free: saturation is what no longer rises by a tenth.
saturation=0
for _ in $(seq 12); do
  throw "$url" "$callers" 15
  echo "soak: $rate/s with $callers callers, p50 $p50 ms, p99 $p99 ms, $refused refused, $broken broken"
  before=$saturation
  saturation=$rate
  [ $((saturation * 10)) -gt $((before * 11)) ] || break
done
most=$refused:$broken

# A connection's time for one request is the pause and the latency, which is not known before: the pause is mended after
# each slice, by half of what is amiss, and never gets so short that the service would be thrown at with all it can take.
connections=32
slice=15
cycle=$(awk -v c="$connections" -v s="$saturation" -v p="$share" 'BEGIN { print c * 100000 / (s * p) }')
pause=$cycle
heap_before=$(heap)
resident_before=$(resident)
all=0 refused_all=0 broken_all=0 slices=$(((seconds + slice - 1) / slice))
for _ in $(seq "$slices"); do
  throw "$url" "$connections" "$slice" "$pause"
  echo "soak: $rate/s, p50 $p50 ms, p99 $p99 ms, $refused refused, $broken broken"
  all=$((all + requests)) refused_all=$((refused_all + refused)) broken_all=$((broken_all + broken))
  pause=$(awk -v c="$connections" -v r="$rate" -v cycle="$cycle" -v pause="$pause" \
    'BEGIN { x = pause + (cycle - c * 1000 / (r + 1)) / 2; print (x < 0.7 * cycle ? 0.7 * cycle : x) }')
done
heap_after=$(heap)
resident_after=$(resident)

awk -v n="$all" -v t="$((slices * slice))" -v s="$saturation" -v refused="$refused_all" -v broken="$broken_all" 'BEGIN {
  printf "soak: %d requests in %d s, %.0f %% of saturation, %d refused, %d broken\n", n, t, 100 * n / t / s, refused, broken }'
grown() {
  awk -v n="$1" -v a="$2" -v b="$3" -v most="$growth" 'BEGIN {
    printf "soak: %s %.1f MiB before, %.1f MiB after, %+.1f %%\n", n, a / 1024, b / 1024, 100 * (b - a) / a
    exit b > a * (1 + most / 100) }'
}
grown "heap in use after a collection" "$heap_before" "$heap_after" || fail "the heap grew by more than $growth %"
grown "resident memory" "$resident_before" "$resident_after" || fail "the memory grew by more than $growth %"
[ "$most" = 0:0 ] || fail "there were errors at saturation"
[ "$refused_all:$broken_all" = 0:0 ] || {
  curl -s "$url/q/metrics" | grep -E '^http_server_requests_seconds_count.*status="[45]' >&2 || true
  fail "there were errors"
}
if grep -E ' (WARN|ERROR) ' "$work/service.log"; then
  fail "the service complained"
fi
echo "soak: no errors, no growth"
