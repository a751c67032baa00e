// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/record/file_standing.h"

#include <utility>

#include "core/record/fingerprint.h"
#include "core/units/language.h"

namespace core {

Result<FileStanding> fileStanding(std::string_view text) {
  auto tree = parseJson(text);
  if (!tree) return tree.error();
  FileStanding standing;
  if (const auto* members = std::get_if<JsonValue::Object>(&tree->data))
    for (const JsonMember& member : *members)
      if (const auto* stated = std::get_if<std::string>(&member.value.data);
          stated && member.key == "fingerprint")
        standing.stated = *stated;
  standing.fingerprint = fingerprintOfTree(*std::move(tree));
  if (!standing.stated.empty())
    standing.kind =
        standing.stated == standing.fingerprint ? FileStanding::Kind::AsSaved : FileStanding::Kind::Altered;
  return standing;
}

std::string sentenceOf(const FileStanding& standing) {
  const std::string is = shortFingerprint(standing.fingerprint);
  switch (standing.kind) {
    case FileStanding::Kind::AsSaved:
      return say("The file is as it was saved: its content has the fingerprint {1} that it states.", {is});
    case FileStanding::Kind::Altered:
      return say(
          "The file was altered outside of the program: its content has the fingerprint {1}, and it "
          "states {2}.",
          {is, shortFingerprint(standing.stated)});
    case FileStanding::Kind::NotFingerprinted:
      break;
  }
  return say(
      "The file states no fingerprint, so that it cannot be told whether it is as it was saved. Its "
      "content has the fingerprint {1}.",
      {is});
}

}  // namespace core
