#!/usr/bin/env python3
"""Prints the options of the Java machine that the Dockerfile starts the service with, a line each, but for those that size
the heap by the container and name the cache."""

import json
import re


def main():
    with open("Dockerfile") as file:
        text = file.read().replace("\\\n", "")
    words = json.loads(re.search(r"^ENTRYPOINT (\[.*\])", text, re.MULTILINE).group(1))
    built_in = re.search(r'--add-options="([^"]*)"', text).group(1).split()
    for word in built_in + words[1 : words.index("-jar")]:
        if word.startswith("-X") and "AOTCache" not in word and "RAMPercentage" not in word:
            print(word)


if __name__ == "__main__":
    main()
