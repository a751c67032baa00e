# SPDX-License-Identifier: GPL-3.0-or-later
"""A virtual screen, a session bus and an accessibility bus of a test's own, on which it sees the program as an
assistive tool does. The offscreen platform tells assistive tools nothing."""
import os
import shutil
import subprocess
import sys
import tempfile
import time

import gi

gi.require_version("Atspi", "2.0")
from gi.repository import Atspi, Gio, GLib  # noqa: E402

PATIENCE_S = 60  # of what comes at once on an idle machine: one that does much else besides is slow
INSIDE = "SHUNTWRIGHT_OWN_SCREEN"


def move_in():
    """Runs the calling script again with all that, and ends with what that gave; returns inside."""
    if os.environ.get(INSIDE):
        return
    for tool in ("Xvfb", "dbus-run-session"):
        if not shutil.which(tool):
            sys.exit(f"{tool} is missing: bash app/setup tests")
    read, write = os.pipe()
    screen = subprocess.Popen(["Xvfb", "-displayfd", str(write), "-screen", "0", "1280x900x24", "-nolisten", "tcp"],
                              pass_fds=[write], stderr=subprocess.DEVNULL)
    os.close(write)
    try:
        with os.fdopen(read) as told, tempfile.TemporaryDirectory() as home:
            number = told.readline().strip()
            if not number:
                sys.exit("Xvfb did not start")
            done = subprocess.run(["dbus-run-session", "--", sys.executable, *sys.argv], env=surroundings(home, number))
    finally:
        screen.terminate()
        screen.wait()
    sys.exit(done.returncode)


def surroundings(home, screen):
    own = {**os.environ, INSIDE: "1", "DISPLAY": ":" + screen, "HOME": home, "XDG_RUNTIME_DIR": home,
           "XDG_STATE_HOME": home + "/state", "XDG_CONFIG_HOME": home + "/config", "XDG_DATA_HOME": home + "/data",
           "LC_ALL": "C.UTF-8", "QT_QPA_PLATFORM": "xcb", "QT_LINUX_ACCESSIBILITY_ALWAYS_ON": "1",
           "NO_AT_BRIDGE": "0"}
    own.pop("AT_SPI_BUS_ADDRESS", None)
    return own


def accessibility_bus():
    """Connects with the bus on which assistive tools and programs meet; call it before a program is started.

    The session bus starts it, and it starts the registry, each when first asked. A launcher started beside them would
    make a second bus, and the program might register on the one while the test looks at the other."""
    session = Gio.bus_get_sync(Gio.BusType.SESSION)
    address = session.call_sync("org.a11y.Bus", "/org/a11y/bus", "org.a11y.Bus", "GetAddress", None, None, 0,
                                PATIENCE_S * 1000).unpack()[0]
    bus = Gio.DBusConnection.new_for_address_sync(address, Gio.DBusConnectionFlags.AUTHENTICATION_CLIENT
                                                  | Gio.DBusConnectionFlags.MESSAGE_BUS_CONNECTION)
    bus.call_sync("org.freedesktop.DBus", "/org/freedesktop/DBus", "org.freedesktop.DBus", "StartServiceByName",
                  GLib.Variant("(su)", ("org.a11y.atspi.Registry", 0)), None, 0, PATIENCE_S * 1000)
    os.environ["AT_SPI_BUS_ADDRESS"] = address
    Atspi.init()
    Atspi.get_desktop(0)
    del os.environ["AT_SPI_BUS_ADDRESS"]  # Qt 6.4 that is given it connects before it listens, and never registers
    # A program that is busy drawing answers late; what was told once may be out of date.
    Atspi.set_timeout(15000, 15000)
    Atspi.get_desktop(0).set_cache_mask(Atspi.Cache.NONE)
    return bus


def program_of(process):
    """What a started program shows of itself, as soon as it shows something, or None."""
    desktop = Atspi.get_desktop(0)
    for index in range(desktop.get_child_count()):
        program = desktop.get_child_at_index(index)
        if program and program.get_process_id() == process.pid:
            program.set_cache_mask(Atspi.Cache.NONE)
            return program if program.get_child_count() else None
    return None


def turn():
    """Takes up what arrived."""
    while GLib.MainContext.default().pending():
        GLib.MainContext.default().iteration(False)


def wait_for(what, condition, patience_s=PATIENCE_S):
    until = time.monotonic() + patience_s
    while time.monotonic() < until:
        turn()
        try:
            found = condition()
        except GLib.Error:  # what was looked at begins, or ends, at this very moment
            found = None
        if found:
            return found
        time.sleep(0.01)
    raise AssertionError(f"waited in vain for {what}")
