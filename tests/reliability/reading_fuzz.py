# SPDX-License-Identifier: GPL-3.0-or-later
"""Damaged input for each reader: seeded damage of the corpus by any build, and libFuzzer in the long tier.

SHUNTWRIGHT_FUZZ_RUNS says for how many executions each target is run instead of ten million.
"""

import concurrent.futures
import os
import random
import re
import shutil
import subprocess

from row import LIGHT_ASAN, Row

TARGETS = ["quantity", "document", "text", "json", "wav", "npy", "uff", "matlab", "answer", "stock", "channels",
           "template", "words", "report", "tables", "command_line"]
RUNS = int(os.environ.get("SHUNTWRIGHT_FUZZ_RUNS", 10_000_000))
AT_ONCE = 2
GREATEST_WAIT_S = 60  # for one input, by the clock; a machine with much else to do leaves one waiting for ten
LONGEST = {"quantity": 200, "text": 256, "words": 200, "command_line": 512, "wav": 1024, "npy": 1024, "answer": 1024,
           "channels": 512}  # bytes; 4096 of all others
DAMAGED_EACH = 600  # inputs of a target in the quick tier
TELLING = b"\n\r\t \x00\xff\x7f\x80,;.:=-+eE0919\"'[]{}()<>#%@/\\"


def damaged(data, lot):
    """Bytes changed, put in, taken out, numbers made great, parts doubled, the end cut off."""
    data = bytearray(data)
    for _ in range(lot.randint(1, 5)):
        at = lot.randrange(len(data) + 1)
        kind = lot.randrange(7)
        if kind == 0:
            data[at:at + 1] = bytes([lot.randrange(256)])
        elif kind == 1:
            data[at:at + 1] = bytes([lot.choice(TELLING)])
        elif kind == 2:
            data[at:at] = bytes([lot.choice(TELLING)]) * lot.randint(1, 4)
        elif kind == 3:
            del data[at:at + lot.randint(1, 30)]
        elif kind == 4:
            data[at:at + 4] = lot.choice([b"\xff\xff\xff\x7f", b"\xff\xff\xff\xff", b"9" * 20, b"1e308", b"-1"])
        elif kind == 5:
            begin = lot.randrange(len(data) + 1)
            data[at:at] = data[begin:begin + lot.randint(1, 60)]
        elif lot.randrange(4) == 0:
            del data[at:]
    return bytes(data)


def corpus_of(bench, target):
    return bench.source / "tests" / "fuzz" / "corpus" / target


def replayed(bench, target, folder):
    """Inputs that the replay program got through, and how it ended."""
    program = bench.build / "tests" / "fuzz" / f"{target}_fuzz"
    done = subprocess.run([program, folder], stdout=subprocess.PIPE, stderr=subprocess.DEVNULL, timeout=600)
    count = re.findall(rb"(\d+) inputs replayed", done.stdout)
    return int(count[-1]) if count else 0, done.returncode


def damage(bench, target):
    lot = random.Random(f"shuntwright {target}")
    whole = [file.read_bytes() for file in sorted(corpus_of(bench, target).iterdir())]
    folder = bench.scratch / target
    folder.mkdir()
    for k in range(DAMAGED_EACH):
        (folder / f"{k:05}").write_bytes(damaged(whole[k % len(whole)], lot))
    count, status = replayed(bench, target, folder)
    shutil.rmtree(folder)
    return Row(f"damaged inputs of {target}", f"{count:,} read, exit status {status}",
               f"{DAMAGED_EACH} read, 0 findings", count == DAMAGED_EACH and status == 0)


def fuzz(bench, target):
    """One run of libFuzzer; what it finds is kept beside the table."""
    scratch = bench.scratch / f"fuzz_{target}"
    (scratch / "corpus").mkdir(parents=True)
    findings = bench.source / "build-reliability" / "findings"
    findings.mkdir(parents=True, exist_ok=True)
    program = bench.sanitized / "tests" / "fuzz" / f"{target}_fuzz"
    done = subprocess.run(
        [program, f"-runs={RUNS}", f"-max_len={LONGEST.get(target, 4096)}", f"-timeout={GREATEST_WAIT_S}",
         "-rss_limit_mb=2048", "-close_fd_mask=1", "-entropic=0", f"-dict={bench.source}/tests/fuzz/{target}.dict",
         f"-artifact_prefix={findings}/{target}-", scratch / "corpus", corpus_of(bench, target)],
        cwd=scratch, env=os.environ | {"ASAN_OPTIONS": LIGHT_ASAN}, stdout=subprocess.DEVNULL, stderr=subprocess.PIPE)
    ended = re.search(rb"Done (\d+) runs in (\d+) second", done.stderr)
    runs = int(ended[1]) if ended else 0
    told = f"{runs:,} executions in {int(ended[2]):,} s, 0 findings" if ended else \
        "a finding: " + done.stderr[-300:].decode("utf-8", "replace")
    return Row(f"libFuzzer on {target}", told, f"{RUNS:,} executions, 0 findings",
               runs >= RUNS and done.returncode == 0)


def rows(bench):
    for target in TARGETS:
        yield damage(bench, target)
    if bench.long:
        with concurrent.futures.ThreadPoolExecutor(AT_ONCE) as pool:
            yield from pool.map(lambda target: fuzz(bench, target), TARGETS)
