Words that are code elsewhere are words here: on the terminal, in the CSV, in the JSON and in the text of a report.
The page, the pages of lots and the calendar are looked at in tests/web.

  $ cp "$TESTDIR/../web/hostile/hostile.hive" .
  $ printf 'h2: "red \033[31m, bell \007, back \010, title \033]0;x\007, eight bit \302\233"\n' >>hostile.hive
  $ for command in check lines 'lines --csv' 'lines --json' 'lines --read-back' timeline supers advise bring harvest records hindsight; do
  >   waxtab $command --on 2026-05-12 hostile.hive >out.txt 2>&1
  >   tr -d '\n\r' <out.txt | grep -c "$(printf '[\001-\037\177]')" | sed "s/^1/$command lets control characters through/; /^0/d"
  >   grep -c "$(printf '\302[\200-\237]\|\342\200\256')" out.txt | sed "/^0/d; s/^/$command lets these through: /"
  > done

A cell that a spreadsheet would run is kept as text.

  $ waxtab lines --csv --on 2026-05-12 hostile.hive >lines.csv 2>/dev/null
  $ cat >cells.py <<'EOF'
  > import csv
  > rows = list(csv.reader(open("lines.csv", newline="", encoding="utf-8")))
  > assert len({len(row) for row in rows}) == 1, "rows differ in length"
  > cells = [cell for row in rows for cell in row]
  > print([cell for cell in cells if cell[:1] in ("=", "+", "@", "\t", "\r") or cell[:1] == "-" and not cell[1:2].isdigit()])
  > print([word for word in ("=cmd()", "=HYPERLINK(1)", "+1+1", "x" * 400, "\U0001F41D") if not any(word in cell for cell in cells)])
  > EOF
  $ python3 cells.py
  []
  []

Every row of the JSON is JSON, and holds the words as they were written.

  $ waxtab lines --json --on 2026-05-12 hostile.hive 2>/dev/null >lines.json
  $ python3 -c 'import json; rows = [json.loads(line) for line in open("lines.json", encoding="utf-8")]; print(any("=HYPERLINK(1)" in str(row) for row in rows))'
  True

The text of the report and the calendar carry no control character either; names of lots make no folder.

  $ waxtab report --out out --on 2026-05-12 hostile.hive 2>/dev/null
  $ tr -d '\n\r' <out/report.txt | grep -c "$(printf '[\001-\037\177]')"
  0
  [1]
  $ tr -d '\n\r' <out/visits.ics | grep -c "$(printf '[\001-\037\177]')"
  0
  [1]
  $ find out -type f | LC_ALL=C sort
  out/lots/u-amp.html
  out/report.html
  out/report.txt
  out/visits.ics
