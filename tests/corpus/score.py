#!/usr/bin/python3
# SPDX-License-Identifier: GPL-3.0-or-later
"""Scores the level finding of the program on the corpus of make_corpus.py.

    score.py --program BIN [--kinds KIND ...] [--dialect NAME] [--seeds 3] [--jobs 2] [--worst 20]
             [--keep FOLDER]

A true level is found when exactly one span lies inside it, that span covers at least half of it, and its mean
is within 5 % of the smallest step of the recording. Precision is found levels over spans, recall found levels
over levels, counts pooled over files, F1 their harmonic mean. Of a file that cannot be read all levels are
missed. Coverage is the share of found levels whose interval mean +/- 1.96 u covers the truth; the truth is
the mean of the settled signal without noise over the samples of the span, and in a column of its own over the
whole level, which is another one where drift runs in the level. Exit status 1 when below the targets, 0
otherwise.
"""
import argparse
import json
import math
import os
import subprocess
import sys
import tempfile
from concurrent.futures import ThreadPoolExecutor
from dataclasses import dataclass, field

import numpy as np

sys.path.insert(0, os.path.dirname(os.path.abspath(__file__)))
import dialects  # noqa: E402
import kinds  # noqa: E402
import make_corpus  # noqa: E402

OVERALL_F1 = 0.98
KIND_F1 = 0.95
COVERAGE = (0.93, 0.97)
GREATEST_MISS = 0.05  # of the smallest step
LEAST_COVER = 0.5
MEAN_DIGITS = 1e-12   # of the values: the truth itself is rounded to about this


@dataclass
class Span:
    begin_s: float
    end_s: float
    mean: float
    uncertainty: float


@dataclass
class Score:
    """Counts of a file, or of many."""
    levels: int = 0
    spans: int = 0
    found: int = 0
    covered: int = 0         # by 1.96 u, truth over the span
    covered_2u: int = 0
    covered_level: int = 0   # by 1.96 u, truth over the level
    unread: int = 0
    faults: list = field(default_factory=list)

    def add(self, other):
        for name in ("levels", "spans", "found", "covered", "covered_2u", "covered_level", "unread"):
            setattr(self, name, getattr(self, name) + getattr(other, name))

    @property
    def precision(self):
        return self.found / self.spans if self.spans else 0.0

    @property
    def recall(self):
        return self.found / self.levels if self.levels else 0.0

    @property
    def f1(self):
        return 2 * self.found / (self.spans + self.levels) if self.spans + self.levels else 0.0

    def share(self, name):
        return getattr(self, name) / self.found if self.found else math.nan


def inside(span, level, slack_s):
    return level["begin_s"] - slack_s <= span.begin_s and span.end_s <= level["end_s"] + slack_s


def across(spans, level):
    """Where the spans lie that are partly in a level, in per cent of it."""
    held = level["end_s"] - level["begin_s"]
    begin_s, end_s = level["begin_s"], level["end_s"]
    partly = [s for s in spans if s.end_s > begin_s and s.begin_s < end_s]
    return "".join(f", one from {(s.begin_s - begin_s) / held:.1%} to {(s.end_s - begin_s) / held:.1%}"
                   for s in partly)


def score_spans(levels, spans, smallest_step, slack_s=0.0, span_truth=None):
    """Holds `spans` against `levels`; `slack_s` is what the rounding of times may move them by.

    `span_truth(span)` is the true mean over the samples of a span; the mean of its level without it.
    """
    score = Score(levels=len(levels), spans=len(spans))
    for number, level in enumerate(levels, 1):
        within = [s for s in spans if inside(s, level, slack_s)]
        if len(within) != 1:
            score.faults.append(f"level {number}: {len(within)} spans inside{across(spans, level)}")
            continue
        span = within[0]
        if span.end_s - span.begin_s + 2 * slack_s < LEAST_COVER * (level["end_s"] - level["begin_s"]):
            score.faults.append(f"level {number}: half not covered{across([span], level)}")
            continue
        off = abs(span.mean - level["mean"])
        if not off <= GREATEST_MISS * smallest_step + MEAN_DIGITS * abs(level["mean"]):
            score.faults.append(f"level {number}: mean off by {off / smallest_step:.1%} of the smallest step, "
                                f"u {span.uncertainty / smallest_step:.2%}{across([span], level)}")
            continue
        score.found += 1
        own = abs(span.mean - (span_truth(span) if span_truth else level["mean"]))
        digits = MEAN_DIGITS * abs(level["mean"])
        score.covered += own <= 1.96 * span.uncertainty + digits
        score.covered_2u += own <= 2 * span.uncertainty + digits
        score.covered_level += off <= 1.96 * span.uncertainty + digits
    outside = sum(not any(inside(s, level, slack_s) for level in levels) for s in spans)
    if outside:
        score.faults.append(f"{outside} spans inside no level")
    return score


def spans_of(answer, written):
    """The spans of the program's answer, on the times of the file. A clock time may be counted from the first
    sample or from midnight: that one is taken which puts more spans into the recording."""
    def number(value):
        return math.nan if value is None else float(value)

    spans = [Span(number(l["begin_s"]), number(l["end_s"]), number(l["mean"]), number(l["std_uncertainty"]))
             for l in answer["levels"]]

    def within(start):
        first, last = written.times_s[0] - 1e-3, written.times_s[-1] + 1e-3
        return sum(first <= s.begin_s - start and s.end_s - start <= last for s in spans)

    start = max((0.0, written.clock_start_s), key=within)
    return [Span(s.begin_s - start, s.end_s - start, s.mean, s.uncertainty) for s in spans]


def run_case(program, folder, case, keep):
    """Writes a case, has the program find its levels, and scores them; `keep` leaves the file there."""
    signal, written = make_corpus.made(case)
    path = os.path.join(folder, case.file_name)
    with open(path, "wb") as file:
        file.write(written.data)
    levels = make_corpus.truth_levels(signal, written.times_s)
    command = [program, "levels", path, "--json"] + (["--column", written.name] if written.name else [])
    try:
        done = subprocess.run(command, capture_output=True, timeout=60)
        status, answer = done.returncode, done.stdout
        said = done.stderr.decode("utf-8", "replace").strip()
    except subprocess.TimeoutExpired:
        status, answer, said = -1, b"", "no answer within 60 s"
    if not keep:
        os.remove(path)
    if status != 0:
        return Score(levels=len(levels), unread=1, faults=[f"not read, status {status}: {said[-300:]}"])
    spans = spans_of(json.loads(answer), written)
    slack = 1e-2 * float(np.median(np.diff(written.times_s)))

    def span_truth(span):
        chosen = (written.times_s >= span.begin_s - slack) & (written.times_s <= span.end_s + slack)
        chosen &= ~signal.missing
        return float(signal.settled[chosen].mean()) if chosen.any() else math.nan

    return score_spans(levels, spans, signal.smallest_step, slack, span_truth)


def run_all(program, cases, jobs, keep=None):
    with tempfile.TemporaryDirectory() as temporary, ThreadPoolExecutor(jobs) as pool:
        folder = keep or temporary
        os.makedirs(folder, exist_ok=True)
        return list(zip(cases, pool.map(lambda case: run_case(program, folder, case, bool(keep)), cases)))


def pooled(results, group):
    table = {}
    for case, score in results:
        table.setdefault(group(case), Score()).add(score)
    return table


def row(name, score):
    return (f"{name:28} {score.levels:6} {score.spans:6} {score.found:6}  {score.f1:6.3f} {score.precision:6.3f} "
            f"{score.recall:6.3f}   {score.share('covered'):6.3f} {score.share('covered_2u'):6.3f} "
            f"{score.share('covered_level'):6.3f}  {score.unread:4}")


def below_targets(results):
    """What is below the targets, a sentence each."""
    total = pooled(results, lambda case: "all")["all"]
    said = []
    if total.f1 < OVERALL_F1:
        said.append(f"F1 overall is {total.f1:.3f}, below {OVERALL_F1}")
    for kind, score in pooled(results, lambda case: case.kind).items():
        if score.f1 < KIND_F1:
            said.append(f"F1 of {kind} is {score.f1:.3f}, below {KIND_F1}")
    low, high = COVERAGE
    if not low <= total.share("covered") <= high:
        said.append(f"coverage is {total.share('covered'):.3f}, not within {low} to {high}")
    return said


def report(results, worst):
    head = (f"{'':28} {'levels':>6} {'spans':>6} {'found':>6}  {'F1':>6} {'prec.':>6} {'recall':>6}   {'1.96u':>6} "
            f"{'2u':>6} {'level':>6}  {'unread':>4}")
    lines = [head]
    for group in (lambda case: case.kind, lambda case: case.dialect):
        lines += [row(name, score) for name, score in pooled(results, group).items()] + [""]
    lines.append(row("overall", pooled(results, lambda case: "all")["all"]))
    bad = sorted((r for r in results if r[1].faults), key=lambda r: r[1].f1)
    if bad and worst:
        lines += ["", "Worst files:"]
        for case, score in bad[:worst]:
            shown = "; ".join(score.faults[:4])
            if len(score.faults) > 4:
                shown += f"; and {len(score.faults) - 4} more"
            lines.append(f"  {case.file_name}  {score.found} of {score.levels}, {score.spans} spans: {shown}")
    return "\n".join(lines)


def main():
    parser = argparse.ArgumentParser(description="Scores level finding on recordings with known truth.")
    parser.add_argument("--program", required=True)
    parser.add_argument("--kinds", nargs="*", default=[], metavar="KIND", choices=list(kinds.KINDS))
    parser.add_argument("--seeds", type=int, default=3)
    parser.add_argument("--dialect", choices=list(dialects.DIALECTS),
                        help="all files in this one, so that only the finding of levels is looked at")
    parser.add_argument("--keep", metavar="FOLDER", help="leaves the files there")
    parser.add_argument("--jobs", type=int, default=2)
    parser.add_argument("--worst", type=int, default=20, help="how many of the worst files are listed")
    options = parser.parse_args()
    cases = make_corpus.cases(options.seeds, options.kinds)
    if options.dialect:
        each = make_corpus.DIALECTS_EACH
        cases = [make_corpus.Case(case.kind, options.dialect, each * case.seed + k % each)
                 for k, case in enumerate(cases)]
    results = run_all(os.path.abspath(options.program), cases, options.jobs, options.keep)
    print(report(results, options.worst))
    said = below_targets(results)
    print("\n" + ("\n".join(said) if said else "All targets are met."))
    return 1 if said else 0


if __name__ == "__main__":
    sys.exit(main())
