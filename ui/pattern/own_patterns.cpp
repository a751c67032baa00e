// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/pattern/own_patterns.h"

#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>
#include <algorithm>
#include <cmath>

#include "core/units/text.h"
#include "ui/state_file.h"
#include "ui/theme.h"

#include "core/units/language.h"

namespace ui {
namespace {

constexpr const char* key = "patterns";

auto named(std::vector<core::Pattern>& patterns, const std::string& name) {
  return std::find_if(patterns.begin(), patterns.end(),
                      [&](const core::Pattern& pattern) { return pattern.name == name; });
}

core::Result<void> keep(const std::vector<core::Pattern>& patterns) {
  QSettings state = stateFile();
  state.setValue(key, QString::fromUtf8(patternsToJson(patterns)));
  state.sync();
  if (state.status() != QSettings::AccessError) return {};
  return core::Error{state.fileName().toStdString(), core::say("it cannot be written"),
                     core::say("Look whether the disk is full, and whether its folder may be written to")};
}

/// The whole number under `name`, when it is one from `least` to `greatest`.
std::optional<std::uint32_t> wholeNumber(const QJsonObject& object, const char* name, double least,
                                         double greatest) {
  const double value = object.value(QLatin1String(name)).toDouble(-1);
  if (!(value >= least && value <= greatest) || value != std::floor(value)) return std::nullopt;
  return static_cast<std::uint32_t>(value);
}

bool nameFits(const QString& name) { return !name.trimmed().isEmpty() && name.size() <= longestPatternName; }

std::optional<core::Pattern> patternFrom(const QJsonObject& object) {
  const QString name = object.value("name").toString();
  const auto course = core::courseFromKey(object.value("course").toString().toStdString());
  const auto sides = core::sidesFromKey(object.value("sides").toString().toStdString());
  const QJsonValue zero = object.value("zero_between_steps");
  const auto repeats = wholeNumber(object, "repeats", 1, core::greatestRepeats);
  const auto seed = wholeNumber(object, "seed", 0, greatestSeed);
  if (!nameFits(name) || !course || !sides || !zero.isBool() || !repeats || !seed) return std::nullopt;
  return core::Pattern{.name = name.toStdString(),
                       .course = *course,
                       .sides = *sides,
                       .zeroBetweenSteps = zero.toBool(),
                       .repeats = *repeats,
                       .seed = *seed};
}

}  // namespace

QByteArray patternsToJson(const std::vector<core::Pattern>& patterns) {
  QJsonArray list;
  for (const core::Pattern& pattern : patterns)
    list.append(QJsonObject{{"name", toQString(pattern.name)},
                            {"course", toQString(core::courseKey(pattern.course))},
                            {"sides", toQString(core::sidesKey(pattern.sides))},
                            {"zero_between_steps", pattern.zeroBetweenSteps},
                            {"repeats", static_cast<qint64>(pattern.repeats)},
                            {"seed", static_cast<qint64>(pattern.seed)}});
  return QJsonDocument(list).toJson(QJsonDocument::Compact);
}

std::vector<core::Pattern> patternsFromJson(const QByteArray& json) {
  std::vector<core::Pattern> patterns;
  const QJsonArray list = QJsonDocument::fromJson(json).array();
  for (const QJsonValue value : list) {
    const auto pattern = patternFrom(value.toObject());
    if (pattern && named(patterns, pattern->name) == patterns.end() && patterns.size() < mostOwnPatterns)
      patterns.push_back(*pattern);
  }
  return patterns;
}

std::vector<core::Pattern> ownPatterns() {
  return patternsFromJson(stateFile().value(key).toString().toUtf8());
}

core::Result<void> saveOwnPattern(const core::Pattern& pattern) {
  if (!nameFits(toQString(pattern.name)))
    return core::Error{
        "pattern", core::say("its name must have 1 to {1} characters", {std::to_string(longestPatternName)}),
        ""};
  const auto& usual = core::usualPatterns();
  if (std::any_of(usual.begin(), usual.end(),
                  [&](const core::Pattern& other) { return other.name == pattern.name; }))
    return core::Error{"pattern",
                       core::say("{1} is one of the usual patterns", {core::inQuotes(pattern.name)}),
                       core::say("Choose another name")};
  std::vector<core::Pattern> patterns = ownPatterns();
  if (const auto old = named(patterns, pattern.name); old != patterns.end())
    *old = pattern;
  else
    patterns.push_back(pattern);
  if (patterns.size() > mostOwnPatterns)
    return core::Error{
        "pattern", core::say("there are {1} patterns of your own already", {std::to_string(mostOwnPatterns)}),
        core::say("Remove one first")};
  return keep(patterns);
}

void removeOwnPattern(const std::string& name) {
  std::vector<core::Pattern> patterns = ownPatterns();
  std::erase_if(patterns, [&](const core::Pattern& pattern) { return pattern.name == name; });
  static_cast<void>(keep(patterns));  // when that fails it is there again at the next start
}

}  // namespace ui
