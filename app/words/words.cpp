// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: Evenfall contributors
#include "words/words.h"

#include "plan/plan.h"

#include <QCoreApplication>
#include <QDate>
#include <QTime>
#include <array>

namespace evenfall {
namespace {

constexpr std::array shipped{"en", "es", "ar", "de", "fr"};

QString isolated(const QString& text) { return QChar(0x2066) + text + QChar(0x2069); }

} // namespace

Words::Words(const QString& language, ZonePtr zone) : zone_(std::move(zone)) { set_language(language); }

Words::~Words() { QCoreApplication::removeTranslator(&translator_); }

QStringList Words::languages()
{
    QStringList out;
    for (const char* one : shipped)
        out << QString::fromLatin1(one);
    return out;
}

QString Words::own_name(const QString& language)
{
    const QString name = QLocale(language).nativeLanguageName();
    if (language == QLatin1String("en"))
        return QStringLiteral("English"); // the locale would say "American English"
    if (language == QLatin1String("es"))
        return QStringLiteral("Español");
    if (language == QLatin1String("fr"))
        return QStringLiteral("Français"); // the locale would begin with a small letter
    return name.isEmpty() ? language : name;
}

bool Words::set_language(const QString& language)
{
    QCoreApplication::removeTranslator(&translator_);
    const bool found = translator_.load(QStringLiteral(":/i18n/evenfall_%1.qm").arg(language));
    language_ = found ? language : QStringLiteral("en");
    if (!found && !translator_.load(QStringLiteral(":/i18n/evenfall_en.qm")))
        return false;
    locale_ = QLocale(language_);
    QCoreApplication::installTranslator(&translator_);
    return found;
}

bool Words::right_to_left() const { return locale_.textDirection() == Qt::RightToLeft; }

QString Words::of(const char* id, const QStringList& args) const
{
    QString text = qtTrId(id);
    // One text may serve parts with and without a number: what it does not ask for is left out.
    for (int n = 0; n < args.size() && text.contains(QLatin1Char('%')); ++n)
        text = text.arg(args[n]);
    return text;
}

QString Words::argument(const TextArg& arg) const
{
    if (const auto* moment = std::get_if<TextArg::Moment>(&arg.value))
        return clock(moment->when);
    if (const auto* count = std::get_if<TextArg::Count>(&arg.value))
        return number(count->value);
    if (const auto* fixed = std::get_if<TextArg::Code>(&arg.value))
        return code(fixed->value);
    if (const auto* time = std::get_if<TextArg::TimeOfDay>(&arg.value))
        return time->full_hour ? hour(time->time) : clock(time->time);
    if (const auto* day = std::get_if<TextArg::Date>(&arg.value))
        return date(day->iso);
    if (const auto* word = std::get_if<TextArg::Word>(&arg.value))
        return of(word->id);
    const auto& part = std::get<TextArg::Part>(arg.value);
    return part.own.empty() ? of(part.id) : own(part.own);
}

QString Words::operator()(const Text& text) const
{
    if (const auto found = text.own.find(language_.toStdString()); found != text.own.end())
        return QString::fromStdString(found->second);
    if (text.id.empty())
        return text.own.empty() ? QString() : own(text.own);
    QStringList args;
    for (const TextArg& arg : text.args)
        args << argument(arg);
    return of(text.id, args);
}

QString Words::part(const Part& part) const { return argument(part_name(part)); }

QString Words::own(const LocalText& text) const
{
    for (const std::string& wanted : {language_.toStdString(), std::string("en")}) {
        if (const auto found = text.find(wanted); found != text.end())
            return QString::fromStdString(found->second);
    }
    return text.empty() ? QString() : QString::fromStdString(text.begin()->second);
}

QString Words::clock(std::chrono::minutes time_of_day) const
{
    const QTime time(static_cast<int>(time_of_day.count() / 60), static_cast<int>(time_of_day.count() % 60));
    return isolated(locale_.toString(time, QLocale::ShortFormat));
}

QString Words::hour(std::chrono::minutes time_of_day) const
{
    const QTime time(static_cast<int>(time_of_day.count() / 60), 0);
    const bool twelve = locale_.timeFormat(QLocale::ShortFormat).contains(QLatin1Char('a'), Qt::CaseInsensitive);
    return isolated(locale_.toString(time, twelve ? QStringLiteral("h AP") : QStringLiteral("HH")));
}

QString Words::clock(Instant when) const
{
    return clock(zone_ ? zone_->local(when) : LocalTime(when.time_since_epoch()));
}

QString Words::clock(LocalTime shown) const
{
    return clock(std::chrono::floor<std::chrono::minutes>(shown - std::chrono::floor<std::chrono::days>(shown)));
}

QString Words::moment(Instant when) const
{
    const LocalReading reading = zone_ ? zone_->read(zone_->local(when)) : LocalReading{};
    if (reading.kind != LocalReading::Kind::ambiguous)
        return clock(when);
    return of(when == reading.first ? "hour.first" : "hour.second", {clock(when)});
}

QString Words::day_and_part(LocalTime shown) const
{
    const auto day = std::chrono::floor<std::chrono::days>(shown);
    const auto hour = std::chrono::floor<std::chrono::hours>(shown - day).count();
    const unsigned weekday = std::chrono::weekday(day).iso_encoding();
    const char* id = hour < 5 ? "day.night" : hour < 12 ? "day.morning" : hour < 18 ? "day.afternoon" : "day.evening";
    return of(id, {locale_.dayName(static_cast<int>(weekday))});
}

QString Words::date(const std::string& iso) const
{
    const QDate day = QDate::fromString(QString::fromStdString(iso), Qt::ISODate);
    QString written = locale_.toString(day, QLocale::LongFormat);
    if (locale_.language() == QLocale::French && day.day() == 1) // the locale writes "mardi 1 décembre"
        written.replace(QStringLiteral(" 1 "), QStringLiteral(" 1er "));
    return written;
}

QString Words::number(long value) const { return locale_.toString(static_cast<qlonglong>(value)); }

QString Words::code(const std::string& value) const { return isolated(QString::fromStdString(value)); }

QString Words::hours(const Clinic& clinic) const
{
    static const std::array<const char*, 7> week{"mon", "tue", "wed", "thu", "fri", "sat", "sun"};
    // French has a narrow space before a colon.
    const QString colon = locale_.language() == QLocale::French ? QStringLiteral("\u202f: ") : QStringLiteral(": ");
    QStringList lines;
    for (const OpenHours& open : clinic.hours) {
        // Days that follow each other are named by their first and last.
        QStringList days;
        size_t i = 0;
        const auto is_open = [&open](size_t day) {
            return day < week.size() && std::find(open.days.begin(), open.days.end(), week[day]) != open.days.end();
        };
        while (i < week.size()) {
            if (!is_open(i)) {
                ++i;
                continue;
            }
            size_t last = i;
            while (is_open(last + 1))
                ++last;
            const QString first_name = locale_.dayName(static_cast<int>(i) + 1, QLocale::ShortFormat);
            const QString last_name = locale_.dayName(static_cast<int>(last) + 1, QLocale::ShortFormat);
            days << (last == i ? first_name : first_name + QStringLiteral(" - ") + last_name);
            i = last + 1;
        }
        lines << days.join(QStringLiteral(", ")) + colon + clock(open.from) + QStringLiteral(" - ") + clock(open.to);
    }
    return lines.join(QLatin1Char('\n'));
}

} // namespace evenfall
