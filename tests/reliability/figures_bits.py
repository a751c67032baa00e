# SPDX-License-Identifier: GPL-3.0-or-later
"""The same bits for any number of threads, and from every compiler.

bits.txt holds the SHA-256 of each part of a broad sample of results (figures_core_driver.cpp), as any compiler has
to give it. Where a change of the program changes results on purpose, it is made anew:

    BUILD/tests/reliability/figures_core_driver 1 examples > tests/reliability/bits.txt
"""

import pathlib
import subprocess

from row import Row

KEPT = pathlib.Path(__file__).with_name("bits.txt")


def bits(bench, build, threads):
    done = subprocess.run([build / "tests" / "reliability" / "figures_core_driver", str(threads),
                           bench.source / "examples"], capture_output=True, encoding="utf-8", check=True)
    return dict(reversed(line.split(" ", 1)) for line in done.stdout.splitlines())


def differing(one, other):
    return sorted(name for name in one.keys() | other.keys() if one.get(name) != other.get(name))


def compiler_of(build):
    for line in (build / "CMakeCache.txt").read_text(encoding="utf-8").splitlines():
        if line.startswith("CMAKE_CXX_COMPILER:"):
            return pathlib.Path(line.partition("=")[2]).name
    return "an unknown compiler"


def kept_row(bench, build):
    kept = dict(reversed(line.split(" ", 1)) for line in KEPT.read_text(encoding="utf-8").splitlines())
    off = differing(kept, bits(bench, build, 2))
    return Row(f"bits of {len(kept)} parts of results, by {compiler_of(build)}",
               f"{len(kept) - len(off)} as kept in the repository, {len(off)} other {off[:4] or ''}",
               "all as kept", not off and len(kept) > 50)


def threads_row(bench):
    counts = range(1, 9) if bench.long else (1, 3, 8)
    first = bits(bench, bench.build, counts[0])
    off = {count: differing(first, bits(bench, bench.build, count)) for count in counts[1:]}
    wrong = {count: names[:3] for count, names in off.items() if names}
    return Row(f"bits of {len(first)} parts with {', '.join(map(str, counts))} threads",
               f"{len(wrong)} thread counts give other bits {wrong or ''}", "0", not wrong)


def batch_row(bench):
    """Documents and channels are shared out among threads; lines come as from one."""
    def told(jobs):
        done = subprocess.run([bench.program, "batch", bench.source / "examples", "--channels", "--json", "--today",
                               "2026-05-11", "--jobs", str(jobs)], capture_output=True, check=False)
        return done.stdout
    first = told(1)
    counts = range(2, 9) if bench.long else (2, 8)
    other = [jobs for jobs in counts if told(jobs) != first]
    lines = first.count(b"\n")
    return Row(f"batch, {lines} lines, with 1 to 8 jobs", f"{len(other)} counts of jobs give other bytes {other or ''}",
               "0", not other and lines > 5)


def rows(bench):
    yield kept_row(bench, bench.build)
    if bench.sanitized:
        yield kept_row(bench, bench.sanitized)
    yield threads_row(bench)
    yield batch_row(bench)
