# SPDX-License-Identifier: GPL-3.0-or-later
"""The published JSON Schema and the program agree about document files.

Called as: schema_test.py SHUNTWRIGHT SOURCE_DIR. The schema is checked by python3-jsonschema, which
knows nothing of this project.
"""
import copy
import json
import pathlib
import subprocess
import sys
import tempfile
import unittest

import jsonschema

PROGRAM = pathlib.Path(sys.argv[1])
SOURCE = pathlib.Path(sys.argv[2])
SCHEMA = json.loads((SOURCE / "resources/bridgecal.schema.json").read_text("utf-8"))
VALIDATOR = jsonschema.Draft202012Validator(SCHEMA)
DOCUMENT = SOURCE / "tests/data/version7.bridgecal"


def load(path):
    return json.loads(path.read_text("utf-8"))


def places(value, way=()):
    """Each place in the tree as the way to it, one for all elements of a list that look alike."""
    yield way
    if isinstance(value, dict):
        for key, member in value.items():
            yield from places(member, way + (key,))
    if isinstance(value, list):
        seen = set()
        for index, element in enumerate(value):
            kind = (*element, element.get("of")) if isinstance(element, dict) else type(element)
            if kind not in seen:
                seen.add(kind)
                yield from places(element, way + (index,))


def at(tree, way):
    for step in way:
        tree = tree[step]
    return tree


def mutants(document):
    """The document with one thing changed: a key gone, a key too many, a value of another kind."""
    for way in places(document):
        value = at(document, way)
        if isinstance(value, dict):
            extra = copy.deepcopy(document)
            at(extra, way)["surplus"] = 1
            yield f"{way} with a surplus key", extra
        if not way:
            continue
        if isinstance(way[-1], str):
            gone = copy.deepcopy(document)
            del at(gone, way[:-1])[way[-1]]
            yield f"{way} gone", gone
        other = copy.deepcopy(document)
        at(other, way[:-1])[way[-1]] = 1 if isinstance(value, str) else "text"
        yield f"{way} of another kind", other


class SchemaTest(unittest.TestCase):
    def test_is_itself_a_schema(self):
        jsonschema.Draft202012Validator.check_schema(SCHEMA)

    def accepts(self, path):
        self.assertEqual([error.message for error in VALIDATOR.iter_errors(load(path))], [])

    def test_accepts_all_documents_we_ship(self):
        files = sorted((SOURCE / "examples").glob("*.bridgecal"))
        self.assertTrue(files, "no document in examples")
        for path in files:
            with self.subTest(path=path.name):
                self.accepts(path)

    def test_accepts_what_the_program_saves(self):
        with tempfile.TemporaryDirectory() as folder:
            saved = pathlib.Path(folder) / "saved.bridgecal"
            run = subprocess.run(
                [PROGRAM, "check", SOURCE / "examples/plan.bridgecal", "--recording",
                 SOURCE / "examples/pre_test.csv", "--as", "pre", "--save", saved],
                capture_output=True, text=True, timeout=60)
            self.assertIn(run.returncode, (0, 1), run.stderr)
            self.accepts(saved)

    def test_describes_the_newest_version_only(self):
        """Older files open all the same; they are lifted, and are of this version once saved."""
        files = {load(path)["version"]: path for path in (SOURCE / "tests/data").glob("version*.bridgecal")}
        newest = SCHEMA["properties"]["version"]["const"]
        self.assertEqual(sorted(files), list(range(1, newest + 1)))
        self.accepts(files.pop(newest))
        for path in files.values():
            with self.subTest(path=path.name):
                self.assertFalse(VALIDATOR.is_valid(load(path)))
                run = subprocess.run([PROGRAM, "predict", path], capture_output=True, text=True, timeout=60)
                self.assertIn(run.returncode, (0, 1), run.stderr)

    def test_refuses_damaged_values(self):
        document = load(DOCUMENT)
        setup = ("channels", 0, "setup")
        statements = setup + ("uncertainties",)
        hookup = setup + ("bridge", "hookup")
        self.assertEqual([at(document, statements + (k,))["of"] for k in (0, 2, 3, 11)],
                         ["arm", "lead", "lead_temperature", "rounding"])
        recording = ("channels", 0, "checks", 0, "recording")
        for way, value in (
            (("format",), "other"),
            (("version",), 1),
            (("version",), 2),
            (("version",), 3),
            (("version",), 4),
            (("version",), 5),
            (("version",), 6),
            (("version",), 8),
            (("fingerprint",), "9480a8"),
            (("sign_off", 0, "stage"), "signed"),
            (("sign_off", 0, "time"), "2024-05-06"),
            (("sign_off", 0, "time"), "2024-05-06T24:00:00Z"),
            (("sign_off", 0, "fingerprint"), ""),
            (("sign_off",), [None]),
            (("history", 0, "chain"), "0"),
            (("history", 0, "changes"), ["x"] * 101),
            (("history", 1, "more"), -1),
            (("channels", 0, "checks", 0, "remarks", 0, "step"), 0),
            (("channels", 0, "checks", 0, "remarks", 0, "settled"), "yes"),
            (("channels", 0, "checks", 0, "ambient", "humidity"), None),
            (setup + ("identity", "due"), ""),
            (setup + ("limits", "change"), None),
            (("stock", "resistors", 0, "certificate", "number"), 17),
            (setup + ("bridge", "type"), "quarter"),
            (setup + ("bridge", "arms_ohm"), [350, 350, 350]),
            (setup + ("bridge", "leads", "P+"), {"ohm": 1, "length_m": 1}),
            (setup + ("instrument", "unit"), "furlong"),
            (setup + ("shunts", 0, "from"), "arm 5 begin"),
            (setup + ("sequence", 1, "closed"), ["R1 on arm 1", "R1 on arm 1"]),
            (setup + ("bridge", "gauge", "grid", "heat_sink"), "middling"),
            (setup + ("bridge", "gauge", "grid", "demand"), "high"),
            (setup + ("bridge", "leaks"), [None, None, None]),
            (setup + ("bridge", "leaks", 0), {"across_ohm": 1e6}),
            (hookup + ("signal_reversed",), "yes"),
            (hookup + ("broken",), ["sense"]),
            (hookup + ("broken",), ["P+", "P+"]),
            (hookup + ("exchanged", 0), ["P+"]),
            (hookup + ("exchanged", 0), ["P+", "P+"]),
            (hookup + ("exchanged", 0), ["P+", "S-", "S+"]),
            (hookup + ("exchanged",), [["P+", "S-"]] * 101),
            (hookup + ("touching",), [["P+", "S-"], ["P+", "S-"]]),
            (setup + ("instrument", "linearisation"), "before"),
            (setup + ("instrument", "balance", "kind"), "beside"),
            (setup + ("instrument", "grounding"), "S-"),
            (setup + ("instrument", "current_source"), None),
            (setup + ("decision", "rule"), "guarding"),
            (setup + ("limits", "linearity_from"), "best_fit"),
            (setup + ("limits", "merits"), None),
            (setup + ("limits", "merits", "zero_return"), 0.005),
            (setup + ("limits", "merits", "linearity"), 0.005),
            (setup + ("limits", "merits", "hysteresis"), None),
            (statements + (0, "of"), "arms"),
            (statements + (0, "at"), "5"),
            (statements + (2, "at"), "R"),
            (statements + (3, "at"), "P+"),
            (statements + (11, "at"), "end"),
            (statements + (0, "statement"), "guess"),
            (statements + (0, "distribution"), "square"),
            (("stock", "resistors", 0, "due"), "31.03.2027"),
            (("stock", "resistors", 0, "id"), ""),
            (("stock", "boxes", 0, "decades"), []),
            (("stock", "boxes", 0, "decades", 0, "positions"), 1.5),
            (("stock", "series", 0, "series"), "E95"),
            (setup + ("acquisition", "filter", "kind"), "brick_wall"),
            (setup + ("acquisition", "filter", "order"), -1),
            (setup + ("acquisition", "mains_Hz"), None),
            (setup + ("pins", 0, "resistor"), "AF-0101"),
            (setup + ("pins", 1, "end"), 1),
            (setup + ("pins", 2, "end"), 3),
            (setup + ("shunts", 0, "jumpers", 0, "to"), "J1-A"),
            (setup + ("shunts", 0, "part", "due"), "soon"),
            (("channels", 0, "ohm_readings", 0, "from"), "arm 1"),
            (("channels", 0, "ohm_readings", 0, "jumpers"), 21),
            (("channels", 0, "ohm_readings", 0, "ohm"), "open"),
            (recording + ("sha256",), "E3B0"),
            (recording + ("size_bytes",), -1),
            (recording + ("size_bytes",), 2**64),
        ):
            with self.subTest(way=way, value=value):
                damaged = copy.deepcopy(document)
                at(damaged, way[:-1])[way[-1]] = value
                self.assertFalse(VALIDATOR.is_valid(damaged))

    def test_is_as_strict_as_the_program(self):
        """Each key removed, added or turned into another kind: both refuse, or neither does."""
        document = load(DOCUMENT)
        refused = 0
        taken = 0
        with tempfile.TemporaryDirectory() as folder:
            path = pathlib.Path(folder) / "mutant.bridgecal"
            for name, mutant in mutants(document):
                path.write_text(json.dumps(mutant), "utf-8")
                run = subprocess.run([PROGRAM, "predict", path], capture_output=True, text=True, timeout=60)
                with self.subTest(mutant=name):
                    valid = VALIDATOR.is_valid(mutant)
                    self.assertIn(run.returncode, (0, 1, 2), run.stderr)
                    self.assertEqual(run.returncode != 2, valid, run.stderr)
                    refused += not valid
                    taken += valid
        self.assertGreater(refused, 400)
        self.assertGreater(taken, 10)  # keys that may be left out


if __name__ == "__main__":
    unittest.main(argv=sys.argv[:1], verbosity=2)
