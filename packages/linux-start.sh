#!/bin/sh
# Starts freshfurrow of this folder, wherever it is, with its own Java.

self=$(readlink -f "$0") || exit 1

# Without a language, Java takes names of files and arguments for ASCII.
case ${LC_ALL:-${LC_CTYPE:-${LANG:-C}}} in
    C | POSIX) export LC_ALL=C.UTF-8 ;;
esac

[ -t 2 ] && export FRESHFURROW_TERMINAL=true
exec "$(dirname "$self")/freshfurrow-java" "$@"
