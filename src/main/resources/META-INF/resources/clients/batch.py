#!/usr/bin/env python3
"""Answers many designs in one request: batch.py designs.ndjson > answers.ndjson (a design a line; - for standard input).

Set the service's address in ORBWRIGHT_SERVICE. Without it the address is http://localhost:8080. Where the service asks
for a key, set it in ORBWRIGHT_KEY. Lines are sent while answers are read, so files may be of any size. Exit codes: 0 every
line was answered without a STOP; 1 some lines were refused, or have a STOP (each has a line on standard error); 2 the
designs cannot be read, the service did not answer or refuses the whole, or its answer breaks off. Needs Python's own
library only.
"""

import http.client
import json
import os
import re
import socket
import sys
import threading
import urllib.parse

ANSWER = re.compile(rb'\{"line":(\d+),"(\w+)":')
PIECE = 1 << 16
# What the service takes for an empty line.
BLANKS = b" \t\n\r\x0b\x0c\x1c\x1d\x1e\x1f"


def main():
    if len(sys.argv) != 2:
        print("usage: batch.py designs.ndjson > answers.ndjson", file=sys.stderr)
        return 2
    try:
        designs = sys.stdin.buffer if sys.argv[1] == "-" else open(sys.argv[1], "rb")
    except OSError as fault:
        print(f"{sys.argv[1]}: cannot be read: {fault.strerror}", file=sys.stderr)
        return 2
    service = urllib.parse.urlsplit(os.environ.get("ORBWRIGHT_SERVICE", "http://localhost:8080"))
    try:
        return answered(designs, service)
    except (OSError, http.client.HTTPException) as fault:
        print(f"no answer from {service.geturl()}: {fault}", file=sys.stderr)
        return 2


def answered(designs, service):
    """Sends the designs and writes their answers; the exit code."""
    kind = http.client.HTTPSConnection if service.scheme == "https" else http.client.HTTPConnection
    connection = kind(service.hostname, service.port, timeout=60)
    connection.putrequest("POST", service.path.rstrip("/") + "/v1/batch")
    connection.putheader("Content-Type", "application/x-ndjson")
    connection.putheader("Transfer-Encoding", "chunked")
    if os.environ.get("ORBWRIGHT_KEY"):
        connection.putheader("X-API-Key", os.environ["ORBWRIGHT_KEY"])
    connection.endheaders()
    # The service takes lines only as fast as its answers are read, so both have to go on at once.
    sender = Sender(designs, connection)
    sender.start()
    answer = connection.getresponse()
    if answer.status != 200:
        print(f"refused with {answer.status}: {answer.read().decode(errors='replace')}", file=sys.stderr)
        return 2
    code = 0
    last = 0
    for line in answer:
        sys.stdout.buffer.write(line)
        known = ANSWER.match(line)
        if not known or not line.endswith(b"\n"):
            break
        last = int(known[1])
        if known[2] == b"problem":
            print(f"line {last}: {json.loads(line)['problem']['detail']}", file=sys.stderr)
            code = 1
        elif b'"severity":"STOP"' in line:
            print(f"line {last}: answered with a STOP: do not cut this", file=sys.stderr)
            code = 1
    sender.join()
    if sender.fault:
        print(f"the designs were not sent whole: {sender.fault}", file=sys.stderr)
        return 2
    # An answer that breaks off looks like one that ends.
    if last != sender.last:
        print(f"the answer of {service.geturl()} breaks off after line {last} of {sender.last}", file=sys.stderr)
        return 2
    return code


class Sender(threading.Thread):
    """Sends the designs in chunks of HTTP/1.1, and counts their lines."""

    def __init__(self, designs, connection):
        super().__init__(daemon=True)
        self.designs = designs
        self.connection = connection
        self.last = 0
        self.fault = None

    def run(self):
        try:
            number = 0
            for lines in iter(lambda: self.designs.readlines(PIECE), []):
                for line in lines:
                    number += 1
                    if line.strip(BLANKS):
                        self.last = number
                piece = b"".join(lines)
                self.connection.send(b"%x\r\n" % len(piece) + piece + b"\r\n")
            self.connection.send(b"0\r\n\r\n")
        except Exception as fault:
            self.fault = fault
            # Nothing more comes: the service's answer ends, and so does the wait for it.
            if self.connection.sock:
                self.connection.sock.shutdown(socket.SHUT_WR)


if __name__ == "__main__":
    sys.exit(main())
