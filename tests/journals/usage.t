Wrong use of the program, and its help.

  $ waxtab
  waxtab reads a beekeeper's journal, plain dated notes in files ending in .hive,
  and answers questions about hives, supers and honey. It keeps nothing and
  changes nothing: the journal is all there is.
  
  A journal can be as short as this. Write it to spring.hive with any editor:
  
      hive h3 at mill: deep, excluder, super drawn9
  
      2026-06-03 mill
      h3 top 70% capped, no queen cells
      +super h3 drawn9
  
  Then, in the same folder:
  
      waxtab check                    is all of it understood?
      waxtab lines --read-back        how was each line understood?
      waxtab supers --on 2026-06-10   how full will they be?
      waxtab advise --on 2026-06-10   what should be done, by when?
  
  Use: waxtab COMMAND [OPTIONS] [FILES OR FOLDERS]
  
  Commands:
    check      what is wrong with the journal, line by line
    lines      every fact on a line of its own, for grep, notebooks and databases
    timeline   what stands on each hive and what happened to it
    supers     how full each super is, how fast each hive fills, days of room left
    advise     what to do at which hive, by when, and why
    bring      what to put on the truck for the next round
    harvest    the honey ledger: from hives through lots to jars
    records    medicines, feed, disease and trade, as law asks for them
    hindsight  how good past estimates were on this journal
    report     a page, a text and a calendar for every morning
    words      the notation on one page; with a word, that word explained
    rules      every rule of the advice and where it comes from
  
  Files and folders that are named together make one journal; with none named it
  is every *.hive in the current folder and below. 'waxtab COMMAND --help' tells
  more about a command and its options.
  
  Exit status: 0 answered (check: no errors), 1 check found errors, 2 wrong use
  or unreadable file.
  [2]
  $ waxtab fly
  waxtab: error: there is no command 'fly'; it is one of check, lines, timeline, supers, advise, bring, harvest, records, hindsight, report, words, rules
  Try 'waxtab --help'.
  [2]
  $ waxtab supers --on yesterday
  waxtab: error: --on wants a day that exists, written like 2026-06-03, not 'yesterday'
  Try 'waxtab --help'.
  [2]
  $ waxtab supers --on 2026-02-30
  waxtab: error: --on wants a day that exists, written like 2026-06-03, not '2026-02-30'
  Try 'waxtab --help'.
  [2]
  $ waxtab --version
  waxtab 0.1.0
  $ waxtab --help
  waxtab reads a beekeeper's journal, plain dated notes in files ending in .hive,
  and answers questions about hives, supers and honey. It keeps nothing and
  changes nothing: the journal is all there is.
  
  A journal can be as short as this. Write it to spring.hive with any editor:
  
      hive h3 at mill: deep, excluder, super drawn9
  
      2026-06-03 mill
      h3 top 70% capped, no queen cells
      +super h3 drawn9
  
  Then, in the same folder:
  
      waxtab check                    is all of it understood?
      waxtab lines --read-back        how was each line understood?
      waxtab supers --on 2026-06-10   how full will they be?
      waxtab advise --on 2026-06-10   what should be done, by when?
  
  Use: waxtab COMMAND [OPTIONS] [FILES OR FOLDERS]
  
  Commands:
    check      what is wrong with the journal, line by line
    lines      every fact on a line of its own, for grep, notebooks and databases
    timeline   what stands on each hive and what happened to it
    supers     how full each super is, how fast each hive fills, days of room left
    advise     what to do at which hive, by when, and why
    bring      what to put on the truck for the next round
    harvest    the honey ledger: from hives through lots to jars
    records    medicines, feed, disease and trade, as law asks for them
    hindsight  how good past estimates were on this journal
    report     a page, a text and a calendar for every morning
    words      the notation on one page; with a word, that word explained
    rules      every rule of the advice and where it comes from
  
  Files and folders that are named together make one journal; with none named it
  is every *.hive in the current folder and below. 'waxtab COMMAND --help' tells
  more about a command and its options.
  
  Exit status: 0 answered (check: no errors), 1 check found errors, 2 wrong use
  or unreadable file.
  $ waxtab advise --help
  Use: waxtab advise [OPTIONS] [FILES OR FOLDERS]
  
  Says what to do at which hive, by when, how sure that is, and because of which
  lines of the journal and which rule. The most urgent comes first, your own
  to-dos and the usual cautions last. In --json 'chances' are the odds of the
  words as percent: of what, at which hive, by when.
  
  Try:
    waxtab advise --yard mill
  
  A journal to try it on:
  
      hive h3 at mill: deep, excluder, super drawn9
  
      2026-06-03 mill
      h3 top 70% capped, no queen cells
      +super h3 drawn9
  
  Options:
    --sources         list where the rules come from; 'waxtab rules' has them all
    --on DATE         the day to stand on: only what was noted by then counts;
                      default: today
    --hive NAME       only this hive; may be repeated
    --yard NAME       only this yard; may be repeated
    --units kg|lb     kg or lb; default: as the journal says, in --json kg
    --json            for programs instead of people
    --no-refs         leave out file:line, for comparing
  $ waxtab words super
  super
    written  super, honey super, honey box
    +super h3 drawn9                          super-on
    h3 super added, on top                    super-on
    h3 super on                               super-on
    -super h3                                 super-off
    h4 top off 22kg                           super-off
    h4 top off 18 kg honey                    super-off
    h4 honey off                              super-off
    h5 moved top super under                  super-lifted
    moved top super from h5 to h6             super-moved
    h5 top super moved to h6                  super-moved
    h3 top super labelled "B4"                box-labelled
    h3: 2 supers                              super-count
    h3 2 supers still on                      super-count
    h3 top 70% full                           full
  $ waxtab words supre
  'supre' is no word of the notation; did you mean 'super'?
  [2]
