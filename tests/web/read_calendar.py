"""Reads visits.ics with python3-icalendar and compares with what check.mjs read with ical.js.

python3 tests/web/read_calendar.py FOLDER
"""
import datetime
import json
import pathlib
import sys

from icalendar import Calendar


def main():
    folder = pathlib.Path(sys.argv[1])
    calendar = Calendar.from_ical((folder / "visits.ics").read_bytes())
    ours = []
    for event in calendar.walk("VEVENT"):
        begins, ends = event.decoded("DTSTART"), event.decoded("DTEND")
        if isinstance(begins, datetime.datetime):
            print("FAILED: an event with a time of day")
            return 1
        words = [str(event["UID"]), begins.isoformat(), ends.isoformat(), str(event["SUMMARY"])]
        ours.append(words + [str(event.get("DESCRIPTION", ""))])
    theirs = json.loads((folder.parent / "events.json").read_text())
    same = ours == theirs and len(ours) > 0
    print(f"{'ok' if same else 'FAILED'} python3-icalendar and ical.js read the same {len(ours)} events")
    print(f"{int(same)} passed, {int(not same)} failed")
    return 0 if same else 1


sys.exit(main())
