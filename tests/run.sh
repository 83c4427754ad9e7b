#!/bin/sh
# Everything that must hold: sh tests/run.sh [--all]
# Installs what is missing, builds, runs, and ends with `N passed, N failed`. Exit status 0 when nothing
# failed, 1 otherwise, 2 when the machine lacks something.
#   default  Release build: unit tests, whole-program tests, expected messages; then the same with the
#            address and undefined-behaviour sanitizers
#   --all    also: the long tables of forecasts, decisions and cost, clang build with its warnings, clang-tidy, whole-program tests without fused
#            multiply-add in the C library, the report in a headless browser
set -u
root=$(cd "$(dirname "$0")/.." && pwd)
. "$root/tests/prepare.sh"

all=
case ${1-} in
'') ;;
--all) all=yes ;;
*) stop 2 "usage: sh tests/run.sh [--all]" ;;
esac

passed=0
failed=0
count() {
    passed=$((passed + $1))
    failed=$((failed + $2))
    [ "$2" = 0 ] || bad="$bad $3"
}
bad=

# number TEXT WORDS: the number standing before (or after) the words in a summary, 0 when there is none.
first_number() {
    found=$(sed -n "s/$1/\\1/p" "$2" | tail -n 1)
    echo "${found:-0}"
}

tags_of() {
    case $1 in
    lines) echo '[lines]~[figures]~[.]' ;;
    facts) echo '[facts]~[lines]~[figures]~[.]' ;;
    coverage) echo '[figures][coverage]~[.]' ;;
    figures) echo '[figures]~[coverage]~[.]' ;;
    *) echo '~[facts]~[figures]~[.]' ;;
    esac
}

# part BUILD NAME: a part of the unit tests; what it prints, then its status, go into files.
part() {
    status=0
    "$root/build/$1/tests/waxtab_unit" "$(tags_of "$2")" >"$root/build/$1/unit-$2.txt" 2>&1 || status=$?
    echo "$status" >"$root/build/$1/unit-$2.status"
}

# What is worked out over many invented journals comes out the same in every build and ten times slower under the
# sanitizers: the release build shows it.
parts_of() {
    echo lines facts rest
    [ "$1" != release ] || echo figures coverage
}

# tests BUILD: the unit tests in parts and the whole-program tests, side by side.
tests() {
    rm -f "$root/build/$1"/unit-*.status
    for name in $(parts_of "$1"); do part "$1" "$name" & done
    whole "$1" &
    wait
    unit "$1"
    journals "$1"
}

# unit BUILD: what came of the unit tests.
unit() {
    parts=$(parts_of "$1")
    ok_here=0
    wrong_here=0
    for name in $parts; do
        out=$root/build/$1/unit-$name.txt
        ok=$(first_number '.*All tests passed (.* in \([0-9]*\) test case.*' "$out")
        wrong=0
        if [ "$ok" = 0 ]; then
            ok=$(first_number '^test cases:.*| *\([0-9]*\) passed.*' "$out")
            wrong=$(first_number '^test cases:.*| *\([0-9]*\) failed.*' "$out")
        fi
        [ "$(cat "${out%.txt}.status")" = 0 ] || [ "$wrong" != 0 ] || wrong=1
        [ "$wrong" = 0 ] || tail -n 80 "$out" >&2
        grep '^ *skipped:' "$out" >&2
        ok_here=$((ok_here + ok))
        wrong_here=$((wrong_here + wrong))
    done
    say "unit tests, $1: $ok_here passed, $wrong_here failed"
    count "$ok_here" "$wrong_here" "unit-$1"
}

# whole BUILD: the whole-program tests with the program of a build.
whole() {
    out=$root/build/$1/journals.txt
    # What starts the program a hundred times, or reads a megabyte: in the release build.
    built=$1
    set --
    for test in "$root"/tests/journals/*.t; do
        case $built-${test##*/} in
        release-*) set -- "$@" "$test" ;;
        *-options.t | *-fixed_point.t | *-long_work.t) ;;
        *) set -- "$@" "$test" ;;
        esac
    done
    PATH=$root/build/$built:$PATH WAXTAB_ROOT=$root "$cram" -v --shell=/bin/sh "$@" >"$out" 2>&1
}

# journals BUILD: what came of the whole-program tests.
journals() {
    out=$root/build/$1/journals.txt
    ran=$(first_number '^# Ran \([0-9]*\) test.*' "$out")
    skip=$(first_number '^# Ran .* \([0-9]*\) skipped.*' "$out")
    wrong=$(first_number '^# Ran .* \([0-9]*\) failed.*' "$out")
    [ "$ran" != 0 ] || wrong=1
    ok=$((ran - skip - wrong))
    [ "$ran" != 0 ] || ok=0
    [ "$wrong" = 0 ] || head -n 200 "$out" >&2
    sed -n "s|^$root/\(.*\): skipped$|skipped: \1 (its head says when)|p" "$out" >&2
    say "whole-program tests, $1: $ok passed, $wrong failed"
    count "$ok" "$wrong" "journals-$1"
}

# step NAME COMMAND...: one check that passes or fails as a whole.
step() {
    name=$1
    shift
    if "$@"; then count 1 0 "$name"; else count 0 1 "$name"; fi
    say "$name: done"
}

tidy() {
    log=$root/build/clang/tidy.txt
    run-clang-tidy -quiet -p "$root/build/clang" "$root/src/.*" >"$log" 2>/dev/null || { tail -n 60 "$log" >&2; false; }
}

# The tests that are too long for every day, at their full size; what they print goes into the manual.
tables() {
    "$root/build/release/tests/waxtab_unit" "[.slow]~[facts]" >"$root/build/tables.txt" 2>&1 || { tail -n 60 "$root/build/tables.txt" >&2; false; }
}

# Open measurements that some tests check against, where they are at hand.
if [ -z "${WAXTAB_OPEN_DATA-}" ] && [ -d "$root/../shared/data" ]; then
    WAXTAB_OPEN_DATA=$(cd "$root/../shared/data" && pwd)
    export WAXTAB_OPEN_DATA
fi

ensure $build_packages python3 python3-cram git
cram=$(command -v cram3 || command -v cram) || stop 2 "Please install cram (Debian: python3-cram)"

build release -DCMAKE_BUILD_TYPE=Release
tests release

build sanitize -DCMAKE_BUILD_TYPE=Release -DCMAKE_CXX_FLAGS_RELEASE="-Og -DNDEBUG" -DWAXTAB_SANITIZE=ON
export UBSAN_OPTIONS=print_stacktrace=1
tests sanitize
unset UBSAN_OPTIONS

if [ -n "$all" ]; then
    step tables tables
    ensure clang clang-tidy
    build clang -DCMAKE_BUILD_TYPE=Release -DCMAKE_CXX_COMPILER=clang++ -DCMAKE_EXPORT_COMPILE_COMMANDS=ON
    tests clang
    step clang-tidy tidy
    export GLIBC_TUNABLES=glibc.cpu.hwcaps=-AVX2,-FMA,-FMA4
    whole release
    journals release
    unset GLIBC_TUNABLES
    sh "$root/tests/web/run.sh" "$root/build/release/waxtab" >"$root/build/web.txt"
    wrong=$(first_number '^[0-9]* passed, \([0-9]*\) failed$' "$root/build/web.txt")
    [ -n "$(sed -n '/ passed, /p' "$root/build/web.txt")" ] || wrong=1
    count "$(first_number '^\([0-9]*\) passed, .*' "$root/build/web.txt")" "$wrong" web
    say "report in a browser: $(tail -n 1 "$root/build/web.txt")"
fi

[ -z "$bad" ] || say "failed:$bad"
echo "$passed passed, $failed failed"
[ "$failed" = 0 ]
