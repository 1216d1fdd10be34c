"""The samples in every language and both systems of units: sound files whose text is what was set.

SWATHSPEC_VARIANTS=all makes them of all samples, else of four.
"""
import glob
import json
import os
import re
import subprocess
import tempfile
import unittest

import archive

HERE = os.path.dirname(os.path.abspath(__file__))
SAMPLES = os.path.join(HERE, "..", "..", "sample_requests")
PROGRAM = os.environ["SWATHSPEC"]
SHORT = ["first-call.ini", "foil-lids-too-fast.ini", "card-sleeves.ini", "barrel-heads.xml"]
VARIANTS = [("en", "si"), ("en", "us"), ("de", "si"), ("de", "us")]


def sample_names():
    names = {os.path.basename(path) for kind in ("ini", "xml")
             for path in glob.glob(os.path.join(SAMPLES, "*." + kind))} - {"catalogue.xml"}
    return sorted(names) if os.environ.get("SWATHSPEC_VARIANTS") == "all" else SHORT


def varied(text, name, language, units):
    """The request in that language and those units."""
    if name.endswith(".ini"):
        text = re.sub(r"(?m)^(language|units) *=.*\n", "", text)
        return text.replace("[request]\n", f"[request]\nlanguage = {language}\nunits = {units}\n", 1)
    text = re.sub(r"<(language|units)>.*?</\1>", "", text)
    return re.sub(r"<request>", f"<request><language>{language}</language><units>{units}</units>", text)


def bare(text):
    """The text without white space, and without what marks a line that is broken within a word."""
    return re.sub(r"[\s\u00a0\u2009\u202f\u00ad\u200b\f]+", "", text)


def page_text(path, number):
    done = subprocess.run(["pdftotext", "-raw", "-enc", "UTF-8", "-f", str(number), "-l", str(number),
                           path, "-"], capture_output=True, text=True, check=True)
    if done.stderr:
        raise AssertionError(done.stderr)
    return done.stdout


class Variants(unittest.TestCase):
    @classmethod
    def setUpClass(cls):
        cls.store = tempfile.TemporaryDirectory()
        cls.pdfs, cls.frames = [], {}
        for language, units in VARIANTS:
            desk = os.path.join(cls.store.name, f"{language}-{units}")
            os.makedirs(os.path.join(desk, "in"))
            for name in ["catalogue.xml", *sample_names()]:
                with open(os.path.join(SAMPLES, name), encoding="utf-8") as file:
                    text = file.read()
                if name != "catalogue.xml":
                    text = varied(text, name, language, units)
                with open(os.path.join(desk, "in", name), "w", encoding="utf-8") as file:
                    file.write(text)
            frames = os.path.join(desk, "frames.jsonl")
            subprocess.run([PROGRAM, "build", os.path.join(desk, "in"), "-o", os.path.join(desk, "out"),
                            "--date", "2026-11-25", "--summary", "--dump-frames", frames],
                           capture_output=True, check=True)
            cls.pdfs += sorted(glob.glob(os.path.join(desk, "out", "*.pdf")))
            with open(frames, encoding="utf-8") as file:
                for line in file:
                    page = json.loads(line)
                    key = os.path.join(desk, "out", page["stem"] + ".pdf")
                    cls.frames.setdefault(key, []).append(page)

    @classmethod
    def tearDownClass(cls):
        cls.store.cleanup()

    def test_there_are_four_times_two_files_a_sample(self):
        self.assertGreaterEqual(len(self.pdfs), 4 * 2 * len(sample_names()))
        self.assertEqual(len(self.pdfs), 2 * len(self.frames))

    def test_all_validators(self):
        done = subprocess.run(["bash", os.path.join(HERE, "pdf.sh"), *self.pdfs],
                              capture_output=True, text=True, check=False)
        self.assertEqual(done.returncode, 0, done.stdout + done.stderr)

    def test_the_language_is_that_of_the_request(self):
        for path in self.pdfs:
            language = os.path.basename(os.path.dirname(os.path.dirname(path)))[:2]
            self.assertEqual(archive.text(archive.File(path).catalog["/Lang"]), language, path)

    def test_the_text_of_a_page_is_what_was_set_on_it(self):
        for path, pages in self.frames.items():
            for page in pages:
                runs = [item for item in page["items"] if item["kind"] == "text"]
                upright = [item["text"] for item in runs if not item.get("rotation")]
                turned = [bare(item["text"]) for item in runs if item.get("rotation")]
                found = bare(page_text(path, page["page"]))
                where = f"{path} page {page['page']}"
                for text in turned:  # poppler sets these apart
                    self.assertIn(text, found, where)
                if not turned:
                    self.assertEqual(found, bare("".join(upright)), where)

    def test_a_row_of_a_table_comes_out_as_a_row(self):
        path = next(p for p in self.frames if "CARD-SLEEVES" in p and "en-si" in p)
        text = "\n".join(page_text(path, page["page"]) for page in self.frames[path])
        self.assertRegex(text, r"(?m)^Arrangement of the heads\nProperty process colours\nHead HK-600W\n")


if __name__ == "__main__":
    unittest.main()
