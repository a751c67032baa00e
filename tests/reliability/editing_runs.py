# SPDX-License-Identifier: GPL-3.0-or-later
"""Runs a driver of the editing topic in a folder of its own, which is all that it can write to."""

import json
import os
import shutil
import signal
import subprocess

from row import LIGHT_ASAN


def run_driver(bench, build, driver, name, *arguments, hours=0.1):
    """What the driver told, and None; or None and what went wrong, with the way to see it again."""
    folder = bench.scratch / name
    folder.mkdir()
    folder.chmod(0o777)
    bench.scratch.chmod(0o755)
    for file in (bench.source / "examples").iterdir():
        if file.suffix in (".bridgecal", ".csv"):
            shutil.copy(file, folder)
    words = [str(build / "tests" / "reliability" / driver), str(folder)]
    words += [str(folder / word) if str(word).endswith(".bridgecal") else str(word) for word in arguments]
    surroundings = dict(os.environ, ASAN_OPTIONS=f"detect_leaks=1:abort_on_error=0:exitcode=23:{LIGHT_ASAN}",
                        UBSAN_OPTIONS="print_stacktrace=1:halt_on_error=1", LC_ALL="C.UTF-8")
    try:
        ran = subprocess.run(words, capture_output=True, text=True, errors="replace", timeout=3600 * hours,
                             env=surroundings)
    except subprocess.TimeoutExpired:
        return None, f"not at its end after {hours} h: {' '.join([driver, *words[2:]])}"
    lines = ran.stdout.splitlines()
    told = json.loads(lines[-1]) if lines and lines[-1].startswith("{") else {}
    if ran.returncode == 0 and told:
        shutil.rmtree(folder, ignore_errors=True)
        return told, None
    kept = keep(bench, folder, name, ran)
    how = f"killed by {signal.Signals(-ran.returncode).name}" if ran.returncode < 0 else f"exit {ran.returncode}"
    faults = "; ".join(told.get("faults", []) + told.get("failed", []))[:300]
    return None, f"{how} {faults} (again by {' '.join([driver, 'FOLDER', *words[2:]])}; see {kept})"


def keep(bench, folder, name, ran):
    """What tells of a fault outlives the scratch folder."""
    place = bench.source / "build-reliability" / "faults"
    place.mkdir(parents=True, exist_ok=True)
    (place / f"{name}.txt").write_text(ran.stdout + ran.stderr, encoding="utf-8")
    log = folder / ".monkey.log"
    if log.exists():
        shutil.copy(log, place / f"{name}.events")
    return place / f"{name}.txt"
