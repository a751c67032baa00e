# SPDX-License-Identifier: GPL-3.0-or-later
"""The ways loggers write a table. Each function gives the bytes of a file, the times in it and the column's
name."""
import math
from dataclasses import dataclass

import numpy as np

MICRO = "\u00b5"


@dataclass
class Written:
    data: bytes
    times_s: np.ndarray     # as a reader should give them; of clock and date times counted from the first
    name: str               # of the column; empty when the file gives none
    # What a reader may add to those times instead: seconds of the day of the first sample, where the file has a clock
    # time.
    clock_start_s: float = 0.0


def time_digits(made):
    spacing = float(np.median(np.diff(made.times_s))) if made.times_s.size > 1 else 1.0
    return max(3, math.ceil(-math.log10(spacing)) + 2)


def value_cells(made, width=0, comma=False, blank="NaN"):
    form = f"%{width}.5e" if made.has_exponents else f"%{width}.{made.digits}f"
    cells = [form % v for v in made.values.tolist()]
    if comma:
        cells = [c.replace(".", ",") for c in cells]
    for k in np.flatnonzero(made.missing).tolist():
        cells[k] = blank[k % len(blank)] if isinstance(blank, list) else blank
    return cells


def second_cells(made, digits, comma=False, factor=1.0, offset=0.0):
    """Cells of the times and the times that stand in them, in seconds."""
    form = f"%.{digits}f"
    cells = [form % t for t in ((made.times_s + made.start_s) * factor + offset).tolist()]
    times = np.array([float(c) for c in cells]) / factor
    return ([c.replace(".", ",") for c in cells] if comma else cells), times


def unit_text(made, micro):
    return made.unit.replace("u", micro) if made.unit == "um/m" else made.unit


def joined(lines, end="\n"):
    return end.join(lines) + end


def comma_point(made, rng):
    name = rng.choice(["TP-01", "Strain 1", "BR_7"])
    times, written = second_cells(made, time_digits(made))
    head = f"Time (s),{name} ({made.unit})" if rng.random() < 0.5 else f"Time,{name}"
    rows = map(",".join, zip(times, value_cells(made, blank=["", "NaN"])))
    return Written(joined([head, *rows]).encode(), written, str(name))


def semicolon_comma_preamble(made, rng):
    name = rng.choice(["DMS 3", "Br\u00fccke 1", "TP-11"])
    times, written = second_cells(made, time_digits(made), comma=True)
    head = ["Messung: Leitwerk, Pr\u00fcfstand 2", "Datum;11.05.2026", "Bediener;", "Filter;Bessel 10 Hz", "",
            f"Zeit;{name}", f"s;{unit_text(made, MICRO)}"]
    rows = map(";".join, zip(times, value_cells(made, comma=True, blank="")))
    return Written(joined([*head, *rows], "\r\n").encode("latin-1"), written, str(name))


def date_texts(made, start="2026-05-11T09:58:30", unit=None):
    """Date and time of each sample in ISO 8601, and the times in seconds from the first."""
    unit = unit or ("ms" if time_digits(made) <= 4 else "us")
    per_s = {"s": 1, "ms": 1e3, "us": 1e6}[unit]
    ticks = np.round(made.times_s * per_s).astype(np.int64)
    stamps = np.datetime64(start, unit) + ticks.astype(f"timedelta64[{unit}]")
    return np.datetime_as_string(stamps, unit=unit).tolist(), ticks / per_s


def tab_date_time_crlf(made, rng):
    name = rng.choice(["TP-02", "Strain 4"])
    stamps, written = date_texts(made)
    if rng.random() < 0.5:
        stamps = [s.replace("T", " ") for s in stamps]
    rows = map("\t".join, zip(stamps, value_cells(made, blank=["", "NaN"])))
    text = joined([f"Timestamp\t{name} [{made.unit}]", *rows], "\r\n")
    return Written(text.encode(), written, str(name), 35910.0)


def utf16_little(made, rng):
    times, written = second_cells(made, time_digits(made))
    rows = map("\t".join, zip(times, value_cells(made, blank=["", "NaN"])))
    text = joined([f"Time [s]\tTP-21 [{unit_text(made, MICRO)}]", *rows], "\r\n")
    return Written(b"\xff\xfe" + text.encode("utf-16-le"), written, "TP-21")


def blanks_rate_only(made, rng):
    """Fixed width, no time column: the rate stands in the preamble."""
    rate, spacing = "%g" % made.rate_hz, "%.10g" % (1 / made.rate_hz)
    line = rng.choice([f"Sample rate: {rate} Hz", f"Sampling frequency = {rate} Hz", f"# rate {rate} Hz",
                       f"Sampling rate [Hz]: {rate}", f"Fs = {rate} Hz", f"Abtastrate: {rate} Hz",
                       f"dt = {spacing} s", f"Sample rate: {made.rate_hz / 1000:.10g} kHz"])
    rows = value_cells(made, width=14, blank="           NaN")
    head = ["Recording of a shunt calibration", str(line), f"Samples: {made.values.size}", "", f"{'TP-31':>14}"]
    return Written(joined([*head, *rows]).encode(), made.times_s, "TP-31")


def millisecond_time(made, rng):
    name = rng.choice(["TP-01", "LC-1"])
    times, written = second_cells(made, max(0, time_digits(made) - 3), factor=1000.0)
    rows = map(",".join, zip(times, value_cells(made, blank="")))
    return Written(joined([f"Time [ms],{name} [{made.unit}]", *rows]).encode(), written, str(name))


def quoted_names(made, rng):
    name = rng.choice(["Gauge 1, left", 'Spar "A" 3', "Cap; lower"])
    times, written = second_cells(made, time_digits(made))
    quoted = '"' + str(name).replace('"', '""') + '"'
    rows = map(",".join, zip(times, value_cells(made, blank="")))
    text = joined(['"Time"' + "," + quoted, f'"s","{made.unit}"', *rows], "\r\n")
    return Written(b"\xef\xbb\xbf" + text.encode(), written, str(name))


def clock_over_midnight(made, rng):
    """Time of the day, the recording lies across midnight."""
    length = float(made.times_s[-1])
    start = 86400 - math.ceil(length * rng.uniform(0.3, 0.7)) if length > 2 else 86399
    hours = f"2026-05-11T{start // 3600:02d}:{start // 60 % 60:02d}:{start % 60:02d}"
    stamps, written = date_texts(made, hours)
    comma = rng.random() < 0.5
    clocks = [s[11:].replace(".", ",") if comma else s[11:] for s in stamps]
    rows = map(";".join, zip(clocks, value_cells(made, comma=comma, blank="")))
    text = joined(["Clock;TP-12", f"hh:mm:ss;{made.unit}", *rows])
    return Written(text.encode(), written, "TP-12", float(start))


def carriage_returns(made, rng):
    times, written = second_cells(made, time_digits(made), offset=float(rng.choice([0.0, 120.5])))
    rows = map("\t".join, zip(times, value_cells(made, blank="")))
    return Written(joined(["Time\tTP-01", f"s\t{made.unit}", *rows], "\r").encode(), written, "TP-01")


def missing_and_bad(made, rng):
    """Some cells of the column without a number in ways of their own, some lines that are no rows."""
    times, written = second_cells(made, time_digits(made))
    cells = value_cells(made, blank=["", "NaN", "-nan", "#N/A", "---", "OVL"])
    inner = [k for k in range(5, len(cells) - 5)]
    for k in rng.choice(inner, max(1, len(inner) // 200), replace=False).tolist():
        cells[k] = str(rng.choice(["", "NaN", "OVL", "#N/A", "n/a"]))
    rows = list(map(",".join, zip(times, cells)))
    for k in sorted(rng.choice(inner, 3, replace=False).tolist(), reverse=True):
        rows.insert(k, str(rng.choice(["# marker: operator at the bench", "--- overload ---", ""])))
    return Written(joined([f"Time (s),TP-01 ({made.unit})", *rows]).encode(), written, "TP-01")


def channels_beside(made, rng):
    """Date and time in columns of their own, a counter, a temperature and a load beside."""
    stamps, written = date_texts(made)
    size = made.values.size
    counter = map(str, range(1, size + 1))
    temperature = ["%.2f" % v for v in (21 + 0.3 * np.sin(np.arange(size) / size * 5)).tolist()]
    load = ["%.4f" % v for v in (0.02 * rng.standard_normal(size)).tolist()]
    rows = map("\t".join, zip(counter, [s[:10] for s in stamps], [s[11:] for s in stamps], temperature,
                              value_cells(made, blank=["", "NaN"]), load))
    head = ["No\tDate\tTime\tTemperature\tTP-01\tLoad", f"\t\t\t\u00b0C\t{unit_text(made, MICRO)}\tkN"]
    return Written(joined([*head, *rows]).encode("utf-8"), written, "TP-01", 35910.0)


def utf16_big_european(made, rng):
    """UTF-16 the other way round, decimal comma, day first."""
    stamps, written = date_texts(made, "2026-11-05T09:58:30")
    turned = [f"{s[8:10]}.{s[5:7]}.{s[:4]} {s[11:].replace('.', ',')}" for s in stamps]
    rows = map(";".join, zip(turned, value_cells(made, comma=True, blank="")))
    text = joined(["Datum/Zeit;TP-01", f";{unit_text(made, MICRO)}", *rows], "\r\n")
    return Written(b"\xfe\xff" + text.encode("utf-16-be"), written, "TP-01", 35910.0)


def no_heading(made, rng):
    times, written = second_cells(made, time_digits(made))
    rows = ("%s %s" % pair for pair in zip(times, value_cells(made, width=12)))
    return Written(joined(rows).encode(), written, "")


def interval_only(made, rng):
    """Semicolons, decimal comma, two channels, the spacing in milliseconds in the preamble."""
    other = ["%.3f" % v for v in (0.5 + 0.001 * rng.standard_normal(made.values.size)).tolist()]
    rows = map(";".join, zip(value_cells(made, comma=True, blank=""), [c.replace(".", ",") for c in other]))
    interval = ("%.6f" % (1000 / made.rate_hz)).rstrip("0").rstrip(".").replace(".", ",")
    head = [f"Sample interval;{interval} ms", "Channels;2", "TP-01;Supply", f"{made.unit};V"]
    return Written(joined([*head, *rows]).encode(), made.times_s, "TP-01")


def quoted_decimal_comma(made, rng):
    """Commas separate and stand in the numbers: every cell is quoted."""
    times, written = second_cells(made, time_digits(made), comma=True)
    rows = ('"' + '","'.join(pair) + '"' for pair in zip(times, value_cells(made, comma=True, blank="")))
    text = joined([f'"Zeit [s]","TP-01 [{unit_text(made, MICRO)}]"', *rows], "\r\n")
    return Written(text.encode(), written, "TP-01")


def time_last_with_counter(made, rng):
    """A running number first, the time in the last column."""
    times, written = second_cells(made, time_digits(made))
    rows = map(";".join, zip(map(str, range(made.values.size)), value_cells(made, blank=""), times))
    return Written(joined([f"Sample;TP-01 ({made.unit});Time (s)", *rows]).encode(), written, "TP-01")


def minutes(made, rng):
    times, written = second_cells(made, time_digits(made) + 2, factor=1 / 60)
    rows = map("\t".join, zip(times, value_cells(made, blank=["", "NaN"])))
    return Written(joined(["Time\tTP-01", f"min\t{made.unit}", *rows]).encode(), written, "TP-01")


def month_first_twelve_hours(made, rng):
    stamps, written = date_texts(made, "2026-05-11T11:59:58")
    hours = ((s, int(s[11:13])) for s in stamps)
    turned = [f"{s[5:7]}/{s[8:10]}/{s[:4]} {(hour - 1) % 12 + 1}{s[13:]} {'AM' if hour < 12 else 'PM'}"
              for s, hour in hours]
    rows = map(",".join, zip(turned, value_cells(made, blank="")))
    return Written(joined([f"Date/Time,TP-01 ({made.unit})", *rows]).encode(), written, "TP-01", 43198.0)


def date_with_zone(made, rng):
    stamps, written = date_texts(made)
    zone = rng.choice(["Z", "+02:00"])
    rows = map(",".join, zip((s + str(zone) for s in stamps), value_cells(made, blank="")))
    return Written(joined(["timestamp,TP-01", *rows]).encode(), written, "TP-01", 35910.0)


def seconds_since_1970(made, rng):
    """A date in numbers: a reader may keep it or count from the first sample."""
    times, written = second_cells(made, min(6, time_digits(made)), offset=1778493510.0)
    rows = map(",".join, zip(times, value_cells(made, blank="")))
    text = joined([f"Time (s),TP-01 ({made.unit})", *rows])
    return Written(text.encode(), written, "TP-01", -float(written[0]))


def long_preamble_and_end(made, rng):
    """Forty lines above the names, some with numbers in columns; two lines below the numbers; mixed line
    ends."""
    times, written = second_cells(made, time_digits(made))
    head = ["# Alder Fen Test Hall", "Amplifier\tA-17", "Full scale\t2.5\tmV/V"]
    head += [f"Channel {k}\t{k}\t{k * 0.25:.3f}\t350.{k}\tofs" for k in range(1, 30)]
    head += ["", "Comment\tcalibration, all channels", "", "Time\tTP-01", f"[s]\t[{made.unit}]"]
    rows = list(map("\t".join, zip(times, value_cells(made, blank=["", "NaN"]))))
    text = joined(head, "\r\n") + joined(rows) + "\nEnd of recording\nSamples: %d" % len(rows)
    return Written(text.encode(), written, "TP-01")


def aligned_with_trailing_commas(made, rng):
    """Blanks after and before the commas, a comma at the end of each line, comments with per cent signs."""
    times, written = second_cells(made, time_digits(made))
    rows = (f"{t:>12}, {v}, " for t, v in zip(times, value_cells(made, width=12, blank=" " * 12)))
    head = ["% recording 17", "% made by hand", "Time [s] , TP-01 [um/m] , "]
    return Written(joined([*head, *rows]).encode(), written, "TP-01")


def whole_second_stamps(made, rng):
    """The clock of the logger shows whole seconds, many samples have the same. Levels of less than 5 s would be lost
    in it: those recordings show milliseconds."""
    stamps, written = date_texts(made)
    if np.min(np.diff(made.times_s[made.edges[:-1]]), initial=math.inf) > 5:
        stamps = np.datetime64("2026-05-11T09:58:30") + np.floor(made.times_s).astype("timedelta64[s]")
        stamps, written = np.datetime_as_string(stamps, unit="s").tolist(), np.floor(made.times_s)
    rows = map(",".join, zip((s.replace("T", " ") for s in stamps), value_cells(made, blank="")))
    return Written(joined([f"Date and time,TP-01 [{made.unit}]", *rows]).encode(), written, "TP-01", 35910.0)


def tab_decimal_comma(made, rng):
    times, written = second_cells(made, time_digits(made), comma=True)
    supply = ["0,000"] * made.values.size
    rows = map("\t".join, zip(times, value_cells(made, comma=True, blank=["", "NaN"]), supply))
    text = joined([f"Zeit [s]\tKanal 1 [{unit_text(made, MICRO)}]\tKanal 2 [V]", *rows], "\r\n")
    return Written(text.encode("latin-1"), written, "Kanal 1")


DIALECTS = {write.__name__: write for write in (
    comma_point, semicolon_comma_preamble, tab_date_time_crlf, utf16_little, blanks_rate_only,
    millisecond_time, quoted_names, clock_over_midnight, carriage_returns, missing_and_bad, channels_beside,
    utf16_big_european, no_heading, interval_only, quoted_decimal_comma, time_last_with_counter, minutes,
    month_first_twelve_hours, date_with_zone, seconds_since_1970, long_preamble_and_end,
    aligned_with_trailing_commas, whole_second_stamps, tab_decimal_comma)}
NEED_A_RATE = {"blanks_rate_only", "interval_only"}
