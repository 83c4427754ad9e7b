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
    queen: from the start; to 2026-05-10, went with the split,
      then in h3                                                      mill.hive:11
    queen: since 2026-05-10, raised after the split                   mill.hive:11
  
        super, medium, 9 frames, drawn  from the start                 mill.hive:3
        ----- excluder -----            from the start                 mill.hive:3
        brood box, deep, 10 frames      from the start                 mill.hive:3
        brood box, deep, 10 frames      from the start                 mill.hive:3
        ===== floor =====
  
    2026-05-03  8 frames of brood, 2 queen cups dry                    mill.hive:7
    2026-05-10  3 charged queen cells, queen seen, split into h3 3 frames of brood
                old queen                                             mill.hive:11
    2026-05-17  left 1 sealed queen cell, knocked down 2 queen cells  mill.hive:19
    2026-06-14  eggs seen, queen laying                               mill.hive:25
  
  h2 at mill
    from the start
    queen: from the start; to 2026-05-16, left with the swarm,
      then in s1                                                      mill.hive:15
    queen: since 2026-05-16, raised after the swarm                   mill.hive:15
  
        super, medium, 9 frames, drawn  from the start                 mill.hive:4
        ----- excluder -----            from the start                 mill.hive:4
        brood box, deep, 10 frames      from the start                 mill.hive:4
        brood box, deep, 10 frames      from the start                 mill.hive:4
        ===== floor =====
  
    2026-05-03  7 frames of brood, queen seen                          mill.hive:8
    2026-05-10  no queen cells                                        mill.hive:12
    2026-05-16  swarmed                                               mill.hive:15
                swarm hived as s1 from h2                             mill.hive:16
    2026-05-17  "fewer bees", 1 sealed queen cell, todo "Leave alone
                now"                                                  mill.hive:20
    2026-06-14  no eggs, no queen cells, moved 1 frame of eggs to h2  mill.hive:26
  
  h3 at mill
    since 2026-05-10, from h1
    queen: since 2026-05-10, came with the split from h1              mill.hive:11
  
        brood box, deep, 10 frames  since 2026-05-10                  mill.hive:11
        ===== floor =====
  
    2026-05-10  split into h3 3 frames of brood old queen             mill.hive:11
    2026-05-17  queen laying, fed 1 L thin syrup                      mill.hive:21
    2026-06-14  moved 1 frame of eggs to h2                           mill.hive:26
  
  s1 at mill
    since 2026-05-16, from h2
    queen: since 2026-05-16, came with the swarm from h2              mill.hive:16
  
        brood box, deep, 10 frames  since 2026-05-16                  mill.hive:16
        ===== floor =====
  
    2026-05-16  swarm hived as s1 from h2                             mill.hive:16
    2026-05-17  queen seen, "drawing comb"                            mill.hive:22
    2026-06-14  5 frames of brood                                     mill.hive:27
