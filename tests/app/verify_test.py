# SPDX-License-Identifier: GPL-3.0-or-later
"""Fingerprints of documents and what verify says of them.

Called as: verify_test.py SHUNTWRIGHT SOURCE_DIR. The fingerprints are reckoned here by Python's json and hashlib;
numbers are laid out by ECMA-262, Number::toString, from Python's own shortest digits.
"""
import hashlib
import json
import pathlib
import re
import subprocess
import sys
import tempfile
import unittest
import zipfile

PROGRAM = pathlib.Path(sys.argv[1])
SOURCE = pathlib.Path(sys.argv[2])
DEMO = SOURCE / "examples/demo.bridgecal"
NEWEST = SOURCE / "tests/data/version7.bridgecal"


def number_text(value):
    """ECMA-262 Number::toString: digits s, of which k, times ten to n - k."""
    value = float(value)
    if value == 0:
        return "0"
    if value < 0:
        return "-" + number_text(-value)
    mantissa, _, power = repr(value).partition("e")
    whole, _, part = mantissa.partition(".")
    digits = whole + part
    n = len(whole) + int(power or 0)
    n -= len(digits) - len(digits.lstrip("0"))
    digits = digits.strip("0")
    k = len(digits)
    if k <= n <= 21:
        return digits + "0" * (n - k)
    if 0 < n <= 21:
        return digits[:n] + "." + digits[n:]
    if -6 < n <= 0:
        return "0." + "0" * -n + digits
    return digits[0] + ("." + digits[1:] if k > 1 else "") + f"e{'+' if n > 0 else '-'}{abs(n - 1)}"


def canonical(value):
    """RFC 8785."""
    if isinstance(value, dict):
        members = sorted(value.items(), key=lambda member: member[0].encode("utf-16-be"))
        return "{" + ",".join(f"{canonical(k)}:{canonical(v)}" for k, v in members) + "}"
    if isinstance(value, list):
        return "[" + ",".join(map(canonical, value)) + "]"
    if isinstance(value, (int, float)) and not isinstance(value, bool):
        return number_text(value)
    return json.dumps(value, ensure_ascii=False)


def sha256(text):
    return hashlib.sha256(text.encode("utf-8")).hexdigest()


def fingerprint(document):
    document = json.loads(json.dumps(document))
    for key in ("version", "sign_off", "history", "fingerprint"):
        document.pop(key, None)
    for channel in document["channels"]:
        for check in channel["checks"]:
            check.pop("remarks", None)
    document["channels"] = [sha256(canonical(channel)) for channel in document["channels"]]
    return sha256(canonical(document))


def load(path):
    return json.loads(pathlib.Path(path).read_text("utf-8"))


class VerifyTest(unittest.TestCase):
    def setUp(self):
        folder = tempfile.TemporaryDirectory()
        self.addCleanup(folder.cleanup)
        self.folder = pathlib.Path(folder.name)

    def run_program(self, *words):
        return subprocess.run([PROGRAM, *words], capture_output=True, text=True, timeout=120)

    def verified(self, *words, status):
        done = self.run_program("verify", *words, "--json")
        self.assertEqual(done.returncode, status, done.stderr + done.stdout)
        return json.loads(done.stdout)

    def written(self, document, name="other.bridgecal"):
        path = self.folder / name
        path.write_text(json.dumps(document, ensure_ascii=False), "utf-8")
        return path

    def test_every_version_has_the_fingerprint_of_its_json(self):
        for version in range(1, 8):
            path = SOURCE / f"tests/data/version{version}.bridgecal"
            with self.subTest(version=version):
                said = self.verified(path, status=0 if version == 7 else 1)
                self.assertEqual(said["file"]["fingerprint"], fingerprint(load(path)))
                self.assertEqual(said["file"]["standing"], "as_saved" if version == 7 else "no_fingerprint")

    def test_the_examples_are_as_saved(self):
        for path in sorted((SOURCE / "examples").glob("*.bridgecal")):
            with self.subTest(path=path.name):
                said = self.verified(path, status=0)
                self.assertTrue(said["in_order"])
                self.assertEqual(said["file"]["stated"], fingerprint(load(path)))

    def test_other_numbers_spacing_and_order_of_keys_are_no_alteration(self):
        document = load(NEWEST)
        turned = dict(reversed(document.items()))
        self.assertTrue(self.verified(self.written(turned), status=0)["in_order"])

    def test_an_altered_file_is_told(self):
        document = load(NEWEST)
        document["channels"][0]["checks"][0]["readings"][1]["mean"] += 1
        said = self.verified(self.written(document), status=1)
        self.assertEqual(said["file"]["standing"], "altered")
        self.assertEqual(said["file"]["fingerprint"], fingerprint(document))
        self.assertFalse(said["history"]["covers_content"])
        # Whoever reckons the fingerprint anew is found by the history.
        document["fingerprint"] = fingerprint(document)
        said = self.verified(self.written(document), status=1)
        self.assertEqual(said["file"]["standing"], "as_saved")
        self.assertFalse(said["history"]["in_order"])

    def test_every_command_that_opens_an_altered_file_warns(self):
        document = load(SOURCE / "examples/plan.bridgecal")
        recording = SOURCE / "examples/pre_test.csv"
        document["channels"][0]["setup"]["bridge"]["gauge"]["factor"] += 0.1
        altered = self.written(document)
        for words in (("check", altered, "--recording", recording), ("report", altered, "-o", self.folder / "r.csv"),
                      ("predict", altered), ("review", altered), ("batch", altered)):
            with self.subTest(command=words[0]):
                said = self.run_program(*words).stderr
                self.assertEqual(said.count(f"{altered}: The file was altered outside of the program"), 1, said)
                whole = [SOURCE / "examples/plan.bridgecal" if word == altered else word for word in words]
                self.assertNotIn("altered", self.run_program(*whole).stderr)

    def test_a_report_says_that_its_content_is_not_what_was_saved_last(self):
        document = load(NEWEST)
        document["channels"][0]["checks"][0]["readings"][1]["mean"] += 1
        for source, said in ((NEWEST, False), (self.written(document), True)):
            page = self.folder / "report.html"
            self.run_program("report", source, "-o", page)
            self.assertEqual("This is not the content that was saved last" in page.read_text("utf-8"), said)

    def test_an_alteration_stays_told_after_it_is_saved_over(self):
        def saved(source, name):
            target = self.folder / f"{name}.bridgecal"
            self.run_program("check", source, "--recording", SOURCE / "examples/pre_test.csv", "--as", name, "--save",
                             target)
            return target
        once = saved(SOURCE / "examples/plan.bridgecal", "one")
        self.assertEqual(self.verified(once, status=0)["history"]["altered_before"], [])
        document = load(once)
        document["channels"][0]["setup"]["bridge"]["gauge"]["factor"] += 0.1
        twice = saved(self.written(document), "two")
        said = self.verified(twice, status=1)
        self.assertEqual(said["file"]["standing"], "as_saved")
        self.assertEqual(said["history"]["altered_before"], [len(load(twice)["history"])])

    def test_an_altered_history_is_told(self):
        document = load(NEWEST)
        document["history"][0]["person"] = "somebody else"
        said = self.verified(self.written(document), status=1)
        self.assertEqual(said["history"]["broken_entry"], 1)
        self.assertTrue(said["file"]["in_order"])

    def test_a_review_that_is_about_another_content_is_told(self):
        document = load(NEWEST)
        document["sign_off"][-1]["fingerprint"] = "0" * 64
        said = self.verified(self.written(document), status=1)
        self.assertTrue(said["review"]["changed_since"])

    def test_every_kind_of_report_states_its_document(self):
        for ending in ("pdf", "html", "xlsx", "csv", "json"):
            with self.subTest(ending=ending):
                report = self.folder / f"report.{ending}"
                done = self.run_program("report", DEMO, "-o", report)
                self.assertIn(done.returncode, (0, 1), done.stderr)
                said = self.verified(DEMO, report, status=0)
                self.assertEqual(said["report"]["of"], "this_document")
                self.assertEqual(said["report"]["fingerprint"], fingerprint(load(DEMO)))
                # Held against a document that it was not made from.
                said = self.verified(NEWEST, report, status=1)
                self.assertEqual(said["report"]["of"], "another")

    def test_a_report_of_an_earlier_state_is_named_by_who_saved_it(self):
        document = load(NEWEST)
        page = self.folder / "report.html"
        page.write_text('<!DOCTYPE html><html><head><meta name="shuntwright-fingerprint" content="'
                        + document["history"][0]["fingerprint"] + '"></head></html>', "utf-8")
        said = self.verified(NEWEST, page, status=1)
        self.assertEqual(said["report"]["of"], "earlier_revision")
        self.assertEqual(said["report"]["revision"],
                         {"entry": 1, "person": "shift A", "time": "2024-05-06T16:40:00Z"})
        self.assertIn("saved by shift A on 2024-05-06T16:40:00Z", self.run_program("verify", NEWEST, page).stdout)

    def test_a_report_without_fingerprint_and_a_table_of_two_are_told(self):
        page = self.folder / "report.html"
        page.write_text("<html></html>", "utf-8")
        self.assertEqual(self.verified(NEWEST, page, status=1)["report"]["of"], "unknown")
        table = self.folder / "report.csv"
        table.write_text("channel,fingerprint\r\nA," + "0" * 64 + "\r\nB," + "1" * 64 + "\r\n", "utf-8")
        done = self.run_program("verify", NEWEST, table)
        self.assertEqual(done.returncode, 2)
        self.assertIn("different fingerprints", done.stderr)

    def test_what_is_no_report_is_refused(self):
        for name, content, says in (("a.pdf", b"text", "no report of a kind"),
                                    ("b.xlsx", b"PK\x03\x04rubbish", "damaged"),
                                    ("c.json", b"{", "no JSON"),
                                    ("e.json", b"{}\0{}", "no JSON"),
                                    ("d.json", NEWEST.read_bytes(), "a document and no report")):
            with self.subTest(name=name):
                path = self.folder / name
                path.write_bytes(content)
                done = self.run_program("verify", NEWEST, path)
                self.assertEqual(done.returncode, 2, done.stdout)
                self.assertIn(says, done.stderr)
        self.assertEqual(self.run_program("verify", NEWEST, self.folder / "none.pdf").returncode, 2)

    def test_a_workbook_that_unpacks_without_end_is_not_unpacked(self):
        path = self.folder / "large.xlsx"
        with zipfile.ZipFile(path, "w", zipfile.ZIP_DEFLATED) as book:
            book.writestr("docProps/custom.xml", " " * 50_000_000)
        self.assertIn(self.run_program("verify", NEWEST, path).returncode, (1, 2))

    def test_a_newer_file_names_the_version_it_needs(self):
        document = load(NEWEST)
        document["version"] = 99
        done = self.run_program("verify", self.written(document))
        self.assertEqual(done.returncode, 2)
        self.assertIn("file version 99", done.stderr)

    def test_says_that_a_fingerprint_is_no_signature(self):
        self.assertIn("no signature", self.run_program("verify", NEWEST).stdout)

    def test_a_saved_check_leaves_its_entry_in_the_history(self):
        saved = self.folder / "saved.bridgecal"
        done = self.run_program("check", SOURCE / "examples/plan.bridgecal", "--recording",
                                SOURCE / "examples/pre_test.csv", "--person", "P. Heron", "--save", saved)
        self.assertIn(done.returncode, (0, 1), done.stderr)
        history = load(saved)["history"]
        self.assertEqual(len(history), 1)
        self.assertEqual(history[0]["person"], "P. Heron")
        self.assertEqual(history[0]["changes"], ["7 channels (TP-01, TP-02, TP-11, …): check pre-test added"])
        self.assertRegex(history[0]["time"], re.compile(r"^\d{4}-\d\d-\d\dT\d\d:\d\d:\d\dZ$"))
        entry = {key: value for key, value in history[0].items() if key != "chain"}
        self.assertEqual(history[0]["chain"], sha256(canonical(entry)))
        self.assertTrue(self.verified(saved, status=0)["in_order"])


if __name__ == "__main__":
    unittest.main(argv=sys.argv[:1], verbosity=2)
