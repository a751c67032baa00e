# SPDX-License-Identifier: GPL-3.0-or-later
"""Hostile text and awkward numbers: names that a careless program would open, run or reckon with.

What is watched is outside of the program: system calls (strace), Python's readers of HTML, JSON, CSV and XML,
openpyxl, pdftotext, LibreOffice.
"""
import hostile_cells
import hostile_numbers
import hostile_reports
import hostile_shown


def rows(bench):
    yield from hostile_shown.rows(bench)
    yield from hostile_reports.rows(bench)
    yield from hostile_cells.rows(bench)
    yield from hostile_numbers.rows(bench)
