// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/units/date.h"

#include <gtest/gtest.h>

#include <string>

using namespace core;

TEST(Date, IsAnIsoCalendarDate) {
  const auto date = dateFromText("2026-11-25");
  ASSERT_TRUE(date);
  EXPECT_EQ(static_cast<int>(date->year()), 2026);
  EXPECT_EQ(static_cast<unsigned>(date->month()), 11u);
  EXPECT_EQ(static_cast<unsigned>(date->day()), 25u);
}

TEST(Date, MustExistInTheGregorianCalendar) {
  // A year that 100 divides is a leap year only when 400 divides it (Gregorian rule).
  for (const char* real : {"2024-02-29", "2000-02-29", "1900-01-01", "9999-12-31", "2026-04-30"})
    EXPECT_TRUE(dateFromText(real)) << real;
  for (const char* unreal : {"2026-02-29", "1900-02-29", "2100-02-29", "2026-04-31", "2026-13-01",
                             "2026-00-10", "2026-01-00", "2026-01-32", "1899-12-31", "0000-01-01"})
    EXPECT_FALSE(dateFromText(unreal)) << unreal;
}

TEST(Date, TakesNoOtherSpelling) {
  for (const char* text : {"", "2026-1-5", "26-01-05", "2026/01/05", "05.01.2026", "2026-01-05 ",
                           " 2026-01-05", "2026-01-05T00:00", "20260105", "2026-W02-1", "2026-0a-05",
                           "-026-01-05", "+026-01-05", "2026-01--5", "２０２６-01-05"})
    EXPECT_FALSE(dateFromText(text)) << text;
  EXPECT_FALSE(dateFromText(std::string_view("2026-01-0\0", 10)));
}

TEST(Date, IsWrittenAsItIsRead) {
  // Every day of four centuries, a whole cycle of the calendar: 146097 days (400 * 365 + 97 leap days).
  int days = 0;
  for (std::chrono::sys_days day = Date(std::chrono::year(1900), std::chrono::month(1), std::chrono::day(1));
       day < std::chrono::sys_days(Date(std::chrono::year(2300), std::chrono::month(1), std::chrono::day(1)));
       day += std::chrono::days(1), ++days)
    ASSERT_EQ(dateFromText(dateText(Date(day))), Date(day)) << dateText(Date(day));
  EXPECT_EQ(days, 146097);
}

TEST(Date, OrdersAsTime) {
  EXPECT_LT(*dateFromText("2025-12-31"), *dateFromText("2026-01-01"));
  EXPECT_LT(*dateFromText("2026-02-28"), *dateFromText("2026-03-01"));
}
