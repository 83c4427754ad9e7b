One keeper's season.

  $ cd "$TESTDIR/../../examples"
  $ waxtab check --on 2026-09-30 season

At least 300 facts, remarks and to-dos apart.

  $ waxtab lines --json --on 2026-09-30 season | grep -v -c -E '"kind":"(remark|todo)"'

Nothing that smells of data is left as a remark.

  $ waxtab lines --json --on 2026-09-30 season | grep '"kind":"remark"' | grep '"detail":"flagged"'
  [1]

A day in mid-flow.

  $ waxtab supers --on 2026-07-05 --yard mill season

  $ waxtab advise --on 2026-07-05 --yard mill season

  $ waxtab timeline --on 2026-07-05 --hive h3 season

The end of the season.

  $ waxtab harvest --on 2026-09-30 season
