# Part of the launcher and of a checkout's build: tells one process from another.

# When a process started, told exactly: numbers of processes are given out again.
started() {
  if [ -r "/proc/$1/stat" ]; then
    read -r process 2>/dev/null <"/proc/$1/stat"
    set -- ${process##*) }
    printf '%s\n' "${20}"
  else
    ps -o lstart= -p "$1" 2>/dev/null
  fi
}

# True if the process of a number is gone, or another than the one whose start the file has.
is_gone() {
  kill -0 "$1" 2>/dev/null || return 0
  [ -s "$2" ] || return 1
  IFS= read -r began <"$2"
  [ "$began" != "$(started "$1")" ]
}
