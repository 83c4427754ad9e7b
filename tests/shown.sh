#!/bin/sh
# Prints a page with the output of each `$ command` of its console blocks written anew: sh shown.sh PAGE.md
# The commands run in the current folder, on the page's journal block, written to mill.hive.
set -u
awk '/^```hive$/ { on = 1; next } /^```/ { on = 0 } on' "$1" >mill.hive
block=
while IFS= read -r line; do
    case $line in
    '```console') block=yes ;;
    '```') block= ;;
    '$ '*) [ -z "$block" ] || { printf '%s\n' "$line"; sh -c "${line#$ }" </dev/null; continue; } ;;
    *) [ -z "$block" ] || continue ;;
    esac
    printf '%s\n' "$line"
done <"$1"
