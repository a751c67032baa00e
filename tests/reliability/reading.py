# SPDX-License-Identifier: GPL-3.0-or-later
"""Reading: whatever is in a file, it ends in a sentence or in something sound, soon and with little memory."""

import reading_caps
import reading_fuzz
import reading_helper
import reading_references


def rows(bench):
    yield from reading_fuzz.rows(bench)
    yield from reading_caps.rows(bench)
    yield from reading_helper.rows(bench)
    yield from reading_references.rows(bench)
