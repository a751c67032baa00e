#!/usr/bin/env python3
# SPDX-License-Identifier: GPL-3.0-or-later
"""The program's calculation beside general-purpose tools doing the same, in one run:

    /usr/bin/python3 tests/bench/peers.py CORE_BENCH

- a nine-step prediction with full budget beside the Python package uncertainties on a closed form of the
  same bridge (its expanded uncertainties must be the same),
- a million Monte Carlo trials of nine steps beside NumPy's batched linalg.solve of the same networks,
- the same prediction beside ngspice doing an operating point for every step in one process.
"""
import json
import math
import subprocess
import sys
import tempfile
import time
from pathlib import Path

import uncertainties
from uncertainties import ufloat

GAUGE_OHM, LEAD_OHM, FACTOR, ALPHA = 350.0, 2.0, 2.0, 0.00393
SHUNTS_OHM = (174650.0, 87150.0, 58000.0)


def rectangular(value, half_width):
    return ufloat(value, half_width / math.sqrt(3))


def closed_form():
    """The nine steps of tests/support/sample_channel.h with the program's usual uncertainties: expected
    reading and simulated strain, in um/m, of zero, +1, +2, +3, zero, -1, -2, -3, zero."""
    arm1, arm2 = rectangular(GAUGE_OHM, 0.003 * GAUGE_OHM), rectangular(GAUGE_OHM, 0.0005 * GAUGE_OHM)
    arm3, arm4 = (rectangular(GAUGE_OHM, 0.0005 * GAUGE_OHM) for _ in range(2))
    lead = rectangular(LEAD_OHM, 0.1 * LEAD_OHM) * (1 + ALPHA * rectangular(0, 5))  # one cable: all alike
    gain, drift = rectangular(1, 0.0005), rectangular(0, 0.5e-6)
    factor = ufloat(FACTOR, 0.01 * FACTOR / 2)
    upper = [rectangular(ohm, 1e-4 * ohm) + rectangular(0, 0.05) for ohm in SHUNTS_OHM]
    lower = [rectangular(ohm, 1e-4 * ohm) + rectangular(0, 0.05) for ohm in SHUNTS_OHM]

    def divider(one, two):
        return (lead + two) / (2 * lead + one + two)

    half = arm3 / (arm3 + arm4)
    zero = half - divider(arm1, arm2)
    results = []
    for step in (None, 3, 4, 5, None, 0, 1, 2, None):
        one, two = arm1, arm2
        if step is not None and step < 3:
            one = arm1 * lower[step] / (arm1 + lower[step])
        elif step is not None:
            two = arm2 * upper[step - 3] / (arm2 + upper[step - 3])
        change = half - divider(one, two) - zero
        reading = 4e6 / FACTOR * (change + (drift if results else 0)) * gain
        seen = half - zero - reading / (4e6 / FACTOR)  # the divider that would be read so
        strained = (lead + arm2) * (1 / seen - 1) - lead
        results.append((reading, 1e6 * (strained - arm1) / (factor * GAUGE_OHM)))
    return [(r.nominal_value, 2 * r.std_dev, s.nominal_value, 2 * s.std_dev) for r, s in results]


def best_of(times, work):
    seconds = []
    for _ in range(times):
        begin = time.perf_counter()
        result = work()
        seconds.append(time.perf_counter() - begin)
    return min(seconds), result


def ngspice_seconds_per_point(points=4000):
    """Wall time of one operating point in a process that does many, less that of one that does one."""
    def run(count):
        deck = f"""three-wire quarter bridge
V1 p 0 5
RL1 p a {LEAD_OHM}
R1 a b {GAUGE_OHM}
RL2 b s {LEAD_OHM}
RL3 b c {LEAD_OHM}
R2 c 0 {GAUGE_OHM}
R3 0 t {GAUGE_OHM}
R4 t p {GAUGE_OHM}
RS a b {SHUNTS_OHM[0]}
RI t s 1e7
.control
let i = 0
while i < {count}
  alter RS = {SHUNTS_OHM[0]} + i
  op
  destroy
  let i = i + 1
end
quit
.endc
.end
"""
        with tempfile.TemporaryDirectory() as folder:
            path = Path(folder) / "deck.cir"
            path.write_text(deck)
            subprocess.run(["ngspice", "-b", str(path)], stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL,
                           check=False)
    return (best_of(3, lambda: run(points))[0] - best_of(3, lambda: run(1))[0]) / (points - 1)


def own_figures(core_bench):
    names = "PredictNineSteps|MillionTrials"
    out = subprocess.run([core_bench, f"--benchmark_filter={names}", "--benchmark_format=json",
                          "--benchmark_min_time=0.5"], capture_output=True, text=True, check=True).stdout
    return {entry["name"]: entry for entry in json.loads(out)["benchmarks"]}


def row(what, ours, peer, theirs, wanted=""):
    print(f"{what:44} {ours * 1e6:12.1f} us   {peer:34} {theirs * 1e6:14.1f} us   {theirs / ours:9.1f} x  {wanted}")


def main():
    own = own_figures(sys.argv[1])
    budget = own["PredictNineStepsWithFullBudget"]
    budget_s = budget["real_time"] * 1e-6
    closed_s, steps = best_of(20, closed_form)
    print("Expanded uncertainties, um/m, ours and by uncertainties:")
    agree = True
    for name, step, column in (("chain_plus", 3, 1), ("chain_minus", 7, 1), ("strain_plus", 3, 3),
                               ("strain_minus", 7, 3)):
        print(f"  {name:14} {budget[name]:12.6f} {steps[step][column]:12.6f}")
        # k = 2 here is 1.99998 for 95.45 %; printed counters keep six digits.
        agree = agree and abs(budget[name] / steps[step][column] - 1) < 1e-4
    if not agree:
        sys.exit("the closed form is not the same bridge")

    row("nine steps with full budget", budget_s, f"uncertainties {uncertainties.__version__}, closed form",
        closed_s, "asked: 8 x, under 40 us")
    peer = json.loads(subprocess.run([sys.executable, str(Path(__file__).parent / "peer_network.py")],
                                     capture_output=True, text=True, check=True).stdout)
    solve_s, build_s = (10 * peer[key] for key in ("solve_s_per_million", "build_s_per_million"))
    for threads in (1, 2):
        trials = own[f"MillionTrialsOfNineSteps/scope:0/threads:{threads}/iterations:3/real_time"]
        ours = trials["real_time"] * 1e-3
        row(f"1e6 trials x 9 steps, {threads} thread(s)", ours, f"NumPy {peer['numpy']} build and solve", solve_s + build_s,
            "asked: 20 x, under 1 s" if threads == 2 else "")
        row("", ours, "NumPy, solve alone", solve_s)
    strain = own["MillionTrialsOfNineSteps/scope:1/threads:2/iterations:3/real_time"]["real_time"] * 1e-3
    row("the same with the inverse network, 2 threads", strain, "NumPy, one solve each", solve_s + build_s)
    predict_s = own["PredictNineStepsThreeWire"]["real_time"] * 1e-6
    row("nine steps predicted", predict_s, "ngspice .op, nine in one process", 9 * ngspice_seconds_per_point())


if __name__ == "__main__":
    main()
