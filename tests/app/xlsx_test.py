# SPDX-License-Identifier: GPL-3.0-or-later
"""The workbook report, opened by openpyxl and worked out anew by LibreOffice.

Called as xlsx_test.py PROGRAM SOURCE_FOLDER. Neither program knows anything of this project.
"""
import csv
import datetime
import glob
import json
import os
import re
import statistics
import subprocess
import sys
import tempfile
import time
import unittest
import zipfile

import openpyxl

PROGRAM, SOURCE = os.path.abspath(sys.argv[1]), os.path.abspath(sys.argv[2])
DEMO = os.path.join(SOURCE, "examples", "demo.bridgecal")
SMALL = os.path.join(SOURCE, "examples", "quarter_bridge.bridgecal")

# A cell holds 16 significant digits, so that a double is off by half a unit of the sixteenth: 5e-16.
CELL = 1e-15
# Formulas are sums, products and regressions of such cells: some ten rounding steps of 1.1e-16 and 5e-16 of the
# largest number in them, which is at most some 1e4 of what is left after subtraction. LibreOffice writes 15 digits.
FORMULA = 1e-10

ALWAYS_RECALCULATE = """<?xml version="1.0" encoding="UTF-8"?>
<oor:items xmlns:oor="http://openoffice.org/2001/registry" xmlns:xs="http://www.w3.org/2001/XMLSchema">
<item oor:path="/org.openoffice.Office.Calc/Formula/Load"><prop oor:name="OOXMLRecalcMode" oor:op="fuse">
<value>0</value></prop></item></oor:items>
"""


def report(document, out, *words):
    done = subprocess.run([PROGRAM, "report", document, "-o", out, *words], capture_output=True, encoding="utf-8",
                          timeout=120, stdin=subprocess.DEVNULL)
    assert done.returncode == 0, done.stderr


def without_values(path, out):
    """The workbook without any value beside its formulas: what is there afterwards was worked out from them."""
    with zipfile.ZipFile(path) as source, zipfile.ZipFile(out, "w", zipfile.ZIP_DEFLATED) as target:
        for name in source.namelist():
            data = source.read(name)
            if name.startswith("xl/worksheets/sheet"):
                data, count = re.subn(rb"(<f>[^<]*</f>)<v>[^<]*</v>", rb"\1", data)
                without_values.count += count
            target.writestr(name, data)


without_values.count = 0


def recalculated(path, folder):
    """All sheets as LibreOffice works them out, by their names: rows of text."""
    profile = os.path.join(folder, "profile")
    os.makedirs(os.path.join(profile, "user"))
    with open(os.path.join(profile, "user", "registrymodifications.xcu"), "w", encoding="utf-8") as file:
        file.write(ALWAYS_RECALCULATE)
    # Commas, quotes, UTF-8, from the first line, numbers in full, every sheet.
    options = 'csv:Text - txt - csv (StarCalc):44,34,76,1,,0,false,false,false,false,false,-1'
    out = os.path.join(folder, "sheets")
    subprocess.run(["soffice", "-env:UserInstallation=file://" + profile, "--headless", "--convert-to", options,
                    "--outdir", out, path], capture_output=True, timeout=180, check=True)
    stem = os.path.splitext(os.path.basename(path))[0]
    sheets = {}
    for name in glob.glob(os.path.join(glob.escape(out), "*.csv")):
        with open(name, encoding="utf-8", newline="") as file:
            sheets[os.path.basename(name)[len(stem) + 1:-4]] = list(csv.reader(file))
    return sheets


def steps_of(rows):
    """Of every check on a sheet, by its name: the rows of its steps, as indices, and that of its shared numbers."""
    checks, name, facts = {}, None, None
    for index, row in enumerate(rows):
        first = row[0] if row else None
        if isinstance(first, str) and first.startswith("Check "):
            name = first[len("Check "):]
        if first == "Limit, share of expected":
            facts = index + 1
        if first == "Step" and str(row[6]).startswith("Reading") and name:
            end = index + 1
            while end < len(rows) and rows[end] and rows[end][0] not in (None, ""):
                end += 1
            checks[name] = (list(range(index + 1, end)), facts)
            name = None
    return checks


class Workbook(unittest.TestCase):
    @classmethod
    def setUpClass(cls):
        cls.holder = tempfile.TemporaryDirectory()
        folder = cls.holder.name
        cls.path = os.path.join(folder, "report.xlsx")
        report(DEMO, cls.path)
        report(DEMO, os.path.join(folder, "report.csv"))
        with open(os.path.join(folder, "report.csv"), encoding="utf-8", newline="") as file:
            cls.csv = list(csv.DictReader(file))
        cls.formulas = openpyxl.load_workbook(cls.path)
        cls.values = openpyxl.load_workbook(cls.path, data_only=True)
        bare = os.path.join(folder, "bare.xlsx")
        without_values(cls.path, bare)
        cls.recalculated = recalculated(bare, folder)

    @classmethod
    def tearDownClass(cls):
        cls.holder.cleanup()

    def sheet(self, book, name):
        return [list(row) for row in book[name].iter_rows(values_only=True)]

    def checks(self):
        """Channel, check, its rows in the CSV, and where they are on the channel's sheet."""
        seen = {}
        for row in self.csv:
            if row["check"]:
                seen.setdefault((row["channel"], row["check"]), []).append(row)
        self.assertGreater(len(seen), 5)
        for (channel, check), rows in seen.items():
            places, facts = steps_of(self.sheet(self.values, channel))[check]
            self.assertEqual(len(places), len(rows), (channel, check))
            yield channel, check, rows, places, facts

    def close(self, value, wanted, scale, tolerance, what):
        if wanted == "":
            self.assertIn(value, (None, ""), what)
            return
        self.assertAlmostEqual(float(value), float(wanted), delta=tolerance * max(scale, abs(float(wanted))),
                               msg=what)

    COLUMNS = {3: "simulated", 4: "expected_reading", 5: "expanded_uncertainty_chain", 6: "reading", 7: "change",
               8: "deviation", 9: "limit", 10: "deviation_expanded_uncertainty", 11: "guard_band",
               12: "conformity_probability", 13: "en_number"}

    def test_numbers_are_those_of_the_csv(self):
        compared = 0
        for channel, check, rows, places, _ in self.checks():
            sheet = self.sheet(self.values, channel)
            for row, place in zip(rows, places):
                for column, name in self.COLUMNS.items():
                    self.close(sheet[place][column], row[name], 0, CELL, (channel, check, row["step"], name))
                    compared += row[name] != ""
                self.assertEqual(sheet[place][14], row["verdict"])
        self.assertGreater(compared, 300)

    def test_formulas_give_the_values_beside_them(self):
        self.assertGreater(without_values.count, 200)
        compared = 0
        for channel, check, rows, places, facts in self.checks():
            ours, theirs = self.sheet(self.values, channel), self.recalculated[channel]
            scale = max(abs(float(row["expected_reading"] or 0)) for row in rows)
            for place in places:
                for column in range(3, 14):
                    value, again = ours[place][column], theirs[place][column]
                    if isinstance(value, (int, float)):
                        self.close(again, value, scale, FORMULA, (channel, check, place, column))
                        compared += 1
                self.assertEqual(theirs[place][14], ours[place][14], (channel, check, place))
            for column, value in enumerate(ours[facts]):
                if isinstance(value, (int, float)):
                    self.close(theirs[facts][column], value, scale if column in (7, 9, 14, 15) else 0, FORMULA,
                               (channel, check, "shared", column))
        self.assertGreater(compared, 300)

    def test_what_can_be_worked_out_is_a_formula(self):
        for channel, check, rows, places, facts in self.checks():
            sheet = self.sheet(self.formulas, channel)
            for row, place in zip(rows, places):
                for column, name in ((7, "change"), (8, "deviation"), (9, "limit"), (14, "verdict")):
                    if row[name] and row["deviation"]:
                        self.assertTrue(str(sheet[place][column]).startswith("="), (channel, check, place, name))
            if sum(row["change"] != "" for row in rows) > 2:
                self.assertTrue(sheet[facts][8].startswith("=SLOPE("), (channel, check))

    def test_slope_and_intercept_are_least_squares(self):
        """By the statistics module of Python."""
        fitted = 0
        for channel, check, rows, _, facts in self.checks():
            points = [(float(r["simulated"]), float(r["change"])) for r in rows if r["simulated"] and r["change"]]
            if len(points) < 3:
                continue
            line = statistics.linear_regression(*zip(*points))
            cells = self.sheet(self.values, channel)[facts]
            # Its sums and ours differ by some units of 1e-16 of the largest point.
            largest = max(abs(y) for _, y in points)
            self.assertAlmostEqual(cells[8], line.slope, delta=1e-12 * abs(line.slope))
            self.assertAlmostEqual(cells[9], line.intercept, delta=1e-12 * largest)
            fitted += 1
        self.assertGreater(fitted, 5)

    def test_a_native_chart_for_every_check_that_was_read(self):
        read = {(row["channel"], row["check"]) for row in self.csv if row["reading"]}
        with zipfile.ZipFile(self.path) as file:
            charts = [name for name in file.namelist() if re.fullmatch(r"xl/charts/chart\d+\.xml", name)]
            self.assertEqual(len(charts), len(read))
            for name in charts:
                text = file.read(name).decode()
                self.assertIn("<c:scatterChart>", text)
                for reference in re.findall(r"<c:f>([^<]*)</c:f>", text):
                    sheet, cells = reference.rsplit("!", 1)
                    for row in self.formulas[sheet.strip("'").replace("''", "'")][cells.replace("$", "")]:
                        for cell in row:
                            self.assertNotIn(cell.data_type, ("e",), reference)

    def test_the_summary_lists_every_channel_with_native_days(self):
        rows = self.sheet(self.values, self.values.sheetnames[0])
        self.assertEqual({row[0] for row in rows[1:]}, {row["channel"] for row in self.csv})
        days = [row[6] for row in rows[1:] if row[6] is not None]
        self.assertTrue(days)
        for day in days:
            self.assertIsInstance(day, datetime.datetime)
        self.assertEqual(self.formulas[self.formulas.sheetnames[0]].freeze_panes, "B2")

    def test_properties_and_print_setup(self):
        with zipfile.ZipFile(self.path) as file:
            custom = file.read("docProps/custom.xml").decode()
        fingerprint = self.csv[0]["fingerprint"]
        self.assertRegex(fingerprint, "^[0-9a-f]{64}$")
        self.assertRegex(custom, 'name="shuntwright-fingerprint"><vt:lpwstr>' + fingerprint)
        with open(DEMO, encoding="utf-8") as file:
            document = json.load(file)
        self.assertEqual(self.formulas.properties.title, document["title"])
        for sheet in self.formulas:
            self.assertEqual(sheet.page_setup.orientation, "landscape")
            self.assertEqual(sheet.page_setup.fitToWidth or 1, 1)

    def test_cautions_are_in_it(self):
        words = " ".join(str(row[0]) for row in self.sheet(self.values, self.values.sheetnames[1]) if row[0])
        self.assertIn("Verdicts cover the electrical chain only", words)
        self.assertIn("Switch the excitation off", words)


class ForeignText(unittest.TestCase):
    def setUp(self):
        holder = tempfile.TemporaryDirectory()
        self.addCleanup(holder.cleanup)
        self.folder = holder.name

    def workbook(self, document):
        path, out = os.path.join(self.folder, "d.bridgecal"), os.path.join(self.folder, "r.xlsx")
        document.pop("fingerprint", None)
        with open(path, "w", encoding="utf-8") as file:
            json.dump(document, file)
        report(path, out)
        return openpyxl.load_workbook(out)

    def test_never_becomes_a_formula(self):
        with open(SMALL, encoding="utf-8") as file:
            document = json.load(file)
        evil = '=HYPERLINK("http://x.invalid","a")'
        document["title"] = document["person"] = evil
        document["channels"][0]["note"] = evil
        for step in document["channels"][0]["setup"]["sequence"]:
            step["label"] = evil
        found = 0
        for sheet in self.workbook(document):
            for row in sheet.iter_rows():
                for cell in row:
                    if cell.value == evil:
                        found += 1
                        self.assertNotEqual(cell.data_type, "f", (sheet.title, cell.coordinate))
                    if cell.data_type == "f":
                        self.assertNotIn("HYPERLINK", cell.value)
        self.assertGreater(found, 2)

    def test_names_of_sheets(self):
        with open(SMALL, encoding="utf-8") as file:
            document = json.load(file)
        one = document["channels"][0]
        names = ["Summary", "summary ", "a/b\\c:d*e?f[g]", "'quoted'", "History", "x" * 60, "x" * 59 + "y", "ä" * 40]
        document["channels"] = [{**json.loads(json.dumps(one)), "name": name} for name in names]
        titles = self.workbook(document).sheetnames
        self.assertEqual(len({title.casefold() for title in titles}), len(titles))
        for title in titles:
            self.assertLessEqual(len(title), 31)
            self.assertFalse(set(title) & set("[]:*?/\\"), title)
            self.assertFalse(title.startswith("'") or title.endswith("'"), title)
            self.assertNotEqual(title.casefold(), "history")

    def test_very_many_channels_share_sheets(self):
        with open(DEMO, encoding="utf-8") as file:
            document = json.load(file)
        one = max(document["channels"], key=lambda channel: len(channel["checks"]))
        document["channels"] = [{**json.loads(json.dumps(one)), "name": f"TP-{k:04}"} for k in range(250)]
        before = time.monotonic()
        book = self.workbook(document)
        self.assertLess(time.monotonic() - before, 100)  # some seconds by itself; machines are shared
        self.assertLess(len(book.sheetnames), 110)
        words = {str(cell) for sheet in book for row in sheet.iter_rows(max_col=1, values_only=True) for cell in row}
        for k in range(250):
            self.assertIn(f"Channel TP-{k:04}", words)


if __name__ == "__main__":
    unittest.main(argv=sys.argv[:1], verbosity=2)
