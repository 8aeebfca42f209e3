#!/usr/bin/env bash
# Builds the image of the Dockerfile without a Docker daemon or a registry, and runs the very words of its ENTRYPOINT as
# a container would: process 1 of its own, as the image's user, on a root file system that cannot be written to but for a
# small /tmp, with no network but its own loopback. The base holds the C library alone, so nothing else can be needed.
# Checks the first sheet, pictures and paper, the health check, batches, options for the Java machine, encryption, the end
# on SIGTERM, size, memory, labels and SBOM.
# Needs root, Linux namespaces, Maven, curl, openssl, Python 3 and a JDK 25 (JAVA_25_HOME, or below /usr/lib/jvm); on Debian
# installs buildah, debootstrap and iproute2 where they are missing.
# Usage: src/test/container/run.sh [twice]   (twice: builds once more and compares every file)
set -euo pipefail
shopt -s inherit_errexit
cd "$(dirname "$0")/../../.."
. src/test/jdk.sh

work=$PWD/target/container
most=200
most_resident=170
grace=20
revision=$(git rev-parse HEAD)
design=src/main/resources/designs/icosahedron-mixed.json
container=
driver=
mounted=
init=
served=http://127.0.0.1:8080
answers=

fail() {
  echo "container: $*" >&2
  exit 1
}

end_all() {
  if [ -n "$init" ]; then kill -KILL "$init" 2>/dev/null || true; fi
}
trap end_all EXIT

# Storage of its own.
b() {
  buildah --root "$work/$driver" --runroot "$work/run" --storage-driver "$driver" "$@"
}

# Layers that share files, where the file system allows it; otherwise layers that are whole copies.
choose_driver() {
  driver=overlay
  if container=$(b from scratch 2>/dev/null) && b mount "$container" >/dev/null 2>&1; then
    b rm "$container" >/dev/null
  else
    driver=vfs
  fi
}

need_programs() {
  [ "$(id -u)" = 0 ] || fail "root is needed, for namespaces and the base system"
  command -v buildah >/dev/null && command -v debootstrap >/dev/null && command -v ip >/dev/null && return
  echo "container: installing buildah, debootstrap and iproute2"
  { apt-get update -qq && DEBIAN_FRONTEND=noninteractive apt-get install -y -qq --no-install-recommends \
    -o DPkg::Lock::Timeout=300 buildah debootstrap iproute2; } >"$work/install.log" 2>&1 ||
    fail "buildah, debootstrap and iproute2 are needed, and cannot be installed"
}

make_build_image() {
  b inspect --type image localhost/orbwright-build >/dev/null 2>&1 && return
  local jdk maven root
  jdk=$(find_jdk)
  maven=$(dirname "$(dirname "$(readlink -f "$(command -v mvn)")")")
  echo "container: making the image to build in"
  debootstrap --variant=minbase "$(. /etc/os-release && echo "$VERSION_CODENAME")" "$work/debian" \
    >"$work/debootstrap.log" 2>&1 || { tail -5 "$work/debootstrap.log" >&2; fail "there is no base system"; }
  container=$(b from scratch)
  root=$(b mount "$container")
  cp -a "$work/debian/." "$root/"
  mkdir -p "$root/opt"
  # Distributions link Maven's libraries, and a JDK's certificates, to other folders.
  cp -rL "$jdk" "$root/opt/jdk"
  cp -rL "$maven" "$root/opt/maven"
  b umount "$container" >/dev/null
  b config --env JAVA_HOME=/opt/jdk --env PATH=/opt/jdk/bin:/opt/maven/bin:/usr/bin:/bin:/usr/sbin:/sbin "$container"
  b commit -q --rm "$container" localhost/orbwright-build >/dev/null
  rm -rf "$work/debian"
}

make_base_image() {
  b inspect --type image localhost/orbwright-base >/dev/null 2>&1 && return
  local root
  mkdir -p "$work/packages"
  (cd "$work/packages" && apt-get download -qq -o APT::Sandbox::User=root libc6) || fail "libc6 cannot be fetched"
  container=$(b from scratch)
  root=$(b mount "$container")
  dpkg -x "$work/packages"/libc6_*.deb "$root"
  rm -rf "$root/usr/share"
  mkdir -p "$root/proc" "$root/dev" "$root/tmp"
  b umount "$container" >/dev/null
  b commit -q --rm "$container" localhost/orbwright-base >/dev/null
}

build_image() {
  local time
  time=$(git log -1 --format=%ct "$revision")
  mkdir -p "$HOME/.m2/repository"
  # What buildah keeps of the last stage does not mind changed arguments in its labels.
  b rmi "$1" >/dev/null 2>&1 || true
  b build --layers --isolation chroot --format docker --pull-never --timestamp "$time" \
    --volume "$HOME/.m2/repository:/root/.m2/repository" \
    --build-arg BUILD_IMAGE=localhost/orbwright-build --build-arg BASE_IMAGE=localhost/orbwright-base \
    --build-arg REVISION="$revision" --build-arg SOURCE_DATE_EPOCH="$time" "${@:2}" -t "$1" . >"$work/build.log" 2>&1 ||
    { tail -30 "$work/build.log" >&2; fail "the image cannot be built"; }
}

mount_image() {
  container=$(b from --pull-never "$1")
  mounted=$(b mount "$container")
  mkdir -p "$mounted/srv" "$mounted/tmp"
}

# Runs words in the image as a container would.
contain() {
  unshare --mount --net --pid --fork --kill-child=KILL sh -c '
    root=$1
    shift
    ip link set lo up
    mount --bind "$root" "$root"
    mount -t proc proc "$root/proc"
    mount --rbind /dev "$root/dev"
    mount -t tmpfs -o mode=1777,size=16m tmpfs "$root/tmp"
    if [ -n "$ANSWERS" ]; then mount --bind "$ANSWERS" "$root/srv"; fi
    mount -o remount,bind,ro "$root"
    exec env -i PATH=/usr/sbin:/usr/bin:/sbin:/bin $SETTINGS setpriv --no-new-privs chroot --userspec=65532:65532 --groups= "$root" "$@"
  ' sh "$mounted" "$@"
}

# The words of the image, one a line, from its configuration.
words() {
  python3 - "$1" "$work/image.json" <<'PYTHON'
import json, sys
config = json.load(open(sys.argv[2]))["Docker"]["config"]
words = config["Entrypoint"] if sys.argv[1] == "entrypoint" else config["Healthcheck"]["Test"]
if sys.argv[1] == "health":
    assert words[0] == "CMD", words
    words = words[1:]
assert words[0].startswith("/"), words
print("\n".join(words))
PYTHON
}

inside() {
  nsenter --target "$init" --net "$@"
}

now() {
  echo $(($(date +%s%N) / 1000000))
}

# Starts the service with the settings given, and waits for its first sheet at the address in `served`. Sets init and took.
# The files in `answers`, if it is set, lie in /srv.
start() {
  local from
  from=$(now)
  SETTINGS="$*" ANSWERS="$answers" contain "${entrypoint[@]}" >"$work/service.log" 2>&1 &
  service=$!
  for _ in $(seq 200); do
    init=$service
    while [ "$(cat "/proc/$init/comm" 2>/dev/null)" != java ] && init=$(pgrep -P "$init"); do :; done
    [ -n "$init" ] && break
    sleep 0.02
  done
  for _ in $(seq 1500); do
    if inside curl -s -k -f -o "$work/sheet.json" -H 'Content-Type: application/json' --data @"$design" \
      "$served/v1/sheet" 2>/dev/null; then
      took=$(($(now) - from))
      return
    fi
    kill -0 "$service" 2>/dev/null || break
    sleep 0.02
  done
  cat "$work/service.log" >&2
  fail "the service did not answer"
}

stop() {
  local from code=0
  from=$(now)
  kill -TERM "$init"
  wait "$service" || code=$?
  init=
  ended=$(($(now) - from))
  [ "$code" = 143 ] || { cat "$work/service.log" >&2; fail "SIGTERM gave the exit code $code, not 143"; }
  [ "$ended" -le $((grace * 1000)) ] || fail "the service took $ended ms to end"
}

resident() {
  awk '/^VmRSS/ { print int($2 / 1024) }' "/proc/$init/status"
}

post() {
  inside curl -s -S -f -o "$work/$1" -H 'Content-Type: application/json' -H "Accept: $2" --data @"$3" \
    "http://127.0.0.1:8080$4" || { cat "$work/service.log" >&2; fail "$4 gave no $1"; }
}

expect_code() {
  local wanted=$1 code=0
  shift
  SETTINGS='' contain "${entrypoint[@]}" "$@" >"$work/batch.out" 2>"$work/batch.err" || code=$?
  [ "$code" = "$wanted" ] || { cat "$work/batch.err" >&2; fail "$* ended with $code, not $wanted"; }
}

check_image() {
  local base
  b inspect --type image localhost/orbwright >"$work/image.json"
  python3 - "$work/image.json" "$mounted/opt/orbwright/bom.json" "$revision" <<'PYTHON'
import json, sys
config = json.load(open(sys.argv[1]))["Docker"]["config"]
labels = config["Labels"]
for name in ("title", "description", "version", "revision", "licenses", "base.name"):
    assert labels.get("org.opencontainers.image." + name), name + " is no label"
assert labels["org.opencontainers.image.revision"] == sys.argv[3], labels
assert config["User"] == "65532:65532", config["User"]
bom = json.load(open(sys.argv[2]))
assert bom["bomFormat"] == "CycloneDX" and bom["metadata"]["component"]["name"] == "orbwright", bom["metadata"]
names = {component["name"] for component in bom["components"]}
assert {"quarkus-rest", "pdfbox", "ortools-java", "jsvg"} <= names and "junit-jupiter" not in names, sorted(names)
print(f"container: user {config['User']}, {len(labels)} labels, SBOM with {len(names)} components")
PYTHON
  [ -s "$mounted/opt/orbwright/licences.txt" ] || fail "the image does not say under which licences it is"
  [ ! -e "$mounted/bin/sh" ] && [ ! -e "$mounted/usr/bin/sh" ] || fail "the image has a shell"
  base=$(du -sm "$mounted/opt/orbwright" | cut -f1)
  [ "$base" -lt "$most" ] || fail "the image has $base MB beyond its base, which is not below $most"
  echo "container: $base MB beyond the base: $(cd "$mounted/opt/orbwright" && du -sm java orbwright.aot lib | tr '\n\t' '; ')"
}

check_answers() {
  grep -q '"bladeTilt":20.9052' "$work/sheet.json" || fail "the sheet has no blade tilt"
  post panel.png image/png "$design" '/v1/drawings/panel'
  head -c 8 "$work/panel.png" | cmp -s - <(printf '\x89PNG\r\n\x1a\n') || fail "the picture is no PNG"
  post sheet.pdf application/pdf "$design" /v1/shop-sheet
  head -c 5 "$work/sheet.pdf" | grep -q '%PDF-' || fail "the sheet for the bench is no PDF"
  inside curl -s -S -f http://127.0.0.1:8080/clients/batch.py | grep -q '^import' || fail "the scripts are not handed out"
  is_well || fail "the health check finds the service ill"
}

# What the health check says in the container, with the settings given.
is_well() {
  env -i PATH="$PATH" "$@" nsenter --target "$init" --net --mount --pid --root --wd --setuid 65532 --setgid 65532 \
    "${health[@]}" >"$work/health.log" 2>&1
}

# What is set for the service's Java machine counts, and the health check's takes no harm by it.
check_options() {
  local options
  for options in -XX:+UseParallelGC -Xms100m; do
    start JDK_JAVA_OPTIONS=$options
    is_well JDK_JAVA_OPTIONS=$options || { cat "$work/health.log" >&2; fail "the health check does not bear $options"; }
    stop
  done
  [ "$(flag MaxRAMPercentage -XX:MaxRAMPercentage=33)" = 33.000000 ] || fail "MaxRAMPercentage cannot be set"
  [ "$(flag UseParallelGC -XX:+UseParallelGC)" = true ] || fail "the collector cannot be chosen"
  [ "$(flag UseSerialGC)" = true ] || fail "the collector that needs the least memory is not taken"
  [ "$(flag MaxRAMPercentage)" = 60.000000 ] || fail "the heap is not bounded by the container"
  [ "$(flag UseCompressedOops -XX:MaxRAM=200g)" = true ] || fail "a large machine cannot use the cache"
  [ "$(flag TieredStopAtLevel)" = 4 ] || fail "what runs long is not compiled well"
  echo "container: other collectors and heaps can be chosen"
}

# flag NAME [OPTION]: what the Java machine of the image makes of one of its flags.
flag() {
  SETTINGS=${2:+JDK_JAVA_OPTIONS=$2} ANSWERS='' contain "${entrypoint[0]}" -XX:+PrintFlagsFinal -version 2>/dev/null |
    awk -v name="$1" '$2 == name { print $4 }'
}

certify() {
  openssl req -x509 -newkey ec -pkeyopt ec_paramgen_curve:P-256 -nodes -days 2 -subj "/CN=$1" \
    -keyout "$answers/key.pem" -out "$answers/cert.pem" 2>"$work/openssl.log"
  chmod 644 "$answers"/*.pem
}

certified() {
  inside openssl s_client -connect 127.0.0.1:9443 </dev/null 2>/dev/null | openssl x509 -noout -subject 2>/dev/null
}

# With the plain port off, as the README says; a certificate that is replaced is read again.
check_encryption() {
  answers=$work/certificates
  mkdir -p "$answers"
  certify first.example
  served=https://127.0.0.1:9443
  start QUARKUS_HTTP_INSECURE_REQUESTS=disabled QUARKUS_HTTP_SSL_PORT=9443 QUARKUS_TLS_RELOAD_PERIOD=30s \
    QUARKUS_TLS_KEY_STORE_PEM__0__CERT=/srv/cert.pem QUARKUS_TLS_KEY_STORE_PEM__0__KEY=/srv/key.pem
  certified | grep -q first.example || fail "the certificate is not the one that was set"
  certify second.example
  is_well ORBWRIGHT_HEALTH=$served/q/health/live || { cat "$work/health.log" >&2; fail "the health check asks only plainly"; }
  if is_well; then fail "the health check finds a plain port that is off"; fi
  for _ in $(seq 45); do
    if certified | grep -q second.example; then break; fi
    sleep 1
  done
  certified | grep -q second.example || { cat "$work/service.log" >&2; fail "a new certificate is not read"; }
  stop
  served=http://127.0.0.1:8080 answers=
  echo "container: the health check asks encrypted, and new certificates are read"
}

check_batches() {
  mkdir -p "$work/answers"
  rm -f "$work/answers"/*
  chown 65532 "$work/answers"
  export ANSWERS=$work/answers
  { tr -d '\n' <"$design"; echo; } >"$work/answers/0.ndjson"
  { cat "$work/answers/0.ndjson"; echo '{}'; } >"$work/answers/1.ndjson"
  expect_code 0 batch <"$work/answers/0.ndjson"
  grep -q '^{"line":1,"sheet":{.*"bladeTilt":20.9052' "$work/batch.out" || fail "batch answers no sheet"
  expect_code 10 batch --answer=angles /srv/1.ndjson /srv/1.angles.ndjson
  [ "$(wc -l <"$work/answers/1.angles.ndjson")" = 2 ] || fail "batch wrote no answers"
  expect_code 11 batch /srv/2.ndjson
  [ ! -s "$work/batch.out" ] || fail "batch answers a file that is missing"
}

mkdir -p "$work"
need_programs
choose_driver
b rm --all >/dev/null
make_build_image
make_base_image
echo "container: building the image"
build_image localhost/orbwright
mount_image localhost/orbwright
check_image
mapfile -t entrypoint < <(words entrypoint)
mapfile -t health < <(words health)

# With the mode on, the Java machine refuses to start where it cannot use its cache.
start JDK_JAVA_OPTIONS=-XX:AOTMode=on
sleep 10
idle=$(resident)
check_answers
with=$took with_memory=$(resident)
stop
[ "$idle" -lt "$most_resident" ] || fail "the idle service has $idle MiB resident, which is not below $most_resident"
echo "container: SIGTERM ended it after $ended ms"
start JDK_JAVA_OPTIONS=-XX:AOTMode=off
without=$took without_memory=$(resident)
stop
echo "container: first sheet after $with ms with the cache, $without ms without: ratio" \
  "$(python3 -c "print(f'{$without / $with:.2f}')"); resident when idle $idle MiB, after pictures" \
  "and paper $with_memory MiB, without the cache after one sheet $without_memory MiB"
if SETTINGS='' ANSWERS='' contain "${health[@]}"; then fail "the health check finds a service where there is none"; fi
check_options
check_encryption
check_batches
b umount "$container" >/dev/null
b rm "$container" >/dev/null

if [ "${1:-}" = twice ]; then
  # What Quarkus generates and what the rehearsal measured differs from build to build.
  list() { (cd "$mounted/opt/orbwright" && find . -type f ! -name orbwright.aot ! -name generated-bytecode.jar -exec sha256sum {} + | sort -k 2); }
  mount_image localhost/orbwright
  list >"$work/first.sums"
  b rm "$container" >/dev/null
  build_image localhost/orbwright-again --no-cache
  mount_image localhost/orbwright-again
  list >"$work/second.sums"
  b rm "$container" >/dev/null
  diff "$work/first.sums" "$work/second.sums" || fail "two builds differ"
  echo "container: two builds have the same $(wc -l <"$work/first.sums") files, but for generated bytecode and the cache"
fi
echo "container: the image is built, and runs as it says"
