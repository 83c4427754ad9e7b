A real log as a journal: EFSA MUST-B field data collection, Denmark 2019-2020, Table IV, Zenodo record 4953762
(licence CC BY 4.0). Skipped where the folder of open data is absent: WAXTAB_OPEN_DATA names it.

  $ data="${WAXTAB_OPEN_DATA:-$TESTDIR/../../../shared/data}"
  $ [ -f "$data/efsa_mustb_denmark_management.csv" ] || exit 80
  $ tools="$TESTDIR/../open_data"
  $ /usr/bin/python3 "$tools/journal.py" "$data/efsa_mustb_denmark_management.csv" > denmark.hive

Supers on, supers off, honey and sugar per hive, site and year: as the log has them.

  $ waxtab lines --json --on 2020-12-31 > facts.json
  waxtab: 2 errors in the journal; 'waxtab check' shows them
  $ /usr/bin/python3 "$tools/totals.py" "$data/efsa_mustb_denmark_management.csv" < facts.json
  Flakkebjerg 2019 sugar kg 116.9
  Flakkebjerg 2019 supers on 4
  Foulum 2019 sugar kg 153.50
  Foulum 2019 supers off 9
  Foulum 2019 supers on 10
  Foulum 2020 honey kg 96.965
  Foulum 2020 sugar kg 117.66
  Foulum 2020 supers off 3
  Foulum 2020 supers on 15
  Hinnerup 2019 honey kg 16.010
  Hinnerup 2019 sugar kg 188.00
  Hinnerup 2019 supers off 12
  Hinnerup 2019 supers on 14
  Hinnerup 2020 honey kg 34.195
  Hinnerup 2020 sugar kg 152.53
  Hinnerup 2020 supers off 6
  Hinnerup 2020 supers on 15
  Krankerup 2019 sugar kg 157.7
  Krankerup 2019 supers on 5
  Krankerup 2020 honey kg 121.8
  Krankerup 2020 sugar kg 99.5
  Krankerup 2020 supers off 5
  Krankerup 2020 supers on 10
  125 totals compared, 0 differ

What contradicts itself: the row of DK_2_5 on 2020-06-03, which takes a super off where its words put one on, shows
at the next super taken off.

  $ waxtab check --on 2020-12-31
  denmark.hive:519:9: warning: DK_4_1 has its excluder on already [gear-twice]
    519 | DK_4_1: excluder on
        |         ^^^^^^^^^^^
        = hint: if the first one came off, write that line before: `DK_4_1
                excluder off`
  denmark.hive:111:9: note: it was put on here
    111 | DK_4_1: excluder on
        |         ^^^^^^^^^^^
  denmark.hive:522:9: warning: DK_4_2 has its excluder on already [gear-twice]
    522 | DK_4_2: excluder on
        |         ^^^^^^^^^^^
        = hint: if the first one came off, write that line before: `DK_4_2
                excluder off`
  denmark.hive:112:9: note: it was put on here
    112 | DK_4_2: excluder on
        |         ^^^^^^^^^^^
  denmark.hive:613:9: error: 'top super' cannot be taken off DK_2_5: no supers are on [not-on]
    613 | DK_2_5: top super off 2.985 kg
        |         ^^^^^^^^^^^^^^^^^^^^^^
        = hint: if another super was put on, write that line first: `+super
                DK_2_5`; boxes are counted from the brood up
  denmark.hive:505:9: note: the last one was taken off DK_2_5 here
    505 | DK_2_5: "CM1275" off 4.9 kg
        |         ^^^^^^^^^^^^^^^^^^^
  denmark.hive:757:10: error: no escape board is on DK_4_11 to take off [not-on]
    757 | DK_4_11: escape board off
        |          ^^^^^^^^^^^^^^^^
        = hint: if one was put on, write that line first: `DK_4_11 escape board
                on`
  denmark.hive:35:1: note: DK_4_11 was set up here without one
     35 | hive DK_4_11 at Krankerup: 2 deeps
        | ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^
  2 errors, 2 warnings in 1 file
  [1]

The net honey of the supers at Krankerup, emptied supers weighed: 22.2 on 2020-06-19; 10.3, 20.6, 20.5 and 15.1 kg
on 2020-07-15.

  $ waxtab harvest --on 2020-07-31 --since 2020-06-01 --yard Krankerup
  waxtab: 1 error in the journal; 'waxtab check' shows it
  Honey ledger on 2020-07-31
  
  Yields
  
    Season 2020
    Yard Krankerup: 88.70 kg in 5 supers
      22.18 kg a hive over the 4 hives that gave honey, 11.09 kg over all 8 that
      stood there; the least 15.10 kg, the middle 20.55 kg, the most 32.50 kg
        DK_4_1   32.50 kg  2 supers  denmark.hive:542,543,589,590
        DK_4_12  20.60 kg  1 super   denmark.hive:591,592
        DK_4_2   20.50 kg  1 super   denmark.hive:593,594
        DK_4_6   15.10 kg  1 super   denmark.hive:595,596
  
  Waiting to be extracted
  
    hive     taken off   honey in it  box
    DK_4_1   2020-06-19  22.20 kg     norwegian  denmark.hive:542
    DK_4_1   2020-07-15  10.30 kg     norwegian  denmark.hive:589
    DK_4_12  2020-07-15  20.60 kg     norwegian  denmark.hive:591
    DK_4_2   2020-07-15  20.50 kg     norwegian  denmark.hive:593
    DK_4_6   2020-07-15  15.10 kg     norwegian  denmark.hive:595

The same journal through the other reports.

  $ waxtab timeline --on 2020-06-22 --hive DK_4_1 --since 2020-01-01
  DK_4_1 at Krankerup
    from the start
  
        super, norwegian, 10 frames, drawn, "CM890"  since
        2020-05-20                                                denmark.hive:487
        super, norwegian, 10 frames, drawn, "CM883"  since
        2020-05-03                                                denmark.hive:469
        super, norwegian, 10 frames, drawn, "CM96"  since
        2019-05-15                                                 denmark.hive:73
        ----- escape board -----                  since
        2020-06-12                                                denmark.hive:526
        ----- excluder -----                      since
        2019-06-11                                                denmark.hive:111
        brood box, deep, 10 frames                from the start   denmark.hive:34
        brood box, deep, 10 frames                from the start   denmark.hive:34
        ===== floor =====
  
    2020-05-03  +super 10 frames "CM883"                          denmark.hive:469
                  assumed: norwegian (box kind not said); drawn comb (not said);
                  on top (place not said)
    2020-05-20  +super 10 frames "CM890"                          denmark.hive:487
                  assumed: norwegian (box kind not said); drawn comb (not said);
                  on top (place not said)
    2020-06-03  +super 10 frames "CM907"                          denmark.hive:511
                  assumed: norwegian (box kind not said); drawn comb (not said);
                  on top (place not said)
    2020-06-08  excluder on                                       denmark.hive:519
    2020-06-12  escape board on                                   denmark.hive:526
    2020-06-19  -super "CM907" 27.2 kg                            denmark.hive:542
                super "CM907" 5 kg after                          denmark.hive:543
  $ waxtab supers --on 2020-06-22 --hive DK_4_1
  Supers on 2020-06-22. Supers are numbered from the brood up; in 8 cases of 10
  the truth lies in the range. Days of room allow for the flow fading.
  
  Yard Krankerup, 1 hive
  
  DK_4_1
    gains 0.2 kg a day (-0.5 to 1.0); too few visits of its own, so judged by
      its yard and the time of year
    room for 44.1 kg (19.0-66.6): likely to outlast the flow (30 days or more)
    super      full         capped       honey in it         seen
    3 "CM890"  18% (0-43)   11% (0-21)   3.9 kg (0.0-9.7)    never
    2 "CM883"  34% (0-83)   26% (7-44)   7.5 kg (0.0-18.4)   never
    1 "CM96"   49% (0-100)  49% (33-69)  10.9 kg (0.0-22.4)  never
    when full, each: 22.2 kg (18.2-26.2)
    read from: super 3 denmark.hive:487; super 2 denmark.hive:469; super 1
      denmark.hive:73; gain denmark.hive:73,469,487
    assumed: norwegian (supers 3, 2, 1); drawn comb (supers 3, 2, 1)
  $ waxtab advise --on 2020-06-22 --hive DK_4_1
  Advice for 2020-06-22
  
  Due now
  
    extract what was taken off since 2020-06-03
      was due by 2020-06-07, 15 days ago; likely
      - within 3-4 days: wax moth and, where it lives, small hive beetle; else
        below 0 C
        ""CM1275" off 4.9 kg"                                     denmark.hive:505
        "frames of honey off, 24.475 kg"                          denmark.hive:529
        ""CM1581" off 4.9 kg"                                     denmark.hive:530
        "frames of honey off, 17.52 kg"                           denmark.hive:533
        "frames of honey off, 5.375 kg"                           denmark.hive:534
        ""CM907" off 27.2 kg"                                     denmark.hive:542
        "frames of honey off, 15.54 kg"                           denmark.hive:547
        "frames of honey off, 7.045 kg"                           denmark.hive:551
      rule: extract-soon
  
  Within 7 days
  
    DK_4_1 at Krankerup: look into the brood nest, or note that you did
      by 2020-06-26, in 4 days; possible: nothing was ever noted of it
      - visited since 2019-05-15, last opened on 2020-06-19; queen cells show only
        in the brood nest
        ""CM907" off 27.2 kg"                                     denmark.hive:542
      rule: inspection-due
  
    yard Krankerup: count mites
      by 2020-06-26, in 4 days; likely
      - no count in 60 days at all hives
      rule: mites-count-due
  
  Without a date
  
    DK_4_1 at Krankerup: keep the contents of super "CM96" apart: not to be sold
      as honey
      certain
      - sugar fed on 2019-09-26, with super "CM96" on
      - marked until it is emptied, or until you note it as cleared
        "super added, 10 frames, "CM96""                           denmark.hive:73
        "fed 14.4 kg sugar"                                       denmark.hive:238
        "fed 5 kg sugar"                                          denmark.hive:302
        "fed 9.3 kg sugar"                                        denmark.hive:406
      goes before: come back for the supers above the escape board
        (escape-board)
      rule: fed-super
  
  Where a rule comes from: 'waxtab rules NAME', or here with --sources.
