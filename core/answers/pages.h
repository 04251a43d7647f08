// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#pragma once

#include "kit/kit.h"
#include "kit/visit.h"
#include "plan/plan.h"

#include <string>
#include <string_view>
#include <vector>

namespace evenfall {

/// The pages of one night in their order: by name, and the steps of the plan by their ids. Where the
/// person is, is one of these in the journal; going on and going back are decided here.
class Pages {
  public:
    Pages(const Plan& plan, const Kit& kit, const VisitOptions& options);
    /// For somebody of the clinic who types in a paper diary or changes a record: the questions, the
    /// answers to check, and the page "entered", on which the record is written.
    static Pages of_staff();

    const std::vector<std::string>& all() const { return pages_; }
    bool has(std::string_view page) const;
    /// The page after this one; the last page has itself.
    std::string after(std::string_view page) const;
    /// The page to go back to, or empty where going back is not offered: nothing is undone by it.
    std::string before(std::string_view page) const;
    /// Is this page of the evening (before the night), of the night, or after it?
    enum class Stretch { evening, night, morning };
    Stretch stretch_of(std::string_view page) const;

  private:
    Pages() = default;
    std::vector<std::string> pages_;
};

/// Prefix of the pages that ask one morning question: "q.into_bed".
inline constexpr std::string_view question_prefix = "q.";

} // namespace evenfall
