# SPDX-License-Identifier: GPL-3.0-or-later
"""Caps on depth, size and count: what asks for more is refused by a sentence, at once and with little memory."""

import dataclasses
import json
import os
import shutil
import struct
import subprocess
import tempfile
import zipfile
import zlib

from row import Row

MEGABYTE = 1024 * 1024
GREATEST_WAIT_S = 20  # of the processor, in a build without optimisation
GREATEST_MEMORY_MB = 400


@dataclasses.dataclass
class Answer:
    """What came of one file."""

    sentence: str
    seconds: float  # of the processor: the machine may have much else to do
    memory_MB: float

    def row(self, what, wanted):
        """`wanted` is a part of the sentence that must come."""
        at = max(0, self.sentence.find(wanted) - 20)
        return Row(what, f"{self.sentence[at:at + 80]}, {self.seconds:.1f} s, {self.memory_MB:.0f} MB",
                   f"“{wanted}”, < {GREATEST_WAIT_S} s, < {GREATEST_MEMORY_MB} MB",
                   wanted in self.sentence and self.seconds < GREATEST_WAIT_S
                   and self.memory_MB < GREATEST_MEMORY_MB)


@dataclasses.dataclass
class Ended:
    """A program that came to its end."""

    status: int
    said: str
    complained: str
    seconds: float
    memory_MB: float  # begins with what this script holds, as the system counts


def watched(words):
    with tempfile.TemporaryFile("w+", errors="replace") as out, tempfile.TemporaryFile("w+", errors="replace") as err:
        process = subprocess.Popen(words, stdout=out, stderr=err)
        _, status, used = os.wait4(process.pid, 0)
        process.returncode = os.waitstatus_to_exitcode(status)
        out.seek(0)
        err.seek(0)
        return Ended(process.returncode, out.read(), err.read(), used.ru_utime + used.ru_stime, used.ru_maxrss / 1024)


class Desk:
    """Feeds the driver, which lies beside the reading process as the program does."""

    def __init__(self, bench):
        self.folder = bench.scratch / "caps"
        self.folder.mkdir(exist_ok=True)
        self.driver = self.folder / "reading_core_driver"
        shutil.copy(bench.driver("reading_core_driver"), self.driver)
        shutil.copy(bench.build / "shuntwright-reader", self.folder)

    def fed(self, kind, content):
        file = self.folder / "input"
        file.write_bytes(content)
        done = watched([self.driver, kind, file])
        lines = done.said.splitlines()
        if done.status != 0 or len(lines) != 2:
            return Answer(f"ended with status {done.status}", done.seconds, done.memory_MB)
        return Answer(lines[0], done.seconds, max(map(int, lines[1].split())) / 1024)


def texts(bench, desk):
    """The greatest of them take seconds each; tests/core/document/json_text_test.cpp has them in the quick tier."""
    yield desk.fed("json", b"[" * 200_000).row("200 kB of [", "it is not a Shuntwright document")
    yield desk.fed("json", b'{"a":' + b"[" * 200_000).row("200 kB of [ in an object", "nested deeper than 64")
    yield desk.fed("json", b'{"a":' * 100_000).row("100,000 objects in each other", "nested deeper than 64")
    yield desk.fed("json", b'{"a":"' + b"x" * MEGABYTE + b'x"}').row("a text of 1 MB and a byte", "longer than 1 MB")
    keys = ",".join(f'"k{k}":0' for k in range(65)).encode()
    yield desk.fed("json", b"{" + keys + b"}").row("an object of 65 members", "too many keys")
    if bench.long:
        yield desk.fed("json", b"{" + b" " * (64 * MEGABYTE) + b"}").row("JSON of 64 MB and 2 bytes",
                                                                         "larger than 64 MB")
        yield desk.fed("json", b'{"a":[' + b"1," * 1_000_000 + b"1]}").row("an array of 1,000,001 numbers",
                                                                           "1000000 numbers")
        yield desk.fed("json", b'{"a":[' + b"[]," * 4_000_000 + b"1]}").row("an array of 4,000,001 values",
                                                                            "4000000 values")


def documents(bench, desk):
    """One channel with more of one thing than a file may hold."""
    whole = json.loads((bench.source / "examples" / "quarter_bridge.bridgecal").read_text("utf-8"))
    setup = whole["channels"][0]["setup"]
    for key, most, what in [("sequence", 2000, "steps"), ("shunts", 1000, "shunts")]:
        kept = setup[key]
        setup[key] = [kept[0]] * (most + 1)
        yield desk.fed("document", json.dumps(whole).encode()).row(
            f"a channel of {most + 1:,} {what}", f"{most + 1} {what}, more than {most}")
        setup[key] = kept
    whole["channels"] = [{}] * 10_001
    yield desk.fed("document", json.dumps(whole).encode()).row(
        "a document of 10,001 channels", "10001 channels, more than 10000")


def lists(desk):
    yield desk.fed("channels", b"," * MEGABYTE).row("a channel list of a million commas", "more than 4096 cells")
    yield desk.fed("stock", b"," * MEGABYTE).row("a stock list of a million commas", "more than 4096 cells")
    yield desk.fed("channels", b"name" + b"," * 4000 + b"note\n" + b"A\n" * 9000).row(
        "4,002 headings over 9,000 short rows", "more than 1000000 cells")
    yield desk.fed("stock", b"id,resistance\n" + b"A,1k\n" * 10_001).row("a stock list of 10,001 rows",
                                                                        "more than 10001 rows")


def recordings(bench, desk):
    good = b"0,1\n1,2\n2,3\n"
    length = (200 if bench.long else 20) * MEGABYTE
    yield desk.fed("recording", good + b"3," + b"4" * (65 * 1024) + b"\n" + good).row(
        "a line of 65 KiB in a recording", "read")
    yield desk.fed("recording", good + b"3," + b"4" * length + b"\n" + good).row(
        f"a line of {length // MEGABYTE} MB in a recording", "read")
    yield desk.fed("recording", b"7" * length).row(f"{length // MEGABYTE} MB without a line end", "longer than 131072")
    yield desk.fed("recording", (b",".join([b"1"] * 4097) + b"\n") * 4).row("a recording of 4,097 columns",
                                                                          "more than 4096 columns")
    yield desk.fed("recording", (b",".join([b"1"] * 4096) + b"\n") * 4).row("a recording of 4,096 columns", "read")


def level5(body):
    """A MATLAB 5 file of one element. Source: MAT-File Format, level 5; from memory."""
    return b"MATLAB 5.0 MAT-file".ljust(124) + b"\x00\x01IM" + body


def matrix(rows, columns, data):
    head = struct.pack("<10I", 6, 8, 6, 0, 5, 8, rows, columns, 1, 1) + b"x\0\0\0\0\0\0\0"
    body = head + struct.pack("<2I", 9, len(data) & 0xFFFFFFFF) + data
    return struct.pack("<2I", 14, len(body) & 0xFFFFFFFF) + body


def bomb(size, announced):
    """A compressed element of `size` zeros that announces others, a thousandth as long."""
    packer = zlib.compressobj(9)
    head = matrix(announced // 8, 1, b"")[8:-4] + struct.pack("<I", announced)
    packed = packer.compress(struct.pack("<2I", 14, len(head) + announced) + head)
    for _ in range(size // MEGABYTE):
        packed += packer.compress(bytes(MEGABYTE))
    packed += packer.flush()
    return level5(struct.pack("<2I", 15, len(packed)) + packed)


def declared(bench, desk):
    """Headings that announce more than there is; what is there is read, and the rest said to be missing."""
    data = bench.source / "tests" / "data" / "recordings"
    wav = bytearray((data / "float64.wav").read_bytes())
    at = wav.index(b"data")
    wav[at + 4:at + 8] = b"\xfe\xff\xff\xff"
    yield desk.fed("recording", bytes(wav)).row("a WAV whose data chunk announces 4 GB", "read")
    wav[22:24] = b"\xff\xff"
    yield desk.fed("recording", bytes(wav)).row("a WAV of 65,535 channels", "announces 65535 channels")
    heading = b"{'descr': '<f8', 'fortran_order': False, 'shape': (4611686018427387904, 4), }\n"
    npy = b"\x93NUMPY\x01\x00" + struct.pack("<H", len(heading)) + heading + bytes(64)
    yield desk.fed("recording", npy).row("an NPY of 2^64 numbers", "more than there can be")
    npy = b"\x93NUMPY\x02\x00" + struct.pack("<I", 0xFFFFFFF0) + heading
    yield desk.fed("recording", npy).row("an NPY whose heading announces 4 GB", "heading of the NumPy array")
    uff = (data / "even.uff").read_bytes().replace(b"        40", b"1999999999")
    yield desk.fed("recording", uff).row("a data set 58 of 2 billion numbers", "read")
    yield desk.fed("recording", level5(matrix(0x80000000, 0x80000000, bytes(8)))).row(
        "a MATLAB 5 matrix of 2^62 numbers", "do not fit")
    h5 = (data / "table.h5").read_bytes().replace(struct.pack("<Q", 40), struct.pack("<Q", 1 << 40))
    yield desk.fed("recording", h5).row("an HDF5 table that announces 2^40 rows", "announces 1099511627776 numbers")


def bombs(bench, desk):
    """Small files that unpack to much."""
    size = (3500 if bench.long else 40) * MEGABYTE
    yield desk.fed("recording", bomb(size, 320)).row(f"a MATLAB element that unpacks to {size // MEGABYTE:,} MB",
                                                     "do not fit")
    report = desk.folder / "report.xlsx"
    with zipfile.ZipFile(report, "w", zipfile.ZIP_DEFLATED, compresslevel=9) as book:
        with book.open("docProps/custom.xml", "w") as part:
            for _ in range(size // MEGABYTE):
                part.write(bytes(MEGABYTE))
    yield verified(bench, report).row(f"a workbook whose properties unpack to {size // MEGABYTE:,} MB",
                                      "(workbook) states no fingerprint")
    deep = desk.folder / "deep.json"
    deep.write_bytes(b'{"a":' + b"[" * (32 * MEGABYTE))
    yield verified(bench, deep).row("a JSON report of 32 MB of [", "no JSON that can be read")


def verified(bench, report):
    document = bench.source / "examples" / "quarter_bridge.bridgecal"
    done = watched([bench.program, "verify", document, report])
    lines = [line for line in (done.said + done.complained).splitlines()
             if "report" in line and "fingerprint shows" not in line]
    return Answer(lines[-1] if lines else f"status {done.status}", done.seconds, done.memory_MB)


def tables(bench, desk):
    """The command `line` and its matrix of covariances."""
    points, matrix_file = desk.folder / "points.csv", desk.folder / "matrix.csv"
    points.write_text("x,y\n1,1\n2,2.1\n3,2.9\n")
    for what, text, said in [("a covariance of a million rows", "1\n" * 1_000_000, "rows or more"),
                             ("a covariance of a million cells in a row", "1" + "," * 1_000_000, "longer than 3")]:
        matrix_file.write_text(text)
        done = watched([bench.program, "line", points, "--covariance-y", matrix_file])
        yield Answer(done.complained.strip(), done.seconds, done.memory_MB).row(what, said)


def rows(bench):
    desk = Desk(bench)
    yield from texts(bench, desk)
    yield from documents(bench, desk)
    yield from lists(desk)
    yield from recordings(bench, desk)
    yield from declared(bench, desk)
    yield from bombs(bench, desk)
    yield from tables(bench, desk)
