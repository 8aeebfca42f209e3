#!/usr/bin/env bash
# Renders every kustomization with kubectl and checks what comes out, without a cluster: against the JSON schemas of
# Kubernetes and for what names and labels mean (check.mjs), and by typed parsing that lets no unknown field pass
# (StrictParse.java). Then breaks a manifest in ways that either has to find.
# Needs kubectl, Maven, a JDK, Node.js with npm. Usage: src/test/k8s/run.sh
set -euo pipefail
shopt -s inherit_errexit
cd "$(dirname "$0")/../../.."

sources=src/test/k8s
work=$PWD/target/k8s

fail() {
  echo "k8s: $*" >&2
  exit 1
}

need_tools() {
  local program
  for program in kubectl npm node mvn java; do
    command -v "$program" >/dev/null || fail "$program is needed"
  done
  mkdir -p "$work/npm"
  echo '{"private": true}' >"$work/npm/package.json"
  npm install --prefix "$work/npm" --silent --no-audit --no-fund --ignore-scripts kubernetes-models@4.5.1 yaml@2 ||
    fail "the schemas cannot be installed"
  mvn -q -B -f "$sources/pom.xml" dependency:copy-dependencies -DoutputDirectory="$work/lib" >"$work/mvn.log" ||
    { cat "$work/mvn.log" >&2; fail "the typed model cannot be fetched"; }
  javac -d "$work/classes" -cp "$work/lib/*" "$sources/StrictParse.java"
}

schemas() {
  NODE_MODULES_FROM=$work/npm/package.json node "$sources/check.mjs" "$@"
}

types() {
  java -cp "$work/classes:$work/lib/*" StrictParse "$@"
}

rm -rf "$work"
mkdir -p "$work/rendered"
need_tools
for folder in k8s/base k8s/overlays/shop k8s/overlays/cluster k8s/sweep k8s/overlays/sweep-example; do
  kubectl kustomize "$folder" >"$work/rendered/$(basename "$folder").yaml" || fail "$folder cannot be rendered"
done
mkdir "$work/with-keys"
printf '%s\n' 'resources: [../../../k8s/overlays/cluster]' 'components: [../../../k8s/components/keys]' \
  >"$work/with-keys/kustomization.yaml"
kubectl kustomize "$work/with-keys" >"$work/rendered/with-keys.yaml" || fail "components/keys cannot be rendered"
schemas "$work/rendered"/*.yaml || fail "the manifests break the schemas, or do not fit together"
types "$work/rendered"/*.yaml || fail "the manifests cannot be read into types"

# broken NAME JUDGE FILE SED: the judge has to find what the sed expression breaks.
broken() {
  sed "$4" "$work/rendered/$3.yaml" >"$work/$1.yaml"
  cmp -s "$work/$1.yaml" "$work/rendered/$3.yaml" && fail "$1 breaks nothing"
  if "$2" "$work/$1.yaml" 2>"$work/$1.log"; then fail "$1 is not found"; fi
}
broken wrong-type schemas shop 's/replicas: 1/replicas: one/'
broken wrong-type-in-types types shop 's/replicas: 1/replicas: one/'
broken unknown-field types cluster 's/readOnlyRootFilesystem/readOnlyRootFileSystem/'
broken missing-field schemas cluster '/scaleTargetRef:/,+3d'
broken root schemas shop '/runAsNonRoot/d'
broken stray-selector schemas base '/^  selector:/,/part-of\|name: orbwright/s/name: orbwright/name: orbwrong/'
broken twice-spread schemas cluster 's/topologyKey: topology.kubernetes.io.zone/topologyKey: kubernetes.io\/hostname/'
broken keys-elsewhere schemas with-keys 's/value: .keys.keys/value: \/keys\/lost/'
broken unreadable-keys schemas with-keys '/^  keys: |/,/^kind/{s/^  keys: |/  keys: YmVuY2g=/;/^    /d}'
broken missing-shard schemas sweep-example 's/completions: 2/completions: 3/'
echo "k8s: $(ls "$work/rendered" | wc -l) kustomizations render, and $(cat "$work/rendered"/*.yaml | grep -c '^kind:') objects are in order"
