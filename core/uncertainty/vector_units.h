// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// Before a function with loops over lanes: built once for every processor and once for those with wider
/// vector units, chosen when the program starts. The results have the same bits: each lane does the same
/// operations, and none are fused (-ffp-contract=off).
#if defined(__x86_64__) && defined(__GNUC__) && defined(__gnu_linux__) && !defined(__SANITIZE_THREAD__)
#define SHUNTWRIGHT_WIDE __attribute__((target_clones("avx2", "default")))
#else
#define SHUNTWRIGHT_WIDE
#endif
// It is chosen before the thread sanitizer is ready; clang says in its own way that there is one.
#if defined(__has_feature)
#if __has_feature(thread_sanitizer)
#undef SHUNTWRIGHT_WIDE
#define SHUNTWRIGHT_WIDE
#endif
#endif
