What the README shows is what the program prints.

  $ sh "$TESTDIR/../shown.sh" "$TESTDIR/../../README.md" > now.md
  $ diff "$TESTDIR/../../README.md" now.md
