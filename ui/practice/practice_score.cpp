// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/practice/practice_score.h"

#include <QStringList>
#include <algorithm>
#include <initializer_list>

#include "ui/state_file.h"
#include "ui/theme.h"

namespace ui {
namespace {

QSettings file() { return stateFile("practice"); }

QString tallyKey(core::QuestionKind kind, core::Difficulty difficulty) {
  return "score/" + toQString(core::difficultyKey(difficulty)) + "/" + toQString(core::questionKindKey(kind));
}

QString bestKey(core::Difficulty difficulty) {
  return "score/" + toQString(core::difficultyKey(difficulty)) + "/best";
}

/// "7 of 10" as "7,10" would be read as a list by QSettings; so it is a list of texts.
std::vector<qulonglong> numbersOf(const QSettings& settings, const QString& key) {
  std::vector<qulonglong> numbers;
  for (const QString& text : settings.value(key).toStringList()) {
    bool isNumber = false;
    numbers.push_back(text.toULongLong(&isNumber));
    if (!isNumber) return {};
  }
  return numbers;
}

QStringList textsOf(std::initializer_list<qulonglong> numbers) {
  QStringList texts;
  for (const qulonglong number : numbers) texts << QString::number(number);
  return texts;
}

/// A count that a file may say: no more than fits and nobody answers so many.
bool isCount(qulonglong number) { return number <= 1'000'000'000; }

/// "c1+": the second choice, which was right; "n-0.5-": a number, which was wrong.
QString textOf(const GivenAnswer& answer) {
  const QString sign = answer.right ? "+" : "-";
  if (answer.number) return "n" + QString::number(*answer.number, 'g', 17) + sign;
  return "c" + QString::number(answer.choice.value_or(0)) + sign;
}

std::optional<GivenAnswer> answerFrom(const QString& text) {
  GivenAnswer answer;
  answer.right = text.endsWith('+');
  bool isNumber = false;
  const QString inner = text.mid(1, text.size() - 2);
  if (text.startsWith('n'))
    answer.number = inner.toDouble(&isNumber);
  else if (text.startsWith('c'))
    answer.choice = inner.toULongLong(&isNumber);
  return isNumber ? std::optional(answer) : std::nullopt;
}

std::optional<PracticeSet> setFrom(const QSettings& settings) {
  PracticeSet set;
  const auto numbers = numbersOf(settings, "place/set");
  if (numbers.size() != 2 || numbers[1] < 1 || numbers[1] > mostQuestions) return std::nullopt;
  set.seed = numbers[0];
  set.count = numbers[1];
  const auto difficulty =
      core::difficultyFromKey(settings.value("place/difficulty").toString().toStdString());
  if (!difficulty) return std::nullopt;
  set.difficulty = *difficulty;
  for (const QString& key : settings.value("place/kinds").toStringList())
    if (const auto kind = core::questionKindFromKey(key.toStdString())) set.kinds.push_back(*kind);
  return set.kinds.empty() || set.kinds.size() > mostQuestions ? std::nullopt : std::optional(set);
}

}  // namespace

Tally tallyOf(core::QuestionKind kind, core::Difficulty difficulty) {
  const auto numbers = numbersOf(file(), tallyKey(kind, difficulty));
  if (numbers.size() != 2 || !isCount(numbers[0]) || numbers[1] > numbers[0]) return {};
  return {static_cast<int>(numbers[0]), static_cast<int>(numbers[1])};
}

std::optional<BestSet> bestSet(core::Difficulty difficulty) {
  const auto numbers = numbersOf(file(), bestKey(difficulty));
  if (numbers.size() != 3 || !isCount(numbers[1]) || numbers[0] > numbers[1]) return std::nullopt;
  return BestSet{static_cast<int>(numbers[0]), static_cast<int>(numbers[1]), numbers[2]};
}

int longestRow() {
  const auto numbers = numbersOf(file(), "score/row");
  return numbers.size() == 2 && isCount(numbers[1]) ? static_cast<int>(numbers[1]) : 0;
}

void countAnswer(core::QuestionKind kind, core::Difficulty difficulty, bool right) {
  Tally tally = tallyOf(kind, difficulty);
  ++tally.asked;
  tally.right += right;
  QSettings settings = file();
  settings.setValue(tallyKey(kind, difficulty), textsOf({qulonglong(tally.asked), qulonglong(tally.right)}));
  const auto before = numbersOf(settings, "score/row");
  const qulonglong now = right ? (before.size() == 2 ? before[0] + 1 : 1) : 0;
  settings.setValue("score/row", textsOf({now, std::max(now, qulonglong(longestRow()))}));
}

void countSet(const PracticeRun& run) {
  const BestSet now{static_cast<int>(run.rightOnes()), static_cast<int>(run.order.size()), run.set.seed};
  if (!run.isOver() || run.isRepeat || now.of < leastOfBest) return;
  const auto best = bestSet(run.set.difficulty);
  // Shares compared without dividing.
  const auto share = [](const BestSet& set, const BestSet& other) {
    return static_cast<long long>(set.right) * other.of;
  };
  const bool better = !best || share(now, *best) > share(*best, now) ||
                      (share(now, *best) == share(*best, now) && now.of > best->of);
  if (better)
    file().setValue(bestKey(run.set.difficulty),
                    textsOf({qulonglong(now.right), qulonglong(now.of), now.seed}));
}

void clearScore() { file().remove("score"); }

void keepPlace(const PracticeRun& run) {
  QSettings settings = file();
  settings.remove("place");
  if (run.isOver()) return;
  settings.setValue("place/set", textsOf({run.set.seed, run.set.count}));
  settings.setValue("place/difficulty", toQString(core::difficultyKey(run.set.difficulty)));
  QStringList kinds, order, given;
  for (const core::QuestionKind kind : run.set.kinds) kinds << toQString(core::questionKindKey(kind));
  for (const std::size_t index : run.order) order << QString::number(index);
  for (const GivenAnswer& answer : run.given) given << textOf(answer);
  settings.setValue("place/kinds", kinds);
  settings.setValue("place/order", order);
  settings.setValue("place/given", given);
  settings.setValue("place/repeat", run.isRepeat);
}

std::optional<PracticeRun> keptPlace() {
  const QSettings settings = file();
  const auto set = setFrom(settings);
  if (!set) return std::nullopt;
  PracticeRun run;
  run.set = *set;
  run.isRepeat = settings.value("place/repeat").toBool();
  for (const qulonglong index : numbersOf(settings, "place/order")) {
    if (index >= set->count) return std::nullopt;
    run.order.push_back(index);
  }
  for (const QString& text : settings.value("place/given").toStringList()) {
    if (const auto answer = answerFrom(text)) run.given.push_back(*answer);
  }
  if (run.order.size() > mostQuestions || run.isOver()) return std::nullopt;
  return run;
}

}  // namespace ui
