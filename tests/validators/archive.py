"""archive.py FILE...: what PDF/A-1b and our own promises ask beyond what Preflight looks at.

One line a fault, `FILE: fault`; exit status 0 without faults, 1 with some, 64 usage. Reads the file
through qpdf's JSON, so that the structure is another program's reading, not our writer's.
"""
import base64
import json
import re
import struct
import subprocess
import sys
import xml.etree.ElementTree as ElementTree

RDF = "{http://www.w3.org/1999/02/22-rdf-syntax-ns#}"
DC = "{http://purl.org/dc/elements/1.1/}"
XMP = "{http://ns.adobe.com/xap/1.0/}"
PDF = "{http://ns.adobe.com/pdf/1.3/}"
PDFA = "{http://www.aiim.org/pdfa/ns/id/}"
TOKEN = re.compile(rb"<([0-9A-Fa-f\s]*)>|/([^\s<>\[\]()/]+)|\(((?:[^()\\]|\\.)*)\)|[^\s<>\[\]()/]+|[\[\]]", re.S)
ESCAPE = re.compile(rb"\\([0-7]{1,3}|\r\n|.)", re.S)
ESCAPED = {b"n": b"\n", b"r": b"\r", b"t": b"\t", b"b": b"\b", b"f": b"\f",
           b"\n": b"", b"\r": b"", b"\r\n": b""}
REFERENCE = re.compile(r"\d+ \d+ R$")


class File:
    """The objects of a PDF file, streams decoded."""

    def __init__(self, path):
        with open(path, "rb") as file:
            self.bytes = file.read()
        done = subprocess.run(["qpdf", "--json=2", "--json-stream-data=inline",
                               "--decode-level=generalized", path],
                              capture_output=True, check=False)
        if done.returncode:
            raise ValueError("qpdf: " + done.stderr.decode("utf-8", "replace").strip())
        self.objects = json.loads(done.stdout)["qpdf"][1]
        self.trailer = self.objects["trailer"]["value"]
        self.catalog = self.get(self.trailer["/Root"])

    def entry(self, value):
        """The object a reference names, with its stream where it has one."""
        return self.objects.get(f"obj:{value}", {})

    def get(self, value):
        """The value itself: a dictionary, list, text or number."""
        while isinstance(value, str) and REFERENCE.match(value):
            entry = self.entry(value)
            value = entry["stream"]["dict"] if "stream" in entry else entry.get("value")
        return value

    def data(self, value):
        stream = self.entry(value).get("stream") if isinstance(value, str) else None
        return base64.b64decode(stream["data"]) if stream else None

    def pages(self):
        found = []

        def walk(reference, resources):
            node = self.get(reference)
            resources = node.get("/Resources", resources)
            if node["/Type"] == "/Page":
                found.append((reference, node, self.get(resources)))
            for kid in self.get(node.get("/Kids", [])):
                walk(kid, resources)

        walk(self.catalog["/Pages"], {})
        return found

    def dictionaries(self):
        """Every dictionary and stream dictionary, nested ones too."""
        def walk(value):
            if isinstance(value, dict):
                yield value
                for inner in value.values():
                    yield from walk(inner)
            elif isinstance(value, list):
                for inner in value:
                    yield from walk(inner)

        for entry in self.objects.values():
            yield from walk(entry["stream"]["dict"] if "stream" in entry else entry.get("value"))


def text(value):
    return value[2:] if isinstance(value, str) and value.startswith("u:") else value


def check_header(file):
    if not file.bytes.startswith(b"%PDF-1.4\n%"):
        yield "header is not %PDF-1.4 with a comment line after it"
    elif any(byte < 128 for byte in file.bytes[10:14]):
        yield "the comment after the header has no four bytes above 127"
    if "/Version" in file.catalog:
        yield "the catalog raises the version"
    if not re.search(rb"%%EOF\s?\Z", file.bytes):
        yield "bytes after the end of the file"


def packet(file):
    metadata = file.catalog.get("/Metadata")
    data = file.data(metadata)
    if data is None:
        return None, ["no metadata stream"]
    head = file.get(metadata)
    faults = []
    if head.get("/Type") != "/Metadata" or head.get("/Subtype") != "/XML":
        faults.append("metadata is not of type Metadata, subtype XML")
    if "/Filter" in head or data not in file.bytes:
        faults.append("the metadata is compressed")
    try:
        return ElementTree.fromstring(data.decode("utf-8")), faults
    except (ElementTree.ParseError, UnicodeDecodeError) as error:
        return None, faults + [f"the metadata is not XML: {error}"]


def item(root, tag):
    found = root.find(f".//{tag}")
    if found is None:
        return None
    inner = found.find(f".//{RDF}li")
    return (inner if inner is not None else found).text


def moment(date):
    """D:20261125000000+00'00' as the packet writes it."""
    parts = re.fullmatch(r"D:(\d{4})(\d\d)(\d\d)(\d\d)(\d\d)(\d\d)\+00'00'", date or "")
    return "{}-{}-{}T{}:{}:{}+00:00".format(*parts.groups()) if parts else date


def check_metadata(file):
    root, faults = packet(file)
    yield from faults
    if root is None:
        return
    if (item(root, PDFA + "part"), item(root, PDFA + "conformance")) != ("1", "B"):
        yield "the metadata does not claim PDF/A-1b"
    info = {key: text(value) for key, value in file.get(file.trailer.get("/Info", {})).items()}
    pairs = [("/Title", DC + "title"), ("/Author", DC + "creator"), ("/Subject", DC + "description"),
             ("/Keywords", PDF + "Keywords"), ("/Creator", XMP + "CreatorTool"),
             ("/Producer", PDF + "Producer")]
    for key, tag in pairs:
        if info.get(key) != item(root, tag):
            yield f"{key[1:]} is {info.get(key)!r} in the dictionary, {item(root, tag)!r} in the metadata"
    for key, tag in (("/CreationDate", "CreateDate"), ("/ModDate", "ModifyDate")):
        if moment(info.get(key)) != item(root, XMP + tag):
            yield f"{key[1:]} differs between dictionary and metadata"
    for key in ("/Title", "/Author", "/Subject"):
        if not info.get(key):
            yield f"no {key[1:]}"


def check_catalog(file):
    if not text(file.catalog.get("/Lang")):
        yield "the document names no language"
    if file.get(file.catalog.get("/ViewerPreferences", {})).get("/DisplayDocTitle") is not True:
        yield "the title is not shown as the window's"
    if not file.get(file.catalog.get("/PageLabels", {})).get("/Nums"):
        yield "the pages have no labels"
    alone = sum(1 for _ in file.pages()) == 1  # a summary
    if not alone and not file.get(file.catalog.get("/Outlines", {})).get("/First"):
        yield "no bookmarks"
    for key in ("/OpenAction", "/AA", "/AcroForm", "/Names"):
        if key in file.catalog:
            yield f"the catalog has {key[1:]}"


def check_transparency(file):
    for found in file.dictionaries():
        if found.get("/SMask", "/None") != "/None":
            yield "a soft mask"
        if found.get("/BM", "/Normal") not in ("/Normal", "/Compatible"):
            yield "a blend mode"
        if any(found.get(key, 1) != 1 for key in ("/CA", "/ca")):
            yield "an opacity below 1"
        if isinstance(found.get("/Group"), dict) and found["/Group"].get("/S") == "/Transparency":
            yield "a transparency group"


def check_destinations(file):
    pages = {reference for reference, _, _ in file.pages()}
    for found in file.dictionaries():
        place = file.get(found.get("/Dest")) if "/Dest" in found else None
        if "/Dest" in found and not (isinstance(place, list) and place and place[0] in pages):
            yield "a link or bookmark leads to no page"
        if found.get("/Subtype") == "/Link" and not (file.get(found.get("/F", 0)) & 4):
            yield "a link is not marked to print"


def unescaped(match):
    """What stands for an escape of a literal string (ISO 32000-1, 7.3.4.2)."""
    sign = match.group(1)
    return bytes([int(sign, 8) & 0xFF]) if sign[:1].isdigit() else ESCAPED.get(sign, sign)


def shown_bytes(token):
    """The bytes of a string, hexadecimal or literal; None for another token."""
    if token.group(1) is not None:
        return bytes.fromhex(token.group(1).decode())
    return None if token.group(3) is None else ESCAPE.sub(unescaped, token.group(3))


def codes_used(file):
    """By font object: the codes its strings on all pages have."""
    used = {}
    for _, page, resources in file.pages():
        fonts = file.get(resources.get("/Font", {}))
        contents = page.get("/Contents")
        parts = contents if isinstance(contents, list) else [contents]
        content = b"\n".join(file.data(part) or b"" for part in parts)
        font, last = None, None
        for token in TOKEN.finditer(content):
            if token.group(2) is not None:
                last = token.group(2)
            elif token.group(0) == b"Tf" and last is not None:
                font = fonts.get("/" + last.decode())
            elif shown_bytes(token) is not None and font is not None:
                data = shown_bytes(token)
                codes = used.setdefault(font, set())
                codes.update(struct.unpack(f">{len(data) // 2}H", data))
    return used


def unicode_of(data):
    found = {}
    for block in re.findall(rb"beginbfchar(.*?)endbfchar", data, re.S):
        for code, target in re.findall(rb"<([0-9A-Fa-f]{4})>\s*<([0-9A-Fa-f]+)>", block):
            found[int(code, 16)] = int(target, 16)
    return found


def glyph_count(program):
    """numGlyphs of a TrueType program's maxp table; 0 when there is none."""
    count = struct.unpack(">H", program[4:6])[0]
    for i in range(count):
        tag, _, offset, _ = struct.unpack(">4sIII", program[12 + 16 * i:28 + 16 * i])
        if tag == b"maxp":
            return struct.unpack(">H", program[offset + 4:offset + 6])[0]
    return 0


def check_fonts(file):
    used = codes_used(file)
    if not used:
        yield "no text on any page"
    for reference, codes in used.items():
        font = file.get(reference)
        name = font["/BaseFont"]
        if not re.match(r"/[A-Z]{6}\+", name):
            yield f"{name} is no subset"
        descendant = file.get(file.get(font["/DescendantFonts"])[0])
        descriptor = file.get(descendant["/FontDescriptor"])
        if not descendant["/BaseFont"] == descriptor["/FontName"] == name:
            yield f"{name} has other names in its parts"
        listed = file.data(descriptor.get("/CIDSet"))
        mapped = file.data(font.get("/ToUnicode"))
        glyphs = file.data(descendant.get("/CIDToGIDMap"))
        program = file.data(descriptor.get("/FontFile2"))
        if listed is None or mapped is None or glyphs is None or program is None:
            yield f"{name} lacks its set of codes, its map to Unicode, its glyphs or its program"
            continue
        bits = {8 * at + bit for at, byte in enumerate(listed) for bit in range(8)
                if byte & (0x80 >> bit)}
        places = struct.unpack(f">{len(glyphs) // 2}H", glyphs)
        with_glyph = {code for code, glyph in enumerate(places) if glyph}
        if bits != with_glyph | {0}:
            yield f"{name}: the set of codes is not that of its glyphs"
        if not codes <= with_glyph:
            yield f"{name}: codes without a glyph: {sorted(codes - with_glyph)[:5]}"
        if places and max(places) >= glyph_count(program):
            yield f"{name}: a glyph beyond those of the program"
        targets = unicode_of(mapped)
        bad = [code for code in codes if targets.get(code, 0) in (0, 0xFEFF, 0xFFFE)]
        if bad:
            yield f"{name}: codes without Unicode: {sorted(bad)[:5]}"


CHECKS = (check_header, check_metadata, check_catalog, check_transparency, check_destinations,
          check_fonts)


def faults_of(path):
    try:
        file = File(path)
        return [fault for check in CHECKS for fault in check(file)]
    except (ValueError, KeyError, TypeError, struct.error, OSError) as error:
        return [f"cannot be read as a document of ours: {type(error).__name__} {error}"]


def main(paths):
    if not paths:
        print("usage: archive.py FILE...", file=sys.stderr)
        return 64
    status = 0
    for path in paths:
        for fault in faults_of(path):
            print(f"{path}: {fault}")
            status = 1
    return status


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
