// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/wiring/wiring_words.h"

#include <QCoreApplication>
#include <algorithm>
#include <set>

#include "core/circuit/node_words.h"
#include "core/plan/prediction.h"
#include "core/units/language.h"
#include "core/units/text.h"
#include "core/wiring/wiring_rules.h"
#include "ui/theme.h"

namespace ui {
namespace {

QString tr(const char* text) { return QCoreApplication::translate("ui::WiringWords", text); }

/// The typographic minus is the same to a reader.
QString withoutMarks(QString text) { return text.replace(QChar(0x2212), '-').trimmed(); }

std::vector<core::PinUse> usesOf(const core::Setup& setup) {
  std::vector<core::PinUse> uses{std::monostate{}};
  for (const core::Node node : core::allNodes())
    if (core::hasNode(setup.bridge, node)) uses.emplace_back(node);
  std::set<std::string> resistors;
  for (const core::Shunt& shunt : setup.shunts)
    if (resistors.insert(core::resistorName(shunt)).second)
      for (const std::uint8_t end : {std::uint8_t{1}, std::uint8_t{2}})
        uses.emplace_back(core::ResistorEnd{core::resistorName(shunt), end});
  return uses;
}

core::SetupPrediction eachAlone(core::Setup setup) {
  setup.sequence.clear();
  for (std::size_t shunt = 0; shunt < setup.shunts.size(); ++shunt)
    setup.sequence.push_back({.label = {}, .closed = {shunt}});
  return core::predict(setup);
}

QString placeText(const core::Shunt& shunt) {
  const auto [first, last] = std::minmax(shunt.a, shunt.b);
  for (std::size_t arm = 0; arm < 4; ++arm)
    if (first == core::armBegin(arm) && last == core::armEnd(arm)) return tr("across arm %1").arg(arm + 1);
  return tr("%1 to %2").arg(toQString(core::nodeWords(shunt.a)), toQString(core::nodeWords(shunt.b)));
}

}  // namespace

QString pinUseText(const core::PinUse& use) { return toQString(core::pinUseName(use)); }

QStringList pinUseChoices(const core::Setup& setup) {
  QStringList texts;
  for (const core::PinUse& use : usesOf(setup)) texts << pinUseText(use);
  return texts;
}

core::Result<core::PinUse> pinUseFromText(const core::Setup& setup, const QString& text) {
  const QString typed = withoutMarks(text);
  if (typed.isEmpty()) return core::PinUse{};
  for (const auto sensitivity : {Qt::CaseSensitive, Qt::CaseInsensitive})
    for (const core::PinUse& use : usesOf(setup))
      if (pinUseText(use).compare(typed, sensitivity) == 0) return use;
  return core::Error{"", core::say("{1} is no place of this channel", {core::inQuotes(text.toStdString())}),
                     core::say("Enter a terminal such as P+, an end of an arm such as arm 1 begin, an end of "
                               "a shunt's resistor such as R1 end 1, or unused")};
}

QString leadsToText(const core::Pin& pin) {
  const QString name = toQString(core::pinText(pin.name));
  return std::holds_alternative<std::monostate>(pin.use)
             ? tr("%1 is unused").arg(name)
             : tr("%1 leads to %2").arg(name, pinUseText(pin.use));
}

QStringList pinTexts(const core::Wiring& wiring) {
  QStringList texts;
  for (const core::Pin& pin : wiring.pins) texts << toQString(core::pinText(pin.name));
  texts.removeDuplicates();
  return texts;
}

core::Result<core::PinName> pinFromText(const core::Wiring& wiring, const QString& text) {
  const QString typed = text.trimmed();
  for (const auto sensitivity : {Qt::CaseSensitive, Qt::CaseInsensitive})
    for (const core::Pin& pin : wiring.pins)
      if (toQString(core::pinText(pin.name)).compare(typed, sensitivity) == 0) return pin.name;
  return core::Error{"", core::say("{1} is no pin of this channel", {core::inQuotes(text.toStdString())}),
                     core::say("Choose one from the list of pins, or add it there first")};
}

core::PinName pinNameAfter(const core::PinName& name) {
  const QString pin = toQString(name.pin);
  qsizetype digits = 0;
  while (digits < pin.size() && pin[pin.size() - 1 - digits].isDigit()) ++digits;
  if (digits > 0 && digits <= 6) {
    const QString number = QString::number(pin.last(digits).toInt() + 1).rightJustified(digits, '0');
    return {name.connector, (pin.chopped(digits) + number).toStdString()};
  }
  const QChar last = pin.isEmpty() ? QChar() : pin.back();
  const bool letter = (last >= 'A' && last < 'Z') || (last >= 'a' && last < 'z');
  if (letter) return {name.connector, (pin.chopped(1) + QChar(last.unicode() + 1)).toStdString()};
  return {name.connector, (pin + (last == 'Z' || last == 'z' ? last : QChar('2'))).toStdString()};
}

std::vector<core::PinName> joinedTo(const std::vector<core::Jumper>& jumpers, const core::PinName& name) {
  std::vector<core::PinName> others;
  for (const core::Jumper& jumper : jumpers) {
    if (jumper.from == name) others.push_back(jumper.to);
    if (jumper.to == name) others.push_back(jumper.from);
  }
  return others;
}

QStringList shuntTitles(const core::Setup& setup) {
  const core::SetupPrediction alone = eachAlone(setup);
  QStringList titles;
  for (std::size_t k = 0; k < setup.shunts.size(); ++k) {
    const core::Shunt& shunt = setup.shunts[k];
    const auto& step = alone.steps[k];
    titles << tr("%1: %2, %3")
                  .arg(toQString(shunt.name), placeText(shunt),
                       step ? polarityText(step->polarity) : tr("cannot be predicted"));
  }
  return titles;
}

}  // namespace ui
