# SPDX-License-Identifier: GPL-3.0-or-later
"""What can be told without running the program on data: compilers' and other tools' opinions, memory and threads
checked while the tests of core run, and how much of core those tests run.

Quick: how the binaries are compiled. Long: everything; needs clang-tidy-16, cppcheck and valgrind.
"""

import json
import os
import pathlib
import re
import shlex
import subprocess
import xml.etree.ElementTree as ElementTree
from concurrent.futures import ThreadPoolExecutor

from row import Row

# Findings of these would be noise: each is left out for the reason beside it.
CPPCHECK_LEFT_OUT = {
    "missingIncludeSystem": "system headers are not read",
    "unusedFunction": "only whole programs can tell",
    "useStlAlgorithm": "a matter of taste",
    "passedByValue": "takes an enumeration for a great value; clang-tidy tells the same and knows better",
    "normalCheckLevelMaxBranches": "says how deep it looked, nothing about the code",
}


def rows(bench):
    yield exact_arithmetic(bench)
    if not bench.long:
        return
    alone = configured_alone(bench)
    yield each_file_alone(alone)
    yield conversions(bench)
    yield tidy(bench)
    yield cppcheck(bench, alone)
    yield threads(bench)
    yield memory(bench)


def exact_arithmetic(bench):
    """No flag lets the compiler change a result; -ffast-math would make isnan() false."""
    commands = compiled(bench.build)
    loose = [c["file"] for c in commands if re.search(r"-f(fast-math|associative|finite-math|unsafe-math)|-Ofast",
                                                      c["command"])]
    strict = [c for c in commands if "-ffp-contract=off" in c["command"]]
    return Row("compiled so that no result may change (-ffp-contract=off, no -ffast-math)",
               f"{len(strict)} of {len(commands)} files, {len(loose)} loose", "all, 0 loose",
               len(strict) == len(commands) > 0 and not loose)


def compiled(folder):
    """What the build runs for each file, asked from ninja."""
    printed = subprocess.run(["ninja", "-C", folder, "-t", "compdb"], capture_output=True, text=True, check=True)
    return [c for c in json.loads(printed.stdout)
            if c["output"].endswith(".o") and "-c " in c["command"] and c["file"].endswith((".cpp", ".cxx"))]


def configured_alone(bench):
    """The commands that compile each file by itself, with clang, as no everyday build does."""
    folder = bench.scratch / "alone"
    subprocess.run(["cmake", "-S", bench.source, "-B", folder, "-G", "Ninja", "-DCMAKE_BUILD_TYPE=Debug",
                    "-DCMAKE_CXX_COMPILER=clang++-16", "-DCMAKE_EXPORT_COMPILE_COMMANDS=ON",
                    "-DSHUNTWRIGHT_TESTS=ON"], check=True, capture_output=True)
    return folder


def own_files(folder, *tops):
    commands = json.loads((folder / "compile_commands.json").read_text())
    source = folder_source(folder)
    wanted = tuple(str(source / top) + "/" for top in tops)
    return [c for c in commands if c["file"].startswith(wanted)]


def folder_source(folder):
    cache = (folder / "CMakeCache.txt").read_text()
    return pathlib.Path(re.search(r"^CMAKE_HOME_DIRECTORY:INTERNAL=(.*)$", cache, re.M)[1])


def look_at(commands, *more):
    """Compiles without writing anything; yields each file that the compiler complains about."""
    def one(command):
        words = shlex.split(command["command"])
        for option in ("-o", "-MF", "-MT"):
            if option in words:
                at = words.index(option)
                del words[at:at + 2]
        words = [word for word in words if word not in ("-c", "-MD")]
        done = subprocess.run([*words, "-fsyntax-only", *more], cwd=command["directory"], capture_output=True, text=True)
        return command["file"] if done.returncode else None

    with ThreadPoolExecutor(os.cpu_count()) as workers:
        return [file for file in workers.map(one, commands) if file]


def each_file_alone(alone):
    commands = own_files(alone, "core", "ui", "app", "tests")
    broken = look_at(commands, "-Wno-everything")
    return Row("each file compiles alone: it includes what it uses", told(commands, broken), "0 that do not", not broken)


def conversions(bench):
    """On the joined files of the sanitized build, whose precompiled headers are clang's."""
    commands = [c for c in compiled(bench.sanitized) if own_in(bench, c["file"], "core")]
    broken = look_at(commands, "-Wconversion", "-Wno-sign-conversion", "-Wshadow-uncaptured-local", "-Werror")
    return Row("core under clang's -Wconversion (gcc's is an error in every build)",
               told([file for c in commands for file in own_in(bench, c["file"], "core")], broken), "0 with any", not broken)


def told(commands, broken):
    names = ", ".join(pathlib.Path(file).name for file in broken[:5])
    return f"{len(commands)} files, {len(broken)} with findings" + (f": {names}" if broken else "")


# Who holds a shared pointer of Qt is counted by atomics, which the analyzer does not follow: to it every release may
# be the last. Such findings lie in the header; what is ours to mend lies in our own files.
COUNTED_BY_QT = re.compile(r"/qt6/QtCore/qsharedpointer_impl\.h:\d+:\d+: warning: Use of memory after it is freed")


def tidy(bench):
    """Looks at the files of a folder one after another as one, as the build joins them, with its precompiled headers:
    headers are read a third as often. They are put into one text, since the analyzer looks at no included file."""
    commands = [c for c in compiled(bench.sanitized) if own_in(bench, c["file"])]
    folder = bench.scratch / "tidy"
    folder.mkdir()

    def one(number):
        command = commands[number]
        text, lines = joined_text(own_in(bench, command["file"]))
        joined = folder / f"{number:03}.cpp"
        joined.write_text(text, encoding="utf-8")
        words = [word for word in shlex.split(command["command"])[1:] if word not in ("-c", "-MD", command["file"])]
        done = subprocess.run(["clang-tidy-16", "--quiet", f"--config-file={bench.source}/.clang-tidy", joined, "--",
                               *words[:words.index("-MT")]], cwd=command["directory"], capture_output=True, text=True)
        found = [placed(finding, joined, lines) for finding in
                 re.findall(r"^\S+:\d+:\d+: (?:warning|error): .*$", done.stdout, re.M)]
        return len({file for file, _ in lines}), found

    with ThreadPoolExecutor(os.cpu_count()) as workers:
        results = list(workers.map(one, range(len(commands))))
    found = sorted({finding for _, findings in results for finding in findings if not COUNTED_BY_QT.search(finding)})
    keep(bench, "clang-tidy.txt", found)
    return Row("clang-tidy 16 with the project's .clang-tidy over core, ui, app",
               f"{sum(count for count, _ in results)} files, {len(found)} findings", "0 findings", not found)


def own_in(bench, file, *tops):
    """The program's own files that are compiled with `file`: itself, or what CMake has joined in it."""
    wanted = tuple(f"{bench.source}/{top}/" for top in tops or ("core", "ui", "app"))
    joined = re.findall(r'^#include "(.*)"$', pathlib.Path(file).read_text(), re.M) if "/Unity/" in file else [file]
    return [name for name in joined if name.startswith(wanted)]


def joined_text(files):
    """The text of all, and of each of its lines which line of which file it was."""
    text, lines = [], []
    for file in files:
        own = pathlib.Path(file).read_text(encoding="utf-8").splitlines()
        text += own
        lines += [(file, number + 1) for number in range(len(own))]
    return "\n".join(text) + "\n", lines


def placed(finding, joined, lines):
    file, line, rest = finding.split(":", 2)
    if file != str(joined):
        return finding
    name, number = lines[int(line) - 1]
    return f"{name}:{number}:{rest}"


def cppcheck(bench, alone):
    commands = own_files(alone, "core", "app")
    listed = bench.scratch / "cppcheck.json"
    listed.write_text(json.dumps(commands))
    report = bench.scratch / "cppcheck.xml"
    subprocess.run(["cppcheck", f"--project={listed}", "--enable=warning,performance,portability", "--inline-suppr",
                    "--library=std", "--std=c++20", "--xml", f"--output-file={report}", "-q", "-j", str(os.cpu_count()),
                    *[f"--suppress={name}" for name in CPPCHECK_LEFT_OUT]], check=True)
    found = [f"{place.get('file')}:{place.get('line')}: {error.get('id')}: {error.get('msg')}"
             for error in ElementTree.parse(report).iter("error") if (place := error.find("location")) is not None]
    keep(bench, "cppcheck.txt", found)
    return Row("cppcheck over core and app (warning, performance, portability)",
               f"{len(commands)} files, {len(found)} findings", "0 findings", not found)


def threads(bench):
    """The thread sanitizer sees only what it compiled, and Qt is not: so core and its tests."""
    folder = bench.source / "build-reliability" / "threads"
    subprocess.run(["cmake", "-S", bench.source, "-B", folder, "-G", "Ninja", "-DCMAKE_BUILD_TYPE=None",
                    "-DCMAKE_CXX_FLAGS=-O1", "-DCMAKE_CXX_COMPILER=clang++-16", "-DSHUNTWRIGHT_SANITIZE=thread",
                    "-DSHUNTWRIGHT_TESTS=ON", "-DSHUNTWRIGHT_PRECOMPILED=ON", "-DSHUNTWRIGHT_JOINED=ON"], check=True,
                   capture_output=True)
    subprocess.run(["cmake", "--build", folder, "--target", "core_tests"], check=True, capture_output=True)
    done = subprocess.run([folder / "tests" / "core_tests", "--gtest_brief=1", f"--gtest_filter={WITH_THREADS}"],
                          env=os.environ | {"TSAN_OPTIONS": "halt_on_error=0"}, capture_output=True, text=True)
    races = done.stderr.count("WARNING: ThreadSanitizer")
    return Row("thread sanitizer on the tests of core that use workers", f"{tests_run(done.stdout)}, {races} reports",
               "0 reports, all pass", done.returncode == 0 and races == 0)


# Left out: what starts the reading process, whose limit of memory leaves no room for the checker's, and what counts
# allocations, since the checker's operator new is another.
WITH_THREADS = ("*Thread*:*Trial*:*MonteCarlo*:*Search*:*TextReading*:*Progress*:*Cancel*:*Campaign*:*Workbook*:*Stop*"
                "-ReaderProcess.*:BinaryLayout.ProgressRises*:*AllocateNothing*")

# Those measure time, memory or processor limits of their own, or need the 64 bits of a long double's fraction:
# valgrind changes the former and has 53 of the latter.
MEASURES_ITSELF = ("*Memory*:*Limit*:*Allocat*:*Ngspice*:*Gigabyte*:*Nineteen*"
                   ":Network.SensitivityIsTheDerivativeOfTheBridgeFormula")

# Those do thousands of times what other tests do once; what they read is fuzzed under the address sanitizer.
REPEATS_ITSELF = ("*Random*:*Practice*:*Damage*:*FromAnyDocument:*AnyChangedByte*:*ForMillions*:LevelMatchProperties.*"
                  ":CompareMonteCarlo.*:OhmDiagnosis.RanksTheInjectedFaultFirst:Mends.TheFirstOneOfEveryFinding*"
                  ":Draws.NormalInputs*:DelimitedText.DoesNotDependOnTheLocale")

SHARDS = 16  # more than processors, since some take ten times as long as others


def memory(bench):
    """In shards beside each other, each a process of its own: one takes an hour. Of leaks only what is definitely
    one: what glibc keeps of threads that have ended looks like a possible one."""
    def one(shard):
        log = bench.scratch / f"valgrind-{shard}.log"
        done = subprocess.run(["valgrind", "-q", "--leak-check=full", "--show-leak-kinds=definite",
                               "--errors-for-leak-kinds=definite", "--error-exitcode=99", "--num-callers=30",
                               f"--log-file={log}", bench.build / "tests" / "core_tests", "--gtest_brief=1",
                               f"--gtest_filter=-{MEASURES_ITSELF}:{REPEATS_ITSELF}"], capture_output=True, text=True,
                              env=os.environ | {"GTEST_TOTAL_SHARDS": str(SHARDS), "GTEST_SHARD_INDEX": str(shard)})
        return done.returncode, tests_counted(done.stdout), log.read_text()

    with ThreadPoolExecutor(os.cpu_count()) as workers:
        results = list(workers.map(one, range(SHARDS)))
    logs = [log for _, _, log in results if log]
    keep(bench, "valgrind.txt", logs)
    passed, ran = (sum(counts) for counts in zip(*(counts for _, counts, _ in results)))
    return Row("valgrind on the tests of core", f"{passed} of {ran} tests pass, {len(logs)} of {SHARDS} logs with reports",
               "no reports, all pass", not logs and all(code == 0 for code, _, _ in results))


def tests_run(printed):
    passed, ran = tests_counted(printed)
    return f"{passed} of {ran} tests pass"


def tests_counted(printed):
    ran = re.search(r"(\d+) tests? from \d+ test suites? ran", printed)
    passed = re.search(r"\[  PASSED  \] (\d+)", printed)
    return int(passed[1]) if passed else 0, int(ran[1]) if ran else 0


def keep(bench, name, lines):
    """Findings stay where the table is."""
    folder = bench.source / "build-reliability"
    folder.mkdir(exist_ok=True)
    (folder / name).write_text("\n".join(lines) + "\n", encoding="utf-8")
