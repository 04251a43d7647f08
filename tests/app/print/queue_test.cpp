// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
// Printing through a real print service: CUPS's own, started here with a folder and a socket of its
// own, whose printers write what they get into files.
#include "core/record/diaries.h"
#include "print/queue.h"

#include <gtest/gtest.h>

#include <atomic>
#include <chrono>
#include <csignal>
#include <fcntl.h>
#include <filesystem>
#include <fstream>
#include <functional>
#include <poll.h>
#include <sys/socket.h>
#include <sys/un.h>
#include <sys/wait.h>
#include <thread>
#include <unistd.h>

namespace evenfall {
namespace {

namespace fs = std::filesystem;
using namespace std::chrono_literals;
using print::Paper;
using print::Printer;
using print::PrinterReason;

constexpr const char* service_program = "/usr/sbin/cupsd";

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

/// Where a printer sends its pages: CUPS runs it for each job. It keeps the bytes and what it was
/// told, for "stuck" only once somebody has cleared the paper.
constexpr const char* tray = R"(#!/bin/sh
[ $# -eq 0 ] && exit 0
place="@FOLDER@"
if [ "$DEVICE_URI" = tray:/stuck ]; then
    echo "STATE: +media-jam-error" >&2
    while [ ! -e "$place/cleared" ]; do sleep 0.1; done
    echo "STATE: -media-jam-error" >&2
fi
printf '%s\n' "$@" >"$place/told"
cat "${6:--}" >"$place/came.part" && mv "$place/came.part" "$place/came"
)";

constexpr const char* some_printers = R"(<DefaultPrinter front>
Info Front desk
Location First floor, left
DeviceURI tray:/front
State Idle
Accepting Yes
OpPolicy default
</DefaultPrinter>
<Printer still>
DeviceURI tray:/still
State Stopped
Reason media-empty-error
Reason toner-low-warning
Reason of-our-own-report
Accepting Yes
OpPolicy default
</Printer>
<Printer full>
DeviceURI tray:/full
State Idle
Accepting No
OpPolicy default
</Printer>
<Printer closed>
DeviceURI tray:/closed
State Idle
Accepting Yes
OpPolicy default
AllowUser somebody-else
</Printer>
<Printer stuck>
DeviceURI tray:/stuck
State Idle
Accepting Yes
OpPolicy default
</Printer>
)";

class Printing : public testing::Test {
  protected:
    test::TemporaryDirectory temporary;
    const fs::path folder = temporary.path();
    const print::PrintService service{(folder / "socket").string(), 5s};
    const std::string pdf = "%PDF-1.7\n" + std::string(100'000, 'x') + "\n%%EOF\n";
    pid_t running = -1;

    void start(const std::string& printers)
    {
        ASSERT_TRUE(fs::exists(service_program))
            << "no " << service_program << ": install the package cups-daemon";
        for (const char* name : {"root", "spool", "tmp", "cache", "state", "bin", "bin/backend"})
            fs::create_directory(folder / name);
        fs::create_symlink("/usr/lib/cups/daemon", folder / "bin/daemon");
        std::string script = tray;
        script.replace(script.find("@FOLDER@"), 8, folder.string());
        write(folder / "bin/backend/tray", script);
        fs::permissions(folder / "bin/backend/tray",
                        fs::perms::owner_all); // runs as who started it
        const std::string at = folder.string();
        write(folder / "root/cups-files.conf",
              "ServerRoot " + at + "/root\nServerBin " + at + "/bin\nRequestRoot " + at +
                  "/spool\nTempDir " + at + "/tmp\nCacheDir " + at + "/cache\nStateDir " + at +
                  "/state\nAccessLog " + at + "/access\nErrorLog " + at + "/error\nPageLog " + at +
                  "/page\nPrintcap " + at + "/printcap\nSandboxing relaxed\n");
        write(folder / "root/cupsd.conf",
              "Listen " + service.server +
                  "\nLogLevel info\nBrowsing No\nWebInterface No\nDefaultAuthType None\n"
                  "<Location />\nOrder deny,allow\nAllow all\n</Location>\n"
                  "<Policy default>\nJobPrivateAccess all\nJobPrivateValues none\n"
                  "<Limit All>\nOrder deny,allow\nAllow all\n</Limit>\n</Policy>\n");
        write(folder / "root/printers.conf", printers);
        const std::string config = at + "/root/cupsd.conf", files = at + "/root/cups-files.conf",
                          out = at + "/service.out";
        running = ::fork();
        if (running == 0) {
            const int to = ::open(out.c_str(), O_WRONLY | O_CREAT, 0600);
            ::dup2(to, 1);
            ::dup2(to, 2);
            ::execl(service_program, service_program, "-f", "-c", config.c_str(), "-s",
                    files.c_str(), nullptr);
            ::_exit(127);
        }
        const bool up = within(20s, [&] {
            const auto found = print::printers(service);
            return found || found.problems()[0].code == "no_printer";
        });
        ASSERT_TRUE(up) << test::slurp(out) << test::slurp((folder / "error").string());
    }
    void TearDown() override
    {
        if (running > 0) {
            ::kill(running, SIGTERM);
            if (!within(5s, [&] { return ::waitpid(running, nullptr, WNOHANG) == running; })) {
                ::kill(running, SIGKILL);
                ::waitpid(running, nullptr, 0);
            }
        }
        if (HasFailure() && running > 0)
            std::printf("%s\n", test::slurp((folder / "error").string()).c_str());
    }
    static bool within(std::chrono::milliseconds most, const std::function<bool()>& is)
    {
        const auto until = std::chrono::steady_clock::now() + most;
        while (std::chrono::steady_clock::now() < until) {
            if (is())
                return true;
            std::this_thread::sleep_for(50ms);
        }
        return is();
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
    EXPECT_NE(found.text.find("the paper is out"), std::string::npos) << found.text;
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
            EXPECT_EQ(problems[0].code, "io") << problems[0].text;
        }
    }
}

TEST(PrinterReasons, HaveAnIdAndWordsEachAndEndWithTheOneForAllOthers)
{
    std::set<std::string> ids;
    for (const print::KnownReason& one : print::printer_reasons) {
        EXPECT_TRUE(ids.insert(one.id).second) << one.id;
        EXPECT_FALSE(std::string(one.words).empty());
    }
    EXPECT_STREQ(print::printer_reasons.back().id, "other");
}

} // namespace
} // namespace evenfall
