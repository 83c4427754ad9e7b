The report in a folder of its own.

  $ cp -R "$TESTDIR/../../examples/season" hives
  $ waxtab report --out out --on 2026-06-14 hives 2>/dev/null
  $ find out -type f | LC_ALL=C sort
  out/lots/25.html
  out/lots/a.html
  out/report.html
  out/report.txt
  out/visits.ics

The same journal and day give the same bytes; nothing is touched when nothing would change.

  $ waxtab report --out again --on 2026-06-14 hives 2>/dev/null
  $ diff -r out again
  $ touch -d 2001-01-01 out/report.html
  $ waxtab report --out out --only-if-changed --on 2026-06-14 hives 2>/dev/null
  $ date -r out/report.html +%Y
  2001
  $ waxtab report --out out --only-if-changed --on 2026-06-15 hives 2>/dev/null
  $ test "$(date -r out/report.html +%Y)" -gt 2001

Nothing is left beside it.

  $ ls -A
  again
  hives
  out

A folder that holds something else is left alone.

  $ mkdir own && echo mine > own/mine.txt
  $ waxtab report --out own --on 2026-06-14 hives
  waxtab: error: '*own' holds 'mine.txt', which is not of a report; give the report a folder of its own (glob)
  [2]
  $ ls own
  mine.txt

A journal that cannot be read whole makes no report; the one before stays.

  $ cp -R out before
  $ waxtab report --out out --on 2026-07-20 hives gone
  waxtab: error: there is no file or folder 'gone'
  waxtab: error: no report was written, the one before is left as it was
  [2]
  $ diff -r out before

Every night: the examples as they stand, with a home of their own.

  $ HOME=$PWD; export HOME
  $ rm -rf hives-report
  $ sed -n 's/^0 5 \* \* \* //p' "$TESTDIR/../../examples/nightly/crontab" | env -i HOME="$HOME" PATH="$PATH" sh 2>/dev/null
  $ ls hives-report
  lots
  report.html
  report.txt
  seasons
  visits.ics
  $ rm -r hives-report
  $ sed -n 's/^ExecStart=.usr.local.bin.//p' "$TESTDIR/../../examples/nightly/waxtab-report.service" | sed "s|%h|$HOME|g" | sh 2>/dev/null
  $ test -s hives-report/report.html && rm -r hives-report
  $ git init -q hives && cp "$TESTDIR/../../examples/nightly/post-commit" hives/.git/hooks/
  $ cd hives && git add . && git -c user.name=keeper -c user.email=keeper@example.org commit -q -m 'The season so far' 2>/dev/null; cd ..
  $ test -s hives-report/report.html

The units are units, where systemd is there to say so.

  $ cp "$TESTDIR"/../../examples/nightly/waxtab-report.* . && sed -i "s|/usr/local/bin/waxtab|$(command -v waxtab)|" waxtab-report.service
  $ mkdir -m 700 run && XDG_RUNTIME_DIR=$PWD/run; export XDG_RUNTIME_DIR
  $ ! command -v systemd-analyze >/dev/null || systemd-analyze verify --user ./waxtab-report.service ./waxtab-report.timer

What to bring, against the shed.

  $ waxtab bring --on 2026-06-14 hives 2>/dev/null | sed -n '/^Against/,$p' | head -n 3
  Against the shed
  
                         wanted  in the shed
