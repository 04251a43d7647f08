// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#include "print/sheet_figure.h"

#include <stdexcept>

namespace evenfall::print {

Result<std::string> sheet_figure(const FigureStore& figures, const Depiction& figure,
                                 WritingHand hand) {
    FigureRequest request;
    request.id = figure.id;
    request.tone = Tone::print;
    request.writing_hand = hand == WritingHand::right ? Hand::right : Hand::left;
    request.counts = figure.counts;
    request.dots = figure.dots;
    for (const std::string& layer : figure.layers)
        request.parts[layer] = PartState::done;
    try {
        return figures.compose(request);
    } catch (const std::out_of_range& error) {
        return Problem{Fault::io, "no_figure", "",
                       "the figure \"" + figure.id + "\" is missing: " + error.what() +
                           "; right would be all of assets/figures"};
    }
}

Text hours_of(const Sheet& sheet, const SheetWords& words) {
    Text text = sheet.hours;
    text.args = {TextArg{TextArg::Part{"", {{words.language, words.hours(sheet.clinic)}}}}};
    return text;
}

} // namespace evenfall::print
