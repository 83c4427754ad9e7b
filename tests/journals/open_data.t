A real log as a journal: EFSA MUST-B field data collection, Denmark 2019-2020, Table IV, Zenodo record 4953762
(licence CC BY 4.0). Skipped where the folder of open data is absent: WAXTAB_OPEN_DATA names it.

  $ data="${WAXTAB_OPEN_DATA:-$TESTDIR/../../../shared/data}"
  $ [ -f "$data/efsa_mustb_denmark_management.csv" ] || exit 80
  $ tools="$TESTDIR/../open_data"
  $ /usr/bin/python3 "$tools/journal.py" "$data/efsa_mustb_denmark_management.csv" > denmark.hive

Supers on, supers off, honey and sugar per hive, site and year: as the log has them.

  $ waxtab lines --json --on 2020-12-31 > facts.json
  $ /usr/bin/python3 "$tools/totals.py" "$data/efsa_mustb_denmark_management.csv" < facts.json

What contradicts itself: the row of DK_2_5 on 2020-06-03, which takes a super off where its words put one on, shows
at the next super taken off.

  $ waxtab check --on 2020-12-31

The net honey of the supers at Krankerup, emptied supers weighed: 22.2 on 2020-06-19; 10.3, 20.6, 20.5 and 15.1 kg
on 2020-07-15.

  $ waxtab harvest --on 2020-07-31 --since 2020-06-01 --yard Krankerup

The same journal through the other reports.

  $ waxtab timeline --on 2020-06-22 --hive DK_2_1
  $ waxtab supers --on 2020-06-22 --yard Hinnerup
  $ waxtab advise --on 2020-06-22 --yard Hinnerup
