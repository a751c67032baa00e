# SPDX-License-Identifier: GPL-3.0-or-later
"""Programs called as from a shell, plainly or watched: what they ask the system for."""

import collections
import os
import re
import subprocess

# A marker as the name of a file. A recording whose path has one within is looked for by all of its path.
MARKER = re.compile(r'"(?:(?:[^"\\]|\\.)*/)?(mark\d{3})\.(?:png|css|htm)(?:\.\w+)?"')
SOCKET = re.compile(r"^\d+ +socket(?:pair)?\((\w+)")
ADDRESS = re.compile(r"sa_family=(\w+)")


def called(*words, timeout=300, encoding="utf-8", env=None, cwd=None):
    """Runs `words` without input; what it said comes along."""
    return subprocess.run([str(word) for word in words], capture_output=True, encoding=encoding,
                          errors="replace" if encoding else None, stdin=subprocess.DEVNULL, timeout=timeout,
                          env={**os.environ, **(env or {})}, cwd=cwd)


def traced(words, folder, **more):
    """The same under strace; also the lines of its calls on files and sockets."""
    log = folder / "calls"
    strace = ["strace", "-f", "--seccomp-bpf", "-qq", "-s", "4096", "-o", log, "-e", "trace=%file,%network"]
    done = called(*strace, *words, **more)
    return done, log.read_text(encoding="utf-8", errors="replace").splitlines()


def looked_for(calls, made):
    """Places whose marker a call names."""
    hits = (MARKER.search(call) for call in calls)
    return sorted({made.places.get(hit[1], hit[1]) for hit in hits if hit})


def families(calls):
    """Sockets made and addresses used, by family: {"AF_UNIX": 3}."""
    return collections.Counter(family for call in calls
                               for family in SOCKET.findall(call) + ADDRESS.findall(call))


def is_local(counted):
    return set(counted) <= {"AF_UNIX"}


def words_of(counted):
    return ", ".join(f"{count} {family}" for family, count in sorted(counted.items())) or "none at all"
