#!/usr/bin/env bash
# Mutates the calculators (PIT) and runs each package's tests against every mutant: one line a package with how many
# were killed, and at least 85 % of them have to be. Reports of what survived are left in target/mutations/PACKAGE.
# Needs Maven and a JDK. Usage: src/test/mutations.sh [PACKAGE...], all calculators without an argument;
# PIT_THREADS=2 takes two processors.
set -euo pipefail
shopt -s inherit_errexit
cd "$(dirname "$0")/../.."

threshold=85
calculators=(band segment solid design inlay jig tolerance movement diagnosis assembly stock turning sphere quantity
  wood explore body)
work=$PWD/target/mutations

fail() {
  echo "mutations: $*" >&2
  exit 1
}

maven() {
  mvn -B -Ppit "$@" >"$work/mvn.log" 2>&1
}

# tests_of PACKAGE: its own tests, and those of packages that use it where its answers show only there.
tests_of() {
  local users user
  case $1 in
    design) users=segment ;;
    *) users= ;;
  esac
  printf 'org.orbwright.%s.*' "$1"
  for user in $users; do printf ',org.orbwright.%s.*' "$user"; done
}

# mutate PACKAGE: prints its line, and is false below the threshold.
mutate() {
  local report=target/pit-reports/mutations.xml total killed
  [ -d "src/main/java/org/orbwright/$1" ] || fail "there is no package $1"
  rm -rf target/pit-reports "${work:?}/$1"
  # Maven fails below the threshold too, with a report that tells the two apart.
  maven "-DtargetClasses=org.orbwright.$1.*" "-DtargetTests=$(tests_of "$1")" "-Dthreads=${PIT_THREADS:-1}" \
    org.pitest:pitest-maven:mutationCoverage || true
  [ -f "$report" ] || { tail -n 40 "$work/mvn.log" >&2; fail "$1 cannot be mutated"; }
  mv target/pit-reports "$work/$1"
  total=$(grep -c '<mutation ' "$work/$1/mutations.xml")
  killed=$(grep -c "<mutation detected='true'" "$work/$1/mutations.xml")
  awk -v package="$1" -v killed="$killed" -v total="$total" \
    'BEGIN { printf "%-10s %5d/%-5d %5.1f %%\n", package, killed, total, 100 * killed / total }'
  [ $((100 * killed)) -ge $((threshold * total)) ]
}

mkdir -p "$work"
maven test-compile || { tail -n 40 "$work/mvn.log" >&2; fail "the tests cannot be compiled"; }
below=()
[ $# -gt 0 ] || set -- "${calculators[@]}"
for package in "$@"; do
  mutate "$package" || below+=("$package")
done
[ ${#below[@]} -eq 0 ] || fail "below $threshold %: ${below[*]}"
