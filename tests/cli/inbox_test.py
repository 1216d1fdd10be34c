"""The inbox and its archive on a real file system: what a change of price re-issues, two runs at once, limits of the
system, progress on a terminal, verify, index, compare, parts."""

import csv
import hashlib
import io
import json
import os
import pathlib
import pty
import re
import resource
import select
import shutil
import signal
import subprocess
import time
import unittest

from support import DATE, PROGRAM, SAMPLES, Desk

DAY = 86400
FIRST = 1790000000  # 2026-09-21


class Samples(Desk):
    """The sample requests without dates of their own, so that the day of the run counts."""

    def setUp(self):
        super().setUp()
        for path in SAMPLES.iterdir():
            if path.suffix in (".ini", ".xml") and path.name != "catalogue.xml":
                text = re.sub(r"(?m)^date *=.*\n|<date>[^<]*</date>", "", path.read_text(encoding="utf-8"))
                target = self.folder / "in" / path.name
                target.parent.mkdir(exist_ok=True)
                target.write_text(text, encoding="utf-8")

    def build(self, *arguments, day=0, expect=0):
        done = self.run_program("build", "in", *arguments, expect=expect,
                                env={"SOURCE_DATE_EPOCH": str(FIRST + day * DAY)})
        lines = [line.split(" ", 2) for line in done.stdout.splitlines()]
        return {stem.rsplit("_", 1)[0]: status for status, _, stem in lines}, done

    def using(self, row):
        """Issues whose figures name a row of the catalogue: its price stands in the parts list, in the cost of an
        alternative, or in a warning about its age."""
        return {path.name.rsplit("_", 1)[0] for path in (self.folder / "specifications").glob("*.json")
                if re.search(re.escape(row) + r"\b", path.read_text(encoding="utf-8"))}

    def change_price(self, row, before, after):
        kind, name = row.split(".", 1)
        path = self.folder / "catalogue.xml"
        text = path.read_text(encoding="utf-8")
        place = text.index(f'<{kind} name="{name}">')
        self.assertIn(f"<price>{before}</price>", text[place:place + 600])
        path.write_text(text[:place] + text[place:].replace(f"<price>{before}</price>", f"<price>{after}</price>", 1),
                        encoding="utf-8")

    def test_a_changed_price_reissues_exactly_the_requests_that_used_it(self):
        first, _ = self.build()
        self.assertEqual(set(first.values()), {"issued"})
        self.assertEqual(set(self.build(day=1)[0].values()), {"unchanged"})
        used = self.using("dryer.DR-600")
        self.assertTrue(0 < len(used) < len(first), used)
        self.change_price("dryer.DR-600", "14800 EUR", "14900 EUR")
        before = self.issued()
        same_day, done = self.build(expect=73)
        self.assertEqual({name for name, status in same_day.items() if status == "refused"}, used)
        self.assertEqual({status for name, status in same_day.items() if name not in used}, {"unchanged"})
        self.assertEqual(self.issued(), before)
        later, _ = self.build(day=2)
        self.assertEqual({name for name, status in later.items() if status == "issued"}, used)
        self.assertEqual({status for name, status in later.items() if name not in used}, {"unchanged"})
        self.check_archive()
        self.assertEqual(set(self.build(day=3)[0].values()), {"unchanged"})

    def test_work_data_never_change_what_comes_out(self):
        self.build()
        with_data = self.build(day=1)[1]
        before = self.issued()
        shutil.rmtree(self.folder / "specifications/.swathspec")
        without = self.build(day=1)[1]
        self.assertEqual(with_data.stdout, without.stdout)
        self.assertEqual(with_data.stderr, without.stderr)
        self.assertEqual(self.issued(), before)

    def test_overview_and_log(self):
        done = self.run_program("build", "in", "--date", DATE)
        rows = list(csv.DictReader(io.StringIO(self.issued()["overview.csv"].decode(), newline="")))
        self.assertEqual(list(rows[0]), ["id", "revision", "date", "title", "customer", "verdict", "head", "heads_total",
                                         "capital", "ownership", "currency", "unpriced", "lead_time_days",
                                         "open_questions", "pdf"])
        self.assertEqual(sorted(row["pdf"][:-4] for row in rows), self.check_archive())
        page = self.issued()["overview.html"].decode()
        for row in rows:
            figures = json.loads((self.folder / "specifications" / (row["pdf"][:-4] + ".json")).read_text())
            self.assertEqual(row["verdict"], figures["verdict"])
            self.assertEqual(int(row["open_questions"]), len({question["code"] for question in figures["questions"]}))
            if "cost" in figures:
                self.assertEqual(float(row["capital"]), figures["cost"]["capital"])
                self.assertEqual(float(row["ownership"]), figures["cost"]["ownership"])
                self.assertEqual(int(row["heads_total"]), figures["chosen"]["heads_total"])
                self.assertEqual(int(row["unpriced"]), figures["bom_unpriced"])
            self.assertIn(f'href="{row["pdf"]}"', page)
        log = [json.loads(line) for line in (self.folder / "specifications/run.jsonl").read_text().splitlines()]
        self.assertEqual([entry["stem"] for entry in log], [line.split()[2] for line in done.stdout.splitlines()])
        catalogue = hashlib.sha256((self.folder / "catalogue.xml").read_bytes()).hexdigest()
        for entry in log:
            self.assertEqual(entry["catalogue"]["sha256"], catalogue)
            self.assertGreater(entry["seconds"], 0)

    def test_closing_table(self):
        (self.folder / "in/bad.ini").write_text("[request]\nid = bad\n")
        _, done = self.build(expect=65)
        table = done.stderr[done.stderr.rindex("             requests"):].splitlines()
        counts = {line.split()[0]: int(line.split()[1]) for line in table[1:-1]}
        self.assertEqual(counts["failed"], 1)
        self.assertEqual(sum(counts.values()), int(table[-1].split()[0]))
        for line in table[1:-1]:
            place = line.split()[2]
            path = self.folder / (place if place.endswith(".pdf") else place.split(":")[0])
            self.assertTrue(path.is_file(), place)

    def test_compare(self):
        self.build()
        stem = "CARD-FACES_rA_"
        folder = self.folder / "specifications"
        old = next(folder.glob(stem + "*.json"))
        self.assertEqual(self.run_program("compare", old, old).stdout.splitlines()[-1], "the same specification")
        self.change_price("dryer.DR-600", "14800 EUR", "14900 EUR")
        self.build(day=1)
        new = max(folder.glob(stem + "*.json"))
        self.assertNotEqual(old, new)
        done = self.run_program("compare", old, new, "--json", expect=1)
        compared = json.loads(done.stdout)
        self.assertFalse(compared["same"])
        self.assertEqual(compared["old"]["date"], "2026-09-21")
        by_area = {}
        for change in compared["changes"]:
            by_area.setdefault(change["area"], {})[change["name"]] = (change["old"], change["new"])
        parts = [pair for pair in by_area["parts"].values()]
        self.assertEqual([(old["unit_price"], new["unit_price"]) for old, new in parts], [(14800, 14900)])
        before, after = by_area["cost"]["capital"]
        self.assertEqual(after - before, 100 * parts[0][1]["quantity"])
        self.assertNotIn("choice", by_area)
        text = self.run_program("compare", old, new, expect=1).stdout
        self.assertIn("14900", text)
        self.assertLessEqual(max(map(len, text.splitlines())), 100)
        other = next(folder.glob("DECOR-PAPER*.json"))
        choice = json.loads(self.run_program("compare", old, other, "--json", expect=1).stdout)["changes"]
        self.assertIn(("request", "id"), [(c["area"], c["name"]) for c in choice])
        self.assertTrue(any(c["area"] == "choice" and c["name"].endswith(".head") for c in choice))
        self.run_program("compare", old, "none.json", expect=66)
        self.assertIn("catalogue.xml: this is no issued JSON",
                      self.run_program("compare", old, "catalogue.xml", expect=65).stderr)

    def test_verify_agrees_with_sha256sum(self):
        self.build()
        folder = self.folder / "specifications"
        subprocess.run(["sha256sum", "--strict", "--quiet", "-c", "SHA256SUMS"], cwd=folder, check=True)
        self.assertIn("files as they went out", self.run_program("verify", "specifications").stdout)
        pdf = next(folder.glob("CARD-FACES*.pdf"))
        with open(pdf, "r+b") as file:
            file.seek(2000)
            byte = file.read(1)
            file.seek(2000)
            file.write(bytes([byte[0] ^ 1]))
        done = self.run_program("verify", "specifications", expect=1)
        self.assertEqual(done.stdout.splitlines()[0], f"altered {pdf.name}")
        checked = subprocess.run(["sha256sum", "--quiet", "-c", "SHA256SUMS"], cwd=folder, stdout=subprocess.PIPE,
                                 stderr=subprocess.PIPE, text=True)
        self.assertEqual(checked.stdout, f"{pdf.name}: FAILED\n")

    def test_a_change_that_keeps_size_and_time_is_seen(self):
        self.build()
        pdf = next((self.folder / "specifications").glob("CARD-FACES*.pdf"))
        times = pdf.stat()
        data = bytearray(pdf.read_bytes())
        data[2000] ^= 1
        with open(pdf, "r+b") as file:
            file.write(data)
        os.utime(pdf, ns=(times.st_atime_ns, times.st_mtime_ns))
        statuses, _ = self.build(expect=73)
        self.assertEqual([name for name, status in statuses.items() if status != "unchanged"], ["CARD-FACES_rA"])


class Limits(Desk):
    def test_too_few_open_files(self):
        for i in range(8):
            self.request(f"in/{i}.ini")
        self.run_program("build", "in/0.ini", "--date", DATE)
        before = self.issued()

        failed = 0
        for most in range(4, 8):  # whether two jobs meet at a limit is chance, that they do at the least is not
            def few(most=most):
                resource.setrlimit(resource.RLIMIT_NOFILE, (most, most))

            done = self.run_program("build", "in", "--date", DATE, "-j", 2, expect=(0, 66, 73, 74), preexec_fn=few)
            if done.returncode != 0:
                failed += 1
                self.assertIn("Too many open files", done.stderr)
            for name, data in before.items():
                if name.startswith("0_"):
                    self.assertEqual(self.issued()[name], data)
            self.check_archive(all_listed=False)
        self.assertGreater(failed, 0)
        self.run_program("build", "in", "--date", DATE)
        self.assertEqual(len(self.check_archive()), 8)

    def test_a_folder_that_may_not_be_written(self):
        self.request("q.ini")
        self.run_program("build", "q.ini", "--date", DATE)
        before = self.issued()
        self.request("r.ini")
        os.chmod(self.folder, 0o755)
        for path in [self.folder / "specifications", *(self.folder / "specifications").rglob("*")]:
            os.chmod(path, 0o555 if path.is_dir() else 0o444)

        def nobody():
            if os.getuid() == 0:
                os.setgid(65534)
                os.setuid(65534)

        done = self.run_program("build", "r.ini", "--date", DATE, expect=73, preexec_fn=nobody)
        self.assertIn("Permission denied", done.stderr)
        self.assertEqual(self.issued(), before)
        done = self.run_program("verify", "specifications", preexec_fn=nobody)
        self.assertIn("3 files as they went out", done.stdout)

    def test_the_folder_vanishes(self):
        for i in range(200):
            self.request(f"in/{i:03}.ini")
        process = subprocess.Popen([PROGRAM, "build", "in", "--date", DATE, "-j", "2"], cwd=self.folder,
                                   stdout=subprocess.PIPE, stderr=subprocess.PIPE, text=True)
        out = self.folder / "specifications"
        deadline = time.monotonic() + 60
        while not list(out.glob("*.json")) and time.monotonic() < deadline:
            time.sleep(0.002)
        process.send_signal(signal.SIGSTOP)
        os.rename(out, self.folder / "elsewhere")
        process.send_signal(signal.SIGCONT)
        _, error = process.communicate(timeout=120)
        self.assertEqual(process.returncode, 74, error)
        self.assertIn("No such file or directory", error)
        self.assertFalse(out.exists())
        self.assertGreater(len(self.check_archive("elsewhere", all_listed=False)), 0)

    def test_a_full_disk_of_the_log_alone(self):
        self.request("q.ini")
        (self.folder / "specifications").mkdir()
        (self.folder / "specifications/run.jsonl").mkdir()
        done = self.run_program("build", "q.ini", "--date", DATE, expect=73)
        self.assertIn("run.jsonl: cannot rename", done.stderr)
        self.assertEqual(len(self.check_archive()), 1)


class TwoAtOnce(Desk):
    def start(self, *arguments):
        return subprocess.Popen([PROGRAM, "build", "in", "--date", DATE, *arguments], cwd=self.folder,
                                stdout=subprocess.PIPE, stderr=subprocess.PIPE, text=True)

    def hold(self, process):
        """Stops a run in its middle, so that it still issues whatever else is slow."""
        deadline = time.monotonic() + 60
        while not list(self.folder.glob("specifications/*.pdf")) and time.monotonic() < deadline:
            time.sleep(0.002)
        process.send_signal(signal.SIGSTOP)
        self.addCleanup(process.kill)
        self.assertIsNone(process.poll())

    def test_two_whole_runs(self):
        for i in range(60):
            self.request(f"in/{i:03}.ini")
        first, second = self.start(), self.start()
        ends = [process.communicate(timeout=120) + (process.returncode,) for process in (first, second)]
        self.assertEqual(sorted(end[2] for end in ends), [0, 73])
        refused = next(end for end in ends if end[2] == 73)
        self.assertEqual(refused[0], "")
        self.assertEqual(refused[1], "swathspec: specifications: another run is issuing into this folder; "
                                     "wait for its end or name another with -o\n")
        self.assertEqual(len(self.check_archive()), 60)

    def test_a_part_beside_a_whole_run_and_beside_other_divisions(self):
        for i in range(60):
            self.request(f"in/{i:03}.ini")
        whole = self.start()
        self.hold(whole)
        done = self.run_program("build", "in", "--part", "1/2", "--date", DATE, expect=73)
        self.assertIn("another run is issuing", done.stderr)
        self.run_program("index", "specifications", expect=73)
        whole.send_signal(signal.SIGCONT)
        self.assertEqual(whole.communicate(timeout=120)[1] != "", True)
        shutil.rmtree(self.folder / "specifications")
        part = self.start("--part", "1/2")
        self.hold(part)
        done = self.run_program("build", "in", "--part", "1/3", "--date", DATE, expect=73)
        self.assertIn("part 1-of-2 is issuing", done.stderr)
        done = self.run_program("build", "in", "--part", "1/2", "--date", DATE, expect=73)
        self.assertIn("another run of part 1-of-2 is issuing", done.stderr)
        self.run_program("build", "in", "--part", "2/2", "--date", DATE)
        part.send_signal(signal.SIGCONT)
        part.communicate(timeout=120)
        self.run_program("index", "specifications")
        self.assertEqual(len(self.check_archive()), 60)


class Terminal(Desk):
    def on_terminal(self, output_too=False, **environment):
        """What a terminal gets of standard error (and output) of a run of 40 requests."""
        for i in range(40):
            self.request(f"in/{i:02}.ini")
        shutil.rmtree(self.folder / "specifications", ignore_errors=True)
        ours, theirs = pty.openpty()
        process = subprocess.Popen([PROGRAM, "build", "in", "--date", DATE], cwd=self.folder, stderr=theirs,
                                   stdout=theirs if output_too else subprocess.DEVNULL,
                                   env={**os.environ, "TERM": "xterm", **environment})
        os.close(theirs)
        text = b""
        while True:
            ready, _, _ = select.select([ours], [], [], 60)
            try:
                piece = os.read(ours, 65536) if ready else b""
            except OSError:  # Linux says EIO when the other end is closed
                piece = b""
            if not piece:
                break
            text += piece
        os.close(ours)
        self.assertEqual(process.wait(60), 0)
        return text.decode()

    def test_progress(self):
        text = self.on_terminal()
        self.assertRegex(text, r"\r\x1b\[K\d+ of 40 requests, [\d.]+ a second, \d+ s left, 0 at fault")
        self.assertIn("40 requests: 40 issued", text.split("\x1b[K")[-1])

    def test_lines_and_progress_share_a_terminal(self):
        lines = [re.sub(r".*\x1b\[K", "", line) for line in self.on_terminal(output_too=True).split("\r\n")]
        issued = [line for line in lines if line.startswith("issued ")]
        self.assertEqual(len(issued), 40)
        for line in issued:
            self.assertRegex(line, r"^issued [a-z]+ \d\d_rA_[\d-]+$")

    def test_a_dumb_terminal_and_none_get_no_progress(self):
        self.assertNotIn("\x1b", self.on_terminal(TERM="dumb"))
        shutil.rmtree(self.folder / "specifications")
        done = self.run_program("build", "in", "--date", DATE)
        self.assertNotIn("\x1b", done.stderr)
        self.assertNotIn("a second", done.stderr)

    def test_no_colour(self):
        (self.folder / "in").mkdir()
        self.assertNotIn("\x1b[1;31m", self.on_terminal(NO_COLOR="1"))


if __name__ == "__main__":
    unittest.main()
