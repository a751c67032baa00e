# SPDX-License-Identifier: GPL-3.0-or-later
"""The command diagnose, and what check says about figures and causes: lines, JSON, exit status.

Called as diagnose_test.py PROGRAM SOURCE_FOLDER.
"""
import json
import os
import signal
import subprocess
import sys
import tempfile
import time
import unittest

PROGRAM, SOURCE = os.path.abspath(sys.argv[1]), os.path.abspath(sys.argv[2])
EXAMPLES = os.path.join(SOURCE, "examples")
DEMO = os.path.join(EXAMPLES, "demo.bridgecal")
PLAN = os.path.join(EXAMPLES, "plan.bridgecal")
PRE = os.path.join(EXAMPLES, "pre_test.csv")
EXPLANATION = ["cause", "index", "other", "size", "size_unit", "size_std_uncertainty", "chi2", "parameters",
               "explained", "fit_probability", "aic", "bic", "plausibility", "weight", "title", "size_text",
               "settings", "confirm", "on_strain", "correction"]


def run(*words):
    return subprocess.run([PROGRAM, *words], capture_output=True, text=True, timeout=120,
                          stdin=subprocess.DEVNULL)


def channel_of(document, name):
    return next(channel for channel in document["channels"] if channel["name"] == name)


class Diagnose(unittest.TestCase):
    def setUp(self):
        folder = tempfile.TemporaryDirectory()
        self.addCleanup(folder.cleanup)
        self.folder = folder.name

    def changed(self, change, source=DEMO):
        """A copy of an example with something changed in its JSON, without the fingerprint of what it was."""
        with open(source, encoding="utf-8") as file:
            document = json.load(file)
        change(document)
        document.pop("fingerprint", None)
        path = os.path.join(self.folder, "changed.bridgecal")
        with open(path, "w", encoding="utf-8") as file:
            json.dump(document, file)
        return path

    def planted(self, factor):
        """The demo, where the readings of TP-01 before the test are `factor` times what its network predicts,
        each known to 0.05 um/m; TP-01 is its only channel and that its only check."""
        expected = json.loads(run("predict", DEMO, "--channel", "TP-01", "--json").stdout)

        def change(document):
            channel = channel_of(document, "TP-01")
            document["channels"] = [channel]
            channel["checks"] = channel["checks"][:1]
            check = channel["checks"][0]
            check.pop("closed_with", None)
            for step, reading in zip(expected["channels"][0]["steps"], check["readings"]):
                reading.update(mean=factor * step["reading"], uncertainty=0.05)
        return self.changed(change)

    def json(self, *words, exit):
        done = run(*words, "--json")
        self.assertEqual(done.returncode, exit, done.stderr)
        return json.loads(done.stdout)

    def refused(self, *words, says):
        """Exit 2, nothing on standard output, one sentence on standard error."""
        done = run("diagnose", *words)
        self.assertEqual((done.returncode, done.stdout), (2, ""), done.stderr)
        self.assertEqual(done.stderr.count("\n"), 1, done.stderr)
        self.assertTrue(done.stderr.startswith("shuntwright: "), done.stderr)
        self.assertIn(says, done.stderr)

    def test_readings_as_predicted_are_healthy(self):
        result, = self.json("diagnose", self.planted(1), exit=0)["channels"]
        self.assertEqual((result["channel"], result["result"]), ("TP-01", "healthy"))
        self.assertEqual(result["telling_step"], None)
        # Nothing is off, so the misfit is that of rounding in the file: 1e-9 is far above it.
        self.assertLess(result["chi2"], 1e-9)
        self.assertGreater(result["probability"], 0.999)

    def test_a_planted_scale_is_found_with_its_size_and_the_whole_of_its_keys(self):
        result, = self.json("diagnose", self.planted(1.05), exit=1)["channels"]
        self.assertIn(result["result"], ("found", "tied"))
        for cause in result["explanations"]:
            self.assertEqual(list(cause), EXPLANATION)
            self.assertEqual(list(cause["correction"]),
                             ["factor", "factor_std_uncertainty", "offset", "offset_std_uncertainty",
                              "legitimate", "reason"])
        scale = next(cause for cause in result["explanations"] if cause["cause"] == "scale")
        self.assertIn(scale, result["explanations"][:max(1, result["tied"])])
        # As planted. Readings are exact, so only the fit's own arithmetic is in the way of 1.05.
        self.assertAlmostEqual(scale["size"], 1.05, delta=1e-4)
        self.assertAlmostEqual(scale["correction"]["factor"], 1 / 1.05, delta=1e-4)
        self.assertEqual((scale["size_unit"], scale["index"], scale["other"]), ("1", None, None))
        self.assertTrue(scale["correction"]["legitimate"])
        self.assertLessEqual(sum(cause["weight"] for cause in result["explanations"]), 1 + 1e-9)

    def test_in_words_it_names_cause_measurement_and_that_it_is_a_suspicion(self):
        done = run("diagnose", self.planted(1.05))
        self.assertEqual((done.returncode, done.stderr), (1, ""))
        for part in ("TP-01, ", "Cause", "If the cause is: ", "To confirm: ", "Strain data: ", "suspicion"):
            self.assertIn(part, done.stdout)

    def test_the_latest_check_is_taken_unless_one_is_named(self):
        with open(DEMO, encoding="utf-8") as file:
            checks = channel_of(json.load(file), "TP-01")["checks"]
        latest, = json.loads(run("diagnose", DEMO, "--channel", "TP-01", "--json").stdout)["channels"]
        self.assertEqual(latest["check"], checks[-1]["name"])
        first, = json.loads(
            run("diagnose", DEMO, "--channel", "TP-01", "--check", checks[0]["name"], "--json").stdout)["channels"]
        self.assertEqual(first["check"], checks[0]["name"])
        short, = json.loads(run("diagnose", DEMO, "--channel", "TP-01", "--check", "pre", "--json").stdout)["channels"]
        self.assertEqual(short["check"], "pre-test")

    def test_channels_keep_their_order_and_the_answer_is_the_same_each_time(self):
        with open(DEMO, encoding="utf-8") as file:
            names = [channel["name"] for channel in json.load(file)["channels"] if channel["checks"]]
        outputs = {run("diagnose", DEMO, "--json").stdout for _ in range(3)}
        self.assertEqual(len(outputs), 1)
        self.assertEqual([one["channel"] for one in json.loads(outputs.pop())["channels"]], names)

    def test_what_cannot_be_used_is_refused(self):
        self.refused("no_such_file.bridgecal", says="no such file")
        self.refused(DEMO, "--channel", "TP-99", says="no channel \"TP-99\"")
        self.refused(DEMO, "--channel", "TP-01", "--check", "noon", says="no check \"noon\"")
        self.refused(DEMO, "--check", "noon", says="no channel has a check \"noon\"")
        self.refused(DEMO, "--check", "", says="the name is empty")

        def without_checks(document):
            for channel in document["channels"]:
                channel["checks"] = []
        self.refused(self.changed(without_checks), says="no channel has a check")
        self.refused(self.changed(without_checks), "--channel", "TP-01", says="it has no check")

    def test_channels_without_the_check_are_named_and_do_not_count(self):
        def one_unchecked(document):
            document["channels"] = document["channels"][:2]
            document["channels"][1]["checks"] = []
        done = run("diagnose", self.changed(one_unchecked), "--json")
        self.assertIn(done.returncode, (0, 1))
        self.assertEqual(len(json.loads(done.stdout)["channels"]), 1)
        self.assertIn("not diagnosed", done.stderr)

    def test_a_check_without_readings_cannot_be_diagnosed(self):
        def unread(document):
            document["channels"] = document["channels"][:1]
            for check in document["channels"][0]["checks"]:
                check["readings"] = [None] * len(check["readings"])
        result, = self.json("diagnose", self.changed(unread), exit=2)["channels"]
        self.assertEqual((result["result"], result["explanations"]), ("not_possible", []))
        self.assertTrue(result["sentence"])

    def test_ctrl_c_ends_it_at_once(self):
        def many(document):
            channel = channel_of(document, "TP-01")
            document["channels"] = [{**channel, "name": f"C-{k}"} for k in range(2000)]
        path = self.changed(many)
        with subprocess.Popen([PROGRAM, "diagnose", path], stdout=subprocess.PIPE, stderr=subprocess.PIPE) as one:
            time.sleep(0.3)
            one.send_signal(signal.SIGINT)
            out, _ = one.communicate(timeout=20)
        self.assertNotEqual(one.returncode, 0)
        self.assertEqual(out, b"")


class Check(unittest.TestCase):
    def test_check_gives_figures_of_each_channel_and_a_diagnosis_of_those_that_do_not_pass(self):
        done = run("check", PLAN, "--recording", PRE, "--json")
        self.assertIn(done.returncode, (0, 1), done.stderr)
        channels = json.loads(done.stdout)["channels"]
        self.assertTrue(channels)
        for channel in channels:
            self.assertEqual([merit["figure"] for merit in channel["merits"]],
                             ["nonlinearity", "hysteresis", "repeatability", "zero_return", "zero_shift",
                              "symmetry", "combined_error", "span_ratio"])
            for merit in channel["merits"]:
                self.assertTrue(merit["definition"] or merit["reason"], merit)
                if merit["value"] is not None:  # the share is of the denominator that stands beside it
                    self.assertAlmostEqual(merit["share"], merit["value"] / merit["denominator"], places=12)
            if channel["verdict"] != "pass":
                self.assertIn("result", channel["diagnosis"])
        text = run("check", PLAN, "--recording", PRE).stdout
        wanted = sum(channel["diagnosis"] is not None for channel in channels)
        self.assertEqual(text.count("Most likely cause: ") + text.count("Diagnosis: "), wanted)


if __name__ == "__main__":
    unittest.main(argv=sys.argv[:1], verbosity=2)
