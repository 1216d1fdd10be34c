"""What goes wrong around the program: paths, full disks, closed pipes, interruptions."""

import json
import os
import pathlib
import resource
import signal
import subprocess
import time
import unittest

from support import DATE, PROGRAM, ROOT, Desk


class Paths(Desk):
    def test_missing_paths_and_empty_folders(self):
        (self.folder / "empty").mkdir()
        done = self.run_program("build", "none.ini", "empty", expect=66)
        self.assertEqual(done.stdout, "")
        self.assertIn("none.ini:1:1: error[E0301]: there is no such file or folder", done.stderr)
        self.assertIn("empty:1:1: error[E0302]: there is no request in it", done.stderr)
        self.assertFalse((self.folder / "specifications").exists())

    def test_a_missing_path_does_not_stop_the_others(self):
        self.request("q.ini")
        done = self.run_program("build", "none.ini", "q.ini", "--date", DATE, expect=66)
        self.assertEqual(done.stdout.split()[0], "issued")

    def test_no_catalogue(self):
        self.request("in/deep/q.ini")
        done = self.run_program("build", "in", expect=66)
        self.assertIn("error[E0304]: there is no catalogue for this request", done.stderr)
        self.assertTrue(done.stdout.startswith("failed - q_rA_"))
        self.run_program("build", "in", env={"SWATHSPEC_CATALOGUE": "catalogue.xml"})
        self.run_program("build", "in", "-c", "none.xml", expect=66)
        self.run_program("check", "in", "-c", "catalogue.xml")

    def test_a_faulty_catalogue_is_told_once(self):
        text = (self.folder / "catalogue.xml").read_text()
        (self.folder / "catalogue.xml").write_text(text.replace("<price>", "<prize>", 1)
                                                   .replace("</price>", "</prize>", 1))
        self.request("a.ini")
        self.request("b.ini")
        done = self.run_program("build", "a.ini", "b.ini", expect=65)
        self.assertEqual(done.stderr.count("catalogue.xml:8:6: error"), 1, done.stderr)
        self.assertEqual(done.stderr.count("error[E0305]"), 2)

    def test_a_faulty_price_list_is_named_in_place_of_the_catalogue(self):
        (self.folder / "p.csv").write_text("part_number,unit_price,currency,price_date\nX,y,EUR\n")
        self.request("a.ini")
        self.request("b.ini")
        done = self.run_program("build", "a.ini", "b.ini", "--prices", "p.csv", expect=65)
        self.assertEqual(done.stderr.count("p.csv:2:1: error[E0191]"), 1, done.stderr)
        self.assertEqual(done.stderr.count("error[E0305]: the price list p.csv has errors\n"), 2)
        self.assertNotIn("the catalogue catalogue.xml has errors", done.stderr)
        done = self.run_program("build", "a.ini", "b.ini", "--prices", "none.csv", expect=66)
        self.assertEqual(done.stderr.count("error["), 1, done.stderr)
        self.assertTrue(done.stderr.startswith("none.csv:1:1: error[E0301]: "), done.stderr)

    def test_a_file_named_twice_is_read_once_with_a_warning(self):
        self.request("q.ini")
        done = self.run_program("build", "q.ini", "q.ini", "--date", DATE)
        self.assertEqual(done.stdout.splitlines()[0].split()[0], "issued")
        self.assertIn("q.ini:1:1: warning[W0305]: named twice, and read once\n", done.stderr)
        self.assertEqual(len(self.check_archive()), 1)
        self.run_program("check", ".", "q.ini", "./q.ini")

    def test_a_catalogue_in_place_of_a_request_is_told(self):
        done = self.run_program("build", "catalogue.xml", expect=66)
        self.assertIn("catalogue.xml:1:1: error[E0302]: this is a catalogue, no request\n",
                      done.stderr)
        self.assertIn("hint: name the requests, and the catalogue with -c catalogue.xml", done.stderr)
        self.run_program("build", "catalogue.xml", "catalogue.xml", expect=66)

    def test_no_place_for_the_display_lists_is_told_before_any_work(self):
        self.request("q.ini")
        for path in ("none/f.jsonl", "."):
            done = self.run_program("build", "q.ini", "--dump-frames", path, expect=73)
            self.assertTrue(done.stderr.startswith(path + ":1:1: error[E0308]: "), done.stderr)
            self.assertFalse((self.folder / "specifications").exists())

    def test_an_option_that_is_not_there_is_called_so(self):
        self.request("q.ini")
        done = self.run_program("build", "q.ini", "--nonsense", expect=64)
        self.assertTrue(done.stderr.startswith("swathspec: there is no option --nonsense\n"))
        done = self.run_program("--nonsense", expect=64)
        self.assertIn("there is no option --nonsense before a command", done.stderr)
        done = self.run_program("fields", "W0503", expect=64)
        self.assertIn("see swathspec fields --codes W0503", done.stderr)

    def test_a_fault_of_own_templates_has_its_place(self):
        self.request("q.ini")
        (self.folder / "own/en").mkdir(parents=True)
        text = (ROOT / "templates/en/safety.tpl").read_text().replace("{{", "{{NONSENSE}}{{", 2)
        text = text.replace("{{NONSENSE}}", "", 1)
        (self.folder / "own/en/safety.tpl").write_text(text)
        done = self.run_program("build", "q.ini", "--templates", "own", expect=65)
        line = next(i for i, l in enumerate(text.splitlines(), 1) if "{{NONSENSE}}" in l)
        column = text.splitlines()[line - 1].index("{{NONSENSE}}") + 1
        self.assertTrue(done.stderr.startswith(
            f"own/en/safety.tpl:{line}:{column}: error[E0311]: unknown marker {{{{NONSENSE}}}}\n"),
            done.stderr)
        self.assertIn("  hint: ", done.stderr)

    def test_linked_folders_hidden_entries_and_the_output_are_passed_over(self):
        self.request("in/q.ini")
        self.request("in/.hidden/x.ini")
        self.request("elsewhere/y.ini")
        self.request("in/out/z.ini")
        (self.folder / "in/link").symlink_to(self.folder / "elsewhere")
        done = self.run_program("build", "in", "-o", "in/out", "-c", "catalogue.xml", "--date", DATE)
        self.assertEqual([line.split()[2] for line in done.stdout.splitlines()], [f"q_rA_{DATE}"])

    def test_an_unknown_root_is_an_error_a_catalogue_is_passed_over(self):
        self.request("in/q.ini")
        (self.folder / "in/other.xml").write_text("<drawing/>")
        (self.folder / "in/heads.xml").write_text('<catalogue date="2026-01-01"/>')
        done = self.run_program("build", "in", "--date", DATE, expect=65)
        self.assertIn("in/other.xml:1:", done.stderr)
        self.assertNotIn("heads.xml", done.stderr)
        self.assertEqual(len(done.stdout.splitlines()), 2)


class Output(Desk):
    def test_a_file_in_the_way(self):
        self.request("q.ini")
        (self.folder / "out").write_text("")
        done = self.run_program("build", "q.ini", "-o", "out", expect=73)
        self.assertIn("out: cannot make folder: Not a directory", done.stderr)
        self.run_program("build", "q.ini", "-o", "/proc/none/out", expect=73)

    def test_a_folder_in_place_of_a_file(self):
        self.request("q.ini")
        (self.folder / f"specifications/q_rA_{DATE}.pdf/x").mkdir(parents=True)
        done = self.run_program("build", "q.ini", "--date", DATE, expect=73)
        self.assertIn("error[E0308]", done.stderr)
        self.assertTrue(done.stdout.startswith("failed"))

    def test_a_full_disk(self):
        self.request("q.ini")

        def small_files():
            resource.setrlimit(resource.RLIMIT_FSIZE, (8192, 8192))

        done = self.run_program("build", "q.ini", "--date", DATE, expect=74, preexec_fn=small_files)
        self.assertIn("cannot write: File too large", done.stderr)
        self.assertEqual(self.check_archive(), [])
        self.run_program("build", "q.ini", "--date", DATE)
        self.assertEqual(len(self.check_archive()), 1)

    def test_a_closed_pipe_is_74_and_the_documents_are_issued(self):
        for i in range(4):
            self.request(f"in/{i}.ini")
        read, write = os.pipe()
        os.close(read)
        done = self.run_program("build", "in", "--date", DATE, expect=74, stdout=write)
        os.close(write)
        self.assertNotIn("pipe", done.stderr)
        self.assertEqual(len(self.check_archive()), 4)

    def test_standard_output_full(self):
        with open("/dev/full", "w") as full:
            done = self.run_program("fields", expect=74, stdout=full)
        self.assertIn("<stdout>: cannot write: No space left on device", done.stderr)

    def test_two_runs_do_not_share_a_folder(self):
        import fcntl
        self.request("q.ini")
        self.run_program("build", "q.ini", "--date", DATE)
        with open(self.folder / "specifications/.swathspec/lock") as lock:
            fcntl.flock(lock, fcntl.LOCK_EX)
            done = self.run_program("build", "q.ini", "--date", DATE, expect=73)
        self.assertIn("another run is issuing into this folder", done.stderr)


class Interruption(Desk):
    """The run is ended somewhere; what stands is whole, and the next run completes it."""

    def begin(self, count=120):
        for i in range(count):
            self.request(f"in/{i:03}.ini")
        process = subprocess.Popen([PROGRAM, "build", "in", "--date", DATE, "-j", "2"],
                                   cwd=self.folder, stdout=subprocess.PIPE, stderr=subprocess.PIPE)
        deadline = time.monotonic() + 60
        while time.monotonic() < deadline:
            if list(self.folder.glob("specifications/*.json")):
                return process
            time.sleep(0.002)
        self.fail("nothing was issued")

    def finish(self):
        self.run_program("build", "in", "--date", DATE)
        self.assertEqual(len(self.check_archive()), 120)

    def test_interrupted(self):
        process = self.begin()
        process.send_signal(signal.SIGINT)
        output, error = process.communicate(timeout=60)
        self.assertEqual(process.returncode, 130, error)
        stems = self.check_archive()
        self.assertLess(len(stems), 120)
        self.assertEqual(sorted(line.split()[2] for line in output.decode().splitlines()),
                         sorted(stems))
        self.finish()

    def test_killed(self):
        process = self.begin()
        process.kill()
        process.communicate(timeout=60)
        self.assertLess(len(self.check_archive(all_listed=False)), 120)
        self.finish()


if __name__ == "__main__":
    unittest.main()
