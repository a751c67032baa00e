# SPDX-License-Identifier: GPL-3.0-or-later
"""The whatif command, called as from a shell, good input and bad.

Called as whatif_test.py PROGRAM SOURCE_FOLDER.
"""
import json
import os
import subprocess
import sys
import unittest

PROGRAM, SOURCE = os.path.abspath(sys.argv[1]), os.path.abspath(sys.argv[2])
DEMO = os.path.join(SOURCE, "examples", "demo.bridgecal")
SMALL = os.path.join(SOURCE, "examples", "quarter_bridge.bridgecal")
WITHOUT_DISPLAY = {k: v for k, v in os.environ.items()
                   if k not in ("DISPLAY", "WAYLAND_DISPLAY", "QT_QPA_PLATFORM", "XDG_RUNTIME_DIR")}


def run(*words):
    return subprocess.run([PROGRAM, *words], capture_output=True, timeout=120, encoding="utf-8",
                          env=WITHOUT_DISPLAY, stdin=subprocess.DEVNULL)


def tried(*tries, file=DEMO, channel="TP-01", more=()):
    words = [word for one in tries for word in ("--try", one)]
    return run("whatif", file, "--channel", channel, *words, *more)


def told(*tries, **how):
    done = tried(*tries, more=("--json", *how.pop("more", ())), **how)
    assert done.returncode == 0, done.stderr
    return json.loads(done.stdout)


class WhatIfTest(unittest.TestCase):
    def test_readings_without_are_those_of_the_plan(self):
        plan = json.loads(run("predict", DEMO, "--channel", "TP-01", "--json").stdout)["channels"][0]["steps"]
        steps = told("reverse signal")["steps"]
        self.assertEqual(len(steps), len(plan))
        for step, planned in zip(steps, plan):
            # The same double, written in full; reversed but for the rounding of two potentials.
            self.assertAlmostEqual(step["without"]["reading"], planned["reading"], delta=1e-9)
            self.assertAlmostEqual(step["with"]["reading"], -planned["reading"], delta=1e-6)

    def test_a_leak_shifts_the_zero_as_handbooks_say(self):
        # One gauge of 350 ohm, gauge factor 2, no leads: y = R/(R + Ri), v = -y/(4 - 2 y) (TN-514, Bower eq. 47.1).
        answer = told("leak arm 1 = 10M", file=SMALL, channel="Q-1")
        y = 350 / (350 + 10e6)
        self.assertAlmostEqual(answer["zero_jump"], -4e6 / 2 * y / (4 - 2 * y), delta=1e-6)
        self.assertEqual(answer["steps"][0]["with"]["reading"], 0)
        old = told("leak arm 1 = 10M", file=SMALL, channel="Q-1", more=("--old-zero",))
        self.assertEqual(old["zeroed"], "before")
        self.assertAlmostEqual(old["steps"][0]["with"]["reading"], answer["zero_jump"], delta=1e-9)

    def test_several_come_in_the_order_given(self):
        answer = told("exchange P+,S-", "contact S- = 5", "length = 2")
        self.assertEqual([one["try"] for one in answer["tried"]], ["exchange P+,S-", "contact S- = 5 Ω", "length = 2"])
        self.assertEqual(answer["tried"][1]["kind"], "lead_contact")
        self.assertEqual(answer["tried"][1]["text"], "Bad contact of 5 Ω in lead S-")
        back = told("exchange P+,S-", "exchange S-,P+")
        for step in back["steps"]:
            self.assertEqual(step["difference"], 0)

    def test_what_cannot_be_read_is_an_answer_not_a_failure(self):
        answer = told("broken S-")
        self.assertIn("error", answer["zero_with"])
        self.assertIsNone(answer["zero_jump"])
        for step in answer["steps"]:
            self.assertIn("error", step["with"])
            self.assertIsNone(step["difference"])
            self.assertEqual(step["polarity_change"], "cannot be read")
        self.assertIn("No step can be read any more", answer["sentence"])

    def test_text_is_a_sentence_a_table_and_the_caution(self):
        done = tried("reverse signal")
        self.assertEqual((done.returncode, done.stderr), (0, ""))
        lines = done.stdout.splitlines()
        self.assertEqual(lines[0], "TP-01. Zeroed after it came: Signal wires reversed")
        self.assertTrue(lines[1].startswith("All readings turn their sign"), lines[1])
        self.assertEqual(sum("reversed, now" in line for line in lines), 6, done.stdout)
        self.assertIn("nothing about the real article", done.stdout)

    def test_the_file_stays_as_it_is(self):
        with open(DEMO, "rb") as file:
            before = file.read()
        tried("broken S-", "leads = 5")
        with open(DEMO, "rb") as file:
            self.assertEqual(file.read(), before)

    def test_help_tells_the_notation(self):
        done = run("whatif", "--help")
        self.assertEqual(done.returncode, 0)
        for form in ("broken LEAD", "exchange LEAD,LEAD", "leak arm N = OHM", "gauges warmer = KELVIN"):
            self.assertIn(form, done.stdout)

    def test_bad_input_is_named_with_what_can_be_tried(self):
        for tries, named in ((("leek arm 1",), "leak arm N = OHM"),
                             (("broken S+",), "This connection has P+, S-, return"),
                             (("broken",), "it does not say where"),
                             (("leak arm 1 = 0",), "from 1 mΩ to 1 TΩ"),
                             (("leads = 1e300",), "from 1 µΩ to 1 MΩ"),
                             (("leads warmer = -300",), "from -273 K to 1000 K"),
                             (("exchange P+,S-", "exchange return,S-") * 51, "no more than 100 exchanges"),
                             (("leak arm 1 = many",), "many"),
                             (("broken S-", "broken S-"), "broken already"),
                             ((), "--try")):
            done = tried(*tries)
            self.assertEqual((done.returncode, done.stdout), (2, ""), tries)
            self.assertIn(named, done.stderr)
            self.assertEqual(done.stderr.count("\n"), 1, done.stderr)
        self.assertEqual(tried("broken S-", channel="TP-99").returncode, 2)
        self.assertEqual(run("whatif", "/nowhere.bridgecal", "--channel", "x", "--try", "broken S-").returncode, 2)


if __name__ == "__main__":
    unittest.main(argv=sys.argv[:1])
