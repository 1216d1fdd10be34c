"""The example units for systemd: syntax by systemd-analyze where it is there, and that the command in them exists."""

import re
import shutil
import subprocess
import unittest

from support import PROGRAM, SAMPLES, Desk

UNITS = ["swathspec-inbox.path", "swathspec-inbox.service"]


class Units(Desk):
    def test_the_command_is_one_of_ours(self):
        command = re.search(r"(?m)^ExecStart=/usr/local/bin/swathspec (.*)$", (SAMPLES / UNITS[1]).read_text())[1].split()
        self.request("inbox/q.ini")
        place = {"/srv/quotes/" + name: str(self.folder / name) for name in ("inbox", "catalogue.xml", "issued")}
        self.run_program(*(place.get(word, word) for word in command))
        self.assertEqual(len(self.check_archive("issued")), 1)

    @unittest.skipUnless(shutil.which("systemd-analyze"), "systemd-analyze is not on this machine")
    def test_syntax(self):
        for name in UNITS:
            text = (SAMPLES / name).read_text()
            (self.folder / name).write_text(text.replace("/usr/local/bin/swathspec", PROGRAM))
        done = subprocess.run(["systemd-analyze", "verify", *(self.folder / name for name in UNITS)],
                              stdout=subprocess.PIPE, stderr=subprocess.STDOUT, text=True)
        self.assertEqual((done.returncode, done.stdout), (0, ""))
        (self.folder / UNITS[0]).write_text("[Path]\nPathChanged=here\n")
        done = subprocess.run(["systemd-analyze", "verify", self.folder / UNITS[0]], stdout=subprocess.PIPE,
                              stderr=subprocess.STDOUT, text=True)
        self.assertNotEqual(done.stdout, "", "a wrong unit passes")


if __name__ == "__main__":
    unittest.main()
