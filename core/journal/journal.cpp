// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#include "journal/journal.h"

#include "base/hash.h"

namespace evenfall {
namespace {

/// Length before content: no two different entries make the same text.
void put(std::string& out, std::string_view field)
{
    out += std::to_string(field.size());
    out += ':';
    out += field;
}

class MemoryJournal final : public Journal {
  public:
    explicit MemoryJournal(std::vector<Entry> begin) : entries_(std::move(begin)) {}
    const std::vector<Entry>& entries() const override { return entries_; }

    Result<Entry> append(const Stamp& stamp, std::string_view kind, std::string_view subject,
                         std::string_view value) override
    {
        Entry entry{entries_.empty() ? 1 : entries_.back().number + 1, stamp, std::string(kind),
                    std::string(subject), std::string(value), ""};
        entry.hash = chain_hash(entries_.empty() ? "" : entries_.back().hash, entry);
        entries_.push_back(entry);
        return entry;
    }

  private:
    std::vector<Entry> entries_;
};

} // namespace

std::string chain_hash(const std::string& before, const Entry& entry)
{
    std::string text;
    put(text, before);
    put(text, std::to_string(entry.number));
    put(text, std::to_string(entry.stamp.utc.time_since_epoch().count()));
    put(text, std::to_string(entry.stamp.offset.count()));
    put(text, entry.stamp.zone);
    put(text, entry.stamp.boot);
    put(text, std::to_string(entry.stamp.since_boot.count()));
    put(text, entry.kind);
    put(text, entry.subject);
    put(text, entry.value);
    return sha256_hex(text);
}

bool follows(std::span<const Entry> chain, const Entry& entry)
{
    return entry.number == static_cast<std::int64_t>(chain.size()) + 1 &&
           entry.hash == chain_hash(chain.empty() ? "" : chain.back().hash, entry);
}

std::size_t intact_length(const std::vector<Entry>& entries)
{
    std::size_t length = 0;
    while (length < entries.size() && follows(std::span(entries).first(length), entries[length]))
        ++length;
    return length;
}

std::unique_ptr<Journal> make_memory_journal(std::vector<Entry> begin)
{
    return std::make_unique<MemoryJournal>(std::move(begin));
}

} // namespace evenfall
