// SPDX-License-Identifier: GPL-3.0-or-later
#include "devices/line_decoder.h"

#include <algorithm>
#include <utility>

#include "devices/values.h"

namespace brimline {
namespace {

// So long nothing may have been heard after opening for the first byte to start a line, where
// neither a start character nor a checksum could tell.
constexpr Millis kQuiet{50};
// Equal answers: the same byte broken twice running happens once in a million lines of which one in a hundred
// is damaged (tests/long/million_frames), three times has not.
constexpr int kAgree = 3;

std::optional<std::string> text_or_nothing(std::string_view text) {
  if (text.empty()) return std::nullopt;
  return std::string(text);
}

}  // namespace

// The fields of one line by what they are.
struct LineDecoder::Parts {
  std::string_view serial, sample, method, value, unit, mark;
  bool has_unit = false;
};

LineDecoder::Parts LineDecoder::parts_of(const LineForm& form, const std::vector<std::string_view>& texts) {
  Parts out;
  for (size_t i = 0; i < texts.size(); ++i) switch (form.fields[i]) {
      case LineField::serial:
        out.serial = texts[i];
        break;
      case LineField::sample:
        out.sample = texts[i];
        break;
      case LineField::method:
        out.method = texts[i];
        break;
      case LineField::value:
        out.value = texts[i];
        break;
      case LineField::unit:
        out.unit = texts[i];
        out.has_unit = true;
        break;
      case LineField::mark:
        out.mark = texts[i];
        break;
      case LineField::ignored:
      case LineField::checksum:
        break;
    }
  return out;
}

// Where the marks stand before the value, they are moved out of it.
void LineDecoder::split_mark(const LineForm& form, Parts& parts) {
  if (std::find(form.fields.begin(), form.fields.end(), LineField::mark) != form.fields.end()) return;
  for (const std::string* mark : {&form.over, &form.under})
    if (!mark->empty() && parts.value.starts_with(*mark)) {
      parts.mark = parts.value.substr(0, mark->size());
      parts.value.remove_prefix(mark->size());
      return;
    }
}

namespace {

constexpr const char* kGarbled = "A line could not be read whole";

void tell_garbled(Heard& heard, const std::string& why) {
  heard.trouble(TroubleKind::garbled, std::string(kGarbled) + ": " + why + ".");
}

}  // namespace

Heard LineDecoder::opened(Millis at) {
  buffer_.clear();
  noise_ = skip_line_ = false;
  joined_ = true;
  before_.clear();
  last_ = at;
  ask_at_.reset();
  if (!profile_.line.ask.empty()) ask_at_ = can_tell() ? at : at + kQuiet;
  return {};
}

Heard LineDecoder::received(std::string_view bytes, Millis at) {
  Heard heard;
  if (bytes.empty()) return heard;
  drop_if_late(at, heard);
  if (joined_) {
    skip_line_ = !can_tell() && at - last_ < kQuiet;
    if (skip_line_) tell_garbled(heard, "its beginning may be missing");
    joined_ = false;
  }
  last_ = at;
  for (const char byte : bytes) take(byte, heard);
  return heard;
}

Heard LineDecoder::waited(Millis at) {
  Heard heard;
  drop_if_late(at, heard);
  if (ask_at_ && at >= *ask_at_) {
    heard.answer = profile_.line.ask;
    ask_at_ = at + profile_.line.ask_every;
  }
  return heard;
}

std::optional<Millis> LineDecoder::wake() const {
  if (buffer_.empty()) return ask_at_;
  const Millis late = last_ + profile_.line.gap;
  return ask_at_ ? std::min(*ask_at_, late) : late;
}

// A line that paused too long is broken, and the next byte starts a new one.
void LineDecoder::drop_if_late(Millis at, Heard& heard) {
  if (at - last_ < profile_.line.gap || (buffer_.empty() && !skip_line_)) return;
  if (!buffer_.empty() && !skip_line_) tell_garbled(heard, "it broke off");
  buffer_.clear();
  skip_line_ = noise_ = false;
}

void LineDecoder::take(char byte, Heard& heard) {
  const LineForm& form = profile_.line;
  if (!form.start.empty()) {
    if (byte == form.start[0]) {
      if (!buffer_.empty()) tell_garbled(heard, "the next one began before its end");
      buffer_.assign(1, byte);
      noise_ = false;
      return;
    }
    if (buffer_.empty()) {
      if (!noise_) tell_garbled(heard, "its beginning is missing");
      noise_ = true;
      return;
    }
  }
  buffer_ += byte;
  if (buffer_.ends_with(form.end)) {
    finish_line(heard);
  } else if (buffer_.size() >= static_cast<size_t>(form.longest)) {
    if (!skip_line_) tell_garbled(heard, "it has no end");
    if (form.start.empty()) {
      skip_line_ = true;
      buffer_ = buffer_.substr(buffer_.size() - form.end.size());  // its end may be half heard
    } else {
      buffer_.clear();
      noise_ = true;
    }
  }
}

void LineDecoder::finish_line(Heard& heard) {
  const std::string line = std::exchange(buffer_, {});
  const bool skip = std::exchange(skip_line_, false);
  if (skip) return;
  const std::string_view body = std::string_view(line).substr(
      profile_.line.start.size(), line.size() - profile_.line.start.size() - profile_.line.end.size());
  parse(body, heard);
}

bool LineDecoder::fits_checksum(std::string_view body) const {
  const LineForm& form = profile_.line;
  if (form.checksum.empty()) return true;
  const size_t at = body.rfind(form.delimiter);
  if (at == std::string_view::npos) return false;
  return checksum_text(form.checksum, body.substr(0, at + 1)) == body.substr(at + 1);
}

// A line that was not heard before is asked for again at once; one that was counted stands until another
// comes.
bool LineDecoder::confirmed(std::string_view body) {
  if (!profile_.line.confirm || body == counted_) return !profile_.line.confirm;
  times_ = body == before_ ? times_ + 1 : 1;
  before_ = body;
  if (times_ < kAgree) {
    ask_at_ = last_;
    return false;
  }
  counted_ = body;
  return true;
}

void LineDecoder::parse(std::string_view body, Heard& heard) {
  const LineForm& form = profile_.line;
  if (std::find(form.idle.begin(), form.idle.end(), body) != form.idle.end()) {
    heard.alive = true;
    return;
  }
  std::string without_delimiters(body);
  std::erase(without_delimiters, form.delimiter);
  if (!is_printable(without_delimiters)) return tell_garbled(heard, "a byte is no letter, digit or sign");
  const auto texts = split_fields(body, form.delimiter);
  if (texts.size() != form.fields.size())
    return tell_garbled(
        heard, std::to_string(texts.size()) + " fields instead of " + std::to_string(form.fields.size()));
  if (!fits_checksum(body)) return tell_garbled(heard, "its checksum is wrong");
  if (!confirmed(body)) {
    heard.alive = true;
    return;
  }
  Parts parts = parts_of(form, texts);
  split_mark(form, parts);
  take_parts(parts, heard);
}

void LineDecoder::take_parts(const Parts& parts, Heard& heard) const {
  const LineForm& form = profile_.line;
  const MethodRow* row = profile_.method(parts.method);
  if (!row) {
    heard.alive = true;
    return heard.trouble(
        TroubleKind::unknown_method,
        "The instrument sent method \"" + std::string(parts.method) + "\", which its profile does not have.");
  }
  if (parts.has_unit && parts.unit != row->unit)
    return tell_garbled(heard, "the unit is not that of its method");
  std::optional<Clip> clipped;
  if (!parts.mark.empty()) clipped = parts.mark == form.over ? Clip::above : Clip::below;
  if (clipped && parts.mark != form.over && parts.mark != form.under)
    return tell_garbled(heard, "its mark is not known");
  auto value = parse_decimal(parts.value, form.decimal, row->decimals);
  if (clipped && parts.value.empty()) value = *clipped == Clip::above ? row->high : row->low;
  if (!value)
    return tell_garbled(heard, "the value is no number of " + std::to_string(row->decimals) + " decimals");
  std::string once;
  // An instrument's clock or count may start anew: the same number of another bottle is another reading.
  if (!parts.serial.empty())
    for (const std::string_view part : {parts.serial, parts.method, parts.sample}) once.append(part) += '\n';
  tell_value(heard, *row, *value, clipped, text_or_nothing(parts.sample), text_or_nothing(parts.serial),
             once);
}

std::unique_ptr<Decoder> make_line_decoder(const Profile& profile) {
  return std::make_unique<LineDecoder>(profile);
}

}  // namespace brimline
