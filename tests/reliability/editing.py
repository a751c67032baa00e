# SPDX-License-Identifier: GPL-3.0-or-later
"""Editing: random edits undone and done again, random events at every view, a working day in one process.

The long tier needs hours: 20,000 events a view spread over three sizes and two themes. With the environment
variable SHUNTWRIGHT_MONKEY=full each view gets them at every size in every theme.
"""

import concurrent.futures
import os

from editing_monkey import monkey_rows
from editing_runs import run_driver
from row import Row

# A round is what a user does in a minute: open, edit, look around, import, report, save, close.
MINUTES_OF_A_DAY = 8 * 60


def edit_rows(bench):
    """One session: each edit costs as much as the channel that it changes, which grows, and no more."""
    edits, every = (100_000, 100) if bench.long else (2_000, 20)
    told, problem = run_driver(bench, bench.build, "editing_ui_driver", "edits", "demo.bridgecal", edits, 1, every,
                               hours=8)
    if problem:
        yield Row("random edits", problem, "runs to its end", False)
        return
    yield Row("random edits, steps back and forth between, then undo all and redo all",
              f"{told['edits']:,} edits of {told['kinds']} kinds, {told['undo_steps']:,} steps in the history: "
              f"undo all {'is' if told['undone_all_is_first'] else 'IS NOT'} the first file, redo all "
              f"{'is' if told['redone_all_is_last'] else 'IS NOT'} the last; {told['states_compared']:,} states on "
              f"the way compared; {1e3 * told['edits_s'] / told['edits']:.1f} ms an edit, "
              f"{1e3 * told['heap_MB'] / told['undo_steps']:.1f} kB a step",
              f"{edits:,} edits, the same bytes", told["edits"] >= edits and told["undone_all_is_first"]
              and told["redone_all_is_last"] and told["undo_limit"] == 0 and not told["faults"])
    yield Row(f"every {every}th document: written, read, written again",
              f"{told['read_back']:,} documents, {len(told['faults'])} faults {' '.join(told['faults'][:1])}",
              "the same bytes", told["read_back"] >= edits // every and not told["faults"])


def growth(early, late, what):
    return 100 * (late[what] - early[what]) / early[what]


def unheld(holdings):
    """Open files that are of no thread: each thread of a pool has one that wakes it, and a pool has as many threads
    as it had work for at once, up to the number of cores."""
    return holdings["files"] - holdings["threads"]


def soak_rows(bench):
    rounds, look_at = (MINUTES_OF_A_DAY, 10) if bench.long else (5, 3)
    told, problem = run_driver(bench, bench.build, "soak_ui_driver", "soak", rounds, look_at, hours=4)
    if problem:
        yield Row("a working day in one process", problem, "runs to its end", False)
        return
    early, late = told["early"], told["late"]
    heap = growth(early, late, "heap_MB")
    # Of a few rounds only a gross leak shows: half a megabyte that a worker holds just then is two per cent.
    most = 2 if bench.long else 6
    counts = ", ".join(f"{late[what]} {what} ({early[what]})" for what in ("files", "threads", "objects", "windows"))
    yield Row(f"{rounds} rounds of open, edit, look, import, report, save, close"
              + (" (8 h at one a minute)" if bench.long else ""),
              f"heap {late['heap_MB']:.1f} MB, {heap:+.2f} % since round {look_at}; resident "
              f"{late['resident_MB']:.0f} MB, {growth(early, late, 'resident_MB'):+.1f} %; {counts}; "
              f"{told['seconds'] / rounds:.1f} s a round", f"heap under {most} % more, nothing else more",
              heap < most and unheld(late) <= unheld(early)
              and late["threads"] <= early["threads"] + (os.cpu_count() or 1)
              and all(late[what] <= early[what] for what in ("objects", "windows")))


def leak_row(bench):
    """The leak check speaks at the end of the process, by its exit code."""
    told, problem = run_driver(bench, bench.sanitized, "soak_ui_driver", "leaks", 12, 4, hours=2)
    return Row("12 rounds of it with the leak check", problem or f"{told['rounds']} rounds, nothing lost",
               "nothing lost", not problem)


def rows(bench):
    parts = [lambda: list(edit_rows(bench)), lambda: list(soak_rows(bench))]
    if bench.long:
        parts.append(lambda: [leak_row(bench)])
    with concurrent.futures.ThreadPoolExecutor(max(1, (os.cpu_count() or 1) // 2)) as beside:
        waiting = [beside.submit(part) for part in parts]
        yield from monkey_rows(bench)
        for part in waiting:
            yield from part.result()
