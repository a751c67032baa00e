# SPDX-License-Identifier: GPL-3.0-or-later
"""The resistors command, called as from a shell, good input and bad.

Called as resistors_test.py PROGRAM SOURCE_FOLDER.
"""
import itertools
import json
import os
import subprocess
import sys
import tempfile
import unittest

PROGRAM, SOURCE = os.path.abspath(sys.argv[1]), os.path.abspath(sys.argv[2])
SMALL = os.path.join(SOURCE, "examples", "quarter_bridge.bridgecal")
DEMO = os.path.join(SOURCE, "examples", "demo.bridgecal")
WITHOUT_DISPLAY = {k: v for k, v in os.environ.items()
                   if k not in ("DISPLAY", "WAYLAND_DISPLAY", "QT_QPA_PLATFORM", "XDG_RUNTIME_DIR")}

# E12 of IEC 60063.
E12 = (1.0, 1.2, 1.5, 1.8, 2.2, 2.7, 3.3, 3.9, 4.7, 5.6, 6.8, 8.2)


def run(*words):
    return subprocess.run([PROGRAM, "resistors", *words], capture_output=True, timeout=120, encoding="utf-8",
                          env=WITHOUT_DISPLAY, stdin=subprocess.DEVNULL)


class ResistorsTest(unittest.TestCase):
    def setUp(self):
        folder = tempfile.TemporaryDirectory()
        self.addCleanup(folder.cleanup)
        self.folder = folder.name

    def written(self, name, text):
        path = os.path.join(self.folder, name)
        with open(path, "w", encoding="utf-8") as file:
            file.write(text)
        return path

    def outcome(self, *words, exit=0, notes=()):
        """What is found; every note on standard error has to be expected."""
        ended = run(*words, "--json")
        self.assertEqual(ended.returncode, exit, ended.stderr)
        said = ended.stderr.splitlines()
        self.assertEqual(len(said), len(notes), ended.stderr)
        for line, note in zip(said, notes):
            self.assertIn(note, line)
        return json.loads(ended.stdout)

    def refusal(self, *words):
        ended = run(*words)
        self.assertEqual(ended.returncode, 2, ended.stdout)
        self.assertEqual(ended.stdout, "")
        self.assertEqual(len(ended.stderr.strip().splitlines()), 1, ended.stderr)
        return ended.stderr

    def test_finds_the_pair_that_trying_all_pairs_finds(self):
        # The example is an ideal quarter bridge of 350 ohm and gauge factor 2: a shunt over the gauge simulates
        # -R/(F (R + R_s)) (Micro-Measurements TN-514, eq. 514.5), one over the completion arm R/(F R_s).
        ohms = [round(m * d) for d in (10_000, 100_000) for m in E12]
        levels = (700, 1500, -700, -1500)

        def miss(pair, level):
            strains = [1e6 * 350 / (2 * (ohm if level > 0 else 350 + ohm)) for ohm in pair]
            return min(1, *(abs(strain / abs(level) - 1) for strain in strains))

        misses = sorted(max(miss(pair, level) for level in levels) for pair in itertools.combinations(ohms, 2))
        outcome = self.outcome(SMALL, "--levels", "700,1500,-700,-1500", "--positions", "2", "--series", "E12",
                               "--from", "10k", "--to", "820k", exit=1, notes=["with the best set the reading at"])
        self.assertEqual(outcome["candidates"], len(ohms))
        self.assertEqual(len(outcome["best"]), 10)
        for found, wanted in zip(outcome["best"], misses):
            # Both exact but for roundings of 1e-15 V/V in outputs of 7e-4.
            self.assertAlmostEqual(found["greatest_miss"], wanted, delta=1e-10)
        self.assertTrue(outcome["proven"])

    def test_reaches_what_predict_says(self):
        level = self.outcome(SMALL, "--levels=-800", "--positions", "1", "--series", "E192")["best"][0]
        with open(SMALL, encoding="utf-8") as file:
            document = json.load(file)
        document["channels"][0]["setup"]["shunts"][0]["ohm"] = level["resistors"][0]["shunt_ohm"]
        changed = self.written("changed.bridgecal", json.dumps(document))
        steps = json.loads(subprocess.run([PROGRAM, "predict", changed, "--json"], capture_output=True, check=True,
                                          encoding="utf-8", env=WITHOUT_DISPLAY).stdout)["channels"][0]["steps"]
        simulated = next(step for step in steps if step["closed"])["simulated_strain_um_per_m"]
        self.assertAlmostEqual(simulated, level["levels"][0]["reached"], delta=1e-9)  # the same network

    def test_takes_the_document_s_stock_or_a_list(self):
        self.assertIn("there is no resistor to choose from", self.refusal(SMALL, "--levels", "1000"))
        stock = self.written("stock.csv", "id,resistance,tolerance\nS-1,174.65k,0.01%\nS-2,59k9,0.01%\n")
        outcome = self.outcome(SMALL, "--levels", "-1000", "--stock", stock)
        self.assertEqual([r["part"] for r in outcome["best"][0]["resistors"]], ["S-1"])
        self.assertEqual(outcome["best"][0]["new_parts"], 0)
        fitted = self.outcome(SMALL, "--levels", "-1000,-2500", "--stock", stock, "--fitted", "S-2",
                              "--positions", "2", exit=1, notes=["the reading at -2500 µm/m"])  # 59k9 gives -2904
        self.assertEqual([(r["part"], r["fitted"]) for r in fitted["best"][0]["resistors"]],
                         [("S-2", True), ("S-1", False)])

    def test_prints_tables(self):
        ended = run(SMALL, "--greatest", "1500", "--series", "E192", "--together", "--miss", "limit", "--keep", "3")
        self.assertEqual(ended.returncode, 0, ended.stderr)
        for words in ("Greatest miss, % of limit", "The best set:", "Wanted, µm/m", " and "):
            self.assertIn(words, ended.stdout)

    def test_says_what_cannot_be_reached(self):
        outcome = self.outcome(SMALL, "--levels", "500;90000", "--series", "E96", "--positions", "2", exit=1,
                               notes=["the reading at 90000 µm/m"])
        self.assertEqual(len(outcome["unreachable"]), 1)
        self.assertIn("90000 µm/m cannot be reached within the limits with these resistors; the nearest is", outcome["unreachable"][0])

    def one_of_100k(self):
        return self.written("stock.csv", "id,resistance,tolerance,due\nS-1,100k,0.01%,2026-03-31\n")

    def test_says_that_no_resistor_is_nearer_than_none(self):
        # Over the completion arm of 350 ohm, 100k simulates R/(F R_s) = 1750 um/m, and nothing between that and zero.
        words = (SMALL, "--stock", self.one_of_100k(), "--with-overdue")
        for level in ("500", "1e-300"):
            outcome = self.outcome(*words, "--levels", level, exit=1)
            self.assertEqual(outcome["best"], [])
            self.assertEqual(len(outcome["unreachable"]), 1)
            self.assertIn("they reach nothing between zero and 1750 µm/m", outcome["unreachable"][0])
            self.assertIn("no resistor is nearer than none", outcome["unreachable"][0])
            self.assertNotIn("any resistance", outcome["unreachable"][0])
        text = run(*words, "--levels", "500")
        self.assertEqual(text.returncode, 1)
        self.assertIn("1 set of up to 3 resistors, and none comes nearer to any level than no resistor does.", text.stdout)
        self.assertNotIn("Rank", text.stdout)
        self.assertNotIn("proven", text.stdout)

    def test_tells_how_fitted_resistors_do_when_no_further_one_is_nearer(self):
        # 174.65k over the gauge of 350 ohm: -R/(F (R + R_s)) = -1000 um/m.
        text = run(SMALL, "--levels=-1000", "--series", "E96", "--fitted", "174.65k")
        self.assertEqual((text.returncode, text.stderr), (1, ""))
        self.assertIn("none comes nearer to any level than the fitted resistors do", text.stdout)
        self.assertIn("The fitted resistors:", text.stdout)

    def test_notes_a_level_that_the_best_set_misses_by_more_than_the_limit(self):
        # One of E96 for levels of -500 and -1000: whichever is taken, one of them is off by far more than the
        # 1 % of the example's limits. A quarter bridge gives F e / (4 + 2 F e) (Micro-Measurements TN-507, from
        # memory), which an instrument of factor 2 shows as e/(1 + e): 1 % of it at -1000 is 10.01 um/m.
        words = (SMALL, "--levels=-500,-1000", "--positions", "1", "--series", "E96")
        levels = self.outcome(*words, notes=["the reading at"])["best"][0]["levels"]
        shown = lambda strain: strain / (1 + strain * 1e-6)
        found = []
        for level in levels:
            limit = 0.01 * abs(shown(level["wanted"]))
            off = abs(shown(level["reached"]) - shown(level["wanted"]))
            found.append((off / limit, level["wanted"], off, limit))
        _, wanted, off, limit = max(found)
        said = run(*words).stderr
        self.assertIn(f"the reading at {wanted:.0f} µm/m is off by {off:.6g} µm/m", said)
        self.assertIn(f"the channel's limit there is {limit:.6g} µm/m.", said)

    def test_due_dates_are_compared_with_the_day_that_is_given(self):
        words = (SMALL, "--levels", "1750", "--stock", self.one_of_100k())
        found = self.outcome(*words, "--today", "2026-03-31")
        self.assertEqual((found["today"], found["candidates"]), ("2026-03-31", 1))
        self.assertIn("no resistor to choose from", self.refusal(*words, "--today", "2026-04-01"))
        self.assertIn("11.5.2026", self.refusal(*words, "--today", "11.5.2026"))
        self.outcome(DEMO, "--channel", "TP-01", "--levels", "500", "--fitted", "AF-0101", "--today", "2028-04-01",
                     "--with-overdue", notes=["overdue for calibration on 2028-04-01: AF-0101 (due 2028-03-31)"])

    def test_fitted_resistors_are_parts_of_a_stock_or_values(self):
        words = (DEMO, "--channel", "TP-01", "--levels", "500", "--today", "2026-05-11")
        with open(DEMO, encoding="utf-8") as file:
            box = json.load(file)["stock"]["boxes"][0]["id"]
        for fitted, said in (("AF-0101,AF-0101", "is there twice"), ("AF-9999", "the stock holds no resistor “AF-9999”"),
                             (box, "by the value that it is set to"), ("59,87", "as one number and as two")):
            self.assertIn(said, self.refusal(*words, "--fitted", fitted))
        # Of the document's stock, though new ones are of a series.
        found = self.outcome(*words, "--series", "E96", "--fitted", "AF-0101; 59,5k")["best"][0]["resistors"]
        self.assertEqual([(r["part"], r["shunt_ohm"]) for r in found[:2]], [("AF-0101", 332018), (None, 59500)])

    def test_a_share_without_a_sign_is_refused(self):
        words = (SMALL, "--series", "E96")
        for option in (("--range", "2000", "--shares", "0.2,0.4"), ("--levels", "500", "--tolerance", "0.1")):
            said = self.refusal(*words, *option)
            self.assertIn("can be read as a share and as a percentage", said)
            self.assertIn("percent sign or ppm", said)
        found = self.outcome(*words, "--range", "2000", "--shares", "25%;500000ppm", "--sides", "positive", "--tolerance",
                             "500 ppm")["best"][0]
        self.assertEqual([level["wanted"] for level in found["levels"]], [500, 1000])
        self.assertEqual(found["resistors"][0]["tolerance"], 5e-4)

    def test_levels_follow_the_rules_of_the_window(self):
        found = self.outcome(SMALL, "--levels", "1000,5;1500", "--series", "E192")["best"][0]
        for level, wanted in zip(found["levels"], (1000.5, 1500), strict=True):
            # To m/m and back: two roundings, of 1e-13 each.
            self.assertAlmostEqual(level["wanted"], wanted, delta=5e-13)
        self.assertIn("as one number and as two", self.refusal(SMALL, "--levels", "500,1000", "--series", "E96"))

    def test_help_tells_of_long_searches_and_of_the_exit_status(self):
        text = " ".join(run("--help").stdout.split())
        for words in ("can take minutes", "on a terminal the progress is shown", "The exit status is", "with % or ppm"):
            self.assertIn(words, text)

    def test_levels_by_share_are_those_of_the_list(self):
        words = ("--series", "E96", "--sides", "negative")
        shares = self.outcome(SMALL, "--range", "2000", "--shares", "25%,50%,100%", *words)
        levels = self.outcome(SMALL, "--levels=-500,-1000,-2000", "--series", "E96")
        self.assertEqual(shares["best"], levels["best"])
        self.assertEqual([level["wanted"] for level in shares["best"][0]["levels"]], [-500, -1000, -2000])

    def test_refuses_what_makes_no_sense(self):
        series = ("--series", "E96")
        cases = [
            (("--levels", "500,ten"), "ten"),
            (("--levels", "0"), "zero"),
            (("--greatest", "-5"), "--greatest"),
            (("--range", "2000"), "--shares"),
            (("--range", "2000", "--shares", "0%"), "not above zero"),
            ((), "no levels are wanted"),
            (("--levels", "500", "--fitted", "59k,87k,1M"), "no position is free"),
            (("--levels", "500", "--fitted", "S-9"), "holds no resistor"),
            (("--levels", "500", "--positions", "9"), "--positions"),
            (("--levels", "500", "--from", "1M", "--to", "10k"), "1 M"),
            (("--levels", "500", "--greatest", "1500"), "--greatest"),
        ]
        for words, said in cases:
            with self.subTest(words=words):
                self.assertIn(said, self.refusal(SMALL, *words, *series))
        self.assertIn("is no series", self.refusal(SMALL, "--levels", "500", "--series", "E7"))
        self.assertIn("Name one of", self.refusal(DEMO, "--levels", "500", *series))
        self.assertIn("no such file", self.refusal(SMALL, "--levels", "500", "--stock", "/no/such/list"))


if __name__ == "__main__":
    unittest.main(argv=[sys.argv[0]])
