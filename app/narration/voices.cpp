// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#include "narration/voices.h"

namespace evenfall {

std::optional<std::filesystem::path> Voices::find_one(const SpokenUnit& unit, const std::string& language) const
{
    std::vector<std::string> names{unit.key()};
    if (unit.fixed)
        names.push_back(unit.id);
    for (const std::filesystem::path& folder : folders_) {
        for (const std::string& name : names) {
            for (const char* kind : {".wav", ".ogg", ".opus"}) {
                std::filesystem::path file = folder / language / (name + kind);
                std::error_code error;
                if (std::filesystem::is_regular_file(file, error))
                    return file;
            }
        }
    }
    return std::nullopt;
}

std::optional<QStringList> Voices::find(const Spoken& units, const QString& language) const
{
    QStringList files;
    for (const SpokenUnit& unit : units) {
        const std::optional<std::filesystem::path> file = find_one(unit, language.toStdString());
        if (!file)
            return std::nullopt;
        files << QString::fromStdString(file->string());
    }
    if (files.isEmpty())
        return std::nullopt;
    return files;
}

} // namespace evenfall
