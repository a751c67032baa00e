// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/tables/document_search.h"

#include "ui/tables/table_words.h"
#include "ui/theme.h"

namespace ui {
namespace {

class DocumentSearch {
 public:
  using Kind = DocumentPlace::Kind;

  DocumentSearch(const QString& words, int most) : m_words(words), m_most(most) {}

  void searchChannel(const core::Channel& channel, std::size_t at) {
    const QString name = toQString(channel.name);
    if (holds({channel.name, channel.note, channel.group, channel.recordingColumn}))
      add({.kind = Kind::Channel, .channel = at}, name);
    const auto& steps = channel.setup.sequence;
    for (std::size_t k = 0; k < steps.size(); ++k)
      if (holds({steps[k].label}))
        add({.kind = Kind::Step, .channel = at, .row = k},
            TableWords::tr("%1, step %2").arg(name).arg(k + 1));
    const auto& shunts = channel.setup.shunts;
    for (std::size_t k = 0; k < shunts.size(); ++k)
      if (holds({shunts[k].name, shunts[k].part.id}))
        add({.kind = Kind::Shunt, .channel = at, .row = k},
            TableWords::tr("%1, shunt %2").arg(name, toQString(shunts[k].name)));
    searchPins(channel, at);
    for (std::size_t k = 0; k < channel.checks.size(); ++k) searchCheck(channel, at, k);
  }

  void searchStock(const core::Stock& stock) {
    for (std::size_t k = 0; k < stock.resistors.size(); ++k) {
      const core::Resistor& one = stock.resistors[k];
      if (holds({one.id, one.fittedIn, one.note}))
        add({.kind = Kind::Resistor, .row = k}, TableWords::tr("resistor %1").arg(toQString(one.id)));
    }
    for (std::size_t k = 0; k < stock.boxes.size(); ++k)
      if (holds({stock.boxes[k].id, stock.boxes[k].note}))
        add({.kind = Kind::Box, .row = k}, TableWords::tr("decade box %1").arg(toQString(stock.boxes[k].id)));
  }

  bool isFull() const { return found.size() >= m_most; }

  QList<DocumentMatch> found;

 private:
  void searchPins(const core::Channel& channel, std::size_t at) {
    const auto& pins = channel.setup.wiring.pins;
    for (std::size_t k = 0; k < pins.size(); ++k)
      if (holds({pins[k].name.connector, pins[k].name.pin, core::pinText(pins[k].name)}))
        add({.kind = Kind::Pin, .channel = at, .row = k},
            TableWords::tr("%1, pin %2")
                .arg(toQString(channel.name), toQString(core::pinText(pins[k].name))));
  }

  void searchCheck(const core::Channel& channel, std::size_t at, std::size_t k) {
    const core::Check& check = channel.checks[k];
    const QString where = TableWords::tr("%1, check %2").arg(toQString(channel.name), toQString(check.name));
    if (holds({check.name, check.person, check.remark, check.date}))
      add({.kind = Kind::Check, .channel = at, .check = k}, where);
    for (std::size_t row = 0; row < check.remarks.size(); ++row)
      if (holds({check.remarks[row].person, check.remarks[row].text}))
        add({.kind = Kind::Remark, .channel = at, .check = k, .row = row},
            TableWords::tr("%1, remark").arg(where));
  }

  bool holds(std::initializer_list<std::string_view> texts) const {
    for (const std::string_view text : texts)
      if (!text.empty() && toQString(text).contains(m_words, Qt::CaseInsensitive)) return true;
    return false;
  }

  void add(DocumentPlace place, const QString& where) {
    if (!isFull()) found.append({place, where});
  }

  const QString& m_words;
  int m_most;
};

}  // namespace

QList<DocumentMatch> findInDocument(const core::Document& document, const QString& words, int most) {
  DocumentSearch search(words, most);
  if (words.isEmpty()) return {};
  for (std::size_t k = 0; k < document.channels.size() && !search.isFull(); ++k)
    search.searchChannel(*document.channels[k], k);
  search.searchStock(*document.stock);
  return search.found;
}

}  // namespace ui
