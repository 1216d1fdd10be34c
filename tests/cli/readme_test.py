"""What the README shows of the program is what the program says."""

import re
import subprocess
import unittest

from support import Desk, ROOT


class Example(Desk):
    def setUp(self):
        super().setUp()
        self.readme = (ROOT / "README.md").read_text(encoding="utf-8")
        blocks = re.findall(r"^```\w*\n(.*?)^```$", self.readme, re.M | re.S)
        request = next(block for block in blocks if block.startswith("; candles.ini"))
        (self.folder / "candles.ini").write_text(request, encoding="utf-8")
        session = next(block for block in blocks if block.startswith("$ swathspec build candles"))
        parts = re.split(r"^\$ (.*)\n", session, flags=re.M)[1:]
        self.session = [(command.split("#")[0].split(), shown.splitlines())
                        for command, shown in zip(parts[::2], parts[1::2])]

    def said_by(self, words):
        if words[0] == "ls":
            return sorted(path.name for path in (self.folder / words[1]).iterdir()
                          if not path.name.startswith("."))
        done = self.run_program(*words[1:])
        return (done.stderr + done.stdout).splitlines()

    def test_every_line_shown_is_said_in_that_order(self):
        self.assertEqual([words[:2] for words, _ in self.session],
                         [["swathspec", "build"], ["ls", "specifications"], ["swathspec", "explain"]])
        for words, shown in self.session:
            said = iter(self.said_by(words))
            if words[0] == "ls":
                shown = " ".join(shown).split()
            self.assertGreater(len(shown), 2)
            for line in shown:
                self.assertIn(line, said, f"{words}: {line}")  # takes from `said` up to the line

    def test_the_document_has_the_pages_told(self):
        told = re.search(r"^The PDF has (\d+) pages", self.readme, re.M)
        self.run_program(*self.session[0][0][1:])
        pdf = next((self.folder / "specifications").glob("*.pdf"))
        info = subprocess.run(["pdfinfo", pdf], capture_output=True, text=True, check=True).stdout
        self.assertEqual(re.search(r"Pages:\s+(\d+)", info).group(1), told.group(1))


if __name__ == "__main__":
    unittest.main()
