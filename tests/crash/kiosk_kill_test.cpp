// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
// The kiosk (all but its window) is killed at random moments on every page: it opens on the same page,
// and nothing that it had answered is lost. The program runs itself as the one to be killed.
#include "kiosk/kiosk.h"

#include <QCoreApplication>
#include <QTemporaryDir>
#include <csignal>
#include <cstdio>
#include <cstdlib>
#include <gtest/gtest.h>
#include <random>
#include <string>
#include <sys/wait.h>
#include <unistd.h>

namespace {

using namespace evenfall;

int kills = 500; // one argument: another number

std::unique_ptr<Kiosk> open_kiosk(const std::string& folder)
{
    return std::make_unique<Kiosk>(
        [folder]() -> Result<std::unique_ptr<Session>> {
            Result<VisitWithKit> visit = load_visit(EVENFALL_SOURCE_DIR "/assets/visits/demo.json", {});
            if (!visit)
                return visit.problems();
            visit->visit.options.evening_questions = true;
            visit->visit.options.signal_check = true;
            Result<Opened> opened = open_journal(std::filesystem::path(folder) / "journal.db");
            if (!opened)
                return opened.problems();
            return Session::begin({*visit, std::move(opened->journal), folder}, std::make_shared<SystemClock>());
        },
        Kiosk::Settings{});
}

/// Taps that stay on the page, whatever it is.
void tap(Kiosk& kiosk, unsigned which)
{
    switch (which % 9) {
    case 0: kiosk.toggle(QStringLiteral("0")); break;
    case 1: kiosk.choose(QStringLiteral("double_blink")); break;
    case 2: kiosk.stepTime(10, QStringLiteral("time")); break;
    case 3: kiosk.chooseSureness(QStringLiteral("about")); break;
    case 4: kiosk.chooseBuild(QStringLiteral("broad")); break;
    case 5: kiosk.chooseLanguage(QStringLiteral("es")); break;
    case 6: kiosk.noteAwake(); break;
    case 7: kiosk.undo(); break;
    default: kiosk.editComment(QStringLiteral("a word")); break;
    }
}

/// Opens a page and taps until it is killed. After each tap the number of the last entry is answered.
int be_killed(const std::string& folder, const std::string& page, unsigned seed)
{
    const std::unique_ptr<Kiosk> kiosk = open_kiosk(folder);
    if (!kiosk->session() || !kiosk->open_page(page))
        return 1;
    std::mt19937 random(seed);
    for (;;) {
        const std::int64_t number = kiosk->session()->last_number();
        if (::write(STDOUT_FILENO, &number, sizeof number) != sizeof number)
            return 1;
        tap(*kiosk, static_cast<unsigned>(random()));
    }
}

/// Starts one, kills it some time after its first answer, and gives the last number it answered.
std::int64_t kill_one(const std::string& folder, const std::string& page, unsigned seed, std::chrono::microseconds after)
{
    int answers[2];
    if (::pipe(answers) != 0)
        return -1;
    const pid_t child = ::fork();
    if (child == 0) {
        ::dup2(answers[1], STDOUT_FILENO);
        ::close(answers[0]);
        ::close(answers[1]);
        const std::string number = std::to_string(seed);
        ::execl("/proc/self/exe", "kiosk_kill_test", "--be-killed", folder.c_str(), page.c_str(), number.c_str(), nullptr);
        ::_exit(127);
    }
    ::close(answers[1]);
    std::int64_t last = -1;
    if (::read(answers[0], &last, sizeof last) == sizeof last) {
        ::usleep(static_cast<useconds_t>(after.count()));
        ::kill(child, SIGKILL);
        for (std::int64_t more = 0; ::read(answers[0], &more, sizeof more) == sizeof more;)
            last = more;
    }
    ::kill(child, SIGKILL);
    ::waitpid(child, nullptr, 0);
    ::close(answers[0]);
    return last;
}

TEST(KioskKill, OpensOnTheSamePage_AndLosesNothingThatWasAnswered)
{
    const QTemporaryDir first;
    const std::vector<std::string> pages = open_kiosk(first.path().toStdString())->session()->pages().all();
    std::mt19937 random(20261031);
    std::int64_t answered = 0;
    for (int n = 0; n < kills; ++n) {
        const QTemporaryDir folder;
        const std::string& page = pages[static_cast<size_t>(n) % pages.size()];
        const std::int64_t last = kill_one(folder.path().toStdString(), page, static_cast<unsigned>(random()),
                                           std::chrono::microseconds(random() % 30000));
        ASSERT_GT(last, 0) << page;
        answered += last;
        const std::unique_ptr<Kiosk> again = open_kiosk(folder.path().toStdString());
        ASSERT_TRUE(again->session()) << page << ": " << again->message().detail.toStdString();
        EXPECT_EQ(again->page().toStdString(), page);
        // One tap may have been on its way to the disk; opening again says one thing more.
        EXPECT_GE(again->session()->last_number(), last + 1) << page;
        EXPECT_LE(again->session()->last_number(), last + 2) << page;
    }
    std::cout << kills << " kills on " << pages.size() << " pages; " << answered << " entries answered, none lost\n";
}

} // namespace

int main(int argc, char** argv)
{
    QCoreApplication app(argc, argv);
    if (argc == 5 && std::string(argv[1]) == "--be-killed")
        return be_killed(argv[2], argv[3], static_cast<unsigned>(std::atol(argv[4])));
    testing::InitGoogleTest(&argc, argv);
    if (argc == 2)
        kills = std::atoi(argv[1]);
    return RUN_ALL_TESTS();
}
