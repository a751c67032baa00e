#!/usr/bin/env python3
# SPDX-License-Identifier: GPL-3.0-or-later
"""Reading of delimited text beside general-purpose readers, in one run on one file:

    /usr/bin/python3 tests/bench/text_peers.py TEXT_BENCH FOLDER [ROWS]

FOLDER has @duckdb/node-api in its node_modules (npm install there) and takes the file. Times are the best of some
runs; wall time says what a user waits, processor time is steadier on a busy machine. `wc -l` is the floor: it
looks at each byte once. All readers must find the same rows and the same sum.
"""
import json
import os
import resource
import subprocess
import sys
import time
from pathlib import Path

HERE = Path(__file__).parent
PANDAS = """
import json, resource, sys, time
import pandas
imported, imported_cpu = time.perf_counter(), time.process_time()
table = pandas.read_csv(sys.argv[1])
wall, cpu = time.perf_counter() - imported, time.process_time() - imported_cpu
print(json.dumps({"wall_s": wall, "cpu_s": cpu, "rows": len(table),
                  "sum": float(table.iloc[:, 1].sum() + table.iloc[:, 2].sum()), "version": pandas.__version__,
                  "peak_bytes": 1024 * resource.getrusage(resource.RUSAGE_SELF).ru_maxrss}))
"""


def answer(*command):
    return json.loads(subprocess.run(command, capture_output=True, text=True, check=True).stdout)


def floor(file):
    before, begin = resource.getrusage(resource.RUSAGE_CHILDREN), time.perf_counter()
    lines = int(subprocess.run(["wc", "-l", file], capture_output=True, text=True, check=True).stdout.split()[0])
    wall, after = time.perf_counter() - begin, resource.getrusage(resource.RUSAGE_CHILDREN)
    cpu = after.ru_utime + after.ru_stime - before.ru_utime - before.ru_stime
    return {"wall_s": wall, "cpu_s": cpu, "rows": lines - 1}


def best(runs, work):
    results = [work() for _ in range(runs)]
    least = dict(results[0])
    for key in ("wall_s", "cpu_s"):
        least[key] = min(result[key] for result in results)
    return least


def main():
    bench, folder = sys.argv[1], Path(sys.argv[2])
    rows = int(sys.argv[3]) if len(sys.argv) > 3 else 10_000_000
    file = str(folder / "rows.csv")
    subprocess.run([bench, "make", file, str(rows)], check=True)
    duck = ["node", str(HERE / "text_peer.mjs"), str(folder), file]
    found = {
        "wc -l": best(3, lambda: floor(file)),
        "ours, 1 thread": best(3, lambda: answer(bench, "read", file, "1")),
        "ours, 2 threads": best(5, lambda: answer(bench, "read", file, "2")),
        "DuckDB, 2 threads, into a table": best(3, lambda: answer(*duck, "2", "table")),
        "DuckDB, 2 threads, sum alone": best(3, lambda: answer(*duck, "2", "sum")),
        "pandas": best(2, lambda: answer("/usr/bin/python3", "-c", PANDAS, file)),
    }
    ours = found["ours, 2 threads"]
    print(f"{rows} rows of three columns, {os.path.getsize(file) / 1e6:.0f} MB, pandas {found['pandas']['version']}, "
          f"DuckDB {found['DuckDB, 2 threads, sum alone']['version']}")
    print(f"{'':34}{'wall s':>10}{'/ ours':>10}{'cpu s':>10}{'/ ours':>10}{'peak / numbers':>16}")
    for name, one in found.items():
        if one["rows"] != rows or abs(one.get("sum", ours["sum"]) - ours["sum"]) > 1e-6 * abs(ours["sum"]):
            sys.exit(f"{name} read something else: {one}")
        peak = f"{one['peak_bytes'] / ours['numbers_bytes']:16.2f}" if "peak_bytes" in one else ""
        print(f"{name:34}{one['wall_s']:10.3f}{one['wall_s'] / ours['wall_s']:10.2f}{one['cpu_s']:10.3f}"
              f"{one['cpu_s'] / ours['cpu_s']:10.2f}{peak}")
    print("asked: DuckDB with 2 threads 1.5, pandas 6, our peak under 1.3")
    os.remove(file)


if __name__ == "__main__":
    main()
