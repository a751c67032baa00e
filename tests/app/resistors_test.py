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

    def outcome(self, *words):
        ended = run(*words, "--json")
        self.assertEqual(ended.returncode, 0, ended.stderr)
        self.assertEqual(ended.stderr, "")
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
                               "--from", "10k", "--to", "820k")
        self.assertEqual(outcome["candidates"], len(ohms))
        self.assertEqual(len(outcome["best"]), 10)
        for found, wanted in zip(outcome["best"], misses):
            # Both exact but for roundings of 1e-15 V/V in outputs of 7e-4.
            self.assertAlmostEqual(found["greatest_miss"], wanted, delta=1e-10)
        self.assertTrue(outcome["proven"])

    def test_reaches_what_predict_says(self):
        level = self.outcome(SMALL, "--levels=-800", "--positions", "1", "--series", "E96")["best"][0]
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
        fitted = self.outcome(SMALL, "--levels", "-1000,-2500", "--stock", stock, "--fitted", "S-2", "--positions", "2")
        self.assertEqual([(r["part"], r["fitted"]) for r in fitted["best"][0]["resistors"]],
                         [("S-2", True), ("S-1", False)])

    def test_prints_tables(self):
        ended = run(SMALL, "--greatest", "1500", "--series", "E24", "--together", "--miss", "limit", "--keep", "3")
        self.assertEqual(ended.returncode, 0, ended.stderr)
        for words in ("Greatest miss, % of limit", "The best set:", "Wanted, µm/m", " and "):
            self.assertIn(words, ended.stdout)

    def test_says_what_cannot_be_reached(self):
        outcome = self.outcome(SMALL, "--levels", "500,90000", "--series", "E96", "--positions", "2")
        self.assertEqual(len(outcome["unreachable"]), 1)
        self.assertIn("90000 µm/m cannot be reached within the limits with these resistors; the nearest is", outcome["unreachable"][0])

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
            (("--levels", "500", "--fitted", "S-9"), "--fitted"),
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
