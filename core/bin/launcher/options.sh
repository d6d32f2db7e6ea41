# Part of the launcher: how Java is to work for this command. Sets pace, terminal, in_modules.

# A short command is over before the optimizing compiler pays; a long search, a study of thousands of samples
# and a run over many jobs are not. And while the cores are busy with the command itself, one thread that
# compiles little code at a time does better than two.
# With this much room for what is new, most commands end before anything has to be collected. More than that
# is only more memory touched for the first time, which costs more than to collect. A long run
# would take far more for it before anything is collected, and three times the memory in all; so much is enough.
long=
case "${1:-} $*" in
  cut\ * | page\ * | *\ --samples*) long=yes ;;
esac
[ $# -le 20 ] || long=yes
pace="-XX:MaxNewSize=256m -Xmx1536m"
[ -n "$long" ] ||
  pace="-XX:TieredStopAtLevel=1 -XX:CICompilerCount=1 -XX:C1MaxInlineSize=12 -XX:NewSize=48m -XX:MaxNewSize=48m -XX:+IgnoreUnrecognizedVMOptions"

# What a terminal can be asked and shown.
terminal=
if [ -t 0 ] && [ -t 2 ] && [ "${1:-}" = close ]; then
  terminal="$terminal -Dtrammel.answers=on"
fi
if [ "${TERM:-dumb}" != dumb ]; then
  case ${1:-} in
    cut | order | check) [ ! -t 2 ] || terminal="$terminal -Dtrammel.watched=on" ;;
  esac
  [ ! -t 1 ] || [ -n "${NO_COLOR:-}" ] || terminal="$terminal -Dtrammel.colour=on"
fi

# Java spoils signs beyond the first 65,536, such as emoji, in a class path, but not in a module path;
# there an archive of a class path is of no use.
in_modules=
case $home in
  *[!\ -~]*)
    if printf %s "$home" | LC_ALL=C grep -q "$(printf '[\360-\364]')"; then
      in_modules=yes
      archive=
    fi
    ;;
esac
