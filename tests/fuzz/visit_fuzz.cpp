// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#include "fuzz/target.h"

#include "kit/visit.h"

void evenfall::fuzz::take(std::string_view bytes)
{
    const Result<Visit> visit = read_visit(bytes);
    told(visit);
    law(!visit.ok() || (visit->zone && !visit->clinic.phone.empty()), "a visit without zone or telephone");
}

std::vector<std::string> evenfall::fuzz::seeds()
{
    std::vector<std::string> out;
    add_files(out, "assets/visits");
    add_files(out, "tests/data/visit");
    return out;
}
