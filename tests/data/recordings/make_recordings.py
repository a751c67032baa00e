#!/usr/bin/env python3
# SPDX-License-Identifier: GPL-3.0-or-later
"""Writes the recordings of this folder: /usr/bin/python3 make_recordings.py

They are written by programs from outside (NumPy 1.24, SciPy 1.10 and h5py 3.7 of Debian 12), so that the readers are
checked against somebody else's idea of each format. The universal files follow the published description of data set
58, from memory, as no program of Debian writes them.

Sample k = 0 .. 39, all numbers exact in binary:
    time = k / 64 s,  force = k k - 20 k,  strain = k / 2 - 7.25
"""
import struct
from pathlib import Path

import h5py
import numpy as np
import scipy.io
import scipy.io.wavfile

HERE = Path(__file__).parent
n = 40
k = np.arange(n)
time = k / 64
force = (k * k - 20 * k).astype("f8")
strain = k / 2 - 7.25
both = np.stack([force, strain], axis=1)


def wav_files():
    # Integers of full scale 2^15 and so on; channel 2 is the negative of channel 1.
    ramp = np.stack([k * 512, -k * 512], axis=1)
    scipy.io.wavfile.write(HERE / "int16.wav", 64, ramp.astype("<i2"))
    scipy.io.wavfile.write(HERE / "int32.wav", 64, (ramp * 65536).astype("<i4"))
    scipy.io.wavfile.write(HERE / "uint8.wav", 64, (128 + k * 2).astype("u1"))
    scipy.io.wavfile.write(HERE / "float32.wav", 64, both.astype("<f4"))
    scipy.io.wavfile.write(HERE / "float64.wav", 64, both)


def npy_files():
    np.save(HERE / "vector.npy", force)
    np.save(HERE / "rows.npy", np.stack([time, force, strain], axis=1))
    np.save(HERE / "channels.npy", np.stack([time, force, strain], axis=0).astype(">f4"))
    np.save(HERE / "fortran.npy", np.asfortranarray(np.stack([time, force, strain], axis=1)))
    kinds = ["i1", "i2", "i4", "i8", "u1", "u2", "u4", "u8", "f4", "f8"]
    types = [("Time", ">f8")] + [(kind + order, ("<" if order == "l" else ">") + kind) for kind in kinds for order in "lb"]
    mixed = np.zeros(n, dtype=types + [("pair", "<f4", (2,)), ("label", "S3")])
    mixed["Time"] = time
    for name, _ in types[1:]:
        mixed[name] = k + (0 if name[0] == "u" else -20)
    mixed["pair"] = both
    np.save(HERE / "named.npy", mixed)
    np.save(HERE / "objects.npy", np.array([1, "a", None], dtype=object), allow_pickle=True)
    np.save(HERE / "complex.npy", force + 1j * strain)
    gaps = np.stack([time, force], axis=1)
    gaps[3, 1] = np.nan
    gaps[4, 1] = -np.inf
    gaps[10, 0] = np.nan
    gaps[20, 0] = time[2]
    np.save(HERE / "gaps.npy", gaps)


def mat_files():
    variables = {
        "t": time.reshape(-1, 1), "force": force.reshape(-1, 1), "both": both, "counts": (k * 3).astype("i2").reshape(1, -1),
        "short": np.arange(12.0).reshape(-1, 1), "gauge": 2.125,
    }
    scipy.io.savemat(HERE / "level4.mat", variables, format="4")
    other = {"note": "Alder Fen", "cells": np.array([[1, "a"]], dtype=object), "set": {"a": 1.0},
             "turns": force + 1j * strain, "cube": np.zeros((2, 3, 4))}
    scipy.io.savemat(HERE / "level5.mat", {**variables, **other})
    scipy.io.savemat(HERE / "level5z.mat", {**variables, **other}, do_compression=True)
    scipy.io.savemat(HERE / "rate.mat", {"fs": 64.0, "force": force, "wide": both.T})


def matlab_73():
    """As MATLAB 7.3 lays it out: 512 bytes of the user's, matrices transposed, the class in an attribute."""
    path = HERE / "level73.mat"
    with h5py.File(path, "w", userblock_size=512) as file:
        def put(name, values, kind, **more):
            data = file.create_dataset(name, data=values, **more)
            data.attrs["MATLAB_class"] = np.bytes_(kind)
            return data
        put("t", time.reshape(1, -1), "double")
        put("both", both.T, "double", chunks=(1, 20), compression="gzip")
        put("counts", (k * 3).astype("i2").reshape(-1, 1), "int16")
        put("note", np.array([[ord(c)] for c in "Alder"], dtype="u2"), "char")
        put("none", np.array([0, 0], dtype="u8"), "double").attrs["MATLAB_empty"] = np.uint8(1)
        turns = np.zeros((1, n), dtype=[("real", "f8"), ("imag", "f8")])
        put("turns", turns, "double")
        file.create_group("set").attrs["MATLAB_class"] = np.bytes_("struct")
        file["set"].create_dataset("inner", data=np.arange(3.0).reshape(1, 3)).attrs["MATLAB_class"] = np.bytes_("double")
        refs = file.create_group("#refs#")
        refs.create_dataset("a", data=time.reshape(1, -1))
    with open(path, "r+b") as file:
        file.write(b"MATLAB 7.3 MAT-file, Platform: GLNXA64".ljust(116) + bytes(8) + struct.pack("<H", 0x0200) + b"IM")


def hdf5_files():
    with h5py.File(HERE / "datasets.h5", "w") as file:
        run = file.create_group("run1")
        run.create_dataset("time", data=time).attrs["unit"] = "s"
        run.create_dataset("force", data=force.astype(">f4"), chunks=(7,), compression="gzip", shuffle=True).attrs["units"] = "N"
        run.create_dataset("both", data=both, chunks=(9, 1))
        run.create_dataset("short", data=np.arange(12.0))
        run.create_dataset("label", data=np.array([b"abc"] * n))
        run.create_dataset("turns", data=force + 1j * strain)
        run["again"] = h5py.SoftLink("/run1/force")
        run["outside"] = h5py.ExternalLink("other.h5", "/x")
    with h5py.File(HERE / "table.h5", "w") as file:
        table = np.zeros(n, dtype=[("time_ms", "<f8"), ("force", "<i4"), ("name", "S4"), ("strain", "<f4")])
        table["time_ms"] = 1000 * time
        table["force"] = force
        table["strain"] = strain
        file.create_dataset("log", data=table)
    with h5py.File(HERE / "rate.h5", "w") as file:
        file.attrs["sample_rate"] = 64.0
        file.create_dataset("bridge", data=both.T)


def uff_heading(title, node, direction, kind, count, even, start, step, ordinate, abscissa_type=17, marker="    58"):
    return "".join(line + "\n" for line in [
        "    -1", marker, title, "NONE", "11-MAY-26 13:45:10", "NONE", "NONE",
        f"{1:5d}{1:10d}{1:5d}{0:10d} {'TAIL':<10s}{node:10d}{direction:4d} {'NONE':<10s}{0:10d}{0:4d}",
        f"{kind:10d}{count:10d}{1 if even else 0:10d}{start:13.5E}{step:13.5E}{0:13.5E}",
        f"{abscissa_type:10d}{0:5d}{0:5d}{0:5d} {'Time':<20s} {'s':<20s}",
        f"{9:10d}{0:5d}{0:5d}{0:5d} {'Load':<20s} {ordinate:<20s}",
        f"{0:10d}{0:5d}{0:5d}{0:5d} {'NONE':<20s} {'NONE':<20s}",
        f"{0:10d}{0:5d}{0:5d}{0:5d} {'NONE':<20s} {'NONE':<20s}",
    ])


def uff_lines(fields, on_line):
    return "".join("".join(fields[i:i + on_line]) + "\n" for i in range(0, len(fields), on_line))


def uff_text(title, node, direction, values, ordinate, double=False, even=True, abscissa_type=17):
    width = "20.12E" if double else "13.5E"
    fields = []
    for x, y in zip(time, values):
        fields += ([] if even else [f"{x:13.5E}"]) + [f"{y:{width}}"]
    return uff_heading(title, node, direction, 4 if double else 2, len(values), even, 0, 1 / 64, ordinate,
                       abscissa_type) + uff_lines(fields, 4 if double else 6) + "    -1\n"


def uff_bytes(title, node, values, ordinate, order, double, even=True):
    number = order + ("d" if double else "f")
    data = b""
    for x, y in zip(time, values):
        data += (b"" if even else struct.pack(order + "f", x)) + struct.pack(number, y)
    marker = f"    58b{1 if order == '<' else 2:6d}{2:6d}{11:12d}{len(data):12d}{0:6d}{0:6d}{0:12d}{0:12d}"
    head = uff_heading(title, node, 3, 4 if double else 2, len(values), even, 0, 1 / 64, ordinate, marker=marker)
    return head.encode() + data + b"    -1\n"


def uff_files():
    units = "    -1\n   164\n         1SI units                 2\n  1.00000D+00  1.00000D+00  1.00000D+00\n    -1\n"
    (HERE / "even.uff").write_text(
        units + uff_text("Force", 12, 3, force, "N") + uff_text("Strain", 13, -1, strain, "um/m", double=True)
        + uff_text("Spectrum", 12, 3, force, "N", abscissa_type=18) + uff_text("Short", 14, 3, force[:12], "N"))
    (HERE / "uneven.uff").write_text(
        uff_text("Response", 12, 3, force, "N", even=False) + uff_text("Response", 13, 3, strain, "um/m", even=False))
    (HERE / "little.uff").write_bytes(uff_bytes("Force", 12, force, "N", "<", False)
                                      + uff_bytes("Strain", 13, strain, "um/m", "<", True))
    (HERE / "big.uff").write_bytes(uff_bytes("Force", 12, force, "N", ">", True, even=False)
                                   + uff_bytes("Strain", 13, strain, "um/m", ">", False, even=False))


if __name__ == "__main__":
    wav_files()
    npy_files()
    mat_files()
    matlab_73()
    hdf5_files()
    uff_files()
