What the README shows is what the program prints.

  $ readme="$TESTDIR/../../README.md"
  $ awk '/^```hive$/ { on = 1; next } /^```/ { on = 0 } on' "$readme" > mill.hive
  $ awk '/^```console$/ { on = 1; next } /^```/ { on = 0 } on { print ($0 == "" ? "" : "  " $0) }' "$readme" > shown.t
  $ cram="$(command -v cram3 || command -v cram)"
  $ cp mill.hive mill.txt
  $ sed -i "1i\\  $ cp '$PWD/mill.hive' ." shown.t
  $ "$cram" --shell=/bin/sh shown.t
