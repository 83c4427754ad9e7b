#!/bin/sh
# Writes what the program prints now into the whole-program tests and into the journals of expected messages:
#   sh tests/accept.sh [FILE.t|FILE.hive...]
# Read the change with `git diff` before committing it: it is the test.
set -u
root=$(cd "$(dirname "$0")/.." && pwd)
. "$root/tests/prepare.sh"
ensure $build_packages python3 python3-cram
build release -DCMAKE_BUILD_TYPE=Release
cram=$(command -v cram3 || command -v cram) || stop 2 "Please install cram (Debian: python3-cram)"
[ $# -gt 0 ] || set -- "$root"/tests/errors/*.hive "$root"/tests/journals/*.t
PATH=$root/build/release:$PATH
for file in "$@"; do
    case $file in
    *.hive) sh "$root/tests/errors/compare.sh" --accept "$file" ;;
    *) "$cram" -i -y --shell=/bin/sh "$file" ;;
    esac
done
