The small teaching journals.

  $ cd "$TESTDIR/../../examples"
  $ waxtab check --on 2026-09-01 first-visit
  $ waxtab check --on 2026-09-01 extraction
  $ waxtab check --on 2026-09-01 swarm

  $ waxtab harvest --on 2026-09-01 extraction

  $ waxtab timeline --on 2026-06-14 swarm

  $ waxtab advise --on 2026-05-17 swarm
