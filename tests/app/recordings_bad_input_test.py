# SPDX-License-Identifier: GPL-3.0-or-later
"""Recordings that are no good, through the command line: what is said, the exit status, no hang, memory
bounded.

Called as recordings_bad_input_test.py PROGRAM SOURCE_FOLDER. What must come of each case follows from what a
user needs; no source.
"""
import json
import os
import random
import signal
import struct
import subprocess
import sys
import tempfile
import time
import unittest

PROGRAM = os.path.abspath(sys.argv[1])
GREATEST_WAIT_S = 20
# The program without a recording takes some 60 MB (Qt and its libraries); beyond that it may hold a few
# pieces of a file that it refuses. Generous, so that it does not fail on another libc.
REFUSED_RSS_KB = 256 * 1024


class Answer:
    """What one run of the program gave. Its memory is its own, whatever ran before; but the kernel counts
    from what this script held when it started it, so nothing here may hold much.
    """

    def __init__(self, path, *more, during=None):
        with tempfile.TemporaryFile() as out, tempfile.TemporaryFile() as err:
            process = subprocess.Popen([PROGRAM, "levels", path, "--json", *more], stdout=out, stderr=err,
                                       stdin=subprocess.DEVNULL)
            begin = time.monotonic()
            self.caught = during(process) if during else False
            while True:
                pid, status, usage = os.wait4(process.pid, os.WNOHANG)
                if pid:
                    break
                if time.monotonic() - begin > GREATEST_WAIT_S:
                    process.kill()
                    os.wait4(process.pid, 0)
                    raise AssertionError(f"no answer within {GREATEST_WAIT_S} s")
                time.sleep(0.002)
            process.returncode = os.waitstatus_to_exitcode(status)
            self.seconds = time.monotonic() - begin
            self.status, self.rss_kB = process.returncode, usage.ru_maxrss
            out.seek(0)
            err.seek(0)
            self.out, self.err = out.read().decode(), err.read().decode("utf-8", "strict")

    def levels(self):
        return json.loads(self.out)["levels"]


class BadRecordings(unittest.TestCase):
    def setUp(self):
        self.folder = tempfile.TemporaryDirectory()
        self.addCleanup(self.folder.cleanup)

    def path(self, name, data=b""):
        path = os.path.join(self.folder.name, name)
        if data is not None:
            with open(path, "wb") as file:
                file.write(data)
        return path

    def assertRefused(self, path, *more, says=None, notes=0):
        """Exit status 2, nothing on standard output, one line on standard error: the file, what is wrong,
        what mends it. Before it at most `notes` lines about what was skipped."""
        answer = Answer(path, *more)
        self.assertEqual((answer.status, answer.out), (2, ""), answer.err)
        self.assertLessEqual(answer.err.count("\n"), 1 + notes, answer.err)
        for line in answer.err.splitlines():
            self.assertEqual(line.count(os.path.basename(path)), 1, "the file is named once: " + line)
        self.assertGreaterEqual(answer.err.count(". ") + answer.err.count(".\n"), 2, "no way to mend it: " + answer.err)
        self.assertLess(len(answer.err), 600)
        self.assertLess(answer.rss_kB, REFUSED_RSS_KB)
        if says:
            self.assertRegex(answer.err, says)
        return answer

    def assertRead(self, path, *more):
        answer = Answer(path, *more)
        self.assertEqual(answer.status, 0, answer.err)
        return answer

    @staticmethod
    def rows(count, value=lambda k: 0.0 if k % 400 < 200 else 100.0, begin=0):
        return "".join(f"{k / 100:.2f},{value(k):.2f}\n" for k in range(begin, begin + count))

    # --- files that hold no table ---

    def test_an_empty_file(self):
        self.assertRefused(self.path("empty.csv"))

    def test_a_file_of_blank_lines(self):
        self.assertRefused(self.path("blank.csv", b"\n" * 5000))

    def test_a_heading_without_rows(self):
        self.assertRefused(self.path("heading.csv", b"Time [s],TP-01 [um/m]\n"))

    def test_too_few_rows_for_a_level(self):
        self.assertRefused(self.path("short.csv", b"Time,TP-01\n0,1\n1,1\n"))

    def test_binary_rubbish(self):
        self.assertRefused(self.path("rubbish.csv", random.Random(1).randbytes(300000)))

    def test_zero_bytes(self):
        self.assertRefused(self.path("zeros.csv", bytes(300000)))

    def test_prose(self):
        self.assertRefused(self.path("prose.txt", b"Dear colleague, the recording follows by separate mail.\n" * 400))

    def test_a_picture(self):
        self.assertRefused(self.path("picture.csv", b"\x89PNG\r\n\x1a\n" + random.Random(2).randbytes(5000)))

    def test_decimal_commas_between_commas(self):
        rows = "".join(f"0,{k:02},{k % 7},5\n" for k in range(100))
        self.assertRefused(self.path("commas.csv", ("Time [s],TP-01\n" + rows).encode()),
                           says="line 2: it has 4 cells under 2 names: .*decimal commas.* semicolons")

    def test_no_number_in_any_row(self):
        rows = "".join(f"0.{k:02},NaN,NaN\n" for k in range(100))
        self.assertRefused(self.path("nan.csv", ("Time [s],TP-01,TP-02\n" + rows).encode()),
                           says="line 2: it has no number in any column. Look at that line: .*without numbers")

    # --- damaged files ---

    def test_columns_that_change_midway_are_told_with_their_share_and_what_to_look_at(self):
        rows = self.rows(600) + self.rows(600, begin=600).replace("\n", ",1\n")
        answer = self.assertRead(self.path("midway.csv", ("Time,TP-01\n" + rows).encode()))
        self.assertRegex(answer.err, "600 of 1201 lines were skipped, first line 602: it has 3 of 2 cells. .*look at "
                                     "that line")
        answer = self.assertRead(self.path("one.csv", ("Time,TP-01\n" + self.rows(600) + "6.00,1,2\n").encode()))
        self.assertRegex(answer.err, r"1 of 602 lines was skipped, first line 602: it has 3 of 2 cells\.$")

    def test_a_text_cut_in_its_last_line_is_read_up_to_there(self):
        whole = ("Time,TP-01\n" + self.rows(1200)).encode()
        answer = self.assertRead(self.path("cut.csv", whole[:-9]))
        self.assertEqual(len(answer.levels()), 6)  # by the rule above: 200 rows a level

    def test_utf16_cut_in_a_character(self):
        whole = b"\xff\xfe" + ("Time,TP-01\n" + self.rows(1200)).encode("utf-16-le")
        answer = self.assertRead(self.path("cut16.csv", whole[:-1]))
        self.assertEqual(len(answer.levels()), 6)

    def test_a_wav_file_without_its_samples(self):
        head = b"RIFF" + struct.pack("<I", 36 + 80000) + b"WAVEfmt " + struct.pack("<IHHIIHH", 16, 1, 1, 1000, 2000, 2, 16)
        self.assertRefused(self.path("cut.wav", head + b"data" + struct.pack("<I", 80000)))
        self.assertRefused(self.path("cut2.wav", head[:20]))

    def test_an_array_file_that_promises_more_than_it_holds(self):
        text = b"{'descr': '<f8', 'fortran_order': False, 'shape': (1000000000000, 3), }"
        text += b" " * (118 - len(text) - 1) + b"\n"
        self.assertRefused(self.path("liar.npy", b"\x93NUMPY\x01\x00" + struct.pack("<H", len(text)) + text + bytes(800)))

    # --- widths ---

    def test_4096_columns_are_read(self):
        names = ",".join(["Time", *(f"C{k}" for k in range(1, 4096))])
        rows = "".join(f"{r / 10:.1f}," + ",".join([("1" if r < 100 else "9")] * 4095) + "\n" for r in range(200))
        answer = self.assertRead(self.path("wide.csv", (names + "\n" + rows).encode()), "--column", "C4095")
        self.assertEqual([round(level["mean"]) for level in answer.levels()], [1, 9])

    def test_more_columns_are_read_or_refused_in_one_sentence(self):
        names = ",".join(["Time", *(f"C{k}" for k in range(1, 5000))])
        rows = "".join(f"{r / 10:.1f}," + ",".join(["1" if r < 100 else "9"] * 4999) + "\n" for r in range(200))
        path = self.path("wider.csv", (names + "\n" + rows).encode())
        if Answer(path, "--column", "C4999").status != 0:
            self.assertRefused(path, "--column", "C4999", says="columns")

    def long_line(self, name, piece, megabytes):
        path = self.path(name)
        with open(path, "wb") as file:
            for _ in range(megabytes):
                file.write((piece * (1 + 2**20 // len(piece)))[:2**20])
        return path

    def test_one_line_of_100_MB(self):
        self.assertRefused(self.long_line("line.csv", b"1.25,", 100))

    def test_one_word_of_100_MB(self):
        self.assertRefused(self.long_line("word.csv", b"x", 100))

    def test_a_line_of_100_MB_between_rows_is_skipped_and_named(self):
        path = self.path("middle.csv")
        with open(path, "wb") as file:
            file.write(("Time,TP-01\n" + self.rows(600)).encode())
            for _ in range(100):
                file.write(b"7.5," * 2**18)
            file.write(("\n" + self.rows(600, begin=600)).encode())
        answer = Answer(path)
        self.assertLess(answer.rss_kB, REFUSED_RSS_KB)
        if answer.status == 0:
            self.assertIn("602", answer.err)  # heading and 600 rows stand before it
            self.assertEqual(len(answer.levels()), 6)
        else:
            self.assertRefused(path, says="602")

    # --- numbers and times that make no recording ---

    def test_constant_values_are_one_level(self):
        answer = self.assertRead(self.path("constant.csv", ("Time,TP-01\n" + self.rows(900, lambda k: 12.5)).encode()))
        self.assertEqual([level["mean"] for level in answer.levels()], [12.5])

    def test_cells_without_a_number_everywhere(self):
        text = "Time,TP-01\n" + "".join(f"{k / 100:.2f},NaN\n" for k in range(900))
        self.assertRefused(self.path("nan.csv", text.encode()))

    def test_infinite_values_are_named(self):
        text = "Time,TP-01\n" + self.rows(400) + "4.00,inf\n" + self.rows(400, begin=401)
        answer = Answer(self.path("inf.csv", text.encode()))
        if answer.status == 0:
            self.assertIn("402", answer.err)
        else:
            self.assertEqual(answer.status, 2)
            self.assertIn("inf.csv", answer.err)

    def test_a_time_that_runs_backwards_all_along(self):
        text = "Time,TP-01\n" + "".join(f"{(900 - k) / 100:.2f},{k}\n" for k in range(900))
        self.assertRefused(self.path("backwards.csv", text.encode()), notes=1)

    def test_a_time_that_jumps_back_once_is_read_with_a_note_or_refused(self):
        text = "Time,TP-01\n" + self.rows(1000) + self.rows(400, begin=0)
        answer = Answer(self.path("jump.csv", text.encode()))
        self.assertIn(answer.status, (0, 2))
        self.assertIn("1002", answer.err)  # the heading and 1000 rows stand before it

    def test_a_time_that_stands_still(self):
        text = "Time,TP-01\n" + "".join(f"5.00,{k}\n" for k in range(900))
        self.assertRefused(self.path("still.csv", text.encode()))

    # --- what is no regular file ---

    def test_a_pipe_is_refused_at_once(self):
        path = os.path.join(self.folder.name, "pipe.csv")
        os.mkfifo(path)
        self.assertLess(self.assertRefused(path).seconds, 5)

    def test_a_folder(self):
        self.assertRefused(self.folder.name)

    def test_a_device(self):
        self.assertRefused("/dev/zero")

    def test_a_socket(self):
        import socket
        path = os.path.join(self.folder.name, "socket.csv")
        with socket.socket(socket.AF_UNIX) as listening:
            listening.bind(path)
            self.assertRefused(path)

    def test_a_file_that_is_not_there(self):
        self.assertRefused(self.path("gone.csv", None))

    def test_a_link_to_itself(self):
        path = os.path.join(self.folder.name, "loop.csv")
        os.symlink(path, path)
        self.assertRefused(path)

    def test_a_name_with_marks_and_line_ends_stays_on_one_line(self):
        answer = Answer(self.path("a<b>\n\x1b[31mred.csv"))
        self.assertEqual(answer.status, 2)
        self.assertEqual(answer.err.count("\n"), 1, repr(answer.err))
        self.assertNotIn("\x1b", answer.err)

    # --- files that change while they are read ---

    def while_read(self, change):
        """Runs the program on a file of 30 MB and changes it as soon as it is open; the answer, or none when
        the program was through before."""
        path = self.path("moving.csv")
        with open(path, "w", encoding="ascii") as file:
            file.write("Time,TP-01\n")
            piece = self.rows(1000)
            for part in range(2000):
                file.write(piece if part == 0 else self.rows(1000, begin=1000 * part))

        def during(process):
            for _ in range(20000):
                try:
                    folder = f"/proc/{process.pid}/fd"
                    if any(os.path.realpath(os.path.join(folder, fd)) == os.path.realpath(path)
                           for fd in os.listdir(folder)):
                        os.kill(process.pid, signal.SIGSTOP)
                        change(path)
                        os.kill(process.pid, signal.SIGCONT)
                        return True
                except (FileNotFoundError, ProcessLookupError):
                    pass
                if os.path.exists(f"/proc/{process.pid}/stat"):
                    with open(f"/proc/{process.pid}/stat", encoding="ascii") as file:
                        if file.read().split()[2] == "Z":
                            return False
            return False

        return Answer(path, during=during)

    def assertSound(self, answer):
        """Caught open, and then an answer: the levels of what was there, or one line that says what
        happened."""
        self.assertTrue(answer.caught, "the file was never seen open")
        self.assertIn(answer.status, (0, 2), answer.err)
        if answer.status == 2:
            self.assertEqual(answer.err.count("\n"), 1, answer.err)
            self.assertIn("moving.csv", answer.err)
        else:
            self.assertGreater(len(answer.levels()), 0)

    def test_a_file_deleted_while_it_is_read(self):
        self.assertSound(self.while_read(os.remove))

    def test_a_file_cut_while_it_is_read(self):
        self.assertSound(self.while_read(lambda path: os.truncate(path, 100000)))

    def test_a_file_emptied_while_it_is_read(self):
        self.assertSound(self.while_read(lambda path: os.truncate(path, 0)))

    def test_a_file_that_grows_while_it_is_read(self):
        def grow(path):
            with open(path, "a", encoding="ascii") as file:
                file.write(self.rows(1000, begin=2000000))

        self.assertSound(self.while_read(grow))


if __name__ == "__main__":
    unittest.main(argv=sys.argv[:1], verbosity=2)
