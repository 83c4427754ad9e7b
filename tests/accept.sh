#!/bin/sh
# Writes what the program prints now into the whole-program tests, the journals of expected messages and the README:
#   sh tests/accept.sh [FILE.t|FILE.hive|README.md...]
# Read the change with `git diff` before committing it: it is the test.
set -u
root=$(cd "$(dirname "$0")/.." && pwd)
. "$root/tests/prepare.sh"
ensure $build_packages python3 python3-cram git
build release -DCMAKE_BUILD_TYPE=Release
cram=$(command -v cram3 || command -v cram) || stop 2 "Please install cram (Debian: python3-cram)"
[ $# -gt 0 ] || set -- "$root"/README.md "$root"/tests/errors/*.hive "$root"/tests/journals/*.t

PATH=$root/build/release:$PATH
for file in "$@"; do
    case $file in
    *.md)
        page=$(cd "$(dirname "$file")" && pwd)/$(basename "$file")
        work=$(mktemp -d)
        (cd "$work" && sh "$root/tests/shown.sh" "$page" >page.txt && cat page.txt >"$page")
        rm -rf "$work"
        ;;
    *.hive) sh "$root/tests/errors/compare.sh" --accept "$file" ;;
    # patch takes no absolute file name
    *) (cd "$(dirname "$file")" && "$cram" -i -y --shell=/bin/sh "$(basename "$file")") ;;
    esac
done
