"""Runs a clang tool over the files of a compilation database, one a core.

usage: compiled.py syntax|tidy BUILD [FILE...]    no FILE: every file of the tree in the database
A file that the tool found clean is not looked at again while its preprocessed text, the flags, the
settings and the tool stay the same, wherever the tree stands (swathspec/KIND.clean in the user's
cache, as ccache keeps what was compiled).
Exits 1 when the tool finds fault with any file, 2 when there is nothing to look at.
"""
import concurrent.futures
import glob
import hashlib
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


def store_path(kind, build):
    """Where the states that were found clean are kept; in the build where no cache may be written."""
    cache = os.environ.get("XDG_CACHE_HOME") or os.path.expanduser("~/.cache")
    folder = os.path.join(cache, "swathspec")
    try:
        os.makedirs(folder, exist_ok=True)
    except OSError:
        folder = build
    return os.path.join(folder, kind + ".clean")


def run(command, directory):
    """Bytes that are no text, as a source with other encodings may hold, are shown as numbers."""
    return subprocess.run(command, cwd=directory, capture_output=True, encoding="utf-8",
                          errors="backslashreplace", check=False)


def settings_of(kind):
    """The tool and what it is told to look for."""
    if kind == "syntax":
        return [run(["clang++-14", "--version"], ROOT).stdout]
    texts = [run(["clang-tidy-14", "--version"], ROOT).stdout]
    for path in sorted(glob.glob(os.path.join(ROOT, "**", ".clang-tidy"), recursive=True)):
        with open(path, encoding="utf-8") as file:
            texts.append(file.read())
    return texts


def state_of(entry, build, settings):
    """What a verdict on this file rests on, as a digest; empty when it is unknown. Of the places of
    tree and build nothing is left in it.
    """
    words = syntax_command(entry)
    flags = " ".join(words)
    words[words.index("-fsyntax-only")] = "-E"
    words.append("-C")  # a comment may silence a check
    text = run(words, entry["directory"])
    if text.returncode:
        return ""
    parts = "\0".join([flags, text.stdout, *settings])
    placeless = parts.replace(os.path.realpath(build), "BUILD").replace(ROOT, "ROOT")
    return hashlib.sha256(placeless.encode()).hexdigest()


def command_of(kind, build, entry, path):
    if kind == "syntax":
        return syntax_command(entry)
    return ["clang-tidy-14", "--quiet", "--extra-arg=-Wno-unknown-warning-option", "-p", build, path]


def check(task):
    """(path, faults found, text, state), the state of a file found clean."""
    kind, build, entry, path, clean, settings = task
    state = state_of(entry, build, settings)
    if state and state in clean:
        return path, 0, "", state
    done = run(command_of(kind, build, entry, path), entry["directory"])
    text = done.stdout + done.stderr * bool(done.returncode)
    return path, done.returncode, text, "" if done.returncode else state


def read_clean(store):
    if not os.path.exists(store):
        return set()
    with open(store, encoding="ascii") as file:
        return set(file.read().split())


def main(kind, build, wanted):
    wanted = {os.path.realpath(path) for path in wanted}
    store = store_path(kind, build)
    clean, settings = read_clean(store), settings_of(kind)
    tasks = [(kind, build, entry, path, clean, settings)
             for path, entry in dict(entries(build)).items() if not wanted or path in wanted]
    if not tasks:
        print("no file to check")
        return 2
    faults = 0
    with concurrent.futures.ThreadPoolExecutor(os.cpu_count()) as pool:
        for path, code, text, state in pool.map(check, tasks):
            if code:
                faults += 1
                print(os.path.relpath(path, ROOT), text, sep="\n", flush=True)
            elif state and state not in clean:
                with open(store, "a", encoding="ascii") as file:
                    file.write(state + "\n")
    print(f"{kind}: {len(tasks)} files, {faults} with faults")
    return 1 if faults else 0


if __name__ == "__main__":
    sys.exit(main(sys.argv[1], sys.argv[2], sys.argv[3:]))
