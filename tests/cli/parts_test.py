"""Parts of an inbox under a real engine, GNU parallel: one shared folder or several, united by `index` into what a single
run makes, byte for byte."""

import pathlib
import shutil
import subprocess
import sys
import unittest

from support import DATE, PROGRAM, ROOT, Desk

sys.path.append(str(ROOT / "tests/bench"))
from inbox import write_inbox  # noqa: E402


class Parts(Desk):
    COUNT = 30
    PARTS = 4

    def setUp(self):
        super().setUp()
        write_inbox(self.folder, self.COUNT)
        self.build("single")

    def build(self, out, *more):
        return self.run_program("build", "in", "-c", "catalogue.xml", "--date", DATE, "-o", out, *more)

    def parallel(self, out):
        done = subprocess.run(["parallel", "--will-cite", "-j2", PROGRAM, "build", "in", "-c", "catalogue.xml", "--date", DATE,
                               "-o", out, "-j1", "--part", f"{{}}/{self.PARTS}", ":::",
                               *(str(k) for k in range(1, self.PARTS + 1))],
                              cwd=self.folder, stdout=subprocess.PIPE, stderr=subprocess.PIPE, text=True)
        self.assertEqual(done.returncode, 0, done.stderr)
        return done.stdout.splitlines()

    def check_union(self, folder):
        self.run_program("index", folder)
        self.assertEqual(self.issued(folder), self.issued("single"))
        self.run_program("verify", folder)
        self.assertGreaterEqual(len(self.check_archive(folder)), self.COUNT)

    def test_one_shared_folder(self):
        lines = self.parallel("shared")
        self.assertEqual(len(lines), len(set(lines)))
        self.assertNotIn("SHA256SUMS", self.issued("shared"))
        self.assertNotIn("overview.html", self.issued("shared"))
        logs = sorted(path.name for path in (self.folder / "shared").glob("run.*"))
        self.assertEqual(logs, [f"run.{k}-of-{self.PARTS}.jsonl" for k in range(1, self.PARTS + 1)])
        self.check_union("shared")
        again = self.parallel("shared")
        self.assertEqual({line.split()[0] for line in again}, {"unchanged"})
        self.assertEqual(self.issued("shared"), self.issued("single"))

    def test_several_folders_laid_together(self):
        self.parallel("part{}")
        union = self.folder / "union"
        union.mkdir()
        sizes = []
        for part in sorted(self.folder.glob("part?")):
            issues = [path for path in part.iterdir() if path.suffix in (".pdf", ".csv", ".json")]
            sizes.append(len(issues))
            for path in issues:
                shutil.copy2(path, union)
        self.assertEqual(len(sizes), self.PARTS)
        self.assertTrue(all(sizes), sizes)
        self.check_union("union")


if __name__ == "__main__":
    unittest.main()
