# SPDX-License-Identifier: GPL-3.0-or-later
"""Nothing that was saved is lost, and nothing is said to be saved that is not."""

import saving_calls
import saving_dialogs
import saving_exports
import saving_full
import saving_kills
import saving_slow
import saving_state
import saving_two


def rows(bench):
    for part in (saving_calls, saving_kills, saving_exports, saving_full, saving_two, saving_dialogs,
                 saving_slow, saving_state):
        yield from part.rows(bench)
