# SPDX-License-Identifier: GPL-3.0-or-later
"""Recordings that a stranger's document names outside its folder: no command opens them. The system itself tells who
opened what (inotify). What the window does is held by tests/ui/recording_reference_test.cpp."""

import ctypes
import json
import os
import struct
import subprocess

from row import Row

IN_OPEN, IN_DONT_FOLLOW, IN_NONBLOCK = 0x20, 0x02000000, 0o4000


class Watch:
    """Counts how often files are opened, by whomever."""

    def __init__(self, *paths):
        self.libc = ctypes.CDLL(None, use_errno=True)
        self.fd = self.libc.inotify_init1(IN_NONBLOCK)
        for path in paths:
            if self.libc.inotify_add_watch(self.fd, os.fsencode(path), IN_OPEN | IN_DONT_FOLLOW) < 0:
                raise OSError(ctypes.get_errno(), os.strerror(ctypes.get_errno()), str(path))

    def opened(self):
        count = 0
        while True:
            try:
                events = os.read(self.fd, 65536)
            except BlockingIOError:
                return count
            at = 0
            while at < len(events):
                at += 16 + struct.unpack_from("iIII", events, at)[3]
                count += 1


def strangers_document(bench, folder, outside):
    """A document whose checks name recordings in every way that leads out."""
    whole = json.loads((bench.source / "tests" / "data" / "version7.bridgecal").read_text("utf-8"))
    (folder / "link.csv").symlink_to(outside)
    (folder / "sub").symlink_to(outside.parent)
    os.mkfifo(folder / "fifo.csv")
    paths = [str(outside), f"../{outside.parent.name}/{outside.name}", "link.csv", f"sub/{outside.name}", "fifo.csv",
             "/dev/zero", "/proc/self/environ", f"file://{outside}", "http://127.0.0.1/a.csv"]
    channel = whole["channels"][0]
    check = channel["checks"][0]
    check["recording"]["size_bytes"] = outside.stat().st_size
    channel["checks"] = []
    for k, path in enumerate(paths):
        copy = json.loads(json.dumps(check))
        copy["name"], copy["recording"]["path"] = f"check {k}", path
        channel["checks"].append(copy)
    whole.pop("fingerprint", None)
    whole["sign_off"], whole["history"] = whole.get("sign_off", []), []
    file = folder / "strange.bridgecal"
    file.write_text(json.dumps(whole), encoding="utf-8")
    return file, len(paths)


def rows(bench):
    folder, elsewhere = bench.scratch / "folder", bench.scratch / "elsewhere"
    folder.mkdir()
    elsewhere.mkdir()
    outside = elsewhere / "outside.csv"
    outside.write_text("time,TP-01\n" + "".join(f"{k / 10},{k // 40 * 500}\n" for k in range(200)))
    document, count = strangers_document(bench, folder, outside)
    commands = [["predict"], ["compare", "--channel", "TP-01"], ["working", "--channel", "TP-01", "--step", "2"],
                ["review"], ["verify"], ["batch"],
                ["report", "--out", folder / "report.html"], ["channels", "--export", "-"]]
    watch = Watch(outside, folder / "fifo.csv")
    statuses = []
    for name, *more in commands:
        done = subprocess.run([bench.program, name, document, *more], capture_output=True, timeout=60)
        statuses.append(done.returncode)
    opened = watch.opened()
    yield Row(f"{count} references that leave the folder, through {len(commands)} commands",
              f"opened {opened} times; statuses {statuses}", "opened 0 times, every document read",
              opened == 0 and all(status in (0, 1) for status in statuses))
    subprocess.run([bench.program, "levels", outside], capture_output=True, timeout=60)
    asked = watch.opened()
    yield Row("the same recording when a user names it", f"opened {asked} times", "opened: the watch sees it", asked > 0)
