#!/usr/bin/env python3
"""Sends many bodies that are never complete to a running service on this machine, and demands that others are answered.

Three attacks, each for some seconds: connections that send a body byte by byte, one HTTP/2 connection with many unfinished
bodies, and batches of nothing but empty lines. During each of them health and a normal sheet have to be answered within
two seconds. After the last a batch of the same caller has to be answered. Needs nothing but Python 3.
Ends with 1 if an answer failed. Usage: src/load/slow_bodies.py http://127.0.0.1:8080
"""

import pathlib
import socket
import struct
import sys
import threading
import time
import urllib.error
import urllib.parse
import urllib.request

CONNECTIONS = 500
STREAMS = 250
BATCHES = 16
SECONDS = 12
WITHIN = 2.0
# A batch of empty lines is ended after 30 s (orbwright.limits.line-time).
BATCH_PATIENCE = 45
DESIGN = pathlib.Path(__file__).parents[1] / "main/resources/designs/icosahedron-mixed.json"

address = urllib.parse.urlsplit(sys.argv[1])
if address.hostname not in ("127.0.0.1", "localhost", "::1"):
    sys.exit("slow_bodies: the service has to run on this machine")
design = DESIGN.read_bytes()
failures = 0


def connect():
    return socket.create_connection((address.hostname, address.port), timeout=5)


def head(path, kind, length):
    return (
        f"POST {path} HTTP/1.1\r\nHost: {address.netloc}\r\nContent-Type: {kind}\r\n{length}\r\n\r\n"
    ).encode()


def ask(path, body=None, kind="application/json"):
    """The status, and the seconds that it took."""
    request = urllib.request.Request(sys.argv[1] + path, data=body, headers={"Content-Type": kind})
    begin = time.monotonic()
    try:
        with urllib.request.urlopen(request, timeout=30) as answer:
            answer.read()
            status = answer.status
    except urllib.error.HTTPError as error:
        status = error.code
    except OSError:
        status = 0
    return status, time.monotonic() - begin


def others_are_answered(attack, alive):
    """Asks as others do while an attack goes on."""
    global failures
    slowest = 0.0
    wrong = []
    end = time.monotonic() + SECONDS
    while time.monotonic() < end:
        alive()
        for path, body in (("/q/health/ready", None), ("/v1/sheet", design)):
            status, took = ask(path, body)
            slowest = max(slowest, took)
            if status != 200 or took > WITHIN:
                wrong.append(f"{path} {status} after {took:.1f} s")
        time.sleep(0.5)
    failures += bool(wrong)
    print(f"{'FAILED' if wrong else 'passed'}: {attack}; slowest answer {slowest:.2f} s {'; '.join(wrong[:3])}", flush=True)


def send(connections, data):
    for each in list(connections):
        try:
            each.sendall(data)
        except OSError:
            connections.remove(each)


def drip():
    connections = []
    for _ in range(CONNECTIONS):
        each = connect()
        each.sendall(head("/v1/sheet", "application/json", "Content-Length: 5000") + b"{")
        connections.append(each)
    others_are_answered(f"{CONNECTIONS} connections drip a body", lambda: send(connections, b" "))
    for each in connections:
        each.close()


def frame(kind, flags, stream, payload):
    return struct.pack(">I", len(payload))[1:] + bytes((kind, flags)) + struct.pack(">I", stream) + payload


def literal(name, value):
    """A header that no table holds (RFC 7541, 6.2.2)."""
    return b"\x00" + bytes((len(name),)) + name.encode() + bytes((len(value),)) + value.encode()


def streams():
    connection = connect()
    connection.sendall(b"PRI * HTTP/2.0\r\n\r\nSM\r\n\r\n" + frame(4, 0, 0, b""))
    threading.Thread(target=drain, args=(connection,), daemon=True).start()
    fields = (
        b"\x83\x86"
        + literal(":path", "/v1/sheet")
        + literal(":authority", address.netloc)
        + literal("content-type", "application/json")
        + literal("content-length", "5000")
    )
    for number in range(STREAMS):
        connection.sendall(frame(1, 4, 2 * number + 1, fields) + frame(0, 0, 2 * number + 1, b"{"))
    others_are_answered(f"one HTTP/2 connection with {STREAMS} unfinished bodies", lambda: None)
    connection.close()


def drain(connection):
    try:
        while connection.recv(65536):
            pass
    except OSError:
        pass


def batches():
    global failures
    connections = []
    for _ in range(BATCHES):
        each = connect()
        each.sendall(head("/v1/batch", "application/x-ndjson", "Transfer-Encoding: chunked") + b"1\r\n\n\r\n")
        connections.append(each)
    begin = time.monotonic()
    others_are_answered(f"{BATCHES} batches of empty lines", lambda: send(connections, b"1\r\n\n\r\n"))
    line = design.replace(b"\n", b" ") + b"\n"
    status = 0
    while status != 200 and time.monotonic() - begin < BATCH_PATIENCE:
        send(connections, b"1\r\n\n\r\n")
        status, _ = ask("/v1/batch", line, "application/x-ndjson")
        time.sleep(1)
    failures += status != 200
    print(f"{'passed' if status == 200 else 'FAILED'}: the batch of another is answered after {time.monotonic() - begin:.0f} s")
    for each in connections:
        each.close()


drip()
streams()
batches()
sys.exit(failures > 0)
