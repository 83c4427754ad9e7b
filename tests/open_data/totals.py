#!/usr/bin/python3
"""Compares what was read from the journal of a log with totals computed from the log itself.

usage: waxtab lines --json denmark.hive | totals.py efsa_mustb_denmark_management.csv

Per hive, site and year: supers on, supers off, honey and sugar. Prints the totals of each site and year and
every difference; exit status 1 when there is one. The log's own rules are written a second time here, in
another way than in journal.py, so that a slip in one of them shows.
"""
import csv
import json
import sys
from collections import Counter
from decimal import Decimal

COMBS = {"Foundation comb", "Food comb"}
NOT_SUGAR = ("Feeder", "Gave them bucket and super for feeding", "food comb no. 41 from hive 2")


def from_log(path):
    totals = Counter()
    with open(path, newline="", encoding="utf-8") as file:
        for row in csv.DictReader(file):
            words, amount = row["description"], Decimal(row["quantity"])
            place = (row["site"], row["date"][:4], row["hive"])
            out = row["direction"] == "OUTPUT"
            a_box = " super " in f" {words.lower()} " or "10 combs" in words
            if row["item"] == "Super + 10 frames":
                totals[place + ("supers off" if out else "supers on",)] += 1
            elif out and row["item"] in COMBS and a_box and not words.startswith("hive reduced"):
                totals[place + ("supers off",)] += 1
            elif row["item"] == "Honey":
                totals[place + ("honey kg",)] += amount
            elif row["item"] == "Sucrose" and not out and words not in NOT_SUGAR:
                totals[place + ("sugar kg",)] += amount
    return totals


def from_facts(lines):
    totals, gross = Counter(), {}
    for line in lines:
        fact = json.loads(line, parse_float=Decimal)
        place = (fact["yard"], fact["date"][:4], fact["hive"])
        kind, box = fact["kind"], (fact["hive"], fact["box"])
        if kind == "super-on":
            totals[place + ("supers on",)] += fact.get("count") or 1
        elif kind == "super-off":
            totals[place + ("supers off",)] += 1
            gross[box] = fact["value"]
        elif kind == "box-weight" and fact.get("detail") == "after":
            totals[place + ("honey kg",)] += gross[box] - fact["value"]
        elif kind == "frames-off":
            totals[place + ("honey kg",)] += fact["second"] if "second" in fact else fact["value"]
        elif kind == "feed":
            totals[place + ("sugar kg",)] += fact["value"]
    return totals


def main(path):
    log, facts = from_log(path), from_facts(sys.stdin)
    wrong = [key for key in sorted(log.keys() | facts.keys()) if log[key] != facts[key]]
    for key in wrong:
        print("differs:", *key, "log", log[key], "journal", facts[key])
    sites = Counter()
    for (site, year, _, what), amount in log.items():
        sites[site, year, what] += amount
    for (site, year, what), amount in sorted(sites.items()):
        print(site, year, what, amount)
    print(len([k for k in log if log[k]]), "totals compared,", len(wrong), "differ")
    return 1 if wrong else 0


if __name__ == "__main__":
    sys.exit(main(sys.argv[1]))
