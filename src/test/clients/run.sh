#!/usr/bin/env bash
# Generates a TypeScript, a Java and a Python client from the contract, compiles each and lets it call the packaged
# service: one document, posted to five addresses, whose answers all three have to read alike, and one that is refused.
# Needs what `mvn package` leaves behind, Node.js with npm, and Python 3. Usage: src/test/clients/run.sh
set -euo pipefail
shopt -s inherit_errexit
cd "$(dirname "$0")/../../.."

sources=src/test/clients
work=target/clients
version=$(sed -n 's:.*<openapi-generator.version>\(.*\)</openapi-generator.version>.*:\1:p' pom.xml)
. src/test/service.sh clients

need_python_packages() {
  local imports='import pydantic, urllib3, dateutil, typing_extensions; assert pydantic.VERSION.startswith("2.")'
  python3 -c "$imports" 2>/dev/null && return
  echo "clients: installing what the Python client needs"
  python3 -m venv "$work/venv" && "$work/venv/bin/pip" install -q 'pydantic>=2,<3' urllib3 python-dateutil typing-extensions ||
    fail "the Python client needs the packages pydantic 2, urllib3, python-dateutil and typing-extensions"
  PATH="$PWD/$work/venv/bin:$PATH"
  python3 -c "$imports" || fail "the Python client's packages are installed but cannot be used"
}

generate() {
  java -jar "$work/tools/openapi-generator-cli-$version.jar" generate -i openapi/openapi.yaml -g "$1" -o "$work/$2" \
    --global-property apiTests=false,modelTests=false,apiDocs=false,modelDocs=false "${@:3}" >"$work/$2.log" 2>&1 ||
    { tail -20 "$work/$2.log" >&2; fail "the $2 client cannot be generated"; }
}

call_typescript() {
  generate typescript-fetch typescript
  cp "$sources/main.ts" "$work/typescript/"
  "$work/tools/node_modules/.bin/tsc" --strict --skipLibCheck --target es2022 --module commonjs --lib es2022,dom \
    --outDir "$work/typescript/out" "$work/typescript/main.ts"
  node "$work/typescript/out/main.js" "$url"
}

call_java() {
  generate java java --library native \
    --additional-properties=openApiNullable=false,useJakartaEe=true,hideGenerationTimestamp=true
  local classpath
  classpath=$(cat "$work/tools/classpath")
  mkdir -p "$work/java/out"
  find "$work/java/src/main/java" -name '*.java' >"$work/java/sources"
  javac -nowarn -proc:none -cp "$classpath" -d "$work/java/out" "@$work/java/sources" "$sources/Main.java" \
    2>"$work/java/javac.log" || { cat "$work/java/javac.log" >&2; fail "the Java client does not compile"; }
  java -cp "$work/java/out:$classpath" Main "$url"
}

call_python() {
  generate python python
  python3 -m compileall -q "$work/python/openapi_client"
  PYTHONPATH="$work/python" python3 "$sources/main.py" "$url"
}

command -v npm >/dev/null || fail "npm is missing; it comes with Node.js"
rm -rf "$work"
mkdir -p "$work/tools"
need_python_packages
mvn -q -B dependency:copy -Dartifact="org.openapitools:openapi-generator-cli:$version" -DoutputDirectory="$work/tools"
mvn -q -B dependency:build-classpath -Dmdep.includeScope=runtime -Dmdep.outputFile="$work/tools/classpath"
npm install --silent --no-audit --no-fund --prefix "$work/tools" typescript@5 >/dev/null
start_service "$work/service.log"

typescript=$(call_typescript)
java=$(call_java)
python=$(call_python)
echo "TypeScript: $typescript"
echo "Java:       $java"
echo "Python:     $python"
[ "$typescript" = "$java" ] && [ "$java" = "$python" ] || fail "the clients do not agree"
echo "3 clients agree"
