// SPDX-License-Identifier: GPL-3.0-or-later
// The budget of a whole plan against another program: a closed form of the same bridge, written down in
// tests/bench/peers.py (`closed_form`), differentiated and combined by the Python package
// uncertainties 3.1.6. The digits below are its output.
#include <gtest/gtest.h>

#include "core/budget/budget.h"
#include "tests/support/reached_digits.h"
#include "tests/support/sample_channel.h"

using namespace core;

namespace {

const std::string source = "Closed form, uncertainties 3.1.6";

struct StepOfClosedForm {
  double reading, readingUncertainty, simulated, simulatedUncertainty;  ///< um/m; standard uncertainties
};

constexpr StepOfClosedForm published[] = {
    {0, 0, 0, 0},
    {995.3078344944, 0.7832828218965, 1001.992598918, 5.346762123696},
    {1992.598918303, 1.207018600951, 2007.986309184, 10.66722377727},
    {2991.022050547, 1.692971812928, 3017.137931204, 16.01499086579},
    {0, 0.5773502691896, 0, 0.580649413585},
    {-995.3078344946, 1.879594909733, -1000, 6.115416136647},
    {-1992.598918303, 3.625705475043, -2000, 12.18556145754},
    {-2991.022050547, 5.40155493544, -2999.143101971, 18.25571707512},
    {0, 0.5773502691896, 0, 0.580649413585},
};

}  // namespace

TEST(ClosedFormBudget, OfNineStepsIsTheSameInBothScopes) {
  const core::Setup setup = sample::nineStepChannel().setup;
  const Budget budget = budgetOf(setup, predict(setup));
  ASSERT_EQ(setup.sequence.size(), std::size(published));
  for (std::size_t step = 0; step < std::size(published); ++step) {
    const auto &chain = budget.of(Scope::Chain).steps[step], &strain = budget.of(Scope::Strain).steps[step];
    ASSERT_TRUE(chain && strain);
    // Both take differences of outputs, and of their derivatives, of some tenths of a V/V that are right to a
    // few 1e-16; of a difference of 1e-3 V/V that leaves twelve digits less the roundings on the way.
    EXPECT_DIGITS_REACHED(source, "reading", chain->value, published[step].reading, 10) << step;
    EXPECT_DIGITS_REACHED(source, "u of the reading", chain->standard, published[step].readingUncertainty, 10)
        << step;
    EXPECT_DIGITS_REACHED(source, "simulated strain", strain->value, published[step].simulated, 10) << step;
    EXPECT_DIGITS_REACHED(source, "u of the simulated strain", strain->standard,
                          published[step].simulatedUncertainty, 10)
        << step;
  }
}
