// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
// Printing through a real print service: CUPS's own, started here with a folder and a socket of its
// own, whose printers write what they get into files.
#include "core/record/diaries.h"
#include "print/queue.h"
#include "support/print_service.h"

#include <gtest/gtest.h>

#include <atomic>
#include <chrono>
#include <filesystem>
#include <fstream>
#include <functional>
#include <poll.h>
#include <sys/socket.h>
#include <sys/un.h>
#include <thread>
#include <unistd.h>

namespace evenfall {
namespace {

namespace fs = std::filesystem;
using namespace std::chrono_literals;
using print::Paper;
using print::Printer;
using print::PrinterReason;
using test::some_printers;
using test::within;

void write(const fs::path& path, const std::string& text)
{
    std::ofstream(path, std::ios::binary) << text;
}

int listening_at(const std::string& path)
{
    const int socket = ::socket(AF_UNIX, SOCK_STREAM | SOCK_CLOEXEC, 0);
    sockaddr_un address{};
    address.sun_family = AF_UNIX;
    EXPECT_LT(path.size(), sizeof address.sun_path);
    path.copy(address.sun_path, sizeof address.sun_path - 1);
    EXPECT_EQ(::bind(socket, reinterpret_cast<sockaddr*>(&address), sizeof address), 0);
    EXPECT_EQ(::listen(socket, 8), 0);
    return socket;
}

class Printing : public testing::Test {
  protected:
    test::TemporaryDirectory temporary;
    const fs::path folder = temporary.path();
    test::PrintServer server{folder};
    const print::PrintService service = server.service();
    const std::string pdf = "%PDF-1.7\n" + std::string(100'000, 'x') + "\n%%EOF\n";

    void start(const std::string& printers) { ASSERT_TRUE(server.start(printers)) << server.log(); }
    void TearDown() override
    {
        if (HasFailure())
            std::printf("%s\n", server.log().c_str());
    }
    void job_ends_as(print::JobState::State wanted, const std::string& printer, long job)
    {
        const bool over = within(30s, [&] {
            const auto state = print::job_state(printer, job, service);
            return state && state->over();
        });
        ASSERT_TRUE(over);
        EXPECT_EQ(print::job_state(printer, job, service)->state, wanted);
    }
    /// The problem there must be, with its code.
    template <class T>
    static Problem problem(const Result<T>& result, const std::string& code, Fault fault)
    {
        EXPECT_FALSE(result) << "no " << code;
        if (result)
            return {};
        const Problem out = result.problems()[0];
        EXPECT_EQ(out.code, code) << out.text;
        EXPECT_EQ(out.fault, fault);
        EXPECT_FALSE(out.text.empty());
        return out;
    }
};

TEST_F(Printing, ListsThePrintersWithTheirState)
{
    start(some_printers);
    const std::vector<Printer> found = print::printers(service).value();
    std::map<std::string, Printer> by_name;
    for (const Printer& one : found)
        by_name[one.name] = one;
    for (const char* name : {"front", "still", "full", "stuck"}) // "closed" only the one who may
        ASSERT_TRUE(by_name.contains(name)) << name;
    const Printer& front = by_name["front"];
    EXPECT_EQ(front.description, "Front desk");
    EXPECT_EQ(front.location, "First floor, left");
    EXPECT_EQ(front.state, Printer::State::idle);
    EXPECT_TRUE(front.accepting);
    EXPECT_TRUE(front.reasons.empty());
    for (const Printer& one : found)
        EXPECT_EQ(one.is_default, one.name == "front") << one.name;
    EXPECT_FALSE(by_name["full"].accepting);
    const Printer& still = by_name["still"];
    EXPECT_EQ(still.state, Printer::State::stopped);
    using Severity = PrinterReason::Severity;
    for (const PrinterReason& wanted : {PrinterReason{"media-empty", Severity::error},
                                        {"toner-low", Severity::warning},
                                        {"other", Severity::report}})
        EXPECT_NE(std::find(still.reasons.begin(), still.reasons.end(), wanted),
                  still.reasons.end())
            << wanted.id;
}

TEST_F(Printing, WhatComesOutIsThePdfAndTheJobSaysNothingOfThePatient)
{
    start(some_printers);
    const long job = print::print_pdf(pdf, "front", Paper::letter, 3, service).value();
    EXPECT_GT(job, 0);
    job_ends_as(print::JobState::State::printed, "front", job);
    EXPECT_TRUE(test::slurp((folder / "came").string()) == pdf);
    std::ifstream told(folder / "told");
    std::vector<std::string> lines; // job, user, title, copies, options, file
    for (std::string line; std::getline(told, line);)
        lines.push_back(line);
    ASSERT_GE(lines.size(), 5u);
    EXPECT_EQ(lines[0], std::to_string(job));
    EXPECT_EQ(lines[2], print::job_title);
    EXPECT_EQ(lines[3], "3");
    EXPECT_NE(lines[4].find("media=na_letter_8.5x11in"), std::string::npos) << lines[4];
    EXPECT_NE(lines[4].find("print-scaling=none"), std::string::npos) << lines[4];

    fs::remove(folder / "came");
    job_ends_as(print::JobState::State::printed, "front",
                print::print_pdf(pdf, "front", Paper::a4, 1, service).value());
    EXPECT_NE(test::slurp((folder / "told").string()).find("media=iso_a4_210x297mm"),
              std::string::npos);
    EXPECT_TRUE(fs::exists(folder / "came"));
}

TEST_F(Printing, AJobThatWaitsSaysWhatFor)
{
    start(some_printers);
    const long job = print::print_pdf(pdf, "stuck", Paper::a4, 1, service).value();
    const PrinterReason stuck{"media-jam", PrinterReason::Severity::error};
    const bool said = within(20s, [&] {
        const auto state = print::job_state("stuck", job, service);
        return state && state->state == print::JobState::State::printing &&
               state->reasons == std::vector{stuck};
    });
    EXPECT_TRUE(said);
    write(folder / "cleared", "");
    job_ends_as(print::JobState::State::printed, "stuck", job);
    problem(print::job_state("stuck", job + 1000, service), "no_job", Fault::refused);
}

TEST_F(Printing, AStoppedPrinterIsNamedWithItsReasonAndGetsNothing)
{
    start(some_printers);
    const Problem found = problem(print::print_pdf(pdf, "still", Paper::a4, 1, service),
                                  "printer_stopped", Fault::refused);
    EXPECT_NE(found.text.find("\"still\""), std::string::npos);
    EXPECT_NE(found.text.find("media-empty"), std::string::npos) << found.text;
    problem(print::job_state("still", 1, service), "no_job", Fault::refused);
}

TEST_F(Printing, AQueueThatTakesNoJobsOrRefusesThisOneSaysSo)
{
    start(some_printers);
    problem(print::print_pdf(pdf, "full", Paper::a4, 1, service), "not_accepted", Fault::refused);
    const Problem found = problem(print::print_pdf(pdf, "closed", Paper::a4, 1, service),
                                  "not_accepted", Fault::refused);
    EXPECT_NE(found.text.find("did not take the job"), std::string::npos) << found.text;
    EXPECT_FALSE(fs::exists(folder / "came"));
}

TEST_F(Printing, APrinterThatIsNotThereIsNamed)
{
    start(some_printers);
    for (const std::string name : {"nowhere", "", "a/b", "front desk", "../front"})
        problem(print::print_pdf(pdf, name, Paper::a4, 1, service), "no_printer", Fault::refused);
}

TEST_F(Printing, AServiceWithoutAPrinterIsNoEmptyList)
{
    start("");
    problem(print::printers(service), "no_printer", Fault::refused);
    problem(print::print_pdf(pdf, "front", Paper::a4, 1, service), "no_printer", Fault::refused);
}

TEST_F(Printing, WithoutAServiceAllSayThatItIsMissing)
{
    const Problem found = problem(print::printers(service), "no_print_service", Fault::io);
    EXPECT_NE(found.text.find(service.server), std::string::npos) << found.text;
    problem(print::print_pdf(pdf, "front", Paper::a4, 1, service), "no_print_service", Fault::io);
    problem(print::job_state("front", 1, service), "no_print_service", Fault::io);
    // Nobody listens at this port of the machine itself: it is reserved (RFC 6335, 6).
    problem(print::printers({"localhost:0", 2s}), "no_print_service", Fault::io);
}

TEST_F(Printing, BadCopiesAndWhatIsNoPdfAreRefusedBeforeAnyoneIsAsked)
{
    for (const int copies : {0, -1, print::most_copies + 1})
        problem(print::print_pdf(pdf, "front", Paper::a4, copies, service), "bad_copies",
                Fault::refused);
    problem(print::print_pdf("", "front", Paper::a4, 1, service), "not_pdf", Fault::refused);
    problem(print::print_pdf("<html>", "front", Paper::a4, 1, service), "not_pdf", Fault::refused);
}

/// What stands at the socket in place of a print service: gets each connection, as soon as it is
/// made.
class Impostor {
  public:
    Impostor(const std::string& path, std::function<void(int)> answer)
        : listening_(listening_at(path)), thread_([this, answer = std::move(answer)] {
              while (!over_) {
                  pollfd one{listening_, POLLIN, 0};
                  if (::poll(&one, 1, 50) != 1)
                      continue;
                  const int connection = ::accept4(listening_, nullptr, nullptr, SOCK_CLOEXEC);
                  answer(connection);
                  open_.push_back(connection);
              }
              for (const int connection : open_)
                  ::close(connection);
          })
    {
    }
    ~Impostor()
    {
        over_ = true;
        thread_.join();
        ::close(listening_);
    }

  private:
    int listening_;
    std::atomic<bool> over_ = false;
    std::vector<int> open_;
    std::thread thread_;
};

void send(int connection, const std::string& text)
{
    EXPECT_EQ(::send(connection, text.data(), text.size(), MSG_NOSIGNAL),
              static_cast<ssize_t>(text.size()));
}

TEST_F(Printing, AServiceThatHangsIsGivenUp)
{
    const std::vector<std::pair<std::string, std::function<void(int)>>> all{
        {"says nothing", [](int) {}},
        {"hangs up", [](int connection) { ::shutdown(connection, SHUT_RDWR); }},
        {"goes on and stops",
         [](int connection) { send(connection, "HTTP/1.1 100 Continue\r\n\r\n"); }},
        {"begins to answer",
         [](int connection) {
             send(connection, "HTTP/1.1 200 OK\r\nContent-Type: application/ipp\r\n"
                              "Content-Length: 500\r\n\r\n\x02\x01");
         }},
        {"says something else",
         [](int connection) {
             send(connection, "HTTP/1.1 200 OK\r\nContent-Length: 5\r\n\r\nhello");
         }},
        {"asks for a password",
         [](int connection) {
             send(connection, "HTTP/1.1 401 Unauthorized\r\nWWW-Authenticate: Basic realm=\"x\"\r\n"
                              "Content-Length: 0\r\n\r\n");
         }},
    };
    const print::PrintService hangs{service.server, 500ms};
    for (const auto& [name, answer] : all) {
        SCOPED_TRACE(name);
        fs::remove(service.server);
        const Impostor impostor(service.server, answer);
        for (const auto& call : std::vector<std::function<Problems()>>{
                 [&] { return print::printers(hangs).problems(); },
                 [&] { return print::print_pdf(pdf, "front", Paper::a4, 1, hangs).problems(); },
                 [&] { return print::job_state("front", 1, hangs).problems(); }}) {
            const auto begin = std::chrono::steady_clock::now();
            const Problems problems = call();
            EXPECT_LT(std::chrono::steady_clock::now() - begin, 3s);
            ASSERT_EQ(problems.size(), 1u);
            EXPECT_EQ(problems[0].code, "no_print_answer") << problems[0].text;
        }
    }
}

TEST(PrinterReasons, AreThereOnceEachAndEndWithTheOneForAllOthers)
{
    const std::set<std::string> ids(print::printer_reasons.begin(), print::printer_reasons.end());
    EXPECT_EQ(ids.size(), print::printer_reasons.size());
    EXPECT_STREQ(print::printer_reasons.back(), "other");
}

} // namespace
} // namespace evenfall
