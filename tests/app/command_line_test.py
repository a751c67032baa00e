# SPDX-License-Identifier: GPL-3.0-or-later
"""The commands of the program, called as from a shell, good input and bad.

Called as command_line_test.py PROGRAM SOURCE_FOLDER.
"""
import csv
import json
import math
import os
import pty
import re
import shutil
import statistics
import subprocess
import sys
import tempfile
import unittest

PROGRAM, SOURCE = os.path.abspath(sys.argv[1]), os.path.abspath(sys.argv[2])
EXAMPLES = os.path.join(SOURCE, "examples")
PLAN = os.path.join(EXAMPLES, "plan.bridgecal")
DEMO = os.path.join(EXAMPLES, "demo.bridgecal")
SMALL = os.path.join(EXAMPLES, "quarter_bridge.bridgecal")
CELL = os.path.join(EXAMPLES, "load_cell.bridgecal")
PRE = os.path.join(EXAMPLES, "pre_test.csv")
POST = os.path.join(EXAMPLES, "post_test.csv")
WITHOUT_DISPLAY = {k: v for k, v in os.environ.items()
                   if k not in ("DISPLAY", "WAYLAND_DISPLAY", "QT_QPA_PLATFORM", "XDG_RUNTIME_DIR")}


def run(*words, env=None, **more):
    return subprocess.run([PROGRAM, *words], capture_output=True, timeout=120, encoding="utf-8",
                          env=env or WITHOUT_DISPLAY, stdin=subprocess.DEVNULL, **more)


def on_terminal(*words):
    """What a terminal at standard error is told, while standard output goes elsewhere."""
    ours, theirs = pty.openpty()
    program = subprocess.Popen([PROGRAM, *words], stdout=subprocess.DEVNULL, stderr=theirs, stdin=subprocess.DEVNULL,
                               env=WITHOUT_DISPLAY)
    os.close(theirs)
    told = b""
    try:
        while chunk := os.read(ours, 4096):
            told += chunk
    except OSError:  # so a terminal says that nobody writes to it any more
        pass
    os.close(ours)
    program.wait(60)
    return told.decode("utf-8")


def setups(content):
    """All set-ups of a document, those that are kept with closed checks too."""
    for channel in content["channels"]:
        yield channel["setup"]
        for check in channel["checks"]:
            if "closed_with" in check:
                yield check["closed_with"]


def smallest_shunt():
    with open(SMALL, encoding="utf-8") as file:
        return json.load(file)["channels"][0]["setup"]["shunts"][0]


def states(of, amount, at=None, relative=False, group=""):
    """A standard uncertainty as documents state it."""
    place = {} if at is None else {"at": at}
    return {"of": of, **place, "statement": "standard", "amount": amount, "relative": relative,
            "coverage_factor": 2, "distribution": "rectangular", "group": group}


class CommandTest(unittest.TestCase):
    def setUp(self):
        folder = tempfile.TemporaryDirectory()
        self.addCleanup(folder.cleanup)
        self.folder = folder.name

    def path(self, name):
        return os.path.join(self.folder, name)

    def file(self, name, text):
        with open(self.path(name), "w", encoding="utf-8") as file:
            file.write(text)
        return self.path(name)

    def document(self, change, source=SMALL):
        """A copy of an example with something changed in its JSON, without the fingerprint of what it was."""
        with open(source, encoding="utf-8") as file:
            content = json.load(file)
        change(content)
        content.pop("fingerprint", None)
        return self.file("changed.bridgecal", json.dumps(content))

    def stated(self, change, source=SMALL):
        """The same with every set-up changed."""
        def all_setups(content):
            for setup in setups(content):
                change(setup)
        return self.document(all_setups, source)

    def certain(self, *uncertain):
        """The smallest example, of which nothing is uncertain but what is stated here."""
        def change(setup):
            names = [shunt["name"] for shunt in setup["shunts"]]
            places = {"arm": "1234", "lead": ("P+", "P-", "S+", "S-", "return"), "shunt": names,
                      "shunt_wires": names, "shunt_contact": names, "rounding": ("zero", "step")}
            kinds = ("arm", "lead", "lead_temperature", "shunt", "shunt_wires", "shunt_contact", "gain",
                     "excitation", "zero_drift", "rounding", "gauge_factor", "factor_coefficient",
                     "gauge_temperature")
            known = {(kind, at): states(kind, 0, at) for kind in kinds for at in places.get(kind, (None,))}
            known |= {(one["of"], one.get("at")): one for one in uncertain}
            setup["uncertainties"] = list(known.values())
        return self.stated(change)

    def succeeds(self, *words, exit=0):
        done = run(*words)
        self.assertEqual(done.returncode, exit, done.stderr)
        return done

    def json(self, *words, exit=0):
        return json.loads(self.succeeds(*words, "--json", exit=exit).stdout)

    def refused(self, *words, says, says_also=""):
        """Exit 2, nothing promised on standard output, one sentence of plain words on standard error."""
        done = run(*words)
        self.assertEqual(done.returncode, 2, done.stderr)
        lines = done.stderr.strip().split("\n")
        self.assertEqual(len(lines), 1, done.stderr)
        self.assertTrue(lines[0].startswith("shuntwright: ") and lines[0].endswith("."), done.stderr)
        self.assertIn(says, lines[0])
        self.assertIn(says_also, lines[0])
        for word in ("terminate", "exception", "what():", "Segmentation", "Assertion"):
            self.assertNotIn(word, done.stderr)
        return done


class Usage(CommandTest):
    COMMANDS = ("predict", "polarity", "levels", "line", "check", "diagnose", "compare", "batch", "channels",
                "report", "verify", "review", "resistors", "wiring", "working", "whatif", "practice", "spice", "demo",
                "describe")

    def test_help_lists_the_commands_and_each_has_its_own(self):
        done = self.succeeds("--help")
        for command in self.COMMANDS:
            self.assertIn(command, done.stdout)
            self.assertIn(command, self.succeeds(command, "--help").stdout)

    def test_version(self):
        self.assertRegex(self.succeeds("--version").stdout, r"^shuntwright \d+\.\d+\.\d+\n$")

    def test_wrong_usage_is_refused(self):
        self.refused("predict", says="FILE")
        self.refused("predict", PLAN, "--colour", "red", says="--colour")
        self.refused("spice", PLAN, "--channel", "TP-01", says="--step")
        self.refused("spice", PLAN, "--channel", "TP-01", "--step", "two", says="--step")
        self.refused("check", PLAN, says="--recording")
        self.refused("report", PLAN, says="--out")
        self.refused("--demo", PLAN, says="--demo")
        self.refused("--demo", "predict", PLAN, says="--demo")

    def test_a_window_needs_a_display_and_says_what_works_without(self):
        self.refused("--demo", says="no display", says_also="--help")
        self.refused(PLAN, says="no display")
        self.refused(self.path("none.bridgecal"), says="no such file")

    def test_a_mistyped_command_lists_the_commands(self):
        self.refused("prediction", says="neither a command nor a file", says_also=", ".join(self.COMMANDS))
        self.refused("prediction", PLAN, says="neither a command nor a file")
        self.refused("prediction", "--channel", "TP-01", says="neither a command nor a file")
        # A file needs no ending, and a name with one is meant as a file.
        os.mkfifo(self.path("pipe"))
        self.assertIn("pipe or a device", run("pipe", cwd=self.folder).stderr)
        self.refused("prediction.bridgecal", says="no such file")

    def test_an_empty_name_does_not_mean_all(self):
        for words in (("predict", PLAN), ("compare", DEMO), ("check", PLAN, "--recording", PRE),
                      ("spice", PLAN, "--step", "1")):
            self.refused(*words, "--channel", "", says="--channel", says_also="empty")
        self.refused("compare", DEMO, "--checks", "", says="--checks", says_also="empty")
        self.refused("levels", PRE, "--column", "", says="--column", says_also="empty")

    def test_output_that_cannot_be_written_is_an_error(self):
        with open("/dev/full", "w") as full:
            done = subprocess.run([PROGRAM, "predict", PLAN], stdout=full, stderr=subprocess.PIPE,
                                  encoding="utf-8", timeout=60, env=WITHOUT_DISPLAY)
        self.assertEqual(done.returncode, 2)
        self.assertIn("could not be written", done.stderr)


class Predict(CommandTest):
    def test_keys_of_a_strain_channel(self):
        channels = self.json("predict", PLAN, "--channel", "TP-01")["channels"]
        self.assertEqual([c["channel"] for c in channels], ["TP-01"])
        self.assertEqual(channels[0]["reading_unit"], "µm/m")
        self.assertEqual(channels[0]["bridge"], "quarter_three_wire")
        step = channels[0]["steps"][1]
        self.assertEqual(step["step"], 2)
        self.assertEqual(step["closed"], ["332k on arm 2"])
        self.assertEqual(step["polarity"], "positive")
        for key in ("output_mV_per_V", "simulated_strain_um_per_m", "linear_indication_um_per_m", "reading"):
            self.assertGreater(step[key], 0, key)

    def test_keys_of_a_transducer(self):
        step = self.json("predict", CELL)["channels"][0]["steps"][1]
        self.assertEqual(step["unit"], "kN")
        self.assertGreater(step["simulated_load"], 0)
        self.assertNotIn("simulated_strain_um_per_m", step)

    def test_table_names_units(self):
        done = self.succeeds("predict", SMALL)
        self.assertIn("Simulated, µm/m", done.stdout)
        self.assertIn("-1000", done.stdout)  # derived in examples/README.md

    def test_a_bad_step_keeps_its_error_and_the_others(self):
        def cross(content):  # both ends on one node
            content["channels"][0]["setup"]["shunts"][0].update({"from": "P-", "to": "P-"})
        channel = self.json("predict", self.document(cross), exit=1)["channels"][0]
        self.assertIn("error", channel["steps"][1])
        self.assertNotIn("reading", channel["steps"][1])
        self.assertEqual(channel["steps"][0]["reading"], 0)

    def test_a_shunt_that_shorts_the_excitation_is_an_error_of_its_step(self):
        def short(content):
            content["channels"][0]["setup"]["shunts"][0].update({"from": "P+", "to": "P-", "ohm": 0})
        channel = self.json("predict", self.document(short), exit=1)["channels"][0]
        self.assertIn("error", channel["steps"][1])

    def test_a_resistance_that_cannot_be_is_an_error_of_its_step_and_the_exit_status_is_1(self):
        def negative(content):
            content["channels"][0]["setup"]["shunts"][0]["ohm"] = -100
        document = self.document(negative)
        steps = self.json("predict", document, exit=1)["channels"][0]["steps"]
        self.assertEqual(["error" in step for step in steps], [False, True, False])
        text = self.succeeds("predict", document, exit=1).stdout
        self.assertIn("step 2: ", text)
        self.assertIn("zero", text)  # the steps that can be
        self.assertIn("1 when some step cannot be", run("predict", "--help").stdout)

    def test_a_channel_that_cannot_be_predicted_is_refused(self):
        def negative(content):
            content["channels"][0]["setup"]["bridge"]["arms_ohm"][1] = -350
        self.refused("predict", self.document(negative), says="arm 2")

        def no_steps(content):
            content["channels"][0]["setup"]["sequence"] = []
        self.refused("predict", self.document(no_steps), says="no steps")

    def test_a_channel_without_steps_among_others_is_no_error(self):
        def no_steps(content):
            content["channels"][2]["setup"]["sequence"] = []
        channels = self.json("predict", self.document(no_steps, PLAN))["channels"]
        self.assertEqual([len(c["steps"]) for c in channels], [9, 9, 0, 9, 9, 9, 13])

    def test_one_bad_channel_does_not_hide_the_others(self):
        def negative(content):
            content["channels"][2]["setup"]["bridge"]["arms_ohm"][1] = -350
        done = run("predict", self.document(negative, PLAN), "--json")
        self.assertEqual(done.returncode, 2)
        channels = json.loads(done.stdout)["channels"]
        self.assertEqual(len(channels), 7)
        self.assertIn("arm 2", channels[2]["error"])
        self.assertEqual(len(channels[3]["steps"]), 9)


class Uncertainty(CommandTest):
    # The smallest example is a quarter bridge of 350 ohm, gauge factor 2, no leads, R over arm 1 of 350 ohm, so
    # that 2 R/350 + 1 = 999. Derived: the output is -1 / (2 (2 R/350 + 1)), the linear indication 2e6 of it in
    # um/m, its derivative by R 2e6 / (350 x 999^2) um/m per ohm.
    SHUNT_OHM = 174650
    PER_OHM = 2e6 / (350 * 999**2)
    # At 95.45 % k of a normal distribution is 2 to six digits (tables of the normal distribution).
    K = 2

    def test_keys_of_a_strain_channel_and_of_a_transducer(self):
        channel = self.json("predict", PLAN, "--channel", "TP-01")["channels"][0]
        self.assertEqual(set(channel["decision"]), {"rule", "coverage"})
        step = channel["steps"][1]
        self.assertGreater(step["expanded_uncertainty_strain"], step["expanded_uncertainty"])
        for ending in ("", "_strain"):
            self.assertGreater(step["expanded_uncertainty" + ending], 0)
            self.assertAlmostEqual(step["coverage_factor" + ending], self.K, delta=1e-5)
            self.assertIsNone(step["effective_degrees_of_freedom" + ending])
        cell = self.json("predict", CELL)["channels"][0]["steps"][1]
        self.assertGreater(cell["expanded_uncertainty_load"], 0)
        self.assertNotIn("expanded_uncertainty_strain", cell)

    def test_a_single_shunt_by_its_derivative(self):
        self.assertEqual(smallest_shunt()["ohm"], self.SHUNT_OHM)
        document = self.certain(states("shunt", 1e-3, smallest_shunt()["name"], relative=True),
                                states("gauge_factor", 0.01, relative=True))
        step = self.json("predict", document)["channels"][0]["steps"][1]
        u = 1e-3 * self.SHUNT_OHM * self.PER_OHM
        # 1e-5: k is 2 to six digits.
        self.assertAlmostEqual(step["expanded_uncertainty"] / (self.K * u), 1, delta=1e-5)
        # The strain is -350 / (350 + R) / 2: 174.65/175000 of 1000 um/m from R, 1 % from the gauge factor.
        strain = math.hypot(1000 * 174.65 / 175000, 10)
        self.assertAlmostEqual(step["expanded_uncertainty_strain"] / (self.K * strain), 1, delta=1e-5)

    def test_degrees_of_freedom_are_those_of_the_only_input(self):
        one = dict(states("shunt", 1e-3, smallest_shunt()["name"], relative=True), degrees_of_freedom=10)
        step = self.json("predict", self.certain(one))["channels"][0]["steps"][1]
        self.assertAlmostEqual(step["effective_degrees_of_freedom"], 10, delta=1e-9)
        # JCGM 100:2008, table G.2: t at 95.45 % and 10 degrees of freedom, to three digits.
        self.assertAlmostEqual(step["coverage_factor"], 2.28, delta=0.005)

    def test_the_budget_is_whole(self):
        document = self.certain(states("shunt", 1e-3, smallest_shunt()["name"], relative=True),
                                states("zero_drift", 1e-6))
        channel = self.json("predict", document, "--budget")["channels"][0]
        inputs = channel["budget"]["inputs"]
        chain, strain = channel["budget"]["scopes"]
        self.assertEqual((chain["scope"], chain["unit"], strain["scope"]), ("chain", "µm/m", "strain"))
        step = chain["steps"][1]
        by_name = {one["name"]: k for k, one in enumerate(inputs)}
        shunt, drift = by_name["shunt " + smallest_shunt()["name"]], by_name["zero drift of the instrument"]
        self.assertEqual(inputs[shunt]["value"], self.SHUNT_OHM)
        self.assertEqual((inputs[shunt]["unit"], inputs[shunt]["statement"]), ("Ω", "u = 0.1 %"))
        self.assertAlmostEqual(inputs[shunt]["standard_uncertainty"], 174.65, delta=1e-9)
        self.assertFalse(any(one["assumed"] for one in inputs))
        # Derived above; 1e-9: a derivative by the solved network against one by hand, both in doubles.
        self.assertAlmostEqual(step["sensitivities"][shunt] / self.PER_OHM, 1, delta=1e-9)
        self.assertAlmostEqual(step["sensitivities"][drift], 2e6, delta=1e-3)
        self.assertAlmostEqual(step["contributions"][drift], 2, delta=1e-9)
        variance = (174.65 * self.PER_OHM)**2 + 2**2
        self.assertAlmostEqual(step["shares"][shunt], (174.65 * self.PER_OHM)**2 / variance, delta=1e-9)
        self.assertAlmostEqual(sum(step["shares"]), 1, delta=1e-12)
        self.assertAlmostEqual(step["standard_uncertainty"], math.sqrt(variance), delta=1e-9)
        self.assertAlmostEqual(chain["covariance"][1][1], variance, delta=1e-8)
        self.assertEqual(chain["covariance"][0][0], 0)  # a zero reference has no uncertainty against itself

    def test_assumptions_carry_their_reason(self):
        document = self.stated(lambda setup: setup.update(uncertainties=[]), PLAN)
        inputs = self.json("predict", document, "--channel", "TP-01", "--budget")["channels"][0]["budget"]["inputs"]
        for one in inputs:
            self.assertTrue(one["assumed"], one)
            self.assertTrue(one["reason"], one)
        self.assertNotIn("budget", self.json("predict", PLAN, "--channel", "TP-01")["channels"][0])

    def test_tables_say_scope_and_k(self):
        plain = self.succeeds("predict", PLAN, "--channel", "TP-01").stdout
        for words in ("U of simulated", "(strain), µm/m", "U of expected", "(chain), µm/m", "95.45 %, k = 2."):
            self.assertIn(words, plain)
        self.assertNotIn("Inputs and what is known", plain)
        budget = self.succeeds("predict", PLAN, "--channel", "TP-01", "--budget").stdout
        for words in ("Inputs and what is known of them", "Uncertainty of the steps",
                      "Step 2 (+1): what its uncertainty is made of", "Covariance of the steps (chain)", "assumed: "):
            self.assertIn(words, budget)

    def test_a_bad_uncertainty_is_named_and_the_rest_is_shown(self):
        def impossible(setup):  # three inputs that all run against each other
            names = [shunt["name"] for shunt in setup["shunts"]][:3]
            setup["uncertainties"] = [states("shunt", 1e-4, name, True, "box") for name in names]
            setup["correlation_groups"] = [{"name": "box", "coefficient": -0.9}]
        document = self.stated(impossible, PLAN)
        channel = self.json("predict", document, "--channel", "TP-01", "--budget")["channels"][0]
        bad, good = channel["steps"][1], channel["steps"][5]
        self.assertIsNone(bad["expanded_uncertainty"])
        self.assertIn("group box", bad["uncertainty_error"])
        self.assertIn("group box", bad["uncertainty_error_strain"])
        self.assertGreater(bad["reading"], 0)
        self.assertGreater(good["expanded_uncertainty"], 0)
        self.assertEqual(sum("error" in one for one in channel["budget"]["inputs"]), 3)
        text = self.succeeds("predict", document, "--channel", "TP-01").stdout
        self.assertIn("Steps 2–4 have no uncertainty: group box", text)


class Trials(CommandTest):
    def trials(self, document, *words):
        return self.json("predict", document, "--trials", *words)["channels"][0]["trials"]

    def shunt_alone(self):
        return self.certain(states("shunt", 1e-3, smallest_shunt()["name"], relative=True))

    def test_a_single_normal_input_comes_out_as_derived(self):
        trials = self.trials(self.shunt_alone(), "20000")
        self.assertEqual((trials["scope"], trials["unit"], trials["seed"], trials["trials"]),
                         ("chain", "µm/m", 1, 20000))
        step = trials["steps"][0]
        self.assertEqual(step["step"], 2)
        # Derived in Uncertainty: u = 174.65 x 2e6/(350 x 999^2) um/m about -2e6/1998. The mean of n trials
        # scatters by u/sqrt(n), u by a share of 1/sqrt(2 n); five of these. The ends of an interval at
        # 2.275 % scatter by u sqrt(p (1 - p)/n)/0.054 (density of the normal distribution at 2) = 0.0195 u.
        u, n = 174.65 * 2e6 / (350 * 999**2), 20000
        self.assertAlmostEqual(step["mean"], -2e6 / 1998, delta=5 * u / math.sqrt(n))
        self.assertAlmostEqual(step["standard_uncertainty"] / u, 1, delta=5 / math.sqrt(2 * n))
        low, high = step["symmetric_interval"]
        self.assertAlmostEqual(low, -2e6 / 1998 - 2 * u, delta=5 * 0.0195 * u)
        self.assertAlmostEqual(high, -2e6 / 1998 + 2 * u, delta=5 * 0.0195 * u)
        shortest = step["shortest_interval"]
        self.assertLessEqual(shortest[1] - shortest[0], high - low)
        linear = step["linear_interval"]
        self.assertAlmostEqual((linear[1] - linear[0]) / (4 * u), 1, delta=1e-5)  # k = 2 to six digits
        validation = step["validation"]
        self.assertEqual(validation["digits"], 1)
        self.assertAlmostEqual(validation["low_difference"], abs(low - linear[0]), delta=1e-9)
        self.assertEqual(validation["passed"], max(validation["low_difference"], validation["high_difference"])
                         <= validation["tolerance"])
        # u is 1.0 um/m: half a unit of its first digit (JCGM 101:2008, 7.9.2).
        self.assertEqual(validation["tolerance"], 0.5)

    def test_strain_and_load(self):
        strain = self.trials(PLAN, "20000", "--scope", "strain", "--channel", "TP-01")
        self.assertEqual((strain["scope"], strain["unit"]), ("strain", "µm/m"))
        self.assertEqual([step["step"] for step in strain["steps"]], [2, 3, 4, 6, 7, 8])
        # The gauge factor, normal, makes most of it: u of trials and budget agree to a few per cent.
        for step in strain["steps"]:
            self.assertAlmostEqual(step["standard_uncertainty"] / step["linear_standard_uncertainty"], 1, delta=0.05)
        load = self.trials(CELL, "20000", "--scope", "load")
        self.assertEqual((load["scope"], load["unit"]), ("load", "kN"))

    def test_a_result_depends_on_the_seed_alone(self):
        first = self.trials(self.shunt_alone(), "5000", "--seed", "7", "--threads", "1")
        self.assertEqual(first, self.trials(self.shunt_alone(), "5000", "--seed", "7", "--threads", "3"))
        other = self.trials(self.shunt_alone(), "5000", "--seed", "8")
        self.assertNotEqual(first["steps"][0]["mean"], other["steps"][0]["mean"])

    def test_auto_goes_on_until_settled(self):
        trials = self.trials(SMALL, "auto")
        self.assertTrue(trials["settled"])
        # JCGM 101:2008, 7.9.4: blocks of at least 10 000, of which it takes two or more.
        self.assertGreaterEqual(trials["trials"], 20000)

    def test_table(self):
        done = self.succeeds("predict", SMALL, "--trials", "20000")
        self.assertIn("20000 trials in scope chain, seed 1.", done.stdout)
        self.assertIn("Shortest interval, µm/m", done.stdout)
        self.assertEqual(done.stderr, "")  # no progress where there is no terminal

    def test_progress_on_a_terminal_is_cleared_in_the_end(self):
        try:
            ours, theirs = os.openpty()
        except OSError:  # a machine without pseudo-terminals cannot show progress, and must not try
            return self.test_table()
        self.addCleanup(os.close, ours)
        subprocess.run([PROGRAM, "predict", SMALL, "--trials", "100000"], stdout=subprocess.DEVNULL, stderr=theirs,
                       timeout=60, env=WITHOUT_DISPLAY, check=True)
        os.close(theirs)
        said = os.read(ours, 65536).decode()
        self.assertRegex(said, r"trials, \d+ %")
        self.assertTrue(said.endswith("\r\x1b[K"), said[-40:])

    def test_refusals(self):
        for number in ("0", "-5", "1e4", "many", "10000001", "99999999999999999999"):
            self.refused("predict", SMALL, "--trials", number, says="--trials", says_also="auto")
        self.refused("predict", SMALL, "--trials", "", says="--trials")
        self.refused("predict", SMALL, "--trials", "3", says="too few", says_also="Q-1")
        self.refused("predict", SMALL, "--trials", "auto", "--scope", "bond", says="--scope")
        self.refused("predict", SMALL, "--trials", "auto", "--seed=-1", says="--seed")
        self.refused("predict", SMALL, "--trials", "auto", "--threads", "0", says="--threads")
        for option in (("--scope", "strain"), ("--seed", "2"), ("--threads", "2")):
            self.refused("predict", SMALL, *option, says=option[0], says_also="--trials")

    def test_a_channel_with_nothing_to_draw_is_no_error(self):
        def zeros(content):
            for step in content["channels"][0]["setup"]["sequence"]:
                step["closed"] = []
        channel = self.json("predict", self.document(zeros), "--trials", "1000")["channels"][0]
        self.assertNotIn("trials", channel)


class Progress(CommandTest):
    def test_a_terminal_is_told_how_far_and_nothing_of_it_stays(self):
        for words, stages in ((("levels", PRE), ("reading pre_test.csv", "columns")),
                              (("check", PLAN, "--recording", PRE), ("reading pre_test.csv", "channels"))):
            told = on_terminal(*words)
            for stage in stages:
                self.assertRegex(told, re.escape(stage) + r", \d+ %")
            stays = told.split("\r\x1b[K")[-1]
            self.assertFalse(stays.startswith(stages), stays)

    def test_elsewhere_it_is_silent(self):
        said = self.succeeds("check", PLAN, "--recording", PRE, exit=1).stderr
        for word in ("\x1b", "\r", "reading"):
            self.assertNotIn(word, said)


class Levels(CommandTest):
    def test_finds_the_nine_levels_of_a_channel(self):
        levels = self.json("levels", PRE, "--column", "TP-01")["levels"]
        self.assertEqual(len(levels), 9)
        for k, level in enumerate(levels):
            self.assertEqual(set(level), {"begin_s", "end_s", "mean", "std_uncertainty", "samples",
                                          "effective_samples", "outliers", "robust_mean", "drift_per_s", "quality",
                                          "reason"})
            self.assertEqual((level["quality"], level["reason"]), ("good", ""))
            self.assertTrue(2 * k <= level["begin_s"] < level["end_s"] <= 2 * k + 2, level)

    def test_level_means_are_those_of_the_samples(self):
        # Independent: the mean by Python over the middle second of each two-second step. Both means
        # have a standard error near 0.4 um/m / sqrt(100) = 0.04 um/m from the generator's noise.
        with open(PRE, encoding="utf-8") as file:
            rows = list(csv.reader(line for line in file if not line.startswith("#")))
        column = [float(row[1]) for row in rows[1:]]
        for k, level in enumerate(self.json("levels", PRE, "--column", "TP-01")["levels"]):
            middle = column[200 * k + 50:200 * k + 150]
            self.assertAlmostEqual(level["mean"], math.fsum(middle) / len(middle), delta=5 * 0.04)

    def test_without_a_name_all_columns_are_told(self):
        columns = self.json("levels", PRE)["columns"]
        self.assertEqual([(column["column"], column["unit"]) for column in columns],
                         [("TP-01", "µm/m"), ("TP-02", "µm/m"), ("TP-11", "µm/m"), ("TP-12", "µm/m"),
                          ("TP-21", "mV/V"), ("TP-31", "µm/m"), ("LC-1", "kN")])
        self.assertEqual([len(column["levels"]) for column in columns], [9] * 6 + [13])
        self.assertEqual(columns[2]["levels"], self.json("levels", PRE, "--column", "TP-11")["levels"])
        self.refused("levels", PRE, "--column", "TP-99", says="TP-99", says_also="TP-01")


class Line(CommandTest):
    # NIST StRD, linear regression, data set Norris (certified values): slope 1.00211681802045,
    # intercept -0.262323073774029, residual standard deviation 0.884796396144373, 36 points.
    NORRIS = """y,x
0.1,0.2
338.8,337.4
118.1,118.2
888.0,884.6
9.2,10.1
228.1,226.5
668.5,666.3
998.5,996.3
449.1,448.6
778.9,777.0
559.2,558.2
0.3,0.4
0.1,0.6
778.1,775.5
668.8,666.9
339.3,338.0
448.9,447.5
10.8,11.6
557.7,556.0
228.3,228.1
998.0,995.8
888.8,887.6
119.6,120.2
0.3,0.3
0.6,0.3
557.6,556.8
339.3,339.1
888.0,887.2
998.5,999.0
778.9,779.0
10.2,11.1
117.6,118.3
228.9,229.2
668.4,669.1
449.2,448.9
0.2,0.5
"""

    def test_norris(self):
        line = self.json("line", self.file("norris.csv", self.NORRIS))
        self.assertEqual(line["points"], 36)
        self.assertEqual(line["degrees_of_freedom"], 34)
        # Twelve digits: the least any fit of ours may give on this set (certified values have 15).
        self.assertAlmostEqual(line["slope"], 1.00211681802045, delta=1e-12)
        self.assertAlmostEqual(line["intercept"], -0.262323073774029, delta=1e-12)
        self.assertAlmostEqual(line["residual_std_deviation"], 0.884796396144373, delta=1e-12)

    def test_table_and_linearity(self):
        # Derived: 0, 1, 2.1, 3 from the line through the ends: farthest off by 0.1 of 3.
        done = self.succeeds("line", self.file("points.csv", "x;y\n0;0\n1;1\n2;2,1\n3;3\n"))
        self.assertIn("Slope", done.stdout)
        line = self.json("line", self.path("points.csv"))
        self.assertAlmostEqual(line["linearity"]["end_point"]["share_of_full_scale"], 0.1 / 3, delta=1e-12)
        self.assertEqual(line["linearity"]["end_point"]["at_x"], 2)

    def test_through_zero(self):
        # Derived: slope = sum xy / sum xx = (1*2 + 2*3) / (1 + 4).
        line = self.json("line", self.file("points.csv", "1 2\n2 3\n"), "--through-zero")
        self.assertAlmostEqual(line["slope"], 8 / 5, delta=1e-15)

    def test_points_that_make_no_line_are_refused(self):
        self.refused("line", self.file("one.csv", "x,y\n1,2\n"), says="one.csv")
        self.refused("line", self.file("equal.csv", "x,y\n1,2\n1,3\n1,4\n"), says="equal.csv")
        self.refused("line", self.file("words.csv", "x,y\na,b\n"), says="no line holds only numbers")
        self.refused("line", self.file("hole.csv", "x,y\n1,2\n2,3\n3,nan\n4,5\n"), says="line 4")
        self.refused("line", self.file("wide.csv", "x,y\n1,2\n2,3\n3,4,5\n4,5\n"), says="line 4")
        self.refused("line", self.file("names.csv", "a,b\n1,2\n2,3\n"), says="columns x and y")

    def test_weights_are_refused_with_what_to_do(self):
        self.refused("line", self.file("w.csv", "x,y,w\n1,2,1\n2,3,1\n"), says="weights are not taken",
                     says_also="ux and uy")


class Check(CommandTest):
    def test_pre_test_finds_the_swapped_shunts_and_nothing_else(self):
        result = self.json("check", PLAN, "--recording", PRE, "--as", "pre", exit=1)
        verdicts = {c["channel"]: c["verdict"] for c in result["channels"]}
        self.assertEqual(verdicts, {"TP-01": "pass", "TP-02": "pass", "TP-11": "pass", "TP-12": "fail",
                                    "TP-21": "pass", "TP-31": "pass", "LC-1": "pass"})
        self.assertEqual({c["check"] for c in result["channels"]}, {"pre-test"})
        twelve = result["channels"][3]
        self.assertIn("opposite polarity", twelve["reason"])
        step = twelve["steps"][1]
        for key in ("measured", "std_uncertainty", "begin_s", "end_s", "change", "expected", "deviation", "limit",
                    "verdict", "reason"):
            self.assertIn(key, step)

    def test_post_test_finds_the_leak(self):
        result = self.json("check", PLAN, "--recording", POST, "--as", "post", exit=1)
        verdicts = {c["channel"]: c["verdict"] for c in result["channels"]}
        self.assertEqual(verdicts, {"TP-01": "pass", "TP-02": "fail", "TP-11": "pass", "TP-12": "fail",
                                    "TP-21": "pass", "TP-31": "pass", "LC-1": "pass"})

    def test_a_single_channel_that_passes_exits_0(self):
        result = self.json("check", PLAN, "--recording", PRE, "--channel", "TP-01", "--as", "noon")
        self.assertEqual([c["check"] for c in result["channels"]], ["noon"])
        self.assertIn("Pass", self.succeeds("check", PLAN, "--recording", PRE, "--channel", "TP-01").stdout)

    def single_column(self, heading):
        with open(PRE, encoding="utf-8") as file:
            rows = list(csv.reader(line for line in file if not line.startswith("#")))
        lines = [f"time [s],{heading}"] + [",".join(row[:2]) for row in rows[1:]]
        return self.file("single.csv", "\n".join(lines) + "\n")

    def test_a_single_column_serves_the_channel_that_is_named(self):
        self.succeeds("check", PLAN, "--recording", self.single_column("anything"), "--channel", "TP-01")
        self.refused("check", PLAN, "--recording", self.path("single.csv"), says="name of a channel")

    def test_a_second_column_of_the_same_name_is_told(self):
        with open(PRE, encoding="utf-8") as file:
            rows = list(csv.reader(line for line in file if not line.startswith("#")))
        lines = ["time [s],TP-01,TP-01,TP-02"] + [",".join((row[0], row[1], "0", row[2])) for row in rows[1:]]
        double = self.file("double.csv", "\n".join(lines) + "\n")
        done = self.succeeds("check", PLAN, "--recording", double)
        self.assertIn('further column "TP-01"', done.stderr)
        self.assertNotIn('further column "TP-02"', done.stderr)
        self.assertEqual(self.succeeds("check", PLAN, "--recording", double, "--channel", "TP-02").stderr, "")

    def test_another_unit_is_refused(self):
        self.refused("check", PLAN, "--recording", self.single_column("TP-01 [mV/V]"), "--channel", "TP-01",
                     says="mV/V", says_also="µm/m")

    def test_without_save_nothing_is_written(self):
        folder = self.path("copy")
        os.mkdir(folder)
        for source in (PLAN, PRE):
            shutil.copy(source, folder)
        before = {name: os.stat(os.path.join(folder, name)).st_mtime_ns for name in os.listdir(folder)}
        run("check", os.path.join(folder, "plan.bridgecal"), "--recording", os.path.join(folder, "pre_test.csv"))
        after = {name: os.stat(os.path.join(folder, name)).st_mtime_ns for name in os.listdir(folder)}
        self.assertEqual(before, after)

    def test_save_adds_a_closed_check_that_names_its_recording(self):
        shutil.copy(PRE, self.path("recording.csv"))
        out = self.path("checked.bridgecal")
        done = self.succeeds("check", PLAN, "--recording", self.path("recording.csv"), "--as", "pre", "--date",
                             "2026-05-11", "--person", "M. Example", "--save", out, exit=1)
        self.assertIn(f"Saved: {out}", done.stdout)
        with open(out, encoding="utf-8") as file:
            channels = json.load(file)["channels"]
        check = channels[0]["checks"][0]
        self.assertEqual((check["name"], check["date"], check["person"]), ("pre-test", "2026-05-11", "M. Example"))
        self.assertEqual(check["recording"]["path"], "recording.csv")
        self.assertEqual(check["recording"]["column"], "TP-01")
        self.assertEqual(check["recording"]["size_bytes"], os.path.getsize(PRE))
        # Independent: sha256sum of GNU coreutils.
        digest = subprocess.run(["sha256sum", PRE], capture_output=True, encoding="ascii", check=True).stdout
        self.assertEqual(check["recording"]["sha256"], digest.split()[0])
        self.assertEqual(check["closed_with"], channels[0]["setup"])
        self.assertEqual(len(check["readings"]), 9)

        # The saved document is one to go on with; a second check of the same name gets a name of its own.
        self.assertNotIn("already", done.stderr)
        done = self.succeeds("check", out, "--recording", POST, "--as", "pre", "--save", out, "--json", exit=1)
        again = json.loads(done.stdout)
        self.assertEqual(again["channels"][0]["check"], "pre-test (2)")
        self.assertIn('already a check "pre-test" in TP-01, ', done.stderr)
        self.assertIn('the new one is "pre-test (2)"', done.stderr)
        self.assertEqual(again["saved"], out)

    def test_levels_that_do_not_fit_list_both_sides_and_save_nothing(self):
        with open(PRE, encoding="utf-8") as file:
            lines = file.readlines()
        short = self.file("short.csv", "".join(lines[:4 + 190]))
        out = self.path("out.bridgecal")
        done = run("check", PLAN, "--recording", short, "--save", out)
        self.assertEqual(done.returncode, 2)
        self.assertIn("do not fit the plan: 1 level found", done.stderr)
        self.assertIn("for 9 steps: 1 (zero), 2 (+1)", done.stderr)
        self.assertIn("nothing was saved", done.stderr)
        self.assertFalse(os.path.exists(out))

    def test_recording_without_columns_of_the_document(self):
        other = self.file("other.csv", "time [s],A,B\n0,1,2\n1,1,2\n2,1,2\n")
        self.refused("check", PLAN, "--recording", other, says="no column has the name of a channel", says_also="A, B")
        self.refused("check", PLAN, "--recording", other, "--channel", "TP-01", says="TP-01")

    def test_refusals(self):
        self.refused("check", PLAN, "--recording", PRE, "--date", "yesterday", says="--date")
        self.refused("check", PLAN, "--recording", PRE, "--as", "", says="--as")
        shutil.copy(PRE, self.path("pre.csv"))
        self.refused("check", PLAN, "--recording", self.path("pre.csv"), "--save", self.path("pre.csv"),
                     says="replace the recording")
        with open(self.path("pre.csv"), "rb") as ours, open(PRE, "rb") as original:
            self.assertEqual(ours.read(), original.read())


class DecisionRules(CommandTest):
    def ruled(self, rule, source=PLAN, **numbers):
        def change(setup):
            setup["uncertainties"] = []
            setup["decision"].update({"rule": rule, "coverage": 0.9545} | numbers)
        return self.stated(change, source)

    def check(self, document, exit):
        return self.json("check", document, "--recording", PRE, "--channel", "TP-01", exit=exit)["channels"][0]

    def test_a_guard_band_wider_than_the_limit_cannot_tell(self):
        # Derived: fifty U are far beyond 1 % of any reading here, so that nothing but the zero reference, which
        # has no uncertainty against itself, can be within limit less guard band, nor beyond limit plus band.
        document = self.ruled("guarded", guard_factor=50)
        channel = self.check(document, exit=1)
        self.assertEqual(channel["decision"], {"rule": "guarded", "coverage": 0.9545, "guard_factor": 50})
        self.assertEqual(channel["verdict"], "cannot tell")
        self.assertEqual([s["verdict"] for s in channel["steps"]], ["pass"] + 8 * ["cannot tell"])
        for step in channel["steps"]:
            self.assertAlmostEqual(step["guard_band"], 50 * step["expanded_uncertainty"], delta=1e-9)
            self.assertNotIn("en_number", step)
        done = self.succeeds("check", document, "--recording", PRE, "--channel", "TP-01", exit=1)
        self.assertIn("TP-01, pre-test: Cannot tell: ", done.stdout)
        self.assertIn("Decision rule: guarded acceptance, guard band 50 × U, coverage 95.45 %", done.stdout)
        self.assertIn("cannot tell", done.stdout.split("\n")[6])
        self.assertIn("U of deviation, µm/m", done.stdout)

    def test_the_numbers_of_each_rule(self):
        simple = self.check(self.ruled("simple"), exit=0)
        self.assertEqual(simple["decision"], {"rule": "simple", "coverage": 0.9545})
        self.assertGreater(simple["steps"][1]["expanded_uncertainty"], 0)

        en = self.check(self.ruled("en_number"), exit=0)
        for step in en["steps"][1:]:
            self.assertAlmostEqual(step["en_number"], step["deviation"] / step["expanded_uncertainty"], delta=1e-9)

        likely = self.check(self.ruled("conformity", conformity=0.9), exit=0)
        self.assertEqual(likely["decision"]["conformity"], 0.9)
        for step in likely["steps"]:
            # Independent: the normal distribution by Python's erf, whose results are good to 1e-15.
            u, limit, off = (step[key] for key in ("deviation_std_uncertainty", "limit", "deviation"))
            below = lambda x: 0.5 * (1 + math.erf(x / math.sqrt(2)))
            expected = below((limit - off) / u) - below((-limit - off) / u) if u else 1
            self.assertAlmostEqual(step["conformity_probability"], expected, delta=1e-12)

        shared = self.check(self.ruled("shared_risk", greatest_share=0.9), exit=0)
        self.assertEqual(shared["decision"]["greatest_share"], 0.9)

    def test_compare_tells_rule_and_verdict_of_each_check(self):
        document = self.ruled("guarded", DEMO, guard_factor=50)
        one = self.json("compare", document, "--channel", "TP-01", exit=1)["channels"][0]
        for check in ("before_check", "after_check"):
            self.assertEqual(one[check]["verdict"], "cannot tell")
            self.assertEqual(one[check]["decision"]["guard_factor"], 50)
        self.assertNotEqual(one["verdict"], "pass")
        done = self.succeeds("compare", document, "--channel", "TP-01", exit=1)
        self.assertIn("pre-test: cannot tell by guarded acceptance, guard band 50 × U", done.stdout)

    def test_the_report_prints_rule_and_uncertainty(self):
        document = self.ruled("guarded", DEMO, guard_factor=50)
        out = self.path("report.csv")
        self.succeeds("report", document, "-o", out)
        with open(out, encoding="utf-8", newline="") as file:
            rows = list(csv.DictReader(file))
        self.assertEqual({row["decision_rule"] for row in rows}, {"guarded"})
        self.assertIn("cannot tell", {row["verdict"] for row in rows})
        self.assertGreater(float(rows[1]["expanded_uncertainty_chain"]), 0)
        out = self.path("report.pdf")
        self.succeeds("report", document, "-o", out)
        text = subprocess.run(["pdftotext", "-layout", out, "-"], capture_output=True, encoding="utf-8",
                              check=True, timeout=60).stdout
        for words in ("TP-01, uncertainty", "guard band 50 × U, coverage 95.45 %", "cannot tell", "Inputs and what",
                      "Uncertainties marked as assumed are usual tolerances"):
            self.assertIn(words, text)


class Compare(CommandTest):
    def test_the_leak_moved_the_channel_and_others_are_unchanged(self):
        result = self.json("compare", DEMO, exit=1)
        verdicts = {c["channel"]: c["verdict"] for c in result["channels"]}
        self.assertEqual(verdicts, {"TP-01": "pass", "TP-02": "fail", "TP-11": "pass", "TP-12": "fail",
                                    "TP-21": "pass", "TP-31": "pass", "LC-1": "pass"})
        one = result["channels"][0]
        self.assertEqual((one["before"], one["after"]), ("pre-test", "post-test"))
        self.assertEqual(one["setup_differences"], [])
        # Gains within 0.02 % by the generator.
        self.assertAlmostEqual(one["gain"]["value"], 0, delta=0.001)
        self.assertEqual(len(one["steps"]), 9)

    def test_every_number_is_there_and_agrees_with_the_others(self):
        one = self.json("compare", DEMO, "--channel", "TP-01")["channels"][0]
        for difference in [one["gain"], one["zero"]] + [step["moved"] for step in one["steps"][1:]]:
            u, value, margin = (difference[key] for key in ("standard_uncertainty", "value", "margin"))
            normal = statistics.NormalDist()
            self.assertEqual(difference["degrees_of_freedom"], None)  # readings have stated uncertainties
            self.assertAlmostEqual(difference["half_width_90"], normal.inv_cdf(0.95) * u, delta=1e-9 * u)
            self.assertAlmostEqual(difference["half_width_95"], normal.inv_cdf(0.975) * u, delta=1e-9 * u)
            self.assertAlmostEqual(difference["p_different"], 2 * normal.cdf(-abs(value) / u), delta=1e-9)
            self.assertAlmostEqual(difference["p_equivalent"], normal.cdf((abs(value) - margin) / u), delta=1e-9)
            self.assertAlmostEqual(difference["en"], value / difference["expanded_uncertainty"], delta=1e-9)
        for row, step in zip(one["covariance"], one["steps"]):
            self.assertAlmostEqual(row[step["step"] - 1], step["moved"]["standard_uncertainty"] ** 2, delta=1e-9)
        self.assertTrue(0 <= one["joint_probability"] <= 1)
        self.assertEqual(one["steps_only_after"], [])

    def test_the_cause_of_a_change_and_what_it_means_for_data_in_between(self):
        one = self.json("compare", DEMO, "--channel", "TP-01", "--cause")["channels"][0]
        self.assertEqual(one["cause"]["result"], "healthy")
        self.assertEqual((one["data_between"]["before"]["factor"], one["data_between"]["after"]["factor"]), (1, 1))
        gain = one["gain"]
        self.assertAlmostEqual(one["data_between"]["greatest_share"], abs(gain["value"]) + gain["half_width_90"],
                               delta=1e-12)
        self.assertNotIn("cause", self.json("compare", DEMO, "--channel", "TP-01")["channels"][0])
        # The generator lets a leak over its gauge grow during the post-test.
        leaking = self.json("compare", DEMO, "--channel", "TP-02", "--cause", exit=1)["channels"][0]
        self.assertEqual(leaking["cause"]["explanations"][0]["cause"], "drift")
        text = self.succeeds("compare", DEMO, "--channel", "TP-02", "--cause", exit=1).stdout
        for words in ("What changed: Suspected cause", "A cause is a suspicion", "Data taken in between: If"):
            self.assertIn(words, text)

    def test_a_trend_needs_three_checks(self):
        one = self.json("compare", DEMO, "--channel", "TP-01", "--trend")["channels"][0]["trend"]
        self.assertEqual(len(one["points"]), 2)
        self.assertIsNone(one["gain_limits"])
        self.assertIn("there are 2", one["sentence"])
        self.assertIn("there are 2", self.succeeds("compare", DEMO, "--channel", "TP-01", "--trend").stdout)

    def test_one_channel_and_checks_by_name(self):
        done = self.succeeds("compare", DEMO, "--channel", "TP-01", "--checks", "post-test,pre-test")
        self.assertIn("Within the margin of 1 %", done.stdout)

    def test_checks_that_agree_do_not_pass_while_they_fail(self):
        twelve = self.json("compare", DEMO, "--channel", "TP-12", exit=1)["channels"][0]
        self.assertEqual({step["verdict"] for step in twelve["steps"]}, {"pass"})
        self.assertIn("fail", twelve["reason"])
        self.assertIn(twelve["reason"], self.succeeds("compare", DEMO, "--channel", "TP-12", exit=1).stdout)

    def test_short_names_are_those_of_the_check_command(self):
        short = self.json("compare", DEMO, "--channel", "TP-01", "--checks", "pre,post")
        self.assertEqual(short, self.json("compare", DEMO, "--channel", "TP-01", "--checks", "pre-test,post-test"))

        def renamed(content):
            content["channels"][0]["checks"][1]["name"] = "post"
        document = self.document(renamed, DEMO)
        one = self.json("compare", document, "--channel", "TP-01", "--checks", "pre,post")["channels"][0]
        self.assertEqual((one["before"], one["after"]), ("pre-test", "post"))

    def test_checks_that_are_not_there(self):
        self.refused("compare", PLAN, "--channel", "TP-01", says="two checks")
        self.refused("compare", DEMO, "--channel", "TP-01", "--checks", "pre-test,lunch", says="lunch",
                     says_also="post-test")
        self.refused("compare", DEMO, "--checks", "pre-test", says="--checks")  # once, not for each channel
        self.refused("compare", DEMO, "--checks", "pre-test,pre-test", says="itself")
        self.refused("compare", DEMO, "--checks", "pre,pre-test", says="itself")


class Report(CommandTest):
    def test_csv_and_pdf(self):
        out = self.path("report.csv")
        self.succeeds("report", DEMO, "-o", out)
        with open(out, encoding="utf-8", newline="") as file:
            rows = list(csv.reader(file))
        self.assertEqual(len(rows), 1 + 2 * (6 * 9 + 13))  # a header, then the steps of both checks
        out = self.path("report.pdf")
        done = self.succeeds("report", DEMO, "-o", out)
        self.assertEqual(done.stderr, "")
        with open(out, "rb") as file:
            self.assertEqual(file.read(5), b"%PDF-")
        text = subprocess.run(["pdftotext", "-layout", out, "-"], capture_output=True, encoding="utf-8",
                              check=True, timeout=60).stdout
        for word in ("TP-02", "LC-1", "Alder Fen Test Hall"):
            self.assertIn(word, text)

    def test_other_endings_are_refused_with_the_list(self):
        for name in ("report.docx", "report", "report.pdf.gz"):
            self.refused("report", DEMO, "-o", self.path(name), says=".csv or .json")
        self.assertEqual(os.listdir(self.folder), [])

    def test_output_that_cannot_be_written(self):
        for ending in ("csv", "pdf"):
            self.refused("report", DEMO, "-o", self.path("none/report." + ending), says="report." + ending)
            os.mkdir(self.path("folder." + ending))
            self.refused("report", DEMO, "-o", self.path("folder." + ending), says="folder." + ending)
        self.assertEqual(sorted(os.listdir(self.folder)), ["folder.csv", "folder.pdf"])

    def test_a_full_disk_leaves_the_old_file(self):
        out = self.file("report.csv", "old")
        done = subprocess.run(["prlimit", "--fsize=1024", PROGRAM, "report", DEMO, "-o", out],
                              capture_output=True, encoding="utf-8", timeout=60, env=WITHOUT_DISPLAY)
        self.assertEqual(done.returncode, 2, done.stderr)
        with open(out, encoding="utf-8") as file:
            self.assertEqual(file.read(), "old")
        self.assertEqual(os.listdir(self.folder), ["report.csv"])


class Spice(CommandTest):
    def simulated_V(self, channel, step):
        """What ngspice prints for the netlist's sweep: output voltage and, with sense leads, the sensed one."""
        netlist = self.succeeds("spice", PLAN, "--channel", channel, "--step", str(step)).stdout
        done = subprocess.run(["ngspice", "-b", self.file("net.cir", netlist)], capture_output=True,
                              encoding="utf-8", timeout=60, cwd=self.folder)
        row = next(line for line in done.stdout.split("\n") if line.startswith("0\t"))
        return [float(cell) for cell in row.split()[2:]]

    def test_ngspice_finds_the_predicted_output(self):
        # Independent: ngspice of Debian. It prints seven digits, so an output below 100 mV is right to
        # 5e-9 V (long leads in one arm unbalance TP-31 by some 30 mV); the difference of two, over at
        # least 2.5 V, to 4e-9 V/V.
        for channel, supply in (("TP-31", 2.5), ("LC-1", None)):
            predicted = self.json("predict", PLAN, "--channel", channel)["channels"][0]["steps"]
            zero = self.simulated_V(channel, 1)
            for step in (2, 8):
                shunted = self.simulated_V(channel, step)
                v = [volts[0] / (supply or volts[1]) for volts in (zero, shunted)]
                self.assertAlmostEqual((v[1] - v[0]) * 1e3, predicted[step - 1]["output_mV_per_V"], delta=4e-6)

    def test_json_holds_the_same_netlist(self):
        text = self.succeeds("spice", PLAN, "--channel", "LC-1", "--step", "2").stdout
        said = self.json("spice", PLAN, "--channel", "LC-1", "--step", "2")
        self.assertEqual((said["channel"], said["step"], said["netlist"]), ("LC-1", 2, text))

    def test_steps_that_are_not_there(self):
        for step in ("0", "-1", "10"):
            self.refused("spice", PLAN, "--channel", "TP-01", "--step", step, says="1 to 9")
        self.refused("spice", PLAN, "--channel", "TP-99", "--step", "1", says="TP-99", says_also="TP-01")


class Demo(CommandTest):
    def test_writes_everything_without_a_display(self):
        out = self.path("deep/demo")
        done = self.succeeds("demo", "--out", out)
        self.assertEqual(done.stderr, "")
        for line in ("TP-12, pre-test: Fail", "TP-02, post-test: Fail", "TP-01, post-test: Pass"):
            self.assertIn(line, done.stdout)
        written = [line.strip() for line in done.stdout.split("\n") if line.strip().startswith(out)]
        for path in written:
            self.assertGreater(os.path.getsize(path), 0, path)
        names = {os.path.basename(path) for path in written}
        self.assertLessEqual({"report.pdf", "report.csv", "demo.bridgecal", "pre_test.csv", "post_test.csv"}, names)
        pictures = [path for path in written if path.endswith(".png")]
        self.assertGreaterEqual(len(pictures), 4)
        for path in pictures:
            with open(path, "rb") as file:
                self.assertEqual(file.read(8), b"\x89PNG\r\n\x1a\n", path)
        # What it leaves is the example itself, to go on with.
        self.succeeds("compare", os.path.join(out, "demo.bridgecal"), "--channel", "TP-01")

    def test_a_folder_that_cannot_be_made(self):
        self.file("taken", "a file")
        self.refused("demo", "--out", self.path("taken"), says="taken")


class BadInput(CommandTest):
    """Every command that reads a file, with each kind of bad file."""

    def readers(self, path):
        yield ("predict", path)
        yield ("compare", path)
        yield ("report", path, "-o", self.path("out.csv"))
        yield ("spice", path, "--channel", "TP-01", "--step", "1")
        yield ("check", path, "--recording", PRE, "--save", self.path("out.bridgecal"))
        yield ("check", PLAN, "--recording", path, "--save", self.path("out.bridgecal"))
        yield ("levels", path)
        yield ("line", path)

    def all_refuse(self, path, says):
        before = sorted(os.listdir(self.folder))
        for words in self.readers(path):
            with self.subTest(words[0], path=path):
                self.refused(*words, says=says)
        self.assertEqual(sorted(os.listdir(self.folder)), before)  # nothing written, not even in part

    def test_missing(self):
        self.all_refuse(self.path("none"), "no such file")

    def test_folder(self):
        os.mkdir(self.path("folder"))
        self.all_refuse(self.path("folder"), "folder")

    def test_pipe_does_not_hang(self):
        os.mkfifo(self.path("pipe"))
        self.all_refuse(self.path("pipe"), "pipe")

    def test_empty(self):
        self.all_refuse(self.file("empty", ""), "empty")

    def test_binary(self):
        with open(self.path("binary"), "wb") as file:
            file.write(bytes(range(256)) * 16)
        self.all_refuse(self.path("binary"), "binary")

    def test_recording_without_numbers(self):
        self.all_refuse(self.file("words", "time,TP-01\nmorning,fine\n"), "words")

    def test_cut_off_document(self):
        with open(PLAN, encoding="utf-8") as file:
            text = file.read()
        for share in (0.1, 0.5, 0.99):
            path = self.file("cut.bridgecal", text[:int(len(text) * share)])
            self.refused("predict", path, says="line ")

    def test_unreadable(self):
        if os.geteuid() == 0:
            return  # root reads everything; the path is the same as for the other system errors
        path = self.file("secret", "x")
        os.chmod(path, 0)
        self.all_refuse(path, "secret")

    def test_unknown_channel_lists_those_there_are(self):
        for words in (("predict", PLAN), ("compare", DEMO), ("check", PLAN, "--recording", PRE)):
            self.refused(*words, "--channel", "TP-99", says="TP-99", says_also="LC-1")

    def test_document_without_channels(self):
        path = self.document(lambda content: content["channels"].clear())
        self.refused("predict", path, says="no channels")

    def test_names_cannot_steer_the_terminal(self):
        def hostile(content):
            content["channels"][0]["name"] = "\x1b]0;owned\x07"
        done = self.succeeds("predict", self.document(hostile))
        self.assertNotIn("\x1b", done.stdout)


class Recordings(CommandTest):
    """Recordings that hold numbers but no sequence."""

    def refuses(self, name, text):
        path = self.file(name, text)
        out = self.path("out.bridgecal")
        self.refused("check", SMALL, "--recording", path, "--channel", "Q-1", says="Q-1")
        self.assertFalse(os.path.exists(out))

    def test_one_reading(self):
        self.refuses("one.csv", "time [s],Q-1 [µm/m]\n0,1\n")

    def test_all_readings_equal(self):
        rows = "".join(f"{k / 100:.2f},5\n" for k in range(600))
        self.refuses("equal.csv", "time [s],Q-1 [µm/m]\n" + rows)

    def test_equal_readings_are_one_level(self):
        rows = "".join(f"{k / 100:.2f},5\n" for k in range(600))
        levels = self.json("levels", self.file("equal.csv", "time [s],A\n" + rows))["levels"]
        self.assertEqual([level["mean"] for level in levels], [5])


class Locale(CommandTest):
    def test_a_locale_with_decimal_comma_changes_nothing(self):
        made = subprocess.run(["localedef", "-i", "de_DE", "-f", "UTF-8", self.path("de_DE.UTF-8")],
                              capture_output=True) if shutil.which("localedef") else None
        self.assertTrue(made is not None and os.path.isdir(self.path("de_DE.UTF-8")),
                        "localedef (package locales) must make the locale, or this test means nothing")
        german = dict(WITHOUT_DISPLAY, LOCPATH=self.folder, LC_ALL="de_DE.UTF-8", LANG="de_DE.UTF-8")
        for words in (("predict", PLAN, "--json"), ("predict", PLAN), ("levels", PRE, "--column", "LC-1", "--json"),
                      ("check", PLAN, "--recording", PRE), ("compare", DEMO),
                      ("spice", PLAN, "--channel", "TP-31", "--step", "2")):
            with self.subTest(words[0]):
                self.assertEqual(run(*words, env=german).stdout, run(*words).stdout)
        for ending in ("csv", "pdf"):
            here, there = self.path("here." + ending), self.path("there." + ending)
            self.assertEqual(run("report", DEMO, "-o", here).returncode, 0)
            self.assertEqual(run("report", DEMO, "-o", there, env=german).returncode, 0)
            texts = []
            for path in (here, there):
                if ending == "pdf":
                    texts.append(subprocess.run(["pdftotext", path, "-"], capture_output=True, check=True).stdout)
                else:
                    with open(path, "rb") as file:
                        texts.append(file.read())
            self.assertEqual(texts[0], texts[1], ending)


if __name__ == "__main__":
    unittest.main(argv=sys.argv[:1], verbosity=2)
