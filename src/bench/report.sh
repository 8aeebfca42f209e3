#!/usr/bin/env bash
# How fast the service is, as ratios taken in one run on one machine: one band in closed form against adaptive quadrature
# and against a boolean operation on meshes, sheets with more cores, the sheet over HTTP against an address that only
# reads, validates and answers a prepared one, latencies, the first answer and the memory while idle. The service runs as
# in the image, with the cache of a rehearsal. Everything stays in target/bench; the report is also in report.txt there.
# wrk waits for an answer before it asks again on a connection, so the latencies are those that callers see who do so.
# Needs Maven, a JDK 25 (JAVA_25_HOME, or below /usr/lib/jvm), Node.js with npm and Python 3; installs Debian's wrk.
# Usage: src/bench/report.sh [seconds for each measurement over HTTP, 8]
set -euo pipefail
shopt -s inherit_errexit
cd "$(dirname "$0")/../.."

seconds=${1:-8}
rounds=5
connections=16
starts=11
port=18095
design=icosahedron-mixed
manifold=3.5.4
work=$PWD/target/bench
mkdir -p "$work/tools"

echo "report: building the service and the benchmarks"
mvn -q -B -Pload package -Dmaven.test.skip=true -Dspotless.check.skip=true -Dquarkus.package.jar.type=aot-jar
. src/test/service.sh report
. src/test/jdk.sh
. src/load/mix.sh
rm -rf "$work/app"
cp -a target/quarkus-app "$work/app"
mvn -q -B -Pbench -DskipTests -Dspotless.check.skip=true test-compile dependency:build-classpath \
  -Dmdep.outputFile="$work/classpath" -Dmdep.includeScope=test
npm install --silent --no-audit --no-fund --prefix "$work/tools" "manifold-3d@$manifold" >"$work/npm.log" 2>&1 ||
  { tail -5 "$work/npm.log" >&2; fail "manifold-3d cannot be fetched"; }
need_program wrk
classes=target/classes:target/test-classes:$(cat "$work/classpath")

echo "report: benchmarks in one process"
benchmark() {
  java -cp "$classes" org.openjdk.jmh.Main "$2" -p design=$design -rf json -rff "$work/$1.json" "${@:3}" \
    >"$work/$1.log" 2>&1 || { tail -20 "$work/$1.log" >&2; fail "a benchmark failed"; }
}
benchmark once 'BandBenchmark|SheetBenchmark.sheet|AnswerBenchmark'
for ((threads = 1; threads <= $(nproc); threads *= 2)); do
  benchmark "threads-$threads" SheetBenchmark.sheet -bm thrpt -tu s -t $threads
done
java -cp "$classes" org.orbwright.band.RimBand $design >"$work/band.json"
cp src/bench/mesh.mjs "$work/tools/"
node "$work/tools/mesh.mjs" "$work/band.json" >"$work/mesh.ndjson"

echo "report: the rehearsal and the service"
java=$(find_jdk)/bin/java
mapfile -t options < <(src/bench/image_options.py)
"$java" src/container/java/org/orbwright/container/Rehearsal.java "$java" -XX:AOTCacheOutput="$work/app/orbwright.aot" \
  "${options[@]}" -Dquarkus.http.host=127.0.0.1 -Dquarkus.http.port=0 -jar "$work/app/quarkus-run.jar" \
  >"$work/rehearsal.log" 2>&1 || { tail -20 "$work/rehearsal.log" >&2; fail "the rehearsal failed"; }
command=("$java" -XX:AOTCache="$work/app/orbwright.aot" -XX:AOTMode=on "${options[@]}" -Xmx256m
  -Dquarkus.http.host=127.0.0.1 -Dquarkus.http.port=$port -jar "$work/app/quarkus-run.jar")
src/bench/first_answer.py $starts $port "${command[@]}" >"$work/first.txt"

"${command[@]}" >"$work/service.log" 2>&1 &
service=$!
started+=("$service")
until curl -sf -o /dev/null "http://127.0.0.1:$port/q/health/ready"; do
  kill -0 "$service" 2>/dev/null || { cat "$work/service.log" >&2; fail "the service ended"; }
  sleep 0.1
done
: >"$work/http.txt"
ask() {
  throw "http://127.0.0.1:$port$1" $connections "$2" 0 "${3:-src/load/sheet.lua}"
  [ "$refused:$broken" = 0:0 ] || fail "$1: $refused refused, $broken broken"
}
ask /load/prepared 10
ask /v1/sheet 10
for round in $(seq $rounds); do
  for path in /load/prepared /v1/sheet; do
    ask $path "$seconds"
    echo "$path $rate $p50 $p99 $p999" >>"$work/http.txt"
  done
done
ask "" 25 src/load/mix.lua
ask "" "$seconds" src/load/mix.lua
echo "mix $rate $p50 $p99 $p999" >>"$work/http.txt"

src/bench/summary.py "$work" | tee "$work/report.txt"
