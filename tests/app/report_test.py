# SPDX-License-Identifier: GPL-3.0-or-later
"""Reports by template and format: JSON against its schema (python3-jsonschema) and against the CSV, HTML read by
Python's own parser, PDF by pdftotext.

Called as report_test.py PROGRAM SOURCE_FOLDER.
"""
import csv
import glob
import html.parser
import json
import os
import subprocess
import sys
import tempfile
import unittest

import jsonschema

PROGRAM, SOURCE = os.path.abspath(sys.argv[1]), os.path.abspath(sys.argv[2])
EXAMPLES = sorted(glob.glob(os.path.join(SOURCE, "examples", "*.bridgecal")))
DEMO = os.path.join(SOURCE, "examples", "demo.bridgecal")
SMALL = os.path.join(SOURCE, "examples", "quarter_bridge.bridgecal")
with open(os.path.join(SOURCE, "resources", "report.schema.json"), encoding="utf-8") as schema:
    SCHEMA = json.load(schema)
PARTS = SCHEMA["properties"]["template"]["properties"]["parts"]["items"]["enum"]
VOID = {"meta", "img", "br", "hr", "link", "input"}


def run(*words):
    return subprocess.run([PROGRAM, *words], capture_output=True, encoding="utf-8", timeout=120,
                          stdin=subprocess.DEVNULL)


class Page(html.parser.HTMLParser):
    """What of a page matters here."""

    def __init__(self, text):
        super().__init__()
        self.tags, self.open, self.words, self.wrong = [], [], [], []
        self.feed(text)
        self.close()

    def handle_starttag(self, tag, attrs):
        self.tags.append((tag, dict(attrs)))
        if tag not in VOID:
            self.open.append(tag)

    def handle_endtag(self, tag):
        if not self.open or self.open.pop() != tag:
            self.wrong.append(tag)

    def handle_data(self, data):
        if not self.open or self.open[-1] != "style":
            self.words.append(data)

    def all(self, tag):
        return [attributes for name, attributes in self.tags if name == tag]


class ReportTest(unittest.TestCase):
    def setUp(self):
        holder = tempfile.TemporaryDirectory()
        self.addCleanup(holder.cleanup)
        self.folder = holder.name

    def path(self, name):
        return os.path.join(self.folder, name)

    def written(self, document, name, *words):
        done = run("report", document, "-o", self.path(name), *words)
        self.assertEqual(done.returncode, 0, done.stderr)
        return self.path(name)

    def text(self, document, name, *words):
        with open(self.written(document, name, *words), encoding="utf-8", newline="") as file:
            return file.read()

    def json(self, document, *words):
        return json.loads(self.text(document, "r.json", *words))

    def refused(self, *words, says):
        done = run("report", *words)
        self.assertEqual(done.returncode, 2, done.stderr)
        self.assertIn(says, done.stderr)
        self.assertEqual(len(done.stderr.strip().split("\n")), 1, done.stderr)


class Json(ReportTest):
    VALIDATOR = jsonschema.Draft202012Validator(SCHEMA)

    def test_schema_is_one(self):
        jsonschema.Draft202012Validator.check_schema(SCHEMA)

    def test_every_example_is_as_the_schema_says(self):
        self.assertGreater(len(EXAMPLES), 3)
        for path in EXAMPLES:
            with self.subTest(path=os.path.basename(path)):
                self.assertEqual([e.message for e in self.VALIDATOR.iter_errors(self.json(path))], [])

    def test_the_schema_refuses_what_is_damaged(self):
        whole = self.json(DEMO)
        for damage in (lambda r: r.pop("fingerprint"), lambda r: r.update(surplus=1),
                       lambda r: r["channels"][0].update(verdict="fine"),
                       lambda r: r["channels"][0]["steps"][0].update(expected_reading="1"),
                       lambda r: r["channels"][0]["checks"][0].pop("merits")):
            damaged = json.loads(json.dumps(whole))
            damage(damaged)
            self.assertFalse(self.VALIDATOR.is_valid(damaged))

    def test_numbers_are_those_of_the_csv_bit_for_bit(self):
        rows = list(csv.DictReader(self.text(DEMO, "r.csv").splitlines()))
        steps = [(channel["name"], check, step) for channel in self.json(DEMO)["channels"]
                 for check in channel["checks"] for step in check["steps"]]
        rows = [row for row in rows if row["check"]]
        self.assertEqual(len(rows), len(steps))
        compared = 0
        for row, (channel, check, step) in zip(rows, steps):
            self.assertEqual((row["channel"], row["check"]), (channel, check["name"]))
            for key in ("simulated", "expanded_uncertainty_strain", "output_mV_per_V", "expected_reading",
                        "expanded_uncertainty_chain", "coverage_factor_chain", "reading", "change", "deviation",
                        "limit", "conformity_probability", "en_number"):
                # Both are the shortest that read back as the same double.
                self.assertEqual(float(row[key]) if row[key] else None, step[key], (row["step"], key))
                compared += step[key] is not None
            self.assertEqual(row["verdict"], step["verdict"])
            self.assertEqual(row["check_verdict"], check["verdict"])
        self.assertGreater(compared, 500)

    def test_csv_ends_with_the_fingerprint_of_the_json(self):
        rows = list(csv.reader(self.text(DEMO, "r.csv").splitlines()))
        self.assertEqual(rows[0][-1], "fingerprint")
        self.assertEqual({row[-1] for row in rows[1:]}, {self.json(DEMO)["fingerprint"]})
        self.assertRegex(rows[1][-1], "^[0-9a-f]{64}$")

    def test_is_canonical_in_any_language(self):
        here, there = self.json(DEMO), self.json(DEMO, "--language", "de", "--local-numbers")
        self.assertEqual(here, there)
        self.assertEqual(self.text(DEMO, "a.csv"), self.text(DEMO, "b.csv", "--language", "de", "--local-numbers"))

    def test_only_the_channels_that_are_named(self):
        names = [channel["name"] for channel in self.json(DEMO)["channels"]]
        some = self.json(DEMO, "--channel", names[2], "--channel", names[0])
        self.assertEqual([channel["name"] for channel in some["channels"]], [names[0], names[2]])
        self.assertEqual(some["channels_left_out"], [n for n in names if n not in (names[0], names[2])])
        self.refused(DEMO, "-o", self.path("x.json"), "--channel", "none such", says="none such")


class Html(ReportTest):
    def test_is_one_file_without_scripts(self):
        text = self.text(DEMO, "r.html")
        page = Page(text)
        self.assertEqual((page.open, page.wrong), ([], []), "tags are not closed in their order")
        self.assertEqual(page.all("script"), [])
        for tag, attributes in page.tags:
            self.assertFalse([key for key in attributes if key.startswith("on")], tag)
            for key in ("src", "href"):
                if key in attributes:
                    self.assertTrue(attributes[key].startswith(("data:image/", "#")), attributes[key][:60])
        self.assertNotIn("url(", text)
        self.assertNotIn("@import", text)
        self.assertIn("prefers-color-scheme: dark", text)
        self.assertIn("@media print", text)

    def test_contents_lead_to_headings(self):
        page = Page(self.text(DEMO, "r.html"))
        targets = [attributes["href"][1:] for attributes in page.all("a")]
        headings = {attributes["id"] for tag in ("h2", "h3") for attributes in page.all(tag)}
        self.assertGreater(len(targets), 10)
        self.assertLessEqual(set(targets), headings)
        self.assertEqual(len(targets), len(set(targets)))

    def test_assistive_tools_find_heads_and_words_for_pictures(self):
        page = Page(self.text(DEMO, "r.html"))
        self.assertEqual(page.all("html")[0]["lang"], "en")
        self.assertGreater(len(page.all("img")), 5)
        for picture in page.all("img"):
            self.assertTrue(picture["alt"])
        for head in page.all("th"):
            self.assertIn(head.get("scope"), ("col", "row"))
        self.assertGreater(len(page.all("caption")), 10)

    def test_names_the_fingerprint(self):
        page = Page(self.text(DEMO, "r.html"))
        found = [m["content"] for m in page.all("meta") if m.get("name") == "shuntwright-fingerprint"]
        self.assertEqual(found, [self.json(DEMO)["fingerprint"]])

    def test_foreign_text_is_text(self):
        with open(SMALL, encoding="utf-8") as file:
            document = json.load(file)
        document.pop("fingerprint", None)
        evil = "<script>alert(1)</script><img src=x onerror=alert(1)>"
        document["title"] = document["person"] = document["channels"][0]["note"] = evil
        path = self.path("evil.bridgecal")
        with open(path, "w", encoding="utf-8") as file:
            json.dump(document, file)
        page = Page(self.text(path, "r.html"))
        self.assertEqual(page.all("script"), [])
        self.assertIn(evil, "".join(page.words))

    def test_only_words_too_long_for_a_column_may_be_broken_anywhere(self):
        with open(SMALL, encoding="utf-8") as file:
            document = json.load(file)
        document.pop("fingerprint", None)
        self.assertNotIn("long", {cell.get("class") for cell in Page(self.text(SMALL, "r.html")).all("td")})
        document["channels"][0]["name"] = document["article"] = "N" * 5000
        path = self.path("long.bridgecal")
        with open(path, "w", encoding="utf-8") as file:
            json.dump(document, file)
        text = self.text(path, "r.html")
        self.assertIn(".long { overflow-wrap: anywhere", text)
        cells = [part.split("<")[0] for part in text.split("<td")]
        for cell in cells:
            self.assertEqual("N" * 5000 in cell, cell.startswith(' class="long"'), cell[:80])

    def test_local_numbers_have_a_comma_and_others_a_point(self):
        numbers = {}
        for words in ((), ("--language", "de"), ("--language", "de", "--local-numbers")):
            page = Page(self.text(DEMO, "r.html", *words))
            self.assertEqual(page.all("html")[0]["lang"], "de" if words else "en")
            text = "\n".join(page.words)
            numbers[words] = text.count("110,003 k") + text.count("0,1288 m"), text.count("110.003 k") + text.count(
                "0.1288 m")
        plain, german, local = numbers.values()
        self.assertEqual(plain, german)
        self.assertEqual(plain[0], 0)
        self.assertEqual(local, (plain[1], 0))
        self.assertGreater(plain[1], 0)


class Templates(ReportTest):
    def test_ready_ones_are_listed_written_and_read_back(self):
        names = [line.split(":")[0] for line in run("report", "--list-templates").stdout.splitlines()]
        self.assertEqual(len(names), 4)
        for name in names:
            content = json.loads(run("report", "--write-template", name).stdout)
            self.assertEqual((content["format"], content["name"]), ("shuntwright-report-template", name))
            self.assertLessEqual(set(content["parts"]), set(PARTS))
            path = self.path("t.json")
            self.assertEqual(run("report", "--write-template", name, "-o", path).returncode, 0)
            by_name, by_file = self.json(SMALL, "--template", name), self.json(SMALL, "--template", path)
            self.assertEqual(by_name, by_file)
            self.assertEqual(by_name["template"]["parts"], content["parts"])
        full = json.loads(run("report", "--write-template", names[0]).stdout)
        self.assertEqual(full["parts"], PARTS)

    def test_parts_left_out_are_left_out_and_said(self):
        full = "\n".join(Page(self.text(DEMO, "r.html")).words)
        self.assertIn("Nothing of the record is left out.", full)
        bench = "\n".join(Page(self.text(DEMO, "r.html", "--template", "Bench sheet")).words)
        self.assertIn("Left out of this report:", bench)
        for word in ("uncertainty budget", "diagnosis", "sign-off"):
            self.assertIn(word, bench)
        self.assertNotIn("Figures of merit of", bench)
        for words in (full, bench):
            self.assertIn("Switch the excitation off before wiring a shunt", words)
            self.assertIn(self.json(DEMO)["fingerprint"], words)

    def test_one_of_the_users_own(self):
        content = json.loads(run("report", "--write-template", "Full record").stdout)
        content.update(name="Ours", parts=["summary"], channels="not_passing", language="de", local_numbers=True)
        path = self.path("ours.json")
        with open(path, "w", encoding="utf-8") as file:
            json.dump(content, file)
        report = self.json(DEMO, "--template", path)
        self.assertEqual(report["template"]["name"], "Ours")
        self.assertEqual(Page(self.text(DEMO, "r.html", "--template", path)).all("html")[0]["lang"], "de")
        shown = {channel["name"] for channel in report["channels"]}
        failing = {row["channel"] for row in csv.DictReader(self.text(DEMO, "all.csv").splitlines())
                   if row["check_verdict"] == "fail"}
        self.assertTrue(shown & failing)
        self.assertTrue(report["channels_left_out"])
        self.assertFalse(shown & set(report["channels_left_out"]))

    def test_a_bad_one_names_line_and_field(self):
        good = run("report", "--write-template", "Full record").stdout
        for old, new, says in (('"cover"', '"covers"', 'line 6, parts[0]: there is no part “covers”'),
                               ('"language": "en"', '"language": "English"', "no code of a language"),
                               ('"name": "Full record"', '"name": ""', "line 4, name: the template has no name"),
                               ('"contents"', '"cover"', "named twice"),
                               ('"local_numbers"', '"local_number"', "local_number"),
                               ('"shuntwright-report-template"', '"shuntwright"', "it is not a report template")):
            self.assertIn(old, good)
            path = self.path("bad.json")
            with open(path, "w", encoding="utf-8") as file:
                file.write(good.replace(old, new))
            self.refused(DEMO, "-o", self.path("r.json"), "--template", path, says=says)
        self.refused(DEMO, "-o", self.path("r.json"), "--template", "none such", says='no template "none such"')
        self.refused("--write-template", "none such", says='no template "none such"')

    def test_pages_follow_the_template(self):
        path = self.written(DEMO, "r.pdf", "--template", "Bench sheet")
        text = subprocess.run(["pdftotext", "-layout", path, "-"], capture_output=True, encoding="utf-8", check=True,
                              timeout=60).stdout
        self.assertIn("Left out of this report", text)
        self.assertNotIn("Figures of merit of", text)


if __name__ == "__main__":
    unittest.main(argv=sys.argv[:1], verbosity=2)
