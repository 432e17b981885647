// SPDX-License-Identifier: GPL-3.0-or-later
#include "printing/queue.h"

#include <algorithm>
#include <memory>
#include <optional>
#include <string_view>

#include "printing/late_cups.h"

namespace brimline {
namespace {

namespace cups = late_cups;

constexpr const char* kContext = "printer";

// Every destination CUPS lists, freed at the end.
struct Destinations {
  cups_dest_t* first = nullptr;
  int count = cups::cupsGetDests(&first);
  Destinations() = default;
  Destinations(const Destinations&) = delete;
  Destinations& operator=(const Destinations&) = delete;
  ~Destinations() { cups::cupsFreeDests(count, first); }
  cups_dest_t* find(const std::string& name) const {
    return cups::cupsGetDest(name.c_str(), nullptr, count, first);
  }
};

std::string option(const cups_dest_t& destination, const char* name) {
  const char* value = cups::cupsGetOption(name, destination.num_options, destination.options);
  return value ? value : "";
}

std::vector<std::string> split(const std::string& list) {
  std::vector<std::string> out;
  for (size_t at = 0; at < list.size();) {
    const size_t end = std::min(list.find(',', at), list.size());
    if (const std::string one = list.substr(at, end - at); one != "none" && !one.empty()) out.push_back(one);
    at = end + 1;
  }
  return out;
}

// What a reason means to the clerk. The keywords are RFC 8011 section 5.4.12's; they may end in
// -report, -warning or -error.
struct ReasonRow {
  std::string_view keyword;
  const char* text;
};
constexpr ReasonRow kReasons[] = {
    {"media-empty", phrase("printer", "The printer is out of paper.")},
    {"media-needed", phrase("printer", "The printer wants paper.")},
    {"media-jam", phrase("printer", "Paper is jammed in the printer.")},
    {"cover-open", phrase("printer", "The printer's cover is open.")},
    {"door-open", phrase("printer", "The printer's door is open.")},
    {"toner-empty", phrase("printer", "The printer is out of toner.")},
    {"marker-supply-empty", phrase("printer", "The printer is out of ink or ribbon.")},
    {"offline", phrase("printer", "The printer is switched off or unplugged.")},
    {"connecting-to-device", phrase("printer", "The printer does not answer yet: is it switched on?")},
    {"timed-out", phrase("printer", "The printer does not answer: is it switched on?")},
    {"paused", phrase("printer", "The printer is paused.")},
    {"shutdown", phrase("printer", "The printer is switched off.")},
};

// Null: none that the clerk need know of.
const char* trouble_of(const std::vector<std::string>& reasons) {
  for (const ReasonRow& row : kReasons)
    for (const std::string& reason : reasons)
      if (reason.starts_with(row.keyword)) return row.text;
  return nullptr;
}

PrintError no_printer(const Words& words, const std::string& queue) {
  return {
      PrintError::Kind::no_printer,
      queue.empty()
          ? words.say(kContext, phrase("printer",
                                       "No printer is set up on this machine. The sheet can be "
                                       "saved as a file."))
          : words.say(kContext, phrase("printer", "There is no printer named %1 on this machine."), {queue})};
}

PrintError refused(const Words& words, const std::string& queue) {
  return {PrintError::Kind::refused,
          words.say(kContext, phrase("printer", "The printer %1 did not take the sheet: %2"),
                    {queue, cups::cupsLastErrorString()})};
}

// A printer that is away leaves no reason behind, only a message of the service's backends (the texts of CUPS
// 2.4's backends; cupsd speaks English unless it is told otherwise).
bool says_away(std::string_view message) {
  constexpr std::string_view kAway[] = {"unavailable at this time", "unreachable", "not responding",
                                        "Unable to locate printer", "is not connected"};
  return std::any_of(std::begin(kAway), std::end(kAway),
                     [&](std::string_view text) { return message.find(text) != std::string_view::npos; });
}

// Its IPP state, and what the printer's backend last said while it was at work.
struct ServiceReport {
  int state = 0;
  std::string message;
};

// Nothing where the service does not know the job.
std::optional<ServiceReport> ipp_state(const PrintJob& job) {
  const std::unique_ptr<ipp_t, void (*)(ipp_t*)> answer(
      [&] {
        ipp_t* request = cups::ippNewRequest(IPP_OP_GET_JOB_ATTRIBUTES);
        const std::string uri = "ipp://localhost/jobs/" + std::to_string(job.id);
        cups::ippAddString(request, IPP_TAG_OPERATION, IPP_TAG_URI, "job-uri", nullptr, uri.c_str());
        cups::ippAddString(request, IPP_TAG_OPERATION, IPP_TAG_NAME, "requesting-user-name", nullptr,
                           cups::cupsUser());
        return cups::cupsDoRequest(CUPS_HTTP_DEFAULT, request, "/");
      }(),
      [](ipp_t* one) { cups::ippDelete(one); });
  if (!answer) return std::nullopt;
  ipp_attribute_t* state = cups::ippFindAttribute(answer.get(), "job-state", IPP_TAG_ENUM);
  if (!state) return std::nullopt;
  ServiceReport out{cups::ippGetInteger(state, 0), {}};
  ipp_attribute_t* message = cups::ippFindAttribute(answer.get(), "job-printer-state-message", IPP_TAG_TEXT);
  if (const char* text = message ? cups::ippGetString(message, 0, nullptr) : nullptr) out.message = text;
  return out;
}

}  // namespace

std::vector<PrintQueue> print_queues() {
  const Destinations all;
  std::vector<PrintQueue> out;
  for (int i = 0; all.first && i < all.count; ++i) {
    const cups_dest_t& one = all.first[i];
    if (one.instance) continue;
    PrintQueue queue{one.name, option(one, "printer-info"), one.is_default != 0, true};
    if (queue.description.empty()) queue.description = queue.name;
    queue.accepting = option(one, "printer-is-accepting-jobs") != "false";
    out.push_back(std::move(queue));
  }
  std::stable_sort(out.begin(), out.end(),
                   [](const auto& a, const auto& b) { return a.is_default > b.is_default; });
  return out;
}

bool is_over(JobState state) {
  return state == JobState::done || state == JobState::cancelled || state == JobState::failed;
}

tl::expected<PrintJob, PrintError> send_to_queue(const std::string& queue, const QByteArray& pdf,
                                                 const std::string& title, const Words& words) {
  const Destinations all;
  if (all.count == 0) return tl::unexpected(no_printer(words, {}));
  const cups_dest_t* found = all.find(queue);
  if (!found) return tl::unexpected(no_printer(words, queue));
  if (option(*found, "printer-is-accepting-jobs") == "false")
    return tl::unexpected(PrintError{
        PrintError::Kind::refused,
        words.say(kContext, phrase("printer", "The printer %1 takes no jobs at present."), {queue})});
  // No options: a network printer that does not know one (two sides, say) cancels the whole job.
  const int id = cups::cupsCreateJob(CUPS_HTTP_DEFAULT, queue.c_str(), title.c_str(), 0, nullptr);
  if (id == 0) return tl::unexpected(refused(words, queue));
  const PrintJob job{queue, id};
  const bool sent = cups::cupsStartDocument(CUPS_HTTP_DEFAULT, queue.c_str(), id, title.c_str(),
                                            "application/pdf", 1) == HTTP_STATUS_CONTINUE &&
                    cups::cupsWriteRequestData(CUPS_HTTP_DEFAULT, pdf.constData(),
                                               static_cast<size_t>(pdf.size())) == HTTP_STATUS_CONTINUE &&
                    cups::cupsFinishDocument(CUPS_HTTP_DEFAULT, queue.c_str()) == IPP_STATUS_OK;
  if (sent) return job;
  PrintError error = refused(words, queue);
  cancel_job(job);
  return tl::unexpected(std::move(error));
}

JobReport job_report(const PrintJob& job, const Words& words) {
  const auto state = ipp_state(job);
  if (!state)
    return {JobState::unknown,
            {},
            words.say(kContext, phrase("printer", "The print service does not answer for this sheet."))};
  const Destinations all;
  const cups_dest_t* printer = all.find(job.queue);
  if (!printer) return read_report(state->state, false, {}, words);
  const bool stopped = option(*printer, "printer-state") == std::to_string(IPP_PSTATE_STOPPED);
  std::vector<std::string> reasons = split(option(*printer, "printer-state-reasons"));
  if (!trouble_of(reasons) && says_away(state->message)) reasons.emplace_back("timed-out");
  return read_report(state->state, stopped, std::move(reasons), words);
}

bool cancel_job(const PrintJob& job) {
  return cups::cupsCancelJob(job.queue.c_str(), job.id) == 1;
}

JobReport read_report(int ipp_job_state, bool printer_stopped, std::vector<std::string> reasons,
                      const Words& words) {
  const char* trouble = trouble_of(reasons);
  JobReport out;
  out.reasons = std::move(reasons);
  const auto say = [&](JobState state, const char* text) {
    out.state = state;
    out.text = words.say(kContext, text);
    return out;
  };
  switch (ipp_job_state) {
    case IPP_JSTATE_COMPLETED:
      return say(JobState::done, phrase("printer", "The sheet is printed."));
    case IPP_JSTATE_CANCELED:
      return say(JobState::cancelled, phrase("printer", "The sheet was cancelled. Print it again?"));
    case IPP_JSTATE_ABORTED:
      return say(JobState::failed, phrase("printer", "The printer gave the sheet up. Print it again?"));
    case IPP_JSTATE_PENDING:
    case IPP_JSTATE_HELD:
    case IPP_JSTATE_PROCESSING:
    case IPP_JSTATE_STOPPED:
      break;
    default:
      return say(JobState::unknown, phrase("printer", "The print service says nothing of this sheet."));
  }
  if (printer_stopped || ipp_job_state == IPP_JSTATE_STOPPED)
    return say(JobState::stopped, trouble ? trouble : phrase("printer", "The printer has stopped."));
  const bool at_work = ipp_job_state == IPP_JSTATE_PROCESSING;
  // Out of paper and the like keep a job at work for ever: that is a stop to whoever waits for it.
  if (trouble) return say(at_work ? JobState::stopped : JobState::waiting, trouble);
  if (at_work) return say(JobState::printing, phrase("printer", "The sheet is printing."));
  return say(JobState::waiting, phrase("printer", "The sheet waits for the printer."));
}

}  // namespace brimline
