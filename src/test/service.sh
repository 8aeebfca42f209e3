# Starts the packaged service for a script that tests it from outside. To be sourced from the project's folder with the
# script's name: . src/test/service.sh NAME. What is put into `started` is stopped when the script ends.
name=$1
started=()
jar=target/quarkus-app/quarkus-run.jar

fail() {
  echo "$name: $*" >&2
  exit 1
}

stop_started() {
  for process in "${started[@]}"; do
    kill "$process" 2>/dev/null || true
    wait "$process" 2>/dev/null || true
  done
}
trap stop_started EXIT

# Starts the service on a free port; its address is then in `url`. Usage: start_service LOG
start_service() {
  : >"$1"
  java -Dquarkus.http.host=127.0.0.1 -Dquarkus.http.port=0 -jar "$jar" >"$1" 2>&1 &
  local service=$!
  started+=("$service")
  for _ in $(seq 300); do
    url=$(sed -n 's/.*Listening on: \(http[^ ]*\).*/\1/p' "$1")
    [ -n "$url" ] && return
    kill -0 "$service" 2>/dev/null || break
    sleep 0.2
  done
  cat "$1" >&2
  fail "the service did not start"
}

[ -f "$jar" ] || fail "there is no $jar: run mvn package first"
