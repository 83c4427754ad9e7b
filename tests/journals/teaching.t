The small teaching journals.

  $ cd "$TESTDIR/../../examples"
  $ waxtab check --on 2026-09-01 first-visit
  fine: 6 facts about 1 hive in 1 file
  $ waxtab check --on 2026-09-01 extraction
  fine: 13 facts about 2 hives in 1 file
  $ waxtab check --on 2026-09-01 swarm
  fine: 26 facts about 4 hives in 1 file

  $ waxtab harvest --on 2026-09-01 extraction
  Honey ledger on 2026-09-01
  
  Lot 1, extracted 2026-07-26: 29.30 kg, weighed; moisture
    17.6%                                                      honey.hive:15,21,22
    hive  honey     part  from     written in
    h1    15.86 kg  54%   1 super  honey.hive:11,15,16
    h2    13.44 kg  46%   1 super  honey.hive:12,15,17
    jars of 454 g: 60 filled, 26 out, 34 left                  honey.hive:21,25,26
    2026-08-08  24 jars of 454 g (10.90 kg), sold to village shop    honey.hive:25
    2026-08-08  2 jars of 454 g (0.91 kg), given                     honey.hive:26
    left in bulk: 2.06 kg
  
  Yields
  
    Season 2026
    Yard mill: 29.30 kg in 2 supers
      14.65 kg a hive over the 2 hives that gave honey; the least 13.44 kg, the
      middle 14.65 kg, the most 15.86 kg
        h1  15.86 kg  1 super  honey.hive:11,15,16
        h2  13.44 kg  1 super  honey.hive:12,15,17
  
  All together
  
    extracted               29.30 kg
    gone out                11.80 kg
    left in jars and combs  15.44 kg
    left in bulk             2.06 kg

  $ waxtab timeline --on 2026-06-14 swarm
  h1 at mill
    from the start
  
        super, medium, 9 frames, drawn  from the start                 mill.hive:3
        ----- excluder -----            from the start                 mill.hive:3
        brood box, deep, 10 frames      from the start                 mill.hive:3
        brood box, deep, 10 frames      from the start                 mill.hive:3
        ===== floor =====
  
    2026-05-03  8 frames of brood, 2 queen cups dry                    mill.hive:7
    2026-05-10  3 charged queen cells, queen seen, split into h3 3 frames old
                queen                                                 mill.hive:11
    2026-05-17  left 1 sealed queen cell, knocked down 2 queen cells  mill.hive:19
    2026-06-14  eggs seen, queen laying                               mill.hive:25
  
  h2 at mill
    from the start
  
        super, medium, 9 frames, drawn  from the start                 mill.hive:4
        ----- excluder -----            from the start                 mill.hive:4
        brood box, deep, 10 frames      from the start                 mill.hive:4
        brood box, deep, 10 frames      from the start                 mill.hive:4
        ===== floor =====
  
    2026-05-03  7 frames of brood, queen seen                          mill.hive:8
    2026-05-10  no queen cells                                        mill.hive:12
    2026-05-16  swarmed                                               mill.hive:15
    2026-05-17  "fewer bees", 1 sealed queen cell, todo "Leave alone
                now"                                                  mill.hive:20
    2026-06-14  no eggs, no queen cells, moved 1 frame of eggs to h2  mill.hive:26
  
  h3 at mill
    since 2026-05-10, from h1
  
        brood box, deep, 10 frames  since 2026-05-10                  mill.hive:11
        ===== floor =====
  
    2026-05-10  split into h3 3 frames old queen                      mill.hive:11
    2026-05-17  queen laying, fed 1 L thin syrup                      mill.hive:21
    2026-06-14  moved 1 frame of eggs to h2                           mill.hive:26
  
  s1 at mill
    since 2026-05-16
  
        brood box, deep, 10 frames  since 2026-05-16                  mill.hive:16
        ===== floor =====
  
    2026-05-16  swarm hived as s1                                     mill.hive:16
    2026-05-17  queen seen, "drawing comb"                            mill.hive:22
    2026-06-14  5 frames of brood                                     mill.hive:27

  $ waxtab advise --on 2026-05-17 swarm
  Advice for 2026-05-17
  
  Within 7 days
  
    h1 at mill: put a super on (drawn), on top or under the one that is on
      by 2026-05-19, in 2 days; possible: 3 in 10 that room runs out before
      2026-05-24
      - room for 0.0 to 18 kg, likely 9.4 of honey, gaining -0.8 to 1.0 kg, likely
        0.1 a day
      - its own notes give no rate: neighbours and the usual for the time stand in
      - no difference in honey was measured; under eases the crowd, top is lighter
        work
        "Split into h3 with the old queen, 3 frames of brood"         mill.hive:11
      rules: room-runs-out, placing, lifting
  
    s1 at mill: look for eggs of the new queen
      by 2026-05-21, in 4 days; likely: as soon as there is comb
      - swarm hived or queen introduced on 2026-05-16; first eggs possible from
        2026-05-16, usual 2026-05-17 to 2026-05-21
        "hived as s1"                                                 mill.hive:16
      rule: eggs-expected
  
    h1 at mill: make sure a laying queen is there: look for eggs
      by 2026-05-22, in 5 days; likely: sealed cells have been found 96 hours
      after a comb with larvae was given
      - queen cells taken down on 2026-05-17; bees build again, and go earlier
      - no eggs noted with them: the colony may have nothing left to raise a queen
        from
        "2 knocked down"                                              mill.hive:19
      rule: cells-come-back
  
    h2 at mill: put a super on (drawn), on top
      by 2026-05-23, in 6 days; possible: 2 in 10 that room runs out before
      2026-05-24
      - room for 0.0 to 18 kg, likely 9.7 of honey, gaining -1.0 to 0.9 kg, likely
        -0.1 a day
      - its own notes give no rate: neighbours and the usual for the time stand in
      - a new queen is due: the brood nest stays shut
        "swarmed"                                                     mill.hive:15
      rules: room-runs-out, placing
  
    yard mill: count mites
      by 2026-05-24, in 7 days; likely
      - no count in 60 days at all hives
      rule: mites-count-due
  
  Your own to-dos
  
    - h2 at mill: Leave alone now                                     mill.hive:20
  
  Take care
  
    - the super weighs 4.8 to 27 kg, likely 15; your lifting limit is 25 kg, less
      when twisting: two people, or frame by frame
  
  Where the rules come from
  
    - room-runs-out: mechanism: Rinderer and Baxter, J. Econ. Entomol. 71 (1978);
      Winston, Apiculture, as excerpted by Surrey Bee Club; the risk is your
      setting
    - placing: Berry and Delaplane, Am. Bee J. 140(5), 2000, as told by D. Caron;
      Imirie, Pink Pages (May 2002); C. de Bruyn, quoted at beelistener.co.uk;
      Winston via Surrey Bee Club; How to Keep Bees (1905)
    - lifting: HSE guideline filter (25 kg, 16 kg) and NIOSH (23 kg); less when
      twisting
    - eggs-expected: Trunch Beekeepers (14-21 days after emergence); Bee Craft, 20
      June 2018; Norfolk Beekeepers; casts: killowen.com
    - cells-come-back: BBKA, "May" (sealed cells after 96 hours); W. Shaw, Welsh
      Beekeepers' Association
    - mites-count-due: common practice, no source; a threshold by season:
      Mississippi State University Extension
