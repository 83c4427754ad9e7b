#!/bin/sh
# The report in a browser: sh tests/web/run.sh WAXTAB
# Installs what is missing (Debian: chromium, poppler-utils, python3-icalendar, nodejs; npm: what package.json names) and ends
# with `N passed, N failed`.
set -u
root=$(cd "$(dirname "$0")/../.." && pwd)
. "$root/tests/prepare.sh"
waxtab=$1
work=$root/build/web

command -v node >/dev/null 2>&1 || ensure nodejs npm
ensure chromium poppler-utils python3-icalendar
python=/usr/bin/python3
[ -x "$python" ] || python=python3
mkdir -p "$work"
cp "$root/tests/web/package.json" "$root"/tests/web/*.mjs "$work/"
(cd "$work" && npm install --silent --no-audit --no-fund --no-package-lock >npm.txt 2>&1) ||
    stop 2 "npm install failed; see $work/npm.txt"

passed=0
failed=0
# tally LOG NAME SUMMARIES: counts the checks of a log that must hold so many summaries.
tally() {
    grep -A12 '^FAILED' "$1" >&2
    [ "$(grep -c ' passed, ' "$1")" = "$3" ] || { tail -n 20 "$1" >&2; failed=$((failed + 1)); }
    passed=$((passed + $(grep -c '^ok' "$1")))
    failed=$((failed + $(grep -c '^FAILED' "$1")))
    say "$2: done"
}

# one DAY JOURNAL [SAID]: a report, opened and read.
one() {
    rm -rf "$work/report"
    "$waxtab" report --out "$work/report" --on "$1" "$2" 2>/dev/null || { say "no report of $2"; failed=$((failed + 1)); return; }
    (cd "$work" && node check.mjs report ${3+"$3"}) >"$work/log.txt" 2>&1
    "$python" "$root/tests/web/read_calendar.py" "$work/report" >>"$work/log.txt" 2>&1
    tally "$work/log.txt" "${2#"$root"/} on $1" 2
}

(cd "$work" && node faults.mjs faults) >"$work/faults.txt" 2>&1
tally "$work/faults.txt" "pages with a fault each" 1
one 2026-07-12 "$root/examples/season"
one 2026-05-28 "$root/tests/web/large_yard"
one 2026-05-12 "$root/tests/web/hostile" "$root/tests/web/hostile/said.txt"

# Five hundred hives over ten seasons; and a few.
mkdir -p "$work/many" && rm -rf "$work/report"
"$python" "$root/tests/web/many_hives.py" 500 10 12 "$work/many/many.hive"
"$waxtab" report --out "$work/report" --on 2026-07-05 "$work/many" 2>/dev/null
(cd "$work" && node opens.mjs report 5000000) >"$work/many.txt" 2>&1
tally "$work/many.txt" "500 hives" 1
rm -rf "$work/report"
"$waxtab" report --out "$work/report" --on 2026-07-12 "$root/examples/season" 2>/dev/null
(cd "$work" && node opens.mjs report 300000) >"$work/few.txt" 2>&1
tally "$work/few.txt" "a few hives" 1

"$python" "$root/tests/report/killed.py" "$waxtab" "$root/examples/season" >"$work/killed.txt" || cat "$work/killed.txt" >&2
tally "$work/killed.txt" "killed half-way" 1
echo "$passed passed, $failed failed"
[ "$failed" = 0 ]
