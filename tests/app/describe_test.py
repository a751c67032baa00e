# SPDX-License-Identifier: GPL-3.0-or-later
"""Completions and manual page against what the program says in its help. The help is printed by the library that
reads the command line; what is tested here is written by the program's own walk through its commands.

Called as describe_test.py PROGRAM SOURCE_FOLDER.
"""
import os
import re
import subprocess
import sys
import tempfile
import unittest

PROGRAM = os.path.abspath(sys.argv[1])


def said(*words):
    return subprocess.run([PROGRAM, *words], check=True, capture_output=True, text=True, timeout=60).stdout


def commands():
    """Names of the commands, from the help."""
    listed = said("--help").split("Subcommands:\n")[1].split("\n\n")[0]
    return re.findall(r"^  (\w+) ", listed, re.M)


def options(*command):
    """Every spelling of every option of a command, from its help."""
    listed = said(*command, "--help").split("Options:\n")[1].split("\n\n")[0]
    names = []
    for spellings in re.findall(r"^  (-[\w,-]+)", listed, re.M):
        names += spellings.split(",")
    return sorted(names)


COMMANDS = commands()


def offered(shell_words):
    """What bash offers at the end of the words, as somebody would see who presses Tab there."""
    script = "source /dev/stdin; COMP_WORDS=(\"$@\"); COMP_CWORD=$(($# - 1)); _shuntwright; printf '%s\\n' \"${COMPREPLY[@]}\""
    done = subprocess.run(["bash", "--norc", "-c", script, "bash", *shell_words], input=said("describe", "bash"),
                          check=True, capture_output=True, text=True, timeout=60, cwd=FOLDER.name)
    return sorted(filter(None, done.stdout.split("\n")))


FOLDER = tempfile.TemporaryDirectory()
for file in ("plan.bridgecal", "pre_test.csv", "notes.txt"):
    open(os.path.join(FOLDER.name, file), "w").close()
os.mkdir(os.path.join(FOLDER.name, "campaign"))


class Bash(unittest.TestCase):
    def test_offers_every_option_of_every_command_and_no_other(self):
        self.assertEqual(offered(["shuntwright", "-"]), options())
        for command in COMMANDS:
            with self.subTest(command):
                self.assertEqual(offered(["shuntwright", command, "-"]), options(command))

    def test_offers_every_command(self):
        self.assertEqual(offered(["shuntwright", "pr"]), ["practice", "predict"])
        self.assertEqual(set(COMMANDS) - set(offered(["shuntwright", ""])), set())

    def test_offers_documents_where_a_document_stands_and_any_file_for_a_recording(self):
        self.assertEqual(offered(["shuntwright", "predict", ""]), ["campaign", "plan.bridgecal"])
        self.assertEqual(offered(["shuntwright", "check", "plan.bridgecal", "--recording", "p"]),
                         ["plan.bridgecal", "pre_test.csv"])

    def test_offers_the_values_of_an_option_that_has_few(self):
        self.assertEqual(offered(["shuntwright", "predict", "x", "--scope", ""]), ["chain", "load", "strain"])
        # The shell splits at the equals sign.
        self.assertEqual(offered(["shuntwright", "predict", "x", "--scope", "=", "c"]), ["chain"])
        self.assertEqual(offered(["shuntwright", "predict", "x", "--scope", "="]), ["chain", "load", "strain"])
        self.assertEqual(offered(["shuntwright", "describe", ""]), ["bash", "fish", "man", "zsh"])

    def test_offers_nothing_where_only_the_user_knows(self):
        self.assertEqual(offered(["shuntwright", "predict", "x", "--channel", ""]), [])


class OtherShells(unittest.TestCase):
    def test_are_scripts_that_their_shells_understand(self):
        for shell in ("bash", "zsh", "fish"):
            with self.subTest(shell), tempfile.NamedTemporaryFile("w", suffix="." + shell) as script:
                script.write(said("describe", shell))
                script.flush()
                done = subprocess.run([shell, "-n", script.name], capture_output=True, text=True, timeout=60)
                self.assertEqual((done.returncode, done.stderr), (0, ""))

    def test_fish_offers_every_option_of_every_command(self):
        with tempfile.TemporaryDirectory() as home:
            path = os.path.join(home, "shuntwright.fish")
            with open(path, "w") as script:
                script.write(said("describe", "fish"))
            lines = ["source " + path] + [f"echo =; complete -C 'shuntwright {c} -'" for c in COMMANDS]
            done = subprocess.run(["fish", "--no-config", "-c", "\n".join(lines)], check=True, capture_output=True, text=True,
                                  timeout=120, cwd=home, env={**os.environ, "HOME": home, "XDG_CONFIG_HOME": home})
            for command, offer in zip(COMMANDS, done.stdout.split("=\n")[1:]):
                with self.subTest(command):
                    self.assertEqual(set(options(command)) - {line.split("\t")[0] for line in offer.splitlines()}, set())

    def test_zsh_names_every_option_of_every_command(self):
        script = said("describe", "zsh")
        for command in COMMANDS:
            part = re.search(r"^        %s\)\n(.*?);;" % command, script, re.S | re.M).group(1)
            named = set(re.findall(r"'(?:\*|\([^)]*\))(--?[\w-]+)=?\[", part))
            self.assertEqual(named, set(options(command)), command)


class ManualPage(unittest.TestCase):
    def test_has_every_command_with_every_option_and_no_other(self):
        page = said("describe", "man")
        sections = {name: text for name, text in re.findall(r"^\.SS (\w+)\n(.*?)(?=^\.S[SH] )", page, re.S | re.M)}
        self.assertEqual(list(sections), COMMANDS)
        for command in COMMANDS:
            named = re.findall(r"^\.TP\n((?:\\fB\S+\\fR(?:, )?)+)", sections[command], re.M)
            spellings = [s.replace("\\", "") for entry in named for s in re.findall(r"\\fB(.*?)\\fR", entry)]
            self.assertEqual(sorted(spellings), options(command), command)

    def test_is_set_without_a_warning(self):
        done = subprocess.run(["groff", "-k", "-man", "-ww", "-Tutf8", "-z", "-rLL=80n"], input=said("describe", "man"),
                              capture_output=True, text=True, timeout=60)
        self.assertEqual((done.returncode, done.stderr), (0, ""))

    def test_states_the_version_of_the_program(self):
        version = said("--version").split()[1]
        self.assertIn(f'"Shuntwright {version}"', said("describe", "man").split("\n")[2])


if __name__ == "__main__":
    unittest.main(argv=sys.argv[:1])
