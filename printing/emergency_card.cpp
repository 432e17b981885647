// SPDX-License-Identifier: GPL-3.0-or-later
#include "printing/emergency_card.h"

#include "printing/slab_builder.h"

namespace brimline {
namespace {

constexpr const char* kContext = "emergency";

// Rinsing: "at least 15 minutes", Arizona Poison and Drug Information Center. No container is sniffed:
// Illinois Poison Center. Vomiting is not induced; symptoms can come hours later; leaving upwind and
// touching nothing: common first-aid practice, from memory.
struct CardLine {
  const char* title;
  const char* line;
};

constexpr const char* kFumes = phrase("emergency", "Fumes breathed in");
constexpr const char* kSplash = phrase("emergency", "Splash in the eyes or on the skin");
constexpr const char* kSwallowed = phrase("emergency", "Swallowed");
constexpr const char* kMixed = phrase("emergency", "Chemicals mixed, wet or fuming");

constexpr CardLine kLines[] = {
    {kFumes, phrase("emergency", "Get them into fresh air, and keep others out.")},
    {kFumes, phrase("emergency", "Trouble breathing: call the emergency number at once.")},
    {kFumes,
     phrase("emergency", "It can get worse hours later: call the poison line even if they feel well.")},
    {kSplash, phrase("emergency", "Rinse with running water at once, for at least 15 minutes.")},
    {kSplash, phrase("emergency", "Take out contact lenses; take off what the chemical has touched.")},
    {kSplash,
     phrase("emergency", "Dry powder: brush it off the skin before you rinse. Then call the poison line.")},
    {kSwallowed, phrase("emergency", "Do not make them vomit.")},
    {kSwallowed, phrase("emergency", "Call the poison line with the label in your hand.")},
    {kSwallowed, phrase("emergency", "Unconscious, or trouble breathing: call the emergency number.")},
    {kMixed, phrase("emergency", "Leave at once, upwind. Keep everyone out.")},
    {kMixed, phrase("emergency", "Call the emergency number from outside.")},
    {kMixed,
     phrase("emergency", "Do not go back to air the room. Add no water. Move nothing. Sniff at nothing.")},
};

std::vector<EmergencyNumber> numbers_of(const ShopDetails& shop, const Words& words) {
  std::vector<EmergencyNumber> out = shop.emergency;
  for (EmergencyNumber& entry : out) entry.label = words.say("sheet", entry.label.c_str());
  if (out.empty())
    out.push_back({words.say(kContext, phrase("emergency", "No number is set: Back room, The shop")),
                   words.say(kContext, phrase("emergency", "Your local emergency number"))});
  return out;
}

}  // namespace

EmergencyCard make_emergency_card(const ShopDetails& shop, const Words& words) {
  EmergencyCard card;
  card.title = words.say(kContext, phrase("emergency", "Emergency"));
  card.shop = shop.name;
  card.note = words.say(
      kContext,
      phrase("emergency", "The product’s label and its safety data sheet go before anything written here."));
  card.page = "%1 / %2";
  card.numbers = numbers_of(shop, words);
  for (const char* title : {kFumes, kSplash, kSwallowed, kMixed}) {
    EmergencyCard::Part part{words.say(kContext, title), {}};
    for (const CardLine& row : kLines)
      if (row.title == title) part.lines.push_back(words.say(kContext, row.line));
    card.parts.push_back(std::move(part));
  }
  return card;
}

Pages lay_out(const EmergencyCard& card, Paper paper) {
  const auto slabs = [&](Frame frame) {
    frame.side = frame.gutter = 0;
    SlabBuilder out(frame);
    const auto write = [&](const std::string& text, const Type& type, bool with_next) {
      out.paragraph(break_lines(text, frame.width, type), type, 0, with_next);
    };
    write(card.title, frame.type(30, true), true);
    if (!card.shop.empty()) write(card.shop, frame.type(11), true);
    out.space(4);
    out.rule(3, Ink::accent);
    for (const EmergencyNumber& call : card.numbers) {
      out.space(8);
      write(call.label, frame.type(11), true);
      write(call.number, frame.type(26, true), true);
    }
    for (const EmergencyCard::Part& part : card.parts) {
      out.space(14);
      out.rule(1.4, Ink::accent);
      out.space(5);
      write(part.title, frame.type(17, true), true);
      for (const std::string& line : part.lines) {
        out.space(3);
        write(line, frame.type(13), false);
      }
    }
    out.space(14);
    write(card.note, frame.type(10), false);
    return out.take();
  };
  return lay_out(Body{slabs, card.shop, card.shop, card.page}, Edition{paper});
}

}  // namespace brimline
