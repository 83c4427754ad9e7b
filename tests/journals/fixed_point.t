What `lines` prints is a journal: it gives itself, and the same reports.

  $ same() {
  >   rm -rf again once.txt twice.txt; mkdir again
  >   waxtab lines --on "$2" "$1" > again/all.hive 2> said.txt
  >   waxtab lines --no-refs --on "$2" "$1" > once.txt 2> said.txt
  >   waxtab lines --no-refs --on "$2" again > twice.txt 2> said.txt
  >   cmp once.txt twice.txt || diff once.txt twice.txt | head -n 6
  >   for report in timeline supers advise harvest; do
  >     waxtab $report --no-refs --on "$2" "$1" > once.txt 2> said.txt
  >     waxtab $report --no-refs --on "$2" again > twice.txt 2> said.txt
  >     cmp once.txt twice.txt || diff once.txt twice.txt | head -n 6
  >   done
  > }
  $ examples="$TESTDIR/../../examples"
  $ same "$examples/first-visit" 2026-06-03
  once.txt twice.txt differ: char 29, line 3
  3c3,6
  <   2026-06-03  24C, sunny, flow heavy, white clover in bloom
  ---
  >   2026-06-03  24C
  >               sunny
  >               flow heavy
  $ same "$examples/extraction" 2026-09-01
  once.txt twice.txt differ: char 484, line 20
  20c20,21
  <   2026-07-25  super 90% full, super 85% capped
  ---
  >   2026-07-25  super 90% full
  >               super 85% capped
  $ same "$examples/swarm" 2026-07-01
  once.txt twice.txt differ: char 298, line 10
  10,14c10,18
  <   2026-05-03  8 frames of brood, 2 queen cups dry
  <   2026-05-10  3 charged queen cells, queen seen, split into h3 3 frames old
  <               queen
  <   2026-05-17  left 1 sealed queen cell, knocked down 2 queen cells
  <   2026-06-14  eggs seen, queen laying
  once.txt twice.txt differ: char 593, line 23
  23c23
  <       "brood on 5"
  ---
  >       "5 frames of brood"
  41c41
  <       "brood on 5"
  $ same "$examples/season" 2026-07-05
  once.txt twice.txt differ: char 873, line 27
  27,31c27,31
  < 2026-04-10 shed: super drawn
  < 2026-04-10 shed: super foundation
  < 2026-04-10 shed: super cut comb
  < 2026-04-10 shed: super starter strips
  < 2026-04-10 shed: 1 super sections
  once.txt twice.txt differ: char 29, line 3
  3,18c3,60
  <   2026-04-12  15C, sunny, windy, rape just opening, dandelion in bloom
  <   2026-04-19  17C, sunny, flow light, rape in bloom
  <   2026-04-26  19C, sunny, flow heavy, rape in bloom
  <   2026-05-03  18C, cloudy, flow heavy, rape in bloom, hawthorn just opening
  <   2026-05-10  16C, rain, flow light, rape nearly over, hawthorn in bloom
  once.txt twice.txt differ: char 397, line 16
  16c16
  <       "No queen cells this time"
  ---
  >       "no queen cells"
  30c30
  <       "marked white"
  $ same "$examples/season" 2026-09-30
  once.txt twice.txt differ: char 873, line 27
  27,31c27,31
  < 2026-04-10 shed: super drawn
  < 2026-04-10 shed: super foundation
  < 2026-04-10 shed: super cut comb
  < 2026-04-10 shed: super starter strips
  < 2026-04-10 shed: 1 super sections
  once.txt twice.txt differ: char 29, line 3
  3,27c3,83
  <   2026-04-12  15C, sunny, windy, rape just opening, dandelion in bloom
  <   2026-04-19  17C, sunny, flow light, rape in bloom
  <   2026-04-26  19C, sunny, flow heavy, rape in bloom
  <   2026-05-03  18C, cloudy, flow heavy, rape in bloom, hawthorn just opening
  <   2026-05-10  16C, rain, flow light, rape nearly over, hawthorn in bloom
  once.txt twice.txt differ: char 337, line 10
  10,15c10,15
  <       "6 frames drawn"
  <       "Bottom super 80%"
  <       "40% capped"
  <       "Dearth"
  <       "United with Blue, newspaper"

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
