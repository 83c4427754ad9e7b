The small journal, through every command.

  $ cp "$TESTDIR/../../examples/first-visit/mill.hive" .
  $ cat mill.hive

  $ waxtab check --on 2026-06-03

  $ waxtab lines --on 2026-06-03

  $ waxtab lines --read-back --on 2026-06-03

  $ waxtab lines --json --on 2026-06-03

  $ waxtab lines --csv --on 2026-06-03 | tr -d '\r'

  $ waxtab timeline --on 2026-06-03

  $ waxtab supers --on 2026-06-03

  $ waxtab advise --on 2026-06-03

  $ waxtab harvest --on 2026-06-03

Nothing noted later counts.

  $ waxtab timeline --on 2026-06-02

In pounds.

  $ waxtab supers --units lb --on 2026-06-03

Commands that answer keep to themselves that a journal has errors, but for one line; check says them all.

  $ echo 'h4 top full' >> mill.hive
  $ waxtab supers --on 2026-06-03 > /dev/null
  $ waxtab check --on 2026-06-03
