// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/campaign/numbering.h"

#include <algorithm>
#include <charconv>
#include <cstdint>
#include <optional>
#include <set>
#include <string_view>

#include "core/units/text.h"

namespace core {
namespace {

constexpr std::size_t longestNumber = 12;  // digits; what is longer is counted by its end

/// A text around its last number.
struct Numbered {
  std::string before;
  std::uint64_t number = 0;
  std::size_t digits = 0;
  std::string after;
};

std::optional<Numbered> lastNumberOf(std::string_view text) {
  std::size_t end = text.size();
  while (end > 0 && !isDigit(text[end - 1])) --end;
  if (end == 0) return std::nullopt;
  std::size_t begin = end;
  while (begin > 0 && isDigit(text[begin - 1]) && end - begin < longestNumber) --begin;
  Numbered parts{std::string(text.substr(0, begin)), 0, end - begin, std::string(text.substr(end))};
  std::from_chars(text.data() + begin, text.data() + end, parts.number);
  return parts;
}

std::string withNumber(const Numbered& parts, std::uint64_t number) {
  std::string digits = std::to_string(number);
  if (digits.size() < parts.digits) digits.insert(0, parts.digits - digits.size(), '0');
  return parts.before + digits + parts.after;
}

/// A name and by how much its number is above that of the name it follows.
struct Following {
  std::string name;
  std::uint64_t more = 1;
};

std::vector<Following> following(const Document& document, const std::string& name, std::size_t count) {
  std::set<std::string_view> taken;
  for (const auto& channel : document.channels) taken.insert(channel->name);
  const Numbered parts = lastNumberOf(name).value_or(Numbered{name + "-", 1, 1, ""});
  std::vector<Following> names;
  for (std::uint64_t more = 1; names.size() < count; ++more) {
    std::string next = withNumber(parts, parts.number + more);
    if (!taken.contains(next)) names.push_back({std::move(next), more});
  }
  return names;
}

/// `text` counted up by `more` where `number` is what it ends with.
std::optional<std::string> countedUp(std::string_view text, std::uint64_t number, std::uint64_t more) {
  const auto parts = lastNumberOf(text);
  if (!parts || !parts->after.empty() || parts->number != number) return std::nullopt;
  return withNumber(*parts, number + more);
}

/// Which part of the pins' names counts.
enum class Counted { Nothing, Connectors, Pins };

Counted countedOf(const std::vector<Pin>& pins, std::uint64_t number) {
  const auto ends = [&](const std::string& text) { return countedUp(text, number, 1).has_value(); };
  const auto connector = [&](const Pin& pin) { return ends(pin.name.connector); };
  const auto itself = [&](const Pin& pin) { return ends(pin.name.pin); };
  if (std::any_of(pins.begin(), pins.end(), connector)) return Counted::Connectors;
  return !pins.empty() && std::all_of(pins.begin(), pins.end(), itself) ? Counted::Pins : Counted::Nothing;
}

bool areDistinct(const std::vector<Pin>& pins) {
  std::set<PinName> names;
  return std::all_of(pins.begin(), pins.end(), [&](const Pin& pin) { return names.insert(pin.name).second; });
}

void countPins(Setup& setup, std::uint64_t number, std::uint64_t more) {
  const Counted counted = countedOf(setup.wiring.pins, number);
  if (counted == Counted::Nothing) return;
  const Setup before = setup;
  const auto count = [&](PinName& name) {
    std::string& text = counted == Counted::Connectors ? name.connector : name.pin;
    text = countedUp(text, number, more).value_or(text);
  };
  for (Pin& pin : setup.wiring.pins) count(pin.name);
  for (Shunt& shunt : setup.shunts)
    for (Jumper& jumper : shunt.jumpers) {
      count(jumper.from);
      count(jumper.to);
    }
  // J1 counted up beside a J2 that stays would be one connector.
  if (!areDistinct(setup.wiring.pins)) setup = before;
}

}  // namespace

std::vector<std::string> namesAfter(const Document& document, const std::string& name, std::size_t count) {
  std::vector<std::string> names;
  for (Following& next : following(document, name, count)) names.push_back(std::move(next.name));
  return names;
}

Document withChannelCopies(Document document, std::size_t index, std::size_t count) {
  const Channel& original = *document.channels[index];
  const auto parts = lastNumberOf(original.name);
  std::vector<std::shared_ptr<const Channel>> copies;
  for (const Following& next : following(document, original.name, count)) {
    Channel copy;
    copy.name = next.name;
    copy.note = original.note;
    copy.setup = original.setup;
    copy.group = original.group;
    if (parts) {
      copy.recordingColumn =
          countedUp(original.recordingColumn, parts->number, next.more).value_or(std::string());
      countPins(copy.setup, parts->number, next.more);
    }
    copies.push_back(std::make_shared<const Channel>(std::move(copy)));
  }
  document.channels.insert(document.channels.begin() + static_cast<std::ptrdiff_t>(index) + 1, copies.begin(),
                           copies.end());
  return document;
}

}  // namespace core
