# SPDX-License-Identifier: GPL-3.0-or-later
"""Recordings matched with a plan through the commands levels and check: what is not as planned is told, and
what is in doubt is left to the user.

Called as match_test.py PROGRAM SOURCE_FOLDER. The recordings are pieces of an example's recording, one for each
step, put together in another order, so that what they hold is known by construction.
"""
import csv
import json
import os
import struct
import subprocess
import sys
import tempfile
import unittest
import wave

PROGRAM, SOURCE = os.path.abspath(sys.argv[1]), os.path.abspath(sys.argv[2])
PLAN = os.path.join(SOURCE, "examples", "plan.bridgecal")
PRE = os.path.join(SOURCE, "examples", "pre_test.csv")
PLANNED = list(range(9))


def run(*arguments):
    return subprocess.run([PROGRAM, *arguments], capture_output=True, encoding="utf-8", timeout=60)


def pieces(column="TP-01"):
    """The nine steps of the example, two seconds of 100 samples each."""
    with open(PRE, encoding="utf-8") as file:
        rows = list(csv.reader(line for line in file if not line.startswith("#")))
    index = next(k for k, name in enumerate(rows[0]) if name.startswith(column))
    values = [float(row[index]) for row in rows[1:]]
    return [values[200 * k:200 * k + 200] for k in range(9)]


class MatchTest(unittest.TestCase):
    def setUp(self):
        folder = tempfile.TemporaryDirectory()
        self.addCleanup(folder.cleanup)
        self.folder = folder.name

    def path(self, name):
        return os.path.join(self.folder, name)

    def recording(self, values, heading="TP-01 [µm/m]", name="made.csv"):
        with open(self.path(name), "w", encoding="utf-8") as file:
            file.write(f"time [s],{heading}\n")
            file.writelines(f"{k / 100:.2f},{value}\n" for k, value in enumerate(values))
        return self.path(name)

    def in_order(self, steps):
        steps = [pieces()[step] for step in steps]
        return self.recording([value for step in steps for value in step])

    def check(self, recording, *more, exit):
        done = run("check", PLAN, "--recording", recording, "--channel", "TP-01", "--json", *more)
        self.assertEqual(done.returncode, exit, done.stderr)
        return json.loads(done.stdout)["channels"][0], done.stderr

    def refused(self, *words, says):
        done = run(*words)
        self.assertEqual(done.returncode, 2, done.stderr)
        self.assertIn(says, done.stderr)
        return done


class Remarks(MatchTest):
    def test_as_planned_there_is_nothing_to_remark(self):
        channel, stderr = self.check(self.in_order(PLANNED), exit=0)
        self.assertEqual(stderr, "")
        match = channel["match"]
        self.assertEqual((match["runs"], match["way"], match["remarks"]), (1, "1", []))
        self.assertEqual(match["words"], ["All 9 steps have a level, in the planned order."])
        # The example was made with a gain within 0.1 % of 1 and a zero of 3 um/m (its README).
        self.assertAlmostEqual(match["gain"], 1, delta=0.002)
        self.assertAlmostEqual(match["zero"], 3, delta=0.5)

    def test_a_missing_step_is_told_and_not_judged(self):
        out = self.path("out.bridgecal")
        channel, stderr = self.check(self.in_order([0, 1, 3, 4, 5, 6, 7, 8]), "--save", out, exit=1)
        self.assertIn("TP-01: Step 3 (+2) is missing.", stderr)
        self.assertEqual([(r["kind"], r["steps"]) for r in channel["match"]["remarks"]], [("missing", [3])])
        self.assertNotEqual(channel["verdict"], "pass")
        self.assertNotIn("measured", channel["steps"][2])
        self.assertNotEqual(channel["steps"][2]["verdict"], "pass")
        self.assertEqual([channel["steps"][k]["verdict"] for k in (0, 1, 3, 4, 5, 6, 7, 8)], ["pass"] * 8)
        with open(out, encoding="utf-8") as file:
            readings = json.load(file)["channels"][0]["checks"][0]["readings"]
        self.assertEqual([k for k, reading in enumerate(readings) if reading is None], [2])

    def test_of_steps_done_again_the_last_are_taken(self):
        channel, stderr = self.check(self.in_order([0, 1, 2, 1, 2, 3, 4, 5, 6, 7, 8]), exit=0)
        self.assertIn("Steps 2 (+1) and 3 (+2) were done again", stderr)
        self.assertGreater(channel["steps"][1]["begin_s"], 5.9)

    def test_a_level_of_no_step_is_told_and_kept(self):
        steps = pieces()
        values = steps[0] + steps[1] + [value - 260 for value in steps[1]] + [v for step in steps[2:] for v in step]
        out = self.path("out.bridgecal")
        channel, stderr = self.check(self.recording(values), "--save", out, exit=0)
        self.assertIn("belongs to no step", stderr)
        extra = channel["match"]["remarks"][0]
        self.assertEqual((extra["kind"], len(extra["levels"])), ("extra", 1))
        # Derived: the piece of step 2 is moved down by 260 and lies from 4 to 6 s.
        self.assertAlmostEqual(extra["levels"][0]["mean"], sum(steps[1][50:]) / 150 - 260, delta=1)
        self.assertTrue(3.9 <= extra["levels"][0]["begin_s"] < extra["levels"][0]["end_s"] <= 6.1)
        with open(out, encoding="utf-8") as file:
            self.assertEqual(len(json.load(file)["channels"][0]["checks"][0]["other_levels"]), 1)

    def test_recordings_that_are_cut_off(self):
        _, stderr = self.check(self.in_order(PLANNED[2:]), exit=1)
        self.assertIn("The recording begins after step 2 (+1)", stderr)
        _, stderr = self.check(self.in_order(PLANNED[:7]), exit=1)
        self.assertIn("The recording ends before step 8 (-3)", stderr)

    def test_opposite_polarity_stays_with_the_steps(self):
        values = [-value for step in pieces() for value in step]
        channel, stderr = self.check(self.recording(values), exit=1)
        self.assertIn("The whole sequence has the opposite polarity.", stderr)
        self.assertEqual(channel["verdict"], "fail")
        self.assertLess(channel["match"]["gain"], 0)
        self.assertLess(channel["steps"][1]["measured"], 0)

    def test_a_wrong_resistor_fails_at_its_step(self):
        steps = pieces()
        steps[2] = [value - 180 for value in steps[2]]
        channel, stderr = self.check(self.recording([value for step in steps for value in step]), exit=1)
        self.assertEqual(stderr, "")
        self.assertEqual([step["step"] for step in channel["steps"] if step["verdict"] != "pass"], [3])


class Doubt(MatchTest):
    def test_of_several_runs_none_is_taken_unasked(self):
        twice = self.in_order(PLANNED + PLANNED[1:])
        out = self.path("out.bridgecal")
        channel, stderr = self.check(twice, "--save", out, exit=2)
        self.assertIn("channel TP-01: the recording holds 2 runs of the sequence. Choose one with --match: 1, 2.", stderr)
        self.assertIn("nothing was saved", stderr)
        self.assertFalse(os.path.exists(out))
        self.assertEqual([way["way"] for way in channel["match"]["ways"]], ["1", "2"])
        done = run("check", PLAN, "--recording", twice, "--channel", "TP-01")
        self.assertIn("--match 2: ", done.stdout)

        channel, stderr = self.check(twice, "--match", "2", "--save", out, exit=0)
        self.assertEqual(stderr, "")
        self.assertGreater(channel["steps"][1]["begin_s"], 17)
        self.assertTrue(os.path.exists(out))

    def test_exchanged_steps_are_for_the_user_to_decide(self):
        exchanged = self.in_order([0, 3, 2, 1, 4, 5, 6, 7, 8])
        channel, stderr = self.check(exchanged, exit=2)
        self.assertIn("ways that are about as likely", stderr)
        words = {way["way"]: " ".join(way["words"]) for way in channel["match"]["ways"]}
        self.assertIn("Steps 2 (+1) and 4 (+3) were done in another order than planned", words["1"])
        self.assertIn("in the planned order", words["1.1"])
        self.assertIn("Steps 2 (+1) and 4 (+3) are then off by +10", words["1.1"])
        channel, _ = self.check(exchanged, "--match", "1", exit=0)
        self.assertEqual(channel["verdict"], "pass")
        channel, _ = self.check(exchanged, "--match", "1.1", exit=1)
        self.assertEqual([s["step"] for s in channel["steps"] if s["verdict"] != "pass"], [2, 4])

    def test_neighbours_exchanged_are_both_named(self):
        channel, _ = self.check(self.in_order([0, 2, 1, 3, 4, 5, 6, 7, 8]), exit=2)
        words = {way["way"]: " ".join(way["words"]) for way in channel["match"]["ways"]}
        self.assertIn("Steps 2 (+1) and 3 (+2) were done in another order", words["1"])
        self.assertIn("Steps 2 (+1) and 3 (+2) are then off by +51", words["1.1"])
        self.assertEqual(len(words), 2)

    def test_half_of_the_sequence_is_no_reversed_half(self):
        channel, stderr = self.check(self.in_order(PLANNED[:5]), exit=1)
        self.assertIn("The recording ends before step 6 (-1)", stderr)
        self.assertEqual(channel["match"]["way"], "1")

    def test_each_channel_has_its_own_way(self):
        one, other = pieces("TP-01"), pieces("TP-02")
        twice = self.path("both.csv")
        with open(twice, "w", encoding="utf-8") as file:
            file.write("time [s],TP-01 [µm/m],TP-02 [µm/m]\n")
            order = PLANNED + PLANNED[1:]
            pairs = [pair for k in order for pair in zip(one[k], other[k])]
            file.writelines(f"{k / 100:.2f},{a},{b}\n" for k, (a, b) in enumerate(pairs))
        told = run("check", PLAN, "--recording", twice)
        self.assertIn("--match TP-02=2: ", told.stdout)
        done = run("check", PLAN, "--recording", twice, "--json", "--match", "TP-01=2", "--match", "TP-02=1")
        channels = json.loads(done.stdout)["channels"]
        self.assertEqual([c["match"]["way"] for c in channels], ["2", "1"])
        done = run("check", PLAN, "--recording", twice, "--json", "--match", "2", "--match", "TP-02=1")
        self.assertEqual([c["match"]["way"] for c in json.loads(done.stdout)["channels"]], ["2", "1"])
        for words, says in ((["TP-77=1"], "TP-77"), (["=1"], "--match"), (["TP-01="], "--match"),
                            (["1", "--match", "2"], "twice"), (["TP-01=1", "--match", "TP-01=2"], "twice")):
            self.refused("check", PLAN, "--recording", twice, "--match", *words, says=says)

    def test_ways_that_are_not_there(self):
        recording = self.in_order(PLANNED)
        for way in ("2", "1.1"):
            self.refused("check", PLAN, "--recording", recording, "--match", way, says=f"there is no run {way}")
        for way in ("0", "x", "1.x", "1.", "-1", ""):
            self.refused("check", PLAN, "--recording", recording, "--match", way, says="--match")


class Kept(MatchTest):
    def test_what_was_not_as_planned_is_in_the_document_and_the_report(self):
        out = self.path("out.bridgecal")
        self.check(self.in_order(PLANNED[:7]), "--save", out, exit=1)
        with open(out, encoding="utf-8") as file:
            remark = json.load(file)["channels"][0]["checks"][0]["remark"]
        self.assertIn("The recording ends before step 8 (-3)", remark)
        table = self.path("out.csv")
        done = run("report", out, "-o", table)
        self.assertEqual(done.returncode, 0, done.stderr)
        with open(table, encoding="utf-8", newline="") as file:
            self.assertEqual({row["check_remark"] for row in csv.DictReader(file) if row["check"]}, {remark})

    def test_as_planned_there_is_no_remark(self):
        out = self.path("out.bridgecal")
        self.check(self.in_order(PLANNED), "--save", out, exit=0)
        with open(out, encoding="utf-8") as file:
            self.assertFalse(json.load(file)["channels"][0]["checks"][0].get("remark"))


class Columns(MatchTest):
    def test_a_single_column_of_another_name_is_told(self):
        values = [value for step in pieces() for value in step]
        channel, stderr = self.check(self.recording(values, heading="Input 7 [µm/m]"), exit=0)
        self.assertIn("the only column, “Input 7”, is taken for TP-01.", stderr)
        self.assertEqual(channel["column"], "Input 7")

    def test_a_column_of_another_name_is_named_and_remembered(self):
        steps = [value for step in pieces() for value in step]
        recording = self.path("two.csv")
        with open(recording, "w", encoding="utf-8") as file:
            file.write("time [s],Input 7 [µm/m],Input 8 [µm/m]\n")
            file.writelines(f"{k / 100:.2f},{value},0\n" for k, value in enumerate(steps))
        self.refused("check", PLAN, "--recording", recording, "--channel", "TP-01", says="Input 7, Input 8")
        self.refused("check", PLAN, "--recording", recording, "--column", "Input 7", says="--channel")
        out = self.path("out.bridgecal")
        channel, _ = self.check(recording, "--column", "Input 7", "--save", out, exit=0)
        self.assertEqual((channel["column"], channel["verdict"]), ("Input 7", "pass"))
        # From now on the channel knows its column.
        done = run("check", out, "--recording", recording, "--as", "again", "--json")
        again = json.loads(done.stdout)["channels"]
        self.assertEqual([(c["channel"], c["column"], c["verdict"]) for c in again], [("TP-01", "Input 7", "pass")])
        # A recording that has neither is told by both names.
        done = run("check", out, "--recording", self.recording(steps, heading="TP-02 [µm/m]"))
        self.assertIn("no column for TP-01 (column “Input 7”), TP-11,", done.stderr)


class Layouts(MatchTest):
    def german(self):
        """Semicolons, decimal commas, Latin-1, names and units in two lines below a preamble, milliseconds."""
        path = self.path("messung.txt")
        with open(path, "w", encoding="latin-1", newline="") as file:
            file.write("Prüfstand;Alder Fen\r\n\r\nZeit;TP-01\r\nms;µm/m\r\n")
            for k, value in enumerate(value for step in pieces() for value in step):
                file.write(f"{10 * k};{value:.2f}\r\n".replace(".", ","))
        return path

    def test_another_dialect_gives_the_same_check(self):
        plain, _ = self.check(self.in_order(PLANNED), exit=0)
        german, stderr = self.check(self.german(), exit=0)
        self.assertEqual(stderr, "")
        for one, other in zip(plain["steps"], german["steps"]):
            # The same values with two decimals; so are the times.
            self.assertAlmostEqual(one["measured"], other["measured"], delta=0.006)
            self.assertAlmostEqual(one["begin_s"], other["begin_s"], delta=0.011)

    def test_a_layout_that_was_chosen_is_used_and_kept(self):
        bare = self.path("bare.csv")
        with open(bare, "w", encoding="utf-8") as file:
            file.writelines(f"{value}\n" for step in pieces() for value in step)
        out = self.path("out.bridgecal")
        channel, _ = self.check(bare, "--read-as", "rate=100", "--save", out, exit=0)
        self.assertEqual(channel["verdict"], "pass")
        self.assertAlmostEqual(channel["steps"][8]["end_s"], 18, delta=0.2)
        with open(out, encoding="utf-8") as file:
            reference = json.load(file)["channels"][0]["checks"][0]["recording"]
        self.assertEqual(reference["read_as"], "rate=100")

    def test_without_a_time_the_words_for_it_are_named(self):
        bare = self.path("bare.csv")
        with open(bare, "w", encoding="utf-8") as file:
            file.write("TP-01 [µm/m],TP-02 [µm/m]\n")
            file.writelines(f"{value},7.5\n" for step in pieces() for value in step)
        done = self.refused("check", PLAN, "--recording", bare, says="--read-as rate=100")
        self.assertIn("time=2", done.stderr)

    def test_words_that_are_none(self):
        for command in (("levels", PRE), ("check", PLAN, "--recording", PRE)):
            self.refused(*command, "--read-as", "separator=brick", says="--read-as")
            self.refused(*command, "--read-as", "speed=9", says="speed")

    def test_the_layout_can_be_looked_at(self):
        shown = run("levels", self.german(), "--show-layout")
        self.assertEqual(shown.returncode, 0, shown.stderr)
        for words in ("delimited text", "separator=semicolon", "decimal=comma", "time-form=ms", "TP-01", "Alder Fen"):
            self.assertIn(words, shown.stdout)
        told = json.loads(run("levels", self.german(), "--show-layout", "--json").stdout)
        self.assertEqual([(c["name"], c["unit"]) for c in told["columns"]], [("Zeit", "ms"), ("TP-01", "µm/m")])
        # What it says is what could be said.
        levels = [json.loads(run("levels", self.german(), "--json", *more).stdout)["levels"]
                  for more in ((), ("--read-as", told["read_as"]))]
        self.assertEqual(levels[0], levels[1])


class Account(MatchTest):
    def test_skipped_lines_and_missing_values_are_named(self):
        values = [f"{value},7" for step in pieces() for value in step]
        path = self.recording(values, heading="TP-01 [µm/m],B")
        with open(path, encoding="utf-8") as file:
            lines = file.read().split("\n")
        lines[101] = lines[101].split(",")[0] + ",---,7"
        lines.insert(301, "the operator sneezed")
        with open(path, "w", encoding="utf-8") as file:
            file.write("\n".join(lines))
        done = run("levels", path, "--column", "TP-01", "--json")
        self.assertEqual(done.returncode, 0, done.stderr)
        self.assertIn("1 of 1802 lines was skipped, first line 302", done.stderr)
        self.assertIn('1 value is missing, first in line 102, column "TP-01"', done.stderr)
        told = json.loads(done.stdout)
        self.assertEqual((told["lines_skipped"], told["cells_missing"]), (1, 1))
        self.assertEqual(told["skipped"][0]["line"], 302)
        self.assertEqual((told["missing"][0]["line"], told["missing"][0]["column"]), (102, "TP-01"))
        # Every line is read or skipped: the heading, 1800 samples, and the line put in.
        self.assertEqual(told["lines_read"] + told["lines_skipped"], 1802)
        self.assertEqual(len(told["levels"]), 9)

    def test_wav(self):
        # Two levels of 16-bit samples, 1000 a second, with noise of two steps.
        path = self.path("tone.wav")
        with wave.open(path, "wb") as file:
            file.setnchannels(1)
            file.setsampwidth(2)
            file.setframerate(1000)
            samples = [(0 if k < 3000 else 8192) + (k * 7919 % 5 - 2) for k in range(6000)]
            file.writeframes(struct.pack(f"<{len(samples)}h", *samples))
        levels = json.loads(run("levels", path, "--json").stdout)["levels"]
        self.assertEqual(len(levels), 2)
        # 8192 of 32768 is a quarter; five noise values of mean 0, spread 1.4/32768.
        self.assertAlmostEqual(levels[1]["mean"] - levels[0]["mean"], 0.25, delta=1e-5)

    def test_a_poor_level_is_told(self):
        steps = pieces()
        steps[2] = [value + 0.05 * k for k, value in enumerate(steps[2])]
        _, stderr = self.check(self.recording([value for step in steps for value in step]), exit=0)
        self.assertIn("TP-01: The level of step 3 (+2) is poor: ", stderr)

    def test_a_reversed_channel_of_a_recording_that_ends_early_is_told_by_the_others(self):
        # Alone its first half looks like the second half of the sequence: TP-12's signal wires are exchanged.
        with open(PRE, encoding="utf-8") as file:
            lines = file.readlines()
        with open(self.path("half.csv"), "w", encoding="utf-8") as file:
            file.writelines(lines[:len(lines) // 2])
        saved = self.path("saved.bridgecal")
        done = run("check", PLAN, "--recording", self.path("half.csv"), "--save", saved)
        self.assertEqual(done.returncode, 1)
        sentence = "At the time of step 5 (zero) 5 other channels of the recording are at step 1 (zero)"
        self.assertEqual([line.split(": ")[1] for line in done.stderr.splitlines() if sentence in line], ["TP-12"])
        with open(saved, encoding="utf-8") as file:
            remarks = {channel["name"]: channel["checks"][-1]["remark"] for channel in json.load(file)["channels"]}
        self.assertEqual([name for name, remark in remarks.items() if sentence in remark], ["TP-12"])


if __name__ == "__main__":
    unittest.main(argv=sys.argv[:1], verbosity=2)
