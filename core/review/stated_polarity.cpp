// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/review/stated_polarity.h"

#include <algorithm>
#include <array>
#include <optional>
#include <vector>

#include "core/units/text.h"

namespace core {
namespace {

/// Strongest first: what is of a weaker class counts only where there is no stronger.
enum class Strength : std::uint8_t { Sign, Polarity, Load, Direction };
constexpr std::size_t strengthCount = 4;

struct PolarityWord {
  std::string_view word, opposite;
  Polarity polarity;
  Strength strength;
};
constexpr std::array<PolarityWord, 10> polarityWords = {{
    {"plus", "minus", Polarity::Positive, Strength::Polarity},
    {"minus", "plus", Polarity::Negative, Strength::Polarity},
    {"positive", "negative", Polarity::Positive, Strength::Polarity},
    {"negative", "positive", Polarity::Negative, Strength::Polarity},
    {"tension", "compression", Polarity::Positive, Strength::Load},
    {"compression", "tension", Polarity::Negative, Strength::Load},
    {"tensile", "compressive", Polarity::Positive, Strength::Load},
    {"compressive", "tensile", Polarity::Negative, Strength::Load},
    {"up", "down", Polarity::Positive, Strength::Direction},
    {"down", "up", Polarity::Negative, Strength::Direction},
}};
/// After these words a load is the name of a place.
constexpr std::array<std::string_view, 8> places = {"arm",  "gauge",  "gage", "side",
                                                    "face", "flange", "skin", "cap"};
struct Sign {
  std::string_view text, opposite;
  Polarity polarity;
};
constexpr std::array<Sign, 3> signs = {{{"+", "-", Polarity::Positive},
                                        {"-", "+", Polarity::Negative},
                                        {"\xE2\x88\x92", "+", Polarity::Negative}}};  // U+2212

/// Something in a text that says a polarity.
struct Saying {
  std::size_t begin = 0, size = 0;
  Polarity polarity = Polarity::None;
  Strength strength = Strength::Sign;
  std::string opposite;
};

constexpr std::string_view opening = "([{\"'", closing = ")]},.;:!?\"'";

struct Token {
  std::size_t begin = 0;
  std::string_view text;
  bool bracketed = false;
};

std::vector<Token> tokensOf(std::string_view text) {
  std::vector<Token> tokens;
  for (std::size_t at = 0; at < text.size();) {
    const std::size_t begin = text.find_first_not_of(" \t\n", at);
    if (begin == std::string_view::npos) break;
    const std::size_t end = std::min(text.find_first_of(" \t\n", begin), text.size());
    Token token{begin, text.substr(begin, end - begin)};
    at = end;
    while (!token.text.empty() && opening.find(token.text.front()) != std::string_view::npos) {
      token.bracketed = true;
      token.text.remove_prefix(1);
      ++token.begin;
    }
    while (!token.text.empty() && closing.find(token.text.back()) != std::string_view::npos)
      token.text.remove_suffix(1);
    if (!token.text.empty()) tokens.push_back(token);
  }
  return tokens;
}

/// `word` written as `model` is: MINUS, Minus, minus.
std::string inCaseOf(std::string word, std::string_view model) {
  const auto isUpper = [](char c) { return c >= 'A' && c <= 'Z'; };
  const bool all = model.size() > 1 && std::all_of(model.begin(), model.end(), isUpper);
  for (std::size_t k = 0; k < word.size(); ++k)
    if (all || (k == 0 && isUpper(model.front()))) word[k] = static_cast<char>(word[k] - 'a' + 'A');
  return word;
}

std::optional<Saying> signOf(const std::vector<Token>& tokens, std::size_t k) {
  const Token& token = tokens[k];
  for (const Sign& sign : signs) {
    if (!token.text.starts_with(sign.text)) continue;
    const std::string_view rest = token.text.substr(sign.text.size());
    const bool atEnd = k == 0 || k + 1 == tokens.size();
    const bool number = !rest.empty() && (isDigit(rest.front()) ||
                                          (rest.front() == '.' && rest.size() > 1 && isDigit(rest[1])));
    const bool name = k == 0 && !rest.empty() && isLetter(rest.front());
    const bool alone = rest.empty() && (atEnd || token.bracketed);
    const bool spoken = rest == "ve";
    if (number || name || alone || spoken)
      return Saying{token.begin, sign.text.size(), sign.polarity, Strength::Sign, std::string(sign.opposite)};
  }
  return std::nullopt;
}

std::optional<Saying> wordOf(const std::vector<Token>& tokens, std::size_t k) {
  const std::string word = lower(tokens[k].text);
  const auto known =
      std::find_if(polarityWords.begin(), polarityWords.end(), [&](const auto& w) { return w.word == word; });
  if (known == polarityWords.end()) return std::nullopt;
  if (known->strength == Strength::Load && k + 1 < tokens.size() &&
      std::find(places.begin(), places.end(), lower(tokens[k + 1].text)) != places.end())
    return std::nullopt;
  return Saying{tokens[k].begin, word.size(), known->polarity, known->strength,
                inCaseOf(std::string(known->opposite), tokens[k].text)};
}

std::vector<Saying> sayingsOf(std::string_view text) {
  const auto tokens = tokensOf(text);
  std::vector<Saying> sayings;
  for (std::size_t k = 0; k < tokens.size(); ++k) {
    if (auto sign = signOf(tokens, k))
      sayings.push_back(*std::move(sign));
    else if (auto word = wordOf(tokens, k))
      sayings.push_back(*std::move(word));
  }
  return sayings;
}

/// What a whole text says, and by which class of words.
struct Said {
  Polarity polarity = Polarity::None;
  Strength strength = Strength::Sign;
};

Said saidBy(std::string_view text) {
  const auto sayings = sayingsOf(text);
  for (std::size_t k = 0; k < strengthCount; ++k) {
    const auto strength = static_cast<Strength>(k);
    Polarity said = Polarity::None;
    for (const Saying& saying : sayings) {
      if (saying.strength != strength) continue;
      if (said != Polarity::None && said != saying.polarity) return {};
      said = saying.polarity;
    }
    if (said != Polarity::None) return {said, strength};
  }
  return {};
}

}  // namespace

Polarity statedPolarity(std::string_view text) { return saidBy(text).polarity; }

bool statesLoad(std::string_view text) {
  const Said said = saidBy(text);
  return said.polarity != Polarity::None && said.strength == Strength::Load;
}

Polarity polarityByWord(bool byLoad, const Prediction& prediction) {
  if (!byLoad || prediction.polarity == Polarity::None) return prediction.polarity;
  return prediction.simulated > 0 ? Polarity::Positive : Polarity::Negative;
}

std::string withPolarityTurned(std::string_view text, Polarity wrong) {
  std::string turned(text);
  const auto sayings = sayingsOf(text);
  for (std::size_t k = sayings.size(); k-- > 0;)  // from the end, so that places stay
    if (sayings[k].polarity == wrong) turned.replace(sayings[k].begin, sayings[k].size, sayings[k].opposite);
  return turned;
}

}  // namespace core
