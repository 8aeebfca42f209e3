#!/usr/bin/env bash
# Renders every kustomization with kubectl, and those that comments and running.md show. Checks what comes out without a
# cluster: against the JSON schemas and for what names and labels mean (check.mjs), and by typed parsing that lets no unknown
# field pass (StrictParse.java). Plays rollouts and drains (schedule.mjs). Then breaks a manifest in ways that one of them has
# to find.
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
  npm install --prefix "$work/npm" --silent --no-audit --no-fund --ignore-scripts kubernetes-models@4.5.1 \
    @kubernetes-models/gateway-api@0.5.1 @kubernetes-models/prometheus-operator@4.4.4 yaml@2 ||
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

plays() {
  NODE_MODULES_FROM=$work/npm/package.json node "$sources/schedule.mjs" "$@"
}

# The kustomization that stands at the head of a component.
write_the_example() {
  mkdir "$work/with-$1"
  sed -n '/^#   resources:/,/^#$/{s#path/to/k8s/#../../../k8s/#g;s/^#   //p}' "k8s/components/$1/kustomization.yaml" \
    >"$work/with-$1/kustomization.yaml"
}

# The kustomization that running.md shows, with everything switched on, and the image by its digest.
write_the_documented() {
  mkdir "$work/documented"
  sed -n '/^```yaml$/,/^```$/{/^```/d;s#orbwright/k8s/#../../../k8s/#;p}' src/docs/running.md >"$work/documented/kustomization.yaml"
  grep -q '^ *digest: sha256:' "$work/documented/kustomization.yaml" || fail "running.md shows no image by its digest"
}

rm -rf "$work"
mkdir -p "$work/rendered"
need_tools
for folder in k8s/base k8s/overlays/shop k8s/overlays/cluster k8s/sweep k8s/overlays/sweep-example; do
  kubectl kustomize "$folder" >"$work/rendered/$(basename "$folder").yaml" || fail "$folder cannot be rendered"
done
for component in keys ingress gateway metrics; do
  write_the_example "$component"
  kubectl kustomize "$work/with-$component" >"$work/rendered/with-$component.yaml" || fail "components/$component cannot be rendered"
done
write_the_documented
kubectl kustomize "$work/documented" >"$work/rendered/documented.yaml" || fail "what running.md shows cannot be rendered"
schemas "$work/rendered"/*.yaml || fail "the manifests break the schemas, or do not fit together"
types "$work/rendered"/*.yaml || fail "the manifests cannot be read into types"
plays "$work/rendered"/{shop,base,cluster,documented}.yaml >"$work/plays.txt" || fail "a rollout, a drain or a growth jams"
version=$(sed -n '0,/<version>/s:.*<version>\(.*\)</version>:\1:p' pom.xml)
tags=$(grep -ho 'image: orbwright:.*' "$work/rendered"/*.yaml | sort -u)
[ "$tags" = "image: orbwright:$version" ] || fail "the images are not of this version, $version: $tags"

# broken NAME JUDGE FILE SED: the judge has to find what the sed expression breaks.
broken() {
  sed "$4" "$work/rendered/$3.yaml" >"$work/$1.yaml"
  cmp -s "$work/$1.yaml" "$work/rendered/$3.yaml" && fail "$1 breaks nothing"
  if "$2" "$work/$1.yaml" >"$work/$1.log" 2>&1; then fail "$1 is not found"; fi
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
broken moving-tag schemas cluster 's/image: orbwright:.*/image: orbwright:latest/'
broken no-tag schemas sweep-example 's/image: orbwright:.*/image: orbwright/'
broken short-digest schemas documented 's/\(sha256:[0-9a-f]\{60\}\)..../\1/'
broken public-metrics schemas with-ingress 's#path: /v1$#path: /#'
broken plain-ingress schemas with-ingress '/secretName: orbwright-tls/d'
broken stray-route schemas with-gateway '/backendRefs/,/port: 80/s/port: 80/port: 81/'
broken wrong-time schemas with-gateway 's/request: 65m/request: 65 minutes/'
broken unknown-in-gateway types with-gateway 's/allowedRoutes/allowedRoute/'
broken plain-gateway schemas with-gateway 's/protocol: HTTPS/protocol: HTTP/'
broken stray-monitor schemas with-metrics '/kind: ServiceMonitor/,$s/port: http/port: metrics/'
broken unknown-in-monitor types with-metrics '/kind: ServiceMonitor/,$s/interval: /every: /'
broken shut-port schemas with-metrics '/kind: NetworkPolicy/,/policyTypes/s/port: http/port: metrics/'
broken counts-tainted-nodes plays cluster '/nodeTaintsPolicy/d'
broken needs-more-room plays cluster '/rollingUpdate:/,/template:/s/maxUnavailable: 1/maxUnavailable: 0/'
broken too-few-at-times plays cluster '/rollingUpdate:/,/template:/s/maxUnavailable: 1/maxUnavailable: 2/'
broken undrainable plays base '/kind: PodDisruptionBudget/,$s/maxUnavailable: 1/maxUnavailable: 0/'
broken missing-shard schemas sweep-example 's/completions: 2/completions: 3/'
echo "k8s: $(ls "$work/rendered" | wc -l) kustomizations render, and $(cat "$work/rendered"/*.yaml | grep -c '^kind:') objects are in order"
echo "k8s: $(wc -l <"$work/plays.txt") rollouts, drains and growths end with all pods placed ($work/plays.txt)"
