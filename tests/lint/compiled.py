"""Runs a clang tool over the files of a compilation database, two at a time.

usage: compiled.py syntax|tidy BUILD [FILE...]    no FILE: every file of the tree in the database
Exits 1 when the tool finds fault with any file, 2 when there is nothing to look at.
"""
import concurrent.futures
import json
import os
import shlex
import subprocess
import sys

ROOT = os.path.realpath(os.path.join(os.path.dirname(__file__), "..", ".."))


def entries(build):
    """The database's own files by path, generated and third-party ones left out."""
    with open(os.path.join(build, "compile_commands.json"), encoding="utf-8") as file:
        for entry in json.load(file):
            path = os.path.realpath(os.path.join(entry["directory"], entry["file"]))
            hidden = os.path.relpath(path, ROOT).startswith(".")
            if path.startswith(ROOT + os.sep) and path.endswith(".cpp") and not hidden:
                yield path, entry


def syntax_command(entry):
    """The compiler's command with clang in its place, checking only."""
    words = shlex.split(entry["command"])
    while words and "++" not in os.path.basename(words[0]):
        words.pop(0)
    output = words.index("-o")
    del words[output:output + 2]
    words.remove("-c")
    return ["clang++-14", "-fsyntax-only", "-Wno-unknown-warning-option"] + words[1:]


def check(task):
    command, directory, path = task
    done = subprocess.run(command, cwd=directory, capture_output=True, text=True, check=False)
    return path, done.returncode, done.stdout + (done.stderr if done.returncode else "")


def main(kind, build, wanted):
    wanted = {os.path.realpath(path) for path in wanted}
    tasks = {}
    for path, entry in entries(build):
        if wanted and path not in wanted:
            continue
        command = ["clang-tidy-14", "--quiet", "--extra-arg=-Wno-unknown-warning-option", "-p",
                   build, path] if kind == "tidy" else syntax_command(entry)
        tasks[path] = (command, entry["directory"], path)
    if not tasks:
        print("no file to check")
        return 2
    faults = 0
    with concurrent.futures.ThreadPoolExecutor(os.cpu_count()) as pool:
        for path, code, text in pool.map(check, tasks.values()):
            if code:
                faults += 1
                print(os.path.relpath(path, ROOT), text, sep="\n")
    print(f"{kind}: {len(tasks)} files, {faults} with faults")
    return 1 if faults else 0


if __name__ == "__main__":
    sys.exit(main(sys.argv[1], sys.argv[2], sys.argv[3:]))
