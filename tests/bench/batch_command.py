# SPDX-License-Identifier: GPL-3.0-or-later
"""What `batch` makes of 1,000 documents with two workers: documents a second by the clock, and user time.

Called as batch_command.py PROGRAM. Each document is the demo (7 channels, 14 checks with their set-ups, 160 kB) under
another title. Target: 200 documents a second. User time is that of all workers together and hardly depends on what else
the machine is doing.
"""
import json
import os
import resource
import subprocess
import sys
import tempfile
import time

PROGRAM = os.path.abspath(sys.argv[1])
EXAMPLES = os.path.join(os.path.dirname(os.path.abspath(__file__)), "../../examples")
COUNT, ROUNDS = 1000, 3


def measured(folder):
    before = resource.getrusage(resource.RUSAGE_CHILDREN)
    begin = time.monotonic()
    done = subprocess.run([PROGRAM, "batch", folder, "--jobs", "2", "--json"], stdout=subprocess.PIPE, check=False)
    wall = time.monotonic() - begin
    after = resource.getrusage(resource.RUSAGE_CHILDREN)
    lines = [json.loads(line) for line in done.stdout.splitlines()]
    if len(lines) != COUNT or any("error" in line for line in lines):
        raise SystemExit("batch: not every document was judged")
    return wall, after.ru_utime - before.ru_utime, after.ru_maxrss / 1024


with tempfile.TemporaryDirectory() as folder:
    with open(os.path.join(EXAMPLES, "demo.bridgecal"), encoding="utf-8") as file:
        content = json.load(file)
    for k in range(COUNT):
        content["title"] = f"Campaign {k}"
        with open(os.path.join(folder, f"{k:04}.bridgecal"), "w", encoding="utf-8") as file:
            json.dump(content, file, ensure_ascii=False, indent=1)
    figures = [measured(folder) for _ in range(ROUNDS)]
    wall, user = min(figure[0] for figure in figures), min(figure[1] for figure in figures)
    print(f"batch: {COUNT} documents, 2 workers: {COUNT / wall:.0f} documents/s ({wall:.2f} s wall, {user:.2f} s user, "
          f"peak {figures[-1][2]:.0f} MB)")
