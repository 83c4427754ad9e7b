The small journal, through every command.

  $ cp "$TESTDIR/../../examples/first-visit/mill.hive" .
  $ cat mill.hive
  units kg
  hive h3 at mill: deep, excluder, super drawn9
  
  2026-06-03 mill
  24C sunny, flow heavy, white clover
  h3 top 70% capped
  +super h3 drawn9

  $ waxtab check --on 2026-06-03
  fine: 6 facts about 1 hive in 1 file

  $ waxtab lines --on 2026-06-03
  units kg
  yard mill
  hive h3 at mill: brood box deep, excluder, super drawn9
  2026-06-03 mill 24C  # mill.hive:5
  2026-06-03 mill sunny  # mill.hive:5
  2026-06-03 mill flow heavy  # mill.hive:5
  2026-06-03 mill white clover in bloom  # mill.hive:5
  2026-06-03 mill h3 top 70% capped  # mill.hive:6
  2026-06-03 mill h3 +super drawn9  # mill.hive:7; medium (box kind not said); on top (place not said)

  $ waxtab lines --read-back --on 2026-06-03
  mill.hive
      1 | units kg
              set-up
      2 | hive h3 at mill: deep, excluder, super drawn9
              set-up
      3 |
      4 | 2026-06-03 mill
              day: Wednesday 2026-06-03 at mill
      5 | 24C sunny, flow heavy, white clover
              24C
              sunny
              flow heavy
              white clover in bloom
      6 | h3 top 70% capped
              h3 top 70% capped
      7 | +super h3 drawn9
              h3 +super drawn9
                  assumed: medium (box kind not said)
                  assumed: on top (place not said)

  $ waxtab lines --json --on 2026-06-03
  {"date":"2026-06-03","noted":"2026-06-03","yard":"mill","hive":null,"kind":"temperature","box":null,"value":24,"unit":"C","at":"mill.hive:5"}
  {"date":"2026-06-03","noted":"2026-06-03","yard":"mill","hive":null,"kind":"weather","box":null,"value":null,"unit":null,"at":"mill.hive:5","text":"sunny"}
  {"date":"2026-06-03","noted":"2026-06-03","yard":"mill","hive":null,"kind":"flow","box":null,"value":null,"unit":null,"at":"mill.hive:5","detail":"heavy"}
  {"date":"2026-06-03","noted":"2026-06-03","yard":"mill","hive":null,"kind":"bloom","box":null,"value":null,"unit":null,"at":"mill.hive:5","detail":"on","text":"white clover"}
  {"date":"2026-06-03","noted":"2026-06-03","yard":"mill","hive":"h3","kind":"capped","box":"top","value":70,"unit":"%","at":"mill.hive:6"}
  {"date":"2026-06-03","noted":"2026-06-03","yard":"mill","hive":"h3","kind":"super-on","box":null,"value":1,"unit":"supers","at":"mill.hive:7","count":1,"frames":9,"comb":"drawn","assumed":["medium (box kind not said)","on top (place not said)"]}

  $ waxtab lines --csv --on 2026-06-03 | tr -d '\r'
  date,noted,time,yard,hive,kind,box,value,unit,at,low,high,about,of,count,size,size_unit,second,second_unit,other,hives,lot,lots,box2,box_kind,frames,comb,placing,detail,manner,text,assumed
  2026-06-03,2026-06-03,,mill,,temperature,,24,C,mill.hive:5,,,,,,,,,,,,,,,,,,,,,,
  2026-06-03,2026-06-03,,mill,,weather,,,,mill.hive:5,,,,,,,,,,,,,,,,,,,,,sunny,
  2026-06-03,2026-06-03,,mill,,flow,,,,mill.hive:5,,,,,,,,,,,,,,,,,,,heavy,,,
  2026-06-03,2026-06-03,,mill,,bloom,,,,mill.hive:5,,,,,,,,,,,,,,,,,,,on,,white clover,
  2026-06-03,2026-06-03,,mill,h3,capped,top,70,%,mill.hive:6,,,,,,,,,,,,,,,,,,,,,,
  2026-06-03,2026-06-03,,mill,h3,super-on,,1,supers,mill.hive:7,,,,,1,,,,,,,,,,,9,drawn,,,,,medium (box kind not said); on top (place not said)

  $ waxtab timeline --on 2026-06-03
  Yard mill
  
    2026-06-03  24C, sunny, flow heavy, white clover in bloom          mill.hive:5
  
  h3 at mill
    from the start
  
        super, medium, 9 frames, drawn  since 2026-06-03               mill.hive:7
        super, medium, 9 frames, drawn  from the start                 mill.hive:2
        ----- excluder -----            from the start                 mill.hive:2
        brood box, deep, 10 frames      from the start                 mill.hive:2
        ===== floor =====
  
    2026-06-03  top 70% capped                                         mill.hive:6
                +super drawn9                                          mill.hive:7
                  assumed: medium (box kind not said); on top (place not said)

  $ waxtab supers --on 2026-06-03
  Supers on 2026-06-03. Supers are numbered from the brood up; in 8 cases of 10
  the truth lies in the range. Days of room allow for the flow fading.
  
  Yard mill, 1 hive
  
  h3
    gains 0.8 kg a day (0.0-1.6); too few visits of its own, so judged by its
      yard and the time of year
    room for 21.1 kg (17.7-24.5): likely to outlast the flow (14 days or more)
    super  full          capped       honey in it          seen
    2      1% (0-3)      0% (0-1)     0.1 kg (0.0-0.5)     never
    1      83% (66-100)  67% (56-77)  15.1 kg (10.6-19.5)  2026-06-03
    when full, each: 18.2 kg (14.3-22.0)
    fit to take, by the capping: super 1 now
    read from: super 2 mill.hive:7; super 1 mill.hive:6; gain mill.hive:5,6,7
    assumed: medium (supers 2, 1)

  $ waxtab advise --on 2026-06-03
  Advice for 2026-06-03
  
  Without a date
  
    h3 at mill: leave its supers as they are: room lasts
      likely: 19 in 20 that room lasts until 2026-06-10
      - room for 18 to 24 kg of honey, likely 21; gaining 0.0 to 1.6 kg a day,
        likely 0.8
        "+super h3 drawn9"                                             mill.hive:7
      rule: room-lasts
  
  Where a rule comes from: 'waxtab rules NAME', or here with --sources.

  $ waxtab bring --on 2026-06-03
  What to bring, round of 2026-06-03 to 2026-06-10
  
  Yard mill, 2026-06-10, 0 hives to open

  $ waxtab hindsight --on 2026-06-03
  Hindsight on 2026-06-03
  
  0 of 20 forecasts wanted: too little was read twice to judge by
  
  1 super put on in all, 0 stayed empty; room ran out 0 times, foretold 0 times.

  $ waxtab report --on 2026-06-03 --out report
  $ ls report
  lots
  report.html
  report.txt
  seasons
  visits.ics

  $ waxtab harvest --on 2026-06-03
  No honey taken off by 2026-06-03.

Nothing noted later counts.

  $ waxtab timeline --on 2026-06-02
  h3 at mill
    from the start
  
        super, medium, 9 frames, drawn  from the start                 mill.hive:2
        ----- excluder -----            from the start                 mill.hive:2
        brood box, deep, 10 frames      from the start                 mill.hive:2
        ===== floor =====

In pounds.

  $ waxtab supers --units lb --on 2026-06-03
  Supers on 2026-06-03. Supers are numbered from the brood up; in 8 cases of 10
  the truth lies in the range. Days of room allow for the flow fading.
  
  Yard mill, 1 hive
  
  h3
    gains 1.8 lb a day (0.0-3.5); too few visits of its own, so judged by its
      yard and the time of year
    room for 46.5 lb (39.1-53.9): likely to outlast the flow (14 days or more)
    super  full          capped       honey in it          seen
    2      1% (0-3)      0% (0-1)     0.3 lb (0.0-1.0)     never
    1      83% (66-100)  67% (56-77)  33.3 lb (23.4-43.1)  2026-06-03
    when full, each: 40.1 lb (31.6-48.6)
    fit to take, by the capping: super 1 now
    read from: super 2 mill.hive:7; super 1 mill.hive:6; gain mill.hive:5,6,7
    assumed: medium (supers 2, 1)

Commands that answer keep to themselves that a journal has errors, but for one line; check says them all.

  $ echo 'h4 top full' >> mill.hive
  $ waxtab supers --on 2026-06-03 > /dev/null
  waxtab: 1 error in the journal; 'waxtab check' shows it
  $ waxtab check --on 2026-06-03
  mill.hive:8:1: error: there is no hive 'h4' [unknown-hive]
      8 | h4 top full
        | ^^ not set up
        = hint: did you mean 'h3'? else set it up, for example `hive h4 at mill:
                deep`
  1 error, 0 warnings in 1 file
  [1]
