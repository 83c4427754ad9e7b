One keeper's season.

  $ cd "$TESTDIR/../../examples"
  $ waxtab check --on 2026-09-30 season
  fine: 819 facts about 12 hives in 5 files

At least 300 facts, remarks and to-dos apart.

  $ waxtab lines --json --on 2026-09-30 season | grep -v -c -E '"kind":"(remark|todo)"'
  741

Nothing that smells of data is left as a remark.

  $ waxtab lines --json --on 2026-09-30 season | grep '"kind":"remark"' | grep '"detail":"flagged"'
  [1]

A day in mid-flow.

  $ waxtab supers --on 2026-07-11 --yard mill season
  Supers on 2026-07-11. Supers are numbered from the brood up; in 8 cases of 10
  the truth lies in the range.
  
  Yard mill, 6 hives
  
  h1
    gains 0.6 kg a day (-0.2 to 1.5)
    room for 18.9 kg (14.6-23.1): more than 99 days (12 or more)
    super   full         capped       honey in it          holds    seen
    3       9% (0-19)    3% (0-7)     1.4 kg (0.0-2.8)     14.8 kg  never
    2 "M2"  81% (70-92)  58% (50-65)  12.4 kg (10.4-14.5)  15.3 kg  2026-07-05
    1 "M5"  40% (23-56)  23% (15-30)  6.1 kg (3.5-8.7)     15.3 kg  2026-07-05
    fit to take, by the capping: super 2 about 2026-07-13 (2026-07-11 to
      2026-07-19); super 1 about 2026-07-24 (2026-07-21 to 2026-08-04)
    read from: super 3 mill.hive:131; super 2 mill.hive:90,99,108,118,129; super
      1 mill.hive:108,118,130; gain mill.hive:5,108,118,126,129,130,131
    assumed: medium (supers 3, 2, 1)
  
  h2
    gains 0.6 kg a day (-0.3 to 1.4)
    room for 15.4 kg (11.3-19.5): 45 days (10 or more)
    super   full         capped       honey in it         holds    seen
    2 "M6"  79% (67-92)  51% (44-59)  12.1 kg (9.9-14.3)  15.3 kg  2026-07-05
    1 "M3"  21% (1-39)   6% (0-10)    3.2 kg (0.2-5.9)    15.3 kg  never
    fit to take, by the capping: super 2 about 2026-07-16 (2026-07-12 to
      2026-07-22)
    read from: super 2 mill.hive:100,109,119,132; super 1 mill.hive:132; gain
      mill.hive:43,119,126,132
    assumed: medium (supers 2, 1)
  
  h3
    gains 0.6 kg a day (-0.2 to 1.5)
    room for 6.5 kg (2.3-10.6): 12 days (1 or more)
    super   full          capped       honey in it          holds    seen
    2 "M7"  96% (89-100)  74% (67-82)  14.7 kg (13.0-16.2)  15.3 kg  2026-07-05
    1 "M1"  59% (37-82)   31% (23-39)  9.1 kg (5.5-12.6)    15.3 kg  2026-07-05
    fit to take, by the capping: super 2 now; super 1 about 2026-07-25
      (2026-07-20 to 2026-07-30)
    read from: super 2 mill.hive:110,120,133; super 1 mill.hive:110,120,133;
      gain mill.hive:110,120,126,133
    assumed: medium (supers 2, 1)
  
  h4
    gains 0.5 kg a day (-0.4 to 1.3)
    room for 4.8 kg (0.7-8.8): 11 days (0 or more)
    super   full         capped       honey in it         holds    seen
    1 "M8"  69% (43-96)  42% (34-50)  10.5 kg (6.4-14.7)  15.3 kg  2026-07-05
    fit to take, by the capping: super 1 about 2026-07-23 (2026-07-14 to
      2026-07-27)
    read from: super 1 mill.hive:37,46,102,111,121,134; gain
      mill.hive:8,54,111,121,126,134
    assumed: medium (super 1)
  
  h5
    gains 0.6 kg a day (-0.2 to 1.5)
    room for 4.5 kg (0.3-8.4): 7 days (0 or more)
    super   full          capped       honey in it          holds    seen
    2 "M9"  97% (90-100)  76% (68-83)  14.8 kg (13.1-16.3)  15.3 kg  2026-07-05
    1 "C1"  45% (22-68)   22% (14-30)  6.3 kg (3.0-9.6)     14.0 kg  2026-07-05
    fit to take, by the capping: super 2 now; super 1 about 2026-07-29
      (2026-07-23 to 2026-08-02)
    read from: super 2 mill.hive:103,112,122,135; super 1 mill.hive:112,122,135;
      gain mill.hive:122,126,135
    assumed: medium (supers 2, 1)
  
  h6
    gains 0.5 kg a day (-0.4 to 1.3)
    room for 9.1 kg (4.9-13.3): 25 days (4 or more)
    super    full         capped       honey in it        holds    seen
    1 "M10"  41% (13-68)  18% (11-24)  6.2 kg (2.0-10.4)  15.3 kg  2026-07-05
    fit to take, by the capping: super 1 about 2026-07-30 (2026-07-22 to
      2026-08-07)
    read from: super 1 mill.hive:123,136; gain mill.hive:43,123,126,136
    assumed: medium (super 1)
  
  Your eye: a super you call full has held 84 % of the usual figure for its kind
  (80-88 %), one you call half full 47 % of a full one; 10 weighings.

  $ waxtab advise --on 2026-07-11 --yard mill season
  Advice for 2026-07-11
  
  Due now
  
    h3 at mill: put 2 supers on (drawn), on top
      by 2026-07-11, today; likely: crowding alone is enough, whatever the flow
      - brood nest packed on 2026-07-05
      - the emptiest super is about 59% full
      - heavy flow on 2026-07-05 and 7 days between visits: two at once; look
        again within 7 days, a medium has filled in 8
      - nothing heavy has to be lifted for it
        "Grumpy"                                                      mill.hive:83
        "Flow heavy"                                                 mill.hive:126
        "Brood box packed with bees"                                 mill.hive:133
      rules: crowded, two-at-once, placing, stings
  
  Within 7 days
  
    h5 at mill: take super "M9" off for honey
      by 2026-07-12, tomorrow; possible: capped 76% (68-83%), mark 75%
      - super "M9" holds 13 to 16 kg, likely 15 of honey
      - several frames, outer ones too, before it is called fit; early in the day,
        not on a good flow day
        "super 30%"                                                  mill.hive:103
        "super 60%"                                                  mill.hive:112
        "top super 80%", "2 of 9 frames capped"                      mill.hive:122
        "top full", "60% capped"                                     mill.hive:135
      rules: take-when-ripe, lifting
  
    yard mill: count mites
      by 2026-07-12, tomorrow; likely
      - no count in 30 days at h2, h3, h4, h5 and h6
      - the winter bees are raised next
      rule: mites-count-due
  
  Without a date
  
    h3 at mill: leave super "M7" on: full, not capped enough
      likely: ripe by capping about 2026-07-11 (2026-07-11 to 2026-07-14)
      - capped 74% (67-82%), mark 75%; a moisture reading would outrank it
        "super 70%", "2 frames capped"                               mill.hive:110
        "top 90%", "3 of 9 frames capped"                            mill.hive:120
        "top full", "half capped"                                    mill.hive:133
      rule: leave-on
  
  Your own to-dos
  
    - yard mill: order foundation                                     mill.hive:86
    - yard mill: bring 2 supers for h3                               mill.hive:137
  
  Take care
  
    - defensive on 2026-05-31: veil, gloves, smoke, not alone; trouble breathing
      after a sting is an emergency call
    - super "M9" weighs 18 to 25 kg, likely 21; your lifting limit is 20 kg, less
      when twisting: two people, or frame by frame
  
  Where the rules come from
  
    - crowded: common practice, no source; backfilling as a sign: betterbee.com
    - two-at-once: Winston, Apiculture, as excerpted by Surrey Bee Club; one at a
      time: wvbeekeeper.blogspot.com (2009), Demuth, USDA Farmers' Bulletin 503
    - placing: Berry and Delaplane, Am. Bee J. 140(5), 2000, as told by D. Caron;
      Imirie, Pink Pages (May 2002); C. de Bruyn, quoted at beelistener.co.uk;
      Winston via Surrey Bee Club; How to Keep Bees (1905)
    - stings: common practice, no source; UK national health wording on
      anaphylaxis
    - take-when-ripe: Die Honigmacher, course 3 (2/3); C. Collison, Harvesting &
      Packing Honey (3/4); timing: Die Honigmacher
    - lifting: HSE guideline filter (25 kg, 16 kg) and NIOSH (23 kg); less when
      twisting
    - mites-count-due: common practice, no source; a threshold by season:
      Mississippi State University Extension
    - leave-on: bee-health.extension.org, "Removing Surplus Honey"; Die
      Honigmacher

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

The end of the season.

  $ waxtab harvest --on 2026-09-30 season
  Honey ledger on 2026-09-30
  
  Lot 25, there on 2026-04-10: 8.17 kg, weighed                       honey.hive:4
    hive           honey    part  written in
    no hive named  8.17 kg  100%  honey.hive:4
    8.17 kg there at the start
    jars of 454 g: 18 filled, 18 out, 0 left                     honey.hive:4,7,31
    2026-04-24  12 jars of 454 g (5.45 kg), sold to village shop      honey.hive:7
    2026-07-04  6 jars of 454 g (2.72 kg), sold to the gate          honey.hive:31
    left in bulk: 0.00 kg
  
  Lot A, extracted 2026-05-18: 64.80 kg, weighed; moisture
    17.2%                                                      honey.hive:10,20,21
    hive  honey     part  from      written in
    h1    23.05 kg  36%   2 supers  mill.hive:60 honey.hive:10,12,13
    h2    12.69 kg  20%   1 super   mill.hive:61 honey.hive:10,14
    h3    15.50 kg  24%   1 super   mill.hive:62 honey.hive:10,15
    h4    13.56 kg  21%   1 super   mill.hive:63 honey.hive:10,16
    jars of 454 g: 120 filled, 100 out, 20 left       honey.hive:20,22,25,26,27,30
    2026-06-06  36 jars of 454 g (16.34 kg), sold to village shop    honey.hive:22
    2026-06-13  24 jars of 454 g (10.90 kg), sold to the gate        honey.hive:25
    2026-06-13  4 jars of 454 g (1.82 kg), given                     honey.hive:26
    2026-06-13  6 jars of 454 g (2.72 kg), own use                   honey.hive:27
    2026-07-04  30 jars of 454 g (13.62 kg), sold to farm shop       honey.hive:30
    left in bulk: 10.32 kg
  
  Lot O, extracted 2026-07-26: 45.20 kg, weighed; moisture
    17.6%                                                      honey.hive:34,57,58
    hive  honey                 part  from      written in
    o1    30.50 kg (29.4-31.6)  67%   2 supers  orchard.hive:80 honey.hive:34
    o2    14.70 kg (13.6-15.8)  33%   1 super   orchard.hive:81 honey.hive:34
    jars of 227 g: 60 filled, 40 out, 20 left                     honey.hive:57,65
    jars of 454 g: 60 filled, 0 out, 60 left                         honey.hive:58
    2026-08-22  40 jars of 227 g (9.08 kg), sold to the show         honey.hive:65
    left in bulk: 4.34 kg
  
  Lot B, extracted 2026-07-28: 118.20 kg, weighed;
    moisture 17.4%                                       honey.hive:38,48,56,59,80
    hive  honey                 part  from      written in
    h1    30.51 kg (29.9-31.2)  26%   2 supers  mill.hive:165 honey.hive:38,40,41
    h2    14.90 kg (13.9-15.9)  13%   1 super   mill.hive:166 honey.hive:38
    h3    30.77 kg (29.8-31.8)  26%   2 supers  mill.hive:167 honey.hive:38,42
    h4    12.12 kg (10.7-13.5)  10%   1 super   mill.hive:168 honey.hive:38
    h5    14.96 kg (14.7-15.3)  13%   1 super   mill.hive:169 honey.hive:38,43
    k1    14.94 kg (13.9-15.9)  13%   1 super   heath.hive:36 honey.hive:38
    1.80 kg drained from cappings
    jars of 454 g: 200 filled, 114 out, 86 left    honey.hive:56,61,66,79,80,84,85
    2026-08-08  48 jars of 454 g (21.79 kg), sold to farm shop       honey.hive:61
    2026-08-22  24 jars of 454 g (10.90 kg), sold to the show        honey.hive:66
    2026-09-12  6 jars of 454 g (2.72 kg), come back from farm shop  honey.hive:79
    2026-09-26  36 jars of 454 g (16.34 kg), sold to village shop    honey.hive:84
    2026-09-26  12 jars of 454 g (5.45 kg), own use                  honey.hive:85
    left in bulk: 29.20 kg
  
  Lot K, extracted 2026-07-30: 11.00 kg, weighed                     honey.hive:47
    hive  honey     part  from     written in
    h5    11.00 kg  100%  1 super  mill.hive:169 honey.hive:47
    pieces of comb of 250 g: 44 filled, 30 out, 14 left           honey.hive:47,64
    2026-08-22  30 pieces of 250 g (7.50 kg), sold to the show       honey.hive:64
    left in bulk: 0.00 kg
  
  Lot C, extracted 2026-08-02: 34.60 kg, weighed; moisture
    19.8%; fermenting                                          honey.hive:51,60,76
    hive  honey                part  from     written in
    o1    7.52 kg (6.1-8.9)    22%   1 super  orchard.hive:87 honey.hive:51
    o2    10.52 kg (9.1-11.9)  30%   1 super  orchard.hive:88 honey.hive:51
    n1    10.59 kg (9.2-12.0)  31%   1 super  orchard.hive:89 honey.hive:51
    s1    5.97 kg (4.6-7.3)    17%   1 super  orchard.hive:90 honey.hive:51
    14.60 kg of bulk spoiled
    2026-08-08  20.00 kg in bulk, sold to the baker                  honey.hive:60
    2026-09-12  14.60 kg in bulk, spoiled                            honey.hive:76
    left in bulk: 0.00 kg
  
  Lot S, extracted 2026-08-31: 8.60 kg, weighed                      honey.hive:69
    hive  honey    part  from     written in
    k1    8.60 kg  100%  1 super  heath.hive:56 honey.hive:69
    pieces of comb of 358 g: 24 filled, 24 out, 0 left            honey.hive:69,78
    2026-09-12  24 pieces of 358 g (8.60 kg), sold to the hotel      honey.hive:78
    left in bulk: 0.00 kg
  
  Lot D, extracted 2026-08-31: 14.10 kg, weighed; moisture 20.8%  honey.hive:70,77
    hive  honey     part  from     written in
    o1    14.10 kg  100%  1 super  heath.hive:57 honey.hive:70
    jars of 340 g: 40 filled, 0 out, 40 left                         honey.hive:77
    left in bulk: 0.50 kg
  
  Yields
  
    Season 2026: 296.50 kg (283.3-309.5) in 23 supers
      29.65 kg a hive over the 10 hives that gave honey, 24.71 kg over all 12 that
      stood there; the least 5.97 kg, the middle 25.82 kg, the most 53.56 kg
    Yard mill: 179.06 kg (174.7-183.4) in 13 supers
      35.81 kg a hive over the 5 hives that gave honey, 25.58 kg over all 7 that
      stood there; the least 25.68 kg, the middle 27.59 kg, the most 53.56 kg
        h1 53.56 kg (52.9-54.2) 4 supers mill.hive:60,165
                                         honey.hive:10,12,13,38,40,41
        h2 27.59 kg (26.6-28.6) 2 supers mill.hive:61,166 honey.hive:10,14,38
        h3 46.27 kg (45.3-47.3) 3 supers mill.hive:62,167 honey.hive:10,15,38,42
        h4 25.68 kg (24.3-27.0) 2 supers mill.hive:63,168 honey.hive:10,16,38
        h5 25.96 kg (25.7-26.3) 2 supers mill.hive:169 honey.hive:38,43,47
    Yard orchard: 72.28 kg (65.9-78.6) in 6 supers
      18.07 kg a hive over the 4 hives that gave honey; the least 5.97 kg, the
      middle 17.90 kg, the most 30.50 kg
        o1 52.12 kg (49.6-54.6) 4 supers orchard.hive:80,87 honey.hive:34,51,70
                                         heath.hive:57
        o2 25.22 kg (22.7-27.8) 2 supers orchard.hive:81,88 honey.hive:34,51
        n1 10.59 kg (9.2-12.0)  1 super  orchard.hive:89 honey.hive:51
        s1 5.97 kg (4.6-7.3)    1 super  orchard.hive:90 honey.hive:51
    Yard heath: 45.17 kg (42.7-47.5) in 4 supers
      22.58 kg a hive over the 2 hives that gave honey, 15.06 kg over all 3 that
      stood there; the least 21.62 kg, the middle 22.58 kg, the most 23.54 kg
        k1  23.54 kg (22.5-24.5)  2 supers  heath.hive:36,56 honey.hive:38,69
    one colony in part of the season, h2, h5 and h6: 53.55 kg (52.2-54.9)
      together
  
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
