// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
// Sets of intervals against PostgreSQL's multiranges, 100,000 random sets. A server of our own runs
// for this test, in a temporary folder, on a socket there and on no network.
#include "base/intervals.h"
#include "core/record/diaries.h"

#include <fstream>
#include <random>
#include <unistd.h>

namespace evenfall {
namespace {

namespace fs = std::filesystem;

std::vector<Interval> random_pieces(std::mt19937_64& engine)
{
    const long range = engine() % 2 ? 40 : 5000;
    std::vector<Interval> out(engine() % 9);
    for (Interval& one : out) {
        const long from = static_cast<long>(engine() % static_cast<std::uint64_t>(range));
        one = {Instant(Span(from)),
               Instant(Span(from +
                            static_cast<long>(engine() % static_cast<std::uint64_t>(range / 4))))};
    }
    return out;
}

/// As PostgreSQL writes a multirange: {[1,3),[5,9)}
std::string text_of(const std::vector<Interval>& pieces)
{
    std::string out = "{";
    for (const Interval& one : pieces)
        out += (out.size() > 1 ? ",[" : "[") + std::to_string(one.from.time_since_epoch().count()) +
               "," + std::to_string(one.to.time_since_epoch().count()) + ")";
    return out + "}";
}

fs::path server_programs()
{
    std::error_code ignored;
    for (const auto& version : fs::directory_iterator("/usr/lib/postgresql", ignored))
        if (fs::exists(version.path() / "bin" / "initdb"))
            return version.path() / "bin";
    return {};
}

class Server {
  public:
    explicit Server(fs::path programs) : programs_(std::move(programs))
    {
        // The server refuses to run as root.
        if (::geteuid() == 0) {
            as_user_ = "runuser -u postgres -- ";
            run("chown postgres '" + folder_.path().string() + "'");
        }
        started_ = run(as_user_ + program("initdb") + " -A trust -U tester -N -D " + data()) &&
                   run(as_user_ + program("pg_ctl") + " -w -D " + data() + " -l " +
                       (folder_.path() / "log").string() +
                       " -o \"-c listen_addresses='' -c fsync=off -k " + folder_.path().string() +
                       "\" start");
    }
    ~Server()
    {
        if (started_)
            run(as_user_ + program("pg_ctl") + " -w -m immediate -D " + data() + " stop");
    }
    Server(const Server&) = delete;
    Server& operator=(const Server&) = delete;
    bool started() const { return started_; }
    fs::path folder() const { return folder_.path(); }

    bool sql(const fs::path& script, const fs::path& out)
    {
        return std::system(("psql -X -q -At -F '|' -v ON_ERROR_STOP=1 -U tester -h " +
                            folder_.path().string() + " -d postgres -f " + script.string() + " >" +
                            out.string())
                               .c_str()) == 0;
    }

  private:
    test::TemporaryDirectory folder_;
    fs::path programs_;
    std::string as_user_;
    bool started_ = false;

    std::string program(const char* name) const { return (programs_ / name).string(); }
    std::string data() const { return (folder_.path() / "data").string(); }
    static bool run(const std::string& command)
    {
        return std::system((command + " >/dev/null").c_str()) == 0;
    }
};

TEST(PostgresMultiranges, AgreeOnRandomSets)
{
    const fs::path programs = server_programs();
    if (programs.empty())
        GTEST_SKIP() << "no PostgreSQL server here (Debian: postgresql)";
    Server server(programs);
    ASSERT_TRUE(server.started());

    constexpr int pairs = 50000;
    std::mt19937_64 engine(101);
    std::vector<std::string> ours;
    {
        std::ofstream script(server.folder() / "sets.sql");
        script << "create unlogged table sets (id int, a int8multirange, b int8multirange);\ncopy "
                  "sets from stdin;\n";
        for (int i = 0; i < pairs; ++i) {
            const std::vector<Interval> pa = random_pieces(engine), pb = random_pieces(engine);
            script << i << '\t' << text_of(pa) << '\t' << text_of(pb) << '\n';
            const IntervalSet a(pa), b(pb);
            ours.push_back(text_of(a.intervals()) + "|" + text_of(b.intervals()) + "|" +
                           text_of(unite(a, b).intervals()) + "|" +
                           text_of(intersect(a, b).intervals()) + "|" +
                           text_of(subtract(a, b).intervals()));
        }
        script << "\\.\nselect a, b, a + b, a * b, a - b from sets order by id;\n";
    }
    ASSERT_TRUE(server.sql(server.folder() / "sets.sql", server.folder() / "out"));
    std::ifstream out(server.folder() / "out");
    std::string line;
    int compared = 0;
    while (std::getline(out, line)) {
        ASSERT_LT(compared, pairs);
        ASSERT_EQ(line, ours[static_cast<std::size_t>(compared)]);
        ++compared;
    }
    EXPECT_EQ(compared, pairs);
    std::printf("%d sets\n", 2 * compared);
}

} // namespace
} // namespace evenfall
