// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/run/run_faults.h"

#include <QCoreApplication>
#include <algorithm>
#include <set>

#include "core/review/review.h"
#include "core/wiring/wiring_rules.h"
#include "ui/theme.h"

namespace ui {
namespace {

QString words(const char* text) { return QCoreApplication::translate("RunFaults", text); }

/// The review says of wiring what to do where it says of other things why they matter.
QString sentenceOf(const core::Finding& finding) {
  const bool byMend = finding.kind != core::FindingKind::Wiring && !finding.mends.empty();
  return toQString(finding.what) + " " + toQString(byMend ? finding.mends.front().label + "." : finding.why);
}

bool isShort(const core::WiringFault& fault) { return fault.kind == core::WiringFaultKind::ExcitationShort; }

}  // namespace

RunFaults faultsOf(const Session& session) {
  RunFaults faults;
  const core::Channel* channel = session.channel();
  if (!channel || !session.evaluation()) return faults;
  auto findings = core::review(*channel, *session.evaluation(), *session.document().stock, session.today());
  // The review puts what is of no step last; here only the first few are told, and wrong wiring does damage.
  std::stable_partition(findings.begin(), findings.end(), [](const core::Finding& finding) {
    return finding.kind == core::FindingKind::Wiring;
  });
  for (const core::Finding& finding : findings)
    if (finding.severity == core::Severity::Fault) faults.sentences << sentenceOf(finding);
  const auto wiring = core::wiringFaults(channel->setup);
  faults.shortsExcitation = std::any_of(wiring.begin(), wiring.end(), isShort);
  return faults;
}

QStringList wiringFaultsAt(const core::Setup& setup, const core::Step& step) {
  std::set<std::size_t> shunts;
  std::set<std::string> pins;
  for (const std::size_t shunt : step.closed) {
    for (const core::Jumper& jumper : setup.shunts[shunt].jumpers) {
      shunts.insert(shunt);
      pins.insert({core::pinText(jumper.from), core::pinText(jumper.to)});
    }
  }
  QStringList sentences;
  if (shunts.empty()) return sentences;
  for (const core::WiringFault& fault : core::wiringFaults(setup)) {
    // One of no shunt is about pins, or about shunts that are closed together.
    const bool here = fault.shunt ? shunts.contains(*fault.shunt)
                                  : std::any_of(fault.pins.begin(), fault.pins.end(), [&](const auto& pin) {
                                      return pins.contains(core::pinText(pin));
                                    });
    if (here && fault.severity == core::WiringSeverity::Error)
      sentences << toQString(fault.what + ". " + fault.mend + ".");
  }
  return sentences;
}

QString listOf(const QStringList& sentences) {
  constexpr qsizetype most = 5;
  QStringList lines;
  for (const QString& sentence : sentences.first(std::min(most, sentences.size()))) lines << "• " + sentence;
  if (sentences.size() > most) lines << "• " + words("and %1 more").arg(sentences.size() - most);
  return lines.join('\n');
}

}  // namespace ui
