# SPDX-License-Identifier: GPL-3.0-or-later
"""Places where a file cannot be written, or not as usual, and what must be there afterwards."""

import dataclasses
import io
import json
import os
import re
import resource
import zipfile
from collections.abc import Callable

from saving_tools import fresh, seen

OLD = b"what was there before\n"
LIMIT = 40  # bytes that a file may have; every export is longer


@dataclasses.dataclass(frozen=True)
class Place:
    """`prepare(folder, name)` gives the path to be written to; None in `cause` where it is to succeed."""

    what: str
    cause: str | None  # what the refusal must say, a pattern
    prepare: Callable
    limit: bool = False  # the program runs under a limit on file sizes
    nobody: bool = False  # it runs without rights of root


def usual(folder, name):
    (folder / name).write_bytes(OLD)
    return folder / name


def missing_folder(folder, name):
    return folder / "gone" / name


def read_only_folder(folder, name):
    (folder / name).write_bytes(OLD)
    folder.chmod(0o555)
    return folder / name


def of_another(folder, name):
    """A shared folder like /tmp, where nobody may replace a file of somebody else."""
    (folder / name).write_bytes(OLD)
    folder.chmod(0o1777)
    return folder / name


def unreachable_folder(folder, name):
    inner = folder / "closed"
    inner.mkdir()
    inner.chmod(0o600)
    return inner / name


def link(folder, name):
    """Kept, and what it leads to is replaced."""
    (folder / "store").mkdir()
    (folder / "store" / ("real-" + name)).write_bytes(OLD)
    (folder / name).symlink_to("store/real-" + name)
    return folder / name


def dangling_link(folder, name):
    (folder / "store").mkdir()
    (folder / name).symlink_to("store/real-" + name)
    return folder / name


def link_into_nothing(folder, name):
    (folder / name).symlink_to("gone/real-" + name)
    return folder / name


def circle(folder, name):
    (folder / name).symlink_to(name)
    return folder / name


def a_folder(folder, name):
    (folder / name).mkdir()
    return folder / name


def a_pipe(folder, name):
    os.mkfifo(folder / name)
    return folder / name


def device(folder, name):
    """By a link, so that the name has the ending."""
    (folder / name).symlink_to("/dev/null")
    return folder / name


def long_name(folder, name):
    return folder / ("x" * 300 + name)


PLACES = [
    Place("as usual", None, usual),
    Place("file-size limit", "larger than the system allows|File too large", usual, limit=True),
    Place("read-only folder", "do not have the right", read_only_folder, nobody=True),
    Place("folder without the right to enter", "do not have the right", unreachable_folder, nobody=True),
    Place("file of another owner in a shared folder", "do not have the right", of_another, nobody=True),
    Place("missing folder", "there is no folder", missing_folder),
    Place("link to a file", None, link),
    Place("link to a file that is not there", None, dangling_link),
    Place("link into a folder that is not there", "there is no folder", link_into_nothing),
    Place("link in a circle", "circle", circle),
    Place("a folder has the name", "folder has that name", a_folder),
    Place("a pipe has the name", "pipe or a device", a_pipe),
    Place("a device", "pipe or a device", device),
    Place("name too long", "the name is too long", long_name),
]


def is_whole(path, data):
    """By the format of its ending: what was cut short would not be."""
    ending = path.suffix
    if ending == ".pdf":
        return data.startswith(b"%PDF") and data.rstrip().endswith(b"%%EOF")
    if ending == ".xlsx":
        return zipfile.is_zipfile(io.BytesIO(data)) and zipfile.ZipFile(io.BytesIO(data)).testzip() is None
    if ending in (".json", ".bridgecal", ".bridgereport"):
        json.loads(data)
        return True
    if ending == ".png":
        return data.startswith(b"\x89PNG") and data.rstrip().endswith(b"IEND\xaeB`\x82")
    ends = {".svg": b"</svg>", ".html": b"</html>", ".cir": b".end"}
    return len(data) > 40 and data.rstrip().endswith(ends.get(ending, b"")) and data != OLD


def folder_of(path):
    """Whose content may change; the one above where there is none."""
    return path.parent if path.parent.is_dir() else path.parent.parent


def complaint(place, path, before, told, reason, reference):
    """What is wrong after writing to `path` was told to be done or refused; empty when nothing."""
    after = seen(folder_of(path))
    changed = {name for name in after.keys() | before.keys() if after.get(name) != before.get(name)}
    if not told:
        if changed:
            return f"refused, and yet changed: {sorted(changed)}"
        if place.cause is None:
            return f"refused: {reason}"
        named = re.search(place.cause, reason) and not re.search("Success|Unknown error", reason)
        return "" if named else f"the cause is not named: {reason!r}"
    if place.cause is not None:
        return "told to be written"
    if str(before.get(path.name, "")).startswith("link") and path.name in changed:
        return "the link was replaced"
    data = path.read_bytes()
    if not is_whole(path, data) or reference not in (None, data):
        return f"told to be written, and is not whole: {len(data)} bytes"
    return f"also changed: {sorted(changed - {path.name})}" if changed - {path.name} else ""


def limits(place):
    """For subprocess: what the child does before it begins."""
    if not place.limit:
        return None
    return lambda: resource.setrlimit(resource.RLIMIT_FSIZE, (LIMIT, LIMIT))


def opened(folder):
    """An empty folder that anybody may write to; what a place closed there before is opened to be removed."""
    if folder.exists():
        for inner in [folder, *(one for one in folder.iterdir() if one.is_dir() and not one.is_symlink())]:
            inner.chmod(0o755)
    fresh(folder).chmod(0o777)
    return folder


def needs_second_user(place):
    return place.prepare is of_another and os.geteuid() != 0
