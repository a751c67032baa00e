// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/units/threads.h"

#include <gtest/gtest.h>

#include <atomic>

namespace core {
namespace {

TEST(OnThreads, AllDoTheWorkInTheLanguageOfTheCaller) {
  // Threads that begin when everything is done looked at a language that was gone: seen under a sanitizer, or
  // as a crash in some of many rounds.
  const auto language = std::make_shared<const Language>();
  const LanguageScope scope(language);
  for (int round = 0; round < 2000; ++round) {
    std::atomic<unsigned> done = 0, spoken = 0;
    onThreads(8, [&](unsigned) {
      ++done;
      spoken += currentLanguage() == language ? 1 : 0;
    });
    ASSERT_EQ(done, 8u);
    ASSERT_EQ(spoken, 8u);
  }
  EXPECT_EQ(language.use_count(), 2) << "nobody holds it any longer, or it was let go too often";
}

}  // namespace
}  // namespace core
