#!/bin/sh
# A comparison in slices, for job schedulers. Keep a copy in the folder of the season, and change its settings.
#   sh comparison.sh slice TASK    simulates one slice, the first is 0; one that is there already is kept
#   sh comparison.sh merge         joins all slices in the folder compare
set -eu
cd "$(dirname "$0")"
export JAVA_TOOL_OPTIONS=-Xmx1g # well below the memory that a task is given

springs=10000
slices=40
compare() {
    freshfurrow compare season.yaml --variant two-rigs.yaml --replan 7 --steps 20000 --seed 1 --threads 2 "$@"
}

part() {
    echo "slices/$((springs * $1 / slices + 1))-$((springs * ($1 + 1) / slices))"
}

slice() {
    part=$(part "$1")
    # a slice is written whole or not at all
    if [ -f "$part/compare.json" ]; then
        echo "$part is there already"
    else
        compare --springs "${part#slices/}" --out "$part" --force
    fi
}

merge() {
    set --
    while [ $# -lt "$slices" ]; do
        set -- "$@" "$(part $#)"
    done
    freshfurrow compare --merge "$@" --out compare --force
}

"$@"
