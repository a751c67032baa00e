// SPDX-License-Identifier: GPL-3.0-or-later
// Reports that somebody asks to be verified: PDF, workbook, page, JSON, table.

#include "app/report_fingerprint.h"
#include "core/document/sha256.h"
#include "tests/fuzz/target.h"

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  static fuzz::MemoryFile file;
  file.hold(fuzz::textOf(data, size));
  const QByteArray bytes(reinterpret_cast<const char*>(data), static_cast<qsizetype>(size));
  const auto found = app::reportFingerprint(file.path().string(), bytes);
  if (!found)
    fuzz::mustBeTold(found.error());
  else
    fuzz::must(found->fingerprint.empty() || core::isSha256Hex(found->fingerprint),
               "it is a fingerprint or none");
  return 0;
}
