Bytes that are not what a journal should hold.

  $ journal() { printf 'units kg\nhive h3 at mill: deep, excluder, super drawn9\n\n2026-06-03 mill\n%b' "$1"; }

Invalid UTF-8: a Latin-1 degree sign.

  $ mkdir latin && journal 'h3 top 70%% capped\n24\0260C sunny\nh3 queen seen\n' > latin/a.hive
  $ waxtab check --on 2026-06-03 latin

A NUL.

  $ mkdir nul && journal 'h3 top\0000 70%% capped\nh3 queen seen\n' > nul/a.hive
  $ waxtab check --on 2026-06-03 nul

CRLF and a byte-order mark change nothing.

  $ mkdir lf crlf bom
  $ journal 'h3 top 70%% capped\n+super h3 drawn9\n' > lf/a.hive
  $ sed 's/$/\r/' lf/a.hive > crlf/a.hive
  $ { printf '\357\273\277'; cat lf/a.hive; } > bom/a.hive
  $ waxtab check --on 2026-06-03 crlf bom > said.txt; cat said.txt
  $ for folder in lf crlf bom; do waxtab lines --no-refs --on 2026-06-03 $folder > $folder.txt; done
  $ cmp lf.txt crlf.txt && cmp lf.txt bom.txt

Control characters of a journal never reach the terminal raw.

  $ mkdir control && journal 'h3 "bell \0007 and red \0033[31m"\nh3 top \0033[31m700%% full\n' > control/a.hive
  $ waxtab check --on 2026-06-03 control
  $ waxtab timeline --on 2026-06-03 control

An empty file is a journal without anything in it.

  $ mkdir empty && : > empty/a.hive
  $ waxtab check --on 2026-06-03 empty
  $ waxtab supers --on 2026-06-03 empty

A folder without journals, a folder that is not there, a file that cannot be read.

  $ mkdir bare && echo hello > bare/notes.txt
  $ waxtab check --on 2026-06-03 bare
  $ waxtab check --on 2026-06-03 nowhere
  $ mkdir broken && ln -s missing.hive broken/gone.hive && cp lf/a.hive broken
  $ waxtab check --on 2026-06-03 broken
