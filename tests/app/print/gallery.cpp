// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
// print_gallery OUT: the summary of every kind of night, to be looked at.
#include "app/print/diaries.h"
#include "print/summary_pdf.h"

#include <fstream>
#include <iostream>

int main(int count, char** arguments)
{
    if (count != 2) {
        std::cerr << "usage: print_gallery OUT\n";
        return 2;
    }
    int status = 0;
    for (const auto& [name, diary] : evenfall::test::all_diaries()) {
        const auto pdf = evenfall::print::summary_pdf(diary);
        for (const auto& problem : pdf.problems()) {
            std::cerr << evenfall::describe(name, problem) << '\n';
            status = 1;
        }
        if (pdf)
            std::ofstream(std::filesystem::path(arguments[1]) / (name + ".pdf"), std::ios::binary)
                << *pdf;
    }
    return status;
}
