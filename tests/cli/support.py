"""What the command line tests share: the program, a desk to work on, the samples."""

import hashlib
import json
import os
import pathlib
import re
import shutil
import subprocess
import tempfile
import unittest

ROOT = pathlib.Path(__file__).resolve().parents[2]
SAMPLES = ROOT / "sample_requests"
PROGRAM = os.environ.get("SWATHSPEC", str(ROOT / ".build/release/swathspec"))
DATE = "2026-11-25"

LOG = re.compile(r"run(\.\d+-of-\d+)?\.jsonl")

REQUEST = """[request]
id = {id}
title = {title}
{more}
[image]
width = 200 mm
resolution = 600 dpi

[line]
speed = 30 m/min

[substrate]
material = coated card
absorbency = low
surface_energy = 44 mN/m

[colour.black]
kind = process

[ink.black]
family = uv
viscosity = 12 mPa.s at 45 degC
surface_tension = 30 mN/m
"""


class Desk(unittest.TestCase):
    """A fresh folder with the sample catalogue in it; the program runs there."""

    def setUp(self):
        self.folder = pathlib.Path(tempfile.mkdtemp(prefix="swathspec_cli."))
        self.addCleanup(shutil.rmtree, self.folder, ignore_errors=True)
        shutil.copy(SAMPLES / "catalogue.xml", self.folder)

    def request(self, name, id=None, title="Lids", more=""):
        path = self.folder / name
        path.parent.mkdir(parents=True, exist_ok=True)
        path.write_text(REQUEST.format(id=id or path.stem, title=title, more=more), encoding="utf-8")
        return path

    def run_program(self, *arguments, expect=0, input=None, env=None, **more):
        environment = {k: v for k, v in os.environ.items()
                       if k not in ("SOURCE_DATE_EPOCH", "SWATHSPEC_CATALOGUE")}
        environment.update(env or {})
        more.setdefault("stdout", subprocess.PIPE)
        done = subprocess.run([PROGRAM, *map(str, arguments)], cwd=self.folder, input=input,
                              stderr=subprocess.PIPE, env=environment, text=True, timeout=300,
                              **more)
        self.assertIn(done.returncode, expect if isinstance(expect, tuple) else (expect,), done.stderr)
        return done

    def issued(self, folder="specifications"):
        """Names and bytes of every visible file of an archive but the logs, which carry the clock."""
        base = self.folder / folder
        return {path.relative_to(base).as_posix(): path.read_bytes()
                for path in sorted(base.rglob("*"))
                if path.is_file() and not LOG.fullmatch(path.name) and not any(p.startswith(".") for p in path.relative_to(base).parts)}

    def check_archive(self, folder="specifications", all_listed=True):
        """Every line of SHA256SUMS is true and sorted; every issue is whole and agrees with its
        JSON; nothing temporary is left. Returns the stems."""
        files = self.issued(folder)
        lines = files.get("SHA256SUMS", b"").decode().splitlines()
        listed = [line[66:] for line in lines]
        self.assertEqual(listed, sorted(listed))
        for line in lines:
            self.assertEqual(line[:66], hashlib.sha256(files[line[66:]]).hexdigest() + "  ")
        stems = [name[:-5] for name in files if name.endswith(".json") and "/" not in name]
        for stem in stems:
            figures = json.loads(files[stem + ".json"], parse_constant=self.fail)
            for kind, extension in (("pdf", ".pdf"), ("bom_csv", ".bom.csv")):
                self.assertEqual(figures["files"][kind]["name"], stem + extension)
                self.assertEqual(figures["files"][kind]["sha256"],
                                 hashlib.sha256(files[stem + extension]).hexdigest())
        if all_listed:
            beside = [stem + e for stem in stems for e in (".letter.txt", ".summary.pdf")
                      if stem + e in files]
            self.assertEqual(listed, sorted(beside + [stem + e for stem in stems
                                                      for e in (".pdf", ".bom.csv", ".json")]))
            parts = [path for path in (self.folder / folder).rglob(".*.part")]
            self.assertEqual(parts, [])
        return stems
