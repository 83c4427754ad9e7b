#!/usr/bin/python3
"""Writes a real hive log as a journal in the notation.

usage: journal.py efsa_mustb_denmark_management.csv > denmark.hive

Source: EFSA MUST-B field data collection, Denmark, 2019-2020, Table IV (colony management), Zenodo record
4953762: dated kilograms put on (INPUT) and taken off (OUTPUT) at 31 hives of four sites. Every row becomes
a line; what the notation has no fact for stays as a quoted remark.

Decisions, each on what a row says of itself:
- A super carries the row's id as its painted number, so that its weighings find it.
- Supers taken off in 2019 beyond those put on that year were on before the log begins.
- "Super", or a comb row whose words speak of a super or of ten combs, taken off: a super off. The sign of
  the row is followed even where its words say the opposite (DK_2_5, 2020-06-03).
- An emptied super and honey without further words, booked on one day at one hive: one super weighed before
  and after extraction.
- Other honey: frames of honey. Weights booked as sugar that are a feeder's: the feeder.
- A "bee emptier" is an escape board; its rows are followed by their words, since two have the wrong sign.
"""
import csv
import re
import sys


def is_super_off(row):
    words = row["description"].lower()
    if row["direction"] != "OUTPUT" or "reduced" in words:
        return False
    if row["item"].startswith("Super"):
        return True
    return row["item"] in ("Foundation comb", "Food comb") and bool(re.search(r"\bsuper\b|\b10 combs\b", words))


def is_super_on(row):
    return row["direction"] == "INPUT" and row["item"].startswith("Super")


def is_gear(row):
    """A feeder's weight booked as sugar."""
    return bool(re.search(r"feeder|bucket", row["description"].lower()))


def quoted(row, why=""):
    words = " ".join(row["description"].replace('"', "'").split())
    sign = "put in" if row["direction"] == "INPUT" else "taken out"
    text = f'{row["item"]} {sign}, {row["quantity"]} {row["unit"].lower()}'
    return f'"{text}{": " + words if words else ""}{why}"'


def is_booked_with_super(row, rows):
    """Honey without a word beside an emptied super: that super's."""
    return (row["item"] == "Honey" and not row["description"]
            and any(r["hive"] == row["hive"] and is_super_off(r) for r in rows))


def stands_before_the_log(rows):
    """Hive -> supers that must have been on when the log begins."""
    on, need = {}, {}
    for row in rows:
        if not row["date"].startswith("2019"):
            continue
        hive = row["hive"]
        on.setdefault(hive, 0)
        need.setdefault(hive, 0)
        on[hive] += is_super_on(row) - is_super_off(row)
        need[hive] = max(need[hive], -on[hive])
    return need


class Stacks:
    """Painted numbers of the supers on each hive, lowest first."""

    def __init__(self, before):
        self.on = {hive: [f"{hive}-{n + 1}" for n in range(count)] for hive, count in before.items()}

    def put(self, hive, label):
        self.on.setdefault(hive, []).append(label)

    def take(self, hive):
        stack = self.on.setdefault(hive, [])
        return stack.pop() if stack else None


def super_off_lines(row, stacks, honey):
    """The lines of a super taken off; `honey` is the honey row booked with it, if any."""
    hive, label = row["hive"], stacks.take(row["hive"])
    box = f'"{label}"' if label else "top super"
    if not honey:
        words = [f'{hive}: "in the words of the log: {row["description"]}"'] if row["description"] else []
        return [f'{hive}: {box} off {row["quantity"]} kg'] + words
    gross = round(float(row["quantity"]) + float(honey["quantity"]), 3)
    return [f"{hive}: {box} off {gross:g} kg", f'{hive} {box} after extracting {row["quantity"]} kg']


def sugar_line(row):
    hive, words = row["hive"], row["description"].lower()
    if is_gear(row):
        return f'{hive}: feeder {"on" if row["direction"] == "INPUT" else "off"}'
    if row["direction"] == "OUTPUT" or "comb" in words:
        return f"{hive}: {quoted(row)}"
    what = "fondant" if "fondant" in words else "sugar"
    return f'{hive}: fed {row["quantity"]} kg {what}'


def excluder_line(row):
    words = row["description"].lower()
    if "emptier" in words:
        return f'{row["hive"]}: escape board {"off" if "removed" in words else "on"}'
    return f'{row["hive"]}: excluder {"on" if row["direction"] == "INPUT" else "off"}'


def lines_of_day(rows, stacks):
    """The lines of one day at one site, in the order of the log."""
    lines, booked = [], []
    for row in rows:
        if is_booked_with_super(row, rows):
            booked.append(row)
    for row in rows:
        hive = row["hive"]
        if is_super_off(row):
            honey = next((h for h in booked if h["hive"] == hive), None)
            if honey:
                booked.remove(honey)
            lines += super_off_lines(row, stacks, honey)
        elif is_super_on(row):
            stacks.put(hive, row["source_event_id"])
            words = row["description"].lower()
            frames = "" if "no frames" in words else ", 10 frames"
            lines.append(f'{hive}: super added{frames}, "{row["source_event_id"]}"')
            if "emptier" in words:
                lines.append(f"{hive}: escape board on")
        elif row["item"] == "Honey":
            if not is_booked_with_super(row, rows) and float(row["quantity"]) > 0:
                lines.append(f'{hive}: frames of honey off, {row["quantity"]} kg')
        elif row["item"] == "Sucrose":
            lines.append(sugar_line(row))
        elif row["item"] == "Queen excluder":
            lines.append(excluder_line(row))
        else:
            lines.append(f"{hive}: {quoted(row)}")
    return lines


def main(path):
    with open(path, newline="", encoding="utf-8") as file:
        rows = list(csv.DictReader(file))
    out = ["# EFSA MUST-B field data, Denmark 2019-2020, Zenodo 4953762, Table IV.", "units kg",
           "box norwegian: super, 10 frames, 22.2 kg full, 4.9 kg empty", "default super norwegian", "new supers go over", ""]
    before = stands_before_the_log(rows)
    out[-1:] = [f"yard {site}" for site in sorted({row["site"] for row in rows})] + [""]
    for hive, site in sorted({(row["hive"], row["site"]) for row in rows}):
        stack = ["2 deeps"] + [f'super "{hive}-{n + 1}"' for n in range(before.get(hive, 0))]
        out.append(f'hive {hive} at {site}: {", ".join(stack)}')
    stacks = Stacks(before)
    for day, site in sorted({(row["date"], row["site"]) for row in rows}):
        out += ["", f"{day} {site}"]
        out += lines_of_day([row for row in rows if (row["date"], row["site"]) == (day, site)], stacks)
    print("\n".join(out))


if __name__ == "__main__":
    main(sys.argv[1])
