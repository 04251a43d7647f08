// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#pragma once

#include "base/text.h"
#include "base/time.h"
#include "kit/visit.h"

#include <QLocale>
#include <QString>
#include <QTranslator>

namespace evenfall {

/// Turns core's text ids into one language, and writes times, numbers, phones and codes the way that
/// language does. What has its own direction is isolated (U+2066 ... U+2069), so that 555-0142 never
/// turns round.
class Words {
  public:
    /// `zone` may be null while no times are written.
    Words(const QString& language, ZonePtr zone);
    ~Words();
    Words(const Words&) = delete;
    Words& operator=(const Words&) = delete;

    /// Languages whose translations are built in.
    static QStringList languages();
    /// The language's own name for itself.
    static QString own_name(const QString& language);

    /// Switches; an unknown language falls back to English, and false says so.
    bool set_language(const QString& language);
    const QString& language() const { return language_; }
    bool right_to_left() const;
    const QLocale& locale() const { return locale_; }

    QString operator()(const Text& text) const;
    /// A text without arguments, or with strings that are already written.
    QString of(const char* id, const QStringList& args = {}) const;
    QString of(const std::string& id, const QStringList& args = {}) const { return of(id.c_str(), args); }

    QString part(const Part& part) const;      ///< "chest belt"
    QString own(const LocalText& text) const;  ///< the clinic's words in this language, else English, else any
    QString clock(Instant when) const;         ///< "10:05 PM"
    QString clock(std::chrono::minutes time_of_day) const;
    QString clock(LocalTime shown) const;
    /// As clock(); in the hour that comes twice it says which of the two.
    QString moment(Instant when) const;
    QString hour(std::chrono::minutes time_of_day) const; ///< "10 PM" or "22": for a full hour on an axis
    QString day_and_part(LocalTime shown) const; ///< "Sunday morning"
    QString date(const std::string& iso) const; ///< "3 November 2026"
    QString number(long value) const;
    QString code(const std::string& value) const;
    QString hours(const Clinic& clinic) const; ///< "Monday to Friday, 8:00 AM to 5:00 PM"

  private:
    QString argument(const TextArg& arg) const;
    QString language_;
    QLocale locale_;
    ZonePtr zone_;
    QTranslator translator_;
};

} // namespace evenfall
