# Part of the launcher: the class-data archive. Sets archive.
#
# Java starts twice as fast from an archive of the classes it will need. The archive is good for one
# build of Java and for these very jars at this very place, and Java loses even its built-in archive if
# it is given one that does not fit. So it is made here, not shipped, and used only if it fits. Beside
# it, a .key file says what it was made for; a key without an archive says that this Java makes none.
# (Java 17 archives only its own classes if the folder's name has spaces or letters beyond ASCII.)

# What a run usually loads: one command a line, recorded and merged.
training_runs() {
  record --version
  record --help
  [ ! -f "$home/catalogs/demo/pickup.yaml" ] || record quote "$home/catalogs/demo/pickup.yaml"
}

record() {
  recorded=$((recorded + 1))
  (cd "$new" && exec "$java" -XX:DumpLoadedClassList="$new/classes-$recorded" -Dtrammel.home="$home" \
    -Djava.awt.headless=true $logging -jar "$home/lib/trammel-app.jar" "$@") >/dev/null 2>&1 </dev/null
}

# Sets archive and succeeds if the folder has what belongs to this Java and these jars.
use_archive() {
  archive=$1/classes-${java_build:-$java_version}.jsa
  [ -r "$archive.key" ] || return 1
  IFS= read -r made_for <"$archive.key"
  [ "$made_for" = "$key" ] || return 1
  # The change time, not the modification time: unpacking a zip sets the latter to what it was packed with.
  [ -z "$(find "$home/lib" "$jdk/lib/modules" -cnewer "$archive.key" -print -quit 2>/dev/null)" ] || return 1
  [ -r "$archive" ] || archive=
}

make_archive() {
  mkdir -p "$1" 2>/dev/null && [ -w "$1" ] || return 1
  archive=$1/classes-${java_build:-$java_version}.jsa
  new=$1/new-$$
  recorded=0
  mkdir "$new" 2>/dev/null || return 1
  started $$ >"$new/started"
  trap 'rm -rf "$new"' EXIT
  trap 'exit 3' HUP INT TERM
  say "Preparing Trammel to start faster (once, a few seconds)…"
  printf '%s\n' "$key" >"$new/key"
  training_runs
  sort -u "$new"/classes-* >"$new/classes" 2>/dev/null
  "$java" -Xshare:dump -XX:+UseG1GC -XX:SharedClassListFile="$new/classes" -XX:SharedArchiveFile="$new/archive" \
    -jar "$home/lib/trammel-app.jar" >/dev/null 2>&1 </dev/null
  forget_older_archives "$1"
  if [ -s "$new/archive" ]; then
    mv -f "$new/archive" "$archive"
  fi
  mv -f "$new/key" "$archive.key"
  rm -rf "$new"
  trap - EXIT HUP INT TERM
  [ -r "$archive" ] || archive=
}

# What runs that were killed left while they made an archive.
take_away_leftovers() {
  for left in "$1"/new-[0-9]*; do
    [ -d "$left" ] || continue
    is_gone "${left##*/new-}" "$left/started" && rm -rf "$left" 2>/dev/null
  done
}

# Those of this very place and Java folder, whatever version was in it; others may still be in use.
forget_older_archives() {
  for old in "$1"/*.key; do
    [ -r "$old" ] || continue
    IFS= read -r made_for <"$old"
    case $made_for in
      "$home|$jdk|"*) rm -f "$old" "${old%.key}" ;;
    esac
  done
}

archive=
if [ "${TRAMMEL_CLASS_ARCHIVE:-on}" != off ]; then
  key="$home|$jdk|${java_build:-$java_version}"
  cache=${XDG_CACHE_HOME:-${HOME:-/nonexistent}/.cache}/trammel$home
  take_away_leftovers "$home/cds"
  take_away_leftovers "$cache"
  use_archive "$home/cds" || use_archive "$cache" || make_archive "$home/cds" || make_archive "$cache" || archive=
fi
