// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/reader/limits.h"

#include <signal.h>
#include <sys/prctl.h>
#include <sys/resource.h>

namespace reader {
namespace {

template <class Resource>
bool limit(Resource resource, rlim_t most) {
  rlimit present{};
  if (::getrlimit(resource, &present) != 0) return false;
  // A harder limit that is set already stays.
  if (present.rlim_max < most) most = present.rlim_max;
  const rlimit wanted{most, most};
  return ::setrlimit(resource, &wanted) == 0;
}

}  // namespace

bool limitYourself() {
  constexpr rlim_t memory_B = 2UL << 30U;
  constexpr rlim_t processor_s = 60;
  constexpr rlim_t descriptors = 16;
  return limit(RLIMIT_AS, memory_B) && limit(RLIMIT_CPU, processor_s) && limit(RLIMIT_FSIZE, 0) &&
         limit(RLIMIT_CORE, 0) && limit(RLIMIT_NOFILE, descriptors) &&
         ::prctl(PR_SET_NO_NEW_PRIVS, 1, 0, 0, 0) == 0 && ::prctl(PR_SET_PDEATHSIG, SIGKILL) == 0;
}

bool openNoMore() { return limit(RLIMIT_NOFILE, 0); }

}  // namespace reader
