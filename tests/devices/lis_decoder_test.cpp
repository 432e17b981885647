// SPDX-License-Identifier: GPL-3.0-or-later
// The LIS1-A receiver. The frames' checksums were computed by hand from the link standard's rule.
#include "devices/lis_decoder.h"

#include <gtest/gtest.h>

#include "devices/session.h"

namespace brimline {
namespace {

const std::string kEnq = "\x05", kEot = "\x04", kAck = "\x06", kNak = "\x15";
const std::string kHeader =
    "\x02"
    "1H|\\^&|||PHOTO^1|||||||P|1\r\x03"
    "D3\r\n";
const std::string kPatient =
    "\x02"
    "2P|1\r\x03"
    "3F\r\n";
const std::string kOrder =
    "\x02"
    "3O|1|S1001||^^^A07|R\r\x03"
    "58\r\n";
const std::string kResult =
    "\x02"
    "4R|1|^^^A07|2.35|mg/L||N||F\r\x03"
    "14\r\n";
const std::string kEnd =
    "\x02"
    "5L|1|N\r\x03"
    "08\r\n";

// The frames above have no time, and their unit is "mg/L".
const Profile& profile() {
  static const Profile out = [] {
    Profile read = *load_profile("lis_link");
    read.methods.front().unit = "mg/L";
    return read;
  }();
  return out;
}

std::string result(const std::string& value, const std::string& flag, const std::string& time,
                   const std::string& status = "F") {
  return lis_frame(4, "R|1|^^^A07|" + value + "|mg/L||" + flag + "||" + status + "||||" + time + "\r", true);
}

struct Link {
  Session session{profile()};
  std::vector<InstrumentReading> readings;
  std::vector<Trouble> troubles;
  Millis at{0};
  Link() { session.opened(at); }
  std::string send(const std::string& bytes) {
    at += Millis(1100);  // garbled is told again
    const Said said = session.received(bytes, at);
    for (const auto& one : said.told)
      if (const auto* reading = std::get_if<InstrumentReading>(&one))
        readings.push_back(*reading);
      else
        troubles.push_back(std::get<Trouble>(one));
    return said.answer;
  }
  std::string send_message(const std::string& result_frame) {
    std::string answers = send(kEnq);
    for (const auto& frame : {kHeader, kPatient, kOrder, result_frame, kEnd}) answers += send(frame);
    return answers + send(kEot);
  }
};

TEST(Lis, ReadsAWholeSessionAndAcknowledgesEachFrame) {
  Link link;
  EXPECT_EQ(link.send_message(kResult), std::string(6, '\x06'));
  EXPECT_TRUE(link.troubles.empty());
  ASSERT_EQ(link.readings.size(), 1u);
  EXPECT_EQ(link.readings[0].analyte, "free_chlorine");
  EXPECT_EQ(link.readings[0].value, 2.35);
  EXPECT_EQ(link.readings[0].sample, "S1001");
  EXPECT_FALSE(link.readings[0].serial);
}

TEST(Lis, RefusesEveryChangedByteAndReadsTheRepeat) {
  for (size_t at = 1; at < kResult.size(); ++at)  // without its STX a frame is not there to be answered
    for (int change = 1; change < 256; ++change) {
      Link link;
      for (const auto& bytes : {kEnq, kHeader, kPatient, kOrder}) link.send(bytes);
      std::string broken = kResult;
      broken[at] = static_cast<char>(broken[at] ^ change);
      link.send(broken);
      EXPECT_TRUE(link.readings.empty()) << at << " " << int(broken[at]);
      link.send(kEot);
      EXPECT_FALSE(link.troubles.empty()) << at << " " << int(broken[at]);
      link.send_message(kResult);
      EXPECT_EQ(link.readings.size(), 1u) << at << " " << int(broken[at]);
    }
}

TEST(Lis, AcknowledgesARepeatedFrameWithoutReadingItAgain) {
  Link link;
  for (const auto& bytes : {kEnq, kHeader, kPatient, kOrder}) EXPECT_EQ(link.send(bytes), kAck);
  EXPECT_EQ(link.send(kResult), kAck);
  EXPECT_EQ(link.send(kResult), kAck);
  EXPECT_EQ(link.readings.size(), 1u);
  EXPECT_EQ(link.send(kOrder), kNak);  // neither the next frame nor the last
  Link fresh;
  fresh.send(kEnq);
  EXPECT_EQ(fresh.send(lis_frame(0, "H|\\^&\r", true)), kNak);  // numbers begin with 1
}

TEST(Lis, CountsAResultOncePerBottleCodeAndTime) {
  Link link;
  for (int i = 0; i < 3; ++i) link.send_message(result("2.35", "N", "20260614090200"));
  ASSERT_EQ(link.readings.size(), 1u);
  EXPECT_EQ(link.readings[0].serial, "20260614090200");
  link.send_message(result("2.35", "N", "20260614090900"));
  EXPECT_EQ(link.readings.size(), 2u);
}

TEST(Lis, ObeysEnqAndEotInEveryState) {
  const std::string all = kEnq + kHeader + kPatient + kOrder + kResult + kEnd;
  for (size_t cut = 0; cut <= all.size(); ++cut)
    for (const std::string& before : {kEnq, kEot}) {
      Link link;
      link.send(all.substr(0, cut));
      EXPECT_EQ(link.send(before), before == kEnq ? kAck : "") << cut;
      const size_t had = link.readings.size();
      link.send_message(kResult);
      EXPECT_EQ(link.readings.size(), had + 1) << cut;
    }
}

TEST(Lis, JoinsARecordThatGoesOverTwoFrames) {
  Link link;
  link.send(kEnq + kHeader + kPatient + kOrder);
  link.send(lis_frame(4, "R|1|^^^A07|2.3", false));
  EXPECT_TRUE(link.readings.empty());
  link.send(lis_frame(5, "5|mg/L||N||F\r", true));
  ASSERT_EQ(link.readings.size(), 1u);
  EXPECT_EQ(link.readings[0].value, 2.35);
}

TEST(Lis, NumbersGoRoundAfterSeven) {
  Link link;
  link.send(kEnq + kHeader + kPatient + kOrder);
  for (int i = 4; i < 40; ++i)
    EXPECT_EQ(link.send(lis_frame(i % 8, "R|1|^^^A07|2.35|mg/L||N||F||||" + std::to_string(i) + "\r", true)),
              kAck);
  EXPECT_EQ(link.readings.size(), 36u);
}

TEST(Lis, TellsMarksRangesAndUnknownMethods) {
  Link link;
  link.send_message(result("10.00", ">", "1"));
  link.send_message(result(">10.00", "", "2"));
  link.send_message(result("<0.00", "", "3"));
  ASSERT_EQ(link.readings.size(), 3u);
  EXPECT_EQ(link.readings[0].clipped, Clip::above);
  EXPECT_EQ(link.readings[1].clipped, Clip::above);
  EXPECT_EQ(link.readings[2].clipped, Clip::below);
  link.send_message(result("12.00", "H", "4"));
  ASSERT_EQ(link.troubles.size(), 1u);
  EXPECT_EQ(link.troubles[0].what, TroubleKind::out_of_range);
  link.send_message(lis_frame(4, "R|1|^^^Q99|1|mg/L||N||F\r", true));
  EXPECT_EQ(link.troubles[1].what, TroubleKind::unknown_method);
  link.send_message(result("2.35", "N", "5", "P"));  // preliminary: no reading yet
  link.send_message(result("nan", "N", "6"));
  EXPECT_EQ(link.readings.size(), 3u);
}

TEST(Lis, LeavesASessionThatBrokeOff) {
  LisDecoder decoder(profile());
  decoder.opened(Millis(0));
  decoder.received(kEnq + kHeader.substr(0, 8), Millis(10));
  ASSERT_EQ(decoder.wake(), Millis(30010));  // the receiver's timer, 30 s
  const Heard heard = decoder.waited(Millis(30010));
  ASSERT_EQ(heard.told.size(), 1u);
  EXPECT_FALSE(decoder.wake());
  EXPECT_EQ(decoder.received(kHeader, Millis(30020)).answer, "");
}

TEST(Lis, BoundsARecordWithoutEnd) {
  Link link;
  link.send(kEnq);
  size_t told = 0;
  for (int i = 1; i < 200; ++i) link.send(lis_frame(i % 8, std::string(200, 'x'), false));
  for (const Trouble& trouble : link.troubles) told += trouble.what == TroubleKind::garbled;
  EXPECT_GE(told, 1u);
  EXPECT_TRUE(link.readings.empty());
}

}  // namespace
}  // namespace brimline
