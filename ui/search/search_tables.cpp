// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/search/search_tables.h"

#include <QCoreApplication>
#include <QLocale>
#include <limits>
#include <map>

#include "core/units/notation.h"
#include "ui/quantity_edit.h"
#include "ui/theme.h"

namespace ui {
namespace {

QString words(const char* text) { return QCoreApplication::translate("SearchTables", text); }

/// Three digits; what is smaller than anybody can read off counts as nothing.
std::string percent(double share) {
  constexpr double readable = 1e-6;
  if (share < readable) return "< " + (numberText(100 * readable, 1) + " %").toStdString();
  return (numberText(100 * share, 3) + " %").toStdString();
}

QString ohms(core::Resistance value) {
  return quantityText(value.base(), core::UnitFamily::Resistance, {}, 6);
}

QString ofWhat(core::MissUnit unit) {
  return unit == core::MissUnit::OfLevel ? words("of the level") : words("of the limit");
}

/// "+1000", with the user's minus.
QString levelText(double level) { return (level > 0 ? "+" : "") + numberText(level, 6); }

/// What is proven best may still not be good enough for the channel's limits.
QString beyondLimits(const core::ResistorSet& set) {
  QStringList levels;
  for (const core::LevelMet& level : set.levels)
    if (level.reading && level.reading->deviation > level.reading->limit) levels << levelText(level.wanted);
  if (levels.isEmpty()) return {};
  return words("The first set still misses by more than the channel's limit at %1 of %2 levels: %3.")
      .arg(QString::number(levels.size()), QString::number(set.levels.size()), levels.join(", "));
}

/// Levels of one side that one and the same closing is the nearest to give one reading, not two.
QStringList sharedClosings(const core::ResistorSet& set) {
  std::map<std::pair<bool, std::vector<std::size_t>>, QStringList> levels;
  for (const core::LevelMet& level : set.levels)
    if (!level.closed.empty()) levels[{level.wanted > 0, level.closed}] << levelText(level.wanted);
  QStringList sentences;
  for (const auto& [closed, served] : levels)
    if (served.size() > 1)
      sentences
          << words(
                 "In the first set the levels %1 are served by the same resistors closed, and so are one "
                 "level only.")
                 .arg(served.join(", "));
  return sentences;
}

std::string header(const QString& text) { return text.toStdString(); }

}  // namespace

QString resistorsText(const core::ResistorSet& set) {
  QStringList parts;
  for (const core::Candidate& resistor : set.resistors)
    parts << (resistor.part.empty() ? ohms(resistor.value)
                                    : QString("%1 (%2)").arg(ohms(resistor.value), toQString(resistor.part)));
  return parts.join(", ");
}

core::Table setsTable(const core::SearchOutcome& outcome, core::MissUnit unit) {
  core::Table table;
  table.columns = {{header(words("Resistors"))},
                   {header(words("Greatest miss, %1").arg(ofWhat(unit))), true},
                   {header(words("Mean miss, %1").arg(ofWhat(unit))), true},
                   {header(words("New parts")), true},
                   {header(words("Greatest power")), true}};
  for (const core::ResistorSet& set : outcome.best)
    table.rows.push_back(
        {{resistorsText(set).toStdString(), percent(set.greatestMiss), percent(set.meanMiss),
          std::to_string(set.newParts),
          quantityText(set.greatestPower.base(), core::UnitFamily::Power, {}, 3).toStdString()},
         {}});
  return table;
}

core::Table levelsTable(const core::Bridge& bridge, const core::ResistorSet& set, core::MissUnit unit) {
  const QString in = toQString(core::simulatedUnitText(bridge));
  core::Table table;
  table.columns = {{header(words("Wanted, %1").arg(in)), true},
                   {header(words("Reached, %1").arg(in)), true},
                   {header(words("Miss, %1").arg(ofWhat(unit))), true},
                   {header(words("Closed"))}};
  for (const core::LevelMet& level : set.levels) {
    QStringList closed;
    for (const std::size_t resistor : level.closed) {
      const core::Candidate& candidate = set.resistors[resistor];
      closed << (candidate.part.empty() ? ohms(candidate.value) : toQString(candidate.part));
    }
    table.rows.push_back(
        {{numberText(level.wanted, 6).toStdString(), numberText(level.reached, 6).toStdString(),
          percent(level.miss),
          (closed.isEmpty() ? words("nothing comes nearer than zero") : closed.join(" + ")).toStdString()},
         {}});
  }
  return table;
}

QString outcomeSentence(const core::SearchOutcome& outcome, core::MissUnit unit) {
  QStringList sentences;
  if (outcome.best.empty())
    sentences << (outcome.cancelled ? words("Cancelled before anything was found.")
                                    : words("Nothing was found."));
  if (!outcome.best.empty()) {
    const bool cutOff = outcome.setsInAll == std::numeric_limits<std::uint64_t>::max();
    const QString all = cutOff ? words("more than 18 quintillion")
                               : QLocale().toString(static_cast<qulonglong>(outcome.setsInAll));
    const QString miss =
        words("greatest miss %1 %2").arg(toQString(percent(outcome.best.front().greatestMiss)), ofWhat(unit));
    sentences
        << (outcome.cancelled
                ? words("Cancelled: the best found so far, %1; a better set may exist.").arg(miss)
                : words("Proven best of %1 sets: no other misses less than the first, %2.").arg(all, miss));
  }
  if (!outcome.best.empty()) {
    if (const QString beyond = beyondLimits(outcome.best.front()); !beyond.isEmpty()) sentences << beyond;
    sentences << sharedClosings(outcome.best.front());
  }
  for (const std::string& level : outcome.unreachable) {
    const QString text = toQString(level);
    sentences << (text.endsWith('.') ? text : text + ".");
  }
  return sentences.join("\n");
}

}  // namespace ui
