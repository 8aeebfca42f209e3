#!/usr/bin/env bash
# Load run: throughput of /v1/sheet against an address that only reads, validates and answers a prepared sheet of the same
# size, alternating in one run on one machine; then the resident memory. Needs wrk. Prints ratios; machines are noisy.
#   src/load/load.sh [design] [rounds] [seconds per measurement]
set -euo pipefail
cd "$(dirname "$0")/../.."
design=${1:-dodecahedron-vanishing-rim}
rounds=${2:-3}
seconds=${3:-8}
port=18080

mvn -q -B -Pload package -DskipTests
work=$(mktemp -d)
java -Xmx256m -Dquarkus.http.port=$port -jar target/quarkus-app/quarkus-run.jar > "$work/log" 2>&1 &
service=$!
trap 'kill $service 2>/dev/null; rm -rf "$work"' EXIT
for _ in $(seq 100); do
  curl -sf "http://127.0.0.1:$port/q/health/ready" > /dev/null && break
  sleep 0.2
done

cat > "$work/post.lua" <<LUA
local file = io.open("src/main/resources/designs/$design.json")
wrk.method = "POST"
wrk.headers["Content-Type"] = "application/json"
wrk.body = file:read("*a")
LUA

measure() {
  wrk -t1 -c16 -d"$2s" -s "$work/post.lua" "http://127.0.0.1:$port$1" |
    awk '/Requests\/sec/ { rate = $2 } /Non-2xx/ { bad = $0 } END { print rate; if (bad) print bad > "/dev/stderr" }'
}

measure /load/prepared 10 > /dev/null
measure /v1/sheet 10 > /dev/null
for round in $(seq "$rounds"); do
  prepared=$(measure /load/prepared "$seconds")
  sheet=$(measure /v1/sheet "$seconds")
  awk -v r="$round" -v s="$sheet" -v p="$prepared" \
    'BEGIN { printf "round %d: sheet %.0f/s, prepared %.0f/s, ratio %.2f\n", r, s, p, s / p }'
done
awk '/VmRSS/ { printf "resident memory after load: %.0f MiB\n", $2 / 1024 }' "/proc/$service/status"
