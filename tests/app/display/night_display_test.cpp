// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
// The display through the night, against fake sysfs folders, message buses of our own and fakes of the
// services on them. The program is started anew as "display_tests --night ..." to be killed.
#include "app/display/fake_system.h"
#include "display/night_display.h"

#include <QCoreApplication>
#include <array>
#include <csignal>
#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <mutex>
#include <spawn.h>
#include <sys/stat.h>
#include <sys/wait.h>
#include <thread>
#include <unistd.h>

extern char** environ;

namespace evenfall {
namespace {

using namespace std::chrono_literals;
using test::FakeServices;
using testing::Contains;
using testing::HasSubstr;
using Stretch = NightDisplay::Stretch;
using Manner = FakeServices::Manner;

const std::string all_locks =
    "Inhibit sleep:idle:handle-lid-switch Evenfall The pages for the evening and the night are in use block";

class NightDisplayTest : public testing::Test {
  protected:
    NightDisplayTest() { std::filesystem::create_directories(data); }

    NightDisplay::Settings settings()
    {
        NightDisplay::Settings made;
        made.data = data;
        made.log = [this](const std::string& line) {
            const std::lock_guard lock(mutex);
            lines.push_back(line);
        };
        made.backlights = lights;
        made.buses = buses;
        made.settle = 0ms;
        made.patience = 10s; // on a busy machine; where nobody answers the tests say less
        return made;
    }
    std::string light(const std::string& name = "panel") { return test::read(lights / name / "brightness"); }
    bool light_becomes(const std::string& value)
    {
        return test::within_reason([&] { return light() == value + "\n"; });
    }
    bool file_there() { return std::filesystem::exists(data / "display.json"); }
    bool file_goes()
    {
        return test::within_reason([&] { return !file_there(); });
    }
    std::vector<std::string> log()
    {
        const std::lock_guard lock(mutex);
        return lines;
    }
    bool logged(const std::string& part)
    {
        return test::within_reason([&] {
            for (const std::string& line : log())
                if (line.find(part) != std::string::npos)
                    return true;
            return false;
        });
    }
    bool fake_holds(FakeServices& fake, bool held)
    {
        return test::within_reason(
            [&] { return fake.sleep_held() == held && fake.saver_held() == held; });
    }
    /// Another process of this program in its night, killed once `when` holds.
    void kill_a_night(const std::function<bool()>& when)
    {
        std::string self = "/proc/self/exe", option = "--night", data_name = data.string(),
                    lights_name = lights.string(), system = buses.system, session = buses.session;
        std::array<char*, 7> arguments{self.data(),   option.data(),  data_name.data(), lights_name.data(),
                                       system.data(), session.data(), nullptr};
        // Its own name, for /proc/self would be read by the one that is started.
        const std::string program = std::filesystem::read_symlink(self).string();
        pid_t other = -1;
        ASSERT_EQ(::posix_spawn(&other, program.c_str(), nullptr, nullptr, arguments.data(), environ), 0);
        const bool came = test::within_reason(when);
        ::kill(other, SIGKILL);
        int status = 0;
        ::waitpid(other, &status, 0);
        EXPECT_TRUE(came);
        ASSERT_TRUE(WIFSIGNALED(status)) << "it had ended by itself";
    }

    test::Folder folder;
    std::filesystem::path data = folder.path() / "data", lights = folder.path() / "backlight";
    BusAddresses buses;
    std::mutex mutex;
    std::vector<std::string> lines;
};

TEST_F(NightDisplayTest, DimsAndBringsBackThroughSysfsWithoutABus)
{
    test::make_backlight(lights, "panel", 600, 937);
    NightDisplay display(settings());
    EXPECT_TRUE(display.can_dim());
    display.follow(Stretch::night);
    ASSERT_TRUE(light_becomes("47"));
    EXPECT_EQ(test::read(data / "display.json"),
              "{\n  \"format\": \"evenfall.display/1\",\n  \"backlights\": [\n    {\n"
              "      \"name\": \"panel\",\n      \"was\": 600\n    }\n  ]\n}\n");
    struct stat found{};
    ASSERT_EQ(::stat((data / "display.json").c_str(), &found), 0);
    EXPECT_EQ(found.st_mode & 0777, 0600U);
    display.follow(Stretch::rest);
    EXPECT_TRUE(file_goes());
    EXPECT_EQ(light(), "600\n");
    EXPECT_THAT(log(), testing::ElementsAre(HasSubstr("there is no bus here")));
}

TEST_F(NightDisplayTest, BringsBackWhenItEnds)
{
    test::make_backlight(lights, "panel", 80, 100);
    {
        NightDisplay display(settings());
        display.follow(Stretch::night);
        ASSERT_TRUE(light_becomes("5"));
    }
    EXPECT_EQ(light(), "80\n");
    EXPECT_FALSE(file_there());
}

TEST_F(NightDisplayTest, OldLightOutlivesKillsAndRestartsAtNight)
{
    test::make_backlight(lights, "panel", 80, 100);
    kill_a_night([&] { return light() == "5\n"; });
    EXPECT_TRUE(file_there());
    // Again at night: the low light is not taken for the old one. The second one shows when it was done.
    test::make_backlight(lights, "second", 60, 100);
    kill_a_night([&] { return light("second") == "5\n"; });
    EXPECT_EQ(light(), "5\n");
    // And the system's start may have set another one.
    test::write(lights / "panel" / "brightness", "100\n");
    kill_a_night([&] { return light() == "5\n"; });
    NightDisplay morning(settings());
    morning.follow(Stretch::rest);
    EXPECT_TRUE(file_goes());
    EXPECT_EQ(light(), "80\n");
    EXPECT_EQ(light("second"), "60\n");
}

TEST_F(NightDisplayTest, NeverLowersWhatSomebodyRaised)
{
    test::make_backlight(lights, "panel", 40, 100);
    NightDisplay display(settings());
    display.follow(Stretch::night);
    ASSERT_TRUE(light_becomes("5"));
    test::write(lights / "panel" / "brightness", "90\n");
    display.follow(Stretch::evening);
    EXPECT_TRUE(file_goes());
    EXPECT_EQ(light(), "90\n");
}

TEST_F(NightDisplayTest, LeavesALowLightAlone)
{
    test::make_backlight(lights, "panel", 3, 100);
    test::make_backlight(lights, "second", 60, 100);
    NightDisplay display(settings());
    display.follow(Stretch::night);
    ASSERT_TRUE(test::within_reason([&] { return light("second") == "5\n"; }));
    display.follow(Stretch::rest);
    EXPECT_TRUE(file_goes());
    EXPECT_EQ(light("second"), "60\n");
    EXPECT_EQ(light(), "3\n");
}

TEST_F(NightDisplayTest, DoesNotDimWhatItCouldNotBringBack)
{
    test::make_backlight(lights, "panel", 80, 100);
    std::filesystem::remove(data);
    NightDisplay display(settings());
    display.follow(Stretch::night);
    EXPECT_TRUE(logged("the backlight stays as it is"));
    EXPECT_EQ(light(), "80\n");
}

TEST_F(NightDisplayTest, SetsAsideAFileThatItCannotRead)
{
    test::make_backlight(lights, "panel", 80, 100);
    test::write(data / "display.json", "{\"format\": \"evenfall.display/1\", \"backlights\": [{\"name\": \"panel\", \"was\": -3}]}");
    NightDisplay display(settings());
    display.follow(Stretch::rest);
    EXPECT_TRUE(logged("/backlights/0/was"));
    EXPECT_FALSE(file_there());
    EXPECT_TRUE(std::filesystem::exists(data / "display.json.unread"));
    EXPECT_EQ(light(), "80\n");
}

TEST_F(NightDisplayTest, TriesAgainUntilTheLightIsBack)
{
    test::write(data / "display.json", "{\"format\": \"evenfall.display/1\", \"backlights\": [{\"name\": \"panel\", \"was\": 70}]}");
    NightDisplay display(settings());
    display.follow(Stretch::rest);
    EXPECT_TRUE(logged("panel is not there to be brought back"));
    EXPECT_TRUE(file_there());
    test::make_backlight(lights, "panel", 5, 100);
    display.follow(Stretch::rest);
    EXPECT_TRUE(file_goes());
    EXPECT_EQ(light(), "70\n");
    EXPECT_EQ(log().size(), 1U);
}

TEST_F(NightDisplayTest, SaysWhyItCannotDim)
{
    EXPECT_EQ(NightDisplay(settings()).can_dim().problems().at(0).code, "no_backlight");
    // A file that nobody may write, root included, and that holds a number.
    const std::string kernels = "/proc/sys/kernel/ngroups_max";
    ASSERT_EQ(test::read(kernels), "65536\n");
    test::write(lights / "panel" / "max_brightness", "65536\n");
    std::filesystem::create_symlink(kernels, lights / "panel" / "brightness");
    NightDisplay display(settings());
    EXPECT_EQ(display.can_dim().problems().at(0).code, "read_only");
    display.follow(Stretch::night);
    EXPECT_TRUE(logged("the backlight stays as it is"));
    display.follow(Stretch::rest);
    EXPECT_TRUE(file_goes());
}

TEST_F(NightDisplayTest, SaysNothingAndStartsNothingByDay)
{
    buses = {"unix:path=/nowhere/bus", "unix:path=/nowhere/bus"};
    {
        NightDisplay display(settings());
        display.follow(Stretch::rest);
        std::this_thread::sleep_for(100ms);
    }
    EXPECT_THAT(log(), testing::IsEmpty());
}

TEST_F(NightDisplayTest, GoesOnWithoutAnyBusThatAnswers)
{
    test::make_backlight(lights, "panel", 80, 100);
    buses = {"unix:path=/nowhere/bus", ""};
    NightDisplay display(settings());
    display.follow(Stretch::night);
    EXPECT_TRUE(logged("sleep is not held off"));
    EXPECT_TRUE(logged("the screen saver is not held off: session bus"));
    EXPECT_EQ(light(), "5\n");
    display.follow(Stretch::rest);
    EXPECT_TRUE(file_goes());
}

class WithBuses : public NightDisplayTest {
  protected:
    WithBuses() { buses = {bus.address(), bus.address()}; }
    test::PrivateBus bus{folder.path()};
};

TEST_F(WithBuses, LightGoesThroughTheLoginManager)
{
    test::make_backlight(lights, "panel", 80, 100);
    FakeServices fake(bus, lights, {});
    NightDisplay display(settings());
    display.follow(Stretch::night);
    ASSERT_TRUE(light_becomes("5"));
    EXPECT_THAT(fake.calls(), Contains("SetBrightness backlight panel 5"));
    display.follow(Stretch::rest);
    EXPECT_TRUE(file_goes());
    EXPECT_THAT(fake.calls(), Contains("SetBrightness backlight panel 80"));
    EXPECT_EQ(light(), "80\n");
}

TEST_F(WithBuses, LightGoesThroughSysfsWhereTheLoginManagerRefuses)
{
    test::make_backlight(lights, "panel", 80, 100);
    FakeServices::Manners manners;
    manners.brightness = Manner::refuses;
    FakeServices fake(bus, lights, manners);
    NightDisplay display(settings());
    display.follow(Stretch::night);
    ASSERT_TRUE(light_becomes("5"));
    EXPECT_THAT(fake.calls(), Contains("SetBrightness backlight panel 5"));
    display.follow(Stretch::rest);
    EXPECT_TRUE(file_goes());
    EXPECT_EQ(light(), "80\n");
}

TEST_F(WithBuses, HoldsOffSleepAndScreenSaverUntilTheMorning)
{
    FakeServices fake(bus, lights, {});
    NightDisplay display(settings());
    display.follow(Stretch::evening);
    ASSERT_TRUE(fake_holds(fake, true));
    display.follow(Stretch::evening);
    display.follow(Stretch::night);
    std::this_thread::sleep_for(200ms);
    EXPECT_TRUE(fake.sleep_held() && fake.saver_held());
    display.follow(Stretch::rest);
    EXPECT_TRUE(fake_holds(fake, false));
    // Taken once, and given back by its number.
    EXPECT_THAT(fake.calls(),
                testing::UnorderedElementsAre(
                    all_locks, "Inhibit Evenfall The pages for the evening and the night are in use",
                    "UnInhibit 41"));
    display.follow(Stretch::evening);
    EXPECT_TRUE(fake_holds(fake, true));
}

TEST_F(WithBuses, GivesBackWhenItEndsAndWhenItIsKilled)
{
    FakeServices fake(bus, lights, {});
    {
        NightDisplay display(settings());
        display.follow(Stretch::night);
        ASSERT_TRUE(fake_holds(fake, true));
    }
    EXPECT_TRUE(fake_holds(fake, false));
    kill_a_night([&] { return fake.sleep_held() && fake.saver_held(); });
    EXPECT_TRUE(fake_holds(fake, false));
}

TEST_F(WithBuses, EveningThatIsLeftAloneHoldsNothing)
{
    FakeServices fake(bus, lights, {});
    NightDisplay::Settings short_evening = settings();
    short_evening.evening_hold = 1500ms;
    NightDisplay display(short_evening);
    display.follow(Stretch::evening);
    ASSERT_TRUE(fake_holds(fake, true));
    EXPECT_TRUE(fake_holds(fake, false));
    display.follow(Stretch::evening);
    EXPECT_TRUE(fake_holds(fake, true));
    display.follow(Stretch::night);
    std::this_thread::sleep_for(1800ms);
    EXPECT_TRUE(fake.sleep_held() && fake.saver_held()) << "the night has no end of its own";
}

TEST_F(WithBuses, TakesLessWhereNotAllIsGranted)
{
    FakeServices::Manners manners;
    manners.locks = {"idle"};
    FakeServices fake(bus, lights, manners);
    NightDisplay display(settings());
    display.follow(Stretch::night);
    ASSERT_TRUE(fake_holds(fake, true));
    EXPECT_TRUE(logged("held off: idle"));
}

TEST_F(WithBuses, FindsAScreenSaverAtItsOlderPath)
{
    FakeServices::Manners manners;
    manners.saver_path = "/ScreenSaver";
    FakeServices fake(bus, lights, manners);
    NightDisplay display(settings());
    display.follow(Stretch::night);
    EXPECT_TRUE(fake_holds(fake, true));
    display.follow(Stretch::rest);
    EXPECT_TRUE(fake_holds(fake, false));
    EXPECT_THAT(fake.calls(), Contains("UnInhibit 41"));
}

TEST_F(WithBuses, GoesOnWhereAllIsRefused)
{
    FakeServices::Manners manners;
    manners.locks = {};
    manners.saver = Manner::refuses;
    FakeServices fake(bus, lights, manners);
    NightDisplay display(settings());
    display.follow(Stretch::evening);
    EXPECT_TRUE(logged("sleep is not held off: system bus: org.freedesktop.DBus.Error.AccessDenied"));
    EXPECT_TRUE(logged("the screen saver is not held off: session bus: org.freedesktop.DBus.Error.AccessDenied"));
}

TEST_F(WithBuses, NobodyWaitsForAServiceThatNeverAnswers)
{
    test::make_backlight(lights, "panel", 80, 100);
    FakeServices::Manners manners;
    manners.brightness = manners.saver = Manner::silent;
    manners.locks_silent = true;
    FakeServices fake(bus, lights, manners);
    NightDisplay::Settings impatient = settings();
    impatient.patience = 1s;
    std::chrono::steady_clock::time_point ending;
    {
        NightDisplay display(impatient);
        const auto begin = std::chrono::steady_clock::now();
        display.follow(Stretch::night);
        EXPECT_LT(std::chrono::steady_clock::now() - begin, 500ms);
        EXPECT_TRUE(logged("the screen saver is not held off"));
        EXPECT_EQ(light(), "5\n") << "the other way in";
        const auto again = std::chrono::steady_clock::now();
        display.follow(Stretch::rest);
        EXPECT_LT(std::chrono::steady_clock::now() - again, 500ms);
        EXPECT_TRUE(file_goes());
        EXPECT_EQ(light(), "80\n");
        display.follow(Stretch::night);
        ASSERT_TRUE(light_becomes("5"));
        ending = std::chrono::steady_clock::now();
    }
    EXPECT_LT(std::chrono::steady_clock::now() - ending, 6s);
    EXPECT_EQ(light(), "80\n");
}

TEST_F(WithBuses, HoldsNothingOfAnAnswerThatComesTooLate)
{
    FakeServices::Manners manners;
    manners.saver_delay_ms = 1500;
    FakeServices fake(bus, lights, manners);
    NightDisplay::Settings impatient = settings();
    impatient.patience = 500ms;
    NightDisplay display(impatient);
    display.follow(Stretch::evening);
    EXPECT_TRUE(logged("the screen saver is not held off"));
    std::this_thread::sleep_for(2s);
    EXPECT_FALSE(fake.saver_held());
}

TEST_F(WithBuses, NobodyWaitsForABusThatHangs)
{
    bus.freeze(true);
    NightDisplay display(settings());
    const auto begin = std::chrono::steady_clock::now();
    display.follow(Stretch::evening);
    EXPECT_LT(std::chrono::steady_clock::now() - begin, 500ms);
    std::this_thread::sleep_for(300ms);
    const auto again = std::chrono::steady_clock::now();
    display.follow(Stretch::rest);
    EXPECT_TRUE(display.can_dim().problems().at(0).code == "no_backlight");
    EXPECT_LT(std::chrono::steady_clock::now() - again, 500ms);
    bus.freeze(false);
}

TEST(Buses, AreThoseOfTheEnvironmentFirst)
{
    ::setenv("DBUS_SYSTEM_BUS_ADDRESS", "unix:path=/one", 1);
    ::setenv("DBUS_SESSION_BUS_ADDRESS", "unix:path=/two", 1);
    EXPECT_EQ(buses_of_this_system().system, "unix:path=/one");
    EXPECT_EQ(buses_of_this_system().session, "unix:path=/two");
    ::unsetenv("DBUS_SESSION_BUS_ADDRESS");
    ::setenv("XDG_RUNTIME_DIR", "/nowhere", 1);
    EXPECT_EQ(buses_of_this_system().session, "") << "no socket there";
}

} // namespace
} // namespace evenfall

int main(int argc, char** argv)
{
    QCoreApplication app(argc, argv);
    if (argc == 6 && std::string(argv[1]) == "--night") {
        evenfall::NightDisplay::Settings settings;
        settings.data = argv[2];
        settings.backlights = argv[3];
        settings.buses = {argv[4], argv[5]};
        settings.settle = std::chrono::milliseconds(0);
        evenfall::NightDisplay display(settings);
        display.follow(evenfall::NightDisplay::Stretch::night);
        std::this_thread::sleep_for(std::chrono::minutes(5));
        return 1;
    }
    testing::InitGoogleMock(&argc, argv);
    return RUN_ALL_TESTS();
}
