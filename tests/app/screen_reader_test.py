#!/usr/bin/python3
# SPDX-License-Identifier: GPL-3.0-or-later
"""What assistive tools are told of the window: every menu item is pressed, every page and dialog walked.

The program runs on a virtual screen (the offscreen platform tells assistive tools nothing) with a session bus and
an accessibility bus of its own, and is looked at through AT-SPI, as a screen reader does. Names, roles and values:
WCAG 2.2, success criterion 4.1.2; messages: 4.1.3; what pictures show: 1.1.1."""
import pathlib
import re
import subprocess
import sys
import unittest

from own_screen import accessibility_bus, move_in, program_of, turn, wait_for

from gi.repository import Atspi, Gio, GLib

PROGRAM = pathlib.Path(sys.argv[1])

# What is pressed by no test: it ends the program, fills the whole screen without a button to leave it by, sends
# to a printer, or takes away what is looked at.
LEFT_ALONE = re.compile(r"^(Quit|New|Present the view|Print…|Remove.*|Clear.*|Open recent|Language.*|Deutsch|English)$")
# Qt's own dialogs, whose names are Qt's.
FOREIGN = re.compile(r"Look in:|Name of printer|^&?Printer")
DISMISS = ["Cancel", "Close", "OK", "No", "Skip", "Not now", "Later"]

ACTIONABLE = {"push button", "toggle button", "check box", "radio button", "combo box", "text", "entry", "spin button",
              "slider", "page tab", "link"}
NAMED = ACTIONABLE | {"table", "tree table", "tree", "list", "page tab list", "image", "canvas", "chart", "separator"}
PICTURES = {"image", "canvas", "chart"}
TABLES = {"table", "tree table"}
CLOSED = {"table", "tree table", "tree", "list"}  # their items are looked at by their own check

EVENTS = []


def has(item, state):
    return item.get_state_set().contains(getattr(Atspi.StateType, state))


def is_shown(item):
    try:
        return has(item, "SHOWING")
    except GLib.Error:  # a dialog that was closed meanwhile
        return False


def children(item):
    for index in range(item.get_child_count()):
        child = item.get_child_at_index(index)
        if child is not None:
            yield child


def shown(item):
    """The item and everything in it that is on view; the insides of tables and lists are left out."""
    yield item
    if item.get_role_name() in CLOSED:
        return
    for child in children(item):
        if is_shown(child):
            yield from shown(child)


def label_of(item):
    """Name, or that of the label beside it."""
    name = item.get_name().strip()
    if name:
        return name
    for relation in item.get_relation_set():
        if relation.get_relation_type() == Atspi.RelationType.LABELLED_BY:
            return relation.get_target(0).get_name().strip()
    return ""


def text_of(item):
    return Atspi.Text.get_text(item, 0, -1)


def has_text(item):
    return "Text" in item.get_interfaces()


def described(item, path):
    return f'{item.get_role_name()} "{item.get_name()[:60]}" in {" / ".join(path) or "the window"}'


def says_nothing(item, role):
    """A label without text, from which text could be taken, and the sign beside the text of a message."""
    return role == "label" or (role == "image" and item.get_parent().get_role_name() == "alert")


class Walk:
    """Looks at everything on view, each thing once, and notes what assistive tools are not told."""

    def __init__(self):
        self.faults = []
        self.seen = set()
        self.roles = {}

    def take(self, item, path=()):
        role = item.get_role_name()
        children_here = [child for child in children(item) if is_shown(child)] if role not in CLOSED else []
        key = (item.path, item.get_name())
        if key not in self.seen:
            self.seen.add(key)
            self.roles[role] = self.roles.get(role, 0) + 1
            self.look(item, role, path)
        self.look_at_neighbours(children_here, path)
        inside = (*path, item.get_name()[:40]) if item.get_name() else path
        for child in children_here:
            self.take(child, inside)

    def fault(self, item, path, what):
        self.faults.append(f"{described(item, path)}: {what}")

    def look(self, item, role, path):
        if (role in NAMED or has(item, "FOCUSABLE")) and not label_of(item) and not says_nothing(item, role):
            self.fault(item, path, f"has no name ({item.get_description()[:60]})")
        if has(item, "FOCUSABLE") and role in ("unknown", "invalid", "filler"):
            self.fault(item, path, "takes the keyboard and has no role")
        if role in PICTURES:
            self.look_at_picture(item, path)
        if role in TABLES:
            self.look_at_table(item, path)
        if role == "combo box" and (not has_text(item) or text_of(item) == item.get_name() != ""):
            self.fault(item, path, "does not tell what it is for and what is chosen")
        if role in ("text", "entry") and not has_text(item):
            self.fault(item, path, "does not tell its text")
        if role in ("text", "entry") and has(item, "ENABLED") and not has(item, "EDITABLE") \
                and not has(item, "READ_ONLY") and not has(item, "SELECTABLE_TEXT"):
            self.fault(item, path, "can be edited and does not say so, or cannot and does not say so")
        if role in ACTIONABLE - {"text", "entry", "spin button"} and has(item, "ENABLED") \
                and Atspi.Action.get_n_actions(item) == 0:
            self.fault(item, path, "cannot be pressed by assistive tools")

    def look_at_picture(self, item, path):
        if item.get_name() and not item.get_description():
            self.fault(item, path, "does not say what it shows")

    def look_at_table(self, item, path):
        rows, columns = Atspi.Table.get_n_rows(item), Atspi.Table.get_n_columns(item)
        if rows < 0 or (rows > 0) != (columns > 0 and rows > 0):
            self.fault(item, path, f"has {rows} rows and {columns} columns")
        if rows < 1 or columns < 1:
            return  # nothing in it yet
        texts = []
        for column in range(columns):
            cell = Atspi.Table.get_accessible_at(item, 0, column)
            if cell is None or cell.get_role_name() not in ("table cell", "tree item", "list item"):
                self.fault(item, path, f"has no cell in column {column}")
                continue
            texts.append(cell.get_name())
        if not any(texts):
            self.fault(item, path, "does not tell what is in its first row")

    def look_at_neighbours(self, items, path):
        names = {}
        for item in items:
            role = item.get_role_name()
            name = label_of(item)
            if role not in ACTIONABLE or not name:
                continue
            if (role, name) in names:
                self.fault(item, path, "has the name of its neighbour")
            names[(role, name)] = item


class ScreenReader(unittest.TestCase):
    left_open = []  # windows that stay, by their paths

    @classmethod
    def setUpClass(cls):
        cls.bus = accessibility_bus()
        cls.listener = Atspi.EventListener.new(cls.on_event)
        for kind in ("object:state-changed:showing", "object:property-change:accessible-name",
                     "object:state-changed:checked", "object:announcement"):
            cls.listener.register(kind)
        cls.program = subprocess.Popen([PROGRAM, "--demo"], stderr=subprocess.DEVNULL)
        cls.application = wait_for("the program", lambda: program_of(cls.program))
        cls.window = wait_for("the window", lambda: next(
            (one for one in children(cls.application) if one.get_role_name() == "frame" and is_shown(one)), None))
        cls.leave_dialogs()
        wait_for("the tour, which comes a moment after the window", cls.leave_tour)

    @classmethod
    def tearDownClass(cls):
        cls.program.terminate()
        cls.program.wait()

    @staticmethod
    def on_event(event):
        if event.source is not None:
            EVENTS.append((event.type, event.detail1, event.source.get_name()))

    # ---- what is there

    @classmethod
    def dialogs(cls):
        return [one for one in children(cls.application)
                if one.path not in (cls.window.path, *cls.left_open) and is_shown(one) and one.get_role_name() in ("dialog", "alert", "frame")]

    def find(self, role, name, within=None):
        return next((one for one in shown(within or self.window)
                     if one.get_role_name() == role and one.get_name() == name), None)

    @classmethod
    def press(cls, item, action=0):
        """Without waiting for an answer: that comes only when a dialog that opens is closed."""
        cls.bus.call(item.app.bus_name, item.path, "org.a11y.atspi.Action", "DoAction", GLib.Variant("(i)", (action,)),
                     None, Gio.DBusCallFlags.NONE, -1, None, None)
        cls.bus.flush_sync()
        item.get_name()  # answered after the action was done, or has opened its dialog
        turn()

    @classmethod
    def leave_dialogs(cls):
        for _ in range(10):
            open_ones = cls.dialogs()
            if not open_ones:
                return
            dialog = open_ones[-1]
            buttons = {one.get_name(): one for one in shown(dialog) if one.get_role_name() == "push button"}
            name = next((name for name in DISMISS if name in buttons), None)
            if name is None and not has(dialog, "MODAL"):
                cls.left_open.append(dialog.path)  # a window beside this one, such as the manual
                continue
            if name is None:
                raise AssertionError(f'no button leaves the dialog "{dialog.get_name()}": {sorted(buttons)}')
            cls.press(buttons[name])
            wait_for(f'the end of the dialog "{dialog.get_name()}"',
                     lambda: dialog.path not in [one.path for one in cls.dialogs()])

    @classmethod
    def leave_tour(cls):
        """Which lies over the window at the first start. Tells whether it was there."""
        for part in children(cls.window):
            for one in children(part):
                if one.get_name() == "Skip the tour" and is_shown(one):
                    cls.press(one)
                    return True
        return False

    def menu_items(self):
        """(menu, item) of all that can be chosen."""
        bar = next(one for one in children(self.window) if one.get_role_name() == "menu bar")

        def leaves(item, path):
            inside = [one for popup in children(item) for one in children(popup)]
            if not inside:
                yield path, item
            for one in inside:
                if one.get_name() and has(one, "ENABLED"):
                    yield from leaves(one, (*path, one.get_name()))
        for menu in children(bar):
            yield from leaves(menu, (menu.get_name(),))

    # ---- tests

    def test_walk_of_every_page_and_dialog(self):
        walk = Walk()
        walk.take(self.window)
        pressed, dialogs = 0, 0
        for path, item in list(self.menu_items()):
            if any(LEFT_ALONE.match(name) for name in path):
                continue
            EVENTS.clear()
            self.press(item)
            pressed += 1
            open_ones = self.dialogs()
            for dialog in open_ones:
                if not any(FOREIGN.search(one.get_name()) for one in shown(dialog)):
                    dialogs += 1
                    walk.take(dialog, path)
            self.leave_dialogs()
            came = any(kind.startswith("object:state-changed:showing") and on for kind, on, _ in EVENTS)
            if came and not open_ones:
                walk.take(self.window)
                self.leave_tour()
        self.assertEqual(walk.faults, [], "\n" + "\n".join(walk.faults))
        # So that a walk that sees nothing is no success.
        self.assertGreater(pressed, 40)
        self.assertGreater(dialogs, 8)
        self.assertGreater(len(walk.seen), 500)
        for role in ("push button", "check box", "radio button", "combo box", "text", "table", "image", "menu item"):
            self.assertGreater(walk.roles.get(role, 0), 0, f"no {role} was seen")

    def test_pressing_has_its_effect(self):
        self.press(self.item("Resistor stock"))
        wait_for("the page of the stock", lambda: self.find("label", "Resistor stock"))
        self.press(wait_for("the way back", lambda: self.find("push button", "Back to the views")))
        wait_for("the views", lambda: self.find("label", "Outcome"))
        self.press(self.item("Charts", "Outcome: charts"))
        charts = wait_for("the page of the charts", lambda: self.find("check box", "Charts"))
        wait_for("the mark of the page on view", lambda: has(charts, "CHECKED"))
        table = self.find("check box", "Table")
        self.assertFalse(has(table, "CHECKED"))
        self.press(table)
        wait_for("the other page", lambda: has(table, "CHECKED") and not has(charts, "CHECKED"))

    def test_a_field_takes_what_is_typed_through_the_tree(self):
        note = wait_for("the field", lambda: next((one for one in shown(self.window) if one.get_role_name() == "text"
                                                   and label_of(one) == "Note" and has(one, "EDITABLE")), None))
        Atspi.EditableText.set_text_contents(note, "north bay")
        wait_for("its text", lambda: text_of(note) == "north bay")

    def test_a_refusal_arrives_as_an_event(self):
        self.press(self.item("Preferences"))
        wait_for("the page", lambda: self.find("radio button", "Dark"))
        EVENTS.clear()
        self.press(self.item("Paste cells"))
        wait_for("the sentence of the refusal", lambda: any(
            kind.startswith("object:") and name.startswith("There is no table on this page") for kind, _, name in EVENTS))
        self.press(self.item("All views"))  # which closes the notice too

    def test_tables_tell_rows_columns_and_cells(self):
        self.press(self.item("Only Sequence"))
        steps = wait_for("the table of steps", lambda: self.find("table", "Sequence"))
        rows, columns = Atspi.Table.get_n_rows(steps), Atspi.Table.get_n_columns(steps)
        self.assertGreaterEqual(rows, 9)  # of the demo: examples/demo.bridgecal
        self.assertGreater(columns, 5)
        header = [Atspi.Table.get_column_header(steps, column).get_name() for column in range(columns)]
        self.assertIn("No.", header)
        number = header.index("No.")
        self.assertEqual([Atspi.Table.get_accessible_at(steps, row, number).get_name() for row in range(3)],
                         ["1", "2", "3"])

    def test_every_picture_is_a_table_too(self):
        self.press(self.item("All views"))
        pictures = wait_for("pictures", lambda: [one.get_name() for one in shown(self.window)
                                                 if one.get_role_name() == "image"])
        self.press(self.item("Pictures as tables…"))
        dialog = wait_for("the dialog", lambda: next(iter(self.dialogs()), None))
        choice = self.find("combo box", "Picture", dialog)
        entries = [item.get_name() for one in children(choice) for part in children(one)
                   for item in [part, *children(part)] if item.get_name()]
        for name in pictures:
            self.assertIn(name, entries)
        table = next(one for one in shown(dialog) if one.get_role_name() == "table")
        self.assertGreater(Atspi.Table.get_n_rows(table), 0)
        self.assertTrue(Atspi.Table.get_accessible_at(table, 0, 0).get_name())
        self.leave_dialogs()

    def item(self, *names):
        return next(item for path, item in self.menu_items() if path[-1] in names)


if __name__ == "__main__":
    move_in()
    unittest.main(argv=sys.argv[:1])
