// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/reader/limits.h"

#include <signal.h>
#include <sys/prctl.h>
#include <sys/resource.h>

#include <algorithm>

namespace reader {
namespace {

/// A harder limit that is set already stays. `grace`: how much farther off the hard limit is.
template <class Resource>
bool limit(Resource resource, rlim_t most, rlim_t grace = 0) {
  rlimit present{};
  if (::getrlimit(resource, &present) != 0) return false;
  const rlimit wanted{std::min(most, present.rlim_max), std::min(most + grace, present.rlim_max)};
  return ::setrlimit(resource, &wanted) == 0;
}

}  // namespace

bool limitYourself() {
  constexpr rlim_t memory_B = 2UL << 30U;
  constexpr rlim_t processor_s = 60;
  // At the hard limit the system kills without a word; before it comes the signal that says why.
  constexpr rlim_t untilKilled_s = 5;
  constexpr rlim_t descriptors = 16;
  return limit(RLIMIT_AS, memory_B) && limit(RLIMIT_CPU, processor_s, untilKilled_s) &&
         limit(RLIMIT_FSIZE, 0) && limit(RLIMIT_CORE, 0) && limit(RLIMIT_NOFILE, descriptors) &&
         ::prctl(PR_SET_NO_NEW_PRIVS, 1, 0, 0, 0) == 0 && ::prctl(PR_SET_PDEATHSIG, SIGKILL) == 0;
}

bool openNoMore() { return limit(RLIMIT_NOFILE, 0); }

}  // namespace reader
