#!/usr/bin/env python3
"""Puts what src/bench/report.sh measured into sentences. Usage: summary.py FOLDER"""

import json
import statistics
import sys
from pathlib import Path


def scores(file):
    """Scores of a JMH result by the benchmark's class and method."""
    return {
        ".".join(result["benchmark"].split(".")[-2:]): result["primaryMetric"]["score"]
        for result in json.loads(file.read_text())
    }


def times(ratio):
    return f"{ratio:,.1f}" if ratio < 100 else f"{ratio:,.0f}"


def bands(folder):
    once = scores(folder / "once.json")
    closed = once["BandBenchmark.closedForm"]
    volume = once["BandBenchmark.volume"]
    print(f"one band's area in closed form: {closed:,.0f} ns; by quadrature (Commons Math, adaptive Gauss):")
    print(f"  one integral to 1e-12, breaks known: {times(once['BandBenchmark.alongRays'] / closed)} times as long")
    print(f"  an integral of integrals to 1e-9: {times(once['BandBenchmark.overPlan'] / closed)} times as long")
    print(f"one band's volume in closed form: {volume:,.0f} ns; by a boolean of meshes (manifold), prepared:")
    for line in (folder / "mesh.ndjson").read_text().splitlines():
        mesh = json.loads(line)
        print(
            f"  to {mesh['wanted']:g}, {mesh['triangles']:,} triangles: {times(mesh['nanoseconds'] / volume)} times as long"
        )
    print(
        f"a sheet: {once['SheetBenchmark.sheet']:.1f} us to compute, {once['AnswerBenchmark.write']:.1f} us to write as JSON"
    )


def cores(folder):
    single = scores(folder / "threads-1.json")["SheetBenchmark.sheet"]
    for file in sorted(folder.glob("threads-*.json"), key=lambda each: int(each.stem.split("-")[1])):
        threads = int(file.stem.split("-")[1])
        if threads > 1:
            ratio = scores(file)["SheetBenchmark.sheet"] / single
            print(f"sheets computed on {threads} cores: {ratio:.2f} times as many as on one")


def http(folder):
    rounds = {}
    for line in (folder / "http.txt").read_text().splitlines():
        name, *numbers = line.split()
        rounds.setdefault(name, []).append([float(number) for number in numbers])
    ratios = [sheet[0] / prepared[0] for sheet, prepared in zip(rounds["/v1/sheet"], rounds["/load/prepared"])]
    listed = ", ".join(f"{ratio:.2f}" for ratio in ratios)
    print(f"sheet against a prepared answer, over HTTP: {statistics.median(ratios):.2f} of its throughput ({listed})")
    for name, measured in rounds.items():
        rate, p50, p99, p999 = (statistics.median(column) for column in zip(*measured))
        print(f"  {name}: {rate:,.0f} a second; p50 {p50:.2f} ms, p99 {p99:.2f} ms, p99.9 {p999:.2f} ms")


def start(folder):
    median, fastest, resident = (folder / "first.txt").read_text().split()
    print(f"first sheet {median} ms after the start of the process (median; fastest {fastest} ms)")
    print(f"resident while idle, after one sheet: {resident} MiB")


def main(folder):
    bands(folder)
    cores(folder)
    http(folder)
    start(folder)


if __name__ == "__main__":
    main(Path(sys.argv[1]))
