// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/campaign/channel_list.h"

#include <gtest/gtest.h>

#include "tests/support/sample_channel.h"

namespace core {
namespace {

using Words = std::vector<std::string>;
using Fields = std::vector<ListField>;

ListTable tableOf(std::string_view text) {
  const auto table = readListTable(text);
  EXPECT_TRUE(table) << table.error().text();
  return table ? *table : ListTable{};
}

std::string faultOf(std::string_view text) {
  const auto table = readListTable(text);
  return table ? "read" : table.error().where + ": " + table.error().what;
}

Fields guessed(std::string_view text) { return guessedFields(tableOf(text)); }

/// Into a document that holds the sample as TP-01, and copies it.
ListImport imported(std::string_view text) {
  const ListTable table = tableOf(text);
  const Document document = sample::documentOf({sample::nineStepChannel()});
  auto import = withChannelList(document, table, guessedFields(table), *document.channels[0]);
  EXPECT_TRUE(import) << import.error().text();
  return import ? *std::move(import) : ListImport{};
}

Channel only(std::string_view text) {
  const ListImport import = imported(text);
  EXPECT_EQ(import.added, 1u) << (import.refused.empty() ? "" : import.refused[0].text());
  return *import.document.channels.back();
}

std::string refusalOf(std::string_view text) {
  const ListImport import = imported(text);
  return import.refused.size() == 1 ? import.refused[0].where + ": " + import.refused[0].what : "taken";
}

TEST(ListTable, TakesCommaSemicolonAndTab) {
  EXPECT_EQ(tableOf("Name,Group\nA,b\n").delimiter, ',');
  EXPECT_EQ(tableOf("Name;Group\nA;b\n").delimiter, ';');
  EXPECT_EQ(tableOf("Name\tGroup\nA\tb\n").delimiter, '\t');
  EXPECT_EQ(tableOf("Name\nA\n").rows, (std::vector<Words>{{"A"}}));
}

TEST(ListTable, ACommaInAHeadingOrANumberCutsNothing) {
  const ListTable table = tableOf("Name;Leads, ohm\r\nTP-02;0,5\r\nTP-03;0,7\r\n");
  EXPECT_EQ(table.delimiter, ';');
  EXPECT_EQ(table.header, (Words{"Name", "Leads, ohm"}));
  EXPECT_EQ(tableOf("Name,\"Leads, ohm\",\"Gauge; nominal\"\nTP-02,0.5,350\n").rows[0].size(), 3u);
}

TEST(ListTable, ReadsWhatSpreadsheetsSave) {
  // RFC 4180 quotes; CP1252.TXT of the Unicode Consortium (from memory): 0xDF is ß, 0x96 an en dash.
  EXPECT_EQ(tableOf("\xEF\xBB\xBFName,Note\r\nA,\"say \"\"two\"\"\r\nlines\"\r\n").rows[0][1],
            "say \"two\"\r\nlines");
  EXPECT_EQ(tableOf("Name;Note\nGr\xF6\xDF"
                    "e;2\x96"
                    "3\n")
                .rows[0],
            (Words{"Größe", "2–3"}));
  EXPECT_EQ(tableOf(std::string_view("\xFF\xFEN\0a\0m\0e\0\n\0A\0\n\0", 16)).rows[0][0], "A");
}

TEST(ListTable, LinesAreThoseOfTheFile) {
  const ListTable table = tableOf("Name,Note\n\nA,\"two\nlines\"\n,\nB,\n");
  EXPECT_EQ(table.lines, (std::vector<std::size_t>{3, 6}));
}

TEST(ListTable, AListWithoutHeadingsGetsNumberedColumns) {
  const ListTable table = tableOf("TP-02;left spar;350\nTP-03;right spar\n");
  EXPECT_FALSE(table.hasHeader);
  EXPECT_EQ(table.header, (Words{"column 1", "column 2", "column 3"}));
  EXPECT_EQ(table.rows.size(), 2u);
  EXPECT_EQ(table.rows[1][2], "");
  EXPECT_TRUE(tableOf("Bezeichner;Wert\nTP-02;350\n").hasHeader);
}

TEST(ListTable, WhatIsNoListSaysWhatItIs) {
  EXPECT_EQ(faultOf(""), "line 1: there is nothing in the file");
  EXPECT_EQ(faultOf("\n\n"), "line 1: there is nothing in the file");
  EXPECT_EQ(faultOf("PK\x03\x04stuff"), ": this is a workbook and no list");
  EXPECT_EQ(faultOf("Name\nA\x81\n"), "line 2: the text is neither UTF-8 nor Windows-1252");
  EXPECT_EQ(faultOf(std::string_view("Name\nA\0\n", 8)), "line 2: there is a character that is no text");
  EXPECT_EQ(faultOf("Name,Note\nA,\"open\n"), "line 2: a quotation mark opens here and never closes");
  EXPECT_EQ(faultOf("Name,Note\nA,b,c\n"), "line 2: there are 3 cells under 2 headings");
  EXPECT_EQ(faultOf("Name,Note\nA,b,,,\n"), "read");  // spreadsheets write empty cells behind
}

TEST(ListTable, MoreRowsThanADocumentHoldsAreRefused) {
  std::string text = "Name\n";
  for (std::size_t k = 0; k < mostChannels; ++k) text += "A" + std::to_string(k) + "\n";
  EXPECT_EQ(faultOf(text), "read");
  EXPECT_EQ(faultOf(text + "B\n"), "line 10002: there are more than 10001 rows");
}

TEST(ListTable, ALongHeadingOverManyShortRowsIsRefused) {
  // Each of the rows would be filled up to the length of the heading: 24 kB would ask for a gigabyte.
  std::string text = "name" + std::string(4'000, ',') + "note\n";
  for (int k = 0; k < 9'000; ++k) text += "A\n";
  EXPECT_EQ(faultOf(text), "line 1: there are more than 1000000 cells");
}

TEST(ListHeadings, AreKnownInEnglishAndGerman) {
  using F = ListField;
  EXPECT_EQ(
      guessed("Channel,Group,Gauge resistance,k-factor,\"Leads, ohm\",Excitation [V],Limit (%),Colour\n"),
      (Fields{F::Name, F::Group, F::GaugeResistance, F::GaugeFactor, F::LeadResistance, F::Excitation,
              F::Limit, F::Ignored}));
  EXPECT_EQ(guessed("Messstelle;Gruppe;Widerstand / Ohm;K-Faktor;Leitungslänge in m;Querschnitt (mm²);"
                    "Speisespannung, V;Bemerkung;Gerät;Seriennummer;Brückenschaltung;Einheit;Spalte\n"),
            (Fields{F::Name, F::Group, F::GaugeResistance, F::GaugeFactor, F::LeadLength, F::LeadSection,
                    F::Excitation, F::Note, F::InstrumentName, F::InstrumentSerial, F::Template, F::Unit,
                    F::RecordingColumn}));
}

TEST(ListHeadings, TheUnitTellsWhatOfTheLeadsIsMeant) {
  using F = ListField;
  EXPECT_EQ(guessed("Name;Leads, m;Leads, mm²\n"), (Fields{F::Name, F::LeadLength, F::LeadSection}));
  EXPECT_EQ(guessed("Name;Cable (ohm);AWG\n"), (Fields{F::Name, F::LeadResistance, F::LeadSection}));
}

TEST(ListHeadings, TwoNamesInOneAreNone) {
  EXPECT_EQ(guessed("Name|Channel,Group\n"), (Fields{ListField::Ignored, ListField::Group}));
}

TEST(ListHeadings, ASecondColumnOfOneKindIsLeftToTheUser) {
  EXPECT_EQ(guessed("Name,Channel\n"), (Fields{ListField::Name, ListField::Ignored}));
}

TEST(ListFields, AreSaidByKeyAndHeading) {
  const ListTable table = tableOf("Name,Ch,\"R, ohm\"\nA,B,350\n");
  const auto fields = fieldsFromText(table, "name=Ch,gauge_resistance=R, ohm");
  ASSERT_TRUE(fields) << fields.error().text();
  EXPECT_EQ(*fields, (Fields{ListField::Ignored, ListField::Name, ListField::GaugeResistance}));
  EXPECT_EQ(*fieldsFromText(table, "note=2,gauge_resistance=r"),
            (Fields{ListField::Name, ListField::Note, ListField::GaugeResistance}));
  EXPECT_EQ(fieldsFromText(table, "name=Nom").error().what, "there is no column “Nom”");
  EXPECT_EQ(fieldsFromText(table, "title=Ch").error().what, "“title=Ch” is no field with its column");
  EXPECT_EQ(fieldsFromText(table, "name").error().what, "“name” is no field with its column");
}

TEST(ListImport, ValuesAreInTheTradesNotation) {
  const Channel channel = only(
      "Name;Group;Gauge, ohm;k-factor;Leads, ohm;Recording column;Unit;Instrument;Serial;Excitation;Limit\n"
      "TP-02;left spar;120;2,07;0,35;AI 2;mV/V;Alder 24;'=17;2500 mV;2\n");
  const core::Setup& setup = channel.setup;
  EXPECT_EQ(channel.name, "TP-02");
  EXPECT_EQ(channel.group, "left spar");
  EXPECT_EQ(setup.bridge.gauge.nominal, 120.0_ohm);
  EXPECT_EQ(setup.bridge.arms[1], 120.0_ohm);
  EXPECT_EQ(setup.bridge.gauge.factor, 2.07);
  EXPECT_EQ(resistanceOf(setup.bridge.leads[static_cast<std::size_t>(LeadRole::Return)]), 0.35_ohm);
  EXPECT_EQ(channel.recordingColumn, "AI 2");
  EXPECT_EQ(setup.instrument.unit, ReadingUnit::MillivoltPerVolt);
  EXPECT_EQ(setup.identity.name, "Alder 24");
  EXPECT_EQ(setup.identity.serial, "=17");
  EXPECT_EQ(setup.instrument.excitation, 2.5_V);
  EXPECT_EQ(setup.limits.relative, 0.02);
}

TEST(ListImport, ANumberAloneIsInTheUnitOfItsHeading) {
  const Channel channel = only("Name,Lead length [mm],Section in mm²,Gauge (kOhm)\nA,2500,0.25,1\n");
  const Lead& lead = channel.setup.bridge.leads[static_cast<std::size_t>(LeadRole::Return)];
  ASSERT_TRUE(std::holds_alternative<CopperWire>(lead));
  EXPECT_EQ(std::get<CopperWire>(lead).length, Length(2.5));
  EXPECT_EQ(std::get<CopperWire>(lead).section, 0.25_mm2);
  EXPECT_EQ(channel.setup.bridge.gauge.nominal, 1.0_kohm);
  EXPECT_EQ(only("Name,Gauge (kOhm)\nA,120 ohm\n").setup.bridge.gauge.nominal, 120.0_ohm);
  EXPECT_EQ(refusalOf("Name,Lead length [mi],Section in mm²\nA,2,0.25\n"),
            "line 2, lead length: “2 mi” has no unit that fits here");
}

TEST(ListImport, AWireSizeMayBeAnAwgNumber) {
  const Channel channel = only("Name,Lead length (m),AWG\nA,10,26\n");
  const auto wire =
      std::get<CopperWire>(channel.setup.bridge.leads[static_cast<std::size_t>(LeadRole::Return)]);
  // ASTM B258, as published in tables of wire sizes: AWG 26 is 0.1288 mm².
  EXPECT_NEAR(wire.section.base(), 0.1288e-6, 0.0001e-6);  // four digits are published
}

TEST(ListImport, ChannelsBringTheSetUpAndNothingElse) {
  const Document document = sample::documentOf({sample::withCheckReading(sample::nineStepChannel(), 1)});
  const ListTable table = tableOf("Name\nTP-02\n");
  const auto import = withChannelList(document, table, guessedFields(table), *document.channels[0]);
  ASSERT_TRUE(import);
  EXPECT_EQ(import->document.channels[1]->setup, document.channels[0]->setup);
  EXPECT_TRUE(import->document.channels[1]->checks.empty());
  EXPECT_EQ(import->document.channels[0], document.channels[0]);
}

TEST(ListImport, ARowMayNameItsOwnModel) {
  Channel other;
  other.name = "LC-1";
  other.setup.bridge.type = BridgeType::FullBending;
  const Document document = sample::documentOf({sample::nineStepChannel(), other});
  const ListTable table = tableOf("Name,Like\nA,LC-1\nB,\nC,LC-2\n");
  const auto import = withChannelList(document, table, guessedFields(table), *document.channels[0]);
  ASSERT_TRUE(import);
  EXPECT_EQ(import->added, 2u);
  EXPECT_EQ(import->document.channels[2]->setup.bridge.type, BridgeType::FullBending);
  EXPECT_EQ(import->document.channels[3]->setup.bridge.type, BridgeType::QuarterThreeWire);
  ASSERT_EQ(import->refused.size(), 1u);
  EXPECT_EQ(import->refused[0].where, "line 4, like");
}

TEST(ListImport, ATemplateGoesByKeyOrName) {
  Document document;
  const ListTable table = tableOf("Name;Template\nA;full_bending\nB;QUARTER BRIDGE, THREE-WIRE\nC;ring\n");
  const auto import = withChannelList(document, table, guessedFields(table), Channel{});
  ASSERT_TRUE(import);
  ASSERT_EQ(import->added, 2u);
  EXPECT_EQ(import->document.channels[0]->setup.bridge.type, BridgeType::FullBending);
  EXPECT_EQ(import->document.channels[1]->setup.bridge.type, BridgeType::QuarterThreeWire);
  ASSERT_EQ(import->refused.size(), 1u);
  EXPECT_EQ(import->refused[0].where, "line 4, template");
  EXPECT_EQ(import->refused[0].what, "“ring” is no template");
}

TEST(ListImport, NamesThatAreTakenAreNumberedAndTold) {
  const ListImport import = imported("Name\nTP-01\nTP-02\nTP-02\nTP-02\n");
  EXPECT_EQ(import.added, 4u);
  EXPECT_EQ(import.told, (Words{"line 2: there is a channel TP-01 already, named TP-01 (2)",
                                "line 4: there is a channel TP-02 already, named TP-02 (2)",
                                "line 5: there is a channel TP-02 already, named TP-02 (3)"}));
}

TEST(ListImport, EachBadRowIsToldByLineAndField) {
  EXPECT_EQ(refusalOf("Name,Note\n,x\n"), "line 2, name: there is no name");
  EXPECT_EQ(refusalOf("Name\n\"a\nb\"\n"), "line 2, name: there is a line break in it");
  EXPECT_EQ(refusalOf("Name,k-factor\nA,two\n"), "line 2, gauge factor: “two” is not a number");
  EXPECT_EQ(refusalOf("Name,k-factor\nA,0\n"), "line 2, gauge factor: 0 is not above zero");
  EXPECT_EQ(refusalOf("Name;Gauge\nA;1.234,5\n"),
            "line 2, gauge resistance: “1.234,5” has both a point and a comma");
  EXPECT_EQ(refusalOf("Name,Leads\nA,-1\n"), "line 2, lead resistance: it is below zero");
  EXPECT_EQ(refusalOf("Name,Lead length\nA,3\n"),
            "line 2, lead cross-section: a wire needs both its length and its cross-section");
  EXPECT_EQ(refusalOf("Name,\"Leads, ohm\",\"Leads, m\",\"Leads, mm²\"\nA,1,3,0.1\n"),
            "line 2, lead resistance: the resistance and the size of the wire are both given");
  EXPECT_EQ(refusalOf("Name,Unit\nA,kN\n"), "line 2, unit: “kN” is no unit that it can read in");
  EXPECT_EQ(refusalOf("Name,Limit\nA,200 %\n"), "line 2, limit: 200 % is no limit");
  EXPECT_EQ(refusalOf("Name\n" + std::string(201, 'x') + "\n"),
            "line 2, name: it is longer than 200 characters");
}

TEST(ListImport, ColumnsThatContradictDoNothing) {
  const ListTable table = tableOf("Name,Other\nA,B\n");
  const auto twice = withChannelList({}, table, {ListField::Name, ListField::Name}, Channel{});
  ASSERT_FALSE(twice);
  EXPECT_EQ(twice.error().what, "it is taken for the name, and so is “Name”");
  const auto none = withChannelList({}, table, {ListField::Note, ListField::Ignored}, Channel{});
  ASSERT_FALSE(none);
  EXPECT_EQ(none.error().what, "no column is the name of the channels");
}

TEST(ListImport, ADocumentIsNeverFilledBeyondItsLimit) {
  std::string text = "Name\n";
  for (std::size_t k = 0; k < mostChannels; ++k) text += "A\n";
  const ListTable table = tableOf(text);
  const Document document = sample::documentOf({Channel{}});
  const auto import = withChannelList(document, table, guessedFields(table), Channel{});
  ASSERT_FALSE(import);
  EXPECT_EQ(import.error().what, "the document would have 10001 channels, and it can hold 10000");
}

TEST(ChannelListCsv, ReadsBackAsTheSameColumns) {
  Channel first = sample::nineStepChannel();
  first.name = "=1+1";
  first.group = "left, spar";
  first.note = "say \"two\"\nlines";
  first.recordingColumn = "AI 2";
  first.setup.bridge.leads.fill(Lead(CopperWire{Length(12.5), Area(0.14e-6)}));
  first.setup.bridge.gauge.factor = 2.0 + 1.0 / 3;
  first.setup.instrument.gaugeFactor = first.setup.bridge.gauge.factor;
  first.setup.identity = {"Alder 24", "0017", "", {}};
  Channel second;
  second.name = "TP-02";
  second.setup.bridge.leads.fill(Lead(Resistance(0.1 + 0.2)));
  second.setup.limits.relative = 1.0 / 300;
  const Document document = sample::documentOf({first, second});
  const ListTable table = tableOf(channelListCsv(document));
  const auto import = withChannelList({}, table, guessedFields(table), Channel{});
  ASSERT_TRUE(import) << import.error().text();
  ASSERT_EQ(import->refused.size(), 0u) << import->refused[0].text();
  ASSERT_EQ(import->document.channels.size(), 2u);
  EXPECT_EQ(channelListCsv(import->document), channelListCsv(document));
  const Channel& back = *import->document.channels[0];
  EXPECT_EQ(back.name, "=1+1");
  EXPECT_EQ(back.group, "left, spar");
  EXPECT_EQ(back.note, first.note);
  EXPECT_EQ(back.setup.bridge.gauge, first.setup.bridge.gauge);
  EXPECT_EQ(back.setup.identity, first.setup.identity);
  EXPECT_EQ(import->document.channels[1]->setup.limits, second.setup.limits);
}

}  // namespace
}  // namespace core
