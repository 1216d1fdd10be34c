"""overview.html in a headless Chromium: sort, filter, links, hostile names, keyboard, narrow screens, nothing fetched.

SWATHSPEC names the program; SCREENSHOTS a folder for pictures at 1280 and 400 px (else they are only taken)."""

import json
import os
import pathlib
import shutil
import subprocess
import tempfile
import unittest
import urllib.parse

from selenium import webdriver
from selenium.webdriver.chrome.service import Service
from selenium.webdriver.common.by import By
from selenium.webdriver.common.keys import Keys
from selenium.webdriver.support.ui import Select, WebDriverWait

ROOT = pathlib.Path(__file__).resolve().parents[2]
SAMPLES = ROOT / "sample_requests"
PROGRAM = os.environ.get("SWATHSPEC", str(ROOT / ".build/release/swathspec"))
DATE = "2026-11-25"

HOSTILE = [
    ("<script>window.hit=1</script>", "<img src=x onerror='window.hit=2'>"),
    ("\"><svg onload=window.hit=3>", "' onmouseover='window.hit=4' x='"),
    ("javascript:window.hit=5", "</table></main><h1>gone"),
    ("{{ROWS}} {{%AUTOESCAPE}}", "&lt;b&gt; &amp; \u202e txet desrever \u2066"),
    ("<!-- rows -->", "<!-- rows --> --> ]]> </script>"),
    ("../../../etc/passwd", "W" * 190),
]


def write_requests(folder):
    for path in SAMPLES.iterdir():
        if path.suffix in (".ini", ".xml"):
            shutil.copy(path, folder)
    for number, (id, title) in enumerate(HOSTILE):
        (folder / f"hostile{number}.ini").write_text(
            f"[request]\nid = {id}\ntitle = {title}\n[customer]\norganisation = {title}\n", encoding="utf-8")


def browser():
    options = webdriver.ChromeOptions()
    options.binary_location = "/usr/bin/chromium"
    for argument in ("--headless=new", "--no-sandbox", "--disable-gpu", "--disable-dev-shm-usage",
                     "--force-device-scale-factor=1"):
        options.add_argument(argument)
    options.set_capability("goog:loggingPrefs", {"browser": "ALL", "performance": "ALL"})
    return webdriver.Chrome(service=Service("/usr/bin/chromedriver"), options=options)


class Overview(unittest.TestCase):
    @classmethod
    def setUpClass(cls):
        cls.folder = pathlib.Path(tempfile.mkdtemp(prefix="swathspec_browser."))
        cls.addClassCleanup(shutil.rmtree, cls.folder, ignore_errors=True)
        write_requests(cls.folder)
        for revision in (DATE, "2026-11-26"):
            done = subprocess.run([PROGRAM, "build", ".", "--date", revision], cwd=cls.folder, stdout=subprocess.PIPE,
                                  stderr=subprocess.PIPE, text=True)
            if done.returncode:
                raise AssertionError(done.stderr)
        cls.out = cls.folder / "specifications"
        cls.figures = {path.stem: json.loads(path.read_text()) for path in cls.out.glob("*.json")}
        cls.latest = {stem: f for stem, f in cls.figures.items() if stem.endswith("26")}
        cls.chromium = browser()
        cls.addClassCleanup(cls.chromium.quit)

    def setUp(self):
        self.size(1280)
        self.chromium.get((self.out / "overview.html").as_uri())

    def size(self, width, height=1400):
        self.chromium.execute_cdp_cmd("Emulation.setDeviceMetricsOverride", {
            "width": width, "height": height, "deviceScaleFactor": 1, "mobile": width < 600})

    def script(self, text, *arguments):
        return self.chromium.execute_script(text, *arguments)

    def rows(self):
        return [row for row in self.chromium.find_elements(By.CSS_SELECTOR, "#list tbody tr") if row.is_displayed()]

    def stems(self):
        return self.script("return [...document.querySelectorAll('#list tbody tr')].filter(r => !r.hidden)"
                           ".map(r => decodeURI(r.querySelector('a').getAttribute('href')).slice(0, -4))")

    def field(self, name):
        return self.chromium.find_element(By.ID, "f-" + name)

    def heading(self, text):
        return next(button for button in self.chromium.find_elements(By.CSS_SELECTOR, "#list thead button")
                    if button.text.startswith(text))

    def column(self, stems, *keys):
        values = []
        for stem in stems:
            value = self.figures[stem]
            for key in keys:
                value = (value or {}).get(key)
            values.append(value)
        return values

    def test_the_latest_issue_of_each_request_is_shown(self):
        self.assertEqual(sorted(self.stems()), sorted(self.latest))
        self.assertGreater(len(self.latest), 15)
        self.assertEqual(self.chromium.find_element(By.ID, "shown").text,
                         f"{len(self.latest)} of {len(self.figures)} issues shown")
        self.field("earlier").click()
        self.assertEqual(sorted(self.stems()), sorted(self.figures))

    def test_sort(self):
        for title, keys in (("Capital", ("cost", "capital")), ("Ownership", ("cost", "ownership")),
                            ("Lead time", ("lead_time", "days"))):
            for backward in (False, True):
                self.heading(title).click()
                values = self.column(self.stems(), *keys)
                known = [value for value in values if value is not None]
                self.assertGreater(len(known), 8)
                self.assertEqual(known, sorted(known, reverse=backward), title)
                self.assertEqual(values[:len(known)], known, "unknown ones come last")
                state = self.heading(title).find_element(By.XPATH, "..").get_attribute("aria-sort")
                self.assertEqual(state, "descending" if backward else "ascending")
        self.heading("Answer").click()
        order = ["incomplete", "infeasible", "conditional", "feasible"]
        ranks = [order.index(self.figures[stem]["verdict"]) for stem in self.stems()]
        self.assertEqual(ranks, sorted(ranks))

    def clear_filter(self, count):
        """The page lists anew behind the event that clears the form."""
        self.chromium.find_element(By.CSS_SELECTOR, "#filter button").click()
        WebDriverWait(self.chromium, 10).until(lambda _: len(self.stems()) == count)

    def test_filter(self):
        for verdict in ("feasible", "conditional", "infeasible", "incomplete"):
            Select(self.field("verdict")).select_by_value(verdict)
            expected = [stem for stem, f in self.latest.items() if f["verdict"] == verdict]
            self.assertEqual(sorted(self.stems()), sorted(expected))
            self.assertGreater(len(expected), 0)
        self.clear_filter(len(self.latest))
        head = next(f["chosen"]["groups"][0]["head"] for f in self.latest.values() if "chosen" in f)
        Select(self.field("head")).select_by_value(head)
        self.assertEqual(sorted(self.stems()), sorted(
            stem for stem, f in self.latest.items()
            if any(group["head"] == head for group in f.get("chosen", {}).get("groups", []))))
        self.clear_filter(len(self.latest))
        self.field("capital").send_keys("50000")
        self.assertEqual(sorted(self.stems()), sorted(
            stem for stem, f in self.latest.items() if f.get("cost", {}).get("capital", 1e99) <= 50000))
        self.field("lead").send_keys("45")
        self.assertEqual(sorted(self.stems()), sorted(
            stem for stem, f in self.latest.items() if f.get("cost", {}).get("capital", 1e99) <= 50000
            and f["lead_time"]["days"] <= 45))
        self.clear_filter(len(self.latest))
        self.field("text").send_keys("CARD-f")
        self.assertEqual(self.stems(), ["CARD-FACES_rA_2026-11-26"])

    def test_links_lead_to_the_documents(self):
        for link in self.chromium.find_elements(By.CSS_SELECTOR, "#list a"):
            place = urllib.parse.urlparse(link.get_attribute("href"))
            self.assertEqual(place.scheme, "file")
            self.assertTrue(pathlib.Path(urllib.parse.unquote(place.path)).is_file(), place)

    def test_hostile_names_are_text_and_nothing_else(self):
        self.assertIsNone(self.script("return window.hit || null"))
        self.assertEqual(self.script("return document.querySelectorAll('#list img, #list svg, #list script, h1').length"), 1)
        shown = self.script("return [...document.querySelectorAll('#list tbody tr')].filter(r => !r.hidden)"
                            ".map(r => [...r.querySelectorAll('bdi')].map(b => b.textContent))")
        for id, title in HOSTILE:
            self.assertTrue(any(texts[0] == id and texts[1] == title for texts in shown), (id, title))
        self.script("document.querySelectorAll('#list td, #list th').forEach(c => c.dispatchEvent("
                    "new MouseEvent('mouseover', {bubbles: true})))")
        self.assertIsNone(self.script("return window.hit || null"))

    def test_nothing_is_fetched_and_nothing_goes_wrong(self):
        self.chromium.get_log("performance")
        self.chromium.refresh()
        asked = []
        for entry in self.chromium.get_log("performance"):
            message = json.loads(entry["message"])["message"]
            if message["method"] == "Network.requestWillBeSent":
                asked.append(message["params"]["request"]["url"])
        self.assertEqual(asked, [(self.out / "overview.html").as_uri()])
        self.assertEqual(self.chromium.get_log("browser"), [])

    def test_questions_open(self):
        self.heading("Open questions").click()
        self.heading("Open questions").click()
        row = self.rows()[0]
        details = row.find_element(By.CSS_SELECTOR, "details")
        details.find_element(By.CSS_SELECTOR, "summary").click()
        stem = self.stems()[0]
        self.assertEqual(len(details.find_elements(By.CSS_SELECTOR, "li")), len(self.figures[stem]["questions"]))
        self.assertIn("?", details.text)

    def test_keyboard_and_names_for_screen_readers(self):
        heading = self.heading("Capital")
        heading.send_keys(Keys.ENTER)
        self.assertEqual(heading.find_element(By.XPATH, "..").get_attribute("aria-sort"), "ascending")
        for control in self.chromium.find_elements(By.CSS_SELECTOR, "#filter input, #filter select, #filter button"):
            self.assertNotEqual(control.accessible_name, "", control.get_attribute("id"))
        links = self.chromium.find_elements(By.CSS_SELECTOR, "#list tbody tr:not([hidden]) .files a")
        names = [link.accessible_name for link in links]
        self.assertEqual(len(set(names)), len(names))

    def test_contrast_of_text(self):
        """WCAG 2.1, 1.4.3: at least 4.5 to 1 for every text, by the colours the browser computed."""
        worst = self.script("""
          function light(c) { const v = c.match(/[\\d.]+/g).slice(0, 3).map(x => x / 255)
              .map(x => x <= 0.04045 ? x / 12.92 : ((x + 0.055) / 1.055) ** 2.4);
            return 0.2126 * v[0] + 0.7152 * v[1] + 0.0722 * v[2]; }
          function ground(e) { for (; e; e = e.parentElement) { const c = getComputedStyle(e).backgroundColor;
            if (!c.startsWith('rgba') || !c.endsWith(', 0)')) return c; } return 'rgb(255, 255, 255)'; }
          let worst = 99;
          for (const e of document.querySelectorAll('body *')) {
            if (![...e.childNodes].some(n => n.nodeType === 3 && n.data.trim()) || e.tagName === 'SCRIPT') continue;
            const a = light(getComputedStyle(e).color) + 0.05, b = light(ground(e)) + 0.05;
            worst = Math.min(worst, Math.max(a, b) / Math.min(a, b)); }
          return worst;""")
        self.assertGreaterEqual(worst, 4.5)

    def test_screens(self):
        for width in (1280, 400):
            self.size(width)
            self.assertLessEqual(self.script("return document.documentElement.scrollWidth"), width)
            folder = os.environ.get("SCREENSHOTS")
            picture = self.chromium.get_screenshot_as_png()
            self.assertGreater(len(picture), 10000)
            if folder:
                pathlib.Path(folder, f"overview_{width}.png").write_bytes(picture)

    def test_many_are_drawn_piece_by_piece_and_all_printed(self):
        many = self.folder / "many"
        (many / "in").mkdir(parents=True)
        for number in range(1100):
            (many / f"in/{number:04}.ini").write_text(f"[request]\nid = M-{number:04}\ntitle = Lids {number}\n")
        subprocess.run([PROGRAM, "build", "in", "-c", SAMPLES / "catalogue.xml", "--date", DATE], cwd=many, check=True,
                       stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL)
        self.chromium.get((many / "specifications/overview.html").as_uri())
        shown, more = (self.chromium.find_element(By.ID, id) for id in ("shown", "more"))
        self.assertEqual(shown.text, "500 of 1100 issues shown, 600 more match")
        self.assertEqual(len(self.stems()), 500)
        self.heading("Title").click()
        self.heading("Title").click()
        self.assertEqual(self.stems()[0], f"M-0999_rA_{DATE}")
        more.click()
        more.click()
        self.assertEqual(len(self.stems()), 1100)
        self.assertFalse(more.is_displayed())
        self.field("text").send_keys("lids 10")
        self.assertEqual(len(self.stems()), 111)  # 10, 100 to 109, 1000 to 1099
        self.clear_filter(500)
        self.script("window.dispatchEvent(new Event('beforeprint'))")
        self.assertEqual(len(self.stems()), 1100)

    def test_print(self):
        pdf = self.chromium.print_page()
        self.assertGreater(len(pdf), 10000)
        if os.environ.get("SCREENSHOTS"):
            import base64
            pathlib.Path(os.environ["SCREENSHOTS"], "overview.pdf").write_bytes(base64.b64decode(pdf))

    def test_without_script_everything_is_there(self):
        self.chromium.execute_cdp_cmd("Emulation.setScriptExecutionDisabled", {"value": True})
        try:
            self.chromium.refresh()
            self.assertEqual(len(self.chromium.find_elements(By.CSS_SELECTOR, "#list tbody tr")), len(self.figures))
            self.assertFalse(self.chromium.find_element(By.ID, "filter").is_displayed())
        finally:
            self.chromium.execute_cdp_cmd("Emulation.setScriptExecutionDisabled", {"value": False})


if __name__ == "__main__":
    unittest.main()
