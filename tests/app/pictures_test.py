# SPDX-License-Identifier: GPL-3.0-or-later
"""The pictures of README, manual and metainfo show the program as it is now.

Called as pictures_test.py PROGRAM SOURCE_FOLDER.
"""
import glob
import os
import re
import subprocess
import sys
import tempfile
import unittest

import numpy
from PIL import Image

PROGRAM, SOURCE = os.path.abspath(sys.argv[1]), os.path.abspath(sys.argv[2])
PICTURES = os.path.join(SOURCE, "resources", "pictures")

# Drawn anew the pictures are the same to the last bit on one machine. Another processor may round the smooth edges of
# letters and lines otherwise, by a few of 256 levels; a digit that differs is 20 pixels and more of full contrast.
LEVELS = 24
SHARE = 15 / (1280 * 800)


def pixels(path):
    with Image.open(path) as picture:
        return numpy.asarray(picture.convert("RGB")).astype(int)


def differing(one, other):
    """Share of pixels that differ by more than rounding; 1 where the sizes do."""
    if one.shape != other.shape:
        return 1.0
    return float((numpy.abs(one - other).max(axis=2) > LEVELS).mean())


class Pictures(unittest.TestCase):
    def test_show_the_program_as_it_is(self):
        with tempfile.TemporaryDirectory() as folder:
            subprocess.run(["bash", os.path.join(SOURCE, "resources", "make-pictures"), PROGRAM, folder], check=True,
                           timeout=300)
            drawn = sorted(os.listdir(folder))
            self.assertEqual(drawn, sorted(os.listdir(PICTURES)), "mended by: bash resources/make-pictures")
            stale = []
            for name in drawn:
                share = differing(pixels(os.path.join(folder, name)), pixels(os.path.join(PICTURES, name)))
                if share > SHARE:
                    stale.append(f"{name} ({share:.2%} of it)")
        self.assertEqual(stale, [], "stale pictures; mended by: bash resources/make-pictures PROGRAM")

    def test_a_single_letter_that_differs_is_seen(self):
        """Of the comparison itself: a patch as large as a thin letter is found in a picture."""
        picture = pixels(os.path.join(PICTURES, "window-light.png"))
        changed = picture.copy()
        changed[400:410, 600:602] = 255 - changed[400:410, 600:602]
        self.assertGreater(differing(picture, changed), SHARE)
        self.assertEqual(differing(picture, picture), 0)

    def test_every_picture_that_is_named_is_there(self):
        texts = glob.glob(os.path.join(SOURCE, "resources", "manual", "*", "*.md"))
        for path in [os.path.join(SOURCE, "README.md"), *texts]:
            with open(path, encoding="utf-8") as file:
                for name in re.findall(r"\(([\w/-]+\.png)\)", file.read()):
                    self.assertTrue(os.path.exists(os.path.join(PICTURES, os.path.basename(name))), f"{path}: {name}")


if __name__ == "__main__":
    unittest.main(argv=sys.argv[:1])
