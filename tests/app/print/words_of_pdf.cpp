// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#include "app/print/words_of_pdf.h"

#include <qpdf/QPDF.hh>
#include <qpdf/QPDFObjectHandle.hh>
#include <qpdf/QPDFPageDocumentHelper.hh>

#include <regex>

namespace evenfall::test {
namespace {

std::string utf8_of_utf16(const std::string& hex) {
    std::string bytes = "\xFE\xFF";
    for (std::size_t i = 0; i + 1 < hex.size(); i += 2)
        bytes += static_cast<char>(std::stoi(hex.substr(i, 2), nullptr, 16));
    return QPDFObjectHandle::newString(bytes).getUTF8Value();
}

/// One font: how long its codes are, and which letters they stand for.
struct Font {
    std::size_t length = 1;
    std::map<int, std::string> letters;
};

Font font_of(QPDFObjectHandle dictionary) {
    Font font;
    font.length = dictionary.getKey("/Subtype").getName() == "/Type0" ? 2 : 1;
    QPDFObjectHandle map = dictionary.getKey("/ToUnicode");
    if (!map.isStream())
        return font;
    const std::shared_ptr<Buffer> data = map.getStreamData();
    const std::string text(reinterpret_cast<const char*>(data->getBuffer()), data->getSize());
    const std::regex block("begin(bfchar|bfrange)([^]*?)end(?:bfchar|bfrange)");
    const std::regex pair("<([0-9a-fA-F]+)>\\s*<([0-9a-fA-F]+)>");
    const std::regex range("<([0-9a-fA-F]+)>\\s*<([0-9a-fA-F]+)>\\s*<([0-9a-fA-F]+)>");
    for (std::sregex_iterator at(text.begin(), text.end(), block), end; at != end; ++at) {
        const std::string body = (*at)[2];
        if ((*at)[1] == "bfchar")
            for (std::sregex_iterator one(body.begin(), body.end(), pair); one != end; ++one)
                font.letters[std::stoi((*one)[1], nullptr, 16)] = utf8_of_utf16((*one)[2]);
        else
            for (std::sregex_iterator one(body.begin(), body.end(), range); one != end; ++one) {
                const int from = std::stoi((*one)[1], nullptr, 16),
                          to = std::stoi((*one)[2], nullptr, 16);
                int letter = std::stoi((*one)[3], nullptr, 16);
                for (int code = from; code <= to; ++code, ++letter) {
                    char hex[5];
                    std::snprintf(hex, sizeof hex, "%04x", static_cast<unsigned>(letter) & 0xFFFFu);
                    font.letters[code] = utf8_of_utf16(hex);
                }
            }
    }
    return font;
}

/// Reads a page and keeps the words of each marked piece.
class Page : public QPDFObjectHandle::ParserCallbacks {
  public:
    explicit Page(QPDFObjectHandle page) : page_(page) {}
    std::map<int, std::string> pieces;

    void handleObject(QPDFObjectHandle object) override {
        if (!object.isOperator()) {
            operands_.push_back(object);
            return;
        }
        act(object.getOperatorValue());
        operands_.clear();
    }
    void handleEOF() override {}

  private:
    QPDFObjectHandle page_;
    std::vector<QPDFObjectHandle> operands_;
    struct Mark {
        int piece = -1;
        bool spoken = false; ///< inside an /ActualText: the letters are not heard
    };
    std::vector<Mark> marks_;
    std::map<std::string, Font> fonts_;
    const Font* font_ = nullptr;

    void act(const std::string& what) {
        if (what == "BDC" || what == "BMC") {
            Mark mark = marks_.empty() ? Mark{} : marks_.back();
            if (operands_.size() == 2 && operands_[1].isDictionary()) {
                if (operands_[1].hasKey("/MCID"))
                    mark.piece = operands_[1].getKey("/MCID").getIntValueAsInt();
                if (operands_[1].hasKey("/ActualText")) {
                    if (!mark.spoken && mark.piece >= 0)
                        pieces[mark.piece] += operands_[1].getKey("/ActualText").getUTF8Value();
                    mark.spoken = true;
                }
            }
            marks_.push_back(mark);
        } else if (what == "EMC") {
            marks_.pop_back();
        } else if (what == "Tf") {
            const std::string name = operands_[0].getName();
            if (!fonts_.contains(name))
                fonts_[name] = font_of(page_.getKey("/Resources").getKey("/Font").getKey(name));
            font_ = &fonts_[name];
        } else if (what == "Tj") {
            show(operands_[0].getStringValue());
        } else if (what == "TJ") {
            for (QPDFObjectHandle& one : operands_[0].getArrayAsVector())
                if (one.isString())
                    show(one.getStringValue());
        }
    }
    void show(const std::string& bytes) {
        if (marks_.empty() || marks_.back().piece < 0 || marks_.back().spoken || !font_)
            return;
        for (std::size_t i = 0; i + font_->length <= bytes.size(); i += font_->length) {
            int code = 0;
            for (std::size_t k = 0; k < font_->length; ++k)
                code = code * 256 + static_cast<unsigned char>(bytes[i + k]);
            const auto found = font_->letters.find(code);
            if (found != font_->letters.end())
                pieces[marks_.back().piece] += found->second;
            else if (font_->length == 1)
                pieces[marks_.back().piece] += static_cast<char>(code);
            else
                pieces[marks_.back().piece] += "\uFFFD";
        }
    }
};

class Walk {
  public:
    explicit Walk(QPDF& pdf) {
        for (QPDFPageObjectHelper& page : QPDFPageDocumentHelper(pdf).getAllPages()) {
            Page read(page.getObjectHandle());
            page.parseContents(&read);
            pieces_[page.getObjectHandle().getObjGen()] = read.pieces;
        }
        visit(pdf.getRoot().getKey("/StructTreeRoot").getKey("/K"), {});
    }
    Structure structure;
    std::string text;

  private:
    std::map<QPDFObjGen, std::map<int, std::string>> pieces_;

    void visit(QPDFObjectHandle what, QPDFObjectHandle page) {
        if (what.isArray()) {
            for (QPDFObjectHandle& one : what.getArrayAsVector())
                visit(one, page);
        } else if (what.isInteger()) {
            text += pieces_[page.getObjGen()][what.getIntValueAsInt()];
        } else if (what.isDictionary()) {
            if (what.hasKey("/Pg"))
                page = what.getKey("/Pg");
            if (what.hasKey("/MCID"))
                return visit(what.getKey("/MCID"), page);
            if (what.hasKey("/S"))
                ++structure.tags[what.getKey("/S").getName().substr(1)];
            if (what.hasKey("/Alt"))
                structure.alternatives.push_back(what.getKey("/Alt").getUTF8Value());
            if (what.hasKey("/K"))
                visit(what.getKey("/K"), page);
        }
    }
};

} // namespace

std::string tagged_words(const std::string& path) {
    QPDF pdf;
    pdf.processFile(path.c_str());
    return Walk(pdf).text;
}

Structure structure_of(const std::string& path) {
    QPDF pdf;
    pdf.processFile(path.c_str());
    return Walk(pdf).structure;
}

std::string letters(const std::string& text) {
    return std::regex_replace(
        text, std::regex("[ \t\n\f]+|\u2066|\u2067|\u2068|\u2069|\u00A0|\u202F"), "");
}

} // namespace evenfall::test
