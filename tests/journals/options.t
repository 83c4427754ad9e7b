What every command makes of the options that many share, in the order --hive, --yard, --since, --until, --units,
--json, --no-refs: an option either changes what is printed or is refused; none is taken and passed over (`same`).

  $ hives="$TESTDIR/../../examples/season"
  $ base() { waxtab "$@" --on 2026-07-12 "$hives" 2>/dev/null; }
  $ one() {
  >   base $1 >one.txt; waxtab $1 $2 --on 2026-07-12 "$hives" >other.txt 2>/dev/null
  >   if [ $? = 2 ]; then printf ' %s' refused; elif cmp -s one.txt other.txt; then printf ' %s' same; else printf ' %s' differs; fi
  > }
  $ row() {
  >   printf '%-17s' "$1"
  >   for option in '--hive h3' '--yard mill' '--since 2026-06-01' '--until 2026-06-20' '--units lb' --json --no-refs; do one "$1" "$option"; done
  >   echo
  > }

  $ for command in check lines 'lines --csv' 'lines --read-back' timeline supers advise bring harvest 'harvest --lot A' records; do row "$command"; done
  check             refused refused refused refused refused differs refused
  lines             differs differs differs differs refused differs differs
  lines --csv       differs differs differs differs differs refused differs
  lines --read-back differs differs differs differs refused refused differs
  timeline          differs differs differs differs refused differs differs
  supers            differs differs refused refused differs differs differs
  advise            differs differs refused refused differs differs differs
  bring             differs differs refused differs differs differs differs
  harvest           differs differs differs differs differs differs differs
  harvest --lot A   refused refused refused refused differs differs differs
  records           differs differs differs differs refused differs differs

The day stood on is taken by every command.

  $ for command in check lines timeline supers advise bring harvest records hindsight; do
  >   waxtab $command --on 2026-05-20 "$hives" >one.txt 2>/dev/null; waxtab $command --on 2026-07-12 "$hives" >other.txt 2>/dev/null
  >   cmp -s one.txt other.txt && echo "$command: the same"
  > done
  [1]

Hindsight lists the hives that ran out of room, of those asked for; its figures are of all.

  $ printf 'hive h1 at mill: deep, super drawn9\nhive h2 at mill: deep, super drawn9\n' >full.hive
  $ printf '\n2026-05-%s mill\nh1 super %s%%\nh2 super %s%%\n' 03 20 30 10 60 70 17 100 100 >>full.hive
  $ waxtab hindsight --on 2026-06-01 full.hive | grep -c 'chance foretold'
  2
  $ waxtab hindsight --hive h2 --on 2026-06-01 full.hive | grep -c 'chance foretold'
  1
  $ waxtab hindsight --since 2026-05-18 --on 2026-06-01 full.hive | grep -c 'chance foretold'
  0
  [1]
  $ waxtab hindsight --yard mill full.hive
  waxtab: error: hindsight has no option '--yard'
  Try 'waxtab --help'.
  [2]

What is refused is said, and what would be used instead.

  $ waxtab check --hive h3 full.hive
  waxtab: error: check has no option '--hive'
  Try 'waxtab --help'.
  [2]
  $ waxtab lines --units lb full.hive
  waxtab: error: lines shows what was written; --units goes with --json and --csv
  Try 'waxtab --help'.
  [2]
  $ waxtab harvest --lot A --hive h1 full.hive
  waxtab: error: --lot shows the whole way of one lot; leave out --hive, --yard, --since and --until
  Try 'waxtab --help'.
  [2]

In pounds no kilogram is left, in advice and report too.

  $ waxtab report --out pounds --units lb --on 2026-07-12 "$hives" 2>/dev/null
  $ waxtab advise --units lb --on 2026-07-12 "$hives" 2>/dev/null | grep ' kg' | grep -v '^ *"'
  [1]
  $ sed '/<section id="lines"/,$d; s/<bdi>[^<]*<\/bdi>//g' pounds/report.html | grep -o '.\{20\}[0-9][^0-9a-z]\{1,3\}kg.\{9\}' | head -n 5

The end of the round is --until of bring, the first and last day of what is listed elsewhere.

  $ waxtab bring --on 2026-07-12 --until 2026-07-15 "$hives" 2>/dev/null | head -n 1
  What to bring, round of 2026-07-12 to 2026-07-15
  $ waxtab timeline --hive h3 --since 2026-07-01 --until 2026-07-10 --no-refs --on 2026-07-12 "$hives" 2>/dev/null | grep -c '^  2026-07-0[1-9]'
  1
  $ waxtab timeline --hive h3 --since 2026-07-01 --until 2026-07-10 --no-refs --on 2026-07-12 "$hives" 2>/dev/null | grep -c '^  2026-0[56]'
  0
  [1]
