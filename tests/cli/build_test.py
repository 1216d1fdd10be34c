"""`swathspec build`: files, names, reissues, the whole inbox at once."""

import csv
import hashlib
import io
import json
import pathlib
import shutil
import subprocess
import unittest

from support import DATE, LOG, PROGRAM, ROOT, SAMPLES, Desk


class Reissue(Desk):
    def issue(self, revision, more="", **options):
        self.request("lids.ini", id="LIDS", more=f"revision = {revision}\n{more}")
        return self.run_program("build", "lids.ini", "--date", DATE, "-o", "out",
                                *options.get("arguments", ()), expect=options.get("expect", 0))

    def test_a_reissue_names_the_issue_it_replaces_and_stays_unchanged(self):
        self.issue("A")
        before = (self.folder / f"out/LIDS_rA_{DATE}.json").read_bytes()
        self.issue("B", more="units = us")
        path = self.folder / f"out/LIDS_rB_{DATE}.json"
        revisions = json.loads(path.read_text())["revisions"]
        self.assertEqual([(r["revision"], r["date"]) for r in revisions], [("A", DATE)])
        self.assertEqual(revisions[0]["sha256"], hashlib.sha256(before).hexdigest())
        text = subprocess.run(["pdftotext", "-raw", path.with_suffix(".pdf"), "-"],
                              capture_output=True, text=True, check=True).stdout
        self.assertIn("Changes since revision A", text)
        self.assertIn("units of the document not there us", text)
        self.assertTrue(self.issue("B", more="units = us").stdout.startswith("unchanged"))

    def test_earlier_issues_may_stand_in_another_folder(self):
        self.issue("A")
        (self.folder / "out").rename(self.folder / "old")
        self.issue("B", arguments=("--previous", "old"))
        figures = json.loads((self.folder / f"out/LIDS_rB_{DATE}.json").read_text())
        self.assertEqual(figures["revisions"][0]["revision"], "A")
        self.issue("C", arguments=("--previous", "nowhere"), expect=66)

    def test_a_damaged_earlier_issue_is_told(self):
        self.issue("A")
        (self.folder / f"out/LIDS_rA_{DATE}.json").write_text("{}")
        self.assertIn("W0302", self.issue("B").stderr)


class Samples(Desk):
    def sources(self):
        return sorted(p for p in SAMPLES.iterdir()
                      if p.suffix in (".ini", ".xml") and p.name != "catalogue.xml")

    def test_the_folder_is_issued_whole(self):
        done = self.run_program("build", SAMPLES, "--date", DATE)
        lines = done.stdout.splitlines()
        self.assertGreaterEqual(len(lines), 12)
        for line in lines:
            status, verdict, stem = line.split(" ", 2)
            self.assertEqual(status, "issued")
            self.assertIn(verdict, ("feasible", "conditional", "infeasible", "incomplete"))
            self.assertTrue(stem.endswith("_" + DATE), stem)
        self.assertEqual(sorted(line.split(" ", 2)[2] for line in lines), sorted(self.check_archive()))

    def test_each_alone_is_issued(self):
        for source in self.sources():
            with self.subTest(source=source.name):
                done = self.run_program("build", source, "-o", source.stem)
                self.assertNotEqual(done.stdout, "")

    def test_same_inputs_and_date_same_bytes_whatever_the_threads(self):
        self.run_program("build", SAMPLES, "--date", DATE, "-o", "one", "-j", 1)
        self.run_program("build", SAMPLES, "--date", DATE, "-o", "four", "-j", 4)
        self.assertEqual(self.issued("one"), self.issued("four"))

    def test_parts_lists_agree_with_the_figures(self):
        self.run_program("build", SAMPLES, "--date", DATE)
        priced = 0
        for stem in self.check_archive():
            text = (self.folder / "specifications" / (stem + ".bom.csv")).read_bytes().decode()
            self.assertEqual(text.count("\n"), text.count("\r\n"), stem)
            rows = list(csv.DictReader(io.StringIO(text, newline="")))
            figures = json.loads((self.folder / "specifications" / (stem + ".json")).read_text())
            self.assertEqual(len(rows), len(figures.get("bom", [])), stem)
            total = sum(round(float(row["extended_price"]) * 100)
                        for row in rows if row["extended_price"])
            self.assertEqual(total, round(figures.get("bom_total", 0) * 100), stem)
            priced += total > 0
            unpriced = sum(1 for row in rows if not row["extended_price"])
            self.assertEqual(unpriced, figures.get("bom_unpriced", 0), stem)
            for row in rows:
                self.assertNotEqual(row["designation"], "", stem)
        self.assertGreater(priced, 3)


class Names(Desk):
    def test_no_identification_leaves_the_folder(self):
        self.request("a.ini", id="A/B", more="date = 2026-01-02")
        self.request("b.ini", id="../../../../escape", more="date = 2026-01-02")
        self.run_program("build", "a.ini", "b.ini", "-o", "deep/er/out")
        self.assertEqual(sorted(self.check_archive("deep/er/out")),
                         ["A-B~998d3ed8_rA_2026-01-02", "escape~e7530905_rA_2026-01-02"])

    def test_one_name_for_two_requests_is_an_error_naming_both_places(self):
        self.request("a.ini", id="Same", more="date = 2026-01-02")
        self.request("b.ini", id="SAME", more="date = 2026-01-02")
        done = self.run_program("build", "b.ini", "a.ini", expect=65)
        self.assertEqual(done.stdout.splitlines()[0].split()[0], "issued")
        self.assertEqual(done.stdout.splitlines()[1], "failed - Same_rA_2026-01-02")
        self.assertIn("a.ini:2:6: error[E0306]: the name Same_rA_2026-01-02 is taken in this run by "
                      "the request at b.ini:2:6\n", done.stderr)
        self.assertEqual(self.check_archive(), ["SAME_rA_2026-01-02"])


class Places(Desk):
    def test_the_figures_are_the_same_from_whatever_folder(self):
        folder = self.folder / "samples"
        shutil.copytree(SAMPLES, folder, ignore=shutil.ignore_patterns("issued", "run"))
        figures = []
        for out, path, cwd in (("a", "samples", self.folder), ("b", ".", folder),
                               ("c", folder, self.folder), ("d", "samples/", self.folder)):
            target = self.folder / "out" / out
            subprocess.run([PROGRAM, "build", str(path), "-o", str(target), "--date", DATE],
                           cwd=cwd, check=True, stdout=subprocess.DEVNULL,
                           stderr=subprocess.DEVNULL)
            figures.append({p.name: p.read_bytes() for p in target.glob("*.json")})
        self.assertGreater(len(figures[0]), 10)
        for other in figures[1:]:
            self.assertEqual(other, figures[0])

    def test_a_file_is_named_by_its_last_part(self):
        self.request("deep/q.ini", id="Q")
        self.run_program("build", "deep/q.ini", "--date", DATE)
        inputs = json.loads(self.issued()[f"Q_rA_{DATE}.json"])["inputs"]
        files = {i["file"] for i in inputs if "file" in i}
        self.assertEqual(files, {"q.ini", "catalogue.xml"})

    def test_a_named_catalogue_that_is_not_there_is_named_and_leaves_no_folder(self):
        self.request("q.ini")
        done = self.run_program("build", "-c", "missing.xml", "q.ini", expect=66)
        self.assertEqual(done.stderr.count("error["), 1, done.stderr)
        self.assertTrue(done.stderr.startswith("missing.xml:1:1: error[E0301]: "), done.stderr)
        self.assertIn("  hint: name a catalogue with -c", done.stderr)
        self.assertEqual(done.stdout, "")
        self.assertFalse((self.folder / "specifications").exists())


class Dates(Desk):
    def stem(self, *arguments, env=None, out):
        done = self.run_program("build", "q.ini", "-o", out, *arguments, env=env)
        return done.stdout.split()[2]

    def test_strongest_first(self):
        self.request("q.ini", id="Q", more="date = 2026-03-03")
        epoch = {"SOURCE_DATE_EPOCH": "951782400"}
        self.assertEqual(self.stem(out="a"), "Q_rA_2026-03-03")
        self.assertEqual(self.stem(out="b", env=epoch), "Q_rA_2000-02-29")
        self.assertEqual(self.stem("--date", "2026-04-04", out="c", env=epoch), "Q_rA_2026-04-04")

    def test_unchanged_keeps_its_date_unless_one_is_named(self):
        self.request("q.ini", id="Q")
        first = self.stem(out="a", env={"SOURCE_DATE_EPOCH": "1790000000"})
        before = self.issued("a")
        done = self.run_program("build", "q.ini", "-o", "a",
                                env={"SOURCE_DATE_EPOCH": "1795000000"})
        self.assertEqual(done.stdout.split()[0], "unchanged")
        self.assertEqual(done.stdout.split()[2], first)
        self.assertEqual(self.issued("a"), before)
        self.assertEqual(self.stem("--date", "2026-12-01", out="a"), "Q_rA_2026-12-01")
        self.assertEqual(len(self.check_archive("a")), 2)


class Reissue(Desk):
    def build(self, *arguments, expect=0):
        done = self.run_program("build", "q.ini", "--date", DATE, *arguments, expect=expect)
        return done.stdout.split()[0], done.stderr

    def test_unchanged(self):
        self.request("q.ini", id="Q")
        self.assertEqual(self.build()[0], "issued")
        before = self.issued()
        stamps = {p: p.stat().st_mtime_ns for p in (self.folder / "specifications").iterdir()}
        self.assertEqual(self.build()[0], "unchanged")
        self.assertEqual(self.build("--force")[0], "unchanged")
        self.assertEqual(self.issued(), before)
        for path, stamp in stamps.items():
            if path.is_file() and not LOG.fullmatch(path.name):
                self.assertEqual(path.stat().st_mtime_ns, stamp, path)

    def test_a_remark_or_another_folder_changes_nothing(self):
        self.request("q.ini", id="Q")
        self.build()
        path = self.folder / "q.ini"
        path.write_text("; seen by the engineer\n\n" + path.read_text())
        self.assertEqual(self.build()[0], "unchanged")
        (self.folder / "desk").mkdir()
        shutil.move(path, self.folder / "desk" / "moved.ini")
        done = self.run_program("build", "desk", "--date", DATE)
        self.assertEqual(done.stdout.split()[0], "unchanged")

    def test_changed_content_is_refused_and_the_next_revision_named(self):
        self.request("q.ini", id="Q")
        self.build()
        before = self.issued()
        self.request("q.ini", id="Q", title="Trays")
        status, error = self.build(expect=73)
        self.assertEqual(status, "refused")
        self.assertIn("q.ini:2:6: error[E0307]: Q_rA_2026-11-25 was issued before", error)
        self.assertIn("revision = B", error)
        self.assertEqual(self.issued(), before)
        self.request("q.ini", id="Q", title="Trays", more="revision = B")
        self.assertEqual(self.build()[0], "issued")
        self.request("q.ini", id="Q", title="Cups")
        self.assertIn("revision = C", self.build(expect=73)[1])

    def test_force_keeps_what_went_out(self):
        self.request("q.ini", id="Q")
        self.build()
        before = self.issued()
        self.request("q.ini", id="Q", title="Trays")
        self.assertEqual(self.build("--force")[0], "issued")
        after = self.issued()
        kept = {name: data for name, data in after.items() if name.startswith("superseded/")}
        self.assertEqual(len(kept), 3)
        for name, data in kept.items():
            stem, digest, extension = name[len("superseded/"):].split(".", 2)
            self.assertEqual(len(digest), 8)
            self.assertEqual(data, before[stem + "." + extension])
        self.check_archive()

    def test_an_altered_file_is_not_taken_for_what_went_out(self):
        self.request("q.ini", id="Q")
        self.build()
        with open(self.folder / "specifications/Q_rA_2026-11-25.pdf", "ab") as pdf:
            pdf.write(b" ")
        self.assertEqual(self.build(expect=73)[0], "refused")

    def test_a_lost_file_is_made_again(self):
        self.request("q.ini", id="Q")
        self.build()
        before = self.issued()
        (self.folder / "specifications/Q_rA_2026-11-25.pdf").unlink()
        self.assertEqual(self.build()[0], "issued")
        self.assertEqual(self.issued(), before)


class Inbox(Desk):
    def test_faulty_requests_never_stop_the_others(self):
        good = [self.request(f"in/good{i}.ini") for i in range(3)]
        faults = [p for p in sorted((ROOT / "tests/faults").iterdir())
                  if p.suffix in (".ini", ".xml")]
        self.assertGreater(len(faults), 10)
        for path in faults:
            shutil.copy(path, self.folder / "in")
        done = self.run_program("build", "in", "--date", DATE, expect=65)
        issued = [line for line in done.stdout.splitlines() if not line.startswith("failed")]
        for path in good:
            self.assertTrue(any(path.stem + "_rA_" in line for line in issued), path)
        for path in faults:
            self.assertIn(f"in/{path.name}:", done.stderr)
        self.check_archive()

    def test_results_come_in_input_order(self):
        names = [f"in/{i:02}.ini" for i in range(12)]
        for name in names:
            self.request(name)
        done = self.run_program("build", "in", "--date", DATE, "-j", 4)
        self.assertEqual([line.split()[2] for line in done.stdout.splitlines()],
                         [f"{i:02}_rA_{DATE}" for i in range(12)])

    def test_json_lines(self):
        self.request("a.ini")
        (self.folder / "b.ini").write_text("[request]\nid = b\n")
        done = self.run_program("build", "a.ini", "b.ini", "--json", "--date", DATE, expect=65)
        good, bad = map(json.loads, done.stdout.splitlines())
        self.assertEqual(list(good), ["file", "index", "id", "revision", "date", "status", "verdict",
                                      "stem", "files", "diagnostics"])
        for name in good["files"].values():
            self.assertTrue((self.folder / "specifications" / name).is_file())
        self.assertEqual((bad["status"], bad["verdict"], bad["files"]), ("failed", None, None))
        self.assertEqual(bad["diagnostics"][0]["field"], "request.title")

    def test_standard_input(self):
        text = self.request("q.ini", id="Q").read_text()
        done = self.run_program("build", "-", "--date", DATE, input=text)
        self.assertEqual(done.stdout.split()[2], f"Q_rA_{DATE}")
        figures = json.loads((self.folder / f"specifications/Q_rA_{DATE}.json").read_text())
        given = [i for i in figures["inputs"] if i["origin"] == "given"]
        self.assertEqual({i["file"] for i in given}, {"<stdin>"})
        done = self.run_program("build", "-", input="<request><id>x</id></request>", expect=65)
        self.assertIn("<stdin>:1:", done.stderr)


if __name__ == "__main__":
    unittest.main()
