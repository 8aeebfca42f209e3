#!/usr/bin/env python3
"""Answers many designs in one request: batch.py designs.ndjson > answers.ndjson (a design a line; - for standard input).

The service's address stands in ORBWRIGHT_SERVICE, http://localhost:8080 if that is not set. Lines are sent while answers
are read, so files may be of any size. Exit codes: 0 every line was answered; 1 some lines were refused (each has a
problem in the answers, and a line on standard error); 2 the service did not answer. Needs Python's own library only.
"""

import http.client
import json
import os
import shutil
import sys
import threading
import urllib.parse


def main():
    if len(sys.argv) != 2:
        print("usage: batch.py designs.ndjson > answers.ndjson", file=sys.stderr)
        return 2
    service = urllib.parse.urlsplit(os.environ.get("ORBWRIGHT_SERVICE", "http://localhost:8080"))
    kind = http.client.HTTPSConnection if service.scheme == "https" else http.client.HTTPConnection
    connection = kind(service.hostname, service.port, timeout=60)
    refused = 0
    try:
        designs = sys.stdin.buffer if sys.argv[1] == "-" else open(sys.argv[1], "rb")
        connection.putrequest("POST", service.path.rstrip("/") + "/v1/batch")
        connection.putheader("Content-Type", "application/x-ndjson")
        connection.putheader("Transfer-Encoding", "chunked")
        connection.endheaders()
        # The service takes lines only as fast as its answers are read, so both have to go on at once.
        sender = threading.Thread(target=send, args=(designs, connection), daemon=True)
        sender.start()
        answer = connection.getresponse()
        if answer.status != 200:
            print(f"refused with {answer.status}: {json.load(answer)['detail']}", file=sys.stderr)
            return 2
        for line in answer:
            sys.stdout.buffer.write(line)
            if b'"problem":' in line[:40]:
                problem = json.loads(line)
                print(f"line {problem['line']}: {problem['problem']['detail']}", file=sys.stderr)
                refused += 1
        sender.join()
    except OSError as fault:
        print(f"no answer from {service.geturl()}: {fault}", file=sys.stderr)
        return 2
    return 1 if refused else 0


def send(designs, connection):
    """Sends the file in chunks of HTTP/1.1."""

    class Chunks:
        def write(self, piece):
            connection.send(b"%x\r\n" % len(piece) + piece + b"\r\n")

    shutil.copyfileobj(designs, Chunks())
    connection.send(b"0\r\n\r\n")


if __name__ == "__main__":
    sys.exit(main())
