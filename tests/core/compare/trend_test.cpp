// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/compare/trend.h"

#include <gtest/gtest.h>

#include "tests/support/sample_channel.h"

namespace core {
namespace {

TEST(ControlLimits, AgreeWithTheIndividualsChartOfTheNistHandbook) {
  // NIST/SEMATECH e-Handbook of Statistical Methods, 6.3.2.2, flow rates of ten batches (from memory): mean
  // 50.81, mean moving range 1.8778, limits 55.8041 and 45.8159. Derived beside it, from the same numbers:
  // 50.81 -+ 3 x 1.8778 / 1.128 = 55.8041, 45.8159. Tolerance: the printed digits of the moving range.
  const double values[] = {49.6, 47.6, 49.9, 51.3, 47.8, 51.2, 52.6, 52.4, 53.6, 52.1};
  const auto limits = controlLimits(values);
  ASSERT_TRUE(limits);
  EXPECT_NEAR(limits->centre, 50.81, 1e-12);
  EXPECT_NEAR(limits->upper, 55.8041, 2e-4);
  EXPECT_NEAR(limits->lower, 45.8159, 2e-4);
}

TEST(ControlLimits, TakeThreeValuesThatAreNumbers) {
  EXPECT_FALSE(controlLimits(std::vector<double>{1, 2}));
  EXPECT_FALSE(controlLimits(std::vector<double>{1, std::numeric_limits<double>::quiet_NaN(), 2}));
  EXPECT_TRUE(controlLimits(std::vector<double>{1, 2, 1}));
}

/// Checks with these gains, named and dated in the order they are made.
Channel checked(const std::vector<std::pair<double, std::string>>& gains) {
  Channel channel = sample::nineStepChannel();
  for (const auto& [gain, date] : gains) {
    channel = sample::withCheckReading(std::move(channel), gain, 3);
    channel.checks.back().date = date;
  }
  return channel;
}

TEST(Trend, FollowsTheDaysAndNotTheOrderOfTheList) {
  const Channel channel =
      checked({{1.0, "2026-03-01"}, {1.001, "2026-01-01"}, {1.002, ""}, {1.003, "2026-02-01"}});
  const Trend trend = trendOf(channel, evaluate(channel));
  std::vector<std::size_t> order;
  for (const TrendPoint& point : trend.points) order.push_back(point.check);
  EXPECT_EQ(order, (std::vector<std::size_t>{1, 2, 3, 0})) << "one without a day follows the one before it";
  EXPECT_DOUBLE_EQ(*trend.points[0].zero, 3);
  ASSERT_TRUE(trend.gain);
  EXPECT_NE(trend.sentence.find("From 4 checks"), std::string::npos) << trend.sentence;
}

TEST(Trend, NamesTheCheckThatLeftTheLimits) {
  std::vector<std::pair<double, std::string>> gains;
  for (int day = 1; day <= 9; ++day)
    gains.emplace_back(day == 9 ? 1.05 : 1 + 1e-4 * (day % 2), "2026-01-0" + std::to_string(day));
  const Channel channel = checked(gains);
  const Trend trend = trendOf(channel, evaluate(channel));
  EXPECT_EQ(trend.beyondGain, std::vector<std::size_t>{8});
  EXPECT_NE(trend.sentence.find("The gain left its control limits: " + channel.checks[8].name),
            std::string::npos)
      << trend.sentence;
}

TEST(Trend, SaysWhatIsMissing) {
  const Channel two = checked({{1, "2026-01-01"}, {1, "2026-01-02"}});
  EXPECT_NE(trendOf(two, evaluate(two)).sentence.find("there are 2"), std::string::npos);
  const Channel none = sample::nineStepChannel();
  EXPECT_NE(trendOf(none, evaluate(none)).sentence.find("No check has a line"), std::string::npos);
}

}  // namespace
}  // namespace core
