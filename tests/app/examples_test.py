# SPDX-License-Identifier: GPL-3.0-or-later
"""The generator of the examples: reproducible, and an independent solution of the same networks.

Called as examples_test.py PROGRAM SOURCE_FOLDER.
"""
import importlib.util
import json
import os
import subprocess
import sys
import tempfile
import unittest

PROGRAM, SOURCE = os.path.abspath(sys.argv[1]), os.path.abspath(sys.argv[2])
EXAMPLES = os.path.join(SOURCE, "examples")


def generator():
    spec = importlib.util.spec_from_file_location("make_examples", os.path.join(EXAMPLES, "make_examples.py"))
    module = importlib.util.module_from_spec(spec)
    sys.modules["make_examples"] = module
    sys.dont_write_bytecode = True
    spec.loader.exec_module(module)
    return module


MADE = generator()


def read(folder, name):
    with open(os.path.join(folder, name), "rb") as file:
        return file.read()


class Generator(unittest.TestCase):
    def test_makes_the_files_in_the_folder_byte_for_byte(self):
        with tempfile.TemporaryDirectory() as folder:
            subprocess.run(["/usr/bin/python3", os.path.join(EXAMPLES, "make_examples.py"), "--out", folder,
                            "--program", PROGRAM], check=True, timeout=120)
            names = sorted(os.listdir(folder))
            self.assertEqual(names, ["demo.bridgecal", "load_cell.bridgecal", "plan.bridgecal",
                                     "post_test.csv", "pre_test.csv", "quarter_bridge.bridgecal"])
            for name in names:
                with self.subTest(name):
                    self.assertEqual(read(folder, name), read(EXAMPLES, name))

    def test_marks_every_file_as_invented(self):
        for name in os.listdir(EXAMPLES):
            if name.endswith((".bridgecal", ".csv")):
                self.assertIn(b"INVENTED DATA", read(EXAMPLES, name), name)


class Prediction(unittest.TestCase):
    """Independent: the generator's nodal analysis by pivoted elimination in Python floats, against the
    program's star-mesh elimination. Tolerance: outputs are about 1e-3 V/V out of potentials near 1/2,
    each right to about 1e-15 after elimination, so that changes agree to some 1e-12 of themselves;
    1e-10 leaves room for both."""

    def check_document(self, name, channels):
        done = subprocess.run([PROGRAM, "predict", os.path.join(EXAMPLES, name), "--json"],
                              capture_output=True, check=True, timeout=60)
        predicted = json.loads(done.stdout)["channels"]
        self.assertEqual([c["channel"] for c in predicted], [c.name for c in channels])
        for channel, said in zip(channels, predicted):
            zero = MADE.output(channel)
            steps = MADE.steps(channel)
            self.assertEqual(len(said["steps"]), len(steps))
            for (label, closed), step in zip(steps, said["steps"]):
                with self.subTest(channel=channel.name, step=step["step"]):
                    change = MADE.output(channel, closed) - zero
                    self.assertEqual(step["label"], label)
                    self.assertEqual(step["closed"], [s.name for s in closed])
                    self.assertAlmostEqual(step["output_mV_per_V"], change * 1e3, delta=1e-10 * abs(change * 1e3))
                    expected = MADE.reading(channel, change)
                    self.assertAlmostEqual(step["reading"], expected, delta=1e-10 * abs(expected))
                    word = {"+": "positive", "-": "negative", "z": "none"}[label[0]]
                    self.assertEqual(step["polarity"], word)

    def test_agrees_with_the_generator_on_the_whole_plan(self):
        self.check_document("plan.bridgecal", MADE.CHANNELS)

    def test_agrees_with_the_generator_on_the_smallest_plan(self):
        self.check_document("quarter_bridge.bridgecal", [MADE.smallest()])

    def test_smallest_plan_simulates_what_its_readme_derives(self):
        # Derived: 350 / (350 + 174650) = 1/500 of the resistance, by gauge factor 2: -1000 um/m.
        done = subprocess.run([PROGRAM, "predict", os.path.join(EXAMPLES, "quarter_bridge.bridgecal"), "--json"],
                              capture_output=True, check=True, timeout=60)
        step = json.loads(done.stdout)["channels"][0]["steps"][1]
        self.assertAlmostEqual(step["simulated_strain_um_per_m"], -1000, delta=1e-8)
        self.assertAlmostEqual(step["output_mV_per_V"], -1000 / 1998, delta=1e-12)


if __name__ == "__main__":
    unittest.main(argv=sys.argv[:1], verbosity=2)
