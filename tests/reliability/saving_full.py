# SPDX-License-Identifier: GPL-3.0-or-later
"""A disk that is full, or nearly: a file system in memory (tmpfs(5)) in a mount name space of its own.

Called by itself inside unshare(1): saving_full.py SOURCE BUILD SCRATCH long|quick; prints its rows as JSON.
"""

import dataclasses
import json
import os
import pathlib
import subprocess
import sys

import saving_exports
from row import Bench, Row
from saving_places import OLD, Place, complaint, opened, seen
from saving_tools import Count, Window, documents, environment, fresh

SIZE_KB = 256
FULL = Place("full disk", "the disk is full|No space left on device", None)
LEFT_KB = [0, 1, 4, 16]


def disk(bench):
    """A small empty disk."""
    folder = bench.scratch / "full"
    folder.mkdir(exist_ok=True)
    subprocess.run(["umount", "-l", folder], capture_output=True)
    subprocess.run(["mount", "-t", "tmpfs", "-o", f"size={SIZE_KB}k", "full", folder], check=True)
    return folder


def fill(folder, left_kb):
    """Pages are taken until no more go; then as many are given back as make up what is to be left. A part of
    a page cannot be left on this file system: 1 KB is the end of a file's own last page."""
    pieces = []
    while True:
        piece = folder / f"filler{len(pieces)}"
        try:
            piece.write_bytes(b"x" * 4096)
        except OSError:
            piece.unlink()
            break
        pieces.append(piece)
    for piece in pieces[:left_kb // 4]:
        piece.unlink()


def old_file_on_full(bench, left_kb, name):
    """An old file of that name, which takes a page, on a disk with that much room left; and all that is on it."""
    path = disk(bench) / name
    path.write_bytes(OLD)
    fill(path.parent, left_kb)
    return path, seen(path.parent)


def after_writing(path, before, told, reason):
    """On a disk that has some room either may be right, but nothing between."""
    place = FULL if not told else dataclasses.replace(FULL, cause=None)
    return complaint(place, path, before, told, reason, None)


def window_on_full(bench, kinds):
    count, refused = Count(), 0
    document = documents(bench, fresh(bench.scratch / "documents"))[1]
    with Window(bench, opened(bench.scratch / "home")) as window:
        window(f"open {document}")
        for left_kb in LEFT_KB:
            for kind, name in kinds:
                path, before = old_file_on_full(bench, left_kb, name)
                answer = window(f"export {kind} {path}")
                refused += not answer["done"]
                count.add(f"{kind} {name}, {left_kb} KB left",
                          after_writing(path, before, answer["done"], answer["notice"]))
    return count.row(f"{len(kinds)} exports of the window on a disk with {LEFT_KB} KB left",
                     saving_exports.ASKED, f" ({refused} refused)")


def line_on_full(bench, only=None):
    count, refused = Count(), 0
    document = documents(bench, fresh(bench.scratch / "documents"))[1]
    channels = bench.scratch / "documents" / "channels.csv"
    channels.write_text("name\nTP-91\nTP-92\n")
    commands = saving_exports.on_line(bench, document, channels)[:only]
    for left_kb in LEFT_KB if bench.long else LEFT_KB[:1]:
        for command, name in commands:
            path, before = old_file_on_full(bench, left_kb, name)
            run = subprocess.run([*map(str, command), path], capture_output=True, text=True, timeout=120,
                                 env=environment(opened(bench.scratch / "home")))
            told = run.returncode in (0, 1)
            refused += not told
            count.add(f"{' '.join(map(str, command[1:2]))} {name}, {left_kb} KB left",
                      after_writing(path, before, told, run.stderr))
    return count.row(f"{len(commands)} commands that write a file on a full disk", saving_exports.ASKED,
                     f" ({refused} refused)")


def standard_output(bench):
    """/dev/full takes nothing (full(4))."""
    count = Count()
    document = documents(bench, fresh(bench.scratch / "documents"))[1]
    for words in (["predict", document], ["predict", document, "--json"],
                  ["spice", document, "--channel", "Q-1", "--step", "1"],
                  ["channels", document, "--export", "-"], ["report", "--list-templates"], ["--help"],
                  ["--version"], ["describe", "man"]):
        with open("/dev/full", "wb") as full:
            run = subprocess.run([bench.program, *map(str, words)], stdout=full, stderr=subprocess.PIPE,
                                 text=True, env=environment(opened(bench.scratch / "home")))
        named = "standard output" in run.stderr and "disk" in run.stderr
        count.add(" ".join(map(str, words)), "" if run.returncode == 2 and named else
                  f"exit status {run.returncode}: {run.stderr!r}")
    return count.row("standard output on a full disk", "exit status 2, cause named")


def temporary_folder(bench):
    """A workbook is put together in the temporary folder, which may be full although the target is not."""
    count = Count()
    document = documents(bench, fresh(bench.scratch / "documents"))[1]
    for left_kb in (0, 4, 8, 12, 16, 24, 32, 48, 64):
        folder = disk(bench)
        fill(folder, left_kb)
        target = opened(bench.scratch / "out") / "report.xlsx"
        target.write_bytes(OLD)
        before = seen(target.parent)
        environ = {**environment(opened(bench.scratch / "home")), "TMPDIR": str(folder)}
        run = subprocess.run([bench.program, "report", document, "--out", target], capture_output=True,
                             text=True, env=environ)
        told = run.returncode == 0
        wrong = after_writing(target, before, told, run.stderr)
        left = [one.name for one in folder.iterdir() if not one.name.startswith("filler")]
        count.add(f"{left_kb} KB left", wrong or (f"left {left}" if left else ""))
    return count.row("workbook with a full temporary folder", saving_exports.ASKED)


def inside(bench):
    kinds = saving_exports.IN_WINDOW
    yield window_on_full(bench, kinds if bench.long else kinds[:4])
    yield line_on_full(bench, None if bench.long else 2)
    yield standard_output(bench)
    if bench.long:
        yield temporary_folder(bench)


def rows(bench):
    """In a name space of its own, where whoever is not root may be root. Some machines, containers among them, let
    nobody have one: there the quick tier says so, and leaves the full disk to the failed calls; the long tier fails.
    """
    tier = "long" if bench.long else "quick"
    call = [sys.executable, __file__, bench.source, bench.build, bench.scratch, tier]
    apart = ["unshare", "-rm" if os.geteuid() != 0 else "-m", "--propagation", "unchanged"]
    trial = subprocess.run([*apart, "mount", "-t", "tmpfs", "full", bench.scratch], capture_output=True, text=True)
    if trial.returncode != 0:
        yield Row("full disk", f"cannot be made on this machine: {trial.stderr.strip()[-200:]}", "runs, in the long tier",
                  not bench.long)
        return
    run = subprocess.run([*apart, *map(str, call)], capture_output=True, text=True)
    if run.returncode != 0:
        yield Row("full disk", f"broke: {run.stderr.strip()[-300:]}", "runs", False)
    for line in run.stdout.splitlines():
        yield Row(**json.loads(line))


if __name__ == "__main__":
    source, build, scratch = map(pathlib.Path, sys.argv[1:4])
    for row in inside(Bench(source, build, scratch, sys.argv[4] == "long")):
        print(json.dumps(dataclasses.asdict(row)), flush=True)
