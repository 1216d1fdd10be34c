"""The arrows of the house: output -> intake -> calc, one door to the operating system, heavy
headers each behind few files. Reads the sources; needs no build."""

import pathlib
import re
import tempfile
import unittest

ROOT = pathlib.Path(__file__).resolve().parents[2]
LAYERS = {"calc": {"calc"}, "intake": {"calc", "intake"}, "output": {"calc", "intake", "output"}}
INCLUDE = re.compile(r'^\s*#\s*include\s*(?:"([^"]+)"|<([^>]+)>)', re.MULTILINE)

# What calc may take from the standard library: nothing that reaches files, clock, locale, streams.
CALC_STANDARD = set(
    "algorithm array charconv cmath compare cstddef cstdint deque functional initializer_list iterator limits map "
    "memory numbers numeric optional set span stdexcept string string_view tuple type_traits unordered_map "
    "utility variant vector".split())

# Doors to the operating system beside output/os.*.
SYSTEM_HEADERS = set(
    "fstream filesystem malloc.h stdio.h cstdio iostream unistd.h fcntl.h dirent.h csignal signal.h "
    "sys/stat.h sys/file.h sys/types.h sys/mman.h sys/time.h time.h ctime clocale locale".split())
SYSTEM_NAMES = re.compile(
    r"\b(?:getenv|setenv|fopen|freopen|popen|std::system|load_file|save_file|"
    r"HPDF_SaveToFile|HPDF_Load\w*FromFile2?|HPDF_LoadPngImageFromFile|"
    r"hb_blob_create_from_file\w*|hb_face_create_from_file|LoadTemplate|StringToTemplateCache\w*File|"
    r"system_clock|ifstream|ofstream)\b|\bread_(?:ini|xml|json)\s*\(\s*\"")

# Headers that are slow to compile, and how many files may include them.
HEAVY = {"CLI/CLI.hpp": 1, "pugixml.hpp": 3, "boost/property_tree": 1, "ctemplate/": 2,
         "nlohmann/json.hpp": 1, "openssl/": 1}


def sources(root):
    for layer in LAYERS:
        for path in sorted((root / layer).rglob("*")):
            if path.suffix in (".h", ".cpp"):
                yield layer, path.relative_to(root).as_posix(), path.read_text(encoding="utf-8")


def without_comments(text):
    return re.sub(r"/\*.*?\*/|//[^\n]*", "", text, flags=re.DOTALL)


def faults(root):
    found = []
    for layer, name, text in sources(root):
        code = without_comments(text)
        door = re.fullmatch(r"output/os\.(h|cpp)", name)
        for own, other in INCLUDE.findall(text):
            header = own or other
            target = own.split("/")[0] if own else ""
            if own and target not in LAYERS:
                found.append(f"{name}: includes \"{own}\", which is in no layer")
            elif own and target not in LAYERS[layer]:
                found.append(f"{name}: {layer} must not include {own}")
            if other and layer == "calc" and other not in CALC_STANDARD:
                found.append(f"{name}: calc must not include <{other}>")
            if header in SYSTEM_HEADERS and not door:
                found.append(f"{name}: <{header}> belongs in output/os.*")
        if not door:
            for match in SYSTEM_NAMES.finditer(code):
                found.append(f"{name}: {match.group(0)} belongs in output/os.*")
    return found


def includers(root, header):
    return [name for _, name, text in sources(root)
            if any((own or other).startswith(header) for own, other in INCLUDE.findall(text))]


def sample_names():
    """Ids of the sample requests, names and part numbers of the sample catalogue; words left out."""
    names = set()
    for path in (ROOT / "sample_requests").iterdir():
        if path.suffix in (".ini", ".xml"):
            text = path.read_text(encoding="utf-8")
            names.update(re.findall(r"(?m)^id\s*=\s*(\S+)|<id>([^<]+)<|\bname=\"([^\"]+)\"|"
                                    r"<part_number>([^<]+)<", text))
    return {name for groups in names for name in groups if re.search(r"[A-Z].*-|-.*[A-Z]", name)}


def files_of_the_program():
    for layer in ("calc", "intake", "output", "templates"):
        for path in sorted((ROOT / layer).rglob("*")):
            if path.suffix in (".h", ".cpp", ".tpl", ".txt", ".ini"):
                yield path.relative_to(ROOT).as_posix(), path.read_text(encoding="utf-8")


class Layers(unittest.TestCase):
    def test_no_sample_is_known_to_the_program(self):
        names = sample_names()
        self.assertGreater(len(names), 70)
        word = re.compile(r"(?<![\w-])(?:" + "|".join(map(re.escape, sorted(names))) + r")(?![\w-])")
        known = [f"{file}: {match.group(0)}" for file, text in files_of_the_program()
                 for match in word.finditer(text)]
        self.assertEqual(known, [])

    def test_arrows_and_doors(self):
        self.assertEqual(faults(ROOT), [])

    def test_the_sources_were_read(self):
        self.assertGreater(len(list(sources(ROOT))), 100)

    def test_heavy_headers_stand_in_few_files(self):
        for header, most in HEAVY.items():
            with self.subTest(header=header):
                names = includers(ROOT, header)
                self.assertTrue(1 <= len(names) <= most, names)

    def test_main_is_short_and_included_by_nobody(self):
        self.assertLessEqual(len((ROOT / "output/main.cpp").read_text().splitlines()), 40)
        self.assertEqual(includers(ROOT, "output/main"), [])

    def test_every_kind_of_fault_is_found(self):
        wrong = {"calc/a.h": '#include "intake/read.h"\n', "calc/b.cpp": "#include <chrono>\n",
                 "intake/a.cpp": '#include "output/os.h"\n', "output/b.cpp": "#include <fstream>\n",
                 "output/c.cpp": "void f() { document.load_file(name); }\n",
                 "intake/d.cpp": '#include "tests/x.h"\n', "output/os.cpp": "#include <unistd.h>\n"}
        with tempfile.TemporaryDirectory() as folder:
            root = pathlib.Path(folder)
            for name, text in wrong.items():
                (root / name).parent.mkdir(exist_ok=True)
                (root / name).write_text(text)
            self.assertEqual(len(faults(root)), len(wrong) - 1, faults(root))


if __name__ == "__main__":
    unittest.main()
