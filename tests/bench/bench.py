"""Documents a second on two cores, core-milliseconds a document, peak memory, time to first PDF."""

import os
import pathlib
import re
import resource
import shutil
import statistics
import subprocess
import sys
import tempfile
import time

SAMPLES = pathlib.Path(__file__).resolve().parents[2] / "sample_requests"
COPIES = 400
ID = re.compile(r"(?m)(^id\s*=\s*|<id>\s*)([^\s<]+)")


def write_copies(folder):
    """COPIES files, each a sample with its ids made different; returns how many requests."""
    sources = sorted(p for p in SAMPLES.iterdir()
                     if p.suffix in (".ini", ".xml") and p.name != "catalogue.xml")
    shutil.copy(SAMPLES / "catalogue.xml", folder)
    requests = 0
    for number in range(COPIES):
        source = sources[number % len(sources)]
        text, count = ID.subn(rf"\g<1>\g<2>-{number}", source.read_text(encoding="utf-8"))
        (folder / f"{number:03}-{source.name}").write_text(text, encoding="utf-8")
        requests += count
    return requests


def run(program, source, output):
    """Wall seconds, core seconds and peak kilobytes of one build."""
    before = resource.getrusage(resource.RUSAGE_CHILDREN)
    begin = time.perf_counter()
    subprocess.run([program, "build", source, "-o", output, "--date", "2026-11-25"],
                   check=True, stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL)
    wall = time.perf_counter() - begin
    after = resource.getrusage(resource.RUSAGE_CHILDREN)
    cores = after.ru_utime + after.ru_stime - before.ru_utime - before.ru_stime
    return wall, cores, after.ru_maxrss


def first_pdf(program, source, output):
    """Seconds from the start of the program to the first whole PDF."""
    begin = time.perf_counter()
    process = subprocess.Popen([program, "build", source, "-o", output, "--date", "2026-11-25"],
                               stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL)
    while process.poll() is None and not list(output.glob("*.pdf")):
        time.sleep(0.0005)
    seconds = time.perf_counter() - begin
    if process.wait() != 0:
        sys.exit(f"{source} was not issued")
    return seconds


def main():
    program = sys.argv[1]
    os.sched_setaffinity(0, sorted(os.sched_getaffinity(0))[:2])
    with tempfile.TemporaryDirectory(prefix="swathspec_bench.") as name:
        folder = pathlib.Path(name)
        (folder / "in").mkdir()
        requests = write_copies(folder / "in")
        sources = sorted((folder / "in").glob("0*"))[:9]
        first = [first_pdf(program, source, folder / source.stem) for source in sources]
        wall, cores, peak = run(program, folder / "in", folder / "out")
        issued = len(list((folder / "out").glob("*.pdf")))
    if issued != requests:
        sys.exit(f"{issued} documents of {requests} requests")
    print(f"documents                  {issued}")
    print(f"documents a second         {issued / wall:.1f}   (2 cores)")
    print(f"core-milliseconds each     {cores / issued * 1e3:.1f}")
    print(f"peak resident memory       {peak / 1024:.0f} MiB")
    print(f"start to first PDF         {statistics.median(first) * 1e3:.0f} ms   (median of 9)")


main()
