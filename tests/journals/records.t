The books law asks for, and where the advice comes from.

  $ cp -r "$TESTDIR/../../examples/season" .
  $ waxtab records --on 2026-09-30 season
  Records on 2026-09-30
  
  Medicines
  
    2026-08-09 to 2026-09-06, 28 days, thymol
      hives: h1, h2, h3, h4 and h5                                   mill.hive:187
      not noted: quantity, batch, supplier and withdrawal period
    2026-08-15 to 2026-08-22, 7 days, formic acid
      hives: o2                                                    orchard.hive:98
      not noted: quantity, batch, supplier and withdrawal period
    2026-09-02 to 2026-09-30, 28 days, thymol
      hives: o1 and k1                                            heath.hive:61,62
      not noted: quantity, batch, supplier and withdrawal period
  
  Feed
  
    2026-04-11, thin syrup, 2 L, o2                                 orchard.hive:7
    2026-04-11, thin syrup, 1 L, n1                                 orchard.hive:8
    2026-04-12, thin syrup, 1 L, h5                                    mill.hive:9
    2026-04-15, fondant, 1 kg, k1                                     heath.hive:6
    2026-04-19, thin syrup, 1 L, h5                                   mill.hive:18
    2026-05-17, thin syrup, 2 L, s1                                   mill.hive:65
    2026-05-17, thin syrup, 1 L, h6                                   mill.hive:66
    2026-08-09, thick syrup, 4 L each, h1, h2, h3 and
      h4                                                 mill.hive:188,189,190,191
    2026-08-09, thick syrup, 2 L, h5                                 mill.hive:192
    2026-08-15, thick syrup, 4 L each, n1 and s1               orchard.hive:99,100
    2026-08-23, thick syrup, 4 L each, h1, h2, h3, h4 and h5         mill.hive:197
    2026-09-02, thick syrup, 4 L each, k1 and o1                  heath.hive:61,62
    2026-09-05, thick syrup, 5 L each, o2, n1 and s1              orchard.hive:107
    2026-09-06, thick syrup, 3 L, h4                                 mill.hive:207
    2026-09-16, thick syrup, 4 L each, k1 and o1                  heath.hive:66,67
    not noted: origin in 15 of 15
  
  Disease
  
    none noted
  
  Honey bought and sold
  
    2026-04-24, 12 x 454 g, lot 25, out to village shop               honey.hive:7
    2026-06-06, 36 x 454 g, lot A, out to village shop               honey.hive:22
    2026-06-13, 24 x 454 g, lot A, out at the gate                   honey.hive:25
    2026-07-04, 30 x 454 g, lot A, out to farm shop                  honey.hive:30
    2026-07-04, 6 x 454 g, lot 25, out at the gate                   honey.hive:31
    2026-08-08, 20.00 kg, lot C, out to the baker                    honey.hive:60
    2026-08-08, 48 x 454 g, lot B, out to farm shop                  honey.hive:61
    2026-08-22, 30 x 250 g, lot K, out at the show                   honey.hive:64
    2026-08-22, 40 x 227 g, lot O, out at the show                   honey.hive:65
    2026-08-22, 24 x 454 g, lot B, out at the show                   honey.hive:66
    2026-09-12, 24 x 358 g, lot S, out to the hotel                  honey.hive:78
    2026-09-12, 6 x 454 g, lot B, in from farm shop                  honey.hive:79
    2026-09-26, 36 x 454 g, lot B, out to village shop               honey.hive:84
  
  Proofs of purchase, with the day and the quantity bought, are kept beside these.
  What must be kept, how long, and whether a treatment may be used is for the
  product's label, your law and your vet or inspector to say.
  $ waxtab records --on 2026-09-30 --hive o2 season
  Records on 2026-09-30
  
  Medicines
  
    2026-08-15 to 2026-08-22, 7 days, formic acid
      hives: o2                                                    orchard.hive:98
      not noted: quantity, batch, supplier and withdrawal period
  
  Feed
  
    2026-04-11, thin syrup, 2 L, o2                                 orchard.hive:7
    2026-09-05, thick syrup, 5 L, o2                              orchard.hive:107
    not noted: origin in 2 of 2
  
  Disease
  
    none noted
  
  Proofs of purchase, with the day and the quantity bought, are kept beside these.
  What must be kept, how long, and whether a treatment may be used is for the
  product's label, your law and your vet or inspector to say.
  $ waxtab records --json --on 2026-09-30 --hive o2 --no-refs season
  {
    "on": "2026-09-30",
    "unit": "kg",
    "medicines": [
      {
        "substance": "formic acid",
        "method": null,
        "first": "2026-08-15",
        "last": "2026-08-22",
        "days": 7,
        "quantity": null,
        "batch": null,
        "supplier": null,
        "withdrawal": null,
        "hives": [
          "o2"
        ],
        "missing": [
          "quantity",
          "batch",
          "supplier",
          "withdrawal period"
        ]
      }
    ],
    "feeds": [
      {
        "day": "2026-04-11",
        "what": "thin syrup",
        "amount": "2 L",
        "origin": null,
        "hives": [
          "o2"
        ],
        "missing": [
          "origin"
        ]
      },
      {
        "day": "2026-09-05",
        "what": "thick syrup",
        "amount": "5 L",
        "origin": null,
        "hives": [
          "o2"
        ],
        "missing": [
          "origin"
        ]
      }
    ],
    "diseases": [],
    "trade": []
  }
  $ waxtab rules room-runs-out fed-super
  room-runs-out (Supers)
    A super goes on when the chance that room runs out before the next visit is
    above the risk you accept; that risk is the only margin. Supers not looked at
    for two weeks are looked at first.
    Source: mechanism: Rinderer and Baxter, J. Econ. Entomol. 71 (1978); Winston,
    Apiculture, as excerpted by Surrey Bee Club; the risk is your setting.
  fed-super (Feed and honey)
    A super that was on during a feed, or went on within a fortnight after one,
    stays marked: bees carry syrup up.
    Source: Codex STAN 12-1981; wvbeekeeper.blogspot.com; the fortnight: common
    practice, no source.
  $ waxtab rules room-run-out
  waxtab: error: there is no rule 'room-run-out'; did you mean 'room-runs-out'?
  [2]
  $ waxtab rules | head -20
  # The rules of the advice
  
  Each piece of advice names its rule. Where two contradict at the same hive,
  disease comes first, then law and food, then swarms, then room, then the rest;
  the advice that stands says what it outranks. A source that is missing is called
  so: *common practice, no source*, or *from memory*.
  
  ## Disease
  
  - **dead-out**: A dead hive is shut against robbers; its combs go nowhere before
    the cause is known. *Source: common practice, no source.*
  - **notifiable-disease**: Foulbrood or another notifiable disease suspected: all
    advice that moves frames, supers or colonies from or to that yard stops; call
    the inspector. *Source: local law on notifiable bee diseases.*
  
  ## Supers
  
  - **first-super**: The first super goes on at 5-6 frames of brood (8 in two
    brood boxes), or when 80% of the brood frames are drawn and in use, before the
    main flow. *Source: Norfolk Beekeepers, "Adding supers"; NW Arkansas

No line is longer than a page is wide.

  $ waxtab rules | awk 'length > 80'

Advice names its rules; where they come from is told when asked.

  $ waxtab advise --on 2026-07-11 --hive h3 season | tail -3
      less when twisting: two people, or frame by frame
  
  Where a rule comes from: 'waxtab rules NAME', or here with --sources.
  $ waxtab advise --sources --on 2026-07-11 --hive h3 season | sed -n '/Where the rules/,$p'
  Where the rules come from
  
    - crowded: common practice, no source; backfilling as a sign: betterbee.com
    - two-at-once: Winston, Apiculture, as excerpted by Surrey Bee Club; one at a
      time: wvbeekeeper.blogspot.com (2009), Demuth, USDA Farmers' Bulletin 503
    - placing: Berry and Delaplane, Am. Bee J. 140(5), 2000, as told by D. Caron;
      Imirie, Pink Pages (May 2002); C. de Bruyn, quoted at beelistener.co.uk;
      Winston via Surrey Bee Club; How to Keep Bees (1905)
    - stings: common practice, no source; UK national health wording on
      anaphylaxis
    - shed-short: the shed as noted; the order is own judgement
    - take-when-ripe: Die Honigmacher, course 3 (2/3); C. Collison, Harvesting &
      Packing Honey (3/4); timing: Die Honigmacher
    - lifting: HSE guideline filter (25 kg, 16 kg) and NIOSH (23 kg); less when
      twisting
    - mites-count-due: common practice, no source; a threshold by season:
      Mississippi State University Extension
