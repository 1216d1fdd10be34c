"""Pages as pictures against stored ones. `python3 pages_test.py --store` makes the stored ones anew.

Stored are grey pictures of 60 dots an inch with 16 levels, of the first pages of four samples.
"""
import glob
import os
import re
import struct
import subprocess
import sys
import tempfile
import unittest
import zlib

HERE = os.path.dirname(os.path.abspath(__file__))
SAMPLES = os.path.join(HERE, "..", "..", "sample_requests")
STORE = os.path.join(HERE, "..", "pages")
PROGRAM = os.environ.get("SWATHSPEC", os.path.join(HERE, "../../.build/release/swathspec"))
SHOWN = {"first-call.ini": 5, "foil-lids-too-fast.ini": 4, "card-sleeves.ini": 8, "glass-vials.ini": 8}
LEVELS = 17           # a dot's value over this is its level, 0 to 15
LARGE = 5             # levels a dot may differ by
MOST_DIFFERING = 0.002  # share of dots that differ by more


def pictures(source, pages, folder):
    """(name, width, height, levels) of the first pages of the sample's document."""
    out = os.path.join(folder, "out")
    subprocess.run([PROGRAM, "build", os.path.join(SAMPLES, source), "-o", out, "--date", "2026-11-25"],
                   capture_output=True, check=True)
    path = glob.glob(os.path.join(out, "*.pdf"))[0]
    subprocess.run(["pdftoppm", "-r", "60", "-gray", "-l", str(pages), path, os.path.join(folder, "p")],
                   check=True)
    for number, name in enumerate(sorted(glob.glob(os.path.join(folder, "p*.pgm"))), 1):
        with open(name, "rb") as file:
            data = file.read()
        head = re.match(rb"P5\s+(\d+)\s+(\d+)\s+255\s", data)
        stem = os.path.splitext(source)[0]
        yield (f"{stem}-{number}.png", int(head[1]), int(head[2]),
               bytes(value // LEVELS for value in data[head.end():]))


def write_png(path, width, height, levels):
    rows = []
    for y in range(height):
        row = levels[y * width:(y + 1) * width] + b"\0" * (width % 2)
        rows.append(b"\0" + bytes(row[i] << 4 | row[i + 1] for i in range(0, len(row), 2)))

    def chunk(kind, data):
        return struct.pack(">I", len(data)) + kind + data + struct.pack(">I", zlib.crc32(kind + data))

    with open(path, "wb") as file:
        file.write(b"\x89PNG\r\n\x1a\n" + chunk(b"IHDR", struct.pack(">IIBBBBB", width, height, 4, 0, 0, 0, 0))
                   + chunk(b"IDAT", zlib.compress(b"".join(rows), 9)) + chunk(b"IEND", b""))


def read_png(path):
    """Of the kind written above."""
    with open(path, "rb") as file:
        data = file.read()
    width, height = struct.unpack(">II", data[16:24])
    packed, at = b"", 8
    while at < len(data):
        size, kind = struct.unpack(">I4s", data[at:at + 8])
        if kind == b"IDAT":
            packed += data[at + 8:at + 8 + size]
        at += size + 12
    raw, stride = zlib.decompress(packed), 1 + (width + 1) // 2
    levels = bytearray()
    for y in range(height):
        row = raw[y * stride + 1:(y + 1) * stride]
        levels += bytes(value for byte in row for value in (byte >> 4, byte & 15))[:width]
    return width, height, bytes(levels)


class Pages(unittest.TestCase):
    def test_pages_look_as_stored(self):
        for source, pages in SHOWN.items():
            with tempfile.TemporaryDirectory() as folder:
                for name, width, height, levels in pictures(source, pages, folder):
                    with self.subTest(name):
                        stored = read_png(os.path.join(STORE, name))
                        self.assertEqual((width, height), stored[:2])
                        differing = sum(1 for a, b in zip(levels, stored[2]) if abs(a - b) > LARGE)
                        self.assertLess(differing, MOST_DIFFERING * width * height)

    def test_a_changed_page_is_noticed(self):
        width, height, levels = read_png(sorted(glob.glob(os.path.join(STORE, "*.png")))[0])
        moved = levels[width * 3:] + levels[:width * 3]  # three dots up, 1.3 mm
        differing = sum(1 for a, b in zip(levels, moved) if abs(a - b) > LARGE)
        self.assertGreater(differing, MOST_DIFFERING * width * height)


def store():
    for old in glob.glob(os.path.join(STORE, "*.png")):
        os.remove(old)
    for source, pages in SHOWN.items():
        with tempfile.TemporaryDirectory() as folder:
            for name, width, height, levels in pictures(source, pages, folder):
                write_png(os.path.join(STORE, name), width, height, levels)


if __name__ == "__main__":
    if sys.argv[1:] == ["--store"]:
        store()
    else:
        unittest.main()
