Bytes that are not what a journal should hold.

  $ journal() { printf 'units kg\nhive h3 at mill: deep, excluder, super drawn9\n\n2026-06-03 mill\n%b' "$1"; }

Invalid UTF-8: a Latin-1 degree sign.

  $ mkdir latin && journal 'h3 top 70% capped\n24\0260C sunny\nh3 queen seen\n' > latin/a.hive
  $ waxtab check --on 2026-06-03 latin
  a.hive:6:1: warning: not understood: '24\xB0C sunny' [not-understood]
      6 | 24\xB0C sunny
        | ^^^^^^^^^^^^^ kept as a remark
        = hint: say it in the words of `waxtab words`, or put it in quotes if it
                is only a remark
  a.hive:6:3: error: this is not UTF-8 text [not-utf8]
      6 | 24\xB0C sunny
        |   ^^^^ a byte no UTF-8 text has
        = hint: save the file as UTF-8 in your editor; the rest was read all the
                same
  1 error, 1 warning in 1 file
  [1]

A NUL.

  $ mkdir nul && journal 'h3 top\0000 70% capped\nh3 queen seen\n' > nul/a.hive
  $ waxtab check --on 2026-06-03 nul
  a.hive:5:7: error: there is a NUL byte in the text [not-text]
      5 | h3 top\x00 70% capped
        |       ^^^^ not a letter
        = hint: delete it, or check that this file is a journal; the rest was read
                all the same
  1 error, 0 warnings in 1 file
  [1]

CRLF and a byte-order mark change nothing.

  $ mkdir lf crlf bom
  $ journal 'h3 top 70% capped\n+super h3 drawn9\n' > lf/a.hive
  $ sed 's/$/\r/' lf/a.hive > crlf/a.hive
  $ { printf '\357\273\277'; cat lf/a.hive; } > bom/a.hive
  $ waxtab check --on 2026-06-03 crlf
  fine: 2 facts about 1 hive in 1 file
  $ waxtab check --on 2026-06-03 bom
  fine: 2 facts about 1 hive in 1 file
  $ for folder in lf crlf bom; do waxtab lines --no-refs --on 2026-06-03 $folder > $folder.txt; done
  $ cmp lf.txt crlf.txt && cmp lf.txt bom.txt

Control characters of a journal never reach the terminal raw.

  $ mkdir control && journal 'h3 "bell \0007 and red \0033[31m"\nh3 top \0033[31m700% full\n' > control/a.hive
  $ waxtab check --on 2026-06-03 control
  a.hive:6:4: warning: not understood: 'top \x1B[31m700% full' [not-understood]
      6 | h3 top \x1B[31m700% full
        |    ^^^^^^^^^^^^^^^^^^^^^ kept as a remark
        = hint: say it as in `h3 top super half full` (more in `waxtab words`), or
                put it in quotes if it is only a remark
  0 errors, 1 warning in 1 file
  $ waxtab timeline --on 2026-06-03 control
  h3 at mill
    from the start
  
        super, medium, 9 frames, drawn  from the start                    a.hive:2
        ----- excluder -----            from the start                    a.hive:2
        brood box, deep, 10 frames      from the start                    a.hive:2
        ===== floor =====
  
    2026-06-03  "bell \x07 and red \x1B[31m"                              a.hive:5
                "top \x1B[31m700% full"                                   a.hive:6

An empty file is a journal without anything in it.

  $ mkdir empty && : > empty/a.hive
  $ waxtab check --on 2026-06-03 empty
  a.hive:1:1: warning: nothing is written in this file [empty-file]
        = hint: write in it, for example `hive h3 at mill: deep, excluder, super
                drawn9`, or leave it out
  0 errors, 1 warning in 1 file
  $ waxtab supers --on 2026-06-03 empty
  No living hive to show on 2026-06-03.

A folder without journals, a folder that is not there, a file that cannot be read.

  $ mkdir bare && echo hello > bare/notes.txt
  $ waxtab check --on 2026-06-03 bare
  waxtab: error: no journal in 'bare': nothing there or below ends in .hive; write one (waxtab --help shows how) or name files and folders
  [2]
  $ waxtab check --on 2026-06-03 nowhere
  waxtab: error: there is no file or folder 'nowhere'
  [2]
  $ mkdir broken && ln -s missing.hive broken/gone.hive && cp lf/a.hive broken
  $ waxtab check --on 2026-06-03 broken
  waxtab: error: cannot read 'broken/gone.hive'
  fine: 2 facts about 1 hive in 1 file
  [2]
