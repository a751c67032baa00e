# SPDX-License-Identifier: GPL-3.0-or-later
"""The working command, called as from a shell, good input and bad.

Called as working_test.py PROGRAM SOURCE_FOLDER.
"""
import json
import os
import subprocess
import sys
import unittest

PROGRAM, SOURCE = os.path.abspath(sys.argv[1]), os.path.abspath(sys.argv[2])
DEMO = os.path.join(SOURCE, "examples", "demo.bridgecal")
WITHOUT_DISPLAY = {k: v for k, v in os.environ.items()
                   if k not in ("DISPLAY", "WAYLAND_DISPLAY", "QT_QPA_PLATFORM", "XDG_RUNTIME_DIR")}


def run(*words):
    return subprocess.run([PROGRAM, *words], capture_output=True, timeout=120, encoding="utf-8",
                          env=WITHOUT_DISPLAY, stdin=subprocess.DEVNULL)


class WorkingTest(unittest.TestCase):
    def test_plan_has_four_parts_and_a_check_six(self):
        for words, parts in ((), 4), (("--check", "pre"), 6):
            done = run("working", DEMO, "--channel", "TP-01", "--step", "2", *words, "--json")
            self.assertEqual(done.returncode, 0, done.stderr)
            told = json.loads(done.stdout)
            self.assertEqual(len(told["parts"]), parts)
            self.assertEqual(told["check"], "pre-test" if words else None)

    def test_exact_strain_is_the_predicted_one(self):
        told = json.loads(run("working", DEMO, "--channel", "TP-01", "--step", "2", "--json").stdout)
        step = json.loads(run("predict", DEMO, "--channel", "TP-01", "--json").stdout)["channels"][0]["steps"][1]
        contrast = told["parts"][1]["contrasts"][0]
        # Both are the same double, written in full.
        self.assertAlmostEqual(contrast["exact_value"], step["simulated_strain_um_per_m"], delta=1e-9)
        # Small-strain form R/(F N (R + Rs)), Bower eq. 29.4: the numbers stand beside the formula.
        self.assertEqual(contrast["formula"], "ε ≈ R / (F N (R + Rs))")
        self.assertAlmostEqual(contrast["approximate_value"], 1e6 * 350 / (2.07 * (350 + 332018)), delta=0.01)

    def test_text_holds_all_headings(self):
        done = run("working", DEMO, "--channel", "TP-01", "--step", "2", "--check", "post-test")
        self.assertEqual(done.returncode, 0, done.stderr)
        self.assertTrue(done.stdout.startswith("TP-01, post-test, step 2\n\nThe step\n"), done.stdout[:80])
        for heading in "Simulated strain", "The reading", "Its uncertainty", "The verdict", "The line":
            self.assertIn("\n" + heading + "\n", done.stdout)

    def test_bad_input_is_named(self):
        for words, named in ((("--channel", "TP-01", "--step", "0"), "there is no step 0"),
                             (("--channel", "TP-01", "--step", "10"), "the sequence has 9"),
                             (("--channel", "TP-01", "--step", "2", "--check", "x"), "no check \"x\""),
                             (("--channel", "TP-99", "--step", "2"), "TP-99"),
                             (("--step", "2"), "--channel")):
            done = run("working", DEMO, *words)
            self.assertEqual((done.returncode, done.stdout), (2, ""), words)
            self.assertIn(named, done.stderr)
            self.assertEqual(done.stderr.count("\n"), 1, done.stderr)


if __name__ == "__main__":
    unittest.main(argv=sys.argv[:1])
