// SPDX-License-Identifier: GPL-3.0-or-later
// Short notations: alterations, levels, names by pattern, headings, names that go on. The first byte chooses,
// the rest is the text.

#include <algorithm>
#include <array>
#include <cmath>
#include <numeric>

#include "core/campaign/batch_edits.h"
#include "core/campaign/list_heading.h"
#include "core/campaign/numbering.h"
#include "core/recording/clean_text.h"
#include "core/search/targets.h"
#include "core/whatif/alteration.h"
#include "core/whatif/notation.h"
#include "tests/fuzz/target.h"

namespace {

using fuzz::must;

void readAlteration(std::string_view text) {
  const core::Setup setup;
  const auto alteration = core::alterationFrom(setup, text);
  if (!alteration) return fuzz::mustBeTold(alteration.error(), text);
  const auto back = core::alterationFrom(setup, core::notationOf(*alteration));
  must(static_cast<bool>(back), "an alteration that was written can be read");
  must(core::notationOf(*back) == core::notationOf(*alteration), "it is written the same");
}

void readLevels(std::string_view text) {
  const auto levels = core::levelsFromText(text, core::Bridge{});
  if (!levels) return fuzz::mustBeTold(levels.error(), text);
  must(!levels->empty(), "levels are there");
  for (const double level : *levels) must(std::isfinite(level) && level != 0, "levels are numbers");
}

core::Document threeChannels() {
  core::Document document;
  for (const char* name : {"TP-01", "TP-02", "spar"}) {
    core::Channel channel;
    channel.name = name;
    document.channels.push_back(std::make_shared<const core::Channel>(channel));
  }
  return document;
}

void nameByPattern(std::string_view pattern) {
  static const core::Document document = threeChannels();
  constexpr std::array<std::size_t, 3> all = {0, 1, 2};
  const auto edit = core::withNamesByPattern(document, all, pattern, 9);
  if (!edit) return fuzz::mustBeTold(edit.error(), pattern);
  const auto& channels = edit->document.channels;
  for (std::size_t k = 0; k < channels.size(); ++k) {
    must(!channels[k]->name.empty(), "a channel has a name");
    for (std::size_t other = 0; other < k; ++other)
      must(channels[k]->name != channels[other]->name, "names differ");
  }
}

void goOnFrom(std::string_view text) {
  constexpr std::size_t count = 3;
  static const core::Document document = threeChannels();
  const auto names = core::namesAfter(document, std::string(text), count);
  must(names.size() == count, "as many names as were asked for");
  must(names[0] != names[1] && names[1] != names[2] && names[0] != names[2], "names differ");
}

void cleanUp(std::string_view text) {
  const std::string clean = core::cleanText(text);
  must(!core::firstInvalidUtf8(clean), "clean text is UTF-8");
  must(core::cleanText(clean) == clean, "clean text is clean");
  must(!core::firstInvalidUtf8(core::cleanName(text)), "a clean name is UTF-8");
  if (!core::firstInvalidUtf8(text))
    must(!core::firstInvalidUtf8(core::inQuotes(text)), "so is what is quoted");
  core::listHeadingOf(text);
}

}  // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  constexpr std::array readings = {readAlteration, readLevels, nameByPattern, goOnFrom, cleanUp};
  if (size == 0) return 0;
  readings[data[0] % readings.size()](fuzz::textOf(data + 1, size - 1));
  return 0;
}
