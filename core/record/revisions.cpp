// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/record/revisions.h"

#include <algorithm>
#include <limits>
#include <map>
#include <unordered_map>
#include <utility>

#include "core/document/file_limits.h"
#include "core/document/json_emitter.h"
#include "core/document/json_text.h"
#include "core/record/fingerprint.h"
#include "core/record/tree_changes.h"
#include "core/units/text.h"

namespace core {
namespace {

constexpr std::size_t mostTold = 40;      ///< changes of a revision; files may hold `mostChanges`
constexpr std::size_t mostWalked = 200;   ///< channels that are looked into
constexpr std::size_t longestLine = 200;  ///< bytes
constexpr std::size_t longestHistory =
    std::size_t{8} * 1024 * 1024;     ///< bytes of text; a file may have 64 MB
constexpr std::size_t mostNamed = 3;  ///< channels of a line that stands for several
/// Stands in files: never another word of it.
constexpr const char* alteredBefore = "before this, the file was altered without an entry of its history";

/// A change and the channel it is in; empty: in the document.
struct Change {
  std::string channel;
  std::string text;
};

/// Between characters, with a sign that something is missing.
std::string cut(std::string text) {
  if (text.size() <= longestLine) return text;
  return std::string(beginningOf(text, longestLine)) + "…";
}

std::string remarkWords(const Remark& remark) {
  return "remark of " + remark.person +
         (remark.step ? " at step " + std::to_string(*remark.step + 1) : std::string());
}

bool sameRemark(const Remark& a, const Remark& b) {
  return a.person == b.person && a.time == b.time && a.step == b.step;
}

/// Remarks are told by who made them when.
void remarkChanges(const Check& before, const Check& after, std::vector<std::string>& lines) {
  const std::string way = "check " + after.name + ": ";
  const auto findIn = [](const std::vector<Remark>& list, const Remark& remark) {
    return std::find_if(list.begin(), list.end(), [&](const Remark& r) { return sameRemark(r, remark); });
  };
  for (const Remark& remark : after.remarks) {
    const auto old = findIn(before.remarks, remark);
    if (old == before.remarks.end()) {
      lines.push_back(way + remarkWords(remark) + " added");
    } else {
      if (old->text != remark.text) lines.push_back(way + remarkWords(remark) + " reworded");
      if (old->settled != remark.settled)
        lines.push_back(way + remarkWords(remark) + (remark.settled ? " settled" : " open again"));
    }
  }
  for (const Remark& remark : before.remarks)
    if (findIn(after.remarks, remark) == after.remarks.end())
      lines.push_back(way + remarkWords(remark) + " removed");
}

void remarkChanges(const Channel& before, const Channel& after, std::vector<std::string>& lines) {
  for (const Check& check : after.checks) {
    const auto old = std::find_if(before.checks.begin(), before.checks.end(),
                                  [&](const Check& c) { return c.name == check.name; });
    remarkChanges(old == before.checks.end() ? Check{} : *old, check, lines);
  }
}

std::vector<std::string> linesBetween(const Result<std::string>& before, const Result<std::string>& after) {
  // What cannot be written has not been saved before, and will not be now.
  if (!before || !after || *before == *after) return {};
  const auto was = parseJson(*before), is = parseJson(*after);
  if (!was || !is) return {"changed"};
  return treeChanges(*was, *is);
}

std::vector<std::string> linesBetween(const Channel& before, const Channel& after) {
  std::vector<std::string> lines = linesBetween(contentOf(before), contentOf(after));
  remarkChanges(before, after, lines);
  return lines;
}

bool isRenamed(const Channel& before, const Channel& after) {
  Channel other = before;
  other.name = after.name;
  const auto was = contentOf(other), is = contentOf(after);
  return was && is && *was == *is;
}

/// All changes of channels, and how many channels were changed beyond those that were looked into.
class ChannelChanges {
 public:
  ChannelChanges(const Document& before, const Document& after, std::size_t most) : m_most(most) {
    for (std::size_t k = 0; k < before.channels.size(); ++k) m_places.emplace(before.channels[k]->name, k);
    std::vector<bool> found(before.channels.size());
    std::size_t last = 0;
    bool ordered = true;
    for (std::size_t k = 0; k < after.channels.size(); ++k) {
      const Channel& channel = *after.channels[k];
      const auto place = m_places.find(channel.name);
      if (place != m_places.end()) {
        found[place->second] = true;
        ordered = ordered && place->second >= last;
        last = place->second;
        compare(before.channels[place->second], after.channels[k]);
      } else if (const bool fits = k < before.channels.size();
                 fits && isNew(after, *before.channels[k]) && isRenamed(*before.channels[k], channel)) {
        found[k] = true;
        changes.push_back({"", before.channels[k]->name + " renamed " + channel.name});
      } else {
        changes.push_back({"", channel.name + " added"});
      }
    }
    for (std::size_t k = 0; k < found.size(); ++k)
      if (!found[k]) changes.push_back({"", before.channels[k]->name + " removed"});
    if (!ordered) changes.push_back({"", "order of channels changed"});
  }

  std::vector<Change> changes;
  std::size_t more = 0;

 private:
  static bool isNew(const Document& after, const Channel& old) {
    return std::none_of(after.channels.begin(), after.channels.end(),
                        [&](const auto& channel) { return channel->name == old.name; });
  }

  void compare(const std::shared_ptr<const Channel>& before, const std::shared_ptr<const Channel>& after) {
    if (before == after) return;
    if (m_walked >= m_most) {
      ++more;
      return;
    }
    auto lines = linesBetween(*before, *after);
    m_walked += !lines.empty();
    for (std::string& line : lines) changes.push_back({after->name, std::move(line)});
  }

  std::size_t m_most, m_walked = 0;
  std::unordered_map<std::string, std::size_t> m_places;
};

std::string actWords(const SignOffAct& act) {
  switch (act.stage) {
    case Stage::Draft:
      return "withdrawn by " + act.person;
    case Stage::Submitted:
      return "submitted by " + act.person;
    case Stage::Accepted:
      return "accepted by " + act.person;
    case Stage::Returned:
      break;
  }
  return "returned by " + act.person + ": " + act.remark;
}

void signOffChanges(const SignOff& before, const SignOff& after, std::vector<std::string>& lines) {
  const auto [was, is] =
      std::mismatch(before.acts.begin(), before.acts.end(), after.acts.begin(), after.acts.end());
  if (was != before.acts.end()) lines.push_back("acts of review changed or removed");
  for (auto act = is; act != after.acts.end(); ++act) lines.push_back(actWords(*act));
}

/// "TP-01, check post-test: ..." for what is in a check, "TP-01: ..." for what is not.
std::string inChannel(const std::string& channel, const std::string& text) {
  return channel + (text.starts_with("check ") ? ", " : ": ") + text;
}

/// One line for what several channels share, where the first of them has it.
std::vector<std::string> joined(const std::vector<Change>& changes) {
  std::map<std::string_view, std::vector<std::string_view>> channels;  // by text
  for (const Change& change : changes)
    if (!change.channel.empty()) channels[change.text].push_back(change.channel);
  std::vector<std::string> lines;
  for (const Change& change : changes) {
    if (change.channel.empty()) {
      lines.push_back(change.text);
      continue;
    }
    const auto& sharing = channels[change.text];
    if (sharing.size() <= mostNamed) {
      lines.push_back(inChannel(change.channel, change.text));
    } else if (sharing.front() == change.channel) {
      std::string names;
      for (std::size_t k = 0; k < mostNamed; ++k) names.append(sharing[k]).append(", ");
      lines.push_back(std::to_string(sharing.size()) + " channels (" + names + "…): " + change.text);
    }
  }
  return lines;
}

struct Told {
  std::vector<std::string> lines;
  std::size_t more = 0;
};

Told told(const Document& before, const Document& after, std::size_t mostChannels) {
  Told result;
  ChannelChanges channels(before, after, mostChannels);
  result.lines = linesBetween(contentOf(before, {}), contentOf(after, {}));
  for (std::string& line : joined(channels.changes)) result.lines.push_back(std::move(line));
  signOffChanges(before.signOff, after.signOff, result.lines);
  for (std::string& line : result.lines) line = cut(std::move(line));
  result.more = channels.more;
  return result;
}

std::size_t sizeOf(const std::vector<Revision>& history) {
  std::size_t size = 0;
  for (const Revision& revision : history) {
    size += 400 + revision.person.size() + revision.program.size();
    for (const std::string& change : revision.changes) size += change.size();
  }
  return size;
}

/// Starts anew where no more fits into a file.
void makeRoom(std::vector<Revision>& history, std::vector<std::string>& changes) {
  if (history.size() < mostRevisions && sizeOf(history) < longestHistory) return;
  changes.insert(changes.begin(), "history begins anew; left out were " + std::to_string(history.size()) +
                                      " entries, the last with the chain " + history.back().chain);
  history.clear();
}

}  // namespace

std::vector<std::string> changesBetween(const Document& before, const Document& after) {
  return told(before, after, std::numeric_limits<std::size_t>::max()).lines;
}

Result<Document> withRevision(Document document, const Document* before, const Saving& saving) {
  auto fingerprint = fingerprintOf(document);
  if (!fingerprint) return fingerprint.error();
  Told what;
  if (before) {
    what = told(*before, document, mostWalked);
    const bool knows = document.history.empty() || document.history.back().fingerprint == *fingerprint;
    if (what.lines.empty() && what.more == 0 && knows) return document;
  } else {
    const std::size_t count = document.channels.size();
    what.lines.push_back("first saved, with " + std::to_string(count) +
                         (count == 1 ? " channel" : " channels"));
  }
  if (before && !document.history.empty()) {
    const auto known = fingerprintOf(*before);
    if (known && *known != document.history.back().fingerprint)
      what.lines.insert(what.lines.begin(), alteredBefore);
  }
  makeRoom(document.history, what.lines);
  if (what.lines.size() > mostTold) {
    what.more += what.lines.size() - mostTold;
    what.lines.resize(mostTold);
  }
  const std::string chain = document.history.empty() ? "" : document.history.back().chain;
  Revision revision{
      saving.time, saving.person, saving.program, std::move(what.lines), what.more, *std::move(fingerprint),
      {}};
  revision.chain = chainOf(chain, revision);
  document.history.push_back(std::move(revision));
  return document;
}

std::string chainOf(const std::string& before, const Revision& revision) {
  JsonEmitter out(JsonEmitter::Form::Canonical);
  out.object({}, JsonEmitter::Layout::OneLine, [&] {
    out.text("time", revision.time);
    out.text("person", revision.person);
    out.text("program", revision.program);
    out.array("changes", JsonEmitter::Layout::OneLine, [&] {
      for (const std::string& change : revision.changes) out.text({}, change);
    });
    if (revision.more > 0) out.count("more", revision.more);
    out.text("fingerprint", revision.fingerprint);
  });
  // What is not UTF-8 is refused by the writer; here it must only not be taken for something else.
  const auto text = out.finished();
  return sha256Hex(before + (text ? *text : text.error().text()));
}

std::optional<std::size_t> brokenRevision(const std::vector<Revision>& history) {
  std::string chain;
  for (std::size_t k = 0; k < history.size(); ++k) {
    chain = chainOf(chain, history[k]);
    if (chain != history[k].chain) return k;
  }
  return std::nullopt;
}

std::vector<std::size_t> revisionsAfterAlteration(const std::vector<Revision>& history) {
  std::vector<std::size_t> found;
  for (std::size_t k = 0; k < history.size(); ++k)
    if (!history[k].changes.empty() && history[k].changes.front() == alteredBefore) found.push_back(k);
  return found;
}

}  // namespace core
