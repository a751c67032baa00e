# SPDX-License-Identifier: GPL-3.0-or-later
"""How many digits the program has in common with what others found: the table in tests/README.md.

Checks against outside references tell their digits, -log10 of the relative error and 15 at most, to the file that
SHUNTWRIGHT_DIGITS names (tests/support/reached_digits.h). Each must reach what it asks for. The table holds the
least of each source and quantity. It is made anew by

    python3 tests/reliability/figures_digits.py BUILD
"""

import collections
import os
import pathlib
import subprocess
import sys
import tempfile

from row import Row

README = pathlib.Path(__file__).parent.parent / "README.md"
BEGIN, END = "<!-- digits -->", "<!-- /digits -->"
REFERENCES = ("Reference/*:ClosedFormBudget.*:CompareReference.*:GumCases.*:Autocorrelation.*:RobustMeanOf.*:"
              "LineAgainstGsl.*:MeritReference.*:NistLine.*:NistPolynomial.*:PublishedLines.*:SettlingReference.*:"
              "CopperWire.*:UsualPowerDensity.*")
SLOW = "Jcgm101*:*Ngspice*"  # a million trials, and thousands of netlists
# Their digits depend on the version of the library or simulator, of which ours may be nearer to another one.
FROM_LIBRARIES = ("GSL", "ngspice")


def measured(build, scratch, tests):
    """Least digits, least asked, and number of comparisons of each source and quantity; and what fell short."""
    told = pathlib.Path(scratch) / "digits.tsv"
    told.unlink(missing_ok=True)
    subprocess.run([build / "tests" / "core_tests", f"--gtest_filter={tests}", "--gtest_brief=1"], check=True,
                   stdout=subprocess.DEVNULL, env={**os.environ, "SHUNTWRIGHT_DIGITS": str(told)})
    lines = collections.defaultdict(lambda: [15.0, 15.0, 0])
    short = []
    for line in told.read_text(encoding="utf-8").splitlines():
        source, quantity, digits, asked = line.split("\t")
        entry = lines[source, quantity]
        entry[0], entry[1] = min(entry[0], float(digits)), min(entry[1], float(asked))
        entry[2] += 1
        if float(digits) < float(asked) - 0.001:  # three decimals are written
            short.append(f"{source}, {quantity}: {digits} of {asked}")
    return lines, short


def table_of(lines):
    text = ["| source | quantity | values | digits | asked |", "|---|---|---:|---:|---:|"]
    text += [f"| {source} | {quantity} | {count} | {digits:.1f} | {asked:.1f} |"
             for (source, quantity), (digits, asked, count) in sorted(lines.items())]
    return "\n".join(text)


def table_in_readme():
    text = README.read_text(encoding="utf-8").partition(BEGIN)[2].partition(END)[0]
    cells = [[cell.strip() for cell in line.strip("|").split("|")] for line in text.strip().splitlines()[2:]]
    return {(source, quantity): (float(digits), float(asked), int(count))
            for source, quantity, count, digits, asked in cells}


def differences(lines, kept, whole):
    """Where the README says otherwise: a digit in the tenth place counts, and more from a library does not."""
    told = []
    for name, (digits, asked, count) in lines.items():
        if name not in kept:
            told.append(f"{name} is missing")
            continue
        above = 15 if name[0].startswith(FROM_LIBRARIES) else kept[name][0]
        if not kept[name][0] - 0.11 < digits < above + 0.11 or abs(asked - kept[name][1]) > 0.06 or count != kept[name][2]:
            told.append(f"{name}: {digits:.2f} of {asked:.2f} in {count} values")
    return told + [f"{name} is of no test" for name in kept if whole and name not in lines]


def rows(bench):
    lines, short = measured(bench.build, bench.scratch, REFERENCES + (":" + SLOW if bench.long else ""))
    values = sum(entry[2] for entry in lines.values())
    yield Row("digits in common with outside references", f"{values} values of {len(lines)} quantities, {len(short)} "
              f"short of what is asked {short[:3] or ''}", "none short", not short and values > 1000)
    kept = table_in_readme()
    other = differences(lines, kept, bench.long)
    yield Row("table of digits in tests/README.md", f"{len(lines)} of {len(kept)} lines measured, {len(other)} differ "
              f"{other[:3] or ''}", "none by a tenth of a digit", not other)


def write(build):
    with tempfile.TemporaryDirectory() as scratch:
        lines, short = measured(pathlib.Path(build).resolve(), scratch, f"{REFERENCES}:{SLOW}")
    head, _, rest = README.read_text(encoding="utf-8").partition(BEGIN)
    README.write_text(f"{head}{BEGIN}\n{table_of(lines)}\n{END}{rest.partition(END)[2]}", encoding="utf-8")
    print(f"{len(lines)} lines; short: {short}")


if __name__ == "__main__":
    write(sys.argv[1])
