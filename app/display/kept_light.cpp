// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#include "display/kept_light.h"

#include "base/file.h"
#include "base/json.h"

#include <limits>

namespace evenfall {
namespace {

constexpr const char* format_name = "evenfall.display/1";
constexpr std::size_t size_limit = 1u << 16;

} // namespace

std::filesystem::path kept_light_file(const std::filesystem::path& data)
{
    return data / "display.json";
}

Result<KeptLight> load_kept_light(const std::filesystem::path& data)
{
    std::error_code error;
    if (!std::filesystem::exists(kept_light_file(data), error) && !error)
        return KeptLight{};
    const Result<std::string> text = read_file(kept_light_file(data), size_limit);
    if (!text)
        return text.problems();
    const Result<Json> json = parse_json(*text);
    if (!json)
        return json.problems();
    KeptLight kept;
    Problems problems;
    ObjectReader top(*json, "", problems);
    check_format(top, format_name);
    for (const auto& [element, at] : top.elements("backlights")) {
        ObjectReader reader(*element, at, problems);
        const std::optional<std::string> name = reader.text("name");
        const std::optional<long> was = reader.integer("was", 1, std::numeric_limits<int>::max());
        reader.finish();
        if (name && was)
            kept[*name] = *was;
    }
    top.finish();
    if (!problems.empty())
        return problems;
    return kept;
}

Status save_kept_light(const std::filesystem::path& data, const KeptLight& kept)
{
    const std::filesystem::path file = kept_light_file(data);
    if (kept.empty()) {
        std::error_code error;
        std::filesystem::remove(file, error);
        if (error)
            return io_problem("cannot remove", file, error.value());
        return sync_folder(data);
    }
    Json lights = Json::array();
    for (const auto& [name, was] : kept)
        lights.push_back({{"name", name}, {"was", was}});
    return write_file(file, Json{{"format", format_name}, {"backlights", lights}}.dump(2) + "\n");
}

} // namespace evenfall
