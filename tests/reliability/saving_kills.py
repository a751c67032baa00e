# SPDX-License-Identifier: GPL-3.0-or-later
"""kill -9 at any moment of a save loop, and what a long row of saves leaves behind."""

import hashlib
import os
import random
import shutil
import subprocess
import time

from row import Row
from saving_tools import documents, environment, fresh

QUICK, LONG = 40, 1000
LONGEST_S = 0.03  # of some ten saves


def hash_of(file, mode):
    """Of the document's bytes; a recovery copy has one line before them."""
    data = file.read_bytes()
    return hashlib.sha256(data.split(b"\n", 1)[1] if mode == "keep" else data).hexdigest()


def killed_once(command, environ, chance):
    """Lets it save for a moment; the hashes that it told as saved last, and as begun last."""
    with subprocess.Popen([*map(str, command)], stdout=subprocess.PIPE, text=True, env=environ) as loop:
        saved = begun = None
        lines = iter(loop.stdout.readline, "")
        for line in lines:
            word, _, code = line.split()
            saved, begun = (code, begun) if word == "saved" else (saved, code)
            if word == "saved":
                break
        time.sleep(chance.uniform(0, LONGEST_S))
        loop.kill()
        for line in lines:
            if not line.endswith("\n"):
                break  # told in part
            word, _, code = line.split()
            saved, begun = (code, begun) if word == "saved" else (saved, code)
    return saved, begun


def random_kills(bench, mode, file_name):
    """`mode` of the driver: loop (a document) or keep (a recovery copy)."""
    folder = fresh(bench.scratch / "kills")
    old, new = documents(bench, folder)
    target = fresh(folder / "disk") / file_name
    if mode == "loop":
        shutil.copyfile(old, target)
    chance, count = random.Random(10), (LONG if bench.long else QUICK) // 2
    lost, between = [], 0
    for number in range(count):
        command = [bench.driver("saving_ui_driver"), mode, new, target]
        saved, begun = killed_once(command, environment(folder), chance)
        now = hash_of(target, mode) if target.exists() else "no file"
        between += now == begun != saved
        if saved is None or now not in (saved, begun):
            lost.append(number)
    beside = [one.name for one in target.parent.iterdir() if one != target and not one.name.endswith(".lock")]
    return count, lost, between, beside


def kills(bench):
    count, lost, between, beside = (0, [], 0, [])
    for mode, name in (("loop", "tail.bridgecal"), ("keep", "tail.recovery")):
        found = random_kills(bench, mode, name)
        count, lost, between, beside = (a + b for a, b in zip((count, lost, between, beside), found))
    listed = [name for name in beside if name.endswith((".bridgecal", ".recovery"))]
    return Row("kill -9 at random in a save loop, of documents and of recovery copies",
               f"{count} kills ({between} of them after the renaming and before it was told): {len(lost)} "
               f"lost; {len(beside)} temporary files left, {len(listed)} of them by a name that is listed",
               "0 lost, 0 listed", not lost and not listed and count > 0)


def loop_leaves_nothing(bench):
    """Without kills nothing may gather, neither files nor open ones."""
    folder = fresh(bench.scratch / "loop")
    _, new = documents(bench, folder)
    target = fresh(folder / "disk") / "tail.bridgecal"
    count = 2000 if bench.long else 100
    with subprocess.Popen([bench.driver("saving_ui_driver"), "loop", new, target], stdout=subprocess.PIPE,
                          text=True, env=environment(folder)) as loop:
        open_files = []
        for line in iter(loop.stdout.readline, ""):
            word, number, _ = line.split()
            if word == "saved" and int(number) in (1, count):
                open_files.append(len(os.listdir(f"/proc/{loop.pid}/fd")))
            if len(open_files) == 2:
                break
        beside = [one.name for one in target.parent.iterdir() if one != target]
        loop.kill()
    # One is being written at that moment, and has no name before it is whole.
    return Row("saving in a loop", f"{count} saves: {len(beside)} temporary files, {open_files[0]} open "
               f"files at the first and {open_files[-1]} at the last", "at most 1 file, at most 1 more open",
               len(beside) <= 1 and open_files[-1] <= open_files[0] + 1 and len(open_files) == 2)


def rows(bench):
    yield kills(bench)
    yield loop_leaves_nothing(bench)
