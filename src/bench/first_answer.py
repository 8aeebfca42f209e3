#!/usr/bin/env python3
"""How long a command that starts the service takes to its first sheet, and how much memory it holds while idle.

Usage: first_answer.py TIMES PORT COMMAND...
Starts the command so many times, asks for a sheet until there is one, and prints "median_ms fastest_ms resident_mib": the
resident memory is that of the last start, ten seconds after its only answer.
"""

import http.client
import statistics
import subprocess
import sys
import time

DESIGN = "src/main/resources/designs/icosahedron-mixed.json"
IDLE_SECONDS = 10
PATIENCE_SECONDS = 120


def ask(port, body):
    connection = http.client.HTTPConnection("127.0.0.1", port, timeout=PATIENCE_SECONDS)
    try:
        connection.request("POST", "/v1/sheet", body, {"Content-Type": "application/json"})
        return connection.getresponse().status == 200
    except ConnectionRefusedError:
        return False
    finally:
        connection.close()


def start(command, port, body):
    """The process and the seconds until its first sheet."""
    begin = time.monotonic()
    process = subprocess.Popen(command, stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL)
    while not ask(port, body):
        if process.poll() is not None or time.monotonic() - begin > PATIENCE_SECONDS:
            process.kill()
            sys.exit("first_answer: the service did not answer")
        time.sleep(0.002)
    return process, time.monotonic() - begin


def resident(process):
    with open(f"/proc/{process.pid}/status") as status:
        return next(int(line.split()[1]) / 1024 for line in status if line.startswith("VmRSS"))


def main(times, port, command):
    with open(DESIGN, "rb") as design:
        body = design.read()
    took = []
    for i in range(times):
        process, seconds = start(command, port, body)
        took.append(seconds * 1000)
        if i + 1 == times:
            time.sleep(IDLE_SECONDS)
            memory = resident(process)
        process.terminate()
        process.wait()
    print(f"{statistics.median(took):.0f} {min(took):.0f} {memory:.0f}")


if __name__ == "__main__":
    main(int(sys.argv[1]), int(sys.argv[2]), sys.argv[3:])
