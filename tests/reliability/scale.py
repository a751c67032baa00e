# SPDX-License-Identifier: GPL-3.0-or-later
"""Much of everything: text of gigabytes, a hundred million samples, thousands of channels.

Seconds are of the processor, which hardly depend on what else the machine does; megabytes are the most that the
process ever had. The quick tier does the same with little.
"""

import json
import os
import subprocess

from row import Row


def driver(bench, name, *words):
    done = subprocess.run([bench.driver(name), *map(str, words)], capture_output=True, encoding="utf-8", check=False,
                          env={**os.environ, "QT_QPA_PLATFORM": "offscreen"})
    if done.returncode or not done.stdout:
        raise RuntimeError(f"{name} {' '.join(map(str, words))}: {done.returncode} {done.stderr[-300:]}")
    return json.loads(done.stdout.splitlines()[-1])


def peak_of(words):
    """Exit status, standard output, most memory in MB and processor seconds of a command."""
    process = subprocess.Popen(words, stdout=subprocess.PIPE, stderr=subprocess.DEVNULL)
    output = process.stdout.read()
    process.stdout.close()
    _, status, usage = os.wait4(process.pid, 0)
    process.returncode = os.waitstatus_to_exitcode(status)
    return process.returncode, output, usage.ru_maxrss / 1024, usage.ru_utime + usage.ru_stime


def text_rows(bench):
    megabytes = 5000 if bench.long else 100
    # Beside the build, whose disk has room; a folder for temporary files may lie in memory.
    path = bench.build / "scale-recording.txt"
    try:
        subprocess.run([bench.driver("scale_core_driver"), "write", path, str(megabytes)], check=True)
        size = path.stat().st_size / 1e6
        asked = "under 300 MB, means to 0.005"  # 10 standard uncertainties of 40,000 even samples: 0.0014
        told = driver(bench, "scale_core_driver", "read", path)
        yield Row(f"text of {size:.0f} MB read, levels of all its columns found",
                  f"{told['samples'] * told['columns'] / 1e6:.0f} million numbers, {told['levels']:.0f} levels, off by "
                  f"{told['greatest_error']:.4f} at most; {told['peak_MB']:.0f} MB; read in {told['read_s']:.0f} s, all in "
                  f"{told['all_s']:.0f} s", asked,
                  told["peak_MB"] < 300 and told["levels"] > 8 * 8 and told["greatest_error"] < 0.005)
        code, output, peak, seconds = peak_of([bench.program, "levels", path, "--json"])
        levels = sum(len(column["levels"]) for column in json.loads(output)["columns"]) if code == 0 else 0
        yield Row('the same by "shuntwright levels"', f"exit {code}, {levels} levels, {peak:.0f} MB, "
                  f"{seconds:.0f} s", "under 300 MB, as many levels", code == 0 and peak < 300
                  and levels == told["levels"])
        told = driver(bench, "scale_core_driver", "cancel", path)
        yield Row(f"reading and finding stopped at {told['moments']:.0f} moments",
                  f"{1e3 * told['reading_s']:.0f} ms and {1e3 * told['finding_s']:.0f} ms at the longest", "0.5 s",
                  told["reading_s"] < 0.5 and told["finding_s"] < 0.5)
    finally:
        path.unlink(missing_ok=True)


def column_row(bench):
    samples = 100_000_000 if bench.long else 5_000_000
    told = driver(bench, "scale_core_driver", "column", samples)
    return Row(f"{samples / 1e6:.0f} million samples of one column",
               f"{told['levels']:.0f} levels in {told['levels_s']:.2f} s, curve of {told['pixels']:.0f} pixels in "
               f"{1e3 * told['curve_s']:.2f} ms after {told['envelope_s']:.2f} s once; {told['peak_MB']:.0f} MB",
               "9 levels, 16 ms a curve, 300 MB", told["levels"] == 9 and told["pixels"] == 1900
               and told["curve_s"] < 0.016 and told["peak_MB"] < 300)


def channels_row(bench):
    count = 5000 if bench.long else 300
    one, many = (driver(bench, "scale_core_driver", "channels", number) for number in (count // 5, count))
    works = [name for name in many if name.endswith("_s")]
    # Five times the channels may take ten times as long, and what takes next to nothing any time below 0.1 s.
    grown = [name for name in works if many[name] > 10 * one[name] and many[name] > 0.1]
    times = ", ".join(f"{name[:-2]} {many[name]:.2f} s" for name in works)
    return Row(f"{count} channels without a window", f"{times} (edit: a hundred); {many['peak_MB']:.0f} MB",
               f"none grows by more than 10 from {count // 5} to {count}", not grown and many["rows"] == count)


def strip_row(bench):
    samples = 100_000_000 if bench.long else 5_000_000
    told = driver(bench, "scale_ui_driver", "strip", samples, bench.scratch)
    return Row(f"the strip over {samples / 1e6:.0f} million samples, zoomed and panned",
               f"{told['zoom_ms']:.1f} ms and {told['pan_ms']:.1f} ms a frame at the longest; {told['peak_MB']:.0f} MB",
               "100 ms, 300 MB", told["zoom_ms"] < 100 and told["pan_ms"] < 100 and told["peak_MB"] < 300
               and abs(told["seconds"] - samples / 1000) < 1)


def window_row(bench):
    count = 5000 if bench.long else 300
    told = driver(bench, "scale_ui_driver", "channels", count, bench.scratch)
    works = {name[:-3]: told[name] for name in told if name.endswith("_ms")}
    # Opening and saving are waited for; for all else the window must come to its events.
    slow = [name for name, ms in works.items() if ms > (5000 if name in ("open", "save") else 500)]
    times = ", ".join(f"{name.replace('_', ' ')} {ms:.0f} ms" for name, ms in works.items())
    return Row(f"the window with {count} channels", f"{times} at the longest; {told['peak_MB']:.0f} MB",
               "5 s for opening and saving, 0.5 s for all else", not slow and told["rows"] == count)


def rows(bench):
    yield from text_rows(bench)
    yield column_row(bench)
    yield channels_row(bench)
    yield strip_row(bench)
    yield window_row(bench)
