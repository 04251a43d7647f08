// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
// make_journal ENTRIES.json OUT.db: a journal of this version with those entries. See
// tests/data/journal/README.md.
#include "core/journal/told.h"

#include <cstdio>

int main(int count, char** words)
{
    using namespace evenfall;
    if (count != 3) {
        std::fprintf(stderr, "usage: %s ENTRIES.json OUT.db\n", words[0]);
        return 2;
    }
    Result<Opened> opened = open_journal(words[2]);
    if (!opened || !opened->journal->entries().empty()) {
        std::fprintf(stderr, "%s cannot be made, or is there already\n", words[2]);
        return 3;
    }
    for (const Entry& told : test::told_in(words[1])) {
        if (!opened->journal->append(told.stamp, told.kind, told.subject, told.value))
            return 3;
    }
}
