#!/bin/sh
# The report in a browser: sh tests/web/run.sh WAXTAB
# Installs what is missing (Debian: chromium, python3-icalendar, nodejs; npm: what package.json names) and ends
# with `N passed, N failed`.
set -u
root=$(cd "$(dirname "$0")/../.." && pwd)
. "$root/tests/prepare.sh"
waxtab=$1
work=$root/build/web

command -v node >/dev/null 2>&1 || ensure nodejs npm
ensure chromium python3-icalendar
python=/usr/bin/python3
[ -x "$python" ] || python=python3
mkdir -p "$work"
cp "$root/tests/web/package.json" "$root/tests/web/check.mjs" "$work/"
(cd "$work" && npm install --silent --no-audit --no-fund --no-package-lock >npm.txt 2>&1) || stop 2 "npm install failed; see $work/npm.txt"

passed=0
failed=0
# one DAY JOURNAL: a report, opened and read.
one() {
    rm -rf "$work/report"
    "$waxtab" report --out "$work/report" --on "$1" "$2" 2>/dev/null || { say "no report of $2"; failed=$((failed + 1)); return; }
    (cd "$work" && node check.mjs report) >"$work/log.txt" 2>&1 || grep -A12 '^FAILED' "$work/log.txt" >&2
    "$python" "$root/tests/web/read_calendar.py" "$work/report" >>"$work/log.txt" 2>&1 || tail -n 5 "$work/log.txt" >&2
    [ "$(grep -c ' passed, ' "$work/log.txt")" = 2 ] || { tail -n 20 "$work/log.txt" >&2; failed=$((failed + 1)); }
    passed=$((passed + $(grep -c '^ok' "$work/log.txt")))
    failed=$((failed + $(grep -c '^FAILED' "$work/log.txt")))
    say "$2 on $1: done"
}
one 2026-07-12 "$root/examples/season"
one 2026-05-12 "$root/tests/web/hostile"
"$python" "$root/tests/report/killed.py" "$waxtab" "$root/examples/season" >"$work/killed.txt" || cat "$work/killed.txt" >&2
passed=$((passed + $(sed -n 's/^\([0-9]*\) passed.*/\1/p' "$work/killed.txt")))
failed=$((failed + $(sed -n 's/^.* passed, \([0-9]*\) failed/\1/p' "$work/killed.txt")))
echo "$passed passed, $failed failed"
[ "$failed" = 0 ]
