#!/usr/bin/env python3
"""A case compiles with one token and does not with the other.

Usage: check.py COMPILER SOURCE_DIR CASE.cpp

The case names both tokens in its head, `// fails: A` and `// compiles: B`, and has TOKEN once below it. It must
fail for its type: an error that is none of the kinds below is a fault of the case.
"""
import re
import subprocess
import sys

KINDS = ("no match for", "conversion from", "could not convert", "cannot convert", "invalid operands",
         "no viable conversion", "cannot initialize", "no matching function")


def compiled(compiler, source_dir, case, token):
    return subprocess.run(
        [compiler, "-std=c++20", "-fsyntax-only", "-Wno-unused", "-I", source_dir, "-DTOKEN=" + token, case],
        capture_output=True, text=True, check=False)


def main():
    compiler, source_dir, case = sys.argv[1:]
    with open(case, encoding="utf-8") as file:
        text = file.read()
    fails = re.search(r"^// fails: (\S+)$", text, re.M)
    compiles = re.search(r"^// compiles: (\S+)$", text, re.M)
    if not fails or not compiles or fails[1] == compiles[1]:
        sys.exit("the case does not name two tokens")
    if len(re.findall(r"\bTOKEN\b", text)) != 1:
        sys.exit("TOKEN does not stand exactly once")
    twin = compiled(compiler, source_dir, case, compiles[1])
    if twin.returncode != 0:
        sys.exit("the twin does not compile:\n" + twin.stderr)
    wrong = compiled(compiler, source_dir, case, fails[1])
    if wrong.returncode == 0:
        sys.exit("compiles with " + fails[1])
    if not any(kind in wrong.stderr for kind in KINDS):
        sys.exit("fails for another reason:\n" + wrong.stderr)


if __name__ == "__main__":
    main()
