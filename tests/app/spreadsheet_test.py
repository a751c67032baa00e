# SPDX-License-Identifier: GPL-3.0-or-later
"""What a table puts on the clipboard, read by LibreOffice Calc; what Calc writes, pasted into a table.

Called as spreadsheet_test.py PROGRAM SOURCE_FOLDER. The table is a real one, held by tests/table_clipboard, which
lies beside the program. Calc knows nothing of this project, and its workbooks are opened by openpyxl.
"""
import json
import os
import subprocess
import sys
import tempfile
import unittest

import openpyxl

CLIPBOARD = os.path.join(os.path.dirname(os.path.abspath(sys.argv[1])), "tests", "table_clipboard")

# Calc writes workbooks with 15 significant digits: half a unit of the fifteenth is at most 5e-15.
WRITTEN = 5e-15

# What the notes of the table are (tests/support/table_clipboard.cpp): all that is awkward between two tables. What
# begins like a formula has an apostrophe, since Calc runs it otherwise.
NOTES = ["plain", "a tab\there", "two\nlines", '5" plug', '"in quotes"', "'=1+1", "'@home", "'+x", "semi;colon, comma",
         "Ω µ ε – ü 零"]
K = [2 + n / 3 for n in range(len(NOTES))]
ID, VALUE, K_COLUMN, NOTE = 0, 1, 5, 9


def clipboard(*words):
    done = subprocess.run([CLIPBOARD, *words], capture_output=True, encoding="utf-8", timeout=60)
    assert done.returncode == 0, done.stderr
    return json.loads(done.stdout)


class Calc:
    """LibreOffice Calc with a profile of its own."""

    def __init__(self, folder):
        self.folder = folder

    def convert(self, path, kind, *words):
        out = os.path.join(self.folder, "out")
        subprocess.run(["soffice", "-env:UserInstallation=file://" + os.path.join(self.folder, "profile"),
                        "--headless", *words, "--convert-to", kind, "--outdir", out, path],
                       capture_output=True, timeout=180, check=True)
        return os.path.join(out, os.path.splitext(os.path.basename(path))[0] + "." + kind.split(":")[0])

    def sheet(self, text, ending, filter_options):
        path = os.path.join(self.folder, "given." + ending)
        with open(path, "w", encoding="utf-8", newline="") as file:
            file.write(text)
        book = openpyxl.load_workbook(self.convert(path, "xlsx", "--infilter=" + filter_options))
        return list(book.active.iter_rows())


class Spreadsheet(unittest.TestCase):
    @classmethod
    def setUpClass(cls):
        cls.holder = tempfile.TemporaryDirectory()
        cls.calc = Calc(cls.holder.name)

    @classmethod
    def tearDownClass(cls):
        cls.holder.cleanup()

    def check(self, rows):
        self.assertEqual(len(rows), 1 + len(NOTES))
        self.assertEqual([rows[0][column].value for column in (ID, K_COLUMN, NOTE)], ["Id", "k", "Note"])
        for row, note, k in zip(rows[1:], NOTES, K):
            self.assertEqual(row[NOTE].value, note)
            self.assertNotEqual(row[NOTE].data_type, "f")
            self.assertEqual(row[K_COLUMN].data_type, "n")
            self.assertLessEqual(abs(row[K_COLUMN].value - k), WRITTEN * k)
        self.assertEqual([row[ID].value for row in rows[1:]], ["S-%d" % (101 + n) for n in range(len(NOTES))])

    def test_text_is_read_cell_by_cell(self):
        # Tab, quotation mark, UTF-8, from the first line; then the language.
        for locale, language in (("C", "1033"), ("de_DE", "1031")):
            with self.subTest(locale):
                text = clipboard("copy", locale)["text"]
                self.check(self.calc.sheet(text, "txt", "Text - txt - csv (StarCalc):9,34,76,1,," + language))

    def test_html_is_read_cell_by_cell(self):
        for locale, language in (("C", "1033"), ("de_DE", "1031")):
            with self.subTest(locale):
                html = clipboard("copy", locale)["html"]
                # HTML makes one space of a tab, here as anywhere (CSS 2.2, 16.6.1; from memory).
                rows = self.calc.sheet(html.replace("a tab\there", "a tab&#9;here"), "html",
                                       "HTML (StarCalc):" + language)
                rows[2][NOTE].value = str(rows[2][NOTE].value).replace("a tab here", "a tab\there")
                self.check(rows)

    def test_without_the_apostrophe_a_note_would_be_run(self):
        text = clipboard("copy", "C")["text"].replace("'=1+1", "=1+1")
        rows = self.calc.sheet(text, "txt", "Text - txt - csv (StarCalc):9,34,76,1,,1033")
        self.assertEqual(rows[6][NOTE].data_type, "f")

    def test_own_text_comes_back_the_same(self):
        for locale in ("C", "de_DE"):
            with self.subTest(locale):
                copied = clipboard("copy", locale)
                # A resistor's note takes no tab and no line break, as it stands in a line of its file.
                text = copied["text"].replace('"a tab\there"', "a tab here").replace('"two\nlines"', "two lines")
                # Without the column that is worked out; the headings are known and left out.
                text = "\n".join(line.removesuffix("\tUsed by").removesuffix("\t") for line in text.split("\n"))
                pasted = clipboard("paste", locale, self.file(text))
                self.assertEqual(pasted["refused"], "")
                for row, before in zip(pasted["cells"], copied["cells"], strict=True):
                    self.assertEqual(row[:NOTE], before[:NOTE])
                    self.assertEqual(row[NOTE].split(), before[NOTE].split())

    def file(self, text):
        path = os.path.join(self.holder.name, "own.txt")
        with open(path, "w", encoding="utf-8", newline="") as file:
            file.write(text)
        return path

    def written_by_calc(self, notes, language, mark):
        book = openpyxl.Workbook()
        for n, note in enumerate(notes):
            # Id, value in ohm, tolerance, certificate, U, k, due, rating, fitted in, note.
            book.active.append(["R-%d" % (n + 1), 1000.25 + n, "0.1 %".replace(".", mark), None, None, None, None, None,
                                None, note])
        path = os.path.join(self.holder.name, "book.xlsx")
        book.save(path)
        # Tab, quotation mark, UTF-8, the language; quotation marks only where they must be, as on its clipboard.
        return self.calc.convert(path, "csv:Text - txt - csv (StarCalc):9,34,76,1,," + language + ",false,true,false")

    def test_what_calc_writes_is_pasted(self):
        notes = ['5" plug', '"in quotes"', "plain, with; marks", "Ω µ ε – ü 零"]
        for locale, language, mark in (("C", "1033", "."), ("de_DE", "1031", ",")):
            with self.subTest(locale):
                pasted = clipboard("paste", locale, self.written_by_calc(notes, language, mark))
                self.assertEqual(pasted["refused"], "")
                self.assertEqual([row[NOTE] for row in pasted["cells"]], notes)
                self.assertEqual([row[VALUE] for row in pasted["cells"]],
                                 [self.ohms(1000.25 + n, mark) for n in range(len(notes))])

    def test_line_breaks_of_calc_stay_in_their_cell(self):
        notes = ["two\nlines", 'three\nof\n"them"', "a tab\there"]
        pasted = clipboard("paste", "C", self.written_by_calc(notes, "1033", "."))
        self.assertEqual([row[NOTE] for row in pasted["taken"]], notes)
        # The note of a resistor takes none: all of the block is refused and the cell named.
        self.assertTrue(pasted["refused"].startswith("row 1, column Note: "), pasted["refused"])
        self.assertEqual(pasted["cells"], [])

    @staticmethod
    def ohms(value, mark):
        """As the table shows a resistance of some kilohm; eight digits are all that it has."""
        return ("%.8g" % (value / 1000)).replace(".", mark) + " kΩ"


if __name__ == "__main__":
    unittest.main(argv=sys.argv[:1], verbosity=1)
