// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/stock/stock.h"

#include <algorithm>
#include <set>

#include "core/stock/faults.h"
#include "core/units/language.h"
#include "core/units/text.h"

namespace core {
namespace {

Result<void> asError(std::string_view where, const std::optional<FieldFault>& fault) {
  if (!fault) return {};
  return Error{std::string(where), fault->what, fault->mend};
}

/// An item without id is named by its place in the list.
std::string nameOf(const std::string& id, std::string_view kind, std::size_t at) {
  return id.empty() ? std::string(kind) + " " + std::to_string(at + 1) : id;
}

template <class Item>
Result<void> checkItems(const std::vector<Item>& items, std::string_view kind,
                        std::set<std::string_view>& ids) {
  for (std::size_t k = 0; k < items.size(); ++k) {
    const std::string name = nameOf(items[k].id, kind, k);
    if (auto checked = asError(name, faultOf(items[k])); !checked) return checked;
    if (!ids.insert(items[k].id).second)
      return Error{name, say("there are two of the id {1}", {inQuotes(items[k].id)}),
                   say("Give each its own id, or take one out")};
  }
  return {};
}

template <class Item>
const Item* findItem(const std::vector<Item>& items, std::string_view id) {
  const auto found =
      std::find_if(items.begin(), items.end(), [&](const Item& item) { return item.id == id; });
  return found == items.end() ? nullptr : &*found;
}

}  // namespace

std::shared_ptr<const Stock> noStock() {
  static const auto none = std::make_shared<const Stock>();
  return none;
}

Result<void> checkResistor(const Resistor& resistor) {
  return asError(resistor.id.empty() ? "resistor" : resistor.id, faultOf(resistor));
}
Result<void> checkBox(const DecadeBox& box) {
  return asError(box.id.empty() ? say("decade box") : box.id, faultOf(box));
}
Result<void> checkSeriesRange(const SeriesRange& range) {
  return asError(eSeriesName(range.series), faultOf(range));
}

Result<void> checkStock(const Stock& stock) {
  std::set<std::string_view> ids;
  if (auto checked = checkItems(stock.resistors, "resistor", ids); !checked) return checked;
  if (auto checked = checkItems(stock.boxes, say("decade box"), ids); !checked) return checked;
  for (const SeriesRange& range : stock.series)
    if (auto checked = checkSeriesRange(range); !checked) return checked;
  return {};
}

const Resistor* findResistor(const Stock& stock, std::string_view id) {
  return findItem(stock.resistors, id);
}
const DecadeBox* findBox(const Stock& stock, std::string_view id) { return findItem(stock.boxes, id); }

}  // namespace core
