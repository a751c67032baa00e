# SPDX-License-Identifier: GPL-3.0-or-later
"""The wiring command, called as from a shell, good input and bad.

Called as wiring_test.py PROGRAM SOURCE_FOLDER.
"""
import json
import os
import subprocess
import sys
import tempfile
import unittest

PROGRAM, SOURCE = os.path.abspath(sys.argv[1]), os.path.abspath(sys.argv[2])
SMALL = os.path.join(SOURCE, "examples", "quarter_bridge.bridgecal")
WITHOUT_DISPLAY = {k: v for k, v in os.environ.items()
                   if k not in ("DISPLAY", "WAYLAND_DISPLAY", "QT_QPA_PLATFORM", "XDG_RUNTIME_DIR")}


def run(*words):
    return subprocess.run([PROGRAM, *words], capture_output=True, timeout=120, encoding="utf-8",
                          env=WITHOUT_DISPLAY, stdin=subprocess.DEVNULL)


def pin(connector, name):
    return {"connector": connector, "pin": name}


class WiringTest(unittest.TestCase):
    def setUp(self):
        folder = tempfile.TemporaryDirectory()
        self.addCleanup(folder.cleanup)
        self.path = os.path.join(folder.name, "wired.bridgecal")
        with open(SMALL, encoding="utf-8") as file:
            self.content = json.load(file)
        self.channel = self.content["channels"][0]
        self.setup = self.channel["setup"]
        # Its one shunt, from its place to pins of our own.
        self.shunt = self.setup["shunts"][0]
        self.setup["pins"] = [pin("J1", "A") | {"node": self.shunt["from"]}, pin("J1", "B"),
                              pin("J1", "C") | {"node": self.shunt["to"]},
                              pin("J2", "1") | {"resistor": self.shunt["name"], "end": 1},
                              pin("J3", "1") | {"resistor": self.shunt["name"], "end": 2}]
        self.shunt["jumpers"] = [{"from": pin("J2", "1"), "to": pin("J1", "A")},
                                 {"from": pin("J3", "1"), "to": pin("J1", "C")}]

    def wiring(self, *words):
        with open(self.path, "w", encoding="utf-8") as file:
            json.dump(self.content, file)
        return run("wiring", self.path, "--channel", self.channel["name"], *words)

    def json(self, *words, exit=0):
        done = self.wiring(*words, "--json")
        self.assertEqual(done.returncode, exit, done.stderr)
        return json.loads(done.stdout)

    def test_wiring_as_planned_has_no_faults(self):
        told = self.json()
        self.assertEqual(told["faults"], [])
        self.assertEqual(told["pins"][0], pin("J1", "A") | {"use": self.shunt["from"]})
        self.assertEqual(told["pins"][1]["use"], "unused")
        shunt = told["shunts"][0]
        self.assertEqual(shunt["jumpers"], self.shunt["jumpers"])
        self.assertEqual(shunt["jumpers"], shunt["jumpers_for_plan"])
        self.assertFalse(shunt["inside_instrument"])
        self.assertNotIn("ohmmeter", told)

    def test_a_shunt_on_one_end_is_a_fault(self):
        self.shunt["jumpers"].pop()
        fault = self.json(exit=1)["faults"][0]
        self.assertEqual((fault["kind"], fault["severity"]), ("hanging_end", "error"))
        self.assertEqual(fault["pins"], [pin("J3", "1")])
        self.assertEqual(fault["shunt"], self.shunt["name"])
        text = self.wiring()
        self.assertEqual(text.returncode, 1)
        self.assertIn("error: " + fault["what"], text.stdout)

    def test_a_warning_is_a_fault_too(self):
        del self.setup["pins"][1]
        faults = self.json(exit=1)["faults"]
        self.assertEqual([fault["kind"] for fault in faults], ["neighbour_hazard"])
        self.assertEqual(faults[0]["severity"], "warning")

    def test_a_resistor_on_its_own_reads_its_value(self):
        states = self.json("--ohmmeter")["ohmmeter"]["states"]
        self.assertEqual([state["jumpers"] for state in states], [0, 1, 2])
        own = [value for value in states[0]["values"] if value["from"] == self.shunt["name"] + " end 1"]
        self.assertEqual(len(own), 1)
        self.assertAlmostEqual(own[0]["ohm"] / self.shunt["ohm"], 1, delta=1e-12)
        # Derived: 0.01 % rectangular at k = 2 (0.011547 %), ohmmeter 0.2 % and 0.1 ohm.
        expected = self.shunt["ohm"] * (2 * 1e-4 / 3**0.5 + 0.002) + 0.1
        self.assertAlmostEqual(own[0]["tolerance_ohm"] / expected, 1, delta=1e-5)

    def test_an_open_resistor_is_found_in_the_documents_readings(self):
        end = self.shunt["name"] + " end "
        self.channel["ohm_readings"] = [
            {"shunt": "", "jumpers": 0, "from": end + "1", "to": end + "2", "ohm": None}]
        faults = self.json("--ohmmeter")["ohmmeter"]["faults"]
        self.assertEqual(faults[0]["text"], self.shunt["name"] + " is open")
        self.assertTrue(faults[0]["explains"])
        self.assertIsNone(faults[0]["fitted_ohm"])
        self.assertIn("is open", self.wiring("--ohmmeter").stdout)

    def test_unplugged_takes_the_instrument_away(self):
        told = self.json("--ohmmeter", "--unplugged")["ohmmeter"]
        self.assertFalse(told["instrument_connected"])

    def test_text_begins_with_the_excitation(self):
        done = self.wiring("--ohmmeter")
        self.assertEqual(done.returncode, 0, done.stderr)
        self.assertIn("Switch the excitation off before wiring or ohmmeter work.", done.stdout)
        self.assertLess(done.stdout.index("Switch the excitation off"), done.stdout.index("Pins"))
        self.assertIn("No fault was found.", done.stdout)
        self.assertIn("after jumper 1 of 2 (J2-1 to J1-A)", done.stdout)
        self.assertNotIn("☐", done.stdout)

    def test_bad_input(self):
        for words in (("wiring",), ("wiring", SMALL), ("wiring", SMALL, "--channel", "none"),
                      ("wiring", self.path + "x", "--channel", "a"),
                      ("wiring", SMALL, "--channel", "Q-1", "--unplugged")):
            with self.subTest(words):
                done = run(*words)
                self.assertEqual(done.returncode, 2, done.stdout)
                self.assertTrue(done.stderr.startswith("shuntwright: "), done.stderr)

    def test_a_bridge_that_cannot_be_solved_gives_no_values(self):
        self.setup["bridge"]["arms_ohm"][0] = 0
        done = self.wiring("--ohmmeter")
        self.assertEqual(done.returncode, 2)
        self.assertIn("arm 1", done.stderr)
        self.assertEqual(self.wiring().returncode, 0, "pins and jumpers do not depend on it")


if __name__ == "__main__":
    unittest.main(argv=sys.argv[:1], verbosity=2)
