# Starts the packaged service for a script that tests it from outside. To be sourced from the project's folder with the
# script's name: . src/test/service.sh NAME. What is put into `started` is stopped when the script ends.
name=$1
started=()
jar=target/quarkus-app/quarkus-run.jar

fail() {
  echo "$name: $*" >&2
  exit 1
}

# Ends a process that was started here, and waits for its end. Usage: stop_service PROCESS [SIGNAL]
stop_service() {
  kill -s "${2:-TERM}" "$1" 2>/dev/null || true
  wait "$1" 2>/dev/null || true
}

stop_started() {
  local process
  for process in "${started[@]}"; do
    stop_service "$process"
  done
}
trap stop_started EXIT

# Starts the service on a free port; its address is then in `url`, its process in `service`.
# Usage: start_service LOG [JAVA_OPTION...]
start_service() {
  : >"$1"
  java -Dquarkus.http.host=127.0.0.1 -Dquarkus.http.port=0 "${@:2}" -jar "$jar" >"$1" 2>&1 &
  service=$!
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

# Installs a program of Debian's package of the same name where it is missing. Usage: need_program PROGRAM
need_program() {
  command -v "$1" >/dev/null && return
  echo "$name: installing $1"
  local root=
  [ "$(id -u)" = 0 ] || root=sudo
  $root apt-get update -qq
  DEBIAN_FRONTEND=noninteractive $root apt-get install -y -qq -o DPkg::Lock::Timeout=300 "$1" >/dev/null ||
    fail "$1 is needed, and cannot be installed"
}

[ -f "$jar" ] || fail "there is no $jar: run mvn package first"
