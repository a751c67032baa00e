# SPDX-License-Identifier: GPL-3.0-or-later
"""Texts that a spreadsheet would run, in everything that is written for one.

A cell of CSV is run when it begins, after spaces, with one of = + - @ tab or carriage return (OWASP, CSV
Injection; from memory); quotes do not help. openpyxl and LibreOffice Calc say what they take a cell for.
"""

import csv
import io
import json
import re

import openpyxl

import hostile_document
from hostile_calls import called
from row import Row

BEGINNINGS = ["=1+1&", "+1+1&", "-1+1&", "@SUM(1)", " =1+1&", "  @", "=cmd|' /C calc'!A0", "-"]
RUN = re.compile(r"[\s\u00a0]*[=+\-@\t\r]")
MINE = re.compile(r"mark|1\+1&|SUM\(1\)|calc|TP-|LC-")


class Formulas(hostile_document.Hostile):
    """Every text of the document begins as a formula does."""

    def made(self, tame, place):
        self.places[len(self.places)] = place
        if place.endswith(("note", "remark", "text")) and not place.startswith("stock"):
            return ("\t=1+1&", "\r@SUM(1)", "\n=1+1&")[len(self.places) % 3] + tame
        begins = BEGINNINGS[len(self.places) % len(BEGINNINGS)]
        if hostile_document.SHORT.search(place):
            begins = begins.strip()  # labels begin with no space
        return begins + tame


def document(bench):
    source = json.loads((bench.source / "examples" / "demo.bridgecal").read_text(encoding="utf-8"))
    hostile, made = hostile_document.hostile(source, Formulas())
    path = bench.scratch / "formulas.bridgecal"
    path.write_text(json.dumps(hostile), encoding="utf-8")
    return path, made


def said(bench, *words):
    done = called(bench.program, *words)
    assert done.returncode == 0, done.stderr
    return done.stdout


def is_number(text):
    try:
        float(text)
        return True
    except ValueError:
        return False


def cells_of(text):
    return [cell for row in csv.reader(io.StringIO(text, newline="")) for cell in row]


def written_tables(bench, path):
    """Everything that the command line writes as CSV."""
    out = bench.scratch / "formulas.csv"
    said(bench, "report", path, "-o", out)
    with open(out, encoding="utf-8-sig", newline="") as file:
        yield "report", file.read()
    yield "channels", said(bench, "channels", path, "--export", "-")


def csv_rows(bench, tables):
    for name, text in tables.items():
        cells = cells_of(text)
        run = [cell for cell in cells if RUN.match(cell) and not is_number(cell)]
        kept = [cell for cell in cells if cell.startswith("'") and RUN.match(cell[1:])]
        negative = [cell for cell in cells if re.fullmatch(r"-\d+(\.\d+)?(e[+-]?\d+)?", cell)]
        yield Row(f"CSV of {name}: texts that a spreadsheet would run",
                  f"{len(run)} of {len(cells)} cells {run[:2] or ''}; {len(kept)} marked as text, "
                  f"{len(negative)} negative numbers as they are", "0",
                  not run and len(kept) > 5 and (name != "report" or len(negative) > 5))


def workbook_row(bench, path):
    out = bench.scratch / "formulas.xlsx"
    said(bench, "report", path, "-o", out)
    book = openpyxl.load_workbook(out)
    cells = [cell for sheet in book for row in sheet.iter_rows() for cell in row if cell.value is not None]
    foreign = [cell for cell in cells if cell.data_type == "s" and MINE.search(str(cell.value))]
    run = [cell.value for cell in cells
           if cell.data_type == "f" and re.search(r"1\+1&|SUM\(1\)|calc", str(cell.value))]
    links = sum(cell.hyperlink is not None and cell.hyperlink.target is not None for cell in cells)
    numbers = [cell.value for cell in cells if cell.data_type == "n"]
    return Row("workbook, by openpyxl: texts that are formulas, links out of it",
               f"{len(run)} formulas of {len(foreign)} such texts, {links} links; {len(numbers)} numbers, "
               f"{sum(isinstance(n, (int, float)) and n < 0 for n in numbers)} of them negative", "0, 0",
               not run and not links and len(foreign) > 20)


def calc_row(bench, tables):
    """All tables in one start of LibreOffice, beside a careless one that shows what it runs."""
    careless = "text,number\n=1+1,-3.5\n"
    folder = bench.scratch / "calc"
    folder.mkdir()
    for name, text in {**tables, "careless": careless}.items():
        (folder / f"{name}.csv").write_text(text, encoding="utf-8", newline="")
    called("soffice", f"-env:UserInstallation=file://{folder}/profile", "--headless",
           "--infilter=Text - txt - csv (StarCalc):44,34,76,1,,1033", "--convert-to", "xlsx", "--outdir",
           folder / "out", *sorted(folder.glob("*.csv")))
    formulas, numbers = {}, 0
    for name in [*tables, "careless"]:
        sheet = openpyxl.load_workbook(folder / "out" / f"{name}.xlsx").active
        cells = [cell for row in sheet.iter_rows() for cell in row]
        formulas[name] = sum(cell.data_type == "f" for cell in cells)
        numbers += sum(isinstance(cell.value, (int, float)) and cell.value < 0 for cell in cells)
    ran = formulas.pop("careless")
    return Row("the same opened by LibreOffice Calc",
               f"{sum(formulas.values())} formulas in {len(formulas)} tables, {numbers} negative numbers are "
               f"numbers; of a careless table it ran {ran}", "0; 1 of the careless one",
               not any(formulas.values()) and ran == 1 and numbers > 5)


def rows(bench):
    path, _ = document(bench)
    tables = dict(written_tables(bench, path))
    yield from csv_rows(bench, tables)
    yield workbook_row(bench, path)
    if bench.long:
        yield calc_row(bench, tables)
