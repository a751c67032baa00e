# SPDX-License-Identifier: GPL-3.0-or-later
"""A document in which every text that people may choose is one that a careless program would act on."""

import copy
import json
import re

# Texts that stand for themselves: words of the file format, times, checksums, nodes.
OWN_WORDS = re.compile(
    r"(^|\.)(format|kind|demand|heat_sink|type|rule|unit|grounding|linearisation|linearity_from|node|"
    r"statement|distribution|of|date|due|time|stage|sha256|fingerprint|chain|read_as|series|broken|touching|"
    r"exchanged|program)(\.#)*$")
NODES = re.compile(r"(^|\.)(from|to|at)$")
RIGHT_TO_LEFT, MARKS = "\u202e", "e\u0301\u0323\u20dd"


def kind_of(path):
    return ".".join("#" if isinstance(key, int) else key for key in path)


def strings(value, path=()):
    """Every text of a document with the place where it stands."""
    if isinstance(value, dict):
        for key, inner in value.items():
            yield from strings(inner, path + (key,))
    elif isinstance(value, list):
        for index, inner in enumerate(value):
            yield from strings(inner, path + (index,))
    elif isinstance(value, str):
        yield path, value


# Where a text is cut short: labels of resistors and pins have few bytes.
SHORT = re.compile(r"(^|\.)(id|resistor|connector|pin|load_unit|scaled_unit|fitted_in|number|certificate)$")


class Hostile:
    """Texts with a file of their own each; who looks for one of these files has read a text as markup.

    The files are named relative to the working folder, since some texts may hold but a few letters.
    """

    def __init__(self):
        self.texts = {}  # of the tame document: the hostile one
        self.places = {}  # name of a file without its ending: where the text stands

    def text(self, tame, place):
        if tame not in self.texts:
            self.texts[tame] = self.made(tame, place)
        return self.texts[tame]

    def made(self, tame, place):
        marker = f"mark{len(self.places):03}"
        self.places[marker] = place
        if SHORT.search(place):
            return (f"<img src={marker}.png>{tame}", f"R&D {tame}<5 {marker}")[len(self.places) % 2]
        kinds = [f'<img src="{marker}.png">{tame}',
                 f'{tame} & "Co" <link rel="stylesheet" href="{marker}.css"> %1 %2 %n [*] &x '
                 f'<img src={marker}.png>',
                 f"R&D {tame}'s 100 % \"q\" {RIGHT_TO_LEFT}{MARKS} {marker}",
                 f'=HYPERLINK("{marker}") <table background="{marker}.png"><tr><td>'
                 f'<a href="{marker}.htm">{tame}</a>',
                 f'&lt;b&gt;{tame}<body background="{marker}.png"><style>@import "{marker}.css";</style>'
                 "</title>"]
        text = kinds[len(self.places) % len(kinds)]
        if place.endswith(("note", "remark", "text")) and not place.startswith("stock"):
            text += f'\n<img src="{marker}.png">' + ("W" * 10_000 if place == "channels.#.note" else "")
        return text


def hostile(tame, made):
    """`tame` (parsed JSON) with the texts of `made`, and `made`."""
    document = copy.deepcopy(tame)
    shunts = {shunt["name"] for channel in tame["channels"] for shunt in channel["setup"]["shunts"]}
    ids = {one["id"] for one in tame["stock"].get("resistors", [])}
    for path, text in strings(tame):
        place = kind_of(path)
        if not text or OWN_WORDS.search(place):
            continue
        if NODES.search(place):
            resistor = re.fullmatch("(.*)( end [12])", text)
            if resistor and resistor[1] in ids:
                text_now = made.text(resistor[1], place) + resistor[2]
            elif place.endswith(".at") and text in shunts:
                text_now = made.text(text, place)
            else:
                continue
        else:
            text_now = made.text(text, place)
        holder = document
        for key in path[:-1]:
            holder = holder[key]
        holder[path[-1]] = text_now
    return document, made


def write(source, into):
    """Writes the hostile form of the document `source` to `into`."""
    document, made = hostile(json.loads(source.read_text(encoding="utf-8")), Hostile())
    into.write_text(json.dumps(document, ensure_ascii=False), encoding="utf-8")
    return made
