// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/record/review_state.h"

#include <algorithm>
#include <utility>

#include "core/document/edits.h"
#include "core/document/file_limits.h"
#include "core/record/fingerprint.h"
#include "core/units/date.h"
#include "core/units/language.h"

namespace core {
namespace {

Stage stageOf(const Document& document) {
  return document.signOff.acts.empty() ? Stage::Draft : document.signOff.acts.back().stage;
}

std::string dayOf(const std::string& time) {
  const auto moment = timeFromText(time);
  return moment ? shown(Date(std::chrono::floor<std::chrono::days>(*moment))) : time;
}

std::string actSentence(const SignOffAct& act, bool changed) {
  const std::string day = dayOf(act.time);
  switch (act.stage) {
    case Stage::Draft:
      return say("Withdrawn by {1} on {2}: a draft again.", {act.person, day});
    case Stage::Submitted:
      return changed ? say("Submitted by {1} on {2}; changed since, so that it has to be submitted again.",
                           {act.person, day})
                     : say("Submitted for review by {1} on {2}.", {act.person, day});
    case Stage::Accepted:
      return changed ? say("Accepted by {1} on {2}; changed since: not valid any more.", {act.person, day})
                     : say("Accepted by {1} on {2}.", {act.person, day});
    case Stage::Returned:
      break;
  }
  return say("Returned by {1} on {2}: {3}", {act.person, day, act.remark});
}

/// Without spaces around it and without regard to case of A to Z.
std::string comparable(const std::string& name) {
  const std::size_t first = name.find_first_not_of(' ');
  if (first == name.npos) return {};
  std::string text = name.substr(first, name.find_last_not_of(' ') - first + 1);
  for (char& c : text)
    if (c >= 'A' && c <= 'Z') c = static_cast<char>(c - 'A' + 'a');
  return text;
}

/// Who submitted what is being reviewed; empty when nobody has.
std::string submitterOf(const Document& document) {
  const auto& acts = document.signOff.acts;
  const auto found = std::find_if(acts.rbegin(), acts.rend(),
                                  [](const SignOffAct& act) { return act.stage == Stage::Submitted; });
  return found == acts.rend() ? std::string() : found->person;
}

bool hasReading(const Document& document) {
  return std::any_of(document.channels.begin(), document.channels.end(), [](const auto& channel) {
    return std::any_of(channel->checks.begin(), channel->checks.end(),
                       [](const Check& check) { return hasReading(check); });
  });
}

std::size_t openRemarks(const Document& document) {
  std::size_t open = 0;
  for (const auto& channel : document.channels)
    for (const Check& check : channel->checks)
      for (const Remark& remark : check.remarks) open += !remark.settled;
  return open;
}

Error refusal(std::string what, std::string mend) {
  return {say("the review"), std::move(what), std::move(mend)};
}

Result<void> maySubmit(const Document& document, const Standing& standing) {
  if (standing.stage == Stage::Submitted && !standing.changedSince)
    return refusal(say("it is submitted already"), say("Wait for the review, or withdraw it"));
  if (standing.stage == Stage::Accepted && !standing.changedSince)
    return refusal(say("it is accepted already"), say("Submit it again when something has changed"));
  if (!hasReading(document))
    return refusal(say("no check has a reading, so that there is nothing to review"),
                   say("Make a check first"));
  return {};
}

Result<void> mayWithdraw(const Document& document, const Standing& standing, const std::string& person) {
  if (standing.stage != Stage::Submitted)
    return refusal(say("it is not submitted"), say("There is nothing to withdraw"));
  if (comparable(submitterOf(document)) != comparable(person))
    return refusal(say("{1} submitted it", {submitterOf(document)}),
                   say("Let {1} withdraw it, or return it with a remark", {submitterOf(document)}));
  return {};
}

/// What accepting and returning have in common.
Result<void> mayReview(const Document& document, const std::string& person) {
  if (comparable(submitterOf(document)) == comparable(person))
    return refusal(say("{1} submitted it and cannot review it too", {person}),
                   say("Let somebody else review it"));
  return {};
}

Result<void> mayAccept(const Document& document, const Standing& standing, const std::string& person) {
  if (standing.stage != Stage::Submitted)
    return refusal(say("it is not submitted"), say("Let whoever prepared it submit it first"));
  if (standing.changedSince)
    return refusal(say("it has changed since it was submitted"), say("Let it be submitted again"));
  if (const std::size_t open = openRemarks(document))
    return refusal(sayCount(open, "one remark is not settled", "{n} remarks are not settled"),
                   say("Settle them, or return the record"));
  return mayReview(document, person);
}

Result<void> mayReturn(const Document& document, const Standing& standing, const std::string& person) {
  if (standing.stage != Stage::Submitted && standing.stage != Stage::Accepted)
    return refusal(say("it is not submitted"), say("There is nothing to return"));
  return mayReview(document, person);
}

Result<void> mayBecome(const Document& document, const Standing& standing, Stage stage,
                       const std::string& person) {
  if (comparable(person).empty()) return refusal(say("nobody is named"), say("Enter your name"));
  if (document.signOff.acts.size() >= mostActs)
    return refusal(say("there have been {1} acts of review", {std::to_string(mostActs)}),
                   say("Go on in a copy of the document"));
  switch (stage) {
    case Stage::Draft:
      return mayWithdraw(document, standing, person);
    case Stage::Submitted:
      return maySubmit(document, standing);
    case Stage::Accepted:
      return mayAccept(document, standing, person);
    case Stage::Returned:
      break;
  }
  return mayReturn(document, standing, person);
}

/// Every open check that has a reading keeps the set-up it was judged by.
void closeChecks(Document& document) {
  for (auto& channel : document.channels)
    for (std::size_t k = 0; k < channel->checks.size(); ++k)
      if (const Check& check = channel->checks[k]; !check.closedWith && hasReading(check))
        channel = std::make_shared<const Channel>(withCheckClosed(*channel, k));
}

}  // namespace

std::string stageName(Stage stage) {
  switch (stage) {
    case Stage::Draft:
      return say("draft");
    case Stage::Submitted:
      return say("submitted for review");
    case Stage::Accepted:
      return say("accepted");
    case Stage::Returned:
      break;
  }
  return say("returned");
}

Standing standingOf(const Document& document) {
  // Without an act the fingerprint plays no part.
  if (document.signOff.acts.empty()) return standingOf(document, {});
  const auto fingerprint = fingerprintOf(document);
  return standingOf(document, fingerprint ? *fingerprint : std::string());
}

Standing standingOf(const Document& document, const std::string& fingerprint) {
  Standing standing;
  standing.stage = stageOf(document);
  if (document.signOff.acts.empty()) {
    standing.sentence = say("A draft: not submitted for review.");
    return standing;
  }
  standing.act = document.signOff.acts.back();
  standing.changedSince = standing.act->fingerprint != fingerprint;
  standing.sentence = actSentence(*standing.act, standing.changedSince);
  return standing;
}

Result<void> mayBecome(const Document& document, Stage stage, const std::string& person) {
  return mayBecome(document, standingOf(document), stage, person);
}

Result<Document> withStage(Document document, Stage stage, const std::string& person, const std::string& time,
                           const std::string& remark) {
  if (const auto may = mayBecome(document, stage, person); !may) return may.error();
  if (!isTimeText(time))
    return refusal(say("it is not known what time it is"), say("Set the clock of this machine"));
  if (stage == Stage::Returned && comparable(remark).empty())
    return refusal(say("it does not say why it is returned"), say("Enter what is to be changed"));
  if (stage == Stage::Submitted) closeChecks(document);
  auto fingerprint = fingerprintOf(document);
  if (!fingerprint) return fingerprint.error();
  document.signOff.acts.push_back({stage, person, time, remark, *std::move(fingerprint)});
  return document;
}

}  // namespace core
