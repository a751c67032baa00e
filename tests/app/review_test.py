# SPDX-License-Identifier: GPL-3.0-or-later
"""The command review, called from outside: lines, JSON, exit status.

Called as review_test.py PROGRAM SOURCE_FOLDER.
"""
import json
import os
import subprocess
import sys
import tempfile
import unittest

PROGRAM, SOURCE = os.path.abspath(sys.argv[1]), os.path.abspath(sys.argv[2])
QUARTER = os.path.join(SOURCE, "examples", "quarter_bridge.bridgecal")


def run(*arguments):
    return subprocess.run([PROGRAM, "review", *arguments], capture_output=True, text=True, timeout=60)


class Review(unittest.TestCase):
    def setUp(self):
        self.folder = tempfile.TemporaryDirectory()
        self.addCleanup(self.folder.cleanup)

    def changed(self, change):
        """The smallest example with something changed, as a path."""
        with open(QUARTER, encoding="utf-8") as file:
            document = json.load(file)
        change(document["channels"][0]["setup"])
        path = os.path.join(self.folder.name, "changed.bridgecal")
        with open(path, "w", encoding="utf-8") as file:
            json.dump(document, file)
        return path

    def test_notes_alone_leave_the_exit_status_0(self):
        done = run(QUARTER, "--today", "2026-05-11")
        self.assertEqual((done.returncode, done.stderr), (0, ""))
        # One gauge and one shunt: one-sided, and that is all.
        self.assertEqual(done.stdout.count("\n"), 1)
        self.assertTrue(done.stdout.startswith("note: Q-1, step 2 (-1): All levels are negative."), done.stdout)

    def test_a_label_of_the_other_sign_is_a_fault_with_its_line(self):
        def turn(setup):
            setup["sequence"][1]["label"] = "+1"
        done = run(self.changed(turn))
        self.assertEqual(done.returncode, 1)
        # Derived: 350/(350 + 174650) = 1/500, gauge factor 2: -1000 um/m, as -1001 by 4v/(F N).
        self.assertTrue(done.stdout.startswith("fault: Q-1, step 2 (+1): Its label"), done.stdout)
        self.assertIn("it will read -1001 µm/m", done.stdout)

    def test_json_has_all_fields_and_names_the_mends(self):
        def cut(setup):
            del setup["sequence"][2]
        done = run(self.changed(cut), "--json", "--today", "2026-05-11", "--channel", "Q-1")
        self.assertEqual(done.returncode, 1)
        answer = json.loads(done.stdout)
        self.assertEqual(answer["today"], "2026-05-11")
        findings = answer["channels"][0]["findings"]
        self.assertEqual([f["severity"] for f in findings], ["warning", "note"])
        missing = findings[0]
        self.assertEqual(list(missing), ["kind", "severity", "step", "label", "shunt", "what", "why", "mends"])
        self.assertEqual((missing["kind"], missing["step"], missing["label"]), ("missing_zero", 2, "-1"))
        self.assertEqual(missing["mends"], ["Insert a zero step"])

    def test_control_characters_in_names_do_not_reach_the_terminal(self):
        def name(setup):
            setup["sequence"][1]["label"] = "+1\x1b[31m\n\x07"
        done = run(self.changed(name))
        self.assertEqual(done.stdout.count("\n"), 2)
        self.assertNotIn("\x1b", done.stdout)
        self.assertNotIn("\x07", done.stdout)

    def test_what_cannot_be_used_is_2_with_one_sentence(self):
        for arguments in ([QUARTER, "--today", "11.5.2026"], [QUARTER, "--today", "2026-02-30"],
                          [QUARTER, "--channel", "Q-9"], ["/nowhere.bridgecal"], []):
            done = run(*arguments)
            self.assertEqual((done.returncode, done.stdout), (2, ""), arguments)
            self.assertEqual(done.stderr.count("\n"), 1, done.stderr)

    def test_every_example_can_be_reviewed(self):
        for name in sorted(os.listdir(os.path.join(SOURCE, "examples"))):
            if name.endswith(".bridgecal"):
                done = run(os.path.join(SOURCE, "examples", name), "--today", "2026-05-11")
                self.assertIn(done.returncode, (0, 1), name)
                self.assertEqual(done.stderr, "", name)


if __name__ == "__main__":
    unittest.main(argv=sys.argv[:1], verbosity=2)
