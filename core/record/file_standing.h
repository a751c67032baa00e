// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <string>
#include <string_view>

#include "core/units/result.h"

namespace core {

/// Whether a document file is as the program saved it.
struct FileStanding {
  enum class Kind : std::uint8_t {
    AsSaved,
    Altered,           ///< its content has another fingerprint than it states
    NotFingerprinted,  ///< it states none: of an older file version, or made by something else
  };
  Kind kind = Kind::NotFingerprinted;
  std::string stated;       ///< empty: none
  std::string fingerprint;  ///< of its content as it stands there
};

/// Looks at the file's text alone, so that it can be asked beside readDocument. Fails when it is no JSON.
Result<FileStanding> fileStanding(std::string_view text);

/// "The file was altered outside of the program since it was saved: ..."
std::string sentenceOf(const FileStanding& standing);

}  // namespace core
