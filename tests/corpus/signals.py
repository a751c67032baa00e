# SPDX-License-Identifier: GPL-3.0-or-later
"""Step recordings with a known truth, one function a kind of trouble.

The truth of a recording is `settled`: the heights that the shunts give, with the drift, without settling, bounce,
noise, mains pick-up, spikes and rounding. The true mean of a level is the mean of `settled` over all its samples, from
the first one after the switching to the last one before the next. Where drift runs in a level a span that leaves
samples out at one end has another mean: the scorer therefore reports the coverage of both, over the span and over the
level.

Every recording is fair: `needed` samples are held, so that the mean of 60 % of a level lies within 5 % of the smallest
step with 2.6 standard deviations (99 %), mains pick-up and correlation of the noise reckoned with.
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
    """Samples that a level must hold to be fair; `long_run_sigma` / sqrt(n) is the deviation of a mean of n."""
    return math.ceil((2.6 * long_run_sigma / (0.05 * step)) ** 2 / 0.6)


def hum_hold_s(step, amplitude, frequency_hz):
    """Hold over which the mean of 60 % of a level has at most 2 % of the step from pick-up cut off mid-period."""
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
    shapes = [two_sided(3), two_sided(2), two_sided(4), up_and_down(2), up_and_down(3), pulses(2), pulses(3), stairs(6),
              [0, 2, 0, -2, 0, 1, 0, -1, 0], [0, 1, 2, 3, 4, 5, 0], [0, 3, 2, 1, 0, -3, -2, -1, 0]]
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
    """Samples of each level: at least `least`, up to `spread` times as many, one hold for all or each its own."""
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
    """The sample that the switching falls into shows a part of both levels: it is the first of the new one."""
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
    """After each switching the contact opens and closes: samples show the old level, the new one or neither."""
    for k in range(1, len(made.heights)):
        begin = made.edges[k]
        end = min(made.edges[k + 1], begin + max(2, round(rng.uniform(0.3, 1) * seconds * made.rate_hz)))
        old, new = made.settled[begin - 1], made.settled[end - 1]
        pick = rng.random(end - begin)
        made.values[begin:end] += np.where(pick < 0.45, old - new, np.where(pick < 0.55, 2.5 * (old - new), 0.0))
        made.values[begin] += 0.0
    return made


def quantised(made, step):
    made.values = np.round(made.values / step) * step
    made.digits = max(made.digits, math.ceil(-math.log10(step)) + 3)
    return made


def first_order(tau_s):
    return lambda t: 1 - np.exp(-t / tau_s)


def second_order(damping, natural_rad_s):
    """Step response of a second-order system; textbook, damping below 1."""
    w = natural_rad_s * math.sqrt(1 - damping * damping)
    return lambda t: 1 - np.exp(-damping * natural_rad_s * t) * (
        np.cos(w * t) + damping / math.sqrt(1 - damping * damping) * np.sin(w * t))


# --- kinds ---

def clean(rng):
    heights, unit = sequence(rng)
    rate = rng.choice([10.0, 50.0, 100.0])
    return signal(heights, holds(rng, len(heights), 60), rate, unit)


def white_small(rng):
    heights, unit = sequence(rng)
    sigma = steps_of(heights) / rng.uniform(30, 200)
    made = signal(heights, holds(rng, len(heights), 80, 3), rng.choice([20.0, 50.0, 200.0]), unit)
    return with_white(with_mixed_edges(made, rng), rng, sigma)


def white_large(rng):
    heights, unit = sequence(rng)
    sigma = steps_of(heights) / rng.uniform(2.5, 8)
    least = max(100, needed(steps_of(heights), sigma))
    return with_white(signal(heights, holds(rng, len(heights), least), rng.choice([100.0, 500.0]), unit), rng, sigma)


def barely_above_noise(rng):
    """Steps of 1.5 to 2 standard deviations of one sample."""
    heights, unit = sequence(rng)
    sigma = steps_of(heights) / rng.uniform(1.5, 2)
    least = needed(steps_of(heights), sigma)
    return with_white(signal(heights, holds(rng, len(heights), least), 1000.0, unit), rng, sigma)


def red_noise(rng, phi, low, high):
    heights, unit = sequence(rng, [two_sided(2), two_sided(3), pulses(2), stairs(6)][rng.integers(4)])
    sigma = steps_of(heights) / rng.uniform(low, high)
    least = needed(steps_of(heights), sigma * long_run(phi))
    made = signal(heights, holds(rng, len(heights), least, 1.3), 500.0, unit)
    made.values = made.values + red(rng, made.values.size, phi, sigma)
    return made


def red_short(rng):
    return red_noise(rng, 0.9, 5, 12)


def red_long(rng):
    return red_noise(rng, 0.98, 8, 16)


def hum(rng, low, high):
    heights, unit = sequence(rng)
    step = steps_of(heights)
    amplitude = step * rng.uniform(low, high)
    mains = rng.choice([50.0, 60.0])
    rate = rng.choice([500.0, 1000.0, 1200.0, 2000.0])
    hold = max(0.4, hum_hold_s(step, amplitude, mains))
    made = signal(heights, holds(rng, len(heights), hold * rate), rate, unit)
    return with_white(with_hum(made, rng, amplitude, mains), rng, step / rng.uniform(15, 60))


def hum_below(rng):
    return hum(rng, 0.1, 0.8)


def hum_above(rng):
    return hum(rng, 1.2, 4)


def drift_inside(rng):
    """A straight drift, or one that starts anew at every switching: 10 to 30 % of the smallest step in a level."""
    heights, unit = sequence(rng)
    step = steps_of(heights)
    sigma = step / rng.uniform(8, 40)
    least = max(150, 2 * needed(step, sigma))
    made = signal(heights, holds(rng, len(heights), least, 1.2), 100.0, unit)
    share = step * rng.uniform(0.1, 0.3) * rng.choice([-1.0, 1.0])
    longest = max(np.diff(made.edges))
    k = np.arange(made.values.size)
    if rng.random() < 0.5:
        drift = share * k / longest
    else:
        begin = np.repeat(made.edges[:-1], np.diff(made.edges))
        drift = share * (k - begin) / longest
    return with_white(with_drift(made, drift), rng, sigma)


def creep_inside(rng):
    """Self-heating: after each switching 4 to 10 % of the step are still to come, slowly."""
    heights, unit = sequence(rng)
    step = steps_of(heights)
    sigma = step / rng.uniform(15, 60)
    made = signal(heights, holds(rng, len(heights), max(200, 2 * needed(step, sigma)), 1.2), 50.0, unit)
    share = rng.uniform(0.04, 0.1) * step
    for k in range(1, len(heights)):
        part = slice(made.edges[k], made.edges[k + 1])
        t = np.arange(made.edges[k + 1] - made.edges[k]) / (made.edges[k + 1] - made.edges[k])
        creep = -share * np.sign(heights[k] - heights[k - 1]) * np.exp(-t / rng.uniform(0.3, 0.8))
        made.values[part] += creep
        made.settled[part] += creep
    return with_white(made, rng, sigma)


def drift_across(rng):
    """The zero wanders by one to three steps over the recording, along a line or a slow wave."""
    heights, unit = sequence(rng)
    step = steps_of(heights)
    sigma = step / rng.uniform(10, 50)
    made = signal(heights, holds(rng, len(heights), max(150, 2 * needed(step, sigma)), 1.5), 50.0, unit)
    x = np.arange(made.values.size) / made.values.size
    size = step * min(rng.uniform(1, 3), 0.2 * len(heights)) * rng.choice([-1.0, 1.0])
    drift = size * x if rng.random() < 0.5 else size / 3 * np.sin(2 * math.pi * (x * rng.uniform(0.5, 1) + rng.random()))
    return with_white(with_drift(made, drift), rng, sigma)


def settling(rng, response, settling_s, hold_s, rate, noise):
    heights, unit = sequence(rng)
    sigma = steps_of(heights) / noise
    least = max(hold_s * rate, 2 * needed(steps_of(heights), sigma))
    made = signal(heights, holds(rng, len(heights), least, 1.4), rate, unit, response, rng)
    made.settling_s = settling_s
    return with_white(made, rng, sigma)


def settling_first(rng):
    """First-order lag, hold 14 to 40 time constants: 1 % is left after 4.6 of them."""
    tau = 10 ** rng.uniform(-2, -0.5)
    return settling(rng, first_order(tau), 4.6 * tau, tau * rng.uniform(14, 40), 10 ** rng.uniform(1, 1.6) / tau,
                    rng.uniform(15, 60))


def settling_second(rng):
    damping = rng.uniform(0.15, 0.6)
    natural = 10 ** rng.uniform(0.8, 2)
    settled = math.log(100 / math.sqrt(1 - damping ** 2)) / (damping * natural)
    return settling(rng, second_order(damping, natural), settled, settled * rng.uniform(3.5, 7),
                    natural * rng.uniform(2, 6), rng.uniform(15, 60))


def spikes(rng):
    heights, unit = sequence(rng)
    step = steps_of(heights)
    sigma = step / rng.uniform(10, 60)
    made = signal(heights, holds(rng, len(heights), max(150, 2 * needed(step, sigma))), 100.0, unit)
    with_white(made, rng, sigma)
    return with_spikes(made, rng, 10 ** rng.uniform(-2.7, -1.9), step, step * 10 ** rng.uniform(0.3, 1.5))


def bounce(rng):
    heights, unit = sequence(rng)
    step = steps_of(heights)
    sigma = step / rng.uniform(10, 60)
    made = signal(heights, holds(rng, len(heights), 400, 3), rng.choice([500.0, 1000.0]), unit)
    return with_white(with_bounce(made, rng, 0.05), rng, sigma)


def quantised_coarse(rng):
    """A converter step of a 12th to a 30th of the smallest step, the noise up to half of it, or none."""
    heights, unit = sequence(rng)
    lsb = steps_of(heights) / rng.uniform(12, 30)
    made = signal(heights, holds(rng, len(heights), 150, 3), 100.0, unit)
    sigma = lsb * rng.choice([0.0, 0.2, 0.5])
    return quantised(with_white(made, rng, sigma), lsb)


def lengths_apart(rng):
    """Levels of very different length: the longest up to a hundred times the shortest."""
    heights, unit = sequence(rng)
    step = steps_of(heights)
    sigma = step / rng.uniform(12, 60)
    least = max(30, 2 * needed(step, sigma))
    counts = np.ceil(least * 10 ** rng.uniform(0, 2, len(heights))).astype(int)
    counts[rng.integers(len(counts))] = least * 100
    counts[rng.integers(len(counts))] = least
    return with_white(signal(heights, counts, 50.0, unit), rng, sigma)


def slow_logger(rng):
    """1 to 10 samples a second."""
    heights, unit = sequence(rng)
    rate = rng.choice([1.0, 2.0, 5.0, 10.0])
    sigma = steps_of(heights) / rng.uniform(25, 150)
    made = signal(heights, holds(rng, len(heights), 20, 3), rate, unit)
    return with_white(with_mixed_edges(made, rng), rng, sigma)


def fast_logger(rng):
    """50,000 samples a second, 50 to 120 ms a level."""
    heights, unit = sequence(rng, [two_sided(2), pulses(2), stairs(6), two_sided(3)][rng.integers(4)])
    step = steps_of(heights)
    tau = rng.uniform(0.0002, 0.001)
    made = signal(heights, holds(rng, len(heights), 2500, 2.4), 50000.0, unit, first_order(tau), rng)
    made.settling_s = 4.6 * tau
    return with_white(made, rng, step / rng.uniform(3, 20))


def pulses_to_zero(rng):
    """Short pulses, the zero between them up to ten times as long."""
    heights, unit = sequence(rng, pulses(int(rng.integers(2, 6))))
    step = steps_of(heights)
    sigma = step / rng.uniform(12, 60)
    least = max(40, 2 * needed(step, sigma))
    counts = [math.ceil(least * (rng.uniform(1, 10) if k % 2 == 0 else rng.uniform(1, 1.5))) for k in range(len(heights))]
    return with_white(signal(heights, counts, 200.0, unit), rng, sigma)


def staircase(rng):
    heights, unit = sequence(rng, stairs(int(rng.integers(8, 25))))
    sigma = steps_of(heights) / rng.uniform(5, 40)
    least = max(80, needed(steps_of(heights), sigma))
    return with_white(signal(heights, holds(rng, len(heights), least), 50.0, unit), rng, sigma)


def cut_at_both_ends(rng):
    """Recording begins and ends in the middle of a hold."""
    heights, unit = sequence(rng)
    sigma = steps_of(heights) / rng.uniform(8, 40)
    least = max(100, 2 * needed(steps_of(heights), sigma))
    counts = holds(rng, len(heights), 2 * least)
    counts[0] = math.ceil(least * rng.uniform(0.6, 1))
    counts[-1] = math.ceil(least * rng.uniform(0.6, 1))
    return with_white(signal(heights, counts, 100.0, unit), rng, sigma)


def missing_cells(rng):
    """Up to a tenth of the cells give no number: single ones, and gaps of up to a fifth of a level."""
    heights, unit = sequence(rng)
    sigma = steps_of(heights) / rng.uniform(10, 60)
    made = signal(heights, holds(rng, len(heights), max(150, 2 * needed(steps_of(heights), sigma)), 2), 100.0, unit)
    made.missing = rng.random(made.values.size) < rng.uniform(0.005, 0.05)
    for k in range(len(heights)):
        if rng.random() < 0.4:
            held = made.edges[k + 1] - made.edges[k]
            gap = int(held * rng.uniform(0.02, 0.2))
            begin = made.edges[k] + rng.integers(held - gap)
            made.missing[begin:begin + gap] = True
    made.missing[0] = made.missing[-1] = False
    return with_white(made, rng, sigma)


def uneven_sampling(rng):
    """Every sample late or early by a third of the spacing, and pauses of the logger within levels."""
    heights, unit = sequence(rng)
    sigma = steps_of(heights) / rng.uniform(10, 60)
    made = signal(heights, holds(rng, len(heights), max(150, 2 * needed(steps_of(heights), sigma)), 2), 50.0, unit)
    spacing = np.full(made.values.size, 1 / made.rate_hz)
    for at in rng.integers(1, made.values.size, 6):
        spacing[at] *= rng.uniform(3, 40)
    made.times_s = np.cumsum(spacing) - spacing[0] + rng.uniform(-0.33, 0.33, spacing.size) / made.rate_hz
    made.times_s -= made.times_s[0]
    made.rate_hz = 0.0
    return with_white(made, rng, sigma)


def all_together(rng):
    heights, unit = sequence(rng)
    step = steps_of(heights)
    mains = rng.choice([50.0, 60.0])
    rate = rng.choice([500.0, 1000.0])
    amplitude = step * rng.uniform(0.2, 1)
    white, slow, phi = step / rng.uniform(8, 20), step / rng.uniform(15, 30), 0.9
    least = max(needed(step, math.hypot(white, slow * long_run(phi))), 1.5 * hum_hold_s(step, amplitude, mains) * rate,
                1.5 * rate)
    counts = holds(rng, len(heights), least, 1.5)
    tau = least / rate / rng.uniform(25, 60)
    made = signal(heights, counts, rate, unit, first_order(tau), rng)
    made.settling_s = 4.6 * tau
    with_bounce(made, rng, 0.02)
    with_drift(made, step * rng.uniform(-0.1, 0.1) * np.arange(made.values.size) / least)
    with_hum(with_white(made, rng, white), rng, amplitude, mains)
    made.values = made.values + red(rng, made.values.size, phi, slow)
    with_spikes(made, rng, 0.002, step, 10 * step)
    return quantised(made, step / rng.uniform(30, 100))


def single_level(rng):
    """No step at all; noise, drift and spikes make none. What may be missed is 1 standard deviation of a sample."""
    rate = rng.choice([50.0, 1000.0])
    sigma = 10 ** rng.uniform(-3, 1)
    made = signal([rng.uniform(-1000, 1000)], [math.ceil(10 ** rng.uniform(3.6, 4.6))], rate, "um/m")
    made.single_step, made.digits = 20 * sigma, 5
    with_drift(made, sigma * rng.uniform(0, 3) * np.arange(made.values.size) / made.values.size)
    return with_spikes(with_white(made, rng, sigma), rng, 0.001, 10 * sigma, 100 * sigma)


def few_levels(rng):
    heights, unit = sequence(rng, [[0, 1, 0], [0, 1], [0, -1, 1]][rng.integers(3)])
    sigma = steps_of(heights) / rng.uniform(4, 60)
    least = max(60, needed(steps_of(heights), sigma))
    return with_white(signal(heights, holds(rng, len(heights), least, 3), 50.0, unit), rng, sigma)


def many_levels(rng):
    """Sixty levels and more: several runs in one file, a longer hold between them."""
    runs = int(rng.integers(5, 9))
    heights, unit = sequence(rng, two_sided(3)[:-1] * runs + [0])
    sigma = steps_of(heights) / rng.uniform(5, 40)
    counts = holds(rng, len(heights), max(80, needed(steps_of(heights), sigma)), 1.3)
    counts[::8] *= 3
    return with_white(signal(heights, counts, 100.0, unit), rng, sigma)


def big_offset(rng):
    """Small steps on a value of about a million."""
    heights, unit = sequence(rng)
    heights = heights / np.max(np.abs(heights)) * rng.uniform(0.5, 20) + rng.choice([-1.0, 1.0]) * rng.uniform(0.3e6, 3e6)
    sigma = steps_of(heights) / rng.uniform(6, 60)
    least = max(100, needed(steps_of(heights), sigma))
    return with_white(signal(heights, holds(rng, len(heights), least), 100.0, unit), rng, sigma)


def tiny_volts(rng):
    """Volts of a bridge: steps of some 100 uV, written with exponents."""
    heights, _ = sequence(rng)
    heights = heights / np.max(np.abs(heights)) * 10 ** rng.uniform(-5, -2.5)
    sigma = steps_of(heights) / rng.uniform(6, 60)
    least = max(100, needed(steps_of(heights), sigma))
    made = signal(heights, holds(rng, len(heights), least), 200.0, "V")
    made.has_exponents = True
    return with_white(made, rng, sigma)


def odd_start(rng):
    """Time begins before 0 (a pre-trigger) or late."""
    made = white_small(rng)
    made.start_s = float(rng.choice([-5.0, -0.25, 3600.5, 1e6]))
    return made


def brief_holds(rng):
    """0.2 s at 1000 samples a second, a time constant of 2 to 8 ms, some pick-up."""
    heights, unit = sequence(rng)
    step = steps_of(heights)
    tau = rng.uniform(0.002, 0.008)
    made = signal(heights, holds(rng, len(heights), 200, 1.3), 1000.0, unit, first_order(tau), rng)
    made.settling_s = 4.6 * tau
    return with_white(with_hum(made, rng, 0.1 * step, 50.0), rng, step / rng.uniform(10, 40))


def slow_settling(rng):
    """Nearly half of the hold goes by until 1 % of the step is left."""
    tau = 10 ** rng.uniform(-1.5, 0)
    return settling(rng, first_order(tau), 4.6 * tau, tau * rng.uniform(9.6, 12), 10 ** rng.uniform(1.2, 1.6) / tau,
                    rng.uniform(20, 60))


def steps_apart(rng):
    """The largest step is ten to thirty times the smallest; hold of 30 time constants."""
    shape = [[0, 1, 2, 20, 0, -1, -2, -20, 0], [0, 30, 0, 1, 2, 3, 0], [0, 1, 0, 10, 0, 1, 0, -10, 0, -1, 0]][rng.integers(3)]
    heights, unit = sequence(rng, shape)
    step = steps_of(heights)
    sigma = step / rng.uniform(8, 40)
    rate = 100.0
    least = max(150, 2 * needed(step, sigma))
    tau = least / rate / 30
    made = signal(heights, holds(rng, len(heights), least), rate, unit, first_order(tau), rng)
    made.settling_s = 8 * tau
    return with_white(made, rng, sigma)


def noise_of_levels(rng):
    """Each level scatters in its own way, up to twenty times as much as another."""
    heights, unit = sequence(rng)
    step = steps_of(heights)
    sigmas = step / 10 ** rng.uniform(0.7, 2, len(heights))
    made = signal(heights, holds(rng, len(heights), max(150, 2 * needed(step, step / 5))), 100.0, unit)
    made.values = made.values + np.repeat(sigmas, np.diff(made.edges)) * rng.standard_normal(made.values.size)
    return made


def hum_folded(rng):
    """Mains pick-up sampled too slowly: it shows at another frequency."""
    heights, unit = sequence(rng)
    step = steps_of(heights)
    mains, rate = [(50.0, 64.0), (50.0, 40.0), (60.0, 50.0), (50.0, 80.0), (60.0, 100.0)][rng.integers(5)]
    folded = abs(mains - rate * round(mains / rate))
    amplitude = step * rng.uniform(0.2, 1.2)
    made = signal(heights, holds(rng, len(heights), max(4.0, 1.5 * hum_hold_s(step, amplitude, folded)) * rate), rate, unit)
    return with_white(with_hum(made, rng, amplitude, mains), rng, step / rng.uniform(15, 60))


def slow_edges(rng):
    """From one level to the next along a straight ramp that takes 3 to 10 % of the hold."""
    heights, unit = sequence(rng)
    step = steps_of(heights)
    sigma = step / rng.uniform(10, 60)
    rate = 100.0
    counts = holds(rng, len(heights), max(200, 2 * needed(step, sigma)), 1.3)
    ramp_s = min(counts) / rate * rng.uniform(0.03, 0.1)
    made = signal(heights, counts, rate, unit, lambda t: np.clip(t / ramp_s, 0, 1), rng)
    made.settling_s = ramp_s
    return with_white(made, rng, sigma)


def spikes_huge(rng):
    """One to three in a hundred samples off by a hundred to ten thousand steps."""
    heights, unit = sequence(rng)
    step = steps_of(heights)
    sigma = step / rng.uniform(10, 60)
    made = with_white(signal(heights, holds(rng, len(heights), max(200, 2 * needed(step, sigma))), 100.0, unit), rng, sigma)
    return with_spikes(made, rng, rng.uniform(0.01, 0.03), 100 * step, step * 10 ** rng.uniform(2.5, 4))


def repeated_samples(rng):
    """The logger asks faster than the instrument answers: every value is written four to ten times."""
    heights, unit = sequence(rng)
    step = steps_of(heights)
    times = int(rng.integers(4, 11))
    sigma = step / rng.uniform(6, 40)
    least = max(60 * times, 2 * needed(step, sigma * math.sqrt(times)))
    made = signal(heights, holds(rng, len(heights), least), 500.0, unit)
    noise = sigma * rng.standard_normal(made.values.size // times + 1)
    made.values = made.values + np.repeat(noise, times)[:made.values.size]
    return made


def averaged_filter(rng):
    """A moving average of 10 to 40 samples over steps and noise: edges are ramps, the noise is correlated."""
    heights, unit = sequence(rng)
    step = steps_of(heights)
    length = int(rng.integers(10, 41))
    sigma = step / rng.uniform(1, 6)  # before the average
    least = max(12 * length, 2 * needed(step, sigma))
    made = with_white(signal(heights, holds(rng, len(heights), least), 1000.0, unit), rng, sigma)
    before = made.values[0] + sigma * rng.standard_normal(length - 1)
    made.values = np.convolve(np.concatenate((before - (made.values[0] - heights[0]), made.values)),
                              np.ones(length) / length, "valid")
    made.settling_s = length / made.rate_hz
    return made


def quantised_dithered(rng):
    """A converter step of a third to an eighth of the smallest step, noise of 0.5 to 0.8 of it: means are still right."""
    heights, unit = sequence(rng)
    lsb = steps_of(heights) / rng.uniform(3, 8)
    sigma = lsb * rng.uniform(0.5, 0.8)
    least = max(150, 2 * needed(steps_of(heights), sigma))
    made = with_white(signal(heights, holds(rng, len(heights), least), 200.0, unit), rng, sigma)
    return quantised(made, lsb)


KINDS = {make.__name__: make for make in (
    clean, white_small, white_large, barely_above_noise, red_short, red_long, hum_below, hum_above, drift_inside,
    creep_inside, drift_across, settling_first, settling_second, spikes, bounce, quantised_coarse, lengths_apart,
    slow_logger, fast_logger, pulses_to_zero, staircase, cut_at_both_ends, missing_cells, uneven_sampling,
    all_together, single_level, few_levels, many_levels, big_offset, tiny_volts, odd_start, brief_holds, slow_settling,
    steps_apart, noise_of_levels, hum_folded, slow_edges, spikes_huge, repeated_samples, averaged_filter,
    quantised_dithered)}
