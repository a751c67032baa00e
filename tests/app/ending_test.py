# SPDX-License-Identifier: GPL-3.0-or-later
"""The window's program told to end by a signal: it ends orderly, and leaves no lock behind.

Called as ending_test.py PROGRAM SOURCE_FOLDER. What becomes of unsaved work is tested beside the window's own tests.
"""
import os
import pathlib
import shutil
import signal
import subprocess
import sys
import tempfile
import time
import unittest

PROGRAM, SOURCE = pathlib.Path(sys.argv[1]).resolve(), pathlib.Path(sys.argv[2])
PATIENCE_S = 60


class EndingTest(unittest.TestCase):
    def setUp(self):
        holder = tempfile.TemporaryDirectory()
        self.addCleanup(holder.cleanup)
        self.folder = pathlib.Path(holder.name)
        self.work = self.folder / "work"
        self.work.mkdir()
        self.document = self.work / "plan.bridgecal"
        shutil.copy(SOURCE / "examples/plan.bridgecal", self.document)

    def beside(self):
        """What lies beside the document: its lock."""
        return [path.name for path in self.work.iterdir() if path != self.document]

    def opened(self, **more):
        state = str(self.folder)
        program = subprocess.Popen([PROGRAM, self.document], stderr=subprocess.DEVNULL, stdin=subprocess.DEVNULL,
                                   env={**os.environ, "QT_QPA_PLATFORM": "offscreen", "HOME": state,
                                        "XDG_STATE_HOME": state, "XDG_CONFIG_HOME": state, "XDG_DATA_HOME": state},
                                   **more)
        self.addCleanup(program.wait)
        self.addCleanup(program.kill)
        until = time.monotonic() + PATIENCE_S
        while not self.beside():
            self.assertLess(time.monotonic(), until, "no lock was taken")
            self.assertIsNone(program.poll())
            time.sleep(0.05)
        return program

    def test_each_signal_ends_it_and_the_lock_goes(self):
        for number in (signal.SIGTERM, signal.SIGINT, signal.SIGHUP):
            with self.subTest(signal=number.name):
                program = self.opened()
                program.send_signal(number)
                self.assertEqual(program.wait(PATIENCE_S), 128 + number)
                self.assertEqual(self.beside(), [])

    def test_an_ignored_signal_stays_ignored(self):
        program = self.opened(preexec_fn=lambda: signal.signal(signal.SIGHUP, signal.SIG_IGN))
        program.send_signal(signal.SIGHUP)
        with self.assertRaises(subprocess.TimeoutExpired):
            program.wait(1)
        program.send_signal(signal.SIGTERM)
        self.assertEqual(program.wait(PATIENCE_S), 128 + signal.SIGTERM)


if __name__ == "__main__":
    unittest.main(argv=sys.argv[:1], verbosity=2)
