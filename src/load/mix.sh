# Runs a workload with wrk. To be sourced from the project's folder.

# Throws requests at a service and leaves in `requests`, `rate` (a second), `refused` (answers of 400 and above), `broken`
# (connections that failed or took over 30 s), `mean`, `p50`, `p99` and `p999` (milliseconds) what came of it.
# Usage: throw URL CONNECTIONS SECONDS [PAUSE_MILLISECONDS] [WORKLOAD, src/load/mix.lua]
throw() {
  local line duration
  line=$(wrk -t1 -c"$2" -d"$3s" --timeout 30s -s "${5:-src/load/mix.lua}" "$1" -- "${4:-0}" | grep '^result ') ||
    fail "wrk had nothing to report"
  read -r _ requests duration refused broken mean p50 p99 p999 <<<"$line"
  rate=$(awk -v n="$requests" -v t="$duration" 'BEGIN { printf "%.0f", n * 1e6 / t }')
}
