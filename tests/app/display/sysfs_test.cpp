// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
// What is read of the kernel's folders, from fakes of them.
#include "app/display/fake_system.h"
#include "display/backlight.h"
#include "display/power.h"

#include <gtest/gtest.h>

namespace evenfall {
namespace {

// Source: systemd-backlight@.service(8), systemd 252: "at least 1 or 5% of maximum brightness,
// whichever is greater". Rounded up, which is our own choice.
TEST(LeastLight, IsOneOrFivePercent)
{
    EXPECT_EQ(least_light(1), 1);
    EXPECT_EQ(least_light(15), 1);
    EXPECT_EQ(least_light(20), 1);
    EXPECT_EQ(least_light(21), 2);
    EXPECT_EQ(least_light(100), 5);
    EXPECT_EQ(least_light(255), 13);
    EXPECT_EQ(least_light(96000), 4800);
}

// Source: the kernel's Documentation/ABI/stable/sysfs-class-backlight, "type".
TEST(Backlights, AreThoseOfTheBestKindForOneDisplay)
{
    const test::Folder folder;
    EXPECT_TRUE(backlights(folder.path() / "none").empty());
    test::make_backlight(folder.path(), "b_raw", 300, 937, "raw");
    test::make_backlight(folder.path(), "a_raw", 10, 20, "raw");
    const std::vector<Backlight> raw{{"a_raw", 10, 20}, {"b_raw", 300, 937}};
    EXPECT_EQ(backlights(folder.path()), raw);
    test::make_backlight(folder.path(), "some_wmi", 3, 9, "platform");
    EXPECT_EQ(backlights(folder.path()), (std::vector<Backlight>{{"some_wmi", 3, 9}}));
    test::make_backlight(folder.path(), "acpi", 7, 15, "firmware");
    EXPECT_EQ(backlights(folder.path()), (std::vector<Backlight>{{"acpi", 7, 15}}));
    EXPECT_EQ(backlight(folder.path(), "b_raw"), (Backlight{"b_raw", 300, 937}));
}

TEST(Backlights, LeaveOutWhatMakesNoSense)
{
    const test::Folder folder;
    test::make_backlight(folder.path() / "in", "no_steps", 0, 0, "firmware");
    test::make_backlight(folder.path() / "in", "too_much", 21, 20, "firmware");
    test::make_backlight(folder.path(), "outside", 5, 20);
    test::write(folder.path() / "in" / "no_number" / "brightness", "12abc\n");
    test::write(folder.path() / "in" / "no_number" / "max_brightness", "20\n");
    EXPECT_TRUE(backlights(folder.path() / "in").empty());
    EXPECT_FALSE(backlight(folder.path() / "in", "../outside"));
    EXPECT_FALSE(backlight(folder.path() / "in", ".."));
    EXPECT_FALSE(backlight(folder.path() / "in", ""));
}

// Names and words of the attributes: the kernel's Documentation/ABI/testing/sysfs-class-power.
class PowerTest : public testing::Test {
  protected:
    void supply(const std::string& name, const std::string& type,
                const std::vector<std::pair<std::string, std::string>>& more)
    {
        test::write(folder.path() / name / "type", type + "\n");
        for (const auto& [file, text] : more)
            test::write(folder.path() / name / file, text + "\n");
    }
    Power now() const { return power(folder.path()); }
    test::Folder folder;
};

TEST_F(PowerTest, IsNotKnownWhereNothingSaysIt)
{
    EXPECT_EQ(power("/nowhere"), Power{});
    EXPECT_EQ(now(), Power{});
    supply("AC", "Mains", {{"online", "0"}});
    EXPECT_EQ(now(), Power{}) << "no battery to be on";
    supply("BAT0", "Battery", {{"status", "Unknown"}, {"capacity", "58"}});
    EXPECT_EQ(now(), (Power{Power::Source::not_known, 58}));
}

TEST_F(PowerTest, IsTheBatteryWithItsCharge)
{
    supply("AC", "Mains", {{"online", "0"}});
    supply("BAT0", "Battery", {{"status", "Discharging"}, {"capacity", "58"}});
    EXPECT_EQ(now(), (Power{Power::Source::battery, 58}));
    supply("BAT1", "Battery", {{"status", "Not charging"}, {"capacity", "91"}});
    EXPECT_EQ(now(), (Power{Power::Source::battery, 75}));
    supply("BAT1", "Battery", {{"present", "0"}, {"capacity", "0"}});
    EXPECT_EQ(now(), (Power{Power::Source::battery, 58}));
}

TEST_F(PowerTest, IsTheChargerEvenATooWeakOne)
{
    supply("BAT0", "Battery", {{"status", "Discharging"}, {"capacity", "58"}});
    supply("usb", "USB", {{"online", "2"}});
    EXPECT_EQ(now(), (Power{Power::Source::mains, 58}));
}

TEST_F(PowerTest, IsTheChargerWhereOnlyTheBatterySaysIt)
{
    supply("BAT0", "Battery", {{"status", "Charging"}, {"capacity", "140"}});
    EXPECT_EQ(now(), (Power{Power::Source::mains, std::nullopt}));
}

TEST_F(PowerTest, DoesNotCountThePensBattery)
{
    supply("pen", "Battery", {{"scope", "Device"}, {"status", "Discharging"}, {"capacity", "9"}});
    EXPECT_EQ(now(), Power{});
}

} // namespace
} // namespace evenfall
