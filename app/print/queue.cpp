// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#include "print/queue.h"

#include <cups/cups.h>

#include <algorithm>
#include <array>
#include <charconv>
#include <cstring>
#include <memory>
#include <optional>

namespace evenfall::print {
namespace {

using std::chrono::steady_clock;

std::string listed(const std::vector<PrinterReason>& all)
{
    std::string out;
    for (const PrinterReason& one : all)
        out += (out.empty() ? "" : ", ") + one.id;
    return out.empty() ? printer_reasons.back() : out;
}

PrinterReason reason_of(std::string keyword)
{
    using Severity = PrinterReason::Severity;
    PrinterReason out;
    constexpr std::array ends{std::pair{"-report", Severity::report},
                              std::pair{"-warning", Severity::warning},
                              std::pair{"-error", Severity::error}};
    for (const auto& [end, severity] : ends)
        if (keyword.ends_with(end)) {
            out.severity = severity;
            keyword.resize(keyword.size() - std::strlen(end));
        }
    const bool known = std::any_of(printer_reasons.begin(), printer_reasons.end(),
                                   [&](const auto& one) { return keyword == one; });
    out.id = known ? keyword : printer_reasons.back();
    return out;
}

struct Closes {
    void operator()(http_t* http) const { httpClose(http); }
    void operator()(ipp_t* ipp) const { ippDelete(ipp); }
};
using Http = std::unique_ptr<http_t, Closes>;
using Ipp = std::unique_ptr<ipp_t, Closes>;

Problem not_there(const std::string& server)
{
    return {Fault::io, "no_print_service", "",
            "no print service answers at \"" + server +
                "\"; right would be that CUPS is installed and runs on this machine"};
}

Problem unknown_printer(const std::string& printer)
{
    return {Fault::refused, "no_printer", "",
            "the print service has no printer \"" + printer +
                "\"; right would be one of those that it lists"};
}

/// What came back, or why nothing did.
struct Answer {
    Ipp ipp;
    ipp_status_t status = IPP_STATUS_ERROR_INTERNAL;
    std::string text; ///< what the service says about the status
    bool fine() const { return ipp && status >= 0 && status < IPP_STATUS_REDIRECTION_OTHER_SITE; }
};

Problem no_answer(const Answer& answer)
{
    return {Fault::io, "no_print_answer", "",
            "the print service did not do what it was asked: " +
                (answer.text.empty() ? ippErrorString(answer.status) : answer.text) +
                "; right would be to try once more, and else to look at CUPS's log"};
}

class Connection {
  public:
    explicit Connection(const PrintService& where)
        : until_(steady_clock::now() + where.patience),
          server_(where.server.empty() ? cupsServer() : where.server)
    {
        // A service that asks for a password gets none: nobody here could type it.
        cupsSetPasswordCB2([](const char*, http_t*, const char*, const char*,
                              void*) -> const char* { return nullptr; },
                           nullptr);
        std::string host = server_;
        int port = ippPort();
        if (const std::size_t colon = host.rfind(':');
            !host.starts_with('/') && colon != std::string::npos) {
            std::from_chars(host.data() + colon + 1, host.data() + host.size(), port);
            host.resize(colon);
        }
        http_.reset(httpConnect2(host.c_str(), port, nullptr, AF_UNSPEC, cupsEncryption(), 1,
                                 static_cast<int>(where.patience.count()), nullptr));
        // Asked after each slice of waiting whether to wait on.
        constexpr double slice = 0.1; // seconds
        if (http_)
            httpSetTimeout(
                http_.get(), slice,
                [](http_t*, void* self) -> int {
                    return steady_clock::now() < static_cast<Connection*>(self)->until_;
                },
                this);
    }
    Connection(const Connection&) = delete;
    Connection& operator=(const Connection&) = delete;

    bool open() const { return http_ != nullptr; }
    const std::string& server() const { return server_; }

    static Ipp request(ipp_op_t operation)
    {
        Ipp out(ippNewRequest(operation));
        ippAddString(out.get(), IPP_TAG_OPERATION, IPP_TAG_NAME, "requesting-user-name", nullptr,
                     cupsUser());
        return out;
    }
    static Ipp request(ipp_op_t operation, const std::string& printer)
    {
        Ipp out = request(operation);
        std::array<char, HTTP_MAX_URI> uri{};
        httpAssembleURIf(HTTP_URI_CODING_ALL, uri.data(), static_cast<int>(uri.size()), "ipp",
                         nullptr, "localhost", 0, "/printers/%s", printer.c_str());
        ippAddString(out.get(), IPP_TAG_OPERATION, IPP_TAG_URI, "printer-uri", nullptr, uri.data());
        return out;
    }
    static void ask_for(const Ipp& request, std::initializer_list<const char*> names)
    {
        ippAddStrings(request.get(), IPP_TAG_OPERATION, IPP_TAG_KEYWORD, "requested-attributes",
                      static_cast<int>(names.size()), nullptr, names.begin());
    }

    Answer send(Ipp request, const std::string& resource = "/", std::string_view document = {})
    {
        const std::size_t size = ippLength(request.get()) + document.size();
        http_status_t status = cupsSendRequest(http_.get(), request.get(), resource.c_str(), size);
        for (std::size_t at = 0; status == HTTP_STATUS_CONTINUE && at < document.size();) {
            const std::string_view piece = document.substr(at, 32768);
            status = cupsWriteRequestData(http_.get(), piece.data(), piece.size());
            at += piece.size();
        }
        Answer out;
        // An error already told is read as well: the service says there why.
        out.ipp.reset(cupsGetResponse(http_.get(), resource.c_str()));
        out.status = out.ipp ? ippGetStatusCode(out.ipp.get()) : cupsLastError();
        if (const char* text = cupsLastErrorString())
            out.text = text;
        if (!out.ipp && steady_clock::now() >= until_)
            out.text = "it has stopped answering";
        return out;
    }

  private:
    Http http_;
    steady_clock::time_point until_;
    std::string server_;
};

std::string text_of(ipp_attribute_t* attribute)
{
    const char* text = ippGetString(attribute, 0, nullptr);
    return text ? text : "";
}

void read(Printer& printer, ipp_attribute_t* attribute)
{
    const std::string_view name = ippGetName(attribute);
    if (name == "printer-name")
        printer.name = text_of(attribute);
    else if (name == "printer-info")
        printer.description = text_of(attribute);
    else if (name == "printer-location")
        printer.location = text_of(attribute);
    else if (name == "printer-is-accepting-jobs")
        printer.accepting = ippGetBoolean(attribute, 0) != 0;
    else if (name == "printer-state")
        printer.state = ippGetInteger(attribute, 0) == IPP_PSTATE_STOPPED ? Printer::State::stopped
                        : ippGetInteger(attribute, 0) == IPP_PSTATE_PROCESSING
                            ? Printer::State::printing
                            : Printer::State::idle;
    else if (name == "printer-state-reasons")
        for (int i = 0; i < ippGetCount(attribute); ++i)
            if (const char* keyword = ippGetString(attribute, i, nullptr);
                keyword && std::string_view(keyword) != "none") {
                const PrinterReason reason = reason_of(keyword);
                if (std::find(printer.reasons.begin(), printer.reasons.end(), reason) ==
                    printer.reasons.end())
                    printer.reasons.push_back(reason);
            }
}

constexpr std::initializer_list<const char*> of_a_printer{
    "printer-name",  "printer-info",          "printer-location", "printer-is-accepting-jobs",
    "printer-state", "printer-state-reasons",
};

std::vector<Printer> printers_in(const Answer& answer)
{
    std::vector<Printer> out;
    bool inside = false; // of a group; between two is an attribute without a name
    for (ipp_attribute_t* at = ippFirstAttribute(answer.ipp.get()); at;
         at = ippNextAttribute(answer.ipp.get())) {
        const bool of_printer = ippGetGroupTag(at) == IPP_TAG_PRINTER && ippGetName(at);
        if (of_printer && !inside)
            out.emplace_back();
        inside = of_printer;
        if (inside)
            read(out.back(), at);
    }
    return out;
}

Result<Printer> look_at(Connection& service, const std::string& printer)
{
    Ipp request = Connection::request(IPP_OP_GET_PRINTER_ATTRIBUTES, printer);
    Connection::ask_for(request, of_a_printer);
    const Answer answer = service.send(std::move(request));
    if (answer.status == IPP_STATUS_ERROR_NOT_FOUND)
        return unknown_printer(printer);
    const std::vector<Printer> found = answer.fine() ? printers_in(answer) : std::vector<Printer>{};
    if (found.empty())
        return no_answer(answer);
    return found[0];
}

} // namespace

Result<std::vector<Printer>> printers(const PrintService& where)
{
    Connection service(where);
    if (!service.open())
        return not_there(service.server());
    Ipp request = Connection::request(IPP_OP_CUPS_GET_PRINTERS);
    Connection::ask_for(request, of_a_printer);
    const Answer answer = service.send(std::move(request));
    // CUPS says "not found" where there is none.
    if (!answer.fine() && answer.status != IPP_STATUS_ERROR_NOT_FOUND)
        return no_answer(answer);
    std::vector<Printer> out = answer.ipp ? printers_in(answer) : std::vector<Printer>{};
    if (out.empty())
        return Problem{Fault::refused, "no_printer", "",
                       "the print service has no printer; right would be to set one up in CUPS"};
    request = Connection::request(IPP_OP_CUPS_GET_DEFAULT);
    Connection::ask_for(request, {"printer-name"});
    const Answer chosen = service.send(std::move(request));
    if (!chosen.fine() && chosen.status != IPP_STATUS_ERROR_NOT_FOUND)
        return no_answer(chosen);
    if (chosen.fine())
        for (const Printer& one : printers_in(chosen))
            for (Printer& printer : out)
                printer.is_default = printer.is_default || printer.name == one.name;
    return out;
}

Result<long> print_pdf(std::string_view pdf, const std::string& printer, Paper paper, int copies,
                       const PrintService& where)
{
    if (copies < 1 || copies > most_copies)
        return Problem{Fault::refused, "bad_copies", "",
                       std::to_string(copies) + " copies cannot be printed; right would be 1 to " +
                           std::to_string(most_copies)};
    if (!pdf.starts_with("%PDF-"))
        return Problem{Fault::refused, "not_pdf", "", "what was to be printed is not a PDF"};
    Connection service(where);
    if (!service.open())
        return not_there(service.server());
    const Result<Printer> found = look_at(service, printer);
    if (!found)
        return found.problems();
    if (found->state == Printer::State::stopped)
        return Problem{Fault::refused, "printer_stopped", "",
                       "the printer \"" + printer + "\" is stopped: " + listed(found->reasons) +
                           "; right would be to see to it and start it again"};
    if (!found->accepting)
        return Problem{Fault::refused, "not_accepted", "",
                       "the printer \"" + printer +
                           "\" takes no jobs now; right would be to let it, or another printer"};

    Ipp request = Connection::request(IPP_OP_PRINT_JOB, printer);
    ipp_t* ipp = request.get();
    ippAddString(ipp, IPP_TAG_OPERATION, IPP_TAG_NAME, "job-name", nullptr, job_title);
    ippAddString(ipp, IPP_TAG_OPERATION, IPP_TAG_MIMETYPE, "document-format", nullptr,
                 "application/pdf");
    ippAddInteger(ipp, IPP_TAG_JOB, IPP_TAG_INTEGER, "copies", copies);
    // Names of PWG 5101.1.
    ippAddString(ipp, IPP_TAG_JOB, IPP_TAG_KEYWORD, "media", nullptr,
                 paper == Paper::a4 ? "iso_a4_210x297mm" : "na_letter_8.5x11in");
    ippAddString(ipp, IPP_TAG_JOB, IPP_TAG_KEYWORD, "print-scaling", nullptr, "none");
    const Answer answer = service.send(std::move(request), "/printers/" + printer, pdf);
    if (!answer.fine()) {
        if (!answer.ipp && answer.status == IPP_STATUS_ERROR_INTERNAL)
            return no_answer(answer);
        if (!answer.ipp && answer.status == IPP_STATUS_ERROR_SERVICE_UNAVAILABLE)
            return no_answer(answer);
        return Problem{Fault::refused, "not_accepted", "",
                       "the print service did not take the job: " +
                           (answer.text.empty() ? ippErrorString(answer.status) : answer.text) +
                           "; right would be to let it, or another printer"};
    }
    ipp_attribute_t* id = ippFindAttribute(answer.ipp.get(), "job-id", IPP_TAG_INTEGER);
    if (!id)
        return no_answer(answer);
    return static_cast<long>(ippGetInteger(id, 0));
}

Result<JobState> job_state(const std::string& printer, long job, const PrintService& where)
{
    Connection service(where);
    if (!service.open())
        return not_there(service.server());
    Ipp request = Connection::request(IPP_OP_GET_JOB_ATTRIBUTES, printer);
    ippAddInteger(request.get(), IPP_TAG_OPERATION, IPP_TAG_INTEGER, "job-id",
                  static_cast<int>(job));
    Connection::ask_for(request, {"job-state"});
    const Answer answer = service.send(std::move(request));
    if (answer.status == IPP_STATUS_ERROR_NOT_FOUND)
        return Problem{Fault::refused, "no_job", "",
                       "the print service does not know the job " + std::to_string(job) +
                           "; it may have been over for long"};
    ipp_attribute_t* state =
        answer.fine() ? ippFindAttribute(answer.ipp.get(), "job-state", IPP_TAG_ENUM) : nullptr;
    if (!state)
        return no_answer(answer);
    JobState out;
    switch (ippGetInteger(state, 0)) {
    case IPP_JSTATE_PENDING: out.state = JobState::State::waiting; break;
    case IPP_JSTATE_HELD: out.state = JobState::State::held; break;
    case IPP_JSTATE_PROCESSING: out.state = JobState::State::printing; break;
    case IPP_JSTATE_STOPPED: out.state = JobState::State::stopped; break;
    case IPP_JSTATE_CANCELED: out.state = JobState::State::cancelled; break;
    case IPP_JSTATE_ABORTED: out.state = JobState::State::aborted; break;
    case IPP_JSTATE_COMPLETED: out.state = JobState::State::printed; break;
    default: return no_answer(answer);
    }
    if (!out.over()) {
        const Result<Printer> found = look_at(service, printer);
        if (!found)
            return found.problems();
        out.reasons = found->reasons;
    }
    return out;
}

} // namespace evenfall::print
