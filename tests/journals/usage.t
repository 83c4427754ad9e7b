Wrong use of the program, and its help.

  $ waxtab
  $ waxtab fly
  $ waxtab supers --on yesterday
  $ waxtab supers --on 2026-02-30
  $ waxtab --version
  $ waxtab --help
  $ waxtab advise --help
  $ waxtab words super
  $ waxtab words supre
