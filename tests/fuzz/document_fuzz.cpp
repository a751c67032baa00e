// SPDX-License-Identifier: GPL-3.0-or-later
// Documents: what is read can be written, read again the same, and evaluated whatever is in it.

#include "core/document/json_reader.h"
#include "core/document/json_writer.h"
#include "core/evaluate/evaluation.h"
#include "core/record/file_standing.h"
#include "tests/fuzz/target.h"

namespace {

using fuzz::must;

/// Not longer than a moment: an input may ask for much by a few bytes.
bool isSmall(const core::Channel& channel) {
  constexpr std::size_t most = 16;
  return channel.setup.sequence.size() <= most && channel.setup.shunts.size() <= most &&
         channel.checks.size() <= most;
}

}  // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  const std::string_view text = fuzz::textOf(data, size);
  const auto document = core::readDocument(text);
  if (!document) {
    fuzz::mustBeTold(document.error());
    return 0;
  }
  const auto written = core::writeDocument(*document);
  must(static_cast<bool>(written), "what was read can be written");
  const auto again = core::readDocument(*written);
  must(static_cast<bool>(again), "what was written can be read");
  const auto rewritten = core::writeDocument(*again);
  must(rewritten && *rewritten == *written, "what was written is written the same");
  const auto standing = core::fileStanding(*written);
  must(standing && standing->kind == core::FileStanding::Kind::AsSaved, "what was written is as saved");
  for (const auto& channel : document->channels)
    if (isSmall(*channel))
      must(core::evaluate(*channel).checks.size() == channel->checks.size(), "every check is judged");
  return 0;
}
