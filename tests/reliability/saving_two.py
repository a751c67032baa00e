# SPDX-License-Identifier: GPL-3.0-or-later
"""Two programs on one document, and a file that others change meanwhile; each window is its own process."""

import json
import os
import shutil

from saving_tools import Count, Window, documents, fresh

ASKED = "each holds"


def first_channel(file):
    return json.loads(file.read_text(encoding="utf-8"))["channels"][0]["name"]


def two_instances(bench, killed):
    """The second reads only; once the first is gone, by its own will or by a kill, the second may save."""
    count = Count()
    folder = fresh(bench.scratch / "two")
    file = folder / "tail.bridgecal"
    shutil.copyfile(documents(bench, fresh(folder / "from"))[0], file)
    by_other_name = folder / "link.bridgecal"
    by_other_name.symlink_to(file.name)
    with Window(bench, fresh(folder / "home1")) as first, Window(bench, fresh(folder / "home2")) as second:
        first(f"open {file}")
        first("edit FIRST")
        second("answer openReadOnly")
        second(f"open {by_other_name}")
        count.check("the second is read-only", second.answer["readonly"])
        second("edit SECOND")
        before = file.read_bytes()
        second("act save")
        second.until("the file dialog", lambda told: "QFileDialog" in told["front"])
        told = second.answer
        count.check("saving under its name is refused", "cannot be saved under its name" in told["notice"])
        second("act Cancel")
        second.until("the dialog to go", lambda told: not told["front"])
        second(f"saveas {file}")
        told = second.answer
        count.check("nor as a file of that name", not told["done"] and "open for writing" in told["notice"])
        count.check("the file is untouched", file.read_bytes() == before)
        count.check("the first saves", first("save")["done"] and first_channel(file) == "FIRST")
        if killed:
            first.kill()
        else:
            first("act quit")
            first.process.wait(timeout=30)
        second("answer saveOver")  # the first has saved meanwhile
        count.check("then the second may", second("save")["done"] and first_channel(file) == "SECOND")
        count.check("and the link is still one", by_other_name.is_symlink())
    return count


def changed_meanwhile(bench):
    """Nothing of others is overwritten without a question, and nothing of ours is lost by it."""
    count = Count()
    folder = fresh(bench.scratch / "changed")
    old, new = documents(bench, fresh(folder / "from"))
    file = folder / "tail.bridgecal"
    shutil.copyfile(old, file)
    with Window(bench, fresh(folder / "home")) as window:
        window(f"open {file}")
        window("edit MINE")
        staged = folder / "staged"
        shutil.copyfile(new, staged)
        os.replace(staged, file)  # as programs save
        window("answer Cancel")
        theirs = new.read_bytes()
        count.check("Cancel saves nothing", not window("save")["done"] and file.read_bytes() == theirs)
        count.check("the work is still unsaved", window.answer["unsaved"])
        with open(file, "ab") as more:  # in place, as an editor may
            more.write(b" \n")
        window("answer Cancel")
        theirs += b" \n"
        count.check("a change in place too", not window("save")["done"] and file.read_bytes() == theirs)
        window("answer saveOver")
        count.check("Save over it saves", window("save")["done"] and first_channel(file) == "MINE")
        count.check("nothing more is asked", window("edit AGAIN") and window("save")["done"])
        file.unlink()
        window("edit THIRD")
        count.check("a deleted file is made again", window("save")["done"] and first_channel(file) == "THIRD")
    return count


def rows(bench):
    yield two_instances(bench, killed=True).row("two processes on one document, the first killed", ASKED)
    if bench.long:
        yield two_instances(bench, killed=False).row("two processes on one document, the first ended", ASKED)
    yield changed_meanwhile(bench).row("file changed by others while it is open", ASKED)
