# Part of the launcher: which Java runs, and in which locale. Sets java, jdk, java_version, java_build.

# Java decodes arguments and file names by the locale. Most are not installed everywhere, and one that
# is not counts as C, which spoils all but ASCII; so it gets one that speaks UTF-8 and is there.
utf8_locale() {
  [ -d /usr/lib/locale/C.utf8 ] && return
  for name in C.UTF-8 "${LC_ALL:-}" "${LC_CTYPE:-}" "${LANG:-}" en_US.UTF-8; do
    [ "$(LC_ALL=$name locale charmap 2>/dev/null)" = UTF-8 ] && return
  done
  name=C.UTF-8
}
name=C.UTF-8
utf8_locale
export LC_ALL="$name"

# A copy that was bundled with a Java of its own takes that.
if [ -x "$home/runtime/bin/java" ]; then
  java=$home/runtime/bin/java
elif [ -n "${JAVA_HOME:-}" ]; then
  java=$JAVA_HOME/bin/java
  [ -x "$java" ] || fail "JAVA_HOME is $JAVA_HOME, but there is no bin/java in it: set it to the folder of a Java 17 or newer, or unset it."
else
  java=$(command -v java) || fail "Trammel needs Java 17 or newer and there is none: install it (Debian and Ubuntu: openjdk-17-jdk-headless) or set JAVA_HOME."
fi
jdk=$(readlink -f "$java" 2>/dev/null) || jdk=$java
jdk=${jdk%/bin/java}

java_version=
java_build=
if [ -r "$jdk/release" ]; then
  while IFS='="' read -r name skipped value _; do
    case $name in
      JAVA_VERSION) java_version=$value ;;
      JAVA_RUNTIME_VERSION) java_build=$value ;;
    esac
  done <"$jdk/release"
fi
if [ -z "$java_version" ]; then
  java_version=$("$java" -version 2>&1 | sed -n 's/^[^"]* version "\([^"]*\)".*/\1/p')
fi
java_major=${java_version%%[!0-9]*}
[ "${java_major:-0}" -ge 17 ] || fail "Trammel needs Java 17 or newer, but $java is Java ${java_version:-of an unknown version}: install Java 17 (Debian and Ubuntu: openjdk-17-jdk-headless) or set JAVA_HOME."
