# SPDX-License-Identifier: GPL-3.0-or-later
"""NaN, infinities, huge and tiny numbers through documents, recordings and the command line.

A number is refused in words, or what comes of it is finite, or the verdict is not "pass": never a pass with
no finite number behind it, never NaN or infinity in what is written, never a crash, never a hang.
"""

import json
import random
import re
import subprocess
import zipfile

from hostile_calls import called
from row import Row

SEED = 10
NOT_A_NUMBER = re.compile(r"(?<![A-Za-z])[-+]?(?:nan|inf|infinity)(?![A-Za-z])", re.IGNORECASE)
CELLS = ["1e308", "-1e308", "1e999", "-1e999", "5e-324", "-0.0", "nan", "NaN", "inf", "-inf", "0", "", "x",
         "1e308e5", "0x1p1023", "1,5", "99999999999999999999999999"]


def documents(bench):
    """Documents, and how many of their pairs of place and number are tried: 0 is all."""
    data = bench.source / "tests" / "data"
    if not bench.long:
        return [(data / "version7.bridgecal", 40), (bench.source / "examples" / "demo.bridgecal", 10)]
    versions = [(path, 0) for path in sorted(data.glob("version*.bridgecal"))]
    return [*versions, (bench.source / "examples" / "demo.bridgecal", 0)]


def numbers_in_workbooks(folder):
    """Workbooks that hold a number which is none, as their XML says it."""
    bad, count = [], 0
    for path in sorted(folder.glob("*.xlsx")):
        count += 1
        with zipfile.ZipFile(path) as book:
            for name in book.namelist():
                if re.search(rb"<v>[-+]?(?:nan|inf)", book.read(name), re.IGNORECASE):
                    bad.append(f"{path.name} {name}")
        path.unlink()
    return bad, count


def document_row(bench, build, path, count):
    folder = bench.scratch / f"books-{path.stem}"
    folder.mkdir(exist_ok=True)
    driver = build / "tests" / "reliability" / "numbers_core_driver"
    done = called(driver, path, SEED, count, folder, timeout=None)
    told = json.loads(done.stdout) if done.stdout.startswith("{") else {"tried": 0, "wrong": 1}
    bad, books = numbers_in_workbooks(folder)
    faults = [line for line in done.stderr.splitlines() if ": channel " in line]
    return Row(f"awkward numbers at the {told.get('places')} places of {path.name}"
               f"{', sanitized' if build == bench.sanitized else ''}",
               f"{told['tried']} tried: {told.get('refused')} refused, {told.get('worked')} reckoned with, "
               f"{told['wrong']} wrong {faults[:2] or ''}; {books} workbooks opened, {len(bad)} with no "
               "number in a cell",
               "0 wrong", told["wrong"] == 0 and not bad and done.returncode == 0 and told["worked"] > 0)


def judge(bench, recording):
    plan = bench.source / "examples" / "plan.bridgecal"
    return called(bench.program, "check", plan, "--recording", recording, "--json", timeout=120)


def fault_of(done):
    """What is wrong about the end of a call; none where nothing is."""
    if done.returncode not in (0, 1, 2):
        return f"ended with {done.returncode}"
    if done.returncode == 2:
        lines = done.stderr.strip().splitlines()
        return None if lines and lines[-1].startswith("shuntwright: ") else "refused without a word"
    said = re.sub(r'"(?:[^"\\]|\\.)*"', '""', done.stdout)  # names of theirs are no numbers of ours
    return "says what is no number" if NOT_A_NUMBER.search(said) else None


def rotten(lines, cell, everywhere, dice):
    """The recording with `cell` in one place, or all along one of its columns."""
    table = [line.split(",") for line in lines]
    first = next(k for k, row in enumerate(table) if re.match(r"-?\d", row[0]) and len(row) > 1)
    column = dice.randrange(len(table[first]))
    for row in table[first:] if everywhere else [table[dice.randrange(first, len(table))]]:
        row[column] = cell
    return "\n".join(",".join(row) for row in table) + "\n"


def recording_row(bench):
    lines = (bench.source / "examples" / "pre_test.csv").read_text(encoding="utf-8").splitlines()
    dice, faults, ends = random.Random(SEED), [], {0: 0, 1: 0, 2: 0}
    tries = [(cell, everywhere) for cell in CELLS for everywhere in (False, True)] * (20 if bench.long else 1)
    for cell, everywhere in tries if bench.long else dice.sample(tries, 12):
        path = bench.scratch / "rotten.csv"
        path.write_text(rotten(lines, cell, everywhere, dice), encoding="utf-8")
        done = judge(bench, path)
        ends[done.returncode] = ends.get(done.returncode, 0) + 1
        if fault := fault_of(done) or passed_on_nothing(done):
            faults.append(f"{cell!r}{' everywhere' if everywhere else ''}: {fault}")
    return Row("awkward cells in a recording that is judged",
               f"{sum(ends.values())} tried: {ends[0]} pass, {ends[1]} do not pass, {ends[2]} refused, "
               f"{len(faults)} wrong {faults[:2] or ''}", "0 wrong", not faults and ends[0] + ends[1] > 0)


def passed_on_nothing(done):
    """Steps that pass with a null where a number must be."""
    if done.returncode == 2:
        return None
    for channel in json.loads(done.stdout).get("channels", []):
        for step in channel.get("steps", []):
            behind = [step[key] for key in ("deviation", "limit") if key in step]
            if step.get("verdict") == "pass" and None in behind:
                return "passes on no number"
    return None


# One number of the command line each; the word NUMBER is what is tried.
TP01 = ("DEMO", "--channel", "TP-01")
OPTIONS = [("predict", *TP01, "--trials", "NUMBER"),
           ("predict", *TP01, "--trials", "1000", "--seed", "NUMBER"),
           ("predict", *TP01, "--trials", "1000", "--threads", "NUMBER"),
           ("polarity", *TP01, "--shunt", "NUMBER"),
           ("line", "POINTS", "--at", "NUMBER"), ("line", "POINTS", "--at", "1,NUMBER"),
           ("line", "POINTS", "--inverse", "NUMBER"), ("line", "POINTS", "--inverse", "1,NUMBER"),
           ("line", "POINTS", "--inverse", "1", "--readings", "NUMBER"), ("line", "TABLE"),
           ("resistors", *TP01, "--levels", "NUMBER,500"),
           ("resistors", *TP01, "--greatest", "NUMBER", "--count", "2"),
           ("resistors", *TP01, "--range", "NUMBER", "--shares", "0.5"),
           ("resistors", *TP01, "--range", "1000", "--shares", "NUMBER"),
           ("resistors", *TP01, "--greatest", "1000", "--count", "NUMBER"),
           ("resistors", *TP01, "--levels", "500", "--from", "NUMBER", "--series", "E6"),
           ("resistors", *TP01, "--levels", "500", "--to", "NUMBER", "--series", "E6"),
           ("resistors", *TP01, "--levels", "500", "--tolerance", "NUMBER", "--series", "E6"),
           ("resistors", *TP01, "--levels", "500", "--fitted", "NUMBER"),
           ("resistors", *TP01, "--levels", "500", "--keep", "NUMBER"),
           ("resistors", *TP01, "--levels", "500", "--positions", "NUMBER"),
           ("working", *TP01, "--step", "NUMBER"),
           ("whatif", *TP01, "--try", "leads = NUMBER"),
           ("whatif", *TP01, "--try", "length = NUMBER"),
           ("whatif", *TP01, "--try", "leads warmer = NUMBER"),
           ("whatif", *TP01, "--try", "leak arm 1 = NUMBER"),
           ("whatif", *TP01, "--try", "value arm 2 = NUMBER"),
           ("whatif", *TP01, "--try", "gauges warmer = NUMBER"),
           ("whatif", *TP01, "--try", "contact S- = NUMBER"),
           ("practice", "--seed", "NUMBER", "--count", "2"), ("practice", "--count", "NUMBER"),
           ("spice", *TP01, "--step", "NUMBER"),
           ("batch", "DEMO", "--jobs", "NUMBER")]
NUMBERS = ["nan", "inf", "-inf", "1e308", "-1e308", "1e999", "5e-324", "-0.0", "0", "-1", "1e308k",
           "999999999999999999999999", "0x", ""]


def command_row(bench):
    points, table = bench.scratch / "points.csv", bench.scratch / "table.csv"
    points.write_text("x,y\n1,2\n2,4.1\n3,5.9\n", encoding="utf-8")
    names = {"DEMO": bench.source / "examples" / "demo.bridgecal", "POINTS": points, "TABLE": table}
    tries = [(option, number) for option in OPTIONS for number in NUMBERS]
    faults, refused = [], 0
    for option, number in tries if bench.long else random.Random(SEED).sample(tries, 40):
        table.write_text(f"x,y,ux,uy\n1,2,0.1,0.1\n2,{number},0.1,0.1\n3,{number},0.1,{number}\n")
        words = [str(names.get(word, word)).replace("NUMBER", number) for word in option]
        json_too = [] if option[0] in ("spice",) else ["--json"]
        try:
            done = called(bench.program, *words, *json_too, timeout=120)
        except subprocess.TimeoutExpired:
            faults.append(" ".join([*option, number]) + ": hangs")
            continue
        refused += done.returncode == 2
        if fault := fault_of(done):
            faults.append(" ".join([*option, number]) + ": " + fault)
    count = len(tries) if bench.long else 40
    return Row(f"awkward numbers in {len(OPTIONS)} numbers of the command line",
               f"{count} tried, {refused} refused in words, {len(faults)} wrong {faults[:2] or ''}",
               "0 wrong", not faults and 0 < refused < count)


def field_row(bench):
    document = bench.scratch / "fields.bridgecal"
    document.write_bytes((bench.source / "tests" / "data" / "version7.bridgecal").read_bytes())
    done = called(bench.driver("fields_ui_driver"), document, "all" if bench.long else "few", timeout=900,
                  env={"QT_QPA_PLATFORM": "offscreen"})
    told = json.loads(done.stdout) if done.stdout.startswith("{") else {}
    faults = [line for line in done.stderr.splitlines() if " = " in line]
    return Row("awkward numbers typed into every field of the window",
               f"{told.get('typed')} typed, {told.get('refused')} refused, {told.get('taken')} taken, "
               f"{told.get('wrong')} that cannot be saved or show no number {faults[:2] or ''}", "0",
               done.returncode == 0 and told.get("wrong") == 0 and told.get("refused", 0) > 100)


def rows(bench):
    for path, count in documents(bench):
        yield document_row(bench, bench.build, path, count)
    if bench.sanitized:
        # Some hundred times slower: a sample of the large one, all of the newest small one.
        yield document_row(bench, bench.sanitized, bench.source / "tests" / "data" / "version7.bridgecal", 0)
        yield document_row(bench, bench.sanitized, bench.source / "examples" / "demo.bridgecal", 2000)
    yield field_row(bench)
    yield recording_row(bench)
    yield command_row(bench)
