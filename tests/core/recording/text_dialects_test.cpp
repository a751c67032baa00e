// SPDX-License-Identifier: GPL-3.0-or-later
// One recording of four samples at 0, 0.5, 1 and 1.5 s, written as loggers write it. Every guess must be
// right without a choice. The dialects are common practice, no source.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <ostream>

#include "core/recording/text/delimited_text.h"
#include "tests/support/text_file.h"

namespace text_dialects_test {

using core::Preview;
using core::Recording;
using testing::ElementsAre;
using testing::HasSubstr;
using testing::IsEmpty;

struct Dialect {
  const char* name;
  std::string text;
  const char* startedAt = "";
};
std::ostream& operator<<(std::ostream& out, const Dialect& dialect) { return out << dialect.name; }

std::string utf16(std::string_view ascii, bool little, bool mark) {
  std::string bytes = !mark ? "" : little ? "\xFF\xFE" : "\xFE\xFF";
  for (const char c : ascii) little ? (bytes += c) += '\0' : (bytes += '\0') += c;
  return bytes;
}

const std::string plain = "Time [s],TP-01 [um/m],LC-1 [kN]\n0,-1.5,10\n0.5,2,11\n1,1e-3,12\n1.5,4.25,13\n";
const std::string names = "TP-01 [um/m];LC-1 [kN]";
const std::string zeitKommas =
    "Zeit;TP-01;LC-1\ns;um/m;kN\n0,0;-1,5;10\n0,5;2;11\n1,0;1E-3;12\n1,5;4,25;13\n";

std::string timed(const std::string& name, const char* t0, const char* t1, const char* t2, const char* t3) {
  return name + ";" + names + "\n" + t0 + ";-1.5;10\n" + t1 + ";2;11\n" + t2 + ";1e-3;12\n" + t3 +
         ";4.25;13\n";
}

const std::string rows = "-1.5;10\n2;11\n1e-3;12\n4.25;13\n";

const Dialect dialects[] = {
    {"Commas", plain},
    {"ByteOrderMark", "\xEF\xBB\xBF" + plain},
    {"Utf16LittleEndian", utf16(plain, true, true)},
    {"Utf16BigEndian", utf16(plain, false, true)},
    {"Utf16LittleEndianUnmarked", utf16(plain, true, false)},
    {"Utf16BigEndianUnmarked", utf16(plain, false, false)},
    {"SemicolonsAndDecimalCommas", zeitKommas},
    {"Tabs", "Time\tTP-01\tLC-1\ns\tum/m\tkN\n0\t-1.5\t10\n0.5\t2\t11\n1\t1e-3\t12\n1.5\t4.25\t13\n"},
    {"TabsAndDecimalCommas",
     "t [s]\tTP-01 [um/m]\tLC-1 [kN]\n0,0\t-1,5\t10\n0,5\t2\t11\n1,0\t1e-3\t12\n1,5\t4,25\t13\n"},
    {"FixedWidth",
     "  Time     TP-01    LC-1\n     s      um/m      kN\n   0.0     -1.50   10.00\n   0.5      2.00   "
     "11.00\n"
     "   1.0     0.001   12.00\n   1.5      4.25   13.00  \n"},
    {"BlanksWithUnitsInBrackets",
     "Time [s] TP-01 [um/m] LC-1 [kN]\n0 -1.5 10\n0.5 2 11\n1 1e-3 12\n1.5 4.25 13\n"},
    {"BlanksBehindCommas",
     "Time [s], TP-01 [um/m] , LC-1 [kN]\n0.0,  -1.5, 10\n0.5, 2, 11\n1, .001, 12\n1.5, 4.25, 13.\n"},
    {"TabsWithAnEmptyColumn",
     "t [s]\tEvent\tTP-01 [um/m]\tLC-1 [kN]\n0\t\t-1.5\t10\n0.5\t\t2\t11\n1\t\t1e-3\t12\n1.5\t\t4.25\t13\n"},
    {"TabsAtTheEnd",
     "t [s]\tTP-01 [um/m]\tLC-1 [kN]\tRemark\n0\t-1.5\t10\t\n0.5\t2\t11\t\n1\t1e-3\t12\t\n1.5\t4.25\t13\t\n"},
    {"TabsBehindDatesWithABlank",
     "Date/Time\tTP-01 [um/m]\tLC-1 [kN]\tRemark\n2026-05-11 10:00:00.0\t-1.5\t10\t\n"
     "2026-05-11 10:00:00.5\t2\t11\t\n2026-05-11 10:00:01.0\t1e-3\t12\t\n"
     "2026-05-11 10:00:01.5\t4.25\t13\t\n",
     "2026-05-11T10:00:00"},
    {"CommasBehindDatesWithABlank",
     "Date/Time,TP-01 [um/m],Event,Remark,LC-1 [kN]\n2026-05-11 10:00:00.0,-1.5,,,10\n"
     "2026-05-11 10:00:00.5,2,,,11\n2026-05-11 10:00:01.0,1e-3,,,12\n"
     "2026-05-11 10:00:01.5,4.25,,,13\n",
     "2026-05-11T10:00:00"},
    {"SemicolonsBetweenWordsAndDecimalCommas",
     "t [s];Event;TP-01 [um/m];Mark;Place;LC-1 [kN]\n0,0;on;-1,5;a;b;10\n0,5;on;2,0;a;b;11\n"
     "1,0;on;1e-3;a;b;12\n1,5;on;4,25;a;b;13\n"},
    {"Bars", "Time|TP-01|LC-1\ns|um/m|kN\n0|-1.5|10\n0.5|2|11\n1|1e-3|12\n1.5|4.25|13\n"},
    {"BarsAndDecimalCommas",
     "t [s] | TP-01 [um/m] | LC-1 [kN]\n0,0 | -1,5 | 10\n0,5 | 2 | 11\n1,0 | 1e-3 | 12\n1,5 | 4,25 | 13\n"},
    {"BlanksBehindATabThatIsNoSeparator",
     "Time [s]\tTP-01 [um/m] LC-1 [kN]\n0\t-1.5 10\n0.5\t2 11\n1\t1e-3 12\n1.5\t4.25 13\n"},
    {"SeparatorAtTheEnd",
     "Time [s];TP-01 [um/m];LC-1 [kN];\n0;-1.5;10;\n0.5;2;11;\n1;1e-3;12;\n1.5;4.25;13;\n"},
    {"RunningNumberFirst",
     "No.;Time [s];TP-01 [um/m];LC-1 [kN]\n1;0;-1.5;10\n2;0.5;2;11\n3;1;1e-3;12\n4;1.5;4.25;13\n"},
    {"QuotedCells",
     "\"Time [s]\",\"TP-01 [um/m]\",\"LC-1 "
     "[kN]\"\n\"0\",\"-1.5\",\"10\"\n\"0.5\",\"2\",\"11\"\n\"1\",\"1e-3\",\"12\"\n"
     "\"1.5\",\"4.25\",\"13\"\n"},
    {"QuotedDecimalCommasBetweenCommas",
     "\"Zeit [s]\",\"TP-01 [um/m]\",\"LC-1 "
     "[kN]\"\n\"0,0\",\"-1,5\",\"10\"\n\"0,5\",\"2\",\"11\"\n\"1\",\"1e-3\",\"12\"\n"
     "\"1,5\",\"4,25\",\"13\"\n"},
    {"CommentSigns",
     "# made by rule\n# t [s], TP-01 [um/m], LC-1 [kN]\n" + plain.substr(plain.find('\n') + 1)},
    {"SlashesBeforeTheNames",
     "// made by rule\n//Time [s],TP-01 [um/m],LC-1 [kN]\n" + plain.substr(plain.find('\n') + 1)},
    {"PreambleAndARule", "Alder Fen Test Hall\nOperator;nobody\nDate;11.05.2026\n\n" +
                             zeitKommas.substr(0, zeitKommas.find("0,0")) + "----;----;----\n" +
                             zeitKommas.substr(zeitKommas.find("0,0"))},
    {"PreamblePaddedBySpreadsheet", "Alder Fen,,\nRun,3,\n,,\n" + plain},
    {"Milliseconds", timed("Time (ms)", "0", "500", "1000", "1500")},
    {"MillisecondsInTheName", timed("time_ms", "0", "500", "1000", "1500")},
    {"Microseconds", timed("t [us]", "0", "500000", "1000000", "1500000")},
    {"Minutes", timed("Time [min]", "0", "0.00833333333333333333", "0.01666666666666666667", "0.025")},
    {"Hours", timed("Elapsed time [h]", "0", "0.00013888888888888889", "0.00027777777777777778",
                    "0.00041666666666666667")},
    {"ClockPastMidnight", timed("Clock", "23:59:59.0", "23:59:59.5", "00:00:00.0", "00:00:00.5")},
    {"ClockWithDecimalComma", timed("Uhrzeit", "9:45:10,0", "9:45:10,5", "9:45:11,0", "9:45:11,5")},
    {"ClockWithMillisecondsBehindAColon",
     timed("Time", "13:45:10:000", "13:45:10:500", "13:45:11:000", "13:45:11:500")},
    {"ElapsedMinutesAndSeconds", timed("Elapsed", "59:59.0", "59:59.5", "60:00.0", "60:00.5")},
    {"IsoDate",
     timed("Timestamp", "2026-05-11T23:59:59.0", "2026-05-11T23:59:59.5", "2026-05-12T00:00:00",
           "2026-05-12T00:00:00.5"),
     "2026-05-11T23:59:59"},
    {"IsoDateWithBlankAndZone",
     timed("Timestamp", "2026-05-11 13:45:10.0+02:00", "2026-05-11 13:45:10.5+02:00",
           "2026-05-11 13:45:11+02:00", "2026-05-11 13:45:11.5+02:00"),
     "2026-05-11T13:45:10+02:00"},
    {"IsoBasicDate",
     timed("Timestamp", "20260511T134510.0Z", "20260511T134510.5Z", "20260511T134511Z", "20260511T134511.5Z"),
     "2026-05-11T13:45:10Z"},
    {"DayFirstWithPoints",
     timed("Datum/Zeit", "31.12.2025 23:59:59,0", "31.12.2025 23:59:59,5", "01.01.2026 00:00:00,0",
           "01.01.2026 00:00:00,5"),
     "2025-12-31T23:59:59"},
    {"DayFirstToldByTheChangeOfDay",
     timed("Date", "03/04/26 23:59:59.0", "03/04/26 23:59:59.5", "04/04/26 00:00:00.0",
           "04/04/26 00:00:00.5"),
     "2026-04-03T23:59:59"},
    {"MonthFirstToldByTheChangeOfDay",
     timed("Date", "04-03-2026 23:59:59.0", "04-03-2026 23:59:59.5", "04-04-2026 00:00:00.0",
           "04-04-2026 00:00:00.5"),
     "2026-04-03T23:59:59"},
    {"MonthFirstWithTwelveHours",
     timed("Date/Time", "5/13/2026 11:59:59.0 AM", "5/13/2026 11:59:59.5 AM", "5/13/2026 12:00:00.0 PM",
           "5/13/2026 12:00:00.5 PM"),
     "2026-05-13T11:59:59"},
    {"MonthByName",
     timed("Time", "11-May-2026 13:45:10.0", "11-May-2026 13:45:10.5", "11-May-2026 13:45:11.0",
           "11-May-2026 13:45:11.5"),
     "2026-05-11T13:45:10"},
    {"DateAndClockInTwoColumns",
     timed("Datum;Uhrzeit", "11.05.2026;23:59:59,0", "11.05.2026;23:59:59,5", "12.05.2026;00:00:00,0",
           "12.05.2026;00:00:00,5"),
     "2026-05-11T23:59:59"},
    {"DateAndClockBetweenBlanksUnderOneName",
     "Timestamp TP-01 [um/m] LC-1 [kN]\n2026-05-11 13:45:10.0 -1.5 10\n2026-05-11 13:45:10.5 2 11\n"
     "2026-05-11 13:45:11.0 1e-3 12\n2026-05-11 13:45:11.5 4.25 13\n",
     "2026-05-11T13:45:10"},
    {"EpochSeconds", timed("Time", "1778507110.0", "1778507110.5", "1778507111.0", "1778507111.5"),
     "2026-05-11T13:45:10Z"},
    {"EpochMilliseconds",
     timed("Timestamp", "1778507110000", "1778507110500", "1778507111000", "1778507111500"),
     "2026-05-11T13:45:10Z"},
    {"DaysOfASpreadsheet",  // ECMA-376 part 1, 18.17.4.1: 46153 is 2026-05-11; half a second is 1/172800 day
     timed("Date", "46153.500000000000", "46153.500005787037", "46153.500011574074", "46153.500017361111"),
     "2026-05-11T12:00:00"},
    {"TwoTimes",
     "Time [s];Time [ms];TP-01 [um/m];LC-1 "
     "[kN]\n0;0;-1.5;10\n0.5;500;2;11\n1;1000;1e-3;12\n1.5;1500;4.25;13\n"},
    {"RateInThePreamble", "Sample rate: 2 Hz\n" + names + "\n" + rows},
    {"RateInKilohertzWithAComma", "Abtastrate;0,002 kHz\n" + names + "\n" + rows},
    {"RateWithTheUnitInFront", "Sampling frequency [Hz],2\n" + names + "\n" + rows},
    {"RateOfOneWord", "# fs=2\n# " + names + "\n" + rows},
    {"Interval", "Interval: 0.5 s\n" + names + "\n" + rows},
    {"IntervalInMilliseconds", "dt=500 ms\n" + names + "\n" + rows},
    {"IntervalAsAFraction", "Sampling interval: 1/2 s\n" + names + "\n" + rows},
};

class TextDialects : public testing::TestWithParam<Dialect> {};

TEST_P(TextDialects, AreReadWithoutAChoice) {
  for (const std::string end : {"\n", "\r\n", "\r"}) {
    std::string text;
    const bool isWide = GetParam().text.find('\0') != std::string::npos;
    for (const char c : GetParam().text) text += c == '\n' && !isWide ? end : std::string(1, c);
    const test::TextFile file(text);
    const auto read = core::readText(file.path());
    ASSERT_TRUE(read) << read.error().text();
    ASSERT_EQ(read->time.size(), 4u);
    // 1.5 ns: times in minutes and hours are written with 20 decimals, of which a double keeps 16; days with
    // 12 decimals are good to 0.05 us each, and one is taken off another.
    for (std::size_t k = 0; k < 4; ++k)
      EXPECT_NEAR(read->time[k] - read->time[0], 0.5 * static_cast<double>(k),
                  GetParam().name == std::string("DaysOfASpreadsheet") ? 1e-7 : 1.5e-9);
    ASSERT_EQ(read->columns.size(), 2u);
    EXPECT_EQ(read->columns[0].name, "TP-01");
    EXPECT_EQ(read->columns[0].unit, "um/m");
    EXPECT_THAT(read->columns[0].values, ElementsAre(-1.5, 2, 1e-3, 4.25));
    EXPECT_EQ(read->columns[1].name, "LC-1");
    EXPECT_EQ(read->columns[1].unit, "kN");
    EXPECT_THAT(read->columns[1].values, ElementsAre(10, 11, 12, 13));
    EXPECT_EQ(read->startedAt, GetParam().startedAt);
    EXPECT_EQ(read->linesSkipped, 0u);
    EXPECT_EQ(read->cellsMissing, 0u);
  }
}

INSTANTIATE_TEST_SUITE_P(All, TextDialects, testing::ValuesIn(dialects),
                         [](const auto& one) { return std::string(one.param.name); });

TEST(TextDialects, KeepWhatAWordInLatin1Means) {
  const test::TextFile file(
      "Zeit [s];Br\xFC"
      "cke [\xB5m/m]\n0;1\n1;2\n");
  const auto read = core::readText(file.path());
  ASSERT_TRUE(read) << read.error().text();
  EXPECT_EQ(read->columns[0].name,
            "Br\xC3\xBC"
            "cke");
  EXPECT_EQ(read->columns[0].unit, "\xC2\xB5m/m");
}

TEST(TextDialects, TellWhatANameIsFromAUnit) {
  const test::TextFile file(
      "Time,Strain (left),Load / kN,Temp. in \xC2\xB0"
      "C,\"Say \"\"A\"\"\",TP (2)\n0,1,2,3,4,5\n1,1,2,3,4,5\n");
  const auto look = core::lookAtText(file.path());
  ASSERT_TRUE(look) << look.error().text();
  EXPECT_THAT(look->layout.columns,
              ElementsAre(core::ColumnHeading{"Time", ""}, core::ColumnHeading{"Strain (left)", ""},
                          core::ColumnHeading{"Load", "kN"},
                          core::ColumnHeading{"Temp.",
                                              "\xC2\xB0"
                                              "C"},
                          core::ColumnHeading{"Say \"A\"", ""}, core::ColumnHeading{"TP (2)", ""}));
}

TEST(TextDialects, DoNotTakeOtherFrequenciesForARate) {
  for (const std::string line : {"Filter frequency: 20 Hz", "Carrier frequency: 4800 Hz",
                                 "Low-pass rate 10 Hz", "Start time: 12:30:00", "Excitation: 5 V"}) {
    const test::TextFile file(line + "\nstrain\n1.5\n2.5\n");
    EXPECT_FALSE(core::readText(file.path())) << line;
  }
}

}  // namespace text_dialects_test
