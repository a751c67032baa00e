#!/usr/bin/env python3
# SPDX-License-Identifier: GPL-3.0-or-later
"""From a text file to its levels, the whole command, beside counting its lines:

    /usr/bin/python3 tests/bench/levels_command.py PROGRAM [MILLIONS]

Writes a recording of 10 million samples (1000 a second, two columns, holds of 5 to 20 s, white noise, a time
constant of 30 ms, mains pick-up of a third of the smallest step) and calls `PROGRAM levels FILE --json` on
it. Prints wall and user time, peak memory, and how many of the levels were found by the rule of
tests/corpus/score.py. Best of three.
"""
import json
import os
import subprocess
import sys
import tempfile
import time

import numpy as np

sys.path.insert(0, os.path.join(os.path.dirname(os.path.abspath(__file__)), "..", "corpus"))
import score  # noqa: E402

RATE_HZ = 1000
SIZE = 1000.0  # um/m
HEIGHTS = [0, 1, 2, 3, 0, -1, -2, -3]


def recording(samples, rng):
    """Values, the sample where each level begins and one behind the last, and the heights."""
    begins, heights, at = [], [], 0
    while at < samples:
        begins.append(at)
        heights.append(SIZE * HEIGHTS[len(heights) % len(HEIGHTS)])
        at += int(rng.uniform(5, 20) * RATE_HZ)
    if samples - begins[-1] < 5 * RATE_HZ and len(begins) > 1:  # too short a rest belongs to the level before
        begins.pop(), heights.pop()
    begins.append(samples)
    values = np.repeat(heights, np.diff(begins)).astype(float)
    tail = np.exp(-np.arange(RATE_HZ) / (0.03 * RATE_HZ))
    for k in range(1, len(heights)):
        part = values[begins[k]:begins[k] + RATE_HZ]
        part -= (heights[k] - heights[k - 1]) * tail[:part.size]
    values += SIZE / 3 * np.sin(2 * np.pi * 50.03 / RATE_HZ * np.arange(samples))
    values += SIZE / 20 * rng.standard_normal(samples)
    return values, begins, heights


def digits(numbers, width, point):
    """Whole numbers as rows of `width` digits with a point before the last `point`."""
    rows = np.empty((numbers.size, width + 1), np.uint8)
    column = width
    for place in range(width):
        if place == point:
            rows[:, column] = ord(".")
            column -= 1
        rows[:, column] = ord("0") + numbers % 10
        numbers = numbers // 10
        column -= 1
    return rows


def write(path, values):
    with open(path, "wb") as file:
        file.write(b"Time (s),TP-01 (um/m)\n")
        for begin in range(0, values.size, 500000):
            part = values[begin:begin + 500000]
            hundredths = np.round(part * 100).astype(np.int64)
            time_ms = np.arange(begin, begin + part.size)
            mark = np.full((part.size, 1), ord(","), np.uint8)
            sign = np.where(hundredths < 0, ord("-"), ord("+")).astype(np.uint8)[:, None]
            end = np.full((part.size, 1), ord("\n"), np.uint8)
            file.write(np.hstack((digits(time_ms, 9, 3), mark, sign, digits(np.abs(hundredths), 6, 2), end)).tobytes())


def timed(command):
    """Wall and user seconds, peak memory in MB, and the standard output of a command."""
    with tempfile.TemporaryFile() as out:
        begin = time.perf_counter()
        process = subprocess.Popen(command, stdout=out)
        _, status, usage = os.wait4(process.pid, 0)
        wall = time.perf_counter() - begin
        process.returncode = os.waitstatus_to_exitcode(status)
        if process.returncode != 0:
            sys.exit(f"{command[0]} ended with {process.returncode}")
        out.seek(0)
        return wall, usage.ru_utime, usage.ru_maxrss / 1024, out.read()


def best(command):
    return min((timed(command) for _ in range(3)), key=lambda run: run[0])


def main():
    program = os.path.abspath(sys.argv[1])
    samples = int(float(sys.argv[2]) * 1e6) if len(sys.argv) > 2 else 10_000_000
    with tempfile.TemporaryDirectory() as folder:
        path = os.path.join(folder, "recording.csv")
        # In a process of its own: the kernel counts the peak memory of a child from what its parent holds.
        maker = os.fork()
        if maker == 0:
            values, begins, heights = recording(samples, np.random.Generator(np.random.PCG64(5)))
            write(path, values)
            with open(path + ".json", "w", encoding="ascii") as file:
                json.dump([begins, heights], file)
            os._exit(0)
        if os.waitpid(maker, 0)[1] != 0:
            sys.exit("the recording could not be written")
        with open(path + ".json", encoding="ascii") as file:
            begins, heights = json.load(file)
        counting = best(["wc", "-l", path])
        wall, user, peak_MB, out = best([program, "levels", path, "--json", "--column", "TP-01"])
        megabytes = os.path.getsize(path) / 1e6
    truth = [{"begin_s": b / RATE_HZ, "end_s": (e - 1) / RATE_HZ, "mean": h}
             for b, e, h in zip(begins[:-1], begins[1:], heights)]
    spans = [score.Span(l["begin_s"], l["end_s"], l["mean"], l["std_uncertainty"])
             for l in json.loads(out)["levels"]]
    counts = score.score_spans(truth, spans, SIZE, 1e-5)
    print(f"levels of {samples / 1e6:g} million samples, {megabytes:.0f} MB of text: {wall:.2f} s wall, "
          f"{user:.2f} s user, peak {peak_MB:.0f} MB ({peak_MB * 1e6 / (16 * samples):.2f} of the two columns); "
          f"wc -l {counting[0]:.2f} s; {counts.found} of {counts.levels} levels found, F1 {counts.f1:.3f}")


if __name__ == "__main__":
    main()
