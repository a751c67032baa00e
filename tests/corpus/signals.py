# SPDX-License-Identifier: GPL-3.0-or-later
"""Step recordings with a known truth, and the troubles that are laid on them; kinds.py puts them together.

The truth of a recording is `settled`: the heights that the shunts give, with the drift, without settling,
bounce, noise, mains pick-up, spikes and rounding. The true mean of a level is the mean of `settled` over all
its samples, from the first one after the switching to the last one before the next. Where drift runs in a
level a span that leaves samples out at one end has another mean: the scorer therefore reports the coverage of
both, over the span and over the level.

Every recording is fair: `needed` samples are held, so that the mean of 60 % of a level lies within 5 % of the
smallest step with 2.6 standard deviations (99 %), mains pick-up and correlation of the noise reckoned with.
"""
import math
from dataclasses import dataclass, field

import numpy as np


@dataclass
class Signal:
    """A recording before it is written to a file. Levels k holds the samples edges[k] to edges[k + 1] - 1."""
    times_s: np.ndarray
    values: np.ndarray           # what the logger saw
    settled: np.ndarray          # the truth, see above
    edges: list
    heights: np.ndarray          # of the levels, without drift
    unit: str = "um/m"
    rate_hz: float = 0.0         # 0: not even, every sample has a time of its own
    settling_s: float = 0.0      # from the switching until 1 % of the step is left
    digits: int = 0              # decimals that the logger writes
    has_exponents: bool = False  # 1.25e-04 instead of 0.000125
    start_s: float = 0.0         # time of the first sample, where the file has a time in seconds
    missing: np.ndarray = field(default_factory=lambda: np.zeros(0, bool))
    single_step: float = 1.0     # takes the place of the smallest step where there is none

    @property
    def smallest_step(self):
        return steps_of(self.heights) if len(self.heights) > 1 else self.single_step


def needed(step, long_run_sigma):
    """Samples that a level must hold to be fair; `long_run_sigma` / sqrt(n) is the deviation of a mean of
    n."""
    return math.ceil((2.6 * long_run_sigma / (0.05 * step)) ** 2 / 0.6)


def hum_hold_s(step, amplitude, frequency_hz):
    """Hold over which the mean of 60 % of a level has at most 2 % of the step from pick-up cut off
    mid-period."""
    return amplitude / (math.pi * frequency_hz * 0.6 * 0.02 * step)


# --- sequences ---

def two_sided(n):
    up = list(range(1, n + 1))
    return [0, *up, 0, *(-k for k in up), 0]


def up_and_down(n):
    up = list(range(1, n + 1))
    down = list(range(n - 1, -1, -1))
    return [0, *up, *down, *(-k for k in up), *(-k for k in down)]


def pulses(n):
    return [0] + [h for k in range(1, n + 1) for h in (k, 0, -k, 0)]


def stairs(n):
    return list(range(n))


def sequence(rng, shape=None):
    """Heights as shunts of 1 % resistors give them, an offset on all, and their unit."""
    shapes = [two_sided(3), two_sided(2), two_sided(4), up_and_down(2), up_and_down(3), pulses(2), pulses(3),
              stairs(6), [0, 2, 0, -2, 0, 1, 0, -1, 0], [0, 1, 2, 3, 4, 5, 0], [0, 3, 2, 1, 0, -3, -2, -1, 0]]
    shape = shapes[rng.integers(len(shapes))] if shape is None else shape
    unit = "mV/V" if rng.random() < 0.3 else "um/m"
    size = 10 ** (rng.uniform(-0.7, 0.3) if unit == "mV/V" else rng.uniform(2.3, 3.2))
    size *= rng.choice([-1.0, 1.0])
    trim = {k: 1 + 0.01 * rng.standard_normal() for k in sorted(set(shape))}
    return size * (rng.uniform(-0.4, 0.4) + np.array([k * trim[k] for k in shape])), unit


def steps_of(heights):
    return float(np.min(np.abs(np.diff(heights))))


# --- building ---

def holds(rng, levels, least, spread=1.6):
    """Samples of each level: at least `least`, up to `spread` times as many, one hold for all or each its
    own."""
    if rng.random() < 0.5:
        return np.full(levels, math.ceil(least * rng.uniform(1.05, spread)))
    return np.ceil(least * rng.uniform(1.05, spread, levels)).astype(int)


def signal(heights, counts, rate_hz, unit, response=None, rng=None):
    """Ideal steps, or steps through `response` (share of the step reached t seconds after it)."""
    counts = np.asarray(counts, int)
    edges = [0, *np.cumsum(counts).tolist()]
    times = np.arange(edges[-1]) / rate_hz
    settled = np.repeat(np.asarray(heights, float), counts)
    values = settled.copy()
    if response is not None:
        values = np.full(edges[-1], float(heights[0]))
        for k in range(1, len(heights)):
            since = times[edges[k]:] - times[edges[k]] + (rng.random() if rng is not None else 1.0) / rate_hz
            values[edges[k]:] += (heights[k] - heights[k - 1]) * response(since)
    made = Signal(times, values, settled, edges, np.asarray(heights, float), unit, rate_hz)
    made.digits = max(0, math.ceil(-math.log10(made.smallest_step / 3000)))
    return made


def with_mixed_edges(made, rng):
    """The sample that the switching falls into shows a part of both levels: it is the first of the new
    one."""
    for k in range(1, len(made.heights)):
        part = rng.random()
        at = made.edges[k]
        made.values[at] = part * made.values[at] + (1 - part) * made.settled[at - 1]
    return made


def with_white(made, rng, sigma):
    made.values = made.values + sigma * rng.standard_normal(made.values.size)
    return made


def red(rng, size, phi, sigma):
    """First-order autoregressive noise of standard deviation `sigma`, stationary from its first sample."""
    fresh = (sigma * math.sqrt(1 - phi * phi) * rng.standard_normal(size)).tolist()
    state = sigma * rng.standard_normal()
    out = []
    for one in fresh:
        state = phi * state + one
        out.append(state)
    return np.array(out)


def long_run(phi):
    """Long-run deviation of first-order noise over its deviation: sqrt((1 + phi)/(1 - phi))."""
    return math.sqrt((1 + phi) / (1 - phi))


def with_hum(made, rng, amplitude, frequency_hz):
    frequency_hz += rng.uniform(-0.1, 0.1)
    phase = rng.uniform(0, 2 * math.pi, 2)
    turn = 2 * math.pi * frequency_hz * made.times_s
    made.values = made.values + amplitude * (np.sin(turn + phase[0]) + 0.15 * np.sin(3 * turn + phase[1]))
    return made


def with_drift(made, drift):
    made.values = made.values + drift
    made.settled = made.settled + drift
    return made


def with_spikes(made, rng, share, least, greatest):
    """Single samples off by `least` to `greatest`, none beside another."""
    at = np.flatnonzero(rng.random(made.values.size) < share)
    at = at[np.insert(np.diff(at) > 1, 0, True)] if at.size else at
    size = rng.uniform(least, greatest, at.size) * rng.choice([-1.0, 1.0], at.size)
    made.values[at] += size
    return made


def with_bounce(made, rng, seconds):
    """After each switching the contact opens and closes: samples show the old level, the new one or
    neither."""
    for k in range(1, len(made.heights)):
        begin = made.edges[k]
        end = min(made.edges[k + 1], begin + max(2, round(rng.uniform(0.3, 1) * seconds * made.rate_hz)))
        old, new = made.settled[begin - 1], made.settled[end - 1]
        pick = rng.random(end - begin)
        pick[0] = rng.uniform(0.45, 1)  # the new level begins with the first contact, the first sample that shows it
        open_contact = np.where(pick < 0.55, 2.5 * (old - new), 0.0)
        made.values[begin:end] += np.where(pick < 0.45, old - new, open_contact)
    return made


def quantised(made, step):
    made.values = np.round(made.values / step) * step
    made.digits = max(made.digits, math.ceil(-math.log10(step)) + 3)
    return made


def first_order(tau_s):
    return lambda t: 1 - np.exp(-t / tau_s)


def fourth_order(tau_s):
    """Four equal lags in a row: nothing to see at first, then an S."""
    return lambda t: 1 - np.exp(-t / tau_s) * (1 + t / tau_s + (t / tau_s) ** 2 / 2 + (t / tau_s) ** 3 / 6)


def second_order(damping, natural_rad_s):
    """Step response of a second-order system; textbook, damping below 1."""
    w = natural_rad_s * math.sqrt(1 - damping * damping)
    return lambda t: 1 - np.exp(-damping * natural_rad_s * t) * (
        np.cos(w * t) + damping / math.sqrt(1 - damping * damping) * np.sin(w * t))


def held(rng, heights, unit, rate_hz, least, spread=1.6, response=None):
    """Each of `heights` for `holds` samples."""
    return signal(heights, holds(rng, len(heights), least, spread), rate_hz, unit, response, rng)
