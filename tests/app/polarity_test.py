# SPDX-License-Identifier: GPL-3.0-or-later
"""The polarity command, called as from a shell, good input and bad.

Called as polarity_test.py PROGRAM SOURCE_FOLDER.
"""
import json
import os
import subprocess
import sys
import tempfile
import unittest

PROGRAM, SOURCE = os.path.abspath(sys.argv[1]), os.path.abspath(sys.argv[2])
DEMO = os.path.join(SOURCE, "examples", "demo.bridgecal")
WITHOUT_DISPLAY = {k: v for k, v in os.environ.items()
                   if k not in ("DISPLAY", "WAYLAND_DISPLAY", "QT_QPA_PLATFORM", "XDG_RUNTIME_DIR")}


def run(*words):
    return subprocess.run([PROGRAM, *words], capture_output=True, timeout=120, encoding="utf-8",
                          env=WITHOUT_DISPLAY, stdin=subprocess.DEVNULL)


def told(*words):
    done = run("polarity", DEMO, *words, "--json")
    if done.returncode != 0:
        raise AssertionError(done.stderr)
    return json.loads(done.stdout)


class PolarityTest(unittest.TestCase):
    def test_every_pair_of_points_once(self):
        for channel in "TP-01", "TP-11", "TP-21", "LC-1":
            shown = told("--channel", channel)
            nodes = [point["node"] for point in shown["points"]]
            pairs = [(nodes[i], nodes[j]) for i in range(len(nodes)) for j in range(i + 1, len(nodes))]
            self.assertEqual([(cell["a"], cell["b"]) for cell in shown["cells"]], pairs)
            self.assertEqual(len({cell["place"] for cell in shown["cells"]}), len(pairs))

    def test_arms_have_the_signs_of_the_trade(self):
        # A shunt lowers its arm's resistance: over the gauge of arm 1 that is compression, over the adjacent arm
        # it reads as tension (Micro-Measurements TN-514); arms 3 and 4 as 1 and 2.
        for channel in "TP-01", "TP-11", "TP-21":
            cells = {cell["place"]: cell for cell in told("--channel", channel, "--shunt", "100k")["cells"]}
            for arm, sign in (1, -1), (2, 1), (3, -1), (4, 1):
                cell = cells["over arm %d" % arm]
                self.assertEqual(cell["polarity"], "positive" if sign > 0 else "negative")
                self.assertGreater(sign * cell["output_mV_per_V"], 0)
                self.assertGreater(sign * cell["simulated_strain_um_per_m"], 0)

    def test_every_cell_has_its_sentence(self):
        # A shunt lowers its arm, TN-514; of the demo's bridges all are connected as their templates say.
        shown = told("--channel", "TP-01", "--shunt", "100k")
        self.assertEqual(shown["connection"], [])
        cells = {cell["place"]: cell for cell in shown["cells"]}
        self.assertIn("the shunt lowers arm 2 from", cells["over arm 2"]["sentence"].lower())
        self.assertIn("which simulates tension of gauge 1", cells["over arm 2"]["sentence"])

    def test_a_bridge_connected_otherwise(self):
        with tempfile.TemporaryDirectory() as folder:
            with open(DEMO, encoding="utf-8") as file:
                document = json.load(file)
            channel = next(channel for channel in document["channels"] if channel["name"] == "TP-21")
            channel["setup"]["bridge"]["hookup"] = {"touching": [["P+", "S-"]]}
            path = os.path.join(folder, "touching.bridgecal")
            with open(path, "w", encoding="utf-8") as file:
                json.dump(document, file)
            done = run("polarity", path, "--channel", "TP-21", "--json")
            self.assertEqual(done.returncode, 0, done.stderr)
            shown = json.loads(done.stdout)
            self.assertEqual(shown["connection"], ["Leads P+ and S- touch at their gauge ends."])

    def test_what_has_no_polarity_reads_nothing(self):
        for channel in "TP-01", "TP-11", "TP-21":
            for cell in told("--channel", channel, "--shunt", "100k")["cells"]:
                if cell.get("polarity") == "none" and "reading" in cell:
                    self.assertEqual([cell["output_mV_per_V"], cell["reading"]], [0, 0])

    def test_size_of_a_typed_shunt(self):
        # v = R/(4 Rs + 2 R), TN-514, of a bridge of equal arms: 350 ohm beside 350 ohm in the instrument.
        cells = {cell["place"]: cell for cell in told("--channel", "TP-01", "--shunt", "59k9")["cells"]}
        self.assertAlmostEqual(cells["over arm 4"]["output_mV_per_V"], 1e3 * 350 / (4 * 59900 + 700), delta=1e-9)

    def test_shunt_of_the_channel_is_the_one_of_its_step(self):
        shown = told("--channel", "TP-01")
        steps = json.loads(run("predict", DEMO, "--channel", "TP-01", "--json").stdout)["channels"][0]["steps"]
        step = next(step for step in steps if step["closed"] == [shown["shunt"]])
        cell = next(cell for cell in shown["cells"] if cell["place"] == "over arm 2")
        # The same network with other open branches: roundings of 1e-16 V/V each, 1e-13 mV/V.
        self.assertAlmostEqual(cell["output_mV_per_V"], step["output_mV_per_V"], delta=1e-11)
        self.assertAlmostEqual(cell["reading"], step["reading"], delta=1e-8)
        by_name = told("--channel", "TP-01", "--shunt", shown["shunt"])
        self.assertEqual(by_name, shown)

    def test_reversals_of_the_document_are_in_the_map(self):
        # By definition: S- against S+ is the negative of S+ against S-; the strain that a shunt stands for stays,
        # since the gauges' own output turns too. Reversed gauges turn the strain and leave the output.
        plain = told("--channel", "TP-11", "--shunt", "100k")
        for key, output, strain in (("signal_reversed", -1, 1), ("excitation_reversed", -1, 1),
                                    ("gauges_reversed", 1, -1)):
            with open(DEMO, encoding="utf-8") as file:
                document = json.load(file)
            channel = next(one for one in document["channels"] if one["name"] == "TP-11")
            channel["setup"]["bridge"]["hookup"] = {key: True}
            with tempfile.TemporaryDirectory() as folder:
                path = os.path.join(folder, "turned.bridgecal")
                with open(path, "w", encoding="utf-8") as file:
                    json.dump(document, file)
                done = run("polarity", path, "--channel", "TP-11", "--shunt", "100k", "--json")
                words = run("polarity", path, "--channel", "TP-11").stdout
            self.assertEqual(done.returncode, 0, done.stderr)
            turned = json.loads(done.stdout)
            self.assertTrue(turned[key])
            self.assertIn("reversed", words)
            for was, now in zip(plain["cells"], turned["cells"]):
                self.assertEqual(was["place"], now["place"])
                self.assertAlmostEqual(now["output_mV_per_V"], output * was["output_mV_per_V"], delta=1e-11)
                # Half bridge, bending: linear in the strain but for leads and unequal arms.
                before, after = was["simulated_strain_um_per_m"], now["simulated_strain_um_per_m"]
                curved = 0.01 * abs(before) if strain < 0 else 0
                self.assertAlmostEqual(after, strain * before, delta=1e-8 + curved)

    def test_place_without_effect_carries_its_reason(self):
        with open(DEMO, encoding="utf-8") as file:
            document = json.load(file)
        channel = next(one for one in document["channels"] if one["name"] == "TP-21")
        leads = channel["setup"]["bridge"]["leads"]
        channel["setup"]["bridge"]["leads"] = {name: {"ohm": 0} for name in leads}
        with tempfile.TemporaryDirectory() as folder:
            path = os.path.join(folder, "leadless.bridgecal")
            with open(path, "w", encoding="utf-8") as file:
                json.dump(document, file)
            done = run("polarity", path, "--channel", "TP-21", "--json")
        self.assertEqual(done.returncode, 0, done.stderr)
        cells = {cell["place"]: cell for cell in json.loads(done.stdout)["cells"]}
        self.assertIn("one node", cells["over lead P+"]["error"])
        self.assertIn("output_mV_per_V", cells["over arm 1"])

    def test_text_has_a_row_a_place(self):
        done = run("polarity", DEMO, "--channel", "TP-21", "--shunt", "59k")
        self.assertEqual(done.returncode, 0, done.stderr)
        self.assertTrue(done.stdout.startswith("TP-21: "), done.stdout[:80])
        self.assertIn("a shunt of 59 kΩ at every place, all other shunts open", done.stdout)
        for place in "over arm 1 ", "over arm 2 from the terminals", "over the excitation ", "over lead P+ ":
            self.assertIn("\n" + place, done.stdout)
        for polarity, sign in ("positive", "+"), ("negative", "-"):
            rows = [line.split() for line in done.stdout.splitlines() if f" {polarity} " in line]
            self.assertGreater(len(rows), 1)
            for row in rows:  # output, simulated and reading
                self.assertEqual([number[0] for number in row[-3:]], [sign] * 3, row)

    def test_bad_input_is_named(self):
        for words, named in ((("--channel", "TP-01", "--shunt", "nonsense"), "neither a shunt"),
                             (("--channel", "TP-01", "--shunt", "0"), "above zero"),
                             (("--channel", "TP-01", "--shunt", ""), "--shunt"),
                             (("--channel", "TP-99"), "TP-99"),
                             ((), "--channel")):
            done = run("polarity", DEMO, *words)
            self.assertEqual((done.returncode, done.stdout), (2, ""), words)
            self.assertIn(named, done.stderr)
            self.assertEqual(done.stderr.count("\n"), 1, done.stderr)


if __name__ == "__main__":
    unittest.main(argv=sys.argv[:1])
