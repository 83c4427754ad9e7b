What `lines` prints is a journal: it gives itself, and the same reports.

  $ same() {
  >   rm -rf again once.txt twice.txt; mkdir again
  >   waxtab lines --on "$2" "$1" > again/all.hive 2> said.txt
  >   waxtab lines --no-refs --on "$2" "$1" > once.txt 2> said.txt
  >   waxtab lines --no-refs --on "$2" again > twice.txt 2> said.txt
  >   cmp once.txt twice.txt || diff once.txt twice.txt | head -n 6 | sed 's/^/| /'
  >   for report in timeline supers advise harvest; do
  >     waxtab $report --no-refs --on "$2" "$1" > once.txt 2> said.txt
  >     waxtab $report --no-refs --on "$2" again > twice.txt 2> said.txt
  >     cmp once.txt twice.txt || diff once.txt twice.txt | head -n 6 | sed 's/^/| /'
  >   done
  > }
  $ examples="$TESTDIR/../../examples"
  $ same "$examples/first-visit" 2026-06-03
  $ same "$examples/extraction" 2026-09-01
  $ same "$examples/swarm" 2026-07-01
  $ same "$examples/season" 2026-07-05
  $ same "$examples/season" 2026-09-30

One file or many, cut by yard or by month, under whatever names: the same reports.

  $ mkdir cut
  $ for month in 04 05 06 07 08 09; do
  >   { grep -v '^2026-' again/all.hive | sed 's/^/# /'; grep "^2026-$month" again/all.hive; } > cut/$month.hive
  > done
  $ grep -v '^2026-' again/all.hive > cut/zz-set-up.hive
  $ for report in timeline supers advise harvest; do
  >   waxtab $report --no-refs --on 2026-09-30 again > once.txt 2> said.txt
  >   waxtab $report --no-refs --on 2026-09-30 cut > twice.txt 2> said.txt
  >   cmp once.txt twice.txt
  > done
