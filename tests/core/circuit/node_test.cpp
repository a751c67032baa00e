// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/circuit/node.h"

#include <gtest/gtest.h>

#include <memory>
#include <set>
#include <string>

#include "core/circuit/node_words.h"
#include "core/units/language.h"

using namespace core;

TEST(Node, NamesGoThereAndBack) {
  std::set<std::string_view> names;
  for (const Node node : allNodes()) {
    EXPECT_EQ(nodeFromName(nodeName(node)), node);
    names.insert(nodeName(node));
  }
  EXPECT_EQ(names.size(), nodeCount) << "two nodes share a name";
}

TEST(Node, UnknownNameIsNoNode) {
  for (const std::string name : {"", "P", "p+", "arm 5 begin", "arm 1", " S+"})
    EXPECT_FALSE(nodeFromName(name)) << name;
}

TEST(Node, ArmsRunInTheirOrder) {
  EXPECT_EQ(armBegin(0), Node::Arm1Begin);
  EXPECT_EQ(armEnd(0), Node::Arm1End);
  EXPECT_EQ(armBegin(3), Node::Arm4Begin);
  EXPECT_EQ(armEnd(3), Node::Arm4End);
}

TEST(Node, WordsAreReadInTheirLanguageAndAsFilesHaveThem) {
  auto words = std::make_shared<Language>();
  words->translate = [](std::string_view english) { return "‹" + std::string(english) + "›"; };
  const LanguageScope scope(words);
  EXPECT_EQ(nodeWords(Node::Arm2Begin), "‹arm 2 begin›");
  EXPECT_EQ(nodeFromWords("‹arm 2 begin›"), Node::Arm2Begin);
  EXPECT_EQ(nodeFromWords("arm 2 begin"), Node::Arm2Begin);
  EXPECT_EQ(nodeFromWords("S-"), Node::SMinus);
  EXPECT_FALSE(nodeFromWords("arm 5 begin"));
}
