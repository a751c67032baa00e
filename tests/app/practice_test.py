# SPDX-License-Identifier: GPL-3.0-or-later
"""The practice command, called as from a shell, good input and bad.

Called as practice_test.py PROGRAM SOURCE_FOLDER.
"""
import json
import os
import subprocess
import sys
import tempfile
import unittest

PROGRAM = os.path.abspath(sys.argv[1])
WITHOUT_DISPLAY = {k: v for k, v in os.environ.items()
                   if k not in ("DISPLAY", "WAYLAND_DISPLAY", "QT_QPA_PLATFORM", "XDG_RUNTIME_DIR")}


def run(*words):
    return subprocess.run([PROGRAM, "practice", *words], capture_output=True, timeout=120, encoding="utf-8",
                          env=WITHOUT_DISPLAY, stdin=subprocess.DEVNULL)


class PracticeTest(unittest.TestCase):
    def test_same_seed_gives_the_same_set_and_another_another(self):
        first, again, other = run("--seed", "7"), run("--seed", "7"), run("--seed", "8")
        self.assertEqual(first.returncode, 0, first.stderr)
        self.assertEqual(first.stdout, again.stdout)
        self.assertNotEqual(first.stdout, other.stdout)
        self.assertIn("Seed 7, 10 questions, first, all kinds\n", first.stdout)

    def test_answers_are_of_the_same_questions_and_stand_on_their_sheet_alone(self):
        words = ("--seed", "5", "--difficulty", "thorough", "--count", "6", "--json")
        questions = json.loads(run(*words).stdout)["questions"]
        answers = json.loads(run(*words, "--answers").stdout)["questions"]
        self.assertEqual(len(questions), 6)
        for question, answer in zip(questions, answers):
            for key in question:
                self.assertEqual(question[key], answer[key])
            self.assertNotIn("right", question)
            self.assertNotIn("explanation", question)
            self.assertTrue(answer["explanation"])
            numbers = [choice["number"] for choice in question["choices"]]
            self.assertEqual(numbers, list(range(1, len(numbers) + 1)))
            if numbers:
                self.assertIn(answer["right"], numbers)
            else:
                self.assertIsNotNone(answer["number"])
                self.assertTrue(question["unit"])
        plain = run(*words[:-1])
        self.assertNotIn("Right:", plain.stdout)
        self.assertEqual(run(*words[:-1], "--answers").stdout.count("Right:"), 6)

    def test_choices_have_the_same_numbers_in_text_and_data(self):
        words = ("--seed", "5", "--kinds", "sign", "--count", "3", "--answers")
        text, told = run(*words).stdout, json.loads(run(*words, "--json").stdout)
        for question in told["questions"]:
            right = question["choices"][question["right"] - 1]
            self.assertIn(f"Right: {right['number']}) {right['text']}\n", text)

    def test_data_suffice_to_work_out_the_answer(self):
        told = json.loads(run("--kinds", "reading", "--count", "20", "--json", "--answers").stdout)
        for question in told["questions"]:
            # R/(4 Rs + 2 R) of one shunt over one of four equal arms, down over 1 and 3 (TN-514).
            bridge, shunt = question["bridge"], question["shunts"][0]
            r, rs = bridge["arms_ohm"][0], shunt["ohm"]
            self.assertEqual(bridge["arms_ohm"], [bridge["gauge"]["nominal_ohm"]] * 4)
            self.assertEqual(set(bridge["leads_ohm"].values()), {0})
            self.assertFalse(any(bridge["hookup"].values()))
            down = "arm " + question["given"]["Shunt A"][0].split("arm ")[1] in ("arm 1", "arm 3")
            change = (-1 if down else 1) * 1e3 * r / (4 * rs + 2 * r)
            shown = change * question["instrument"]["units_per_mV_per_V"]
            # Both are double precision of the same expression but for its order.
            self.assertAlmostEqual(question["number"] / shown, 1, places=9)

    def test_seed_is_a_decimal_whole_number_of_64_bits(self):
        self.assertEqual(run("--seed", "007").stdout, run("--seed", "7").stdout)
        self.assertIn("Seed 10, ", run("--seed", "010").stdout)
        self.assertIn("Seed 18446744073709551615, ", run("--seed", "18446744073709551615").stdout)
        for bad in "0x10", "-1", "18446744073709551616", "seven", "1.5", "1e3", "+1", " 1":
            done = run("--seed=" + bad)
            self.assertEqual((done.returncode, done.stdout), (2, ""), bad)
            self.assertIn("--seed", done.stderr)
            self.assertIn("18446744073709551615", done.stderr)
            self.assertEqual(done.stderr.count("\n"), 1, done.stderr)
        self.assertEqual(run("--seed=").returncode, 2)

    def test_kinds_that_are_none_list_those_there_are(self):
        for bad in "", ",", "foo", "sign,", "sign,foo":
            done = run("--kinds", bad)
            self.assertEqual((done.returncode, done.stdout), (2, ""), bad)
            self.assertIn("sign, arm, larger_shunt, reading, planted_fault", done.stderr)

    def test_kinds_come_round_in_their_order(self):
        told = json.loads(run("--kinds", "reading,sign", "--count", "4", "--json").stdout)
        self.assertEqual([q["kind"] for q in told["questions"]], ["reading", "sign"] * 2)

    def test_first_reading_is_that_of_the_textbook(self):
        told = json.loads(run("--kinds", "reading", "--count", "20", "--json", "--answers").stdout)
        for question in told["questions"]:
            # The sheet says it in words: "59 kΩ right across arm 2". Arms 1 and 3 pull down (TN-514).
            arm = int(question["given"]["Shunt A"][0].split("arm ")[1])
            self.assertEqual(question["number"] < 0, arm % 2 == 1, question)

    def test_sheet_is_a_pdf(self):
        with tempfile.TemporaryDirectory() as folder:
            for words in (), ("--answers",):
                path = os.path.join(folder, "sheet.pdf")
                done = run("--seed", "3", "--count", "2", "-o", path, *words)
                self.assertEqual(done.returncode, 0, done.stderr)
                with open(path, "rb") as file:
                    self.assertEqual(file.read(5), b"%PDF-")

    def test_bad_input_is_named(self):
        for words, named in ((("--kinds", "signs"), "signs"), (("--count", "0"), "--count"),
                             (("--count", "201"), "--count"), (("--difficulty", "hard"), "hard"),
                             (("--seed", "x"), "--seed"), (("-o", ""), "--out"), (("--seed", "-1"), "--seed"), (("-o", "sheet.txt"), ".pdf"),
                             (("-o", "sheet.pdf", "--json"), "--json")):
            done = run(*words)
            self.assertEqual((done.returncode, done.stdout), (2, ""), words)
            self.assertIn(named, done.stderr)
            self.assertEqual(done.stderr.count("\n"), 1, done.stderr)


if __name__ == "__main__":
    unittest.main(argv=sys.argv[:1])
