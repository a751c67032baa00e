# SPDX-License-Identifier: GPL-3.0-or-later
"""What the checks of saving share: documents, the drivers, folders seen as a whole, other rights."""

import contextlib
import dataclasses
import json
import os
import pathlib
import select
import shutil
import subprocess
import time

from row import Row

NOBODY = 65534  # user and group without rights, where the campaign runs as root
PATIENCE_S = 60


def documents(bench, folder):
    """Two documents that differ, (old, new)."""
    old, new = folder / "old.bridgecal", folder / "new.bridgecal"
    shutil.copyfile(bench.source / "examples" / "plan.bridgecal", old)
    shutil.copyfile(bench.source / "examples" / "quarter_bridge.bridgecal", new)
    return old, new


def environment(folder):
    """A home and a state folder of their own, and no language of this machine."""
    return {**os.environ, "HOME": str(folder), "XDG_STATE_HOME": str(folder / "state"), "LC_ALL": "C.UTF-8",
            "XDG_RUNTIME_DIR": str(folder), "SOURCE_DATE_EPOCH": "1778486400"}


def seen(folder):
    """Every name in a folder with what is under it, so that any change shows; but for locks."""
    def what(entry):
        if entry.is_symlink():
            return "link to " + os.readlink(entry)
        if entry.is_dir():
            return "folder"
        return entry.read_bytes() if entry.is_file() else "special"
    return {entry.name: what(entry) for entry in sorted(folder.iterdir())
            if not entry.name.endswith(".lock")}


def as_nobody():
    """Words for subprocess: without rights of root."""
    return {"user": NOBODY, "group": NOBODY, "extra_groups": []} if os.geteuid() == 0 else {}


@dataclasses.dataclass
class Count:
    """What came of cases that each may go wrong."""

    good: list = dataclasses.field(default_factory=list)
    bad: list = dataclasses.field(default_factory=list)

    def add(self, what, wrong):
        """`wrong`: empty when it went as it should."""
        (self.bad.append(f"{what}: {wrong}") if wrong else self.good.append(what))

    def check(self, what, holds):
        self.add(what, "" if holds else "does not hold")

    def row(self, what, asked, also=""):
        measured = f"{len(self.good) + len(self.bad)} cases{also}, {len(self.bad)} wrong"
        return Row(what, measured + "".join(f"; {one}" for one in self.bad[:6]), asked,
                   bool(self.good) and not self.bad)


class Window:
    """The window of saving_window_ui_driver; closed, by force, at the end of its life."""

    def __init__(self, bench, folder, before=(), **words):
        self.process = subprocess.Popen([*map(str, before), bench.driver("saving_window_ui_driver")],
                                        stdin=subprocess.PIPE, stdout=subprocess.PIPE,
                                        stderr=subprocess.DEVNULL, env=environment(folder), **words)
        self.waiting = b""
        self.answer = self.listen()

    def listen(self, patience_s=PATIENCE_S):
        until = time.monotonic() + patience_s
        while b"\n" not in self.waiting:
            if not select.select([self.process.stdout], [], [], max(0.0, until - time.monotonic()))[0]:
                raise AssertionError("the window does not answer")
            piece = os.read(self.process.stdout.fileno(), 65536)
            if not piece:
                raise EOFError(f"the window has ended: {self.process.wait()}")
            self.waiting += piece
        line, self.waiting = self.waiting.split(b"\n", 1)
        self.answer = json.loads(line)
        return self.answer

    def __call__(self, line):
        self.process.stdin.write(line.encode() + b"\n")
        self.process.stdin.flush()
        return self.listen()

    def until(self, what, condition, patience_s=PATIENCE_S):
        """Asks until an answer is as it should be."""
        until = time.monotonic() + patience_s
        while not condition(self("state")):
            if time.monotonic() > until:
                raise AssertionError(f"waited in vain for {what}: {self.answer}")
            time.sleep(0.02)
        return self.answer

    def kill(self):
        if self.process.poll() is None:
            self.process.kill()
        self.process.wait()
        for pipe in (self.process.stdin, self.process.stdout):
            with contextlib.suppress(BrokenPipeError):
                pipe.close()

    def __enter__(self):
        return self

    def __exit__(self, *_):
        self.kill()


def tracing():
    """Empty when system calls can be traced here; else why not."""
    if not shutil.which("strace"):
        return "strace is missing: bash app/setup tests"
    probe = subprocess.run(["strace", "-qq", "-o", "/dev/null", "true"], capture_output=True, text=True)
    return probe.stderr.strip() if probe.returncode else ""


def fresh(folder):
    """An empty folder of that name."""
    shutil.rmtree(folder, ignore_errors=True)
    pathlib.Path(folder).mkdir(parents=True)
    return folder
