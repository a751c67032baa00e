// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace core {

/// How far a record has come on its way to being signed.
enum class Stage : std::uint8_t {
  Draft,      ///< being worked on
  Submitted,  ///< whoever prepared it asks for a review
  Accepted,   ///< a reviewer stands for it
  Returned,   ///< a reviewer wants something changed, and said what
};
inline constexpr std::size_t stageCount = 4;

/// In files: "draft", "submitted", "accepted", "returned".
std::string_view stageKey(Stage stage);
std::optional<Stage> stageFromKey(std::string_view key);

/// One act on that way. The latest says where the record stands.
struct SignOffAct {
  Stage stage = Stage::Draft;  ///< what it led to
  std::string person;
  std::string time;  ///< ISO 8601, UTC, seconds
  std::string remark;
  /// Fingerprint of the content as it was then (core/record/fingerprint.h). When the content has another one
  /// now, the act no longer stands for it.
  std::string fingerprint;

  friend bool operator==(const SignOffAct&, const SignOffAct&) = default;
};

/// Review of a document; remarks about single steps are with their checks.
struct SignOff {
  std::vector<SignOffAct> acts;  ///< oldest first; none: a draft

  friend bool operator==(const SignOff&, const SignOff&) = default;
};

/// What one saving changed. The chain of fingerprints shows when an entry was altered, lost or put in between
/// by somebody who did not reckon it anew; it is no signature.
struct Revision {
  std::string time;  ///< ISO 8601, UTC, seconds
  std::string person;
  std::string program;               ///< version that saved
  std::vector<std::string> changes;  ///< "TP-01: gauge factor 2.08 to 2.1"; cut off when there are very many
  std::size_t more = 0;              ///< how many were cut off
  std::string fingerprint;           ///< of the content saved
  std::string chain;                 ///< SHA-256 of the chain before and this entry

  friend bool operator==(const Revision&, const Revision&) = default;
};

}  // namespace core
