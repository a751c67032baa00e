# SPDX-License-Identifier: GPL-3.0-or-later
"""The scorer of the corpus against counts made by hand, and the corpus against itself.

Called as corpus_scorer_test.py PROGRAM SOURCE_FOLDER; the program is not used.
"""
import os
import sys
import unittest

sys.path.insert(0, os.path.join(os.path.abspath(sys.argv[2]), "tests", "corpus"))
import dialects  # noqa: E402
import kinds  # noqa: E402
import make_corpus  # noqa: E402
import score  # noqa: E402

# Two levels of ten seconds, a step of 100 between them.
LEVELS = [{"begin_s": 0.0, "end_s": 10.0, "mean": 0.0}, {"begin_s": 11.0, "end_s": 21.0, "mean": 100.0}]


def scored(*spans, **more):
    return score.score_spans(LEVELS, [score.Span(*s) for s in spans], 100.0, **more)


class FoundLevels(unittest.TestCase):
    def test_each_level_with_its_span_is_found(self):
        counts = scored((1, 10, 0, 1), (12, 21, 100, 1))
        self.assertEqual((counts.levels, counts.spans, counts.found, counts.f1), (2, 2, 2, 1.0))

    def test_a_span_over_the_edge_is_false_and_its_level_missed(self):
        counts = scored((1, 10.001, 0, 1), (12, 21, 100, 1))
        self.assertEqual((counts.found, counts.precision, counts.recall), (1, 0.5, 0.5))

    def test_a_span_from_edge_to_edge_is_inside(self):
        self.assertEqual(scored((0, 10, 0, 1)).found, 1)
        self.assertEqual(scored((-0.001, 10, 0, 1)).found, 0)

    def test_two_spans_in_a_level_do_not_find_it_even_when_one_covers_half(self):
        counts = scored((0, 6, 0, 1), (7, 10, 0, 1), (12, 21, 100, 1))
        self.assertEqual((counts.found, counts.spans), (1, 3))
        # By hand: 2 x 1 / (3 spans + 2 levels).
        self.assertAlmostEqual(counts.f1, 0.4, places=15)  # a quotient of small whole numbers

    def test_half_of_the_level_suffices_and_less_does_not(self):
        self.assertEqual(scored((0, 5, 0, 1)).found, 1)
        self.assertEqual(scored((0, 4.999, 0, 1)).found, 0)

    def test_the_mean_may_be_off_by_5_percent_of_the_smallest_step_and_no_more(self):
        self.assertEqual(scored((0, 10, 5.0, 1)).found, 1)
        self.assertEqual(scored((0, 10, -5.0, 1)).found, 1)
        self.assertEqual(scored((0, 10, 5.001, 1)).found, 0)
        self.assertEqual(scored((0, 10, float("nan"), 1)).found, 0)

    def test_nothing_found_is_0_and_not_a_division_by_it(self):
        counts = scored()
        self.assertEqual((counts.f1, counts.precision, counts.recall), (0.0, 0.0, 0.0))

    def test_counts_are_pooled_before_they_are_divided(self):
        total = score.Score()
        total.add(scored((0, 10, 0, 1), (12, 21, 100, 1)))
        total.add(scored((5, 15, 50, 1)))
        # By hand: 2 found of 4 levels and 3 spans.
        self.assertAlmostEqual(total.f1, 4 / 7, places=15)


class Coverage(unittest.TestCase):
    def test_an_interval_covers_the_truth_up_to_its_edge(self):
        self.assertEqual(scored((0, 10, 1.959, 1.0)).covered, 1)
        self.assertEqual(scored((0, 10, 1.961, 1.0)).covered, 0)
        self.assertEqual(scored((0, 10, 1.961, 1.0)).covered_2u, 1)

    def test_the_truth_over_the_span_and_over_the_level_are_counted_apart(self):
        counts = scored((0, 10, 3.0, 1.0), span_truth=lambda span: 3.5)
        self.assertEqual((counts.covered, counts.covered_level), (1, 0))

    def test_levels_that_are_not_found_are_not_asked(self):
        counts = scored((0, 10, 50.0, 100.0))
        self.assertEqual((counts.found, counts.covered), (0, 0))


class Targets(unittest.TestCase):
    def results(self, found, covered):
        case = make_corpus.Case("clean", "comma_point", 0)
        return [(case, score.Score(levels=1000, spans=1000, found=found, covered=covered))]

    def test_what_is_below_a_target_is_said(self):
        self.assertEqual(score.below_targets(self.results(980, 931)), [])
        self.assertEqual(len(score.below_targets(self.results(979, 930))), 1)
        self.assertEqual(len(score.below_targets(self.results(949, 902))), 2)
        self.assertEqual(len(score.below_targets(self.results(980, 900))), 1)
        self.assertEqual(len(score.below_targets(self.results(980, 970))), 1)


class Times(unittest.TestCase):
    def test_a_clock_time_counts_from_midnight_or_from_the_first_sample(self):
        written = dialects.Written(b"", score.np.array([0.0, 10.0, 21.0]), "TP-01", 86390.0)
        for start in (0.0, 86390.0):
            answer = {"levels": [{"begin_s": start + 1, "end_s": start + 9, "mean": 0, "std_uncertainty": None}]}
            span = score.spans_of(answer, written)[0]
            self.assertEqual((span.begin_s, span.end_s), (1.0, 9.0))


class Corpus(unittest.TestCase):
    def test_there_are_enough_kinds_and_each_has_four_dialects(self):
        self.assertGreaterEqual(len(kinds.KINDS), 18)
        for kind in kinds.KINDS:
            for seed in range(20):
                self.assertEqual(len(set(make_corpus.dialects_of(kind, seed))), 4, kind)

    def test_the_same_seed_gives_the_same_bytes(self):
        case = make_corpus.cases(1, ["all_together"])[0]
        self.assertEqual(make_corpus.made(case)[1].data, make_corpus.made(case)[1].data)

    def test_perfect_spans_score_1_on_every_kind(self):
        # Spans from where 1 % of the step is left to the last sample; median: spikes are no fault of the
        # spans.
        for case in make_corpus.cases(1):
            signal, written = make_corpus.made(case)
            levels = make_corpus.truth_levels(signal, written.times_s)
            spans = [score.Span(l["settled_s"], l["end_s"], l["mean"], 0.0) for l in levels]
            counts = score.score_spans(levels, spans, signal.smallest_step)
            self.assertEqual((counts.f1, counts.faults), (1.0, []), case.file_name)

    def test_the_noise_of_a_level_leaves_its_mean_within_reach(self):
        # Fair: what is on the recording besides the truth averages out over 60 % of each level to 5 % of the
        # smallest step. At 2.6 standard deviations 1 in 100 of the levels at the edge of what is needed may
        # fail; settling, bounce and spikes are taken off as any finder must.
        off, levels = 0, 0
        for case in make_corpus.cases(1):
            signal, written = make_corpus.made(case)
            truth = make_corpus.truth_levels(signal, written.times_s)
            for begin, end, level in zip(signal.edges[:-1], signal.edges[1:], truth):
                part = slice(begin + int(0.4 * (end - begin)), end)
                rest = (signal.values - signal.settled)[part][~signal.missing[part]]
                scatter = 1.4826 * score.np.median(abs(rest - score.np.median(rest)))
                rest = rest[abs(rest - score.np.median(rest)) <= 6 * scatter] if scatter > 0 else rest
                off += abs(rest.mean()) > 0.05 * signal.smallest_step
                levels += 1
        self.assertLessEqual(off / levels, 0.005)


if __name__ == "__main__":
    unittest.main(argv=sys.argv[:1], verbosity=2)
