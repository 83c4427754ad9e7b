Every journal in tests/errors says of each bad line what shall be said of it.

  $ sh "$TESTDIR/../errors/compare.sh" "$TESTDIR"/../errors/*.hive
  8 journals
