# SPDX-License-Identifier: GPL-3.0-or-later
"""The manual calls things what the program calls them: whoever looks for its words must find them in the window.

Called as manual_words_test.py PROGRAM SOURCE_FOLDER.
"""
import json
import os
import pathlib
import re
import subprocess
import sys
import tempfile
import unittest
import xml.etree.ElementTree

PROGRAM, SOURCE = os.path.abspath(sys.argv[1]), pathlib.Path(sys.argv[2]).resolve()
MANUAL = SOURCE / "resources/manual"
PLAN = SOURCE / "examples/plan.bridgecal"
SCHEMA = json.loads((SOURCE / "resources/bridgecal.schema.json").read_text(encoding="utf-8"))


def said(*words):
    return subprocess.run([PROGRAM, *map(str, words)], check=True, capture_output=True, encoding="utf-8",
                          timeout=120, stdin=subprocess.DEVNULL).stdout


def template_names():
    """What the program calls each template that a file can hold: a channel of each is made and predicted."""
    types = SCHEMA["$defs"]["bridge"]["properties"]["type"]["enum"]
    with tempfile.TemporaryDirectory() as folder:
        channels, document = pathlib.Path(folder, "list.csv"), pathlib.Path(folder, "all.bridgecal")
        channels.write_text("name,template\n" + "".join(f"new {t},{t}\n" for t in types), encoding="utf-8")
        said("channels", PLAN, "--import", channels, "--like", "TP-01", "--save", document)
        predicted = said("predict", document)
    names = re.findall(r"^new (\w+): (.+)$", predicted, re.M)
    assert [t for t, _ in names] == types, predicted
    return [name for _, name in names]


def translations(language):
    """English to that language, of the sentences that core says."""
    file = SOURCE / f"resources/translations/shuntwright_{language}.ts"
    for context in xml.etree.ElementTree.parse(file).getroot().iter("context"):
        if context.findtext("name") == "core":
            return {m.findtext("source"): m.findtext("translation") for m in context.iter("message")}
    raise AssertionError(f"{file} has no context core")


def table_below(page, anchor):
    """The rows of the first table of a section, without its heading."""
    section = page.split("{#" + anchor + "}")[1].split("\n## ")[0]
    lines = re.search(r"(?:^\|.*\n)+", section, re.M).group().splitlines()
    return [re.split(r"\s*\|\s*", line.strip("| ")) for line in lines[2:]]


def pages(name):
    for folder in sorted(MANUAL.iterdir()):
        if (folder / name).exists():
            yield folder.name, (folder / name).read_text(encoding="utf-8")


class ManualWords(unittest.TestCase):
    def test_bridge_templates_are_called_as_in_the_list(self):
        english = template_names()
        seen = []
        for language, page in pages("setup.md"):
            words = {name: name for name in english} if language == "en" else translations(language)
            with self.subTest(language):
                self.assertCountEqual([row[0] for row in table_below(page, "bridge")],
                                      [words[name] for name in english])
            seen.append(language)
        self.assertIn("en", seen)

    def test_nodes_of_the_worked_example_can_be_typed(self):
        # The list of the cell offers the names of the file, in every language.
        nodes = SCHEMA["$defs"]["node"]["enum"]
        for language, page in pages("worked-example.md"):
            rows = table_below(page, "shunts")
            self.assertEqual(len(rows), 4)
            for row in rows:
                for word in row[2:4]:
                    with self.subTest(f"{language}: {row[0]}"):
                        self.assertIn(word.strip("`"), nodes)


if __name__ == "__main__":
    unittest.main(argv=sys.argv[:1])
