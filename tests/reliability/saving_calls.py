# SPDX-License-Identifier: GPL-3.0-or-later
"""Each system call of a save fails, and is where the program dies, in turn.

strace does both (strace(1), "Tampering"). A first run shows which calls there are; each later run injects one
fault into one of them. What counts is what is under the document's name afterwards, and what was told.
"""

import collections
import dataclasses
import re
import shutil
import subprocess

from row import Row
from saving_tools import Window, documents, environment, fresh, tracing

MARK = 'access("/saving-begins"'
FILE_CALLS = {"openat", "write", "lseek", "read", "close", "fsync", "fdatasync", "rename", "linkat"}
CALL = re.compile(r"^(\d+) +(\w+)\((.*)")
# Ends of the program, and what only asks about itself: there is nothing that could fail.
BEYOND = {"exit_group", "exit", "getpid", "gettid", "getuid", "geteuid", "uname", "brk", "munmap", "mmap",
          "madvise"}
CAUSES = {"ENOSPC": "the disk is full", "EIO": "the disk reports a fault", "EDQUOT": "your share of the disk",
          "EINTR": "nterrupted system call"}  # our own words, and those of the C library for the last


@dataclasses.dataclass(frozen=True)
class Place:
    """One call of a save: the `number`th of that name since the program began."""

    name: str
    number: int
    text: str


def traced(command, log, *words, **options):
    return subprocess.run(["strace", "-f", "-qq", "-o", log, *words, *map(str, command)], text=True,
                          capture_output=True, timeout=60, **options)


def places_in(log, mark=MARK):
    """The calls of the main thread after the mark, but for what is told on standard output."""
    counts, found, begun, first = collections.Counter(), [], False, None
    for line in log.read_text(errors="replace").splitlines():
        match = CALL.match(line)
        if not match:
            continue
        first = first or match[1]
        if match[1] != first:
            continue
        counts[match[2]] += 1
        if begun and match[2] not in BEYOND and not (match[2] == "write" and match[3].startswith("1,")):
            found.append(Place(match[2], counts[match[2]], match[3][:60]))
        begun = begun or mark in line
    return found


def faults_for(place, index, long):
    """What is done to that call; in the quick tier one error of the four, and the kill."""
    errors = list(CAUSES)
    once = errors if long else [errors[index % len(errors)]]
    faults = ["signal=SIGKILL", *(f"error={name}" for name in once)]
    if long and place.name != "write":  # which is also how the driver tells
        faults += [f"error={name}+" for name in errors if name != "EINTR"]  # and from then on
    if place.name == "write":
        faults.append("retval=100")  # told to be written in part; the disk has none of it
    return faults


@dataclasses.dataclass
class Tally:
    """What came of the injections."""

    done: int = 0
    lost: list = dataclasses.field(default_factory=list)
    false_saved: list = dataclasses.field(default_factory=list)
    unnamed: list = dataclasses.field(default_factory=list)
    littered: list = dataclasses.field(default_factory=list)

    def row(self, what):
        """Everything that went wrong is named."""
        bad = [*self.lost, *self.false_saved, *self.unnamed, *self.littered]
        measured = (f"{self.done} injections: {len(self.lost)} documents lost, {len(self.false_saved)} false "
                    f"\"saved\", {len(self.unnamed)} errors without a cause, {len(self.littered)} left "
                    "something")
        return Row(what, measured + "".join(f"; {one}" for one in bad[:5]),
                   "0 lost, 0 false \"saved\", each cause named, nothing left beside",
                   bool(self.done) and not bad)


def judge(tally, where, fault, told, now, old, new, beside):
    """`told`: what the program said; `now`: the bytes under the name, none when there is no such file."""
    tally.done += 1
    if now not in (old, new):
        tally.lost.append(f"{where}: {len(now or b'')} bytes")
    if told.startswith("saved") and now != new:
        tally.false_saved.append(where)
    if told.startswith("not saved"):
        written = "it is written, but" in told  # the one failure that comes after the renaming
        if now != (new if written else old):
            tally.lost.append(f"{where}: \"{told[:60]}\"")
        cause = CAUSES.get(fault.removeprefix("error=").rstrip("+"), "")
        if cause not in told or re.search("Success|Unknown error", told):
            tally.unnamed.append(f"{where}: \"{told}\"")
        if beside and "unlink" not in where:
            tally.littered.append(f"{where}: {beside}")
    elif not told and "SIGKILL" not in fault:
        tally.unnamed.append(f"{where}: nothing was told")


def finds_faults(bench):
    """The same injections into a save that does everything wrong: in place, and without looking at errors."""
    tally = tally_of(bench, "careless", True)
    found = bool(tally and tally.lost and tally.false_saved)
    measured = f"{len(tally.lost)} lost and {len(tally.false_saved)} false \"saved\"" if tally else "no save"
    return Row("the same check of a save in place", measured, "both are found", found)


def content(file):
    """None when there is no such file. A recovery copy names the process that wrote it."""
    return re.sub(rb'"process":\d+', b"", file.read_bytes()) if file.exists() else None


def injected(bench, what, mode, over):
    tally = tally_of(bench, mode, over)
    return tally.row(what) if tally else Row(what, "it does not save even without a fault", "saves", False)


def tally_of(bench, mode, over):
    """`mode`: what the driver does; `over`: there is an old file. None when it does not save at all."""
    folder = fresh(bench.scratch / "calls")
    old, new = documents(bench, folder)
    target, log = folder / "disk" / "tail.bridgecal", folder / "log"
    command = [bench.driver("saving_ui_driver"), mode, new, target]

    def begin():
        fresh(target.parent)
        if over:
            shutil.copyfile(old, target)

    begin()
    before = content(target)
    if traced(command, log, env=environment(folder)).stdout != "saved\n":
        return None
    after, tally = content(target), Tally()
    for index, place in enumerate(places_in(log)):
        for fault in faults_for(place, index, bench.long):
            begin()
            onwards = "+" if fault.endswith("+") else ""
            words = ["-e", f"inject={place.name}:{fault.rstrip('+')}:when={place.number}{onwards}"]
            run = traced(command, log, *words, env=environment(folder))
            if "INJECTED" not in log.read_text(errors="replace") and run.returncode >= 0:
                continue  # never came to it
            beside = [name.name for name in target.parent.iterdir() if name != target]
            judge(tally, f"{place.name} ({fault}) {place.text}", fault, run.stdout.strip(),
                  content(target), before, after, beside)
    return tally


def window_injected(bench):
    """The window's own saving: lock, revision, file, state, recent documents. Its calls vary a little from
    run to run; whichever was hit, the document must be whole. Known by its content: the moment is in it."""
    what = "window saves; each system call of its thread failed or killed"
    folder = fresh(bench.scratch / "window")
    old, log, tally = documents(bench, folder)[0], folder / "log", Tally()
    before = old.read_bytes()

    def run(*words):
        target = fresh(folder / "disk") / "tail.bridgecal"
        shutil.copyfile(old, target)
        told = ""
        with Window(bench, fresh(folder / "home"), ["strace", "-f", "-qq", "-o", log, *words]) as window:
            try:
                window(f"open {target}")
                window("edit Sandpiper")
                answer = window("save")
                told = "saved" if answer["done"] else "not saved: " + answer["notice"]
                if answer["unsaved"] == answer["done"]:
                    tally.false_saved.append(f"{words}: marked as unsaved: {answer['unsaved']}")
            except EOFError:
                pass
        return told, target.read_bytes() if target.exists() else None

    run()
    for index, place in enumerate(places_in(log)):
        for fault in (["signal=SIGKILL", "error=" + list(CAUSES)[index % 3]]):
            told, now = run("-e", f"inject={place.name}:{fault}:when={place.number}")
            trace = log.read_text(errors="replace")
            if MARK not in trace.split("INJECTED")[0]:
                continue  # hit something before the save
            whole = now == before or now is not None and b"Sandpiper" in now and now.endswith(b"}\n")
            new = b"new" if whole and now != before else now
            judge(tally, f"{place.name} ({fault}) {place.text}", fault, told, new, before, b"new", [])
    return tally.row(what)


def workbook_injected(bench):
    """A library puts a workbook together out of many temporary files. Whatever it does about a failure: a
    workbook that is told to be written is the whole one. A full disk stays full: each write fails from that
    one on."""
    folder = fresh(bench.scratch / "workbook")
    _, document = documents(bench, folder)
    target, log, tally = folder / "disk" / "report.xlsx", folder / "log", Tally()
    command = [bench.program, "report", document, "--out", target]
    environ = {**environment(folder), "TMPDIR": str(fresh(folder / "tmp"))}

    def run(*words):
        fresh(target.parent)
        target.write_bytes(b"old")
        return traced(command, log, *words, env=environ)

    run()
    whole = target.read_bytes()
    for place in places_in(log, mark=str(folder / "tmp")):
        if place.name not in FILE_CALLS:
            continue
        onwards = "+" if place.name == "write" else ""
        told = run("-e", f"inject={place.name}:error=ENOSPC:when={place.number}{onwards}")
        if "INJECTED" not in log.read_text(errors="replace"):
            continue
        words = "saved" if told.returncode == 0 else "not saved: " + told.stderr
        judge(tally, f"{place.name} {place.text}", "", words, target.read_bytes(), b"old", whole, [])
    return tally.row("each file call of putting a workbook together failed")


def rows(bench):
    if why := tracing():
        yield Row("each system call of a save", why, "can be traced", False)
        return
    yield injected(bench, "each system call of a save failed and killed", "save", True)
    yield finds_faults(bench)
    if not bench.long:
        return
    yield injected(bench, "the same, where there is no old file", "save", False)
    yield injected(bench, "the same, of a recovery copy", "recovery", True)
    yield window_injected(bench)
    yield workbook_injected(bench)
