# SPDX-License-Identifier: GPL-3.0-or-later
"""What is remembered for the user (preferences, recent documents, own patterns, practice score): damaged, not
to be read, on a full disk. The program starts all the same, and what was remembered is not lost."""

import os
import resource
import shutil
import subprocess

from row import Row
from saving_tools import Count, Window, as_nobody, documents, environment, fresh

FILES = ["state.ini", "places.ini", "practice.ini"]
DAMAGES = {
    "empty": b"", "zeros": b"\0" * 5000, "noise": bytes(range(256)) * 40,
    "no end": b"[General]\nrecent=\"\\x",
    "wrong types": b"[General]\nrecent=@Variant(\\0\\0\\0\\t\\xff\\xff\\xff\\xff)\nlanguage=@Invalid()\n"
                   b"textSize=x\norder=@ByteArray(\\0)\nlast=@Rect(1 2)\n\n[window]\nrect=@Rect(a b c d)\n"
                   b"maximized=@Size(1)\n",
    "long line": b"[General]\nrecent=" + b"x" * 3_000_000,
}


def starts(bench, home, words):
    """Whether the window comes, opens a document and saves it."""
    document = documents(bench, fresh(bench.scratch / "documents"))[1]
    document.parent.chmod(0o777)
    document.chmod(0o666)
    with Window(bench, home, **words) as window:
        opened = window(f"open {document}")["done"]
        window("edit Sandpiper")
        return opened and window("save")["done"] and b"Sandpiper" in document.read_bytes()


def homes(bench):
    """(what, home folder, words for the process)"""
    bench.scratch.chmod(0o755)

    def home():
        folder = fresh(bench.scratch / "home")
        (folder / "state" / "shuntwright").mkdir(parents=True)
        return folder, folder / "state" / "shuntwright"

    for what, data in DAMAGES.items():
        folder, state = home()
        for name in FILES:
            (state / name).write_bytes(data)
        yield what, folder, {}
    folder, state = home()
    for name in FILES:
        (state / name).mkdir()
    yield "a folder in its place", folder, {}
    folder, state = home()
    for name in FILES:
        os.mkfifo(state / name)
    yield "a pipe in its place", folder, {}
    folder, state = home()
    shutil.rmtree(folder / "state")
    (folder / "state").write_bytes(b"")
    yield "the state folder is a file", folder, {}
    folder, state = home()
    for name in FILES:
        (state / name).write_bytes(b"[General]\n")
        (state / name).chmod(0)
    yield "no right to read", folder, as_nobody()
    folder, state = home()
    state.chmod(0o500)
    yield "no right to write", folder, as_nobody()
    folder, state = home()
    yield "hardly any room", folder, {
        "preexec_fn": lambda: resource.setrlimit(resource.RLIMIT_FSIZE, (20_000, 20_000))}


def damaged(bench):
    count = Count()
    for what, folder, words in homes(bench):
        try:
            wrong = "" if starts(bench, folder, words) else "not opened or not saved"
        except (EOFError, AssertionError) as error:
            wrong = str(error)
        count.add(what, wrong)
        for path in (folder / "state" / "shuntwright", folder):
            if path.is_dir():
                path.chmod(0o755)
        if not bench.long and len(count.good + count.bad) >= 3:
            break
    return count.row("state file damaged or unreadable", "the window starts, opens and saves")


def remembered(bench, home, value, limit=None):
    words = {"preexec_fn": lambda: resource.setrlimit(resource.RLIMIT_FSIZE, (limit, limit))} if limit else {}
    return subprocess.run([bench.driver("saving_ui_driver"), "state", value], capture_output=True, text=True,
                          env=environment(home), **words).stdout.splitlines()


def full(bench):
    """A limit on file sizes fails at the same calls as a full disk. A small file waits in a buffer."""
    home = fresh(bench.scratch / "home")
    remembered(bench, home, "kept " + "x" * 2000)
    file = home / "state" / "shuntwright" / "state.ini"
    before = file.read_bytes()
    lost = []
    for size in (3000, 30_000):
        told = remembered(bench, home, "y" * size, limit=1024)
        if file.read_bytes() != before:
            lost.append(f"{size} bytes: {file.stat().st_size} left of {len(before)}, told \"{told[0]}\"")
    beside = sorted(one.name for one in file.parent.iterdir() if one != file)
    fine = not lost and not beside and remembered(bench, home, "again")[1] == "read again"
    measured = f"{len(lost)} of 2 lost what was remembered, {len(beside)} files left beside"
    return Row("state file on a full disk", "; ".join([measured, *lost]), "0 lost, 0 left", fine)


def rows(bench):
    yield damaged(bench)
    yield full(bench)
