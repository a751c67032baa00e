# SPDX-License-Identifier: GPL-3.0-or-later
"""Reports of a document with hostile texts, read by others: Python's html.parser, xml and json, pdftotext."""

import base64
import html.parser
import json
import re
import urllib.parse
import xml.etree.ElementTree as xml

import hostile_document
from hostile_calls import called
from row import Row


REFERRING = ("src", "href", "background", "action", "style", "data", "poster", "srcset")


class Tags(html.parser.HTMLParser):
    """Elements with the names of their attributes; what refers to anything; the text."""

    def __init__(self, text):
        super().__init__()
        self.elements, self.addresses, self.words = set(), [], []
        self.feed(text)
        self.close()

    def handle_starttag(self, tag, attrs):
        self.elements.add((tag, *sorted(name for name, _ in attrs)))
        self.addresses += [value or "" for name, value in attrs
                           if name in REFERRING or name.startswith("on")]

    def handle_data(self, data):
        self.words.append(data)


def written(bench, document, name, ending):
    out = bench.scratch / f"{name}.{ending}"
    done = called(bench.program, "report", document, "-o", out)
    assert done.returncode == 0, done.stderr
    return out


def pictures(page):
    """Drawings that a page holds as data, as XML."""
    for address in page.addresses:
        if address.startswith("data:image/svg+xml;base64,"):
            yield xml.fromstring(base64.b64decode(address.split(",", 1)[1]))
        elif address.startswith("data:image/svg+xml"):
            yield xml.fromstring(urllib.parse.unquote(address.split(",", 1)[1]))


def squeezed(text):
    """Without white space, as lines may be broken anywhere."""
    return re.sub(r"[\s\u00ad\u200b\u202a-\u202e]", "", text)


def page_row(bench, tame, hostile, made):
    page = Tags(written(bench, hostile, "hostile", "html").read_text(encoding="utf-8"))
    plain = Tags(written(bench, tame, "tame", "html").read_text(encoding="utf-8"))
    more = page.elements - plain.elements
    held = [address[:60] for address in page.addresses if re.search(r"mark\d\d\d", address[:200])]
    outside = [one[:60] for one in page.addresses if re.match(r"(?!data:|#)[a-z]+:|/|\.\.?/", one)]
    text = squeezed("".join(page.words))
    names = [one["name"] for one in json.loads(hostile.read_text(encoding="utf-8"))["channels"]]
    lost = [name for name in names if squeezed(name) not in text]
    return page, Row("web page: elements and attributes beside those of the same page with tame names",
                     f"{len(more)} of {len(page.elements)} kinds {sorted(more)[:3] or ''}; {len(held)} "
                     f"addresses from texts, {len(outside)} leading out of the file, {len(lost)} of "
                     f"{len(names)} names not as typed", "0, 0, 0, 0",
                     not more and not held and not outside and not lost and len(plain.elements) > 20)


def drawing_row(page):
    drawings = list(pictures(page))
    elements = [element for drawing in drawings for element in drawing.iter()]
    strange = {element.tag.split("}")[-1] for element in elements} - {
        "svg", "g", "path", "text", "tspan", "title", "desc", "line", "rect", "circle", "ellipse", "polyline",
        "polygon", "defs", "clipPath"}
    referring = [name for element in elements for name in element.attrib if "href" in name]
    return Row("drawings in it, as XML", f"{len(drawings)} well-formed, {len(strange)} strange elements "
               f"{sorted(strange) or ''}, {len(referring)} references", "all, 0, 0",
               len(drawings) > 0 and not strange and not referring)


def json_row(bench, hostile):
    told = json.loads(written(bench, hostile, "hostile", "json").read_text(encoding="utf-8"))
    document = json.loads(hostile.read_text(encoding="utf-8"))
    texts = {text for _, text in hostile_document.strings(told)}
    names = [one["name"] for one in document["channels"]] + [document["title"]]
    lost = [name for name in names if name not in texts]
    return Row("JSON of the report: names and title", f"{len(lost)} of {len(names)} other than typed", "0",
               not lost)


def pdf_row(bench, hostile):
    path = written(bench, hostile, "hostile", "pdf")
    text = squeezed(called("pdftotext", "-layout", path, "-").stdout)
    info = called("pdfinfo", path).stdout
    document = json.loads(hostile.read_text(encoding="utf-8"))
    # What runs from right to left is set so.
    names = [name for name in [one["name"] for one in document["channels"]] + [document["title"]]
             if "\u202e" not in name]
    lost = [name for name in names if squeezed(name) not in text]
    actions = re.findall(rb"/(?:URI|JavaScript|Launch|GoToR|SubmitForm)\b", path.read_bytes())
    return Row("PDF: names and title as typed, actions that lead out of it",
               f"{len(lost)} of {len(names)} other than typed {lost[:1] or ''}, {len(actions)} actions, "
               f"{'JavaScript: no' if re.search('JavaScript: +no', info) else 'JavaScript'}", "0, 0, no",
               not lost and not actions and bool(names) and bool(re.search("JavaScript: +no", info)))


def terminal_row(bench, hostile):
    """Control characters act on a terminal; no name may carry one there."""
    document = json.loads(hostile.read_text(encoding="utf-8"))
    document["channels"][0]["name"] = "TP\u001b]0;x\u0007\u009b31m-01"
    raw = bench.scratch / "escapes.bridgecal"
    raw.write_text(json.dumps(document), encoding="utf-8")
    acting, tried = 0, 0
    for path in (hostile, raw):
        for words in (("predict", path), ("review", path), ("batch", path, "--channels"), ("diagnose", path),
                      ("compare", path), ("verify", path)):
            done = called(bench.program, *words, encoding=None, timeout=120)
            said = (done.stdout + done.stderr).decode("utf-8", "replace")
            acting += len(re.findall("[\x00-\x08\x0b-\x1f\x7f-\x9f]", said))
            tried += 1
    return Row("control characters that names bring to a terminal", f"{acting} in what {tried} calls said",
               "0", acting == 0)


def rows(bench):
    tame = bench.source / ("examples/demo.bridgecal" if bench.long else "tests/data/version7.bridgecal")
    hostile = bench.scratch / "hostile.bridgecal"
    made = hostile_document.write(tame, hostile)
    page, row = page_row(bench, tame, hostile, made)
    yield row
    yield drawing_row(page)
    yield json_row(bench, hostile)
    yield pdf_row(bench, hostile)
    yield terminal_row(bench, hostile)
