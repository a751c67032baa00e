# SPDX-License-Identifier: GPL-3.0-or-later
"""Whatever dialog is open when the program is killed, the next start has the work that was not saved.

A dialog that is modal runs a loop of its own. The recovery copy must be written in it as in the window's.
"""

import dataclasses
import re
import shutil
import subprocess
import time

from row import Row
from saving_tools import Count, Window, environment, fresh

COPY_WITHIN_S = 5  # of an edit, on an idle machine; the product says 2 s
PATIENCE_S = 30


@dataclasses.dataclass(frozen=True)
class Dialog:
    """How to come to it with unsaved work, and what is in front then."""

    source: str  # file of ui that opens it, and what it opens
    steps: tuple  # lines to the window
    front: str  # part of its class and objectName
    begin: str = ""  # a function of this module that prepares


def dialog(source, *steps, front="", begin=""):
    return Dialog(source, steps, front or source.split(":")[1], begin)


DIALOGS = [
    dialog("main_window_files.cpp:QFileDialog", "act saveAs"),
    dialog("main_window_files.cpp:QMessageBox", "act new"),
    dialog("main_window_files.cpp:ReportDialog", "act report"),
    dialog("main_window_files.cpp:RecordingDialog", "act checkRecording"),
    dialog("main_window_files.cpp:QFileDialog", "act netlist"),
    dialog("main_window_menus.cpp:TextFormDialog", "act details"),
    dialog("main_window_menus.cpp:SearchDialog", "act prepareResistors"),
    dialog("main_window_menus.cpp:PatternDialog", "act sequenceLayOut"),
    dialog("main_window_menus.cpp:ApplyDialog", "act prepareApply"),
    dialog("main_window_menus.cpp:CommandList", "act commands"),
    dialog("main_window_menus.cpp:QMessageBox", "act cautions"),
    dialog("main_window_menus.cpp:AboutDialog", "act about"),
    dialog("main_window_menus.cpp:TwinDialog", "act viewTwins"),
    dialog("campaign/overview_page.cpp:QFileDialog", "act channelOverview", "act overviewExport"),
    dialog("campaign/overview_page.cpp:ImportDialog", "act channelImport"),
    dialog("campaign/overview_page.cpp:CopiesDialog", "act channelCopies"),
    dialog("campaign/overview_page.cpp:EditManyDialog", "act channelEditMany"),
    dialog("campaign/import_dialog.cpp:QFileDialog", "act channelImport", "act importOpen"),
    dialog("strip/strip_view.cpp:QFileDialog", "act stripFind", begin="without_recordings"),
    dialog("bridge_view_edits.cpp:WireDialog", "act wire0", front="WireDialog"),
    dialog("bridge_view_edits.cpp:QPrintDialog", "act bridgePrint"),
    dialog("setup/leads_group.cpp:WireDialog", "act wire0"),
    dialog("check_bar.cpp:TextFormDialog", "act checkDetails"),
    dialog("wiring/sheet_pdf.cpp:QFileDialog", "act prepareWiring", "act printWiring"),
    dialog("pattern/pattern_dialog.cpp:TextFormDialog", "act sequenceLayOut", "act savePattern"),
    dialog("picture_file.cpp:QFileDialog", "act checkExport"),
    dialog("report/report_dialog.cpp:QFileDialog", "act report", "act saveReport"),
    dialog("report/report_dialog.cpp:QPrintDialog", "act report", "act printReport"),
    dialog("report/template_list.cpp:QInputDialog", "act report", "act duplicateTemplate",
           "act renameTemplate"),
    dialog("report/template_list.cpp:QMessageBox", "act report", "act duplicateTemplate",
           "act removeTemplate"),
    dialog("report/template_list.cpp:QFileDialog", "act report", "act exportTemplate"),
    dialog("safety/work_safety.cpp:QMessageBox", "act save", front="saveOverBox", begin="changed_by_others"),
    dialog("safety/work_safety.cpp:DifferencesDialog", "act save", "act saveOverDifferences",
           begin="changed_by_others"),
    dialog("safety/recovery_bar.cpp:QMessageBox", "offer", "wait offered", "act discardWork0",
           begin="left_over"),
    dialog("recording/watch_page.cpp:QFileDialog", "act checkWatch", "act watchFolder"),
    dialog("recording/recording_dialog.cpp:QFileDialog", "act checkRecording", "act chooseRecording"),
    dialog("record/record_page.cpp:ActDialog", "act recordRemark"),
    dialog("preferences/preferences_page.cpp:QMessageBox", "act preferences", "act resetPreferences"),
    dialog("help/manual_window.cpp:QPrintDialog", "act manual", "act manualPrint"),
    dialog("practice/score_table.cpp:QMessageBox", "act teachPractice", "act clearScore", begin="with_score"),
    dialog("practice/practice_page.cpp:QFileDialog", "act teachPractice", "act sheetsQuestions"),
    dialog("practice/practice_page.cpp:QMessageBox", "act teachPractice", "act sheetsBoth",
           "choose {folder}/p.pdf", begin="with_answers"),
    dialog("practice/practice_page.cpp:QProgressDialog", "sheets {folder}/long.pdf"),
    dialog("stock/stock_page_files.cpp:QFileDialog", "act prepareStock", "act importStock"),
    dialog("stock/stock_page_files.cpp:QMessageBox", "act prepareStock", "act importStock",
           "choose {folder}/s.csv", begin="with_stock"),
    dialog("commands/command_list.cpp:QPrintDialog", "act commands", "act printKeys"),
]
# Opened in more than one way, or gone before a copy is due.
NOT_BY_HAND = {
    "main_window_files.cpp:QProgressDialog": "drawn by the same pages as the one of the practice sheets",
    "printed_file.cpp:QMessageBox": "only after printing into a file has failed",
    "wiring/sheet_pdf.cpp:QProgressDialog": "a sheet is written within half a second",
}
QUICK = ("main_window_files.cpp:ReportDialog", "main_window_menus.cpp:QMessageBox")
OPENED = re.compile(r"\b(Q(?:Message|File|Input|Print|Progress)\w*?(?:Box|Dialog)|[A-Z]\w+Dialog|"
                    r"CommandList)\b(?: \w+[({]|::get\w+\(|\([^;]*\)\.exec\(\)|\(m_\w+[^;]*, m_window\);)")


def opened_in(source):
    """file:class of every place of ui that opens a dialog, by its text."""
    found = set()
    for file in sorted(source.rglob("*.cpp")):
        text = file.read_text(encoding="utf-8")
        for match in OPENED.finditer(text):
            line = text[text.rfind("\n", 0, match.start()) + 1:match.end()]
            if not re.match(rf"\S.*{match[1]}\b.*::", line):  # a member's head
                found.add(f"{file.relative_to(source)}:{match[1]}")
    return found


def kept(home):
    return list((home / "state" / "shuntwright" / "recovery").glob("*.recovery"))


# What some of them need first. Each is given bench, folder, document and the open window.

def changed_by_others(bench, folder, document, window):
    shutil.copyfile(bench.source / "examples" / "quarter_bridge.bridgecal", document)


def left_over(bench, folder, document, window):
    """A copy of an earlier program."""
    target = folder / "state" / "shuntwright" / "recovery" / "earlier.recovery"
    plan = bench.source / "examples" / "plan.bridgecal"
    subprocess.run([bench.driver("saving_ui_driver"), "recovery", plan, target], check=True,
                   capture_output=True, env=environment(folder))


def without_recordings(bench, folder, document, window):
    """The demo's recordings are not beside the copy of the document."""


def with_score(bench, folder, document, window):
    """Some answers of earlier days, that can be cleared."""
    (folder / "state" / "shuntwright" / "practice.ini").write_text("[score]\nfirst\\reading=2, 1\n")


def with_answers(bench, folder, document, window):
    (folder / "p-answers.pdf").write_bytes(b"there already")


def with_stock(bench, folder, document, window):
    (folder / "s.csv").write_text("id,resistance,tolerance\nR1,1000,0.1 %\n")


def killed_in(bench, one):
    """Opens it with unsaved work, kills the program, looks what the next start has. Says what is wrong."""
    folder = fresh(bench.scratch / "dialog")
    (folder / "state" / "shuntwright").mkdir(parents=True)
    (folder / "state" / "shuntwright" / "state.ini").write_text("[General]\ntourSeen=true\n")
    document = folder / "tail.bridgecal"
    shutil.copyfile(bench.source / "examples" / "demo.bridgecal", document)
    with Window(bench, folder) as window:
        window(f"open {document}")
        if one.begin:
            globals()[one.begin](bench, folder, document, window)
        before = document.read_bytes()
        others = set(kept(folder))
        window("edit SANDPIPER")
        edited = time.monotonic()
        for step in one.steps:
            if step.startswith("wait "):
                window.until(step, lambda told: told[step.split()[1]], PATIENCE_S)
                continue
            answer = window(step.format(folder=folder))
            if answer.get("done") is False:
                return f"\"{step}\" does not go"
            for _ in range(3):
                window("state")
        window.until("the dialog", lambda told: one.front in told["front"], PATIENCE_S)
        while not set(kept(folder)) - others:
            if time.monotonic() - edited > PATIENCE_S:
                return "no recovery copy while it is open"
            time.sleep(0.05)
        late = time.monotonic() - edited
        if one.front not in window("state")["front"]:
            return f"it went away by itself: {window.answer['front']}"
        window.kill()
    if document.read_bytes() != before:
        return "the document's file was changed"
    for other in others:
        other.unlink()
    with Window(bench, folder) as window:
        window("offer")
        window.until("the offer", lambda told: "tail.bridgecal" in told["offered"], PATIENCE_S)
        window("recover")
        window.until("the work", lambda told: told["channel"] == "SANDPIPER" and told["unsaved"], PATIENCE_S)
    return "" if late < COPY_WITHIN_S or not bench.long else f"the copy came after {late:.1f} s"


def rows(bench):
    known = {one.source for one in DIALOGS}
    chosen = DIALOGS if bench.long else [one for one in DIALOGS if one.source in QUICK][:2]
    count = Count()
    for one in chosen:
        try:
            wrong = killed_in(bench, one)
        except (AssertionError, EOFError) as error:
            wrong = str(error)
        count.add(f"{one.source.split('/')[-1].replace('.cpp:', ' ')} ({one.steps[-1]})", wrong)
    yield count.row("killed with unsaved work while a dialog is open", "the next start has it, for each",
                    f" ({', '.join(count.good)})")
    there = opened_in(bench.source / "ui")
    unknown, stale = there - known - NOT_BY_HAND.keys(), known - there
    yield Row("dialogs that the list of dialogs does not know",
              f"{len(unknown)} of {len(there)} places, {len(stale)} are gone"
              + "".join(f"; {one}" for one in sorted(unknown | stale)), "0", not unknown and not stale)
