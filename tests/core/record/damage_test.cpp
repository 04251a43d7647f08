// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
// What can go wrong with a record: a byte changed, a file cut, a disk that fills up, a diary that
// cannot be carried.
#include "base/hash.h"
#include "core/record/diaries.h"
#include "crash/share.h"
#include "record/folder.h"
#include "record/verify.h"

#include <array>
#include <cmath>
#include <csignal>
#include <fstream>
#include <functional>
#include <sys/resource.h>

namespace evenfall {
namespace {

namespace fs = std::filesystem;
using test::min;
using test::slurp;
using test::TemporaryDirectory;

constexpr std::array file_names{"diary.json", "diary.edf", "diary.fhir.json", "SHA256SUMS"};

/// Every byte of each file; of the long one, every eleventh.
std::size_t step_of(const std::string& name)
{
    return test::stride(name == "diary.fhir.json" ? 11 : 1);
}

/// Few values, all exact, so that every byte can be tried. Invented.
Diary small_diary()
{
    return test::diary_of(test::night_of(
        "{'format':'evenfall.night/1','visit':{'code':'SM-1','night':1},'zone':'Europe/Berlin',"
        "'sensors':['f'],'need':{'minutes':1,'groups':[['f']]},'lights_out':'2026-11-04T22:00',"
        "'lights_on':'2026-11-05T06:00'}"));
}

class Damage : public testing::Test {
  protected:
    TemporaryDirectory parent;
    fs::path record;

    void SetUp() override { record = write_record(small_diary(), parent.path()).value(); }
    bool noticed() { return !verify_record(record).problems.empty(); }
    void put(const std::string& name, const std::string& bytes)
    {
        fs::remove(record / name); // some file systems sync a file that is cut and written again
        std::ofstream(record / name, std::ios::binary) << bytes;
    }
};

TEST_F(Damage, AnyByteChangedIsNoticed)
{
    for (const std::string name : file_names) {
        const std::string right = slurp(record / name);
        for (std::size_t i = 0; i < right.size(); i += step_of(name)) {
            std::string wrong = right;
            wrong[i] = static_cast<char>(wrong[i] ^ (1 << i % 8));
            put(name, wrong);
            ASSERT_TRUE(noticed()) << name << " byte " << i;
        }
        put(name, right);
    }
    EXPECT_FALSE(noticed());
}

TEST_F(Damage, AnyCutIsNoticed)
{
    for (const std::string name : file_names) {
        const std::string right = slurp(record / name);
        for (std::size_t i = 0; i < right.size(); i += step_of(name)) {
            put(name, right.substr(0, i));
            ASSERT_TRUE(noticed()) << name << " cut at " << i;
        }
        put(name, right);
    }
    EXPECT_FALSE(noticed());
}

TEST_F(Damage, AnyByteOfADerivedFileChangedOnPurposeIsNoticed)
{
    // Sums made right again do not help: the file is not what diary.json makes.
    for (const std::string name : {"diary.edf", "diary.fhir.json"}) {
        const std::string right = slurp(record / name);
        const std::string sums = slurp(record / "SHA256SUMS");
        for (std::size_t i = 0; i < right.size() + step_of(name); i += step_of(name)) {
            std::string wrong = right;
            if (i < right.size())
                wrong[i] = static_cast<char>(wrong[i] ^ (1 << i % 8));
            put(name, wrong);
            std::string mended = sums;
            mended.replace(sums.find(sha256_hex(right)), 64, sha256_hex(wrong));
            put("SHA256SUMS", mended);
            ASSERT_EQ(noticed(), i < right.size()) << name << " byte " << i; // the last is right
        }
    }
}

/// Writes of this process stop at a size, as on a disk that fills up.
class SizeLimit {
  public:
    explicit SizeLimit(rlim_t bytes) : handler_(std::signal(SIGXFSZ, SIG_IGN))
    {
        EXPECT_EQ(::getrlimit(RLIMIT_FSIZE, &before_), 0);
        const rlimit now{bytes, before_.rlim_max};
        EXPECT_EQ(::setrlimit(RLIMIT_FSIZE, &now), 0);
    }
    ~SizeLimit()
    {
        ::setrlimit(RLIMIT_FSIZE, &before_);
        std::signal(SIGXFSZ, handler_);
    }
    SizeLimit(const SizeLimit&) = delete;
    SizeLimit& operator=(const SizeLimit&) = delete;

  private:
    rlimit before_{};
    void (*handler_)(int);
};

TEST(RecordWriter, WriteThatFailsHalfwayLeavesNothingAndMayBeTriedAgain)
{
    TemporaryDirectory parent;
    const Diary diary = small_diary();
    const auto files = record_files(diary);
    ASSERT_TRUE(files.ok());
    for (const RecordFile& file : *files) { // each limit stops within another file, or before it
        Result<fs::path> path = Problem{};
        {
            const SizeLimit limit(file.bytes.size() - 1);
            path = write_record(diary, parent.path());
        }
        ASSERT_FALSE(path.ok()) << file.name;
        EXPECT_EQ(exit_status(path.problems()), 3) << file.name;
        EXPECT_TRUE(fs::is_empty(parent.path())) << file.name;
    }
    EXPECT_TRUE(write_record(diary, parent.path()).ok());
}

TEST(RecordWriter, ParentThatCannotBeWrittenIsAnIoProblem)
{
    // Not even root can make a folder in the first; the second is no folder.
    TemporaryDirectory folder;
    std::ofstream(folder.path() / "plain") << "x";
    for (const fs::path& parent : {fs::path("/proc/self"), folder.path() / "plain"})
        EXPECT_EQ(exit_status(write_record(small_diary(), parent).problems()), 3) << parent;
    EXPECT_EQ(slurp(folder.path() / "plain"), "x");
}

TEST(RecordWriter, DiaryThatWouldNotReadBackIsRefusedWithItsPlace)
{
    struct Case {
        std::string at;
        std::function<void(Diary&)> spoil;
    };
    const std::vector<Case> cases{
        {"/notes/0/text",
         [](Diary& d) {
             d.notes.push_back({"", std::nullopt});
         }},
        {"/kit/id",
         [](Diary& d) {
             d.kit = KitOfNight{"Two Words", "Bag 12"};
         }},
        {"/answers/0/question",
         [](Diary& d) {
             d.answers.push_back({"Two Words", true, {}});
         }},
        {"/answers/0/answer",
         [](Diary& d) {
             d.answers.push_back({"nap", Json(), {}});
         }},
        {"/answers/0/answer",
         [](Diary& d) {
             d.answers.push_back({"nap", std::nan(""), {}});
         }},
        {"/signal_checks/0/kind",
         [](Diary& d) {
             d.signal_checks.push_back({d.night.lights_out->earliest, "Two Words", "", ""});
         }},
        {"/events/0/minutes",
         [](Diary& d) {
             d.events.push_back({*d.night.lights_out, -min(1), "bathroom", "", "", {}});
         }},
        {"/events/0/at",
         [](Diary& d) {
             const Instant at = d.night.lights_out->earliest;
             d.events.push_back({{at + min(1), at}, std::nullopt, "bathroom", "", "", {}});
         }},
        {"/journal/0/number",
         [](Diary& d) {
             Entry entry;
             entry.number = 0;
             entry.stamp.utc = d.night.lights_out->earliest;
             d.journal.push_back(entry);
         }},
        {"/visit/night",
         [](Diary& d) {
             d.of.night = 100;
             d.night.of->night = 100;
         }},
    };
    for (const Case& each : cases) {
        TemporaryDirectory parent;
        Diary diary = small_diary();
        each.spoil(diary);
        const auto path = write_record(diary, parent.path());
        ASSERT_FALSE(path.ok()) << each.at;
        EXPECT_EQ(path.problems()[0].at, each.at);
        EXPECT_EQ(exit_status(path.problems()), 1) << each.at;
        EXPECT_TRUE(fs::is_empty(parent.path())) << each.at;
    }
}

} // namespace
} // namespace evenfall
