# SPDX-License-Identifier: GPL-3.0-or-later
"""Random events at every view of the window, at three sizes in two themes; see monkey_ui_driver.cpp."""

import concurrent.futures
import os
import re

from editing_runs import run_driver
from row import Row

SIZES = ["900x600", "1280x800", "1920x1080"]
THEMES = ["light", "dark"]
MAIN_VIEWS = ["bridge", "sequence", "outcome", "strip", "stock", "wiring", "overview", "report"]
SLOW_S = 5  # of the window's own time after one event; a user would take it for dead


def all_views(bench):
    text = (bench.source / "tests/reliability/monkey_views.h").read_text(encoding="utf-8")
    return re.findall(r'^ +\{"(\w+)", "\w+", "\w+"', text, re.MULTILINE)


def runs_wanted(bench):
    """View, size, theme, events; the seed follows from them."""
    if not bench.long:
        return [(view, "1280x800", "light", 300) for view in MAIN_VIEWS]
    each = 20_000 if os.environ.get("SHUNTWRIGHT_MONKEY") == "full" else 20_000 // 6 + 1
    return [(view, size, theme, each) for view in all_views(bench) for size in SIZES for theme in THEMES]


def seed_of(view, size, theme):
    return sum(ord(letter) * (place + 1) for place, letter in enumerate(view + size + theme))


def run_one(bench, wanted):
    view, size, theme, events = wanted
    return run_driver(bench, bench.sanitized or bench.build, "monkey_ui_driver", f"{view}-{size}-{theme}", view,
                      events, seed_of(view, size, theme), size, theme, hours=2)


def row_of(view, runs):
    """One row a view over all its sizes and themes."""
    problems = [problem for _, problem in runs if problem]
    told = [told for told, _ in runs if told]
    events = sum(one["events"] for one in told)
    elsewhere = [one for one in told if 10 * one["in_view"] < one["events"]]
    slowest = max(told, key=lambda one: one["slowest_ms"], default={"slowest_ms": 0, "slowest": ""})
    measured = (f"{events:,} events in {len(told)} of {len(runs)} runs, {sum(one['in_view'] for one in told):,} of them "
                f"in it, {sum(one['checks'] for one in told)} checks; slowest {slowest['slowest_ms']:.0f} ms after "
                f"{slowest['slowest']}")
    return Row(f"random events, {view}", "; ".join([*problems, measured]),
               f"no fault, a tenth of each run in it, none over {SLOW_S} s", not problems and not elsewhere
               and slowest["slowest_ms"] < 1e3 * SLOW_S)


def monkey_rows(bench):
    wanted = runs_wanted(bench)
    with concurrent.futures.ThreadPoolExecutor(max(1, (os.cpu_count() or 1) // 2)) as beside:
        results = list(zip(wanted, beside.map(lambda one: run_one(bench, one), wanted), strict=True))
    for view in dict.fromkeys(one[0] for one in wanted):
        yield row_of(view, [result for one, result in results if one[0] == view])
