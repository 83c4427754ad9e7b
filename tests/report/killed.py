"""Kills `waxtab report` at 50 random moments and looks whether the folder holds a whole report, the old or the new.

python3 tests/report/killed.py WAXTAB JOURNAL [SEED]
"""
import hashlib
import pathlib
import random
import subprocess
import sys
import tempfile
import time


def contents(folder):
    found = {}
    for path in sorted(folder.rglob("*")):
        if path.is_file():
            found[str(path.relative_to(folder))] = hashlib.sha256(path.read_bytes()).hexdigest()
    return found


def main():
    program, journal = sys.argv[1], sys.argv[2]
    chance = random.Random(int(sys.argv[3]) if len(sys.argv) > 3 else 1)
    days = ["2026-06-14", "2026-07-20"]
    passed = failed = killed = 0
    with tempfile.TemporaryDirectory() as there:
        base = pathlib.Path(there)
        whole = []
        for day in days:
            began = time.monotonic()
            subprocess.run([program, "report", "--out", base / day, "--on", day, journal], check=True, stderr=subprocess.DEVNULL)
            lasts = time.monotonic() - began
            whole.append(contents(base / day))
        folder = base / "report"
        subprocess.run([program, "report", "--out", folder, "--on", days[0], journal], check=True, stderr=subprocess.DEVNULL)
        for turn in range(50):
            run = subprocess.Popen([program, "report", "--out", folder, "--on", days[(turn + 1) % 2], journal], stderr=subprocess.DEVNULL)
            # Most of the writing happens late.
            time.sleep(lasts * chance.choice([chance.uniform(0, 1), chance.uniform(0.6, 1.1)]))
            killed += run.poll() is None
            run.kill()
            run.wait()
            good = folder.is_dir() and contents(folder) in whole
            print(f"{'ok' if good else 'FAILED'} killed the {turn + 1}. time")
            passed += good
            failed += not good
    print(f"killed while at work: {killed} of 50")
    print(f"{passed} passed, {failed} failed")
    return 1 if failed else 0


sys.exit(main())
