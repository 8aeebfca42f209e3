# Finds the JDK that the image is made with. To be sourced by scripts that have `fail`.

# Prints the folder of a JDK 25: JAVA_25_HOME, or one below /usr/lib/jvm.
find_jdk() {
  local home
  for home in ${JAVA_25_HOME:+"$JAVA_25_HOME"} /usr/lib/jvm/*25*; do
    [ -x "$home/bin/jlink" ] && grep -q '^JAVA_VERSION="25' "$home/release" && { echo "$home"; return; }
  done
  fail "there is no JDK 25; set JAVA_25_HOME"
}
