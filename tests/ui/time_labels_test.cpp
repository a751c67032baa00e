// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/strip/time_labels.h"

#include <gtest/gtest.h>

namespace ui {
namespace time_labels_test {

TEST(TimeLabels, StepAtWholePartsOfTheUnitsThatPeopleCountIn) {
  // Common practice, no source: 1, 2, 5 below a second, parts of a minute and an hour above.
  EXPECT_DOUBLE_EQ(timeTicks(0, 0.01, 5).step_s, 0.002);
  EXPECT_DOUBLE_EQ(timeTicks(0, 18, 10).step_s, 2);
  EXPECT_DOUBLE_EQ(timeTicks(0, 600, 10).step_s, 60);
  EXPECT_DOUBLE_EQ(timeTicks(0, 5 * 3600, 6).step_s, 3600);
  EXPECT_DOUBLE_EQ(timeTicks(0, 30 * 86400, 6).step_s, 5 * 86400);
  for (const double end_s : {1e-3, 0.7, 59.0, 3599.0, 1e5, 1e7}) {
    const TimeTicks ticks = timeTicks(end_s / 3, end_s, 7);
    EXPECT_LE(ticks.times_s.size(), 8u);
    EXPECT_GE(ticks.times_s.size(), 1u);
    for (const double time_s : ticks.times_s) {
      EXPECT_GE(time_s, end_s / 3 - 1e-9 * end_s);
      EXPECT_LE(time_s, end_s * (1 + 1e-9));
    }
  }
}

TEST(TimeLabels, EndWhereTimesAreTooLargeToBeToldApart) {
  // Seconds around 10^18 are 128 apart as doubles: ticks every minute would be the same number again and
  // again.
  EXPECT_TRUE(timeTicks(1e18, 1e18 + 256, 7).times_s.empty());
  EXPECT_LE(timeTicks(-1e300, 1e300, 7).times_s.size(), 8u);
}

TEST(TimeLabels, TellSecondsMinutesAndHours) {
  EXPECT_EQ(timeText(12.345, 0.01, 20), "12.35");
  EXPECT_EQ(timeText(185.2, 0.1, 600), "3:05.2");
  EXPECT_EQ(timeText(3785, 1, 9000), "1:03:05");
  EXPECT_EQ(timeText(119.996, 0.01, 600), "2:00.00");  // rounded up into the next minute
  EXPECT_EQ(timeText(-65, 1, 600), "−1:05");
  EXPECT_EQ(timeUnitText(20), "s");
  EXPECT_EQ(timeUnitText(600), "min:s");
  EXPECT_EQ(timeUnitText(9000), "h:min:s");
}

}  // namespace time_labels_test
}  // namespace ui
