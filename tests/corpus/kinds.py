# SPDX-License-Identifier: GPL-3.0-or-later
"""The kinds of step recordings in the corpus, a function each; what is fair and true is told in signals.py."""
import math

import numpy as np

from signals import (first_order, fourth_order, held, holds, hum_hold_s, long_run, needed, pulses, quantised, red,
                     second_order, sequence, signal, stairs, steps_of, two_sided, with_bounce, with_drift, with_hum,
                     with_mixed_edges, with_spikes, with_white)


def clean(rng):
    heights, unit = sequence(rng)
    rate = rng.choice([10.0, 50.0, 100.0])
    return held(rng, heights, unit, rate, 60)


def white_small(rng):
    heights, unit = sequence(rng)
    sigma = steps_of(heights) / rng.uniform(30, 200)
    made = held(rng, heights, unit, rng.choice([20.0, 50.0, 200.0]), 80, 3)
    return with_white(with_mixed_edges(made, rng), rng, sigma)


def white_large(rng):
    heights, unit = sequence(rng)
    sigma = steps_of(heights) / rng.uniform(2.5, 8)
    least = max(100, needed(steps_of(heights), sigma))
    return with_white(held(rng, heights, unit, rng.choice([100.0, 500.0]), least), rng, sigma)


def barely_above_noise(rng):
    """Steps of 1.5 to 2 standard deviations of one sample."""
    heights, unit = sequence(rng)
    sigma = steps_of(heights) / rng.uniform(1.5, 2)
    least = needed(steps_of(heights), sigma)
    return with_white(held(rng, heights, unit, 1000.0, least), rng, sigma)


def red_noise(rng, phi, low, high):
    heights, unit = sequence(rng, [two_sided(2), two_sided(3), pulses(2), stairs(6)][rng.integers(4)])
    sigma = steps_of(heights) / rng.uniform(low, high)
    least = needed(steps_of(heights), sigma * long_run(phi))
    made = held(rng, heights, unit, 500.0, least, 1.3)
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
    made = held(rng, heights, unit, rate, hold * rate)
    return with_white(with_hum(made, rng, amplitude, mains), rng, step / rng.uniform(15, 60))


def hum_below(rng):
    return hum(rng, 0.1, 0.8)


def hum_above(rng):
    return hum(rng, 1.2, 4)


def drift_inside(rng):
    """A straight drift, or one that starts anew at every switching: 10 to 30 % of the smallest step in a
    level."""
    heights, unit = sequence(rng)
    step = steps_of(heights)
    sigma = step / rng.uniform(8, 40)
    least = max(150, 2 * needed(step, sigma))
    made = held(rng, heights, unit, 100.0, least, 1.2)
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
    made = held(rng, heights, unit, 50.0, max(200, 2 * needed(step, sigma)), 1.2)
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
    made = held(rng, heights, unit, 50.0, max(150, 2 * needed(step, sigma)), 1.5)
    x = np.arange(made.values.size) / made.values.size
    size = step * min(rng.uniform(1, 3), 0.2 * len(heights)) * rng.choice([-1.0, 1.0])
    wave = size / 3 * np.sin(2 * math.pi * (x * rng.uniform(0.5, 1) + rng.random()))
    drift = size * x if rng.random() < 0.5 else wave
    return with_white(with_drift(made, drift), rng, sigma)


def settling(rng, response, settling_s, hold_s, rate, noise):
    heights, unit = sequence(rng)
    sigma = steps_of(heights) / noise
    least = max(hold_s * rate, 2 * needed(steps_of(heights), sigma))
    made = held(rng, heights, unit, rate, least, 1.4, response=response)
    made.settling_s = settling_s
    return with_white(made, rng, sigma)


def settling_first(rng):
    """First-order lag, hold 14 to 40 time constants: 1 % is left after 4.6 of them."""
    tau = 10 ** rng.uniform(-2, -0.5)
    rate = 10 ** rng.uniform(1, 1.6) / tau
    return settling(rng, first_order(tau), 4.6 * tau, tau * rng.uniform(14, 40), rate, rng.uniform(15, 60))


def settling_second(rng):
    damping = rng.uniform(0.15, 0.6)
    natural = 10 ** rng.uniform(0.8, 2)
    settled = math.log(100 / math.sqrt(1 - damping ** 2)) / (damping * natural)
    return settling(rng, second_order(damping, natural), settled, settled * rng.uniform(3.5, 7),
                    natural * rng.uniform(2, 6), rng.uniform(15, 60))


def settling_fourth(rng):
    """A filter of fourth order: 1 % is left after 10 of its time constants."""
    tau = 10 ** rng.uniform(-2.5, -1)
    rate = 10 ** rng.uniform(0.5, 1.2) / tau
    return settling(rng, fourth_order(tau), 10 * tau, tau * rng.uniform(30, 60), rate, rng.uniform(15, 60))


def spikes(rng):
    heights, unit = sequence(rng)
    step = steps_of(heights)
    sigma = step / rng.uniform(10, 60)
    made = held(rng, heights, unit, 100.0, max(150, 2 * needed(step, sigma)))
    with_white(made, rng, sigma)
    return with_spikes(made, rng, 10 ** rng.uniform(-2.7, -1.9), step, step * 10 ** rng.uniform(0.3, 1.5))


def bounce(rng):
    heights, unit = sequence(rng)
    step = steps_of(heights)
    sigma = step / rng.uniform(10, 60)
    made = held(rng, heights, unit, rng.choice([500.0, 1000.0]), 400, 3)
    return with_white(with_bounce(made, rng, 0.05), rng, sigma)


def quantised_coarse(rng):
    """A converter step of a 12th to a 30th of the smallest step, the noise up to half of it, or none."""
    heights, unit = sequence(rng)
    lsb = steps_of(heights) / rng.uniform(12, 30)
    made = held(rng, heights, unit, 100.0, 150, 3)
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
    made = held(rng, heights, unit, rate, 20, 3)
    return with_white(with_mixed_edges(made, rng), rng, sigma)


def fast_logger(rng):
    """50,000 samples a second, 50 to 120 ms a level."""
    heights, unit = sequence(rng, [two_sided(2), pulses(2), stairs(6), two_sided(3)][rng.integers(4)])
    step = steps_of(heights)
    tau = rng.uniform(0.0002, 0.001)
    made = held(rng, heights, unit, 50000.0, 2500, 2.4, response=first_order(tau))
    made.settling_s = 4.6 * tau
    return with_white(made, rng, step / rng.uniform(3, 20))


def pulses_to_zero(rng):
    """Short pulses, the zero between them up to ten times as long."""
    heights, unit = sequence(rng, pulses(int(rng.integers(2, 6))))
    step = steps_of(heights)
    sigma = step / rng.uniform(12, 60)
    least = max(40, 2 * needed(step, sigma))
    longest = (10, 1.5)  # of a zero, of a pulse
    counts = [math.ceil(least * rng.uniform(1, longest[k % 2])) for k in range(len(heights))]
    return with_white(signal(heights, counts, 200.0, unit), rng, sigma)


def staircase(rng):
    heights, unit = sequence(rng, stairs(int(rng.integers(8, 25))))
    sigma = steps_of(heights) / rng.uniform(5, 40)
    least = max(80, needed(steps_of(heights), sigma))
    return with_white(held(rng, heights, unit, 50.0, least), rng, sigma)


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
    made = held(rng, heights, unit, 100.0, max(150, 2 * needed(steps_of(heights), sigma)), 2)
    made.missing = rng.random(made.values.size) < rng.uniform(0.005, 0.05)
    for k in range(len(heights)):
        if rng.random() < 0.4:
            count = made.edges[k + 1] - made.edges[k]
            gap = int(count * rng.uniform(0.02, 0.2))
            begin = made.edges[k] + rng.integers(count - gap)
            made.missing[begin:begin + gap] = True
    made.missing[0] = made.missing[-1] = False
    return with_white(made, rng, sigma)


def uneven_sampling(rng):
    """Every sample late or early by a third of the spacing, and pauses of the logger within levels."""
    heights, unit = sequence(rng)
    sigma = steps_of(heights) / rng.uniform(10, 60)
    made = held(rng, heights, unit, 50.0, max(150, 2 * needed(steps_of(heights), sigma)), 2)
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
    least = max(needed(step, math.hypot(white, slow * long_run(phi))), 1.5 * rate,
                1.5 * rate * hum_hold_s(step, amplitude, mains))
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
    """No step at all; noise, drift and spikes make none. What may be missed is 1 standard deviation of a
    sample."""
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
    return with_white(held(rng, heights, unit, 50.0, least, 3), rng, sigma)


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
    heights = heights / np.max(np.abs(heights)) * rng.uniform(0.5, 20)
    heights = heights + rng.choice([-1.0, 1.0]) * rng.uniform(0.3e6, 3e6)
    sigma = steps_of(heights) / rng.uniform(6, 60)
    least = max(100, needed(steps_of(heights), sigma))
    return with_white(held(rng, heights, unit, 100.0, least), rng, sigma)


def tiny_volts(rng):
    """Volts of a bridge: steps of some 100 uV, written with exponents."""
    heights, _ = sequence(rng)
    heights = heights / np.max(np.abs(heights)) * 10 ** rng.uniform(-5, -2.5)
    sigma = steps_of(heights) / rng.uniform(6, 60)
    least = max(100, needed(steps_of(heights), sigma))
    made = held(rng, heights, "V", 200.0, least)
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
    made = held(rng, heights, unit, 1000.0, 200, 1.3, response=first_order(tau))
    made.settling_s = 4.6 * tau
    return with_white(with_hum(made, rng, 0.1 * step, 50.0), rng, step / rng.uniform(10, 40))


def slow_settling(rng):
    """Nearly half of the hold goes by until 1 % of the step is left."""
    tau = 10 ** rng.uniform(-1.5, 0)
    rate = 10 ** rng.uniform(1.2, 1.6) / tau
    return settling(rng, first_order(tau), 4.6 * tau, tau * rng.uniform(9.6, 12), rate, rng.uniform(20, 60))


def steps_apart(rng):
    """The largest step is ten to thirty times the smallest; hold of 30 time constants."""
    shapes = [[0, 1, 2, 20, 0, -1, -2, -20, 0], [0, 30, 0, 1, 2, 3, 0], [0, 1, 0, 10, 0, 1, 0, -10, 0, -1, 0]]
    heights, unit = sequence(rng, shapes[rng.integers(3)])
    step = steps_of(heights)
    sigma = step / rng.uniform(8, 40)
    rate = 100.0
    least = max(150, 2 * needed(step, sigma))
    tau = least / rate / 30
    made = held(rng, heights, unit, rate, least, response=first_order(tau))
    made.settling_s = 8 * tau
    return with_white(made, rng, sigma)


def noise_of_levels(rng):
    """Each level scatters in its own way, up to twenty times as much as another."""
    heights, unit = sequence(rng)
    step = steps_of(heights)
    sigmas = step / 10 ** rng.uniform(0.7, 2, len(heights))
    made = held(rng, heights, unit, 100.0, max(150, 2 * needed(step, step / 5)))
    made.values = made.values + np.repeat(sigmas, np.diff(made.edges)) * rng.standard_normal(made.values.size)
    return made


def hum_folded(rng):
    """Mains pick-up sampled too slowly: it shows at another frequency."""
    heights, unit = sequence(rng)
    step = steps_of(heights)
    mains, rate = [(50.0, 64.0), (50.0, 40.0), (60.0, 50.0), (50.0, 80.0), (60.0, 100.0)][rng.integers(5)]
    folded = abs(mains - rate * round(mains / rate))
    amplitude = step * rng.uniform(0.2, 1.2)
    made = held(rng, heights, unit, rate, max(4.0, 1.5 * hum_hold_s(step, amplitude, folded)) * rate)
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


def spikes_many(rng):
    """One sample in twenty is off."""
    heights, unit = sequence(rng)
    step = steps_of(heights)
    sigma = step / rng.uniform(10, 60)
    made = with_white(held(rng, heights, unit, 100.0, max(300, 2 * needed(step, sigma))), rng, sigma)
    return with_spikes(made, rng, 0.05, step, 20 * step)


def spikes_huge(rng):
    """One to three in a hundred samples off by a hundred to ten thousand steps."""
    heights, unit = sequence(rng)
    step = steps_of(heights)
    sigma = step / rng.uniform(10, 60)
    made = with_white(held(rng, heights, unit, 100.0, max(200, 2 * needed(step, sigma))), rng, sigma)
    return with_spikes(made, rng, rng.uniform(0.01, 0.03), 100 * step, step * 10 ** rng.uniform(2.5, 4))


def repeated_samples(rng):
    """The logger asks faster than the instrument answers: every value is written four to ten times."""
    heights, unit = sequence(rng)
    step = steps_of(heights)
    times = int(rng.integers(4, 11))
    sigma = step / rng.uniform(6, 40)
    least = max(60 * times, 2 * needed(step, sigma * math.sqrt(times)))
    made = held(rng, heights, unit, 500.0, least)
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
    made = with_white(held(rng, heights, unit, 1000.0, least), rng, sigma)
    before = made.values[0] + sigma * rng.standard_normal(length - 1)
    made.values = np.convolve(np.concatenate((before - (made.values[0] - heights[0]), made.values)),
                              np.ones(length) / length, "valid")
    made.settling_s = length / made.rate_hz
    return made


def quantised_dithered(rng):
    """A converter step of a third to an eighth of the smallest step, noise of 0.5 to 0.8 of it: means are
    still right."""
    heights, unit = sequence(rng)
    lsb = steps_of(heights) / rng.uniform(3, 8)
    sigma = lsb * rng.uniform(0.5, 0.8)
    least = max(150, 2 * needed(steps_of(heights), sigma))
    made = with_white(held(rng, heights, unit, 200.0, least), rng, sigma)
    return quantised(made, lsb)


def noise_not_normal(rng):
    """Noise with longer tails (Laplace, Student with 4 degrees of freedom) or none (uniform)."""
    heights, unit = sequence(rng)
    step = steps_of(heights)
    sigma = step / rng.uniform(3, 30)
    made = held(rng, heights, unit, 200.0, max(150, 2 * needed(step, sigma)))
    size = made.values.size
    noise = [rng.laplace(0, math.sqrt(0.5), size), rng.standard_t(4, size) / math.sqrt(2),
             rng.uniform(-math.sqrt(3), math.sqrt(3), size)][rng.integers(3)]
    made.values = made.values + sigma * noise
    return made


def hum_of_other_mains(rng):
    """16.7 Hz of railways, 100 Hz of rectifiers, 400 Hz of aircraft."""
    heights, unit = sequence(rng)
    step = steps_of(heights)
    frequency = float(rng.choice([16.7, 100.0, 400.0]))
    amplitude = step * rng.uniform(0.2, 1.5)
    rate = 2000.0 if frequency > 100 else 500.0
    made = held(rng, heights, unit, rate, rate * max(0.4, 1.5 * hum_hold_s(step, amplitude, frequency)))
    return with_white(with_hum(made, rng, amplitude, frequency), rng, step / rng.uniform(15, 60))


def mixture(rng):
    """Each trouble is there or not, by lot."""
    heights, unit = sequence(rng)
    step = steps_of(heights)
    rate = float(rng.choice([20, 50, 100, 200, 500, 1000, 1024, 2000, 5000]))
    troubles = ("red", "hum", "settling", "drift", "spikes", "bounce", "rounding", "lengths", "cut", "gaps")
    has = dict(zip(troubles, rng.random(len(troubles)) < 0.35))
    white = step / 10 ** rng.uniform(0.5, 2)
    phi, slow = rng.choice([0.7, 0.9, 0.95]), step / rng.uniform(15, 40) * has["red"]
    amplitude = step * rng.uniform(0.1, 1) * (has["hum"] and rate >= 500)
    least = max(60, 1.5 * needed(step, math.hypot(white, slow * long_run(phi))),
                1.5 * rate * hum_hold_s(step, amplitude, 50.0))
    counts = holds(rng, len(heights), least)
    if has["lengths"]:
        counts = np.ceil(counts * 10 ** rng.uniform(0, 1, counts.size)).astype(int)
    if has["cut"]:
        counts[0], counts[-1] = math.ceil(least * rng.uniform(0.8, 1)), math.ceil(least * rng.uniform(0.8, 1))
    tau = least / rate / rng.uniform(20, 60) if has["settling"] else 1e-9
    made = signal(heights, counts, rate, unit, first_order(tau), rng)
    made.settling_s = 4.6 * tau
    if has["bounce"]:
        with_bounce(made, rng, 0.05 * least / rate)
    if has["drift"]:
        with_drift(made, step * rng.uniform(-0.15, 0.15) * np.arange(made.values.size) / max(counts))
    with_white(with_hum(made, rng, amplitude, rng.choice([50.0, 60.0])), rng, white)
    if has["red"]:
        made.values = made.values + red(rng, made.values.size, phi, slow)
    if has["spikes"]:
        with_spikes(made, rng, 0.005, step, 30 * step)
    if has["rounding"]:
        quantised(made, step / rng.uniform(20, 60))
    if has["gaps"]:
        made.missing = rng.random(made.values.size) < 0.02
        made.missing[0] = made.missing[-1] = False
    return made


KINDS = {make.__name__: make for make in (
    clean, white_small, white_large, barely_above_noise, red_short, red_long, hum_below, hum_above,
    drift_inside, creep_inside, drift_across, settling_first, settling_second, settling_fourth, spikes,
    bounce, quantised_coarse, lengths_apart, slow_logger, fast_logger, pulses_to_zero, staircase,
    cut_at_both_ends, missing_cells, uneven_sampling, all_together, single_level, few_levels, many_levels,
    big_offset, tiny_volts, odd_start, brief_holds, slow_settling, steps_apart, noise_of_levels, hum_folded,
    slow_edges, spikes_huge, spikes_many, repeated_samples, averaged_filter, quantised_dithered,
    noise_not_normal, hum_of_other_mains, mixture)}
