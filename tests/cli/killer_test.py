"""Runs killed (SIGKILL) at a random moment, then completed: every file whole at any time, SHA256SUMS true, and in the end the
same bytes as an undisturbed run. KILLS sets how many (5 unless told), SEED the chance."""

import hashlib
import os
import random
import re
import shutil
import subprocess
import sys
import time
import unittest

from support import DATE, PROGRAM, ROOT, Desk

sys.path.append(str(ROOT / "tests/bench"))
from inbox import write_inbox  # noqa: E402

KILLS = int(os.environ.get("KILLS", "5"))
SEED = int(os.environ.get("SEED", "1"))
ISSUE = re.compile(r".*\.(pdf|bom\.csv|json)")


class Killer(Desk):
    COUNT = 24

    def command(self, source, out, *more):
        return [PROGRAM, "build", source, "-c", "catalogue.xml", "--date", DATE, "-o", out, "-j2", *more]

    def setUp(self):
        super().setUp()
        write_inbox(self.folder, self.COUNT)
        shutil.copytree(self.folder / "in", self.folder / "changed")
        for path in (self.folder / "changed").rglob("*.ini"):
            path.write_text(path.read_text().replace("title = ", "title = Again: "))
        self.run_once("in", "first")
        shutil.copytree(self.folder / "first", self.folder / "second")
        begin = time.monotonic()
        self.run_once("changed", "second", "--force")
        self.seconds = time.monotonic() - begin
        self.chance = random.Random(SEED)

    def run_once(self, source, out, *more):
        done = subprocess.run(self.command(source, out, *more), cwd=self.folder, stdout=subprocess.DEVNULL,
                              stderr=subprocess.PIPE, text=True, timeout=300)
        self.assertEqual(done.returncode, 0, done.stderr)

    def kill_once(self, source, out, *more):
        """Whether the run was still going."""
        process = subprocess.Popen(self.command(source, out, *more), cwd=self.folder, stdout=subprocess.DEVNULL,
                                   stderr=subprocess.DEVNULL)
        try:
            process.wait(self.chance.uniform(0, 1.1 * self.seconds))
            return False
        except subprocess.TimeoutExpired:
            process.kill()
            process.wait()
            return True

    def check_whole(self, out, *expected):
        """Every issued file has the bytes of one of the undisturbed folders; every line of the sums is true."""
        files = self.issued(out)
        for name, data in files.items():
            if ISSUE.fullmatch(name) and "/" not in name:
                self.assertTrue(any(folder.get(name) == data for folder in expected), name)
        for line in files.get("SHA256SUMS", b"").decode().splitlines():
            self.assertEqual(line[:64], hashlib.sha256(files[line[66:]]).hexdigest(), line)

    def test_killed_and_completed(self):
        first, second = self.issued("first"), self.issued("second")
        killed = 0
        for number in range(KILLS):
            supersedes = number % 2 == 1
            out = f"out{number}"
            with self.subTest(number=number, supersedes=supersedes):
                if supersedes:
                    shutil.copytree(self.folder / "first", self.folder / out)
                work = ("changed", out, "--force") if supersedes else ("in", out)
                for _ in range(self.chance.randint(1, 3)):
                    killed += self.kill_once(*work)
                    if (self.folder / out).exists():
                        self.check_whole(out, first, second)
                self.run_once(*work)
                wanted = second if supersedes else first
                found = self.issued(out)
                self.assertEqual({n: d for n, d in found.items() if "/" not in n},
                                 {n: d for n, d in wanted.items() if "/" not in n})
                # A killed run may have kept a copy of what it then did not supersede; none is lost.
                for name, data in wanted.items():
                    self.assertEqual(found[name], data)
                self.assertEqual([p for p in (self.folder / out).rglob(".*.part")], [])
            shutil.rmtree(self.folder / out)
        self.assertGreaterEqual(killed, KILLS // 2)
        print(f"{killed} runs killed, {KILLS} folders completed")


if __name__ == "__main__":
    unittest.main()
