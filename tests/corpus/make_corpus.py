#!/usr/bin/python3
# SPDX-License-Identifier: GPL-3.0-or-later
"""Writes the corpus of step recordings with known truth.

    make_corpus.py FOLDER [--seeds 3] [--only KIND ...]

Files are named KIND.DIALECT.SEED.txt; truth.json beside them has of each its kind, dialect, seed, the
column's name, the smallest step, and its levels: begin_s and end_s (times of the first sample after the
switching and of the last before the next, clock and date times counted from the first sample), settled_s
(where 1 % of the step is left), mean (of the noise-free settled signal with its drift, over the level) and
slope_per_s. Seeds are fixed: the same bytes each time (NumPy's PCG64 and its normal numbers, the same since
NumPy 1.17). What is held fair is told in signals.py.
"""
import argparse
import json
import os
import sys
import zlib
from dataclasses import dataclass

import numpy as np

sys.path.insert(0, os.path.dirname(os.path.abspath(__file__)))
import dialects  # noqa: E402
import kinds  # noqa: E402

DIALECTS_EACH = 4


@dataclass
class Case:
    kind: str
    dialect: str
    seed: int

    @property
    def file_name(self):
        return f"{self.kind}.{self.dialect}.{self.seed}.txt"


def dialects_of(kind, seed):
    """Four dialects of a kind; other seeds have others, so that all of them come together with all kinds."""
    names = list(dialects.DIALECTS)
    if kind == "uneven_sampling":
        names = [n for n in names if n not in dialects.NEED_A_RATE]
    first = list(kinds.KINDS).index(kind) + seed
    stride = len(names) // DIALECTS_EACH
    return [names[(first + slot * stride) % len(names)] for slot in range(DIALECTS_EACH)]


def cases(seeds, only=()):
    return [Case(kind, dialect, seed) for kind in kinds.KINDS if not only or kind in only
            for seed in range(seeds) for dialect in dialects_of(kind, seed)]


def made(case):
    """The signal and the file of a case."""
    rng = np.random.Generator(np.random.PCG64(
        [zlib.crc32(case.kind.encode()), zlib.crc32(case.dialect.encode()), case.seed]))
    signal = kinds.KINDS[case.kind](rng)
    if signal.missing.size == 0:
        signal.missing = np.zeros(signal.values.size, bool)
    return signal, dialects.DIALECTS[case.dialect](signal, rng)


def truth_levels(signal, times_s):
    levels = []
    for begin, end in zip(signal.edges[:-1], signal.edges[1:]):
        part, t = signal.settled[begin:end], times_s[begin:end]
        slope = 0.0
        if np.ptp(part) > 0:
            slope = float(np.dot(t - t.mean(), part - part.mean()) / np.dot(t - t.mean(), t - t.mean()))
        levels.append({"begin_s": float(t[0]), "end_s": float(t[-1]),
                       "settled_s": float(min(t[-1], t[0] + (signal.settling_s if begin > 0 else 0))),
                       "mean": float(part.mean()), "slope_per_s": slope})
    return levels


def main():
    parser = argparse.ArgumentParser(description="Writes step recordings with known truth.")
    parser.add_argument("folder")
    parser.add_argument("--seeds", type=int, default=3)
    parser.add_argument("--only", nargs="*", default=[], metavar="KIND", choices=list(kinds.KINDS))
    options = parser.parse_args()
    os.makedirs(options.folder, exist_ok=True)
    truth = {}
    for case in cases(options.seeds, options.only):
        signal, written = made(case)
        with open(os.path.join(options.folder, case.file_name), "wb") as file:
            file.write(written.data)
        truth[case.file_name] = {
            "kind": case.kind, "dialect": case.dialect, "seed": case.seed, "column": written.name,
            "unit": signal.unit, "smallest_step": signal.smallest_step,
            "levels": truth_levels(signal, written.times_s)}
    with open(os.path.join(options.folder, "truth.json"), "w", encoding="utf-8") as file:
        json.dump(truth, file, indent=1)
    print(f"{len(truth)} recordings in {options.folder}")


if __name__ == "__main__":
    main()
