#!/usr/bin/env python3
"""Sends what no honest caller sends to a running service: slow, oversize, truncated, garbage and pipelined requests.

After and during each the service has to answer a normal request within a second, and it never answers a 5xx except 503.
A line for each attack; ends with 1 if one of them failed. Usage: src/load/hostile.py http://127.0.0.1:8080
"""

import json
import pathlib
import random
import re
import socket
import struct
import sys
import time
import urllib.parse
import urllib.request

SEED = 20260101
NORMAL_WITHIN = 1.0
# A body may take 30 s and a pause within it 10 s (orbwright.limits.body-time, quarkus.http.read-timeout).
PATIENCE = 45
DESIGN = (
    pathlib.Path(__file__).parents[1] / "main/resources/designs/icosahedron-mixed.json"
).read_bytes().strip()

address = urllib.parse.urlsplit(sys.argv[1])
rng = random.Random(SEED)
failures = 0


def connect():
    return socket.create_connection((address.hostname, address.port), timeout=PATIENCE)


def head(length, path="/v1/sheet", method="POST", extra=""):
    return (
        f"{method} {path} HTTP/1.1\r\nHost: {address.netloc}\r\nContent-Type: application/json\r\n"
        f"Content-Length: {length}\r\n{extra}\r\n"
    ).encode()


def received(connection, patience=PATIENCE):
    """All that comes until the service closes, is silent for the given time, or resets."""
    connection.settimeout(patience)
    parts = []
    try:
        while part := connection.recv(65536):
            parts.append(part)
    except (TimeoutError, ConnectionError):
        pass
    return b"".join(parts)


def statuses(answer):
    return [int(status) for status in re.findall(rb"HTTP/1\.[01] (\d{3}) ", answer)]


def exchange(data, patience=3.0, half_close=False):
    """The statuses that are answered to some bytes."""
    with connect() as connection:
        try:
            connection.sendall(data)
            if half_close:
                connection.shutdown(socket.SHUT_WR)
        except ConnectionError:
            pass  # Refused before all was sent, which is the service's right.
        return statuses(received(connection, patience))


def normal():
    """How long a normal request takes, in seconds; infinite if it is not answered as it should be."""
    begin = time.monotonic()
    request = urllib.request.Request(
        sys.argv[1].rstrip("/") + "/v1/sheet", data=DESIGN, headers={"Content-Type": "application/json"}
    )
    try:
        with urllib.request.urlopen(request, timeout=10) as answer:
            sheet = json.load(answer)
            if answer.status != 200 or "angles" not in sheet:
                return float("inf")
    except OSError:
        return float("inf")
    return time.monotonic() - begin


def report(name, answered, expected=None, during=0.0):
    """Judges one attack: the statuses that it got, and a normal request during and after it."""
    global failures
    took = max(during, normal())
    faults = []
    if took > NORMAL_WITHIN:
        faults.append(f"a normal request took {took:.2f} s")
    if any(status >= 500 and status != 503 for status in answered):
        faults.append("the service took the blame")
    if expected is not None and (not answered or not set(answered) <= expected):
        faults.append(f"expected {sorted(expected)}")
    failures += bool(faults)
    counts = ", ".join(f"{answered.count(status)} x {status}" for status in sorted(set(answered)))
    verdict = "FAILED: " + "; ".join(faults) if faults else "ok"
    print(f"{name}: {counts or 'no answer'}; normal request {took * 1000:.0f} ms; {verdict}", flush=True)


def slow(name, start, piece, callers, expected):
    """Many callers who send a little every second until they are refused, and what others see meanwhile."""
    connections = [connect() for _ in range(callers)]
    for connection in connections:
        connection.sendall(start)
    worst = 0.0
    begin = time.monotonic()
    waiting = list(connections)
    answers = []
    while waiting and time.monotonic() - begin < PATIENCE:
        time.sleep(1)
        worst = max(worst, normal())
        for connection in list(waiting):
            try:
                connection.settimeout(0.01)
                connection.sendall(piece)
                answers.append(connection.recv(65536))
                waiting.remove(connection)
            except TimeoutError:
                continue
            except ConnectionError:
                waiting.remove(connection)
    for connection in connections:
        connection.close()
    answered = [status for answer in answers for status in statuses(answer)]
    report(f"{name}, {callers} callers, {len(waiting)} never sent away", answered, expected, worst)


def garbage():
    answered = []
    for _ in range(200):
        answered += exchange(rng.randbytes(rng.randrange(1, 2000)) + b"\r\n\r\n", 0.5, half_close=True)
    report("random bytes for a request", answered)
    answered = []
    for _ in range(200):
        body = rng.randbytes(rng.randrange(1, 5000))
        answered += exchange(head(len(body), extra="Connection: close\r\n") + body)
    report("random bytes for a body", answered, {400})
    answered = []
    for _ in range(300):
        data = bytearray(head(len(DESIGN), extra="Connection: close\r\n"))
        for _ in range(rng.randrange(1, 4)):
            data[rng.randrange(len(data))] = rng.randrange(256)
        answered += exchange(bytes(data) + DESIGN, 0.5, half_close=True)
    report("damaged request lines and headers", answered)


def framing():
    closing = "Connection: close\r\n"
    chunked = f"POST /v1/sheet HTTP/1.1\r\nHost: {address.netloc}\r\nContent-Type: application/json\r\n" + closing
    cases = {
        "a length that is no number": head("abc", extra=closing) + DESIGN,
        "a negative length": head(-1, extra=closing) + DESIGN,
        "a length beyond 64 bits": head("9" * 30, extra=closing) + DESIGN,
        "two different lengths": head(len(DESIGN), extra=f"Content-Length: 5\r\n{closing}") + DESIGN,
        "length and chunks": head(len(DESIGN), extra=f"Transfer-Encoding: chunked\r\n{closing}") + DESIGN,
        "a chunk size that is no number": (chunked + "Transfer-Encoding: chunked\r\n\r\nxyz\r\n").encode() + DESIGN,
        "a chunk of 2 GiB announced": (chunked + "Transfer-Encoding: chunked\r\n\r\n7fffffff\r\n").encode() + b"{",
        "an unknown transfer coding": (chunked + "Transfer-Encoding: rubbish\r\n\r\n").encode() + DESIGN,
        "no host": b"GET /v1/solids HTTP/1.1\r\nConnection: close\r\n\r\n",
        "an unknown version": b"GET /v1/solids HTTP/9.9\r\nHost: x\r\nConnection: close\r\n\r\n",
        "an unknown method": head(len(DESIGN), method="BREW", extra=closing) + DESIGN,
        "a header without a colon": head(len(DESIGN), extra="nonsense\r\n" + closing) + DESIGN,
        "a NUL in a header": head(len(DESIGN), extra="X-Request-Id: a\0b\r\n" + closing) + DESIGN,
        "a broken escape in the path": head(len(DESIGN), path="/v1/%zz", extra=closing) + DESIGN,
        "a path outside the root": head(len(DESIGN), path="/../../etc/passwd", extra=closing) + DESIGN,
        "an upgrade to HTTP/2": head(
            len(DESIGN), extra="Connection: Upgrade, HTTP2-Settings\r\nUpgrade: h2c\r\nHTTP2-Settings: AAAA\r\n"
        ) + DESIGN,
        "HTTP/2 without asking": b"PRI * HTTP/2.0\r\n\r\nSM\r\n\r\n" + rng.randbytes(200),
        "a TLS greeting": bytes.fromhex("16030100c8010000c40303") + rng.randbytes(200),
    }
    for name, data in cases.items():
        report(name, exchange(data, 1.0, half_close=True))


def oversize():
    report("2 MiB announced", exchange(head(2 << 20)), {413})
    report("2 MiB sent", exchange(head(2 << 20) + b" " * (2 << 20)), {413})
    part = b"%x\r\n" % 65536 + b" " * 65536 + b"\r\n"
    chunked = f"POST /v1/sheet HTTP/1.1\r\nHost: {address.netloc}\r\nContent-Type: application/json\r\n"
    chunked = (chunked + "Transfer-Encoding: chunked\r\n\r\n").encode()
    report("4 MiB in chunks", exchange(chunked + part * 64 + b"0\r\n\r\n"), {413})
    report("1 TiB announced", exchange(head(1 << 40)), {413})
    report("an address of 5000 characters", exchange(head(0, path="/v1/cell/x?" + "a" * 5000)), {414})
    report("an address of 1 MiB", exchange(head(0, path="/v1/cell/x?" + "a" * (1 << 20))), {414})
    report("headers of 20 KiB", exchange(head(0, extra="X-Filler: " + "a" * 20480 + "\r\n")), {431})
    report("headers of 1 MiB", exchange(head(0, extra="X-Filler: aaaaaaaa\r\n" * 55000)), {431})
    nested = b"[" * 500_000 + b"]" * 500_000
    report("a million brackets", exchange(head(len(nested)) + nested), {400})
    number = b'{"unit":' + b"9" * 1_000_000 + b"}"
    report("a number of a million digits", exchange(head(len(number)) + number), {400})
    names = b"{" + b",".join(b'"k%d":0' % i for i in range(90_000)) + b"}"
    report("90,000 unknown fields", exchange(head(len(names), extra="Connection: close\r\n") + names, 10), {400})


def truncated():
    answered = []
    for _ in range(100):
        body = DESIGN[: rng.randrange(len(DESIGN))]
        answered += exchange(head(len(body), extra="Connection: close\r\n") + body)
    report("bodies cut short, as announced", answered, {400})
    answered = []
    for _ in range(100):
        answered += exchange(head(len(DESIGN)) + DESIGN[: rng.randrange(len(DESIGN))], 0.2, half_close=True)
    report("bodies cut short, half closed", answered)
    for _ in range(200):
        with connect() as connection:
            connection.sendall(head(len(DESIGN)) + DESIGN[: rng.randrange(len(DESIGN))])
    report("bodies cut short, closed", [])
    for _ in range(200):
        with connect() as connection:
            connection.sendall(head(len(DESIGN)) + DESIGN)
            connection.setsockopt(socket.SOL_SOCKET, socket.SO_LINGER, struct.pack("ii", 1, 0))
    report("reset before the answer", [])
    report("half closed after a whole request", exchange(head(len(DESIGN)) + DESIGN, half_close=True))


def pipelined():
    many = 100
    data = (head(len(DESIGN)) + DESIGN) * many
    answered = exchange(data)
    report(f"{many} requests at once", answered, {200})
    if len(answered) != many:
        report(f"{many} requests at once, {len(answered)} answered", [], {200})
    answered = exchange((head(len(DESIGN)) + DESIGN + head(2) + b"{}") * 20)
    report("good and bad requests in turn", answered, {200, 400})
    data = head(len(DESIGN)) + DESIGN + rng.randbytes(3000)
    report("garbage behind a good request", exchange(data, half_close=True))


def unread():
    """Callers who ask for much and take nothing."""
    path = "/v1/bodies/sphere"
    connections = [connect() for _ in range(20)]
    for connection in connections:
        connection.setsockopt(socket.SOL_SOCKET, socket.SO_RCVBUF, 4096)
        connection.sendall((head(len(DESIGN), path=path) + DESIGN) * 5)
    worst = 0.0
    for _ in range(5):
        time.sleep(1)
        worst = max(worst, normal())
    for connection in connections:
        connection.close()
    report("20 callers who do not read their answers", [], during=worst)


for _ in range(30):
    normal()
framing()
garbage()
oversize()
truncated()
pipelined()
unread()
# The HTTP server knows no time for headers, so these cost a connection each until they are too large.
slow("slow headers", b"GET /v1/solids HTTP/1.1\r\nHost: x\r\n", b"X: y\r\n", 100, None)
slow("slow bodies", head(100_000), b" ", 100, {408})
# The HTTP server closes the connection at the pause's end, so that the answer often does not arrive.
slow("silent bodies", head(len(DESIGN)) + b"{", b"", 100, None)
slow("slow chunks", head(0).replace(b"Content-Length: 0", b"Transfer-Encoding: chunked"), b"1\r\n \r\n", 100, {408})
print(f"{failures} attacks failed" if failures else "every attack was withstood")
sys.exit(bool(failures))
