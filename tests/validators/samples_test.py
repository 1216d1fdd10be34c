"""The issued samples as files: valid, the same twice, with the right text, no page blank or clipped."""
import filecmp
import glob
import os
import re
import subprocess
import tempfile
import unittest

HERE = os.path.dirname(os.path.abspath(__file__))
SAMPLES = os.path.join(HERE, "..", "..", "sample_requests")
PROGRAM = os.environ["SWATHSPEC"]
DATE = "2026-11-25"


def issue(folder, *options):
    done = subprocess.run([PROGRAM, "build", SAMPLES, "-o", folder, "--date", DATE, *options],
                          capture_output=True, text=True, check=False)
    if done.returncode:
        raise AssertionError(done.stderr)
    return done.stdout


def page_texts(path):
    done = subprocess.run(["pdftotext", "-raw", "-enc", "UTF-8", path, "-"],
                          capture_output=True, text=True, check=True)
    return done.stdout.split("\f")


def text_of(path):
    return re.sub(r"\s+", " ", " ".join(page_texts(path)))


def grey_pages(path, folder):
    """Each page as (width, height, bytes), 30 dpi."""
    subprocess.run(["pdftoppm", "-r", "30", "-gray", path, os.path.join(folder, "page")], check=True)
    for name in sorted(glob.glob(os.path.join(folder, "page*.pgm"))):
        with open(name, "rb") as file:
            data = file.read()
        os.remove(name)
        head = re.match(rb"P5\s+(\d+)\s+(\d+)\s+255\s", data)
        yield int(head[1]), int(head[2]), data[head.end():]


class Samples(unittest.TestCase):
    @classmethod
    def setUpClass(cls):
        cls.store = tempfile.TemporaryDirectory()
        cls.one = os.path.join(cls.store.name, "one")
        issue(cls.one, "-j", "1")
        cls.pdfs = sorted(glob.glob(os.path.join(cls.one, "*.pdf")))

    @classmethod
    def tearDownClass(cls):
        cls.store.cleanup()

    def test_there_are_enough(self):
        self.assertGreaterEqual(len(self.pdfs), 12)

    def test_two_builds_are_equal_byte_for_byte(self):
        two = os.path.join(self.store.name, "two")
        issue(two, "-j", "2")
        names = sorted(name for name in os.listdir(self.one) if os.path.isfile(
            os.path.join(self.one, name)) and not name.startswith(".") and name != "run.jsonl")
        self.assertGreaterEqual(len(names), 3 * len(self.pdfs) + 1)
        _, differing, missing = filecmp.cmpfiles(self.one, two, names, shallow=False)
        self.assertEqual((differing, missing), ([], []))

    def test_validators(self):
        done = subprocess.run(["bash", os.path.join(HERE, "pdf.sh"), *self.pdfs],
                              capture_output=True, text=True, check=False)
        self.assertEqual(done.returncode, 0, done.stdout + done.stderr)

    def test_names_of_every_script_are_in_the_text(self):
        text = text_of(os.path.join(self.one, f"BARREL-HEADS_rA_{DATE}.pdf"))
        for name in ("Βαρελοποιία Λευκός Δρυς", "Бочарня «Белый дуб»", "白橡木桶", "Šárka Ňová"):
            self.assertIn(name, text)

    def test_the_text_of_each_has_its_title_and_sections(self):
        for path in self.pdfs:
            text = text_of(path)
            for word in ("Requirement as understood", "Safety", "PRELIMINARY", "Calculation trace"):
                self.assertIn(word, text, path)

    def test_the_answer_stands_on_page_one(self):
        checked = 0
        for path in self.pdfs:
            pages = page_texts(path)
            contents = [i for i, page in enumerate(pages) if page.startswith("Contents")]
            if contents:
                self.assertEqual(contents, [1], path)
                checked += 1
        self.assertGreater(checked, 8)

    def test_no_page_is_blank_or_clipped(self):
        for path in self.pdfs[:4]:
            for number, (width, height, dots) in enumerate(grey_pages(path, self.store.name), 1):
                where = f"{path} page {number}"
                dark = sum(1 for value in dots if value < 200)
                self.assertGreater(dark, 0.002 * width * height, where)
                border = 5  # 4 mm at 30 dpi
                for row in range(height):
                    line = dots[row * width:(row + 1) * width]
                    edge = line if row < border or row >= height - border else (
                        line[:border] + line[-border:])
                    self.assertTrue(all(value > 250 for value in edge), where)


if __name__ == "__main__":
    unittest.main()
