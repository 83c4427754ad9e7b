"""Writes a journal of many hives over many seasons: python3 many_hives.py HIVES SEASONS YARDS FILE"""
import datetime
import random
import sys

hives, seasons, yards, path = int(sys.argv[1]), int(sys.argv[2]), int(sys.argv[3]), sys.argv[4]
chance = random.Random(7)
last_day = datetime.date(2026, 7, 5)
last_visit = 13


def visit(hive, number):
    """What is written of a hive on a visit, the first visit of a season being number 0."""
    if number == 0:
        return f"{hive}: brood on 7. +super drawn9"
    if number == last_visit:
        return f"{hive}: -super 21 kg"
    full = max(1, min(100, 8 * number + chance.randint(-5, 5)))
    return f"{hive}: super {full}%, {max(0, min(95, 7 * number - 15))}% capped, no queen cells"


with open(path, "w") as out:
    print("units kg\n", file=out)
    for yard in range(yards):
        print(f"yard yard{yard}", file=out)
    for hive in range(hives):
        print(f"hive h{hive:03d} at yard{hive % yards}: 2 deeps, excluder", file=out)
    for year in range(2026 - seasons + 1, 2027):
        for number in range(last_visit + 1):
            day = datetime.date(year, 4, 20) + datetime.timedelta(days=9 * number)
            if day > last_day:
                break
            for yard in range(yards):
                print(f"\n{day} yard{yard}\n{chance.randint(14, 28)}C sunny, flow {chance.choice(['light', 'heavy'])}", file=out)
                for hive in range(yard, hives, yards):
                    print(visit(f"h{hive:03d}", number), file=out)
            if number == last_visit:
                print(f"\n{day + datetime.timedelta(days=2)}\nextracted {14 * hives} kg lot L{year}", file=out)
