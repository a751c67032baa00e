# SPDX-License-Identifier: GPL-3.0-or-later
"""Many documents in one run: what is printed, in which order, and what a bad one or Ctrl+C does to it.

Called as batch_test.py PROGRAM SOURCE_FOLDER. The documents are the examples with something planted in their
readings by Python; what must be said of them follows from what was planted, against the limit of 1 % that the
examples state.
"""
import copy
import json
import os
import re
import signal
import subprocess
import sys
import tempfile
import time
import unittest

PROGRAM, SOURCE = os.path.abspath(sys.argv[1]), os.path.abspath(sys.argv[2])
EXAMPLES = os.path.join(SOURCE, "examples")
PLAN = os.path.join(EXAMPLES, "plan.bridgecal")
PRE = os.path.join(EXAMPLES, "pre_test.csv")
POST = os.path.join(EXAMPLES, "post_test.csv")
WITHOUT_DISPLAY = {k: v for k, v in os.environ.items()
                   if k not in ("DISPLAY", "WAYLAND_DISPLAY", "QT_QPA_PLATFORM", "XDG_RUNTIME_DIR")}
TODAY = ("--today", "2026-05-20")


def demo():
    with open(os.path.join(EXAMPLES, "demo.bridgecal"), encoding="utf-8") as file:
        content = json.load(file)
    content["history"] = []
    content.pop("fingerprint", None)
    return content


def scaled(check, gain):
    """The change of every step since the first, which is a zero, times `gain`."""
    zero = check["readings"][0]["mean"]
    for reading in check["readings"]:
        reading["mean"] = zero + gain * (reading["mean"] - zero)


def one_channel(pre=1.0, post=1.0, checks=2):
    """TP-01, which passes as it is, since its gain was planted within 0.02 % by the generator."""
    content = demo()
    content["channels"] = [next(c for c in content["channels"] if c["name"] == "TP-01")]
    channel = content["channels"][0]
    for check, gain in zip(channel["checks"], (pre, post)):
        scaled(check, gain)
    channel["checks"] = channel["checks"][:checks]
    return content


class BatchTest(unittest.TestCase):
    def setUp(self):
        folder = tempfile.TemporaryDirectory()
        self.addCleanup(folder.cleanup)
        self.folder = folder.name

    def put(self, name, content):
        path = os.path.join(self.folder, name)
        with open(path, "w", encoding="utf-8") as file:
            file.write(content if isinstance(content, str) else json.dumps(content))
        return path

    def run_batch(self, *words, exit=0):
        done = subprocess.run([PROGRAM, "batch", *words, *TODAY], capture_output=True, encoding="utf-8", timeout=120,
                              env=WITHOUT_DISPLAY, stdin=subprocess.DEVNULL, cwd=self.folder)
        self.assertEqual(done.returncode, exit, done.stderr)
        for line in done.stderr.splitlines():
            self.assertTrue(line.startswith("shuntwright: "), line)
        return done

    def json_lines(self, *words, exit=0):
        text = self.run_batch(*words, "--json", exit=exit).stdout
        self.assertTrue(text.endswith("\n") or not text)
        return [json.loads(line) for line in text.splitlines()]


class Verdicts(BatchTest):
    def test_what_was_planted_is_said_and_decides_the_exit_status(self):
        # gain of pre-test, of post-test, checks; verdict, changed, exit status
        cases = {"same": ((1, 1, 2), "pass", 0, 0),
                 "off": ((1.05, 1.05, 2), "fail", 0, 1),        # 5 % beyond a limit of 1 %
                 "moved": ((0.9925, 1.0075, 2), "pass", 1, 1),  # each within 1 %, apart by 1.5 %
                 "once": ((1, 1, 1), "pass", 0, 0),
                 "never": ((1, 1, 0), "not judged", 0, 1)}
        for name, (planted, verdict, changed, exit) in cases.items():
            with self.subTest(name):
                path = self.put(name + ".bridgecal", one_channel(*planted))
                line, = self.json_lines(path, exit=exit)
                self.assertEqual((line["file"], line["verdict"], line["changed"], line["channels"]),
                                 (path, verdict, changed, 1))

    def test_the_worst_channel_stands_for_its_document(self):
        content = demo()
        channel = next(c for c in content["channels"] if c["name"] == "TP-21")
        scaled(channel["checks"][1], 5)  # 400 % off; TP-12 reads with the wrong sign, 200 % off
        line, = self.json_lines(self.put("a.bridgecal", content), exit=1)
        self.assertEqual(line["worst"]["channel"], "TP-21")
        # |deviation| over limit at any step: 4 over 0.01. The gain as recorded is within 0.05 % of 1.
        self.assertAlmostEqual(line["worst"]["worst"], 400, delta=400 * 0.005)
        self.assertEqual(line["channels"], line["pass"] + line["fail"] + line["cannot_tell"] + line["not_judged"]
                         + line["not_checked"])

    def test_a_line_a_channel(self):
        content = demo()
        path = self.put("a.bridgecal", content)
        lines = self.json_lines(path, "--channels", exit=1)
        self.assertEqual([line["channel"] for line in lines], [c["name"] for c in content["channels"]])
        self.assertEqual([line["group"] for line in lines], [c["group"] for c in content["channels"]])
        # The generator planted a leak in TP-02 before the post-test and swapped wires in TP-12.
        self.assertEqual({line["channel"] for line in lines if line["verdict"] == "fail"}, {"TP-02", "TP-12"})
        self.assertEqual({line["channel"] for line in lines if line["change"] == "changed"}, {"TP-02"})
        text = self.run_batch(path, "--channels", exit=1).stdout.splitlines()
        self.assertEqual(len(text), len(lines))
        for said, line in zip(text, lines):
            self.assertTrue(said.startswith(f"{path}: {line['channel']}: post-test: {line['verdict']}"), said)

    def test_names_cannot_steer_the_terminal_or_break_a_line(self):
        content = one_channel()
        content["channels"][0]["name"] = "\x1b]0;owned\x07"
        self.assertNotIn("\x1b", self.run_batch(self.put("a.bridgecal", content), "--channels").stdout)


class Files(BatchTest):
    def campaign(self, count):
        """Documents in a folder, every third failing; their names in the order of the folder."""
        good, off = json.dumps(one_channel()), json.dumps(one_channel(1.05, 1.05))
        os.mkdir(os.path.join(self.folder, "campaign"))
        names = [f"campaign/{k:04}.bridgecal" for k in range(count)]
        for k, name in enumerate(names):
            self.put(name, off if k % 3 == 0 else good)
        return names

    def test_any_number_of_workers_says_the_same_in_the_same_order(self):
        names = self.campaign(60)
        for form in ((), ("--json",), ("--channels",), ("--channels", "--json")):
            one = self.run_batch("campaign", "--jobs", "1", *form, exit=1).stdout
            for jobs in ("2", "7", "256"):
                self.assertEqual(self.run_batch("campaign", "--jobs", jobs, *form, exit=1).stdout, one)
            self.assertEqual([re.search(r"campaign/\d+\.bridgecal", line).group() for line in one.splitlines()],
                             names)
        verdicts = [line["verdict"] for line in self.json_lines("campaign", exit=1)]
        self.assertEqual(verdicts, ["pass" if k % 3 else "fail" for k in range(60)])

    def test_workers_share_the_channels_of_a_single_document(self):
        path = self.put("a.bridgecal", demo())
        for form in ((), ("--channels",), ("--recording", POST, "--as", "again")):
            one = self.run_batch(path, "--jobs", "1", *form, exit=1)
            for jobs in ("2", "256"):
                other = self.run_batch(path, "--jobs", jobs, *form, exit=1)
                self.assertEqual((other.stdout, other.stderr), (one.stdout, one.stderr))

    def test_a_document_without_channels_is_not_judged(self):
        content = demo()
        content["channels"] = []
        line, = self.json_lines(self.put("a.bridgecal", content), exit=1)
        self.assertEqual((line["verdict"], line["channels"], line["worst"]), ("not judged", 0, None))

    def test_patterns_folders_and_files_in_their_order(self):
        names = self.campaign(12)
        self.put("campaign/notes.txt", "no document")
        lines = self.json_lines("campaign/000[12]*", names[11], "campaign", exit=1)
        self.assertEqual([line["file"] for line in lines], [names[1], names[2], names[11], *names])

    def test_a_bad_document_does_not_hide_the_others(self):
        good = json.dumps(one_channel())
        os.mkdir(os.path.join(self.folder, "empty"))
        os.mkfifo(os.path.join(self.folder, "pipe"))
        self.put("a.bridgecal", good)
        self.put("b.bridgecal", good[:len(good) // 2])
        self.put("c.bridgecal", "\0\1\2")
        self.put("d.bridgecal", good.replace('"version": 7', '"version": 99'))
        self.put("z.bridgecal", good)
        files = ["a.bridgecal", "b.bridgecal", "c.bridgecal", "d.bridgecal", "none.bridgecal", "empty", "*.none",
                 "pipe", "z.bridgecal"]
        for jobs in ("1", "2"):
            done = self.run_batch(*files, "--jobs", jobs, "--json", exit=2)
            lines = [json.loads(line) for line in done.stdout.splitlines()]
            self.assertEqual([line["file"] for line in lines], files)
            self.assertEqual([line["file"] for line in lines if "error" not in line], ["a.bridgecal", "z.bridgecal"])
            errors = done.stderr.splitlines()
            bad = files[1:-1]
            self.assertEqual(len(errors), len(bad))
            for error, file, line in zip(errors, bad, (line for line in lines if "error" in line)):
                self.assertIn(file, error)
                self.assertEqual(error, "shuntwright: " + line["error"])
            self.assertIn("line ", errors[0])
        self.assertEqual(len(self.run_batch(*files, exit=2).stdout.splitlines()), 2)

    def test_output_that_cannot_be_written(self):
        path = self.put("a.bridgecal", one_channel())
        with open("/dev/full", "w", encoding="utf-8") as full:
            done = subprocess.run([PROGRAM, "batch", path], stdout=full, stderr=subprocess.PIPE, encoding="utf-8",
                                  env=WITHOUT_DISPLAY, timeout=60)
        self.assertEqual(done.returncode, 2)
        self.assertIn("could not be written", done.stderr)

    def test_wrong_usage(self):
        path = self.put("a.bridgecal", one_channel())
        for words, says in (((), "FILES"), ((path, "--jobs", "0"), "--jobs"), ((path, "--today", "soon"), "--today"),
                            ((path, "--as", "post"), "--as"), ((path, "--read-as", "time=1"), "--read-as"),
                            ((path, "--recording", "none.csv"), "no such file")):
            done = subprocess.run([PROGRAM, "batch", *words], capture_output=True, encoding="utf-8", timeout=60,
                                  env=WITHOUT_DISPLAY)
            self.assertEqual((done.returncode, done.stdout), (2, ""), words)
            self.assertIn(says, done.stderr)


class Interrupted(BatchTest):
    def test_no_half_lines_and_no_line_twice(self):
        content = demo()
        content["channels"] = [copy.copy(channel) for channel in content["channels"] * 20]
        for k, channel in enumerate(content["channels"]):
            channel["name"] = f"CH-{k}"
        text = json.dumps(content)
        count = 60
        for k in range(count):
            self.put(f"{k:03}.bridgecal", text)
        out = os.path.join(self.folder, "out")
        with open(out, "wb") as file:
            begun = subprocess.Popen([PROGRAM, "batch", self.folder, "--jobs", "2", "--channels", "--json"],
                                     stdout=file, stderr=subprocess.PIPE, encoding="utf-8", env=WITHOUT_DISPLAY)
        deadline = time.monotonic() + 60
        while os.path.getsize(out) == 0 and time.monotonic() < deadline:
            time.sleep(0.002)
        begun.send_signal(signal.SIGINT)
        errors = begun.communicate(timeout=60)[1]
        with open(out, encoding="utf-8") as file:
            text = file.read()
        self.assertTrue(text.endswith("\n"))
        lines = [json.loads(line) for line in text.splitlines()]
        self.assertEqual(begun.returncode, 2)
        self.assertIn("stopped", errors)
        # Whole documents, in their order, and not all of them.
        self.assertEqual(len(lines) % 140, 0)
        self.assertLess(len(lines), 140 * count)
        files = sorted({line["file"] for line in lines})
        self.assertEqual(files, [os.path.join(self.folder, f"{k:03}.bridgecal") for k in range(len(files))])


class Recordings(BatchTest):
    def test_all_channels_of_a_recording(self):
        lines = self.json_lines(PLAN, "--recording", PRE, exit=1)
        # The generator swapped the wires of TP-12 and left the others right.
        self.assertEqual({line["channel"]: line["verdict"] for line in lines},
                         {"TP-01": "pass", "TP-02": "pass", "TP-11": "pass", "TP-12": "fail", "TP-21": "pass",
                          "TP-31": "pass", "LC-1": "pass"})
        self.assertEqual({line["check"] for line in lines}, {"pre-test"})
        self.assertEqual({line["change"] for line in lines}, {"not_compared"})
        # The gain of a check is measured over expected; wires swapped are -1.
        for line in lines:
            self.assertAlmostEqual(line["gain"], -1 if line["channel"] == "TP-12" else 1, delta=0.005)

    def test_it_is_judged_as_check_does(self):
        lines = self.json_lines(PLAN, "--recording", POST, "--as", "post", exit=1)
        done = subprocess.run([PROGRAM, "check", PLAN, "--recording", POST, "--as", "post", "--json"],
                              capture_output=True, encoding="utf-8", timeout=120, env=WITHOUT_DISPLAY)
        checked = json.loads(done.stdout)["channels"]
        self.assertEqual([(c["channel"], c["check"], c["verdict"], c["gain"]) for c in checked],
                         [(c["channel"], c["check"], c["verdict"], c["gain"]) for c in lines])

    def test_it_is_compared_with_the_latest_check(self):
        content = demo()
        for channel in content["channels"]:
            channel["checks"] = channel["checks"][:1]
        path = self.put("a.bridgecal", content)
        before = os.path.getmtime(path)
        lines = self.json_lines(path, "--recording", POST, "--as", "post", exit=1)
        self.assertEqual({line["channel"] for line in lines if line["change"] == "changed"}, {"TP-02"})
        self.assertEqual(os.path.getmtime(path), before)  # nothing is written
        self.assertEqual(sorted(os.listdir(self.folder)), ["a.bridgecal"])

    def test_columns_that_are_missing_are_told_and_do_not_count(self):
        plan = one_channel(checks=0)
        extra = copy.deepcopy(plan["channels"][0])
        extra["name"] = "Z-99"
        plan["channels"].append(extra)
        done = self.run_batch(self.put("a.bridgecal", plan), "--recording", PRE)
        self.assertEqual(len(done.stdout.splitlines()), 1)
        self.assertIn("no column for Z-99", done.stderr)

    def test_documents_that_do_not_fit_do_not_hide_the_others(self):
        alone = one_channel(checks=0)
        alone["channels"][0]["name"] = "Z-99"
        files = [self.put("a.bridgecal", alone), self.put("b.bridgecal", "{"),
                 self.put("c.bridgecal", one_channel(checks=0))]
        one = self.run_batch(*files, "--recording", PRE, "--json", "--jobs", "1", exit=2)
        two = self.run_batch(*files, "--recording", PRE, "--json", "--jobs", "2", exit=2)
        self.assertEqual((one.stdout, one.stderr), (two.stdout, two.stderr))
        lines = [json.loads(line) for line in one.stdout.splitlines()]
        self.assertEqual([("error" in line, line["file"]) for line in lines],
                         [(True, files[0]), (True, files[1]), (False, files[2])])

    def test_a_column_without_a_sequence_is_an_error_of_its_channel(self):
        rows = "".join(f"{k / 100:.2f},5\n" for k in range(600))
        done = self.run_batch(self.put("a.bridgecal", one_channel(checks=0)), "--recording",
                              self.put("equal.csv", "time [s],TP-01 [µm/m]\n" + rows), "--json", exit=2)
        line = json.loads(done.stdout)
        self.assertEqual(line["channel"], "TP-01")
        self.assertIn("TP-01", line["error"])


if __name__ == "__main__":
    unittest.main(argv=sys.argv[:1], verbosity=2)
