#!/usr/bin/python3
# SPDX-License-Identifier: GPL-3.0-or-later
"""Writes settling.csv: when the step response of an analogue low-pass of cutoff 1 Hz settles, by SciPy.

    /usr/bin/python3 tests/reference/make_settling.py > tests/reference/settling.csv

The filters are scipy.signal.butter and scipy.signal.bessel(norm="mag"), whose cutoff is where the gain is
1/sqrt(2). Their step response is that of the state space system, by the matrix exponential
(scipy.linalg.expm): no partial fractions, so another way than the one that is checked.
"""
import numpy
import scipy
from scipy import linalg, optimize, signal

SHARES = [0.2, 0.1, 0.05, 0.02, 1e-2, 1e-3, 1e-4, 1e-5, 1e-6]
GRID = 1e-3  # s; the fastest oscillation at 1 Hz lasts some 700 of these


def system(kind, order):
    if kind == "butterworth":
        zpk = signal.butter(order, 2 * numpy.pi, analog=True, output="zpk")
    else:
        zpk = signal.bessel(order, 2 * numpy.pi, analog=True, norm="mag", output="zpk")
    # A chain of first and second order sections: the companion matrix of order 8 is badly conditioned.
    zeros, poles, gain = zpk
    assert len(zeros) == 0
    a = numpy.zeros((order, order))
    b = numpy.zeros(order)
    row = 0
    pairs = sorted((p for p in poles if p.imag > 1e-9), key=lambda p: p.imag)
    for pole in [p.real for p in poles if abs(p.imag) <= 1e-9] + pairs:
        size = 2 if isinstance(pole, complex) or isinstance(pole, numpy.complexfloating) else 1
        square = abs(pole) ** size
        if size == 2:
            a[row, row + 1] = 1
            a[row + 1, row] = -square
            a[row + 1, row + 1] = 2 * pole.real
        else:
            a[row, row] = pole
        last = row + size - 1
        if row == 0:
            b[last] = square
        else:
            a[last, row - previous] += square
        previous, row = size, row + size
    return a, b, row - previous


def settled(kind, order, share):
    a, b, out = system(kind, order)
    n = len(b)
    m = numpy.zeros((n + 1, n + 1))  # the input as a state that stays 1
    m[:n, :n], m[:n, n] = a, b
    start = numpy.append(numpy.zeros(n), 1.0)
    missing = lambda t: abs((linalg.expm(m * t) @ start)[out] - 1) - share
    step = linalg.expm(m * GRID)
    state, values = start, []
    for _ in range(int(20 / GRID)):
        values.append(abs(state[out] - 1))
        state = step @ state
    last = max(k for k, value in enumerate(values) if value > share)
    assert last < len(values) - 2
    return optimize.brentq(missing, last * GRID, (last + 1) * GRID, xtol=1e-14, rtol=1e-14)


print("# Settling of the step response of analogue low-pass filters of cutoff 1 Hz (gain 1/sqrt 2).")
print(f"# SciPy {scipy.__version__}, NumPy {numpy.__version__}, by make_settling.py beside this file.")
print("kind,order,share,settling_s,source")
for kind in ["butterworth", "bessel"]:
    for order in range(1, 9):
        for share in SHARES:
            print(f"{kind},{order},{share:g},{settled(kind, order, share):.12g},SciPy")
