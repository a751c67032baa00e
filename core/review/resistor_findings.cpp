// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <cmath>
#include <set>

#include "core/document/apply.h"
#include "core/document/edits.h"
#include "core/review/reviewed_plan.h"
#include "core/units/language.h"
#include "core/units/notation.h"
#include "core/units/text.h"

namespace core {
namespace {

constexpr int soon_days = 30;  ///< common practice, no source

std::string dayText(const std::optional<Date>& day) { return day ? shown(*day) : say("no day"); }

std::string ohmText(Resistance resistance) {
  return shown(formatQuantity(resistance.base(), UnitFamily::Resistance, {}, 7));
}

bool isSoon(Date due, Date today) {
  return std::chrono::sys_days(due) - std::chrono::sys_days(today) <= std::chrono::days(soon_days);
}

/// The shunt with what the stock says of its part; none when the stock does not hold it.
std::optional<Channel> withStockValue(const Channel& channel, const Stock& stock, std::size_t shunt) {
  const std::string& id = channel.setup.shunts[shunt].part.id;
  if (id.empty()) return std::nullopt;
  if (const Resistor* resistor = findResistor(stock, id)) return withResistor(channel, shunt, *resistor);
  const DecadeBox* box = findBox(stock, id);
  if (!box) return std::nullopt;
  // A box is set to any value: only what its label says can have changed.
  Channel changed = channel;
  changed.setup.shunts[shunt].part.due = box->due;
  changed.setup.shunts[shunt].part.rating = box->rating;
  return changed;
}

/// What differs between the shunt and the stock, in words; empty when nothing does.
std::string differences(const Channel& was, const Channel& is, std::size_t shunt) {
  const Shunt &old = was.setup.shunts[shunt], &now = is.setup.shunts[shunt];
  std::string text;
  const auto add = [&](const std::string& what) { text += (text.empty() ? "" : ", ") + what; };
  if (old.resistance != now.resistance)
    add(say("{1} instead of {2}", {ohmText(now.resistance), ohmText(old.resistance)}));
  const Input input{InputKind::Shunt, shunt};
  const auto statedOf = [&](const Channel& channel) -> std::optional<Uncertainty> {
    const auto& stated = channel.setup.uncertainties.stated;
    const auto found = stated.find(input);
    return found == stated.end() ? std::nullopt : std::optional(found->second);
  };
  const auto before = statedOf(was), after = statedOf(is);
  if (before != after && after)
    add(before ? say("{1} instead of {2}",
                     {uncertaintyText(is.setup, input, *after), uncertaintyText(was.setup, input, *before)})
               : say("{1} where nothing is stated", {uncertaintyText(is.setup, input, *after)}));
  if (old.part.due != now.part.due)
    add(say("due {1} instead of {2}", {dayText(now.part.due), dayText(old.part.due)}));
  if (old.part.rating != now.part.rating) add(say("another power rating"));
  if (old.part.certificate != now.part.certificate) add(say("another certificate"));
  return text;
}

Mend stockMend(const Stock& stock, std::vector<std::size_t> shunts) {
  return {say("Take the stock's values"), [stock, shunts = std::move(shunts)](Channel channel) {
            for (const std::size_t shunt : shunts)
              if (auto next = withStockValue(channel, stock, shunt)) channel = *std::move(next);
            return channel;
          }};
}

/// A stock of the one part, for a mend to keep.
Stock partOf(const Stock& stock, const std::string& id) {
  Stock one;
  if (const Resistor* resistor = findResistor(stock, id)) one.resistors.push_back(*resistor);
  if (const DecadeBox* box = findBox(stock, id)) one.boxes.push_back(*box);
  return one;
}

/// One finding a part: what its first shunt that differs says otherwise.
void findChangedParts(const ReviewedPlan& plan, std::vector<Finding>& findings) {
  const auto& shunts = plan.setup().shunts;
  std::vector<bool> said(shunts.size());
  for (std::size_t first = 0; first < shunts.size(); ++first) {
    const auto next = withStockValue(plan.channel, plan.stock, first);
    if (said[first] || !next) continue;
    const std::string differ = differences(plan.channel, *next, first);
    if (differ.empty()) continue;
    const std::string& id = shunts[first].part.id;
    std::vector<std::size_t> same;
    for (std::size_t k = first; k < shunts.size(); ++k)
      if (shunts[k].part.id == id) {
        same.push_back(k);
        said[k] = true;
      }
    findings.push_back({FindingKind::PartChanged,
                        Severity::Warning,
                        {},
                        first,
                        say("The stock says otherwise of {1}: {2}.", {inQuotes(id), differ}),
                        say("The plan expects what the resistor was, not what it is."),
                        {stockMend(partOf(plan.stock, id), std::move(same))}});
  }
}

/// Parts that a stock with resistors in it does not hold; one finding a part.
void findUnknownParts(const ReviewedPlan& plan, std::vector<Finding>& findings) {
  if (plan.stock.resistors.empty() && plan.stock.boxes.empty()) return;
  const auto& shunts = plan.setup().shunts;
  std::set<std::string> said;
  for (std::size_t shunt = 0; shunt < shunts.size(); ++shunt) {
    const std::string& id = shunts[shunt].part.id;
    if (id.empty() || findResistor(plan.stock, id) || findBox(plan.stock, id) || !said.insert(id).second)
      continue;
    findings.push_back({FindingKind::PartChanged,
                        Severity::Note,
                        {},
                        shunt,
                        say("The stock holds no resistor {1}.", {inQuotes(id)}),
                        say("Nobody tells when it is due or was measured anew."),
                        {}});
  }
}

/// The day that the stock has for a part; none when it does not hold it or does not watch it.
std::optional<Date> dueInStock(const Stock& stock, const std::string& id) {
  if (const Resistor* resistor = findResistor(stock, id)) return resistor->due;
  if (const DecadeBox* box = findBox(stock, id)) return box->due;
  return std::nullopt;
}

/// The earlier of what the shunt and the stock say.
std::optional<Date> dueOf(const Shunt& shunt, const Stock& stock) {
  const auto inStock = shunt.part.id.empty() ? std::nullopt : dueInStock(stock, shunt.part.id);
  if (!shunt.part.due || !inStock) return shunt.part.due ? shunt.part.due : inStock;
  return std::min(*shunt.part.due, *inStock);
}

/// Whether the stock knows a later day for the same part, so that its values mend it.
bool isRenewed(const Stock& stock, const std::string& id, Date today) {
  if (!findResistor(stock, id) && !findBox(stock, id)) return false;
  const auto due = dueInStock(stock, id);
  return !due || !isSoon(*due, today);
}

void addOverdue(const ReviewedPlan& plan, std::vector<Finding>& findings, Date due,
                std::vector<std::size_t> same) {
  const bool overdue = isOverdue(due, plan.today);
  const Shunt& first = plan.setup().shunts[same.front()];
  const std::size_t shunt = same.front();
  std::vector<Mend> mends;
  if (!first.part.id.empty() && isRenewed(plan.stock, first.part.id, plan.today))
    mends.push_back(stockMend(partOf(plan.stock, first.part.id), std::move(same)));
  findings.push_back({FindingKind::OverdueResistor,
                      overdue ? Severity::Fault : Severity::Note,
                      {},
                      shunt,
                      say(overdue ? sayLater("The calibration of {1} was due {2}.")
                                  : sayLater("The calibration of {1} is due {2}."),
                          {inQuotes(resistorName(first)), shown(due)}),
                      overdue ? say("What its value is now, nobody vouches for.")
                              : say("A check after that day needs it calibrated, or another one."),
                      std::move(mends)});
}

/// One finding a resistor, whatever places it is switched to.
void findOverdue(const ReviewedPlan& plan, std::vector<Finding>& findings) {
  const auto& shunts = plan.setup().shunts;
  std::vector<bool> said(shunts.size());
  for (std::size_t first = 0; first < shunts.size(); ++first) {
    auto earliest = dueOf(shunts[first], plan.stock);
    if (said[first] || !earliest) continue;
    std::vector<std::size_t> same;
    for (std::size_t k = first; k < shunts.size(); ++k) {
      if (resistorName(shunts[k]) != resistorName(shunts[first])) continue;
      same.push_back(k);
      said[k] = true;
      if (const auto due = dueOf(shunts[k], plan.stock); due && *due < *earliest) earliest = due;
    }
    if (isSoon(*earliest, plan.today)) addOverdue(plan, findings, *earliest, std::move(same));
  }
}

}  // namespace

void findResistorTroubles(const ReviewedPlan& plan, std::vector<Finding>& findings) {
  findOverdue(plan, findings);
  findChangedParts(plan, findings);
  findUnknownParts(plan, findings);
}

}  // namespace core
