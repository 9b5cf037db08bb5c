"""Follows a segment: prints headline and standing now, and again whenever something moved.

    python3 follow.py http://localhost:8080 COMPETITION EVENT SEGMENT [HOW_OFTEN]
"""
import json
import sys
import time
from urllib.error import HTTPError
from urllib.request import urlopen

service, competition, event, segment = sys.argv[1:5]
left = int(sys.argv[5]) if len(sys.argv) > 5 else -1
address = f"{service}/api/public/competitions/{competition}/events/{event}/segments/{segment}"


def read():
    with urlopen(address, timeout=20) as answer:
        return json.load(answer)


def show(body):
    print(body["headline"], flush=True)
    for row in body["standing"]["rows"] if body["standing"] else []:
        print(f'{row["place"] or "-":>4}  {row["team"]}', flush=True)


mine, shown = read()["segment"]["id"], None
while left != 0:
    try:
        with urlopen(f"{service}/follow/{competition}/signals", timeout=60) as stream:
            for line in stream:
                signal = json.loads(line[6:]) if line.startswith(b"data: ") else {}
                if signal.get("id") == mine and signal["moment"] != shown:
                    show(read())
                    shown, left = signal["moment"], left - 1
                    if left == 0:
                        break
    except HTTPError as refused:
        time.sleep(int(refused.headers.get("Retry-After", 5)))
    except OSError:
        time.sleep(3)
