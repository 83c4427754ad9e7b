#!/bin/sh
# Compares what `waxtab check` says of journals with what the journals themselves expect:
#   sh compare.sh FILE.hive...
# A bad line carries its messages in a comment, one after the other: `# error: words # warning: words`.
# Every message must be expected, and every expected one said, on that very line. Prints the differences
# (- expected, + said) and a last line with the count; exit status 1 when there is a difference.
status=0
files=0
for file in "$@"; do
    files=$((files + 1))
    name=$(basename "$file")
    awk '{
        line = $0
        while (match(line, /# (error|warning): /)) {
            line = substr(line, RSTART + 2)
            words = line
            if (match(words, / # (error|warning): /)) words = substr(words, 1, RSTART - 1)
            print NR ": " words
        }
    }' "$file" | sort >expected.txt
    waxtab check --on "${WAXTAB_ERRORS_ON:-2026-09-30}" "$file" 2>&1 |
        sed -n 's/^[^ ]*:\([0-9]*\):[0-9]*: \(error\|warning\): \(.*\) \[[a-z0-9-]*\]$/\1: \2: \3/p' | sort >said.txt
    if ! diff -u expected.txt said.txt >difference.txt; then
        echo "$name:"
        sed -n '4,$p' difference.txt | grep '^[-+]'
        status=1
    fi
done
echo "$files journals"
exit $status
