#!/usr/bin/env python3
# SPDX-License-Identifier: GPL-3.0-or-later
"""The network of tests/bench/batch_bench.cpp, solved by NumPy's batched linalg.solve: a three-wire quarter
bridge of 350 ohm arms on 2 ohm leads, 10 Mohm instrument input, 174.65 kohm over arm 1, every system with other
resistances. Prints seconds of processor time per million solves as JSON; building the matrices is counted apart.

    /usr/bin/python3 tests/bench/peer_network.py [SYSTEMS]
"""
import json
import sys
import time

import numpy as np

P_PLUS, P_MINUS = -1, -2  # 1 V and 0 V: known, so no rows of the matrix
S_MINUS, S_PLUS, GAUGE_BEGIN, GAUGE_END, RETURN = range(5)
BRANCHES = [  # ends, ohm; joins without a lead are one node
    (GAUGE_BEGIN, GAUGE_END, 350.0),  # arm 1
    (RETURN, P_MINUS, 350.0),  # arm 2
    (P_MINUS, S_PLUS, 350.0),  # arm 3
    (S_PLUS, P_PLUS, 350.0),  # arm 4
    (P_PLUS, GAUGE_BEGIN, 2.0),
    (S_MINUS, GAUGE_END, 2.0),
    (RETURN, GAUGE_END, 2.0),
    (S_PLUS, S_MINUS, 10e6),  # instrument input
    (GAUGE_BEGIN, GAUGE_END, 174650.0),  # shunt
]


def nodal_systems(conductance):
    """conductance[branch, system] in S to matrices [system, 5, 5] and currents [system, 5, 1]."""
    systems = conductance.shape[1]
    matrix = np.zeros((systems, 5, 5))
    current = np.zeros((systems, 5, 1))
    for (a, b, _), g in zip(BRANCHES, conductance):
        for this, other in ((a, b), (b, a)):
            if this < 0:
                continue
            matrix[:, this, this] += g
            if other >= 0:
                matrix[:, this, other] -= g
            elif other == P_PLUS:
                current[:, this, 0] += g
    return matrix, current


def output(matrix, current):
    potential = np.linalg.solve(matrix, current)
    return potential[:, S_PLUS, 0] - potential[:, S_MINUS, 0]


def best_of(times, work):
    """Least processor time of a few runs in s, and the last result."""
    seconds = []
    for _ in range(times):
        begin = time.process_time()
        result = work()
        seconds.append(time.process_time() - begin)
    return min(seconds), result


def main():
    systems = int(sys.argv[1]) if len(sys.argv) > 1 else 100_000
    ohm = np.array([branch[2] for branch in BRANCHES])[:, None]
    spread = np.random.default_rng(350).uniform(-1e-3, 1e-3, (len(BRANCHES), systems))
    spread[:, 0] = 0
    conductance = 1 / (ohm * (1 + spread))

    build, (matrix, current) = best_of(5, lambda: nodal_systems(conductance))
    solve, ratio = best_of(5, lambda: output(matrix, current))
    per_million = 1e6 / systems
    print(json.dumps({
        "numpy": np.__version__,
        "systems": systems,
        "unknowns": 5,
        "solve_s_per_million": round(solve * per_million, 4),
        "build_s_per_million": round(build * per_million, 4),
        "nominal_output_V_per_V": float(ratio[0]),
    }))


if __name__ == "__main__":
    main()
