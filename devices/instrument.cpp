// SPDX-License-Identifier: GPL-3.0-or-later
#include "devices/instrument.h"

namespace brimline {
namespace {

constexpr int kRetryMs = 500;  // a look at the path, and an attempt only where it is there

Trouble trouble_of(OpenFault fault) {
  switch (fault) {
    case OpenFault::absent:
      return {TroubleKind::unplugged, "The instrument's port is not there; it is looked for twice a second."};
    case OpenFault::busy:
      return {TroubleKind::busy, "The instrument's port is in use by another program, or not ours to open."};
    case OpenFault::refused:
      break;
  }
  return {TroubleKind::unplugged, "The instrument's port cannot be opened as a serial line."};
}

}  // namespace

Instrument::Instrument(Profile profile, std::unique_ptr<Wire> wire, std::function<Instant()> now,
                       QObject* parent)
    : QObject(parent),
      profile_(std::move(profile)),
      wire_(std::move(wire)),
      now_(std::move(now)),
      session_(profile_) {
  elapsed_.start();
  wake_.setSingleShot(true);
  wake_.setTimerType(Qt::PreciseTimer);
  retry_.setInterval(kRetryMs);
  connect(&wake_, &QTimer::timeout, this, &Instrument::on_wake);
  connect(&retry_, &QTimer::timeout, this, &Instrument::try_open);
  connect(wire_.get(), &Wire::received, this, &Instrument::on_received);
  connect(wire_.get(), &Wire::lost, this, &Instrument::on_lost);
  connect(wire_.get(), &Wire::finished, this, &Instrument::finished);
}

void Instrument::start() {
  try_open();
}

void Instrument::try_open() {
  const auto fault = wire_->open();
  if (fault) {
    if (told_fault_ != fault && !(lost_ && *fault == OpenFault::absent)) tell_one(trouble_of(*fault));
    told_fault_ = fault;
    lost_ = true;
    retry_.start();
    return;
  }
  retry_.stop();
  open_ = true;
  log(WireEvent::opened);
  if (std::exchange(lost_, false)) tell_one(BackAgain{});
  told_fault_.reset();
  tell(session_.opened(elapsed()));
}

void Instrument::on_received(const QByteArray& bytes) {
  const std::string_view view(bytes.constData(), static_cast<size_t>(bytes.size()));
  log(WireEvent::in, view);
  tell(session_.received(view, elapsed()));
}

void Instrument::on_lost() {
  open_ = false;
  lost_ = true;
  wake_.stop();
  log(WireEvent::closed);
  tell_one(Trouble{TroubleKind::unplugged, "The instrument's line was pulled out or its port is gone."});
  retry_.start();
}

void Instrument::on_wake() {
  tell(session_.waited(elapsed()));
}

void Instrument::tell(Said said) {
  if (!said.answer.empty() && open_) {
    log(WireEvent::out, said.answer);
    wire_->send(QByteArray::fromStdString(said.answer));
  }
  for (auto& one : said.told) std::visit([this](auto& what) { tell_one(std::move(what)); }, one);
  schedule();
}

void Instrument::tell_one(std::variant<InstrumentReading, Trouble, BackAgain> what) {
  emit happened(Happening{now_(), profile_.id, std::move(what)});
}

void Instrument::log(WireEvent event, std::string_view bytes) {
  if (recorder_ && !recorder_->write(elapsed(), event, bytes)) recorder_.reset();
}

void Instrument::schedule() {
  const auto wake = open_ ? session_.wake() : std::nullopt;
  if (!wake) return wake_.stop();
  wake_.start(std::max<int>(0, static_cast<int>((*wake - elapsed()).count())));
}

}  // namespace brimline
