# SPDX-License-Identifier: GPL-3.0-or-later
"""What a check of the campaign hands in, and where it finds what it runs."""

import dataclasses
import pathlib

# ASAN_OPTIONS of runs of many hours: a quarter to a half of the time goes into where each block was allocated and into
# keeping freed ones for long. To learn where the block of a finding came from, repeat it without them.
LIGHT_ASAN = "malloc_context_size=0:max_malloc_fill_size=0:detect_stack_use_after_return=0:quarantine_size_mb=8"


@dataclasses.dataclass(frozen=True)
class Row:
    """One line of the table. `passed` is decided by the check, beside the reach that it names."""

    what: str  # "kill -9 at random in a save loop"
    measured: str  # "1,000 kills, 0 documents lost"
    reach: str  # "0 lost"
    passed: bool


@dataclasses.dataclass(frozen=True)
class Bench:
    """What a check may use."""

    source: pathlib.Path  # the project
    build: pathlib.Path  # the build that is tested; holds shuntwright and tests/
    scratch: pathlib.Path  # an empty folder of its own, removed afterwards
    long: bool  # the long tier; else a few seconds must do
    sanitized: pathlib.Path | None = None  # a build with ASan, UBSan and fuzz targets; long tier only

    @property
    def program(self):
        return self.build / "shuntwright"

    def driver(self, name):
        """A program of tests/reliability, of the build that is tested."""
        return self.build / "tests" / "reliability" / name
