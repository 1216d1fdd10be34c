"""check, explain, heads, fields, and the forms of diagnostics."""

import json
import unittest

from support import DATE, SAMPLES, Desk


class Check(Desk):
    def test_good_requests(self):
        self.request("a.ini")
        self.request("b.ini")
        done = self.run_program("check", "a.ini", "b.ini")
        lines = done.stdout.splitlines()
        self.assertEqual(len(lines), 3, done.stdout)
        self.assertTrue(lines[-1].startswith("2 requests: 2 good, 0 at fault; 0 errors"), lines)
        self.assertFalse((self.folder / "specifications").exists())

    def test_every_fault_at_once(self):
        self.request("a.ini", more="speed = 3\nidd = x")
        done = self.run_program("check", "a.ini", expect=65)
        self.assertEqual(done.stderr.count("error[E0122]"), 2, done.stderr)
        lines = done.stdout.splitlines()
        self.assertTrue(lines[0].startswith("failed - "), lines)
        self.assertTrue(lines[1].startswith("1 request: 0 good, 1 at fault; 2 errors"), lines)

    def test_verdict_and_stem_are_those_of_the_issue(self):
        self.request("a.ini")
        self.request("b.ini", more="notes = another")
        lines = {}
        for command in ("check", "build"):
            done = self.run_program(command, "a.ini", "b.ini")
            lines[command] = [line.split(" ", 1) for line in done.stdout.splitlines()[:2]]
        self.assertEqual([status for status, _ in lines["check"]], ["checked", "checked"])
        self.assertEqual([what for _, what in lines["check"]],
                         [what for _, what in lines["build"]])
        told = json.loads(self.run_program("check", "a.ini", "--json").stdout)
        self.assertEqual(told["verdict"], lines["check"][0][1].split(" ")[0])

    def test_warnings_are_those_of_the_issue_and_nothing_is_written(self):
        self.request("a.ini", title="Lids \u0627", more="language = fr")
        later = {"SOURCE_DATE_EPOCH": "1890259200"}  # 2029-11-25: every price is stale
        checked = self.run_program("check", "a.ini", env=later)
        self.assertEqual([path.name for path in self.folder.iterdir() if path.is_dir()], [])
        built = self.run_program("build", "a.ini", env=later)
        self.assertEqual(checked.stderr, built.stderr)
        for code in ("W0301", "W0302", "W0501", "W0503"):
            self.assertIn(f"warning[{code}]", checked.stderr)
        self.assertIn("a.ini:4:12: warning[W0302]: there are no texts in language fr; "
                      "the document is in en", checked.stderr)
        self.assertIn("set request.language to one of: de, en", checked.stderr)
        self.assertIn("a.ini:20:1: warning[W0503]", checked.stderr)  # [ink.black] has no price
        count = checked.stderr.count(" warning[")
        self.assertTrue(checked.stdout.endswith(f"0 errors, {count} warnings\n"), checked.stdout)

    def test_json_lines(self):
        self.request("a.ini")
        self.request("b.ini", more="idd = x")
        done = self.run_program("check", "a.ini", "b.ini", "--json", expect=65)
        lines = [json.loads(line) for line in done.stdout.splitlines()]
        self.assertEqual([line["status"] for line in lines], ["checked", "failed"])
        self.assertEqual(lines[1]["diagnostics"][0]["line"], 4)


class Diagnostics(Desk):
    def findings(self, mode):
        self.request("a.ini", more="idd = x")
        return self.run_program("check", "a.ini", "--diagnostics", mode, expect=65).stderr

    def test_human(self):
        lines = self.findings("human").splitlines()
        self.assertTrue(lines[0].startswith("a.ini:4:1: error[E0122]: "), lines[0])
        self.assertIn("idd = x", lines[1])
        self.assertIn("^^^", lines[2])

    def test_short(self):
        self.assertEqual(len(self.findings("short").splitlines()), 1)

    def test_json(self):
        finding = json.loads(self.findings("json"))
        self.assertEqual(list(finding), ["file", "line", "column", "severity", "code", "message",
                                         "notes", "hint", "field"])
        self.assertEqual((finding["file"], finding["line"], finding["column"]), ("a.ini", 4, 1))


class Explain(Desk):
    def test_every_sample_fits_the_terminal(self):
        for source in sorted(SAMPLES.glob("*.ini")):
            with self.subTest(source=source.name):
                done = self.run_program("explain", source)
                for line in done.stdout.splitlines():
                    self.assertLessEqual(len(line), 100, line)
                self.assertIn("\nverdict: ", done.stdout)

    def test_the_text_follows_the_request(self):
        self.request("a.ini")
        text = self.run_program("explain", "a.ini").stdout
        for part in ("REQUIREMENT", "RESOLUTION", "HEADS NOT CHOSEN", "TRACE", "a.ini:7",
                     "governed by explicit", "40 EUR/h", "0.2 EUR/kWh"):
            self.assertIn(part, text)
        path = self.folder / "a.ini"
        path.write_text(path.read_text().replace("600 dpi", "400 dpi"))
        self.assertNotEqual(self.run_program("explain", "a.ini").stdout, text)

    def test_the_angle_of_tilted_heads(self):
        # 360 nozzles an inch print 450 at a cosine of 0.8
        source = SAMPLES / "egg-boxes.ini"
        self.assertIn("tilted by 36.87 deg", self.run_program("explain", source).stdout)
        group = json.loads(self.run_program("explain", source, "--json").stdout)["chosen"]["groups"][0]
        self.assertEqual((group["family"], group["native_npi"]), ("tilted", 360))
        self.assertAlmostEqual(group["tilt_deg"], 36.869897646, places=8)
        self.assertEqual({head["rotation_deg"] for head in group["heads"]}, {group["tilt_deg"]})

    def test_json_is_that_of_the_issue_without_its_files(self):
        self.request("a.ini")
        explained = json.loads(self.run_program("explain", "a.ini", "--json", "--date", DATE).stdout)
        self.run_program("build", "a.ini", "--date", DATE)
        issued = json.loads((self.folder / f"specifications/a_rA_{DATE}.json").read_text())
        issued.pop("files")
        self.assertEqual(explained, issued)


class Heads(Desk):
    def test_table_and_lines_agree(self):
        done = self.run_program("heads")
        lines = [json.loads(line) for line in self.run_program("heads", "--json").stdout.splitlines()]
        self.assertGreaterEqual(len({line["head"] for line in lines}), 14)
        table = done.stdout.splitlines()[3:]
        self.assertEqual(len(table), len(lines))
        for row, line in zip(table, lines):
            self.assertTrue(row.startswith(line["head"] + " "), row)
        self.assertTrue(any(line["price"] is None for line in lines))

    def test_what_is_wrong_in_it(self):
        (self.folder / "bad.xml").write_text(
            '<catalogue date="2026-01-01"><head name="H"><prize>1 EUR</prize></head></catalogue>')
        done = self.run_program("heads", "-c", "bad.xml", expect=65)
        self.assertIn("bad.xml:1:", done.stderr)
        self.run_program("heads", "-c", "none.xml", expect=66)


class Fields(Desk):
    def test_reference(self):
        whole = self.run_program("fields").stdout
        for key in ("request.id", "image.smallest_feature", "colour.NAME.kind", "head.NAME.price"):
            self.assertIn("\n" + key + "  (", whole)
        one = self.run_program("fields", "line.speed").stdout
        self.assertIn("m/min", one)
        self.assertLess(len(one), 800)

    def test_json_lines(self):
        for line in self.run_program("fields", "--json").stdout.splitlines():
            field = json.loads(line)
            self.assertTrue(field["key"] and field["meaning"] and field["since"], field)

    def test_names_of_sections_and_misspelt_ones(self):
        concrete = self.run_program("fields", "ink.black.family").stdout
        self.assertEqual(concrete, self.run_program("fields", "ink.NAME.family").stdout)
        for name, near in (("lin.speed", "line.speed"), ("ink.black.famly", "ink.black.family")):
            done = self.run_program("fields", name, expect=64)
            self.assertEqual(done.stdout, "")
            self.assertEqual(done.stderr,
                             f"swathspec: nothing is named {name}; did you mean {near}\n")
        done = self.run_program("fields", "--codes", "ozon", "--json")
        self.assertIn("Arc lamps", json.loads(done.stdout)["meaning"])
        done = self.run_program("fields", "--codes", "ozonne", expect=64)
        self.assertIn("did you mean ozone", done.stderr)

    def test_codes(self):
        done = self.run_program("fields", "--codes", "--json")
        codes = [json.loads(line) for line in done.stdout.splitlines()]
        self.assertEqual(len(codes), len({(c["kind"], c["code"]) for c in codes}))
        for kind in ("finding", "reason", "condition", "question", "check", "safety", "part"):
            self.assertTrue(any(c["kind"] == kind for c in codes), kind)
        for code in codes:
            self.assertGreater(len(code["meaning"]), 3, code)


if __name__ == "__main__":
    unittest.main()
