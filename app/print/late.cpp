// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
// The functions of evenfall_print for a program that does not link it.
#include "print/module.h"

#include <dlfcn.h>

#include <filesystem>

namespace evenfall::print {
namespace {

Result<const Module*> load()
{
    std::error_code error;
    const std::filesystem::path program = std::filesystem::read_symlink("/proc/self/exe", error);
    const std::string file =
        (program.parent_path().parent_path() / "lib" / "libevenfall_print.so").string();
    // Never closed: its libraries keep what they have for as long as the program runs.
    void* library = ::dlopen(file.c_str(), RTLD_NOW | RTLD_LOCAL);
    const void* symbol = library ? ::dlsym(library, module_symbol) : nullptr;
    if (symbol)
        return static_cast<const Module*>(symbol);
    const char* why = ::dlerror();
    return Problem{Fault::io, "print_not_loaded", "",
                   "what prints could not be loaded: " + std::string(why ? why : file) +
                       "; right would be that it and its packages are installed"};
}

/// Once, whichever thread comes first; a failure stays until the program is started again.
const Result<const Module*>& module()
{
    static const Result<const Module*> loaded = load();
    return loaded;
}

} // namespace

Result<std::string> summary_pdf(const Diary& diary)
{
    return module() ? (*module())->summary_pdf(diary) : module().problems();
}

Result<std::string> sheet_pdf(const Sheet& sheet, const SheetWords& words,
                              const FigureStore& figures, const SheetForm& form)
{
    return module() ? (*module())->sheet_pdf(sheet, words, figures, form) : module().problems();
}

Result<std::string> sheet_html(const Sheet& sheet, const SheetWords& words,
                               const FigureStore& figures, bool large)
{
    return module() ? (*module())->sheet_html(sheet, words, figures, large) : module().problems();
}

Result<int> page_count(std::string_view pdf)
{
    return module() ? (*module())->page_count(pdf) : module().problems();
}

Result<PagePicture> page_picture(std::string_view pdf, int page, int width)
{
    return module() ? (*module())->page_picture(pdf, page, width) : module().problems();
}

Result<std::vector<Printer>> printers(const PrintService& service)
{
    return module() ? (*module())->printers(service) : module().problems();
}

Result<long> print_pdf(std::string_view pdf, const std::string& printer, Paper paper, int copies,
                       const PrintService& service)
{
    return module() ? (*module())->print_pdf(pdf, printer, paper, copies, service)
                    : module().problems();
}

Result<JobState> job_state(const std::string& printer, long job, const PrintService& service)
{
    return module() ? (*module())->job_state(printer, job, service) : module().problems();
}

} // namespace evenfall::print
