#!/usr/bin/env python3
# SPDX-License-Identifier: GPL-3.0-or-later
"""The search for resistors beside brute force with NumPy, in one run:

    /usr/bin/python3 tests/bench/search_peer.py SEARCH_BENCH

Best three of all E192 values over three decades, all seven parallel combinations, three levels on both sides
of a three-wire quarter bridge. Brute force looks at every set; both must come to the same greatest miss.
"""
import json
import subprocess
import sys
import time

import numpy as np

ARM_OHM, LEAD_OHM, FACTOR = 350.0, 2.0, 2.0
LEVELS = np.array([500.0, 1000.0, 1500.0])


def simulated(siemens, positive):
    """Strain in um/m of a shunt over the completion arm, or over the gauge, in closed form: what the gauge
    would have to be for the same voltage between the leads."""
    shunted = 1 / (1 / ARM_OHM + siemens)
    one, two = (ARM_OHM, shunted) if positive else (shunted, ARM_OHM)
    divider = (LEAD_OHM + two) / (2 * LEAD_OHM + one + two)
    strained = (LEAD_OHM + ARM_OHM) * (1 / divider - 1) - LEAD_OHM
    return 1e6 * np.abs(strained - ARM_OHM) / (FACTOR * ARM_OHM)


def greatest_misses(combinations):
    """Greatest miss of many sets, whose combinations' conductances are the rows."""
    worst = np.zeros(combinations[0].shape)
    for positive in (True, False):
        values = [simulated(g, positive) for g in combinations]
        for level in LEVELS:
            least = np.ones(worst.shape)
            for value in values:
                np.minimum(least, np.abs(value - level) / level, out=least)
            np.maximum(worst, least, out=worst)
    return worst


def brute_force(ohms):
    g = 1 / np.asarray(ohms)
    best = np.inf
    for first in range(len(g)):
        a, b, c = g[first], g[first:, None], g[None, first:]
        second, third = np.triu_indices(len(g) - first)
        b, c = b[second, 0], c[0, third]
        best = min(best, greatest_misses([np.full(b.shape, a), b, c, a + b, a + c, b + c, a + b + c]).min())
    return best


def main():
    bench = sys.argv[1]
    ohms = [float(line) for line in
            subprocess.run([bench, "--candidates"], capture_output=True, text=True, check=True).stdout.split()]
    out = subprocess.run([bench, "--benchmark_filter=bestThreeOfE192/2", "--benchmark_format=json",
                          "--benchmark_min_time=0.5"], capture_output=True, text=True, check=True).stdout
    own = json.loads(out)["benchmarks"][0]
    begin = time.perf_counter()
    best = brute_force(ohms)
    seconds = time.perf_counter() - begin
    if abs(best - own["greatest_miss"]) > 1e-9:  # the strain is right to 1e-12 in both; levels are not small
        sys.exit(f"brute force finds {best}, the search {own['greatest_miss']}")
    ours = own["real_time"] * 1e-3
    print(f"best 3 of {len(ohms)} values, 7 combinations, 6 levels: {1e3 * ours:.1f} ms, "
          f"NumPy {np.__version__} brute force {seconds:.1f} s, {seconds / ours:.0f} x; "
          f"both miss by {100 * best:.6f} % (asked: under 1 s)")


if __name__ == "__main__":
    main()
