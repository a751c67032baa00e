#!/usr/bin/python3
# SPDX-License-Identifier: GPL-3.0-or-later
"""Every sentence has its translation, with the same placeholders, and menus can be worked by letter."""
import collections
import importlib.machinery
import importlib.util
import pathlib
import re
import subprocess
import sys
import unittest

ROOT = pathlib.Path(sys.argv[2])
COLLECT = ROOT / "resources/translations/collect"


def collect():
    loader = importlib.machinery.SourceFileLoader("collect", str(COLLECT))
    sys.dont_write_bytecode = True
    module = importlib.util.module_from_spec(importlib.util.spec_from_loader("collect", loader))
    loader.exec_module(module)
    return module


class Translations(unittest.TestCase):
    def test_all_texts_are_translated_and_the_file_is_fresh(self):
        run = subprocess.run([COLLECT, "--check"], capture_output=True, text=True)
        self.assertEqual(run.returncode, 0, run.stdout[-6000:] + run.stderr)

    def test_trouble_is_found(self):
        trouble = collect().trouble
        key = ("core", "{1} of {2} steps", "")
        self.assertIsNone(trouble(key, False, ["{1} von {2} Schritten"]))
        self.assertIsNotNone(trouble(key, False, ["{1} Schritte"]))
        self.assertIsNotNone(trouble(("ui", "&Open…", ""), False, ["Öffnen…"]))
        self.assertIsNotNone(trouble(("ui", "&Open…", ""), False, ["Ö&ffnen"]))
        for piece in (" and ", ", six-wire", "Step ", "; no step fails"):
            self.assertIsNotNone(trouble(("core", piece, ""), False, [piece]), piece)
        counted = ("core", "Steps {1} have {n} levels.", "")
        self.assertIsNone(trouble(counted, True, ["Stufe {1} hat ein Plateau.", "Stufen {1} haben {n} Plateaus."]))
        self.assertIsNotNone(trouble(counted, True, ["Stufe {2} hat ein Plateau.", "Stufen {1} haben {n} Plateaus."]))

    def test_a_check_is_closed_by_one_word_and_a_switch_by_another(self):
        words = {"a check": (r"\b[Cc]losed check|\bcheck .*\bis closed\b|^%1 \(closed\)$", r"(?<!\w)[Aa]bgeschl(ossen|\.)"),
                 "a shunt": (r"^Shunt %1\b.*\bclosed\b", r"(?<!\w)geschlossen"),
                 "a group of the form": (r"^closed$", r"^zugeklappt$")}
        known = {key: said[0] for key, said in collect().read_translations().items() if key[0].startswith("ui")}
        for what, (english, german) in words.items():
            found = {key[1]: said for key, said in known.items() if re.search(english, key[1])}
            self.assertTrue(found, what)
            for text, said in found.items():
                with self.subTest(what, text=text):
                    self.assertRegex(said, german)

    def test_counts_are_found_with_both_forms(self):
        found = list(collect().core_counts('x = sayCount(f(a, b), "One {1}.",\n "Many " "{n} {1}.", {y});'))
        self.assertEqual(found, [("One {1}.", "Many {n} {1}.", 1)])

    def test_plural_forms_are_those_of_the_language(self):
        # Unicode CLDR, language plural rules, from memory: the same for one and many in Japanese, two forms in German
        # and English, three in Polish.
        self.assertEqual([collect().plural_forms(code) for code in ("ja", "de", "en", "pl")], [1, 2, 2, 3])

    def test_adjacent_literals_are_one_text(self):
        found = [text for text, _ in collect().core_texts('say("One \\"a\\" {1} "\n  "two.", {x}) + sayLater("b")')]
        self.assertEqual(found, ['One "a" {1} two.', "b"])

    def test_letters_of_each_menu_differ(self):
        module = collect()
        known = module.read_translations()
        source = (ROOT / "ui/main_window_menus.cpp").read_text()
        menus = re.split(r"\nvoid MainWindow::(?=build\w+Menu)", source)[1:]
        self.assertGreater(len(menus), 8)
        bar = []
        for menu in menus:
            body = menu.split("\n}\n")[0]
            texts = re.findall(r"\btr\(\"((?:[^\"\\]|\\.)*&(?:[^\"\\]|\\.)*)\"", body)
            bar.append(texts.pop(0))
            self.assert_letters_differ(known, texts, menu.split("(")[0])
        self.assert_letters_differ(known, bar, "the menu bar")

    def assert_letters_differ(self, known, texts, where):
        german = [known.get(("ui::MainWindow", text, ""), known.get(("ui", text, ""), [""]))[0] for text in texts]
        letters = collections.Counter(re.findall(r"&(\w)", " ".join(german).lower()))
        twice = [letter for letter, count in letters.items() if count > 1]
        self.assertEqual(twice, [], f"{where}: {german}")


if __name__ == "__main__":
    unittest.main(argv=sys.argv[:1])
