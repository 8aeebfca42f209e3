#!/usr/bin/env python3
"""Asks a running service for plans whose searches never come to an end, and looks how well it keeps to their time.

200 requests from 4 threads, each for a rack of its own: 12 boards, up to 2 seams in a strip, far more work than a second
holds, and a second for it. An answer may take a second more. Answers of 503 (all places for long work are taken) are
asked for again, and the time counts from the last try. Ends with 1 if an answer was too late or none of 200.
Usage: src/load/stock_time.py http://127.0.0.1:8080 [requests, 200] [threads, 4]
"""

import concurrent.futures
import json
import pathlib
import random
import statistics
import sys
import time
import urllib.error
import urllib.request

SECONDS = 1.0
BEYOND = 1.0
PATIENCE = 60
EXAMPLE = pathlib.Path(__file__).parents[1] / "test/resources/fixtures/two-lanterns-and-boards.json"

address = sys.argv[1].rstrip("/") + "/v1/stock"
requests = int(sys.argv[2]) if len(sys.argv) > 2 else 200
threads = int(sys.argv[3]) if len(sys.argv) > 3 else 4


def document(seed):
    rng = random.Random(seed)
    request = json.loads(EXAMPLE.read_text())
    woods = ["black walnut", "sugar maple", "black cherry", "black walnut"]
    boards = [
        {
            "species": woods[i % len(woods)],
            "length": rng.randint(380, 1900),
            "width": rng.randint(60, 220),
            "thickness": rng.randint(20, 60),
            "price": rng.randint(1, 40),
        }
        for i in range(12)
    ]
    stock = {
        "boards": boards,
        "allowances": request["allowances"],
        "seams": {"joint": "BUTT", "smallestPiece": 120, "clearance": 30, "most": 2},
        "search": {"work": 100, "seconds": SECONDS},
    }
    return json.dumps({**request["design"], "stock": stock}).encode()


def ask(seed):
    """Seconds of the answer, its status, whether the clock ended its search, and how often it was asked for again."""
    body = document(seed)
    for again in range(1000):
        request = urllib.request.Request(address, body, {"Content-Type": "application/json"})
        begin = time.monotonic()
        try:
            with urllib.request.urlopen(request, timeout=PATIENCE) as answer:
                text = answer.read()
                return time.monotonic() - begin, answer.status, b"SEARCH_ENDED_BY_CLOCK" in text, again
        except urllib.error.HTTPError as refused:
            if refused.code != 503:
                return time.monotonic() - begin, refused.code, False, again
            time.sleep(0.2)
    return PATIENCE, 503, False, again


with concurrent.futures.ThreadPoolExecutor(threads) as pool:
    answers = list(pool.map(ask, range(requests)))
times = sorted(answer[0] for answer in answers)
late = sum(one > SECONDS + BEYOND for one in times)
failed = sum(answer[1] != 200 for answer in answers)
print(
    f"stock: {requests} plans from {threads} threads, worst {times[-1]:.2f} s, median {statistics.median(times):.2f} s,"
    f" {late} later than {SECONDS + BEYOND:g} s, {failed} failed, {sum(answer[2] for answer in answers)} ended by the"
    f" clock, {sum(answer[3] for answer in answers)} sent away and asked for again"
)
sys.exit(1 if late or failed else 0)
