# SPDX-License-Identifier: GPL-3.0-or-later
"""The line command, called as from a shell: stated uncertainties against SciPy in the same run, and bad input.

Called as line_test.py PROGRAM SOURCE_FOLDER.
"""
import json
import os
import subprocess
import sys
import tempfile
import unittest

import numpy as np
from scipy import odr, optimize, stats

PROGRAM, SOURCE = os.path.abspath(sys.argv[1]), os.path.abspath(sys.argv[2])
WITHOUT_DISPLAY = {k: v for k, v in os.environ.items()
                   if k not in ("DISPLAY", "WAYLAND_DISPLAY", "QT_QPA_PLATFORM", "XDG_RUNTIME_DIR")}

# ISO/TS 28037:2010 clause 6.3 (equal weights), clause 7 (table 10) and clause 10 (table 25).
EQUAL = ([1, 2, 3, 4, 5, 6], [3.3, 5.6, 7.1, 9.3, 10.7, 12.1])
PAIRS = ([1.2, 1.9, 2.9, 4.0, 4.7, 5.9], [3.4, 4.4, 7.2, 8.5, 10.8, 13.5], [0.2] * 6, [0.2] * 3 + [0.4] * 3)
FULL_X = [50.4, 99.0, 149.9, 200.4, 248.5, 299.7, 349.1]
FULL_Y = [52.3, 97.8, 149.7, 200.1, 250.4, 300.9, 349.2]


def matrix(name):
    with open(os.path.join(SOURCE, "tests", "reference", "lines", name), encoding="utf-8") as file:
        return np.array([[float(cell) for cell in line.split(",")] for line in file if line.strip()])


def random_points(seed, count):
    """Points about y = 2 + 0.7 x with uncertainties that differ tenfold and covariances within the points."""
    random = np.random.default_rng(seed)
    true = np.sort(random.uniform(-5, 7, count))
    ux, uy = 0.03 * 10 ** random.uniform(0, 1, (2, count))
    x, y = true + ux * random.standard_normal(count), 2 + 0.7 * true + uy * random.standard_normal(count)
    return x, y, ux, uy, ux * uy * random.uniform(-0.8, 0.8, count)


class LineTest(unittest.TestCase):
    def setUp(self):
        folder = tempfile.TemporaryDirectory()
        self.addCleanup(folder.cleanup)
        self.folder = folder.name

    def written(self, name, text):
        path = os.path.join(self.folder, name)
        with open(path, "w", encoding="utf-8") as file:
            file.write(text)
        return path

    def table(self, names, *columns):
        rows = [",".join(repr(float(value)) for value in row) for row in zip(*columns)]
        return self.written("points.csv", "\n".join([names, *rows]) + "\n")

    def square(self, values, name="covariance.csv"):
        return self.written(name, "\n".join(",".join(repr(float(v)) for v in row) for row in values) + "\n")

    def run_line(self, *words):
        return subprocess.run([PROGRAM, "line", *words], capture_output=True, timeout=60, encoding="utf-8",
                              env=WITHOUT_DISPLAY, stdin=subprocess.DEVNULL)

    def line(self, *words):
        ended = self.run_line(*words, "--json")
        self.assertEqual((ended.returncode, ended.stderr), (0, ""))
        return json.loads(ended.stdout)

    def refused(self, *words, says):
        ended = self.run_line(*words)
        self.assertEqual((ended.returncode, ended.stdout), (2, ""), ended.stderr)
        self.assertEqual(len(ended.stderr.splitlines()), 1, ended.stderr)
        for word in says:
            self.assertIn(word, ended.stderr)

    def compare(self, line, parameters, covariance, chi_square, relative):
        """Parameters to `relative` of their uncertainties, everything else to `relative` of itself."""
        errors = np.sqrt(np.diag(covariance))
        self.assertAlmostEqual(line["intercept"], parameters[0], delta=relative * errors[0])
        self.assertAlmostEqual(line["slope"], parameters[1], delta=relative * errors[1])
        self.assertAlmostEqual(line["intercept_std_error"], errors[0], delta=relative * errors[0])
        self.assertAlmostEqual(line["slope_std_error"], errors[1], delta=relative * errors[1])
        self.assertAlmostEqual(line["covariance"], covariance[0][1], delta=relative * errors[0] * errors[1])
        self.assertAlmostEqual(line["chi_square"], chi_square, delta=relative * (1 + chi_square))
        self.assertAlmostEqual(line["chi_square_probability"], stats.chi2.sf(chi_square, line["degrees_of_freedom"]),
                               delta=relative)

    def test_examples_of_the_standard_come_out_to_their_printed_digits(self):
        line = self.line(self.table("x,y,uy", *EQUAL, [0.5] * 6), "--at", "3.5,0.2", "--inverse", "10.5,0.5")
        self.assertEqual(line["fit"], "weighted")
        for key, value in (("intercept", 1.867), ("slope", 1.757), ("intercept_std_error", 0.465),
                           ("slope_std_error", 0.120), ("covariance", -0.050), ("chi_square", 1.665)):
            self.assertAlmostEqual(line[key], value, delta=5e-4, msg=key)
        self.assertAlmostEqual(line["forward"][0]["y"], 8.017, delta=5e-4)
        self.assertAlmostEqual(line["forward"][0]["uy"], 0.406, delta=5e-4)
        self.assertAlmostEqual(line["inverse"][0]["x"], 4.913, delta=5e-4)
        self.assertAlmostEqual(line["inverse"][0]["ux"], 0.322, delta=5e-4)

        line = self.line(self.table("x,y,ux,uy", *PAIRS))
        self.assertEqual(line["fit"], "distance")
        self.assertEqual(len(line["adjusted_x"]), 6)
        # The source itself is converged to a little less than its last digit.
        for key, value in (("intercept", 0.5788), ("slope", 2.1597), ("intercept_std_error", 0.4764),
                           ("slope_std_error", 0.1355), ("covariance", -0.0577)):
            self.assertAlmostEqual(line[key], value, delta=7e-5, msg=key)

        covariance = np.zeros((14, 14))
        covariance[:7, :7], covariance[7:, 7:] = matrix("iso28037_ggmr_Ux.csv"), matrix("iso28037_ggmr_Uy.csv")
        line = self.line(self.table("x,y", FULL_X, FULL_Y), "--covariance", self.square(covariance))
        self.assertEqual(line["fit"], "generalised")
        for key, value in (("intercept", 0.3424), ("slope", 1.0012), ("intercept_std_error", 2.0569),
                           ("slope_std_error", 0.0090), ("covariance", -0.0129)):
            self.assertAlmostEqual(line[key], value, delta=5e-5, msg=key)

    def test_distance_lines_are_those_of_odrpack(self):
        # SciPy's ODRPACK minimises the same sum; its cov_beta is unscaled and taken at the adjusted points. It stops
        # on its sum of squares (sstol) and parameters (partol): at 1e-15 and 1e-13 its parameters hold about seven
        # digits of their uncertainty, and its derivatives are the exact ones given here.
        for seed in range(8):
            x, y, ux, uy, _ = random_points(seed, 4 + 3 * seed)
            model = odr.Model(lambda p, x: p[0] + p[1] * x,
                              fjacb=lambda p, x: np.vstack([np.ones_like(x), x]),
                              fjacd=lambda p, x: np.full_like(x, p[1]))
            fit = odr.ODR(odr.RealData(x, y, sx=ux, sy=uy), model, beta0=np.polyfit(x, y, 1)[::-1], sstol=1e-15,
                          partol=1e-13, maxit=1000)
            fit.set_job(deriv=2)
            best = fit.run()
            with self.subTest(seed=seed):
                line = self.line(self.table("x,y,ux,uy", x, y, ux, uy))
                self.compare(line, best.beta, best.cov_beta, best.sum_square, 1e-6)
                # Adjusted x: as far from the best as the parameters are.
                np.testing.assert_allclose(line["adjusted_x"], best.xplus, rtol=0, atol=1e-6 * max(ux))

    def best_of_all_true_points(self, x, y, covariance):
        """The generalised problem put to a general solver: all true x and the line, residuals whitened."""
        whitening = np.linalg.inv(np.linalg.cholesky(covariance))

        def residuals(unknown):
            true, a, b = unknown[:-2], unknown[-2], unknown[-1]
            return whitening @ np.concatenate([x - true, y - a - b * true])

        def jacobian(unknown):
            true, b, m = unknown[:-2], unknown[-1], len(x)
            return -whitening @ np.block([[np.eye(m), np.zeros((m, 2))],
                                          [b * np.eye(m), np.ones((m, 1)), true[:, None]]])

        start = np.concatenate([x, np.polyfit(x, y, 1)[::-1]])
        best = optimize.least_squares(residuals, start, jacobian, method="lm", xtol=1e-15, ftol=1e-15, gtol=1e-15)
        spread = np.linalg.inv(best.jac.T @ best.jac)[-2:, -2:]
        return best.x[-2:], spread, 2 * best.cost

    def test_lines_with_covariances_are_those_of_a_general_solver(self):
        # Levenberg and Marquardt (MINPACK) stop when the sum of squares moves by less than 1e-15 of itself, which
        # leaves the parameters seven digits of their uncertainty.
        for seed in range(8):
            x, y, ux, uy, within = random_points(100 + seed, 4 + 2 * seed)
            m = len(x)
            covariance = np.block([[np.diag(ux ** 2), np.diag(within)], [np.diag(within), np.diag(uy ** 2)]])
            with self.subTest(seed=seed):
                self.compare(self.line(self.table("x,y,ux,uy,covxy", x, y, ux, uy, within)),
                             *self.best_of_all_true_points(x, y, covariance), 1e-6)
                # One reference for all x, one gain for all y.
                shared = np.concatenate([np.full(m, 0.1), 0.05 * y])
                covariance += np.outer(shared, shared)
                self.compare(self.line(self.table("x,y", x, y), "--covariance", self.square(covariance)),
                             *self.best_of_all_true_points(x, y, covariance), 1e-6)

    def test_a_covariance_of_y_is_generalised_least_squares(self):
        # Derived: (A^T V^-1 A)^-1 A^T V^-1 y, solved by NumPy; a matrix this even leaves twelve digits.
        for seed in range(5):
            x, y, _, uy, _ = random_points(200 + seed, 9)
            covariance = np.diag(uy ** 2) + 0.04 + 0.01 * np.outer(x, x)
            weight, design = np.linalg.inv(covariance), np.vstack([np.ones(9), x]).T
            spread = np.linalg.inv(design.T @ weight @ design)
            best = spread @ design.T @ weight @ y
            rest = y - design @ best
            line = self.line(self.table("x,y", x, y), "--covariance-y", self.square(covariance))
            self.assertEqual(line["fit"], "correlated")
            self.compare(line, best, spread, rest @ weight @ rest, 1e-9)
            np.testing.assert_allclose(line["leverages"], np.diag(design @ spread @ design.T @ weight), atol=1e-9)
            np.testing.assert_allclose(
                line["standardised_residuals"],
                rest / np.sqrt(np.diag(covariance - design @ spread @ design.T)), atol=1e-9)

    def test_quam_inverse_of_the_mean_of_two_readings(self):
        # QUAM:2012, example A5: 0.260 mg/L with standard uncertainty 0.018.
        with open(os.path.join(SOURCE, "tests", "reference", "lines", "quam_a5_calibration.csv"),
                  encoding="utf-8") as file:
            path = self.written("points.csv", "".join(line for line in file if not line.startswith("#")))
        inverse = self.line(path, "--inverse", "0.0714", "--readings", "2")["inverse"][0]
        self.assertAlmostEqual(inverse["x"], 0.260, delta=5e-4)
        self.assertAlmostEqual(inverse["ux"], 0.018, delta=5e-4)

    def test_several_uses_and_negative_numbers(self):
        line = self.line(self.table("x,y", *EQUAL), "--at", "-2", "--at", "3", "--inverse=-1e1,0.5")
        self.assertEqual([use["x"] for use in line["forward"]], [-2, 3])
        self.assertAlmostEqual(line["forward"][0]["y"], line["intercept"] - 2 * line["slope"], delta=1e-12)
        self.assertEqual(line["inverse"][0]["uy"], 0.5)

    def test_all_reference_lines_are_there(self):
        line = self.line(self.table("x,y", *EQUAL))
        self.assertEqual(list(line["linearity"]), ["least_squares", "end_point", "minimax",
                                                   "zero_based_least_squares", "zero_based_minimax"])

    def test_the_text_tells_the_same(self):
        ended = self.run_line(self.table("x,y,uy", *EQUAL, [0.5] * 6), "--robust", "--at", "3.5,0.2")
        self.assertEqual((ended.returncode, ended.stderr), (0, ""))
        for words in ("weighted least squares", "1.76 ± 0.12", "1.66476, 4 degrees of freedom", "Standardised",
                      "Robust line, an aid only", "y at x = 3.5", "8.02 ± 0.41"):
            self.assertIn(words, ended.stdout)

    def test_an_outlier_pulls_the_robust_line_least(self):
        y = list(EQUAL[1])
        y[5] = 99
        robust = self.line(self.table("x,y", EQUAL[0], y), "--robust")["robust"]
        self.assertAlmostEqual(robust["slope"], 1.76, delta=0.3)

    def test_stated_uncertainties_that_are_none_are_refused(self):
        for column, says in ((["1", "0", "1"], ("points.csv, line 3", "uy is zero", "State an uncertainty")),
                             (["1", "1", "-2"], ("points.csv, line 4", "uy is negative")),
                             (["nan", "1", "1"], ("points.csv, line 2, column uy", "nan")),
                             (["1", "inf", "1"], ("points.csv, line 3, column uy", "inf"))):
            rows = "".join(f"{k},{k},{u}\n" for k, u in enumerate(column))
            self.refused(self.written("points.csv", "x,y,uy\n" + rows), says=says)
        self.refused(self.written("p.csv", "x,y,ux\n1,2,1\n2,3,1\n3,5,1\n"), says=("p.csv", "column ux", "Add the column"))
        self.refused(self.written("p.csv", "x,y,covxy,uy\n1,2,1,1\n2,3,1,1\n"), says=("column covxy", "ux and uy"))
        self.refused(self.written("p.csv", "x,y,w\n1,2,1\n2,3,1\n"), says=("column w", "standard uncertainties"))
        self.refused(self.written("p.csv", "x,y,sy\n1,2,1\n2,3,1\n"), says=("column sy", "Name it uy"))
        self.refused(self.written("p.csv", "x,y,ux,uy,covxy\n1,2,1,1,0\n2,3,1,1,1\n3,5,1,1,0\n"),
                     says=("p.csv, line 3", "covariance of x and y"))

    def test_matrices_that_are_no_covariance_are_refused(self):
        points = self.table("x,y", [1, 2, 3], [1, 2, 4])
        for text, says in (("1,0\n0,1\n", ("m.csv, line 1", "2 cells", "need 3")),
                           ("1,0,0\n0,1,0\n", ("m.csv", "2 rows", "need 3")),
                           ("1,0,0\n0,1,0\n0,0,1\n0,0,0\n", ("m.csv", "4 rows")),
                           ("1,0,0" + "," * 300 + "\n0,1,0\n0,0,1\n", ("m.csv, line 1", "longer than 3 numbers")),
                           ("1\n" * 10_000_000, ("m.csv", "4 rows or more")),
                           ("1,0,0\n0,x,0\n0,0,1\n", ("m.csv, line 2, column 2", '"x"')),
                           ("# of y\n1,0,0\n0,nan,0\n0,0,1\n", ("m.csv, line 3, column 2", "nan")),
                           ("1,0,0\n0.1,1,0\n0,0,1\n", ("m.csv, row 2, column 1", "not symmetric")),
                           ("1,1,1\n1,1,1\n1,1,1\n", ("m.csv, row 2", "singular")),
                           ("1,2,0\n2,1,0\n0,0,1\n", ("m.csv, row 2", "negative variance")),
                           ("1,0,0\n0,0,0\n0,0,1\n", ("m.csv, row 2", "not positive")),
                           ("", ("m.csv", "0 rows"))):
            with self.subTest(text=text):
                self.refused(points, "--covariance-y", self.written("m.csv", text), says=says)
        self.refused(points, "--covariance", self.square(np.eye(3), "m.csv"), says=("m.csv, line 1", "need 6"))
        self.refused(points, "--covariance-y", os.path.join(self.folder, "none.csv"), says=("none.csv", "no such file"))
        stated = self.written("stated.csv", "x,y,uy\n1,1,1\n2,2,1\n3,4,1\n")
        self.refused(stated, "--covariance-y", self.square(np.eye(3)), says=("--covariance-y", "two statements"))

    def test_matrices_may_be_written_in_many_ways(self):
        points = self.table("x,y", [1, 2, 3], [1, 2, 4])
        expected = self.line(points, "--covariance-y", self.written("m.csv", "1,0.5,0\n0.5,2,0\n0,0,3\n"))
        for text in ("1;0,5;0\n0,5;2;0\n0;0;3\n", "1 0.5 0\r\n0.5 2 0\r\n0 0 3\r\n", "1\t0,5\t0\n0,5\t2\t0\n0\t0\t3",
                     "# V\n1, 0.5, 0\n0.5, 2, 0\n\n0, 0, 3\n", "1 0,5 0\n0,5 2 0\n0 0 3\n"):
            with self.subTest(text=text):
                self.assertEqual(self.line(points, "--covariance-y", self.written("m.csv", text)), expected)

    def test_points_that_fix_no_line_are_refused(self):
        self.refused(self.written("p.csv", "x,y,uy\n2,1,1\n2,2,1\n"), says=("p.csv", "all x are equal"))
        self.refused(self.written("p.csv", "x,y,uy\n2,1,1\n"), says=("p.csv",))
        self.refused(self.written("p.csv", "x,y,uy\n0,1,1\n0,2,1\n"), "--through-zero", says=("all x are zero",))
        two = self.line(self.written("p.csv", "x,y,uy\n1,1,1\n2,3,1\n"))
        self.assertEqual((two["degrees_of_freedom"], two["chi_square_probability"]), (0, None))
        self.assertAlmostEqual(two["slope_std_error"], 2 ** 0.5, delta=1e-12)

    def test_options_that_make_no_sense_are_refused(self):
        points = self.table("x,y", *EQUAL)
        self.refused(points, "--at", "abc", says=("--at", "abc", "3.5,0.2"))
        self.refused(points, "--at", "1,-2", says=("--at",))
        self.refused(points, "--inverse", "1,2,3", says=("--inverse",))
        self.refused(points, "--inverse", "1,2", "--readings", "3", says=("--readings",))
        stated = self.written("stated.csv", "x,y,uy\n1,1,1\n2,2,1\n3,4,1\n")
        self.refused(stated, "--inverse", "1", "--readings", "3", says=("stated uncertainties",))
        flat = self.written("flat.csv", "x,y\n1,1\n2,1\n3,1\n")
        self.refused(flat, "--inverse", "1", says=("slope is zero",))


if __name__ == "__main__":
    unittest.main(argv=sys.argv[:1])
