#!/bin/sh
# Compares what `waxtab check` says of journals with what the journals themselves expect:
#   sh compare.sh FILE.hive...            prints the differences (- expected, + said); status 1 if any
#   sh compare.sh --accept FILE.hive...   writes what is said now into the journals, to be read with git diff
# A bad line carries its messages in a comment, one after the other: `# error: words # warning: words`.
# Every message must be expected, and every expected one said, on that very line.
set -u
mode=compare
[ "$1" != --accept ] || { mode=accept; shift; }
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT
differ=0
for file in "$@"; do
    waxtab check --on 2026-09-30 "$file" 2>&1 |
        sed -n 's/^[^ ]*:\([0-9]*\):[0-9]*: \(error\|warning\): \(.*\) \[[a-z0-9-]*\]$/\1: \2: \3/p' >"$work/said"
    if [ "$mode" = accept ]; then
        awk -v said="$work/said" '
            BEGIN { while ((getline line < said) > 0) { n = line; sub(/:.*/, "", n); sub(/^[0-9]+: /, "# ", line)
                    more[n] = more[n] " " line } }
            { if (match($0, / *# (error|warning): /)) $0 = substr($0, 1, RSTART - 1); print $0 (NR in more ? " " more[NR] : "") }
        ' "$file" >"$work/new" && cat "$work/new" >"$file"
        continue
    fi
    awk '{
        line = $0
        while (match(line, /# (error|warning): /)) {
            line = substr(line, RSTART + 2)
            words = line
            if (match(words, / # (error|warning): /)) words = substr(words, 1, RSTART - 1)
            print NR ": " words
        }
    }' "$file" | sort >"$work/expected"
    sort -o "$work/said" "$work/said"
    if ! diff -u "$work/expected" "$work/said" >"$work/difference"; then
        echo "$(basename "$file"):"
        sed -n '4,$p' "$work/difference" | grep '^[-+]'
        differ=1
    fi
done
[ "$mode" = accept ] || echo "$# journals"
exit $differ
