# SPDX-License-Identifier: GPL-3.0-or-later
"""Channel lists as spreadsheets save them, made and read by Python's csv module, in and out of documents.

Called as channels_test.py PROGRAM SOURCE_FOLDER.
"""
import csv
import io
import json
import os
import pathlib
import subprocess
import sys
import tempfile
import unittest

PROGRAM, SOURCE = os.path.abspath(sys.argv[1]), os.path.abspath(sys.argv[2])
PLAN = os.path.join(SOURCE, "examples", "plan.bridgecal")
WITHOUT_DISPLAY = {k: v for k, v in os.environ.items()
                   if k not in ("DISPLAY", "WAYLAND_DISPLAY", "QT_QPA_PLATFORM", "XDG_RUNTIME_DIR")}

ENGLISH = [["Channel", "Group", "Remark", "Gauge factor", "Leads, ohm", "Excitation [V]", "Column"],
           ["N-01", "nose", "plain", "2.08", "1.5", "5", "AI 1"],
           ["N-02", "nose", 'says "up", then down', "2.1", "0.25", "2.5", "AI 2"],
           ["Ä-03", "größer; wide", "two\nlines", "2.115", "1", "10", "AI 3"]]
GERMAN = [["Messstelle", "Gruppe", "Bemerkung", "k-Faktor", "Leitung [Ohm]", "Speisung [V]", "Spalte"],
          *[row[:3] + [cell.replace(".", ",") for cell in row[3:6]] + row[6:] for row in ENGLISH[1:]]]


def table(rows, **dialect):
    out = io.StringIO()
    csv.writer(out, **dialect).writerows(rows)
    return out.getvalue()


class Lists(unittest.TestCase):
    def setUp(self):
        folder = tempfile.TemporaryDirectory()
        self.addCleanup(folder.cleanup)
        self.folder = folder.name

    def path(self, name):
        return os.path.join(self.folder, name)

    def put(self, name, data):
        with open(self.path(name), "wb") as file:
            file.write(data if isinstance(data, bytes) else data.encode())
        return self.path(name)

    def run_channels(self, *words, exit=0):
        done = subprocess.run([PROGRAM, "channels", *words], capture_output=True, encoding="utf-8", timeout=60,
                              env=WITHOUT_DISPLAY, stdin=subprocess.DEVNULL)
        self.assertEqual(done.returncode, exit, done.stderr)
        return done

    def imported(self, data, *words, document=PLAN, like="TP-01"):
        """The channels that came of a list, as the saved document has them."""
        out = self.path("out.bridgecal")
        self.run_channels(document, "--import", self.put("list.csv", data), "--like", like, "--save", out, *words)
        with open(out, encoding="utf-8") as file:
            content = json.load(file)
        with open(document, encoding="utf-8") as file:
            before = json.load(file)
        self.assertEqual(content["channels"][:len(before["channels"])], before["channels"])
        return content["channels"][len(before["channels"]):]

    def refused(self, data, *words, says=(), like="TP-01"):
        out = self.path("out.bridgecal")
        done = self.run_channels(PLAN, "--import", self.put("list.csv", data), "--like", like, "--save", out, *words,
                                 exit=2)
        self.assertFalse(os.path.exists(out))
        self.assertEqual(done.stdout, "")
        for word in says:
            self.assertIn(word, done.stderr)
        return done


class Import(Lists):
    def check(self, channels):
        """The numbers and texts of the table above, whichever way they were written."""
        self.assertEqual(len(channels), 3)
        for channel, row in zip(channels, ENGLISH[1:]):
            name, group, note, factor, lead, volt, column = row
            setup = channel["setup"]
            self.assertEqual([channel[key] for key in ("name", "group", "note", "recording_column")],
                             [name, group, note, column])
            self.assertEqual(channel["checks"], [])
            self.assertEqual(setup["bridge"]["gauge"]["factor"], float(factor))
            self.assertEqual(setup["instrument"]["excitation_V"], float(volt))
            wires = setup["bridge"]["leads"]
            self.assertEqual([wires[wire]["ohm"] for wire in ("P+", "S-", "return")], [float(lead)] * 3)

    def test_every_way_that_spreadsheets_save(self):
        for name, data in (
                ("commas", table(ENGLISH).encode()),
                ("all cells in quotes", table(ENGLISH, quoting=csv.QUOTE_ALL).encode()),
                ("byte order mark", table(ENGLISH).encode("utf-8-sig")),
                ("tabs", table(ENGLISH, delimiter="\t").encode()),
                ("semicolons, decimal commas", table(GERMAN, delimiter=";").encode()),
                ("the same in Windows-1252", table(GERMAN, delimiter=";").encode("cp1252")),
                ("the same in UTF-16", table(GERMAN, delimiter=";").encode("utf-16")),
                ("commas between and in numbers", table(GERMAN, quoting=csv.QUOTE_MINIMAL).encode()),
                ("line ends of Unix", table(ENGLISH, lineterminator="\n").encode()),
                ("empty columns at the end", table([row + ["", ""] for row in ENGLISH]).encode())):
            with self.subTest(name):
                self.check(self.imported(data))

    def test_columns_are_said_where_headings_do_not(self):
        foreign = [["Naam", "Factor"], ["N-01", "2.08"]]
        one, = self.imported(table(foreign), "--map", "name=Naam,gauge_factor=2")
        self.assertEqual((one["name"], one["setup"]["bridge"]["gauge"]["factor"]), ("N-01", 2.08))
        os.remove(self.path("out.bridgecal"))
        self.refused(table(foreign), says=("list.csv", "--map", "Naam"))
        self.refused(table(foreign), "--map", "name=Nome", says=("--map", "Nome", "Naam"))
        self.refused(table(foreign), "--map", "nome=Naam", says=("--map", "gauge_factor"))

    def test_the_history_says_what_was_added(self):
        self.imported(table(ENGLISH))
        with open(self.path("out.bridgecal"), encoding="utf-8") as file:
            entry = json.load(file)["history"][-1]
        for row in ENGLISH[1:]:
            self.assertIn(row[0] + " added", json.dumps(entry, ensure_ascii=False))

    def test_names_that_are_taken_are_numbered_and_told(self):
        out = self.path("out.bridgecal")
        done = self.run_channels(PLAN, "--import", self.put("l.csv", "Name\nTP-01\nX\nX\n"), "--like", "TP-01",
                                 "--save", out)
        with open(out, encoding="utf-8") as file:
            names = [channel["name"] for channel in json.load(file)["channels"]]
        self.assertEqual(len(names), len(set(names)))
        for line in ("line 2", "line 4"):
            self.assertIn(line, done.stderr)


class Export(Lists):
    def test_python_reads_it(self):
        out = self.path("list.csv")
        self.run_channels(PLAN, "--export", out)
        with open(out, encoding="utf-8", newline="") as file:
            rows = list(csv.DictReader(file))
        with open(PLAN, encoding="utf-8") as file:
            channels = json.load(file)["channels"]
        self.assertEqual([(r["Name"], r["Group"], r["Note"]) for r in rows],
                         [(c["name"], c.get("group", ""), c.get("note", "")) for c in channels])
        self.assertEqual([float(row["Gauge factor"]) for row in rows],
                         [c["setup"]["bridge"]["gauge"]["factor"] for c in channels])
        shown = self.run_channels(PLAN, "--export", "-").stdout
        with open(out, encoding="utf-8") as file:  # universal line ends
            self.assertEqual(shown, file.read())

    def test_import_and_export_again_give_the_same(self):
        text = {}
        made = self.path("out.bridgecal")
        self.imported(table(GERMAN, delimiter=";"))
        self.run_channels(made, "--export", self.path("first.csv"))
        with open(self.path("first.csv"), encoding="utf-8", newline="") as file:
            text["first"] = file.read()
        with open(PLAN, encoding="utf-8") as file:  # a document with a channel to copy, and no other
            content = json.load(file)
        model = content["channels"][0]
        model["name"] = "model"
        content["channels"] = [model]
        content.pop("fingerprint", None)
        content["history"] = []
        rows = list(csv.reader(io.StringIO(text["first"])))
        wanted = [rows[0], *rows[8:]]  # the heading and the three that came from the list
        self.imported(table(wanted), document=self.put("model.bridgecal", json.dumps(content)), like="model")
        self.run_channels(made, "--export", self.path("second.csv"))
        with open(self.path("second.csv"), encoding="utf-8", newline="") as file:
            again = list(csv.reader(file))
        self.assertEqual([again[0], *again[2:]], wanted)

    def test_what_a_spreadsheet_would_run_is_kept_from_it(self):
        self.imported(table([["Name", "Remark"], ["N-01", "=1+1"], ["N-02", "@sum"]]))
        self.run_channels(self.path("out.bridgecal"), "--export", self.path("list.csv"))
        with open(self.path("list.csv"), encoding="utf-8", newline="") as file:
            notes = [row["Note"] for row in csv.DictReader(file)]
        self.assertFalse(any(note[:1] in ("=", "@", "+") for note in notes))
        with open(self.path("list.csv"), encoding="utf-8", newline="") as file:
            rows = list(csv.reader(file))
        again = self.imported(table([rows[0], *rows[-2:]]))  # and comes back as it was
        self.assertEqual([channel["note"] for channel in again], ["=1+1", "@sum"])


class Refusals(Lists):
    def test_each_bad_row_by_line_and_field_and_nothing_is_saved(self):
        rows = [["Name", "Gauge factor", "Leads, ohm", "Template", "Excitation"],
                ["N-01", "2.08", "1", "", "5 V"], ["N-02", "two", "1", "", ""], ["", "2.1", "1", "", ""],
                ["N-04", "0", "1", "", ""], ["N-05", "2.1", "-1", "", ""], ["N-06", "2.1", "1", "pentagon", ""],
                ["N-07", "2.1", "1", "", "5 ohm"]]
        done = self.refused(table(rows))
        lines = done.stderr.splitlines()
        self.assertEqual(len(lines), 7)
        for line, (number, field) in zip(lines, ((3, "gauge factor"), (4, "name"), (5, "gauge factor"),
                                                 (6, "lead resistance"), (7, "template"), (8, "excitation"))):
            self.assertIn(f"list.csv, line {number}, {field}: ", line)
        self.assertIn("nothing was saved", lines[-1])

    def test_what_is_no_list(self):
        for name, data, says in (("empty", b"", "nothing"), ("workbook", b"PK\x03\x04" + bytes(100), "workbook"),
                                 ("open quote", b'Name,Note\nN-01,"open\n', "line 2"),
                                 ("a cell too many", b"Name,Note\nN-01,a\nN-02,b,c\n", "line 3"),
                                 ("no byte of Windows-1252", b"Name,Note\nN-01,a\nN-02,\x81\n", "line 3")):
            with self.subTest(name):
                self.refused(data, says=("list.csv", says))

    def test_wrong_usage(self):
        out = ("--save", self.path("out.bridgecal"))
        good = self.put("l.csv", "Name\nN-01\n")
        copy = self.put("copy.bridgecal", pathlib.Path(PLAN).read_bytes())
        for words, says in (((PLAN,), "--import"), ((copy, "--export", copy), "would replace the"),
                            ((PLAN, "--import", good, "--like", "TP-01", "--save", good), "would replace the"), ((PLAN, "--import", good, *out), "--like"),
                            ((PLAN, "--import", good, "--like", "TP-01"), "--save"),
                            ((PLAN, "--import", good, "--like", "TP-99", *out), "TP-31"),
                            ((PLAN, "--import", self.path("none.csv"), "--like", "TP-01", *out), "no such file"),
                            ((PLAN, "--import", self.folder, "--like", "TP-01", *out), "folder"),
                            ((self.path("none"), "--export", "-"), "no such file"),
                            ((PLAN, "--export", self.path("none/l.csv")), "l.csv"),
                            ((PLAN, "--import", good, "--export", "-"), "one of")):
            done = self.run_channels(*words, exit=2)
            self.assertEqual((done.stdout, len(done.stderr.splitlines())), ("", 1), words)
            self.assertIn(says, done.stderr)
        self.assertFalse(os.path.exists(self.path("out.bridgecal")))
        self.assertEqual(pathlib.Path(copy).read_bytes(), pathlib.Path(PLAN).read_bytes())
        self.assertEqual(pathlib.Path(good).read_text(encoding="utf-8"), "Name\nN-01\n")



if __name__ == "__main__":
    unittest.main(argv=sys.argv[:1], verbosity=2)
