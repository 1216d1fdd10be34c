"""Requests by the thousand, made from the samples under other ids and with other numbers, for measurements and for tests of
whole inboxes. Everything in them is invented.

As a program: inbox.py PROGRAM [COUNT...]   documents a second, peak memory, time of a second run, at each count (default 1000
5000 20000), with one thread and two at the first of them."""

import pathlib
import random
import re
import shutil
import subprocess
import sys
import tempfile
import time

ROOT = pathlib.Path(__file__).resolve().parents[2]
SAMPLES = ROOT / "sample_requests"
DATE = "2026-11-25"
ID = re.compile(r"(?m)(^id\s*=\s*|<id>\s*)([^\s<]+)")
# Numbers that may move a little without making a request absurd.
NUMBER = re.compile(r"(?m)((?:^|<)(?:throughput|speed|hours_per_day|days_per_year|viewing_distance)(?: = |>))"
                    r"(\d+(?:\.\d+)?)(?= )")


def samples():
    return sorted(path for path in SAMPLES.iterdir()
                  if path.suffix in (".ini", ".xml") and path.name != "catalogue.xml")


def write_inbox(folder, count, seed=1):
    """At least `count` requests in `folder`/in, at most a thousand files a folder, with the catalogue beside them; the same
    for the same seed. Returns how many requests."""
    chance = random.Random(seed)
    sources = [(path, path.read_text(encoding="utf-8")) for path in samples()]
    folder.mkdir(parents=True, exist_ok=True)
    shutil.copy(SAMPLES / "catalogue.xml", folder)
    requests = number = 0
    while requests < count:
        path, text = sources[number % len(sources)]
        text = NUMBER.sub(lambda m: m[1] + f"{float(m[2]) * chance.uniform(0.8, 1.0):.4g}", text)
        text, found = ID.subn(rf"\g<1>\g<2>-{number}", text)
        target = folder / "in" / f"{number // 1000:03}" / f"{number:06}-{path.name}"
        target.parent.mkdir(parents=True, exist_ok=True)
        target.write_text(text, encoding="utf-8")
        requests += found
        number += 1
    return requests


def run(program, folder, jobs, out="out"):
    """Wall seconds and peak MiB of one build, and its standard output."""
    report = folder / "time.txt"
    begin = time.perf_counter()
    done = subprocess.run(["/usr/bin/time", "-o", report, "-f", "%M", program, "build", "in", "-c", "catalogue.xml", "-o", out,
                           "-j", str(jobs), "--date", DATE], cwd=folder, stdout=subprocess.PIPE, stderr=subprocess.DEVNULL,
                          text=True)
    wall = time.perf_counter() - begin
    if done.returncode not in (0, 65):
        sys.exit(f"build ended with {done.returncode}")
    return wall, int(report.read_text().split()[-1]) / 1024, done.stdout


def measure(program, count, threads):
    with tempfile.TemporaryDirectory(prefix="swathspec_inbox.") as name:
        folder = pathlib.Path(name)
        requests = write_inbox(folder, count)
        for jobs in threads:
            shutil.rmtree(folder / "out", ignore_errors=True)
            wall, peak, lines = run(program, folder, jobs)
            issued = sum(line.startswith("issued ") for line in lines.splitlines())
            again, peak_again, lines = run(program, folder, jobs)
            unchanged = sum(line.startswith("unchanged ") for line in lines.splitlines())
            settled, _, _ = run(program, folder, jobs)
            print(f"{requests} requests, -j{jobs}: {issued} issued in {wall:.1f} s, {issued / wall:.1f} a second, "
                  f"{peak:.0f} MiB; again: {unchanged} unchanged in {again:.2f} s, {peak_again:.0f} MiB; "
                  f"once more: {settled:.2f} s", flush=True)


def main():
    program = str(pathlib.Path(sys.argv[1]).resolve())
    counts = [int(count) for count in sys.argv[2:]] or [1000, 5000, 20000]
    for i, count in enumerate(counts):
        measure(program, count, (1, 2) if i == 0 else (2,))


if __name__ == "__main__":
    main()
