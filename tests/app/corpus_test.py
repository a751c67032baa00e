# SPDX-License-Identifier: GPL-3.0-or-later
"""Level finding and text reading on recordings with known truth: every kind of trouble in four ways of
writing.

Called as corpus_test.py PROGRAM SOURCE_FOLDER. The targets are those of tests/corpus/score.py, which also
runs more seeds: F1 of 0.98 over all and of 0.95 in every kind, intervals of 95 % that cover the truth in 93
to 97 % of the levels. With n levels found the share covered scatters by sqrt(0.95 x 0.05 / n), 0.5 % for the
1,900 levels here: the band is nearly four standard deviations wide on either side, so that chance alone does
not leave it.
"""
import os
import sys
import unittest

sys.path.insert(0, os.path.join(os.path.abspath(sys.argv[2]), "tests", "corpus"))
import make_corpus  # noqa: E402
import score  # noqa: E402

PROGRAM = os.path.abspath(sys.argv[1])


class CorpusQuality(unittest.TestCase):
    def test_all_kinds_reach_the_targets(self):
        results = score.run_all(PROGRAM, make_corpus.cases(1), jobs=2)
        self.assertGreater(sum(counts.levels for _, counts in results), 1800)
        print(score.report(results, worst=30))
        self.assertEqual(score.below_targets(results), [])


if __name__ == "__main__":
    unittest.main(argv=sys.argv[:1], verbosity=2)
