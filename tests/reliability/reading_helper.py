# SPDX-License-Identifier: GPL-3.0-or-later
"""The process that reads MATLAB and HDF5 files: whatever becomes of it, the user gets one sentence, soon.

A script takes its place beside a copy of the program and does what a process could that a file has taken over.
"""

import os
import random
import shutil
import subprocess
import time

import reading_caps
from reading_fuzz import damaged
from row import Row

GREATEST_WAIT_S = 20

# What it does, the sentence that must come, whether it takes as long as the program is patient.
DEATHS = [
    ("is killed for want of memory", "kill -KILL $$", "was killed, perhaps for want of memory"),
    ("loops until its time is over", "ulimit -S -t 1; while :; do :; done", "ran longer than is allowed"),
    ("overflows its stack", "f() {{ f; }}; ulimit -s 256; f", "came to grief on it (signal 11)"),
    ("aborts", "kill -ABRT $$", "came to grief on it (signal 6)"),
    ("writes to a file", "ulimit -f 0; echo x > {folder}/written || exit 9", "gave up"),
    ("closes its answer and ends", "exec 1>&-; exit 0", "an answer that makes no sense"),
    ("answers with garbage", "head -c 100000 /dev/urandom", "an answer that makes no sense"),
    ("answers with 40 MB of line ends", "head -c 40000000 /dev/zero | tr '\\0' '\\n'", "an answer that makes no sense"),
    ("answers without end", "exec yes", "an answer that makes no sense"),
    ("lists well and dies over the numbers",
     "case $2 in list) exec {reader} \"$@\";; *) printf '\\005\\0\\0\\0\\0\\0\\0\\0'; kill -SEGV $$;; esac",
     "came to grief on it (signal 11)"),
    ("lists well and makes numbers up",
     "case $2 in list) exec {reader} \"$@\";; *) exec yes;; esac", "an answer that makes no sense"),
    ("is not there", None, "which is not here"),
]
# The real process, on a compressed vector of 40 MB, which it unpacks as a whole.
LIMITED = ("runs into its limit of memory", "ulimit -v 60000; exec {reader} \"$@\"", "ran out of memory")
PATIENT = [
    ("closes its answer and sleeps", "exec 1>&-; exec sleep 1000", "did not come to an end"),
]


class Stage:
    """A copy of the program beside which anybody can play the reading process."""

    def __init__(self, bench):
        self.folder = bench.scratch / "stage"
        self.folder.mkdir()
        self.program = self.folder / "shuntwright"
        try:
            os.link(bench.program.resolve(), self.program)
        except OSError:
            shutil.copy(bench.program, self.program)
        self.real = bench.build / "shuntwright-reader"
        self.file = bench.source / "tests" / "data" / "recordings" / "level5.mat"
        self.long = self.folder / "long.mat"
        self.long.write_bytes(reading_caps.bomb(40 * reading_caps.MEGABYTE, 40 * reading_caps.MEGABYTE))

    def said(self, script, file=None):
        """Status, lines of standard error and seconds."""
        reader = self.folder / "shuntwright-reader"
        reader.unlink(missing_ok=True)
        if script is not None:
            reader.write_text("#!/bin/sh\n" + script.format(reader=self.real, folder=self.folder) + "\n")
            reader.chmod(0o700)
        begin = time.monotonic()
        done = subprocess.run([self.program, "levels", file or self.file, "--read-as", "rate=64"], capture_output=True,
                              text=True, timeout=120, env={**os.environ, "LC_ALL": "C.UTF-8"})
        return done.returncode, done.stderr.splitlines(), time.monotonic() - begin


def death(stage, what, script, sentence, file=None):
    status, lines, seconds = stage.said(script, file)
    said = lines[0] if lines else "nothing"
    return Row(f"the reading process {what}", f"{len(lines)} line, status {status}, {seconds:.1f} s: {said[-90:]}",
               f"1 line with “{sentence}”, status 2, < {GREATEST_WAIT_S} s",
               len(lines) == 1 and status == 2 and sentence in said and seconds < GREATEST_WAIT_S)


def control(bench, stage):
    """That the stage shows a play at all: the real process reads the file."""
    status, lines, seconds = stage.said("exec {reader} \"$@\"")
    return Row("the reading process does its work", f"status {status}, {len(lines)} lines of trouble", "status 0",
               status == 0)


def damage(bench):
    """MATLAB and HDF5 files with seeded damage, through the process and its libraries."""
    desk = reading_caps.Desk(bench)
    count = 1000 if bench.long else 10
    lot = random.Random("shuntwright helper")
    data = bench.source / "tests" / "data" / "recordings"
    files, endings = [], {}
    for name in ["level4.mat", "level5.mat", "level5z.mat", "level73.mat", "datasets.h5", "table.h5"]:
        whole = (data / name).read_bytes()
        for k in range(count):
            file = desk.folder / f"{k:04}_{name}"
            file.write_bytes(damaged(whole, lot))
            files.append(file)
    begin = time.monotonic()
    done = subprocess.run([desk.driver, "recording", *files], capture_output=True, text=True, errors="replace")
    lines = done.stdout.splitlines()[:-1]
    for line in lines:
        ending = line.split("the reading process ")[-1].rsplit(". ", 1)[0] if "process" in line else \
            ("read" if line == "read" else "refused")
        endings[ending] = endings.get(ending, 0) + 1
    told = ", ".join(f"{count} {ending}" for ending, count in sorted(endings.items(), key=lambda item: -item[1])[:4])
    return Row(f"{len(files):,} damaged MATLAB and HDF5 files", f"{len(lines):,} answers in "
               f"{time.monotonic() - begin:.0f} s: {told}", f"{len(files):,} answers, status 0",
               done.returncode == 0 and len(lines) == len(files))


def rows(bench):
    stage = Stage(bench)
    yield control(bench, stage)
    for what, script, sentence in DEATHS + (PATIENT if bench.long else []):
        yield death(stage, what, script, sentence)
    yield death(stage, *LIMITED, stage.long)
    yield damage(bench)
