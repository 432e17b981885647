// SPDX-License-Identifier: GPL-3.0-or-later
#include "devices/lis_decoder.h"

#include <algorithm>
#include <utility>

#include "devices/values.h"

namespace brimline {
namespace {

constexpr char kStx = 0x02, kEtx = 0x03, kEot = 0x04, kEnq = 0x05, kAck = 0x06, kNak = 0x15, kEtb = 0x17;
constexpr size_t kTail = 4;  // two digits of the checksum, CR, LF

// Fields of a result record, from 0 (LIS2-A 9.4; from memory).
enum ResultField : size_t {
  kCode = 2,
  kValue = 3,
  kUnit = 4,
  kFlag = 6,
  kStatus = 8,
  kStarted = 11,
  kCompleted = 12
};
constexpr size_t kSpecimen = 2;      // of an order record
constexpr size_t kMessageTime = 13;  // of a header record
constexpr size_t kCodeComponent = 3;

std::string at(const std::vector<std::string_view>& fields, size_t index) {
  return index < fields.size() ? std::string(fields[index]) : std::string();
}

std::optional<std::string> text_or_nothing(const std::string& text) {
  if (text.empty()) return std::nullopt;
  return text;
}

// As many decimals as were sent, six at most.
std::optional<double> parse_value(std::string_view text) {
  const size_t point = text.find('.');
  const size_t decimals = point == std::string_view::npos ? 0 : text.size() - point - 1;
  if (decimals > 6 || (point != std::string_view::npos && decimals == 0)) return std::nullopt;
  return parse_decimal(text, '.', static_cast<int>(decimals));
}

// Off the instrument's scale: the mark before the value, or the flag.
std::optional<Clip> take_mark(std::string& value, const std::string& flag) {
  char mark = flag == ">" || flag == "<" ? flag[0] : ' ';
  if (value.starts_with('>') || value.starts_with('<')) {
    mark = value[0];
    value.erase(0, 1);
  }
  if (mark == ' ') return std::nullopt;
  return mark == '>' ? Clip::above : Clip::below;
}

// A checksum of one byte lets a damaged frame through in 256; what no record holds gives most of those away
// while the frame can still be asked for again.
bool is_text(std::string_view text) {
  return std::all_of(text.begin(), text.end(),
                     [](char c) { return c == '\r' || is_printable(std::string_view(&c, 1)); });
}

// Preliminary, pending and impossible results are no readings.
bool is_final(const std::string& status) {
  return status.empty() || status == "F" || status == "C" || status == "R";
}

}  // namespace

Heard LisDecoder::opened(Millis at) {
  in_session_ = in_frame_ = false;
  frame_.clear();
  text_.clear();
  last_ = at;
  return {};
}

Heard LisDecoder::received(std::string_view bytes, Millis at) {
  Heard heard = waited(at);
  last_ = at;
  for (const char byte : bytes) take(byte, heard);
  return heard;
}

Heard LisDecoder::waited(Millis at) {
  Heard heard;
  if (in_session_ && at - last_ >= profile_.lis.frame_timeout) {
    heard.trouble(TroubleKind::garbled, "The instrument broke off in the middle of a message.");
    in_session_ = in_frame_ = false;
  }
  return heard;
}

std::optional<Millis> LisDecoder::wake() const {
  if (!in_session_) return std::nullopt;
  return last_ + profile_.lis.frame_timeout;
}

// ENQ and EOT are obeyed in every state: neither can stand inside a frame.
void LisDecoder::take(char byte, Heard& heard) {
  if (byte == kEnq) return start_session(heard);
  if (byte == kEot) return end_session(heard);
  if (!in_session_) {
    if (byte == kStx)
      heard.trouble(TroubleKind::garbled, "A frame came outside a session; it will be sent again.");
    return;
  }
  if (byte == kStx) {
    if (in_frame_) heard.trouble(TroubleKind::garbled, "A frame broke off.");
    in_frame_ = true;
    frame_.assign(1, byte);
    text_end_.reset();
    return;
  }
  if (in_frame_) take_frame_byte(byte, heard);
}

void LisDecoder::start_session(Heard& heard) {
  if (in_frame_) heard.trouble(TroubleKind::garbled, "A frame broke off.");
  in_session_ = true;
  in_frame_ = false;
  expected_ = 1;
  accepted_ = false;
  text_.clear();
  sample_.clear();
  heard.answer += kAck;
  heard.alive = true;
}

void LisDecoder::end_session(Heard& heard) {
  if (in_frame_) heard.trouble(TroubleKind::garbled, "A frame broke off.");
  in_session_ = in_frame_ = false;
  text_.clear();
}

void LisDecoder::take_frame_byte(char byte, Heard& heard) {
  frame_ += byte;
  if (!text_end_ && (byte == kEtx || byte == kEtb)) text_end_ = frame_.size() - 1;
  if (text_end_ && frame_.size() == *text_end_ + 1 + kTail)
    finish_frame(heard);
  else if (frame_.size() >= static_cast<size_t>(profile_.lis.longest))
    refuse(heard, "it is too long");
}

void LisDecoder::refuse(Heard& heard, const std::string& why) {
  heard.trouble(TroubleKind::garbled,
                "A frame could not be read whole: " + why + ". It was asked for again.");
  heard.answer += kNak;
  in_frame_ = false;
}

void LisDecoder::finish_frame(Heard& heard) {
  const std::string_view frame = frame_;
  const std::string_view covered = frame.substr(1, *text_end_);
  const std::string tail = hex_digits(sum_of(covered), 2) + "\r\n";
  if (frame.substr(*text_end_ + 1) != tail) return refuse(heard, "its checksum is wrong");
  if (covered.size() < 2 || covered[0] < '0' || covered[0] > '7') return refuse(heard, "it has no number");
  const int number = covered[0] - '0';
  const bool again = accepted_ && number == (expected_ + 7) % 8;
  if (number != expected_ && !again) return refuse(heard, "it is not the next one");
  const std::string_view text = covered.substr(1, covered.size() - 2);
  const bool last = frame[*text_end_] == kEtx;
  if (!is_text(text)) return refuse(heard, "it holds bytes that are no letters, digits or signs");
  if (last && !text.ends_with('\r')) return refuse(heard, "its last record has no end");
  if (!accepted_ && text[0] != 'H') return refuse(heard, "a message begins with its header");
  in_frame_ = false;
  heard.answer += kAck;
  heard.alive = true;
  if (again) return;  // our answer was lost: acknowledged once more, not read once more
  accepted_ = true;
  expected_ = (expected_ + 1) % 8;
  take_text(text, heard);
}

// A record ends with CR; frames ended by ETB carry a part of one. A record that never ends is dropped.
void LisDecoder::take_text(std::string_view text, Heard& heard) {
  constexpr size_t kLongestRecord = 8192;
  text_ += text;
  for (size_t end = text_.find('\r'); end != std::string::npos; end = text_.find('\r')) {
    const std::string record = text_.substr(0, end);
    text_.erase(0, end + 1);
    take_record(record, heard);
  }
  if (text_.size() > kLongestRecord) {
    heard.trouble(TroubleKind::garbled, "A record has no end.");
    text_.clear();
  }
}

std::string LisDecoder::component_of(const std::vector<std::string_view>& fields, size_t field,
                                     size_t index) const {
  const std::string text = at(fields, field);
  return at(split_fields(text, component_), index);
}

std::string LisDecoder::plain(const std::string& text) const {
  std::string out;
  for (size_t i = 0; i < text.size(); ++i) {
    if (text[i] != escape_ || i + 2 >= text.size() || text[i + 2] != escape_) {
      out += text[i];
      continue;
    }
    const std::pair<char, char> kSigns[] = {{'F', field_}, {'S', component_}, {'R', repeat_}, {'E', escape_}};
    for (const auto& [name, sign] : kSigns)
      if (text[i + 1] == name) out += sign;
    i += 2;
  }
  return out;
}

void LisDecoder::take_record(const std::string& record, Heard& heard) {
  if (record.empty()) return heard.trouble(TroubleKind::garbled, "A record is empty.");
  if (record[0] == 'H') return take_header(record, heard);
  const auto fields = split_fields(record, field_);
  if (record[0] == 'P') sample_.clear();
  if (record[0] == 'O') sample_ = plain(component_of(fields, kSpecimen, 0));
  if (record[0] == 'R') take_result(fields, heard);
}

void LisDecoder::take_header(const std::string& record, Heard& heard) {
  if (record.size() < 5) return heard.trouble(TroubleKind::garbled, "A header does not name its delimiters.");
  field_ = record[1];
  repeat_ = record[2];
  component_ = record[3];
  escape_ = record[4];
  message_time_ = at(split_fields(record, field_), kMessageTime);
  sample_.clear();
}

void LisDecoder::take_result(const std::vector<std::string_view>& fields, Heard& heard) {
  if (!is_final(at(fields, kStatus))) return;
  const std::string code = plain(component_of(fields, kCode, kCodeComponent));
  const MethodRow* row = profile_.method(code);
  if (!row)
    return heard.trouble(TroubleKind::unknown_method,
                         "The instrument sent method \"" + code + "\", which its profile does not have.");
  if (plain(at(fields, kUnit)) != row->unit)
    return heard.trouble(TroubleKind::garbled,
                         "A result of " + row->analyte + " is not in the unit of its method.");
  std::string value = at(fields, kValue);
  const auto clipped = take_mark(value, at(fields, kFlag));
  const auto number = parse_value(value);
  if (!number) return heard.trouble(TroubleKind::garbled, "A result of " + row->analyte + " is no number.");
  const std::string completed = at(fields, kCompleted);
  const std::string time = completed.empty() ? at(fields, kStarted) : completed;
  const std::string known_by = time.empty() ? message_time_ : time;
  std::string once;
  if (!known_by.empty()) once = sample_ + '\n' + code + '\n' + known_by;
  tell_value(heard, *row, *number, clipped, text_or_nothing(sample_), text_or_nothing(time), once);
}

void read_lis_form(Fields& file, Profile& into) {
  Fields table = file.table("lis");
  const double seconds = table.number("frame_timeout_s");
  if (!(seconds >= 1 && seconds <= 300))
    table.fault("frame_timeout_s", "`frame_timeout_s` is out of range", "1 to 300");
  into.lis.frame_timeout = Millis(static_cast<long long>(seconds * 1000));
  into.lis.longest = table.whole("longest_frame");
  if (into.lis.longest < 16 || into.lis.longest > 64000)
    table.fault("longest_frame", "`longest_frame` is out of range", "16 to 64000 bytes, 247 by LIS1-A");
}

std::unique_ptr<Decoder> make_lis_decoder(const Profile& profile) {
  return std::make_unique<LisDecoder>(profile);
}

std::string lis_frame(int number, std::string_view text, bool last) {
  std::string covered(1, static_cast<char>('0' + number));
  covered += text;
  covered += last ? kEtx : kEtb;
  return kStx + covered + hex_digits(sum_of(covered), 2) + "\r\n";
}

}  // namespace brimline
