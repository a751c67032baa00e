# SPDX-License-Identifier: GPL-3.0-or-later
"""Files, exports and the command line say the same in every locale; fields understand a number or refuse it.

What may differ, and does so exactly as asked for: what the window shows, which is in the user's notation, and a
report with --local-numbers, whose numbers are those of its language.
"""

import json
import os
import re
import shutil
import subprocess
import zipfile

from row import Row

# Decimal mark that the C library has in it; what localedef makes must show it, or nothing was tested.
LOCALES = {"en_US": ".", "de_DE": ",", "sv_SE": ",", "fr_CH": "."}
FURTHER = {"tr_TR": ",", "de_CH": ".", "fa_IR": ".", "ar_EG": "."}
REPORTS = ["csv", "json", "html", "xlsx", "pdf"]


def make_locales(bench, names):
    """In the build folder, where tests/run keeps its own; made once."""
    folder = bench.build / "locales"
    folder.mkdir(exist_ok=True)
    for name in names:
        if not (folder / f"{name}.UTF-8").exists():
            subprocess.run(["localedef", "-i", name, "-f", "UTF-8", folder / f"{name}.UTF-8"], check=False,
                           stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL)
    return folder


def under(bench, name):
    env = {key: value for key, value in os.environ.items()
           if not key.startswith("LC_") and key not in ("LANG", "LANGUAGE", "DISPLAY", "WAYLAND_DISPLAY")}
    code = "C" if name == "C" else f"{name}.UTF-8"
    env["QT_HASH_SEED"] = "0"  # else the fonts of a PDF come in one order or another, by chance
    return {**env, "LOCPATH": str(bench.build / "locales"), "LANG": code, "LC_ALL": code}


def decimal_mark(bench, name):
    """As the C library has it when a program takes the locale of its environment."""
    asked = subprocess.run(["/usr/bin/python3", "-c", "import locale; locale.setlocale(locale.LC_ALL, ''); "
                            "print(locale.localeconv()['decimal_point'])"], env={**under(bench, name), "PYTHONUTF8": "1"},
                           capture_output=True, encoding="utf-8", check=False)
    return asked.stdout.strip()


def commands(bench, folder):
    """Every command on the demo; what it prints, and what it writes into `folder`."""
    examples = bench.source / "examples"
    demo, plan, recording = examples / "demo.bridgecal", examples / "plan.bridgecal", examples / "pre_test.csv"
    points = folder / "points.csv"
    points.write_text("x,y\n0,0.5\n1,2.25\n2,4.125\n3,5.75\n", encoding="utf-8")
    both = [["predict", demo], ["levels", recording], ["line", points, "--at", "1.5", "--robust"], ["compare", demo],
            ["check", plan, "--recording", recording], ["diagnose", demo],
            ["review", demo, "--today", "2026-05-11"], ["spice", demo, "--channel", "TP-01", "--step", "2"],
            ["polarity", demo, "--channel", "TP-01", "--shunt", "59k9"],
            ["whatif", demo, "--channel", "TP-01", "--try", "leads = 1.5"], ["verify", demo],
            ["wiring", demo, "--channel", "TP-01", "--ohmmeter"],
            ["working", demo, "--channel", "TP-01", "--step", "2", "--check", "pre"],
            ["resistors", demo, "--channel", "TP-01", "--levels", "500;-500", "--positions", "2"],
            ["practice", "--seed", "10", "--count", "5", "--answers"],
            ["batch", examples, "--channels", "--today", "2026-05-11"]]
    alone = [["channels", demo, "--export", "-"], ["describe", "man"], ["--help"], ["report", "--list-templates"],
             ["check", plan, "--recording", recording, "--save", folder / "saved.bridgecal"],
             *[["report", demo, "-o", folder / f"report.{ending}"] for ending in REPORTS],
             ["practice", "--seed", "10", "--count", "3", "--out", folder / "sheet.pdf"]]
    return both + [[*words, "--json"] for words in both] + alone


def without_dates(data):
    """The moment of making and what is made of it; all else has to be the same."""
    data = re.sub(rb"/(CreationDate|ModDate) \([^)]*\)|/ID \[[^\]]*\]", b"", data)
    data = re.sub(rb"<xmp:\w+Date>[^<]*|uuid:[-0-9a-f]+", b"", data)
    return re.sub(rb'"(time|chain)": "[^"]*"', b"", data)  # of a saving, in the document's history


def contents(path):
    if path.suffix == ".xlsx":
        with zipfile.ZipFile(path) as book:
            return b"".join(re.sub(rb"<dcterms:.*?</dcterms:\w+>", b"", book.read(name)) for name in book.namelist())
    return without_dates(path.read_bytes())


def told(bench, name, number, words):
    """What a command says and writes under a locale, and its exit status."""
    folder = bench.scratch / "told"
    shutil.rmtree(folder, ignore_errors=True)
    folder.mkdir()
    words = commands(bench, folder)[number]
    done = subprocess.run([bench.program, *words], env=under(bench, name), capture_output=True, stdin=subprocess.DEVNULL,
                          check=False)
    files = {path.name: contents(path) for path in sorted(folder.iterdir())}
    return done.returncode, done.stdout, done.stderr, files


def loaded_row(bench, names):
    wrong = {name: decimal_mark(bench, name) for name, mark in names.items() if decimal_mark(bench, name) != mark}
    return Row(f"locales made by localedef: {', '.join(names)}",
               f"{len(names) - len(wrong)} of {len(names)} are taken by the C library {wrong or ''}", "all", not wrong)


def command_rows(bench, names):
    folder = bench.scratch / "list"
    folder.mkdir()
    all_words = commands(bench, folder)
    differ, failed, count = [], [], 0
    for number, words in enumerate(all_words):
        first = told(bench, "C", number, words)
        if first[0] not in (0, 1):
            failed.append(" ".join(map(str, words[:2])))
        for name in names:
            count += 1
            other = told(bench, name, number, words)
            if other != first:
                places = ("status", "output", "messages", "file")
                what = ", ".join(place for place, one, two in zip(places, first, other) if one != two)
                differ.append(f"{name}: {words[0]} {words[-1]}, {what}")
    return Row(f"{len(all_words)} commands and exports, C against {', '.join(names)}",
               f"{count} compared byte by byte, {len(differ)} differ {differ[:4] or ''}, {len(failed)} failed "
               f"{failed[:4] or ''}", "0 differ, 0 failed", not differ and not failed)


def local_numbers_row(bench, names):
    """A German report with its own numbers: commas, whatever the system's locale, unless that is German too."""
    def report(name):
        path = bench.scratch / f"local-{name}.html"
        subprocess.run([bench.program, "report", bench.source / "examples" / "demo.bridgecal", "-o", path, "--language",
                        "de", "--local-numbers"], env=under(bench, name), check=False, capture_output=True)
        return path.read_bytes()
    wanted = report("C")
    commas = len(re.findall(rb">[-\xe2\x88\x92]?\d+,\d+<", wanted))
    points = len(re.findall(rb">-?\d+\.\d+<", wanted))
    other = [name for name in names if name != "de_CH" and report(name) != wanted]
    return Row("report in German with --local-numbers", f"{commas} cells with a comma, {points} with a point; "
               f"{len(other)} locales differ {other or ''}", "commas alone, 0 differ",
               commas > 100 and points == 0 and not other)


def field_rows(bench, names):
    saved = {}
    for name in ["C", *names]:
        path = bench.scratch / f"typed-{name}.bridgecal"
        done = subprocess.run([bench.driver("figures_ui_driver"), bench.source / "examples" / "demo.bridgecal", path,
                               "1" if bench.long else "12"],
                              env=under(bench, name), capture_output=True, encoding="utf-8", check=False)
        result = json.loads(done.stdout) if done.stdout else {"wrong": [done.stderr[-300:]]}
        saved[name] = path.read_bytes() if path.exists() else b""
        mark = names.get(name, ".")
        loaded = result.get("c_point") == mark and (name == "C" or result.get("qt_locale") == name)
        yield Row(f"numbers typed into the window's fields, {name}",
                  f"Qt took {result.get('qt_locale')}; {result.get('fields')} fields: {result.get('taken')} texts taken "
                  f"for their number, {result.get('refused')} refused, {len(result['wrong'])} taken for another "
                  f"{result['wrong'][:3] or ''}", "0 for another", loaded and not result["wrong"]
                  and result.get("fields", 0) > (10 if bench.long else 1) and result.get("taken", 0) > 10)
    other = [name for name in names if saved[name] != saved["C"]]
    yield Row(f"documents saved after that, C against {', '.join(names)}", f"{len(other)} differ {other or ''}",
              "0", not other and len(saved["C"]) > 1000)


def rows(bench):
    names = {**LOCALES, **(FURTHER if bench.long else {})}
    make_locales(bench, names)
    yield loaded_row(bench, names)
    few = names if bench.long else {name: names[name] for name in ("de_DE",)}
    yield command_rows(bench, few)
    yield local_numbers_row(bench, few)
    yield from field_rows(bench, names)
