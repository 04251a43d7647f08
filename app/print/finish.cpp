// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#include "print/finish.h"

#include <qpdf/QPDF.hh>
#include <qpdf/QPDFObjectHandle.hh>
#include <qpdf/QPDFWriter.hh>

#include <exception>

namespace evenfall::print {
namespace {

class StructureWalk {
  public:
    explicit StructureWalk(const std::vector<std::string>& alternatives)
        : alternatives_(alternatives)
    {}

    void visit(QPDFObjectHandle element)
    {
        if (element.isArray()) {
            for (QPDFObjectHandle& kid : element.getArrayAsVector())
                visit(kid);
            return;
        }
        if (!element.isDictionary() || !element.hasKey("/S"))
            return; // a piece of the page's content, not an element
        const std::string kind = element.getKey("/S").getName();
        if (kind == "/Figure" && figures_ < alternatives_.size())
            element.replaceKey("/Alt",
                               QPDFObjectHandle::newUnicodeString(alternatives_[figures_++]));
        if (kind == "/TR")
            scope_heads(element.getKey("/K"));
        visit(element.getKey("/K"));
    }

    std::size_t figures() const { return figures_; }

  private:
    const std::vector<std::string>& alternatives_;
    std::size_t figures_ = 0;

    /// A row of nothing but heads names the columns; a head among cells names its row.
    static void scope_heads(QPDFObjectHandle kids)
    {
        std::vector<QPDFObjectHandle> heads;
        bool all = true;
        for (QPDFObjectHandle& kid :
             kids.isArray() ? kids.getArrayAsVector() : std::vector<QPDFObjectHandle>{kids}) {
            if (!kid.isDictionary() || !kid.hasKey("/S"))
                continue;
            if (kid.getKey("/S").getName() == "/TH")
                heads.push_back(kid);
            else
                all = false;
        }
        for (QPDFObjectHandle& head : heads)
            head.replaceKey("/A", QPDFObjectHandle::parse(all ? "<< /O /Table /Scope /Column >>"
                                                              : "<< /O /Table /Scope /Row >>"));
    }
};

std::string finished(const std::string& drawn, const DocumentInfo& info,
                     const std::string& producer, const std::vector<std::string>& alternatives)
{
    QPDF pdf;
    pdf.setSuppressWarnings(true);
    pdf.processMemoryFile("the page as drawn", drawn.data(), drawn.size());
    const auto text = [](const std::string& value) {
        return QPDFObjectHandle::newUnicodeString(value);
    };
    QPDFObjectHandle root = pdf.getRoot();
    root.replaceKey("/Lang", text(info.language));
    root.replaceKey("/ViewerPreferences", QPDFObjectHandle::parse(info.right_to_left
                                                 ? "<< /DisplayDocTitle true /Direction /R2L >>"
                                                 : "<< /DisplayDocTitle true >>"));
    root.replaceKey("/MarkInfo", QPDFObjectHandle::parse("<< /Marked true >>"));

    QPDFObjectHandle about = QPDFObjectHandle::newDictionary();
    about.replaceKey("/Title", text(info.title));
    about.replaceKey("/Keywords", text(info.key_words));
    about.replaceKey("/Creator", text("Evenfall"));
    about.replaceKey("/Producer", text(producer));
    pdf.getTrailer().replaceKey("/Info", pdf.makeIndirectObject(about));

    StructureWalk walk(alternatives);
    walk.visit(root.getKey("/StructTreeRoot").getKey("/K"));
    if (walk.figures() != alternatives.size())
        throw std::runtime_error("a figure has lost its place in the structure");

    QPDFWriter writer(pdf);
    writer.setOutputMemory();
    // Where objects stay readable, the key words can be found without a PDF library.
    writer.setObjectStreamMode(info.packed ? qpdf_o_generate : qpdf_o_disable);
    writer.setDeterministicID(true);
    writer.write();
    const std::shared_ptr<Buffer> buffer = writer.getBufferSharedPointer();
    return {reinterpret_cast<const char*>(buffer->getBuffer()), buffer->getSize()};
}

} // namespace

Result<std::string> finish_pdf(const std::string& drawn, const DocumentInfo& info,
                               const std::string& producer,
                               const std::vector<std::string>& alternatives)
{
    try {
        return finished(drawn, info, producer, alternatives);
    } catch (const std::exception& error) {
        return Problem{Fault::io, "pdf_not_made", "",
                       std::string("the PDF could not be finished: ") + error.what()};
    }
}

} // namespace evenfall::print
