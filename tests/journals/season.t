One keeper's season.

  $ cp -r "$TESTDIR/../../examples/season" .
  $ waxtab check --on 2026-09-30 season
  fine: 813 facts about 12 hives in 5 files

At least 300 facts, remarks and to-dos apart.

  $ waxtab lines --json --on 2026-09-30 season | grep -v -c -E '"kind":"(remark|todo)"'
  750

Nothing that smells of data is left as a remark.

  $ waxtab lines --json --on 2026-09-30 season | grep '"kind":"remark"' | grep '"detail":"flagged"'
  [1]

A day in mid-flow.

  $ waxtab supers --on 2026-07-11 --hive h3 season
  Supers on 2026-07-11. Supers are numbered from the brood up; in 8 cases of 10
  the truth lies in the range. Days of room allow for the flow fading.
  
  Yard mill, 1 hive
  
  h3
    gains 0.7 kg a day (-0.4 to 1.7)
    room for 5.9 kg (1.3-10.4): 10 days (0 or more)
    super   full          capped       honey in it          seen
    2 "M7"  97% (91-100)  75% (68-82)  14.6 kg (13.0-16.0)  2026-07-05
    1 "M1"  61% (35-88)   31% (23-39)  9.2 kg (5.1-13.2)    2026-07-05
    when full, each: 15.0 kg (13.7-16.4)
    fit to take, by the capping: super 2 now; super 1 about 2026-07-24
      (2026-07-21 to 2026-07-29)
    read from: super 2 mill.hive:110,120,133; super 1 mill.hive:110,120,133;
      gain mill.hive:110,120,126,133
    assumed: medium (supers 2, 1)
  
  Your eye: a super you call full has held 83% of the usual figure for its kind
  (79-87%), one you call half full 46% of a full one; 10 weighings.
    read from: mill.hive:60,61,62,63 honey.hive:10,12,13,14,15,16

  $ waxtab advise --on 2026-07-11 --hive h3 season
  Advice for 2026-07-11
  
  Due now
  
    h3 at mill: put 2 supers on (drawn), on top
      by 2026-07-11, today; likely: crowding alone is enough, whatever the flow
      - brood nest packed on 2026-07-05
      - the emptiest super is about 61% full
      - with one more, 1 in 20 that room runs out before 2026-07-12
      - heavy flow on 2026-07-05 and 7 days between visits: two at once; look
        again within 7 days, a medium has filled in 8
      - nothing heavy has to be lifted for it
      - the shed has 2 of the 5 asked for: 1 for it
        "Grumpy"                                                      mill.hive:83
        "Flow heavy"                                                 mill.hive:126
        "Brood box packed with bees"                                 mill.hive:133
      rules: crowded, two-at-once, placing, stings, shed-short
  
  Within 7 days
  
    h3 at mill: take super "M7" off for honey
      by 2026-07-12, tomorrow; likely: 6 in 10 that it is fit, capped 75%
      (68-82%), mark 75% of the 97% that are full
      - super "M7" holds 13 to 16 kg of honey, likely 15
      - several frames, outer ones too, before it is called fit; early in the day,
        not on a good flow day
        "Grumpy"                                                      mill.hive:83
        "super 70%", "2 frames capped"                               mill.hive:110
        "top 90%", "3 of 9 frames capped"                            mill.hive:120
        "top full", "half capped"                                    mill.hive:133
      rules: take-when-ripe, lifting, stings
  
    yard mill: count mites
      by 2026-07-12, tomorrow; likely
      - no count in 30 days at h2, h3, h4, h5 and h6
      - the winter bees are raised next
      rule: mites-count-due
  
  Take care
  
    - h3: defensive on 2026-05-31: veil, gloves, smoke, not alone; trouble
      breathing after a sting is an emergency call
    - h3: super "M7" weighs 18 to 25 kg, likely 21; your lifting limit is 20 kg,
      less when twisting: two people, or frame by frame
  
  Where a rule comes from: 'waxtab rules NAME', or here with --sources.

  $ waxtab timeline --on 2026-07-11 --hive h3 season
  h3 at mill
    from the start
  
        super, medium, 9 frames, drawn, "M7"  since 2026-05-03        mill.hive:36
        super, medium, 9 frames, drawn, "M1"  since 2026-06-21       mill.hive:110
        ----- excluder -----                  from the start        set-up.hive:26
        brood box, deep, 10 frames            from the start        set-up.hive:26
        ===== floor =====
  
    2026-04-12  BIAS on 6, super empty                                 mill.hive:7
    2026-04-19  super 10% full                                        mill.hive:16
    2026-04-26  super 40%, super uncapped, 7 frames of brood          mill.hive:28
    2026-05-03  super 80%, super 4 of 9 frames capped, brood box packed, +super
                drawn9 under "M7"                                     mill.hive:36
                  assumed: medium (box kind not said)
    2026-05-10  top full, top 80% capped, bottom 20%                  mill.hive:45
    2026-05-17  -top super 22 kg, bottom 35%                          mill.hive:62
    2026-05-18  super "M1" 6 kg after                                honey.hive:15
                extracted 64.8 kg lot A from h1 h2 h3 h4             honey.hive:10
    2026-05-24  super 35%, 8 frames of brood, super no change         mill.hive:75
    2026-05-31  super no change, temper defensive, 2 stings           mill.hive:83
    2026-06-07  super 30%, no queen cells                             mill.hive:92
                moved 1 frame of eggs to h4                           mill.hive:93
    2026-06-14  super 45%, 8 frames of brood                         mill.hive:101
    2026-06-21  super 70%, super 2 frames capped, +super drawn9
                under "M1"                                           mill.hive:110
                  assumed: medium (box kind not said)
    2026-06-28  top 90%, top 3 of 9 frames capped, bottom started, 8 frames of
                brood, no queen cells                                mill.hive:120
    2026-07-05  top full, top half capped, bottom 40%, brood box packed, no queen
                cells                                                mill.hive:133

The end of the season: a lot whose supers were all weighed, comb honey, the books.

  $ waxtab harvest --on 2026-09-30 season > harvest.txt
  $ sed -n '/^Lot A/,/^$/p' harvest.txt
  Lot A, extracted 2026-05-18: 64.80 kg, weighed; moisture
    17.2%                                                      honey.hive:10,20,21
    hive  honey     part  from      written in
    h1    23.05 kg  36%   2 supers  mill.hive:60 honey.hive:10,12,13
    h2    12.69 kg  20%   1 super   mill.hive:61 honey.hive:10,14
    h3    15.50 kg  24%   1 super   mill.hive:62 honey.hive:10,15
    h4    13.56 kg  21%   1 super   mill.hive:63 honey.hive:10,16
    jars of 454 g: 120 filled, 100 out, 20 left       honey.hive:20,22,25,26,27,30
    2026-06-06  36 jars of 454 g (16.34 kg), sold to village shop    honey.hive:22
    2026-06-13  24 jars of 454 g (10.90 kg), sold at the gate        honey.hive:25
    2026-06-13  4 jars of 454 g (1.82 kg), given                     honey.hive:26
    2026-06-13  6 jars of 454 g (2.72 kg), own use                   honey.hive:27
    2026-07-04  30 jars of 454 g (13.62 kg), sold to farm shop       honey.hive:30
    left in bulk: 10.32 kg
  
  $ sed -n '/^Lot K/,/^$/p' harvest.txt
  Lot K, extracted 2026-07-30: 11.00 kg, weighed                     honey.hive:47
    hive  honey     part  from     written in
    h5    11.00 kg  100%  1 super  mill.hive:169 honey.hive:47
    pieces of comb of 250 g: 44 filled, 30 out, 14 left           honey.hive:47,64
    2026-08-22  30 pieces of 250 g (7.50 kg), sold at the show       honey.hive:64
    left in bulk: 0.00 kg
  
  $ sed -n '/^All together/,$p' harvest.txt
  All together
  
    opening stock             8.17 kg
    extracted               296.50 kg
    drained from cappings     1.80 kg
    gone out                150.51 kg
    spoiled                  14.60 kg
    left in jars and combs   97.00 kg
    left in bulk             44.36 kg
    wax, beside the honey     3.50 kg
  
  Assumed
  
    - jars of 454 g (size not said)                   honey.hive:22,25,30,61,66,84
