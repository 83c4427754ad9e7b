#!/bin/sh
# Builds waxtab and runs it on one keeper's season: sh examples/try.sh
# Installs what is missing (Debian: with apt, as root or through sudo) and builds into build/, which git ignores.
set -u
root=$(cd "$(dirname "$0")/.." && pwd)
. "$root/tests/prepare.sh"

ensure $build_packages
target=waxtab
build release -DCMAKE_BUILD_TYPE=Release
PATH=$root/build/release:$PATH
cd "$root/examples" || exit 2

# run COMMAND...: shows a command, then what it prints.
run() {
    printf '\n$ %s\n' "$*"
    "$@" || exit $?
}

printf 'The journal in examples/season, as its keeper wrote it on one day:\n\n'
sed -n '/^Sun 5 July mill/,/^$/p' season/mill.hive
run waxtab check season
printf '\nA day in mid-flow\n'
run waxtab supers --on 2026-07-11 --yard mill season
run waxtab advise --on 2026-07-11 season
run waxtab timeline --on 2026-07-11 --hive h3 season
printf '\nThe end of the season\n'
run waxtab harvest --on 2026-09-30 season
