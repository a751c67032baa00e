#!/usr/bin/python3
# SPDX-License-Identifier: GPL-3.0-or-later
"""Work outlives the program: a window is killed after an edit, and the next one gets the work back.

The program runs on a virtual screen with a session bus and an accessibility bus of its own, and its buttons are
pressed through AT-SPI, as an assistive tool presses them. Called as recovery_test.py PROGRAM SOURCE_FOLDER.
"""
import json
import os
import pathlib
import shutil
import signal
import subprocess
import sys
import tempfile
import time
import unittest

from own_screen import accessibility_bus, move_in, program_of, wait_for

from gi.repository import Atspi

PROGRAM = pathlib.Path(sys.argv[1]).resolve()


class Window:
    """The program with one window, seen through the accessibility bus."""

    def __init__(self, state, *words):
        self.process = subprocess.Popen([PROGRAM, *map(str, words)], stderr=subprocess.DEVNULL,
                                        env={**os.environ, "XDG_STATE_HOME": str(state)})
        self.frame = wait_for("the window", self.find_frame)

    def find_frame(self):
        program = program_of(self.process)
        frame = program.get_child_at_index(0) if program else None
        return frame if frame and frame.get_state_set().contains(Atspi.StateType.SHOWING) else None

    def find(self, role, name, item=None, shown=False):
        item = item or self.frame
        for index in range(item.get_child_count()):
            child = item.get_child_at_index(index)
            if child is None or shown and not child.get_state_set().contains(Atspi.StateType.SHOWING):
                continue
            if child.get_role_name() == role and child.get_name().startswith(name):
                return child
            if child.get_role_name() not in ("table", "list", "tree") and (
                    found := self.find(role, name, child, shown)):
                return found
        return None

    def is_shown(self, role, name):
        return self.find(role, name, shown=True)

    def press(self, role, name):
        button = wait_for(f"{role} {name}", lambda: self.is_shown(role, name))
        Atspi.Action.do_action(button, 0)

    def add_channel(self):
        Atspi.Action.do_action(wait_for("the menu", lambda: self.find("menu item", "Add channel")), 0)

    def save(self):
        item = self.find("menu item", "Save")
        Atspi.Action.do_action(item, 0)

    def title(self):
        return self.frame.get_name()

    def kill(self):
        self.process.send_signal(signal.SIGKILL)
        self.process.wait()

    def used_s(self):
        fields = pathlib.Path(f"/proc/{self.process.pid}/stat").read_text().rsplit(")", 1)[1].split()
        return (int(fields[11]) + int(fields[12])) / os.sysconf("SC_CLK_TCK")


def channels_in(file):
    return [channel["name"] for channel in json.loads(file.read_text(encoding="utf-8"))["channels"]]


class RecoveryTest(unittest.TestCase):
    @classmethod
    def setUpClass(cls):
        cls.bus = accessibility_bus()

    def setUp(self):
        self.folder = tempfile.TemporaryDirectory()
        self.addCleanup(self.folder.cleanup)
        self.state = pathlib.Path(self.folder.name) / "state"
        (self.state / "shuntwright").mkdir(parents=True)
        # The tour is offered at the first start alone; here nobody starts for the first time.
        (self.state / "shuntwright" / "state.ini").write_text("[General]\ntourSeen=true\n")
        self.file = pathlib.Path(self.folder.name) / "tail.bridgecal"
        shutil.copyfile(pathlib.Path(sys.argv[2]) / "examples" / "quarter_bridge.bridgecal", self.file)
        self.before = self.file.read_bytes()
        self.windows = []

    def tearDown(self):
        for window in self.windows:
            if window.process.poll() is None:
                window.kill()

    def open(self, *words):
        self.windows.append(Window(self.state, *words))
        return self.windows[-1]

    def kept(self):
        return list((self.state / "shuntwright" / "recovery").glob("*.recovery"))

    def crash_after_an_edit(self, *words):
        window = self.open(*words)
        window.add_channel()
        since = time.monotonic()
        wait_for("the copy", self.kept)
        self.assertLess(time.monotonic() - since, 5)
        window.kill()
        return window

    def test_work_of_a_killed_window_comes_back_and_the_file_is_untouched_until_saved(self):
        names = channels_in(self.file)
        self.crash_after_an_edit(self.file)
        self.assertEqual(self.file.read_bytes(), self.before)
        self.assertEqual(oct(self.kept()[0].stat().st_mode & 0o777), "0o600")
        window = self.open(self.file)
        window.press("push button", "Recover: tail.bridgecal")
        wait_for("the mark of unsaved work", lambda: "*" in window.title())
        self.assertEqual(self.file.read_bytes(), self.before)
        window.save()
        wait_for("the saving", lambda: self.file.read_bytes() != self.before)
        self.assertEqual(channels_in(self.file)[:-1], names)
        self.assertEqual(len(channels_in(self.file)), len(names) + 1)
        wait_for("the copy to go", lambda: not self.kept())

    def test_the_lock_of_a_killed_window_does_not_stand_in_the_way(self):
        self.crash_after_an_edit(self.file)
        self.assertTrue((self.file.parent / ".tail.bridgecal.lock").exists())
        window = self.open(self.file)
        wait_for("the document", lambda: "tail.bridgecal" in window.title())
        self.assertNotIn("read-only", window.title())

    def test_untitled_work_comes_back(self):
        self.crash_after_an_edit()
        window = self.open()
        window.press("push button", "Recover: Untitled document")
        wait_for("the mark of unsaved work", lambda: "*" in window.title())

    def test_work_of_a_living_window_is_not_offered_to_another(self):
        first = self.open(self.file)
        first.add_channel()
        wait_for("the copy", self.kept)
        second = self.open()
        time.sleep(1.5)
        self.assertIsNone(second.is_shown("push button", "Recover"))
        first.kill()

    def test_killed_at_any_moment_file_and_copy_are_whole(self):
        for delay_s in (1.9, 2.0, 2.05, 2.1, 2.2):
            window = self.open(self.file)
            window.add_channel()
            time.sleep(delay_s)
            window.kill()
            self.assertEqual(self.file.read_bytes(), self.before)
        for copy in self.kept():
            head, body = copy.read_bytes().split(b"\n", 1)
            self.assertEqual(json.loads(head)["format"], "shuntwright-recovery")
            json.loads(body)

    def test_an_open_document_with_unsaved_work_costs_nothing_while_idle(self):
        window = self.open(self.file)
        window.add_channel()
        wait_for("the copy", self.kept)
        time.sleep(3)
        before = window.used_s()
        time.sleep(5)
        # One tick of the clock (10 ms) for what the system itself may count against it.
        self.assertLessEqual(window.used_s() - before, 0.011)


if __name__ == "__main__":
    move_in()
    unittest.main(argv=sys.argv[:1] + sys.argv[3:])
