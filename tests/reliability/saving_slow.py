# SPDX-License-Identifier: GPL-3.0-or-later
"""How long the window stands still while it saves, on a disk as it is and on one that takes its time."""

import shutil

from row import Row
from saving_tools import Window, fresh, tracing

DELAY_MS = 300  # of each fsync, fdatasync and rename
MOST_CALLS = 5
LEAST_MS = 100  # an answer that comes later is felt (Nielsen, Usability Engineering, 5.5, from memory)


def calls_in(log):
    """Delayed calls of the window's thread since the second save began."""
    lines = log.read_text(errors="replace").splitlines()
    marks = [number for number, line in enumerate(lines) if "/saving-begins" in line]
    thread = lines[0].split()[0]
    return sum(line.startswith(thread) and "DELAYED" in line for line in lines[marks[-1]:])


def still_ms(bench, delay_ms):
    """Longest in the save, and calls of it that were delayed."""
    folder = fresh(bench.scratch / "slow")
    document = folder / "tail.bridgecal"
    shutil.copyfile(bench.source / "examples" / "demo.bridgecal", document)
    log = folder / "log"
    with Window(bench, folder, ["strace", "-f", "-qq", "--seccomp-bpf", "-o", log, "-e",
                                "trace=access,fsync,fdatasync,rename", "-e",
                                f"inject=fsync,fdatasync,rename:delay_enter={delay_ms * 1000}"]) as window:
        window(f"open {document}")
        assert window("edit FIRST") and window("save")["done"]  # from then on the document is known
        window("edit SANDPIPER")
        for _ in range(3):
            window("state")
        answer = window("save")
        assert answer["done"], answer["notice"]
        longest = answer["still_ms"]
        for _ in range(3):
            longest = max(longest, window("state")["still_ms"])
        assert b"SANDPIPER" in document.read_bytes()
        return longest, calls_in(log)


def least(bench, delay_ms):
    """Of three: what else runs on the machine is no matter of the disk."""
    return min(still_ms(bench, delay_ms) for _ in range(3))


def rows(bench):
    if not bench.long:
        return  # it would wait for most of its time
    if why := tracing():
        yield Row("window while it saves on a slow disk", why, "can be traced", False)
        return
    (usual, _), (slow, calls) = least(bench, 1), least(bench, DELAY_MS)
    disk_ms = calls * DELAY_MS
    # The window waits for its document, so as to tell the truth about it, and for nothing else: fsync and
    # fdatasync of the bytes, rename, fsync of the folder, and one more for a lock.
    yield Row(f"window while it saves on a disk whose fsync and rename take {DELAY_MS} ms",
              f"stands still for {slow:.0f} ms, {calls} such calls; 1 ms each: {usual:.0f} ms",
              f"at most {MOST_CALLS} such calls, and {LEAST_MS} ms beside them and the undelayed save",
              0 < calls <= MOST_CALLS and slow <= usual + disk_ms + LEAST_MS)
