"""Makes the four logger files beside this script from data.csv of the source.

Usage: python3 extract.py data.csv    (Python 3, nothing else needed)
Takes every 12th reading of each sensor, from reading 1: one a minute. No figure is changed, averaged or left out.
"""

import csv
import hashlib
import sys
from datetime import datetime, timedelta

SHA256 = "d1cb1de25cadce8fde53b81f24aa88a4dd0b5c7aad6535f8137412cf54dbea89"
INTERVAL_S = 5
KEEP_EVERY = 12
# The source gives the day and the interval, not the hour: the first reading is put at 00:00.
FIRST = datetime(2010, 7, 10)
FILES = {"4": "room.csv", "3": "room-second.csv", "2": "outdoors.csv", "1": "outdoors-second.csv"}

path = sys.argv[1]
with open(path, "rb") as source:
    if hashlib.sha256(source.read()).hexdigest() != SHA256:
        sys.exit("not the file that these figures were taken from")
with open(path, newline="") as source:
    rows = list(csv.DictReader(source))
for mote, name in FILES.items():
    with open(name, "w", newline="\n") as out:
        out.write(f"# measured 10 July 2010, sensor {mote}; the clock is time since the first reading; README.md has source and licence\n")
        out.write("time,temperature C,humidity %\n")
        for row in rows:
            number = int(row["reading"])
            if row["mote_id"] == mote and (number - 1) % KEEP_EVERY == 0:
                time = FIRST + timedelta(seconds=INTERVAL_S * (number - 1))
                out.write(f"{time:%Y-%m-%d %H:%M:%S},{row['temperature']},{row['humidity']}\n")
