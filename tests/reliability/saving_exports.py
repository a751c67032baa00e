# SPDX-License-Identifier: GPL-3.0-or-later
"""The document and everything that leaves the program as a file, written to places that refuse it."""

import subprocess

from saving_places import PLACES, complaint, folder_of, limits, needs_second_user, opened
from saving_tools import Count, Window, as_nobody, documents, environment, fresh, seen

# Kind of export in the window (see saving_window_ui_driver.cpp), name of the file.
IN_WINDOW = [
    ("document", "tail.bridgecal"), ("bridge", "bridge.svg"), ("bridge", "bridge.png"),
    ("bridge", "bridge.pdf"), ("outcome", "outcome.svg"), ("outcome", "outcome.png"),
    ("outcome", "outcome.pdf"), ("rows", "rows.csv"), ("channels", "channels.csv"), ("wiring", "wiring.pdf"),
    ("practice", "practice.pdf"), ("stock", "stock.csv"), ("template", "own.bridgereport"),
    ("report", "report.pdf"), ("report", "report.xlsx"), ("report", "report.html"), ("report", "report.csv"),
    ("report", "report.json"), ("window-report", "all.pdf"), ("window-report", "all.csv"),
]
BY_DIALOG = {"as usual", "read-only folder", "file of another owner in a shared folder",
             "link to a file"}
ASKED = "old bytes kept, cause named, nothing left half written"
# Of which two runs give the same bytes, so that a piece that is missing shows.
SAME_BYTES = (".csv", ".json", ".html", ".svg", ".png", ".bridgereport", ".cir")


def on_line(bench, document, channels):
    """Command and file name of everything that the command line writes; the path comes last."""
    program = str(bench.program)
    reports = [([program, "report", document, "--out"], "report" + ending)
               for ending in (".pdf", ".xlsx", ".html", ".csv", ".json")]
    recording = bench.source / "examples" / "pre_test.csv"
    return [
        *reports,
        ([program, "report", "--write-template", "Full record", "--out"], "own.bridgereport"),
        ([program, "practice", "--count", "2", "--out"], "practice.pdf"),
        ([program, "channels", document, "--export"], "channels.csv"),
        ([program, "channels", document, "--import", channels, "--like", "Q-1", "--save"], "more.bridgecal"),
        ([program, "check", bench.source / "examples" / "plan.bridgecal", "--recording", recording, "--save"],
         "checked.bridgecal"),
    ]


def rights(place):
    return {**(as_nobody() if place.nobody else {}), "preexec_fn": limits(place)}


def window_exports(bench, places, kinds):
    """One window a place; each export into a folder of its own."""
    count, references, skipped = Count(), {}, 0
    document = documents(bench, fresh(bench.scratch / "documents"))[1]
    bench.scratch.chmod(0o755)
    for place in places:
        if needs_second_user(place):
            skipped += 1
            continue
        home, disk = opened(bench.scratch / "home"), bench.scratch / "disk"
        with Window(bench, home, **rights(place)) as window:
            window(f"open {document}")
            for kind, name in kinds:
                path = place.prepare(opened(disk), name)
                before = seen(folder_of(path))
                told = window(f"export {kind} {path}")
                reference = references.get((kind, name))
                wrong = complaint(place, path, before, told["done"], told["notice"], reference)
                if place is PLACES[0] and path.suffix in SAME_BYTES:
                    references[kind, name] = path.read_bytes()
                count.add(f"{kind} {name}, {place.what}", wrong)
    opened(bench.scratch / "disk")
    tail = f" ({skipped} place needs a second user)" if skipped else ""
    return count.row(f"{len(kinds)} exports of the window in {len(places)} places{tail}", ASKED)


def netlist_exports(bench):
    """By its dialog, which takes files alone: the other places it refuses itself."""
    count, reference = Count(), None
    document = documents(bench, fresh(bench.scratch / "documents"))[1]
    bench.scratch.chmod(0o755)
    for place in PLACES:
        if place.what not in BY_DIALOG or needs_second_user(place):
            continue
        path = place.prepare(opened(bench.scratch / "disk"), "step.cir")
        before = seen(folder_of(path))
        with Window(bench, opened(bench.scratch / "home"), **rights(place)) as window:
            window(f"open {document}")
            window("edit TP-01")
            window("answer Yes")  # write over the old one
            window("act netlist")
            window.until("the dialog", lambda told: "QFileDialog" in told["front"])
            window(f"choose {path}")
            told = window.until("the writing", lambda told: not told["front"])
        wrong = complaint(place, path, before, not told["notice"], told["notice"], reference)
        reference = reference or path.read_bytes()
        count.add(place.what, wrong)
    opened(bench.scratch / "disk")
    return count.row("netlist from the window's dialog", ASKED)


def line_exports(bench, places, only=None):
    """Each command of the command line that writes a file. The exit status is 0, or 1 where a check does not
    pass; after a refusal it is 2."""
    count, references, skipped = Count(), {}, 0
    folder = fresh(bench.scratch / "documents")
    bench.scratch.chmod(0o755)
    document, channels = documents(bench, folder)[1], folder / "channels.csv"
    channels.write_text("name\nTP-91\nTP-92\n")
    commands = on_line(bench, document, channels)[:only]
    for place in places:
        if needs_second_user(place):
            skipped += 1
            continue
        for command, name in commands:
            path = place.prepare(opened(bench.scratch / "disk"), name)
            before = seen(folder_of(path))
            run = subprocess.run([*map(str, command), path], capture_output=True, text=True, timeout=120,
                                 env=environment(opened(bench.scratch / "home")), **rights(place))
            wrong = complaint(place, path, before, run.returncode in (0, 1), run.stderr, references.get(name))
            if not wrong and run.returncode not in (0, 1, 2):
                wrong = f"exit status {run.returncode}"
            if place is PLACES[0] and path.suffix in SAME_BYTES:
                references[name] = path.read_bytes()
            count.add(f"{' '.join(map(str, command[1:3]))} {name}, {place.what}", wrong)
    opened(bench.scratch / "disk")
    return count.row(f"{len(commands)} commands that write a file in {len(places)} places", ASKED)


def rows(bench):
    few = [place for place in PLACES if place.what in ("as usual", "file-size limit", "link to a file")]
    if not bench.long:
        yield window_exports(bench, few, IN_WINDOW[:9] + IN_WINDOW[11:13])
        yield line_exports(bench, few[:2], 6)
        return
    yield window_exports(bench, PLACES, IN_WINDOW)
    yield netlist_exports(bench)
    yield line_exports(bench, PLACES)
