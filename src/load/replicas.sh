#!/usr/bin/env bash
# Two replicas of the packaged service behind HAProxy, which asks after their readiness and tries a request again, on the
# other one, when it fails: asking twice does no harm, since the service keeps nothing. While the mixed workload runs,
# one replica is killed and started again, then both are restarted in turn. No caller may see a failed request.
# Installs Debian's wrk and haproxy where they are missing. Usage: src/load/replicas.sh [requests a second, 200]
set -euo pipefail
shopt -s inherit_errexit
cd "$(dirname "$0")/../.."
. src/test/service.sh replicas
. src/load/mix.sh

rate_wanted=${1:-200}
connections=32
work=$PWD/target/replicas
proxy=http://127.0.0.1:18090
rm -rf "$work"
mkdir -p "$work"
declare -A process port

# Starts a replica, at its old port if it had one. Usage: start_replica NAME
start_replica() {
  start_service "$work/$1.log" -Xmx128m "-Dquarkus.http.port=${port[$1]:-0}"
  process[$1]=$service
  port[$1]=${url##*:}
  until curl -sf -o "$work/ready" "$url/q/health/ready"; do
    kill -0 "$service" || fail "replica $1 ended while it started"
    sleep 0.2
  done
}

start_proxy() {
  cat >"$work/haproxy.cfg" <<CONFIG
global
  stats socket $work/stats.sock level user
defaults
  mode http
  timeout connect 2s
  timeout client 60s
  timeout server 60s
  timeout queue 30s
  timeout check 5s
  retries 5
  option redispatch 1
  retry-on all-retryable-errors
frontend callers
  bind ${proxy#http://}
  default_backend service
backend service
  balance leastconn
  option httpchk GET /q/health/ready
  default-server check inter 500ms fall 3 rise 1
  server one 127.0.0.1:${port[one]}
  server two 127.0.0.1:${port[two]}
CONFIG
  haproxy -f "$work/haproxy.cfg" >"$work/haproxy.log" 2>&1 &
  started+=("$!")
  for _ in $(seq 50); do
    curl -sf -o "$work/ready" "$proxy/q/health/ready" && return
    sleep 0.2
  done
  fail "the proxy did not start"
}

# A counter of HAProxy for all replicas. Usage: counted COLUMN
counted() {
  python3 - "$work/stats.sock" "$1" <<'PYTHON'
import csv, io, socket, sys
with socket.socket(socket.AF_UNIX) as stats:
    stats.connect(sys.argv[1])
    stats.sendall(b"show stat\n")
    text = stats.makefile().read()
rows = csv.DictReader(io.StringIO(text.removeprefix("# ")))
print(sum(int(row[sys.argv[2]] or 0) for row in rows if row["svname"] in ("one", "two")))
PYTHON
}

load_lasts() {
  kill -0 "$load" 2>/dev/null || fail "the load ended before $*"
}

# Usage: restart NAME SIGNAL
restart() {
  load_lasts "replica $1 was ended"
  stop_service "${process[$1]}" "$2"
  sleep 2
  start_replica "$1"
  load_lasts "replica $1 was back"
  echo "replicas: $1 ended by SIG$2 and started again"
  sleep 3
}

# The load lasts until a file says that everything has been done.
load_until_done() {
  local all=0 bad=0
  while [ ! -e "$work/done" ]; do
    throw "$proxy" "$connections" 10 "$pause"
    all=$((all + requests)) bad=$((bad + refused + broken))
    echo "replicas: $requests requests, p50 $p50 ms, p99 $p99 ms, $refused refused, $broken broken"
  done
  echo "$all $bad" >"$work/load"
}

need_program wrk
need_program haproxy
start_replica one
start_replica two
start_proxy
pause=$(awk -v c="$connections" -v r="$rate_wanted" 'BEGIN { print c * 1000 / r }')
throw "$proxy" "$connections" 10 "$pause"
echo "replicas: $rate/s warmed up"

load_until_done &
load=$!
started+=("$load")
sleep 5
restart one KILL
restart one TERM
restart two TERM
touch "$work/done"
wait "$load"

read -r all bad <"$work/load"
retried=$(counted wretr)
moved=$(counted wredis)
echo "replicas: $all requests, $bad failed; the proxy tried $retried again, $moved of them on the other replica"
[ "$((retried + moved))" -gt 0 ] || fail "no request met a replica that was down, so nothing was shown"
[ "$bad" = 0 ] || fail "callers saw failed requests"
