#!/usr/bin/env python3
"""Asks a running service for large pictures, sixteen at once, and prints what came back.

Ends with 1 on a status that is none of 200, 422 and 503, on an answer that is no whole picture, on a caller that got
none at all, and where the service does not answer a sheet afterwards. Usage: src/load/pictures.py http://127.0.0.1:8080
"""

import collections
import concurrent.futures
import pathlib
import struct
import sys
import time
import urllib.error
import urllib.request

DESIGN = (pathlib.Path(__file__).parents[1] / "main/resources/designs/icosahedron-mixed.json").read_bytes()
WIDEST = "&format=png&width=4000"
ASKED = [
    *("/v1/drawings/" + each + WIDEST for each in ("net?", "sphere?light=true", "templates?", "net?set=INVERTED")),
    "/v1/shop-sheet?format=pdf",
    *("/v1/drawings/" + each + WIDEST for each in ("board?", "panel?", "segment?")),
]
CALLERS = 16
ROUNDS = 3
PATIENCE = 120

service = sys.argv[1].rstrip("/")


def ask(path):
    """The status, bytes and seconds of one answer; status 0 where none came."""
    request = urllib.request.Request(service + path, data=DESIGN, headers={"Content-Type": "application/json"})
    begin = time.monotonic()
    try:
        with urllib.request.urlopen(request, timeout=PATIENCE) as answer:
            status, body = answer.status, answer.read()
    except urllib.error.HTTPError as refusal:
        status, body = refusal.code, refusal.read()
    except OSError:
        status, body = 0, b""
    return status, body, time.monotonic() - begin


def is_whole(path, body):
    if "format=pdf" in path:
        return body.startswith(b"%PDF") and body.rstrip().endswith(b"%%EOF")
    return body.startswith(b"\x89PNG") and body[12:16] == b"IHDR" and body[-8:-4] == b"IEND" and (
        struct.unpack(">I", body[16:20])[0] == 4000
    )


def main():
    asked = [ASKED[i % len(ASKED)] for i in range(CALLERS * ROUNDS)]
    counts, faults, slowest = collections.Counter(), [], 0.0
    with concurrent.futures.ThreadPoolExecutor(CALLERS) as callers:
        for path, (status, body, seconds) in zip(asked, callers.map(ask, asked)):
            counts[status] += 1
            slowest = max(slowest, seconds)
            if status not in (200, 422, 503):
                faults.append(f"{path}: {status} {body[:200]!r}")
            elif status == 200 and not is_whole(path, body):
                faults.append(f"{path}: no whole file, {len(body)} bytes")
    print("pictures:", ", ".join(f"{count} times {status}" for status, count in sorted(counts.items())), end="; ")
    print(f"the slowest took {slowest:.1f} s")
    status, _, seconds = ask("/v1/sheet")
    if status != 200:
        faults.append(f"a sheet afterwards: {status} in {seconds:.1f} s")
    if counts[200] == 0:
        faults.append("nobody got a picture")
    for fault in faults:
        print("pictures:", fault, file=sys.stderr)
    return 1 if faults else 0


if __name__ == "__main__":
    sys.exit(main())
