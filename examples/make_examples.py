#!/usr/bin/python3
# SPDX-License-Identifier: GPL-3.0-or-later
"""Makes the examples of this folder. All of it is invented.

    make_examples.py [--out FOLDER] [--program SHUNTWRIGHT]

Scenario: the (invented) Alder Fen Test Hall proof-loads the tailplane of a two-seat training glider,
the (invented) Sandpiper. Seven channels are checked by shunts before and after the test.

Written are the plans (plan, quarter_bridge, load_cell .bridgecal) and two recordings, pre_test.csv and
post_test.csv. With --program also demo.bridgecal: the plan with both checks, made by running
"check --save" of that program on the plan and the recordings, as a user would.

The recordings are independent of the program: every sample comes from this file's own nodal analysis
of the bridge, its leads and its shunts. What differs from the plan on purpose:
  - each resistor is up to 0.03 % off the value of the plan, one with a certificate up to 0.004 %; each amplifier
    is up to 0.02 % off in gain;
  - noise, a slow drift, an offset of the zero and the settling of the amplifier (15 ms, one pole);
  - TP-02, post-test: moisture leaks across the gauge and gets worse while the check runs;
  - TP-11, post-test: drifts, yet stays within its limits;
  - TP-12, both: its shunts are wired to the neighbouring arm, so every sign is wrong.

Only the standard library is used, and of random numbers only random() with a seed, whose sequence
Python promises to keep, so that every run gives the same bytes.
"""
import argparse
import hashlib
import json
import os
import random
import subprocess
import sys
from dataclasses import dataclass, field, replace

SAMPLES_PER_SECOND = 100
STEP_S = 2  # of which it settles first and is averaged then
SETTLE_S = 0.5
RUN_S = 18  # nine such steps; a longer sequence has shorter ones
SETTLING_PER_SAMPLE = 0.5134  # exp(-10 ms / 15 ms)
CUTOFF_HZ = 10.6  # 1 / (2 pi 15 ms)
AWG26_M2 = 1.288e-7
COPPER_OHM_M = 1.7241e-8  # IEC 60028, annealed copper at 20 degrees (from memory)
MARK = "INVENTED DATA: Alder Fen Test Hall and the Sandpiper glider do not exist."


# --- the circuit ------------------------------------------------------------------------------------

def solve(branches, plus, minus):
    """Potentials of all nodes with `plus` at 1 V and `minus` at 0 V.

    `branches` are (node, node, ohm); zero ohm makes two nodes one. Nodal analysis: at every other node
    the currents sum to zero, which is a linear system, solved by Gaussian elimination with pivoting.
    """
    name_of = {}

    def root(node):
        while name_of.setdefault(node, node) != node:
            node = name_of[node]
        return node

    for a, b, ohm in branches:
        if ohm == 0:
            name_of[root(a)] = root(b)
    nodes = sorted({root(n) for a, b, _ in branches for n in (a, b)})
    unknown = [n for n in nodes if n not in (root(plus), root(minus))]
    row_of = {n: k for k, n in enumerate(unknown)}
    size = len(unknown)
    rows = [[0.0] * (size + 1) for _ in unknown]
    for a, b, ohm in branches:
        if ohm == 0:
            continue
        for here, there in ((root(a), root(b)), (root(b), root(a))):
            if here not in row_of:
                continue
            row = rows[row_of[here]]
            row[row_of[here]] += 1 / ohm
            if there in row_of:
                row[row_of[there]] -= 1 / ohm
            elif there == root(plus):
                row[size] += 1 / ohm
    for k in range(size):
        pivot = max(range(k, size), key=lambda r: abs(rows[r][k]))
        rows[k], rows[pivot] = rows[pivot], rows[k]
        for r in range(k + 1, size):
            factor = rows[r][k] / rows[k][k]
            for c in range(k, size + 1):
                rows[r][c] -= factor * rows[k][c]
    volt = [0.0] * size
    for k in reversed(range(size)):
        rest = sum(rows[k][c] * volt[c] for c in range(k + 1, size))
        volt[k] = (rows[k][size] - rest) / rows[k][k]
    at = {root(plus): 1.0, root(minus): 0.0}
    at.update({n: volt[row_of[n]] for n in unknown})
    return {n: at[root(n)] for n in list(name_of)}


# Terminals P+ P- S+ S- at the instrument; "1b" and "1e" are the begin and end of arm 1, and so on.
# Arms run P+ to S-, S- to P-, P- to S+, S+ to P+. Each kind of bridge: its leads, then its joins.
INSIDE_34 = [("3b", "P-"), ("3e", "S+"), ("4b", "S+"), ("4e", "P+")]
FULL = ({"P+": ("P+", "1b"), "P-": ("P-", "2e"), "S+": ("S+", "3e"), "S-": ("S-", "1e")},
        [("4e", "1b"), ("1e", "2b"), ("2e", "3b"), ("3e", "4b")])
BRIDGES = {
    "quarter_two_wire": ({"P+": ("P+", "1b"), "S-": ("S-", "1e")},
                         INSIDE_34 + [("2b", "S-"), ("2e", "P-")]),
    "quarter_three_wire": ({"P+": ("P+", "1b"), "S-": ("S-", "1e"), "return": ("2b", "1e")},
                           INSIDE_34 + [("2e", "P-")]),
    "half_bending": ({"P+": ("P+", "1b"), "S-": ("S-", "1e"), "P-": ("P-", "2e")},
                     INSIDE_34 + [("1e", "2b")]),
    "full_torsion": FULL,
    "transducer": FULL,
}
SENSE = {"sense+": ("sense+", "1b"), "sense-": ("sense-", "2e")}


@dataclass
class Lead:
    """One copper wire, AWG 26, at 20 degrees; none at all when its length is zero."""
    length_m: float

    def ohm(self):
        return COPPER_OHM_M * self.length_m / AWG26_M2


@dataclass
class Shunt:
    name: str
    ohm: float
    a: str
    b: str
    wires_ohm: float = 0.2
    part: str = ""  # id in the stock
    jumpers: list = field(default_factory=list)  # (pin, pin), to be laid


@dataclass
class Channel:
    name: str
    note: str
    type: str
    arms: list
    leads: dict
    up: list                # shunts of positive polarity, rising
    down: list              # shunts of negative polarity, rising in magnitude
    factor: float = 2.07    # of the gauges and as set on the instrument
    nominal: float = 350.0
    bridge_factor: float = 1.0
    unit: str = "um_per_m"  # um_per_m, mV_per_V or scaled
    units_per_mV_per_V: float = 1.0
    excitation_V: float = 5.0
    range_mV_per_V: float = 4.0
    six_wire: bool = False
    capacity: float = 1.0
    rated_mV_per_V: float = 2.0
    least: float = 0.0
    # Limits of figures of merit, as shares: common practice, no source.
    merits: dict = field(default_factory=lambda: {"nonlinearity": 0.005, "zero_shift": 0.005,
                                                  "symmetry": 0.01, "span_ratio": 0.01})
    up_and_down: bool = False  # each side rises and falls, so that hysteresis shows
    step_s: float = STEP_S
    settle_s: float = SETTLE_S
    pins: list = field(default_factory=list)  # (pin, node or (resistor, end) or None)
    grid_mm2: float = 0.0   # active grid of a gauge, 0 when not known
    rule: str = "simple"    # decision rule
    stated: list = field(default_factory=list)  # (input, place, statement): what is known of uncertainties
    # Only in the recordings:
    noise: float = 0.4
    offset: float = 0.0
    decimals: int = 2
    swapped: bool = False   # shunts wired to the neighbouring arm
    drift: dict = field(default_factory=dict)  # recording -> reading gained from begin to end
    leak_S: dict = field(default_factory=dict)  # recording -> (begin, end) conductance across the gauge


def output(channel, shunts=(), leak_S=0.0):
    """Output in V/V with the given shunts closed and, perhaps, a leak across arm 1."""
    wires, joins = BRIDGES[channel.type]
    wires = dict(wires, **SENSE) if channel.six_wire else wires
    branches = [(f"{k + 1}b", f"{k + 1}e", ohm) for k, ohm in enumerate(channel.arms)]
    branches += [(a, b, channel.leads[role].ohm()) for role, (a, b) in wires.items()]
    branches += [(a, b, 0) for a, b in joins]
    branches += [(s.a, s.b, s.ohm + s.wires_ohm) for s in shunts]
    if leak_S > 0:
        branches.append(("1b", "1e", 1 / leak_S))
    volt = solve(branches, "P+", "P-")
    over = volt["sense+"] - volt["sense-"] if channel.six_wire else 1.0
    return (volt["S+"] - volt["S-"]) / over


def reading(channel, change):
    """What the instrument shows for a change of output."""
    if channel.unit == "um_per_m":
        return 4e6 * change / (channel.factor * channel.bridge_factor)
    return 1e3 * change * (channel.units_per_mV_per_V if channel.unit == "scaled" else 1)


def unit_text(channel):
    return {"um_per_m": "µm/m", "mV_per_V": "mV/V", "scaled": "kN"}[channel.unit]


def steps(channel):
    """(label, shunts closed): zero, the levels of the one side, zero, those of the other, zero."""
    sequence = [("zero", [])]
    for sign, shunts in (("+", channel.up), ("-", channel.down)):
        if shunts:
            side = [(f"{sign}{k}", [s]) for k, s in enumerate(shunts, 1)]
            sequence += side + (side[-2::-1] if channel.up_and_down else []) + [("zero", [])]
    return sequence


# --- the channels -----------------------------------------------------------------------------------

@dataclass
class Resistor:
    """Of the hall's stock."""
    id: str
    nominal_kohm: float
    fitted_in: str = ""
    certified_ohm: float = 0.0  # value by its certificate; 0 without one
    due: str = "2028-03-31"
    note: str = ""

    def certificate(self):
        """The number of its certificate; empty without one."""
        return f"AFC-2026-{self.id[-4:]}" if self.certified_ohm else ""

    def ohm(self):
        return self.certified_ohm or self.nominal_kohm * 1000.0

    def expanded_ohm(self):
        return round(self.certified_ohm * CERTIFIED, 1)


CERTIFIED = 0.00005  # U of a certificate as a share, k = 2
TOLERANCE = 0.0005   # of a resistor without
STOCK = [
    Resistor("AF-0101", 332, certified_ohm=332018.0),
    Resistor("AF-0102", 165, certified_ohm=164994.0),
    Resistor("AF-0103", 110, certified_ohm=110003.0),
    Resistor("AF-0111", 332, "shunt unit 1"), Resistor("AF-0112", 165, "shunt unit 1"),
    Resistor("AF-0113", 110, "shunt unit 1"),
    Resistor("AF-0121", 294, "shunt unit 2"), Resistor("AF-0122", 147, "shunt unit 2"),
    Resistor("AF-0123", 97.6, "shunt unit 2"),
    Resistor("AF-0131", 294, "shunt unit 3"), Resistor("AF-0132", 147, "shunt unit 3"),
    Resistor("AF-0133", 97.6, "shunt unit 3"),
    Resistor("AF-0141", 178, "shunt unit 4"), Resistor("AF-0142", 88.7, "shunt unit 4"),
    Resistor("AF-0143", 59, "shunt unit 4"),
    Resistor("AF-0151", 118, "shunt unit 5"),
    Resistor("AF-0152", 59, "shunt unit 5", due="2026-03-31", note="to be sent with the next lot"),
    Resistor("AF-0153", 39.2, "shunt unit 5"),
    Resistor("AF-0161", 348, certified_ohm=347990.0),
    Resistor("AF-0162", 174, certified_ohm=174006.0),
    Resistor("AF-0163", 86.6, certified_ohm=86598.0),
    Resistor("AF-0171", 174.65, certified_ohm=174652.0, note="spare"),
    Resistor("AF-0172", 59, certified_ohm=59001.5, note="spare"),
    Resistor("AF-0173", 43.2, due="", note="spare, not watched"),
]
RESISTORS = {resistor.id: resistor for resistor in STOCK}


def across(place, *ids, pins=None, to=()):
    """Resistors of the stock put to one place after the other; a place is (name, node, node). They are laid by
    jumpers from their ends to the two places `to` of the bridge, or switched inside their shunt unit."""
    name, a, b = place
    pin_of = {use: pin for pin, use in pins or [] if use}
    return [Shunt(f"{RESISTORS[id].nominal_kohm:g}k on {name}", RESISTORS[id].ohm(), a, b, part=id,
                  jumpers=[(pin_of[(id, end)], pin_of[node]) for end, node in enumerate(to, 1)])
            for id in ids]


def connector(name, uses):
    return [((name, label), use) for label, use in uses]


def bridge_pins(*places):
    """With a free pin between each two, so that a slipped jumper does no harm."""
    apart = [place for pair in zip(places, [None] * len(places)) for place in pair][:-1]
    return connector("J1", zip("ABCDEFGHJK", apart))


def resistor_pins(*ends):
    return connector("J2", ((str(number), end) for number, end in enumerate(ends, 1)))


SPAR_PARTS = ("AF-0101", "AF-0102", "AF-0103")
# First ends together and apart from second ends: neighbours never span a resistor.
SPAR_PINS = bridge_pins("P+", "S-", "2b", "P-") + resistor_pins(
    *((id, 1) for id in SPAR_PARTS), None, *((id, 2) for id in SPAR_PARTS))
JACK_PARTS = ("AF-0161", "AF-0162", "AF-0163")
# Both ends of a resistor side by side, which the wiring rules warn of.
JACK_PINS = bridge_pins("P+", "S-", "P-") + resistor_pins(*((id, end) for id in JACK_PARTS for end in (1, 2)))


def leads(length_m, *roles):
    return {role: Lead(length_m) for role in roles}


# All at the instrument's terminals, so the leads lie inside of what is shunted.
ARM1 = ("arm 1", "P+", "S-")
ARM2 = ("arm 2", "S-", "P-")
COMPLETION = ("arm 2", "2b", "P-")  # of a three-wire quarter bridge, where the return lead arrives

def certificate(share):
    """A resistance by its certificate: U as a share of the value, k = 2, from fifty readings."""
    return {"statement": "expanded", "amount": share, "relative": True, "coverage_factor": 2,
            "distribution": "normal", "degrees_of_freedom": 49, "group": ""}


def within(amount, relative=True, group=""):
    """A tolerance with nothing more known."""
    return {"statement": "tolerance", "amount": amount, "relative": relative, "coverage_factor": 2,
            "distribution": "rectangular", "group": group}


CHANNELS = [
    Channel("TP-01", "Front spar cap, root, upper skin", "quarter_three_wire",
            [350.12, 350.0, 350.0, 350.0], leads(6, "P+", "S-", "return"),
            across(COMPLETION, *SPAR_PARTS, pins=SPAR_PINS, to=("2b", "P-")),
            across(ARM1, *SPAR_PARTS, pins=SPAR_PINS, to=("P+", "S-")), pins=SPAR_PINS, grid_mm2=4.5,
            stated=[("arm", "1", within(0.0005))], offset=3.1),
    Channel("TP-02", "Front spar cap, half span, upper skin", "quarter_three_wire",
            [349.87, 350.0, 350.0, 350.0], leads(9, "P+", "S-", "return"),
            across(COMPLETION, "AF-0111", "AF-0112", "AF-0113"),
            across(ARM1, "AF-0111", "AF-0112", "AF-0113"), offset=-2.4,
            leak_S={"post": (1 / 700e3, 1 / 300e3)}),
    Channel("TP-11", "Rear spar, bending, root", "half_bending",
            [350.05, 349.96, 350.0, 350.0], leads(7, "P+", "P-", "S-"),
            across(ARM2, "AF-0121", "AF-0122", "AF-0123"), across(ARM1, "AF-0121", "AF-0122", "AF-0123"),
            bridge_factor=2.0, offset=1.2,
            drift={"post": 2.0}),
    Channel("TP-12", "Rear spar, bending, half span", "half_bending",
            [349.93, 350.08, 350.0, 350.0], leads(10, "P+", "P-", "S-"),
            across(ARM2, "AF-0131", "AF-0132", "AF-0133"), across(ARM1, "AF-0131", "AF-0132", "AF-0133"),
            bridge_factor=2.0, offset=-4.0,
            swapped=True),
    Channel("TP-21", "Torsion tube of the elevator drive", "full_torsion",
            [350.2, 349.9, 350.1, 349.85], leads(8, "P+", "P-", "S+", "S-"),
            across(ARM2, "AF-0141", "AF-0142", "AF-0143"), across(ARM1, "AF-0141", "AF-0142", "AF-0143"),
            factor=2.05, bridge_factor=4.0,
            unit="mV_per_V", rule="conformity",
            stated=[("arm", str(k), within(0.0005, group="lot")) for k in (1, 2, 3, 4)],
            noise=0.0003, offset=0.0042, decimals=5),
    Channel("TP-31", "Fin post, old gauge kept on its two wires", "quarter_two_wire",
            [120.08, 120.0, 120.0, 120.0], leads(24, "P+", "S-"),
            across(ARM2, "AF-0151", "AF-0152", "AF-0153"), across(ARM1, "AF-0151", "AF-0152", "AF-0153"),
            factor=2.11, nominal=120.0, range_mV_per_V=16.0,  # two wires alone unbalance it by 13
            excitation_V=2.5, noise=0.8, offset=6.5),
    Channel("LC-1", "Load cell under the tailplane jack, 50 kN", "transducer",
            [350.0, 350.0, 350.0, 350.0],
            leads(12, "P+", "P-", "S+", "S-", "sense+", "sense-"),
            across(ARM2, *JACK_PARTS, pins=JACK_PINS, to=("S-", "P-")),
            across(ARM1, *JACK_PARTS, pins=JACK_PINS, to=("P+", "S-")), pins=JACK_PINS,
            bridge_factor=4.0, unit="scaled",
            units_per_mV_per_V=25.0, six_wire=True, capacity=50.0, least=0.02, rule="guarded",
            merits={"nonlinearity": 0.005, "hysteresis": 0.005, "zero_shift": 0.005, "symmetry": 0.01,
                    "combined_error": 0.01, "span_ratio": 0.01},
            up_and_down=True, step_s=1.3, settle_s=0.3,
            stated=[("arm", str(k), certificate(0.0005)) for k in (1, 2, 3, 4)] +
                   [("gain", "", within(0.0003, relative=False))], noise=0.004,
            offset=0.031, decimals=4),
]


# --- the recordings ---------------------------------------------------------------------------------

class Noise:
    """Nearly normal noise without library functions that may differ in the last digit:
    the sum of twelve uniform numbers less six has mean 0 and standard deviation 1."""

    def __init__(self, seed):
        self._random = random.Random(seed).random

    def draw(self):
        return sum(self._random() for _ in range(12)) - 6

    def within(self, limit):
        return (2 * self._random() - 1) * limit


def as_built(channel, noise):
    """The channel with the resistors it really has, and its amplifier's gain; the same in both recordings."""
    up, down = channel.up, channel.down
    off = {}
    for shunt in up + down:  # a resistor is as far off on one arm as on the other
        certified = shunt.part and RESISTORS[shunt.part].certified_ohm
        off.setdefault(shunt.part or shunt.name, noise.within(0.00004 if certified else 0.0003))

    def true(shunts, wired_like):
        return [replace(s, ohm=s.ohm * (1 + off[s.part or s.name]), a=other.a, b=other.b)
                for s, other in zip(shunts, wired_like)]

    built = replace(channel, up=true(up, down if channel.swapped else up),
                    down=true(down, up if channel.swapped else down))
    return built, 1 + noise.within(0.0002)


def samples(built, gain, recording, noise):
    """What the channel's amplifier shows, sample by sample, while the sequence is run once; it rests in its
    last step when it is through before the others are."""
    zero = output(built)
    count = RUN_S * SAMPLES_PER_SECOND
    a_step = round(built.step_s * SAMPLES_PER_SECOND)
    sequence = steps(built)
    leak = built.leak_S.get(recording, (0.0, 0.0))
    offset = built.offset + noise.within(2 * built.noise)
    drift = built.drift.get(recording, 0.3 * built.noise)
    values, shown, now = [], None, None
    for k in range(count):
        share = k / count
        _, closed = sequence[min(k // a_step, len(sequence) - 1)]
        leak_now = leak[0] + (leak[1] - leak[0]) * share
        if k % a_step == 0 or leak_now > 0:
            now = reading(built, output(built, closed, leak_now) - zero) * gain
        shown = now if shown is None else now + (shown - now) * SETTLING_PER_SAMPLE
        values.append(offset + shown + drift * share + built.noise * noise.draw())
    return values


def recording_text(recording, seed):
    deviations = Noise(BUILT_SEED)
    built = [as_built(c, deviations) for c in CHANNELS]
    noise = Noise(seed)
    columns = [samples(channel, gain, recording, noise) for channel, gain in built]
    lines = [f"# {MARK}",
             f"# Alder Fen Test Hall, Sandpiper tailplane, {recording}-test shunt check",
             f"# Made by make_examples.py with seed {seed}; {SAMPLES_PER_SECOND} samples a second",
             ",".join(["time [s]"] + [f"{c.name} [{unit_text(c)}]" for c in CHANNELS])]
    for k in range(len(columns[0])):
        cells = [f"{values[k]:.{c.decimals}f}" for c, values in zip(CHANNELS, columns)]
        lines.append(",".join([f"{k / SAMPLES_PER_SECOND:.2f}"] + cells))
    return "\n".join(lines) + "\n"


# --- the documents ----------------------------------------------------------------------------------

def node_name(node):
    """The document's name of a node of this file."""
    if node[0] in "1234":
        return f"arm {node[0]} " + {"b": "begin", "e": "end"}[node[1]]
    return node


def lead_json(lead):
    if lead.length_m == 0:
        return {"ohm": 0}
    return {"length_m": lead.length_m, "section_m2": AWG26_M2, "temperature_degC": 20}


def day(due):
    return {"due": due} if due else {}


def resistor_json(r):
    certificate = {"value_ohm": r.certified_ohm, "expanded_ohm": r.expanded_ohm(), "coverage_factor": 2,
                   "number": r.certificate()}
    return ({"id": r.id, "nominal_ohm": r.nominal_kohm * 1000.0, "tolerance": TOLERANCE}
            | ({"certificate": certificate} if r.certified_ohm else {}) | day(r.due)
            | {"rating_W": 0.25, "fitted_in": r.fitted_in, "note": r.note})


def stock_json(resistors):
    if not resistors:
        return {"resistors": [], "boxes": [], "series": []}
    dials = [{"step_ohm": step, "positions": 10} for step in (100000, 10000, 1000, 100, 10)]
    return {
        "resistors": [resistor_json(r) for r in resistors],
        "boxes": [{"id": "AF-0301", "decades": dials, "residual_ohm": 0.05, "tolerance": 0.001}
                  | day("2028-03-31") | {"rating_W": 0.5, "note": ""}],
        "series": [{"series": "E96", "from_ohm": 10000, "to_ohm": 1000000, "tolerance": 0.001}],
    }


def pin_json(name, use):
    pin = {"connector": name[0], "pin": name[1]}
    if isinstance(use, tuple):
        return pin | {"resistor": use[0], "end": use[1]}
    return pin | ({"node": node_name(use)} if use else {})


def shunt_json(s):
    shunt = {"name": s.name, "ohm": s.ohm, "from": node_name(s.a), "to": node_name(s.b),
             "wires_ohm": s.wires_ohm, "contact_ohm": 0}
    if s.part:
        shunt["part"] = {"id": s.part} | day(RESISTORS[s.part].due) | {"rating_W": 0.25}
        if RESISTORS[s.part].certificate():
            shunt["part"]["certificate"] = RESISTORS[s.part].certificate()
    if s.jumpers:
        shunt["jumpers"] = [{"from": pin_json(a, None), "to": pin_json(b, None)} for a, b in s.jumpers]
    return shunt


def known_of(c):
    """What the stock knows of the shunts."""
    known = []
    for shunt in c.up + c.down:
        if not shunt.part:
            continue
        resistor = RESISTORS[shunt.part]
        what = within(TOLERANCE)
        if resistor.certified_ohm:
            what = within(resistor.expanded_ohm(), relative=False) | {"statement": "expanded"}
        known.append(("shunt", shunt.name, what))
    return known


# In the order that the program keeps statements in.
INPUT_ORDER = ["arm", "shunt", "gain"]


# Which input of the hall's amplifiers each channel is on, and what it belongs with.
INPUTS = {"TP-01": ("BA-8", 1, "front spar"), "TP-02": ("BA-8", 2, "front spar"), "TP-11": ("BA-8", 3, "rear spar"),
          "TP-12": ("BA-8", 4, "rear spar"), "TP-21": ("BA-8", 5, "elevator drive"), "TP-31": ("BA-8", 6, "fin"),
          "LC-1": ("BA-1", 1, "load")}
AMPLIFIERS = {"BA-8": ("AF-0801", "AFC-2026-0801", "2027-01-31"), "BA-1": ("AF-0803", "AFC-2025-0803", "2026-11-30")}


def identity_json(c):
    if c.name not in INPUTS:
        return {}
    kind, number, _ = INPUTS[c.name]
    label, certificate_number, due = AMPLIFIERS[kind]
    return {"identity": {"name": f"Bridge amplifier {kind}", "serial": f"{label} input {number}",
                         "certificate": certificate_number} | day(due)}


def group_json(c):
    return {"group": INPUTS[c.name][2]} if c.name in INPUTS else {}


def setup_json(c):
    return {
        "bridge": {
            "type": c.type,
            "gauge": {"nominal_ohm": c.nominal, "factor": c.factor, "poisson_ratio": 0.3,
                      "factor_coefficient_per_K": 0, "factor_at_degC": 23, "installed_degC": 23,
                      "grid": ({"area_m2": c.grid_mm2 / 1e6} if c.grid_mm2 else {})
                      | {"heat_sink": "good", "demand": "static_moderate"}},
            "rating": {"rated_output_V_per_V": c.rated_mV_per_V / 1e3, "capacity": c.capacity,
                       "load_unit": "kN"},
            "arms_ohm": c.arms,
            "leads": {role: lead_json(lead) for role, lead in c.leads.items()},
            "six_wire": c.six_wire,
            "lead_warming_K": 0,
        },
        "instrument": {
            "unit": c.unit, "gauge_factor": c.factor, "bridge_factor": c.bridge_factor,
            "units_per_mV_per_V": c.units_per_mV_per_V, "scaled_unit": "kN",
            "excitation_V": c.excitation_V, "range_V_per_V": c.range_mV_per_V / 1e3, "ratiometric": True, "linearisation": "none",
            "balance": {"kind": "none", "potentiometer_ohm": 10e3, "limiting_ohm": 100e3, "wiper": 0.5},
            "grounding": "floating",
        },
    } | identity_json(c) | {
        "acquisition": {
            "sample_rate_Hz": SAMPLES_PER_SECOND,
            "filter": {"kind": "butterworth", "order": 1, "cutoff_Hz": CUTOFF_HZ, "window_s": 0.1},
            "mains_Hz": 50, "settled_to": 0.0001,
        },
        "pins": [pin_json(name, use) for name, use in c.pins],
        "shunts": [shunt_json(s) for s in c.up + c.down],
        "sequence": [{"label": label, "closed": [s.name for s in closed], "hold_s": c.step_s - c.settle_s,
                      "settle_s": c.settle_s}
                     for label, closed in steps(c)],
        "limits": {"relative": 0.01, "least": c.least, "zero_return": 0.005, "change": 0.01,
                   "zero_change": 0.005, "linearity_from": "least_squares", "merits": c.merits},
        "decision": {"rule": c.rule, "coverage": 0.9545, "guard_factor": 1, "conformity": 0.95,
                     "greatest_share": 1 / 3},
        "uncertainties": [{"of": of} | ({"at": at} if at else {}) | what 
                          for of, at, what in sorted(c.stated + known_of(c),
                                                     key=lambda stated: INPUT_ORDER.index(stated[0]))],
        "correlation_groups": [],
    }


def document_json(title, note, channels):
    stocked = any(shunt.part for c in channels for shunt in c.up + c.down)
    return {
        "format": "shuntwright", "version": 7, "title": title, "site": "Alder Fen Test Hall",
        "article": "Sandpiper two-seat training glider, tailplane", "person": "",
        "note": f"{MARK} {note}",
        "stock": stock_json(STOCK if stocked else []),
        "channels": [{"name": c.name, "note": c.note} | group_json(c) |
                     {"setup": setup_json(c), "checks": [], "ohm_readings": []} for c in channels],
    }


def smallest():
    """One gauge, no leads, one shunt across it. By hand: 350 / (350 + 174650) = 1/500, so the gauge's
    resistance falls by 1/500, which with gauge factor 2 is a strain of -1000 µm/m."""
    return Channel("Q-1", "The smallest plan: one gauge, one shunt", "quarter_three_wire", [350.0] * 4,
                   leads(0, "P+", "S-", "return"), [],
                   [Shunt("174.65k on arm 1", 174650.0, "1b", "1e", 0.0)], factor=2.0, merits={})


ONE_LINE = {"identity", "ambient", "gauge", "rating", "arms_ohm", "balance", "acquisition", "limits", "decision"}  # containers
ONE_LINE_INSIDE = {"resistors", "boxes", "series", "leads", "pins", "shunts", "sequence", "readings",
                   "uncertainties", "correlation_groups", "other_levels", "remarks", "sign_off"}  # of such


def number_text(value):
    """The shortest decimals that read back the same, as the program writes them: 1e+05, not 100000."""
    plain = json.dumps(int(value) if value.is_integer() else value)
    short = next(text for text in (f"{value:.{digits}e}" for digits in range(18)) if float(text) == value)
    return short if len(short) < len(plain) else plain


def laid_out(value, indent="", one_line=False, inside=False):
    """JSON as the program itself lays it out: a shunt and a step a line."""
    if isinstance(value, (int, float)) and not isinstance(value, bool):
        return number_text(float(value))
    if not isinstance(value, (dict, list)):
        return json.dumps(value, ensure_ascii=False)
    named = isinstance(value, dict)
    parts = []
    for key, item in value.items() if named else (("", item) for item in value):
        text = laid_out(item, indent + "  ", one_line or inside or key in ONE_LINE, key in ONE_LINE_INSIDE)
        parts.append(f"{json.dumps(key)}: {text}" if named else text)
    left, right = "{}" if named else "[]"
    if one_line or not parts:
        return left + ", ".join(parts) + right
    inner = indent + "  "
    return left + "\n" + inner + (",\n" + inner).join(parts) + "\n" + indent + right


PLANS = {
    "plan.bridgecal": ("Tailplane proof load: shunt check", "Seven channels, to be checked before and after the proof load.", CHANNELS),
    "quarter_bridge.bridgecal": ("One gauge, one shunt", "Simulates -1000 µm/m.", [smallest()]),
    "load_cell.bridgecal": ("Jack load cell: shunt check", "One transducer, six wires.",
                            [c for c in CHANNELS if c.name == "LC-1"]),
}
BUILT_SEED = 20260504
RECORDINGS = {"pre_test.csv": ("pre", 20260511), "post_test.csv": ("post", 20260513)}
CHECK_DATES = {"pre": "2026-05-11", "post": "2026-05-13"}
SAVED_AT = {"pre": "1778493600", "post": "1778664600"}  # 2026-05-11T10:00:00Z, 2026-05-13T09:30:00Z


# --- the record of the demo ---------------------------------------------------------------------------

def canonical(value):
    """RFC 8785: keys sorted, no white space, numbers as ECMAScript writes them. Keys here are ASCII."""
    if isinstance(value, dict):
        return "{" + ",".join(f"{json.dumps(k)}:{canonical(v)}" for k, v in sorted(value.items())) + "}"
    if isinstance(value, list):
        return "[" + ",".join(canonical(v) for v in value) + "]"
    if isinstance(value, bool) or value is None or isinstance(value, str):
        return json.dumps(value, ensure_ascii=False)
    number = float(value)
    if number.is_integer() and abs(number) < 1e21:
        return str(int(number))
    digits, _, power = f"{number!r}".partition("e")
    if power:  # Python begins with powers at 1e-5, ECMAScript at 1e-7
        power = int(power)
        if power < -6:
            return f"{digits}e{power}"
        sign, digits = ("-", digits[1:]) if digits[0] == "-" else ("", digits)
        return f"{sign}0.{'0' * (-power - 1)}{digits.replace('.', '')}"
    return digits


def sha256(text):
    return hashlib.sha256(text.encode("utf-8")).hexdigest()


def fingerprint(document):
    """Of the content, without what comes after the fact."""
    content = json.loads(json.dumps(document))
    for key in ("version", "sign_off", "history", "fingerprint"):
        content.pop(key, None)
    for channel in content["channels"]:
        for check in channel["checks"]:
            check.pop("remarks", None)
    content["channels"] = [sha256(canonical(channel)) for channel in content["channels"]]
    return sha256(canonical(content))


def add_revision(document, person, time, changes):
    document.pop("fingerprint")  # it stands behind the history
    entry = {"time": time, "person": person, "program": document["history"][-1]["program"], "changes": changes,
             "fingerprint": fingerprint(document)}
    document["history"].append(entry | {"chain": sha256(document["history"][-1]["chain"] + canonical(entry))})
    document["fingerprint"] = entry["fingerprint"]


def with_member(value, key, member, before):
    """The object with a member in front of another one, or at its end."""
    at = list(value).index(before) if before in value else len(value)
    items = list(value.items())
    return dict(items[:at] + [(key, member)] + items[at:])


AMBIENT = {"pre-test": {"air_degC": 19.5, "humidity": 0.48}, "post-test": {"air_degC": 21, "humidity": 0.52}}
PREPARED, REVIEWED = "P. Heron", "R. Larch"
REMARKS = {
    ("TP-12", "pre-test"): {"step": 2, "person": REVIEWED, "time": "2026-05-13T15:20:00Z",
                            "text": "The sign is opposite to the plan in every step: on which arm are the shunts?",
                            "settled": False},
    ("TP-02", "post-test"): {"step": 6, "person": REVIEWED, "time": "2026-05-13T15:24:00Z",
                             "text": "Moves while the check runs. Was the insulation measured?", "settled": False},
    ("TP-31", "post-test"): {"person": REVIEWED, "time": "2026-05-13T15:26:00Z",
                             "text": "One resistor is overdue; its value was compared with AF-0172 on the day.",
                             "settled": True},
}


def add_record(document):
    """Who did what with the checks: ambient noted, submitted, returned with remarks."""
    for channel in document["channels"]:
        channel["checks"] = [with_member(check, "ambient", AMBIENT[check["name"]], "recording")
                             for check in channel["checks"]]
    first = ", ".join(channel["name"] for channel in document["channels"][:3])
    changes = [f"{len(document['channels'])} channels ({first}, …): check {name}: ambient entered"
               for name in ("post-test", "pre-test")]
    document = with_member(document, "sign_off", [], "history")
    add_revision(document, PREPARED, "2026-05-13T13:05:00Z", changes)
    about = document["fingerprint"]
    document["sign_off"].append({"stage": "submitted", "person": PREPARED, "time": "2026-05-13T13:10:00Z",
                                 "remark": "", "fingerprint": about})
    add_revision(document, PREPARED, "2026-05-13T13:12:00Z", [f"submitted by {PREPARED}"])
    told = []
    for channel in document["channels"]:
        for check in channel["checks"]:
            if remark := REMARKS.get((channel["name"], check["name"])):
                check["remarks"] = [remark]
                at = f" at step {remark['step']}" if "step" in remark else ""
                told.append(f"{channel['name']}, check {check['name']}: remark of {REVIEWED}{at} added")
    document["sign_off"].append({"stage": "returned", "person": REVIEWED, "time": "2026-05-13T15:30:00Z",
                                 "remark": "TP-12 and TP-02 need a finding before this can be accepted, see the remarks",
                                 "fingerprint": about})
    add_revision(document, REVIEWED, "2026-05-13T15:31:00Z",
                 told + [f"returned by {REVIEWED}: {document['sign_off'][-1]['remark']}"])
    return document


def write(folder, name, text):
    with open(os.path.join(folder, name), "w", encoding="utf-8", newline="\n") as file:
        file.write(text)


def make_demo(folder, program):
    """The plan with both checks, each added and closed by the program."""
    path = os.path.join(folder, "demo.bridgecal")
    source = os.path.join(folder, "plan.bridgecal")
    for name, (recording, _) in RECORDINGS.items():
        done = subprocess.run([program, "check", source, "--recording", os.path.join(folder, name),
                               "--as", recording, "--date", CHECK_DATES[recording], "--person", PREPARED,
                               "--save", path], env=os.environ | {"SOURCE_DATE_EPOCH": SAVED_AT[recording]},
                              stdout=subprocess.DEVNULL, check=False)
        if done.returncode not in (0, 1):  # 1: a channel fails, as planted
            sys.exit(f"make_examples.py: the check of {name} could not be done")
        source = path
    with open(path, encoding="utf-8") as file:
        document = add_record(json.load(file))
    write(folder, "demo.bridgecal", laid_out(document) + "\n")


def main():
    parser = argparse.ArgumentParser(description="Makes the examples; all data are invented.")
    parser.add_argument("--out", default=os.path.dirname(os.path.abspath(__file__)), metavar="FOLDER")
    parser.add_argument("--program", metavar="SHUNTWRIGHT", help="the built program, to make demo.bridgecal")
    chosen = parser.parse_args()
    for name, (title, note, channels) in PLANS.items():
        document = document_json(title, note, channels)
        write(chosen.out, name, laid_out(document | {"fingerprint": fingerprint(document)}) + "\n")
    for name, (recording, seed) in RECORDINGS.items():
        write(chosen.out, name, recording_text(recording, seed))
    if chosen.program:
        make_demo(chosen.out, chosen.program)


if __name__ == "__main__":
    main()
