# SPDX-License-Identifier: GPL-3.0-or-later
"""The window with hostile texts in every field, walked through under strace; what it asks the system for."""

import json
import re
import shutil
import sys

import hostile_document
from hostile_calls import called, families, is_local, looked_for, traced, words_of
from hostile_cells import RUN, cells_of, is_number
from row import Row

# A file's name is a text too; no slash may be in it.
NAME = "R&D <img src='mark998.png'> %1 [*] plan.bridgecal"
# What Qt says of a screen that is none.
NOISE = re.compile("This plugin does not|QStandardPaths: XDG_RUNTIME_DIR")
OFFSCREEN = {"QT_QPA_PLATFORM": "offscreen"}


def walked(bench, source, folder):
    """The walk through the document `source`: what it told, its calls, its complaints, the hostile texts."""
    folder.mkdir()
    document, out = folder / NAME, folder / "out"
    out.mkdir()
    made = hostile_document.write(source, document)
    made.places |= {f"mark99{k}": "imported texts" for k in range(6)}
    made.places |= {"mark998": "file name", "mark997": "name of a recording", "mark996": "name of a missing file"}
    done, calls = traced([bench.driver("hostile_ui_driver"), document, out], folder, cwd=folder,
                         env=OFFSCREEN, timeout=550)
    wrong = [line for line in done.stderr.splitlines() if line and not NOISE.match(line)]
    told = json.loads(done.stdout) if done.stdout.startswith("{") else {}
    if not told:
        wrong.append(f"ended with {done.returncode}")
    return told, calls, wrong, made


def control(bench):
    folder = bench.scratch / "control"
    folder.mkdir()
    done, calls = traced([bench.driver("hostile_ui_driver"), "--careless"], folder, cwd=folder, env=OFFSCREEN)
    hits = looked_for(calls, hostile_document.Hostile())
    inside = "noticed" if done.returncode == 0 else "not noticed"
    return Row("a label that reads markup, by the same trace and look",
               f"files looked for: {len(hits)}; {inside} inside",
               "noticed by both", len(hits) == 1 and done.returncode == 0)


def network_control(bench):
    """What the rows about sockets would see of a program that uses the network."""
    asks = "import socket; socket.socket(socket.AF_INET, socket.SOCK_DGRAM)"
    _, calls = traced([sys.executable, "-c", asks], bench.scratch)
    counted = families(calls)
    return Row("a program that asks for a socket of the network, by the same trace", words_of(counted),
               "noticed", not is_local(counted))


def tables_row(out, told, name):
    """Clipboards are looked at inside, as they come; a formula there is among what shows other than typed."""
    files = [out / f"{name}.csv" for name in ("report", "overview", "stock")]
    cells = [cell for path in files for cell in cells_of(path.read_text(encoding="utf-8-sig"))]
    run = [cell for cell in cells if RUN.match(cell) and not is_number(cell)]
    return Row(f"lists and tables that the window writes: texts that a spreadsheet would run ({name})",
               f"{len(run)} of {len(cells)} cells of {len(files)} files {run[:2] or ''}; "
               f"{told.get('copies')} tables copied", "0",
               not run and len(cells) > 500 and told.get("copies", 0) > 20)


def walk_rows(bench, name, source):
    told, calls, wrong, made = walked(bench, source, bench.scratch / name)
    hits = looked_for(calls, made)
    yield Row(f"window with hostile texts in every field ({name}): files that a text makes it look for",
              f"{len(made.places)} texts, {told.get('places')} places, {told.get('tips')} tips: {len(hits)} "
              f"{hits[:3] or ''}", "0", not hits and len(made.places) > 40 and told.get("tips", 0) > 1000)
    yield Row(f"labels, tips, drawings, documents and clipboards that show other than was typed ({name})",
              f"{len(wrong)} of {told.get('labels')} labels, {told.get('tips')} tips, "
              f"{told.get('documents')} documents, {told.get('tables')} tables {wrong[:2] or ''}", "0",
              not wrong and told.get("wrong") == 0)
    yield tables_row(bench.scratch / name / "out", told, name)
    counted = families(calls)
    yield Row(f"sockets of the window, all pages, dialogs and exports ({name})", words_of(counted),
              "AF_UNIX alone", bool(told) and is_local(counted))


TP01 = ("DEMO", "--channel", "TP-01")
COMMANDS = [("predict", "DEMO", "--budget"), ("predict", *TP01, "--trials", "1000"), ("polarity", *TP01),
            ("levels", "PRE"), ("levels", "DATA/level5.mat"), ("levels", "DATA/level73.mat"),
            ("levels", "DATA/table.h5"), ("levels", "DATA/int16.wav"), ("line", "POINTS"),
            ("check", "PLAN", "--recording", "PRE", "--json"), ("diagnose", "DEMO"),
            ("compare", "DEMO", "--cause", "--trend"), ("batch", "DEMO", "--channels"),
            ("channels", "DEMO", "--export", "-"), ("verify", "DEMO"), ("review", "DEMO"),
            ("resistors", *TP01, "--greatest", "1000", "--count", "2"), ("wiring", *TP01, "--ohmmeter"),
            ("working", *TP01, "--step", "2"), ("whatif", *TP01, "--try", "broken S-"),
            ("practice", "--count", "5", "--answers"), ("spice", *TP01, "--step", "2"), ("describe", "bash"),
            ("--version",),
            *[("report", "DEMO", "-o", "OUT." + ending) for ending in ("pdf", "html", "xlsx", "csv", "json")]]


def named(word, bench):
    examples = bench.source / "examples"
    names = {"DEMO": examples / "demo.bridgecal", "PLAN": examples / "plan.bridgecal",
             "PRE": examples / "pre_test.csv", "POINTS": bench.scratch / "points.csv"}
    word = word.replace("DATA/", f"{bench.source}/tests/data/recordings/")
    return str(names.get(word, word)).replace("OUT.", f"{bench.scratch}/out.")


def command_row(bench):
    (bench.scratch / "points.csv").write_text("x,y\n1,2\n2,4.1\n3,5.9\n", encoding="utf-8")
    counted, bad = families([]), []
    for words in COMMANDS:
        done, calls = traced([bench.program, *(named(word, bench) for word in words)], bench.scratch)
        counted += families(calls)
        if done.returncode not in (0, 1):
            bad.append(" ".join(words) + ": " + done.stderr.strip()[-120:])
    kinds = {words[0] for words in COMMANDS if not words[0].startswith("-")}
    return Row("sockets of the command line and of the program that reads MATLAB and HDF5 files",
               f"{len(COMMANDS)} calls of {len(kinds)} commands: {words_of(counted)} {bad or ''}",
               "AF_UNIX alone; all commands but demo", is_local(counted) and not bad and len(kinds) >= 19)


def needed(path):
    return re.findall(r"\(NEEDED\).*\[(.+?)\]", called("readelf", "-d", path).stdout)


def behind(path):
    """Libraries for networks that come along with others."""
    names = r"\b(lib(?:Qt6Network|curl|ssl|cups|gssapi_krb5|nghttp2|avahi-client))\.so"
    return sorted(set(re.findall(names, called("ldd", path).stdout)))


def linked_row(bench):
    programs = [bench.program, bench.build / "shuntwright-reader"]
    asked = [name for path in programs for name in needed(path)]
    own = [name for name in asked if re.match(r"lib(Qt6Network|curl|ssl|cups|resolv)", name)]
    window, reader = (behind(path) for path in programs)
    return Row("libraries for networks that the programs ask for themselves",
               f"{len(own)} of {len(asked)} {own or ''}; that come along with others: window "
               f"{', '.join(window) or 'none'}; reader (by libhdf5) {', '.join(reader) or 'none'}",
               "0, and none behind the window", not own and not window and len(asked) > 10)


def real_window_row(bench):
    """The program itself on a real display, for ten seconds. Qt asks for more there than without a screen."""
    home = bench.scratch / "home"
    home.mkdir()
    env = {f"XDG_{kind}_HOME": str(home) for kind in ("STATE", "DATA", "CONFIG")}
    display = ["xvfb-run", "-a", "-s", "-screen 0 1280x900x24 -nolisten tcp"]
    _, calls = traced([*display, "timeout", "10", bench.program, "--demo"], bench.scratch,
                      env={**env, "QT_QPA_PLATFORM": "xcb"})
    counted = families(calls)
    return Row("sockets of the window on a display, Xvfb's among them", words_of(counted), "AF_UNIX alone",
               is_local(counted) and counted["AF_UNIX"] > 0)


def rows(bench):
    if not shutil.which("strace"):
        yield Row("system calls", "strace is not installed", "watched", False)
        return
    yield control(bench)
    yield network_control(bench)
    yield from walk_rows(bench, "version 7", bench.source / "tests" / "data" / "version7.bridgecal")
    if bench.long:
        yield from walk_rows(bench, "demo", bench.source / "examples" / "demo.bridgecal")
        yield real_window_row(bench)
    yield command_row(bench)
    yield linked_row(bench)
