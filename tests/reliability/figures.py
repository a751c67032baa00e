# SPDX-License-Identifier: GPL-3.0-or-later
"""Numbers: the same in every locale, for any number of threads and compiler, and as near to the truth as asked."""

import figures_bits
import figures_digits
import figures_locales


def rows(bench):
    yield from figures_bits.rows(bench)
    yield from figures_digits.rows(bench)
    yield from figures_locales.rows(bench)
