"""Does archive.py pass a good file and catch each fault it is there for?

Each fault is put into a good file through qpdf's JSON, so that the rest of the file stays sound.
"""
import base64
import json
import os
import subprocess
import tempfile
import unittest

import archive

HERE = os.path.dirname(os.path.abspath(__file__))
SAMPLES = os.path.join(HERE, "..", "..", "sample_requests")
PROGRAM = os.environ["SWATHSPEC"]


def rewritten(path, target, change):
    """A copy of the file in which `change` has altered the JSON of its objects."""
    done = subprocess.run(["qpdf", "--json=2", "--json-stream-data=inline", "--decode-level=none", path],
                          capture_output=True, check=True)
    whole = json.loads(done.stdout)
    change(whole["qpdf"][1])
    source = target + ".json"
    with open(source, "w", encoding="utf-8") as file:
        json.dump(whole, file)
    subprocess.run(["qpdf", "--json-input", source, target, "--static-id", "--stream-data=preserve",
                    "--object-streams=disable"], capture_output=True, check=True)


def of_type(objects, key, value):
    """Dictionaries with that entry, those of streams too."""
    found = []
    for entry in objects.values():
        inner = entry["stream"]["dict"] if "stream" in entry else entry.get("value")
        if isinstance(inner, dict) and inner.get(key) == value:
            found.append(inner)
    return found


def stream(objects, reference):
    return objects[f"obj:{reference}"]["stream"]


def set_stream(objects, reference, data):
    stream(objects, reference).update({"data": base64.b64encode(data).decode(), "dict": {}})


def catalog(objects):
    return of_type(objects, "/Type", "/Catalog")[0]


def info(objects):
    return objects["obj:" + objects["trailer"]["value"]["/Info"]]["value"]


def without(key):
    return lambda objects: catalog(objects).pop(key)


def first_page_state(objects, state):
    page = of_type(objects, "/Type", "/Page")[0]
    page["/Resources"]["/ExtGState"] = {"/G": state}


def all_codes(objects):
    for descriptor in of_type(objects, "/Type", "/FontDescriptor"):
        set_stream(objects, descriptor["/CIDSet"], b"\xff" * 32)


def no_unicode(objects):
    for font in of_type(objects, "/Subtype", "/Type0"):
        set_stream(objects, font["/ToUnicode"], b"begincmap endcmap")


def no_glyphs(objects):
    for font in of_type(objects, "/Subtype", "/CIDFontType2"):
        set_stream(objects, font["/CIDToGIDMap"], b"\0\0" * 64)


def metadata_type(objects):
    stream(objects, catalog(objects)["/Metadata"])["dict"]["/Subtype"] = "/XMP"


def lost_link(objects):
    """The place of the first link, which all links to it share."""
    place = of_type(objects, "/Subtype", "/Link")[0]["/Dest"]
    objects["obj:" + place]["value"][0] = catalog(objects)["/Outlines"]


FAULTS = {
    "other title": lambda objects: info(objects).update({"/Title": "u:Another"}),
    "other date": lambda objects: info(objects).update({"/ModDate": "u:D:20000101000000+00'00'"}),
    "no author": lambda objects: info(objects).pop("/Author"),
    "metadata type": metadata_type,
    "no language": without("/Lang"),
    "no window title": without("/ViewerPreferences"),
    "no page labels": without("/PageLabels"),
    "no bookmarks": without("/Outlines"),
    "raised version": lambda objects: catalog(objects).update({"/Version": "/1.6"}),
    "action": lambda objects: catalog(objects).update({"/OpenAction": {"/S": "/Named", "/N": "/Print"}}),
    "opacity": lambda objects: first_page_state(objects, {"/ca": 0.5}),
    "blend mode": lambda objects: first_page_state(objects, {"/BM": "/Multiply"}),
    "soft mask": lambda objects: first_page_state(objects, {"/SMask": {"/S": "/Alpha"}}),
    "group": lambda objects: of_type(objects, "/Type", "/Page")[0].update(
        {"/Group": {"/S": "/Transparency"}}),
    "unprinted link": lambda objects: of_type(objects, "/Subtype", "/Link")[0].update({"/F": 2}),
    "lost link": lost_link,
    "too many codes": all_codes,
    "no Unicode": no_unicode,
    "no glyphs": no_glyphs,
    "no subset": lambda objects: of_type(objects, "/Subtype", "/Type0")[0].update(
        {"/BaseFont": "/LiberationSans"}),
}


class Archive(unittest.TestCase):
    @classmethod
    def setUpClass(cls):
        cls.store = tempfile.TemporaryDirectory()
        folder = os.path.join(cls.store.name, "issued")
        subprocess.run([PROGRAM, "build", os.path.join(SAMPLES, "first-call.ini"), "-o", folder,
                        "--date", "2026-11-25"], capture_output=True, check=True)
        cls.good = os.path.join(folder, "FIRST-CALL_rA_2026-11-25.pdf")

    @classmethod
    def tearDownClass(cls):
        cls.store.cleanup()

    def test_a_good_file_passes(self):
        self.assertEqual(archive.faults_of(self.good), [])

    def test_a_rewritten_good_file_passes(self):
        path = os.path.join(self.store.name, "same.pdf")
        rewritten(self.good, path, lambda objects: None)
        self.assertEqual(archive.faults_of(path), [])

    def test_each_fault_is_caught(self):
        for name, change in FAULTS.items():
            with self.subTest(name):
                path = os.path.join(self.store.name, "bad.pdf")
                rewritten(self.good, path, change)
                self.assertNotEqual(archive.faults_of(path), [])

    def test_bytes_are_looked_at_too(self):
        with open(self.good, "rb") as file:
            good = file.read()
        for name, data in {"header": good.replace(b"%PDF-1.4", b"%PDF-1.6", 1),
                           "tail": good + b"more", "cut": good[:len(good) // 2], "empty": b""}.items():
            with self.subTest(name):
                path = os.path.join(self.store.name, "bytes.pdf")
                with open(path, "wb") as file:
                    file.write(data)
                self.assertNotEqual(archive.faults_of(path), [])


if __name__ == "__main__":
    unittest.main()
