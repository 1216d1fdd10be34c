"""Runs the program that prints our numbers: CROSS_VALUES names it."""
import os
import subprocess


def ours(what, rows=()):
    """Lines of answers, each split at tabs."""
    text = "".join(" ".join(repr(x) for x in row) + "\n" for row in rows)
    done = subprocess.run([os.environ["CROSS_VALUES"], what], input=text, capture_output=True, text=True,
                          check=True)
    return [line.split("\t") for line in done.stdout.splitlines()]
